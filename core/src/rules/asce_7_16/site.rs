//! From the map to the design acceleration: ASCE 7-16 section 11.4.

use super::{fields, steps};
use crate::calc::{Sheet, StepId, limit};
use crate::input::Values;
use crate::rules::table::Table;

/// S_DS in g, given or from S_S and the site class; the reason where the chapter has no coefficient.
pub fn s_ds(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    if let Some(s_ds) = values.number(fields::S_DS) {
        return Ok(sheet.step(steps::S_DS_GIVEN, s_ds));
    }
    let s_s = sheet.step(steps::S_S, values.given(fields::S_S));
    let f_a = site_coefficient(values, s_s, sheet)?;
    // 11.4-1
    let s_ms = sheet.step(steps::S_MS, f_a * s_s);
    // 11.4-3
    Ok(sheet.step(steps::S_DS, 2.0 / 3.0 * s_ms))
}

/// F_a of Table 11.4-1 with the notes around it.
fn site_coefficient(values: &Values, s_s: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
    let class = values.choice(fields::SITE_CLASS).unwrap_or(D_DEFAULT);
    sheet.step(CLASS_NAMES[class], 0.0);
    match class {
        F => Err(steps::NOT_CLASS_F),
        B_UNMEASURED => Ok(sheet.step(steps::F_A_UNMEASURED, 1.0)),
        D_DEFAULT => {
            let f_a_d = F_A[D].read(s_s, steps::F_A_CLASS_D, sheet);
            Ok(sheet.step(steps::F_A_DEFAULT, f64::max(1.2, f_a_d)))
        }
        E if limit::at_least(s_s, F_A_EXCEPTION.arguments[1]) => {
            Ok(sheet.step(steps::F_A_EXCEPTION, F_A_EXCEPTION.values[1]))
        }
        E if s_s > F_A_EXCEPTION.arguments[0] => Ok(F_A_EXCEPTION.read(s_s, steps::F_A_TOWARDS, sheet)),
        _ => Ok(F_A[class].read(s_s, steps::F_A_TABLE, sheet)),
    }
}

// Places of the words of the field `site_class`.
const B_UNMEASURED: usize = 2;
const D: usize = 4;
const D_DEFAULT: usize = 5;
const E: usize = 6;
const F: usize = 7;

static CLASS_NAMES: [StepId; 8] = [
    steps::CLASS_A,
    steps::CLASS_B,
    steps::CLASS_B_UNMEASURED,
    steps::CLASS_C,
    steps::CLASS_D,
    steps::CLASS_D_DEFAULT,
    steps::CLASS_E,
    steps::CLASS_F,
];

/// Mapped accelerations of the columns of Table 11.4-1.
const S_S: &[f64] = &[0.25, 0.50, 0.75, 1.00, 1.25, 1.50];

/// The rows of Table 11.4-1, by the place of the class; the two that the clauses around it settle are left level.
static F_A: [Table; 8] = [
    Table { arguments: S_S, values: &[0.8; 6] },
    Table { arguments: S_S, values: &[0.9; 6] },
    Table { arguments: S_S, values: &[1.0; 6] },
    Table { arguments: S_S, values: &[1.3, 1.3, 1.2, 1.2, 1.2, 1.2] },
    Table { arguments: S_S, values: &[1.6, 1.4, 1.2, 1.1, 1.0, 1.0] },
    Table { arguments: S_S, values: &[1.6, 1.4, 1.2, 1.1, 1.0, 1.0] },
    Table { arguments: &[0.25, 0.50, 0.75], values: &[2.4, 1.7, 1.3] },
    Table { arguments: S_S, values: &[f64::NAN; 6] },
];

/// Class E from the last row of the table to exception 1 of 11.4.8, which takes class C from S_S = 1.0 up. The table
/// prints nothing between the two; the straight line keeps S_MS rising with S_S.
static F_A_EXCEPTION: Table = Table { arguments: &[0.75, 1.0], values: &[1.3, 1.2] };
