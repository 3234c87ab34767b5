//! The plate of a foot in bending, and bearing by other rules than ACI 318.

use super::steps::*;
use super::{FloorSite, Occasion, Standing};
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System};
use crate::checks::feet::FootForce;
use crate::floor;
use crate::load_case::Format;
use crate::rules::floor::bearing::LoadedArea;
use crate::rules::floor::foot_plate::{self, FootPlate, PlateFormat, PlateShape, Stem};
use crate::rules::floor::load_factor::{self, Frame, When};
use crate::rules::floor::punching_en;

/// One plate; none where no thickness is given.
pub fn leg(
    site: &FloorSite,
    leg: usize,
    standing: &Standing,
    occasion: Occasion,
    sheet: &mut Sheet,
) -> Option<Outcome> {
    let values = &site.floor.values;
    let thickness = values.number(floor::PLATE)?;
    let check = match occasion {
        Occasion::Earthquake(_) => CheckId::FootPlate,
        _ => CheckId::FootPlateRest,
    };
    sheet.open(Part::Floor, Subject::Foot(leg as u16), Some(check), System::Si);
    let half = site.legs[leg].half;
    if half.area_mm2() <= 0.0 {
        return Some(Outcome::NotCovered(POINT));
    }
    let Some(stem_mm) = site.legs[leg].stem_mm else {
        return Some(Outcome::NotCovered(foot_plate::NO_STEM));
    };
    let force = sheet.carry(N_LEG, standing.legs_n[leg]);
    let (format, factored) = match occasion {
        Occasion::Earthquake(Format::Strength) => (PlateFormat::Strength, sheet.step(N_CASE, force)),
        Occasion::Earthquake(Format::LimitStates) => (PlateFormat::LimitStates, sheet.step(N_CASE, force)),
        Occasion::Earthquake(Format::AllowableStress) => (PlateFormat::AllowableStress, sheet.step(N_CASE, force)),
        _ => {
            // The factors of TR34 are for slabs, not for steel.
            let frame = if site.floor.frame() == Frame::Asce7 { Frame::Asce7 } else { Frame::En1990 };
            let factor = load_factor::told(frame, site.floor.load_class(), When::AtRest, sheet);
            let format = if frame == Frame::Asce7 { PlateFormat::Strength } else { PlateFormat::LimitStates };
            (format, sheet.step(N_FACTORED, factor * force))
        }
    };
    // A swivel lets the foot lie flat; a fixed stem leans on it.
    let stem = if values.choice(floor::PLATE_STEM) == Some(1) { Stem::Fixed } else { Stem::Swivel };
    let pressed = if stem == Stem::Fixed { standing.pressed_half[leg] } else { half };
    let area = sheet.step(A_FOOT, 4.0 * pressed.area_mm2());
    let mean = sheet.step(Q_MEAN, factored / area);
    let plate = FootPlate {
        side_mm: 2.0 * f64::max(half.x_mm, half.y_mm),
        shape: PlateShape::Square,
        stem_mm,
        stem,
        yield_mpa: values.given(floor::PLATE_YIELD),
    };
    let needed = match plate.thickness_mm(mean, format, sheet) {
        Ok(needed) => needed,
        Err(reason) => return Some(Outcome::NotNeeded(reason)),
    };
    let given = sheet.step(T_GIVEN, thickness);
    let utilisation = sheet.step(U_PLATE, crate::calc::number::pow(needed / given, 2.0));
    Some(Outcome::Compared { value: needed, limit: given, utilisation })
}

/// Bearing of one leg by AISC 360 J8 for information, and by EN 1992-1-1 6.7 in limit states.
pub fn bearing(
    site: &FloorSite,
    leg: usize,
    force: &FootForce,
    format: Format,
    sheet: &mut Sheet,
) -> [Option<(CheckId, Outcome)>; 2] {
    let at = &site.legs[leg];
    if force.bearing_half.area_mm2() <= 0.0 {
        return [None, None];
    }
    // As with ACI 318, the loaded area is the rectangle in the foot whose middle is where its force acts.
    let area = LoadedArea {
        sides: [2.0 * force.bearing_half.x_mm, 2.0 * force.bearing_half.y_mm],
        beyond: [at.beyond.x_mm, at.beyond.y_mm],
        thickness: site.slab.thickness_mm,
        strength: site.slab.strength_mpa,
    };
    let subject = Subject::Foot(leg as u16);
    let compare = |strength: f64, sheet: &mut Sheet| {
        sheet.carry(N_LEG, force.force_n);
        let demand = sheet.step(N_CASE, force.force_n);
        let strength = sheet.carry(R_D, strength);
        let utilisation = sheet.step(U_BEAR, demand / strength);
        Outcome::Compared { value: demand, limit: strength, utilisation }
    };
    if format == Format::LimitStates {
        sheet.open(Part::Floor, subject, Some(CheckId::FootBearingEn), System::Si);
        if let Err(reason) = punching_en::covered(site.slab.strength_mpa) {
            return [None, Some((CheckId::FootBearingEn, Outcome::NotCovered(reason)))];
        }
        let [strength, _] = area.en(site.floor.values.given(floor::ALPHA_CC), sheet);
        return [None, Some((CheckId::FootBearingEn, compare(strength, sheet)))];
    }
    sheet.open(Part::Floor, subject, Some(CheckId::FootBearingAisc), System::Si);
    let strengths = area.aisc(sheet);
    let strength = if format == Format::Strength { strengths.design } else { strengths.allowable };
    [Some((CheckId::FootBearingAisc, compare(strength, sheet))), None]
}
