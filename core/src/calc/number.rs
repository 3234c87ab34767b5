//! Float functions, the same bits on every target.
//!
//! Everything here is `libm`'s. The standard library's versions differ between the desktop and the browser in the
//! last bit of a tenth of all powers, and in a `no_std` crate they do not exist.

/// The number where it is positive, else zero: a zero without a sign, which `f64::max` does not promise.
pub fn positive_part(x: f64) -> f64 {
    if x > 0.0 { x } else { 0.0 }
}

/// Square root.
#[cfg(not(target_feature = "simd128"))]
pub fn sqrt(x: f64) -> f64 {
    libm::sqrt(x)
}

/// Square root by the instruction of the browser, which is as exact; `libm` has no access to it there and computes ten
/// times as long.
#[cfg(target_feature = "simd128")]
pub fn sqrt(x: f64) -> f64 {
    use core::arch::wasm32::{f64x2_extract_lane, f64x2_splat, f64x2_sqrt};
    f64x2_extract_lane::<0>(f64x2_sqrt(f64x2_splat(x)))
}

/// `x` to the power `y`.
pub fn pow(x: f64, y: f64) -> f64 {
    libm::pow(x, y)
}

/// `x` to the power 1.5, written as a product because `pow` is the one slow function.
pub fn pow_1_5(x: f64) -> f64 {
    x * sqrt(x)
}

/// Sine of an angle in radians.
pub fn sin(x: f64) -> f64 {
    libm::sin(x)
}

/// Cosine of an angle in radians.
pub fn cos(x: f64) -> f64 {
    libm::cos(x)
}

/// Tangent of an angle in radians.
pub fn tan(x: f64) -> f64 {
    libm::tan(x)
}

/// Angle in radians of the vector (x, y).
pub fn atan2(y: f64, x: f64) -> f64 {
    libm::atan2(y, x)
}

/// Length of the vector (x, y).
///
/// The steps of `libm::hypot` to the last bit, because that one cannot come to the browser's square root.
///
/// ```
/// use steadfoot::calc::number::hypot;
/// for (x, y) in [(3.0, 4.0), (-0.1, 0.7), (0.0, 2.0), (1e200, 1e199), (1e-200, 3e-201), (1.0, 1e-30), (5e-324, 5e-324)] {
///     assert_eq!(hypot(x, y).to_bits(), libm::hypot(x, y).to_bits());
/// }
/// assert_eq!(hypot(f64::NAN, f64::INFINITY), f64::INFINITY);
/// assert!(hypot(f64::NAN, 1.0).is_nan());
/// ```
pub fn hypot(x: f64, y: f64) -> f64 {
    // By their bits, so that what is no number counts as larger than all.
    let [x, y] = [x, y].map(f64::abs);
    let (large, small) = if x.to_bits() < y.to_bits() { (y, x) } else { (x, y) };
    if !(small < f64::INFINITY) {
        return small;
    }
    if !(large < f64::INFINITY) || small == 0.0 {
        return large;
    }
    let (of_large, of_small) = ((large.to_bits() >> 52) as i32, (small.to_bits() >> 52) as i32);
    if of_large - of_small > 64 {
        return large + small;
    }
    let scale = if of_large > 1023 + 510 {
        -700
    } else if of_small < 1023 - 450 {
        700
    } else {
        0
    };
    let [up, back] = [scale, -scale].map(|power| f64::from_bits(((1023 + power) as u64) << 52));
    let [(square, rest), (small_square, small_rest)] = [large * up, small * up].map(squared);
    back * sqrt(small_rest + rest + small_square + square)
}

/// The square as the sum of two numbers, the second what rounding takes from the first.
fn squared(x: f64) -> (f64, f64) {
    // One and two to the 27th part a number into halves whose products are exact.
    let far = x * 134_217_729.0;
    let high = x - far + far;
    let low = x - high;
    let square = x * x;
    (square, high * high - square + 2.0 * high * low + low * low)
}

/// Natural exponential.
pub fn exp(x: f64) -> f64 {
    libm::exp(x)
}

/// Natural logarithm.
pub fn ln(x: f64) -> f64 {
    libm::log(x)
}

/// Logarithm to base ten.
pub fn log10(x: f64) -> f64 {
    libm::log10(x)
}

/// Largest whole number not above `x`.
pub fn floor(x: f64) -> f64 {
    libm::floor(x)
}

/// Smallest whole number not below `x`.
pub fn ceil(x: f64) -> f64 {
    libm::ceil(x)
}

/// Nearest whole number, halves away from zero.
pub fn round(x: f64) -> f64 {
    libm::round(x)
}
