//! Punching of a foot through a slab by EN 1992-1-1 6.4, without shear reinforcement and without a moment (beta = 1).
//!
//! The pressure of the ground inside the perimeter, which 6.4.2(2) lets one deduct, is not deducted.

use super::documents::{EN_1992_1_1, TR34};
use super::perimeter::{Corners, LoadedRectangle, perimeter};
use super::punching_aci::{NO_PERIMETER, NO_SIZE};
use crate::calc::clause::INPUT;
use crate::calc::{Detail, Sheet, StepId, limit, number, steps};

steps! { 148 "punching, EN";
    F_CK "f_ck" Stress (INPUT "slab" Derived) "Characteristic strength of the concrete": Given;
    D "d" Length (INPUT "floor" Derived) "Effective depth": Given;
    H "h" Length (INPUT "slab" Derived) "Thickness of the slab": Given;
    D_FIBRE "d" Length (TR34 "punching" Memory) "Depth that counts in a slab with fibres" = "0.75 * h";
    RHO "rho" Number (INPUT "floor" Derived) "Ratio of reinforcement": Given;
    RHO_L "rho_l" Number (EN_1992_1_1 "6.4.4(1)" Memory) "Ratio of reinforcement that counts" = "min(0.02, rho)";
    D_K "d_k" Length (EN_1992_1_1 "6.4.4(1)" Memory) "Depth of the size effect": Constant;
    K "k" Number (EN_1992_1_1 "6.4.4(1)" Memory) "Size effect" = "min(2, 1 + sqrt(d_k / d))";
    C_RD "C_Rd" Empirical { force: 4, length: -8 } (EN_1992_1_1 "6.4.4(1)" Memory) "0.18 over the partial factor 1.5, in MPa": Constant;
    C_MIN "C_min" Empirical { force: 3, length: -6 } (EN_1992_1_1 "6.2.2(1)" Memory) "Coefficient of the least strength, 0.035 in MPa": Constant;
    V_MIN "v_min" Stress (EN_1992_1_1 "6.2.2(1)" Memory) "Least strength in shear" = "C_min * k^1.5 * sqrt(f_ck)";
    V_RD "v_Rd" Stress (EN_1992_1_1 "6.4.4(1)" Memory) "Strength in shear without shear reinforcement" = "max(v_min, C_Rd * k * (100 * rho_l * f_ck)^(1 / 3))";
    U_1 "u_1" Length (EN_1992_1_1 "6.4.2" Memory) "Perimeter at 2 d from the foot, cut at free edges": Geometry;
    V_PUNCH "V_Rd" Force (EN_1992_1_1 "6.4.4" Memory) "Strength against punching at that perimeter" = "v_Rd * u_1 * d";
    U_0 "u_0" Length (EN_1992_1_1 "6.4.5(3)" Memory) "Perimeter of the foot itself, less where it stands on an edge": Geometry;
    F_250 "f_nu" Stress (EN_1992_1_1 "6.2.2(6)" Memory) "Reference strength": Constant;
    NU "nu" Number (EN_1992_1_1 "6.2.2(6)" Memory) "Reduction for concrete cracked in shear" = "0.6 * (1 - f_ck / f_nu)";
    F_CD "f_cd" Stress (EN_1992_1_1 "3.1.6" Memory) "Design strength of the concrete" = "alpha_cc * f_ck / 1.5";
    V_FACE "V_max" Force (EN_1992_1_1 "6.4.5(3)" Memory) "Strength at the face of the foot; later amendments take 0.4 for 0.5" = "0.5 * nu * f_cd * u_0 * d";
    V_D "V_d" Force (EN_1992_1_1 "6.4.3" Memory) "Strength that governs" = "min(V_Rd, V_max)";
    ALPHA_CC "alpha_cc" Number (EN_1992_1_1 "3.1.6(1)" Memory) "Long-term factor, a choice of the country: 1.0, or 0.85": Given;
    NO_RATIO "" Number (INPUT "floor" Derived) "punching by EN 1992-1-1 6.4 needs a slab with bars (effective depth and ratio of reinforcement), or one with fibres on the ground; plain concrete is not covered there": Reason;
    STRENGTH_RANGE "" Number (EN_1992_1_1 "3.1.2" Memory) "the concrete is weaker than C12 or stronger than C90 (12 to 90 MPa on cylinders), for which EN 1992-1-1 is not written": Reason;
}

/// What carries shear in the slab.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Carried {
    /// Bars: effective depth and ratio.
    Bars {
        /// Effective depth.
        depth_mm: f64,
        /// Ratio of reinforcement.
        ratio: f64,
    },
    /// Fibres: 0.75 of the thickness, without a ratio (TR34).
    Fibres {
        /// Thickness.
        thickness_mm: f64,
    },
}

impl Carried {
    /// The depth that counts.
    pub fn depth_mm(&self) -> f64 {
        match *self {
            Carried::Bars { depth_mm, .. } => depth_mm,
            Carried::Fibres { thickness_mm } => 0.75 * thickness_mm,
        }
    }
}

/// The strengths of concrete that EN 1992-1-1 is written for, MPa on cylinders.
const STRENGTHS_MPA: [f64; 2] = [12.0, 90.0];

/// Whether EN 1992-1-1 is written for concrete of this strength.
///
/// Errors: it is not.
pub fn covered(strength_mpa: f64) -> Result<(), StepId> {
    let [least, most] = STRENGTHS_MPA;
    let is_within = limit::at_least(strength_mpa, least) && limit::at_most(strength_mpa, most);
    if is_within { Ok(()) } else { Err(STRENGTH_RANGE) }
}

const C_RD_C: f64 = 0.12;
const C_V_MIN: f64 = 0.035;

/// The strength against punching, N, by the strength of the concrete in MPa and the country's long-term factor on it.
///
/// Errors: a strength outside the standard, a foot without size, no perimeter.
pub fn strength_n(
    load: &LoadedRectangle,
    [strength_mpa, alpha_cc]: [f64; 2],
    carried: Carried,
    sheet: &mut Sheet,
) -> Result<f64, StepId> {
    covered(strength_mpa)?;
    if !(load.sides[0] > 0.0 && load.sides[1] > 0.0) {
        return Err(NO_SIZE);
    }
    let strength = sheet.step(F_CK, strength_mpa);
    let (d, ratio) = match carried {
        Carried::Bars { depth_mm, ratio } => (sheet.step(D, depth_mm), ratio),
        Carried::Fibres { thickness_mm } => {
            let h = sheet.step(H, thickness_mm);
            (sheet.step(D_FIBRE, 0.75 * h), 0.0)
        }
    };
    let ratio = sheet.step(RHO, ratio);
    let ratio = sheet.step(RHO_L, f64::min(0.02, ratio));
    let reference = sheet.step(D_K, 200.0);
    let k = sheet.step(K, f64::min(2.0, 1.0 + number::sqrt(reference / d)));
    let c_rd = sheet.step(C_RD, C_RD_C);
    let c_min = sheet.step(C_MIN, C_V_MIN);
    let least = sheet.step(V_MIN, c_min * number::pow_1_5(k) * number::sqrt(strength));
    let by_bars = c_rd * k * number::pow(100.0 * ratio * strength, 1.0 / 3.0);
    let shear = sheet.step(V_RD, f64::max(least, by_bars));
    let around = perimeter(load, 2.0 * d, Corners::Round);
    if !(around.length > 0.0) {
        return Err(NO_PERIMETER);
    }
    let length = around.length;
    let u_1 = sheet.detailed(U_1, length, || Detail::Shape(around.outline));
    let punch = sheet.step(V_PUNCH, shear * u_1 * d);
    let face = perimeter(load, 0.0, Corners::Square);
    let length = face.length;
    let u_0 = sheet.detailed(U_0, length, || Detail::Shape(face.outline));
    let reference = sheet.step(F_250, 250.0);
    let nu = sheet.step(NU, 0.6 * (1.0 - strength / reference));
    let alpha = sheet.step(ALPHA_CC, alpha_cc);
    let f_cd = sheet.step(F_CD, alpha * strength / 1.5);
    let face = sheet.step(V_FACE, 0.5 * nu * f_cd * u_0 * d);
    Ok(sheet.step(V_D, f64::min(punch, face)))
}
