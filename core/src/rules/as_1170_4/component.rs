//! What AS 1170.4 8.3 takes from the kind of component and its anchors.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;

/// Factors of the component.
pub struct Component {
    /// Importance.
    pub i_c: f64,
    /// Amplification of a flexible component.
    pub a_c: f64,
    /// What ductility takes off.
    pub r_c: f64,
    /// What it takes off the force on anchors.
    pub r_ca: f64,
}

/// Factors of these inputs.
pub fn component(values: &Values, sheet: &mut Sheet) -> Component {
    let i_c = sheet.step(steps::I_C, values.given(fields::IMPORTANCE));
    let row = row(values);
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let a_c = RowNumber { field: fields::A_C, given: steps::A_C_GIVEN, table: steps::A_C };
    let r_c = RowNumber { field: fields::R_C, given: steps::R_C_GIVEN, table: steps::R_C };
    let a_c = a_c.tell(values, row.map(|row| row.a_c), sheet);
    let r_c = r_c.tell(values, row.map(|row| row.r_c), sheet);
    let r_ca = match values.choice(fields::ANCHORS) {
        Some(DUCTILE) => sheet.step(steps::R_CA_DUCTILE, r_c),
        _ => sheet.step(steps::R_CA_ELASTIC, 1.0),
    };
    Component { i_c, a_c, r_c, r_ca }
}

/// Whether the anchors are designed elastically.
pub fn is_elastic(values: &Values) -> bool {
    values.choice(fields::ANCHORS) != Some(DUCTILE)
}

/// The row that was chosen; none where the user gives the values.
pub fn row(values: &Values) -> Option<&'static Row> {
    ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()))
}

/// One row.
pub struct Row {
    name: StepId,
    a_c: f64,
    r_c: f64,
}

/// Place of the word of the field `anchor_design`.
const DUCTILE: usize = 1;

/// The rows, in the order of the words of the field `component`; the last word, `given`, has none.
static ROWS: [Row; 3] = [
    Row { name: steps::ROW_RIGID_DUCTILE, a_c: 1.0, r_c: 2.5 },
    Row { name: steps::ROW_RIGID_NONDUCTILE, a_c: 1.0, r_c: 1.0 },
    Row { name: steps::ROW_FLEXIBLE, a_c: 2.5, r_c: 2.5 },
];
