//! Rolling resistance of wheels on the level and on a ramp.

use super::documents::{AL_EISAWI_1999, ROLLING};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Sheet, number, steps};

steps! { 155 "rolling";
    W "W" Force (STATICS "" Derived) "Weight": Given;
    R "R" Length (INPUT "floor.casters" Derived) "Radius of the wheel": Given;
    F_LEVER "f" Length (AL_EISAWI_1999 "abstract" Published) "Lever arm of rolling friction": Given;
    C "C" Number (ROLLING "" Published) "Rolling resistance over the weight" = "f / R";
    F_LEVEL "F" Force (ROLLING "" Published) "Push on the level" = "f * W / R";
    SLOPE "s" Number (INPUT "floor.route" Derived) "Slope of the ramp, rise over run": Given;
    COS "c_r" Number (STATICS "" Derived) "Cosine of the ramp's angle" = "1 / sqrt(1 + s^2)";
    SIN "s_r" Number (STATICS "" Derived) "Sine of the ramp's angle" = "s / sqrt(1 + s^2)";
    C_GIVEN "C" Number (INPUT "" Derived) "Rolling resistance over the weight, given": Given;
    F_UP "F_up" Force (STATICS "forces along the ramp" Derived) "Push up the ramp" = "W * (s_r + C * c_r)";
    F_HOLD "F_hold" Force (STATICS "forces along the ramp" Derived) "What holds it on the way down" = "W * max(0, s_r - C * c_r)";
}

/// Push on the level, N.
pub fn level_n(weight_n: f64, radius_mm: f64, lever_mm: f64, sheet: &mut Sheet) -> f64 {
    let weight = sheet.step(W, weight_n);
    let radius = sheet.step(R, radius_mm);
    let lever = sheet.step(F_LEVER, lever_mm);
    sheet.step(C, lever / radius);
    sheet.step(F_LEVEL, lever * weight / radius)
}

/// Push up a ramp, and what holds the cabinet on the way down, N, by the resistance over the weight.
pub fn ramp_n(weight_n: f64, resistance: f64, slope: f64, sheet: &mut Sheet) -> [f64; 2] {
    let weight = sheet.step(W, weight_n);
    let c = sheet.step(C_GIVEN, resistance);
    let slope = sheet.step(SLOPE, slope);
    let length = number::sqrt(1.0 + number::pow(slope, 2.0));
    let cos = sheet.step(COS, 1.0 / length);
    let sin = sheet.step(SIN, slope / length);
    let up = sheet.step(F_UP, weight * (sin + c * cos));
    [up, sheet.step(F_HOLD, weight * f64::max(0.0, sin - c * cos))]
}
