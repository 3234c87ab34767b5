//! Where in the building the cabinet is attached: the height ratio that every American rule raises its force by.

use super::demand::Faults;
use crate::calc::{Sheet, StepId, limit};
use crate::input::{Problem, Values};

/// The fields of a rule that give the heights.
#[derive(Clone, Copy)]
pub struct HeightFields {
    /// Height of the attachment, m; required.
    pub attachment: usize,
    /// Height of the roof, m; may be unknown at or below the base.
    pub roof: usize,
}

/// The steps of a rule that tell them.
#[derive(Clone, Copy)]
pub struct HeightSteps {
    /// Height of the attachment.
    pub attachment: StepId,
    /// Height of the roof.
    pub roof: StepId,
    /// `min(1, attachment / roof)`
    pub ratio: StepId,
    /// 0 at or below the base.
    pub ratio_at_base: StepId,
}

impl HeightFields {
    /// Whether the cabinet is attached at or below the base.
    pub fn is_at_base(self, values: &Values) -> bool {
        values.given(self.attachment) <= 0.0
    }

    /// Height of the attachment over that of the roof: 0 at or below the base, at most 1.
    pub fn ratio(self, values: &Values, steps: HeightSteps, sheet: &mut Sheet) -> f64 {
        let z = sheet.step(steps.attachment, values.given(self.attachment));
        if self.is_at_base(values) {
            return sheet.step(steps.ratio_at_base, 0.0);
        }
        let h = sheet.step(steps.roof, values.given(self.roof));
        sheet.step(steps.ratio, f64::min(1.0, z / h))
    }

    /// A roof that is needed and unknown, and an attachment above the roof.
    pub fn faults(self, values: &Values, faults: &mut Faults) {
        let Some(z) = values.number(self.attachment) else { return };
        match values.number(self.roof) {
            None if z > 0.0 => {
                faults.push((self.roof, Problem::Missing, "a height, because the cabinet stands above the base"))
            }
            Some(h) if limit::more(z, h) => faults.push((self.attachment, Problem::AboveLimit, "not above the roof")),
            _ => {}
        }
    }
}
