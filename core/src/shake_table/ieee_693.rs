//! IEEE 693: required response spectra of three levels, each also at twice its strength to show the performance.
//!
//! The spectra begin at the ground: no floor amplifies them. The low level asks for no test. Vertical is 80 % of horizontal.

use super::documents::IEEE_693;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::ln;
use crate::calc::{Sheet, StepId, steps};

steps! { 132 "ieee-693";
    DAMPING "d" Number (INPUT "shake_table" Derived) "Damping, in per cent of critical": Given;
    BETA "beta" Number (IEEE_693 "required response spectra" Secondary) "What the damping does to the response: 1 at 5 %" = "(3.21 - 0.68 * ln(d)) / 2.1156";
    ZPA "A" Acceleration (IEEE_693 "required response spectra" Memory) "Peak acceleration of the ground, which is the level above 33 Hz": Table;
    F "f" Frequency (STATICS "" Derived) "Frequency": Given;
    F_1 "f_1" Frequency (STATICS "" Derived) "One hertz, in which the clause writes the frequency": Constant;
    F_N "f_n" Number (STATICS "" Derived) "Frequency in hertz" = "f / f_1";
    RISES "A_f" Acceleration (IEEE_693 "required response spectra" Secondary) "Required acceleration up to 1.1 Hz" = "A / 0.25 * 0.572 * beta * f_n";
    LEVEL "A_f" Acceleration (IEEE_693 "required response spectra" Secondary) "Required acceleration from 1.1 to 8 Hz" = "2.5 * A * beta";
    FALLS "A_f" Acceleration (IEEE_693 "required response spectra" Secondary) "Required acceleration from 8 to 33 Hz" = "A / 0.25 * ((6.6 * beta - 2.64) / f_n - 0.2 * beta + 0.33)";
    RIGID "A_f" Acceleration (IEEE_693 "required response spectra" Secondary) "Required acceleration above 33 Hz" = "A";
    A_H "A_H" Acceleration (STATICS "" Derived) "Required horizontal acceleration": Given;
    A_V "A_V" Acceleration (IEEE_693 "vertical" Memory) "Required vertical acceleration" = "0.8 * A_H";

    NO_TEST "level" Number (IEEE_693 "low level" Memory) "the low level asks for no test; good practice is a static 0.2 g": Reason;
}

/// Frequencies at which the clause changes its expression, Hz.
pub const KNOTS_HZ: [f64; 3] = [1.1, 8.0, 33.0];

/// The factor of the damping, given in per cent.
pub fn beta(damping_percent: f64, sheet: &mut Sheet) -> f64 {
    let d = sheet.step(DAMPING, damping_percent);
    sheet.step(BETA, (3.21 - 0.68 * ln(d)) / 2.1156)
}

/// The required horizontal acceleration at a frequency, g.
pub fn at(zpa: f64, beta: f64, frequency_hz: f64, sheet: &mut Sheet) -> f64 {
    let a = sheet.step(ZPA, zpa);
    sheet.carry(BETA, beta);
    let f = sheet.step(F, frequency_hz);
    let f_1 = sheet.step(F_1, 1.0);
    let f_n = sheet.step(F_N, f / f_1);
    if f_n <= KNOTS_HZ[0] {
        sheet.step(RISES, a / 0.25 * 0.572 * beta * f_n)
    } else if f_n <= KNOTS_HZ[1] {
        sheet.step(LEVEL, 2.5 * a * beta)
    } else if f_n <= KNOTS_HZ[2] {
        sheet.step(FALLS, a / 0.25 * ((6.6 * beta - 2.64) / f_n - 0.2 * beta + 0.33))
    } else {
        sheet.step(RIGID, a)
    }
}

/// The vertical acceleration that goes with a horizontal one, g.
pub fn vertical(horizontal: f64, sheet: &mut Sheet) -> f64 {
    let a_h = sheet.carry(A_H, horizontal);
    sheet.step(A_V, 0.8 * a_h)
}

/// Tells why there is no spectrum at the low level.
pub fn no_test(sheet: &mut Sheet) -> StepId {
    sheet.step(NO_TEST, 0.0);
    NO_TEST
}
