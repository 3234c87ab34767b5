use super::{Moved, fields, texts::*};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Detail, Outcome, Sheet};

impl Moved<'_> {
    /// Braking on the steepest ramp against the braking at which it tips, towards the nearest side of its wheels.
    pub(super) fn check_brake(&self, sheet: &mut Sheet) -> Outcome {
        let least = self.least_mm();
        if !(least > 0.0) {
            return Outcome::NotCovered(BESIDE);
        }
        self.open(CheckId::MoveBrake, sheet);
        let height = sheet.step(H, self.centre_mm[2]);
        let least = sheet.detailed(T, least, || Detail::Shape(self.outline()));
        let slope = sheet.step(SLOPE, self.values.given(fields::SLOPE));
        let length = sheet.step(L_S, sqrt(1.0 + slope * slope));
        let tips = sheet.step(A_TIP, (least / height - slope) / length);
        let braking = sheet.step(A_B, self.values.given(fields::BRAKE));
        if !(tips > 0.0) {
            sheet.step(STEEP, 0.0);
            return Outcome::Compared { value: braking, limit: tips, utilisation: f64::INFINITY };
        }
        Outcome::told_ratio(braking, tips, U_BRAKE, sheet)
    }
}
