//! The local seismic coefficient: region times the standard coefficient of class and storey.

use super::{fields, steps};
use crate::calc::{Sheet, StepId, limit};
use crate::input::{Problem, Values};
use crate::rules::demand::Faults;

/// K_H, told.
pub fn horizontal(values: &Values, sheet: &mut Sheet) -> f64 {
    let z = sheet.step(steps::Z, REGIONS[values.choice(fields::REGION).unwrap_or(REGIONS.len() - 1)]);
    let component = values.choice(fields::COMPONENT).unwrap_or(0);
    sheet.step(COMPONENTS[component], 0.0);
    let k_s = match values.number(fields::K_S) {
        Some(k_s) => sheet.step(steps::K_S_GIVEN, k_s),
        None => standard(values, component, sheet),
    };
    sheet.step(steps::K_H, z * k_s)
}

/// K_S of the table by class and storey.
fn standard(values: &Values, component: usize, sheet: &mut Sheet) -> f64 {
    let class = values.choice(fields::CLASS).unwrap_or(0);
    sheet.step(CLASSES[class], 0.0);
    let storeys = sheet.step(steps::STOREYS, values.given(fields::STOREYS));
    let storey = sheet.step(steps::STOREY, values.given(fields::STOREY));
    let upper = sheet.step(steps::UPPER_COUNT, upper_storeys(storeys));
    if limit::at_most(storey, 1.0) {
        sheet.step(steps::GROUND, 0.0);
        return match component {
            TANK => sheet.step(steps::K_S_TANK, K_S_TANK_AT_GROUND[class]),
            _ => sheet.step(steps::K_S, K_S_GROUND[class]),
        };
    }
    let (name, row) = match limit::more(storey, storeys - upper) {
        true => (steps::UPPER, &K_S_UPPER),
        false => (steps::MIDDLE, &K_S_MIDDLE),
    };
    sheet.step(name, 0.0);
    sheet.step(steps::K_S, row[class])
}

/// How many storeys under the roof count as upper ones.
fn upper_storeys(storeys: f64) -> f64 {
    match storeys {
        storeys if limit::at_most(storeys, 6.0) => 1.0,
        storeys if limit::at_most(storeys, 9.0) => 2.0,
        storeys if limit::at_most(storeys, 12.0) => 3.0,
        _ => 4.0,
    }
}

/// What is missing for the table, what is no storey, and a class too low.
pub fn faults(values: &Values, faults: &mut Faults) {
    if values.number(fields::K_S).is_some() {
        return;
    }
    let needed = "or standard_coefficient in place of class and storeys";
    if values.choice(fields::CLASS).is_none() {
        faults.push((fields::CLASS, Problem::Missing, needed));
    }
    if values.choice(fields::COMPONENT) == Some(ISOLATED) && values.choice(fields::CLASS) == Some(CLASS_B) {
        faults.push((fields::CLASS, Problem::NotInRule, "S or A, because the equipment is isolated"));
    }
    for field in [fields::STOREYS, fields::STOREY] {
        match values.number(field) {
            None => faults.push((field, Problem::Missing, needed)),
            Some(number) if number != crate::calc::number::round(number) || number == 0.0 => {
                faults.push((
                    field,
                    Problem::NotInRule,
                    "a whole storey, 1 being the ground floor and -1 the first basement",
                ));
            }
            _ => {}
        }
    }
    if let (Some(storeys), Some(storey)) = (values.number(fields::STOREYS), values.number(fields::STOREY))
        && storey > storeys + 1.0
    {
        faults.push((fields::STOREY, Problem::AboveLimit, "not above the roof, which is one more than the storeys"));
    }
}

// Places of the words of the fields `component` and `class`.
const ISOLATED: usize = 1;
const TANK: usize = 2;
const CLASS_B: usize = 2;

static COMPONENTS: [StepId; 3] = [steps::ROW_EQUIPMENT, steps::ROW_ISOLATED, steps::ROW_TANK];
static CLASSES: [StepId; 3] = [steps::CLASS_S, steps::CLASS_A, steps::CLASS_B];
/// Region factors, in the rising order of the words of the field.
static REGIONS: [f64; 4] = [0.7, 0.8, 0.9, 1.0];
/// Standard coefficients by class S, A, B.
static K_S_UPPER: [f64; 3] = [2.0, 1.5, 1.0];
static K_S_MIDDLE: [f64; 3] = [1.5, 1.0, 0.6];
static K_S_GROUND: [f64; 3] = [1.0, 0.6, 0.4];
static K_S_TANK_AT_GROUND: [f64; 3] = [1.5, 1.0, 0.6];
