//! What a coefficient given directly asks for.

use serde_json::json;
use steadfoot::input::Problem;
use steadfoot_tests::demand_input::{direct, faults, near, strength};
use steadfoot_tests::run_demand::run;

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
