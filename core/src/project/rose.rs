//! The rose: how far the cabinet is used for every direction of the push, and by what.

use crate::calc::order::put_in_order;
use alloc::vec::Vec;

use super::assess::{at, worst};
use super::bench::{Bench, Place, STIFFNESS_FACTORS};
use super::loads::Tried;
use crate::calc::{CheckId, Outcome, Role, Sheet};
use crate::report::outcome::{CheckTold, RosePoint};
use crate::rules::anchor::Finding;
use crate::rules::anchor_set::{members, only};

/// Directions of the rose: every 7.5 degrees.
const STEPS: usize = 48;

/// The largest utilisation of the required checks for every direction, in the state that governs, over all its loads.
///
/// It is taken with the anchors as stiff as where the answer is governed, so that the rose touches the answer.
pub fn rose(bench: &mut Bench, checks: &[CheckTold], governs: Option<usize>) -> Vec<RosePoint> {
    let Some(peak) = governs.and_then(|place| checks[place].at) else { return Vec::new() };
    let stiffness = STIFFNESS_FACTORS.iter().position(|&factor| factor == peak.stiffness).unwrap_or(0);
    let mut directions: Vec<f64> = (0..STEPS).map(|step| step as f64 * core::f64::consts::TAU / STEPS as f64).collect();
    if let Some(Tried::Only(list)) = bench.runs.first().map(|&run| bench.plan_directions(run)) {
        // A rule that names its directions is shown in those alone.
        directions = list;
    }
    directions.push(peak.direction_rad);
    put_in_order(&mut directions, f64::total_cmp);
    directions.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    let mut points = Vec::new();
    let mut findings: Vec<Finding> = Vec::new();
    let is_required = |check: &&CheckId| check.role() == Role::Required;
    let required = CheckId::ALL.iter().filter(is_required).fold(0, |set, &check| set | only(check as usize));
    for direction_rad in directions {
        let mut highest: Option<(f64, CheckId, RosePoint)> = None;
        for run in bench.runs.clone() {
            let place = Place { state: peak.state, run, direction_rad, stiffness };
            findings.clear();
            bench.check(&place, &mut Sheet::quiet(), &mut findings);
            let found = findings.iter().fold(0, |set, finding| set | only(finding.check as usize));
            for check in members(found & required).map(|place| CheckId::ALL[place]) {
                let Some(finding) = worst(&findings, check) else { continue };
                let Outcome::Compared { utilisation, .. } = finding.outcome else { continue };
                let utilisation = if utilisation.is_nan() { f64::INFINITY } else { utilisation };
                if highest.as_ref().is_none_or(|(known, ..)| utilisation > *known) {
                    let point = RosePoint {
                        direction_rad,
                        utilisation: utilisation.is_finite().then_some(utilisation),
                        check: checks.iter().position(|told| told.id == check.id()),
                        at: at(place, finding.subject, check),
                    };
                    highest = Some((utilisation, check, point));
                }
            }
        }
        if let Some((.., point)) = highest {
            points.push(point);
        }
    }
    points
}
