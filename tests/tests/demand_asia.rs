//! Every limit of the rules of Japan, China, Taiwan, the Philippines and Indonesia, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::calc::Sheet;
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{
    china, faults, indonesia, japan, near, of, philippines, read, strength, taiwan, with,
};
use steadfoot_tests::run_demand::run;

fn at_ratio(input: Json, ratio: f64, symbol: &str) -> f64 {
    of(&with(input, json!({"attachment_height_m": 10.0 * ratio})), symbol)
}

fn depth(input: &Json) -> Option<f64> {
    let (rule, values) = read(input);
    (rule.demand)(&values, 1.0, &mut Sheet::quiet()).unwrap().anchors.depth.map(|(depth, _)| depth)
}

#[test]
fn upper_storeys_of_japan_are_one_to_four_by_the_storeys_of_the_building() {
    for (storeys, upper) in [(2, 1), (6, 1), (7, 2), (9, 2), (10, 3), (12, 3), (13, 4), (60, 4)] {
        let at = |storey: i32| of(&japan(json!({"storeys": storeys, "storey": storey})), "K_S");
        assert_eq!(at(storeys + 1), 1.5, "roof");
        assert_eq!(at(storeys - upper + 1), 1.5, "{storeys} storeys");
        if storeys - upper > 1 {
            assert_eq!(at(storeys - upper), 1.0, "{storeys} storeys");
        }
        assert_eq!(at(1), 0.6);
        assert_eq!(at(-2), 0.6);
    }
    assert_eq!(of(&japan(json!({"storeys": 1})), "K_S"), 0.6, "the only storey is the ground floor");
    assert_eq!(of(&japan(json!({"storeys": 1, "storey": 2})), "K_S"), 1.5, "its roof is not");
}

#[test]
fn coefficients_of_japan_never_fall_with_the_storey_the_class_or_the_region() {
    let at = |class: &str, storey: i32, region: &str| {
        of(&japan(json!({"storeys": 12, "storey": storey, "seismic_class": class, "region_factor": region})), "K_H")
    };
    for storey in 1..13 {
        for class in ["S", "A", "B"] {
            assert!(at(class, storey + if storey < 13 { 1 } else { 0 }, "1.0") >= at(class, storey, "1.0"));
        }
        assert!(at("S", storey, "1.0") > at("A", storey, "1.0") && at("A", storey, "1.0") > at("B", storey, "1.0"));
        near(at("S", storey, "0.7"), 0.7 * at("S", storey, "1.0"));
    }
}

#[test]
fn japan_refuses_a_storey_that_is_none_above_the_roof_or_missing_and_a_class_too_low() {
    assert_eq!(faults(&japan(json!({"storey": 0}))), [("storey", Problem::NotInRule)]);
    assert_eq!(faults(&japan(json!({"storey": 2.5}))), [("storey", Problem::NotInRule)]);
    assert_eq!(faults(&japan(json!({"storeys": 6.5}))), [("storeys", Problem::NotInRule)]);
    assert_eq!(faults(&japan(json!({"storey": 7}))), []);
    assert_eq!(faults(&japan(json!({"storey": 8}))), [("storey", Problem::AboveLimit)]);
    assert_eq!(faults(&japan(json!({"storey": null}))), [("storey", Problem::Missing)]);
    let isolated = |class: &str| faults(&japan(json!({"component": "isolated", "seismic_class": class})));
    assert_eq!(isolated("B"), [("seismic_class", Problem::NotInRule)]);
    assert_eq!(isolated("A"), []);
    let given = japan(json!({"seismic_class": null, "storeys": null, "storey": null, "standard_coefficient": 0.8}));
    assert_eq!(faults(&given), []);
    near(of(&given, "K_H"), 0.8);
    near(of(&given, "K_V"), 0.4);
    assert_eq!((strength(&given), strength(&japan(json!({})))), ("standard_coefficient", "region_factor"));
}

#[test]
fn china_rises_with_intensity_and_with_height_from_one_to_two() {
    let mut before = 0.0;
    for (intensity, alpha) in [("6", 0.04), ("7", 0.08), ("7-0.15g", 0.12), ("8", 0.16), ("8-0.30g", 0.24), ("9", 0.32)]
    {
        let input = china(json!({"intensity": intensity}));
        near(of(&input, "c_p"), 0.6 * 2.0 * alpha);
        assert!(of(&input, "c_p") > before);
        before = of(&input, "c_p");
    }
    near(at_ratio(china(json!({})), -0.5, "zeta_2"), 1.0);
    near(at_ratio(china(json!({})), 0.0, "zeta_2"), 1.0);
    near(at_ratio(china(json!({})), 0.01, "zeta_2"), 1.01);
    near(at_ratio(china(json!({})), 1.0, "zeta_2"), 2.0);
    near(of(&china(json!({"state_factor": 1.0})), "c_p"), 0.6 * 0.16);
    near(of(&china(json!({"importance_factor": 1.4, "class_factor": 1.2})), "c_p"), 1.4 * 1.2 * 2.0 * 0.16);
    let new = run(&china(json!({}))).unwrap();
    let old = run(&china(json!({"load_factors": "gb-50011"}))).unwrap();
    near(new["1.0/horizontal"].value, 1.4 * new["c_p"].value);
    near(old["1.2/horizontal"].value, 1.3 * old["c_p"].value);
    assert_eq!(faults(&china(json!({"intensity": null}))), [("intensity", Problem::NeedsOneOf)]);
    assert_eq!(faults(&china(json!({"influence_coefficient": 0.1}))), [("influence_coefficient", Problem::Excludes)]);
    let given = [("importance_factor", Problem::Missing), ("class_factor", Problem::Missing)];
    assert_eq!(faults(&china(json!({"component": "given"}))), given);
    assert_eq!(strength(&china(json!({}))), "intensity");
    assert_eq!(strength(&china(json!({"intensity": null, "influence_coefficient": 0.1}))), "influence_coefficient");
}

#[test]
fn taiwan_stays_between_its_limits_and_lowers_the_response_by_region_and_anchor() {
    // R_pa = 2: 0.2 x (1 + 2 r) reaches 0.3 at r = 0.25.
    near(at_ratio(taiwan(json!({})), 0.24, "c_p"), 0.3 * 0.8);
    assert!(at_ratio(taiwan(json!({})), 0.26, "c_p") > 0.3 * 0.8);
    let brittle = taiwan(json!({"component_amplification": 2.5, "component_response": 1.0}));
    // 1.0 x (1 + 2 r) reaches 1.6 at r = 0.3.
    near(at_ratio(brittle.clone(), 0.31, "c_p"), 1.6 * 0.8);
    assert!(at_ratio(brittle, 0.29, "c_p") < 1.6 * 0.8);
    near(of(&taiwan(json!({})), "R_pa"), 2.0);
    near(of(&taiwan(json!({"region": "taipei-basin"})), "R_pa"), 1.75);
    near(of(&taiwan(json!({"anchor_type": "shallow"})), "R_aa"), 1.0 + 0.5 / 1.5);
    near(of(&taiwan(json!({"anchor_type": "nonductile"})), "R_aa"), 1.0);
    near(of(&taiwan(json!({"allowable_response": 1.2})), "R_aa"), 1.2);
    let given = |changes: Json| of(&with(taiwan(json!({"allowable_response": 1.3})), changes), "R_aa");
    near(given(json!({"anchor_type": "shallow"})), 1.3);
    near(given(json!({"anchor_type": "shallow", "region": "taipei-basin"})), 1.25);
    near(given(json!({"anchor_type": "shallow", "allowable_response": 2.0})), 1.0 + 0.5 / 1.5);
    near(given(json!({"anchor_type": "nonductile"})), 1.0);
    near(of(&taiwan(json!({})), "c_v"), 0.5 * of(&taiwan(json!({})), "c_p"));
    near(of(&taiwan(json!({"region": "near-fault"})), "c_v"), 2.0 / 3.0 * of(&taiwan(json!({})), "c_p"));
    assert_eq!((depth(&taiwan(json!({}))), depth(&taiwan(json!({"anchor_type": "shallow"})))), (Some(8.0), None));
}

#[test]
fn the_philippines_have_zones_2_and_4_whose_coefficients_rise_and_stop_at_soil_f() {
    for (soil, zone_2, zone_4) in
        [("SA", 0.16, 0.32), ("SB", 0.20, 0.40), ("SC", 0.24, 0.40), ("SD", 0.28, 0.44), ("SE", 0.34, 0.44)]
    {
        near(of(&philippines(json!({"zone": "2", "soil_profile": soil})), "C_a"), zone_2);
        near(of(&philippines(json!({"soil_profile": soil})), "C_a"), zone_4);
    }
    assert!(run(&philippines(json!({"soil_profile": "SF"}))).unwrap_err().contains("S_F"));
    let at =
        |source: &str, km: f64| of(&philippines(json!({"seismic_source": source, "source_distance_km": km})), "N_a");
    for (km, of_a, of_b) in [(0.0, 1.5, 1.3), (2.0, 1.5, 1.3), (3.5, 1.35, 1.15), (5.0, 1.2, 1.0), (10.0, 1.0, 1.0)] {
        near(at("A", km), of_a);
        near(at("B", km), of_b);
    }
    assert!(at("A", 2.01) < 1.5 && at("A", 4.99) > 1.2 && at("A", 5.01) < 1.2 && at("A", 9.99) > 1.0);
    assert_eq!(faults(&philippines(json!({"seismic_source": null}))), [("seismic_source", Problem::Missing)]);
    assert_eq!(faults(&philippines(json!({"seismic_source": "A"}))), [("source_distance_km", Problem::Missing)]);
    assert_eq!(faults(&philippines(json!({"zone": null}))), [("zone", Problem::NeedsOneOf)]);
    assert_eq!(faults(&philippines(json!({"seismic_coefficient": 0.4}))), [("seismic_coefficient", Problem::Excludes)]);
}

#[test]
fn the_philippine_force_stays_between_its_limits_and_anchors_lower_the_response() {
    // 1 / 3 x (1 + 3 r) reaches 0.7 at r = 0.3667.
    near(at_ratio(philippines(json!({})), 0.36, "c_p"), 0.7 * 0.44);
    assert!(at_ratio(philippines(json!({})), 0.37, "c_p") > 0.7 * 0.44);
    // 2.5 x (1 + 3 r) reaches 4 at r = 0.2 with a response of 1.
    let flexible = philippines(json!({"component": "equipment-flexible", "component_response": 1.0}));
    assert!(at_ratio(flexible.clone(), 0.19, "c_p") < 4.0 * 0.44);
    near(at_ratio(flexible, 0.21, "c_p"), 4.0 * 0.44);
    near(of(&philippines(json!({"equation": "simple"})), "c_p"), 4.0 * 0.44);
    near(of(&philippines(json!({"anchor_type": "shallow"})), "R_pa"), 1.5);
    near(of(&philippines(json!({"anchor_type": "nonductile"})), "R_pa"), 1.0);
    assert_eq!(depth(&philippines(json!({}))), Some(8.0));
    assert_eq!(depth(&philippines(json!({"anchor_type": "shallow"}))), None);
    assert_eq!(depth(&philippines(json!({"equation": "simple"}))), None);
}

#[test]
fn indonesia_needs_a_site_class_with_s_s_and_stops_at_class_sf() {
    let site = |s_s: f64, class: &str| indonesia(json!({"s_ds": null, "s_s": s_s, "site_class": class}));
    let expected = [(0.25, 2.4), (0.5, 1.7), (0.75, 1.3), (1.0, 1.1), (1.25, 0.9), (1.5, 0.8), (3.0, 0.8)];
    for (s_s, f_a) in expected {
        near(of(&site(s_s, "SE"), "F_a"), f_a);
    }
    assert!(run(&site(1.0, "SF")).unwrap_err().contains("SF"));
    assert_eq!(faults(&indonesia(json!({"s_ds": null, "s_s": 1.0}))), [("site_class", Problem::Missing)]);
    near(at_ratio(indonesia(json!({})), 0.39, "c_p"), 0.3);
    assert!(at_ratio(indonesia(json!({})), 0.41, "c_p") > 0.3);
    let other = indonesia(json!({"component": "given", "component_amplification": 2.5, "component_response": 1.5}));
    assert!(at_ratio(other.clone(), 0.69, "c_p") < 1.6);
    near(at_ratio(other, 0.71, "c_p"), 1.6);
}

#[test]
fn heights_of_all_five_end_at_the_roof() {
    for (rule, symbol) in [
        (china(json!({})), "r_z"),
        (taiwan(json!({})), "r_h"),
        (philippines(json!({})), "r_h"),
        (indonesia(json!({})), "r_z"),
    ] {
        assert_eq!(at_ratio(rule.clone(), -1.0, symbol), 0.0);
        assert_eq!(at_ratio(rule.clone(), 0.0, symbol), 0.0);
        near(at_ratio(rule.clone(), 0.001, symbol), 0.001);
        assert_eq!(at_ratio(rule.clone(), 1.0, symbol), 1.0);
        let above = with(rule.clone(), json!({"attachment_height_m": 10.01}));
        assert_eq!(faults(&above), [("attachment_height_m", Problem::AboveLimit)]);
        let no_roof = with(rule.clone(), json!({"attachment_height_m": 0.01, "roof_height_m": null}));
        assert_eq!(faults(&no_roof), [("roof_height_m", Problem::Missing)]);
        assert_eq!(faults(&with(rule, json!({"roof_height_m": null}))), []);
    }
}
