use super::{Hung, texts::*};
use crate::calc::{CheckId, Outcome, Sheet, limit};

impl Hung<'_> {
    /// Whether the centre of gravity lies below all lifting points.
    pub(super) fn check_centre(&self, sheet: &mut Sheet) -> Outcome {
        self.open(CheckId::LiftCentre, sheet);
        let lowest = self.points.iter().fold(f64::INFINITY, |lowest, point| lowest.min(point.at_mm[2]));
        let centre = sheet.step(Z_G, self.centre_mm[2]);
        sheet.step(Z_P, lowest);
        if !limit::at_most(centre, lowest) {
            sheet.step(ABOVE, 0.0);
            return Outcome::NotCovered(ABOVE);
        }
        Outcome::told_ratio(centre, lowest, U_CENTRE, sheet)
    }
}
