//! The frame, moving and lifting, in the state that is worst for each check of them.

use alloc::vec::Vec;

use super::Project;
use super::bench::Bench;
use crate::calc::{Outcome, Sheet, Status};
use crate::checks::lifting::Hung;
use crate::checks::moving::Moved;
use crate::frame::{Asked, BASE_ON, Swayed};
use crate::geometry::Point;
use crate::input::Values;
use crate::load_case::Level;
use crate::load_out::Content;
use crate::rules::anchor::Finding;

/// Every check of the frame, of moving and of lifting with the place of its worst state; nothing where none of them is asked.
///
/// A state that fails counts before one that is not covered, and that before one that holds.
pub fn handled(bench: &Bench) -> Vec<(Finding, usize)> {
    let mut worst: Vec<(Finding, usize)> = Vec::new();
    let project = bench.project;
    if project.structure.is_none() && project.moving.is_none() && project.lifting.is_none() {
        return worst;
    }
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

/// The frame, moving and lifting of one state, where they are asked.
pub fn check(bench: &Bench, state: usize, sheet: &mut Sheet, findings: &mut Vec<Finding>) {
    let (project, load) = (bench.project, &bench.loads[state]);
    let (mass_kg, centre_mm) = (load.mass_kg, load.centre_mm);
    if let Some(values) = &project.structure {
        swayed_on(bench, state, values, &mut |swayed| swayed.check(asked(bench), sheet, findings));
    }
    if let Some(values) = &project.moving {
        let size_mm = [project.cabinet.width_mm, project.cabinet.depth_mm];
        let heaviest_kg = project.contents.iter().map(|content| content.mass_kg).fold(0.0, f64::max);
        let hull = bench.supports[0].feet_hull();
        Moved { mass_kg, centre_mm, hull, size_mm, heaviest_kg, values }.check(sheet, findings);
    }
    if let Some(values) = &project.lifting {
        Hung { mass_kg, centre_mm, points: &project.cabinet.lifting_points, values }.check(sheet, findings);
    }
}

/// What the cases for the cabinet itself ask at most.
fn asked(bench: &Bench) -> Option<Asked> {
    let format = bench.project.site.as_ref().map(|site| (site.rule.format)(&site.values))?;
    let own = || bench.cases().iter().filter(|case| case.level == Level::Component);
    own().next()?;
    Some(Asked {
        horizontal: own().map(|case| case.horizontal).fold(0.0, f64::max),
        downwards: own().map(|case| case.gravity + case.vertical).fold(0.0, f64::max),
        format,
    })
}

/// Hands over the frame of a project in a state; nothing where its structure is not given.
pub fn swayed(project: &Project, state: usize, then: &mut dyn FnMut(&Swayed)) {
    if let Some(values) = &project.structure {
        swayed_on(&Bench::new(project), state, values, then);
    }
}

/// Hands over the frame with what is aboard in a state.
fn swayed_on(bench: &Bench, state: usize, values: &Values, then: &mut dyn FnMut(&Swayed)) {
    let project = bench.project;
    let states = project.all_states();
    let aboard: Vec<&Content> = states[state].aboard.iter().map(|one| &project.contents[one.content]).collect();
    // The base turns on its feet; on its anchors, too, only where the file says that they are tight.
    let mut springs: Vec<(Point, f64)> =
        bench.supports[0].feet().iter().map(|foot| (foot.at, foot.stiffness_n_per_mm)).collect();
    if values.choice(BASE_ON) == Some(1) {
        springs.extend(bench.supports[0].anchors().iter().map(|anchor| (anchor.at, anchor.stiffness_n_per_mm)));
    }
    let turning = |along: fn(&Point) -> f64| {
        let whole: f64 = springs.iter().map(|(_, stiffness)| stiffness).sum();
        let middle = springs.iter().map(|(at, stiffness)| stiffness * along(at)).sum::<f64>() / whole;
        let arm = |at: &Point| along(at) - middle;
        springs.iter().map(|(at, stiffness)| stiffness * arm(at) * arm(at)).sum()
    };
    let base = [turning(|at| at.x_mm), turning(|at| at.y_mm)];
    let base_nmm = base.iter().all(|stiffness: &f64| *stiffness > 0.0).then_some(base);
    let mass_kg = bench.loads[state].mass_kg;
    let feet_mm: Vec<[f64; 2]> = springs.iter().map(|(at, _)| [at.x_mm, at.y_mm]).collect();
    then(&Swayed { values, cabinet: &project.cabinet, aboard: &aboard, mass_kg, base_nmm, feet_mm: &feet_mm });
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
