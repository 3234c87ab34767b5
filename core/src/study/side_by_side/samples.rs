//! What each rule is asked with where the project does not say it: one place of the rule's own, in the words of its file.
//!
//! The places are those at which a rule asks for much: its highest zone or a city that is known to shake. Heights are those of
//! a floor at 12 m in a building of 20 m. Every value is listed beside the result, so nothing of it is hidden.

use super::steps;
use crate::calc::StepId;

/// What a rule is asked with.
pub struct Sample {
    /// Id of the rule.
    pub rule: &'static str,
    /// Row of its short name.
    pub name: StepId,
    /// Its inputs, as the file writes them.
    pub inputs: &'static str,
}

/// The sample of a rule, if there is one.
pub fn sample(rule: &str) -> Option<&'static Sample> {
    SAMPLES.iter().find(|sample| sample.rule == rule)
}

/// Height of the floor and of the roof where the project gives none, m.
pub const HEIGHTS_M: [f64; 2] = [12.0, 20.0];
/// Height of a storey, by which storeys are counted from heights, m.
pub const STOREY_M: f64 = 4.0;

static SAMPLES: &[Sample] = &[
    Sample {
        rule: "ubc-1994",
        name: steps::UBC_1994,
        inputs: r#"{"zone": "4", "importance_factor": 1, "component": "rigid"}"#,
    },
    Sample {
        rule: "ubc-1997",
        name: steps::UBC_1997,
        inputs: r#"{"zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1, "component": "cabinet", "anchor_type": "deep"}"#,
    },
    Sample {
        rule: "ti-809-04",
        name: steps::TI_809_04,
        inputs: r#"{"s_ds": 1, "importance_factor": 1, "component": "electrical", "anchor_type": "deep"}"#,
    },
    Sample {
        rule: "asce-7-05",
        name: steps::ASCE_7_05,
        inputs: r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet", "anchor_type": "qualified"}"#,
    },
    Sample {
        rule: "asce-7-10",
        name: steps::ASCE_7_10,
        inputs: r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#,
    },
    Sample {
        rule: "asce-7-16",
        name: steps::ASCE_7_16,
        inputs: r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#,
    },
    Sample {
        rule: "asce-7-22",
        name: steps::ASCE_7_22,
        inputs: r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#,
    },
    Sample {
        rule: "japan-equipment",
        name: steps::JAPAN,
        inputs: r#"{"region_factor": "1.0", "component": "equipment", "seismic_class": "A"}"#,
    },
    Sample {
        rule: "gb-50011",
        name: steps::GB_50011,
        inputs: r#"{"intensity": "8", "component": "cabinet", "building_class": "B"}"#,
    },
    Sample {
        rule: "taiwan",
        name: steps::TAIWAN,
        inputs: r#"{"s_ds": 1, "region": "general", "importance_factor": 1, "component_amplification": 1, "component_response": 2.5, "anchor_type": "deep"}"#,
    },
    Sample {
        rule: "nscp-2015",
        name: steps::NSCP_2015,
        inputs: r#"{"zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1, "component": "equipment", "anchor_type": "deep"}"#,
    },
    Sample {
        rule: "sni-1726",
        name: steps::SNI_1726,
        inputs: r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#,
    },
    Sample {
        rule: "peru-e-030",
        name: steps::PERU,
        inputs: r#"{"zone": "4", "soil_profile": "S1", "building_use": "B", "component": "rigid"}"#,
    },
    Sample {
        rule: "nsr-10",
        name: steps::NSR_10,
        inputs: r#"{"peak_acceleration": 0.25, "soil_coefficient": 1.3, "building_importance": 1, "component_amplification": 1, "anchor_type": "ductile"}"#,
    },
    Sample {
        rule: "nzs-1170-5",
        name: steps::NZS_1170_5,
        inputs: r#"{"hazard_factor": 0.4, "annual_probability": "1/500", "soil_class": "C", "component_ductility": 1.25, "part_class": "P3"}"#,
    },
    Sample {
        rule: "as-1170-4",
        name: steps::AS_1170_4,
        inputs: r#"{"hazard_factor": 0.1, "annual_probability": "1/500", "soil_class": "De", "component_importance": 1, "component": "rigid-ductile"}"#,
    },
    Sample {
        rule: "en-1998-1",
        name: steps::EN_1998,
        inputs: r#"{"reference_acceleration": 0.25, "building_class": "II", "spectrum": "1", "ground_type": "C", "component_importance": 1, "component": "electrical"}"#,
    },
    Sample {
        rule: "ntc-2018",
        name: steps::NTC_2018,
        inputs: r#"{"ground_acceleration": 0.25, "spectral_amplification": 2.5, "ground_type": "C", "topography": "T1", "building": "framed", "building_period_s": 0.5, "component": "cabinet"}"#,
    },
    Sample {
        rule: "p100-1-2013",
        name: steps::P100_1,
        inputs: r#"{"ground_acceleration": 0.3, "component_importance": 1, "flexibility": "rigid", "behaviour_factor": 1.5, "anchor_factor": 1.3}"#,
    },
    Sample {
        rule: "is-1893",
        name: steps::IS_1893,
        inputs: r#"{"zone": "V", "basis": "half-zone-factor", "importance_factor": 1, "component": "electrical", "anchor_type": "deep"}"#,
    },
    Sample {
        rule: "nbc-2015",
        name: steps::NBC_2015,
        inputs: r#"{"s_a_02": 0.85, "site_coefficient": 1, "importance_category": "normal", "component": "equipment-rigid", "anchor_type": "deep"}"#,
    },
    Sample {
        rule: "nbc-2020",
        name: steps::NBC_2020,
        inputs: r#"{"s_02": 0.85, "importance_category": "normal", "component": "equipment-rigid", "anchor_type": "deep"}"#,
    },
    Sample { rule: "direct", name: steps::DIRECT, inputs: "{}" },
];
