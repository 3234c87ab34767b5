//! Steel failure in shear with a lever arm (7.2.2.3.2): a rod that passes a gap or a raised floor bends.

use super::document::EN_1992_4;
use super::facts::{Anchor, Facts};
use super::fields as f;
use super::{factor, hole, seismic, steel};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::sqrt;
use crate::calc::{Sheet, steps};

steps! { 75 "EN 1992-4, lever arm";
    E_1 "e_1" Length (INPUT "" Derived) "How far above the concrete the shear acts": Given;
    D "d" Length (INPUT "" Derived) "Diameter of the rod": Given;
    A_3 "a_3" Length (EN_1992_4 "6.2.2.3" Secondary) "Depth at which the concrete holds the rod" = "0.5 * d";
    A_3_CLAMPED "a_3" Length (EN_1992_4 "6.2.2.3" Secondary) "0, because a nut and washer clamp the rod at the concrete": Condition;
    L_A "l_a" Length (EN_1992_4 "6.2.2.3" Secondary) "Lever arm" = "a_3 + e_1";
    ALPHA_FREE "alpha_M" Number (EN_1992_4 "6.2.2.3" Secondary) "The base can turn on the rods": Condition;
    ALPHA_FIXED "alpha_M" Number (EN_1992_4 "6.2.2.3" Secondary) "The base cannot turn on the rods": Condition;
    D_S "d_s" Length (STATICS "" Derived) "Diameter of a circle of the stressed cross section" = "sqrt(4 * A_s / pi)";
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    W_EL "W_el" Empirical { force: 0, length: 18 } (STATICS "" Derived) "Elastic section modulus of that circle" = "pi / 32 * d_s^3";
    M_0 "M0_Rk_s" Moment (EN_1992_4 "7.2.2.3.2" Secondary) "Bending resistance of the rod" = "1.2 * W_el * f_uk";
    M_0_GIVEN "M0_Rk_s" Moment (INPUT "European Technical Assessment" Derived) "Bending resistance of the rod": Given;
    N_ED "N_Ed" Force (STATICS "base reactions" Derived) "Pull on the rod": Solved;
    N_RD "N_Rd_s" Force (EN_1992_4 "Table 7.1" Secondary) "Design resistance of the rod in tension": Solved;
    M_RK "M_Rk_s" Moment (EN_1992_4 "(7.38)" Secondary) "Bending resistance that the pull leaves" = "M0_Rk_s * max(0, 1 - N_Ed / N_Rd_s)";
    V_RK "V_Rk_s_M" Force (EN_1992_4 "(7.37)" Secondary) "Characteristic resistance in shear with the lever arm" = "alpha_M * M_Rk_s / l_a";
    V_RD "V_Rd_s_M" Force (EN_1992_4 "Table 7.2" Secondary) "Design resistance" = "V_Rk_s_M / gamma_Ms";
    BETA_V "beta_V" Utilisation (EN_1992_4 "Table 7.2" Secondary) "Action over resistance" = "V_Ed / V_Rd_s_M";
}

/// What leaves its trace in the bending resistance: how many fasteners are pulled, and how hard this one.
#[derive(Clone, Copy, Debug)]
pub struct Pulled {
    /// Pull on the rod.
    pub n_ed: f64,
    /// How many share the pull.
    pub sharing: usize,
}

/// Design resistance of a rod in shear with its lever arm. Static only: annex C does not reach it.
pub fn shear(facts: &Facts, anchor: &Anchor, pulled: Pulled, sheet: &mut Sheet) -> f64 {
    hole::tell(facts, anchor.d, sheet);
    let e_1 = sheet.step(E_1, facts.number(f::LEVER).unwrap_or(f64::NAN));
    let a_3 = if facts.values.flag(f::CLAMPED) {
        sheet.step(A_3_CLAMPED, 0.0)
    } else {
        let d = sheet.step(D, anchor.d);
        sheet.step(A_3, 0.5 * d)
    };
    let l_a = sheet.step(L_A, a_3 + e_1);
    let alpha =
        if facts.is(f::RESTRAINT, f::FIXED) { sheet.step(ALPHA_FIXED, 2.0) } else { sheet.step(ALPHA_FREE, 1.0) };
    let m_0 = match facts.number(f::M_0_RK_S) {
        Some(given) => sheet.step(M_0_GIVEN, given),
        None => {
            let a_s = anchor.bolt.stress_area(sheet);
            let pi = sheet.step(PI, core::f64::consts::PI);
            let d_s = sheet.step(D_S, sqrt(4.0 * a_s / pi));
            let w_el = sheet.step(W_EL, pi / 32.0 * (d_s * d_s * d_s));
            let f_uk = anchor.bolt.tensile(sheet);
            sheet.step(M_0, 1.2 * w_el * f_uk)
        }
    };
    let n_ed = sheet.carry(N_ED, pulled.n_ed);
    let n_rd = sheet.carry(N_RD, steel::tension(facts, anchor, pulled.sharing.max(1), &mut Sheet::quiet()));
    let left = 1.0 - n_ed / n_rd;
    let m_rk = sheet.step(M_RK, m_0 * if left < 0.0 { 0.0 } else { left });
    let v_rk = sheet.step(V_RK, alpha * m_rk / l_a);
    let gamma = factor::steel_shear(facts, &anchor.bolt, sheet);
    debug_assert_eq!(seismic::reduction(facts, seismic::Mode::SteelShear, 1, &mut Sheet::quiet()), 1.0);
    sheet.step(V_RD, v_rk / gamma)
}
