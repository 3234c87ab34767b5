//! Rows of cabinets with aisles on a slab on the ground: the aisle between two loaded strips is bent upwards.

use super::bending::allowed_mpa;
use super::leg_steps::*;
use super::{FloorSite, Occasion, yielding};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, number};
use crate::floor::{self, Reinforcement};
use crate::rules::floor::{suspended, yield_line};

/// The row at its pitch; none where no pitch is given.
pub(super) fn rows(site: &FloorSite, weight_n: f64, sheet: &mut Sheet) -> Option<Outcome> {
    let [along, ..] = site.floor.values.numbers(floor::PITCH)?;
    sheet.open(Part::Floor, Subject::Whole, Some(CheckId::SlabRestRows), System::Si);
    Some(compared(site, weight_n, along, sheet).unwrap_or_else(Outcome::NotCovered))
}

fn compared(site: &FloorSite, weight_n: f64, along_mm: f64, sheet: &mut Sheet) -> Result<Outcome, StepId> {
    if crate::calc::limit::less(along_mm, site.footprint_mm[0]) {
        return Err(suspended::PITCH_SMALL);
    }
    let ground = site.ground(sheet)?;
    ground.told_radius_mm(sheet)?;
    let lambda = yield_line::lambda_per_mm(&ground, sheet);
    let weight = sheet.step(W, weight_n);
    let pitch = sheet.step(P_X, along_mm);
    let depth = sheet.step(L_Y, site.footprint_mm[1]);
    let load = sheet.step(Q_ROW, weight / (pitch * depth));
    let factored = |factor: f64, sheet: &mut Sheet| match factor == 1.0 {
        true => sheet.step(Q_ROW_SERVICE, load),
        false => sheet.step(Q_ROW_FACTORED, factor * load),
    };
    let (load, limit) = if site.floor.reinforcement() == Reinforcement::Plain {
        let (allowed, factor) = allowed_mpa(site, Occasion::AtRest, sheet)?;
        let moment = sheet.step(M_ALLOWED, allowed * number::pow(ground.thickness_mm, 2.0) / 6.0);
        let load = factored(factor, sheet);
        (load, sheet.step(W_ROW, 5.95 * number::pow(lambda, 2.0) * moment))
    } else {
        let moment = yielding::moments(site, &ground, sheet)?.negative_n;
        let factor = yielding::factor(site, Occasion::AtRest, sheet)?.unwrap_or(1.0);
        let load = factored(factor, sheet);
        (load, sheet.step(W_ROW_YIELD, 5.95 * number::pow(lambda, 2.0) * moment))
    };
    let utilisation = sheet.step(U_ROW, load / limit);
    Ok(Outcome::Compared { value: load, limit, utilisation })
}
