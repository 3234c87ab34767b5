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
        "fork_spread_mm": 700, "fork_height_mm": 85, "entry_height_mm": 110,
        "carrier": "guided-vehicle", "carrier_length_mm": 900, "carrier_width_mm": 800, "deck_height_mm": 150, "transport": "sea-a" });
    for check in checked(&project([0.0, 0.0, 500.0], way)) {
        let expected = if check.id == "move.hand" { Status::NotNeeded } else { Status::Holds };
        assert_eq!(check.status, expected, "{}", check.id);
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

/// Up to a carrier's wheels, or its own feet where they are nearer; higher up it tips sooner.
#[test]
fn a_carrier_tips_over_the_nearer_of_its_wheels_and_the_feet() {
    let on = |changes: Value| {
        let mut way = json!({ "carrier": "pallet-truck", "carrier_length_mm": 1200, "carrier_width_mm": 540, "deck_height_mm": 100, "brake_g": 0.1, "turn_g": 0.1 });
        for (key, value) in changes.as_object().unwrap() {
            way[key] = value.clone();
        }
        project([0.0, 0.0, 1000.0], way)
    };
    let carried = |changes: Value| one(&on(changes), "move.carrier");
    // Narrow forks decide across, and turning at 0.1 g uses 0.1 / (270 / 1100).
    let narrow = carried(json!({}));
    assert!((narrow.utilisation.unwrap() - 0.1 / (270.0 / 1100.0)).abs() < 1e-12);
    // Wheels wide apart leave the feet, whose outer corners stand 450 mm across and 350 mm along.
    let wide = carried(json!({ "carrier_width_mm": 4000, "carrier_length_mm": 4000 }));
    assert!((wide.utilisation.unwrap() - 0.1 / 0.35).abs() < 1e-12);
    assert!(carried(json!({ "deck_height_mm": 900 })).utilisation > narrow.utilisation);
    assert_eq!(carried(json!({ "slope": 0.351, "carrier_width_mm": 4000 })).status, Status::Fails);
    assert_eq!(carried(json!({ "slope": 0.351, "carrier_width_mm": 4000 })).utilisation, None);
    for key in ["carrier_length_mm", "carrier_width_mm", "deck_height_mm"] {
        assert_eq!(carried(json!({ key: null })).status, Status::NotCovered, "{key}");
    }
    for id in ["move.carrier", "move.deck"] {
        assert_eq!(one(&on(json!({ "carrier": "none" })), id).status, Status::NotNeeded);
    }
    let slides = |friction: f64| one(&on(json!({ "deck_friction": friction })), "move.deck").status;
    assert_eq!((slides(0.1001), slides(0.0999)), (Status::Holds, Status::Fails));
    let mut none = on(json!({}));
    none["cabinet"]["feet"] = json!([]);
    assert_eq!(one(&none, "move.carrier").status, Status::NotCovered);
}

/// To keep it in motion people have half of what they have to start it.
#[test]
fn keeping_in_motion_has_limits_of_its_own() {
    let limit = |who: &str, id: &str| {
        let way = json!({ "movers": who, "people": 1 });
        one(&project([0.0, 0.0, 800.0], way), id).limit.unwrap()
    };
    assert_eq!((limit("men", "move.keep"), limit("women", "move.keep")), (100.0, 70.0));
    assert_eq!((limit("men", "move.push"), limit("women", "move.push")), (200.0, 150.0));
    let powered = project([0.0, 0.0, 800.0], json!({ "movers": "powered" }));
    assert_eq!(one(&powered, "move.keep").status, Status::NotNeeded);
}

#[test]
fn a_tray_by_hand_is_asked_only_with_a_reach_and_something_to_lift() {
    let hand = |way: Value, mass_kg: f64| {
        let mut given = project([0.0, 0.0, 800.0], way);
        if mass_kg > 0.0 {
            given["contents"] =
                json!([{ "name": "tray", "mass_kg": mass_kg, "bottom_mm": 300, "size_mm": [500, 500, 100] }]);
        }
        one(&given, "move.hand")
    };
    assert_eq!(hand(json!({}), 20.0).status, Status::NotNeeded);
    assert_eq!(hand(json!({ "hand_reach_mm": 250 }), 0.0).status, Status::NotNeeded);
    assert_eq!(hand(json!({ "hand_reach_mm": 250 }), 23.0).status, Status::Holds);
    assert_eq!(hand(json!({ "hand_reach_mm": 250 }), 23.1).status, Status::Fails);
    assert_eq!(hand(json!({ "hand_reach_mm": 251 }), 23.0).status, Status::Fails);
}
