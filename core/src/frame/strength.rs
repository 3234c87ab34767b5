//! Strength of braces in compression.

use core::f64::consts::PI;

use crate::calc::number::{pow, sqrt};

/// A member that may buckle.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Buckling {
    /// Effective length over radius of gyration.
    pub slenderness: f64,
    /// Yield strength.
    pub yield_mpa: f64,
    /// Modulus of elasticity.
    pub modulus_mpa: f64,
}

/// A buckling curve of EN 1993-1-1 Table 6.1.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Curve {
    /// a0
    A0,
    /// a
    A,
    /// b
    B,
    /// c
    C,
    /// d
    D,
}

impl Curve {
    /// The curve of a place in the list of the field.
    pub fn of(place: usize) -> Curve {
        [Curve::A0, Curve::A, Curve::B, Curve::C, Curve::D][place.min(4)]
    }

    /// Its imperfection factor.
    pub fn imperfection(self) -> f64 {
        match self {
            Curve::A0 => 0.13,
            Curve::A => 0.21,
            Curve::B => 0.34,
            Curve::C => 0.49,
            Curve::D => 0.76,
        }
    }
}

/// The critical stress of AISC 360 section E3, in MPa.
///
/// From memory. Scope: members without slender elements.
///
/// ```
/// use steadfoot::frame::{Buckling, aisc_critical_mpa};
/// let member = Buckling { slenderness: 100.0, yield_mpa: 345.0, modulus_mpa: 200_000.0 };
/// assert!((0.9 * aisc_critical_mpa(&member) - 149.4).abs() < 0.05);
/// ```
pub fn aisc_critical_mpa(member: &Buckling) -> f64 {
    let elastic = PI * PI * member.modulus_mpa / (member.slenderness * member.slenderness);
    if member.yield_mpa <= 2.25 * elastic {
        pow(0.658, member.yield_mpa / elastic) * member.yield_mpa
    } else {
        0.877 * elastic
    }
}

/// The reduction for buckling of EN 1993-1-1 6.3.1.2 at a relative slenderness.
///
/// From memory.
///
/// ```
/// use steadfoot::frame::{Curve, en_reduction};
/// assert!((en_reduction(1.0, Curve::C) - 0.5399).abs() < 5e-5);
/// ```
pub fn en_reduction(relative_slenderness: f64, curve: Curve) -> f64 {
    let lambda = relative_slenderness;
    let phi = 0.5 * (1.0 + curve.imperfection() * (lambda - 0.2) + lambda * lambda);
    (1.0 / (phi + sqrt(phi * phi - lambda * lambda))).min(1.0)
}
