//! From the zone to the shaking of the ground: IS 1893 (Part 1):2016 Table 3 and 6.4.

use super::{fields, steps};
use crate::calc::{Sheet, StepId, limit};
use crate::input::Values;

/// Z, given or of the zone.
pub fn z(values: &Values, sheet: &mut Sheet) -> f64 {
    if let Some(z) = values.number(fields::Z) {
        return sheet.step(steps::Z_GIVEN, z);
    }
    let zone = values.choice(fields::ZONE).unwrap_or(Z.len() - 1);
    sheet.step(ZONE_NAMES[zone], 0.0);
    sheet.step(steps::Z, Z[zone])
}

/// The share of it that the force on components takes.
pub fn ground(values: &Values, z: f64, sheet: &mut Sheet) -> f64 {
    match values.choice(fields::BASIS) {
        Some(HALF) => sheet.step(steps::A_HALF, z / 2.0),
        _ => sheet.step(steps::A_WHOLE, z),
    }
}

/// The vertical coefficient: in zones IV and V, or as given.
pub fn vertical(values: &Values, z: f64, sheet: &mut Sheet) -> f64 {
    match values.number(fields::VERTICAL) {
        Some(c_v) => sheet.step(steps::C_V_GIVEN, c_v),
        None if limit::at_least(z, Z[ZONE_IV]) => sheet.step(steps::C_V, 2.0 / 3.0 * (z / 2.0) * 2.5),
        None => sheet.step(steps::C_V_NONE, 0.0),
    }
}

/// Place of the word of the field `basis`.
const HALF: usize = 0;
const ZONE_IV: usize = 2;

/// Table 3.
static Z: [f64; 4] = [0.10, 0.16, 0.24, 0.36];

static ZONE_NAMES: [StepId; 4] = [steps::ZONE_II, steps::ZONE_III, steps::ZONE_IV, steps::ZONE_V];
