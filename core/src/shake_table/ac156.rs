//! AC156: a spectrum that comes from the ground motion of the building code and the height in the building.
//!
//! Both forms: with the height factor of ASCE 7-05 to 7-16, and with H_f and R_mu of ASCE 7-22. Damping is 5 %. The spectrum
//! begins at 0.1 Hz; above 33.3 Hz it stays level. Vertical shaking is that at z/h = 0 by definition.

use super::documents::{AC156, AC156_24};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::{ln, pow};
use crate::calc::{Sheet, StepId, limit, steps};

steps! { 131 "ac156";
    S_DS "S_DS" Acceleration (INPUT "shake_table" Derived) "Design spectral acceleration at short periods": Given;
    R_Z "r_z" Number (INPUT "shake_table" Derived) "Height of the attachment over height of the roof": Given;
    A_1 "A_1" Acceleration (AC156 "required response spectrum" Secondary) "Horizontal, flexible components, before its limit" = "S_DS * (1 + 2 * r_z)";
    A_RH_1 "A_R" Acceleration (AC156 "required response spectrum" Secondary) "Horizontal, rigid components: the level above 33.3 Hz" = "0.4 * S_DS * (1 + 2 * r_z)";
    H_F "H_f" Number (AC156_24 "required response spectrum; ASCE 7-22 13.3-5" Secondary) "Amplification with height in a building whose period is not known" = "1 + 2.5 * r_z";
    H_F_GRADE "H_f" Number (AC156_24 "required response spectrum; ASCE 7-22 13.3.1.1" Secondary) "Amplification with height, at grade": Condition;
    R_MU_UNKNOWN "R_mu" Number (AC156_24 "required response spectrum; ASCE 7-22 13.3.1.2" Secondary) "Reduction by the ductility of a building whose system is not known": Condition;
    R_MU_GRADE "R_mu" Number (AC156_24 "required response spectrum; ASCE 7-22 13.3.1.2" Secondary) "Reduction by the ductility of the building, at grade": Condition;
    A_2 "A_1" Acceleration (AC156_24 "required response spectrum" Secondary) "Horizontal, flexible components, before its limit" = "S_DS * H_f / R_mu";
    A_RH_2 "A_R" Acceleration (AC156_24 "required response spectrum" Secondary) "Horizontal, rigid components: the level above 33.3 Hz" = "0.4 * S_DS * H_f / R_mu";
    A_MAX "A_max" Acceleration (AC156 "required response spectrum" Secondary) "It need not be more than" = "1.6 * S_DS";
    A_FH "A_F" Acceleration (AC156 "required response spectrum" Secondary) "Horizontal, flexible components: the level between 1.3 and 8.3 Hz" = "min(A_max, A_1)";
    A_FV "A_FV" Acceleration (AC156 "required response spectrum" Secondary) "Vertical, flexible components" = "0.67 * S_DS";
    A_RV "A_RV" Acceleration (AC156 "required response spectrum" Secondary) "Vertical, rigid components" = "0.27 * S_DS";

    A_ONE "A_i1" Acceleration (STATICS "" Derived) "The level for the first strength and height": Given;
    A_TWO "A_i2" Acceleration (STATICS "" Derived) "The level for the second strength and height": Given;
    A_FH_BOTH "A_F" Acceleration (AC156 "several levels" Secondary) "Horizontal, flexible components: the larger of both" = "max(A_i1, A_i2)";
    A_RH_BOTH "A_R" Acceleration (AC156 "several levels" Secondary) "Horizontal, rigid components: the larger of both" = "max(A_i1, A_i2)";
    A_FV_BOTH "A_FV" Acceleration (AC156 "several levels" Secondary) "Vertical, flexible components: the larger of both" = "max(A_i1, A_i2)";
    A_RV_BOTH "A_RV" Acceleration (AC156 "several levels" Secondary) "Vertical, rigid components: the larger of both" = "max(A_i1, A_i2)";

    A_F "A_F" Acceleration (STATICS "" Derived) "Level of flexible components in this direction": Given;
    A_R "A_R" Acceleration (STATICS "" Derived) "Level of rigid components in this direction": Given;
    F "f" Frequency (STATICS "" Derived) "Frequency": Given;
    F_A "f_a" Frequency (AC156 "required response spectrum" Secondary) "Where the spectrum begins": Constant;
    F_B "f_b" Frequency (AC156 "required response spectrum" Secondary) "Where it becomes level": Constant;
    F_C "f_c" Frequency (AC156 "required response spectrum" Secondary) "Where it begins to fall": Constant;
    F_D "f_d" Frequency (AC156 "required response spectrum" Secondary) "Where it is that of rigid components": Constant;
    RISES "A_f" Acceleration (AC156 "required response spectrum" Secondary) "Required acceleration: a straight line on logarithmic axes from a tenth of the level" = "0.1 * A_F * (f / f_a)^(ln(10) / ln(f_b / f_a))";
    LEVEL "A_f" Acceleration (AC156 "required response spectrum" Secondary) "Required acceleration, between 1.3 and 8.3 Hz" = "A_F";
    FALLS "A_f" Acceleration (AC156 "required response spectrum" Secondary) "Required acceleration: a straight line on logarithmic axes down to rigid components" = "A_R * (f_d / f)^(ln(A_F / A_R) / ln(f_d / f_c))";
    RIGID "A_f" Acceleration (AC156 "required response spectrum" Secondary) "Required acceleration, from 33.3 Hz up" = "A_R";

    F_1 "f_1" Frequency (INPUT "shake_table" Derived) "Lowest natural frequency of the cabinet as it is tested": Given;
    F_MATCH "f_low" Frequency (AC156 "matching of the test spectrum" Secondary) "Lowest frequency from which the test must reach the required spectrum" = "max(f_b, min(f_h, 0.75 * f_1))";
    F_MATCH_UNKNOWN "f_low" Frequency (AC156 "matching of the test spectrum" Secondary) "Lowest frequency from which the test must reach the required spectrum, where the cabinet's is not known": Condition;
    F_H "f_h" Frequency (AC156 "matching of the test spectrum" Secondary) "It need not be matched from higher up than this": Constant;

    BELOW "frequency" Number (AC156 "required response spectrum" Secondary) "the spectrum begins at 0.1 Hz": Reason;
    NO_S_DS "S_DS" Number (INPUT "shake_table" Derived) "it needs S_DS: give it with the shake table, or choose a seismic rule that asks for it": Reason;
}

/// Frequencies of the knots, Hz.
pub const KNOTS_HZ: [f64; 4] = [0.1, 1.3, 8.3, 33.3];
/// Matching need not begin higher up, Hz.
const MATCH_MAX_HZ: f64 = 3.5;

/// Which form of the criteria.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Form {
    /// With 1 + 2 z/h.
    Asce716,
    /// With H_f over R_mu.
    Asce722,
}

/// A strength of shaking and the height at which it is met.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Place {
    /// Design spectral acceleration at short periods, g.
    pub s_ds: f64,
    /// Height of the attachment over height of the roof, 0 to 1.
    pub height_ratio: f64,
}

/// The levels that make the spectrum, g.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Levels {
    /// Horizontal: flexible, rigid.
    pub horizontal: [f64; 2],
    /// Vertical: flexible, rigid.
    pub vertical: [f64; 2],
}

/// The levels for one strength and height; clause: AC156, required response spectrum.
pub fn levels(form: Form, place: Place, sheet: &mut Sheet) -> Levels {
    let s_ds = sheet.step(S_DS, place.s_ds);
    let r_z = sheet.step(R_Z, place.height_ratio);
    let (a_1, a_r) = match form {
        Form::Asce716 => {
            (sheet.step(A_1, s_ds * (1.0 + 2.0 * r_z)), sheet.step(A_RH_1, 0.4 * s_ds * (1.0 + 2.0 * r_z)))
        }
        Form::Asce722 => {
            let (h_f, r_mu) = if r_z > 0.0 {
                (sheet.step(H_F, 1.0 + 2.5 * r_z), sheet.step(R_MU_UNKNOWN, 1.3))
            } else {
                (sheet.step(H_F_GRADE, 1.0), sheet.step(R_MU_GRADE, 1.0))
            };
            (sheet.step(A_2, s_ds * h_f / r_mu), sheet.step(A_RH_2, 0.4 * s_ds * h_f / r_mu))
        }
    };
    let a_max = sheet.step(A_MAX, 1.6 * s_ds);
    let a_f = sheet.step(A_FH, f64::min(a_max, a_1));
    let vertical = [sheet.step(A_FV, 0.67 * s_ds), sheet.step(A_RV, 0.27 * s_ds)];
    Levels { horizontal: [a_f, a_r], vertical }
}

/// The larger of two sets of levels, each by itself.
pub fn larger(one: Levels, two: Levels, sheet: &mut Sheet) -> Levels {
    let mut larger = |one: f64, two: f64, both: StepId| {
        sheet.carry(A_ONE, one);
        sheet.carry(A_TWO, two);
        sheet.step(both, f64::max(one, two))
    };
    Levels {
        horizontal: [
            larger(one.horizontal[0], two.horizontal[0], A_FH_BOTH),
            larger(one.horizontal[1], two.horizontal[1], A_RH_BOTH),
        ],
        vertical: [
            larger(one.vertical[0], two.vertical[0], A_FV_BOTH),
            larger(one.vertical[1], two.vertical[1], A_RV_BOTH),
        ],
    }
}

/// The required acceleration at a frequency, g, of a direction with these levels of flexible and rigid components.
///
/// The reason below 0.1 Hz, where the spectrum says nothing.
pub fn at(levels: [f64; 2], frequency_hz: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
    let f = sheet.step(F, frequency_hz);
    let [f_a, f_b, f_c, f_d] = KNOTS_HZ;
    if limit::less(f, f_a) {
        sheet.step(BELOW, 0.0);
        return Err(BELOW);
    }
    let [a_f, a_r] = levels;
    let (is_flexible, is_level) = (f < f_c, f >= f_b && f <= f_c);
    if is_flexible || is_level {
        sheet.carry(A_F, a_f);
    }
    if is_level {
        return Ok(sheet.step(LEVEL, a_f));
    }
    if is_flexible {
        sheet.step(F_A, f_a);
        sheet.step(F_B, f_b);
        return Ok(sheet.step(RISES, 0.1 * a_f * pow(f / f_a, ln(10.0) / ln(f_b / f_a))));
    }
    sheet.carry(A_R, a_r);
    if f >= f_d {
        return Ok(sheet.step(RIGID, a_r));
    }
    sheet.carry(A_F, a_f);
    sheet.step(F_C, f_c);
    sheet.step(F_D, f_d);
    Ok(sheet.step(FALLS, a_r * pow(f_d / f, ln(a_f / a_r) / ln(f_d / f_c))))
}

/// The frequency from which the test must reach the required spectrum, Hz.
pub fn matched_from_hz(lowest_hz: Option<f64>, sheet: &mut Sheet) -> f64 {
    let f_b = KNOTS_HZ[1];
    match lowest_hz {
        None => sheet.step(F_MATCH_UNKNOWN, f_b),
        Some(f_1) => {
            sheet.step(F_1, f_1);
            sheet.step(F_B, f_b);
            let f_h = sheet.step(F_H, MATCH_MAX_HZ);
            sheet.step(F_MATCH, f64::max(f_b, f64::min(f_h, 0.75 * f_1)))
        }
    }
}
