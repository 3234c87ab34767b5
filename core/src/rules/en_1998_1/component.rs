//! Rows of Table 4.4 of EN 1998-1 and of Table C.2 of EN 1992-4 that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;

/// The behaviour factor of these inputs.
pub fn q_a(values: &Values, sheet: &mut Sheet) -> f64 {
    let row = row(values);
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let q_a = RowNumber { field: fields::Q_A, given: steps::Q_A_GIVEN, table: steps::Q_A };
    q_a.tell(values, row.map(|row| row.q_a), sheet)
}

/// How much the element amplifies the motion of its floor: 3 at resonance.
pub fn a_a(values: &Values, sheet: &mut Sheet) -> f64 {
    match values.choice(fields::AMPLIFICATION) {
        Some(BY_PERIODS) => {
            let t_a = sheet.step(steps::T_A, values.given(fields::T_A));
            let t_1 = sheet.step(steps::T_1, values.given(fields::T_1));
            let apart = 1.0 - t_a / t_1;
            sheet.step(steps::A_A, 3.0 / (1.0 + apart * apart))
        }
        Some(BY_TABLE) => {
            let a_a = RowNumber { field: fields::A_A, given: steps::A_A_GIVEN, table: steps::A_A_TABLE };
            a_a.tell(values, row(values).map(|row| row.a_a), sheet)
        }
        _ => sheet.step(steps::A_A_RESONANCE, 3.0),
    }
}

/// The row that was chosen; none where the user gives the values.
pub fn row(values: &Values) -> Option<&'static Row> {
    ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()))
}

/// One row.
pub struct Row {
    name: StepId,
    q_a: f64,
    a_a: f64,
}

/// Places of the words of the field `amplification`.
pub const BY_PERIODS: usize = 1;
pub const BY_TABLE: usize = 2;

/// The rows, in the order of the words of the field `component`; the last word, `given`, has none. Where Table C.2 has no
/// amplification the larger of its two is taken.
static ROWS: [Row; 7] = [
    Row { name: steps::ROW_CABINET, q_a: 2.0, a_a: 1.5 },
    Row { name: steps::ROW_ELECTRICAL, q_a: 2.0, a_a: 3.0 },
    Row { name: steps::ROW_RACK, q_a: 2.0, a_a: 3.0 },
    Row { name: steps::ROW_HAZARDOUS, q_a: 1.0, a_a: 3.0 },
    Row { name: steps::ROW_CANTILEVER_HIGH, q_a: 1.0, a_a: 3.0 },
    Row { name: steps::ROW_CANTILEVER_LOW, q_a: 2.0, a_a: 3.0 },
    Row { name: steps::ROW_OTHER, q_a: 1.0, a_a: 3.0 },
];
