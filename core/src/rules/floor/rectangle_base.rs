//! A rigid rectangular base on soft ground without tension: the highest pressure by closed forms where there are any.

use super::documents::EN_1997_1;
use crate::calc::clause::{PRACTICE, STATICS};
use crate::calc::{Sheet, StepId, limit, number, steps};

steps! { 159 "rectangular base";
    XI "xi" Number (STATICS "" Derived) "Eccentricity along the side that the line of contact runs along, over that side": Given;
    ETA "eta" Number (STATICS "" Derived) "Eccentricity along the other side, over that side": Given;
    K_KERN "K" Number (STATICS "kern" Secondary) "Highest pressure over the mean, all of the base pressed" = "1 + 6 * xi + 6 * eta";
    K_LINE "K" Number (STATICS "one eccentricity" Secondary) "Highest pressure over the mean, a part pressed" = "2 / (3 * (1 / 2 - eta))";
    R_T "r" Number (STATICS "trapezoid" Derived) "Slope of the line of contact" = "(1 - sqrt(1 - 12 * xi^2)) / xi";
    T_0 "t_0" Number (STATICS "trapezoid" Derived) "Pressed length in the middle" = "3 * (1 / 2 - eta) * (1 + r^2 / 12) / (1 + r^2 / 4)";
    K_TRAPEZOID "K" Number (STATICS "trapezoid" Derived) "Highest pressure over the mean, two corners pressed" = "2 * (1 + r / 2) * (1 + r^2 / 4) / (3 * (1 / 2 - eta) * (1 + r^2 / 12)^2)";
    A_TRAPEZOID "A_c" Number (STATICS "trapezoid" Derived) "Pressed part of the base" = "t_0";
    K_TRIANGLE "K" Number (STATICS "triangle" Derived) "Highest pressure over the mean, one corner pressed" = "3 / (8 * (1 / 2 - xi) * (1 / 2 - eta))";
    A_TRIANGLE "A_c" Number (STATICS "triangle" Derived) "Pressed part of the base" = "8 * (1 / 2 - xi) * (1 / 2 - eta)";
    K_HANDBOOK "K_h" Number (PRACTICE "handbook approximation" Memory) "The same by an approximation of German tables, to warn of it: unsafe by up to 18 % within the second core and by 61 % at 0.4, 0.4" = "(xi + eta) * (12 - 3.9 * (6 * (xi + eta) - 1) * (1 - 2 * (xi + eta)) * (2.3 - 2 * (xi + eta)))";
    Q_PLASTIC "q_pl" Number (EN_1997_1 "Annex D" Memory) "Even pressure over the effective area, over the mean" = "1 / ((1 - 2 * xi) * (1 - 2 * eta))";
    OUTSIDE "" Number (STATICS "" Derived) "the load does not stand over the base: it tips": Reason;
    PENTAGON "" Number (STATICS "" Derived) "three corners are pressed: there is no short closed form, the solver of base reactions finds it": Reason;
}

/// The highest pressure over the mean, with the pressed part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pressed {
    /// q_max L B / P.
    pub peak_over_mean: f64,
    /// Pressed part of the base.
    pub contact: f64,
}

/// The highest pressure by closed form; eccentricities over the sides, in any order and sign.
///
/// Errors: the load beside the base; three corners pressed.
pub fn pressed(eccentricity: [f64; 2], sheet: &mut Sheet) -> Result<Pressed, StepId> {
    let [x, y] = eccentricity.map(f64::abs);
    if !(x < 0.5 && y < 0.5) {
        return Err(OUTSIDE);
    }
    // The line of contact runs along the side with the smaller eccentricity.
    let xi = sheet.step(XI, f64::min(x, y));
    let eta = sheet.step(ETA, f64::max(x, y));
    let k = xi + eta;
    let steep = (12.0 - 3.9 * (6.0 * k - 1.0) * (1.0 - 2.0 * k) * (2.3 - 2.0 * k)) * k;
    sheet.step(Q_PLASTIC, 1.0 / ((1.0 - 2.0 * xi) * (1.0 - 2.0 * eta)));
    if limit::at_most(k, 1.0 / 6.0) {
        return Ok(Pressed { peak_over_mean: sheet.step(K_KERN, 1.0 + 6.0 * xi + 6.0 * eta), contact: 1.0 });
    }
    sheet.step(K_HANDBOOK, steep);
    if xi == 0.0 {
        let peak = sheet.step(K_LINE, 2.0 / (3.0 * (0.5 - eta)));
        return Ok(Pressed { peak_over_mean: peak, contact: 3.0 * (0.5 - eta) });
    }
    if limit::at_least(xi, 0.25) && limit::at_least(eta, 0.25) {
        let room = (0.5 - xi) * (0.5 - eta);
        let peak = sheet.step(K_TRIANGLE, 3.0 / (8.0 * (0.5 - xi) * (0.5 - eta)));
        return Ok(Pressed { peak_over_mean: peak, contact: sheet.step(A_TRIANGLE, 8.0 * room) });
    }
    let r = (1.0 - number::sqrt(1.0 - 12.0 * number::pow(xi, 2.0))) / xi;
    let square = number::pow(r, 2.0);
    let t_0 = 3.0 * (0.5 - eta) * (1.0 + square / 12.0) / (1.0 + square / 4.0);
    if !(r <= 2.0 && t_0 * (1.0 + r / 2.0) <= 1.0) {
        return Err(PENTAGON);
    }
    let r = sheet.step(R_T, r);
    let t_0 = sheet.step(T_0, t_0);
    let below = 3.0 * (0.5 - eta) * number::pow(1.0 + square / 12.0, 2.0);
    let peak = 2.0 * (1.0 + r / 2.0) * (1.0 + square / 4.0) / below;
    Ok(Pressed { peak_over_mean: sheet.step(K_TRAPEZOID, peak), contact: sheet.step(A_TRAPEZOID, t_0) })
}
