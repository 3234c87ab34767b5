//! Decimal digits of a float, without the formatting machinery of the standard library.
//!
//! A product with an exact power of ten is wrong by at most half a unit in the last place, so fifteen digits are right;
//! and a whole number below 2^53 divided by an exact power of ten is the nearest float to that decimal text, so
//! [`shortest`] can tell whether a text gives its value back.

use alloc::string::String;

use super::number::{ceil, floor, log10, round};
use super::show::Rounding;

const EXACT_POWERS: usize = 22;
const WHOLE_MAX: f64 = 9_007_199_254_740_992.0;

/// How many decimals show `digits` significant digits of the magnitude.
pub fn decimals_for(magnitude: f64, digits: u8) -> u8 {
    if magnitude == 0.0 {
        return 0;
    }
    let exponent = floor(log10(magnitude)) as i32;
    (digits as i32 - 1 - exponent).clamp(0, 12) as u8
}

/// Writes a magnitude with the given decimals. `strict` rounds anything above 1 away from 1.
pub fn push_decimal(text: &mut String, magnitude: f64, decimals: u8, rounding: Rounding, strict: bool) {
    let scaled = magnitude * power_of_ten(decimals as usize);
    if scaled >= WHOLE_MAX {
        push_scientific(text, magnitude);
        return;
    }
    // 0.71 may come as 0.7100000000000001: a slack far below the printed digit keeps it 0.71, but a utilisation above 1
    // gets none, because it must never print as 1.00.
    let slack = if strict && magnitude > 1.0 { 0.0 } else { scaled * 1e-12 };
    let mut whole = match rounding {
        Rounding::Nearest => round(scaled),
        Rounding::Up => ceil(scaled - slack),
        Rounding::Down => floor(scaled + slack),
    };
    // The product itself may round a value just above 1 down to 1.
    let unit = power_of_ten(decimals as usize);
    if strict && rounding == Rounding::Up && magnitude > 1.0 && whole <= unit {
        whole = unit + 1.0;
    }
    push_whole_with_point(text, whole as u64, decimals as usize, true);
}

/// Writes the shortest decimal of at most fifteen digits that gives the magnitude back within a rounding or two of a
/// unit conversion; six digits where more than twelve would be needed.
pub fn shortest(text: &mut String, magnitude: f64) {
    if magnitude == 0.0 {
        text.push('0');
        return;
    }
    let exponent = floor(log10(magnitude)) as i32;
    for digits in 1..=15 {
        let Some((whole, decimals)) = digits_of(magnitude, exponent, digits) else { break };
        let back = value_of(whole, decimals);
        if (back - magnitude).abs() <= 2e-15 * magnitude {
            // Twelve digits are what a person types; more of them are the tail of a conversion, unless it is exact.
            if digits > 12 && back != magnitude {
                break;
            }
            push_plain(text, whole, decimals);
            return;
        }
    }
    match digits_of(magnitude, exponent, 6) {
        Some((whole, decimals)) => push_plain(text, whole, decimals),
        None => push_scientific_ascii(text, magnitude),
    }
}

/// Writes the decimal of fifteen digits that is nearest, without zeros at its end.
pub fn precise(text: &mut String, magnitude: f64) {
    if magnitude == 0.0 {
        text.push('0');
        return;
    }
    match digits_of(magnitude, floor(log10(magnitude)) as i32, 15) {
        Some((whole, decimals)) => push_plain(text, whole, decimals),
        None => push_scientific_ascii(text, magnitude),
    }
}

/// The magnitude rounded to a number of digits: a whole number and how many of its digits stand behind the point
/// (negative: zeros to append).
fn digits_of(magnitude: f64, exponent: i32, digits: i32) -> Option<(f64, i32)> {
    let decimals = digits - 1 - exponent;
    if decimals.unsigned_abs() as usize > EXACT_POWERS {
        return None;
    }
    let power = power_of_ten(decimals.unsigned_abs() as usize);
    let whole = round(if decimals >= 0 { magnitude * power } else { magnitude / power });
    (whole < WHOLE_MAX).then_some((whole, decimals))
}

fn value_of(whole: f64, decimals: i32) -> f64 {
    let power = power_of_ten(decimals.unsigned_abs() as usize);
    if decimals >= 0 { whole / power } else { whole * power }
}

fn push_plain(text: &mut String, whole: f64, decimals: i32) {
    if decimals < 0 {
        push_whole_with_point(text, whole as u64, 0, false);
        for _ in 0..-decimals {
            text.push('0');
        }
        return;
    }
    push_whole_with_point(text, whole as u64, decimals as usize, false);
    if decimals > 0 {
        while text.ends_with('0') {
            text.pop();
        }
        if text.ends_with('.') {
            text.pop();
        }
    }
}

/// Writes a whole number with a point before its last `decimals` digits; from five digits on, groups of three are set
/// apart by a narrow space when `grouped`.
fn push_whole_with_point(text: &mut String, whole: u64, decimals: usize, grouped: bool) {
    let mut digits = [b'0'; 40];
    let mut count = 0;
    let mut rest = whole;
    while rest > 0 || count <= decimals {
        digits[count] = b'0' + (rest % 10) as u8;
        rest /= 10;
        count += 1;
    }
    let before_point = count - decimals;
    for place in (0..count).rev() {
        text.push(digits[place] as char);
        if place == decimals && decimals > 0 {
            text.push('.');
        }
        let left = place as i32 - decimals as i32;
        if grouped && before_point > 4 && left > 0 && left % 3 == 0 {
            text.push('\u{202f}');
        }
    }
}

fn push_scientific(text: &mut String, magnitude: f64) {
    let exponent = floor(log10(magnitude));
    push_decimal(text, magnitude / super::number::pow(10.0, exponent), 2, Rounding::Nearest, false);
    text.push_str("×10^");
    push_whole_with_point(text, exponent as u64, 0, false);
}

fn push_scientific_ascii(text: &mut String, magnitude: f64) {
    let exponent = floor(log10(magnitude));
    let mantissa = round(magnitude / super::number::pow(10.0, exponent) * 1e5);
    push_plain(text, mantissa, 5);
    text.push('e');
    if exponent < 0.0 {
        text.push('-');
    }
    push_whole_with_point(text, exponent.abs() as u64, 0, false);
}

fn power_of_ten(exponent: usize) -> f64 {
    const POWERS: [f64; EXACT_POWERS + 1] = [
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22,
    ];
    POWERS[exponent.min(EXACT_POWERS)]
}
