//! Every limit of the rules of Peru and Colombia, hit from both sides.

use serde_json::{Value as Json, json};
use steadfoot::calc::Sheet;
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{colombia, faults, near, of, peru, read, strength, with};
use steadfoot_tests::run_demand::run;

#[test]
fn peru_gives_half_of_z_u_s_at_the_base_and_asks_for_the_floor_above_it() {
    near(of(&peru(json!({})), "c_p"), 0.5 * 0.45);
    near(of(&peru(json!({"attachment_height_m": -3.0, "building_use": "A2"})), "c_p"), 0.5 * 0.45 * 1.5);
    let above = |changes: Json| with(peru(json!({"attachment_height_m": 0.01})), changes);
    assert!(run(&above(json!({}))).unwrap_err().contains("acceleration of the floor"));
    near(of(&above(json!({"floor_acceleration": 0.3})), "c_p"), 0.45);
    let flexible = above(json!({"component": "flexible", "floor_acceleration": 0.3}));
    assert!(run(&flexible).unwrap_err().contains("flexible"));
    near(of(&with(flexible, json!({"component_coefficient": 4.0})), "c_p"), 1.2);
    near(of(&peru(json!({"component": "flexible"})), "c_p"), 0.5 * 0.45);
    near(of(&above(json!({"component": "falls-outside", "floor_acceleration": 0.3})), "c_p"), 0.9);
    near(of(&above(json!({"floor_acceleration": 0.3})), "c_v"), 0.3);
}

#[test]
fn the_least_force_of_peru_governs_below_a_floor_acceleration_of_a_third_of_z_u_s() {
    let at =
        |floor: f64, symbol: &str| of(&peru(json!({"attachment_height_m": 9.0, "floor_acceleration": floor})), symbol);
    near(at(0.149, "c_p"), 0.225);
    assert!(at(0.149, "c_f") < 0.225);
    near(at(0.151, "c_p"), 1.5 * 0.151);
}

#[test]
fn zones_of_peru_rise_on_every_soil() {
    let z = [0.10, 0.25, 0.35, 0.45];
    let s = [("S0", [0.8; 4]), ("S1", [1.0; 4]), ("S2", [1.6, 1.2, 1.15, 1.05]), ("S3", [2.0, 1.4, 1.2, 1.1])];
    for (soil, row) in s {
        let mut before = 0.0;
        for (zone, (z, s)) in z.iter().zip(row).enumerate() {
            let push = of(&peru(json!({"zone": (zone + 1).to_string(), "soil_profile": soil})), "c_p");
            near(push, 0.5 * z * s);
            assert!(push > before, "{soil}");
            before = push;
        }
    }
}

#[test]
fn peru_takes_other_factors_in_place_of_its_tables() {
    assert_eq!(faults(&peru(json!({"zone": null}))), [("zone", Problem::NeedsOneOf)]);
    assert_eq!(faults(&peru(json!({"zone_factor": 0.3}))), [("zone_factor", Problem::Excludes)]);
    assert_eq!(faults(&peru(json!({"zone": null, "zone_factor": 0.3}))), [("soil_factor", Problem::Missing)]);
    let given = peru(json!({"zone": null, "zone_factor": 0.3, "soil_factor": 1.2, "use_factor": 1.4}));
    near(of(&given, "c_p"), 0.5 * 0.3 * 1.4 * 1.2);
    near(of(&peru(json!({"soil_factor": 1.2})), "c_p"), 0.5 * 0.45 * 1.2);
    assert_eq!((strength(&given), strength(&peru(json!({})))), ("zone_factor", "zone"));
    let floor = peru(json!({"attachment_height_m": 3.0, "floor_acceleration": 0.3}));
    assert_eq!(strength(&floor), "floor_acceleration");
    assert_eq!(faults(&peru(json!({"component": "given"}))), []);
    let given = peru(json!({"component": "given", "attachment_height_m": 3.0}));
    assert_eq!(faults(&given), [("component_coefficient", Problem::Missing)]);
}

#[test]
fn colombia_turns_at_three_quarters_of_the_height() {
    let at = |ratio: f64, symbol: &str| of(&colombia(json!({"attachment_height_m": 10.0 * ratio})), symbol);
    near(at(0.0, "a_x"), 0.3);
    near(at(-0.3, "a_x"), 0.3);
    near(at(0.75, "a_x"), 0.75);
    near(at(0.749, "a_x"), 0.3 + 0.45 * 0.749 / 0.75);
    near(at(0.751, "a_x"), 0.75 * 0.751 / 0.75);
    near(at(1.0, "a_x"), 1.0);
    near(of(&colombia(json!({"building_acceleration": 0.6, "attachment_height_m": 7.5})), "a_x"), 0.6);
}

#[test]
fn colombia_has_a_least_force_and_a_response_by_kind_of_anchor() {
    let rigid =
        |changes: Json| with(colombia(json!({"component_amplification": 1.0, "anchor_type": "special"})), changes);
    // 0.3 a_p / 6 against 0.125.
    near(of(&rigid(json!({})), "c_p"), 0.125);
    near(of(&rigid(json!({"component_amplification": 2.49})), "c_p"), 0.125);
    assert!(of(&rigid(json!({"component_amplification": 2.5, "soil_coefficient": 1.21})), "c_p") > 0.125);
    let depth = |input: &Json| {
        let (rule, values) = read(input);
        (rule.demand)(&values, 1.0, &mut Sheet::quiet()).unwrap().anchors.depth.map(|(depth, _)| depth)
    };
    for (anchors, r_p, deep) in
        [("special", 6.0, Some(8.0)), ("ductile", 3.0, Some(8.0)), ("nonductile", 1.5, None), ("wet", 0.5, None)]
    {
        let input = colombia(json!({"anchor_type": anchors}));
        assert_eq!(of(&input, "R_p"), r_p);
        assert_eq!(depth(&input), deep);
    }
    near(of(&colombia(json!({"component_response": 2.0})), "c_p"), 0.3 * 2.5 / 2.0);
    assert_eq!(strength(&colombia(json!({}))), "peak_acceleration");
    let building = |height: f64| colombia(json!({"building_acceleration": 0.6, "attachment_height_m": height}));
    assert_eq!(strength(&building(0.1)), "building_acceleration");
    assert_eq!(strength(&building(0.0)), "peak_acceleration", "at the base the building does not count");
    let above = colombia(json!({"attachment_height_m": 10.01}));
    assert_eq!(faults(&above), [("attachment_height_m", Problem::AboveLimit)]);
}
