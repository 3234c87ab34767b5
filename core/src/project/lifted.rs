//! Lifting, in the state that is worst for each check of it.

use alloc::vec::Vec;

use super::Project;
use super::bench::Bench;
use crate::calc::{CheckId, Outcome, Sheet, Status};
use crate::checks::lifting::Hung;
use crate::rules::anchor::Finding;

/// The checks of lifting.
pub const CHECKS: [CheckId; 7] = [
    CheckId::LiftCentre,
    CheckId::LiftTilt,
    CheckId::LiftAngle,
    CheckId::LiftLeg,
    CheckId::LiftSling,
    CheckId::LiftAttachment,
    CheckId::LiftThread,
];

/// Every check of lifting with the place of its worst state; nothing where no rigging is given.
///
/// A state that fails counts before one that is not covered, and that before one that holds.
pub fn lifted(bench: &Bench) -> Vec<(Finding, usize)> {
    let mut worst: Vec<(Finding, usize)> = Vec::new();
    for state in 0..bench.loads.len() {
        let Some(hung) = hung(bench, state) else { return worst };
        let mut findings = Vec::new();
        hung.check(&mut Sheet::quiet(), &mut findings);
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

/// The cabinet on its hook in a state, where the rigging is given.
pub fn hung<'b>(bench: &'b Bench, state: usize) -> Option<Hung<'b>> {
    let project: &Project = bench.project;
    let load = &bench.loads[state];
    Some(Hung {
        mass_kg: load.mass_kg,
        centre_mm: load.centre_mm,
        points: &project.cabinet.lifting_points,
        values: project.lifting.as_ref()?,
    })
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
