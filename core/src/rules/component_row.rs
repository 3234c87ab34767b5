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

/// A row of a table of components with amplification and response.
#[derive(Clone, Copy)]
pub struct Row {
    /// Its name.
    pub name: StepId,
    /// Amplification of a flexible component.
    pub a_p: f64,
    /// What ductility takes off.
    pub r_p: f64,
    /// As which steps the two are told.
    pub steps: [StepId; 2],
}

/// The rows of a rule, and what stands in place of their numbers.
pub struct Rows {
    /// The field that chooses the row.
    pub field: usize,
    /// In the order of the words of the field; the last word, `given`, has none.
    pub rows: &'static [Row],
    /// Name of the component whose values the user gives.
    pub given: StepId,
    /// Fields of amplification and response.
    pub number_fields: [usize; 2],
    /// As which steps they are told when the user gives them.
    pub number_steps: [StepId; 2],
}

impl Rows {
    /// The row that was chosen; none where the user gives the values.
    pub fn row(&self, values: &Values) -> Option<&'static Row> {
        self.rows.get(values.choice(self.field).unwrap_or(self.rows.len()))
    }

    /// Amplification and response of these inputs: of the row, or of the user in its place.
    pub fn tell(&self, values: &Values, sheet: &mut Sheet) -> [f64; 2] {
        let row = self.row(values);
        sheet.step(row.map_or(self.given, |row| row.name), 0.0);
        let of_row = [row.map(|row| row.a_p), row.map(|row| row.r_p)];
        core::array::from_fn(|place| {
            let (field, given) = (self.number_fields[place], self.number_steps[place]);
            let number = RowNumber { field, given, table: row.map_or(given, |row| row.steps[place]) };
            number.tell(values, of_row[place], sheet)
        })
    }

    /// Values that the word `given` asks for and that are not there.
    pub fn faults(&self, values: &Values, faults: &mut Faults) {
        // An unknown choice is a fault of its own field already.
        if values.choice(self.field).is_some() && self.row(values).is_none() {
            given_faults(values, &self.number_fields, faults);
        }
    }
}
