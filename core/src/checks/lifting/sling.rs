use super::angle::{FLATTEST_DEG, flattest_rad};
use super::{Hung, Leg, Sharing, fields, tensions, texts::*};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Sheet, limit};

/// Up to here from the vertical the first factor of the table holds.
const STEEP_DEG: f64 = 45.0;

impl Hung<'_> {
    /// The pull in the hardest leg against the rating of a single one.
    pub(super) fn check_leg(&self, legs: &[Leg], worst: &Leg, sheet: &mut Sheet) -> Outcome {
        let Some(leg_kg) = self.values.number(fields::LEG_CAPACITY) else {
            return Outcome::NotCovered(NO_LEG_RATING);
        };
        self.open(CheckId::LiftLeg, sheet);
        self.tell_weight(sheet);
        let residual = legs.iter().fold(0.0, |most: f64, leg| most.max(leg.residual));
        sheet.each_detailed(T_I, &tensions(legs), || Detail::Residuals(alloc::vec![residual]));
        let pull = sheet.detailed(T, worst.tension_n, || Detail::Residuals(alloc::vec![worst.residual]));
        sheet.step(M_LEG, leg_kg);
        let rating = sheet.step(R_LEG, leg_kg * G_N_PER_KG);
        Outcome::told_ratio(pull, rating, U_LEG, sheet)
    }

    /// The weight against the rating of the whole set by its leg factor.
    pub(super) fn check_sling(&self, legs: &[Leg], sheet: &mut Sheet) -> Outcome {
        let Some(leg_kg) = self.values.number(fields::LEG_CAPACITY) else {
            return Outcome::NotCovered(NO_LEG_RATING);
        };
        let flattest = flattest_rad(legs);
        let is_steep = limit::at_most(flattest, STEEP_DEG.to_radians());
        if !limit::at_most(flattest, FLATTEST_DEG.to_radians()) {
            return Outcome::NotCovered(TOO_FLAT);
        }
        self.open(CheckId::LiftSling, sheet);
        let weight = self.tell_weight(sheet);
        sheet.detailed(BETA, flattest, || {
            Detail::Shape(self.points.iter().map(|point| [point.at_mm[0], point.at_mm[1]]).collect())
        });
        let counted = if self.sharing() == Sharing::Stiff { 2.0 } else { legs.len().min(4) as f64 };
        sheet.step(N_LEGS, counted);
        let factor = leg_factor(counted, is_steep);
        sheet.detailed(K_L, factor, || Detail::Rows(alloc::vec![[counted, factor]]));
        sheet.step(M_LEG, leg_kg);
        let set_kg = sheet.step(M_SET, factor * leg_kg);
        let rating = sheet.step(R_SLING, set_kg * G_N_PER_KG);
        Outcome::told_ratio(weight, rating, U_SLING, sheet)
    }
}

/// The leg factor of EN 13414-1 Table 4: two legs 1.4 up to 45 degrees from the vertical and 1.0 beyond, three and
/// four legs 2.1 and 1.5.
fn leg_factor(legs: f64, is_steep: bool) -> f64 {
    match (legs > 2.0, is_steep) {
        (false, true) => 1.4,
        (false, false) => 1.0,
        (true, true) => 2.1,
        (true, false) => 1.5,
    }
}
