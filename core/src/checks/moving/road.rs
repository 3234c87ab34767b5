use super::{Moved, fields, texts::*};
use crate::calc::{CheckId, Detail, Outcome, Sheet};

/// The largest acceleration in any direction, since nobody knows yet which way it will stand: road forward, rail along
/// the train without coupling rules, sea across the ship in areas A, B, C.
const LARGEST: [f64; 6] = [0.0, 0.8, 1.0, 0.5, 0.7, 0.8];

impl Moved<'_> {
    /// The acceleration that transport is secured for against that at which it tips; above it, it must be restrained.
    pub(super) fn check_road(&self, sheet: &mut Sheet) -> Outcome {
        let by = self.values.choice(fields::TRANSPORT).unwrap_or(0);
        if by == 0 {
            return Outcome::NotNeeded(NOT_SENT);
        }
        let least = self.least_mm();
        if !(least > 0.0) {
            return Outcome::NotCovered(BESIDE);
        }
        self.open(CheckId::MoveRoad, sheet);
        let height = sheet.step(H, self.centre_mm[2]);
        let least = sheet.detailed(T, least, || Detail::Shape(self.outline()));
        let tips = sheet.step(A_STAND, least / height);
        let id = if by == 1 { C_ROAD } else { C_OTHER };
        let asked = sheet.detailed(id, LARGEST[by], || Detail::Rows(alloc::vec![[by as f64, LARGEST[by]]]));
        Outcome::told_ratio(asked, tips, U_ROAD, sheet)
    }
}
