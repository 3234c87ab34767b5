//! Limits that several demand rules share: heights, snubbers, rows and what replaces them.

use serde_json::json;
use steadfoot::calc::show::field_value;
use steadfoot::calc::{Kind, System};
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{asce_7_16, asce_7_16_site, asce_7_22, faults, near, of, strength, ubc, with};
use steadfoot_tests::run_demand::run;

#[test]
fn height_ratio_is_zero_at_or_below_the_base_and_one_at_the_roof() {
    for rule in [asce_7_16(json!({})), asce_7_22(json!({})), ubc(json!({}))] {
        let symbol = if rule["rule"] == "ubc-1997" { "r_h" } else { "r_z" };
        let at = |height: f64| of(&with(rule.clone(), json!({"attachment_height_m": height})), symbol);
        assert_eq!(at(-4.0), 0.0);
        assert_eq!(at(0.0), 0.0);
        near(at(0.001), 0.0001);
        near(at(9.99), 0.999);
        assert_eq!(at(10.0), 1.0);
        let above = with(rule.clone(), json!({"attachment_height_m": 10.01}));
        assert_eq!(faults(&above), [("attachment_height_m", Problem::AboveLimit)]);
        let no_roof = with(rule.clone(), json!({"attachment_height_m": 0.01, "roof_height_m": null}));
        assert_eq!(faults(&no_roof), [("roof_height_m", Problem::Missing)]);
        assert_eq!(faults(&with(rule, json!({"attachment_height_m": 0.0, "roof_height_m": null}))), []);
    }
}

#[test]
fn mapped_and_design_acceleration_exclude_each_other_and_one_is_needed() {
    assert_eq!(faults(&asce_7_16(json!({"s_ds": null}))), [("s_s", Problem::NeedsOneOf)]);
    assert_eq!(faults(&asce_7_16(json!({"s_s": 1.0}))), [("s_ds", Problem::Excludes)]);
    assert_eq!(strength(&asce_7_16(json!({}))), "s_ds");
    assert_eq!(strength(&asce_7_16_site(1.0, "C")), "s_s");
    assert_eq!(strength(&asce_7_22(json!({}))), "s_ds");
}

#[test]
fn snubbers_double_the_force_over_a_quarter_of_an_inch() {
    let quarter_mm = field_value(0.25, Kind::Length, System::Us);
    for rule in [asce_7_16(json!({"component": "isolated-springs"})), asce_7_22(json!({"component": "isolated"}))] {
        let at = |gap_mm: f64, symbol: &str| of(&with(rule.clone(), json!({"isolator_gap_mm": gap_mm})), symbol);
        let single = at(0.0, "c_p");
        assert_eq!(single, at(0.0, "c_l"));
        assert_eq!(at(quarter_mm, "c_p"), single);
        assert_eq!(at(6.35, "c_p"), single);
        assert_eq!(at(6.36, "c_p"), 2.0 * single);
        assert_eq!(faults(&rule), [("isolator_gap_mm", Problem::Missing)]);
    }
    assert_eq!(faults(&asce_7_16(json!({"isolator_gap_mm": 3}))), [("isolator_gap_mm", Problem::Excludes)]);
    assert_eq!(faults(&asce_7_22(json!({"isolator_gap_mm": 3}))), [("isolator_gap_mm", Problem::Excludes)]);
}

#[test]
fn values_given_stand_in_place_of_the_row_and_are_needed_without_one() {
    let given = asce_7_16(json!({"component": "given"}));
    let missing = [
        ("component_amplification", Problem::Missing),
        ("component_response", Problem::Missing),
        ("component_overstrength", Problem::Missing),
    ];
    assert_eq!(faults(&given), missing);
    let lower =
        asce_7_16(json!({"component_amplification": 1.0, "component_overstrength": 1.5, "attachment_height_m": 10.0}));
    assert_eq!((of(&lower, "a_p"), of(&lower, "R_p"), of(&lower, "Omega_0")), (1.0, 6.0, 1.5));
    near(of(&lower, "c_1"), 0.4 / 6.0 * 3.0);
    assert_eq!(faults(&asce_7_22(json!({"component": "given"}))).len(), 3);
    assert_eq!(faults(&ubc(json!({"component": "given"}))).len(), 2);
}

#[test]
fn overstrength_multiplies_the_horizontal_force_after_the_limits_and_never_the_vertical_one() {
    for rule in [asce_7_16(json!({})), asce_7_22(json!({"attachment_height_m": 8.0}))] {
        let answers = run(&rule).unwrap();
        let at = |address: &str| answers[address].value;
        near(at("c_m"), 2.0 * at("c_p"));
        near(at("LRFD 7m/horizontal"), 2.0 * at("LRFD 7/horizontal"));
        assert_eq!(at("LRFD 7m/vertical"), at("LRFD 7/vertical"));
        near(at("LRFD 6/down") / 10_000.0, 1.2 + 0.2);
        near(at("LRFD 7/down") / 10_000.0, 0.9 - 0.2);
    }
}
