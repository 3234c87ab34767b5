//! A base rail, a skirt or a wide base on a slab on the ground: a line load.
//!
//! The published form is that of a line without end; a shorter one bends the slab no more.

use super::bending::{FELT, allowed_mpa};
use super::leg_steps::*;
use super::{FloorSite, Occasion, Standing, yielding};
use crate::calc::{Outcome, Sheet, StepId, number};
use crate::floor::Reinforcement;
use crate::rules::floor::slab_on_ground::{Position, SlabOnGround};
use crate::rules::floor::yield_line;

/// One rail in the open section.
pub(super) fn rail(
    site: &FloorSite,
    rail: usize,
    standing: &Standing,
    occasion: Occasion,
    sheet: &mut Sheet,
) -> Outcome {
    compared(site, rail, standing, occasion, sheet).unwrap_or_else(Outcome::NotCovered)
}

fn compared(
    site: &FloorSite,
    rail: usize,
    standing: &Standing,
    occasion: Occasion,
    sheet: &mut Sheet,
) -> Result<Outcome, StepId> {
    let ground = site.ground(sheet)?;
    let radius_mm = ground.told_radius_mm(sheet)?;
    let position = site.position_within(rail, radius_mm);
    if position == Position::Corner {
        return Err(RAIL_CORNER);
    }
    let lambda = yield_line::lambda_per_mm(&ground, sheet);
    let force = sheet.carry(N_RAIL, standing.legs_n[rail]);
    let length = sheet.carry(L_RAIL, pressed_mm(site, rail, standing));
    let own = sheet.step(P_RAIL, force / length);
    let relief = sheet.step(X_RELIEF, core::f64::consts::PI / (4.0 * lambda));
    let near = beside(
        site,
        rail,
        standing,
        &Reach { relief_mm: relief, felt_mm: FELT * radius_mm, lambda_per_mm: lambda },
        &ground,
    )?;
    let near = sheet.carry(P_NEAR, near);
    let sum = sheet.step(P_SUM, own + near);
    let at_edge = position == Position::Edge;
    let (load, limit) = if site.floor.reinforcement() == Reinforcement::Plain {
        let (allowed, factor) = allowed_mpa(site, occasion, sheet)?;
        let moment = sheet.step(M_ALLOWED, allowed * number::pow(ground.thickness_mm, 2.0) / 6.0);
        let load = if factor == 1.0 { sheet.step(P_CASE, sum) } else { sheet.step(P_FACTORED, factor * sum) };
        let edge = |sheet: &mut Sheet| sheet.step(P_ALONG_EDGE, 3.103 * lambda * moment);
        (load, if at_edge { edge(sheet) } else { sheet.step(P_ALONG, 4.0 * lambda * moment) })
    } else {
        let moment = yielding::moments(site, &ground, sheet)?.negative_n;
        let load = match yielding::factor(site, occasion, sheet)? {
            None => sheet.step(P_CASE, sum),
            Some(factor) => sheet.step(P_FACTORED, factor * sum),
        };
        let edge = |sheet: &mut Sheet| sheet.step(P_YIELD_EDGE, 3.103 * lambda * moment);
        (load, if at_edge { edge(sheet) } else { sheet.step(P_YIELD, 4.0 * lambda * moment) })
    };
    let utilisation = sheet.step(U_RAIL, load / limit);
    Ok(Outcome::Compared { value: utilisation, limit: 1.0, utilisation })
}

/// The length on which a rail presses.
fn pressed_mm(site: &FloorSite, rail: usize, standing: &Standing) -> f64 {
    let half = standing.pressed_half[rail];
    2.0 * if site.rail(rail) == Some(true) { half.x_mm } else { half.y_mm }
}

struct Reach {
    /// From here on a line beside relieves.
    relief_mm: f64,
    /// From here on a single foot is not felt.
    felt_mm: f64,
    /// Stiffness of the slab against the ground.
    lambda_per_mm: f64,
}

impl Reach {
    /// The share of a line load at a distance in the moment here; what relieves is left out.
    fn share(&self, away_mm: f64) -> f64 {
        if away_mm >= self.relief_mm {
            return 0.0;
        }
        let x = self.lambda_per_mm * away_mm;
        number::exp(-x) * (number::cos(x) - number::sin(x))
    }
}

/// What rails beside a rail add to its load per length: those along it by their shares in the moment, those across it by
/// the slab's Poisson's ratio besides.
///
/// Errors: a single foot near the rail.
fn beside(
    site: &FloorSite,
    rail: usize,
    standing: &Standing,
    reach: &Reach,
    ground: &SlabOnGround,
) -> Result<f64, StepId> {
    let own = &site.legs[rail];
    let is_along_x = site.rail(rail) == Some(true);
    let mut near = 0.0;
    for (place, other) in site.legs.iter().enumerate() {
        if place == rail || standing.legs_n[place] <= 0.0 {
            continue;
        }
        let [x, y] = [(other.at.x_mm - own.at.x_mm).abs(), (other.at.y_mm - own.at.y_mm).abs()];
        let gaps = [x - own.half.x_mm - other.half.x_mm, y - own.half.y_mm - other.half.y_mm];
        let apart = number::hypot(number::positive_part(gaps[0]), number::positive_part(gaps[1]));
        let Some(other_along_x) = site.rail(place) else {
            if apart < reach.felt_mm {
                return Err(RAIL_AND_FEET);
            }
            continue;
        };
        let load = standing.legs_n[place] / pressed_mm(site, place, standing);
        if other_along_x != is_along_x {
            near += ground.poisson * load * reach.share(apart);
            continue;
        }
        // One that only goes on along the same line is checked by itself.
        let (across, overlap) = if is_along_x { (y, gaps[0]) } else { (x, gaps[1]) };
        if overlap < 0.0 {
            near += load * reach.share(across);
        }
    }
    Ok(near)
}
