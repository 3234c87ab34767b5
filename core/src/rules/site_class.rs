//! From the mapped acceleration to the one on the soil of the site: the chapters that read F_a from a table by class.

use super::demand::Faults;
use super::table::Table;
use crate::calc::{Sheet, StepId};
use crate::input::{Problem, Values};

/// A rule's way from S_S and a site class to S_MS.
pub struct SiteClasses {
    /// Field of the mapped acceleration.
    pub s_s: usize,
    /// Field of the class.
    pub class: usize,
    /// Place of the class that is taken where none is known.
    pub unknown: usize,
    /// Names of the classes, by the words of the field.
    pub names: &'static [StepId],
    /// Rows of F_a, by the words of the field; classes beyond have none.
    pub rows: &'static [Table<'static>],
    /// The steps.
    pub steps: SiteSteps,
    /// Why a class beyond the rows is not covered.
    pub no_row: StepId,
}

/// Its steps.
#[derive(Clone, Copy)]
pub struct SiteSteps {
    /// The mapped acceleration.
    pub s_s: StepId,
    /// The site coefficient.
    pub f_a: StepId,
    /// `F_a * S_S`
    pub s_ms: StepId,
}

impl SiteClasses {
    /// S_MS in g; the reason where the class has no coefficient.
    pub fn s_ms(&self, values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
        let s_s = sheet.step(self.steps.s_s, values.given(self.s_s));
        let class = values.choice(self.class).unwrap_or(self.unknown);
        sheet.step(self.names[class], 0.0);
        let row = self.rows.get(class).ok_or(self.no_row)?;
        let f_a = row.read(s_s, self.steps.f_a, sheet);
        Ok(sheet.step(self.steps.s_ms, f_a * s_s))
    }
}

/// Of the mapped and the design acceleration exactly one is given.
pub fn one_acceleration(values: &Values, [s_s, s_ds]: [usize; 2], faults: &mut Faults) {
    match (values.number(s_s), values.number(s_ds)) {
        (None, None) => faults.push((s_s, Problem::NeedsOneOf, "s_s or s_ds")),
        (Some(_), Some(_)) => faults.push((s_ds, Problem::Excludes, "s_s or s_ds, not both")),
        _ => {}
    }
}

/// Mapped accelerations of the columns of [`F_A_1997`].
const S_S: &[f64] = &[0.25, 0.50, 0.75, 1.00, 1.25];

/// F_a of classes A to E as NEHRP had it from 1997 to 2009, and with it FEMA 302 and ASCE 7-02 to 7-10.
pub static F_A_1997: [Table<'static>; 5] = [
    Table { arguments: S_S, values: &[0.8; 5] },
    Table { arguments: S_S, values: &[1.0; 5] },
    Table { arguments: S_S, values: &[1.2, 1.2, 1.1, 1.0, 1.0] },
    Table { arguments: S_S, values: &[1.6, 1.4, 1.2, 1.1, 1.0] },
    Table { arguments: S_S, values: &[2.5, 1.7, 1.2, 0.9, 0.9] },
];
