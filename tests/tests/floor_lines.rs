//! Legs beside each other, rails, rows, grout and single legs on a floor: hand figures, and both sides of every limit.

use serde_json::{Value, json};
use steadfoot::calc::{CheckId, Status, System};
use steadfoot::project::{self, assess};
use steadfoot::report::outcome::{CheckTold, Report};
use steadfoot::report::text_tables::text_of_code;

const G: f64 = 9.80665;

/// 2000 kg on four feet of 120 mm, on 200 mm of C28 on the ground.
fn cabinet(floor: Value) -> Value {
    let foot = |x: i32, y: i32| json!({ "name": format!("{x} {y}"), "at_mm": [x, y], "size_mm": [120, 120] });
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1000, "depth_mm": 1200, "height_mm": 2200, "frame": { "mass_kg": 2000, "centre_mm": [0, 0, 1000] },
            "feet": [foot(-430, -530), foot(430, -530), foot(430, 530), foot(-430, 530)] },
        "slab": { "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} },
        "floor": floor })
}

/// The same on two rails of 150 mm by 1180 mm along the depth, 430 mm beside the middle.
fn on_rails(floor: Value) -> Value {
    let mut value = cabinet(floor);
    value["floor"]["stands_on"] = json!("rails");
    let rail = |name: &str, x: i32| json!({ "name": name, "at_mm": [x, 0], "size_mm": [150, 1180] });
    value["cabinet"]["feet"] = json!([rail("left", -430), rail("right", 430)]);
    value
}

fn plain() -> Value {
    json!({ "kind": "on-ground", "subgrade_n_per_mm3": 0.05, "modulus_mpa": 30_000, "flexural_strength_mpa": 4.0 })
}

fn fibres() -> Value {
    let mut floor = plain();
    for (key, value) in
        [("reinforcement", json!("fibres")), ("load_factors", json!("tr-34")), ("load_class", json!("live"))]
    {
        floor[key] = value;
    }
    floor["residual_moment_n"] = json!(9000);
    floor["tensile_strength_mpa"] = json!(1.9);
    floor
}

fn shaken(mut value: Value, format: &str) -> Value {
    value["site"] = json!({ "rule": "direct", "format": format, "horizontal_coefficient": 0.1, "vertical_coefficient": 0.0,
        "gravity_heavy": 1.0, "gravity_light": 1.0 });
    value
}

fn report(value: &Value) -> Report {
    let project = project::read(&value.to_string(), System::Si);
    assess(&project.unwrap_or_else(|faults| panic!("{}", faults[0].sentence())))
}

fn told(report: &Report, check: CheckId) -> &CheckTold {
    report.checks.iter().find(|told| told.id == check.id()).unwrap_or_else(|| panic!("{} is told", check.id()))
}

fn reason(check: &CheckTold) -> &'static str {
    check.reason.and_then(text_of_code).map_or("", |row| row.what)
}

fn utilisation(value: &Value, check: CheckId) -> f64 {
    let report = report(value);
    let one = told(&report, check);
    one.utilisation.unwrap_or_else(|| panic!("{}: {}", one.id, reason(one)))
}

/// Stiffness of the slab against the ground, by hand.
fn lambda(subgrade: f64, modulus: f64, thickness: f64) -> f64 {
    (3.0 * subgrade / (modulus * thickness.powi(3))).powf(0.25)
}

#[test]
fn legs_with_fibres_near_an_edge_are_bounded_by_all_legs_on_one_place_or_not_covered() {
    let near = |front: f64, mass: f64| {
        let mut value = cabinet(fibres());
        value["slab"]["edges_mm"] = json!({ "front": front });
        value["cabinet"]["frame"]["mass_kg"] = json!(mass);
        report(&value)
    };
    assert_eq!(told(&near(650.0, 300.0), CheckId::SlabRestBending).status, Status::Holds);
    let middling = near(650.0, 6_000.0);
    let bending = told(&middling, CheckId::SlabRestBending);
    assert!(bending.status == Status::NotCovered && reason(bending).contains("rectangle"), "{}", reason(bending));
    assert_eq!(told(&near(650.0, 60_000.0), CheckId::SlabRestBending).status, Status::Fails);
    // Far from edges four legs at the corners of a rectangle have a form of their own.
    assert_eq!(told(&near(5_000.0, 6_000.0), CheckId::SlabRestBending).status, Status::Holds);
}

#[test]
fn four_legs_off_a_rectangle_have_no_form_and_two_heavy_legs_are_a_pair() {
    let mut skew = cabinet(fibres());
    skew["cabinet"]["frame"]["mass_kg"] = json!(14_000);
    skew["cabinet"]["feet"][0]["at_mm"] = json!([-300, -530]);
    let report = report(&skew);
    let bending = told(&report, CheckId::SlabRestBending);
    assert!(
        bending.status == Status::NotCovered && reason(bending).contains("rectangle"),
        "{:?} {}",
        bending.utilisation,
        reason(bending)
    );
    // All on the two legs at the front: the pair breaks through before the four.
    let mut front = cabinet(fibres());
    front["cabinet"]["frame"]["centre_mm"] = json!([0, -529, 1000]);
    let even = utilisation(&cabinet(fibres()), CheckId::SlabRestBending);
    let pair = utilisation(&front, CheckId::SlabRestBending);
    assert!(pair > 1.15 * even, "{pair} {even}");
}

#[test]
fn a_leg_far_from_edges_puts_neighbours_at_an_edge_on_its_own_place() {
    // The rear legs are far from the front edge, those at the front are not.
    let at = |front: Option<f64>, left: Option<f64>| {
        let mut value = cabinet(plain());
        value["slab"]["edges_mm"] = json!({ "front": front, "left": left });
        value["cabinet"]["frame"]["mass_kg"] = json!(2000.0);
        // Nothing but the rear legs presses hard.
        value["cabinet"]["frame"]["centre_mm"] = json!([0, 500, 1000]);
        report(&value)
    };
    let far = at(None, None);
    let far = told(&far, CheckId::SlabRestBending);
    assert_eq!(far.status, Status::Holds);
    let more = |front, left| {
        let near = at(Some(front), left);
        told(&near, CheckId::SlabRestBending).utilisation.expect("a number") / far.utilisation.expect("a number")
    };
    // One free edge is put together by the plate that has it, and sends little back to the rear legs.
    let exact = more(640.0, None);
    assert!((exact - 1.0).abs() < 0.05 && (exact - 1.0).abs() > 1e-3, "{exact}");
    let bound = more(640.0, Some(640.0));
    assert!(bound > 1.01, "with a second edge the bound is above the superposition: {bound}");
}

#[test]
fn a_rail_presses_on_a_long_line() {
    let l = lambda(0.05, 30_000.0, 200.0);
    let moment = 4.0 / 2.0 * 200.0_f64.powi(2) / 6.0;
    let load = 2000.0 * G / 2.0 / 1180.0;
    let relief = core::f64::consts::PI / (4.0 * l);
    assert!(relief > 860.0, "the two rails are nearer than {relief}");
    let both = utilisation(&on_rails(plain()), CheckId::SlabRestBending);
    let share = (-l * 860.0).exp() * ((l * 860.0).cos() - (l * 860.0).sin());
    assert!((both / ((1.0 + share) * load / (4.0 * l * moment)) - 1.0).abs() < 1e-9, "{both}");
    // Softer ground and thicker slabs make the line longer; stiff ground under a thin slab lets the other rail relieve.
    let mut stiff = on_rails(plain());
    stiff["floor"]["subgrade_n_per_mm3"] = json!(0.3);
    let l = lambda(0.3, 30_000.0, 200.0);
    assert!(core::f64::consts::PI / (4.0 * l) < 860.0);
    let alone = utilisation(&stiff, CheckId::SlabRestBending);
    assert!((alone / (load / (4.0 * l * moment)) - 1.0).abs() < 1e-9, "{alone}");
    // At a free edge it carries less, and at a corner nothing is in print.
    let mut edge = on_rails(plain());
    edge["slab"]["edges_mm"] = json!({ "left": 800 });
    let at_edge = utilisation(&edge, CheckId::SlabRestBending);
    // A slab that is softer at its edge hands a little to the other rail.
    assert!((at_edge / both - 4.0 / 3.103).abs() < 1e-2, "{}", at_edge / both);
    edge["slab"]["edges_mm"]["front"] = json!(800);
    let cornered = report(&edge);
    assert!(reason(told(&cornered, CheckId::SlabRestBending)).contains("corner"));
}

#[test]
fn a_foot_is_a_rail_from_three_times_its_width_on_and_rails_and_feet_are_not_mixed() {
    let with = |length: f64| {
        let mut value = on_rails(plain());
        value["slab"]["edges_mm"] = json!({ "left": 800, "front": 800 });
        value["cabinet"]["frame"]["mass_kg"] = json!(400);
        for rail in value["cabinet"]["feet"].as_array_mut().expect("feet") {
            rail["size_mm"] = json!([150, length]);
        }
        report(&value)
    };
    let rail = with(451.0);
    let rail = told(&rail, CheckId::SlabRestBending);
    assert!(reason(rail).contains("rail at a free corner"), "{:?} {}", rail.utilisation, reason(rail));
    assert!(!reason(told(&with(449.0), CheckId::SlabRestBending)).contains("rail"));
    let mut mixed = on_rails(plain());
    mixed["cabinet"]["feet"]
        .as_array_mut()
        .expect("feet")
        .push(json!({ "name": "middle", "at_mm": [0, 0], "size_mm": [120, 120] }));
    assert!(reason(told(&report(&mixed), CheckId::SlabRestBending)).contains("single feet"));
}

#[test]
fn rails_on_fibres_take_the_factors_of_yield_lines_and_formats_are_not_mixed() {
    let l = lambda(0.05, 30_000.0, 200.0);
    let moment = 1.9 * (1.6 - 0.2) / 1.5 * 200.0_f64.powi(2) / 6.0;
    let share = (-l * 860.0).exp() * ((l * 860.0).cos() - (l * 860.0).sin());
    let load = (1.0 + share) * 2000.0 * G / 2.0 / 1180.0;
    let found = utilisation(&on_rails(fibres()), CheckId::SlabRestBending);
    assert!((found / (1.5 * load / (4.0 * l * moment)) - 1.0).abs() < 1e-9, "{found}");
    let strength = report(&shaken(on_rails(fibres()), "strength"));
    assert!(reason(told(&strength, CheckId::SlabQuakeBending)).contains("another format"));
    let states = report(&shaken(on_rails(fibres()), "limit-states"));
    assert_eq!(told(&states, CheckId::SlabQuakeBending).status, Status::Holds);
}

#[test]
fn rows_on_the_ground_are_held_to_the_strip_with_its_worst_aisle() {
    let with = |mut floor: Value, pitch: f64| {
        floor["pitch_mm"] = json!([pitch, 2400]);
        report(&cabinet(floor))
    };
    let l = lambda(0.05, 30_000.0, 200.0);
    let allowed = 5.95 * l * l * (4.0 / 2.0 * 200.0_f64.powi(2) / 6.0);
    let load = |pitch: f64| 2000.0 * G / (pitch * 1200.0);
    let one = with(plain(), 1000.0);
    let rows = told(&one, CheckId::SlabRestRows);
    assert!((rows.value.expect("a load") / load(1000.0) - 1.0).abs() < 1e-12);
    assert!((rows.limit.expect("a limit") / allowed - 1.0).abs() < 1e-12);
    // The Army manual's table of stationary loads comes to 4 % more for the same stress.
    let army = 257.876 / 144.0 * (1.0 / 6.0_f64).recip() / 3.0_f64.sqrt() / 5.95;
    assert!((army - 1.0427).abs() < 1e-4, "{army}");
    assert!(reason(told(&with(plain(), 999.0), CheckId::SlabRestRows)).contains("smaller than the cabinet"));
    let none = report(&cabinet(plain()));
    assert!(none.checks.iter().all(|check| check.id != CheckId::SlabRestRows.id()));
    let tr34 = with(fibres(), 1000.0);
    let rows = told(&tr34, CheckId::SlabRestRows);
    assert!((rows.value.expect("a load") / (1.5 * load(1000.0)) - 1.0).abs() < 1e-12);
}

#[test]
fn grout_is_covered_within_the_clause_and_not_a_hair_beyond() {
    let with = |thickness: f64, strength: Option<f64>, format: &str| {
        let mut value = shaken(cabinet(plain()), format);
        value["floor"]["grout_mm"] = json!(thickness);
        value["floor"]["grout_strength_mpa"] = json!(strength);
        report(&value)
    };
    let status = |report: &Report| told(report, CheckId::FootGrout).status;
    // 0.2 of 28 MPa; 0.2 of 120 mm.
    assert_eq!(status(&with(24.0, Some(5.6), "limit-states")), Status::Holds);
    assert_eq!(status(&with(24.0, Some(5.59), "limit-states")), Status::NotCovered);
    assert_eq!(status(&with(24.01, Some(5.6), "limit-states")), Status::NotCovered);
    assert!(reason(told(&with(24.0, None, "strength"), CheckId::FootGrout)).contains("grout_strength_mpa"));
    for (format, factor) in [("strength", 0.65 * 0.85), ("allowable-stress", 0.85 / 2.31)] {
        let report = with(40.0, Some(60.0), format);
        let grout = told(&report, CheckId::FootGrout);
        assert!(grout.limit.expect("a limit") <= factor * 60.0 * 120.0 * 120.0 * (1.0 + 1e-9), "{format}");
        assert_eq!(grout.status, Status::Holds);
    }
    let without = report(&shaken(cabinet(plain()), "strength"));
    assert!(without.checks.iter().all(|check| check.id != CheckId::FootGrout.id()));
}

#[test]
fn grout_over_50_mm_is_as_strong_as_the_concrete() {
    let with = |strength: f64| {
        let mut value = shaken(cabinet(plain()), "limit-states");
        for foot in value["cabinet"]["feet"].as_array_mut().expect("feet") {
            foot["size_mm"] = json!([130, 320]);
        }
        // A plate of 320 mm on its smaller side allows 64 mm of grout.
        for foot in value["cabinet"]["feet"].as_array_mut().expect("feet") {
            foot["size_mm"] = json!([320, 320]);
            foot["at_mm"] = json!([
                if foot["at_mm"][0].as_f64() < Some(0.0) { -330 } else { 330 },
                foot["at_mm"][1].as_f64().expect("a number").signum() * 430.0
            ]);
        }
        value["floor"]["grout_mm"] = json!(60);
        value["floor"]["grout_strength_mpa"] = json!(strength);
        told(&report(&value), CheckId::FootGrout).status
    };
    assert_eq!((with(28.0), with(27.9)), (Status::Holds, Status::NotCovered));
}

#[test]
fn a_single_leg_is_held_to_the_design_concentrated_load_for_information() {
    let floor = |more: Value| {
        let mut floor = json!({ "kind": "suspended", "reinforcement": "fabric", "effective_depth_mm": 160, "reinforcement_ratio": 0.005,
            "span_mm": 6000, "live_load_mpa": 0.012, "pitch_mm": [1000, 2400] });
        for (key, value) in more.as_object().expect("an object") {
            floor[key] = value.clone();
        }
        report(&cabinet(floor))
    };
    let leg = 2000.0 * G / 4.0;
    let given = floor(json!({ "concentrated_load_n": leg * 1.001 }));
    assert_eq!(told(&given, CheckId::FloorLeg).status, Status::Holds);
    let exceeded = floor(json!({ "concentrated_load_n": leg * 0.999 }));
    let one = told(&exceeded, CheckId::FloorLeg);
    assert!(one.status == Status::Fails && (one.value.expect("a load") - leg).abs() < 1e-6);
    assert_eq!(one.role, steadfoot::calc::Role::Information, "it only tells");
    let by_code = floor(json!({ "occupancy": "en-office" }));
    assert_eq!(told(&by_code, CheckId::FloorLeg).limit, Some(4500.0));
    assert!(floor(json!({})).checks.iter().all(|check| check.id != CheckId::FloorLeg.id()));
}
