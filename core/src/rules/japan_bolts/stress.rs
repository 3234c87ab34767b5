//! One bolt under its pull and shear: stresses, and allowable forces of the concrete.

use super::facts::Bolt;
use super::steps as s;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System};

/// Pull and shear of a bolt, and as which steps they are told.
#[derive(Clone, Copy)]
pub struct Pulled {
    /// The pull.
    pub pull_n: f64,
    /// The shear.
    pub shear_n: f64,
    /// Whose statics they are.
    pub statics: Statics,
}

/// Whose statics gave the forces.
#[derive(Clone, Copy, PartialEq)]
pub enum Statics {
    /// Those of the base reactions.
    BaseReactions,
    /// Those of the practice, told in the section already.
    Own,
}

impl Pulled {
    fn open(self, subject: Subject, check: CheckId, sheet: &mut Sheet) {
        // The practice's own statics have opened the section, and told pull and shear in it.
        if self.statics == Statics::BaseReactions {
            sheet.open(Part::Anchors, subject, Some(check), System::Si);
        }
    }

    fn tell_pull(self, sheet: &mut Sheet) {
        if self.statics == Statics::BaseReactions {
            sheet.carry(s::T, self.pull_n);
        }
    }

    fn tell_shear(self, sheet: &mut Sheet) {
        if self.statics == Statics::BaseReactions {
            sheet.carry(s::Q, self.shear_n);
        }
    }

    /// Steel in tension: the stress against the allowable one.
    pub fn tension(self, bolt: &Bolt, subject: Subject, sheet: &mut Sheet) -> Outcome {
        if self.pull_n <= 0.0 {
            return Outcome::NotNeeded(s::NO_TENSION);
        }
        self.open(subject, CheckId::AnchorTensionSteel, sheet);
        self.tell_pull(sheet);
        let area = sheet.step(s::A, bolt.area_mm2);
        let sigma = sheet.step(s::SIGMA, self.pull_n / area);
        let f_t = bolt.tell_tension(sheet);
        let utilisation = sheet.step(s::U_SIGMA, sigma / f_t);
        Outcome::Compared { value: self.pull_n, limit: f_t * area, utilisation }
    }

    /// Steel in shear.
    pub fn shear(self, bolt: &Bolt, subject: Subject, sheet: &mut Sheet) -> Outcome {
        self.open(subject, CheckId::AnchorShearSteel, sheet);
        self.tell_shear(sheet);
        let area = sheet.step(s::A, bolt.area_mm2);
        let tau = sheet.step(s::TAU, self.shear_n / area);
        let f_s = bolt.tell_shear(sheet);
        let utilisation = sheet.step(s::U_TAU, tau / f_s);
        Outcome::Compared { value: self.shear_n, limit: f_s * area, utilisation }
    }

    /// Steel under both together.
    pub fn together(self, bolt: &Bolt, subject: Subject, sheet: &mut Sheet) -> Outcome {
        if self.pull_n <= 0.0 {
            return Outcome::NotNeeded(s::NO_TENSION);
        }
        self.open(subject, CheckId::AnchorInteractionSteel, sheet);
        self.tell_pull(sheet);
        self.tell_shear(sheet);
        let area = sheet.step(s::A, bolt.area_mm2);
        let sigma = sheet.step(s::SIGMA, self.pull_n / area);
        let tau = sheet.step(s::TAU, self.shear_n / area);
        let f_t = bolt.tell_tension(sheet);
        sheet.step(s::F_TS, f64::min(f_t, 1.4 * f_t - 1.6 * tau));
        // sigma <= f_ts, written so that it stays a number where the shear leaves nothing.
        let utilisation = sheet.step(s::U_TS, f64::max(sigma / f_t, (sigma + 1.6 * tau) / (1.4 * f_t)));
        Outcome::Compared { value: utilisation, limit: 1.0, utilisation }
    }

    /// Pull in the concrete against the allowable one.
    pub fn pullout(self, bolt: &Bolt, subject: Subject, sheet: &mut Sheet) -> Outcome {
        if self.pull_n <= 0.0 {
            return Outcome::NotNeeded(s::NO_TENSION);
        }
        let Some(allowed) = bolt.pull_n else { return Outcome::NotCovered(s::NO_T_A) };
        self.open(subject, CheckId::AnchorTensionPullout, sheet);
        self.tell_pull(sheet);
        let allowed = sheet.step(s::T_A, allowed);
        let utilisation = sheet.step(s::U_T, self.pull_n / allowed);
        Outcome::Compared { value: self.pull_n, limit: allowed, utilisation }
    }

    /// Shear in the concrete against the allowable one.
    pub fn concrete_shear(self, bolt: &Bolt, subject: Subject, sheet: &mut Sheet) -> Outcome {
        let Some(allowed) = bolt.concrete_shear_n else { return Outcome::NotCovered(s::NO_Q_A) };
        self.open(subject, CheckId::AnchorShearBreakout, sheet);
        self.tell_shear(sheet);
        let allowed = sheet.step(s::Q_A, allowed);
        let utilisation = sheet.step(s::U_Q, self.shear_n / allowed);
        Outcome::Compared { value: utilisation, limit: 1.0, utilisation }
    }

    /// The outcome of one of the five.
    pub fn of(self, mode: Mode, bolt: &Bolt, subject: Subject, sheet: &mut Sheet) -> Outcome {
        match mode {
            Mode::Tension => self.tension(bolt, subject, sheet),
            Mode::Shear => self.shear(bolt, subject, sheet),
            Mode::Together => self.together(bolt, subject, sheet),
            Mode::Pullout => self.pullout(bolt, subject, sheet),
            Mode::ConcreteShear => self.concrete_shear(bolt, subject, sheet),
        }
    }
}

/// What is asked of a bolt.
#[derive(Clone, Copy, PartialEq)]
pub enum Mode {
    /// Steel in tension.
    Tension,
    /// Steel in shear.
    Shear,
    /// Steel under both.
    Together,
    /// Pull in the concrete.
    Pullout,
    /// Shear in the concrete.
    ConcreteShear,
}

/// All of them with their checks.
pub const MODES: [(Mode, CheckId); 5] = [
    (Mode::Tension, CheckId::AnchorTensionSteel),
    (Mode::Pullout, CheckId::AnchorTensionPullout),
    (Mode::Shear, CheckId::AnchorShearSteel),
    (Mode::ConcreteShear, CheckId::AnchorShearBreakout),
    (Mode::Together, CheckId::AnchorInteractionSteel),
];

/// Whether an outcome is worse than another one.
pub fn is_worse(outcome: &Outcome, known: &Outcome) -> bool {
    let rank = |outcome: &Outcome| match *outcome {
        Outcome::NotNeeded(_) => -1.0,
        // Where no number is one, nothing is worse.
        Outcome::Compared { utilisation, .. } if utilisation.is_nan() => f64::INFINITY,
        Outcome::Compared { utilisation, .. } => utilisation,
        Outcome::NotCovered(_) => -0.5,
    };
    rank(outcome) > rank(known)
}

/// Why a mode that the practice does not know is not needed or not covered.
pub fn rest(is_pulled: bool, pull_n: Option<f64>) -> Outcome {
    match (is_pulled, pull_n) {
        (false, _) => Outcome::NotNeeded(s::NO_TENSION),
        (true, None) => Outcome::NotCovered(s::NO_T_A),
        (true, Some(_)) => Outcome::NotNeeded(s::IN_T_A),
    }
}
