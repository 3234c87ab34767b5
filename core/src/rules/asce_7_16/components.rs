//! Rows of Tables 13.5-1 and 13.6-1 of ASCE 7-16 that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;

/// What the force equations take from the row, or from the user in its place.
pub struct Component {
    /// Amplification of a flexible component.
    pub a_p: f64,
    /// What ductility takes off.
    pub r_p: f64,
}

/// a_p and R_p of these inputs.
pub fn component(values: &Values, sheet: &mut Sheet) -> Component {
    let row = row(values);
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let (a_p, r_p) = match row.map(|row| row.print) {
        Some(Print::Architectural) => (steps::A_P_ARCHITECTURAL, steps::R_P_ARCHITECTURAL),
        _ => (steps::A_P_MECHANICAL, steps::R_P_MECHANICAL),
    };
    let a_p = RowNumber { field: fields::A_P, given: steps::A_P_GIVEN, table: a_p };
    let r_p = RowNumber { field: fields::R_P, given: steps::R_P_GIVEN, table: r_p };
    Component {
        a_p: a_p.tell(values, row.map(|row| row.a_p), sheet),
        r_p: r_p.tell(values, row.map(|row| row.r_p), sheet),
    }
}

/// Overstrength of these inputs.
pub fn omega_0(values: &Values, sheet: &mut Sheet) -> f64 {
    let omega_0 = RowNumber { field: fields::OMEGA_0, given: steps::OMEGA_GIVEN, table: steps::OMEGA_ROW };
    omega_0.tell(values, row(values).map(|row| row.omega_0), sheet)
}

/// The row that was chosen; none where the user gives the values.
pub fn row(values: &Values) -> Option<&'static Row> {
    ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()))
}

/// One row.
pub struct Row {
    name: StepId,
    print: Print,
    a_p: f64,
    r_p: f64,
    omega_0: f64,
    /// Whether it stands on vibration isolators.
    pub is_isolated: bool,
}

/// Which of the two tables a row is printed in.
#[derive(Clone, Copy, PartialEq)]
enum Print {
    /// Table 13.5-1.
    Architectural,
    /// Table 13.6-1.
    Mechanical,
}

/// The rows, in the order of the words of the field `component`; the last word, `given`, has none.
pub static ROWS: [Row; 19] = [
    mechanical(steps::ROW_SHEET_METAL, 2.5, 6.0),
    mechanical(steps::ROW_COMMUNICATION, 1.0, 2.5),
    mechanical(steps::ROW_GENERATOR, 1.0, 2.5),
    mechanical(steps::ROW_AIR_SIDE, 2.5, 6.0),
    mechanical(steps::ROW_WET_SIDE, 1.0, 2.5),
    mechanical(steps::ROW_ENGINE, 1.0, 2.5),
    mechanical(steps::ROW_OTHER, 1.0, 1.5),
    isolated(steps::ROW_ISOLATED_NEOPRENE, 2.5, 2.5),
    isolated(steps::ROW_ISOLATED_SPRINGS, 2.5, 2.0),
    isolated(steps::ROW_ISOLATED_INTERNALLY, 2.5, 2.0),
    architectural(steps::ROW_STORAGE, 1.0, 2.5, 2.0),
    architectural(steps::ROW_SHELVING, 1.0, 2.5, 2.0),
    architectural(steps::ROW_LABORATORY, 1.0, 2.5, 2.0),
    architectural(steps::ROW_RIGID_HIGH, 1.0, 3.5, 2.0),
    architectural(steps::ROW_RIGID_LIMITED, 1.0, 2.5, 2.0),
    architectural(steps::ROW_RIGID_LOW, 1.0, 1.5, 1.5),
    architectural(steps::ROW_FLEXIBLE_HIGH, 2.5, 3.5, 2.5),
    architectural(steps::ROW_FLEXIBLE_LIMITED, 2.5, 2.5, 2.5),
    architectural(steps::ROW_FLEXIBLE_LOW, 2.5, 1.5, 2.0),
];

const fn mechanical(name: StepId, a_p: f64, r_p: f64) -> Row {
    Row { name, print: Print::Mechanical, a_p, r_p, omega_0: 2.0, is_isolated: false }
}

const fn isolated(name: StepId, a_p: f64, r_p: f64) -> Row {
    Row { name, print: Print::Mechanical, a_p, r_p, omega_0: 2.0, is_isolated: true }
}

const fn architectural(name: StepId, a_p: f64, r_p: f64, omega_0: f64) -> Row {
    Row { name, print: Print::Architectural, a_p, r_p, omega_0, is_isolated: false }
}
