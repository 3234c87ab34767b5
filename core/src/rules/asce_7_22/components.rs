//! Rows of Tables 13.5-1 and 13.6-1 of ASCE 7-22 that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;

/// What the force equation takes from the row, or from the user in its place.
pub struct Component {
    /// Resonance and ductility of the component.
    pub c_ar: f64,
    /// What its reserve of strength takes off.
    pub r_po: f64,
}

/// C_AR and R_po of these inputs.
pub fn component(values: &Values, is_at_grade: bool, sheet: &mut Sheet) -> Component {
    let row = row(values);
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let (c_ar, of_row) = if is_at_grade {
        (steps::C_AR_AT_GRADE, row.map(|row| row.c_ar_at_grade))
    } else {
        (steps::C_AR_ABOVE, row.map(|row| row.c_ar_above))
    };
    let c_ar = RowNumber { field: fields::C_AR, given: steps::C_AR_GIVEN, table: c_ar };
    let r_po = RowNumber { field: fields::R_PO, given: steps::R_PO_GIVEN, table: steps::R_PO_ROW };
    Component { c_ar: c_ar.tell(values, of_row, sheet), r_po: r_po.tell(values, row.map(|row| row.r_po), sheet) }
}

/// Overstrength of these inputs.
pub fn omega_0p(values: &Values, sheet: &mut Sheet) -> f64 {
    let omega_0p = RowNumber { field: fields::OMEGA_0P, given: steps::OMEGA_GIVEN, table: steps::OMEGA_ROW };
    omega_0p.tell(values, row(values).map(|row| row.omega_0p), sheet)
}

/// The row that was chosen; none where the user gives the values.
pub fn row(values: &Values) -> Option<&'static Row> {
    ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()))
}

/// One row.
pub struct Row {
    name: StepId,
    c_ar_at_grade: f64,
    c_ar_above: f64,
    r_po: f64,
    omega_0p: f64,
    /// Whether it stands on vibration isolators.
    pub is_isolated: bool,
}

/// The rows, in the order of the words of the field `component`; the last word, `given`, has none.
static ROWS: [Row; 15] = [
    sheet_metal(steps::ROW_SHEET_METAL),
    rigid(steps::ROW_COMMUNICATION),
    rigid(steps::ROW_GENERATOR),
    sheet_metal(steps::ROW_AIR_SIDE),
    rigid(steps::ROW_WET_SIDE),
    rigid(steps::ROW_ENGINE),
    rigid(steps::ROW_OTHER),
    Row {
        name: steps::ROW_ISOLATED,
        c_ar_at_grade: 1.8,
        c_ar_above: 2.2,
        r_po: 1.3,
        omega_0p: 1.75,
        is_isolated: true,
    },
    rigid(steps::ROW_STORAGE),
    rigid(steps::ROW_SHELVING),
    rigid(steps::ROW_LABORATORY),
    rigid(steps::ROW_RIGID),
    flexible(steps::ROW_FLEXIBLE_HIGH, [1.4, 1.4], 2.0),
    flexible(steps::ROW_FLEXIBLE_LIMITED, [1.8, 2.2], 1.75),
    flexible(steps::ROW_FLEXIBLE_LOW, [2.2, 2.8], 1.5),
];

const fn sheet_metal(name: StepId) -> Row {
    Row { name, c_ar_at_grade: 1.4, c_ar_above: 1.4, r_po: 2.0, omega_0p: 2.0, is_isolated: false }
}

const fn rigid(name: StepId) -> Row {
    Row { name, c_ar_at_grade: 1.0, c_ar_above: 1.0, r_po: 1.5, omega_0p: 2.0, is_isolated: false }
}

const fn flexible(name: StepId, [c_ar_at_grade, c_ar_above]: [f64; 2], omega_0p: f64) -> Row {
    Row { name, c_ar_at_grade, c_ar_above, r_po: 1.5, omega_0p, is_isolated: false }
}
