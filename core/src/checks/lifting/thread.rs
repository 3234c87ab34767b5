use super::attachment::Held;
use super::{Hung, Leg, fields, texts::*};
use crate::calc::{CheckId, Outcome, Sheet};

/// Diameters of thread that a tapped blind hole in steel needs.
const ENGAGED_DIAMETERS: f64 = 1.5;
/// Working coefficient of the eyebolt against its breaking load.
const WORKING_COEFFICIENT: f64 = 6.0;

impl Hung<'_> {
    /// Whether the thread of the eyebolt is deep enough, and does not strip.
    ///
    /// The basic profile is taken; tolerances make the sheared area somewhat smaller, which the step says.
    pub(super) fn check_thread(&self, worst: &Leg, sheet: &mut Sheet) -> Outcome {
        let Some(bolt) = self.eyebolt() else {
            return match self.held() {
                Some(Held::Ring(_)) => Outcome::NotNeeded(RING_THREAD),
                Some(Held::Lug(..)) => Outcome::NotNeeded(LUG_NO_THREAD),
                Some(_) => Outcome::NotCovered(OTHER_THREAD),
                None => Outcome::NotCovered(NO_RATING),
            };
        };
        let given = (self.values.number(fields::ENGAGEMENT), self.values.number(fields::BASE_TENSILE));
        let (Some(engaged), Some(tensile)) = given else { return Outcome::NotCovered(NO_THREAD) };
        self.open(CheckId::LiftThread, sheet);
        let pull = sheet.carry(T, worst.tension_n);
        let (d, p) = (sheet.step(D, bolt.diameter_mm), sheet.step(P, bolt.pitch_mm));
        let engaged = sheet.step(L_E, engaged);
        let k = sheet.step(K_E, ENGAGED_DIAMETERS);
        let least = sheet.step(L_MIN, k * d);
        let u_length = sheet.step(U_LENGTH, least / engaged);
        let d_2 = sheet.step(D_2, d - 0.649519 * p);
        let pi = sheet.step(PI, core::f64::consts::PI);
        let area = sheet.step(A_N, pi * engaged / p * d * (p / 2.0 + 0.57735 * (d - d_2)));
        let tensile = sheet.step(R_M, tensile);
        let strip = sheet.step(F_STRIP, 0.5 * tensile * area);
        let nu = sheet.step(NU, WORKING_COEFFICIENT);
        let rating = sheet.step(R_STRIP, strip / nu);
        let utilisation = sheet.step(U_STRIP, (pull / rating).max(u_length));
        Outcome::Compared { value: pull, limit: rating, utilisation }
    }
}
