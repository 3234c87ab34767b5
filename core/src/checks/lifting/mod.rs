//! Lifting: what slings and lifting points feel when the cabinet hangs on one hook, and whether they hold that.
//!
//! A stiff cabinet on four slings hangs on two or three of them, because no four slings are equally long. So every set
//! of three legs that can hold it is tried, and the worst counts. Rigging needs a qualified person; these checks only
//! show what such a person will ask for.

mod angle;
mod attachment;
mod centre;
mod eyebolt;
mod fields;
mod legs;
mod sling;
mod texts;
mod thread;
mod tilt;

use alloc::vec::Vec;

pub use eyebolt::{Eyebolt, SIZES};
pub use fields::{FIELD_TEXTS, FIELDS};
pub use legs::{Leg, legs};
pub use texts::TEXTS;

use crate::cabinet::LiftingPoint;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System};
use crate::input::field::Values;
use crate::rules::anchor::{Finding, Findings};

/// A cabinet in one state on a hook.
#[derive(Clone, Copy, Debug)]
pub struct Hung<'a> {
    /// Its mass.
    pub mass_kg: f64,
    /// Its centre of gravity.
    pub centre_mm: [f64; 3],
    /// Where the slings are fixed.
    pub points: &'a [LiftingPoint],
    /// What is known of the rigging, in the order of [`FIELDS`].
    pub values: &'a Values,
}

/// How the legs share the load.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Sharing {
    /// A stiff cabinet without a device that levels the legs: any three of them, or two, may carry all.
    Stiff,
    /// Something makes all legs carry: an equaliser, or springs.
    Equalised,
}

impl Hung<'_> {
    /// All checks of lifting in this state, quiet or told.
    ///
    /// Units: N, mm, kg, rad. Outcomes are "not covered" where fewer than three points hold it, where it would turn
    /// over, and where the rating of a part is not given.
    pub fn check(&self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let mut find = |check, outcome| findings.find(Finding { check, subject: Subject::Whole, outcome });
        if self.points.len() < 3 {
            for check in [CheckId::LiftCentre, CheckId::LiftTilt] {
                find(check, Outcome::NotCovered(texts::TWO_POINTS));
            }
        } else {
            find(CheckId::LiftCentre, self.check_centre(sheet));
            find(CheckId::LiftTilt, self.check_tilt(sheet));
        }
        let legs = legs(self);
        let Some(worst) = hardest(&legs) else {
            let reason = if self.points.len() < 3 { texts::TWO_POINTS } else { texts::SWINGS };
            for check in [CheckId::LiftAngle, CheckId::LiftLeg, CheckId::LiftSling, CheckId::LiftAttachment] {
                find(check, Outcome::NotCovered(reason));
            }
            return;
        };
        find(CheckId::LiftAngle, self.check_angle(&legs, sheet));
        find(CheckId::LiftLeg, self.check_leg(&legs, &worst, sheet));
        find(CheckId::LiftSling, self.check_sling(&legs, sheet));
        find(CheckId::LiftAttachment, self.check_attachment(&legs, sheet));
        find(CheckId::LiftThread, self.check_thread(&worst, sheet));
    }

    /// The hook: given, or above the centre of gravity.
    pub fn hook_mm(&self) -> [f64; 3] {
        let highest = self.points.iter().fold(f64::NEG_INFINITY, |highest, point| highest.max(point.at_mm[2]));
        let z = highest + self.values.given(fields::HOOK_ABOVE);
        let [x, y, _] = self.values.numbers(fields::HOOK_AT).unwrap_or(self.centre_mm);
        [x, y, z]
    }

    /// How the legs share it.
    pub fn sharing(&self) -> Sharing {
        if self.values.choice(fields::SHARING) == Some(1) { Sharing::Equalised } else { Sharing::Stiff }
    }

    /// Its weight with the allowance for hoisting, and how it comes about.
    fn tell_weight(&self, sheet: &mut Sheet) -> f64 {
        sheet.carry(texts::M, self.mass_kg);
        sheet.step(texts::G, G_N_PER_KG);
        let factor = sheet.step(texts::GAMMA, self.values.given(fields::DYNAMIC));
        sheet.step(texts::W, self.mass_kg * G_N_PER_KG * factor)
    }

    fn open(&self, check: CheckId, sheet: &mut Sheet) {
        sheet.open(Part::Lifting, Subject::Whole, Some(check), System::Si);
    }
}

/// The leg with the hardest pull.
fn hardest(legs: &[Leg]) -> Option<Leg> {
    legs.iter().copied().reduce(|worst, leg| if leg.tension_n > worst.tension_n { leg } else { worst })
}

/// The tensions of all legs, for a section.
fn tensions(legs: &[Leg]) -> Vec<f64> {
    legs.iter().map(|leg| leg.tension_n).collect()
}
