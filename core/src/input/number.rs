//! From decimal text to the nearest float, in the way of JSON.
//!
//! The library's reading of floats carries a table of ten kilobytes, which the page would have to load for the few
//! numbers that a project has. Numbers of up to fifteen digits, which is nearly all, are exact by one multiplication or
//! division; the others are guessed and then moved to the nearest float by comparing whole numbers of any length.

use alloc::vec::Vec;
use core::cmp::Ordering;

/// Digits that can decide; behind them it only counts whether there is anything but zeros (a tie of two floats has at
/// most 767 digits).
const DIGITS_MAX: usize = 800;
/// Powers of ten up to this are exact floats.
const EXACT_POWER_MAX: i32 = 22;
/// Whole numbers up to this are exact floats.
const EXACT_WHOLE_MAX: u64 = 1 << 53;
const LARGEST_BITS: u64 = 0x7fef_ffff_ffff_ffff;
const MANTISSA_BITS: u32 = 52;
const SMALLEST_EXPONENT: i32 = -1074;

/// The number that a text writes in the way of JSON, as the nearest float, ties to even; infinite where it is beyond
/// what a float holds, zero and not minus zero where it is nothing.
///
/// ```
/// use steadfoot::input::number::number;
/// assert_eq!(number("-12.5e1"), Some(-125.0));
/// assert_eq!(number("1e999"), Some(f64::INFINITY));
/// assert_eq!(number("01"), None);
/// ```
pub fn number(text: &str) -> Option<f64> {
    let bytes = text.as_bytes();
    let is_negative = bytes.first() == Some(&b'-');
    let mut at = usize::from(is_negative);
    let mut decimal = Decimal { digits: Vec::new(), exponent: 0, has_rest: false };

    let whole = digits(bytes, at);
    if whole.is_empty() || (whole.len() > 1 && whole[0] == b'0') {
        return None;
    }
    at += whole.len();
    decimal.push(whole, 0);
    if bytes.get(at) == Some(&b'.') {
        let behind = digits(bytes, at + 1);
        if behind.is_empty() {
            return None;
        }
        at += 1 + behind.len();
        decimal.push(behind, -1);
    }
    if matches!(bytes.get(at), Some(b'e' | b'E')) {
        at += 1;
        let is_small = bytes.get(at) == Some(&b'-');
        at += usize::from(matches!(bytes.get(at), Some(b'+' | b'-')));
        let exponent = digits(bytes, at);
        if exponent.is_empty() {
            return None;
        }
        at += exponent.len();
        let add = |total: i32, digit: &u8| total.saturating_mul(10).saturating_add((digit - b'0') as i32);
        let exponent = exponent.iter().fold(0, add);
        decimal.exponent = decimal.exponent.saturating_add(if is_small { -exponent } else { exponent });
    }
    if at < bytes.len() {
        return None;
    }
    let magnitude = decimal.nearest();
    Some(if is_negative && magnitude > 0.0 { -magnitude } else { magnitude })
}

/// The run of digits that begins at a place.
fn digits(bytes: &[u8], from: usize) -> &[u8] {
    let rest = bytes.get(from..).unwrap_or(&[]);
    let count = rest.iter().take_while(|byte| byte.is_ascii_digit()).count();
    &rest[..count]
}

/// A whole number of these digits, the first not zero, times a power of ten.
struct Decimal {
    digits: Vec<u8>,
    exponent: i32,
    /// Whether digits other than zero were left out.
    has_rest: bool,
}

impl Decimal {
    /// Takes more digits; each lowers the exponent by one where they stand behind the point, or is left out and raises it.
    fn push(&mut self, text: &[u8], per_digit: i32) {
        for &byte in text {
            self.exponent = self.exponent.saturating_add(per_digit);
            if self.digits.is_empty() && byte == b'0' {
                continue;
            }
            if self.digits.len() < DIGITS_MAX {
                self.digits.push(byte - b'0');
            } else {
                self.has_rest |= byte != b'0';
                self.exponent = self.exponent.saturating_add(1);
            }
        }
    }

    fn nearest(mut self) -> f64 {
        if self.has_rest {
            self.digits.push(1);
            self.exponent = self.exponent.saturating_sub(1);
        }
        while self.digits.last() == Some(&0) {
            self.digits.pop();
            self.exponent = self.exponent.saturating_add(1);
        }
        // How many digits stand in front of the point.
        let magnitude = self.exponent.saturating_add(self.digits.len() as i32);
        if self.digits.is_empty() || magnitude < -330 {
            return 0.0;
        }
        if magnitude > 310 {
            return f64::INFINITY;
        }
        // The first nineteen digits fit in 64 bits.
        let leading = self.digits.len().min(19);
        let whole = self.digits[..leading].iter().fold(0, |total, digit| total * 10 + *digit as u64);
        let exponent = self.exponent + (self.digits.len() - leading) as i32;
        if leading == self.digits.len() && whole <= EXACT_WHOLE_MAX && exponent.abs() <= EXACT_POWER_MAX {
            return scaled(whole as f64, exponent);
        }
        self.nearest_to(scaled(whole as f64, exponent))
    }

    /// Moves a guess to the nearest float.
    fn nearest_to(&self, guess: f64) -> f64 {
        let mut bits = guess.to_bits().min(LARGEST_BITS);
        loop {
            let is_odd = bits & 1 == 1;
            let above = self.compare_with_middle_above(bits);
            if above == Ordering::Greater || (above == Ordering::Equal && is_odd) {
                bits += 1;
                if bits > LARGEST_BITS {
                    return f64::INFINITY;
                }
                continue;
            }
            if bits > 0 {
                let below = self.compare_with_middle_above(bits - 1);
                if below == Ordering::Less || (below == Ordering::Equal && is_odd) {
                    bits -= 1;
                    continue;
                }
            }
            return f64::from_bits(bits);
        }
    }

    /// Compares with the middle between the float of these bits and the next larger one.
    fn compare_with_middle_above(&self, bits: u64) -> Ordering {
        let (mantissa, exponent) = match (bits >> MANTISSA_BITS) as i32 {
            0 => (bits, SMALLEST_EXPONENT),
            biased => (bits & ((1 << MANTISSA_BITS) - 1) | 1 << MANTISSA_BITS, biased - 1 + SMALLEST_EXPONENT),
        };
        // digits * 10^e against (2 mantissa + 1) * 2^(exponent - 1), both made whole.
        let (mut here, mut middle) = (Whole(Vec::new()), Whole(Vec::new()));
        for &digit in &self.digits {
            here.multiply_and_add(10, digit as u32);
        }
        middle.multiply_and_add(1, ((2 * mantissa + 1) >> 32) as u32);
        middle.multiply_and_add(1 << 16, 0);
        middle.multiply_and_add(1 << 16, (2 * mantissa + 1) as u32);
        let (tens, twos) = (self.exponent, exponent - 1);
        (if tens > 0 { &mut here } else { &mut middle }).multiply_by_power(10, tens.unsigned_abs());
        (if twos < 0 { &mut here } else { &mut middle }).multiply_by_power(2, twos.unsigned_abs());
        here.compare(&middle)
    }
}

/// A magnitude times a power of ten, wrong by some units in the last place where the power is not exact.
fn scaled(magnitude: f64, exponent: i32) -> f64 {
    let mut scaled = magnitude;
    let mut left = exponent.abs();
    while left > 0 {
        let step = left.min(EXACT_POWER_MAX);
        let power = (0..step).fold(1.0, |power, _| power * 10.0);
        scaled = if exponent > 0 { scaled * power } else { scaled / power };
        left -= step;
    }
    scaled
}

/// A whole number of any length, its lowest 32 bits first, without zeros at its end.
struct Whole(Vec<u32>);

impl Whole {
    fn multiply_and_add(&mut self, factor: u32, addend: u32) {
        let mut carry = addend as u64;
        for limb in &mut self.0 {
            carry += *limb as u64 * factor as u64;
            *limb = carry as u32;
            carry >>= 32;
        }
        if carry > 0 {
            self.0.push(carry as u32);
        }
    }

    fn multiply_by_power(&mut self, base: u32, power: u32) {
        // 10^9 and 2^9 fit in 32 bits.
        for _ in 0..power / 9 {
            self.multiply_and_add(base.pow(9), 0);
        }
        self.multiply_and_add(base.pow(power % 9), 0);
    }

    fn compare(&self, other: &Whole) -> Ordering {
        self.0.len().cmp(&other.0.len()).then_with(|| self.0.iter().rev().cmp(other.0.iter().rev()))
    }
}
