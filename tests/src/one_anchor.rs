//! One anchor to change, with its answers: what the tests of limits begin with.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Outcome, Status};
use steadfoot::rules::anchor::{ANCHOR_RULE_TEXTS, Finding};

use crate::run_anchors::{Case, read};
use crate::values::Answers;

/// One M16 8.8 bolt, 120 mm deep in 300 mm of concrete of 25 MPa, pulled and sheared to the right.
pub fn base() -> Json {
    json!({
        "rule": "aci-318-19-si", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 120.0, "seismic_category": "A-B",
        "slab": { "strength": "25 MPa", "thickness": "300 mm" },
        "anchors": [bolt(0.0, 0.0)],
    })
}

/// A bolt of the base somewhere.
pub fn bolt(x_mm: f64, y_mm: f64) -> Json {
    json!({ "at": [x_mm, y_mm], "tension": "1 kN", "shear": ["1 kN", "0 kN"] })
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

/// The answers of a changed base.
pub fn answers(changes: Json) -> Answers {
    case(changes).answers()
}

/// The first value of a step, in SI.
pub fn at(changes: Json, step: &str) -> f64 {
    let answers = answers(changes);
    answers.get(step).unwrap_or_else(|| panic!("no {step} in {:?}", answers.keys())).value
}

/// Whether a step is told.
pub fn has(changes: Json, step: &str) -> bool {
    answers(changes).contains_key(step)
}

/// The status of a check, of the first finding.
pub fn status(changes: Json, check: CheckId) -> Status {
    let findings = case(changes).quiet();
    findings.iter().find(|finding| finding.check == check).unwrap().outcome.status()
}

/// Why a check is not covered or not needed; empty where it was compared.
pub fn reason(changes: Json, check: CheckId) -> &'static str {
    let findings = case(changes).quiet();
    let of_check = |finding: &&Finding| finding.check == check;
    match findings.iter().find(of_check).unwrap().outcome {
        Outcome::Compared { .. } => "",
        Outcome::NotCovered(id) | Outcome::NotNeeded(id) => {
            let table = ANCHOR_RULE_TEXTS[0].steps.iter().find(|table| table.number == id.table()).unwrap();
            table.rows[id.row()].what
        }
    }
}

/// Equal but for the rounding of a conversion.
pub fn same(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * b.abs()
}
