//! The limits of EN 1992-4 that concrete, edges and distances set, from both sides: at a limit the clause's own side is taken.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Status};
use steadfoot_tests::en_anchor::{at, bolt, bonded, has, status};

#[test]
fn cones_feel_edges_below_c_cr_and_are_less_deep_near_three() {
    let edge = |mm: f64| json!({ "slab": { "left": format!("{} mm", -mm) } });
    assert!(has(edge(179.9), "tension-breakout/c"));
    assert!(!has(edge(180.0), "tension-breakout/c"));
    let given = |mm: f64| json!({ "c_cr_n_mm": mm, "slab": { "left": "-180 mm" } });
    assert!(has(given(180.1), "tension-breakout/c"));
    assert!(!has(given(180.0), "tension-breakout/c"));
    let three = |mm: f64| json!({ "slab": { "left": "-100 mm", "right": "150 mm", "front": format!("{} mm", -mm) } });
    assert!((at(three(179.9), "tension-breakout/h_ef") - 179.9 / 1.5).abs() < 1e-9);
    assert_eq!(at(three(180.0), "tension-breakout/h_ef"), 120.0);
    assert!(!has(three(180.0), "tension-breakout/h_ef_full"));
    assert!((at(three(120.0), "tension-breakout/h_ef") - 100.0).abs() < 1e-9, "by the largest of the near edges");
}

#[test]
fn groups_end_at_the_characteristic_spacing() {
    let pair = |mm: f64| json!({ "anchors": [bolt(0.0, 0.0), bolt(mm, 0.0)] });
    assert!(!has(pair(359.9), "group-2/tension-breakout/N_Rk_c"));
    assert!(has(pair(360.0), "group-2/tension-breakout/N_Rk_c"));
    // s_cr,Np = 7.3 x 16 x sqrt(10) = 369.359 mm, but at most 3 h_ef.
    let bond = |mm: f64, deep: f64| bonded(json!({ "embedment_mm": deep, "anchors": [bolt(0.0, 0.0), bolt(mm, 0.0)] }));
    assert!(!has(bond(369.3, 130.0), "group-2/tension-bond/N_Rk_p"));
    assert!(has(bond(369.4, 130.0), "group-2/tension-bond/N_Rk_p"));
    assert!(has(bond(360.0, 120.0), "group-2/tension-bond/N_Rk_p"));
}

#[test]
fn close_bars_spoil_up_to_100_mm_of_depth() {
    let psi = |mm: f64| at(json!({ "reinforcement": "dense", "embedment_mm": mm }), "tension-breakout/psi_re_N");
    assert!(psi(99.0) < 1.0 && psi(100.0) == 1.0 && psi(101.0) == 1.0);
}

#[test]
fn compression_helps_up_to_one_and_a_half_depths_and_away_from_edges() {
    let psi = |mm: f64, edge: f64| {
        let slab = json!({ "left": format!("{} mm", -edge) });
        at(json!({ "compression_arm_mm": mm, "slab": slab }), "tension-breakout/psi_M_N")
    };
    assert!(psi(179.0, 500.0) > 1.0);
    assert_eq!(psi(180.0, 500.0), 1.0);
    assert_eq!([psi(90.0, 180.0), psi(90.0, 179.9)], [1.5, 1.0]);
}

#[test]
fn headed_fasteners_blow_out_within_half_their_depth() {
    let edge = |mm: f64| json!({ "slab": { "left": format!("{} mm", -mm) } });
    assert!(has(edge(60.0), "tension-blowout/N_Rk_cb"));
    assert!(!has(edge(60.1), "tension-blowout/N_Rk_cb"));
    assert!(!has(bonded(edge(60.0)), "tension-blowout/N_Rk_cb"));
    let corner = |mm: f64| json!({ "slab": { "left": "-50 mm", "front": format!("{} mm", -mm) } });
    assert!(has(corner(99.9), "group-1/tension-blowout/c_2"));
    assert!(!has(corner(100.0), "group-1/tension-blowout/c_2"));
    let pair = |mm: f64| json!({ "slab": { "left": "-50 mm" }, "anchors": [bolt(0.0, 0.0), bolt(0.0, mm)] });
    assert!(!has(pair(199.9), "group-2/tension-blowout/N_Rk_cb"));
    assert!(has(pair(200.0), "group-2/tension-blowout/N_Rk_cb"));
    let uneven = json!({ "slab": { "left": "-50 mm" }, "anchors": [bolt(0.0, 0.0), bolt(3.0, 100.0)] });
    assert!(has(uneven, "group-3/tension-blowout/N_Rk_cb"), "with 3 mm more to the edge they still burst one face");
}

#[test]
fn edges_count_by_their_corner_thickness_and_length() {
    let right = |slab: Json| {
        let mut all = json!({ "right": "100 mm" });
        for (key, value) in slab.as_object().unwrap() {
            all[key] = value.clone();
        }
        json!({ "slab": all })
    };
    let corner = |mm: f64| right(json!({ "front": format!("{} mm", -mm) }));
    assert!(has(corner(149.9), "group-1/shear-breakout/c_2") && !has(corner(150.0), "group-1/shear-breakout/c_2"));
    let thick = |mm: f64| right(json!({ "thickness": format!("{mm} mm") }));
    assert!(at(thick(149.9), "shear-breakout/psi_h_V") > 1.0);
    assert_eq!(at(thick(150.0), "shear-breakout/psi_h_V"), 1.0);
    let narrow = |mm: f64, h: f64| {
        right(json!({ "front": "-100 mm", "rear": format!("{mm} mm"), "thickness": format!("{h} mm") }))
    };
    assert!(has(narrow(149.9, 149.9), "group-1/shear-breakout/c_1_full"));
    assert!(!has(narrow(150.0, 149.9), "group-1/shear-breakout/c_1_full"));
    assert!(!has(narrow(149.9, 150.0), "group-1/shear-breakout/c_1_full"));
    let length = |bolt: &str, mm: f64| {
        at(
            json!({ "bolt": bolt, "embedment_mm": mm, "slab": { "right": "100 mm", "thickness": "900 mm" } }),
            "shear-breakout/l_f",
        )
    };
    assert_eq!([length("M24", 288.0), length("M24", 289.0)], [288.0, 288.0]);
    assert_eq!([length("M27", 300.0), length("M27", 301.0)], [300.0, 300.0]);
    let given = json!({ "l_f_mm": 60, "slab": { "right": "100 mm" } });
    assert_eq!(at(given, "shear-breakout/l_f"), 60.0);
}

#[test]
fn edges_are_far_beyond_10_depths_and_60_diameters() {
    let check = CheckId::AnchorShearBreakout;
    let far = |mm: f64, deep: f64, count: usize| {
        let anchors: Vec<Json> = (0..count).map(|place| bolt(0.0, 100.0 * place as f64)).collect();
        json!({ "embedment_mm": deep, "anchors": anchors, "slab": { "right": format!("{mm} mm") } })
    };
    assert_eq!(status(far(1200.0, 120.0, 4), check), Status::Holds);
    assert_eq!(status(far(1200.1, 120.0, 4), check), Status::NotNeeded);
    assert_eq!(status(far(1200.1, 120.0, 5), check), Status::Holds);
    assert_eq!(status(far(960.0, 60.0, 1), check), Status::Holds);
    assert_eq!(status(far(960.1, 60.0, 1), check), Status::NotNeeded);
}

#[test]
fn with_clearance_only_the_front_row_takes_shear_towards_a_near_edge() {
    let rows = |mm: f64, holes: &str| {
        json!({ "holes": holes, "slab": { "right": format!("{mm} mm") },
            "anchors": [bolt(0.0, 0.0), bolt(-600.0, 0.0), bolt(-600.0, 100.0), bolt(0.0, 100.0), bolt(-300.0, 50.0)] })
    };
    assert_eq!(at(rows(1199.9, "clearance"), "group-1/shear-breakout/V_perp"), 5000.0);
    assert_eq!(at(rows(1200.0, "clearance"), "group-1/shear-breakout/V_perp"), 2000.0);
    assert_eq!(at(rows(1199.9, "filled"), "group-1/shear-breakout/V_perp"), 2000.0);
    assert!(has(rows(1199.9, "clearance"), "group-1/shear-breakout/n_all"), "more than four is said");
}

#[test]
fn pry_out_doubles_from_60_mm() {
    let k_8 = |mm: f64| at(json!({ "embedment_mm": mm }), "shear-pryout/k_8");
    assert_eq!([k_8(59.9), k_8(60.0)], [1.0, 2.0]);
}

#[test]
fn splitting_is_released_by_distance_and_thickness_or_by_bars_in_cracked_concrete() {
    let check = CheckId::AnchorTensionSplitting;
    let far = |mm: f64, h: f64, anchors: Vec<Json>| {
        json!({ "splitting": "check", "c_cr_sp_mm": 200, "anchors": anchors,
            "slab": { "left": format!("{} mm", -mm), "thickness": format!("{h} mm") } })
    };
    let one = || vec![bolt(0.0, 0.0)];
    let two = || vec![bolt(0.0, 0.0), bolt(100.0, 0.0)];
    assert_eq!(
        [status(far(199.9, 160.0, one()), check), status(far(200.0, 160.0, one()), check)],
        [Status::Holds, Status::NotNeeded]
    );
    assert_eq!(
        [status(far(239.9, 160.0, two()), check), status(far(240.0, 160.0, two()), check)],
        [Status::Holds, Status::NotNeeded]
    );
    assert_eq!(status(far(200.0, 159.9, one()), check), Status::Holds);
    assert_eq!(status(json!({}), check), Status::NotNeeded);
    assert_eq!(status(json!({ "slab": { "cracking": "uncracked", "left": "-200 mm" } }), check), Status::NotCovered);
    assert_eq!(status(json!({ "splitting": "check", "slab": { "left": "-200 mm" } }), check), Status::NotCovered);
}
