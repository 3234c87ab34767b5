//! Concrete cone failure (7.2.1.4).

use super::body::{Body, Piece, Reach};
use super::concrete;
use super::document::EN_1992_4;
use super::facts::{ALL_SIDES, Facts};
use super::fields as f;
use super::group::{AreaRows, Basic, projected_area};
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::limit::{at_least, less};
use crate::calc::number::{pow_1_5, sqrt};
use crate::calc::{Sheet, steps};

steps! { 74 "EN 1992-4, cone";
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    H_EF_FULL "h_ef_full" Length (INPUT "" Derived) "Effective embedment as built": Given;
    C_CR_FULL "c_cr_full" Length (EN_1992_4 "7.2.1.4(3)" Secondary) "Characteristic edge distance of the full embedment" = "1.5 * h_ef_full";
    C_CR_FULL_GIVEN "c_cr_full" Length (INPUT "European Technical Assessment" Derived) "Characteristic edge distance of the full embedment, given in place of 1.5 h_ef": Given;
    C_MAX "c_max" Length (EN_1992_4 "7.2.1.4(8)" Secondary) "Largest of the edge distances that are below it": Geometry;
    S_MAX "s_max" Length (EN_1992_4 "7.2.1.4(8)" Secondary) "Largest spacing between neighbours of the group; 0 for one alone": Geometry;
    H_EF_REDUCED "h_ef" Length (EN_1992_4 "7.2.1.4(8)" Secondary) "Embedment that the equations take, because three edges or more are near" = "min(h_ef_full, h_ef_full * max(c_max / c_cr_full, s_max / (2 * c_cr_full)))";
    C_CR_REDUCED "c_cr" Length (EN_1992_4 "7.2.1.4(8)" Secondary) "Characteristic edge distance, reduced alike" = "c_cr_full * h_ef / h_ef_full";
    C_CR "c_cr" Length (EN_1992_4 "7.2.1.4(3)" Secondary) "Characteristic edge distance c_cr_N" = "1.5 * h_ef";
    C_CR_GIVEN "c_cr" Length (INPUT "European Technical Assessment" Derived) "Characteristic edge distance c_cr_N, given in place of 1.5 h_ef": Given;
    S_CR "s_cr" Length (EN_1992_4 "7.2.1.4(3)" Secondary) "Characteristic spacing s_cr_N" = "2 * c_cr";
    N_0 "N0_Rk_c" Force (EN_1992_4 "(7.2)" Secondary) "Resistance of one fastener far from edges and neighbours" = "k_1 * sqrt(f_ck) * h_ef^1.5";
    A_0 "A0_c_N" Area (EN_1992_4 "(7.3)" Secondary) "Projected area of one fastener far from edges" = "s_cr^2";
    A_C "A_c_N" Area (EN_1992_4 "7.2.1.4(3)" Secondary) "Projected area of the group: squares of s_cr about each fastener, united and cut at the edges": Geometry;
    A_CUT "A_c_N" Area (PRACTICE "" Memory) "Projected area of the fastener, cut half way to its neighbours": Geometry;
    A_SHARE "A_c_N" Area (PRACTICE "" Derived) "The fastener's share of the projected area: its own part, or an equal part, if that is larger" = "max(A_own, A_group / n)";
    C "c" Length (EN_1992_4 "7.2.1.4(4)" Secondary) "Smallest distance to an edge": Geometry;
    PSI_S "psi_s_N" Number (EN_1992_4 "(7.4)" Secondary) "Effect of the edge" = "0.7 + 0.3 * c / c_cr";
    PSI_S_FAR "psi_s_N" Number (EN_1992_4 "(7.4)" Secondary) "1, because no edge is nearer than c_cr_N": Condition;
    Z "z" Length (INPUT "" Derived) "Lever arm to the compression under the same base": Given;
    PSI_M "psi_M_N" Number (EN_1992_4 "(7.7)" Secondary) "Effect of compression beside the pulled fasteners" = "max(1, 2 - z / (1.5 * h_ef))";
    PSI_M_NONE "psi_M_N" Number (EN_1992_4 "7.2.1.4(7)" Secondary) "1, because no compression under the same base counts, or an edge is nearer than 1.5 h_ef": Condition;
    N_RK "N_Rk_c" Force (EN_1992_4 "(7.1)" Secondary) "Characteristic resistance to cone failure" = "N0_Rk_c * A_c_N / A0_c_N * psi_s_N * psi_re_N * psi_ec * psi_M_N";
    N_RD "N_Rd_c" Force (EN_1992_4 "Table 7.1, (C.8)" Secondary) "Design resistance" = "k_eq * N_Rk_c / gamma_Mc";
    BETA "beta_N" Utilisation (EN_1992_4 "Table 7.1" Secondary) "Action over resistance" = "N_Ed / N_Rd_c";
}

static AREA: AreaRows = AreaRows { whole: A_C, cut: A_CUT, share: A_SHARE };

/// The embedment that the equations take, where it is less than the full one (7.2.1.4(8)).
pub fn reduced_depth(body: &Body) -> Option<f64> {
    let side = body.farthest_near.filter(|_| body.reach == Reach::Cone && body.near >= 3)?;
    let s_max = body.gap[0].distance_mm(body.gap[1]);
    let part = f64::max(body.edges_mm[side] / body.full_c_cr, s_max / (2.0 * body.full_c_cr));
    Some(f64::min(body.full_depth, body.full_depth * part))
}

/// The factors of a body or of a piece of it, with the steps that lead to them.
pub fn basic(facts: &Facts, body: &Body, piece: Piece, sheet: &mut Sheet) -> Basic {
    let f_ck = concrete::strength(facts, sheet);
    let (h_ef, c_cr) = depth(facts, body, sheet);
    let s_cr = sheet.step(S_CR, 2.0 * c_cr);
    let k_1 = concrete::k_1(facts, sheet);
    let n_0 = sheet.step(N_0, k_1 * sqrt(f_ck) * pow_1_5(h_ef));
    let a = projected_area(facts, body, (piece, &AREA), sheet);
    let a_0 = sheet.step(A_0, s_cr * s_cr);
    let c = body.nearest_mm(piece);
    let psi_s = if at_least(c, c_cr) {
        sheet.step(PSI_S_FAR, 1.0)
    } else {
        sheet.detailed(C, c, || facts.shortest_line_to_edge(body.of(piece), &ALL_SIDES));
        sheet.step(PSI_S, 0.7 + 0.3 * c / c_cr)
    };
    let psi_re = concrete::close_reinforcement(facts, h_ef, sheet);
    let psi_m = compression(facts, (c, body.full_depth, h_ef), sheet);
    Basic { product: n_0 * a / a_0 * psi_s * psi_re * psi_m, s_cr }
}

/// The embedment and the characteristic edge distance that the equations take.
fn depth(facts: &Facts, body: &Body, sheet: &mut Sheet) -> (f64, f64) {
    let given = facts.number(f::C_CR_N).is_some();
    let (Some(reduced), Some(side)) = (reduced_depth(body), body.farthest_near) else {
        let h_ef = sheet.step(H_EF, body.full_depth);
        return (h_ef, sheet.step(if given { C_CR_GIVEN } else { C_CR }, body.full_c_cr));
    };
    sheet.step(H_EF_FULL, body.full_depth);
    sheet.step(if given { C_CR_FULL_GIVEN } else { C_CR_FULL }, body.full_c_cr);
    sheet.detailed(C_MAX, body.edges_mm[side], || facts.shortest_line_to_edge(&body.members, &[side]));
    sheet.detailed(S_MAX, body.gap[0].distance_mm(body.gap[1]), || facts.line(body.gap));
    let h_ef = sheet.step(H_EF_REDUCED, reduced);
    (h_ef, sheet.step(C_CR_REDUCED, body.c_cr))
}

/// psi_M_N (7.7) with the smallest edge distance, the full embedment and the one that the equations take.
fn compression(facts: &Facts, (c, full, h_ef): (f64, f64, f64), sheet: &mut Sheet) -> f64 {
    match facts.number(f::ARM) {
        Some(z) if !less(c, 1.5 * full) => {
            let z = sheet.step(Z, z);
            sheet.step(PSI_M, f64::max(1.0, 2.0 - z / (1.5 * h_ef)))
        }
        _ => sheet.step(PSI_M_NONE, 1.0),
    }
}
