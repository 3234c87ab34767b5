//! Rows of the table of components of SNI 1726:2019 that a cabinet may be read as.

use super::{fields, steps};
use crate::calc::StepId;
use crate::input::Values;
use crate::rules::component_row::{Row, Rows};

/// The rows, in the order of the words of the field `component`.
pub static ROWS: Rows = Rows {
    field: fields::COMPONENT,
    rows: &[
        mechanical(steps::ROW_SHEET_METAL, 2.5, 6.0),
        mechanical(steps::ROW_COMMUNICATION, 1.0, 2.5),
        mechanical(steps::ROW_GENERATOR, 1.0, 2.5),
        mechanical(steps::ROW_AIR_SIDE, 2.5, 6.0),
        mechanical(steps::ROW_WET_SIDE, 1.0, 2.5),
        mechanical(steps::ROW_ENGINE, 1.0, 2.5),
        mechanical(steps::ROW_OTHER, 1.0, 1.5),
        mechanical(steps::ROW_ISOLATED_NEOPRENE, 2.5, 2.5),
        mechanical(steps::ROW_ISOLATED_SPRINGS, 2.5, 2.0),
        mechanical(steps::ROW_ISOLATED_INTERNALLY, 2.5, 2.0),
    ],
    given: steps::ROW_GIVEN,
    number_fields: [fields::A_P, fields::R_P],
    number_steps: [steps::A_P_GIVEN, steps::R_P_GIVEN],
};

/// Places of the rows on vibration isolators.
const ISOLATED: core::ops::RangeInclusive<usize> = 7..=9;

/// Whether it stands on vibration isolators.
pub fn is_isolated(values: &Values) -> bool {
    values.choice(fields::COMPONENT).is_some_and(|place| ISOLATED.contains(&place))
}

const fn mechanical(name: StepId, a_p: f64, r_p: f64) -> Row {
    Row { name, a_p, r_p, steps: [steps::A_P_ROW, steps::R_P_ROW] }
}
