//! Elastic design of anchors takes a demand without ductility: where the demand rule was told otherwise, it is not covered.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project;
use steadfoot::report::outcome::Verdict;

const DEMO: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-configs/13-partial-factors.json");

fn verdict(site: &Value) -> Verdict {
    let mut file: Value = serde_json::from_str(&std::fs::read_to_string(DEMO).unwrap()).unwrap();
    for (key, value) in site.as_object().unwrap() {
        file["site"][key] = value.clone();
    }
    assess(&file)
}

fn assess(file: &Value) -> Verdict {
    let project = project::read(&file.to_string(), System::Si).unwrap_or_else(|faults| panic!("{faults:?}"));
    project::assess(&project).verdict
}

#[test]
fn anchors_of_capacity_design_are_not_covered_by_elastic_resistances() {
    assert_ne!(verdict(&json!({"anchor_design": "elastic"})), Verdict::CannotBeSaid);
    assert_ne!(verdict(&json!({"anchor_design": "not-stated"})), Verdict::CannotBeSaid);
    assert_eq!(verdict(&json!({"anchor_design": "capacity-or-ductile"})), Verdict::CannotBeSaid);
}

#[test]
fn a_level_that_counts_on_ductility_is_none_for_elastic_design() {
    let mut file: Value = serde_json::from_str(&std::fs::read_to_string(DEMO).unwrap()).unwrap();
    for (fixings, is_said) in [("brittle", true), ("nominally-ductile", false), ("capacity-designed", false)] {
        file["site"] = json!({"rule": "nzs-1170-5", "hazard_factor": 0.1, "annual_probability": "1/500", "soil_class": "C",
            "component_ductility": 1.25, "part_class": "P3", "attachment_height_m": 0, "fixings": fixings});
        assert_eq!(assess(&file) != Verdict::CannotBeSaid, is_said, "{fixings}");
    }
    file["site"] = json!({"rule": "nbc-2020", "s_02": 0.5, "importance_category": "normal", "component": "equipment-flexible",
        "anchor_type": "shallow", "attachment_height_m": 0});
    assert_eq!(assess(&file), Verdict::CannotBeSaid, "a response factor of 1.5 is ductility");
}

#[test]
fn a_ground_that_the_rule_excludes_is_not_covered() {
    assert_eq!(verdict(&json!({"ground_type": "S1"})), Verdict::CannotBeSaid);
    assert_ne!(verdict(&json!({"ground_type": "S1", "soil_factor": 1.15})), Verdict::CannotBeSaid);
}
