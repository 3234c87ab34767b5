//! Combined pull-out and concrete failure of bonded anchors (7.2.1.6).

use super::body::{Body, Piece, Reach};
use super::concrete;
use super::document::EN_1992_4;
use super::facts::{ALL_SIDES, Anchor, Facts};
use super::fields as f;
use super::group::{AreaRows, Basic, projected_area};
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::limit::{at_least, at_most};
use crate::calc::number::{pow_1_5, sqrt};
use crate::calc::{Sheet, steps};

steps! { 76 "EN 1992-4, bond";
    D "d" Length (INPUT "" Derived) "Diameter of the fastener": Given;
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    TAU_C20 "tau_Rk_C20" Stress (INPUT "European Technical Assessment" Derived) "Bond strength in concrete C20/25, cracked or uncracked as the slab": Given;
    PSI_C "psi_c" Number (INPUT "European Technical Assessment" Derived) "Increasing factor for the concrete": Given;
    TAU "tau_Rk" Stress (EN_1992_4 "7.2.1.6(2)" Secondary) "Bond strength in this concrete" = "psi_c * tau_Rk_C20";
    TAU_EQ "tau_Rk" Stress (INPUT "European Technical Assessment" Derived) "Bond strength of the seismic category": Given;
    TAU_UCR "tau_Rk_ucr" Stress (INPUT "European Technical Assessment" Derived) "Bond strength in uncracked concrete C20/25": Given;
    ALPHA_SUS "alpha_sus" Number (INPUT "" Derived) "Sustained part of the pull": Given;
    PSI_0_SUS "psi0_sus" Number (EN_1992_4 "7.2.1.6(2)" Secondary) "Factor on bond under sustained pull; 0.6 where the assessment says nothing": Given;
    PSI_SUS "psi_sus" Number (EN_1992_4 "(7.14)" Secondary) "Effect of sustained pull" = "psi0_sus + 1 - alpha_sus";
    PSI_SUS_NONE "psi_sus" Number (EN_1992_4 "(7.14)" Secondary) "1, because the sustained part is at most psi0_sus": Condition;
    K_S "k_s" Empirical { force: -3, length: 6 } (EN_1992_4 "(7.15)" Secondary) "Factor of the characteristic spacing": Constant;
    S_CR "s_cr" Length (EN_1992_4 "(7.15)" Secondary) "Characteristic spacing s_cr_Np" = "min(k_s * d * sqrt(psi_sus * tau_Rk_ucr), 3 * h_ef)";
    C_CR "c_cr" Length (EN_1992_4 "(7.16)" Secondary) "Characteristic edge distance c_cr_Np" = "s_cr / 2";
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    N_0 "N0_Rk_p" Force (EN_1992_4 "(7.14)" Secondary) "Resistance of one anchor far from edges and neighbours" = "psi_sus * tau_Rk * pi * d * h_ef";
    A_0 "A0_p_N" Area (EN_1992_4 "7.2.1.6(3)" Secondary) "Area of one anchor far from edges" = "s_cr^2";
    A_P "A_p_N" Area (EN_1992_4 "7.2.1.6(3)" Secondary) "Area of the group: squares of s_cr about each anchor, united and cut at the edges": Geometry;
    A_CUT "A_p_N" Area (PRACTICE "" Memory) "Area of the anchor, cut half way to its neighbours": Geometry;
    K_3 "k_3" Empirical { force: 3, length: -3 } (EN_1992_4 "(7.19)" Secondary) "Factor of the bond at which the concrete governs, cracked": Constant;
    K_3_WHOLE "k_3" Empirical { force: 3, length: -3 } (EN_1992_4 "(7.19)" Secondary) "Factor of the bond at which the concrete governs, uncracked": Constant;
    TAU_CONCRETE "tau_Rk_c" Stress (EN_1992_4 "(7.19)" Secondary) "Bond at which the concrete governs" = "k_3 / (pi * d) * sqrt(h_ef * f_ck)";
    N "n" Number (STATICS "" Derived) "Number of anchors in the group": Given;
    PSI_G_0 "psi0_g_Np" Number (EN_1992_4 "(7.18)" Secondary) "Effect of the group at no spacing" = "max(1, sqrt(n) - (sqrt(n) - 1) * (tau_Rk / tau_Rk_c)^1.5)";
    S "s" Length (EN_1992_4 "7.2.1.6(4)" Memory) "Largest spacing between neighbours; the clause takes the mean": Geometry;
    PSI_G "psi_g_Np" Number (EN_1992_4 "(7.17)" Secondary) "Effect of the group" = "max(1, psi0_g_Np - sqrt(s / s_cr) * (psi0_g_Np - 1))";
    PSI_G_ONE "psi_g_Np" Number (EN_1992_4 "(7.17)" Secondary) "1 for one anchor": Condition;
    C "c" Length (EN_1992_4 "7.2.1.6(5)" Secondary) "Smallest distance to an edge": Geometry;
    PSI_S "psi_s_Np" Number (EN_1992_4 "(7.20)" Secondary) "Effect of the edge" = "0.7 + 0.3 * c / c_cr";
    PSI_S_FAR "psi_s_Np" Number (EN_1992_4 "(7.20)" Secondary) "1, because no edge is nearer than c_cr_Np": Condition;
    N_RK "N_Rk_p" Force (EN_1992_4 "(7.13)" Secondary) "Characteristic resistance to combined pull-out and concrete failure" = "N0_Rk_p * A_p_N / A0_p_N * psi_g_Np * psi_s_Np * psi_re_N * psi_ec";
    N_RD "N_Rd_p" Force (EN_1992_4 "Table 7.1, (C.8)" Secondary) "Design resistance" = "k_eq * N_Rk_p / gamma_Mc";
    BETA "beta_N" Utilisation (EN_1992_4 "Table 7.1" Secondary) "Action over resistance" = "N_Ed / N_Rd_p";
}

// Shares are those of the cone.
static AREA: AreaRows = AreaRows { whole: A_P, cut: A_CUT, share: A_P };

/// Factor of the characteristic spacing, mm per root of MPa, over the diameter.
const K_S_VALUE: f64 = 7.3;

/// c_cr_Np of an anchor; not a number while a value of its assessment is missing.
pub fn edge_distance(facts: &Facts, anchor: &Anchor) -> f64 {
    spacing(facts, anchor, &mut Sheet::quiet()) / 2.0
}

/// N0_Rk_p of one anchor, with the steps that lead to it.
pub fn single(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let d = sheet.step(D, anchor.d);
    let h_ef = sheet.step(H_EF, anchor.h_ef);
    let tau = strength(facts, sheet);
    let psi_sus = sustained(facts, sheet);
    let pi = sheet.step(PI, core::f64::consts::PI);
    sheet.step(N_0, psi_sus * tau * pi * d * h_ef)
}

/// The factors of a body or of a piece of it, with the steps that lead to them.
pub fn basic(facts: &Facts, body: &Body, piece: Piece, sheet: &mut Sheet) -> Basic {
    let anchor = &facts.anchors[body.members[0]];
    let f_ck = concrete::strength(facts, sheet);
    let n_0 = single(facts, anchor, sheet);
    let s_cr = spacing(facts, anchor, sheet);
    let c_cr = sheet.step(C_CR, s_cr / 2.0);
    let a = projected_area(facts, body, (piece, &AREA), sheet);
    let a_0 = sheet.step(A_0, s_cr * s_cr);
    let psi_g = match piece {
        Piece::Whole if body.members.len() > 1 => together(facts, body, (f_ck, s_cr), sheet),
        _ => sheet.step(PSI_G_ONE, 1.0),
    };
    let c = body.nearest_mm(piece);
    let psi_s = if at_least(c, c_cr) {
        sheet.step(PSI_S_FAR, 1.0)
    } else {
        sheet.detailed(C, c, || facts.shortest_line_to_edge(body.of(piece), &ALL_SIDES));
        sheet.step(PSI_S, 0.7 + 0.3 * c / c_cr)
    };
    let psi_re = concrete::close_reinforcement(facts, anchor.h_ef, sheet);
    Basic { product: n_0 * a / a_0 * psi_g * psi_s * psi_re, s_cr }
}

/// tau_Rk of this concrete, or of the seismic category.
fn strength(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let given = |field: usize| facts.number(field).unwrap_or(f64::NAN);
    if facts.is_seismic {
        return sheet.step(TAU_EQ, given(f::TAU_RK_EQ));
    }
    let tau = sheet.step(TAU_C20, facts.by_cracking([f::TAU_RK_CR, f::TAU_RK_UCR]).unwrap_or(f64::NAN));
    let psi_c = sheet.step(PSI_C, given(f::PSI_C));
    sheet.step(TAU, psi_c * tau)
}

/// psi_sus (7.14).
fn sustained(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let alpha = sheet.step(ALPHA_SUS, facts.values.given(f::ALPHA_SUS));
    let psi_0 = sheet.step(PSI_0_SUS, facts.values.given(f::PSI_0_SUS));
    if at_most(alpha, psi_0) { sheet.step(PSI_SUS_NONE, 1.0) } else { sheet.step(PSI_SUS, psi_0 + 1.0 - alpha) }
}

/// s_cr_Np (7.15), from psi_sus, d and h_ef that stand on the sheet.
fn spacing(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let tau_ucr = sheet.step(TAU_UCR, facts.number(f::TAU_RK_UCR).unwrap_or(f64::NAN));
    let psi_sus = sustained(facts, &mut Sheet::quiet());
    let k_s = sheet.step(K_S, K_S_VALUE);
    let by_bond = k_s * anchor.d * sqrt(psi_sus * tau_ucr);
    sheet.step(S_CR, if by_bond > 3.0 * anchor.h_ef { 3.0 * anchor.h_ef } else { by_bond })
}

/// psi_g_Np (7.17) with the strength of the concrete and s_cr_Np.
fn together(facts: &Facts, body: &Body, (f_ck, s_cr): (f64, f64), sheet: &mut Sheet) -> f64 {
    debug_assert_eq!(body.reach, Reach::Bond);
    let anchor = &facts.anchors[body.members[0]];
    let tau = strength(facts, &mut Sheet::quiet());
    let k_3 = if facts.is_cracked { sheet.step(K_3, 7.7) } else { sheet.step(K_3_WHOLE, 11.0) };
    let by_concrete = k_3 / (core::f64::consts::PI * anchor.d) * sqrt(anchor.h_ef * f_ck);
    let by_concrete = sheet.step(TAU_CONCRETE, by_concrete);
    let n = sheet.step(N, body.members.len() as f64);
    let psi_0 = f64::max(1.0, sqrt(n) - (sqrt(n) - 1.0) * pow_1_5(tau / by_concrete));
    let psi_0 = sheet.step(PSI_G_0, psi_0);
    let s = sheet.detailed(S, body.gap[0].distance_mm(body.gap[1]), || facts.line(body.gap));
    sheet.step(PSI_G, f64::max(1.0, psi_0 - sqrt(s / s_cr) * (psi_0 - 1.0)))
}
