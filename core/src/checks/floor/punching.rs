//! Punching of a leg through the slab.

use super::steps::*;
use super::{FloorSite, Occasion};
use crate::calc::{CheckId, Kind, Outcome, Part, Sheet, Subject, System};
use crate::floor::{self, Reinforcement};
use crate::load_case::Format;
use crate::rules::floor::load_factor::{self, Frame, When};
use crate::rules::floor::punching_aci::{self, SizeEffect, in_system};
use crate::rules::floor::punching_en::{self, Carried};

/// One leg: by ACI 318 in strength design, by EN 1992-1-1 in limit states.
pub fn leg(site: &FloorSite, leg: usize, force_n: f64, occasion: Occasion, sheet: &mut Sheet) -> Outcome {
    let check = match occasion {
        Occasion::Earthquake(_) => CheckId::SlabQuakePunching,
        _ => CheckId::SlabRestPunching,
    };
    sheet.open(Part::Floor, Subject::Foot(leg as u16), Some(check), System::Si);
    let is_limit_states = match (occasion, site.floor.frame()) {
        (Occasion::Earthquake(Format::AllowableStress), _) => return Outcome::NotCovered(WEAK_FORMAT),
        (Occasion::Earthquake(format), _) => format == Format::LimitStates,
        (_, frame) => frame != Frame::Asce7,
    };
    let values = &site.floor.values;
    let load = site.rectangle(leg);
    let (depth, ratio) = (values.number(floor::DEPTH), values.number(floor::RATIO));
    let strength = if is_limit_states {
        let carried = match (site.floor.reinforcement(), depth, ratio) {
            (Reinforcement::Fibres, ..) => Carried::Fibres { thickness_mm: site.slab.thickness_mm },
            (_, Some(depth_mm), Some(ratio)) => Carried::Bars { depth_mm, ratio },
            _ => return Outcome::NotCovered(punching_en::NO_RATIO),
        };
        punching_en::strength_n(&load, site.slab.strength_mpa, carried, sheet)
    } else {
        let slab = in_system(&load, site.slab.strength_mpa, System::Si);
        match (site.floor.reinforcement(), depth) {
            // Fibres are no reinforcement in the sense of 22.6: such a slab counts as plain here.
            (Reinforcement::Plain | Reinforcement::Fibres, _) if site.is_on_ground() => {
                slab.plain(site.slab.thickness_mm, sheet)
            }
            (_, Some(depth)) => slab.reinforced(depth, SizeEffect::Counted, sheet),
            _ => return Outcome::NotCovered(punching_aci::NO_DEPTH),
        }
    };
    let strength = match strength {
        Ok(strength) => strength,
        Err(reason) => return Outcome::NotCovered(reason),
    };
    sheet.carry(N_LEG, force_n);
    let demand = match occasion {
        Occasion::Earthquake(_) => sheet.step(N_CASE, force_n),
        _ => {
            let factor = load_factor::told(site.floor.frame(), site.floor.load_class(), When::AtRest, sheet);
            sheet.step(N_FACTORED, factor * force_n)
        }
    };
    let strength = sheet.carry(V_R, strength);
    let utilisation = sheet.step(U_PUNCH, demand / strength);
    debug_assert_eq!(check.kind(), Kind::Force);
    Outcome::Compared { value: demand, limit: strength, utilisation }
}
