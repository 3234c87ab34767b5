//! Rocking in closed form: free rocking of small angles, and the pulses that just overturn a body.
//!
//! All after Housner (1963) in the linear theory of slender bodies, in which sines of angles count as the angles. His
//! value for the half sine is kept beside the right one, because it is quoted much and lies on the unsafe side.

use alloc::vec;
use alloc::vec::Vec;

use super::body::HOUSNER_1963;
use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::{Detail, Sheet, number, steps};
use core::f64::consts::FRAC_PI_2;

/// Where the least half sine that overturns was put right.
pub static MAKRIS_ROUSSOS_1998: Document = Document {
    short: "Makris and Roussos 1998",
    title: "N. Makris, Y. Roussos: Rocking response and overturning of equipment under horizontal pulse-type motions, PEER report 1998/05",
};

steps! { 172 "rocking, closed form";
    P "p" AngularVelocity (HOUSNER_1963 "" Memory) "Frequency parameter": Given;
    THETA_0 "theta_0" Angle (INPUT "" Derived) "Angle from which it is let go": Given;
    ALPHA "alpha" Angle (HOUSNER_1963 "" Memory) "Angle at which it would fall by its own weight": Given;
    E "e" Number (HOUSNER_1963 "" Memory) "Speed after an impact over the speed before": Given;
    Y "y" Number (HOUSNER_1963 "" Memory) "Inverse of what is left to the angle of falling" = "1 / (1 - theta_0 / alpha)";
    T "T" Time (HOUSNER_1963 "" Memory) "Period of free rocking at this angle, small angles: the smaller the angle, the shorter" = "4 / p * ln(y + sqrt(y^2 - 1))";
    N_I "n_i" Number (STATICS "" Derived) "Number of impacts": Given;
    PHI_I "phi_i" Number (HOUSNER_1963 "" Memory) "Angle over alpha after so many impacts" = "1 - sqrt(1 - e^(2 * n_i) * (1 - (1 - theta_0 / alpha)^2))";
    T_I "T_i" Time (HOUSNER_1963 "" Memory) "Period after so many impacts" = "4 / p * ln(1 / (1 - phi_i) + sqrt((1 / (1 - phi_i))^2 - 1))";
    A "A" Number (INPUT "" Derived) "Height of the pulse over the acceleration at which it lifts": Given;
    PT_1 "p_t" Number (HOUSNER_1963 "" Memory) "Duration of the rectangular pulse that just overturns it, times p" = "ln(A / (A - 1))";
    W "w" Number (INPUT "" Derived) "Angular frequency of the half sine over p": Given;
    PSI "psi" Angle (MAKRIS_ROUSSOS_1998 "" Memory) "Where in the sine it lifts, if that just overturns it: cos(psi) - w sin(psi) + exp(-(pi - psi) / w) = 0": Solved;
    A_MIN "A_min" Number (MAKRIS_ROUSSOS_1998 "" Memory) "Least half sine that overturns it, over the acceleration at which it lifts" = "1 / sin(psi)";
    A_OLD "A_H" Number (HOUSNER_1963 "" Memory) "The value of 1963 for the same, which is not the least" = "sqrt(1 + w^2)";
}

/// What free rocking comes to.
#[derive(Clone, PartialEq, Debug)]
pub struct FreeRocked {
    /// Its period while the first angle lasts.
    pub period_s: f64,
    /// The angle over that of falling, first that from which it is let go, then after each impact.
    pub ratios: Vec<f64>,
    /// When it comes down: after a quarter of the first period, then each time after half of the next.
    pub impacts_s: Vec<f64>,
}

/// How free rocking from an angle below that of falling dies down, impact by impact.
///
/// Housner 1963, for small angles and a slender body on a stiff floor, without sliding. Angles in rad, times in s; from the
/// angle of falling up the results are not numbers.
///
/// ```
/// use steadfoot::{calc::Sheet, motion::{FreeRocking, free_rocking}};
/// let start = FreeRocking { p_rad_per_s: 2.5, alpha_rad: 0.2, release_rad: 0.1, restitution: 0.9, impacts: 3 };
/// let rocked = free_rocking(&start, &mut Sheet::quiet());
/// assert!(rocked.ratios[0] == 0.5 && rocked.ratios.is_sorted_by(|a, b| a > b));
/// ```
pub fn free_rocking(start: &FreeRocking, sheet: &mut Sheet) -> FreeRocked {
    let p = sheet.step(P, start.p_rad_per_s);
    let theta_0 = sheet.step(THETA_0, start.release_rad);
    let alpha = sheet.step(ALPHA, start.alpha_rad);
    let e = sheet.step(E, start.restitution);
    let y = sheet.step(Y, 1.0 / (1.0 - theta_0 / alpha));
    let period_s = sheet.step(T, 4.0 / p * number::ln(y + number::sqrt(y * y - 1.0)));
    let counts: Vec<f64> = (0..=start.impacts).map(|count| count as f64).collect();
    sheet.each(N_I, &counts);
    let left = 1.0 - theta_0 / alpha;
    let ratios: Vec<f64> = counts
        .iter()
        .map(|count| 1.0 - number::sqrt(1.0 - number::pow(e, 2.0 * count) * (1.0 - left * left)))
        .collect();
    sheet.each(PHI_I, &ratios);
    let of_ratio = |ratio: &f64| {
        let y = 1.0 / (1.0 - ratio);
        4.0 / p * number::ln(y + number::sqrt(y * y - 1.0))
    };
    let periods: Vec<f64> = ratios.iter().map(of_ratio).collect();
    sheet.each(T_I, &periods);
    let mut at_s = -period_s / 4.0;
    let impacts_s = periods.iter().map(|period_s| {
        at_s += period_s / 2.0;
        at_s
    });
    FreeRocked { period_s, impacts_s: impacts_s.collect(), ratios }
}

/// What free rocking starts from.
#[derive(Clone, Copy, Debug)]
pub struct FreeRocking {
    /// Frequency parameter.
    pub p_rad_per_s: f64,
    /// Angle of falling.
    pub alpha_rad: f64,
    /// Angle from which it is let go, less than that.
    pub release_rad: f64,
    /// Speed after an impact over the speed before.
    pub restitution: f64,
    /// How many impacts are told.
    pub impacts: usize,
}

/// The duration, times p, of the rectangular pulse that just overturns a body: `height` is the pulse over the
/// acceleration at which it lifts, more than 1.
pub fn rectangle_that_overturns(height: f64, sheet: &mut Sheet) -> f64 {
    sheet.step(A, height);
    sheet.step(PT_1, number::ln(height / (height - 1.0)))
}

/// The least half sine that overturns, over the acceleration at which it lifts: `quickness` is its angular frequency
/// over p.
pub fn half_sine_that_overturns(quickness: f64, sheet: &mut Sheet) -> f64 {
    let w = sheet.step(W, quickness);
    let psi = sheet.detailed(PSI, lift_phase_rad(w), || Detail::Residuals(vec![lift_residual(w, lift_phase_rad(w))]));
    let least = sheet.step(A_MIN, 1.0 / number::sin(psi));
    sheet.step(A_OLD, number::sqrt(1.0 + w * w));
    least
}

fn lift_residual(w: f64, psi: f64) -> f64 {
    number::cos(psi) - w * number::sin(psi) + number::exp(-(core::f64::consts::PI - psi) / w)
}

/// Positive at 0, negative at a right angle but for the slowest pulses, and falling between.
fn lift_phase_rad(w: f64) -> f64 {
    let (mut low, mut high) = (0.0, FRAC_PI_2);
    for _ in 0..200 {
        let middle = (low + high) / 2.0;
        if middle <= low || middle >= high {
            break;
        }
        if lift_residual(w, middle) > 0.0 { low = middle } else { high = middle }
    }
    high
}
