//! The sweep leaves out what cannot govern; a search everywhere, degree by degree, finds nothing higher.

use std::f64::consts::TAU;

use steadfoot::calc::{CheckId, Outcome, Sheet, Status, System};
use steadfoot::project::bench::{Bench, Place};
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
            if !(highest[place] > 1e-3) {
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
