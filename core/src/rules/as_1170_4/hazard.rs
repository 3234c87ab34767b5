//! From place and soil to the shaking of the ground: AS 1170.4 sections 3 and 4.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::Values;

/// k_p Z, not below the smallest one of the probability.
pub fn k_z(values: &Values, sheet: &mut Sheet) -> f64 {
    let z = sheet.step(steps::Z, values.given(fields::Z));
    let probability = &PROBABILITIES[values.choice(fields::PROBABILITY).unwrap_or(LAST)];
    sheet.step(probability.name, 0.0);
    let k_p = sheet.step(steps::K_P, probability.k_p);
    match probability.k_z_min {
        None => sheet.step(steps::K_Z_FREE, k_p * z),
        Some(k_min) => {
            let k_min = sheet.step(steps::K_Z_MIN, k_min);
            sheet.step(steps::K_Z, f64::max(k_min, k_p * z))
        }
    }
}

/// Whether the annual probability is smaller than that of buildings of importance level 2, 1/500: then the building is of a
/// higher level, which is never in design category I.
pub fn is_rare(values: &Values) -> bool {
    values.choice(fields::PROBABILITY).is_some_and(|place| place > P_500)
}

/// C_h(0) of the soil.
pub fn c_h0(values: &Values, sheet: &mut Sheet) -> f64 {
    let soil = soil(values, sheet);
    sheet.step(steps::C_H0, C_H0[soil])
}

/// The largest k_p Z of a low building of importance level 2 in design category I.
pub fn k_z_of_category_i(values: &Values, sheet: &mut Sheet) -> f64 {
    let soil = soil(values, sheet);
    sheet.step(steps::K_Z_CATEGORY_I, CATEGORY_I[soil])
}

fn soil(values: &Values, sheet: &mut Sheet) -> usize {
    let soil = values.choice(fields::SOIL).unwrap_or(0);
    sheet.step(SOIL_NAMES[soil], 0.0);
    soil
}

/// Table 3.1 with the smallest k_p Z of Table 3.3.
struct Probability {
    name: StepId,
    k_p: f64,
    k_z_min: Option<f64>,
}

const LAST: usize = PROBABILITIES.len() - 1;
const P_500: usize = 6;

static PROBABILITIES: [Probability; 12] = [
    Probability { name: steps::P_20, k_p: 0.2, k_z_min: None },
    Probability { name: steps::P_25, k_p: 0.25, k_z_min: None },
    Probability { name: steps::P_50, k_p: 0.35, k_z_min: None },
    Probability { name: steps::P_100, k_p: 0.5, k_z_min: None },
    Probability { name: steps::P_200, k_p: 0.7, k_z_min: None },
    Probability { name: steps::P_250, k_p: 0.75, k_z_min: None },
    Probability { name: steps::P_500, k_p: 1.0, k_z_min: Some(0.08) },
    // The table of smallest values has no row for 1/800: that of the rarer 1/1000 is on the safe side.
    Probability { name: steps::P_800, k_p: 1.25, k_z_min: Some(0.10) },
    Probability { name: steps::P_1000, k_p: 1.3, k_z_min: Some(0.10) },
    Probability { name: steps::P_1500, k_p: 1.5, k_z_min: Some(0.12) },
    Probability { name: steps::P_2000, k_p: 1.7, k_z_min: Some(0.14) },
    Probability { name: steps::P_2500, k_p: 1.8, k_z_min: Some(0.15) },
];

/// Table 6.4, values in brackets, by soil.
static C_H0: [f64; 5] = [0.8, 1.0, 1.3, 1.1, 1.1];

/// Table 2.1, importance level 2, up to 12 m, by soil.
static CATEGORY_I: [f64; 5] = [0.14, 0.11, 0.08, 0.05, 0.05];

static SOIL_NAMES: [StepId; 5] = [steps::SOIL_A, steps::SOIL_B, steps::SOIL_C, steps::SOIL_D, steps::SOIL_E];
