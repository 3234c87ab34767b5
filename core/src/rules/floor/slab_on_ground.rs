//! A slab on the ground: its stiffness against bending beside that of what carries it.

use super::documents::{ACI_318_19, IOANNIDES_1985, WESTERGAARD_1926, WESTERGAARD_1948};
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::{Sheet, StepId, number, steps};

steps! { 140 "slab on ground";
    E "E" Stress (INPUT "floor" Derived) "Modulus of elasticity of the slab": Given;
    F_C "f'_c" Stress (INPUT "slab" Derived) "Specified strength of the concrete": Given;
    K_E "k_E" Empirical { force: 3, length: -6 } (ACI_318_19 "19.2.2.1(b)" Memory) "Coefficient of the modulus of elasticity, 4700 in MPa": Constant;
    E_BY_CODE "E" Stress (ACI_318_19 "19.2.2.1(b)" Memory) "Modulus of elasticity of normal-weight concrete, taken because none is given" = "k_E * sqrt(f'_c)";
    NU "nu" Number (INPUT "floor" Derived) "Poisson's ratio of the slab": Given;
    H "h" Length (INPUT "slab" Derived) "Thickness of the slab": Given;
    K "k_s" Subgrade (INPUT "floor" Derived) "Modulus of subgrade reaction": Given;
    L "l" Length (WESTERGAARD_1926 "radius of relative stiffness" Secondary) "Radius of relative stiffness" = "(E * h^3 / (12 * (1 - nu^2) * k_s))^(1 / 4)";
    A_LOAD "A" Area (INPUT "" Derived) "Loaded area": Given;
    A "a" Length (WESTERGAARD_1926 "equivalent contact" Secondary) "Radius of a circle of the same area" = "sqrt(A / 3.141592653589793)";
    K_INNER "k_slab" Stiffness (WESTERGAARD_1926 "deflection, interior" Derived) "Stiffness of the slab under one leg, far from edges" = "8 * k_s * l^2";
    K_EDGE "k_slab" Stiffness (WESTERGAARD_1948 "deflection, edge" Derived) "Stiffness of the slab under one leg at a free edge" = "sqrt(E * h^3 * k_s) / sqrt(2 + 1.2 * nu) / (1 - (0.76 + 0.4 * nu) * a / l)";
    K_CORNER "k_slab" Stiffness (IOANNIDES_1985 "deflection, corner" Derived) "Stiffness of the slab under one leg at a free corner" = "k_s * l^2 / (1.205 - 0.69 * (1.772 * a) / l)";
    POISSON_RANGE "" Number (PRACTICE "" Memory) "Poisson's ratio of the slab lies outside 0.10 to 0.25, so it is no concrete that these formulas were made for": Reason;
    THIN "" Number (PRACTICE "" Memory) "the slab is thinner than 75 mm (3 in.) or thicker than 1000 mm (39 in.): the theory of thin plates on the ground does not reach it": Reason;
    GROUND_RANGE "" Number (PRACTICE "" Memory) "the modulus of subgrade reaction lies outside 0.003 to 0.3 N/mm3 (11 to 1100 lbf/in3)": Reason;
    MODULUS_RANGE "" Number (PRACTICE "" Memory) "the modulus of elasticity of the slab lies outside 5 to 60 GPa": Reason;
    LARGE_CONTACT "" Number (WESTERGAARD_1926 "" Memory) "the radius of the loaded area is above half the radius of relative stiffness: the closed forms are for smaller contacts": Reason;
}

/// A slab on the ground far from loads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SlabOnGround {
    /// Modulus of elasticity.
    pub modulus_mpa: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Thickness.
    pub thickness_mm: f64,
    /// Modulus of subgrade reaction.
    pub subgrade_n_per_mm3: f64,
}

/// Where on the slab a leg stands.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Position {
    /// Far from every edge.
    Interior,
    /// At a free edge, far from corners.
    Edge,
    /// At a free corner.
    Corner,
}

/// A slab whose radius of relative stiffness is known, with one loaded area on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadedSlab {
    /// The slab.
    pub slab: SlabOnGround,
    /// Radius of relative stiffness.
    pub radius_mm: f64,
    /// Radius of a circle of the loaded area.
    pub contact_mm: f64,
}

/// The coefficient of 19.2.2.1(b), in MPa.
pub const MODULUS_COEFFICIENT: f64 = 4700.0;
/// Least and greatest Poisson's ratio.
pub const POISSON_LIMITS: [f64; 2] = [0.10, 0.25];
/// Least and greatest thickness.
pub const THICKNESS_LIMITS_MM: [f64; 2] = [75.0, 1000.0];
/// Least and greatest subgrade modulus.
pub const SUBGRADE_LIMITS_N_PER_MM3: [f64; 2] = [0.003, 0.3];
/// Least and greatest modulus of elasticity.
pub const MODULUS_LIMITS_MPA: [f64; 2] = [5e3, 60e3];
/// Largest radius of a contact over the radius of relative stiffness.
pub const CONTACT_MAX: f64 = 0.5;

impl SlabOnGround {
    /// Whether the closed forms reach this slab.
    ///
    /// Errors: the reason of the first limit that is left.
    pub fn covered(&self) -> Result<(), StepId> {
        let within = |value: f64, [least, most]: [f64; 2]| {
            crate::calc::limit::at_least(value, least) && crate::calc::limit::at_most(value, most)
        };
        match () {
            _ if !within(self.poisson, POISSON_LIMITS) => Err(POISSON_RANGE),
            _ if !within(self.thickness_mm, THICKNESS_LIMITS_MM) => Err(THIN),
            _ if !within(self.subgrade_n_per_mm3, SUBGRADE_LIMITS_N_PER_MM3) => Err(GROUND_RANGE),
            _ if !within(self.modulus_mpa, MODULUS_LIMITS_MPA) => Err(MODULUS_RANGE),
            _ => Ok(()),
        }
    }

    /// The slab with a load on an area, told: modulus, thickness, subgrade, radius of relative stiffness, radius of the
    /// contact. Units: mm2.
    ///
    /// Errors: the slab or the contact leaves the range of the closed forms.
    pub fn loaded(&self, area_mm2: f64, sheet: &mut Sheet) -> Result<LoadedSlab, StepId> {
        let radius_mm = self.told_radius_mm(sheet)?;
        let area = sheet.step(A_LOAD, area_mm2);
        let contact_mm = sheet.step(A, number::sqrt(area / core::f64::consts::PI));
        if !crate::calc::limit::at_most(contact_mm, CONTACT_MAX * radius_mm) {
            return Err(LARGE_CONTACT);
        }
        Ok(LoadedSlab { slab: *self, radius_mm, contact_mm })
    }

    /// The slab with its radius of relative stiffness, told.
    ///
    /// Errors: the slab leaves the range of the closed forms.
    pub fn told_radius_mm(&self, sheet: &mut Sheet) -> Result<f64, StepId> {
        self.covered()?;
        let e = sheet.step(E, self.modulus_mpa);
        let nu = sheet.step(NU, self.poisson);
        let h = sheet.step(H, self.thickness_mm);
        let k = sheet.step(K, self.subgrade_n_per_mm3);
        let rigidity = e * number::pow(h, 3.0) / (12.0 * (1.0 - number::pow(nu, 2.0)) * k);
        Ok(sheet.step(L, number::pow(rigidity, 0.25)))
    }

    /// The radius of relative stiffness, quietly.
    pub fn radius_mm(&self) -> f64 {
        let (h, nu) = (self.thickness_mm, self.poisson);
        let rigidity = self.modulus_mpa * h * h * h / (12.0 * (1.0 - nu * nu) * self.subgrade_n_per_mm3);
        number::sqrt(number::sqrt(rigidity))
    }
}

impl LoadedSlab {
    /// Stiffness of the slab under one leg, N per mm: the published deflections turned round.
    pub fn stiffness_n_per_mm(&self, position: Position, sheet: &mut Sheet) -> f64 {
        let SlabOnGround { modulus_mpa: e, poisson: nu, thickness_mm: h, subgrade_n_per_mm3: k } = self.slab;
        let (l, a) = (self.radius_mm, self.contact_mm);
        match position {
            Position::Interior => sheet.step(K_INNER, 8.0 * k * number::pow(l, 2.0)),
            Position::Edge => {
                let root = number::sqrt(e * number::pow(h, 3.0) * k) / number::sqrt(2.0 + 1.2 * nu);
                sheet.step(K_EDGE, root / (1.0 - (0.76 + 0.4 * nu) * a / l))
            }
            Position::Corner => {
                let factor = 1.205 - 0.69 * (1.772 * a) / l;
                sheet.step(K_CORNER, k * number::pow(l, 2.0) / factor)
            }
        }
    }
}

/// The modulus of elasticity of concrete by its strength, told.
pub fn modulus_mpa(strength_mpa: f64, sheet: &mut Sheet) -> f64 {
    let strength = sheet.step(F_C, strength_mpa);
    let coefficient = sheet.step(K_E, MODULUS_COEFFICIENT);
    sheet.step(E_BY_CODE, coefficient * number::sqrt(strength))
}
