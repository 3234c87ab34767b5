//! Every limit of ASCE 7-05, ASCE 7-10, TI 809-04 and UBC 1994, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{
    asce_7_05, asce_7_10, faults, near, of, read, strength, ti_809_04, ubc_1994, with,
};
use steadfoot_tests::run_demand::run;

fn at_ratio(input: Json, ratio: f64, symbol: &str) -> f64 {
    of(&with(input, json!({"attachment_height_m": 10.0 * ratio})), symbol)
}

#[test]
fn lower_and_upper_limit_govern_where_the_equation_leaves_them() {
    for input in [asce_7_05(json!({})), asce_7_10(json!({}))] {
        let at = |ratio: f64, symbol: &str| at_ratio(input.clone(), ratio, symbol);
        near(at(0.39, "c_p"), 0.3);
        near(at(0.4, "c_1"), 0.3);
        assert!(at(0.41, "c_p") > 0.3);
        near(at(0.41, "c_p"), at(0.41, "c_1"));
        // 0.4 x 2.5 / 1.5 x (1 + 2 r) reaches 1.6 at r = 0.7.
        let low = with(input.clone(), json!({"component": "flexible-low"}));
        near(at_ratio(low.clone(), 0.69, "c_p"), at_ratio(low.clone(), 0.69, "c_1"));
        assert!(at_ratio(low.clone(), 0.69, "c_p") < 1.6);
        near(at_ratio(low.clone(), 0.71, "c_p"), 1.6);
        assert!(at_ratio(low, 0.71, "c_1") > 1.6);
    }
    let at = |ratio: f64, symbol: &str| at_ratio(ti_809_04(json!({})), ratio, symbol);
    near(at(0.43, "c_p"), 0.3);
    near(at(0.4375, "c_1"), 0.3);
    assert!(at(0.44, "c_p") > 0.3);
}

#[test]
fn overstrength_of_7_10_is_two_and_a_half_unless_another_is_given() {
    near(of(&asce_7_10(json!({})), "c_m"), 2.5 * 0.3);
    let given = asce_7_10(json!({"component_overstrength": 2.0}));
    near(of(&given, "c_m"), 2.0 * 0.3);
    let missing = [("component_amplification", Problem::Missing), ("component_response", Problem::Missing)];
    assert_eq!(faults(&asce_7_10(json!({"component": "given"}))), missing);
}

#[test]
fn anchors_of_7_05_count_on_a_response_of_at_most_one_and_a_half_unless_qualified() {
    let roof = |changes: Json| with(asce_7_05(json!({"attachment_height_m": 10.0})), changes);
    near(of(&roof(json!({})), "R_pa"), 6.0);
    near(of(&roof(json!({})), "h_a"), 1.3 * of(&roof(json!({})), "c_p"));
    let other = roof(json!({"anchor_type": "other"}));
    near(of(&other, "R_pa"), 1.5);
    near(of(&other, "h_a"), 1.3 * 1.6);
    assert!(of(&other, "c_1a") > 1.6);
    let above = roof(json!({"anchor_type": "other", "component_response": 1.51}));
    let below = roof(json!({"anchor_type": "other", "component_response": 1.49}));
    assert_eq!((of(&above, "R_pa"), of(&below, "R_pa")), (1.5, 1.49));
    let answers = run(&other).unwrap();
    near(answers["LRFD 7a/vertical"].value, -1.3 * 0.2);
    near(answers["LRFD 5a/gravity"].value, 1.2);
}

#[test]
fn shallow_anchors_of_ti_809_04_count_on_at_most_one_and_a_half_and_deep_ones_ask_for_depth() {
    let roof = |anchors: &str| ti_809_04(json!({"attachment_height_m": 10.0, "anchor_type": anchors}));
    near(of(&roof("deep"), "R_pa"), 2.5);
    near(of(&roof("shallow"), "R_pa"), 1.5);
    near(of(&roof("shallow"), "h_a"), 1.3 * 0.4 / 1.5 * 3.0);
    let depth = |anchors: &str| {
        let (rule, values) = read(&roof(anchors));
        (rule.demand)(&values, 1.0, &mut steadfoot::calc::Sheet::quiet()).unwrap().anchors.depth.map(|(depth, _)| depth)
    };
    assert_eq!((depth("deep"), depth("shallow")), (Some(8.0), None));
}

#[test]
fn snubbers_double_the_force_on_component_and_anchors_over_a_quarter_of_an_inch() {
    let at = |gap_mm: f64, symbol: &str| {
        of(&asce_7_05(json!({"component": "isolated-springs", "isolator_gap_mm": gap_mm})), symbol)
    };
    for symbol in ["c_p", "c_pa"] {
        assert_eq!(at(6.35, symbol), at(0.0, symbol));
        assert_eq!(at(6.36, symbol), 2.0 * at(0.0, symbol));
    }
    for rule in [asce_7_05(json!({})), asce_7_10(json!({}))] {
        let isolated = with(rule.clone(), json!({"component": "isolated-internally"}));
        assert_eq!(faults(&isolated), [("isolator_gap_mm", Problem::Missing)]);
        assert_eq!(faults(&with(rule, json!({"isolator_gap_mm": 1}))), [("isolator_gap_mm", Problem::Excludes)]);
    }
}

#[test]
fn class_f_has_no_coefficient_and_soft_soil_of_the_army_ends_at_one_g() {
    let site = |rule: Json, s_s: f64, class: &str| with(rule, json!({"s_ds": null, "s_s": s_s, "site_class": class}));
    for rule in [asce_7_05(json!({})), asce_7_10(json!({})), ti_809_04(json!({"ground_motion": "A"}))] {
        assert!(run(&site(rule.clone(), 1.0, "F")).unwrap_err().contains("class F"));
        assert!(run(&site(rule.clone(), 1.0, "E")).is_ok());
        let unknown = with(rule.clone(), json!({"s_ds": null, "s_s": 0.95}));
        near(of(&unknown, "F_a"), 1.12);
        assert_eq!(faults(&with(rule.clone(), json!({"s_ds": null}))), [("s_s", Problem::NeedsOneOf)]);
        assert_eq!(faults(&with(rule.clone(), json!({"s_s": 1.0}))), [("s_ds", Problem::Excludes)]);
        assert_eq!((strength(&rule), strength(&site(rule.clone(), 1.0, "C"))), ("s_ds", "s_s"));
    }
    assert!(run(&site(ti_809_04(json!({"ground_motion": "A"})), 1.001, "E")).is_err());
    assert!(run(&site(asce_7_05(json!({})), 1.001, "E")).is_ok());
    let motion =
        |motion: &str| of(&with(site(ti_809_04(json!({})), 1.2, "B"), json!({"ground_motion": motion})), "S_DS");
    near(motion("A"), 0.8);
    near(motion("B"), 0.9);
    assert_eq!(faults(&site(ti_809_04(json!({})), 1.0, "C")), [("ground_motion", Problem::Missing)]);
}

#[test]
fn ubc_1994_takes_two_thirds_at_grade_and_doubles_what_is_not_rigid() {
    near(of(&ubc_1994(json!({})), "c_p"), 0.3 * 0.75);
    near(of(&ubc_1994(json!({"component": "nonrigid"})), "c_p"), 0.3 * 1.5);
    near(of(&ubc_1994(json!({"attachment_height_m": 0.0})), "C_p"), 0.5);
    near(of(&ubc_1994(json!({"attachment_height_m": -3.0})), "C_p"), 0.5);
    near(of(&ubc_1994(json!({"attachment_height_m": 0.01})), "C_p"), 0.75);
    near(of(&ubc_1994(json!({"component_coefficient": 1.0})), "c_p"), 0.3);
    let answers = run(&ubc_1994(json!({}))).unwrap();
    near(answers["1.4/horizontal"].value, 1.4 * 0.225);
    near(answers["1.4/gravity"].value, 1.4);
    near(answers["0.9/gravity"].value, 0.9);
    assert_eq!(answers["0.9/vertical"].value, 0.0);
}

#[test]
fn ubc_1994_rises_with_the_zone_and_needs_a_zone_or_its_factor() {
    let mut before = 0.0;
    for (zone, z) in [("1", 0.075), ("2A", 0.15), ("2B", 0.20), ("3", 0.30), ("4", 0.40)] {
        let input = ubc_1994(json!({"zone": zone}));
        near(of(&input, "Z"), z);
        assert!(of(&input, "c_p") > before);
        before = of(&input, "c_p");
        let (rule, values) = read(&input);
        let demand = (rule.demand)(&values, 1.0, &mut steadfoot::calc::Sheet::quiet()).unwrap();
        assert_eq!(demand.category_c.is_some(), zone != "1", "{zone}");
    }
    assert_eq!(faults(&ubc_1994(json!({"zone": null}))), [("zone", Problem::NeedsOneOf)]);
    assert_eq!(faults(&ubc_1994(json!({"zone_factor": 0.2}))), [("zone_factor", Problem::Excludes)]);
    assert_eq!(faults(&ubc_1994(json!({"component": "given"}))), [("component_coefficient", Problem::Missing)]);
    assert_eq!(strength(&ubc_1994(json!({}))), "zone");
    assert_eq!(strength(&ubc_1994(json!({"zone": null, "zone_factor": 0.2}))), "zone_factor");
}
