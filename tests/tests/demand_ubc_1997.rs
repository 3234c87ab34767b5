//! Every limit of UBC 1997 section 1632, hit from both sides.

use serde_json::json;
use steadfoot::calc::Sheet;
use steadfoot::input::Problem;
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, Strength};
use steadfoot_tests::demand_input::{faults, near, of, read, strength, ubc};
use steadfoot_tests::run_demand::run;

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
    assert_eq!(
        of(&ubc(json!({"soil_profile": null})), "C_a"),
        of(&ubc(json!({})), "C_a"),
        "soil that is not known is S_D"
    );
}

#[test]
fn near_source_factor_turns_at_two_five_and_ten_kilometres() {
    let at = |source: &str, distance_km: f64| {
        of(&ubc(json!({"seismic_source": source, "source_distance_km": distance_km})), "N_a")
    };
    for (distance_km, of_a, of_b) in [
        (0.0, 1.5, 1.3),
        (1.99, 1.5, 1.3),
        (2.0, 1.5, 1.3),
        (3.5, 1.35, 1.15),
        (5.0, 1.2, 1.0),
        (7.5, 1.1, 1.0),
        (10.0, 1.0, 1.0),
        (40.0, 1.0, 1.0),
    ] {
        near(at("A", distance_km), of_a);
        near(at("B", distance_km), of_b);
    }
    assert!(
        at("A", 2.01) < 1.5 && at("A", 4.99) > 1.2 && at("A", 5.01) < 1.2 && at("A", 9.99) > 1.0 && at("B", 4.99) > 1.0
    );
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
    assert!(text.steps.rows[reason.row()].what.contains("near-source"));
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
    let brittle =
        |height: f64| of(&ubc(json!({"component": "flexible-nonductile", "attachment_height_m": height})), "c_p") / c_a;
    near(brittle(4.6), 2.5 / 1.5 * (1.0 + 3.0 * 0.46));
    near(brittle(4.7), 4.0);
    assert!(brittle(4.6) < 4.0);
}

#[test]
fn the_simple_equation_is_the_upper_limit_and_needs_no_height() {
    let simple =
        ubc(json!({"equation": "32-1", "importance_factor": 1.5, "attachment_height_m": 30.0, "roof_height_m": null}));
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
        let answers =
            run(&ubc(json!({"component": component, "anchor_type": anchors, "attachment_height_m": 10.0}))).unwrap();
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

#[test]
fn concrete_under_the_feet_carries_a_tenth_more_than_the_component() {
    let demo = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-configs/02-full.json");
    let mut project: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(demo).unwrap()).unwrap();
    let bearing = |project: &serde_json::Value| {
        let project = steadfoot::project::read(&project.to_string(), steadfoot::calc::System::Si).unwrap();
        let report = steadfoot::project::assess(&project);
        report.checks.iter().find(|check| check.id == "foot.bearing").unwrap().utilisation.unwrap()
    };
    let mut site = ubc(json!({}));
    site.as_object_mut().unwrap().remove("weight");
    let push = 0.7 * 0.44;
    let vertical = 0.5 * 0.44;
    project["site"] = site;
    let found = bearing(&project);
    let factored = |factor: f64| {
        json!({"rule": "direct", "format": "strength", "horizontal_coefficient": factor * push, "vertical_coefficient": factor * vertical,
            "gravity_heavy": factor * 1.2, "gravity_light": factor * 0.9})
    };
    project["site"] = factored(1.1);
    near(found, bearing(&project));
    project["site"] = factored(1.0);
    assert!(found > 1.05 * bearing(&project));
}
