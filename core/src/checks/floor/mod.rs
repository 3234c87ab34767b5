//! The floor under the reader's cabinet: at rest, in an earthquake, and on the way in.
//!
//! Working stress and factored load are never mixed. At rest and on the way in a plain slab is held to a working stress,
//! or to limit states where EN 1990 is chosen; slabs with fabric or fibres to yield lines with the factors of TR34; in an
//! earthquake the load cases of the seismic rule decide the format, and what does not fit it is not covered.

mod area;
mod bending;
mod free_edge;
mod grout;
mod leg_steps;
mod plate;
mod punching;
mod rail;
mod raised;
mod route;
mod rows;
mod site;
mod steps;
mod yielding;

pub use leg_steps::TEXTS as LEG_TEXTS;
pub use site::{FloorSite, Leg};
pub use steps::{FALLS, TEXTS};

use alloc::vec::Vec;

use crate::calc::{CheckId, Outcome, Sheet, StepId, Subject};
use crate::geometry::Size;
use crate::load_case::Format;
use crate::rules::anchor::Finding;

/// How a check is to be read: at rest, on the way in, or under a load case of this format.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Occasion {
    /// Standing, by the weight alone.
    AtRest,
    /// In an earthquake, in a load case whose forces are as the format has them.
    Earthquake(Format),
    /// Rolling in.
    Moving,
}

/// What stands on the floor at one time.
#[derive(Clone, Copy, Debug)]
pub struct Standing<'a> {
    /// Weight of the state.
    pub weight_n: f64,
    /// Forces of the legs, in the order of the feet; factored where the occasion's format has them so.
    pub legs_n: &'a [f64],
    /// Half sides of the rectangle in each foot whose middle is where its force acts.
    pub pressed_half: &'a [Size],
}

/// Everything of the floor that is checked at rest and on the way in, for one state.
pub fn check_rest(site: &FloorSite, standing: &Standing, sheet: &mut Sheet, findings: &mut Vec<Finding>) {
    let mut find = |check, subject, outcome| findings.push(Finding { check, subject, outcome });
    for leg in 0..site.legs.len() {
        let subject = Subject::Foot(leg as u16);
        if standing.legs_n[leg] <= 0.0 {
            continue;
        }
        if site.is_on_ground() {
            let outcome = bending::leg(site, leg, standing, Occasion::AtRest, sheet);
            find(CheckId::SlabRestBending, subject, outcome);
        }
        let outcome = punching::leg(site, leg, standing, Occasion::AtRest, sheet);
        find(CheckId::SlabRestPunching, subject, outcome);
        if let Some(outcome) = plate::leg(site, leg, standing, Occasion::AtRest, sheet) {
            find(CheckId::FootPlateRest, subject, outcome);
        }
    }
    if let Some(outcome) = bending::group(site, standing, Occasion::AtRest, sheet) {
        find(CheckId::SlabRestBending, Subject::Whole, outcome);
    }
    if site.is_on_ground()
        && let Some(outcome) = rows::rows(site, standing.weight_n, sheet)
    {
        find(CheckId::SlabRestRows, Subject::Whole, outcome);
    }
    if !site.is_on_ground() {
        if let Some(outcome) = area::heaviest_leg(site, standing, sheet) {
            find(CheckId::FloorLeg, Subject::Whole, outcome);
        }
        find(CheckId::FloorArea, Subject::Whole, area::over_pitch(site, standing.weight_n, sheet));
        find(CheckId::FloorStrip, Subject::Whole, area::equivalent(site, standing, sheet));
    }
    raised::check(site, standing, sheet, &mut find);
    route::check(site, standing.weight_n, sheet, &mut find);
}

/// Everything of the floor that is checked in an earthquake: one leg.
pub fn check_leg(
    site: &FloorSite,
    leg: usize,
    standing: &Standing,
    format: Format,
    sheet: &mut Sheet,
) -> Vec<(CheckId, Outcome)> {
    let occasion = Occasion::Earthquake(format);
    let mut found = Vec::new();
    if site.is_on_ground() {
        found.push((CheckId::SlabQuakeBending, bending::leg(site, leg, standing, occasion, sheet)));
    }
    found.push((CheckId::SlabQuakePunching, punching::leg(site, leg, standing, occasion, sheet)));
    if let Some(outcome) = plate::leg(site, leg, standing, occasion, sheet) {
        found.push((CheckId::FootPlate, outcome));
    }
    found
}

/// The legs that break through together in an earthquake; none where they do not.
pub fn check_group(site: &FloorSite, standing: &Standing, format: Format, sheet: &mut Sheet) -> Option<Outcome> {
    bending::group(site, standing, Occasion::Earthquake(format), sheet)
}

/// Other bearing rules beside that of ACI 318: the load of one leg by AISC 360 J8, by EN 1992-1-1 6.7, and on grout.
pub fn check_bearing(
    site: &FloorSite,
    leg: usize,
    force: &crate::checks::feet::FootForce,
    format: Format,
    sheet: &mut Sheet,
) -> [Option<(CheckId, Outcome)>; 3] {
    let [aisc, en] = plate::bearing(site, leg, force, format, sheet);
    let joint = grout::joint(site, leg, force, format, sheet);
    [aisc, en, joint.map(|outcome| (CheckId::FootGrout, outcome))]
}

/// Whether a raised floor is shaken that no stand relieves.
pub fn shaken(site: &FloorSite) -> Option<StepId> {
    raised::shaken(site)
}
