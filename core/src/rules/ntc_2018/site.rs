//! Soil and topography: NTC 2018 3.2.3.2.1.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::{Problem, Values};
use crate::rules::demand::Faults;

/// S = S_S S_T, or the one that is given; the reason where the tables have none.
pub fn s(values: &Values, alpha: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
    let ground = values.choice(fields::GROUND).unwrap_or(OTHER);
    sheet.step(GROUND_NAMES[ground], 0.0);
    if let Some(s) = values.number(fields::S) {
        return Ok(sheet.step(steps::S_GIVEN, s));
    }
    let Some(line) = LINES.get(ground) else { return Err(steps::NOT_GROUND) };
    let s_s = match line {
        None => sheet.step(steps::S_S_A, 1.0),
        Some(line) => {
            let f_o = sheet.step(steps::F_O, values.given(fields::F_O));
            let falling = line.at_rest - line.slope * f_o * alpha;
            sheet.step(line.step, f64::max(line.min, f64::min(line.max, falling)))
        }
    };
    let topography = values.choice(fields::TOPOGRAPHY).unwrap_or(S_T.len() - 1);
    sheet.step(TOPOGRAPHY_NAMES[topography], 0.0);
    let s_t = sheet.step(steps::S_T, S_T[topography]);
    Ok(sheet.step(steps::S, s_s * s_t))
}

/// What the soil formulas still need.
pub fn faults(values: &Values, faults: &mut Faults) {
    let asks_f_o = values.choice(fields::GROUND).is_some_and(|ground| (1..OTHER).contains(&ground));
    if asks_f_o && values.number(fields::S).is_none() && values.number(fields::F_O).is_none() {
        faults.push((fields::F_O, Problem::Missing, "a number, because of the ground; or soil_factor"));
    }
}

/// A soil whose factor falls with the strength of shaking, between two limits: Table 3.2.IV.
struct Line {
    step: StepId,
    min: f64,
    at_rest: f64,
    slope: f64,
    max: f64,
}

/// Place of the word for soils that need a study.
const OTHER: usize = 5;

static LINES: [Option<Line>; 5] = [
    None,
    Some(Line { step: steps::S_S_B, min: 1.00, at_rest: 1.40, slope: 0.40, max: 1.20 }),
    Some(Line { step: steps::S_S_C, min: 1.00, at_rest: 1.70, slope: 0.60, max: 1.50 }),
    Some(Line { step: steps::S_S_D, min: 0.90, at_rest: 2.40, slope: 1.50, max: 1.80 }),
    Some(Line { step: steps::S_S_E, min: 1.00, at_rest: 2.00, slope: 1.10, max: 1.60 }),
];

/// Table 3.2.V.
static S_T: [f64; 4] = [1.0, 1.2, 1.2, 1.4];

static GROUND_NAMES: [StepId; 6] =
    [steps::GROUND_A, steps::GROUND_B, steps::GROUND_C, steps::GROUND_D, steps::GROUND_E, steps::GROUND_OTHER];
static TOPOGRAPHY_NAMES: [StepId; 4] = [steps::T1, steps::T2, steps::T3, steps::T4];
