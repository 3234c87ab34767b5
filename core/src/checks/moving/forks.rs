use super::{Moved, fields, texts::*};
use crate::calc::{CheckId, Detail, Outcome, Sheet};

impl Moved<'_> {
    /// The sideways acceleration in a turn against that at which it tips off the forks.
    pub(super) fn check_forks(&self, sheet: &mut Sheet) -> Outcome {
        let Some(spread) = self.values.number(fields::FORK_SPREAD) else { return Outcome::NotCovered(NO_FORKS) };
        let from_side = matches!(self.values.choice(fields::FORKS_FROM), Some(2 | 3));
        let beside = if from_side { self.centre_mm[1] } else { self.centre_mm[0] }.abs();
        self.open(CheckId::MoveForks, sheet);
        let spread = sheet.step(S_F, spread);
        let beside = sheet.detailed(E_F, beside, || Detail::Shape(alloc::vec![[self.centre_mm[0], self.centre_mm[1]]]));
        let height = sheet.step(H, self.centre_mm[2]);
        let tips = sheet.step(A_SIDE, (spread / 2.0 - beside) / height);
        let turn = sheet.step(A_T, self.values.given(fields::TURN));
        if !(tips > 0.0) {
            sheet.step(OFF_FORKS, 0.0);
            return Outcome::Compared { value: turn, limit: tips, utilisation: f64::INFINITY };
        }
        Outcome::told_ratio(turn, tips, U_FORKS, sheet)
    }

    /// Whether the forks go under the base.
    pub(super) fn check_entry(&self, sheet: &mut Sheet) -> Outcome {
        let given = (self.values.number(fields::FORK_HEIGHT), self.values.number(fields::ENTRY_HEIGHT));
        let (Some(forks), Some(clear)) = given else { return Outcome::NotCovered(NO_ENTRY) };
        self.open(CheckId::MoveEntry, sheet);
        let forks = sheet.step(T_F, forks);
        let clear = sheet.step(H_E, clear);
        Outcome::told_ratio(forks, clear, U_ENTRY, sheet)
    }
}
