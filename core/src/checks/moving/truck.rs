use super::{Moved, fields, texts::*};
use crate::calc::{CheckId, Detail, Outcome, Sheet, limit};

/// On steeper grades the load travels uphill of the truck.
const UPGRADE_FROM: f64 = 0.1;

impl Moved<'_> {
    /// The mass against what the fork truck may lift at its distance, never more than the truck's rating.
    pub(super) fn check_truck(&self, sheet: &mut Sheet) -> Outcome {
        let given = (self.values.number(fields::TRUCK_RATING), self.values.number(fields::TRUCK_CENTRE));
        let (Some(rating), Some(rated_at)) = given else { return Outcome::NotCovered(NO_TRUCK) };
        let [x, y, _] = self.centre_mm;
        let [width, depth] = self.size_mm;
        let away = match self.values.choice(fields::FORKS_FROM) {
            Some(1) => depth / 2.0 - y,
            Some(2) => width / 2.0 + x,
            Some(3) => width / 2.0 - x,
            _ => depth / 2.0 + y,
        };
        if !(away > 0.0) {
            return Outcome::NotCovered(OFF_FORKS);
        }
        self.open(CheckId::MoveTruck, sheet);
        let mass = sheet.carry(M, self.mass_kg);
        if limit::more(self.values.given(fields::SLOPE), UPGRADE_FROM) {
            sheet.step(UPGRADE, 0.0);
        }
        let rating = sheet.step(M_R, rating);
        let rated_at = sheet.step(C_R, rated_at);
        let away = sheet.detailed(C, away, || Detail::Shape(alloc::vec![[x, y]]));
        let may = sheet.step(M_C, rating.min(rating * rated_at / away));
        Outcome::told_ratio(mass, may, U_TRUCK, sheet)
    }
}
