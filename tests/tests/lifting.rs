//! Lifting: what every hook, pattern and load has to obey, and where the checks stop.

use serde_json::{Value, json};
use steadfoot::calc::{Role, Status, System};
use steadfoot::project::{Project, assess, read};
use steadfoot::report::outcome::{CheckTold, Verdict};

fn project(centre: [f64; 3], points: &[[f64; 3]], lifting: Value) -> Value {
    let points: Vec<Value> = points.iter().map(|point| json!({ "at_mm": point })).collect();
    json!({ "format": "steadfoot 1", "cabinet": { "width_mm": 1200, "depth_mm": 1000, "height_mm": 2400,
        "frame": { "mass_kg": 2000, "centre_mm": centre }, "lifting_points": points }, "lifting": lifting })
}

fn checked(project: &Value) -> Vec<CheckTold> {
    let project: Project = read(&project.to_string(), System::Si).expect("the project has no fault");
    assess(&project).checks.into_iter().filter(|check| check.id.starts_with("lift.")).collect()
}

fn one(project: &Value, id: &str) -> CheckTold {
    checked(project).into_iter().find(|check| check.id == id).unwrap_or_else(|| panic!("no {id}"))
}

const RECTANGLE: [[f64; 3]; 4] =
    [[-500.0, -400.0, 2400.0], [500.0, -400.0, 2400.0], [500.0, 400.0, 2400.0], [-500.0, 400.0, 2400.0]];

fn rigging() -> Value {
    json!({ "hook_above_mm": 1500, "leg_capacity_kg": 2500, "eyebolt": "M30", "thread_engagement_mm": 50, "base_tensile_mpa": 360 })
}

#[test]
fn a_sound_rigging_holds_in_every_check() {
    let checks = checked(&project([0.0, 0.0, 1000.0], &RECTANGLE, rigging()));
    assert_eq!(checks.len(), 7);
    for check in checks {
        assert_eq!(check.status, Status::Holds, "{}", check.id);
    }
}

#[test]
fn the_mirrored_load_pulls_as_hard() {
    let pull = |x: f64, y: f64| one(&project([x, y, 1000.0], &RECTANGLE, rigging()), "lift.leg").value.unwrap();
    for (x, y) in [(100.0, 50.0), (20.0, 180.0), (300.0, 0.0)] {
        for (sx, sy) in [(-1.0, 1.0), (1.0, -1.0), (-1.0, -1.0)] {
            assert!((pull(sx * x, sy * y) / pull(x, y) - 1.0).abs() < 1e-12);
        }
    }
}

#[test]
fn a_higher_hook_pulls_less_and_a_farther_centre_pulls_more() {
    let pull = |x: f64, height: f64| {
        let mut rigging = rigging();
        rigging["hook_above_mm"] = json!(height);
        rigging["hook_at_mm"] = Value::Null;
        one(&project([x, 0.5 * x, 1000.0], &RECTANGLE, rigging), "lift.leg").value.unwrap()
    };
    for step in 1..20 {
        let (low, high) = (600.0 + 100.0 * f64::from(step), 700.0 + 100.0 * f64::from(step));
        assert!(pull(80.0, high) < pull(80.0, low));
        let x = 10.0 * f64::from(step);
        assert!(pull(x + 10.0, 5000.0) > pull(x, 5000.0));
    }
}

#[test]
fn what_shares_evenly_pulls_less_than_what_is_stiff() {
    let mut even = rigging();
    even["sharing"] = json!("equalised");
    let pull = |rigging: Value| one(&project([60.0, 40.0, 1000.0], &RECTANGLE, rigging), "lift.leg").value.unwrap();
    assert!(pull(even) < 0.7 * pull(rigging()));
}

#[test]
fn a_leg_is_used_up_to_sixty_degrees_and_not_beyond() {
    let flat = |height: f64| {
        let mut rigging = rigging();
        rigging["hook_above_mm"] = json!(height);
        one(&project([0.0, 0.0, 1000.0], &RECTANGLE, rigging), "lift.angle").status
    };
    let limit = 500.0f64.hypot(400.0) / 3.0f64.sqrt();
    assert_eq!(flat(limit * (1.0 + 1e-6)), Status::Holds);
    assert_eq!(flat(limit * (1.0 - 1e-6)), Status::Fails);
}

#[test]
fn the_table_of_leg_factors_changes_at_forty_five_degrees_and_ends_at_sixty() {
    let limit = |height: f64| {
        let mut rigging = rigging();
        rigging["hook_above_mm"] = json!(height);
        one(&project([0.0, 0.0, 1000.0], &RECTANGLE, rigging), "lift.sling")
    };
    let plan = 500.0f64.hypot(400.0);
    let rating = |check: CheckTold| check.limit.unwrap() / (2500.0 * 9.80665);
    assert!((rating(limit(plan * 1.000_001)) - 1.4).abs() < 1e-12);
    assert!((rating(limit(plan * 0.999_999)) - 1.0).abs() < 1e-12);
    assert_eq!(limit(plan / 3.0f64.sqrt() * 0.999_999).status, Status::NotCovered);
}

#[test]
fn the_rating_of_an_eyebolt_falls_at_five_and_at_forty_five_degrees() {
    let limit = |degrees: f64| {
        let mut rigging = rigging();
        rigging["hook_above_mm"] = json!(500.0f64.hypot(400.0) / degrees.to_radians().tan());
        one(&project([0.0, 0.0, 1000.0], &RECTANGLE, rigging), "lift.attachment").limit.unwrap() / 9.80665
    };
    for (degrees, rating) in [(4.999, 3200.0), (5.001, 2300.0), (44.999, 2300.0), (45.001, 1600.0)] {
        assert!((limit(degrees) - rating).abs() < 1e-6, "{degrees}: {}", limit(degrees));
    }
}

#[test]
fn what_cannot_be_said_is_not_covered() {
    let status = |project: &Value, id: &str| one(project, id).status;
    // A centre above the points may turn over; without ratings nothing can be compared; two points let it swing.
    let high = project([0.0, 0.0, 2000.0], &RECTANGLE.map(|[x, y, _]| [x, y, 1500.0]), rigging());
    assert_eq!(status(&high, "lift.centre"), Status::NotCovered);
    let bare = project([0.0, 0.0, 1000.0], &RECTANGLE, json!({ "hook_above_mm": 1500 }));
    for id in ["lift.leg", "lift.sling", "lift.attachment", "lift.thread"] {
        assert_eq!(status(&bare, id), Status::NotCovered, "{id}");
    }
    for points in [&RECTANGLE[..0], &RECTANGLE[..2]] {
        for check in checked(&project([0.0, 0.0, 1000.0], points, rigging())) {
            assert_eq!(check.status, Status::NotCovered, "{} with {} points", check.id, points.len());
        }
    }
    // The hook stands outside of the legs: no three of them pull the right way.
    let mut aside = rigging();
    aside["hook_at_mm"] = json!([2000, 0]);
    assert_eq!(status(&project([0.0, 0.0, 1000.0], &RECTANGLE, aside), "lift.leg"), Status::NotCovered);
}

#[test]
fn lifting_never_decides_whether_the_bolted_cabinet_holds() {
    let demo = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-configs/02-full.json");
    let mut file: Value = serde_json::from_str(&std::fs::read_to_string(demo).unwrap()).unwrap();
    let points = |at: &[f64; 3]| json!({ "at_mm": [at[0], at[1], file["cabinet"]["height_mm"]] });
    file["cabinet"]["lifting_points"] = RECTANGLE.iter().map(points).collect();
    file["lifting"] = rigging();
    file["lifting"]["leg_capacity_kg"] = json!(10);
    let report = assess(&read(&file.to_string(), System::Si).expect("the project has no fault"));
    let check = report.checks.iter().find(|check| check.id == "lift.leg").expect("it is lifted");
    assert_eq!((check.status, check.role), (Status::Fails, Role::BeforeBolting));
    assert_eq!(report.verdict, Verdict::Holds);
}

#[test]
fn without_rigging_nothing_is_checked_and_that_is_said() {
    let mut bare = project([0.0, 0.0, 1000.0], &RECTANGLE, rigging());
    bare.as_object_mut().unwrap().remove("lifting");
    assert!(checked(&bare).is_empty());
    let project = read(&bare.to_string(), System::Si).unwrap();
    let said: Vec<&str> = assess(&project)
        .absent
        .iter()
        .filter_map(|&code| steadfoot::report::text_tables::text_of_code(code))
        .map(|row| row.what)
        .collect();
    assert!(said.iter().any(|line| line.contains("no rigging is given")), "{said:?}");
}

/// Of what is given for the points the first counts: eyebolt, shouldered eyebolt, ring, lug; and each has its own thread.
#[test]
fn the_first_that_is_given_holds_the_slings() {
    let with = |lifting: Value| {
        let mut all = json!({ "hook_above_mm": 1500 });
        for (key, value) in lifting.as_object().unwrap() {
            all[key] = value.clone();
        }
        let project = project([0.0, 0.0, 1000.0], &RECTANGLE, all);
        (one(&project, "lift.attachment"), one(&project, "lift.thread").status)
    };
    let lug = json!({ "lug_yield_n": 100_000, "lug_break_n": 150_000 });
    let and = |more: Value| {
        let mut all = lug.clone();
        for (key, value) in more.as_object().unwrap() {
            all[key] = value.clone();
        }
        with(all)
    };
    let limit = |found: (CheckTold, Status)| found.0.limit.unwrap();
    assert!((limit(with(lug.clone())) - 100_000.0 / 3.0).abs() < 1e-9);
    assert_eq!(with(lug.clone()).1, Status::NotNeeded);
    assert!((limit(and(json!({ "ring_capacity_kg": 1000 }))) - 9806.65).abs() < 1e-9);
    let shoulder = json!({ "ring_capacity_kg": 1000, "shoulder_eyebolt_kg": 1000 });
    assert!((limit(and(shoulder.clone())) - 2451.6625).abs() < 1e-9, "23 degrees from its axis a quarter is left");
    assert_eq!(and(shoulder).1, Status::NotCovered);
    assert!(limit(and(json!({ "eyebolt": "M30", "shoulder_eyebolt_kg": 1000 }))) > 20_000.0);
    for key in ["lug_yield_n", "lug_break_n"] {
        assert_eq!(with(json!({ key: 100_000 })).0.status, Status::NotCovered, "{key} alone");
    }
}
