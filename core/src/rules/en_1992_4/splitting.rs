//! Splitting of the concrete under load (7.2.1.7).

use super::body::{Body, Piece, Reach};
use super::concrete;
use super::coverage as c;
use super::document::EN_1992_4;
use super::facts::{ALL_SIDES, Facts};
use super::fields as f;
use super::group::{AreaRows, Basic, projected_area};
use super::{bond, pullout};
use crate::calc::clause::INPUT;
use crate::calc::limit::at_least;
use crate::calc::number::{pow, pow_1_5, sqrt};
use crate::calc::{Sheet, StepId, steps};

steps! { 77 "EN 1992-4, splitting";
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    N_0_CONE "N0_Rk_c" Force (EN_1992_4 "(7.2)" Secondary) "Cone resistance of one fastener far from edges and neighbours" = "k_1 * sqrt(f_ck) * h_ef^1.5";
    N_0_HEADED "N0_Rk_sp" Force (EN_1992_4 "7.2.1.7" Secondary) "Resistance of one fastener to splitting: the lesser of cone and pull-out" = "min(N0_Rk_c, N_Rk_p)";
    N_0_BONDED "N0_Rk_sp" Force (EN_1992_4 "7.2.1.7" Secondary) "Resistance of one anchor to splitting: the lesser of cone and bond" = "min(N0_Rk_c, N0_Rk_p)";
    N_0_GIVEN "N0_Rk_sp" Force (INPUT "European Technical Assessment" Derived) "Resistance of one fastener to splitting": Given;
    C_CR "c_cr" Length (INPUT "European Technical Assessment" Derived) "Characteristic edge distance for splitting c_cr_sp": Given;
    S_CR "s_cr" Length (EN_1992_4 "7.2.1.7" Secondary) "Characteristic spacing for splitting s_cr_sp" = "2 * c_cr";
    A_0 "A0_c_N" Area (EN_1992_4 "7.2.1.7" Secondary) "Area of one fastener far from edges" = "s_cr^2";
    A_C "A_c_N" Area (EN_1992_4 "7.2.1.7" Secondary) "Area of the group: squares of s_cr about each fastener, united and cut at the edges": Geometry;
    C "c" Length (EN_1992_4 "7.2.1.7" Secondary) "Smallest distance to an edge": Geometry;
    PSI_S "psi_s_N" Number (EN_1992_4 "(7.4)" Secondary) "Effect of the edge" = "0.7 + 0.3 * c / c_cr";
    PSI_S_FAR "psi_s_N" Number (EN_1992_4 "(7.4)" Secondary) "1, because no edge is nearer than c_cr_sp": Condition;
    C_1 "c_1" Length (EN_1992_4 "(7.24)" Memory) "Smallest distance to an edge": Geometry;
    H "h" Length (INPUT "" Derived) "Thickness of the slab": Given;
    H_MIN "h_min" Length (INPUT "European Technical Assessment" Derived) "Least thickness": Given;
    PSI_H "psi_h_sp" Number (EN_1992_4 "(7.24)" Memory) "Effect of the thickness; of two limits that are remembered the smaller is taken" = "min((h / h_min)^(2/3), max(1, min(2, ((h_ef + 1.5 * c_1) / h_min)^(2/3))), max(1, (2 * h_ef / h_min)^(2/3)))";
    PSI_H_THIN "psi_h_sp" Number (EN_1992_4 "(7.24)" Memory) "Effect of the thickness; there is no edge, and the slab is thinner than h_min" = "(h / h_min)^(2/3)";
    N_RK "N_Rk_sp" Force (EN_1992_4 "(7.23)" Secondary) "Characteristic resistance to splitting" = "N0_Rk_sp * A_c_N / A0_c_N * psi_s_N * psi_re_N * psi_ec * psi_h_sp";
    N_RD "N_Rd_sp" Force (EN_1992_4 "Table 7.1, (C.8)" Secondary) "Design resistance" = "k_eq * N_Rk_sp / gamma_Mc";
    BETA "beta_N" Utilisation (EN_1992_4 "Table 7.1" Secondary) "Action over resistance" = "N_Ed / N_Rd_sp";
}

// Only the whole body splits.
static AREA: AreaRows = AreaRows { whole: A_C, cut: A_C, share: A_C };

/// Edge distance over c_cr_sp from which one fastener, or a group, does not split the concrete.
const FAR: [f64; 2] = [1.0, 1.2];

/// Why splitting need not be checked for these fasteners; none where it must be.
pub fn released(facts: &Facts, pulled: &[usize]) -> Option<StepId> {
    if facts.is_cracked && facts.is(f::SPLITTING, f::REINFORCED) {
        return Some(c::NO_SPLITTING_BARS);
    }
    let nearest = pulled.iter().fold(f64::INFINITY, |least, &place| least.min(facts.anchors[place].nearest_edge_mm()));
    let far = FAR[usize::from(pulled.len() > 1)];
    // Where there is no edge at all it is far whatever the characteristic distance.
    let is_far = nearest.is_infinite() || facts.number(f::C_CR_SP).is_some_and(|c_cr| at_least(nearest, far * c_cr));
    let is_thick = facts.number(f::H_MIN).is_some_and(|h_min| at_least(facts.h, h_min));
    (is_far && is_thick).then_some(c::NO_SPLITTING_FAR)
}

/// The factors of a body or of a piece of it, with the steps that lead to them.
pub fn basic(facts: &Facts, body: &Body, piece: Piece, sheet: &mut Sheet) -> Basic {
    debug_assert_eq!(body.reach, Reach::Splitting);
    let h_ef = sheet.step(H_EF, body.full_depth);
    let n_0 = single(facts, body, sheet);
    let c_cr = sheet.step(C_CR, body.c_cr);
    let s_cr = sheet.step(S_CR, 2.0 * c_cr);
    let a = projected_area(facts, body, (piece, &AREA), sheet);
    let a_0 = sheet.step(A_0, s_cr * s_cr);
    let c = body.nearest_mm(piece);
    let line = || facts.shortest_line_to_edge(body.of(piece), &ALL_SIDES);
    let psi_s = if at_least(c, c_cr) {
        sheet.step(PSI_S_FAR, 1.0)
    } else {
        sheet.detailed(C, c, line);
        sheet.step(PSI_S, 0.7 + 0.3 * c / c_cr)
    };
    let psi_re = concrete::close_reinforcement(facts, h_ef, sheet);
    let h = sheet.step(H, facts.h);
    let h_min = sheet.step(H_MIN, facts.number(f::H_MIN).unwrap_or(f64::NAN));
    let by_thickness = pow(h / h_min, 2.0 / 3.0);
    let by_depth = f64::max(1.0, pow(2.0 * h_ef / h_min, 2.0 / 3.0));
    let psi_h = if c.is_finite() {
        sheet.detailed(C_1, c, line);
        let by_edge = pow((h_ef + 1.5 * c) / h_min, 2.0 / 3.0).clamp(1.0, 2.0);
        sheet.step(PSI_H, by_thickness.min(by_edge).min(by_depth))
    } else {
        // Without an edge only a slab that is too thin gets here.
        sheet.step(PSI_H_THIN, by_thickness)
    };
    Basic { product: n_0 * a / a_0 * psi_s * psi_re * psi_h, s_cr }
}

/// N0_Rk_sp.
fn single(facts: &Facts, body: &Body, sheet: &mut Sheet) -> f64 {
    if let Some(given) = facts.number(f::N_0_RK_SP) {
        return sheet.step(N_0_GIVEN, given);
    }
    // Mixed sizes: the weakest of the group.
    let weakest = |of: &dyn Fn(usize) -> f64| {
        body.members.iter().copied().reduce(|a, b| if of(b) < of(a) { b } else { a }).unwrap_or(body.members[0])
    };
    let f_ck = concrete::strength(facts, sheet);
    let k_1 = concrete::k_1(facts, sheet);
    let cone = sheet.step(N_0_CONE, k_1 * sqrt(f_ck) * pow_1_5(body.full_depth));
    if facts.is_bonded() {
        let bond = bond::single(facts, &facts.anchors[body.members[0]], sheet);
        return sheet.step(N_0_BONDED, if bond > cone { cone } else { bond });
    }
    let quiet = |place: usize| pullout::resistance(facts, &facts.anchors[place], &mut Sheet::quiet());
    let pull = pullout::resistance(facts, &facts.anchors[weakest(&quiet)], sheet);
    sheet.step(N_0_HEADED, if pull > cone { cone } else { pull })
}
