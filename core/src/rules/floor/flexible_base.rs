//! A flexible base or rail on springs: the beam on an elastic foundation, by superposition of its loads.

use super::documents::WINKLER_BEAM;
use crate::calc::clause::INPUT;
use crate::calc::{Sheet, number, steps};

steps! { 157 "flexible base";
    E "E" Stress (INPUT "" Derived) "Modulus of elasticity of the beam": Given;
    I "I" SecondMoment (INPUT "" Derived) "Second moment of area of the beam": Given;
    K "k" Stress (INPUT "" Derived) "Stiffness of the ground per length of the beam; springs are smeared": Given;
    C "c" Length (INPUT "" Derived) "From the neutral axis to the extreme fibre": Given;
    BETA "beta" Empirical { force: 0, length: -6 } (WINKLER_BEAM "" Published) "Stiffness of the ground against the beam" = "(k / (4 * E * I))^(1 / 4)";
    P_I "P_i" Force (INPUT "" Derived) "Loads": Given;
    X_I "x_i" Length (INPUT "" Derived) "Their distances from where it is asked": Given;
    A_I "A_i" Number (WINKLER_BEAM "" Published) "Share of the deflection, e^(-beta x) (cos beta x + sin beta x)": Given;
    C_I "C_i" Number (WINKLER_BEAM "" Published) "Share of the moment, e^(-beta x) (cos beta x - sin beta x)": Given;
    Y "y" Length (WINKLER_BEAM "" Published) "Deflection" = "beta / (2 * k) * sum(P_i * A_i)";
    M "M" Moment (WINKLER_BEAM "" Published) "Moment" = "1 / (4 * beta) * sum(P_i * C_i)";
    SIGMA "sigma" Stress (WINKLER_BEAM "" Published) "Bending stress" = "M * c / I";
}

/// A beam on springs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlexibleBase {
    /// Modulus of elasticity.
    pub modulus_mpa: f64,
    /// Second moment of area.
    pub second_moment_mm4: f64,
    /// Stiffness of the ground per length.
    pub ground_mpa: f64,
    /// From the neutral axis to the extreme fibre.
    pub fibre_mm: f64,
}

/// Deflection, moment and stress at a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bent {
    /// Deflection.
    pub deflection_mm: f64,
    /// Moment.
    pub moment_nmm: f64,
    /// Bending stress.
    pub stress_mpa: f64,
}

impl FlexibleBase {
    /// What loads at these distances do at a place; the beam is long.
    pub fn bent(&self, loads: &[(f64, f64)], sheet: &mut Sheet) -> Bent {
        let e = sheet.step(E, self.modulus_mpa);
        let i = sheet.step(I, self.second_moment_mm4);
        let k = sheet.step(K, self.ground_mpa);
        let c = sheet.step(C, self.fibre_mm);
        let beta = sheet.step(BETA, number::pow(k / (4.0 * e * i), 0.25));
        let mut lists: [alloc::vec::Vec<f64>; 4] = Default::default();
        let (mut down, mut turn) = (0.0, 0.0);
        for &(load, away) in loads {
            let x = beta * away.abs();
            let (sin, cos, fade) = (number::sin(x), number::cos(x), number::exp(-x));
            let (a, b) = (fade * (cos + sin), fade * (cos - sin));
            for (list, value) in lists.iter_mut().zip([load, away.abs(), a, b]) {
                list.push(value);
            }
            down += load * a;
            turn += load * b;
        }
        for (row, list) in [P_I, X_I, A_I, C_I].into_iter().zip(&lists) {
            sheet.each(row, list);
        }
        let deflection_mm = sheet.step(Y, beta / (2.0 * k) * down);
        let moment_nmm = sheet.step(M, 1.0 / (4.0 * beta) * turn);
        Bent { deflection_mm, moment_nmm, stress_mpa: sheet.step(SIGMA, moment_nmm * c / i) }
    }
}
