//! Holes as they were drilled: the same project once more with its anchors where they really are.

use super::Project;
use super::assess::quick_told;
use super::bench::Bench;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Subject, System};
use crate::checks::as_built::{DELTA, U_BUILT, UNCOVERED};
use crate::geometry::Point;
use crate::report::outcome::Verdict;

/// A hole farther than this from its mark belongs to another mark, or was measured in other axes.
pub const FAR_OFF_MM: f64 = 300.0;

/// The project with every anchor where it was drilled, those that nobody measured where they were planned; none where
/// nothing was measured.
///
/// ```
/// use steadfoot::{calc::System, project};
/// let text = r#"{ "format": "steadfoot 1", "cabinet": { "width_mm": 600, "depth_mm": 800, "height_mm": 2000,
///     "frame": { "mass_kg": 200, "centre_mm": [0, 0, 900] },
///     "anchors": [{ "at_mm": [-200, 0], "as_built_mm": [-204, 3] }, { "at_mm": [200, 0] }] } }"#;
/// let built = project::as_built(&project::read(text, System::Si).unwrap()).unwrap();
/// assert_eq!(built.cabinet.anchors[0].at.x_mm, -204.0);
/// assert_eq!(built.cabinet.anchors[1].at.x_mm, 200.0);
/// ```
pub fn as_built(project: &Project) -> Option<Project> {
    let anchors = &project.cabinet.anchors;
    if anchors.iter().all(|anchor| anchor.as_built.is_none()) {
        return None;
    }
    let mut built = project.clone();
    for anchor in &mut built.cabinet.anchors {
        anchor.at = anchor.as_built.take().unwrap_or(anchor.at);
    }
    Some(built)
}

/// The project as it was planned, without what was measured since.
pub fn as_planned(project: &Project) -> Project {
    let mut planned = project.clone();
    for anchor in &mut planned.cabinet.anchors {
        anchor.as_built = None;
    }
    planned
}

/// What the required checks come to with the anchors where they were drilled; none where nothing was measured.
pub(super) fn check(project: &Project, sheet: &mut Sheet) -> Option<Outcome> {
    let built = as_built(project)?;
    let quick = quick_told(&mut Bench::new(&built));
    sheet.open(Part::Anchors, Subject::Whole, Some(CheckId::AnchorAsBuilt), System::Si);
    let [from, to] = farthest(project);
    let line = || Detail::Shape([from, to].map(|end| [end.x_mm, end.y_mm]).into());
    sheet.detailed(DELTA, from.distance_mm(to), line);
    if quick.verdict == Verdict::CannotBeSaid {
        return Some(Outcome::NotCovered(UNCOVERED));
    }
    let utilisation = quick.governing().map_or(f64::NAN, |check| check.utilisation.unwrap_or(f64::INFINITY));
    sheet.detailed(U_BUILT, utilisation, || Detail::Bracket([utilisation; 2]));
    Some(Outcome::Compared { value: utilisation, limit: 1.0, utilisation })
}

/// Mark and hole of the anchor that is farthest off.
fn farthest(project: &Project) -> [Point; 2] {
    let mut farthest = [Point::default(); 2];
    for anchor in &project.cabinet.anchors {
        let hole = anchor.as_built.unwrap_or(anchor.at);
        if anchor.at.distance_mm(hole) >= farthest[0].distance_mm(farthest[1]) {
            farthest = [anchor.at, hole];
        }
    }
    farthest
}
