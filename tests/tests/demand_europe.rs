//! Every limit of EN 1998-1 4.3.5, NTC 2018 7.2.3 and P100-1 chapter 10, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{faults, near, of, strength};
use steadfoot_tests::demand_world::{en_1998_1, ntc_2018, p100_1};
use steadfoot_tests::run_demand::run;

fn has(input: &Json, symbol: &str) -> bool {
    run(input).unwrap().contains_key(symbol)
}

#[test]
fn en_1998_lower_limit_governs_where_the_amplification_falls_under_one_and_a_half_at_the_base() {
    // 3 / (1 + (1 - t)^2) = 1.5 where t = 2: from there up the ground's own acceleration is the least.
    let at = |period: f64, symbol: &str| {
        of(
            &en_1998_1(json!({"amplification": "periods", "component_period_s": period, "building_period_s": 1.0})),
            symbol,
        )
    };
    near(at(1.99, "S_a"), at(1.99, "S_1"));
    assert!(at(1.99, "S_a") > at(1.99, "S_min"));
    near(at(2.01, "S_a"), 0.24);
    assert!(at(2.01, "S_1") < 0.24);
    near(at(0.0, "S_a"), 0.24);
    near(at(1.0, "S_a"), 2.5 * 0.24);
}

#[test]
fn en_1998_peaks_are_those_of_the_clause() {
    let at = |period: f64, height: f64| {
        let periods = json!({"amplification": "periods", "component_period_s": period, "building_period_s": 0.5, "attachment_height_m": height});
        of(&en_1998_1(periods), "S_a") / 0.24
    };
    near(at(0.5, 0.0), 2.5);
    near(at(0.5, 10.0), 5.5);
    near(at(0.0, 0.0), 1.0);
    near(at(0.0, 10.0), 2.5);
}

#[test]
fn en_1998_vertical_force_on_anchors_is_left_out_up_to_a_quarter_of_g() {
    // 0.25 / 0.9 on type 1.
    let at = |a_gr: f64| run(&en_1998_1(json!({"reference_acceleration": a_gr}))).unwrap();
    let (below, above) = (at(0.25 / 0.9), at(0.2778));
    assert!(!below.contains_key("F_va") && below.contains_key("G+A a/push"));
    assert!(above.contains_key("F_va") && !above.contains_key("G+A a/push"));
    let by_vertical = |ratio: f64| has(&en_1998_1(json!({"vertical_ratio": ratio})), "F_va");
    assert!(!by_vertical(1.25) && by_vertical(1.26));
    let answers = at(0.4);
    let value = |address: &str| answers[address].value;
    near(value("G+A h+/down"), 10_000.0 * (1.0 - 0.3 * value("c_va")));
    near(value("G+A v+/push"), 0.3 * value("F_aa"));
    near(value("G+A v-/down"), 10_000.0 * (1.0 + value("c_va")));
    near(value("G+A/vertical"), 0.0);
}

#[test]
fn en_1998_anchors_count_on_no_ductility_unless_an_option_is_stated() {
    let at = |design: Json| of(&en_1998_1(json!({"anchor_design": design})), "q_aa");
    assert_eq!((at(Json::Null), at(json!("not-stated"))), (1.0, 1.0));
    assert_eq!((at(json!("elastic")), at(json!("capacity-or-ductile"))), (1.5, 2.0));
    let one = en_1998_1(json!({"component": "other", "anchor_design": "elastic"}));
    assert_eq!(of(&one, "q_aa"), 1.0);
    // Elastic design is the amplified level; capacity design has none.
    assert!(has(&en_1998_1(json!({"anchor_design": "elastic"})), "G+A e/push"));
    assert!(!has(&en_1998_1(json!({"anchor_design": "capacity-or-ductile"})), "G+A e/push"));
}

#[test]
fn en_1998_ground_s1_and_s2_are_covered_only_with_a_soil_factor() {
    for ground in ["S1", "S2"] {
        let reason = run(&en_1998_1(json!({"ground_type": ground}))).unwrap_err();
        assert!(reason.contains("no soil factor"), "{reason}");
        near(of(&en_1998_1(json!({"ground_type": ground, "soil_factor": 1.9})), "S_min"), 0.2 * 1.9);
    }
}

#[test]
fn en_1998_asks_for_what_its_choices_need() {
    assert_eq!(
        faults(&en_1998_1(json!({"amplification": "periods"}))),
        [("component_period_s", Problem::Missing), ("building_period_s", Problem::Missing)]
    );
    assert_eq!(faults(&en_1998_1(json!({"component": "given"}))), [("behaviour_factor", Problem::Missing)]);
    assert_eq!(faults(&en_1998_1(json!({"component": "given", "amplification": "table"}))).len(), 2);
    assert_eq!(
        faults(&en_1998_1(json!({"attachment_height_m": 10.01}))),
        [("attachment_height_m", Problem::AboveLimit)]
    );
    assert_eq!(strength(&en_1998_1(json!({}))), "reference_acceleration");
}

#[test]
fn ntc_plateau_begins_at_a_and_ends_at_b_times_the_period_of_the_building() {
    let at =
        |t_1: f64, t_a: f64| of(&ntc_2018(json!({"building_period_s": t_1, "component_period_s": t_a})), "S_1") / 0.2;
    for (t_1, a, b, a_p) in [(0.4, 0.8, 1.4, 5.0), (0.8, 0.3, 1.2, 4.0), (1.5, 0.3, 1.0, 2.5)] {
        near(at(t_1, a * t_1), a_p);
        near(at(t_1, 0.999 * b * t_1), a_p);
        assert!(at(t_1, 0.99 * a * t_1) < a_p * (1.0 - 1e-5));
        assert!(at(t_1, 1.01 * b * t_1) < a_p * (1.0 - 1e-5));
        near(at(t_1, 0.0), 1.0);
    }
}

#[test]
fn ntc_rows_change_at_half_a_second_and_above_one() {
    let at = |t_1: f64| of(&ntc_2018(json!({"building_period_s": t_1})), "a_p");
    assert_eq!((at(0.499), at(0.5), at(1.0), at(1.001)), (5.0, 4.0, 4.0, 2.5));
}

#[test]
fn ntc_soil_factor_stays_between_its_limits() {
    for (ground, low, line, slope, high) in
        [("B", 1.0, 1.4, 0.4, 1.2), ("C", 1.0, 1.7, 0.6, 1.5), ("D", 0.9, 2.4, 1.5, 1.8), ("E", 1.0, 2.0, 1.1, 1.6)]
    {
        let at = |x: f64| {
            of(
                &ntc_2018(
                    json!({"ground_type": ground, "spectral_amplification": 2.5, "ground_acceleration": x / 2.5}),
                ),
                "S_S",
            )
        };
        let (first, last) = ((line - high) / slope, (line - low) / slope);
        near(at(0.99 * first), high);
        near(at(1.01 * first), line - slope * 1.01 * first);
        near(at(0.99 * last), line - slope * 0.99 * last);
        near(at(1.01 * last), low);
    }
    assert_eq!(faults(&ntc_2018(json!({"ground_type": "C"}))), [("spectral_amplification", Problem::Missing)]);
    assert_eq!(faults(&ntc_2018(json!({"ground_type": "C", "soil_factor": 1.4}))), []);
    assert!(run(&ntc_2018(json!({"ground_type": "other"}))).unwrap_err().contains("study of the site"));
}

#[test]
fn ntc_on_soft_soil_asks_less_of_stronger_shaking_only_where_the_text_says_so() {
    let at = |x: f64| {
        let soft = json!({"ground_type": "D", "spectral_amplification": 2.5, "ground_acceleration": x / 2.5});
        of(&ntc_2018(soft), "S_min")
    };
    let asked: Vec<(f64, f64)> = (1..200).map(|step| 0.01 * step as f64).map(|x| (x, at(x))).collect();
    for pair in asked.windows(2) {
        let falls = pair[1].1 < pair[0].1 * (1.0 - 1e-12);
        assert!(!falls || (0.8 - 1e-9..=1.0 + 1e-9).contains(&pair[0].0), "it falls after F_o a_g = {}", pair[0].0);
    }
    assert!(at(0.95) < at(0.85));
}

#[test]
fn ntc_asks_for_the_periods_that_its_form_needs() {
    let other = |changes: Json| {
        let mut input = ntc_2018(json!({"building": "other", "building_period_s": null}));
        for (key, value) in changes.as_object().unwrap() {
            input[key] = value.clone();
        }
        faults(&input)
    };
    assert_eq!(faults(&ntc_2018(json!({"building_period_s": null}))), [("building_period_s", Problem::Missing)]);
    assert_eq!(other(json!({})), []);
    assert_eq!(other(json!({"component_period_s": 0.1})), [("building_period_s", Problem::Missing)]);
    assert_eq!(other(json!({"building_period_s": 0.1})), [("component_period_s", Problem::Missing)]);
    assert_eq!(faults(&ntc_2018(json!({"component": "given"}))), [("behaviour_factor", Problem::Missing)]);
}

#[test]
fn p100_force_lies_between_three_quarters_and_four_times_the_ground() {
    let at = |q: f64, height: f64, flexibility: &str| {
        let input = p100_1(json!({"behaviour_factor": q, "attachment_height_m": height, "flexibility": flexibility}));
        of(&input, "c_p") / 0.2
    };
    near(at(1.33, 0.0, "rigid"), 1.0 / 1.33);
    near(at(1.34, 0.0, "rigid"), 0.75);
    near(at(1.88, 10.0, "flexible"), 7.5 / 1.88);
    near(at(1.87, 10.0, "flexible"), 4.0);
    assert_eq!(faults(&p100_1(json!({"flexibility": "given"}))), [("component_amplification", Problem::Missing)]);
    assert!(run(&p100_1(json!({"anchor_factor": null}))).is_err(), "the factor for fixings is never guessed");
}
