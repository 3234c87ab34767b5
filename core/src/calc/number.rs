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
pub fn hypot(x: f64, y: f64) -> f64 {
    libm::hypot(x, y)
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
