//! Kelvin's functions ker and kei: how the settlement of a plate on springs dies away from a load.
//!
//! Up to 3 by their power series, beyond by the integral of exp(-z cosh t) for z = x e^(i pi/4), which the trapezoidal
//! rule integrates to the last digits because the integrand is analytic in a strip.

use crate::calc::number;

/// ker, kei and the derivative of kei at one place.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Kelvin {
    /// ker x.
    pub ker: f64,
    /// kei x.
    pub kei: f64,
    /// The derivative of kei.
    pub kei_slope: f64,
}

const EULER: f64 = 0.577_215_664_901_532_9;
const QUARTER_PI: f64 = core::f64::consts::FRAC_PI_4;
const ROOT_HALF: f64 = core::f64::consts::FRAC_1_SQRT_2;
/// Where the power series hands over to the integral.
const SERIES_MAX: f64 = 3.0;
/// Step of the trapezoidal rule: the error is exp(-2 pi (pi / 4) / step).
const STEP: f64 = 0.125;
/// Where exp(-x) is less than the last bit of one.
const NOTHING: f64 = 40.0;

/// Kelvin's functions of order zero at x > 0.
///
/// ```
/// use steadfoot::rules::floor::kelvin::kelvin;
/// let at = kelvin(1.0);
/// assert!((at.ker - 0.286_706_208_7).abs() < 1e-10);
/// assert!((at.kei + 0.494_994_636_5).abs() < 1e-10);
/// assert!((at.kei_slope - 0.352_369_913_3).abs() < 1e-10);
/// ```
pub fn kelvin(x: f64) -> Kelvin {
    if x <= SERIES_MAX { by_series(x) } else { by_integral(x) }
}

/// The power series; loses digits beyond about 6.
pub fn by_series(x: f64) -> Kelvin {
    let half = x / 2.0;
    let quarter = half * half;
    // (x/2)^(2n) / (n!)^2, with the harmonic number of n; even n belong to ber, odd ones to bei.
    let (mut term, mut harmonic) = (1.0, 0.0);
    let (mut ber, mut bei, mut ber_sum, mut bei_sum) = (0.0, 0.0, 0.0, 0.0);
    let (mut ber_slope, mut bei_slope, mut bei_sum_slope) = (0.0, 0.0, 0.0);
    for n in 0..60_u32 {
        if n > 0 {
            term *= quarter / (n as f64 * n as f64);
            harmonic += 1.0 / n as f64;
        }
        let signed = if n / 2 % 2 == 0 { term } else { -term };
        let slope = 2.0 * n as f64 / x * signed;
        if n % 2 == 0 {
            ber += signed;
            ber_sum += harmonic * signed;
            ber_slope += slope;
        } else {
            bei += signed;
            bei_sum += harmonic * signed;
            bei_slope += slope;
            bei_sum_slope += harmonic * slope;
        }
        if term < 1e-18 * (1.0 + ber.abs() + bei.abs()) {
            break;
        }
    }
    let logarithm = number::ln(half) + EULER;
    Kelvin {
        ker: -logarithm * ber + QUARTER_PI * bei + ber_sum,
        kei: -logarithm * bei - QUARTER_PI * ber + bei_sum,
        kei_slope: -bei / x - logarithm * bei_slope - QUARTER_PI * ber_slope + bei_sum_slope,
    }
}

/// The integral; slow for small x.
pub fn by_integral(x: f64) -> Kelvin {
    let along = x * ROOT_HALF;
    let mut total = Kelvin { ker: 0.0, kei: 0.0, kei_slope: 0.0 };
    let mut step = 0.0;
    loop {
        let grown = number::exp(STEP * step);
        let cosh = (grown + 1.0 / grown) / 2.0;
        if along * (cosh - 1.0) > NOTHING {
            break;
        }
        let weight = if step == 0.0 { STEP / 2.0 } else { STEP };
        let size = weight * number::exp(-along * cosh);
        let (sin, cos) = (number::sin(along * cosh), number::cos(along * cosh));
        total.ker += size * cos;
        total.kei -= size * sin;
        // -e^(i pi/4) cosh t exp(-z cosh t), its imaginary part.
        total.kei_slope -= size * cosh * ROOT_HALF * (cos - sin);
        step += 1.0;
    }
    total
}
