//! Inputs of the demand rules to which a test makes changes, and questions to them.

use serde_json::{Value as Json, json};
use steadfoot::input::{Problem, Values};
use steadfoot::rules::DemandRule;
use steadfoot::rules::demand::{Strength, demand_rule};

use crate::run_demand::run;
use crate::values::field_values;

/// A cabinet at the base by ASCE 7-16, with changes; null takes a field out.
pub fn asce_7_16(changes: Json) -> Json {
    with(
        json!({"rule": "asce-7-16", "weight": "10 kN", "s_ds": 1.0, "importance_factor": 1.0, "component": "sheet-metal-cabinet",
            "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// The same with S_S and a site class in place of S_DS.
pub fn asce_7_16_site(s_s: f64, class: &str) -> Json {
    asce_7_16(json!({"s_ds": null, "s_s": s_s, "site_class": class}))
}

/// A communication rack at grade by ASCE 7-22, with changes.
pub fn asce_7_22(changes: Json) -> Json {
    with(
        json!({"rule": "asce-7-22", "weight": "10 kN", "s_ds": 1.0, "importance_factor": 1.0, "component": "communication",
            "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A tall cabinet at grade in zone 4, far from sources, by UBC 1997, with changes.
pub fn ubc(changes: Json) -> Json {
    with(
        json!({"rule": "ubc-1997", "weight": "10 kN", "zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1.0,
            "component": "cabinet", "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A cabinet at the base by ASCE 7-10, with changes.
pub fn asce_7_10(changes: Json) -> Json {
    with(with(asce_7_16(json!({})), json!({"rule": "asce-7-10"})), changes)
}

/// A cabinet at the base with qualified anchors by ASCE 7-05, with changes.
pub fn asce_7_05(changes: Json) -> Json {
    with(with(asce_7_16(json!({})), json!({"rule": "asce-7-05", "anchor_type": "qualified"})), changes)
}

/// Electrical equipment at grade with deep anchors by TI 809-04, with changes.
pub fn ti_809_04(changes: Json) -> Json {
    let input = json!({"rule": "ti-809-04", "component": "electrical", "anchor_type": "deep"});
    with(with(asce_7_16(json!({})), input), changes)
}

/// Rigid equipment above grade in zone 3 by UBC 1994, with changes.
pub fn ubc_1994(changes: Json) -> Json {
    with(
        json!({"rule": "ubc-1994", "weight": "10 kN", "zone": "3", "importance_factor": 1.0, "component": "rigid", "attachment_height_m": 5.0}),
        changes,
    )
}

/// Equipment of class A on the ground floor of six storeys by Japanese practice, with changes.
pub fn japan(changes: Json) -> Json {
    with(
        json!({"rule": "japan-equipment", "weight": "10 kN", "component": "equipment", "seismic_class": "A", "storeys": 6, "storey": 1}),
        changes,
    )
}

/// A cabinet on the ground in intensity 8 by GB 50011, with changes.
pub fn china(changes: Json) -> Json {
    with(
        json!({"rule": "gb-50011", "weight": "10 kN", "intensity": "8", "component": "cabinet", "building_class": "B",
            "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// Rigid equipment at the base with deep anchors in Taiwan, with changes.
pub fn taiwan(changes: Json) -> Json {
    with(
        json!({"rule": "taiwan", "weight": "10 kN", "s_ds": 0.8, "region": "general", "importance_factor": 1.0, "component_amplification": 1.0,
            "component_response": 2.5, "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// Rigid equipment at grade in zone 4 of the Philippines, far from sources, with changes.
pub fn philippines(changes: Json) -> Json {
    with(
        json!({"rule": "nscp-2015", "weight": "10 kN", "zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1.0,
            "component": "equipment", "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A cabinet at the base in Indonesia, with changes.
pub fn indonesia(changes: Json) -> Json {
    with(with(asce_7_16(json!({})), json!({"rule": "sni-1726"})), changes)
}

/// Rigid equipment at the base in zone 4 of Peru, with changes.
pub fn peru(changes: Json) -> Json {
    with(
        json!({"rule": "peru-e-030", "weight": "10 kN", "zone": "4", "soil_profile": "S1", "building_use": "C", "component": "rigid",
            "attachment_height_m": 0.0}),
        changes,
    )
}

/// A flexible component with ductile anchors at the base in Colombia, with changes.
pub fn colombia(changes: Json) -> Json {
    with(
        json!({"rule": "nsr-10", "weight": "10 kN", "peak_acceleration": 0.25, "soil_coefficient": 1.2, "building_importance": 1.0,
            "component_amplification": 2.5, "anchor_type": "ductile", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

/// A coefficient in limit states, with changes.
pub fn direct(changes: Json) -> Json {
    with(
        json!({"rule": "direct", "weight": "10 kN", "format": "limit-states", "horizontal_coefficient": 0.5, "vertical_coefficient": 0.25,
            "gravity_heavy": 1.0, "gravity_light": 0.9}),
        changes,
    )
}

/// The input with some keys changed.
pub fn with(mut input: Json, changes: Json) -> Json {
    for (key, value) in changes.as_object().unwrap() {
        input[key] = value.clone();
    }
    input
}

/// The number told under a symbol. Panics where the input is not covered.
pub fn of(input: &Json, symbol: &str) -> f64 {
    let answers = run(&without_nulls(input)).unwrap_or_else(|problem| panic!("{input}: {problem}"));
    answers.get(symbol).unwrap_or_else(|| panic!("{input}: no {symbol}")).value
}

/// The rule of an input and its values.
pub fn read(input: &Json) -> (&'static DemandRule, Values) {
    let rule = demand_rule(input["rule"].as_str().unwrap()).unwrap();
    (rule, field_values(rule.fields, &without_nulls(input)).unwrap())
}

/// The faults of an input by key.
pub fn faults(input: &Json) -> Vec<(&'static str, Problem)> {
    let (rule, values) = read(input);
    let mut faults = Vec::new();
    (rule.faults)(&values, &mut faults);
    faults.into_iter().map(|(place, problem, _)| (rule.fields[place].key, problem)).collect()
}

/// The key of the field that scales the strength of shaking.
pub fn strength(input: &Json) -> &'static str {
    let (rule, values) = read(input);
    match (rule.strength)(&values) {
        Strength::Field(field) | Strength::Zones(field) => rule.fields[field].key,
    }
}

fn without_nulls(input: &Json) -> Json {
    Json::Object(
        input
            .as_object()
            .unwrap()
            .iter()
            .filter(|(_, value)| !value.is_null())
            .map(|(key, value)| (key.clone(), value.clone()))
            .collect(),
    )
}

/// Panics where a number is not the expected one to twelve digits.
pub fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() <= 1e-12 * expected.abs().max(1.0), "{found} is not {expected}");
}
