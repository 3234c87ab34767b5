//! Pull-out failure (7.2.1.5) of headed and mechanical fasteners.

use super::document::EN_1992_4;
use super::facts::{Anchor, Facts};
use super::fields as f;
use super::seismic::{self, Mode};
use super::{concrete, factor};
use crate::calc::clause::INPUT;
use crate::calc::{Sheet, steps};

steps! { 78 "EN 1992-4, pull-out";
    K_2 "k_2" Number (EN_1992_4 "(7.11)" Secondary) "Factor of headed fasteners in cracked concrete": Condition;
    K_2_WHOLE "k_2" Number (EN_1992_4 "(7.11)" Secondary) "Factor of headed fasteners in uncracked concrete": Condition;
    N_RK "N_Rk_p" Force (EN_1992_4 "(7.11)" Secondary) "Characteristic resistance to pull-out of a headed fastener" = "k_2 * A_h * f_ck";
    N_C20 "N_Rk_p_C20" Force (INPUT "European Technical Assessment" Derived) "Resistance to pull-out in concrete C20/25, cracked or uncracked as the slab": Given;
    PSI_C "psi_c" Number (INPUT "European Technical Assessment" Derived) "Increasing factor for the concrete": Given;
    N_RK_GIVEN "N_Rk_p" Force (EN_1992_4 "7.2.1.5" Secondary) "Characteristic resistance to pull-out in this concrete" = "psi_c * N_Rk_p_C20";
    N_RK_EQ "N_Rk_p" Force (INPUT "European Technical Assessment" Derived) "Characteristic resistance to pull-out, of the seismic category": Given;
    N_RD "N_Rd_p" Force (EN_1992_4 "Table 7.1, (C.8)" Secondary) "Design resistance" = "k_eq * N_Rk_p / gamma_Mc";
    BETA "beta_N" Utilisation (EN_1992_4 "Table 7.1" Secondary) "Action over resistance" = "N_Ed / N_Rd_p";
}

/// N_Rk_p of one fastener, with the steps that lead to it.
pub fn resistance(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    if facts.is_headed() {
        let f_ck = concrete::strength(facts, sheet);
        let a_h = anchor.bolt.bearing_area(sheet);
        let k_2 = if facts.is_cracked { sheet.step(K_2, 7.5) } else { sheet.step(K_2_WHOLE, 10.5) };
        return sheet.step(N_RK, k_2 * a_h * f_ck);
    }
    let given = |field: usize| facts.number(field).unwrap_or(f64::NAN);
    if facts.is_seismic {
        return sheet.step(N_RK_EQ, given(f::N_RK_P_EQ));
    }
    let n_c20 = sheet.step(N_C20, facts.by_cracking([f::N_RK_P_CR, f::N_RK_P_UCR]).unwrap_or(f64::NAN));
    let psi_c = sheet.step(PSI_C, given(f::PSI_C));
    sheet.step(N_RK_GIVEN, psi_c * n_c20)
}

/// Design resistance of one fastener.
pub fn design(facts: &Facts, anchor: &Anchor, sharing: usize, sheet: &mut Sheet) -> f64 {
    let n_rk = resistance(facts, anchor, sheet);
    let k_eq = seismic::reduction(facts, Mode::PullOut, sharing, sheet);
    let gamma = factor::concrete_tension(facts, sheet);
    sheet.step(N_RD, k_eq * n_rk / gamma)
}
