//! Moving: where the limits are, what holds for every way, and where the checks stop.

use serde_json::{Value, json};
use steadfoot::calc::{Status, System};
use steadfoot::project::{Project, assess, read};
use steadfoot::report::outcome::CheckTold;

fn project(centre: [f64; 3], moving: Value) -> Value {
    let foot = |(name, x, y): (&str, f64, f64)| json!({ "name": name, "at_mm": [x, y], "size_mm": [100, 100] });
    let feet: Vec<Value> =
        [("a", -400.0, -300.0), ("b", 400.0, -300.0), ("c", 400.0, 300.0), ("d", -400.0, 300.0)].map(foot).into();
    json!({ "format": "steadfoot 1", "cabinet": { "width_mm": 1000, "depth_mm": 800, "height_mm": 2000,
        "frame": { "mass_kg": 400, "centre_mm": centre }, "feet": feet }, "moving": moving })
}

fn checked(project: &Value) -> Vec<CheckTold> {
    let project: Project = read(&project.to_string(), System::Si).expect("the project has no fault");
    assess(&project).checks.into_iter().filter(|check| check.id.starts_with("move.")).collect()
}

fn one(project: &Value, id: &str) -> CheckTold {
    checked(project).into_iter().find(|check| check.id == id).unwrap_or_else(|| panic!("no {id}"))
}

#[test]
fn a_light_cabinet_on_a_good_way_holds_in_every_check() {
    let way = json!({ "people": 6, "wheel_radius_mm": 60, "sill_mm": 1, "brake_g": 0.1, "truck_rating_kg": 1000, "truck_centre_mm": 500,
        "fork_spread_mm": 700, "fork_height_mm": 85, "entry_height_mm": 110, "transport": "sea-a" });
    for check in checked(&project([0.0, 0.0, 500.0], way)) {
        assert_eq!(check.status, Status::Holds, "{}", check.id);
    }
}

#[test]
fn a_wheel_never_climbs_a_sill_as_high_as_its_radius() {
    let sill = |height: f64| {
        let way = json!({ "wheel_radius_mm": 50, "sill_mm": height, "people": 12 });
        one(&project([0.0, 0.0, 800.0], way), "move.sill")
    };
    assert_eq!(sill(0.0).status, Status::NotNeeded);
    let mut before = 0.0;
    for height in [0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 49.0, 49.9] {
        let force = sill(height).value.unwrap();
        assert!(force > before);
        before = force;
    }
    for height in [50.0, 51.0, 80.0] {
        assert_eq!((sill(height).status, sill(height).value), (Status::Fails, None));
    }
}

#[test]
fn a_truck_never_lifts_more_than_its_rating() {
    let may = |centre: f64| {
        let way = json!({ "truck_rating_kg": 1000, "truck_centre_mm": centre });
        one(&project([0.0, 0.0, 800.0], way), "move.truck").limit.unwrap()
    };
    // The centre of gravity is 400 mm from the face of the forks.
    assert_eq!(may(400.0), 1000.0);
    assert_eq!(may(600.0), 1000.0);
    assert_eq!(may(200.0), 500.0);
}

#[test]
fn the_side_from_which_the_forks_enter_decides_the_load_centre() {
    let may = |side: &str| {
        let way = json!({ "truck_rating_kg": 1000, "truck_centre_mm": 200, "forks_from": side });
        one(&project([100.0, 50.0, 800.0], way), "move.truck").limit.unwrap()
    };
    let expected = [("front", 450.0), ("rear", 350.0), ("left", 600.0), ("right", 400.0)];
    for (side, centre) in expected {
        assert!((may(side) - 1000.0 * 200.0 / centre).abs() < 1e-9, "{side}");
    }
}

#[test]
fn steeper_ramps_ask_for_more_and_leave_less() {
    let at = |slope: f64, id: &str| one(&project([0.0, 0.0, 800.0], json!({ "slope": slope })), id);
    for step in 0..10 {
        let (low, high) = (0.02 * f64::from(step), 0.02 * f64::from(step + 1));
        assert!(at(high, "move.push").value > at(low, "move.push").value);
        assert!(at(high, "move.brake").limit < at(low, "move.brake").limit);
    }
    // As steep as the distance over the height, nothing is left for braking.
    assert_eq!(at(0.375, "move.brake").status, Status::Fails);
}

#[test]
fn a_team_reaches_less_than_its_sum() {
    let team = |people: f64| one(&project([0.0, 0.0, 800.0], json!({ "people": people })), "move.push").limit.unwrap();
    assert!((team(1.0) - 200.0).abs() < 1e-9);
    assert!((team(2.0) - 2.0 * 200.0 * 2.0 / 3.0).abs() < 1e-9);
    assert!((team(3.0) - 300.0).abs() < 1e-9);
}

#[test]
fn what_is_not_asked_or_not_given_is_said() {
    let status = |way: Value, id: &str| one(&project([0.0, 0.0, 800.0], way), id).status;
    assert_eq!(status(json!({ "movers": "powered" }), "move.push"), Status::NotNeeded);
    assert_eq!(status(json!({}), "move.road"), Status::NotNeeded);
    assert_eq!(status(json!({ "sill_mm": 5 }), "move.sill"), Status::NotCovered);
    for id in ["move.truck", "move.forks", "move.entry"] {
        assert_eq!(status(json!({}), id), Status::NotCovered, "{id}");
    }
    // A centre beside the wheels falls by itself; beside the forks it falls off them.
    let way = json!({ "transport": "road", "fork_spread_mm": 700 });
    let beside = project([450.0, 0.0, 800.0], way);
    assert_eq!(one(&beside, "move.brake").status, Status::NotCovered);
    assert_eq!(one(&beside, "move.road").status, Status::NotCovered);
    assert_eq!(one(&beside, "move.forks").status, Status::Fails);
    let mut none = project([0.0, 0.0, 800.0], json!({}));
    none.as_object_mut().unwrap().remove("moving");
    assert!(checked(&none).is_empty());
}
