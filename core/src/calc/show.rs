//! The one way in which a number becomes text.

use alloc::string::String;

use super::decimal::{decimals_for, push_decimal, shortest};
use super::kind::Kind;
use super::unit::{System, convert};

/// How the last printed digit is made.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Rounding {
    /// To the nearest, halves away from zero.
    Nearest,
    /// Away from zero: demands and utilisations.
    Up,
    /// Towards zero: capacities.
    Down,
}

/// Which units a number is read in.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Reading {
    /// Base units of the system, as formulas take them: N, mm, MPa, or lbf, in, psi.
    Base,
    /// Units that people read: kN, m, degrees.
    Plain,
}

/// How to show a number.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Style {
    /// The system in whose base units the value is.
    pub from: System,
    /// The system that the reader wants.
    pub to: System,
    /// Base units or plain ones.
    pub reading: Reading,
    /// How the last digit is rounded.
    pub rounding: Rounding,
    /// Significant digits; 0 takes the kind's own.
    pub digits: u8,
}

impl Style {
    /// Values in SI base units, shown in plain units of the given system.
    pub fn plain(to: System, rounding: Rounding) -> Style {
        Style { from: System::Si, to, reading: Reading::Plain, rounding, digits: 0 }
    }
}

/// The number with its unit.
///
/// Digits in front of the decimal point are never dropped. A value that is not finite is shown as a dash, for it is no
/// number to read. A utilisation above 1 never prints as 1.00.
///
/// ```
/// use steadfoot::calc::{Kind, System};
/// use steadfoot::calc::show::{Rounding, Style, show};
/// let up = Style::plain(System::Si, Rounding::Up);
/// assert_eq!(show(12_341.0, Kind::Force, up), "12.4\u{a0}kN");
/// assert_eq!(show(1.000_000_1, Kind::Utilisation, up), "1.01");
/// assert_eq!(show(0.0145, Kind::AreaLoad, up), "14.5\u{a0}kPa");
/// assert_eq!(show(0.0145, Kind::AreaLoad, Style::plain(System::Us, Rounding::Up)), "303\u{a0}psf");
/// assert_eq!(show(f64::NAN, Kind::Force, up), "–");
/// ```
pub fn show(value: f64, kind: Kind, style: Style) -> String {
    let mut text = number_text(value, kind, style);
    let unit = unit_text(kind, style.to, style.reading);
    if !unit.is_empty() && value.is_finite() {
        // A degree sign stands at its number.
        if unit != "°" {
            text.push('\u{a0}');
        }
        text.push_str(&unit);
    }
    text
}

/// The number without its unit.
pub fn number_text(value: f64, kind: Kind, style: Style) -> String {
    let mut text = String::new();
    if !value.is_finite() {
        text.push('–');
        return text;
    }
    let number = convert(value, kind, style.from, style.to) * per_base(kind, style.to, style.reading);
    let magnitude = number.abs();
    let (digits, decimals, trimmed) = precision(kind, style);
    let decimals = match decimals {
        Some(fixed) => fixed,
        None => decimals_for(magnitude, digits),
    };
    if number < 0.0 {
        text.push('−');
    }
    push_decimal(&mut text, magnitude, decimals, style.rounding, kind == Kind::Utilisation);
    if trimmed {
        trim_zeros(&mut text);
    }
    if text == "−0" {
        text.remove(0);
    }
    text
}

/// The name of the unit; empty for numbers without one.
pub fn unit_text(kind: Kind, system: System, reading: Reading) -> String {
    let plain = reading == Reading::Plain;
    let name = match (kind, system) {
        (Kind::Number | Kind::Utilisation, _) => "",
        (Kind::Acceleration, _) => "g",
        (Kind::Length, System::Si) => "mm",
        (Kind::Length, System::Us) => "in",
        (Kind::Height, System::Si) => "m",
        (Kind::Height, System::Us) => "ft",
        (Kind::Distance, System::Si) => "km",
        (Kind::Distance, System::Us) => "mi",
        (Kind::Area, System::Si) => "mm²",
        (Kind::Area, System::Us) => "in²",
        (Kind::SecondMoment, System::Si) => "mm⁴",
        (Kind::SecondMoment, System::Us) => "in⁴",
        (Kind::Force, System::Si) => {
            if plain {
                "kN"
            } else {
                "N"
            }
        }
        (Kind::Force, System::Us) => "lbf",
        (Kind::Moment, System::Si) => {
            if plain {
                "kN·m"
            } else {
                "N·mm"
            }
        }
        (Kind::Moment, System::Us) => {
            if plain {
                "lbf·ft"
            } else {
                "lbf·in"
            }
        }
        (Kind::Stress | Kind::Pressure, System::Si) => "MPa",
        (Kind::Stress | Kind::Pressure, System::Us) => "psi",
        (Kind::AreaLoad, System::Si) => {
            if plain {
                "kPa"
            } else {
                "MPa"
            }
        }
        (Kind::AreaLoad, System::Us) => {
            if plain {
                "psf"
            } else {
                "psi"
            }
        }
        (Kind::LineLoad, System::Si) => {
            if plain {
                "kN/m"
            } else {
                "N/mm"
            }
        }
        (Kind::LineLoad, System::Us) => {
            if plain {
                "lbf/ft"
            } else {
                "lbf/in"
            }
        }
        (Kind::Mass, System::Si) => "kg",
        (Kind::Mass, System::Us) => "lb",
        (Kind::Inertia, System::Si) => {
            if plain {
                "kg·m²"
            } else {
                "kg·mm²"
            }
        }
        (Kind::Inertia, System::Us) => {
            if plain {
                "lb·ft²"
            } else {
                "lb·in²"
            }
        }
        (Kind::Gravity, System::Si) => "N/kg",
        (Kind::Gravity, System::Us) => "lbf/lb",
        (Kind::Stiffness, System::Si) => {
            if plain {
                "kN/mm"
            } else {
                "N/mm"
            }
        }
        (Kind::Stiffness, System::Us) => "lbf/in",
        (Kind::Subgrade, System::Si) => "N/mm³",
        (Kind::Subgrade, System::Us) => "lbf/in³",
        (Kind::Angle, _) => {
            if plain {
                "°"
            } else {
                "rad"
            }
        }
        (Kind::Time, _) => "s",
        (Kind::Frequency, _) => "Hz",
        (Kind::AngularVelocity, _) => "rad/s",
        (Kind::Velocity, System::Si) => {
            if plain {
                "m/s"
            } else {
                "mm/s"
            }
        }
        (Kind::Velocity, System::Us) => "in/s",
        (Kind::FreeFall, System::Si) => {
            if plain {
                "m/s²"
            } else {
                "mm/s²"
            }
        }
        (Kind::FreeFall, System::Us) => "in/s²",
        (Kind::Empirical { force, length }, system) => {
            let (force_unit, length_unit) = if system == System::Si { ("N", "mm") } else { ("lbf", "in") };
            let mut text = String::new();
            push_power(&mut text, force_unit, force);
            push_power(&mut text, length_unit, length);
            return text;
        }
    };
    String::from(name)
}

/// The text of an input field: the shortest decimal that gives the value back, or six digits where none of twelve does.
///
/// The value is in SI; the text is in the unit of the field in the given system. What was typed in either system comes
/// back as typed from here.
///
/// ```
/// use steadfoot::calc::{Kind, System};
/// use steadfoot::calc::show::{field_text, field_value};
/// let h_mm = field_value(1.5, Kind::Length, System::Us);
/// assert_eq!(field_text(h_mm, Kind::Length, System::Us), "1.5");
/// assert_eq!(field_text(1000.0, Kind::Length, System::Us), "39.3701");
/// ```
pub fn field_text(value: f64, kind: Kind, system: System) -> String {
    let mut text = String::new();
    let number = System::from_si(system, value, kind) * field_per_base(kind, system);
    if !number.is_finite() {
        return text;
    }
    if number < 0.0 {
        text.push('-');
    }
    shortest(&mut text, number.abs());
    text
}

/// The SI value of a number in the unit of its field.
pub fn field_value(number: f64, kind: Kind, system: System) -> f64 {
    let per = field_per_base(kind, system);
    // A thousandth is no binary number: multiplied by a thousand, most of what people type becomes what they would write.
    system.to_si(if per < 1.0 { number * (1.0 / per) } else { number / per }, kind)
}

/// In which units a field of the kind is typed: forces in kN, as they are told and as approvals print them, angles in
/// degrees, loads of floors in kPa or psf, kN/m or lbf/ft, all else in base units.
pub fn field_reading(kind: Kind) -> Reading {
    if matches!(kind, Kind::Force | Kind::Angle | Kind::AreaLoad | Kind::LineLoad) {
        Reading::Plain
    } else {
        Reading::Base
    }
}

fn field_per_base(kind: Kind, system: System) -> f64 {
    per_base(kind, system, field_reading(kind))
}

const DEGREES_PER_RADIAN: f64 = 180.0 / core::f64::consts::PI;

/// Plain units per base unit.
/// How many of the plain units of a system make one base unit of SI.
pub fn plain_per_si(kind: Kind, system: System) -> f64 {
    convert(1.0, kind, System::Si, system) * per_base(kind, system, Reading::Plain)
}

fn per_base(kind: Kind, system: System, reading: Reading) -> f64 {
    if reading == Reading::Base {
        return 1.0;
    }
    match (kind, system) {
        (Kind::Force | Kind::Stiffness | Kind::Velocity | Kind::FreeFall, System::Si) => 1e-3,
        (Kind::Moment | Kind::Inertia, System::Si) => 1e-6,
        (Kind::AreaLoad, System::Si) => 1e3,
        (Kind::AreaLoad, System::Us) => 144.0,
        (Kind::LineLoad, System::Us) => 12.0,
        (Kind::Moment, System::Us) => 1.0 / 12.0,
        (Kind::Inertia, System::Us) => 1.0 / 144.0,
        (Kind::Angle, _) => DEGREES_PER_RADIAN,
        _ => 1.0,
    }
}

/// Significant digits, fixed decimals if any, and whether zeros at the end are dropped.
fn precision(kind: Kind, style: Style) -> (u8, Option<u8>, bool) {
    if style.digits > 0 {
        return (style.digits, None, style.reading == Reading::Base);
    }
    if kind == Kind::Utilisation {
        return (0, Some(2), false);
    }
    if style.reading == Reading::Base {
        return (6, None, true);
    }
    match kind {
        Kind::Acceleration => (0, Some(2), false),
        Kind::Length => (0, Some(if style.to == System::Si { 0 } else { 1 }), false),
        Kind::Mass => (4, None, true),
        Kind::Angle => (0, Some(0), false),
        Kind::Number => (4, None, true),
        _ => (3, None, false),
    }
}

fn trim_zeros(text: &mut String) {
    if !text.contains('.') || text.chars().any(|letter| letter == '×') {
        return;
    }
    while text.ends_with('0') {
        text.pop();
    }
    if text.ends_with('.') {
        text.pop();
    }
}

/// Writes `unit^(power/6)` with the fraction in lowest terms.
fn push_power(text: &mut String, unit: &str, sixths: i8) {
    if sixths == 0 {
        return;
    }
    if !text.is_empty() {
        text.push('·');
    }
    text.push_str(unit);
    let divisor = [6, 3, 2, 1].into_iter().find(|d| sixths % d == 0 && 6 % d == 0).unwrap_or(1);
    let (top, bottom) = (sixths / divisor, 6 / divisor);
    if top == 1 && bottom == 1 {
        return;
    }
    text.push('^');
    if bottom > 1 || top < 0 {
        text.push('(');
    }
    push_decimal_sign(text, top);
    if bottom > 1 {
        text.push('/');
        push_decimal_sign(text, bottom);
    }
    if bottom > 1 || top < 0 {
        text.push(')');
    }
}

fn push_decimal_sign(text: &mut String, number: i8) {
    if number < 0 {
        text.push('−');
    }
    push_decimal(text, number.unsigned_abs() as f64, 0, Rounding::Nearest, false);
}
