//! Rows of the table of components of the IITK-GSDMA draft that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;

/// What the force takes from the row, or from the user in its place.
pub struct Component {
    /// Amplification of a flexible component.
    pub a_p: f64,
    /// What ductility takes off.
    pub r_p: f64,
    /// Whether it stands on vibration isolators.
    pub is_isolated: bool,
}

/// a_p and R_p of these inputs.
pub fn component(values: &Values, sheet: &mut Sheet) -> Component {
    let row = row(values);
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let a_p = RowNumber { field: fields::A_P, given: steps::A_P_GIVEN, table: steps::A_P };
    let r_p = RowNumber { field: fields::R_P, given: steps::R_P_GIVEN, table: steps::R_P };
    Component {
        a_p: a_p.tell(values, row.map(|row| row.a_p), sheet),
        r_p: r_p.tell(values, row.map(|row| row.r_p), sheet),
        is_isolated: values.choice(fields::COMPONENT) == Some(ISOLATED),
    }
}

/// The row that was chosen; none where the user gives the values.
pub fn row(values: &Values) -> Option<&'static Row> {
    ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()))
}

/// One row.
pub struct Row {
    name: StepId,
    a_p: f64,
    r_p: f64,
}

const ISOLATED: usize = 8;

/// The rows, in the order of the words of the field `component`; the last word, `given`, has none.
static ROWS: [Row; 11] = [
    Row { name: steps::ROW_ELECTRICAL, a_p: 1.0, r_p: 1.5 },
    Row { name: steps::ROW_COMMUNICATION_RIGID, a_p: 1.0, r_p: 2.5 },
    Row { name: steps::ROW_COMMUNICATION_FLEXIBLE, a_p: 2.5, r_p: 2.5 },
    Row { name: steps::ROW_STORAGE, a_p: 1.0, r_p: 2.5 },
    Row { name: steps::ROW_MECHANICAL, a_p: 1.0, r_p: 2.5 },
    Row { name: steps::ROW_MACHINERY, a_p: 1.0, r_p: 2.5 },
    Row { name: steps::ROW_VESSEL, a_p: 2.5, r_p: 2.5 },
    Row { name: steps::ROW_HVAC, a_p: 1.0, r_p: 2.5 },
    Row { name: steps::ROW_ISOLATED, a_p: 2.5, r_p: 2.5 },
    Row { name: steps::ROW_CONVEYOR, a_p: 2.5, r_p: 2.5 },
    Row { name: steps::ROW_DISTRIBUTED, a_p: 2.5, r_p: 5.0 },
];
