use super::carrier::*;
use super::{Moved, fields};
use crate::calc::{CheckId, Outcome, Sheet};

/// What may be lifted under the best conditions.
const LOAD_KG: f64 = 23.0;
/// Up to this reach, and for ways up that are no longer, nothing is taken off.
const NEAR_MM: f64 = 250.0;
/// Knuckle height, where nothing is taken off.
const KNUCKLE_MM: f64 = 750.0;

impl Moved<'_> {
    /// The heaviest content against what one person should lift by the revised equation; for people a filter, no limit.
    pub(super) fn check_hand(&self, sheet: &mut Sheet) -> Outcome {
        let Some(reach) = self.values.number(fields::HAND_REACH) else { return Outcome::NotNeeded(NO_HANDS) };
        if !(self.heaviest_kg > 0.0) {
            return Outcome::NotNeeded(NOTHING_ABOARD);
        }
        self.open(CheckId::MoveHand, sheet);
        let load = sheet.step(L_C, LOAD_KG);
        let reach = sheet.step(H_H, reach);
        let near = sheet.step(H_0, NEAR_MM);
        let hm = sheet.step(HM, f64::min(1.0, near / reach));
        let from = sheet.step(V_H, self.values.given(fields::HAND_FROM));
        let knuckle = sheet.step(V_0, KNUCKLE_MM);
        let vm = sheet.step(VM, 1.0 - 0.225 * (from - knuckle).abs() / knuckle);
        let by = sheet.step(D_H, self.values.given(fields::HAND_BY));
        let dm = sheet.step(DM, 0.82 + 0.18 * near / f64::max(by, near));
        let turn = sheet.step(A_H, self.values.given(fields::HAND_TURN));
        let am = sheet.step(AM, 1.0 - 0.0032 * turn);
        let fm = sheet.step(FM, self.values.given(fields::HAND_OFTEN));
        let cm = sheet.step(CM, self.values.given(fields::HAND_GRIP));
        let rwl = sheet.step(RWL, load * hm * vm * dm * am * fm * cm);
        let mass = sheet.step(M_H, self.heaviest_kg);
        Outcome::told_ratio(mass, rwl, U_H, sheet)
    }
}
