//! What was typed comes back as typed after a switch of units and back.

use std::fmt::Write;

use steadfoot::calc::show::{field_text, field_value};
use steadfoot::calc::{Kind, System};
use steadfoot::input::text;
use steadfoot_tests::random::Random;

const COUNT: usize = 20_000;
/// Digits that a person may type; more are the tail of a conversion.
const DIGITS_MAX: usize = 12;

/// Every kind that has a field, a working or a drawing.
const KINDS: [Kind; 25] = [
    Kind::Number,
    Kind::Utilisation,
    Kind::Acceleration,
    Kind::Length,
    Kind::Height,
    Kind::Distance,
    Kind::Area,
    Kind::SecondMoment,
    Kind::Force,
    Kind::Moment,
    Kind::Stress,
    Kind::Pressure,
    Kind::AreaLoad,
    Kind::LineLoad,
    Kind::Mass,
    Kind::Inertia,
    Kind::Gravity,
    Kind::Stiffness,
    Kind::Subgrade,
    Kind::Angle,
    Kind::Time,
    Kind::Frequency,
    Kind::Velocity,
    Kind::FreeFall,
    Kind::Empirical { force: 3, length: -3 },
];

/// A decimal as a person types it: up to twelve digits, between a ten thousandth and a thousand million, either sign.
fn typed(random: &mut Random) -> String {
    let digits = 1 + random.below(DIGITS_MAX);
    let decimals = random.below((digits + 4).min(DIGITS_MAX) + 1);
    let mut number: String = (0..digits).map(|_| char::from(b'0' + random.below(10) as u8)).collect();
    while number.len() <= decimals {
        number.insert(0, '0');
    }
    number.insert(number.len() - decimals, '.');
    let whole = number.trim_start_matches('0').trim_end_matches('0').trim_end_matches('.');
    let mut text = String::new();
    if whole.is_empty() {
        return "0".into();
    }
    if random.percent(20) {
        text.push('-');
    }
    if whole.starts_with('.') {
        text.push('0');
    }
    text.push_str(whole);
    text
}

fn other(system: System) -> System {
    if system == System::Si { System::Us } else { System::Si }
}

#[test]
fn twenty_thousand_numbers_of_every_unit_come_back_as_typed() {
    for (place, kind) in KINDS.into_iter().enumerate() {
        for system in [System::Si, System::Us] {
            let mut random = Random::new(7_000 + place as u64);
            let mut wrong = String::new();
            for _ in 0..COUNT {
                let typed = typed(&mut random);
                let number = text::number(&typed).expect("the number is typed in the way of JSON");
                let value = field_value(number, kind, system);
                // The file keeps the value, so a switch of units only shows it otherwise; the file is written and read.
                let elsewhere = field_text(value, kind, other(system));
                let value = text::number(&format!("{value:?}")).expect("the file's number can be read");
                let back = field_text(value, kind, system);
                if back != typed {
                    let _ = writeln!(wrong, "{typed} came back as {back}, by way of {elsewhere}");
                }
            }
            assert!(
                wrong.is_empty(),
                "{kind:?} in {system:?}, {} wrong:\n{}",
                wrong.lines().count(),
                wrong.lines().take(5).collect::<Vec<_>>().join("\n")
            );
        }
    }
}

#[test]
fn what_a_field_shows_elsewhere_is_near_and_can_be_typed() {
    let mut random = Random::new(8_000);
    for kind in KINDS {
        for _ in 0..2_000 {
            let number = text::number(&typed(&mut random)).expect("the number is typed in the way of JSON");
            let value = field_value(number, kind, System::Si);
            let shown = field_text(value, kind, System::Us);
            let again = text::number(&shown).unwrap_or_else(|| panic!("{shown} cannot be typed"));
            let back = field_value(again, kind, System::Us);
            assert!((back - value).abs() <= 0.5000001e-5 * value.abs(), "{kind:?}: {number} is shown as {shown}");
        }
    }
}

#[test]
fn a_number_that_is_not_one_is_shown_as_nothing() {
    for number in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(field_text(number, Kind::Length, System::Us), "");
    }
}

/// The library's own reading is the other way to the same number; it is known to be right to the last bit.
fn library(typed: &str) -> u64 {
    (typed.parse::<f64>().expect("a number") + 0.0).to_bits()
}

fn ours(typed: &str) -> u64 {
    text::number(typed).unwrap_or_else(|| panic!("{typed} is a number")).to_bits()
}

#[test]
fn the_readers_numbers_have_the_bits_of_the_standard_library() {
    let mut random = Random::new(9_000);
    for _ in 0..100_000 {
        let number = f64::from_bits(random.bits());
        if number.is_finite() {
            let typed = format!("{number:e}");
            assert_eq!(ours(&typed), (number + 0.0).to_bits(), "{typed}");
        }
    }
    for _ in 0..30_000 {
        let digits: String = (0..1 + random.below(40)).map(|_| char::from(b'0' + random.below(10) as u8)).collect();
        let decimals: String = (0..random.below(40)).map(|_| char::from(b'0' + random.below(10) as u8)).collect();
        let exponent = random.below(720) as i32 - 360;
        let point = if decimals.is_empty() { "" } else { "." };
        let whole = digits.trim_start_matches('0');
        let typed = format!("-{}{point}{decimals}e{exponent}", if whole.is_empty() { "0" } else { whole });
        assert_eq!(ours(&typed), library(&typed), "{typed}");
    }
}

#[test]
fn numbers_between_two_floats_go_to_the_even_one() {
    let mut random = Random::new(9_100);
    let check = |number: f64| {
        // Both neighbours and their exact middle, written out with all digits: one float has at most 767 of them.
        let next = f64::from_bits(number.to_bits() + 1);
        let middle = exact_middle(number, next);
        for typed in [middle.clone(), format!("{middle}1"), format!("{middle}{}1", "0".repeat(60))] {
            assert_eq!(ours(&typed), library(&typed), "{typed}");
        }
        let even = if number.to_bits().is_multiple_of(2) { number } else { next };
        assert_eq!(ours(&middle), even.to_bits(), "{middle}");
    };
    for number in
        [0.0, f64::from_bits(1), f64::MIN_POSITIVE, f64::from_bits(0x000f_ffff_ffff_ffff), 1.0, 9_007_199_254_740_992.0]
    {
        check(number);
    }
    for _ in 0..2_000 {
        check(f64::from_bits(random.bits() >> 2));
    }
    for typed in [
        "179769313486231580793728971405303415079934132710037826936173778980444968292764750946649017977587207096330286416692887910946555547851940402630657488671505820681908902000708383676273854845817711531764475730270069855571366959622842914819860834936475292719074168444365510704342711559699508093042880",
        "179769313486231580793728971405303415079934132710037826936173778980444968292764750946649017977587207096330286416692887910946555547851940402630657488671505820681908902000708383676273854845817711531764475730270069855571366959622842914819860834936475292719074168444365510704342711559699508093042879",
        "2.2250738585072011e-308",
        "2.4703282292062327208e-324",
        "2.4703282292062328e-324",
        "8.5e22",
        "1e23",
        "0.000000000000000000000000000000000000000000000000000000000000000000000000000000001e99",
        "123456789012345678901234567890e-15",
        "1e2147483648",
        "1e-99999999999999999999",
        "0e99999999999999999999",
    ] {
        assert_eq!(ours(typed), library(typed), "{typed}");
    }
    let long = format!("{}.{}e-1000", "9".repeat(1_000), "9".repeat(1_000));
    assert_eq!(ours(&long), library(&long));
    assert_eq!(ours(&"1".repeat(400)), f64::INFINITY.to_bits());
}

/// The middle of two neighbouring floats below a thousand million, written out: their mean is exact with one bit more.
fn exact_middle(below: f64, above: f64) -> String {
    // As whole numbers of the smallest float, halved: digit by digit, a thousand decimals and more.
    let mut text = String::new();
    let (mantissa, exponent) = parts(below);
    let (other, other_exponent) = parts(above);
    let shift = (other_exponent - exponent) as u32;
    // Their sum is that many units of 2^(exponent - 1).
    let mut digits: Vec<u8> = (mantissa + (other << shift)).to_string().bytes().map(|byte| byte - b'0').collect();
    let power = exponent - 1;
    for _ in 0..power.max(0) {
        double(&mut digits);
    }
    // Dividing by two is multiplying by five and moving the point.
    for _ in 0..(-power).max(0) {
        multiply(&mut digits, 5);
    }
    let decimals = (-power).max(0) as usize;
    while digits.len() <= decimals {
        digits.insert(0, 0);
    }
    let point = digits.len() - decimals;
    for (place, digit) in digits.iter().enumerate() {
        if place == point {
            text.push('.');
        }
        text.push(char::from(b'0' + digit));
    }
    if decimals == 0 {
        text.push_str(".0");
    }
    text
}

/// A float as a whole number times a power of two.
fn parts(number: f64) -> (u64, i32) {
    let bits = number.to_bits();
    match (bits >> 52) as i32 {
        0 => (bits, -1074),
        biased => (bits & ((1 << 52) - 1) | 1 << 52, biased - 1075),
    }
}

fn double(digits: &mut Vec<u8>) {
    multiply(digits, 2);
}

fn multiply(digits: &mut Vec<u8>, by: u8) {
    let mut carry = 0;
    for digit in digits.iter_mut().rev() {
        let product = *digit * by + carry;
        *digit = product % 10;
        carry = product / 10;
    }
    if carry > 0 {
        digits.insert(0, carry);
    }
}

#[test]
fn only_numbers_in_the_way_of_json_are_numbers() {
    for (typed, expected) in
        [("1e999", f64::INFINITY), ("-1e999", f64::NEG_INFINITY), ("-0", 0.0), ("-0.0e5", 0.0), ("0e0", 0.0)]
    {
        assert_eq!(text::number(typed).map(f64::to_bits), Some(expected.to_bits()), "{typed}");
    }
    for typed in ["", "-", "+1", "01", "-01", "1.", ".5", "1e", "1e+", "0x10", "1_000", "NaN", "1,5", " 1", "1 ", "١"]
    {
        assert_eq!(text::number(typed), None, "{typed:?}");
    }
}
