//! Hazard, height, period and risk: NZS 1170.5 sections 3 and 8.

use super::{HEIGHT_STEPS, HEIGHTS, fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;
use crate::rules::table::Table;

/// C(0) in g: the ground's spectrum at zero period with hazard and return period.
pub fn at_zero_period(values: &Values, sheet: &mut Sheet) -> f64 {
    let z = sheet.step(steps::Z, values.given(fields::Z));
    let probability = values.choice(fields::PROBABILITY);
    if let Some(place) = probability {
        sheet.step(PROBABILITY_NAMES[place], 0.0);
    }
    let r = RowNumber { field: fields::R, given: steps::R_GIVEN, table: steps::R };
    let r = r.tell(values, probability.map(|place| R[place]), sheet);
    let z_r = sheet.step(steps::Z_R, f64::min(0.7, z * r));
    let soil = values.choice(fields::SOIL).unwrap_or(C_H0.len() - 1);
    sheet.step(SOIL_NAMES[soil], 0.0);
    let c_h0 = sheet.step(steps::C_H0, C_H0[soil]);
    let n = sheet.step(steps::N, 1.0);
    sheet.step(steps::C_0, c_h0 * z_r * n)
}

/// C_Hi: 1 at the base, at most 3.
pub fn with_height(values: &Values, sheet: &mut Sheet) -> f64 {
    let r_h = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    if HEIGHTS.is_at_base(values) {
        return sheet.step(steps::C_H_BASE, 1.0);
    }
    let h_i = values.given(fields::ATTACHMENT);
    let h_6 = sheet.step(steps::H_6, 6.0);
    let c_h1 = sheet.step(steps::C_H1, 1.0 + h_i / h_6);
    let c_h2 = sheet.step(steps::C_H2, 1.0 + 10.0 * r_h);
    sheet.step(steps::C_H, f64::min(3.0, f64::min(c_h1, c_h2)))
}

/// C_i(T_p): the plateau where the period is not known.
pub fn with_period(values: &Values, sheet: &mut Sheet) -> f64 {
    match values.number(fields::PERIOD) {
        None => sheet.step(steps::C_I_UNKNOWN, 2.0),
        Some(t_p) => {
            let t_p = sheet.step(steps::T_P, t_p);
            let t_1 = sheet.step(steps::T_1, 1.0);
            sheet.step(steps::C_I, (2.0 * (1.75 - t_p / t_1)).clamp(0.5, 2.0))
        }
    }
}

/// R_p of the class of the part.
pub fn risk(values: &Values, sheet: &mut Sheet) -> f64 {
    let class = values.choice(fields::CLASS).unwrap_or(0);
    sheet.step(CLASS_NAMES[class], 0.0);
    let r_p = RowNumber { field: fields::R_P, given: steps::R_P_GIVEN, table: steps::R_P };
    r_p.tell(values, Some(R_P[class]), sheet)
}

/// C_ph by ductility, Table C8.3: straight between its rows and level above 3.
pub static C_PH: Table =
    Table { arguments: &[1.0, 1.25, 1.5, 1.75, 2.0, 3.0], values: &[1.00, 0.85, 0.75, 0.65, 0.55, 0.45] };

/// Return period factor by annual probability.
static R: [f64; 9] = [0.20, 0.25, 0.35, 0.5, 0.75, 1.0, 1.3, 1.7, 1.8];

static PROBABILITY_NAMES: [StepId; 9] = [
    steps::P_20,
    steps::P_25,
    steps::P_50,
    steps::P_100,
    steps::P_250,
    steps::P_500,
    steps::P_1000,
    steps::P_2000,
    steps::P_2500,
];

/// C_h(0) by soil class, from the column for modal and time history analysis and parts.
static C_H0: [f64; 5] = [1.00, 1.00, 1.33, 1.12, 1.12];

static SOIL_NAMES: [StepId; 5] = [steps::SOIL_A, steps::SOIL_B, steps::SOIL_C, steps::SOIL_D, steps::SOIL_E];

/// Risk factor by class.
static R_P: [f64; 7] = [1.0, 1.0, 0.9, 1.0, 1.0, 2.0, 1.0];

static CLASS_NAMES: [StepId; 7] =
    [steps::CLASS_1, steps::CLASS_2, steps::CLASS_3, steps::CLASS_4, steps::CLASS_5, steps::CLASS_6, steps::CLASS_7];
