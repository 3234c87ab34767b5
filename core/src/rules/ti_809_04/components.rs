//! Rows of Tables 10-1 and 10-2 of TI 809-04 that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::StepId;
use crate::rules::component_row::{Row, Rows};

/// The rows, in the order of the words of the field `component`.
pub static ROWS: Rows = Rows {
    field: fields::COMPONENT,
    rows: &[
        of_10_2(steps::ROW_ELECTRICAL, 1.0, 2.5),
        of_10_2(steps::ROW_MECHANICAL, 1.0, 2.5),
        of_10_2(steps::ROW_VENTILATION, 1.0, 2.5),
        of_10_1(steps::ROW_STORAGE, 1.0, 2.5),
        of_10_1(steps::ROW_RIGID_HIGH, 1.0, 3.5),
        of_10_1(steps::ROW_RIGID_LIMITED, 1.0, 2.5),
        of_10_1(steps::ROW_RIGID_LOW, 1.0, 1.25),
        of_10_1(steps::ROW_FLEXIBLE_HIGH, 2.5, 3.5),
        of_10_1(steps::ROW_FLEXIBLE_LIMITED, 2.5, 2.5),
        of_10_1(steps::ROW_FLEXIBLE_LOW, 2.5, 1.25),
    ],
    given: steps::ROW_GIVEN,
    number_fields: [fields::A_P, fields::R_P],
    number_steps: [steps::A_P_GIVEN, steps::R_P_GIVEN],
};

const fn of_10_1(name: StepId, a_p: f64, r_p: f64) -> Row {
    Row { name, a_p, r_p, steps: [steps::A_P_1, steps::R_P_1] }
}

const fn of_10_2(name: StepId, a_p: f64, r_p: f64) -> Row {
    Row { name, a_p, r_p, steps: [steps::A_P_2, steps::R_P_2] }
}
