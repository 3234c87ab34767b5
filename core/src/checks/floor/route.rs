//! The way in: the wheels over panels and over the slab.

use super::FloorSite;
use super::bending;
use super::steps::*;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System};
use crate::floor::{casters, raised};
use crate::rules::floor::raised::{self as rules, Rolled};
use crate::rules::floor::slab_on_ground::modulus_mpa;
use crate::rules::floor::wheel::{Elastic, Wheel, allowed_mpa};

/// Panels, slab and the pressure of the wheel.
pub fn check(site: &FloorSite, weight_n: f64, sheet: &mut Sheet, find: &mut dyn FnMut(CheckId, Subject, Outcome)) {
    let Some(values) = &site.floor.casters else { return };
    let rolled = Rolled { weight_n, wheels: values.given(casters::WHEELS), dynamic: values.given(casters::DYNAMIC) };
    let open = |check, sheet: &mut Sheet| sheet.open(Part::Floor, Subject::Whole, Some(check), System::Si);
    if let Some(panels) = &site.floor.raised {
        open(CheckId::RoutePanel, sheet);
        let outcome = match panels.number(raised::ROLLING) {
            Some(rating) => {
                let compared = rolled.on_panel(rating, sheet);
                Outcome::Compared { value: compared.value, limit: compared.limit, utilisation: compared.utilisation }
            }
            None => Outcome::NotCovered(rules::NO_ROLLING),
        };
        find(CheckId::RoutePanel, Subject::Whole, outcome);
    }
    open(CheckId::RouteContact, sheet);
    let load_n = rolled.wheel_n(sheet);
    let modulus = match site.floor.values.number(crate::floor::MODULUS) {
        Some(given) => given,
        None => modulus_mpa(site.slab.strength_mpa, sheet),
    };
    let wheel = Wheel {
        radius_mm: values.given(casters::RADIUS),
        width_mm: values.given(casters::WIDTH),
        tread: casters::tread(values),
        floor: Elastic { modulus_mpa: modulus, poisson: site.floor.values.given(crate::floor::POISSON) },
    };
    let patch = wheel.line(load_n, sheet);
    let allowed = allowed_mpa(site.slab.strength_mpa, sheet);
    let pressure = sheet.carry(P_WHEEL, patch.peak_mpa.unwrap_or(patch.mean_mpa));
    let limit = sheet.carry(P_ALLOWED, allowed);
    let utilisation = sheet.step(U_WHEEL, pressure / limit);
    find(CheckId::RouteContact, Subject::Whole, Outcome::Compared { value: pressure, limit, utilisation });
    if site.is_on_ground() {
        open(CheckId::RouteBending, sheet);
        let load_n = rolled.wheel_n(sheet);
        let area_mm2 = 2.0 * patch.half_mm * wheel.width_mm;
        let outcome = bending::wheel(site, load_n, area_mm2, sheet);
        find(CheckId::RouteBending, Subject::Whole, outcome);
    }
}
