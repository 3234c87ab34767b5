//! What a wheel presses: Hertz's line and ball contact for hard wheels, the mean over the patch for soft treads.
//!
//! Hertz's line contact is elastic, smooth, for an even line. A soft tread flattens until its patch is no longer small
//! beside its radius; then only the size of the patch is told, and the mean pressure over it.

use super::documents::HERTZ;
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::{Sheet, StepId, limit, number, steps};

steps! { 154 "wheel contact";
    P "P" Force (INPUT "" Derived) "Load of the wheel": Given;
    R "R" Length (INPUT "floor.casters" Derived) "Radius of the wheel": Given;
    L "L" Length (INPUT "floor.casters" Derived) "Width of its tread": Given;
    E_1 "E_1" Stress (INPUT "floor.casters" Derived) "Modulus of elasticity of the tread": Given;
    NU_1 "nu_1" Number (INPUT "floor.casters" Derived) "Poisson's ratio of the tread": Given;
    E_2 "E_2" Stress (INPUT "floor" Derived) "Modulus of elasticity of the floor": Given;
    NU_2 "nu_2" Number (INPUT "floor" Derived) "Poisson's ratio of the floor": Given;
    E_STAR "E_s" Stress (HERTZ "" Published) "Modulus of both together" = "1 / ((1 - nu_1^2) / E_1 + (1 - nu_2^2) / E_2)";
    B "b" Length (HERTZ "line contact" Published) "Half the width of the patch" = "sqrt(4 * P * R / (3.141592653589793 * L * E_s))";
    A_PATCH "A_c" Area (HERTZ "line contact" Published) "Area of the patch" = "2 * b * L";
    P_0 "p_0" Pressure (HERTZ "line contact" Published) "Highest pressure" = "2 * P / (3.141592653589793 * b * L)";
    P_MEAN "p_m" Pressure (HERTZ "line contact" Published) "Mean pressure over the patch" = "3.141592653589793 * p_0 / 4";
    P_SOFT "p_m" Pressure (HERTZ "line contact, patch only" Derived) "Mean pressure over the patch of a soft tread" = "P / (2 * b * L)";
    TAU "tau_m" Stress (HERTZ "line contact, nu about 0.3" Published) "Largest shear, below the surface" = "0.304 * p_0";
    Z_TAU "z" Length (HERTZ "line contact" Published) "Its depth" = "0.786 * b";
    R_B "r_b" Number (HERTZ "" Derived) "Half the patch over the radius of the wheel" = "b / R";
    A_BALL "a" Length (HERTZ "ball contact" Memory) "Radius of the patch of a crowned wheel or a ball" = "(3 * P * R / (4 * E_s))^(1 / 3)";
    P_BALL "p_0" Pressure (HERTZ "ball contact" Memory) "Highest pressure of a crowned wheel or a ball" = "3 * P / (2 * 3.141592653589793 * a^2)";
    F_C "f'_c" Stress (INPUT "slab" Derived) "Strength of the concrete": Given;
    P_ALLOWED "p_a" Pressure (PRACTICE "bearing of concrete confined on all sides, 0.65 * 0.85 * 2" Secondary) "Pressure that concrete is allowed in practice; very cautious for hard wheels" = "0.65 * 0.85 * f'_c * 2";
    PATCH_LARGE "" Number (HERTZ "" Derived) "half the patch is more than a fifth of the wheel's radius: Hertz's line contact is for small patches, only the patch and its mean pressure are told": Reason;
}

/// Half the patch over the radius up to which Hertz's pressure is told.
pub const PATCH_MAX: f64 = 0.2;

/// A wheel on a floor, both elastic.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wheel {
    /// Its radius.
    pub radius_mm: f64,
    /// Width of its tread.
    pub width_mm: f64,
    /// The tread.
    pub tread: Elastic,
    /// The floor.
    pub floor: Elastic,
}

/// Modulus and Poisson's ratio.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Elastic {
    /// Modulus of elasticity.
    pub modulus_mpa: f64,
    /// Poisson's ratio.
    pub poisson: f64,
}

/// The patch and its pressures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Patch {
    /// Half its width.
    pub half_mm: f64,
    /// Mean pressure.
    pub mean_mpa: f64,
    /// Highest pressure, where Hertz reaches, or why not.
    pub peak_mpa: Result<f64, StepId>,
}

impl Wheel {
    fn tell(&self, load_n: f64, sheet: &mut Sheet) -> f64 {
        sheet.step(P, load_n);
        sheet.step(R, self.radius_mm);
        sheet.step(L, self.width_mm);
        let e_1 = sheet.step(E_1, self.tread.modulus_mpa);
        let nu_1 = sheet.step(NU_1, self.tread.poisson);
        let e_2 = sheet.step(E_2, self.floor.modulus_mpa);
        let nu_2 = sheet.step(NU_2, self.floor.poisson);
        let soft = (1.0 - number::pow(nu_1, 2.0)) / e_1 + (1.0 - number::pow(nu_2, 2.0)) / e_2;
        sheet.step(E_STAR, 1.0 / soft)
    }

    /// Line contact under a load in N.
    pub fn line(&self, load_n: f64, sheet: &mut Sheet) -> Patch {
        let e_star = self.tell(load_n, sheet);
        let (p, r, l, pi) = (load_n, self.radius_mm, self.width_mm, core::f64::consts::PI);
        let b = sheet.step(B, number::sqrt(4.0 * p * r / (pi * l * e_star)));
        sheet.step(A_PATCH, 2.0 * b * l);
        let part = sheet.step(R_B, b / r);
        if limit::more(part, PATCH_MAX) {
            let mean = sheet.step(P_SOFT, p / (2.0 * b * l));
            return Patch { half_mm: b, mean_mpa: mean, peak_mpa: Err(PATCH_LARGE) };
        }
        let peak = sheet.step(P_0, 2.0 * p / (pi * b * l));
        let mean = sheet.step(P_MEAN, pi * peak / 4.0);
        sheet.step(TAU, 0.304 * peak);
        sheet.step(Z_TAU, 0.786 * b);
        Patch { half_mm: b, mean_mpa: mean, peak_mpa: Ok(peak) }
    }

    /// Ball contact, for a crowned wheel, under a load in N: radius of the patch and highest pressure.
    pub fn ball(&self, load_n: f64, sheet: &mut Sheet) -> [f64; 2] {
        let e_star = self.tell(load_n, sheet);
        let pi = core::f64::consts::PI;
        let a = sheet.step(A_BALL, number::pow(3.0 * load_n * self.radius_mm / (4.0 * e_star), 1.0 / 3.0));
        [a, sheet.step(P_BALL, 3.0 * load_n / (2.0 * pi * number::pow(a, 2.0)))]
    }
}

/// The pressure that concrete is allowed under a wheel in practice, MPa.
pub fn allowed_mpa(strength_mpa: f64, sheet: &mut Sheet) -> f64 {
    let strength = sheet.step(F_C, strength_mpa);
    sheet.step(P_ALLOWED, 0.65 * 0.85 * strength * 2.0)
}
