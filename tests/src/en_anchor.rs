//! One anchor by EN 1992-4 with some of its input put otherwise, for tests of limits.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Status};

use crate::run_anchors::{Case, read};

/// One M16 8.8 headed bolt, 120 mm deep in 300 mm of concrete of 25 MPa, static, pulled and sheared to the right.
pub fn base() -> Json {
    json!({
        "rule": "en-1992-4-2018", "fastener": "headed", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 120.0,
        "performance_category": "none", "holes": "filled", "reinforcement": "wide", "splitting": "reinforced",
        "s_min_mm": 80, "c_min_mm": 50, "h_min_mm": 160,
        "slab": { "strength": "25 MPa", "thickness": "300 mm" },
        "anchors": [bolt(0.0, 0.0)],
    })
}

pub fn bolt(x_mm: f64, y_mm: f64) -> Json {
    json!({ "at": [x_mm, y_mm], "tension": "1 kN", "shear": ["1 kN", "0 kN"] })
}

/// A bonded anchor with everything that its assessment gives.
pub fn bonded(changes: Json) -> Json {
    let mut all = json!({
        "fastener": "bonded", "gamma_inst": 1.2, "tau_rk_cr_mpa": 6, "tau_rk_ucr_mpa": 10, "qualification": "C2",
        "tau_rk_eq_mpa": 3, "n_rk_s_eq_n": 60000, "v_rk_s_eq_n": 20000, "c_cr_sp_mm": 200,
    });
    for (key, value) in changes.as_object().unwrap() {
        all[key] = value.clone();
    }
    all
}

/// The base with some members of it put otherwise; those of the slab one by one.
pub fn case(changes: Json) -> Case {
    let mut input = base();
    for (key, value) in changes.as_object().unwrap() {
        if key == "slab" {
            for (key, value) in value.as_object().unwrap() {
                input["slab"][key] = value.clone();
            }
        } else {
            input[key] = value.clone();
        }
    }
    read(&input).unwrap()
}

/// The first value of a step, in SI.
pub fn at(changes: Json, step: &str) -> f64 {
    let answers = case(changes).answers();
    answers.get(step).unwrap_or_else(|| panic!("no {step} in {:?}", answers.keys())).value
}

pub fn has(changes: Json, step: &str) -> bool {
    case(changes).answers().contains_key(step)
}

pub fn status(changes: Json, check: CheckId) -> Status {
    let findings = case(changes).quiet();
    findings.iter().find(|finding| finding.check == check).unwrap().outcome.status()
}

/// The word of a check that a reader sees on both sides of a limit.
pub fn sides(check: CheckId, changes: [Json; 2]) -> [Status; 2] {
    changes.map(|changes| status(changes, check))
}
