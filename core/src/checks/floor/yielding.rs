//! Yield lines of a slab on the ground with fabric or fibres: single legs, pairs, rectangles of four.

use alloc::vec::Vec;

use super::leg_steps::*;
use super::steps::*;
use super::{FloorSite, Leg, Occasion, Standing};
use crate::calc::{Outcome, Sheet, StepId};
use crate::floor::{self, Reinforcement};
use crate::load_case::Format;
use crate::rules::floor::load_factor::{self, Frame, LoadClass, When};
use crate::rules::floor::slab_on_ground::{LoadedSlab, Position, SlabOnGround};
use crate::rules::floor::yield_line::{self, Pattern, Residual, YieldMoments};

/// How far out of a rectangle a leg may stand and still count as its corner.
const RECTANGLE_MM: f64 = 1.0;

/// The load on one place, and what else presses near it.
#[derive(Clone, Copy, Debug)]
pub(super) struct LegLoads {
    /// The leg with those merged.
    pub own_n: f64,
    /// Other legs within reach.
    pub others_n: f64,
}

/// One leg. Where a form for the group of legs is in print, the group is checked by itself; else all legs within reach are
/// put on this place, which they cannot exceed.
pub(super) fn leg(
    site: &FloorSite,
    loaded: &LoadedSlab,
    position: Position,
    loads: LegLoads,
    occasion: Occasion,
    sheet: &mut Sheet,
) -> Outcome {
    let moments = match moments(site, &loaded.slab, sheet) {
        Ok(moments) => moments,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let pattern = match position {
        Position::Interior => Pattern::Interior,
        Position::Edge => Pattern::Edge,
        Position::Corner => Pattern::Corner,
    };
    let collapse = yield_line::collapse_n(loaded, &moments, pattern, sheet);
    if loads.others_n <= 0.0 || group_of(site, loaded) != Group::None {
        return compare(site, loads.own_n, collapse, occasion, sheet);
    }
    let alone = compare(site, loads.own_n, collapse, occasion, &mut Sheet::quiet());
    let Outcome::Compared { utilisation, .. } = alone else { return alone };
    let both = utilisation * (loads.own_n + loads.others_n) / loads.own_n;
    if utilisation <= 1.0 && both > 1.0 {
        return Outcome::NotCovered(BOUND_YIELD);
    }
    if !(utilisation <= 1.0) {
        return compare(site, loads.own_n, collapse, occasion, sheet);
    }
    sheet.carry(N_LEG, loads.own_n);
    sheet.carry(P_OTHERS, loads.others_n);
    let all = sheet.step(N_ALL, loads.own_n + loads.others_n);
    compare_all(site, all, collapse, occasion, sheet)
}

/// The groups of legs whose form is in print.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Group {
    None,
    Pair,
    Four,
}

/// Which form there is for the legs of a cabinet: none near edges, none but for two legs and for a rectangle of four.
fn group_of(site: &FloorSite, loaded: &LoadedSlab) -> Group {
    if (0..site.legs.len()).any(|leg| site.position(leg, loaded) != Position::Interior) {
        return Group::None;
    }
    let ends = |of: fn(&Leg) -> f64| {
        let places = site.legs.iter().map(of);
        [places.clone().fold(f64::INFINITY, f64::min), places.fold(f64::NEG_INFINITY, f64::max)]
    };
    let near = |value: f64, [low, high]: [f64; 2]| value - low < RECTANGLE_MM || high - value < RECTANGLE_MM;
    let (xs, ys) = (ends(|leg| leg.at.x_mm), ends(|leg| leg.at.y_mm));
    let is_rectangle = site.legs.iter().all(|leg| near(leg.at.x_mm, xs) && near(leg.at.y_mm, ys));
    // Legs nearer than twice the thickness count as one load where they are checked one by one; no form in print has
    // pairs of such loads, so all within reach are put on one place there.
    let near_mm = 2.0 * site.slab.thickness_mm;
    if (0..site.legs.len()).any(|leg| site.within(leg, near_mm).next().is_some()) {
        return Group::None;
    }
    match site.legs.len() {
        2 => Group::Pair,
        4 if is_rectangle => Group::Four,
        _ => Group::None,
    }
}

/// Two or four legs that break through together far from edges, the worst of them; none where no form is in print.
pub(super) fn group(site: &FloorSite, standing: &Standing, occasion: Occasion, sheet: &mut Sheet) -> Option<Outcome> {
    if !site.is_on_ground() || site.floor.reinforcement() == Reinforcement::Plain {
        return None;
    }
    let pressing = (0..site.legs.len()).filter(|&leg| standing.legs_n[leg] > 0.0);
    let area_mm2 = 4.0 * pressing.map(|leg| standing.pressed_half[leg].area_mm2()).fold(f64::INFINITY, f64::min);
    let loaded = site.ground(sheet).and_then(|ground| ground.loaded(area_mm2, sheet)).ok()?;
    let kind = group_of(site, &loaded);
    if kind == Group::None {
        return None;
    }
    let moments = moments(site, &loaded.slab, sheet).ok()?;
    let away = |one: usize, other: usize| {
        let (one, other) = (site.legs[one].at, site.legs[other].at);
        [(one.x_mm - other.x_mm).abs(), (one.y_mm - other.y_mm).abs()]
    };
    let mut tried: Vec<([f64; 2], f64)> = Vec::new();
    for one in 0..site.legs.len() {
        for other in 0..one {
            let [dx, dy] = away(one, other);
            tried.push(([crate::calc::number::hypot(dx, dy), 0.0], standing.legs_n[one] + standing.legs_n[other]));
        }
    }
    if kind == Group::Four {
        let spread = (1..4).map(|leg| away(0, leg)).fold([0.0_f64; 2], |[x, y], [dx, dy]| [x.max(dx), y.max(dy)]);
        tried.push((spread, standing.legs_n.iter().sum()));
    }
    // Legs nearer than twice the thickness are merged where they are checked one by one.
    let found = tried.into_iter().filter_map(|(spacing, load_n)| {
        let collapse = yield_line::group_n(&loaded, &moments, spacing, &mut Sheet::quiet()).ok()?;
        Some((spacing, load_n, load_n / collapse))
    });
    let worst = found.fold(
        None,
        |best: Option<([f64; 2], f64, f64)>, one| {
            if best.is_none_or(|best| one.2 > best.2) { Some(one) } else { best }
        },
    );
    let (spacing, load_n, _) = worst?;
    let collapse = yield_line::group_n(&loaded, &moments, spacing, sheet).ok()?;
    Some(compare(site, load_n, collapse, occasion, sheet))
}

/// The moments of the slab by its fabric or fibres, told.
pub(super) fn moments(site: &FloorSite, slab: &SlabOnGround, sheet: &mut Sheet) -> Result<YieldMoments, StepId> {
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
    let moments = yield_line::moments(slab, tensile, &residual, sheet);
    // What keeps nothing after cracking is plain concrete, whatever it is called.
    if moments.positive_n > 0.0 { Ok(moments) } else { Err(yield_line::NO_RESIDUAL) }
}

/// The factor on loads with which yield lines work, told; none for the load cases of a seismic rule, which have theirs.
///
/// Errors: a seismic rule of another format.
pub(super) fn factor(site: &FloorSite, occasion: Occasion, sheet: &mut Sheet) -> Result<Option<f64>, StepId> {
    let (class, when) = match occasion {
        Occasion::Earthquake(Format::LimitStates) => return Ok(None),
        Occasion::Earthquake(_) => return Err(YIELD_FORMAT),
        Occasion::AtRest => (site.floor.load_class(), When::AtRest),
        Occasion::Moving => (LoadClass::Live, When::Moving),
    };
    Ok(Some(load_factor::told(Frame::Tr34, class, when, sheet)))
}

fn compare(site: &FloorSite, load_n: f64, collapse_n: f64, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    sheet.carry(N_LEG, load_n);
    compare_all(site, load_n, collapse_n, occasion, sheet)
}

fn compare_all(site: &FloorSite, load_n: f64, collapse_n: f64, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    let factored = match factor(site, occasion, sheet) {
        Ok(None) => sheet.step(N_CASE, load_n),
        Ok(Some(factor)) => sheet.step(N_FACTORED, factor * load_n),
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let collapse = sheet.carry(P_Y, collapse_n);
    let utilisation = sheet.step(U_YIELD, factored / collapse);
    Outcome::Compared { value: utilisation, limit: 1.0, utilisation }
}
