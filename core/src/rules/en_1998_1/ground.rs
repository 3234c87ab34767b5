//! The shaking of the ground: EN 1998-1 3.2.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::rules::component_row::RowNumber;
use crate::rules::ground_spectrum::GroundSpectrum;

/// a_g over g on ground A, with the importance of the building.
pub fn alpha(values: &Values, sheet: &mut Sheet) -> f64 {
    let a_gr = sheet.step(steps::A_GR, values.given(fields::A_GR));
    let class = values.choice(fields::CLASS).unwrap_or(GAMMA_I.len() - 1);
    sheet.step(CLASS_NAMES[class], 0.0);
    let gamma_i = RowNumber { field: fields::GAMMA_I, given: steps::GAMMA_I_GIVEN, table: steps::GAMMA_I };
    let gamma_i = gamma_i.tell(values, Some(GAMMA_I[class]), sheet);
    sheet.step(steps::ALPHA, gamma_i * a_gr)
}

/// The soil factor; the reason where the tables have none.
pub fn s(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    let spectrum = spectrum(values);
    sheet.step(SPECTRUM_NAMES[spectrum], 0.0);
    let ground = values.choice(fields::GROUND).unwrap_or(GROUND_NAMES.len() - 1);
    sheet.step(GROUND_NAMES[ground], 0.0);
    match (values.number(fields::S), S[spectrum].get(ground)) {
        (Some(s), _) => Ok(sheet.step(steps::S_GIVEN, s)),
        (None, Some(&s)) => Ok(sheet.step(if spectrum == 0 { steps::S_TYPE_1 } else { steps::S_TYPE_2 }, s)),
        (None, None) => Err(steps::NOT_GROUND),
    }
}

/// Vertical over horizontal acceleration of the ground.
pub fn vertical_ratio(values: &Values, sheet: &mut Sheet) -> f64 {
    let ratio = RowNumber { field: fields::VERTICAL_RATIO, given: steps::R_V_GIVEN, table: steps::R_V };
    ratio.tell(values, Some(VERTICAL_RATIO[spectrum(values)]), sheet)
}

/// 0 for type 1, 1 for type 2.
fn spectrum(values: &Values) -> usize {
    values.choice(fields::SPECTRUM).unwrap_or(0)
}

/// The elastic spectrum, 3.2.2.2. Its level is 2.5 a_g S, which the damping scales.
pub static SPECTRUM: GroundSpectrum = GroundSpectrum {
    scale: &[&[steps::ALPHA], &[steps::S_GIVEN, steps::S_TYPE_1, steps::S_TYPE_2]],
    rigid: 1.0,
    top: 2.5,
    corners_s: |values| {
        let ground = values.choice(fields::GROUND).unwrap_or(GROUND_NAMES.len() - 1);
        CORNERS_S[spectrum(values)].get(ground).copied()
    },
    is_damped: true,
};

/// Recommended T_B, T_C and T_D, Tables 3.2 and 3.3, by type of spectrum and ground; from memory.
static CORNERS_S: [[[f64; 3]; 5]; 2] = [
    [[0.15, 0.4, 2.0], [0.15, 0.5, 2.0], [0.20, 0.6, 2.0], [0.20, 0.8, 2.0], [0.15, 0.5, 2.0]],
    [[0.05, 0.25, 1.2], [0.05, 0.25, 1.2], [0.10, 0.25, 1.2], [0.10, 0.30, 1.2], [0.05, 0.25, 1.2]],
];

/// Recommended importance factors by class.
static GAMMA_I: [f64; 4] = [0.8, 1.0, 1.2, 1.4];

/// Recommended soil factors, Tables 3.2 and 3.3, by type of spectrum and ground.
static S: [[f64; 5]; 2] = [[1.0, 1.2, 1.15, 1.35, 1.4], [1.0, 1.35, 1.5, 1.8, 1.6]];

/// Recommended a_vg / a_g, Table 3.4.
static VERTICAL_RATIO: [f64; 2] = [0.90, 0.45];

static CLASS_NAMES: [StepId; 4] = [steps::CLASS_I, steps::CLASS_II, steps::CLASS_III, steps::CLASS_IV];
static SPECTRUM_NAMES: [StepId; 2] = [steps::TYPE_1, steps::TYPE_2];
static GROUND_NAMES: [StepId; 7] = [
    steps::GROUND_A,
    steps::GROUND_B,
    steps::GROUND_C,
    steps::GROUND_D,
    steps::GROUND_E,
    steps::GROUND_S1,
    steps::GROUND_S2,
];
