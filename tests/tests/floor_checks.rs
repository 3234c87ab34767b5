//! The floor of a whole cabinet: which checks appear, what they say, and that formats are never mixed.

use serde_json::{Value, json};
use steadfoot::base_reactions::{BaseLoad, Foot, Supports};
use steadfoot::calc::{CheckId, Status, System};
use steadfoot::geometry::{Point, Size};
use steadfoot::project::{self, Project, assess, working};
use steadfoot::report::outcome::{CheckTold, Report, Verdict};
use steadfoot::report::text_tables::{text, text_of_code};
use steadfoot_tests::random::Random;

/// A cabinet of 2000 kg on four feet with stems, on 200 mm of C28 on the ground, under 0.3 g.
fn cabinet(floor: Value) -> Value {
    let foot = |x: i32, y: i32| json!({ "name": format!("{x} {y}"), "at_mm": [x, y], "size_mm": [120, 120], "stem_diameter_mm": 24, "stem_length_mm": 80 });
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1000, "depth_mm": 1200, "height_mm": 2200, "frame": { "mass_kg": 2000, "centre_mm": [0, 0, 1000] },
            "feet": [foot(-430, -530), foot(430, -530), foot(430, 530), foot(-430, 530)],
            "anchors": [{ "at_mm": [-450, -560] }, { "at_mm": [450, -560] }, { "at_mm": [450, 560] }, { "at_mm": [-450, 560] }] },
        "slab": { "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} },
        "floor": floor,
        "site": site("strength"),
        "anchorage": { "rule": "aci-318-19-si", "bolt": "M16", "steel": "f1554-36", "embedment_mm": 125, "seat": "concrete" } })
}

fn site(format: &str) -> Value {
    json!({ "rule": "direct", "format": format, "horizontal_coefficient": 0.3, "vertical_coefficient": 0.1,
            "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2.0 })
}

fn on_ground() -> Value {
    json!({ "kind": "on-ground", "subgrade_n_per_mm3": 0.05, "foot_plate_mm": 15 })
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn report(value: &Value) -> Report {
    assess(&read(value))
}

fn find(report: &Report, check: CheckId) -> Option<&CheckTold> {
    report.checks.iter().find(|told| told.id == check.id())
}

fn told(report: &Report, check: CheckId) -> &CheckTold {
    find(report, check).unwrap_or_else(|| panic!("{} is told", check.id()))
}

fn reason(check: &CheckTold) -> &'static str {
    check.reason.and_then(text_of_code).map_or("", |row| row.what)
}

#[test]
fn without_a_floor_nothing_of_it_is_told_and_with_one_it_is() {
    let mut bare = cabinet(on_ground());
    bare.as_object_mut().expect("an object").remove("floor");
    let without = report(&bare);
    assert!(without.checks.iter().all(|check| !check.id.starts_with("slab.") && !check.id.starts_with("route.")));
    let with = report(&cabinet(on_ground()));
    for check in [
        CheckId::FootBearingAisc,
        CheckId::FootPlate,
        CheckId::FootPlateRest,
        CheckId::SlabQuakeBending,
        CheckId::SlabQuakePunching,
        CheckId::SlabRestBending,
        CheckId::SlabRestPunching,
    ] {
        let one = told(&with, check);
        assert_eq!(one.status, Status::Holds, "{}: {:?} {}", one.id, one.utilisation, reason(one));
    }
    assert_eq!(with.verdict, Verdict::Holds);
    assert!(find(&with, CheckId::FloorArea).is_none() && find(&with, CheckId::RaisedPanel).is_none());
}

#[test]
fn a_floor_that_holds_at_rest_is_no_proof_where_nothing_pushes() {
    let mut value = cabinet(on_ground());
    value.as_object_mut().expect("an object").remove("site");
    let report = report(&value);
    assert_eq!(told(&report, CheckId::SlabRestBending).status, Status::Holds);
    assert_eq!(report.verdict, Verdict::CannotBeSaid);
}

#[test]
fn what_falls_by_itself_has_no_floor_that_could_be_checked() {
    let mut value = cabinet(on_ground());
    value["cabinet"]["frame"]["centre_mm"] = json!([499, 0, 1000]);
    value["cabinet"]["anchors"] = json!([]);
    let report = report(&value);
    let resting = told(&report, CheckId::SlabRestPunching);
    assert!(
        resting.status == Status::NotCovered && reason(resting).contains("centre of gravity"),
        "{}",
        reason(resting)
    );
}

#[test]
fn a_missing_subgrade_is_said_and_the_verdict_waits() {
    let report = report(&cabinet(json!({ "kind": "on-ground" })));
    let bending = told(&report, CheckId::SlabRestBending);
    assert_eq!(bending.status, Status::NotCovered);
    assert!(reason(bending).contains("subgrade"), "{}", reason(bending));
    assert_eq!(report.verdict, Verdict::CannotBeSaid);
}

#[test]
fn every_range_of_the_slab_on_the_ground_is_kept_from_both_sides() {
    for (field, outside, inside) in [
        ("poisson", 0.3, 0.2),
        ("poisson", 0.05, 0.1),
        ("subgrade_n_per_mm3", 0.0029, 0.0031),
        ("subgrade_n_per_mm3", 0.31, 0.29),
        ("modulus_mpa", 4_900.0, 5_100.0),
        ("modulus_mpa", 61_000.0, 59_000.0),
    ] {
        for (value, is_covered) in [(outside, false), (inside, true)] {
            let mut floor = on_ground();
            floor[field] = json!(value);
            let report = report(&cabinet(floor));
            let status = told(&report, CheckId::SlabRestBending).status;
            assert_eq!(status != Status::NotCovered, is_covered, "{field} {value}");
        }
    }
}

#[test]
fn plain_concrete_never_gets_yield_lines_and_formats_are_not_mixed() {
    let mut fibres = on_ground();
    fibres["reinforcement"] = json!("fibres");
    fibres["residual_moment_n"] = json!(9000);
    fibres["tensile_strength_mpa"] = json!(1.9);
    fibres["load_factors"] = json!("tr-34");
    let with = report(&cabinet(fibres.clone()));
    assert_eq!(told(&with, CheckId::SlabRestBending).status, Status::Holds);
    let shaken = told(&with, CheckId::SlabQuakeBending);
    assert!(shaken.status == Status::NotCovered && reason(shaken).contains("another format"), "{}", reason(shaken));
    let mut in_limit_states = cabinet(fibres);
    in_limit_states["site"] = site("limit-states");
    let report = report(&in_limit_states);
    assert_eq!(told(&report, CheckId::SlabQuakeBending).status, Status::Holds);
    assert_eq!(told(&report, CheckId::FootBearingEn).status, Status::Holds);
    assert!(find(&report, CheckId::FootBearingAisc).is_none());
    let project = read(&cabinet(on_ground()));
    let at = told(&assess(&project), CheckId::SlabRestBending).at.expect("a place");
    let symbols: Vec<&str> = working(&project, &at)
        .iter()
        .flat_map(|section| &section.steps)
        .filter_map(|step| steadfoot::report::text_tables::text(step.id).map(|row| row.symbol))
        .collect();
    assert!(symbols.contains(&"n_s") && !symbols.contains(&"M_p"), "working stress: {symbols:?}");
}

/// Bending at rest with these edges near: its status, what it comes to, and why not.
fn bent_beside(edges: &Value, mass: f64) -> (Status, Option<f64>, String) {
    let mut value = cabinet(on_ground());
    value["slab"]["edges_mm"] = edges.clone();
    value["cabinet"]["frame"]["mass_kg"] = json!(mass);
    let report = report(&value);
    let bending = told(&report, CheckId::SlabRestBending);
    (bending.status, bending.utilisation, reason(bending).to_string())
}

#[test]
fn beside_one_free_edge_legs_are_put_together_by_the_plate_that_has_it() {
    let edge = json!({ "front": 700 });
    let light = bent_beside(&edge, 300.0).1.expect("a number");
    let (status, middling, _) = bent_beside(&edge, 2500.0);
    assert_eq!(status, Status::Holds);
    assert!((middling.expect("a number") / light - 2500.0 / 300.0).abs() < 1e-9, "stress grows with the mass");
    // More than the leg alone and less than all four on one place, which is all that a second edge leaves to say.
    let own = light / 300.0;
    let bound = bent_beside(&json!({ "front": 700, "left": 700 }), 300.0).1.expect("light legs are bounded") / 300.0;
    assert!(bound > 2.0 * own, "{bound} {own}");
    assert_eq!(bent_beside(&edge, 6500.0).0, Status::Holds);
    assert_eq!(bent_beside(&edge, 7500.0).0, Status::Fails);
    // The plate has the same edge on whichever side it lies.
    let [front, rear] = ["front", "rear"].map(|side| bent_beside(&json!({ side: 700 }), 2000.0).1.expect("a number"));
    let [left, right] = ["left", "right"].map(|side| bent_beside(&json!({ side: 700 }), 2000.0).1.expect("a number"));
    assert!((front / rear - 1.0).abs() < 1e-9 && (left / right - 1.0).abs() < 1e-9, "{front} {rear} {left} {right}");
    assert!((front / left - 1.0).abs() > 1e-6, "legs stand otherwise along the other edge");
}

#[test]
fn beside_a_second_edge_or_an_opening_legs_are_bounded_by_all_of_them_on_one_place_or_not_covered() {
    let corner = json!({ "front": 700, "left": 700 });
    assert_eq!(bent_beside(&corner, 200.0).0, Status::Holds);
    let (status, _, why) = bent_beside(&corner, 2500.0);
    assert!(status == Status::NotCovered && why.contains("second edge or an opening"), "{why}");
    assert_eq!(bent_beside(&corner, 20_000.0).0, Status::Fails);
    // Opposite edges of a strip are no half plane either.
    assert_eq!(bent_beside(&json!({ "front": 700, "rear": 700 }), 4000.0).0, Status::NotCovered);
    // An opening on the far side makes of one edge two; farther off it does not.
    let with_opening = |from_mm: f64| {
        let mut value = cabinet(on_ground());
        value["slab"]["edges_mm"] = json!({ "front": 700 });
        value["slab"]["openings"] = json!([{ "at_mm": [0, from_mm + 200.0], "size_mm": [1000, 400] }]);
        value["cabinet"]["frame"]["mass_kg"] = json!(4000);
        let report = report(&value);
        told(&report, CheckId::SlabRestBending).status
    };
    assert_eq!(with_opening(900.0), Status::NotCovered);
    assert_eq!(with_opening(2600.0), Status::Holds);
}

/// Where one edge lies so far that no leg counts as standing at it, it sends nothing back that would be told; nearer, the
/// answer does not leap but for the leg's own form.
#[test]
fn a_free_edge_far_away_sends_nothing_back() {
    let nowhere = bent_beside(&json!({}), 2000.0).1.expect("a number");
    let far = bent_beside(&json!({ "front": 2000 }), 2000.0).1.expect("a number");
    assert_eq!(far, nowhere);
}

#[test]
fn a_suspended_slab_is_held_to_its_live_load() {
    let floor = json!({ "kind": "suspended", "reinforcement": "fabric", "effective_depth_mm": 160, "reinforcement_ratio": 0.005,
        "span_mm": 6000, "live_load_mpa": 0.012, "pitch_mm": [1000, 2400], "aisle_load_mpa": 0.0024 });
    let with = report(&cabinet(floor.clone()));
    let area = told(&with, CheckId::FloorArea);
    let expected = (2000.0 * 9.80665 / (1.0 * 2.4) + 2400.0 * (1.0 - 1.2 / 2.4)) / 1e6;
    assert!((area.value.expect("a load") - expected).abs() < 1e-9);
    assert_eq!(told(&with, CheckId::FloorStrip).status, Status::Holds);
    assert_eq!(told(&with, CheckId::SlabRestPunching).status, Status::Holds);
    assert!(find(&with, CheckId::SlabRestBending).is_none());
    let mut unknown = floor;
    unknown.as_object_mut().expect("an object").remove("live_load_mpa");
    let without = report(&cabinet(unknown.clone()));
    assert!(reason(told(&without, CheckId::FloorArea)).contains("ask the owner"));
    unknown["occupancy"] = json!("us-office");
    assert_eq!(told(&report(&cabinet(unknown)), CheckId::FloorArea).status, Status::Fails);
}

#[test]
fn four_tonnes_on_four_legs_are_above_every_class_of_panels() {
    for class in ["1", "2", "3", "4", "5", "6"] {
        let mut floor = on_ground();
        floor["raised"] = json!({ "en_class": class });
        let mut value = cabinet(floor);
        value["cabinet"]["frame"]["mass_kg"] = json!(4000);
        let report = self::report(&value);
        assert_eq!(told(&report, CheckId::RaisedPanel).status, Status::Fails, "class {class}");
        assert!(reason(told(&report, CheckId::RaisedShaken)).contains("stand"));
    }
    // Half of an ultimate load counts, and not a hair more; a working load that is given goes before it.
    for (raised, status) in [
        (json!({ "ultimate_load_n": 9_807 }), Status::Holds),
        (json!({ "ultimate_load_n": 9_806 }), Status::Fails),
        (json!({ "ultimate_load_n": 9_807, "working_load_n": 4_900 }), Status::Fails),
    ] {
        let mut floor = on_ground();
        floor["raised"] = raised;
        assert_eq!(told(&report(&cabinet(floor)), CheckId::RaisedPanel).status, status);
    }
    let mut floor = on_ground();
    floor["raised"] = json!({ "stand_to_slab": true });
    let report = report(&cabinet(floor));
    assert_eq!(told(&report, CheckId::RaisedPanel).status, Status::NotNeeded);
    assert!(find(&report, CheckId::RaisedShaken).is_none());
}

#[test]
fn on_the_way_in_three_of_four_wheels_bear() {
    let mut floor = on_ground();
    floor["raised"] = json!({ "psa_grade": "heavy", "rolling_n": 9000 });
    floor["casters"] = json!({ "radius_mm": 75, "width_mm": 50, "tread": "nylon" });
    let report = report(&cabinet(floor.clone()));
    let rolled = told(&report, CheckId::RoutePanel);
    assert!((rolled.value.expect("a load") - 1.25 * 2000.0 * 9.80665 / 3.0).abs() < 1e-6);
    assert_eq!(rolled.status, Status::Holds);
    assert_eq!(told(&report, CheckId::RouteBending).status, Status::Holds);
    floor["raised"].as_object_mut().expect("an object").remove("rolling_n");
    let without = self::report(&cabinet(floor));
    assert!(reason(told(&without, CheckId::RoutePanel)).contains("says nothing of wheels"));
}

#[test]
fn a_hollow_under_a_foot_moves_its_load_to_the_other_diagonal() {
    let corners = [(-550.0, -550.0), (550.0, -550.0), (550.0, 550.0), (-550.0, 550.0)].map(|(x, y)| Point::new(x, y));
    let feet = corners.map(|at| Foot { at, half: Size::new(0.0, 0.0), stiffness_n_per_mm: 5e3 });
    let weight_n = 4000.0 * 9.80665;
    let load = BaseLoad { down_n: weight_n, moment_x_nmm: 0.0, moment_y_nmm: 0.0 };
    let hollow = Supports::new(&feet, &[]).with_gaps_mm(&[2.0, 0.0, 0.0, 0.0]).settle(&load).expect("it stands");
    assert!((hollow.feet[0].force_n - 7306.65).abs() < 0.01 && (hollow.feet[2].force_n - 7306.65).abs() < 0.01);
    assert!((hollow.feet[1].force_n - 12_306.65).abs() < 0.01);
    let deep = Supports::new(&feet, &[]).with_gaps_mm(&[9.0, 0.0, 0.0, 0.0]).settle(&load).expect("it stands");
    assert_eq!(deep.feet[0].force_n, 0.0);
    assert!((deep.feet[1].force_n - weight_n / 2.0).abs() < 1e-6);
    let even = Supports::new(&feet, &[]).with_gaps_mm(&[2.0; 4]).settle(&load).expect("it stands");
    assert!((even.feet[0].force_n - weight_n / 4.0).abs() < 1e-6, "the same gap everywhere only lets it settle");
}

#[test]
fn gaps_with_feet_of_a_size_balance_every_load() {
    let mut random = Random::new(5);
    let mut number = |low: f64, high: f64| low + (high - low) * random.part();
    for _ in 0..500 {
        let half = Size::new(number(20.0, 80.0), number(20.0, 80.0));
        let feet = [(-400.0, -500.0), (400.0, -500.0), (400.0, 500.0), (-400.0, 500.0)].map(|(x, y)| Foot {
            at: Point::new(x, y),
            half,
            stiffness_n_per_mm: 2e4,
        });
        let gaps = [number(0.0, 3.0), 0.0, number(0.0, 1.0), 0.0];
        let load = BaseLoad { down_n: 3e4, moment_x_nmm: number(-1e7, 1e7), moment_y_nmm: number(-1e7, 1e7) };
        let supports = Supports::new(&feet, &[]).with_gaps_mm(&gaps);
        let Ok(settled) = supports.settle(&load) else { continue };
        let total: f64 = settled.feet.iter().map(|foot| foot.force_n).sum();
        assert!((total - 3e4).abs() < 1e-4, "{total}");
        assert!(settled.residual < 1e-9);
    }
}

#[test]
fn springs_in_series_make_the_pull_smaller_or_larger_and_are_told() {
    // The pull, and whether its working names a spring.
    let pull = |value: &Value, spring: &str| {
        let project = read(value);
        let report = assess(&project);
        let steel = told(&report, CheckId::AnchorTensionSteel);
        let steps = working(&project, &steel.at.expect("a place")).into_iter().flat_map(|section| section.steps);
        let is_told = steps.filter_map(|step| text(step.id)).any(|row| row.symbol == spring);
        (steel.value.expect("a pull"), is_told)
    };
    let mut stiff = cabinet(on_ground());
    stiff.as_object_mut().expect("an object").remove("floor");
    let (base, is_told) = pull(&stiff, "k_clip");
    assert!(!is_told && !pull(&stiff, "k_pad").1);
    let mut clipped = stiff.clone();
    for anchor in clipped["cabinet"]["anchors"].as_array_mut().expect("anchors") {
        anchor["clip_stiffness_n_per_mm"] = json!(5000);
    }
    let mut soft_feet = stiff;
    for foot in soft_feet["cabinet"]["feet"].as_array_mut().expect("feet") {
        foot["pad_stiffness_n_per_mm"] = json!(5000);
    }
    let ((clipped, tells_clip), (soft, tells_pad)) = (pull(&clipped, "k_clip"), pull(&soft_feet, "k_pad"));
    assert!(clipped < base && soft > base, "{clipped} {base} {soft}");
    assert!(tells_clip && tells_pad);
}
