//! What each rule is asked with where the project does not say it: one place of the rule's own, in the words of its file.
//!
//! The places are those at which a rule asks for much: its highest zone or a city that is known to shake. Heights are those of
//! a floor at 12 m in a building of 20 m. Every value is listed beside the result, so nothing of it is hidden.

use crate::calc::clause::INPUT;
use crate::calc::{StepId, steps};

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

macro_rules! samples {
    ($($row:ident $rule:literal $name:literal $inputs:literal;)*) => {
        steps! { 199 "rules side by side"; $($row "" Number (INPUT "site" Derived) $name: Name;)* }

        static SAMPLES: &[Sample] = &[$(Sample { rule: $rule, name: $row, inputs: $inputs }),*];
    };
}

// A rule is a line: its id, its short name, and its inputs.
samples! {
    UBC_1994 "ubc-1994" "UBC 1994" r#"{"zone": "4", "importance_factor": 1, "component": "rigid"}"#;
    UBC_1997 "ubc-1997" "UBC 1997" r#"{"zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1, "component": "cabinet", "anchor_type": "deep"}"#;
    TI_809_04 "ti-809-04" "TI 809-04" r#"{"s_ds": 1, "importance_factor": 1, "component": "electrical", "anchor_type": "deep"}"#;
    ASCE_7_05 "asce-7-05" "ASCE 7-05" r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet", "anchor_type": "qualified"}"#;
    ASCE_7_10 "asce-7-10" "ASCE 7-10" r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#;
    ASCE_7_16 "asce-7-16" "ASCE 7-16" r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#;
    ASCE_7_22 "asce-7-22" "ASCE 7-22" r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#;
    JAPAN "japan-equipment" "Japan, equipment" r#"{"region_factor": "1.0", "component": "equipment", "seismic_class": "A"}"#;
    GB_50011 "gb-50011" "China, GB 50011" r#"{"intensity": "8", "component": "cabinet", "building_class": "B"}"#;
    TAIWAN "taiwan" "Taiwan" r#"{"s_ds": 1, "region": "general", "importance_factor": 1, "component_amplification": 1, "component_response": 2.5, "anchor_type": "deep"}"#;
    NSCP_2015 "nscp-2015" "Philippines, NSCP 2015" r#"{"zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1, "component": "equipment", "anchor_type": "deep"}"#;
    SNI_1726 "sni-1726" "Indonesia, SNI 1726" r#"{"s_ds": 1, "importance_factor": 1, "component": "sheet-metal-cabinet"}"#;
    PERU "peru-e-030" "Peru, E.030" r#"{"zone": "4", "soil_profile": "S1", "building_use": "B", "component": "rigid"}"#;
    NSR_10 "nsr-10" "Colombia, NSR-10" r#"{"peak_acceleration": 0.25, "soil_coefficient": 1.3, "building_importance": 1, "component_amplification": 1, "anchor_type": "ductile"}"#;
    NZS_1170_5 "nzs-1170-5" "New Zealand, NZS 1170.5" r#"{"hazard_factor": 0.4, "annual_probability": "1/500", "soil_class": "C", "component_ductility": 1.25, "part_class": "P3"}"#;
    AS_1170_4 "as-1170-4" "Australia, AS 1170.4" r#"{"hazard_factor": 0.1, "annual_probability": "1/500", "soil_class": "De", "component_importance": 1, "component": "rigid-ductile"}"#;
    EN_1998 "en-1998-1" "EN 1998-1" r#"{"reference_acceleration": 0.25, "building_class": "II", "spectrum": "1", "ground_type": "C", "component_importance": 1, "component": "electrical"}"#;
    NTC_2018 "ntc-2018" "Italy, NTC 2018" r#"{"ground_acceleration": 0.25, "spectral_amplification": 2.5, "ground_type": "C", "topography": "T1", "building": "framed", "building_period_s": 0.5, "component": "cabinet"}"#;
    P100_1 "p100-1-2013" "Romania, P100-1" r#"{"ground_acceleration": 0.3, "component_importance": 1, "flexibility": "rigid", "behaviour_factor": 1.5, "anchor_factor": 1.3}"#;
    IS_1893 "is-1893" "India, IS 1893" r#"{"zone": "V", "basis": "half-zone-factor", "importance_factor": 1, "component": "electrical", "anchor_type": "deep"}"#;
    NBC_2015 "nbc-2015" "Canada, NBC 2015" r#"{"s_a_02": 0.85, "site_coefficient": 1, "importance_category": "normal", "component": "equipment-rigid", "anchor_type": "deep"}"#;
    NBC_2020 "nbc-2020" "Canada, NBC 2020" r#"{"s_02": 0.85, "importance_category": "normal", "component": "equipment-rigid", "anchor_type": "deep"}"#;
    DIRECT "direct" "direct coefficient" "{}";
}
