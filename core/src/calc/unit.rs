//! Systems of units and the conversion between them.

use super::kind::Kind;
use super::number::pow;

/// The system in which a section of the sheet is computed, or in which a reader wants to see it.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum System {
    /// N, mm, MPa, kg, s.
    Si,
    /// lbf, in, psi, lb, s.
    Us,
}

/// One pound-force in newtons, exact by the definitions of the pound and of g.
pub const LBF_N: f64 = 4.4482216152605;
/// One inch in millimetres, exact by definition.
pub const INCH_MM: f64 = 25.4;
/// One pound in kilograms, exact by definition.
pub const LB_KG: f64 = 0.45359237;
/// One foot in metres, exact by definition.
pub const FOOT_M: f64 = 0.3048;
/// One mile in kilometres, exact by definition.
pub const MILE_KM: f64 = 1.609344;
/// One psi in MPa.
pub const PSI_MPA: f64 = LBF_N / (INCH_MM * INCH_MM);
/// Standard acceleration of free fall, m/s2, exact by definition; as force per mass, N/kg.
pub const G_N_PER_KG: f64 = 9.80665;

/// How many SI base units one US base unit of the kind is worth.
///
/// ```
/// use steadfoot::calc::{Kind, unit::us_unit_in_si};
/// assert!((us_unit_in_si(Kind::Stress) - 0.00689475729).abs() < 1e-10);
/// ```
pub fn us_unit_in_si(kind: Kind) -> f64 {
    match kind {
        Kind::Number | Kind::Utilisation | Kind::Acceleration | Kind::Angle | Kind::Time | Kind::Frequency => 1.0,
        Kind::AngularVelocity => 1.0,
        Kind::Length | Kind::Velocity | Kind::FreeFall => INCH_MM,
        Kind::Height => FOOT_M,
        Kind::Distance => MILE_KM,
        Kind::Area => INCH_MM * INCH_MM,
        Kind::SecondMoment => INCH_MM * INCH_MM * INCH_MM * INCH_MM,
        Kind::Force => LBF_N,
        Kind::Moment => LBF_N * INCH_MM,
        Kind::Stress | Kind::Pressure | Kind::AreaLoad => PSI_MPA,
        Kind::Mass => LB_KG,
        Kind::Inertia => LB_KG * INCH_MM * INCH_MM,
        Kind::Gravity => LBF_N / LB_KG,
        Kind::Stiffness | Kind::LineLoad => LBF_N / INCH_MM,
        Kind::Subgrade => LBF_N / (INCH_MM * INCH_MM * INCH_MM),
        Kind::Empirical { force, length } => pow(LBF_N, force as f64 / 6.0) * pow(INCH_MM, length as f64 / 6.0),
    }
}

/// A value in base units of one system, in base units of the other.
pub fn convert(value: f64, kind: Kind, from: System, to: System) -> f64 {
    match (from, to) {
        (System::Si, System::Us) => value / us_unit_in_si(kind),
        (System::Us, System::Si) => value * us_unit_in_si(kind),
        _ => value,
    }
}

impl System {
    /// A value in SI base units, in base units of this system.
    pub fn from_si(self, value: f64, kind: Kind) -> f64 {
        convert(value, kind, System::Si, self)
    }

    /// A value in base units of this system, in SI base units.
    pub fn to_si(self, value: f64, kind: Kind) -> f64 {
        convert(value, kind, self, System::Si)
    }
}
