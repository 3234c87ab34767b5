//! Every limit of every demand rule, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::calc::Sheet;
use steadfoot::calc::show::field_value;
use steadfoot::calc::{Kind, System};
use steadfoot::input::{Problem, Values};
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, Strength, demand_rule};
use steadfoot_tests::run_demand::run;
use steadfoot_tests::values::field_values;

// ---- ASCE 7-16

fn asce_7_16(changes: Json) -> Json {
    with(
        json!({"rule": "asce-7-16", "weight": "10 kN", "s_ds": 1.0, "importance_factor": 1.0, "component": "sheet-metal-cabinet",
            "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

fn asce_7_16_site(s_s: f64, class: &str) -> Json {
    asce_7_16(json!({"s_ds": null, "s_s": s_s, "site_class": class}))
}

#[test]
fn asce_7_16_lower_limit_governs_sheet_metal_up_to_four_tenths_of_the_height() {
    for (component, a_p, r_p, turn) in [("sheet-metal-cabinet", 2.5, 6.0, 0.4), ("communication", 1.0, 2.5, 0.4375)] {
        let at = |ratio: f64, symbol: &str| {
            of(&asce_7_16(json!({"component": component, "attachment_height_m": 10.0 * ratio})), symbol)
        };
        near(at(turn - 0.01, "c_p"), 0.3);
        assert!(at(turn - 0.01, "c_1") < 0.3);
        near(at(turn, "c_p"), 0.3);
        near(at(turn + 0.01, "c_p"), 0.4 * a_p / r_p * (1.0 + 2.0 * (turn + 0.01)));
        assert!(at(turn + 0.01, "c_p") > 0.3);
    }
}

#[test]
fn asce_7_16_upper_limit_governs_a_brittle_flexible_component_from_seven_tenths_up() {
    let at = |ratio: f64| of(&asce_7_16(json!({"component": "flexible-low", "attachment_height_m": 10.0 * ratio})), "c_p");
    near(at(0.69), 0.4 * 2.5 / 1.5 * (1.0 + 2.0 * 0.69));
    near(at(0.71), 1.6);
    near(at(1.0), 1.6);
}

#[test]
fn asce_7_16_limits_grow_with_importance() {
    near(of(&asce_7_16(json!({"importance_factor": 1.5})), "c_p"), 0.45);
    let roof = json!({"importance_factor": 1.5, "component": "flexible-low", "attachment_height_m": 10.0});
    near(of(&asce_7_16(roof), "c_p"), 2.4);
}

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
fn asce_7_16_site_coefficients_are_the_printed_ones_at_their_columns_and_straight_between() {
    let columns = [0.25, 0.50, 0.75, 1.00, 1.25, 1.50];
    let rows: [(&str, [f64; 6]); 7] = [
        ("A", [0.8; 6]),
        ("B", [0.9; 6]),
        ("B-unmeasured", [1.0; 6]),
        ("C", [1.3, 1.3, 1.2, 1.2, 1.2, 1.2]),
        ("D", [1.6, 1.4, 1.2, 1.1, 1.0, 1.0]),
        ("D-default", [1.6, 1.4, 1.2, 1.2, 1.2, 1.2]),
        ("E", [2.4, 1.7, 1.3, 1.2, 1.2, 1.2]),
    ];
    for (class, row) in rows {
        let f_a = |s_s: f64| of(&asce_7_16_site(s_s, class), "F_a");
        for (s_s, expected) in columns.iter().zip(row) {
            near(f_a(*s_s), expected);
        }
        near(f_a(0.05), row[0]);
        near(f_a(0.249), row[0]);
        near(f_a(1.501), row[5]);
        near(f_a(4.0), row[5]);
        for place in 0..5 {
            let middle = if class == "D-default" { row[place].max(1.2) } else { row[place] };
            near(f_a((columns[place] + columns[place + 1]) / 2.0), (middle + row[place + 1]) / 2.0);
        }
    }
}

#[test]
fn unknown_soil_takes_class_d_but_never_less_than_1_2() {
    near(of(&asce_7_16_site(0.74, "D-default"), "F_a"), 1.2 + 0.2 * 0.01 / 0.25);
    near(of(&asce_7_16_site(0.76, "D-default"), "F_a"), 1.2);
    near(of(&asce_7_16_site(0.76, "D"), "F_a"), 1.2 - 0.1 * 0.01 / 0.25);
    assert_eq!(
        of(&asce_7_16(json!({"s_ds": null, "s_s": 0.9})), "F_a"),
        of(&asce_7_16_site(0.9, "D-default"), "F_a"),
        "soil that is not named is not known"
    );
}

#[test]
fn class_e_takes_the_exception_from_one_up_and_class_f_is_not_covered() {
    near(of(&asce_7_16_site(0.999_999, "E"), "F_a"), 1.2 + 0.1 * 0.000_001 / 0.25);
    assert_eq!(of(&asce_7_16_site(1.0, "E"), "F_a"), 1.2);
    // Just below 1 in floating point is 1 to the clause.
    assert_eq!(of(&asce_7_16_site(1.0 - 1e-13, "E"), "F_a"), 1.2);
    assert!(run(&asce_7_16_site(0.5, "F")).unwrap_err().contains("class F"));
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
fn doubling_comes_after_the_limits() {
    let roof = json!({"component": "isolated-springs", "attachment_height_m": 10.0, "isolator_gap_mm": 20});
    let doubled = asce_7_16(roof);
    near(of(&doubled, "c_1"), 0.4 * 2.5 / 2.0 * 3.0);
    near(of(&doubled, "c_p"), 2.0 * 1.5);
    assert!(of(&doubled, "c_p") > of(&doubled, "c_max"));
}

#[test]
fn values_given_stand_in_place_of_the_row_and_are_needed_without_one() {
    let given = asce_7_16(json!({"component": "given"}));
    let missing =
        [("component_amplification", Problem::Missing), ("component_response", Problem::Missing), ("component_overstrength", Problem::Missing)];
    assert_eq!(faults(&given), missing);
    let lower = asce_7_16(json!({"component_amplification": 1.0, "component_overstrength": 1.5, "attachment_height_m": 10.0}));
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

// ---- ASCE 7-22

fn asce_7_22(changes: Json) -> Json {
    with(
        json!({"rule": "asce-7-22", "weight": "10 kN", "s_ds": 1.0, "importance_factor": 1.0, "component": "communication",
            "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

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
    for (component, at_grade, above) in
        [("flexible-limited", 1.8, 2.2), ("flexible-low", 2.2, 2.8), ("sheet-metal-cabinet", 1.4, 1.4), ("communication", 1.0, 1.0)]
    {
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

// ---- UBC 1997

fn ubc(changes: Json) -> Json {
    with(
        json!({"rule": "ubc-1997", "weight": "10 kN", "zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1.0,
            "component": "cabinet", "anchor_type": "deep", "attachment_height_m": 0.0, "roof_height_m": 10.0}),
        changes,
    )
}

#[test]
fn ubc_1997_coefficients_are_the_printed_ones_and_rise_with_the_zone() {
    let rows = [
        ("SA", [0.06, 0.12, 0.16, 0.24, 0.32]),
        ("SB", [0.08, 0.15, 0.20, 0.30, 0.40]),
        ("SC", [0.09, 0.18, 0.24, 0.33, 0.40]),
        ("SD", [0.12, 0.22, 0.28, 0.36, 0.44]),
        ("SE", [0.19, 0.30, 0.34, 0.36, 0.36]),
    ];
    for (soil, row) in rows {
        let mut before = 0.0;
        for (zone, expected) in ["1", "2A", "2B", "3", "4"].iter().zip(row) {
            let input = ubc(json!({"zone": zone, "soil_profile": soil}));
            near(of(&input, "C_a"), expected);
            assert!(of(&input, "c_p") >= before);
            before = of(&input, "c_p");
        }
    }
    assert!(run(&ubc(json!({"soil_profile": "SF"}))).unwrap_err().contains("S_F"));
    assert_eq!(of(&ubc(json!({"soil_profile": null})), "C_a"), of(&ubc(json!({})), "C_a"), "soil that is not known is S_D");
}

#[test]
fn near_source_factor_turns_at_two_five_and_ten_kilometres() {
    let at = |source: &str, distance_km: f64| of(&ubc(json!({"seismic_source": source, "source_distance_km": distance_km})), "N_a");
    for (distance_km, of_a, of_b) in
        [(0.0, 1.5, 1.3), (1.99, 1.5, 1.3), (2.0, 1.5, 1.3), (3.5, 1.35, 1.15), (5.0, 1.2, 1.0), (7.5, 1.1, 1.0), (10.0, 1.0, 1.0), (40.0, 1.0, 1.0)]
    {
        near(at("A", distance_km), of_a);
        near(at("B", distance_km), of_b);
    }
    assert!(at("A", 2.01) < 1.5 && at("A", 4.99) > 1.2 && at("A", 5.01) < 1.2 && at("A", 9.99) > 1.0 && at("B", 4.99) > 1.0);
    near(of(&ubc(json!({"seismic_source": "A", "source_distance_km": 1})), "C_a"), 0.66);
    near(of(&ubc(json!({"zone": "3", "seismic_source": "A", "source_distance_km": 1})), "C_a"), 0.36);
}

#[test]
fn zone_4_needs_a_source_and_a_search_that_reaches_it_without_one_is_told_so() {
    assert_eq!(faults(&ubc(json!({"seismic_source": null}))), [("seismic_source", Problem::Missing)]);
    assert_eq!(faults(&ubc(json!({"seismic_source": "B"}))), [("source_distance_km", Problem::Missing)]);
    assert_eq!(faults(&ubc(json!({"zone": "3", "seismic_source": null}))), []);
    let (rule, mut values) = read(&ubc(json!({"zone": "3", "seismic_source": null})));
    let Strength::Zones(zone) = (rule.strength)(&values) else { panic!("a zone rule climbs by zones") };
    values.set_choice(zone, 4);
    let reason = (rule.demand)(&values, 1.0, &mut Sheet::quiet()).unwrap_err();
    let text = DEMAND_RULE_TEXTS.iter().find(|text| text.id == "ubc-1997").unwrap();
    assert!(text.steps.rows[reason.row as usize].what.contains("near-source"));
}

#[test]
fn zone_and_coefficient_exclude_each_other_and_one_is_needed() {
    assert_eq!(faults(&ubc(json!({"zone": null}))), [("zone", Problem::NeedsOneOf)]);
    assert_eq!(faults(&ubc(json!({"seismic_coefficient": 0.4}))), [("seismic_coefficient", Problem::Excludes)]);
    let given = ubc(json!({"zone": null, "seismic_coefficient": 0.4}));
    near(of(&given, "c_min"), 0.28);
    assert_eq!(strength(&given), "seismic_coefficient");
    assert_eq!(strength(&ubc(json!({}))), "zone");
}

#[test]
fn ubc_1997_limits_of_equation_32_3() {
    let c_a = 0.44;
    // 1/3 (1 + 3 r) reaches 0.7 at r = 0.3667.
    let stiff = |height: f64| of(&ubc(json!({"attachment_height_m": height})), "c_p") / c_a;
    near(stiff(3.6), 0.7);
    near(stiff(3.7), (1.0 + 3.0 * 0.37) / 3.0);
    assert!(stiff(3.7) > 0.7);
    // 2.5/1.5 (1 + 3 r) reaches 4 at r = 0.4667.
    let brittle = |height: f64| of(&ubc(json!({"component": "flexible-nonductile", "attachment_height_m": height})), "c_p") / c_a;
    near(brittle(4.6), 2.5 / 1.5 * (1.0 + 3.0 * 0.46));
    near(brittle(4.7), 4.0);
    assert!(brittle(4.6) < 4.0);
}

#[test]
fn the_simple_equation_is_the_upper_limit_and_needs_no_height() {
    let simple = ubc(json!({"equation": "32-1", "importance_factor": 1.5, "attachment_height_m": 30.0, "roof_height_m": null}));
    near(of(&simple, "c_p"), 4.0 * 0.44 * 1.5);
    near(of(&simple, "c_pa"), 4.0 * 0.44 * 1.5);
    near(of(&ubc(json!({"importance_factor": 1.5})), "c_max"), of(&simple, "c_p"));
}

#[test]
fn anchors_have_the_response_factor_of_their_type() {
    let at = |component: &str, anchors: &str| of(&ubc(json!({"component": component, "anchor_type": anchors})), "R_pa");
    assert_eq!((at("cabinet", "deep"), at("cabinet", "shallow"), at("cabinet", "nonductile")), (3.0, 1.5, 1.0));
    assert_eq!((at("rigid-nonductile", "deep"), at("rigid-nonductile", "shallow")), (1.5, 1.5));
    let given = json!({"component": "given", "component_amplification": 1.0, "component_response": 1.2, "anchor_type": "shallow"});
    assert_eq!(of(&ubc(given), "R_pa"), 1.2, "a lower factor of the component stays");
    // 1/1.5 at grade is below 0.7, so the limit governs; 1/1.0 is above it.
    near(of(&ubc(json!({"anchor_type": "shallow"})), "c_pa"), 0.7 * 0.44);
    near(of(&ubc(json!({"anchor_type": "nonductile"})), "c_pa"), 0.44);
}

#[test]
fn isolated_equipment_doubles_the_force_on_shallow_anchors_only() {
    let at = |component: &str, anchors: &str| {
        let answers = run(&ubc(json!({"component": component, "anchor_type": anchors, "attachment_height_m": 10.0}))).unwrap();
        answers["12-6a/horizontal"].value / 0.44
    };
    near(at("isolated", "deep"), 1.1 * 4.0);
    near(at("isolated", "shallow"), 1.1 * 2.0 * 4.0);
    near(at("isolated", "nonductile"), 1.1 * 2.0 * 4.0);
    near(at("flexible-nonductile", "shallow"), 1.1 * 4.0);
}

#[test]
fn concrete_anchors_get_the_whole_combination_times_1_1() {
    let answers = run(&ubc(json!({}))).unwrap();
    let at = |address: &str| answers[address].value;
    near(at("c_v"), 0.22);
    near(at("12-5a/down"), 1.1 * 10_000.0 * (1.2 + 0.22));
    near(at("12-6a/down"), 1.1 * 10_000.0 * (0.9 - 0.22));
    near(at("12-6a/push"), 1.1 * at("F_pa"));
    near(at("12-6/down"), 10_000.0 * (0.9 - 0.22));
}

// ---- A coefficient given directly

fn direct(changes: Json) -> Json {
    with(
        json!({"rule": "direct", "weight": "10 kN", "format": "limit-states", "horizontal_coefficient": 0.5, "vertical_coefficient": 0.25,
            "gravity_heavy": 1.0, "gravity_light": 0.9}),
        changes,
    )
}

#[test]
fn a_direct_coefficient_asks_for_everything_but_overstrength() {
    for key in ["format", "horizontal_coefficient", "vertical_coefficient", "gravity_heavy", "gravity_light"] {
        assert!(run(&direct(json!({key: null}))).unwrap_err().contains("missing"), "{key}");
    }
    let plain = run(&direct(json!({}))).unwrap();
    assert!(!plain.contains_key("light m/push"));
    let amplified = run(&direct(json!({"overstrength": 2.5}))).unwrap();
    near(amplified["light m/push"].value, 12_500.0);
    near(amplified["light m/down"].value, 6_500.0);
    assert_eq!(strength(&direct(json!({}))), "horizontal_coefficient");
}

#[test]
fn the_light_gravity_factor_is_not_above_the_heavy_one() {
    assert_eq!(faults(&direct(json!({"gravity_light": 1.0}))), []);
    assert_eq!(faults(&direct(json!({"gravity_light": 1.01}))), [("gravity_light", Problem::AboveLimit)]);
}

// ---- How it is asked

fn with(mut input: Json, changes: Json) -> Json {
    for (key, value) in changes.as_object().unwrap() {
        input[key] = value.clone();
    }
    input
}

fn of(input: &Json, symbol: &str) -> f64 {
    let answers = run(&without_nulls(input)).unwrap_or_else(|problem| panic!("{input}: {problem}"));
    answers.get(symbol).unwrap_or_else(|| panic!("{input}: no {symbol}")).value
}

fn read(input: &Json) -> (&'static steadfoot::rules::DemandRule, Values) {
    let rule = demand_rule(input["rule"].as_str().unwrap()).unwrap();
    (rule, field_values(rule.fields, &without_nulls(input)).unwrap())
}

fn faults(input: &Json) -> Vec<(&'static str, Problem)> {
    let (rule, values) = read(input);
    let mut faults = Vec::new();
    (rule.faults)(&values, &mut faults);
    faults.into_iter().map(|(place, problem, _)| (rule.fields[place].key, problem)).collect()
}

fn strength(input: &Json) -> &'static str {
    let (rule, values) = read(input);
    match (rule.strength)(&values) {
        Strength::Field(field) | Strength::Zones(field) => rule.fields[field].key,
    }
}

fn without_nulls(input: &Json) -> Json {
    Json::Object(input.as_object().unwrap().iter().filter(|(_, value)| !value.is_null()).map(|(key, value)| (key.clone(), value.clone())).collect())
}

fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() <= 1e-12 * expected.abs().max(1.0), "{found} is not {expected}");
}
