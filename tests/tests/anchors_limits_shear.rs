//! Every limit of the anchor rule in shear from both sides: edges, rows, pryout, grout.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Status};
use steadfoot_tests::one_anchor::*;

#[test]
fn anchors_3_c_a1_apart_along_an_edge_are_two_bodies() {
    let row = |apart: f64| {
        has(
            json!({ "anchors": [bolt(0.0, 0.0), bolt(0.0, apart)], "slab": { "right": "100 mm" } }),
            "shear-breakout/V_cbg",
        )
    };
    assert!(row(299.9) && !row(300.0));
}

#[test]
fn the_bearing_length_is_at_most_8_diameters() {
    let l_e =
        |embedment: f64| at(json!({ "embedment_mm": embedment, "slab": { "right": "100 mm" } }), "shear-breakout/l_e");
    assert_eq!(l_e(127.0), 127.0);
    assert_eq!(l_e(128.0), 128.0);
    assert_eq!(l_e(129.0), 128.0);
}

#[test]
fn the_coefficient_of_welded_anchors_asks_for_plate_spacing_and_corner() {
    let k_v = |changes: Json| {
        let mut all =
            json!({ "bolt": "stud 22 mm", "steel": "stud-sd1", "plate_mm": 15.0, "slab": { "right": "150 mm" } });
        for (key, value) in changes.as_object().unwrap() {
            all[key] = value.clone();
        }
        at(all, "shear-breakout/k_v")
    };
    assert_eq!(k_v(json!({})), 0.66);
    assert_eq!(k_v(json!({ "plate_mm": 11.0 })), 0.66);
    assert_eq!(k_v(json!({ "plate_mm": 10.9 })), 0.6);
    assert_eq!(k_v(json!({ "plate_mm": null })), 0.6);
    assert_eq!(k_v(json!({ "bolt": "stud 16 mm", "plate_mm": 10.0 })), 0.66);
    assert_eq!(k_v(json!({ "bolt": "stud 16 mm", "plate_mm": 9.9 })), 0.6);
    assert_eq!(k_v(json!({ "bolt": "M20", "steel": "iso-8.8" })), 0.6);
    assert_eq!(k_v(json!({ "anchors": [bolt(0.0, 0.0), bolt(0.0, 65.0)] })), 0.66);
    assert_eq!(k_v(json!({ "anchors": [bolt(0.0, 0.0), bolt(0.0, 64.9)] })), 0.6);
    let corner = |front: &str, bars: &str| {
        k_v(json!({ "slab": { "right": "150 mm", "front": front }, "supplementary_shear": bars }))
    };
    assert_eq!(corner("-180 mm", "absent"), 0.6);
    assert_eq!(corner("-180.1 mm", "absent"), 0.66);
    assert_eq!(corner("-180 mm", "present"), 0.66);
}

#[test]
fn rows_closer_than_c_a1_are_carried_by_the_front_row() {
    let rows = |behind: f64| {
        let anchors = json!([bolt(0.0, 0.0), bolt(-behind, 0.0)]);
        answers(json!({ "anchors": anchors, "slab": { "right": "100 mm" } }))
    };
    let close = rows(99.9);
    assert_eq!(close["group-1/shear-breakout/V_ua"].value, 2000.0, "case 3");
    assert!(!close.contains_key("group-2/shear-breakout/V_ua"));
    let apart = rows(100.0);
    assert_eq!(apart["group-1/shear-breakout/V_ua"].value, 1000.0, "case 1");
    assert_eq!(apart["group-2/shear-breakout/V_ua"].value, 2000.0, "case 2");
    assert_eq!(apart["group-2/shear-breakout/c_a1"].value, 200.0);
}

#[test]
fn studs_on_one_plate_are_held_by_the_rear_row() {
    let rows = |behind: f64| {
        let anchors = json!([bolt(0.0, 0.0), bolt(-behind, 0.0)]);
        answers(json!({ "bolt": "stud 19 mm", "steel": "stud-sd1", "anchors": anchors, "slab": { "right": "100 mm" } }))
    };
    let close = rows(99.9);
    assert_eq!(close["group-1/shear-breakout/c_a1"].value, 199.9, "case 2");
    assert_eq!(close["group-1/shear-breakout/V_ua"].value, 2000.0);
    assert_eq!(rows(100.0)["group-1/shear-breakout/c_a1"].value, 100.0, "too far apart for one plate: both rows");
}

#[test]
fn a_narrow_and_thin_slab_reduces_c_a1_only_if_all_three_are_below_1_5_c_a1() {
    let reduced = |front: &str, rear: &str, thickness: &str| {
        let slab = json!({ "right": "200 mm", "front": front, "rear": rear, "thickness": thickness });
        has(json!({ "slab": slab }), "group-1/shear-breakout/c_a1_full")
    };
    assert!(reduced("-299.9 mm", "299.9 mm", "299.9 mm"));
    assert!(!reduced("-300 mm", "299.9 mm", "299.9 mm"));
    assert!(!reduced("-299.9 mm", "300 mm", "299.9 mm"));
    assert!(!reduced("-299.9 mm", "299.9 mm", "300 mm"));
}

#[test]
fn thickness_and_corner_count_below_1_5_c_a1() {
    let thin = |thickness: &str| {
        at(json!({ "slab": { "right": "150 mm", "thickness": thickness } }), "shear-breakout/psi_h_V")
    };
    assert_eq!(thin("225 mm"), 1.0);
    assert!(thin("224.9 mm") > 1.0);
    let corner =
        |front: &str| has(json!({ "slab": { "right": "150 mm", "front": front } }), "group-1/shear-breakout/c_a2");
    assert!(!corner("-225 mm") && corner("-224.9 mm"));
}

#[test]
fn pryout_doubles_from_65_mm_on() {
    let k_cp =
        |rule: &str, embedment: Json| at(json!({ "rule": rule, "embedment_mm": embedment }), "shear-pryout/k_cp");
    assert_eq!(k_cp("aci-318-19-si", json!(64.9)), 1.0);
    assert_eq!(k_cp("aci-318-19-si", json!(65.0)), 2.0);
    assert_eq!(k_cp("aci-318-19", json!("2.49 in")), 1.0);
    assert_eq!(k_cp("aci-318-19", json!(2.5 * 25.4)), 2.0);
}

#[test]
fn a_grout_pad_takes_a_fifth_of_the_shear_strength() {
    let v_d = |seat: &str| at(json!({ "seat": seat }), "shear-steel/V_d");
    assert!(same(v_d("grout"), 0.8 * v_d("concrete")));
}

#[test]
fn shears_that_nearly_cancel_are_no_worse_than_the_worst_anchor_alone() {
    let pried = |rule: &str, other: &str| {
        let pair = json!([
            { "at": [0, 0], "shear": ["3 kN", "4 kN"] },
            { "at": [90, 120], "shear": ["-3 kN", other] },
        ]);
        at(json!({ "rule": rule, "anchors": pair }), "shear-pryout/utilisation")
    };
    for rule in ["aci-318-19-si", "aci-318-19"] {
        // A resultant of nothing has no line of action; one of next to nothing acts far beside the group.
        let (none, little) = (pried(rule, "-4 kN"), pried(rule, "-3.999 kN"));
        assert!((little / none - 1.0).abs() < 1e-3, "{rule}: {none} and {little}");
    }
}

#[test]
fn rods_under_welded_washers_bend_in_the_plate_whose_thickness_they_need() {
    let made = |plate: Json, washer: Json, seat: &str| {
        let changes = json!({ "holes": "oversize-washers", "plate_mm": plate, "washer_mm": washer, "seat": seat });
        status(changes, CheckId::AnchorInteractionSteel)
    };
    assert_eq!(made(json!(20), json!(10), "grout"), Status::Holds);
    assert_eq!(made(json!(null), json!(10), "grout"), Status::NotCovered);
    assert_eq!(made(json!(20), json!(null), "grout"), Status::NotCovered);
    assert_eq!(made(json!(20), json!(10), "stand-off"), Status::NotCovered);
    assert!(!has(json!({ "plate_mm": 20, "washer_mm": 10 }), "interaction-steel/u"), "other holes ask for no bending");
    let used = |plate: f64| {
        at(json!({ "holes": "oversize-washers", "plate_mm": plate, "washer_mm": 10 }), "interaction-steel/utilisation")
    };
    assert!(used(30.0) > used(20.0));
}
