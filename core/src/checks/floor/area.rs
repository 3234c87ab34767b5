//! A suspended slab against the live load that it was designed for, both at service.

use alloc::vec::Vec;

use super::leg_steps::{Q_CODE, Q_GIVEN, U_LEG};
use super::steps::*;
use super::{FloorSite, Standing};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System};
use crate::floor;
use crate::rules::floor::live_load;
use crate::rules::floor::suspended::{self, AreaLoad, Span};

/// The load over the pitch.
pub fn over_pitch(site: &FloorSite, weight_n: f64, sheet: &mut Sheet) -> Outcome {
    sheet.open(Part::Floor, Subject::Whole, Some(CheckId::FloorArea), System::Si);
    let values = &site.floor.values;
    let load = AreaLoad { weight_n, footprint_mm: site.footprint_mm };
    load.over_footprint_mpa(sheet);
    let Some([along, across, _]) = values.numbers(floor::PITCH) else {
        return Outcome::NotCovered(suspended::NO_PITCH);
    };
    let found = load.over_pitch_mpa([along, across], values.given(floor::AISLE), sheet);
    compare(site, found, sheet)
}

/// The heaviest leg against the concentrated load that the floor was designed for; none where none is known.
///
/// Beside it the pressure that its load has in the middle of the slab.
pub fn heaviest_leg(site: &FloorSite, standing: &Standing, sheet: &mut Sheet) -> Option<Outcome> {
    let values = &site.floor.values;
    let by_code = || live_load::LIVE_LOADS[values.choice(floor::OCCUPANCY)?].concentrated;
    let (row, limit) = match (values.number(floor::CONCENTRATED), by_code()) {
        (Some(given), _) => (Q_GIVEN, given),
        (None, Some((_, by_code))) => (Q_CODE, by_code),
        (None, None) => return None,
    };
    let heaviest = (0..site.legs.len()).fold(None, |best: Option<usize>, leg| {
        if best.is_none_or(|best| standing.legs_n[leg] > standing.legs_n[best]) { Some(leg) } else { best }
    })?;
    sheet.open(Part::Floor, Subject::Whole, Some(CheckId::FloorLeg), System::Si);
    if let (Q_CODE, Some((name, force_n))) = (row, by_code()) {
        sheet.step(name, force_n);
    }
    let half = site.legs[heaviest].half;
    let force = standing.legs_n[heaviest];
    if half.area_mm2() > 0.0 {
        AreaLoad::dispersed_mpa(force, [2.0 * half.x_mm, 2.0 * half.y_mm], site.slab.thickness_mm, sheet);
    }
    let force = sheet.carry(N_LEG, force);
    let limit = sheet.step(row, limit);
    let utilisation = sheet.step(U_LEG, force / limit);
    Some(Outcome::Compared { value: force, limit, utilisation })
}

/// The equivalent uniform load on a one-way span.
pub fn equivalent(site: &FloorSite, standing: &Standing, sheet: &mut Sheet) -> Outcome {
    sheet.open(Part::Floor, Subject::Whole, Some(CheckId::FloorStrip), System::Si);
    let values = &site.floor.values;
    let Some(span_mm) = values.number(floor::SPAN) else {
        return Outcome::NotCovered(suspended::NO_SPAN);
    };
    let is_along_x = values.choice(floor::SPAN_AXIS) != Some(1);
    let spread = |of: fn(&super::Leg) -> [f64; 2]| {
        let ends = site.legs.iter().map(of).fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], [at, half]| {
            [low.min(at - half), high.max(at + half)]
        });
        if ends[0] <= ends[1] { ends[1] - ends[0] } else { 0.0 }
    };
    let across = if is_along_x {
        spread(|leg| [leg.at.y_mm, leg.half.y_mm])
    } else {
        spread(|leg| [leg.at.x_mm, leg.half.x_mm])
    };
    let along = |leg: &super::Leg| if is_along_x { leg.at.x_mm } else { leg.at.y_mm };
    let legs: Vec<[f64; 2]> =
        site.legs.iter().zip(standing.legs_n).map(|(leg, &force_n)| [along(leg), force_n]).collect();
    let outline = &site.slab.outline;
    let edge_mm = if is_along_x {
        f64::min(-outline.front_mm, outline.rear_mm)
    } else {
        f64::min(-outline.left_mm, outline.right_mm)
    };
    let span = Span {
        span_mm,
        middle_mm: values.number(floor::SUPPORT).unwrap_or(span_mm / 2.0),
        legs: &legs,
        across_mm: across,
        edge_mm: edge_mm.is_finite().then_some(edge_mm),
    };
    compare(site, span.equivalent_mpa(sheet), sheet)
}

fn compare(site: &FloorSite, found: Result<f64, StepId>, sheet: &mut Sheet) -> Outcome {
    let load = match found {
        Ok(load) => load,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let values = &site.floor.values;
    let live = match (values.number(floor::LIVE_LOAD), values.choice(floor::OCCUPANCY)) {
        (Some(given), _) => sheet.step(live_load::GIVEN, given),
        (None, Some(place)) => live_load::uniform_mpa(place, sheet),
        (None, None) => return Outcome::NotCovered(suspended::NO_LIVE_LOAD),
    };
    let load = sheet.carry(Q_LOAD, load);
    let live = sheet.carry(Q_LIVE, live);
    let utilisation = sheet.step(U_AREA, load / live);
    Outcome::Compared { value: load, limit: live, utilisation }
}
