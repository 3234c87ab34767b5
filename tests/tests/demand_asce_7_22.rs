//! Every limit of ASCE 7-22 chapter 13, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{asce_7_22, faults, near, of};

#[test]
fn asce_7_22_lower_limit_governs_at_grade_and_not_above() {
    near(of(&asce_7_22(json!({})), "c_1"), 0.4 / 1.5);
    near(of(&asce_7_22(json!({})), "c_p"), 0.3);
    // 0.4 (1 + 2.5 r) / 1.3 / 1.5 reaches 0.3 at r = 0.185.
    near(of(&asce_7_22(json!({"attachment_height_m": 1.8})), "c_p"), 0.3);
    near(of(&asce_7_22(json!({"attachment_height_m": 1.9})), "c_p"), 0.4 * 1.475 / 1.3 / 1.5);
    assert!(of(&asce_7_22(json!({"attachment_height_m": 1.9})), "c_p") > 0.3);
}

#[test]
fn asce_7_22_upper_limit_governs_a_brittle_flexible_component_near_the_roof() {
    // 0.4 (1 + 2.5 r) / 1.3 x 2.8 / 1.5 reaches 1.6 at r = 0.7143.
    let at = |height: f64| of(&asce_7_22(json!({"component": "flexible-low", "attachment_height_m": height})), "c_p");
    near(at(7.1), 0.4 * 2.775 / 1.3 * 2.8 / 1.5);
    near(at(7.2), 1.6);
    assert!(at(7.1) < 1.6);
}

#[test]
fn asce_7_22_has_other_factors_at_grade_than_above() {
    for (component, at_grade, above) in [
        ("flexible-limited", 1.8, 2.2),
        ("flexible-low", 2.2, 2.8),
        ("sheet-metal-cabinet", 1.4, 1.4),
        ("communication", 1.0, 1.0),
    ] {
        let low = asce_7_22(json!({"component": component}));
        let basement = asce_7_22(json!({"component": component, "attachment_height_m": -4.0}));
        let high = asce_7_22(json!({"component": component, "attachment_height_m": 0.01}));
        assert_eq!((of(&low, "C_AR"), of(&low, "R_mu"), of(&low, "H_f")), (at_grade, 1.0, 1.0));
        assert_eq!(of(&basement, "C_AR"), at_grade);
        assert_eq!((of(&high, "C_AR"), of(&high, "R_mu")), (above, 1.3));
        near(of(&high, "H_f"), 1.0025);
    }
}

#[test]
fn amplification_with_height_turns_at_a_period_of_0_4_s() {
    let at = |period: f64, symbol: &str| {
        of(&asce_7_22(json!({"attachment_height_m": 10.0, "period": "given", "building_period_s": period})), symbol)
    };
    assert_eq!((at(0.39, "a_1"), at(0.39, "a_2")), (2.5, 0.0));
    near(at(0.4, "a_1"), 2.5);
    near(at(0.41, "a_1"), 1.0 / 0.41);
    near(at(0.41, "a_2"), 1.0 - (0.4 / 0.41f64).powi(2));
    near(at(0.39, "H_f"), 3.5);
    near(at(2.0, "H_f"), 1.0 + 0.5 + 0.96);
}

#[test]
fn an_unknown_period_is_never_on_the_unsafe_side() {
    for height in [0.5, 2.0, 5.0, 8.0, 9.5, 10.0] {
        let unknown = of(&asce_7_22(json!({"attachment_height_m": height})), "H_f");
        for step in 0..400 {
            let period = 0.05 + 0.01 * step as f64;
            let known = json!({"attachment_height_m": height, "period": "given", "building_period_s": period});
            assert!(of(&asce_7_22(known), "H_f") <= unknown * (1.0 + 1e-12), "{period} s at {height} m");
        }
    }
}

#[test]
fn reduction_by_the_building_is_never_below_1_3() {
    let at = |r: f64| {
        let building = json!({"attachment_height_m": 5.0, "building_system": "given", "building_response": r, "building_overstrength": 2.5,
            "building_importance": 1.0});
        of(&asce_7_22(building), "R_mu")
    };
    let turn = 1.3 * 1.3 * 2.5 / 1.1;
    assert_eq!(at(turn - 0.01), 1.3);
    assert!(at(turn + 0.01) > 1.3);
    near(at(6.0), (1.1f64 * 6.0 / 2.5).sqrt());
}

#[test]
fn a_known_building_needs_its_numbers_and_an_unknown_one_has_none() {
    let at = |changes: Json| faults(&asce_7_22(changes));
    assert_eq!(at(json!({"building_system": "steel-moment-frame"})), [("building_importance", Problem::Missing)]);
    assert_eq!(at(json!({"building_importance": 1.0})), [("building_importance", Problem::Excludes)]);
    assert_eq!(at(json!({"building_response": 8.0})), [("building_response", Problem::Excludes)]);
    assert_eq!(at(json!({"period": "given"})), [("building_period_s", Problem::Missing)]);
    assert_eq!(at(json!({"building_period_s": 1.0})), [("building_period_s", Problem::Excludes)]);
    assert_eq!(at(json!({"building_system": "given"})).len(), 3);
}
