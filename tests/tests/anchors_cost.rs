//! What a call of an anchor rule costs. Reported, not gated: the gate counts instructions of the whole engine.
//!
//! `cargo test --release -p steadfoot-tests --test anchors_cost -- --ignored --nocapture`

use serde_json::{Value as Json, json};
use steadfoot::calc::Sheet;
use steadfoot::rules::anchor::{AnchorSite, Finding};
use steadfoot_tests::run_anchors::{Case, read};

/// One group of four in a corner, pulled and sheared, in category C to F: every mode is asked.
fn group(kind: &str) -> Case {
    let anchor = |x: f64, y: f64| json!({ "at": [x, y], "tension": "4 kN", "shear": ["-2 kN", "-1 kN"] });
    let mut input = json!({
        "rule": "aci-318-19-si", "anchor_kind": kind, "bolt": "M16", "steel": "f1554-36", "embedment_mm": 125.0,
        "slab": { "strength": "30 MPa", "thickness": "250 mm", "left": "-110 mm", "front": "-160 mm" },
        "anchors": [anchor(0.0, 0.0), anchor(150.0, 0.0), anchor(0.0, 150.0), anchor(150.0, 150.0)],
    });
    let report: Json = match kind {
        "cast-headed" => json!({}),
        "adhesive" => json!({ "anchor_category": "1", "tau_cr_mpa": 6.0, "tau_uncr_mpa": 10.0, "alpha_n_seis": 0.9,
            "v_sa_eq_n": 30e3, "sustained_tension_n": 100.0 }),
        _ => json!({ "anchor_category": "1", "n_p_eq_n": 15e3, "v_sa_eq_n": 30e3 }),
    };
    for (key, value) in report.as_object().unwrap() {
        input[key] = value.clone();
    }
    read(&input).unwrap()
}

#[test]
#[ignore = "times the machine"]
fn cost_of_one_group_with_all_modes() {
    for kind in ["cast-headed", "undercut", "adhesive"] {
        let case = group(kind);
        let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
        let level = (case.rule.amplification)(&case.values);
        let mut prepared = (case.rule.prepare)(&site);
        let mut findings: Vec<Finding> = Vec::new();
        let mut microseconds = Vec::new();
        // The quickest of many short runs, because other work on the machine only ever adds.
        for is_told in [false, true] {
            let mut quickest = f64::INFINITY;
            for _ in 0..200 {
                let start = std::time::Instant::now();
                for _ in 0..100 {
                    findings.clear();
                    let mut sheet = if is_told { Sheet::told() } else { Sheet::quiet() };
                    prepared.check(&case.forces, level, &mut sheet, &mut findings);
                }
                quickest = quickest.min(start.elapsed().as_secs_f64() * 1e6 / 100.0);
            }
            microseconds.push(quickest);
        }
        let mut quickest = f64::INFINITY;
        for _ in 0..500 {
            let start = std::time::Instant::now();
            let mut prepared = (case.rule.prepare)(&site);
            findings.clear();
            prepared.check(&case.forces, level, &mut Sheet::quiet(), &mut findings);
            quickest = quickest.min(start.elapsed().as_secs_f64() * 1e6);
        }
        println!(
            "{kind}: quiet {:.2}, told {:.1}, prepared and asked once {quickest:.1} microseconds, {} findings",
            microseconds[0],
            microseconds[1],
            findings.len()
        );
    }
}
