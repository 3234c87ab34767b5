//! What the values of the fields mean together: the bolt they speak of, and where they contradict each other.

use alloc::vec::Vec;

use super::fields::*;
use super::kind::AnchorKind;
use crate::calc::{Sheet, System};
use crate::input::Problem;
use crate::input::field::Values;
use crate::rules::anchor::Amplification;
use crate::rules::bolts::{Bolt, Head, SIZE_WORDS, SIZES, STEEL_WORDS, Shank, Thread};

/// The demand that the seismic options ask for: amplified by option (d) of 17.10.5.3 and (c) of 17.10.6.3, and limited
/// without that by the others. In categories A and B it is plain.
pub fn amplification(values: &Values) -> Amplification {
    if values.choice(SEISMIC_CATEGORY) != Some(CATEGORY_C_TO_F) {
        return Amplification::Plain;
    }
    let is_amplified = |field| values.choice(field).unwrap_or(0) == OPTION_AMPLIFIED;
    match (is_amplified(TENSION_OPTION), is_amplified(SHEAR_OPTION)) {
        (true, true) => Amplification::Amplified,
        (true, false) => Amplification::TensionOnly,
        (false, true) => Amplification::ShearOnly,
        (false, false) => Amplification::Limited,
    }
}

/// The last word of the sizes and of the steels: the measures follow.
pub fn is_given(values: &Values, field: usize) -> bool {
    let words = if field == BOLT { SIZE_WORDS } else { STEEL_WORDS };
    values.choice(field) == Some(words.len() - 1)
}

/// Faults that a single field's limits cannot see.
pub fn faults(values: &Values, found: &mut Vec<(usize, Problem, &'static str)>) {
    let mut need = |field: usize, why: &'static str| {
        if values.number(field).is_none() {
            found.push((field, Problem::Missing, why));
        }
    };
    if is_given(values, BOLT) {
        need(DIAMETER, "a bolt whose size is given needs its diameter");
        need(STRESS_AREA, "a bolt whose size is given needs its stress area");
    }
    if is_given(values, STEEL) {
        need(TENSILE, "a steel that is given needs its tensile strength");
        need(YIELD, "a steel that is given needs its yield strength");
    }
    let kind = AnchorKind::of(values.choice(ANCHOR_KIND));
    if kind == AnchorKind::Headed && values.choice(HEAD) == Some(HEAD_GIVEN) {
        need(BEARING_AREA, "a head that is given needs its bearing area");
    }
    if kind == AnchorKind::Hooked {
        need(HOOK, "a hooked bolt needs the length of its hook");
    }
    let option = |field| values.choice(field).unwrap_or(0);
    if option(TENSION_OPTION) >= OPTION_ATTACHMENT {
        need(ATTACHMENT_TENSION, "this option needs the pull that the attachment passes");
    }
    if option(TENSION_OPTION) == OPTION_DUCTILE {
        need(STRETCH, "option (a) needs the stretch length");
    }
    if option(SHEAR_OPTION) != OPTION_AMPLIFIED {
        need(ATTACHMENT_SHEAR, "this option needs the shear that the attachment passes");
    }
    if is_given(values, BOLT) {
        let (diameter, area) = (values.number(DIAMETER), values.number(STRESS_AREA));
        if let (Some(d), Some(a)) = (diameter, area)
            && a > core::f64::consts::PI / 4.0 * d * d
        {
            found.push((STRESS_AREA, Problem::AboveLimit, "at most the area of a circle of the diameter"));
        }
    }
    if let (Some(f_y), Some(f_u), true) = (values.number(YIELD), values.number(TENSILE), is_given(values, STEEL))
        && f_y > f_u
    {
        found.push((YIELD, Problem::AboveLimit, "at most the tensile strength"));
    }
    for (less, more, why) in [
        (N_P_CR, N_P_UNCR, "at most that in uncracked concrete"),
        (TAU_CR, TAU_UNCR, "at most that in uncracked concrete"),
        (K_CR, K_UNCR, "at most that in uncracked concrete"),
    ] {
        if let (Some(cracked), Some(uncracked)) = (values.number(less), values.number(more))
            && cracked > uncracked
        {
            found.push((less, Problem::AboveLimit, why));
        }
    }
    if values.number(STANDOFF).is_some_and(|free_mm| free_mm > 0.0)
        && values.choice(SEAT).unwrap_or(SEAT_CONCRETE) == SEAT_CONCRETE
    {
        found.push((STANDOFF, Problem::Excludes, "0, or a grout pad or a stand-off under the base"));
    }
    if kind != AnchorKind::Headed {
        if is_stud(values) {
            found.push((BOLT, Problem::NotInRule, "a bolt's size; studs are cast in with their own head"));
        }
    } else if is_given(values, BOLT) && values.choice(HEAD) != Some(HEAD_GIVEN) {
        found.push((
            HEAD,
            Problem::NotInRule,
            "a bolt whose size is given needs the head \"given\" with its bearing area",
        ));
    } else if values.choice(HEAD) == Some(HEAD_HEAVY) && !has_heavy_head(values) {
        found.push((
            HEAD,
            Problem::NotInRule,
            "inch bolts from 1/2 in. on have a heavy head; give the bearing area for others",
        ));
    }
}

/// Place of the word "heavy-hex".
pub const HEAD_HEAVY: usize = 1;
/// Place of the word "given".
pub const HEAD_GIVEN: usize = 2;
/// Place of the word "deep".
pub const FORM_DEEP: usize = 1;
/// Place of the word "concrete".
pub const SEAT_CONCRETE: usize = 0;
/// Place of the word "grout".
pub const SEAT_GROUT: usize = 1;
/// Place of the word "stand-off".
pub const SEAT_GAP: usize = 2;
/// Place of the word "present".
pub const PRESENT: usize = 1;
/// Place of the word "C-F".
pub const CATEGORY_C_TO_F: usize = 1;
/// Place of the word "five-thirds".
pub const FIVE_THIRDS: usize = 1;
/// Places of the words of ductility.
pub const DUCTILE: usize = 1;
/// Place of the word "brittle".
pub const BRITTLE: usize = 2;

/// Place of the word for the earthquake times overstrength, in tension and in shear.
pub const OPTION_AMPLIFIED: usize = 0;
/// Place of the word for ductile steel, in tension.
pub const OPTION_DUCTILE: usize = 1;
/// The first of the words, in tension, by which the attachment limits the force.
pub const OPTION_ATTACHMENT: usize = 2;
/// Place of the word "not-decisive".
pub const PULLOUT_NOT_DECISIVE: usize = 1;
/// Place of the word "tight".
pub const HOLE_TIGHT: usize = 1;
/// Place of the word "slot-x".
pub const HOLE_SLOT_X: usize = 2;
/// Place of the word "slot-y".
pub const HOLE_SLOT_Y: usize = 3;

fn is_stud(values: &Values) -> bool {
    let size = values.choice(BOLT).and_then(|place| SIZES.get(place));
    size.is_some_and(|size| matches!(size.thread, Thread::Stud(_)))
}

fn has_heavy_head(values: &Values) -> bool {
    bolt(values).is_some_and(|bolt| bolt.bearing_area(System::Si, &mut Sheet::quiet()).is_some())
}

/// The bolt that the values speak of; none while a measure of it is missing.
pub fn bolt(values: &Values) -> Option<Bolt> {
    let shank = match values.choice(BOLT)? {
        place if place < SIZES.len() => Shank::Listed(&SIZES[place]),
        _ => Shank::Given { diameter_mm: values.number(DIAMETER)?, stress_area_mm2: values.number(STRESS_AREA)? },
    };
    let head = match values.choice(HEAD)? {
        HEAD_HEAVY => Head::HeavyHexagon,
        HEAD_GIVEN if AnchorKind::of(values.choice(ANCHOR_KIND)) == AnchorKind::Headed => {
            Head::Given { bearing_area_mm2: values.number(BEARING_AREA)? }
        }
        _ => Head::Own,
    };
    Some(Bolt { shank, head })
}
