//! Punching of a leg through the slab.

use alloc::vec::Vec;

use super::leg_steps::{N_MEETS, N_TOGETHER};
use super::steps::*;
use super::{FloorSite, Leg, Occasion, Standing};
use crate::calc::{CheckId, Kind, Outcome, Part, Sheet, StepId, Subject, System, limit, number};
use crate::checks::feet;
use crate::floor::{self, Reinforcement};
use crate::geometry::Rectangle;
use crate::load_case::Format;
use crate::rules::floor::load_factor::{self, Frame, When};
use crate::rules::floor::perimeter::LoadedRectangle;
use crate::rules::floor::punching_aci::{self, PLAIN_LOSS_MM, SizeEffect, in_system};
use crate::rules::floor::punching_en::{self, Carried};

/// One leg: by ACI 318 in strength design, by EN 1992-1-1 in limit states.
///
/// As with bearing, the loaded area is the rectangle in the foot whose middle is where its force acts. Legs whose
/// perimeters meet punch as one, too, on the rectangle around them; the worse of both counts.
pub fn leg(site: &FloorSite, leg: usize, standing: &Standing, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    let check = match occasion {
        Occasion::Earthquake(_) => CheckId::SlabQuakePunching,
        _ => CheckId::SlabRestPunching,
    };
    debug_assert_eq!(check.kind(), Kind::Force);
    sheet.open(Part::Floor, Subject::Foot(leg as u16), Some(check), System::Si);
    let way = match Way::of(site, occasion) {
        Ok(way) => way,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    let pressed = standing.pressed_half[leg];
    let own = LoadedRectangle { sides: [2.0 * pressed.x_mm, 2.0 * pressed.y_mm], to_edges: site.legs[leg].to_edges_mm };
    let alone = Loaded { load: own, own_n: standing.legs_n[leg], others_n: None };
    let Some(together) = together(site, leg, standing, way.reach_mm()) else {
        return way.compared(site, &alone, occasion, sheet);
    };
    let quiet = |loaded: &Loaded| match way.compared(site, loaded, occasion, &mut Sheet::quiet()) {
        Outcome::Compared { utilisation, .. } if !utilisation.is_nan() => utilisation,
        _ => f64::INFINITY,
    };
    let worse = if quiet(&together) <= quiet(&alone) { &alone } else { &together };
    way.compared(site, worse, occasion, sheet)
}

/// What presses on one rectangle.
struct Loaded {
    load: LoadedRectangle,
    own_n: f64,
    /// Load of the legs that are counted with it, where there are any.
    others_n: Option<f64>,
}

/// A leg with all whose perimeters meet its own; none where none does.
fn together(site: &FloorSite, leg: usize, standing: &Standing, reach_mm: f64) -> Option<Loaded> {
    let own = &site.legs[leg];
    let gap_mm = |other: &Leg| {
        let x = (other.at.x_mm - own.at.x_mm).abs() - own.half.x_mm - other.half.x_mm;
        let y = (other.at.y_mm - own.at.y_mm).abs() - own.half.y_mm - other.half.y_mm;
        f64::max(x, y)
    };
    let meets = |place: &usize| {
        *place != leg && standing.legs_n[*place] > 0.0 && limit::less(gap_mm(&site.legs[*place]), 2.0 * reach_mm)
    };
    let met: Vec<usize> = (0..site.legs.len()).filter(meets).collect();
    if met.is_empty() {
        return None;
    }
    let mut around = Rectangle::around(own.at, own.half);
    for &place in &met {
        let other = Rectangle::around(site.legs[place].at, site.legs[place].half);
        around.left_mm = around.left_mm.min(other.left_mm);
        around.right_mm = around.right_mm.max(other.right_mm);
        around.front_mm = around.front_mm.min(other.front_mm);
        around.rear_mm = around.rear_mm.max(other.rear_mm);
    }
    let sides = [around.right_mm - around.left_mm, around.rear_mm - around.front_mm];
    Some(Loaded {
        load: LoadedRectangle { sides, to_edges: site.slab.room_mm(&around) },
        own_n: standing.legs_n[leg],
        others_n: Some(met.iter().map(|&place| standing.legs_n[place]).sum()),
    })
}

/// By what a slab is checked.
#[derive(Clone, Copy)]
enum Way {
    /// EN 1992-1-1 6.4.
    En(Carried),
    /// ACI 318-19 14.5.5, with the thickness.
    Plain(f64),
    /// ACI 318-19 22.6, with the effective depth.
    Reinforced(f64),
}

impl Way {
    fn of(site: &FloorSite, occasion: Occasion) -> Result<Way, StepId> {
        let is_limit_states = match (occasion, site.floor.frame()) {
            (Occasion::Earthquake(Format::AllowableStress), _) => return Err(WEAK_FORMAT),
            (Occasion::Earthquake(format), _) => format == Format::LimitStates,
            (_, frame) => frame != Frame::Asce7,
        };
        let values = &site.floor.values;
        let (depth, ratio) = (values.number(floor::DEPTH), values.number(floor::RATIO));
        let thickness_mm = site.slab.thickness_mm;
        let kind = site.floor.reinforcement();
        if is_limit_states {
            return match (kind, depth, ratio) {
                (Reinforcement::Fibres, ..) if site.is_on_ground() => Ok(Way::En(Carried::Fibres { thickness_mm })),
                // A slab on the ground that is said to be plain has no bars, whatever depth is given.
                (Reinforcement::Plain, ..) if site.is_on_ground() => Err(punching_en::NO_RATIO),
                (_, Some(depth_mm), Some(ratio)) => Ok(Way::En(Carried::Bars { depth_mm, ratio })),
                _ => Err(punching_en::NO_RATIO),
            };
        }
        if limit::less(site.slab.strength_mpa, feet::STRENGTH_MIN_MPA) {
            return Err(feet::WEAK);
        }
        match (kind, depth) {
            // Fibres are no reinforcement in the sense of 22.6: such a slab counts as plain here.
            (Reinforcement::Plain | Reinforcement::Fibres, _) if site.is_on_ground() => Ok(Way::Plain(thickness_mm)),
            (_, Some(depth_mm)) => Ok(Way::Reinforced(depth_mm)),
            _ => Err(punching_aci::NO_DEPTH),
        }
    }

    /// How far from a load its perimeter runs.
    fn reach_mm(&self) -> f64 {
        match *self {
            Way::En(carried) => 2.0 * carried.depth_mm(),
            Way::Plain(thickness_mm) => number::positive_part(thickness_mm - PLAIN_LOSS_MM) / 2.0,
            Way::Reinforced(depth_mm) => depth_mm / 2.0,
        }
    }

    fn compared(&self, site: &FloorSite, loaded: &Loaded, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
        let (load, strength_mpa) = (&loaded.load, site.slab.strength_mpa);
        let aci = || in_system(load, strength_mpa, System::Si);
        let strength = match *self {
            Way::En(carried) => {
                let alpha_cc = site.floor.values.given(floor::ALPHA_CC);
                punching_en::strength_n(load, [strength_mpa, alpha_cc], carried, sheet)
            }
            Way::Plain(thickness_mm) => aci().plain(thickness_mm, sheet),
            Way::Reinforced(depth_mm) => aci().reinforced(depth_mm, SizeEffect::Counted, sheet),
        };
        let strength = match strength {
            Ok(strength) => strength,
            Err(reason) => return Outcome::NotCovered(reason),
        };
        let mut force = sheet.carry(N_LEG, loaded.own_n);
        if let Some(others) = loaded.others_n {
            let others = sheet.step(N_MEETS, others);
            force = sheet.step(N_TOGETHER, force + others);
        }
        let demand = match occasion {
            Occasion::Earthquake(_) => sheet.step(N_CASE, force),
            _ => {
                let factor = load_factor::told(site.structure_frame(), site.floor.load_class(), When::AtRest, sheet);
                sheet.step(N_FACTORED, factor * force)
            }
        };
        let strength = sheet.carry(V_R, strength);
        let utilisation = sheet.step(U_PUNCH, demand / strength);
        Outcome::Compared { value: demand, limit: strength, utilisation }
    }
}
