//! Every limit of NBC 4.1.8.18 in the editions of 2015 and 2020, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::calc::Sheet;
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{faults, near, of, read, strength, with};
use steadfoot_tests::demand_world::{nbc_2015, nbc_2020};
use steadfoot_tests::run_demand::run;

fn editions() -> [Json; 2] {
    [nbc_2015(json!({})), nbc_2020(json!({}))]
}

#[test]
fn s_p_lies_between_seven_tenths_and_four() {
    for edition in editions() {
        let at = |r_p: f64, height: f64, component: &str| {
            let input = json!({"component": component, "component_response": r_p, "attachment_height_m": height});
            of(&with(edition.clone(), input), "S_p")
        };
        near(at(1.42, 0.0, "rigid-ductile"), 1.0 / 1.42);
        near(at(1.43, 0.0, "rigid-ductile"), 0.7);
        near(at(1.88, 10.0, "equipment-flexible"), 7.5 / 1.88);
        near(at(1.87, 10.0, "equipment-flexible"), 4.0);
    }
}

#[test]
fn height_factor_runs_from_one_to_three() {
    for edition in editions() {
        let at = |height: f64| of(&with(edition.clone(), json!({"attachment_height_m": height})), "A_x");
        assert_eq!((at(-3.0), at(0.0), at(5.0), at(10.0)), (1.0, 1.0, 2.0, 3.0));
        let above = with(edition.clone(), json!({"attachment_height_m": 10.01}));
        assert_eq!(faults(&above), [("attachment_height_m", Problem::AboveLimit)]);
    }
}

#[test]
fn anchors_lower_the_response_factor_and_never_raise_it() {
    for edition in editions() {
        let at = |component: &str, anchors: &str| {
            of(&with(edition.clone(), json!({"component": component, "anchor_type": anchors})), "R_pa")
        };
        let of_row = |component: &str| ["deep", "shallow", "nonductile"].map(|anchors| at(component, anchors));
        assert_eq!(of_row("equipment-flexible"), [2.5, 1.5, 1.0]);
        assert_eq!(of_row("equipment-rigid"), [1.25, 1.25, 1.0]);
        assert_eq!(of_row("rigid-nonductile"), [1.0, 1.0, 1.0]);
    }
}

#[test]
fn a_demand_for_ductile_anchors_is_for_no_others() {
    for edition in editions() {
        let asks = |anchors: &str| {
            let (rule, values) = read(&with(edition.clone(), json!({"anchor_type": anchors})));
            (rule.demand)(&values, 1.0, &mut Sheet::quiet()).expect("it is covered").anchors.not_ductile.is_some()
        };
        assert_eq!(["deep", "shallow", "nonductile"].map(asks), [true, true, false]);
    }
}

#[test]
fn components_are_released_under_thirty_five_hundredths_unless_post_disaster() {
    let is_released = |s_a: f64, category: &str| {
        let input = nbc_2015(json!({"s_a_02": s_a, "importance_category": category}));
        run(&input).unwrap().contains_key("exempt")
    };
    assert!(is_released(0.349, "normal") && !is_released(0.35, "normal"));
    assert!(is_released(0.43, "low") && !is_released(0.44, "low"));
    assert!(is_released(0.26, "high") && !is_released(0.27, "high"));
    assert!(!is_released(0.1, "post-disaster"));
}

#[test]
fn seismic_categories_one_and_two_need_both_periods() {
    let is_released = |s_02: f64, s_10: Json| {
        run(&without_null(nbc_2020(json!({"s_02": s_02, "s_10": s_10})))).unwrap().contains_key("exempt")
    };
    assert!(is_released(0.349, json!(0.199)));
    assert!(!is_released(0.35, json!(0.199)) && !is_released(0.349, json!(0.2)));
    assert!(!is_released(0.1, Json::Null), "without S(1.0) it cannot be said");
    let post_disaster = nbc_2020(json!({"s_02": 0.1, "s_10": 0.05, "importance_category": "post-disaster"}));
    assert!(!run(&post_disaster).unwrap().contains_key("exempt"));
}

fn without_null(mut input: Json) -> Json {
    input.as_object_mut().unwrap().retain(|_, value| !value.is_null());
    input
}

#[test]
fn site_coefficient_is_read_between_its_columns_and_level_beyond_them() {
    let at = |class: &str, pga: f64| {
        of(&nbc_2015(json!({"site_coefficient": null, "site_class": class, "pga_ref": pga})), "F_a")
    };
    near(at("E", 0.05), 1.64);
    near(at("E", 0.15), 1.44);
    near(at("E", 0.5), 0.85);
    near(at("E", 0.6), 0.85);
    near(at("D", 0.35), 0.97);
    near(at("C", 0.35), 1.0);
}

#[test]
fn class_f_is_covered_only_with_a_site_coefficient() {
    let class_f = nbc_2015(json!({"site_coefficient": null, "site_class": "F", "pga_ref": 0.2}));
    assert_eq!(faults(&class_f), []);
    let reason = run(&without_null(class_f)).unwrap_err();
    assert!(reason.contains("site class F"), "{reason}");
}

#[test]
fn site_class_and_site_coefficient_exclude_each_other_and_one_is_needed() {
    assert_eq!(faults(&nbc_2015(json!({"site_coefficient": null}))), [("site_class", Problem::NeedsOneOf)]);
    assert_eq!(faults(&nbc_2015(json!({"site_class": "D"}))), [("site_coefficient", Problem::Excludes)]);
    let no_pga = nbc_2015(json!({"site_coefficient": null, "site_class": "D"}));
    assert_eq!(faults(&no_pga), [("pga_ref", Problem::Missing)]);
    assert_eq!(strength(&nbc_2015(json!({}))), "s_a_02");
    assert_eq!(strength(&nbc_2020(json!({}))), "s_02");
    for edition in editions() {
        assert_eq!(faults(&with(edition, json!({"component": "given"}))).len(), 3);
    }
}
