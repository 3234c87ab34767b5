//! Rows of Tables 13.5-1 and 13.6-1 of ASCE 7-16 that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;

/// What the force equations take from the row, or from the user in its place.
pub struct Component {
    /// Amplification of a flexible component.
    pub a_p: f64,
    /// What ductility takes off.
    pub r_p: f64,
    /// Overstrength, kept for the amplified level and not yet told.
    pub omega_0: Told,
    /// Clearance at the snubbers of an isolated component, mm.
    pub gap_mm: Option<f64>,
}

/// A number with the step that it will be told as.
#[derive(Clone, Copy)]
pub struct Told {
    /// The step.
    pub id: StepId,
    /// The number.
    pub value: f64,
}

/// The component of these inputs.
pub fn component(values: &Values, sheet: &mut Sheet) -> Component {
    let row = row(values);
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let (a_p_id, r_p_id) = match row.map(|row| row.table) {
        Some(Print::Architectural) => (steps::A_P_ARCHITECTURAL, steps::R_P_ARCHITECTURAL),
        _ => (steps::A_P_MECHANICAL, steps::R_P_MECHANICAL),
    };
    let number = |field: usize, given: StepId, table: StepId, of_row: fn(&Row) -> f64| match (values.number(field), row) {
        (None, Some(row)) => Told { id: table, value: of_row(row) },
        _ => Told { id: given, value: values.given(field) },
    };
    let a_p = number(fields::A_P, steps::A_P_GIVEN, a_p_id, |row| row.a_p);
    let r_p = number(fields::R_P, steps::R_P_GIVEN, r_p_id, |row| row.r_p);
    Component {
        a_p: sheet.step(a_p.id, a_p.value),
        r_p: sheet.step(r_p.id, r_p.value),
        omega_0: number(fields::OMEGA_0, steps::OMEGA_GIVEN, steps::OMEGA_ROW, |row| row.omega_0),
        gap_mm: values.number(fields::GAP),
    }
}

/// The row that was chosen; none where the user gives the values.
pub fn row(values: &Values) -> Option<&'static Row> {
    ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()))
}

/// One row.
pub struct Row {
    name: StepId,
    table: Print,
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
    Row { name, table: Print::Mechanical, a_p, r_p, omega_0: 2.0, is_isolated: false }
}

const fn isolated(name: StepId, a_p: f64, r_p: f64) -> Row {
    Row { name, table: Print::Mechanical, a_p, r_p, omega_0: 2.0, is_isolated: true }
}

const fn architectural(name: StepId, a_p: f64, r_p: f64, omega_0: f64) -> Row {
    Row { name, table: Print::Architectural, a_p, r_p, omega_0, is_isolated: false }
}
