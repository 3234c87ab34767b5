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
