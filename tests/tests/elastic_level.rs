//! Elastic design of anchors takes a demand without ductility: where the demand rule was told otherwise, it is not covered.

use serde_json::{Value, json};
use steadfoot::calc::{Status, System};
use steadfoot::project;

const DEMO: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-configs/13-partial-factors.json");

/// Whether the anchors in the concrete were compared at all.
fn is_covered(site: &Value) -> bool {
    let mut file: Value = serde_json::from_str(&std::fs::read_to_string(DEMO).unwrap()).unwrap();
    for (key, value) in site.as_object().unwrap() {
        file["site"][key] = value.clone();
    }
    assess(&file)
}

fn assess(file: &Value) -> bool {
    let project = project::read(&file.to_string(), System::Si).unwrap_or_else(|faults| panic!("{faults:?}"));
    let report = project::assess(&project);
    let cone = report.checks.iter().find(|check| check.id == "anchor.tension.breakout");
    cone.is_some_and(|cone| cone.status != Status::NotCovered)
}

#[test]
fn anchors_of_capacity_design_are_not_covered_by_elastic_resistances() {
    assert!(is_covered(&json!({"anchor_design": "elastic"})));
    assert!(is_covered(&json!({"anchor_design": "not-stated"})));
    assert!(!is_covered(&json!({"anchor_design": "capacity-or-ductile"})));
}

#[test]
fn a_level_that_counts_on_ductility_is_none_for_elastic_design() {
    let mut file: Value = serde_json::from_str(&std::fs::read_to_string(DEMO).unwrap()).unwrap();
    for (fixings, is_said) in [("brittle", true), ("nominally-ductile", false), ("capacity-designed", false)] {
        file["site"] = json!({"rule": "nzs-1170-5", "hazard_factor": 0.1, "annual_probability": "1/500", "soil_class": "C",
            "component_ductility": 1.25, "part_class": "P3", "attachment_height_m": 0, "fixings": fixings});
        assert_eq!(assess(&file), is_said, "{fixings}");
    }
    file["site"] = json!({"rule": "nbc-2020", "s_02": 0.5, "importance_category": "normal", "component": "equipment-flexible",
        "anchor_type": "shallow", "attachment_height_m": 0});
    assert!(!assess(&file), "a response factor of 1.5 is ductility");
}

#[test]
fn a_ground_that_the_rule_excludes_is_not_covered() {
    assert!(!is_covered(&json!({"ground_type": "S1"})));
    assert!(is_covered(&json!({"ground_type": "S1", "soil_factor": 1.15})));
}

#[test]
fn a_factor_to_elastic_forces_multiplies_the_level_of_the_demand_rule_too() {
    let shear = |changes: Value| {
        let mut file: Value = serde_json::from_str(&std::fs::read_to_string(DEMO).unwrap()).unwrap();
        for (key, value) in changes.as_object().unwrap() {
            file["anchorage"][key] = value.clone();
        }
        let report = project::assess(&project::read(&file.to_string(), System::Si).unwrap());
        let steel = report.checks.iter().find(|check| check.id == "anchor.shear.steel");
        steel.and_then(|steel| steel.utilisation).unwrap()
    };
    let plain = shear(json!({}));
    assert!((shear(json!({ "elastic_factor": 1.5 })) / plain - 1.5).abs() < 1e-9);
    assert_eq!(shear(json!({ "elastic_factor": 1.0 })), plain);
}
