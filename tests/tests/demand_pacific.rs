//! Every limit of NZS 1170.5 section 8, AS 1170.4 section 8 and the rule for India, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{faults, near, of, strength};
use steadfoot_tests::demand_world::{as_1170_4, is_1893, nzs_1170_5};
use steadfoot_tests::run_demand::run;

#[test]
fn nzs_hazard_is_cut_at_seven_tenths() {
    let at = |z: f64| of(&nzs_1170_5(json!({"hazard_factor": z, "return_period_factor": 1.0})), "z_r");
    assert_eq!((at(0.69), at(0.7), at(0.71)), (0.69, 0.7, 0.7));
}

#[test]
fn nzs_floor_height_coefficient_is_the_lesser_of_two_lines_and_at_most_three() {
    let at = |h_i: f64, h_n: f64| of(&nzs_1170_5(json!({"attachment_height_m": h_i, "roof_height_m": h_n})), "C_Hi");
    // The lines meet where h_n = 60 m.
    near(at(6.0, 59.0), 2.0);
    near(at(6.0, 61.0), 1.0 + 60.0 / 61.0);
    near(at(11.9, 40.0), 1.0 + 11.9 / 6.0);
    near(at(12.1, 40.0), 3.0);
    near(at(19.9, 100.0), 2.99);
    near(at(20.1, 100.0), 3.0);
    near(at(-3.0, 40.0), 1.0);
}

#[test]
fn nzs_spectral_shape_is_level_below_three_quarters_and_above_one_and_a_half_seconds() {
    let at = |period: f64| of(&nzs_1170_5(json!({"component_period_s": period})), "C_i");
    near(at(0.74), 2.0);
    near(at(0.76), 1.98);
    near(at(1.49), 0.52);
    near(at(1.51), 0.5);
    near(of(&nzs_1170_5(json!({})), "C_i"), 2.0);
}

#[test]
fn nzs_response_factor_is_straight_between_its_rows_and_level_above_three() {
    let at = |mu: f64| of(&nzs_1170_5(json!({"component_ductility": mu})), "C_ph");
    near(at(1.125), 0.925);
    near(at(2.5), 0.5);
    assert_eq!((at(3.0), at(3.1), at(6.0)), (0.45, 0.45, 0.45));
}

#[test]
fn nzs_force_is_cut_at_three_and_six_tenths_and_the_vertical_one_at_two_and_a_half() {
    let at = |z: f64| {
        let roof = json!({"hazard_factor": z, "soil_class": "A", "attachment_height_m": 40.0});
        of(&nzs_1170_5(roof), "c_p")
    };
    near(at(0.59), 3.54);
    near(at(0.61), 3.6);
    let vertical = |c: f64| of(&nzs_1170_5(json!({"vertical_spectrum": c})), "c_v");
    near(vertical(3.57), 0.7 * 3.57);
    near(vertical(3.58), 2.5);
}

#[test]
fn nzs_fixings_count_on_less_ductility_than_the_cabinet() {
    let at = |fixings: Json, mu: f64| of(&nzs_1170_5(json!({"fixings": fixings, "component_ductility": mu})), "mu_a");
    assert_eq!((at(Json::Null, 3.0), at(json!("brittle"), 3.0)), (1.0, 1.0));
    assert_eq!((at(json!("nominally-ductile"), 3.0), at(json!("nominally-ductile"), 1.1)), (1.25, 1.1));
    assert_eq!(at(json!("capacity-designed"), 3.0), 3.0);
    let needs = faults(&nzs_1170_5(json!({"annual_probability": null})));
    assert_eq!(needs, [("annual_probability", Problem::NeedsOneOf)]);
    assert_eq!(strength(&nzs_1170_5(json!({}))), "hazard_factor");
}

#[test]
fn nzs_fixings_count_on_no_more_ductility_up_and_down_than_sideways() {
    let at = |fixings: &str, symbol: &str| {
        let input =
            json!({"fixings": fixings, "component_ductility": 3.0, "vertical_spectrum": 1.0, "part_class": "P2"});
        of(&nzs_1170_5(input), symbol)
    };
    near(at("brittle", "c_v"), 0.7 * 0.45);
    near(at("brittle", "c_va"), 0.7);
    near(at("nominally-ductile", "c_va"), 0.7 * 0.85);
    near(at("capacity-designed", "c_va"), at("capacity-designed", "c_v"));
    let fixings = run(&nzs_1170_5(json!({"vertical_spectrum": 5.0, "component_ductility": 3.0}))).unwrap();
    for level in ["a", "e"] {
        near(fixings[format!("G+E up {level}/vertical").as_str()].value, -2.5);
        near(fixings[format!("G+E down {level}/vertical").as_str()].value, 2.5);
    }
    near(fixings["G+E up/vertical"].value, -fixings["c_v"].value);
}

#[test]
fn as_1170_least_hazard_and_least_force() {
    let k_z = |z: f64| of(&as_1170_4(json!({"hazard_factor": z})), "k_z");
    assert_eq!((k_z(0.079), k_z(0.081)), (0.08, 0.081));
    let rare = |z: f64| of(&as_1170_4(json!({"hazard_factor": z, "annual_probability": "1/2500"})), "k_z");
    near(rare(0.083), 0.15);
    near(rare(0.084), 1.8 * 0.084);
    // Below 1/500 there is no least hazard.
    near(of(&as_1170_4(json!({"hazard_factor": 0.01, "annual_probability": "1/250"})), "k_z"), 0.0075);
    let force = |z: f64| {
        let small = json!({"hazard_factor": z, "soil_class": "Be", "component": "rigid-ductile"});
        of(&as_1170_4(small), "c_p")
    };
    near(force(0.124), 0.05);
    near(force(0.126), 0.0504);
}

#[test]
fn as_1170_height_factor_changes_at_twelve_metres() {
    let at = |h_x: f64, h_n: f64| of(&as_1170_4(json!({"attachment_height_m": h_x, "roof_height_m": h_n})), "a_x");
    near(at(6.0, 11.99), 1.0 + 0.17 * 6.0);
    near(at(6.0, 12.0), 2.0);
    near(at(12.0, 12.0), 3.0);
    near(at(0.0, 12.0), 1.0);
}

#[test]
fn as_1170_upper_limit_belongs_to_a_known_floor_acceleration_and_can_be_replaced() {
    let at = |a_floor: f64, limit: Json| {
        let by_floor = json!({"method": "floor-acceleration", "floor_acceleration": a_floor, "force_limit": limit});
        of(&as_1170_4(by_floor), "c_p")
    };
    near(at(0.49, Json::Null), 0.49);
    near(at(0.51, Json::Null), 0.5);
    near(at(0.51, json!(0.6)), 0.51);
    let simple = as_1170_4(json!({"hazard_factor": 0.6, "attachment_height_m": 10.0}));
    assert!(of(&simple, "c_p") > 1.0, "the simple method has no upper limit");
    let missing = faults(&as_1170_4(json!({"method": "floor-acceleration"})));
    assert_eq!(missing, [("floor_acceleration", Problem::Missing)]);
    let by_floor = as_1170_4(json!({"method": "floor-acceleration", "floor_acceleration": 0.2}));
    assert_eq!(strength(&by_floor), "floor_acceleration");
}

#[test]
fn as_1170_flat_force_is_for_low_buildings_of_little_hazard_only() {
    let covered = |k_z: f64, soil: &str, h_n: f64| {
        // At 1/250 k_p is 0.75 and nothing holds the hazard up.
        let flat = json!({"method": "category-i", "hazard_factor": k_z / 0.75, "annual_probability": "1/250", "soil_class": soil,
            "roof_height_m": h_n});
        run(&as_1170_4(flat)).map(|answers| answers["c_p"].value)
    };
    for (soil, limit) in [("Ae", 0.14), ("Be", 0.11), ("Ce", 0.08), ("De", 0.05), ("Ee", 0.05)] {
        assert_eq!(covered(limit, soil, 12.0), Ok(0.1), "{soil}");
        assert!(covered(limit + 0.001, soil, 12.0).unwrap_err().contains("design category I"), "{soil}");
        assert!(covered(limit, soil, 12.01).is_err());
    }
    let at = |probability: &str| {
        let flat = json!({"method": "category-i", "hazard_factor": 0.05, "annual_probability": probability, "soil_class": "Ae"});
        run(&as_1170_4(flat)).is_ok()
    };
    assert!(at("1/500") && !at("1/800") && !at("1/1000"), "importance level 3 is never in category I");
    for key in ["hazard_factor", "annual_probability", "soil_class"] {
        assert_eq!(faults(&as_1170_4(json!({key: null}))), [(key, Problem::Missing)]);
    }
}

#[test]
fn india_asks_which_share_of_the_zone_factor_and_never_guesses_it() {
    assert!(run(&is_1893(json!({"basis": null}))).is_err());
    let at = |basis: &str| of(&is_1893(json!({"basis": basis})), "c_1");
    near(at("whole-zone-factor"), 2.0 * at("half-zone-factor"));
}

#[test]
fn india_force_is_at_least_a_tenth_of_the_weight() {
    // 0.18 (1 + r) / 1.5 is 0.12 at the base; with R_p = 1.8 it is 0.1.
    let at = |r_p: f64| of(&is_1893(json!({"component_response": r_p})), "c_p");
    near(at(1.79), 0.18 / 1.79);
    near(at(1.81), 0.10);
    // On isolators it is doubled after that.
    let isolated = is_1893(json!({"component": "isolated", "component_response": 5.0, "component_amplification": 1.0}));
    near(of(&isolated, "c_p"), 0.20);
}

#[test]
fn india_vertical_motion_begins_in_zone_iv() {
    let at = |zone: &str| of(&is_1893(json!({"zone": zone})), "c_v");
    assert_eq!((at("II"), at("III")), (0.0, 0.0));
    near(at("IV"), 0.2);
    near(at("V"), 0.3);
    let given = |z: f64| of(&is_1893(json!({"zone": null, "zone_factor": z})), "c_v");
    assert_eq!(given(0.239), 0.0);
    near(given(0.24), 0.2);
    assert_eq!(of(&is_1893(json!({"vertical_coefficient": 0.1})), "c_v"), 0.1);
}

#[test]
fn india_shows_both_readings_of_the_load_factor_on_anchors() {
    let answers = run(&is_1893(json!({"anchor_type": "shallow"}))).unwrap();
    let value = |address: &str| answers[address].value;
    near(value("h_t"), 1.5 * value("c_pa"));
    near(value("h_d"), value("c_pa"));
    near(value("h_a"), value("h_t"));
    near(of(&is_1893(json!({"anchor_load_factor": "alone"})), "h_a"), 0.24);
    // A small factor never leaves anchors with less than the cabinet itself.
    let small = is_1893(json!({"anchor_load_factor": "alone", "anchor_factor": 1.0}));
    near(of(&small, "h_a"), 0.18);
}

#[test]
fn india_takes_a_zone_or_a_factor() {
    assert_eq!(faults(&is_1893(json!({"zone": null}))), [("zone", Problem::NeedsOneOf)]);
    assert_eq!(faults(&is_1893(json!({"zone_factor": 0.3}))), [("zone_factor", Problem::Excludes)]);
    assert_eq!(strength(&is_1893(json!({}))), "zone");
    assert_eq!(strength(&is_1893(json!({"zone": null, "zone_factor": 0.3}))), "zone_factor");
    assert_eq!(faults(&is_1893(json!({"component": "given"}))).len(), 2);
}
