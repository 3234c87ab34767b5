//! Concrete edge failure (7.2.2.5).

use alloc::vec::Vec;

use super::concrete;
use super::document::EN_1992_4;
use super::factor;
use super::facts::{Facts, corners, sides_across, sum};
use super::fields as f;
use super::row::{EdgeForces, EdgeRow, Front};
use super::seismic::{self, Mode};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{at_least, at_most, less};
use crate::calc::number::{pow, pow_1_5, sqrt};
use crate::calc::{CheckId, Part, Sheet, StepId, Subject, System, steps};

steps! { 79 "EN 1992-4, edge";
    D_NOM "d_nom" Length (INPUT "" Derived) "Outside diameter of the fasteners": Given;
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    H "h" Length (INPUT "" Derived) "Thickness of the slab": Given;
    C_1_LEFT "c_1" Length (INPUT "" Derived) "Distance of the row to the left edge": Given;
    C_1_RIGHT "c_1" Length (INPUT "" Derived) "Distance of the row to the right edge": Given;
    C_1_FRONT "c_1" Length (INPUT "" Derived) "Distance of the row to the front edge": Given;
    C_1_REAR "c_1" Length (INPUT "" Derived) "Distance of the row to the rear edge": Given;
    C_1_FULL "c_1_full" Length (INPUT "" Derived) "Distance of the row to the edge": Given;
    C_2_MAX "c_2_max" Length (EN_1992_4 "7.2.2.5(12)" Secondary) "The larger of the distances to the edges at right angles, both below 1.5 c_1": Geometry;
    S_MAX "s_max" Length (EN_1992_4 "7.2.2.5(12)" Secondary) "Largest spacing between neighbours along the edge; 0 for one alone": Geometry;
    C_1_REDUCED "c_1" Length (EN_1992_4 "7.2.2.5(12)" Secondary) "Edge distance that the equations take, because the slab is narrow and thin" = "min(c_1_full, max(c_2_max / 1.5, h / 1.5, s_max / 3))";
    A_0 "A0_c_V" Area (EN_1992_4 "(7.44)" Secondary) "Projected area of one fastener in a deep member far from corners" = "4.5 * c_1^2";
    A_C "A_c_V" Area (EN_1992_4 "7.2.2.5(5)" Secondary) "Projected area on the face of the edge: 1.5 c_1 to both sides of each fastener and below it, united and cut at corners and underside": Geometry;
    C_2 "c_2" Length (EN_1992_4 "(7.45)" Secondary) "Smallest distance to an edge at right angles": Geometry;
    PSI_S "psi_s_V" Number (EN_1992_4 "(7.45)" Secondary) "Effect of the corner" = "0.7 + 0.3 * c_2 / (1.5 * c_1)";
    PSI_S_FAR "psi_s_V" Number (EN_1992_4 "(7.45)" Secondary) "1, because no edge at right angles is nearer than 1.5 c_1": Condition;
    PSI_H "psi_h_V" Number (EN_1992_4 "(7.46)" Secondary) "Effect of the thickness, which is below 1.5 c_1" = "sqrt(1.5 * c_1 / h)";
    PSI_H_THICK "psi_h_V" Number (EN_1992_4 "(7.46)" Secondary) "1, because the slab is at least 1.5 c_1 thick": Condition;
    PSI_RE "psi_re_V" Number (EN_1992_4 "7.2.2.5(11)" Memory) "1, because the concrete is uncracked or no edge bars with stirrups are given": Condition;
    PSI_RE_BARS "psi_re_V" Number (EN_1992_4 "7.2.2.5(11)" Memory) "Cracked concrete with edge bars and close stirrups or mesh": Condition;
    L_F_GIVEN "l_f_full" Length (INPUT "European Technical Assessment" Derived) "Effective length of the fastener, given in place of h_ef": Given;
    L_F_H_EF "l_f_full" Length (EN_1992_4 "7.2.2.5(3)" Secondary) "Effective length of the fastener" = "h_ef";
    L_F "l_f" Length (EN_1992_4 "7.2.2.5(3)" Secondary) "Effective length that counts, the diameter being at most 24 mm" = "min(l_f_full, 12 * d_nom)";
    L_0 "l_0" Length (EN_1992_4 "7.2.2.5(3)" Secondary) "Length that always counts": Constant;
    L_F_THICK "l_f" Length (EN_1992_4 "7.2.2.5(3)" Secondary) "Effective length that counts, the diameter being above 24 mm" = "min(l_f_full, max(8 * d_nom, l_0))";
    ALPHA "alpha" Number (EN_1992_4 "(7.42)" Secondary) "Exponent of the diameter" = "0.1 * (l_f / c_1)^0.5";
    BETA "beta" Number (EN_1992_4 "(7.43)" Secondary) "Exponent of the length" = "0.1 * (d_nom / c_1)^0.2";
    U_MM "u_mm" Length (EN_1992_4 "(7.41)" Secondary) "One millimetre, the unit of the clause": Constant;
    K_9 "k_9" Empirical { force: 3, length: -3 } (EN_1992_4 "(7.41)" Secondary) "Factor in cracked concrete": Constant;
    K_9_WHOLE "k_9" Empirical { force: 3, length: -3 } (EN_1992_4 "(7.41)" Secondary) "Factor in uncracked concrete": Constant;
    V_0 "V0_Rk_c" Force (EN_1992_4 "(7.41)" Secondary) "Resistance of one fastener towards the edge" = "k_9 * (d_nom / u_mm)^alpha * (l_f / u_mm)^beta * sqrt(f_ck) * c_1^1.5";

    N_FRONT "n_front" Number (EN_1992_4 "6.2.2.2" Memory) "Number of fasteners nearest to the edge; with clearance in the holes they alone take the shear towards it": Given;
    LAYOUT "n_all" Number (EN_1992_4 "Figures 1.1, 1.2" Memory) "More than four fasteners share the shear near an edge with clearance in the holes: the figures of the standard show one, two and two by two": Condition;
    V_ALL_I "V_all_i" Force (STATICS "base reactions" Derived) "Shear towards the edge on each fastener of the base": Solved;
    T_ALL_I "t_all_i" Length (INPUT "" Derived) "Place of each fastener of the base along the edge": Given;
    U_FRONT_I "u_front_i" Length (INPUT "" Derived) "Place of each of the nearest fasteners along the edge": Given;
    V_SUM "V_sum" Force (STATICS "" Derived) "Shear of the base towards the edge" = "sum(V_all_i)";
    U_C "u_c" Length (STATICS "" Derived) "Middle of the nearest fasteners" = "sum(u_front_i) / n_front";
    M_T "M_t" Moment (STATICS "" Derived) "Moment of the shear about it" = "sum(V_all_i * (t_all_i - u_c))";
    J_T "J_t" Area (STATICS "" Derived) "Sum of the squares of their distances from it" = "sum((u_front_i - u_c) * (u_front_i - u_c))";
    U_I "u_i" Length (INPUT "" Derived) "Place of each fastener of the row along the edge": Given;
    V_PERP_I "V_perp_i" Force (STATICS "base reactions" Derived) "Shear towards the edge on each fastener of the row": Solved;
    V_PERP_FRONT_I "V_perp_i" Force (STATICS "" Derived) "Shear towards the edge that comes to each fastener of the row" = "V_sum / n_front + M_t * (u_i - u_c) / J_t";
    V_PERP_ONE_I "V_perp_i" Force (STATICS "" Derived) "Shear towards the edge that comes to the fastener" = "V_sum";
    V_PAR_I "V_par_i" Force (STATICS "base reactions" Derived) "Shear along the edge on each fastener of the row": Solved;
    N "n" Number (STATICS "" Derived) "Number of fasteners in the row": Given;
    E_V "e_V" Length (EN_1992_4 "(7.47)" Secondary) "Eccentricity of the shear along the edge" = "abs(sum(V_perp_i * u_i) / sum(V_perp_i) - sum(u_i) / n)";
    PSI_EC "psi_ec_V" Number (EN_1992_4 "(7.47)" Secondary) "Effect of the eccentricity" = "1 / (1 + 2 * e_V / (3 * c_1))";
    PSI_EC_ALONG "psi_ec_V" Number (EN_1992_4 "(7.47)" Secondary) "1 for shear along the edge": Condition;
    V_PERP "V_perp" Force (STATICS "" Derived) "Shear towards the edge" = "sum(V_perp_i)";
    V_PAR "V_par" Force (STATICS "" Derived) "Shear along the edge; shears that oppose each other do not cancel" = "sum(abs(V_par_i))";
    V_ED "V_Ed" Force (EN_1992_4 "7.2.2.5(9)" Memory) "Shear on the row" = "sqrt(V_perp^2 + V_par^2)";
    V_ED_ALONG "V_Ed" Force (EN_1992_4 "7.2.2.5(9)" Memory) "Shear on the row, along the edge only" = "sum(abs(V_par_i))";
    PSI_ALPHA "psi_alpha_V" Number (EN_1992_4 "(7.48)" Secondary) "Effect of the angle between the shear and the normal of the edge" = "sqrt(1 / ((V_perp / V_Ed)^2 + (0.5 * V_par / V_Ed)^2))";
    PSI_ALPHA_ALONG "psi_alpha_V" Number (EN_1992_4 "(7.48)" Secondary) "Effect of the angle, the shear going along the edge": Condition;
    V_RK "V_Rk_c" Force (EN_1992_4 "(7.40)" Secondary) "Characteristic resistance to edge failure" = "V0_Rk_c * A_c_V / A0_c_V * psi_s_V * psi_h_V * psi_ec_V * psi_alpha_V * psi_re_V";
    V_RD "V_Rd_c" Force (EN_1992_4 "Table 7.2, (C.8)" Secondary) "Design resistance" = "k_eq * V_Rk_c / gamma_Mc";
    BETA_V "beta_V" Utilisation (EN_1992_4 "Table 7.2" Secondary) "Action over resistance" = "V_Ed / V_Rd_c";
}

const C_1: [StepId; 4] = [C_1_LEFT, C_1_RIGHT, C_1_FRONT, C_1_REAR];

/// Diameter up to which twelve diameters of length count.
const D_THIN_MM: f64 = 24.0;
/// Length that always counts for thicker ones.
const L_0_MM: f64 = 300.0;

/// The factors of a row that no force changes.
#[derive(Clone, Copy, Debug)]
pub struct Basic {
    product: f64,
    c_1: f64,
}

/// A row with its factors.
pub struct KnownRow {
    /// The row.
    pub row: EdgeRow,
    basic: Basic,
}

impl KnownRow {
    /// The row with its factors worked out.
    pub fn new(facts: &Facts, row: EdgeRow) -> KnownRow {
        let basic = basic(facts, &row, &mut Sheet::quiet());
        KnownRow { row, basic }
    }

    /// Action over resistance of the row under what comes to it, told as group `number`; `sharing` fasteners are sheared.
    pub fn ratio(&self, facts: &Facts, forces: &EdgeForces, (number, sharing): (u16, usize), sheet: &mut Sheet) -> f64 {
        let row = &self.row;
        sheet.open(Part::Anchors, Subject::Group(number), Some(CheckId::AnchorShearBreakout), System::Si);
        if sheet.is_told() {
            basic(facts, row, sheet);
            self.tell_forces(facts, forces, sheet);
        }
        let (towards, along) = (&forces.towards, &forces.along);
        let place = |place: usize| facts.anchors[place].along_mm(row.side);
        let n = sheet.step(N, row.members.len() as f64);
        let total = sum(&row.members, |place| towards[place]);
        let resultant = sum(&row.members, |member| towards[member] * place(member)) / total;
        let e_v = sheet.step(E_V, (resultant - sum(&row.members, place) / n).abs());
        let psi_ec = sheet.step(PSI_EC, 1.0 / (1.0 + 2.0 * e_v / (3.0 * self.basic.c_1)));
        let v_perp = sheet.step(V_PERP, total);
        let v_par = sheet.step(V_PAR, sum(&row.members, |place| along[place].abs()));
        let v_ed = sheet.step(V_ED, sqrt(v_perp * v_perp + v_par * v_par));
        let (towards, along) = (v_perp / v_ed, 0.5 * v_par / v_ed);
        let psi_alpha = sheet.step(PSI_ALPHA, sqrt(1.0 / (towards * towards + along * along)));
        self.against(facts, (v_ed, psi_ec * psi_alpha), sharing, sheet)
    }

    /// The same for fasteners that are only sheared along the edge.
    pub fn ratio_along(&self, facts: &Facts, forces: &EdgeForces, of: (u16, usize), sheet: &mut Sheet) -> f64 {
        let (number, sharing) = of;
        sheet.open(Part::Anchors, Subject::Group(number), Some(CheckId::AnchorShearBreakout), System::Si);
        if sheet.is_told() {
            basic(facts, &self.row, sheet);
            self.tell_along(forces, sheet);
        }
        let v_ed = sheet.step(V_ED_ALONG, sum(&self.row.members, |place| forces.along[place].abs()));
        let psi_ec = sheet.step(PSI_EC_ALONG, 1.0);
        let psi_alpha = sheet.step(PSI_ALPHA_ALONG, 2.0);
        self.against(facts, (v_ed, psi_ec * psi_alpha), sharing, sheet)
    }

    fn against(&self, facts: &Facts, (v_ed, psi): (f64, f64), sharing: usize, sheet: &mut Sheet) -> f64 {
        let v_rk = sheet.step(V_RK, self.basic.product * psi);
        let k_eq = seismic::reduction(facts, Mode::Edge, sharing, sheet);
        let gamma = factor::concrete_shear(facts, sheet);
        let v_rd = sheet.step(V_RD, k_eq * v_rk / gamma);
        sheet.step(BETA_V, v_ed / v_rd)
    }

    fn tell_along(&self, forces: &EdgeForces, sheet: &mut Sheet) {
        let along: Vec<f64> = self.row.members.iter().map(|&place| forces.along[place]).collect();
        sheet.carry_each(V_PAR_I, &along);
    }

    fn tell_forces(&self, facts: &Facts, forces: &EdgeForces, sheet: &mut Sheet) {
        let place = |place: usize| facts.anchors[place].along_mm(self.row.side);
        let of = |value: &dyn Fn(usize) -> f64| -> Vec<f64> { self.row.members.iter().map(|&p| value(p)).collect() };
        if let Some(front) = &forces.front {
            tell_front(facts, (self.row.side, front), sheet);
        }
        sheet.each(U_I, &of(&place));
        let towards = of(&|place| forces.towards[place]);
        match &forces.front {
            // What comes to a neighbour is that of its fellow in our base.
            _ if self.row.members.iter().any(|&place| place >= facts.own) => sheet.carry_each(V_PERP_I, &towards),
            Some(front) if front.members.len() > 1 => sheet.each(V_PERP_FRONT_I, &towards),
            Some(_) => sheet.each(V_PERP_ONE_I, &towards),
            None => sheet.carry_each(V_PERP_I, &towards),
        }
        self.tell_along(forces, sheet);
    }
}

/// How the nearest fasteners come to take all of the shear towards the edge.
fn tell_front(facts: &Facts, (side, front): (usize, &Front), sheet: &mut Sheet) {
    let place = |place: usize| facts.anchors[place].along_mm(side);
    let all: Vec<f64> = (0..facts.own).map(place).collect();
    let nearest: Vec<f64> = front.members.iter().map(|&member| place(member)).collect();
    if facts.own > 4 {
        sheet.step(LAYOUT, facts.own as f64);
    }
    sheet.step(N_FRONT, front.members.len() as f64);
    sheet.carry_each(V_ALL_I, &front.shares);
    sheet.step(V_SUM, front.total);
    if front.members.len() > 1 {
        sheet.each(T_ALL_I, &all);
        sheet.each(U_FRONT_I, &nearest);
        sheet.step(U_C, front.middle_mm);
        sheet.step(M_T, front.moment);
        sheet.step(J_T, front.squares_mm2);
    }
}

/// The factors of a row, with the steps that lead to them.
fn basic(facts: &Facts, row: &EdgeRow, sheet: &mut Sheet) -> Basic {
    let f_ck = concrete::strength(facts, sheet);
    let h = sheet.step(H, facts.h);
    let c_1 = edge_distance(facts, row, sheet);
    let a_0 = sheet.step(A_0, 4.5 * (c_1 * c_1));
    let a = sheet.detailed(A_C, row.area_mm2, || corners(&row.outline(facts)));
    let c_2 = row.corners_mm[0].min(row.corners_mm[1]);
    let psi_s = if at_least(c_2, 1.5 * c_1) {
        sheet.step(PSI_S_FAR, 1.0)
    } else {
        sheet.detailed(C_2, c_2, || facts.shortest_line_to_edge(&row.members, &sides_across(row.side)));
        sheet.step(PSI_S, 0.7 + 0.3 * c_2 / (1.5 * c_1))
    };
    let psi_h = if less(h, 1.5 * c_1) { sheet.step(PSI_H, sqrt(1.5 * c_1 / h)) } else { sheet.step(PSI_H_THICK, 1.0) };
    let has_bars = facts.is_cracked && facts.is(f::EDGE_BARS, f::STIRRUPS);
    let psi_re = if has_bars { sheet.step(PSI_RE_BARS, 1.4) } else { sheet.step(PSI_RE, 1.0) };
    let v_0 = single(facts, row, (f_ck, c_1), sheet);
    Basic { product: v_0 * a / a_0 * psi_s * psi_h * psi_re, c_1 }
}

/// The edge distance that the equations take (7.2.2.5(12)).
fn edge_distance(facts: &Facts, row: &EdgeRow, sheet: &mut Sheet) -> f64 {
    if !row.narrow {
        return sheet.step(C_1[row.side], row.edge_mm);
    }
    sheet.step(C_1_FULL, row.edge_mm);
    let farther = usize::from(row.corners_mm[1] > row.corners_mm[0]);
    let side = sides_across(row.side)[farther];
    sheet.detailed(C_2_MAX, row.corners_mm[farther], || facts.shortest_line_to_edge(&row.members, &[side]));
    sheet.detailed(S_MAX, row.gap[0].distance_mm(row.gap[1]), || facts.line(row.gap));
    sheet.step(C_1_REDUCED, row.depth_mm)
}

/// V0_Rk_c (7.41) with the strength of the concrete and the edge distance.
fn single(facts: &Facts, row: &EdgeRow, (f_ck, c_1): (f64, f64), sheet: &mut Sheet) -> f64 {
    let first = &facts.anchors[row.members[0]];
    let d_nom = sheet.step(D_NOM, first.d_nom);
    let full = match facts.number(f::L_F) {
        Some(given) => sheet.step(L_F_GIVEN, given),
        None => {
            let h_ef = sheet.step(H_EF, first.h_ef);
            sheet.step(L_F_H_EF, h_ef)
        }
    };
    let l_f = if at_most(d_nom, D_THIN_MM) {
        sheet.step(L_F, full.min(12.0 * d_nom))
    } else {
        let l_0 = sheet.step(L_0, L_0_MM);
        sheet.step(L_F_THICK, full.min(f64::max(8.0 * d_nom, l_0)))
    };
    let alpha = sheet.step(ALPHA, 0.1 * sqrt(l_f / c_1));
    let beta = sheet.step(BETA, 0.1 * pow(d_nom / c_1, 0.2));
    let u_mm = sheet.step(U_MM, 1.0);
    let k_9 = if facts.is_cracked { sheet.step(K_9, 1.7) } else { sheet.step(K_9_WHOLE, 2.4) };
    let v_0 = k_9 * pow(d_nom / u_mm, alpha) * pow(l_f / u_mm, beta) * sqrt(f_ck) * pow_1_5(c_1);
    sheet.step(V_0, v_0)
}
