//! Inputs of the demand rules of Europe, India, New Zealand, Australia and Canada, to which a test makes changes.

use serde_json::{Value as Json, json};

use crate::demand_input::with;

/// A cabinet at the base on ground B by EN 1998-1, at resonance, with changes; null takes a field out.
pub fn en_1998_1(changes: Json) -> Json {
    with(
        json!({"rule": "en-1998-1", "weight": "10 kN", "reference_acceleration": 0.2, "building_class": "II", "spectrum": "1",
            "ground_type": "B", "component_importance": 1.0, "component": "cabinet", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A cabinet at the base of a framed building on rock by NTC 2018, with changes.
pub fn ntc_2018(changes: Json) -> Json {
    with(
        json!({"rule": "ntc-2018", "weight": "10 kN", "ground_acceleration": 0.2, "ground_type": "A", "topography": "T1",
            "building": "framed", "building_period_s": 0.4, "component": "cabinet", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A rigid component at the base by P100-1, with changes.
pub fn p100_1(changes: Json) -> Json {
    with(
        json!({"rule": "p100-1-2013", "weight": "10 kN", "ground_acceleration": 0.2, "component_importance": 1.0, "flexibility": "rigid",
            "behaviour_factor": 1.0, "anchor_factor": 1.0, "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A panel at the base in zone V of India by half of Z, with changes.
pub fn is_1893(changes: Json) -> Json {
    with(
        json!({"rule": "is-1893", "weight": "10 kN", "zone": "V", "basis": "half-zone-factor", "importance_factor": 1.0,
            "component": "electrical", "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// An elastic cabinet at the base on shallow soil by NZS 1170.5, with changes.
pub fn nzs_1170_5(changes: Json) -> Json {
    with(
        json!({"rule": "nzs-1170-5", "weight": "10 kN", "hazard_factor": 0.4, "annual_probability": "1/500", "soil_class": "C",
            "component_ductility": 1.0, "part_class": "P2", "attachment_height_m": 0.0, "roof_height_m": 40.0}),
        changes,
    )
}

/// A flexible cabinet at the base on shallow soil by AS 1170.4, with changes.
pub fn as_1170_4(changes: Json) -> Json {
    with(
        json!({"rule": "as-1170-4", "weight": "10 kN", "hazard_factor": 0.1, "annual_probability": "1/500", "soil_class": "Ce",
            "component_importance": 1.0, "component": "flexible", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// Flexible equipment at the base by NBC 2015 with F_a = 1, with changes.
pub fn nbc_2015(changes: Json) -> Json {
    with(
        json!({"rule": "nbc-2015", "weight": "10 kN", "s_a_02": 0.5, "site_coefficient": 1.0, "importance_category": "normal",
            "component": "equipment-flexible", "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// The same by NBC 2020.
pub fn nbc_2020(changes: Json) -> Json {
    with(
        json!({"rule": "nbc-2020", "weight": "10 kN", "s_02": 0.5, "importance_category": "normal", "component": "equipment-flexible",
            "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}
