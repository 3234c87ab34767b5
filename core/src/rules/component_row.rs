//! Values of a row of a table of components, each of which the user may replace.

use super::demand::Faults;
use crate::calc::{Sheet, StepId};
use crate::input::{Problem, Values};

/// A number of a component row that the user may replace.
#[derive(Clone, Copy)]
pub struct RowNumber {
    /// The field that replaces it.
    pub field: usize,
    /// The step as which a replaced number is told.
    pub given: StepId,
    /// The step as which the row's number is told.
    pub table: StepId,
}

impl RowNumber {
    /// Tells the user's number, or the row's where there is none.
    pub fn tell(self, values: &Values, of_row: Option<f64>, sheet: &mut Sheet) -> f64 {
        match (values.number(self.field), of_row) {
            (None, Some(number)) => sheet.step(self.table, number),
            _ => sheet.step(self.given, values.given(self.field)),
        }
    }
}

/// Fields that the word `given` for the component asks for.
pub fn given_faults(values: &Values, fields: &[usize], faults: &mut Faults) {
    for &field in fields {
        if values.number(field).is_none() {
            faults.push((field, Problem::Missing, "a number, because component is \"given\""));
        }
    }
}
