//! Bending of a slab on the ground under the legs.

use alloc::vec::Vec;

use super::leg_steps::*;
use super::steps::*;
use super::yielding::{self, LegLoads};
use super::{FloorSite, Occasion, Standing, rail};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, number};
use crate::floor::{self, Reinforcement};
use crate::load_case::Format;
use crate::rules::floor::load_factor::{self, Frame, LoadClass, When};
use crate::rules::floor::neighbours::{Neighbour, PlateOnSprings};
use crate::rules::floor::slab_on_ground::{LoadedSlab, Position};
use crate::rules::floor::{ioannides, westergaard};

/// How far a neighbour is felt, in radii of relative stiffness. From there on both moments of a plate on springs are
/// below a ten thousandth of the load or relieve, so what is left out is on the safe side.
pub(super) const FELT: f64 = 4.0;
/// The same along a free edge, where twisting moments reach farther: beyond it they are below a thousandth of the load.
pub(super) const FELT_BESIDE_EDGE: f64 = 8.0;
/// Coefficient of the modulus of rupture, in MPa (ACI 318-19 19.2.3.1).
const RUPTURE: f64 = 0.62;

fn check(occasion: Occasion) -> CheckId {
    match occasion {
        Occasion::AtRest => CheckId::SlabRestBending,
        Occasion::Earthquake(_) => CheckId::SlabQuakeBending,
        Occasion::Moving => CheckId::RouteBending,
    }
}

/// One leg on the slab, or one rail.
pub fn leg(site: &FloorSite, leg: usize, standing: &Standing, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    sheet.open(Part::Floor, Subject::Foot(leg as u16), Some(check(occasion)), System::Si);
    if site.legs[leg].half.area_mm2() <= 0.0 {
        return Outcome::NotCovered(POINT);
    }
    // As with bearing, the loaded area is the rectangle in the foot whose middle is where its force acts.
    let pressed_mm2 = |place: usize| 4.0 * standing.pressed_half[place].area_mm2();
    let area_mm2 = pressed_mm2(leg);
    if site.rail(leg).is_some() {
        return rail::rail(site, leg, standing, occasion, sheet);
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
        area_mm2 += merged.iter().map(|&place| pressed_mm2(place)).sum::<f64>();
    }
    let loaded = match site.ground(sheet).and_then(|ground| ground.loaded(area_mm2, sheet)) {
        Ok(loaded) => loaded,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    // What is merged stands where the worst of its legs stands.
    let position = merged.iter().fold(site.position(leg, &loaded), |worst, &place| {
        let other = site.position(place, &loaded);
        if other as u8 > worst as u8 { other } else { worst }
    });
    let nearest_mm = site.nearest_edge_mm(leg);
    if sheet.is_told() && nearest_mm.is_finite() {
        sheet.step(E_LEG, nearest_mm);
        sheet.step(E_NEAR, loaded.radius_mm + loaded.contact_mm);
    }
    let others_within = |radii: f64| {
        let presses = |&(place, _): &(usize, _)| !merged.contains(&place) && standing.legs_n[place] > 0.0;
        site.within(leg, radii * loaded.radius_mm).filter(presses)
    };
    let others = others_within(FELT);
    if site.floor.reinforcement() != Reinforcement::Plain {
        let loads = LegLoads { own_n: load_n, others_n: others.map(|(place, _)| standing.legs_n[place]).sum() };
        return yielding::leg(site, &loaded, position, loads, occasion, sheet);
    }
    let mut loads = Loads { own_n: load_n, others: Vec::new(), bound_n: 0.0 };
    let is_far = |place: usize| position == Position::Interior && site.position(place, &loaded) == Position::Interior;
    let beside = site.free_edge.as_ref().filter(|_| position != Position::Corner);
    for (place, away_mm) in others_within(if beside.is_some() { FELT_BESIDE_EDGE } else { FELT }) {
        // Far from edges the plate on springs without an edge says what one leg does at another, beside one free edge
        // that with it; near two of them neither does.
        let load_n = standing.legs_n[place];
        let neighbour = match beside {
            Some(edge) => edge.neighbour(leg, (place, away_mm), load_n),
            None => is_far(place).then_some(Neighbour { load_n, away_mm, edge: None }),
        };
        match neighbour {
            Some(neighbour) => loads.others.push(neighbour),
            None => loads.bound_n += load_n,
        }
    }
    elastic(site, &loaded, position, &loads, occasion, sheet)
}

/// One wheel on the way in: anywhere, so at a free edge or joint.
pub fn wheel(site: &FloorSite, load_n: f64, area_mm2: f64, sheet: &mut Sheet) -> Outcome {
    sheet.carry(N_LEG, load_n);
    let loaded = match site.ground(sheet).and_then(|ground| ground.loaded(area_mm2, sheet)) {
        Ok(loaded) => loaded,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    if site.floor.reinforcement() != Reinforcement::Plain {
        let loads = LegLoads { own_n: load_n, others_n: 0.0 };
        return yielding::leg(site, &loaded, Position::Edge, loads, Occasion::Moving, sheet);
    }
    let loads = Loads { own_n: load_n, others: Vec::new(), bound_n: 0.0 };
    elastic(site, &loaded, Position::Edge, &loads, Occasion::Moving, sheet)
}

struct Loads {
    /// The leg with those merged.
    own_n: f64,
    /// Legs whose moments at this one are known.
    others: Vec<Neighbour>,
    /// Legs beside two edges or an opening, or beside a leg that stands there: put on this place, which they cannot exceed.
    bound_n: f64,
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
    let plate = PlateOnSprings {
        radius_mm: loaded.radius_mm,
        poisson: loaded.slab.poisson,
        thickness_mm: loaded.slab.thickness_mm,
    };
    let scaled: Vec<Neighbour> =
        loads.others.iter().map(|other| Neighbour { load_n: factor * other.load_n, ..*other }).collect();
    let more = plate.stress_mpa(&scaled, sheet);
    let more = sheet.carry(S_MORE, more);
    let known = own + more;
    let bound = factor * loads.bound_n / own_n * own;
    if bound <= 0.0 || known > allowed {
        let all = sheet.step(S_ALL, known);
        return compare(all, sheet);
    }
    if known + bound > allowed {
        return Outcome::NotCovered(EDGE_ALONE);
    }
    sheet.carry(P, own_n);
    let others = sheet.carry(P_OTHERS, factor * loads.bound_n);
    let bound = sheet.step(S_BEYOND, own * others / own_n);
    let all = sheet.step(S_TOTAL, own + more + bound);
    compare(all, sheet)
}

/// What tension is allowed, and the factor on loads that belongs to it.
pub(super) fn allowed_mpa(site: &FloorSite, occasion: Occasion, sheet: &mut Sheet) -> Result<(f64, f64), StepId> {
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

/// Legs that break through together by yield lines far from edges; none where no form for them is in print.
pub fn group(site: &FloorSite, standing: &Standing, occasion: Occasion, sheet: &mut Sheet) -> Option<Outcome> {
    yielding::group(site, standing, occasion, &mut Sheet::quiet())?;
    sheet.open(Part::Floor, Subject::Whole, Some(check(occasion)), System::Si);
    yielding::group(site, standing, occasion, sheet)
}
