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
const KINDS: [Kind; 20] = [
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
    Kind::Mass,
    Kind::Inertia,
    Kind::Gravity,
    Kind::Stiffness,
    Kind::Subgrade,
    Kind::Angle,
    Kind::Time,
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
            assert!(wrong.is_empty(), "{kind:?} in {system:?}, {} wrong:\n{}", wrong.lines().count(), wrong.lines().take(5).collect::<Vec<_>>().join("\n"));
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

#[test]
fn the_readers_numbers_have_the_bits_of_the_standard_library() {
    let mut random = Random::new(9_000);
    for _ in 0..200_000 {
        let number = f64::from_bits(random.bits());
        if number.is_finite() {
            assert_eq!(text::number(&format!("{number:e}")).map(f64::to_bits), Some((number + 0.0).to_bits()));
        }
    }
    for (typed, expected) in [("1e999", Some(f64::INFINITY)), ("-1e999", Some(f64::NEG_INFINITY)), ("-0", Some(0.0))] {
        assert_eq!(text::number(typed), expected);
    }
    for typed in ["", "-", "+1", "01", "1.", ".5", "1e", "1e+", "0x10", "1_000", "NaN", "1,5", " 1", "1 ", "١"] {
        assert_eq!(text::number(typed), None, "{typed:?}");
    }
}
