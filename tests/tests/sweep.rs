//! The sweep leaves out what cannot govern; a search everywhere, degree by degree, finds nothing higher.

use std::f64::consts::TAU;

use serde_json::json;
use steadfoot::calc::{CheckId, Outcome, Sheet, Status, System};
use steadfoot::project::bench::{Bench, Place};
use steadfoot::project::mirror::Mirror;
use steadfoot::project::{self, Project};

use steadfoot::report::outcome::CheckTold;
use steadfoot::rules::anchor::Finding;
use steadfoot_tests::{random::Random, random_project::random_project};

/// The highest utilisation of every check over all states, loads, stiffnesses and this many even directions.
fn everywhere(project: &Project, directions: usize) -> Vec<f64> {
    let mut bench = Bench::new(project);
    let mut highest = vec![f64::NEG_INFINITY; CheckId::ALL.len()];
    let mut findings: Vec<Finding> = Vec::new();
    for stiffness in 0..bench.supports.len() {
        for state in 0..bench.loads.len() {
            for run in bench.runs.clone() {
                for step in 0..directions {
                    let direction_rad = TAU * step as f64 / directions as f64;
                    findings.clear();
                    let place = Place { state, run, direction_rad, stiffness };
                    bench.check(&place, &mut Sheet::quiet(), &mut findings);
                    for finding in &findings {
                        if let Outcome::Compared { utilisation, .. } = finding.outcome {
                            let known = &mut highest[finding.check as usize];
                            *known = known.max(if utilisation.is_nan() { f64::INFINITY } else { utilisation });
                        }
                    }
                }
            }
        }
    }
    highest
}

#[test]
fn nothing_is_higher_elsewhere_than_where_the_sweep_looked() {
    let mut random = Random::new(77);
    let (mut compared, mut worst) = (0, 0.0_f64);
    let count = std::env::var("STEADFOOT_SWEEPS").ok().and_then(|count| count.parse().ok()).unwrap_or(100);
    let mut projects = 0;
    for number in 0..100 * count {
        if projects == count {
            break;
        }
        let text = random_project(&mut random).to_string();
        let Ok(project) = project::read(&text, System::Si) else { continue };
        let report = project::assess(&project);
        // A rule that names its directions is not asked in others.
        if report.cases.iter().any(|case| case.directions != "any") {
            continue;
        }
        let is_swept = |check: &&CheckTold| check.utilisation.is_some() && check.at.is_some_and(|at| at.case.is_some());
        // Within a hair of tipping a foot is pressed at a corner only; where the cabinet tips that says nothing more.
        let tips = |check: &CheckTold| check.id == "base.equilibrium" && check.status == Status::Fails;
        if report.checks.iter().filter(is_swept).count() < 3 || report.checks.iter().any(tips) {
            continue;
        }
        projects += 1;
        let highest = everywhere(&project, 360);
        for check in report.checks.iter().filter(is_swept) {
            let Some(found) = check.utilisation else { continue };
            let place = CheckId::ALL.iter().position(|known| known.id() == check.id).expect("a known check");
            if highest[place].is_nan() || highest[place] <= 1e-3 {
                continue;
            }
            compared += 1;
            let miss = 1.0 - found / highest[place];
            worst = worst.max(miss);
            assert!(miss < 0.005, "{number} {}: {found} told, {} elsewhere\n{text}", check.id, highest[place]);
        }
    }
    println!("{projects} projects, {compared} checks compared, worst miss {worst}");
    assert!(compared > 3 * count, "only {compared} checks were compared");
}

/// A stack of trays that looks alike from left and right, with one tray this far from the middle.
fn stack(random: &mut Random, aside_mm: f64) -> serde_json::Value {
    let mass = |random: &mut Random| random.between(50.0, 600.0).round();
    let contents: Vec<serde_json::Value> = (0..4)
        .map(|tray| {
            json!({ "name": format!("tray {tray}"), "mass_kg": mass(random), "bottom_mm": 100 + 450 * tray,
                "size_mm": [800, 900, 300], "offset_mm": if tray == 0 { [aside_mm; 2] } else { [0.0; 2] } })
        })
        .collect();
    let [x, y] = [random.between(350.0, 480.0).round(), random.between(400.0, 560.0).round()];
    let corners = [("a", -x, -y), ("b", x, -y), ("c", x, y), ("d", -x, y)];
    let feet: Vec<_> =
        corners.iter().map(|(name, x, y)| json!({ "name": name, "at_mm": [x, y], "size_mm": [100, 80] })).collect();
    let anchors: Vec<_> = corners.iter().map(|(_, x, y)| json!({ "at_mm": [1.1 * x, 1.1 * y] })).collect();
    let rear = [json!(null), json!(1500)][random.below(2)].clone();
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1100, "depth_mm": 1300, "height_mm": 2200, "frame": { "mass_kg": 400, "centre_mm": [0, 0, 900] },
            "feet": feet, "anchors": anchors },
        "contents": contents,
        "slab": { "strength_mpa": 28, "thickness_mm": 220, "edges_mm": { "left": 1200, "right": 1200, "front": null, "rear": rear } },
        "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": random.between(0.2, 0.7), "vertical_coefficient": 0.2,
                  "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2.0 },
        "anchorage": { "rule": "aci-318-19-si", "bolt": "M20", "steel": "f1554-36", "embedment_mm": 140 } })
}

#[test]
fn a_cabinet_that_looks_alike_from_both_sides_is_asked_on_one_and_told_the_same() {
    let mut random = Random::new(78);
    for number in 0..25 {
        let seed = random.bits();
        let read = |aside_mm: f64| {
            let file = stack(&mut Random::new(seed), aside_mm).to_string();
            project::read(&file, System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
        };
        let (alike, aside) = (read(0.0), read(1e-5));
        assert_ne!(Bench::new(&alike).mirror, Mirror::default(), "it looks alike");
        assert_eq!(Bench::new(&aside).mirror, Mirror::default(), "a hair aside it does not");
        let [alike, aside] = [alike, aside].map(|project| project::assess(&project));
        assert_eq!(alike.verdict, aside.verdict);
        for (one, other) in alike.checks.iter().zip(&aside.checks) {
            assert_eq!((one.id, one.status), (other.id, other.status));
            let (Some(a), Some(b)) = (one.utilisation, other.utilisation) else { continue };
            assert!((a - b).abs() <= 2e-4 * b, "{number} {}: {a} and {b}", one.id);
            let (Some(a), Some(b)) = (one.span, other.span) else { continue };
            assert!((a[0] - b[0]).abs() <= 2e-4 * b[0], "{number} {}: {a:?} and {b:?}", one.id);
        }
    }
}
