use super::{Hung, Leg, texts::*};
use crate::calc::{CheckId, Detail, Outcome, Sheet};

/// The flattest leg that sling tables reach, from the vertical.
pub(super) const FLATTEST_DEG: f64 = 60.0;

impl Hung<'_> {
    /// Whether no leg lies flatter than slings are used.
    pub(super) fn check_angle(&self, legs: &[Leg], sheet: &mut Sheet) -> Outcome {
        self.open(CheckId::LiftAngle, sheet);
        let flattest = flattest_rad(legs);
        sheet.detailed(BETA, flattest, || {
            Detail::Shape(self.points.iter().map(|point| [point.at_mm[0], point.at_mm[1]]).collect())
        });
        let most = sheet.step(BETA_MAX, FLATTEST_DEG.to_radians());
        Outcome::told_ratio(flattest, most, U_ANGLE, sheet)
    }
}

pub(super) fn flattest_rad(legs: &[Leg]) -> f64 {
    legs.iter().fold(0.0, |flattest, leg| flattest.max(leg.from_vertical_rad))
}
