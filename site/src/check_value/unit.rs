//! Quantities with the units that sources print.

use serde_json::Value as Json;
use steadfoot::calc::unit::{FOOT_M, G_N_PER_KG, INCH_MM, LB_KG, LBF_N, MILE_KM, PSI_MPA};
use steadfoot::calc::{Dimension, Kind};

/// A quantity of an input in SI base units of its kind: a number is already, a text has a number and a unit.
pub fn quantity(json: &Json, kind: Kind) -> Result<f64, String> {
    match json {
        Json::Number(number) => Ok(number.as_f64().unwrap()),
        Json::String(text) => {
            let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
            let number: f64 = number.parse().map_err(|_| format!("{text} is no quantity"))?;
            Ok(number * base_per_unit(unit, kind)?)
        }
        other => Err(format!("{other} is no quantity")),
    }
}

/// How many SI base units of the kind one printed unit is worth.
pub(super) fn base_per_unit(unit: &str, kind: Kind) -> Result<f64, String> {
    let (like, in_base) = UNITS
        .iter()
        .find(|(name, ..)| *name == unit)
        .map(|(_, kind, in_base)| (*kind, *in_base))
        .ok_or_else(|| format!("no unit \"{unit}\""))?;
    if like.dimension() != kind.dimension() && !(unit.is_empty() && kind.dimension() == Dimension::default()) {
        return Err(format!("\"{unit}\" is no unit of {kind:?}"));
    }
    // Lengths stand above in mm; heights and distances have larger base units.
    let base_mm = match kind {
        Kind::Height => 1e3,
        Kind::Distance => 1e6,
        _ => 1.0,
    };
    Ok(in_base / base_mm)
}

const FOOT_MM: f64 = FOOT_M * 1e3;
const KIP_N: f64 = LBF_N * 1e3;

const UNITS: &[(&str, Kind, f64)] = &[
    ("", Kind::Number, 1.0),
    ("g", Kind::Acceleration, 1.0),
    ("%", Kind::Number, 0.01),
    ("mm", Kind::Length, 1.0),
    ("cm", Kind::Length, 10.0),
    ("m", Kind::Length, 1e3),
    ("km", Kind::Length, 1e6),
    ("in", Kind::Length, INCH_MM),
    ("ft", Kind::Length, FOOT_MM),
    ("mi", Kind::Length, MILE_KM * 1e6),
    ("mm2", Kind::Area, 1.0),
    ("m2", Kind::Area, 1e6),
    ("in2", Kind::Area, INCH_MM * INCH_MM),
    ("ft2", Kind::Area, FOOT_MM * FOOT_MM),
    ("in3", Kind::Empirical { force: 0, length: 18 }, INCH_MM * INCH_MM * INCH_MM),
    ("mm4", Kind::SecondMoment, 1.0),
    ("in4", Kind::SecondMoment, INCH_MM * INCH_MM * INCH_MM * INCH_MM),
    ("N", Kind::Force, 1.0),
    ("kN", Kind::Force, 1e3),
    ("lbf", Kind::Force, LBF_N),
    ("kip", Kind::Force, KIP_N),
    ("N-mm", Kind::Moment, 1.0),
    ("kN-m", Kind::Moment, 1e6),
    ("lbf-in", Kind::Moment, LBF_N * INCH_MM),
    ("lbf-ft", Kind::Moment, LBF_N * FOOT_MM),
    ("kip-in", Kind::Moment, KIP_N * INCH_MM),
    ("kip-ft", Kind::Moment, KIP_N * FOOT_MM),
    ("MPa", Kind::Stress, 1.0),
    ("kPa", Kind::Stress, 1e-3),
    ("GPa", Kind::Stress, 1e3),
    ("psi", Kind::Stress, PSI_MPA),
    ("ksi", Kind::Stress, PSI_MPA * 1e3),
    ("psf", Kind::Stress, PSI_MPA / 144.0),
    ("ksf", Kind::Stress, PSI_MPA * 1e3 / 144.0),
    ("kgf", Kind::Force, G_N_PER_KG),
    ("kgf-mm", Kind::Moment, G_N_PER_KG),
    ("kgf/cm2", Kind::Stress, G_N_PER_KG / 100.0),
    ("kgf/mm2", Kind::Stress, G_N_PER_KG),
    ("kgf/cm3", Kind::Subgrade, G_N_PER_KG / 1e3),
    ("N/mm2", Kind::Stress, 1.0),
    ("lbf/ft", Kind::Stiffness, LBF_N / FOOT_MM),
    ("kN/m", Kind::Stiffness, 1.0),
    ("MN/m", Kind::Stiffness, 1e3),
    ("MPa/m", Kind::Subgrade, 1e-3),
    ("kg", Kind::Mass, 1.0),
    ("t", Kind::Mass, 1e3),
    ("lb", Kind::Mass, LB_KG),
    ("kg-m2", Kind::Inertia, 1e6),
    ("N/mm", Kind::Stiffness, 1.0),
    ("kN/mm", Kind::Stiffness, 1e3),
    ("lbf/in", Kind::Stiffness, LBF_N / INCH_MM),
    ("kip/in", Kind::Stiffness, KIP_N / INCH_MM),
    ("N/mm3", Kind::Subgrade, 1.0),
    ("lbf/in3", Kind::Subgrade, LBF_N / (INCH_MM * INCH_MM * INCH_MM)),
    ("deg", Kind::Angle, core::f64::consts::PI / 180.0),
    ("rad", Kind::Angle, 1.0),
    ("s", Kind::Time, 1.0),
    ("Hz", Kind::Frequency, 1.0),
    ("rad/s", Kind::AngularVelocity, 1.0),
    ("mm/s", Kind::Velocity, 1.0),
    ("m/s", Kind::Velocity, 1e3),
    ("cm/s", Kind::Velocity, 10.0),
    ("in/s", Kind::Velocity, INCH_MM),
];
