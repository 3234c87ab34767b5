//! Bearing of a foot on concrete by AISC 360-16 J8, by EN 1992-1-1 6.7 with EN 1993-1-8 6.2.5, and by allowable stress.
//!
//! Bearing by ACI 318-19 22.8 is a check of every cabinet and stands with the feet.

use super::documents::{AISC_360_16, EN_1992_1_1, EN_1993_1_8};
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::{Detail, Sheet, steps};

steps! { 149 "bearing";
    F_C "f'_c" Stress (INPUT "slab" Derived) "Specified strength of the concrete": Given;
    B_1 "b_1" Length (INPUT "cabinet" Derived) "Side of the loaded area along x": Given;
    D_1 "d_1" Length (INPUT "cabinet" Derived) "Side of the loaded area along y": Given;
    A_1 "A_1" Area (AISC_360_16 "J8" Memory) "Loaded area" = "b_1 * d_1";
    S_R "s_r" Number (AISC_360_16 "J8" Memory) "Side of the widest similar area of the support over that of the load": Geometry;
    P_P "P_p" Force (AISC_360_16 "J8-2" Memory) "Nominal bearing strength; the root of the areas is the ratio of their sides" = "min(0.85 * f'_c * A_1 * s_r, 1.7 * f'_c * A_1)";
    PHI "phi_c" Number (AISC_360_16 "J8" Memory) "Strength reduction factor": Constant;
    OMEGA "Omega_c" Number (AISC_360_16 "J8" Memory) "Safety factor of allowable strength": Constant;
    P_D "P_d" Force (AISC_360_16 "J8" Memory) "Design strength" = "phi_c * P_p";
    P_A "P_a" Force (AISC_360_16 "J8" Memory) "Allowable strength" = "P_p / Omega_c";
    F_ASD "F_a" Force (PRACTICE "allowable stress of old editions" Memory) "Allowable bearing of old editions" = "min(0.35 * f'_c * A_1 * s_r, 0.7 * f'_c * A_1)";
    F_CK "f_ck" Stress (INPUT "slab" Derived) "Characteristic strength of the concrete": Given;
    ALPHA_CC "alpha_cc" Number (EN_1992_1_1 "3.1.6(1)" Memory) "Long-term factor, a choice of the country: 1.0, or 0.85": Given;
    F_CD "f_cd" Stress (EN_1992_1_1 "3.1.6(1)" Memory) "Design strength of the concrete" = "alpha_cc * f_ck / 1.5";
    H "h" Length (INPUT "slab" Derived) "Thickness of the slab": Given;
    G_X "g_x" Length (INPUT "plan" Derived) "Room for the spread along x on both sides together, to the nearer edge or half way to the next foot": Geometry;
    G_Y "g_y" Length (INPUT "plan" Derived) "The same along y": Geometry;
    R_X "r_x" Number (EN_1992_1_1 "6.7(2)" Memory) "Side of the spread over that of the load, along x" = "min(3, (b_1 + h) / b_1, (b_1 + g_x) / b_1)";
    R_Y "r_y" Number (EN_1992_1_1 "6.7(2)" Memory) "Side of the spread over that of the load, along y" = "min(3, (d_1 + h) / d_1, (d_1 + g_y) / d_1)";
    R_S "r_s" Number (EN_1992_1_1 "6.7(2)" Memory) "The smaller: both areas are of similar shape" = "min(r_x, r_y)";
    F_RDU "F_Rdu" Force (EN_1992_1_1 "6.7(2), (6.63)" Memory) "Design strength of partially loaded areas; the root of the areas is the ratio of their sides" = "min(A_1 * f_cd * r_s, 3 * f_cd * A_1)";
    BETA_J "beta_j" Number (EN_1993_1_8 "6.2.5(7)" Memory) "Factor of the joint, where grout of at least 0.2 of the concrete's strength is not thicker than 0.2 of the plate's smaller width": Constant;
    F_JD "f_jd" Pressure (EN_1993_1_8 "6.2.5(7)" Memory) "Design bearing strength of the joint under a plate on grout" = "beta_j * F_Rdu / A_1";
}

/// A loaded area with the room around it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadedArea {
    /// Its sides.
    pub sides: [f64; 2],
    /// How much farther than its sides the concrete goes for it on the nearer side: to the edge or half way to the next.
    pub beyond: [f64; 2],
    /// Thickness of the slab.
    pub thickness: f64,
    /// Strength of the concrete.
    pub strength: f64,
}

/// Strengths by AISC 360 J8: design, allowable, and the allowable force of old editions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AiscBearing {
    /// Strength design.
    pub design: f64,
    /// Allowable strength.
    pub allowable: f64,
    /// Allowable stress of old editions.
    pub old: f64,
}

impl LoadedArea {
    /// Bearing by AISC 360-16 J8, in the units of its numbers; the support spreads 1 vertical to 2 horizontal.
    pub fn aisc(&self, sheet: &mut Sheet) -> AiscBearing {
        let [b_1, d_1] = self.sides;
        let strength = sheet.step(F_C, self.strength);
        let b_1 = sheet.step(B_1, b_1);
        let d_1 = sheet.step(D_1, d_1);
        let area = sheet.step(A_1, b_1 * d_1);
        let through = 2.0 * self.thickness;
        let of = |side: f64, beyond: f64| (side + 2.0 * f64::min(beyond, through)) / side;
        let ratio = f64::min(of(b_1, self.beyond[0]), of(d_1, self.beyond[1]));
        let ratio = sheet.detailed(S_R, ratio, || Detail::Shape([[b_1, 0.0], [b_1 * ratio, 0.0]].into()));
        let nominal = sheet.step(P_P, f64::min(0.85 * strength * area * ratio, 1.7 * strength * area));
        let phi = sheet.step(PHI, 0.65);
        let omega = sheet.step(OMEGA, 2.31);
        AiscBearing {
            design: sheet.step(P_D, phi * nominal),
            allowable: sheet.step(P_A, nominal / omega),
            old: sheet.step(F_ASD, f64::min(0.35 * strength * area * ratio, 0.7 * strength * area)),
        }
    }

    /// Bearing by EN 1992-1-1 6.7, in N, mm, MPa: the design strength, and the strength of a joint with grout as a pressure.
    pub fn en(&self, alpha_cc: f64, sheet: &mut Sheet) -> [f64; 2] {
        let [b_1, d_1] = self.sides;
        let strength = sheet.step(F_CK, self.strength);
        let alpha = sheet.step(ALPHA_CC, alpha_cc);
        let f_cd = sheet.step(F_CD, alpha * strength / 1.5);
        let h = sheet.step(H, self.thickness);
        let b_1 = sheet.step(B_1, b_1);
        let d_1 = sheet.step(D_1, d_1);
        let area = sheet.step(A_1, b_1 * d_1);
        // An edge that is far gives more room than three times the load ever uses.
        let room = |side: f64, beyond: f64| f64::min(2.0 * beyond, 4.0 * side);
        let g_x = room(b_1, self.beyond[0]);
        let g_y = room(d_1, self.beyond[1]);
        let g_x = sheet.detailed(G_X, g_x, || Detail::Shape([[b_1, 0.0], [b_1 + g_x, 0.0]].into()));
        let g_y = sheet.detailed(G_Y, g_y, || Detail::Shape([[0.0, d_1], [0.0, d_1 + g_y]].into()));
        let ratio = |side: f64, room: f64| f64::min(3.0, f64::min((side + h) / side, (side + room) / side));
        let r_x = sheet.step(R_X, ratio(b_1, g_x));
        let r_y = sheet.step(R_Y, ratio(d_1, g_y));
        let r_s = sheet.step(R_S, f64::min(r_x, r_y));
        let force = sheet.step(F_RDU, f64::min(area * f_cd * r_s, 3.0 * f_cd * area));
        let beta = sheet.step(BETA_J, 2.0 / 3.0);
        [force, sheet.step(F_JD, beta * force / area)]
    }
}
