use alloc::vec::Vec;

use super::{Moved, fields, texts::*};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Detail, Outcome, Sheet, limit};

impl Moved<'_> {
    /// The pull that lifts the wheels of one axle over the highest sill against what the people may pull.
    ///
    /// A wheel never climbs a sill as high as its own radius by a level pull.
    pub(super) fn check_sill(&self, sheet: &mut Sheet) -> Outcome {
        let sill = self.values.given(fields::SILL);
        if sill == 0.0 {
            return Outcome::NotNeeded(NO_SILL);
        }
        let Some(radius) = self.values.number(fields::WHEEL_RADIUS) else { return Outcome::NotCovered(NO_WHEEL) };
        self.open(CheckId::MoveSill, sheet);
        let weight = self.tell_weight(sheet);
        let radius = sheet.step(R_W, radius);
        let sill = sheet.step(H_S, sill);
        if limit::at_least(sill, radius) {
            return Outcome::Compared { value: f64::INFINITY, limit: 0.0, utilisation: f64::INFINITY };
        }
        let share = sheet.detailed(K_A, self.axle_share(), || Detail::Shape(self.outline()));
        let axle = sheet.step(W_A, share * weight);
        let force = sheet.step(F_SILL, axle * sqrt(2.0 * radius * sill - sill * sill) / (radius - sill));
        if self.is_powered() {
            return Outcome::NotNeeded(POWERED);
        }
        let team = self.tell_team(sheet);
        Outcome::told_ratio(force, team, U_PUSH, sheet)
    }

    /// The largest share of the weight that the wheels on one side of the hull carry.
    fn axle_share(&self) -> f64 {
        let mut most = 0.5;
        for axis in 0..2 {
            let along = |corner: &crate::geometry::Point| if axis == 0 { corner.x_mm } else { corner.y_mm };
            let low = self.hull.corners().iter().map(along).fold(f64::INFINITY, f64::min);
            let high = self.hull.corners().iter().map(along).fold(f64::NEG_INFINITY, f64::max);
            if high > low {
                let part = (self.centre_mm[axis] - low) / (high - low);
                most = f64::max(most, part.max(1.0 - part));
            }
        }
        most
    }

    pub(super) fn outline(&self) -> Vec<[f64; 2]> {
        self.hull.corners().iter().map(|corner| [corner.x_mm, corner.y_mm]).collect()
    }
}
