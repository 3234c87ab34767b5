//! Punching of a foot through a slab by ACI 318-19: reinforced in two directions (22.6) and plain (14.5.5).
//!
//! Slabs on the ground that carry no part of a building are outside ACI 318 (1.4.8); there it is good practice.

use super::documents::ACI_318_19;
use super::perimeter::{Corners, LoadedRectangle, perimeter};
use crate::calc::clause::INPUT;
use crate::calc::{Detail, Kind, Sheet, StepId, System, number, steps};

steps! { 147 "punching, ACI";
    F_C "f'_c" Stress (INPUT "slab" Derived) "Specified strength of the concrete": Given;
    U_ROOT "u_r" Empirical { force: 3, length: -6 } (ACI_318_19 "22.6.3.1" Memory) "Largest root of the strength that counts, 100 in psi or 8.3 in MPa": Constant;
    R_C "r_c" Empirical { force: 3, length: -6 } (ACI_318_19 "22.6.3.1" Memory) "Root of the strength" = "min(u_r, sqrt(f'_c))";
    D "d" Length (INPUT "floor" Derived) "Effective depth": Given;
    C_X "c_x" Length (INPUT "cabinet" Derived) "Side of the foot along x": Given;
    C_Y "c_y" Length (INPUT "cabinet" Derived) "Side of the foot along y": Given;
    BETA "beta" Number (ACI_318_19 "22.6.5.3" Memory) "Longer side of the foot over the shorter" = "max(c_x, c_y) / min(c_x, c_y)";
    B_O "b_o" Length (ACI_318_19 "22.6.4.1" Memory) "Perimeter at half the depth from the foot, cut at free edges": Geometry;
    ALPHA_S "alpha_s" Number (ACI_318_19 "22.6.5.3" Memory) "Factor of the place: 40 inside, 30 at an edge, 20 at a corner": Condition;
    D_0 "d_0" Length (ACI_318_19 "22.5.5.1.3" Memory) "Depth of the size effect, 10 in. or 250 mm": Constant;
    LAMBDA_S "lambda_s" Number (ACI_318_19 "22.5.5.1.3" Memory) "Size effect" = "min(1, sqrt(2 / (1 + d / d_0)))";
    LAMBDA_OFF "lambda_s" Number (ACI_318_19 "13.2.6.2" Memory) "Size effect, left out for an isolated footing": Constant;
    K_A "k_a" Number (ACI_318_19 "Table 22.6.5.2" Memory) "Coefficient (a), 4 in psi or 0.33 in MPa": Constant;
    K_B "k_b" Number (ACI_318_19 "Table 22.6.5.2" Memory) "Coefficient (b), 2 in psi or 0.17 in MPa": Constant;
    K_C "k_c" Number (ACI_318_19 "Table 22.6.5.2" Memory) "Coefficient (c), 1 in psi or 0.083 in MPa": Constant;
    U_C "u_c" Empirical { force: 3, length: -6 } (ACI_318_19 "Table 22.6.5.2" Memory) "Unit of the coefficients, a root of a psi or of a MPa": Constant;
    V_C "v_c" Stress (ACI_318_19 "Table 22.6.5.2" Memory) "Shear strength of the concrete" = "min(k_a, k_b * (1 + 2 / beta), k_c * (2 + alpha_s * d / b_o)) * u_c * lambda_s * r_c";
    PHI "phi" Number (ACI_318_19 "Table 21.2.1" Memory) "Strength reduction factor for shear": Constant;
    V_D "V_d" Force (ACI_318_19 "22.6" Memory) "Design strength against punching" = "phi * v_c * b_o * d";
    H "h" Length (INPUT "slab" Derived) "Thickness of the slab": Given;
    H_CUT "h_g" Length (ACI_318_19 "14.5.1.7" Memory) "Part of the thickness that is left out where concrete is cast on soil, 2 in. or 50 mm": Constant;
    H_P "h_p" Length (ACI_318_19 "14.5.1.7" Memory) "Thickness that counts" = "h - h_g";
    B_P "b_o" Length (ACI_318_19 "14.5.5" Memory) "Perimeter at half that thickness from the foot, cut at free edges": Geometry;
    K_P "k_p" Number (ACI_318_19 "Table 14.5.5.1" Memory) "Coefficient of plain concrete, 4/3 in psi or 0.11 in MPa": Constant;
    K_PM "k_pm" Number (ACI_318_19 "Table 14.5.5.1" Memory) "Its upper limit, 2.66 in psi or 0.22 in MPa": Constant;
    V_P "V_n" Force (ACI_318_19 "Table 14.5.5.1" Memory) "Nominal strength of the plain slab" = "min(k_pm, k_p * (1 + 2 / beta)) * u_c * r_c * b_o * h_p";
    PHI_P "phi" Number (ACI_318_19 "21.2.1" Memory) "Strength reduction factor for plain concrete": Constant;
    V_PD "V_d" Force (ACI_318_19 "14.5.1.1" Memory) "Design strength of the plain slab against punching" = "phi * V_n";
    NO_DEPTH "" Number (INPUT "floor" Derived) "no effective depth is given: punching of a reinforced slab needs it": Reason;
    NO_SIZE "" Number (INPUT "cabinet.feet" Derived) "a foot without size has no perimeter to punch along": Reason;
    THIN "" Number (ACI_318_19 "14.5.1.7" Memory) "nothing is left of the slab after the part that does not count on soil": Reason;
    NO_PERIMETER "" Number (ACI_318_19 "22.6.4" Memory) "free edges on all sides are nearer than the perimeter: nothing is left to punch through": Reason;
}

/// What is left out of a plain slab cast on soil, mm.
pub const PLAIN_LOSS_MM: f64 = 50.0;

/// A foot on a slab, in units of the system.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PunchedSlab {
    /// The loaded rectangle.
    pub load: LoadedRectangle,
    /// Specified strength.
    pub strength: f64,
    /// The system of its numbers: N, mm, MPa or lbf, in, psi.
    pub system: System,
}

/// Whether the size effect counts.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum SizeEffect {
    /// 22.5.5.1.3.
    Counted,
    /// 13.2.6.2, for isolated footings.
    LeftOut,
}

impl PunchedSlab {
    fn root(&self, sheet: &mut Sheet) -> f64 {
        let strength = sheet.step(F_C, self.strength);
        let most = sheet.step(U_ROOT, if self.is_us() { 100.0 } else { 8.3 });
        sheet.step(R_C, f64::min(most, number::sqrt(strength)))
    }

    fn is_us(&self) -> bool {
        self.system == System::Us
    }

    fn ratio(&self, sheet: &mut Sheet) -> f64 {
        let [x, y] = self.load.sides;
        sheet.step(C_X, x);
        sheet.step(C_Y, y);
        sheet.step(BETA, f64::max(x, y) / f64::min(x, y))
    }

    /// The design strength of a slab reinforced in two directions, by its effective depth; force in units of the system.
    ///
    /// Errors: a foot without size, no perimeter.
    pub fn reinforced(&self, depth: f64, size_effect: SizeEffect, sheet: &mut Sheet) -> Result<f64, StepId> {
        if !(self.load.sides[0] > 0.0 && self.load.sides[1] > 0.0) {
            return Err(NO_SIZE);
        }
        let around = perimeter(&self.load, depth / 2.0, Corners::Square);
        if !(around.length > 0.0) {
            return Err(NO_PERIMETER);
        }
        let root = self.root(sheet);
        let d = sheet.step(D, depth);
        let beta = self.ratio(sheet);
        let length = around.length;
        let b_o = sheet.detailed(B_O, length, || Detail::Shape(around.outline));
        let place = match around.sides {
            4 => 40.0,
            3 => 30.0,
            _ => 20.0,
        };
        let alpha = sheet.step(ALPHA_S, place);
        let size = match size_effect {
            SizeEffect::Counted => {
                let reference = sheet.step(D_0, if self.is_us() { 10.0 } else { 250.0 });
                sheet.step(LAMBDA_S, f64::min(1.0, number::sqrt(2.0 / (1.0 + d / reference))))
            }
            SizeEffect::LeftOut => sheet.step(LAMBDA_OFF, 1.0),
        };
        let (a, b, c) = if self.is_us() { (4.0, 2.0, 1.0) } else { (0.33, 0.17, 0.083) };
        let (a, b, c) = (sheet.step(K_A, a), sheet.step(K_B, b), sheet.step(K_C, c));
        let unit = sheet.step(U_C, 1.0);
        let least = f64::min(a, f64::min(b * (1.0 + 2.0 / beta), c * (2.0 + alpha * d / b_o)));
        let stress = sheet.step(V_C, least * unit * size * root);
        let phi = sheet.step(PHI, 0.75);
        Ok(sheet.step(V_D, phi * stress * b_o * d))
    }

    /// The design strength of a plain slab cast on soil, by its thickness; force in units of the system.
    ///
    /// Errors: a foot without size, a slab of which nothing is left, no perimeter.
    pub fn plain(&self, thickness: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
        if !(self.load.sides[0] > 0.0 && self.load.sides[1] > 0.0) {
            return Err(NO_SIZE);
        }
        let cut = if self.is_us() { 2.0 } else { PLAIN_LOSS_MM };
        if !(thickness > cut) {
            return Err(THIN);
        }
        let around = perimeter(&self.load, (thickness - cut) / 2.0, Corners::Square);
        if !(around.length > 0.0) {
            return Err(NO_PERIMETER);
        }
        let root = self.root(sheet);
        let h = sheet.step(H, thickness);
        let cut = sheet.step(H_CUT, cut);
        let h_p = sheet.step(H_P, h - cut);
        let beta = self.ratio(sheet);
        let length = around.length;
        let b_o = sheet.detailed(B_P, length, || Detail::Shape(around.outline));
        let (coefficient, most) = if self.is_us() { (4.0 / 3.0, 2.66) } else { (0.11, 0.22) };
        let coefficient = sheet.step(K_P, coefficient);
        let most = sheet.step(K_PM, most);
        let unit = sheet.step(U_C, 1.0);
        let factor = f64::min(most, coefficient * (1.0 + 2.0 / beta));
        let nominal = sheet.step(V_P, factor * unit * root * b_o * h_p);
        let phi = sheet.step(PHI_P, 0.60);
        Ok(sheet.step(V_PD, phi * nominal))
    }
}

/// A foot in mm and MPa as the system of an edition has it.
pub fn in_system(load: &LoadedRectangle, strength_mpa: f64, system: System) -> PunchedSlab {
    let length = |mm: f64| system.from_si(mm, Kind::Length);
    PunchedSlab {
        load: LoadedRectangle { sides: load.sides.map(length), to_edges: load.to_edges.map(length) },
        strength: system.from_si(strength_mpa, Kind::Stress),
        system,
    }
}
