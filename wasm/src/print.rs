//! Numbers printed by the engine, with the wishes of the page as words.

use steadfoot::calc::show::{self, Reading, Rounding, Style};
use steadfoot::calc::{Kind, System};

use crate::system_of;

/// How the page wants a number.
pub struct Wish<'a> {
    /// "si" or "us": the system in whose base units the value is.
    pub from: &'a str,
    /// "si" or "us": the system that the reader wants.
    pub to: &'a str,
    /// "base" or "plain".
    pub reading: &'a str,
    /// "up", "down" or "nearest".
    pub rounding: &'a str,
    /// Significant digits; 0 takes the kind's own.
    pub digits: u8,
}

/// The number with its unit.
pub fn show(value: f64, kind: u16, wish: Wish) -> String {
    let style = Style {
        from: system_of(wish.from),
        to: system_of(wish.to),
        reading: reading_of(wish.reading),
        rounding: match wish.rounding {
            "up" => Rounding::Up,
            "down" => Rounding::Down,
            _ => Rounding::Nearest,
        },
        digits: wish.digits,
    };
    show::show(value, kind_of(kind), style)
}

/// The name of the unit; read as "field", the one that a field is typed in.
pub fn unit_text(kind: u16, system: System, reading: &str) -> String {
    let kind = kind_of(kind);
    let reading = if reading == "field" { show::field_reading(kind) } else { reading_of(reading) };
    show::unit_text(kind, system, reading)
}

/// The text of an input field.
pub fn field_text(value: f64, kind: u16, system: System) -> String {
    show::field_text(value, kind_of(kind), system)
}

/// The SI value of what was typed, NaN where it is no number.
pub fn field_value(text: &str, kind: u16, system: System) -> f64 {
    match steadfoot::input::text::number(text.trim()) {
        Some(number) => show::field_value(number, kind_of(kind), system),
        None => f64::NAN,
    }
}

fn kind_of(code: u16) -> Kind {
    Kind::from_code(code).unwrap_or(Kind::Number)
}

fn reading_of(reading: &str) -> Reading {
    if reading == "base" { Reading::Base } else { Reading::Plain }
}
