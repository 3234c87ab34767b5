//! The concrete: strength that may be counted on, cracks, close reinforcement.

use super::document::EN_1992_4;
use super::facts::{F_CK_MAX, Facts};
use super::fields as f;
use crate::calc::clause::INPUT;
use crate::calc::number::pow;
use crate::calc::{Sheet, steps};

steps! { 85 "EN 1992-4, concrete";
    F_CK "f_ck" Stress (INPUT "" Derived) "Characteristic cylinder strength of the concrete": Given;
    F_CK_SLAB "f_ck_slab" Stress (INPUT "" Derived) "Characteristic cylinder strength of the slab": Given;
    F_CK_LIMIT "f_ck_max" Stress (EN_1992_4 "7.2.1.4" Memory) "Largest strength that the equations take": Constant;
    F_CK_USED "f_ck" Stress (EN_1992_4 "7.2.1.4" Memory) "Strength that the equations take" = "min(f_ck_slab, f_ck_max)";
    K_1_HEADED "k_1" Empirical { force: 3, length: -3 } (EN_1992_4 "7.2.1.4(2)" Secondary) "Factor of headed fasteners in cracked concrete": Constant;
    K_1_HEADED_WHOLE "k_1" Empirical { force: 3, length: -3 } (EN_1992_4 "7.2.1.4(2)" Secondary) "Factor of headed fasteners in uncracked concrete": Constant;
    K_1 "k_1" Empirical { force: 3, length: -3 } (EN_1992_4 "7.2.1.4(2)" Secondary) "Factor of post-installed fasteners in cracked concrete": Constant;
    K_1_WHOLE "k_1" Empirical { force: 3, length: -3 } (EN_1992_4 "7.2.1.4(2)" Secondary) "Factor of post-installed fasteners in uncracked concrete": Constant;
    K_1_GIVEN "k_1" Empirical { force: 3, length: -3 } (INPUT "European Technical Assessment" Derived) "Factor for the cone, given in place of the standard's": Given;
    H_0 "h_0" Length (EN_1992_4 "(7.5)" Secondary) "Embedment of reference for close reinforcement": Constant;
    PSI_RE "psi_re_N" Number (EN_1992_4 "(7.5)" Secondary) "Effect of close reinforcement at the surface" = "min(1, 0.5 + h_ef / h_0)";
    PSI_RE_WIDE "psi_re_N" Number (EN_1992_4 "7.2.1.4(5)" Secondary) "1, because the reinforcement is wide apart": Condition;
}

/// Embedment from which close reinforcement spoils nothing, times two.
const H_0_MM: f64 = 200.0;

/// Records the strength of the concrete that the equations take.
pub fn strength(facts: &Facts, sheet: &mut Sheet) -> f64 {
    if facts.f_ck_slab > F_CK_MAX {
        sheet.step(F_CK_SLAB, facts.f_ck_slab);
        sheet.step(F_CK_LIMIT, F_CK_MAX);
        return sheet.step(F_CK_USED, facts.f_ck);
    }
    sheet.step(F_CK, facts.f_ck)
}

/// k_1 of the cone (7.2.1.4(2)).
pub fn k_1(facts: &Facts, sheet: &mut Sheet) -> f64 {
    if let Some(given) = facts.by_cracking([f::K_CR, f::K_UCR]) {
        return sheet.step(K_1_GIVEN, given);
    }
    let (id, value) = match (facts.is_headed(), facts.is_cracked) {
        (true, true) => (K_1_HEADED, 8.9),
        (true, false) => (K_1_HEADED_WHOLE, 12.7),
        (false, true) => (K_1, 7.7),
        (false, false) => (K_1_WHOLE, 11.0),
    };
    sheet.step(id, value)
}

/// psi_re_N of an embedment that stands on the sheet as h_ef.
pub fn close_reinforcement(facts: &Facts, h_ef: f64, sheet: &mut Sheet) -> f64 {
    if facts.is(f::REINFORCEMENT, f::WIDE) {
        return sheet.step(PSI_RE_WIDE, 1.0);
    }
    let h_0 = sheet.step(H_0, H_0_MM);
    sheet.step(PSI_RE, f64::min(1.0, 0.5 + h_ef / h_0))
}

/// Modulus of elasticity of concrete, MPa from MPa (EN 1992-1-1 Table 3.1): 22 GPa (f_cm / 10 MPa)^0.3.
pub fn modulus(strength_mpa: f64) -> f64 {
    22_000.0 * pow((strength_mpa + 8.0) / 10.0, 0.3)
}
