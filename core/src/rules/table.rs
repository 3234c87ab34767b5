//! Reading of a printed table between its rows.

use alloc::vec;

use crate::calc::{Detail, Sheet, StepId};

/// A row of values over rising arguments; straight between them, level beyond both ends.
pub struct Table<'a> {
    /// The arguments, rising.
    pub arguments: &'a [f64],
    /// The value at each argument.
    pub values: &'a [f64],
}

impl Table<'_> {
    /// The value at an argument, recorded with the one or two rows that it was read from.
    pub fn read(&self, argument: f64, id: StepId, sheet: &mut Sheet) -> f64 {
        let last = self.arguments.len() - 1;
        let above = self.arguments.iter().position(|&row| argument <= row).unwrap_or(last);
        let row = |place: usize| [self.arguments[place], self.values[place]];
        let [to, at_to] = row(above);
        if above == 0 || argument >= to {
            return sheet.detailed(id, at_to, || Detail::Rows(vec![row(above)]));
        }
        let [from, at_from] = row(above - 1);
        let value = at_from + (at_to - at_from) * (argument - from) / (to - from);
        sheet.detailed(id, value, || Detail::Rows(vec![row(above - 1), row(above)]))
    }
}
