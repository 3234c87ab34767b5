//! A foot that stands on a bed of grout.

use super::FloorSite;
use super::leg_steps::*;
use super::steps::*;
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, limit};
use crate::checks::feet::FootForce;
use crate::floor;
use crate::load_case::Format;
use crate::rules::floor::bearing::LoadedArea;
use crate::rules::floor::punching_en;

/// The joint of one foot; none where no grout is given, or where nothing presses on an area.
pub(super) fn joint(
    site: &FloorSite,
    leg: usize,
    force: &FootForce,
    format: Format,
    sheet: &mut Sheet,
) -> Option<Outcome> {
    let thickness = site.floor.values.number(floor::GROUT)?;
    if force.bearing_half.area_mm2() <= 0.0 {
        return None;
    }
    sheet.open(Part::Floor, Subject::Foot(leg as u16), Some(CheckId::FootGrout), System::Si);
    Some(compared(site, leg, force, (thickness, format), sheet).unwrap_or_else(Outcome::NotCovered))
}

fn compared(
    site: &FloorSite,
    leg: usize,
    force: &FootForce,
    (thickness, format): (f64, Format),
    sheet: &mut Sheet,
) -> Result<Outcome, StepId> {
    let strength = site.floor.values.number(floor::GROUT_STRENGTH).ok_or(NO_GROUT_STRENGTH)?;
    let at = &site.legs[leg];
    sheet.step(T_GROUT, thickness);
    let strength = sheet.step(F_GROUT, strength);
    let area = sheet.step(A_GROUT, 4.0 * force.bearing_half.area_mm2());
    let resistance = match format {
        Format::LimitStates => {
            let width = 2.0 * f64::min(at.half.x_mm, at.half.y_mm);
            let concrete = site.slab.strength_mpa;
            punching_en::covered(concrete)?;
            let is_strong = limit::at_least(strength, 0.2 * concrete)
                && (limit::at_most(thickness, 50.0) || limit::at_least(strength, concrete));
            if !is_strong || limit::more(thickness, 0.2 * width) {
                return Err(GROUT_BY_TEST);
            }
            let loaded = LoadedArea {
                sides: [2.0 * force.bearing_half.x_mm, 2.0 * force.bearing_half.y_mm],
                beyond: [at.beyond.x_mm, at.beyond.y_mm],
                thickness: site.slab.thickness_mm,
                strength: concrete,
            };
            let [_, joint] = loaded.en(site.floor.values.given(floor::ALPHA_CC), sheet);
            sheet.step(R_GROUT_EN, joint * area)
        }
        Format::Strength => sheet.step(R_GROUT, 0.65 * 0.85 * strength * area),
        Format::AllowableStress => sheet.step(R_GROUT_ASD, 0.85 * strength * area / 2.31),
    };
    sheet.carry(N_LEG, force.force_n);
    let demand = sheet.step(N_CASE, force.force_n);
    let utilisation = sheet.step(U_GROUT, demand / resistance);
    Ok(Outcome::Compared { value: demand, limit: resistance, utilisation })
}
