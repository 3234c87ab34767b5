//! Every limit of EN 1992-4 from both sides: at a limit the clause's own side is taken.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Outcome, Sheet, Status, Subject};
use steadfoot::input::Problem;
use steadfoot::rules::anchor::{Amplification, AnchorSite, Finding};
use steadfoot::rules::en_1992_4 as en;
use steadfoot_tests::en_anchor::{at, base, bolt, bonded, case, has, sides, status};
use steadfoot_tests::values::field_values;

const COVERED_SECOND: [Status; 2] = [Status::NotCovered, Status::Holds];

#[test]
fn the_rule_reaches_concrete_classes_12_to_90_and_counts_60_at_most() {
    let check = CheckId::AnchorTensionBreakout;
    let of = |strength: &str| json!({ "slab": { "strength": strength } });
    assert_eq!(sides(check, [of("11.9 MPa"), of("12 MPa")]), COVERED_SECOND);
    assert_eq!(sides(check, [of("90.1 MPa"), of("90 MPa")]), COVERED_SECOND);
    let n_0 = |strength: &str| at(of(strength), "tension-breakout/N0_Rk_c");
    assert!(n_0("59.9 MPa") < n_0("60 MPa"));
    assert_eq!(n_0("60 MPa"), n_0("60.1 MPa"));
}

#[test]
fn fasteners_are_neither_thin_nor_shallow_nor_through_the_slab() {
    let check = CheckId::AnchorTensionSteel;
    let thin = |mm: f64| json!({ "bolt": "given", "diameter_mm": mm, "stress_area_mm2": 20, "head": "given", "bearing_area_mm2": 500 });
    assert_eq!(sides(check, [thin(5.9), thin(6.0)]), COVERED_SECOND);
    let outside = |mm: f64| json!({ "d_nom_mm": mm });
    assert_eq!(sides(check, [outside(60.1), outside(60.0)]), COVERED_SECOND);
    let deep = |mm: f64| json!({ "embedment_mm": mm });
    assert_eq!(sides(check, [deep(39.9), deep(40.0)]), COVERED_SECOND);
    assert_eq!(sides(check, [deep(300.0), deep(299.9)]), COVERED_SECOND);
    let bond = |mm: f64| bonded(json!({ "embedment_mm": mm, "slab": { "thickness": "600 mm" } }));
    assert_eq!(sides(check, [bond(320.1), bond(320.0)]), COVERED_SECOND);
}

#[test]
fn holes_wider_than_table_6_1_leave_the_shear_uncovered() {
    for check in [CheckId::AnchorShearSteel, CheckId::AnchorShearPryout, CheckId::AnchorShearBreakout] {
        let hole = |mm: f64| json!({ "holes": "clearance", "hole_mm": mm, "slab": { "left": "-500 mm" } });
        assert_eq!(status(hole(18.1), check), Status::NotCovered);
        assert_ne!(status(hole(18.0), check), Status::NotCovered);
        assert_ne!(status(json!({ "holes": "filled", "hole_mm": 25 }), check), Status::NotCovered);
    }
    let thick = |bolt: &str| json!({ "bolt": bolt, "holes": "clearance" });
    assert_eq!(sides(CheckId::AnchorShearSteel, [thick("M33"), thick("M30")]), COVERED_SECOND);
    let largest = |bolt: &str| at(thick(bolt), "shear-steel/d_f_max");
    let printed = [
        ("M8", 9.0),
        ("M10", 12.0),
        ("M12", 14.0),
        ("M14", 16.0),
        ("M16", 18.0),
        ("M18", 20.0),
        ("M20", 22.0),
        ("M22", 24.0),
        ("M24", 26.0),
        ("M27", 30.0),
        ("M30", 33.0),
    ];
    for (bolt, hole) in printed {
        assert_eq!(largest(bolt), hole, "{bolt}");
    }
    let odd = json!({ "bolt": "given", "diameter_mm": 13, "stress_area_mm2": 90, "head": "given", "bearing_area_mm2": 300, "holes": "clearance" });
    assert_eq!(at(odd, "shear-steel/d_f_max"), 14.0, "a size between rows has the hole of the thinner one");
}

#[test]
fn steel_factors_change_at_500_800_and_1000_mpa() {
    let steel = |f_u: f64, f_y: f64| json!({ "steel": "given", "tensile_mpa": f_u, "yield_mpa": f_y, "elongation_percent": 12 });
    assert_eq!(at(steel(500.0, 300.0), "shear-steel/k_6"), 0.6);
    assert_eq!(at(steel(500.1, 300.0), "shear-steel/k_6"), 0.5);
    assert_eq!(sides(CheckId::AnchorShearSteel, [steel(1000.1, 800.0), steel(1000.0, 800.0)]), COVERED_SECOND);
    let gamma = |f_u: f64, f_y: f64| at(steel(f_u, f_y), "shear-steel/gamma_Ms");
    assert_eq!(gamma(800.0, 640.0), 1.25);
    assert_eq!(gamma(800.1, 640.0), 1.5);
    assert_eq!(gamma(800.0, 640.1), 1.5);
    assert_eq!(gamma(800.0, 500.0), 1.6);
    let pull = |f_u: f64, f_y: f64| at(steel(f_u, f_y), "tension-steel/gamma_Ms");
    assert_eq!(pull(700.0, 601.0), 1.4);
    assert!(pull(700.0, 599.0) > 1.4);
}

#[test]
fn ductility_counts_in_groups_from_above_8_percent() {
    let steel = |percent: f64, count: usize| {
        let anchors: Vec<Json> = (0..count).map(|place| bolt(1000.0 * place as f64, 0.0)).collect();
        json!({ "steel": "given", "tensile_mpa": 600, "yield_mpa": 400, "elongation_percent": percent, "anchors": anchors })
    };
    let k_7 = |percent, count| at(steel(percent, count), "shear-steel/k_7");
    assert_eq!([k_7(8.0, 2), k_7(8.1, 2), k_7(8.0, 1)], [0.8, 1.0, 1.0]);
}

#[test]
fn shallow_bolts_in_weak_concrete_lose_a_fifth() {
    let k = |mm: f64, strength: &str| {
        at(json!({ "embedment_mm": mm, "slab": { "strength": strength } }), "shear-steel/k_sh")
    };
    assert_eq!([k(79.9, "19.9 MPa"), k(80.0, "19.9 MPa"), k(79.9, "20 MPa")], [0.8, 1.0, 1.0]);
}

#[test]
fn mortar_counts_as_concrete_up_to_half_a_diameter_and_has_a_rule_up_to_40_mm() {
    let check = CheckId::AnchorShearSteel;
    let mortar = |mm: f64| json!({ "seat": "mortar", "grout_mm": mm, "anchors": [bolt(0.0, 0.0), bolt(161.0, 0.0)] });
    assert!(!has(mortar(8.0), "shear-steel/t_grout"));
    assert!(has(mortar(8.1), "shear-steel/t_grout"));
    assert_eq!(sides(check, [mortar(40.1), mortar(40.0)]), COVERED_SECOND);
    let with = |changes: Json| {
        let mut all = mortar(20.0);
        for (key, value) in changes.as_object().unwrap() {
            all[key] = value.clone();
        }
        all
    };
    let spaced = |mm: f64| with(json!({ "anchors": [bolt(0.0, 0.0), bolt(mm, 0.0)] }));
    assert_eq!(sides(check, [spaced(160.0), spaced(160.1)]), COVERED_SECOND);
    assert_eq!(sides(check, [with(json!({ "anchors": [bolt(0.0, 0.0)] })), mortar(20.0)]), COVERED_SECOND);
    let deep = |mm: f64| with(json!({ "embedment_mm": mm }));
    assert_eq!(sides(check, [deep(80.0), deep(80.1)]), COVERED_SECOND);
    let strong = |strength: &str| with(json!({ "slab": { "strength": strength } }));
    assert_eq!(sides(check, [strong("19.9 MPa"), strong("20 MPa")]), COVERED_SECOND);
    let thin = |mm: f64| with(json!({ "bolt": "M8", "embedment_mm": 70, "grout_mm": mm }));
    assert_eq!(sides(check, [thin(40.1), thin(40.0)]), COVERED_SECOND);
    let quake = json!({ "performance_category": "C2" });
    assert_eq!(status(with(quake.clone()), check), Status::NotCovered, "annex C stops at half a diameter of mortar");
    let mut within = with(quake);
    within["grout_mm"] = 8.into();
    assert_eq!(status(within, check), Status::Holds);
}

#[test]
fn rods_in_a_gap_bend_and_are_not_covered_under_earthquakes() {
    let gap = json!({ "seat": "stand-off", "lever_mm": 100 });
    assert_eq!(status(gap.clone(), CheckId::AnchorShearSteel), Status::Holds);
    assert_eq!(status(gap.clone(), CheckId::AnchorInteractionSteel), Status::NotNeeded);
    let mut quake = gap.clone();
    quake["performance_category"] = "C1".into();
    assert_eq!(status(quake, CheckId::AnchorShearSteel), Status::NotCovered);
    let mut carried = gap;
    carried["rods_carry_weight"] = true.into();
    assert_eq!(status(carried, CheckId::Anchorage), Status::NotCovered);
}

#[test]
fn distances_of_the_assessment_are_kept_or_not() {
    let slab = |key: &str, mm: f64| json!({ "slab": { key: format!("{mm} mm") } });
    assert_eq!(sides(CheckId::AnchorEdge, [slab("left", -49.9), slab("left", -50.0)]), [Status::Fails, Status::Holds]);
    let pair = |mm: f64| json!({ "anchors": [bolt(0.0, 0.0), bolt(mm, 0.0)] });
    assert_eq!(sides(CheckId::AnchorSpacing, [pair(79.9), pair(80.0)]), [Status::Fails, Status::Holds]);
    let thick = [slab("thickness", 159.9), slab("thickness", 160.0)];
    assert_eq!(sides(CheckId::AnchorThickness, thick), [Status::Fails, Status::Holds]);
    assert_eq!(status(json!({ "h_min_mm": null }), CheckId::AnchorThickness), Status::NotCovered);
    assert_eq!(
        status(json!({ "c_min_mm": null, "slab": { "left": "-200 mm" } }), CheckId::AnchorEdge),
        Status::NotCovered
    );
    let apart = json!({ "s_min_mm": null, "anchors": [bolt(0.0, 0.0), bolt(500.0, 0.0)] });
    assert_eq!(status(apart, CheckId::AnchorSpacing), Status::NotCovered);
}

#[test]
fn an_assessment_that_lacks_a_value_leaves_its_check_uncovered() {
    let quake = json!({ "performance_category": "C2" });
    for (field, check, quaking) in [
        ("gamma_inst", CheckId::AnchorTensionBreakout, false),
        ("tau_rk_cr_mpa", CheckId::AnchorTensionBond, false),
        ("tau_rk_ucr_mpa", CheckId::AnchorTensionBond, false),
        ("tau_rk_eq_mpa", CheckId::AnchorTensionBond, true),
        ("n_rk_s_eq_n", CheckId::AnchorTensionSteel, true),
        ("v_rk_s_eq_n", CheckId::AnchorShearSteel, true),
        ("tau_rk_cr_mpa", CheckId::AnchorShearPryout, false),
    ] {
        let with = |value: Json| {
            let mut all = bonded(if quaking { quake.clone() } else { json!({}) });
            if value.is_null() {
                all[field] = value;
            }
            all
        };
        assert_eq!(sides(check, [with(Json::Null), with(json!(0))]), COVERED_SECOND, "{field}");
        let lacking = case(with(Json::Null)).quiet();
        let paired =
            if check.id().contains("steel") { CheckId::AnchorInteractionSteel } else { CheckId::AnchorInteraction };
        let of_pair = lacking.iter().find(|finding| finding.check == paired).unwrap();
        assert_eq!(of_pair.outcome.status(), Status::NotCovered, "{field} is missing and the pair says nothing of it");
    }
    for (field, check) in [
        ("n_rk_s_n", CheckId::AnchorTensionSteel),
        ("n_rk_p_cr_n", CheckId::AnchorTensionPullout),
        ("v_0_rk_s_n", CheckId::AnchorShearSteel),
    ] {
        let mut all = json!({ "fastener": "expansion", "gamma_inst": 1.0, "n_rk_s_n": 60000, "n_rk_p_cr_n": 20000, "v_0_rk_s_n": 30000 });
        assert_eq!(status(all.clone(), check), Status::Holds);
        all[field] = Json::Null;
        assert_eq!(status(all, check), Status::NotCovered, "{field}");
    }
    let uncracked = json!({ "cracking": "uncracked" });
    let whole = |ucr: Json| json!({ "fastener": "expansion", "gamma_inst": 1.0, "n_rk_p_cr_n": 20000, "n_rk_p_ucr_n": ucr, "slab": uncracked });
    assert_eq!(sides(CheckId::AnchorTensionPullout, [whole(Json::Null), whole(json!(30000))]), COVERED_SECOND);
    let bond = |cr: Json, slab: Json| bonded(json!({ "tau_rk_cr_mpa": cr, "slab": slab }));
    let check = CheckId::AnchorTensionBond;
    assert_eq!(sides(check, [bond(Json::Null, json!({})), bond(Json::Null, uncracked.clone())]), COVERED_SECOND);
}

#[test]
fn earthquakes_need_a_qualified_fastener_and_elastic_forces() {
    let check = CheckId::AnchorTensionBreakout;
    let quake = |category: &str, qualified: &str| {
        bonded(json!({ "performance_category": category, "qualification": qualified }))
    };
    assert_eq!(sides(check, [quake("C2", "C1"), quake("C2", "C2")]), COVERED_SECOND);
    assert_eq!(sides(check, [quake("C1", "none"), quake("C1", "C1")]), COVERED_SECOND);
    for design in ["capacity", "ductile"] {
        let changes = json!({ "performance_category": "C2", "seismic_design": design });
        assert_eq!(status(changes, check), Status::NotCovered);
    }
    let plain = case(json!({ "performance_category": "C2" }));
    let site = AnchorSite { values: &plain.values, anchors: &plain.anchors, own: plain.own, slab: &plain.slab };
    let mut findings: Vec<Finding> = Vec::new();
    (plain.rule.prepare)(&site).check(&plain.forces, Amplification::Plain, &mut Sheet::quiet(), &mut findings);
    assert!(findings.iter().all(|finding| matches!(finding.outcome, Outcome::NotCovered(_))));
    assert_eq!((en::RULE.amplification)(&plain.values), Amplification::Amplified);
    assert_eq!((en::RULE.amplification)(&case(json!({})).values), Amplification::Plain);
}

#[test]
fn undercut_anchors_count_like_headed_ones_only_with_their_k_1() {
    let undercut = |k_1: Json| {
        json!({ "fastener": "undercut", "performance_category": "C2", "qualification": "C2", "gamma_inst": 1.0,
            "k_cr_n": k_1, "n_rk_s_eq_n": 60000, "n_rk_p_eq_n": 20000, "v_rk_s_eq_n": 20000 })
    };
    let alpha = |k_1: Json| at(undercut(k_1), "tension-breakout/alpha_eq");
    assert_eq!([alpha(Json::Null), alpha(json!(8.8)), alpha(json!(8.9))], [0.85, 0.85, 1.0]);
}

#[test]
fn fields_that_contradict_each_other_are_faults() {
    let faults = |changes: Json| {
        let mut input = base();
        for (key, value) in changes.as_object().unwrap() {
            input[key] = value.clone();
        }
        let mut found = Vec::new();
        (en::RULE.faults)(&field_values(en::FIELDS, &input).unwrap(), &mut found);
        found.into_iter().map(|(place, problem, _)| (en::FIELDS[place].key, problem)).collect::<Vec<_>>()
    };
    assert_eq!(faults(json!({})), []);
    assert_eq!(faults(json!({ "seat": "mortar" })), [("grout_mm", Problem::Missing)]);
    assert_eq!(faults(json!({ "seat": "stand-off" })), [("lever_mm", Problem::Missing)]);
    assert_eq!(faults(json!({ "hole_mm": 15.9 })), [("hole_mm", Problem::BelowLimit)]);
    assert_eq!(faults(json!({ "hole_mm": 16 })), []);
    assert_eq!(faults(json!({ "head": "given" })), [("bearing_area_mm2", Problem::Missing)]);
    assert_eq!(
        faults(json!({ "head": "round", "head_thickness_mm": 5, "head_diameter_mm": 16 })),
        [("head_diameter_mm", Problem::BelowLimit)]
    );
    assert_eq!(
        faults(json!({ "steel": "given", "tensile_mpa": 500, "yield_mpa": 500.1 })),
        [("yield_mpa", Problem::AboveLimit)]
    );
    assert_eq!(
        faults(json!({ "bolt": "given", "diameter_mm": 10, "stress_area_mm2": 78.6 })),
        [("stress_area_mm2", Problem::AboveLimit), ("head", Problem::NotInRule)]
    );
}

#[test]
fn shears_that_nearly_cancel_are_no_worse_than_the_worst_fastener_alone() {
    let pried = |other: &str| {
        let pair = json!([
            { "at": [0, 0], "shear": ["3 kN", "4 kN"] },
            { "at": [90, 120], "shear": ["-3 kN", other] },
        ]);
        at(json!({ "anchors": pair }), "shear-pryout/utilisation")
    };
    // A resultant of nothing has no line of action; one of next to nothing acts far beside the group.
    let (none, little) = (pried("-4 kN"), pried("-3.999 kN"));
    assert!((little / none - 1.0).abs() < 1e-3, "{none} and {little}");
}

#[test]
fn what_is_found_of_one_fastener_is_found_of_our_own() {
    // The neighbour's bolt is pulled harder, and sheared against ours.
    let neighbour = json!({ "at": [0, 150], "tension": "9 kN", "shear": ["-9 kN", "0 kN"] });
    let case = case(json!({ "anchors": [bolt(0.0, 0.0), neighbour], "own": 1 }));
    for finding in case.quiet() {
        assert!(!matches!(finding.subject, Subject::Anchor(place) if place > 0), "{finding:?}");
    }
}
