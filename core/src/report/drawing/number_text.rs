//! The numbers of the drawings as texts.

use alloc::string::String;

use crate::calc::number::{floor, log10, pow, round};
use crate::calc::show::{Rounding, Style, number_text, show};
use crate::calc::{Kind, System};

/// A force that is demanded, rounded up.
pub fn force_text(force_n: f64, system: System) -> String {
    // Nothing is nothing: a rounding error must not be printed as the smallest force.
    let force_n = if force_n.abs() < 1e-6 { 0.0 } else { force_n };
    show(force_n, Kind::Force, Style::plain(system, Rounding::Up))
}

/// A force beside a larger one, rounded up to what the larger one is printed to, and one digit finer.
///
/// What is far below the largest force of a drawing would otherwise fill its place with idle zeros.
pub fn small_force_text(force_n: f64, largest_n: f64, system: System) -> String {
    let (force, largest) = (system.from_si(force_n, Kind::Force), system.from_si(largest_n, Kind::Force));
    let (size, size_most) = (floor(log10(force)), floor(log10(largest)));
    let digits = 4.0 + size - size_most;
    if !digits.is_finite() || digits >= 3.0 {
        return force_text(force_n, system);
    }
    let finest = pow(10.0, size_most - 3.0);
    let shown_n = if digits < 1.0 { system.to_si(finest, Kind::Force) } else { force_n };
    let style = Style { digits: digits.max(1.0) as u8, ..Style::plain(system, Rounding::Up) };
    show(shown_n, Kind::Force, style)
}

/// A length as it was given; below 10 mm with three digits.
pub fn length_text(length_mm: f64, system: System) -> String {
    let mut style = Style::plain(system, Rounding::Nearest);
    if length_mm.abs() < 10.0 {
        style.digits = 3;
    }
    show(length_mm, Kind::Length, style)
}

/// A mass with three digits and no idle zeros, for drawings have narrow places.
pub fn mass_text(mass_kg: f64, system: System) -> String {
    let number = system.from_si(mass_kg, Kind::Mass);
    let unit = pow(10.0, floor(log10(number.abs().max(1e-9))) - 2.0).min(1.0);
    let rounded_kg = system.to_si(round(number / unit) * unit, Kind::Mass);
    show(rounded_kg, Kind::Mass, Style::plain(system, Rounding::Nearest))
}

/// An acceleration that is demanded, rounded up.
pub fn acceleration_text(acceleration_g: f64) -> String {
    show(acceleration_g, Kind::Acceleration, Style::plain(System::Si, Rounding::Up))
}

/// A pressure that is demanded, rounded up.
pub fn pressure_text(pressure_mpa: f64, system: System) -> String {
    show(pressure_mpa, Kind::Pressure, Style::plain(system, Rounding::Up))
}

/// A utilisation, rounded up.
pub fn utilisation_text(utilisation: f64) -> String {
    show(utilisation, Kind::Utilisation, Style::plain(System::Si, Rounding::Up))
}

/// A count.
pub fn count_text(count: usize) -> String {
    number_text(count as f64, Kind::Number, Style::plain(System::Si, Rounding::Nearest))
}

/// A direction in whole degrees from 0 to 359, the sign close to the number.
pub fn direction_text(direction_rad: f64) -> String {
    let mut text = count_text(whole_degrees(direction_rad) as usize);
    text.push('°');
    text
}

fn whole_degrees(direction_rad: f64) -> f64 {
    let turn = 2.0 * core::f64::consts::PI;
    let within = direction_rad - turn * floor(direction_rad / turn);
    let degrees = round(within * 360.0 / turn);
    if degrees < 360.0 { degrees } else { 0.0 }
}
