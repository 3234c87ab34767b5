//! Moving and lifting, in the state that is worst for each check of them.

use alloc::vec::Vec;

use super::bench::Bench;
use crate::calc::{CheckId, Outcome, Sheet, Status};
use crate::checks::lifting::Hung;
use crate::checks::moving::Moved;
use crate::rules::anchor::Finding;

/// The checks of moving and lifting.
pub const CHECKS: [CheckId; 14] = [
    CheckId::MovePush,
    CheckId::MoveSill,
    CheckId::MoveBrake,
    CheckId::MoveTruck,
    CheckId::MoveForks,
    CheckId::MoveEntry,
    CheckId::MoveRoad,
    CheckId::LiftCentre,
    CheckId::LiftTilt,
    CheckId::LiftAngle,
    CheckId::LiftLeg,
    CheckId::LiftSling,
    CheckId::LiftAttachment,
    CheckId::LiftThread,
];

/// Every check of moving and lifting with the place of its worst state; nothing where neither is asked.
///
/// A state that fails counts before one that is not covered, and that before one that holds.
pub fn handled(bench: &Bench) -> Vec<(Finding, usize)> {
    let mut worst: Vec<(Finding, usize)> = Vec::new();
    for state in 0..bench.loads.len() {
        let mut findings = Vec::new();
        check(bench, state, &mut Sheet::quiet(), &mut findings);
        for finding in findings {
            match worst.iter_mut().find(|(known, _)| known.check == finding.check) {
                Some(known) if rank(&finding) > rank(&known.0) => *known = (finding, state),
                Some(_) => {}
                None => worst.push((finding, state)),
            }
        }
    }
    worst
}

/// Moving and lifting of one state, where they are asked.
pub fn check(bench: &Bench, state: usize, sheet: &mut Sheet, findings: &mut Vec<Finding>) {
    let (project, load) = (bench.project, &bench.loads[state]);
    let (mass_kg, centre_mm) = (load.mass_kg, load.centre_mm);
    if let Some(values) = &project.moving {
        let size_mm = [project.cabinet.width_mm, project.cabinet.depth_mm];
        Moved { mass_kg, centre_mm, hull: bench.supports[0].feet_hull(), size_mm, values }.check(sheet, findings);
    }
    if let Some(values) = &project.lifting {
        Hung { mass_kg, centre_mm, points: &project.cabinet.lifting_points, values }.check(sheet, findings);
    }
}

fn rank(finding: &Finding) -> (u8, f64) {
    match (finding.outcome.status(), finding.outcome) {
        (Status::Fails, Outcome::Compared { utilisation, .. }) if utilisation.is_nan() => (3, f64::INFINITY),
        (Status::Fails, Outcome::Compared { utilisation, .. }) => (3, utilisation),
        (Status::Holds, Outcome::Compared { utilisation, .. }) => (1, utilisation),
        (Status::NotCovered, _) => (2, 0.0),
        _ => (0, 0.0),
    }
}
