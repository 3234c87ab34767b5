use super::{Hung, texts::*};
use crate::calc::number::{atan2, hypot};
use crate::calc::{CheckId, Detail, Outcome, Sheet};

/// From memory: a tilt that people who move equipment tolerate.
const TILT_MAX_DEG: f64 = 5.0;

impl Hung<'_> {
    /// How far it tilts when the hook does not stand above its centre of gravity.
    pub(super) fn check_tilt(&self, sheet: &mut Sheet) -> Outcome {
        self.open(CheckId::LiftTilt, sheet);
        let [x, y, z] = self.hook_mm();
        let below = z - self.centre_mm[2];
        sheet.step(Z_H, z);
        sheet.step(Z_G, self.centre_mm[2]);
        if !(below > 0.0) {
            sheet.step(HOOK_LOW, 0.0);
            return Outcome::NotCovered(HOOK_LOW);
        }
        let aside = hypot(self.centre_mm[0] - x, self.centre_mm[1] - y);
        sheet.detailed(E_H, aside, || Detail::Shape(alloc::vec![[x, y], [self.centre_mm[0], self.centre_mm[1]]]));
        let tilt = sheet.detailed(TILT, atan2(aside, below), || {
            Detail::Shape(alloc::vec![[0.0, z], [0.0, self.centre_mm[2]], [aside, self.centre_mm[2]]])
        });
        let most = sheet.step(TILT_MAX, TILT_MAX_DEG.to_radians());
        Outcome::told_ratio(tilt, most, U_TILT, sheet)
    }
}
