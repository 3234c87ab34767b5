//! Bending of a slab on the ground under the legs.

use alloc::vec::Vec;

use super::steps::*;
use super::{FloorSite, Occasion, Standing};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, number};
use crate::floor::{self, Reinforcement};
use crate::load_case::Format;
use crate::rules::floor::load_factor::{self, Frame, LoadClass, When};
use crate::rules::floor::neighbours::{Neighbour, PlateOnSprings};
use crate::rules::floor::slab_on_ground::{LoadedSlab, Position};
use crate::rules::floor::yield_line::{self, Pattern, Residual, YieldMoments};
use crate::rules::floor::{ioannides, westergaard};

/// How far a neighbour is felt, in radii of relative stiffness.
const FELT: f64 = 3.0;
/// Coefficient of the modulus of rupture, in MPa (ACI 318-19 19.2.3.1).
const RUPTURE: f64 = 0.62;

fn check(occasion: Occasion) -> CheckId {
    match occasion {
        Occasion::AtRest => CheckId::SlabRestBending,
        Occasion::Earthquake(_) => CheckId::SlabQuakeBending,
        Occasion::Moving => CheckId::RouteBending,
    }
}

/// One leg on the slab.
pub fn leg(site: &FloorSite, leg: usize, standing: &Standing, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    sheet.open(Part::Floor, Subject::Foot(leg as u16), Some(check(occasion)), System::Si);
    let area_mm2 = 4.0 * site.legs[leg].half.area_mm2();
    if area_mm2 <= 0.0 {
        return Outcome::NotCovered(POINT);
    }
    let near_mm = 2.0 * site.slab.thickness_mm;
    let merged: Vec<usize> = site.within(leg, near_mm).map(|(place, _)| place).collect();
    let mut load_n = sheet.carry(N_LEG, standing.legs_n[leg]);
    let mut area_mm2 = area_mm2;
    if !merged.is_empty() {
        // Close legs count as one load, on their own areas only: the area between them is not counted.
        let more: f64 = merged.iter().map(|&place| standing.legs_n[place]).sum();
        sheet.carry(N_NEAR, more);
        load_n = sheet.step(N_MERGED, load_n + more);
        area_mm2 += merged.iter().map(|&place| 4.0 * site.legs[place].half.area_mm2()).sum::<f64>();
    }
    let loaded = match site.ground(sheet).and_then(|ground| ground.loaded(area_mm2, sheet)) {
        Ok(loaded) => loaded,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let position = site.position(leg, &loaded);
    if site.floor.reinforcement() != Reinforcement::Plain {
        return by_yield_lines(site, &loaded, position, load_n, occasion, sheet);
    }
    let others: Vec<Neighbour> = site
        .within(leg, FELT * loaded.radius_mm)
        .filter(|(place, _)| !merged.contains(place) && standing.legs_n[*place] > 0.0)
        .map(|(place, away_mm)| Neighbour { load_n: standing.legs_n[place], away_mm })
        .collect();
    elastic(site, &loaded, position, &Loads { own_n: load_n, others: &others }, occasion, sheet)
}

/// One wheel on the way in: anywhere, so at a free edge or joint.
pub fn wheel(site: &FloorSite, load_n: f64, area_mm2: f64, sheet: &mut Sheet) -> Outcome {
    sheet.carry(N_LEG, load_n);
    let loaded = match site.ground(sheet).and_then(|ground| ground.loaded(area_mm2, sheet)) {
        Ok(loaded) => loaded,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    if site.floor.reinforcement() != Reinforcement::Plain {
        return by_yield_lines(site, &loaded, Position::Edge, load_n, Occasion::Moving, sheet);
    }
    elastic(site, &loaded, Position::Edge, &Loads { own_n: load_n, others: &[] }, Occasion::Moving, sheet)
}

struct Loads<'a> {
    own_n: f64,
    others: &'a [Neighbour],
}

fn elastic(
    site: &FloorSite,
    loaded: &LoadedSlab,
    position: Position,
    loads: &Loads,
    occasion: Occasion,
    sheet: &mut Sheet,
) -> Outcome {
    let (allowed, factor) = match allowed_mpa(site, occasion, sheet) {
        Ok(allowed) => allowed,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let own_n = if factor == 1.0 { loads.own_n } else { sheet.step(N_FACTORED, factor * loads.own_n) };
    let corner_form = site.floor.values.choice(floor::CORNER_FORM);
    let bending = match position {
        Position::Interior => Ok(westergaard::interior(loaded, own_n, sheet)),
        Position::Edge => westergaard::edge(loaded, site.floor.edge_form(), own_n, sheet),
        Position::Corner if corner_form == Some(1) => Ok(westergaard::corner(loaded, own_n, sheet)),
        Position::Corner => Ok(ioannides::corner(loaded, own_n, sheet)),
    };
    let own = match bending {
        Ok(bending) => bending.stress_mpa,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let compare = |stress: f64, sheet: &mut Sheet| {
        let utilisation = sheet.step(U_STRESS, stress / allowed);
        Outcome::Compared { value: utilisation, limit: 1.0, utilisation }
    };
    sheet.carry(S_OWN, own);
    if position == Position::Interior || loads.others.is_empty() {
        let plate = PlateOnSprings {
            radius_mm: loaded.radius_mm,
            poisson: loaded.slab.poisson,
            thickness_mm: loaded.slab.thickness_mm,
        };
        let scaled: Vec<Neighbour> =
            loads.others.iter().map(|other| Neighbour { load_n: factor * other.load_n, ..*other }).collect();
        let more = plate.stress_mpa(&scaled, sheet);
        let more = sheet.carry(S_MORE, more);
        let all = sheet.step(S_ALL, own + more);
        return compare(all, sheet);
    }
    let others = factor * loads.others.iter().map(|other| other.load_n).sum::<f64>();
    sheet.carry(P, own_n);
    let others = sheet.carry(P_OTHERS, others);
    let bound = own * (own_n + others) / own_n;
    if own <= allowed && bound > allowed {
        return Outcome::NotCovered(BOUND);
    }
    if own > allowed {
        let alone = sheet.carry(S_ALL, own);
        return compare(alone, sheet);
    }
    let bound = sheet.step(S_BOUND, bound);
    compare(bound, sheet)
}

/// What tension is allowed, and the factor on loads that belongs to it.
fn allowed_mpa(site: &FloorSite, occasion: Occasion, sheet: &mut Sheet) -> Result<(f64, f64), StepId> {
    let (frame, class) = (site.floor.frame(), site.floor.load_class());
    let limit_states = |factor: f64, sheet: &mut Sheet| -> Result<(f64, f64), StepId> {
        let tensile = site.floor.values.number(floor::TENSILE).ok_or(NO_TENSILE)?;
        let tensile = sheet.step(F_CTK, tensile);
        Ok((sheet.step(S_LIMIT, 0.8 * tensile / 1.5), factor))
    };
    match (occasion, frame) {
        (Occasion::Earthquake(Format::LimitStates), _) => limit_states(1.0, sheet),
        (Occasion::Earthquake(Format::Strength), _) => {
            let rupture = rupture_mpa(site, sheet);
            let phi = sheet.step(load_factor::PHI_PLAIN, 0.6);
            Ok((sheet.step(S_FACTORED, phi * rupture), 1.0))
        }
        (Occasion::Earthquake(Format::AllowableStress), _) => Ok((working_mpa(site, When::Moving, sheet), 1.0)),
        (Occasion::AtRest, Frame::En1990) => {
            let factor = load_factor::told(Frame::En1990, class, When::AtRest, sheet);
            limit_states(factor, sheet)
        }
        (Occasion::Moving, Frame::En1990) => {
            let factor = load_factor::told(Frame::En1990, LoadClass::Live, When::Moving, sheet);
            limit_states(factor, sheet)
        }
        (Occasion::AtRest, _) => Ok((working_mpa(site, When::AtRest, sheet), 1.0)),
        (Occasion::Moving, _) => Ok((working_mpa(site, When::Moving, sheet), 1.0)),
    }
}

fn rupture_mpa(site: &FloorSite, sheet: &mut Sheet) -> f64 {
    match site.floor.values.number(floor::FLEXURAL) {
        Some(given) => sheet.step(F_R_GIVEN, given),
        None => {
            let strength = sheet.step(F_C, site.slab.strength_mpa);
            let coefficient = sheet.step(K_R, RUPTURE);
            sheet.step(F_R, coefficient * number::sqrt(strength))
        }
    }
}

fn working_mpa(site: &FloorSite, when: When, sheet: &mut Sheet) -> f64 {
    let rupture = rupture_mpa(site, sheet);
    let safety = load_factor::safety(when, sheet);
    sheet.step(S_WORKING, rupture / safety)
}

fn by_yield_lines(
    site: &FloorSite,
    loaded: &LoadedSlab,
    position: Position,
    load_n: f64,
    occasion: Occasion,
    sheet: &mut Sheet,
) -> Outcome {
    let moments = match moments(site, loaded, sheet) {
        Ok(moments) => moments,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let pattern = match position {
        Position::Interior => Pattern::Interior,
        Position::Edge => Pattern::Edge,
        Position::Corner => Pattern::Corner,
    };
    let collapse = yield_line::collapse_n(loaded, &moments, pattern, sheet);
    compare_yield(site, load_n, collapse, occasion, sheet)
}

fn moments(site: &FloorSite, loaded: &LoadedSlab, sheet: &mut Sheet) -> Result<YieldMoments, StepId> {
    let values = &site.floor.values;
    let tensile = values.number(floor::TENSILE).ok_or(NO_TENSILE)?;
    let depth = values.number(floor::DEPTH).zip(values.number(floor::RATIO));
    let residual = match (site.floor.reinforcement(), values.number(floor::RESIDUAL), depth) {
        (Reinforcement::Fibres, Some(moment_n), _) => Residual::Fibre { moment_n },
        (Reinforcement::Fabric, _, Some((depth_mm, ratio))) => {
            Residual::Fabric { area_mm: ratio * depth_mm, strength_mpa: values.given(floor::STEEL), depth_mm }
        }
        (Reinforcement::Plain, ..) => return Err(yield_line::PLAIN),
        _ => return Err(yield_line::NO_RESIDUAL),
    };
    Ok(yield_line::moments(loaded, tensile, &residual, sheet))
}

fn compare_yield(site: &FloorSite, load_n: f64, collapse_n: f64, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    sheet.carry(N_LEG, load_n);
    let factored = match occasion {
        Occasion::Earthquake(Format::LimitStates) => sheet.step(N_CASE, load_n),
        Occasion::Earthquake(_) => return Outcome::NotCovered(YIELD_FORMAT),
        Occasion::AtRest => {
            let factor = load_factor::told(Frame::Tr34, site.floor.load_class(), When::AtRest, sheet);
            sheet.step(N_FACTORED, factor * load_n)
        }
        Occasion::Moving => {
            let factor = load_factor::told(Frame::Tr34, LoadClass::Live, When::Moving, sheet);
            sheet.step(N_FACTORED, factor * load_n)
        }
    };
    let collapse = sheet.carry(P_Y, collapse_n);
    let utilisation = sheet.step(U_YIELD, factored / collapse);
    Outcome::Compared { value: utilisation, limit: 1.0, utilisation }
}

/// Four legs, or two, that break through together by yield lines far from edges; none where they do not.
pub fn group(site: &FloorSite, standing: &Standing, occasion: Occasion, sheet: &mut Sheet) -> Option<Outcome> {
    if !site.is_on_ground() || site.floor.reinforcement() == Reinforcement::Plain || site.legs.len() != 4 {
        return None;
    }
    let area_mm2 = 4.0 * site.legs.iter().map(|leg| leg.half.area_mm2()).fold(f64::INFINITY, f64::min);
    let quiet = &mut Sheet::quiet();
    let loaded = site.ground(quiet).and_then(|ground| ground.loaded(area_mm2, quiet)).ok()?;
    if (0..4).any(|leg| site.position(leg, &loaded) != Position::Interior) {
        return None;
    }
    let spread = |of: fn(&super::Leg) -> f64| {
        let places = site.legs.iter().map(of);
        places.clone().fold(f64::NEG_INFINITY, f64::max) - places.fold(f64::INFINITY, f64::min)
    };
    let spacing = [spread(|leg| leg.at.x_mm), spread(|leg| leg.at.y_mm)];
    sheet.open(Part::Floor, Subject::Whole, Some(check(occasion)), System::Si);
    let loaded = site.ground(sheet).and_then(|ground| ground.loaded(area_mm2, sheet)).ok()?;
    let moments = moments(site, &loaded, sheet).ok()?;
    let collapse = yield_line::group_n(&loaded, &moments, spacing, sheet).ok()?;
    Some(compare_yield(site, standing.legs_n.iter().sum(), collapse, occasion, sheet))
}
