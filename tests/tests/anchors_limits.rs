//! Every limit of the anchor rule from both sides: at a limit the clause's own side is taken. Tension, steel, distances.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Outcome, Sheet, Status};
use steadfoot::input::Problem;
use steadfoot::rules::anchor::{Amplification, AnchorSite, Finding, anchor_rule};
use steadfoot_tests::one_anchor::*;
use steadfoot_tests::values::field_values;

#[test]
fn concrete_below_17_mpa_is_not_covered() {
    let check = CheckId::AnchorTensionBreakout;
    assert_eq!(status(json!({ "slab": { "strength": "16.9 MPa" } }), check), Status::NotCovered);
    assert_eq!(status(json!({ "slab": { "strength": "17 MPa" } }), check), Status::Holds);
    assert_eq!(status(json!({ "rule": "aci-318-19", "slab": { "strength": "2499 psi" } }), check), Status::NotCovered);
    assert_eq!(status(json!({ "rule": "aci-318-19", "slab": { "strength": "2500 psi" } }), check), Status::Holds);
}

#[test]
fn concrete_above_70_mpa_counts_as_70() {
    let n_b = |strength: &str| at(json!({ "slab": { "strength": strength } }), "tension-breakout/N_b");
    assert!(n_b("69.9 MPa") < n_b("70 MPa"));
    assert_eq!(n_b("70 MPa"), n_b("70.1 MPa"));
    let us =
        |strength: &str| at(json!({ "rule": "aci-318-19", "slab": { "strength": strength } }), "tension-breakout/N_b");
    assert!(us("9990 psi") < us("10000 psi"));
    assert!(same(us("10000 psi"), us("10010 psi")));
}

#[test]
fn tensile_strength_is_capped_by_yield_and_by_860_mpa() {
    let f_uta = |f_y: f64, f_u: f64| {
        at(json!({ "steel": "given", "yield_mpa": f_y, "tensile_mpa": f_u }), "tension-steel/f_uta")
    };
    assert_eq!(f_uta(400.0, 750.0), 750.0);
    assert_eq!(f_uta(400.0, 760.0), 760.0);
    assert_eq!(f_uta(400.0, 770.0), 760.0);
    assert_eq!(f_uta(700.0, 860.0), 860.0);
    assert_eq!(f_uta(700.0, 861.0), 860.0);
    let us = |f_u: &str| {
        at(
            json!({ "rule": "aci-318-19", "steel": "given", "yield_mpa": "100 ksi", "tensile_mpa": f_u }),
            "tension-steel/f_uta",
        )
    };
    assert!(same(us("125 ksi"), us("126 ksi")) && us("124 ksi") < us("125 ksi"));
}

#[test]
fn anchors_up_to_100_mm_thick_are_covered() {
    let thick = |diameter_mm: f64| {
        let changes = json!({ "bolt": "given", "head": "given", "diameter_mm": diameter_mm, "stress_area_mm2": 7000.0,
            "bearing_area_mm2": 9000.0 });
        status(changes, CheckId::AnchorTensionBreakout)
    };
    assert_eq!(thick(100.0), Status::Holds);
    assert_eq!(thick(100.1), Status::NotCovered);
}

#[test]
fn the_equation_for_deep_anchors_reaches_from_280_to_635_mm() {
    let k_c = |rule: &str, embedment: Json| {
        let changes = json!({ "rule": rule, "embedment_mm": embedment, "breakout_form": "deep", "slab": { "thickness": "900 mm" } });
        answers(changes)["tension-breakout/k_c"].kind
    };
    let common = k_c("aci-318-19-si", json!(100.0));
    assert_eq!(k_c("aci-318-19-si", json!(279.9)), common);
    assert_ne!(k_c("aci-318-19-si", json!(280.0)), common);
    assert_ne!(k_c("aci-318-19-si", json!(635.0)), common);
    assert_eq!(k_c("aci-318-19-si", json!(635.1)), common);
    assert_eq!(k_c("aci-318-19", json!("10.99 in")), common);
    assert_ne!(k_c("aci-318-19", json!("11 in")), common);
    assert_ne!(k_c("aci-318-19", json!("25 in")), common);
    assert_eq!(k_c("aci-318-19", json!("25.01 in")), common);
}

#[test]
fn an_embedment_whose_cover_reaches_the_underside_is_not_covered() {
    assert_eq!(
        status(json!({ "slab": { "thickness": "139.9 mm" } }), CheckId::AnchorTensionBreakout),
        Status::NotCovered
    );
    assert_eq!(status(json!({ "slab": { "thickness": "140 mm" } }), CheckId::AnchorTensionBreakout), Status::Holds);
}

#[test]
fn an_anchor_on_the_edge_is_not_covered() {
    let edge = |left: &str| status(json!({ "slab": { "left": left } }), CheckId::AnchorTensionBreakout);
    assert_eq!(edge("0 mm"), Status::NotCovered);
    assert_eq!(edge("10 mm"), Status::NotCovered);
    assert_ne!(edge("-10 mm"), Status::NotCovered);
}

#[test]
fn an_edge_at_1_5_h_ef_is_far() {
    let far = |left: &str| !has(json!({ "slab": { "left": left } }), "tension-breakout/c_a_min");
    assert!(far("-180 mm") && !far("-179.9 mm"));
    // 1.5 times 4 in. in a file of millimetres.
    let changes = |left: &str| json!({ "rule": "aci-318-19", "embedment_mm": 101.6, "slab": { "left": left } });
    assert!(
        !has(changes("-6 in"), "tension-breakout/c_a_min") && has(changes("-5.999 in"), "tension-breakout/c_a_min")
    );
}

#[test]
fn the_third_edge_reduces_the_embedment_only_below_1_5_h_ef() {
    let reduced = |front: &str| {
        has(json!({ "slab": { "left": "-100 mm", "right": "100 mm", "front": front } }), "tension-breakout/h_ef_full")
    };
    assert!(!reduced("-180 mm") && reduced("-179.9 mm"));
    assert!(
        !has(json!({ "slab": { "left": "-100 mm", "right": "100 mm" } }), "tension-breakout/h_ef_full"),
        "two edges"
    );
    // Never above the real embedment: a single anchor whose third edge is at 1.5 h_ef all but a hair keeps all but a hair.
    let slab = json!({ "left": "-100 mm", "right": "100 mm", "front": "-179.9 mm" });
    assert!(at(json!({ "slab": slab }), "tension-breakout/h_ef") <= 120.0);
}

#[test]
fn two_anchors_3_h_ef_apart_break_out_alone() {
    let is_group = |apart: f64| has(json!({ "anchors": [bolt(0.0, 0.0), bolt(apart, 0.0)] }), "tension-breakout/N_cbg");
    assert!(is_group(359.9) && !is_group(360.0));
    let diagonal =
        |across: f64| has(json!({ "anchors": [bolt(0.0, 0.0), bolt(300.0, across)] }), "tension-breakout/N_cbg");
    assert!(diagonal(359.9) && !diagonal(360.0), "squares overlap only where both distances are below 3 h_ef");
}

#[test]
fn side_face_blowout_begins_below_0_4_h_ef() {
    let near = |left: &str| has(json!({ "slab": { "left": left } }), "tension-blowout/N_sb");
    assert!(!near("-48 mm") && near("-47.9 mm"));
}

#[test]
fn a_corner_counts_below_3_c_a1_and_never_as_less_than_one_half() {
    let corner = |front: &str| answers(json!({ "slab": { "left": "-40 mm", "front": front } }));
    assert!(!corner("-120 mm").contains_key("group-1/tension-blowout/k_corner"));
    assert!(same(corner("-119.6 mm")["group-1/tension-blowout/k_corner"].value, 0.9975));
    assert_eq!(corner("-40 mm")["group-1/tension-blowout/k_corner"].value, 0.5);
    assert_eq!(corner("-30 mm")["group-1/tension-blowout/k_corner"].value, 0.5);
}

#[test]
fn anchors_6_c_a1_apart_blow_out_alone() {
    let row = |apart: f64| {
        has(
            json!({ "anchors": [bolt(0.0, 0.0), bolt(0.0, apart)], "slab": { "left": "-40 mm" } }),
            "tension-blowout/N_sbg",
        )
    };
    assert!(row(239.9) && !row(240.0));
}

#[test]
fn anchors_that_are_not_quite_at_one_distance_blow_out_one_face() {
    let row = |off: f64| json!({ "anchors": [bolt(0.0, 0.0), bolt(off, 100.0)], "slab": { "left": "-40 mm" } });
    let together = at(row(0.0), "tension-blowout/N_sbg");
    assert_eq!(at(row(3.0), "tension-blowout/N_sbg"), together, "with the smaller distance");
    assert!(!has(row(8.0), "tension-blowout/N_sbg"), "the second is 48 mm from the edge, 0.4 h_ef");
}

#[test]
fn interaction_begins_above_one_fifth() {
    let u = |r_n: f64, r_v: f64| {
        let mut input = base();
        input["ratios"] = json!([r_n, r_v]);
        steadfoot_tests::run_anchors::run(&input).unwrap()["interaction/u"].value
    };
    assert!(same(u(0.2, 0.9), 0.9) && same(u(0.9, 0.2), 0.9));
    assert!(same(u(0.21, 0.9), 1.11 / 1.2) && same(u(0.9, 0.21), 1.11 / 1.2));
    assert!(same(u(0.1, 0.15), 0.15), "both are small");
    assert!(u(0.2, 1.01) > 1.0 && u(1.01, 0.0) > 1.0, "neither may be above 1 alone");
}

#[test]
fn spacing_is_6_diameters_tightened_and_4_otherwise() {
    let apart = |mm: f64, tightened: bool| {
        status(json!({ "anchors": [bolt(0.0, 0.0), bolt(mm, 0.0)], "tightened": tightened }), CheckId::AnchorSpacing)
    };
    assert_eq!(apart(96.0, true), Status::Holds);
    assert_eq!(apart(95.9, true), Status::Fails);
    assert_eq!(apart(64.0, false), Status::Holds);
    assert_eq!(apart(63.9, false), Status::Fails);
    let inches = |spacing: &str| {
        let anchors = json!([{ "at": ["0.1 in", 0] }, { "at": [spacing, 0] }]);
        status(json!({ "rule": "aci-318-19", "bolt": "5/8 in", "anchors": anchors }), CheckId::AnchorSpacing)
    };
    assert_eq!(inches("3.85 in"), Status::Holds, "six diameters of 5/8 in. from 0.1 in.");
    assert_eq!(inches("3.849 in"), Status::Fails);
    assert_eq!(status(json!({}), CheckId::AnchorSpacing), Status::NotNeeded);
}

#[test]
fn edge_distance_is_6_diameters_and_cover_on_the_head() {
    let edge = |changes: Json| status(changes, CheckId::AnchorEdge);
    assert_eq!(edge(json!({ "slab": { "left": "-96 mm" } })), Status::Holds);
    assert_eq!(edge(json!({ "slab": { "left": "-95.9 mm" } })), Status::Fails);
    let plate = |left: &str| {
        // A plate that bears with 10 000 mm2 is as wide as a round head of 114 mm: 57 + 50 mm of cover.
        edge(json!({ "head": "given", "bearing_area_mm2": 10_000.0, "cover_mm": 50.0, "slab": { "left": left } }))
    };
    assert_eq!(plate("-106.9 mm"), Status::Fails);
    assert_eq!(plate("-107 mm"), Status::Holds);
    assert_eq!(edge(json!({})), Status::NotNeeded);
}

#[test]
fn categories_c_to_f_need_an_amplified_demand_and_reduce_concrete() {
    let found = |category: &str, level: Amplification| {
        let case = case(json!({ "seismic_category": category }));
        let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
        let mut findings: Vec<Finding> = Vec::new();
        (case.rule.prepare)(&site).check(&case.forces, level, &mut Sheet::quiet(), &mut findings);
        findings
    };
    let uncovered =
        |findings: &[Finding]| findings.iter().filter(|f| matches!(f.outcome, Outcome::NotCovered(_))).count();
    assert_eq!(uncovered(&found("C-F", Amplification::Plain)), 12, "all strengths of anchors");
    assert_eq!(uncovered(&found("C-F", Amplification::Amplified)), 0);
    assert_eq!(uncovered(&found("A-B", Amplification::Plain)), 0);
    for check in ["tension-breakout", "tension-pullout"] {
        let n_d = |category: &str| at(json!({ "seismic_category": category }), &format!("{check}/N_d"));
        assert!(same(n_d("C-F"), 0.75 * n_d("A-B")), "{check}");
    }
    for (check, symbol) in [("tension-steel", "N_d"), ("shear-steel", "V_d"), ("shear-pryout", "V_d")] {
        let strength = |category: &str| at(json!({ "seismic_category": category }), &format!("{check}/{symbol}"));
        assert_eq!(strength("C-F"), strength("A-B"), "{check}");
    }
    let uncracked = |category: &str| {
        at(json!({ "seismic_category": category, "slab": { "cracking": "uncracked" } }), "tension-breakout/psi_c_N")
    };
    assert_eq!(uncracked("A-B"), 1.25);
    assert_eq!(uncracked("C-F"), 1.0);
}

#[test]
fn an_anchor_in_a_gap_has_no_steel_strength() {
    for check in
        [CheckId::Anchorage, CheckId::AnchorTensionSteel, CheckId::AnchorShearSteel, CheckId::AnchorInteraction]
    {
        assert_eq!(status(json!({ "seat": "stand-off" }), check), Status::NotCovered, "{check:?}");
    }
    assert_eq!(status(json!({ "seat": "stand-off" }), CheckId::AnchorTensionBreakout), Status::Holds);
    assert!(case(json!({})).quiet().iter().all(|finding| finding.check != CheckId::Anchorage));
}

#[test]
fn faults_of_fields_together_name_the_field() {
    let rule = anchor_rule("aci-318-19-si").unwrap();
    let faults = |changes: Json| {
        let mut input = base();
        for (key, value) in changes.as_object().unwrap() {
            input[key] = value.clone();
        }
        let mut found = Vec::new();
        (rule.faults)(&field_values(rule.fields, &input).unwrap(), &mut found);
        found.iter().map(|&(place, problem, _)| (rule.fields[place].key, problem)).collect::<Vec<_>>()
    };
    assert_eq!(faults(json!({})), []);
    assert_eq!(faults(json!({ "bolt": "1/2 in", "head": "heavy-hex" })), []);
    assert_eq!(faults(json!({ "bolt": "7/16 in", "head": "heavy-hex" })), [("head", Problem::NotInRule)]);
    assert_eq!(faults(json!({ "bolt": "M20", "head": "heavy-hex" })), [("head", Problem::NotInRule)]);
    assert_eq!(faults(json!({ "bolt": "stud 16 mm", "head": "heavy-hex" })), [("head", Problem::NotInRule)]);
    assert_eq!(faults(json!({ "head": "given" })), [("bearing_area_mm2", Problem::Missing)]);
    assert_eq!(
        faults(json!({ "steel": "given" })),
        [("tensile_mpa", Problem::Missing), ("yield_mpa", Problem::Missing)]
    );
    assert_eq!(
        faults(json!({ "steel": "given", "yield_mpa": 500.0, "tensile_mpa": 499.0 })),
        [("yield_mpa", Problem::AboveLimit)]
    );
    assert_eq!(faults(json!({ "steel": "given", "yield_mpa": 500.0, "tensile_mpa": 500.0 })), []);
    let own = |area_mm2: f64| {
        faults(json!({ "bolt": "given", "diameter_mm": 20.0, "stress_area_mm2": area_mm2, "head": "given",
            "bearing_area_mm2": 400.0 }))
    };
    assert_eq!(own(314.0), []);
    assert_eq!(own(315.0), [("stress_area_mm2", Problem::AboveLimit)]);
    assert_eq!(
        faults(json!({ "bolt": "given" })),
        [("diameter_mm", Problem::Missing), ("stress_area_mm2", Problem::Missing), ("head", Problem::NotInRule)]
    );
}
