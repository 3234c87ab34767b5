//! Blow-out of the concrete beside headed fasteners near an edge (7.2.1.8).

use alloc::vec::Vec;

use super::document::EN_1992_4;
use super::facts::{Facts, compared, corners, sides_across, sum};
use super::group::Found;
use super::row::ROW_MM;
use super::seismic::{self, Mode};
use super::{concrete, factor};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{at_most, less};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Part, Sheet, StepId, Subject, System, steps};
use crate::geometry::{Point, Rectangle, union_area_mm2, union_outline, widest_gap};
use crate::rules::anchor_set::{Set, connected, members, only};

steps! { 81 "EN 1992-4, blow-out";
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment, at least twice the edge distance": Given;
    C_1_LEFT "c_1" Length (INPUT "" Derived) "Distance of the row to the left edge": Given;
    C_1_RIGHT "c_1" Length (INPUT "" Derived) "Distance of the row to the right edge": Given;
    C_1_FRONT "c_1" Length (INPUT "" Derived) "Distance of the row to the front edge": Given;
    C_1_REAR "c_1" Length (INPUT "" Derived) "Distance of the row to the rear edge": Given;
    A_H "A_h" Area (INPUT "" Derived) "Bearing area of the smallest head of the row": Given;
    K_5 "k_5" Empirical { force: 3, length: -6 } (EN_1992_4 "(7.26)" Secondary) "Factor in cracked concrete": Constant;
    K_5_WHOLE "k_5" Empirical { force: 3, length: -6 } (EN_1992_4 "(7.26)" Secondary) "Factor in uncracked concrete": Constant;
    N_0 "N0_Rk_cb" Force (EN_1992_4 "(7.26)" Secondary) "Resistance of one fastener far from corners and neighbours" = "k_5 * c_1 * sqrt(A_h) * sqrt(f_ck)";
    A_0 "A0_c_Nb" Area (EN_1992_4 "(7.27)" Secondary) "Area on the side of one fastener in a deep member far from corners" = "(4 * c_1)^2";
    A_C "A_c_Nb" Area (EN_1992_4 "7.2.1.8(3)" Secondary) "Area on the side: 2 c_1 about each head, united and cut at corners, surface and underside": Geometry;
    C_2 "c_2" Length (EN_1992_4 "7.2.1.8(4)" Secondary) "Smallest distance to an edge at right angles": Geometry;
    PSI_S "psi_s_Nb" Number (EN_1992_4 "(7.28)" Secondary) "Effect of the corner" = "0.7 + 0.3 * c_2 / (2 * c_1)";
    PSI_S_FAR "psi_s_Nb" Number (EN_1992_4 "(7.28)" Secondary) "1, because no edge at right angles is nearer than 2 c_1": Condition;
    N "n" Number (STATICS "" Derived) "Number of fasteners in the row": Given;
    S_2 "s_2" Length (EN_1992_4 "(7.29)" Secondary) "Largest spacing between neighbours along the edge": Geometry;
    PSI_G "psi_g_Nb" Number (EN_1992_4 "(7.29)" Secondary) "Effect of the group" = "max(1, sqrt(n) + (1 - sqrt(n)) * s_2 / (4 * c_1))";
    PSI_G_ONE "psi_g_Nb" Number (EN_1992_4 "(7.29)" Secondary) "1 for one fastener": Condition;
    N_I "N_Ed_i" Force (STATICS "base reactions" Derived) "Pull on each fastener of the row": Solved;
    T_I "t_i" Length (INPUT "" Derived) "Place of each fastener along the edge": Given;
    E_N "e_N" Length (EN_1992_4 "7.2.1.8(6)" Secondary) "Eccentricity of the pull along the edge" = "abs(sum(N_Ed_i * t_i) / sum(N_Ed_i) - sum(t_i) / n)";
    PSI_EC "psi_ec_Nb" Number (EN_1992_4 "(7.30)" Secondary) "Effect of the eccentricity" = "1 / (1 + 2 * e_N / (4 * c_1))";
    N_RK "N_Rk_cb" Force (EN_1992_4 "(7.25)" Secondary) "Characteristic resistance to blow-out" = "N0_Rk_cb * A_c_Nb / A0_c_Nb * psi_s_Nb * psi_g_Nb * psi_ec_Nb";
    N_RD "N_Rd_cb" Force (EN_1992_4 "Table 7.1, (C.8)" Secondary) "Design resistance" = "k_eq * N_Rk_cb / gamma_Mc";
    N_ED "N_Ed" Force (STATICS "" Derived) "Pull on the row" = "sum(N_Ed_i)";
    BETA "beta_N" Utilisation (EN_1992_4 "Table 7.1" Secondary) "Action over resistance" = "N_Ed / N_Rd_cb";
}

const C_1: [StepId; 4] = [C_1_LEFT, C_1_RIGHT, C_1_FRONT, C_1_REAR];

/// A row of pulled headed fasteners near an edge.
pub struct SideFace {
    /// The fasteners.
    pub members: Vec<usize>,
    side: usize,
    c_1: f64,
    c_2: f64,
    h_ef: f64,
    area_mm2: f64,
    gap: [Point; 2],
    product: f64,
}

impl SideFace {
    /// The rows near edges among pulled fasteners.
    pub fn rows(facts: &Facts, pulled: Set) -> Vec<SideFace> {
        let mut rows = Vec::new();
        for side in 0..4 {
            let near = members(pulled)
                .filter(|&place| at_most(facts.anchors[place].edges_mm[side], 0.5 * facts.anchors[place].h_ef))
                .fold(0, |set, place| set | only(place));
            // Two that are not quite at one distance burst one face all the same; those at one distance are a row besides.
            let is_near = |reach_mm: f64| {
                connected(near, |a, b| {
                    let (a, b) = (&facts.anchors[a], &facts.anchors[b]);
                    let (c_a, c_b) = (a.edges_mm[side], b.edges_mm[side]);
                    let along_mm = (a.along_mm(side) - b.along_mm(side)).abs();
                    (c_a - c_b).abs() <= reach_mm && less(along_mm, 4.0 * c_a.min(c_b))
                })
            };
            let mut groups = is_near(ROW_MM);
            let all = is_near(f64::INFINITY);
            groups.extend(all.into_iter().filter(|group| !groups.contains(group)).collect::<Vec<_>>());
            let own = groups.into_iter().filter(|&group| facts.own_of(group) != 0);
            rows.extend(own.map(|group| SideFace::new(facts, side, group)));
        }
        rows
    }

    fn new(facts: &Facts, side: usize, group: Set) -> SideFace {
        let members: Vec<usize> = members(group).collect();
        let least = |of: &dyn Fn(usize) -> f64| members.iter().fold(f64::INFINITY, |least, &p| least.min(of(p)));
        let [low, high] = sides_across(side);
        let points: Vec<Point> = members.iter().map(|&place| facts.anchors[place].at).collect();
        let mut row = SideFace {
            side,
            c_1: least(&|place| facts.anchors[place].edges_mm[side]),
            c_2: least(&|place| facts.anchors[place].edges_mm[low].min(facts.anchors[place].edges_mm[high])),
            h_ef: least(&|place| facts.anchors[place].h_ef),
            area_mm2: 0.0,
            gap: widest_gap(&points),
            product: 0.0,
            members,
        };
        let (heads, face) = row.faces(facts);
        row.area_mm2 = union_area_mm2(&heads, &face);
        row.product = row.basic(facts, &mut Sheet::quiet());
        row
    }

    /// The squares about the heads on the side of the slab, and that side: across, position along the edge; up, depth.
    fn faces(&self, facts: &Facts) -> (Vec<Rectangle>, Rectangle) {
        let reach_mm = 2.0 * self.c_1;
        let heads = self.members.iter().map(|&place| {
            let anchor = &facts.anchors[place];
            let at_mm = anchor.along_mm(self.side);
            Rectangle {
                left_mm: at_mm - reach_mm,
                right_mm: at_mm + reach_mm,
                front_mm: anchor.h_ef - reach_mm,
                rear_mm: anchor.h_ef + reach_mm,
            }
        });
        let outline = &facts.cut;
        let (left_mm, right_mm) =
            if self.side < 2 { (outline.front_mm, outline.rear_mm) } else { (outline.left_mm, outline.right_mm) };
        (heads.collect(), Rectangle { left_mm, right_mm, front_mm: 0.0, rear_mm: facts.h })
    }

    /// The factors that no force changes.
    fn basic(&self, facts: &Facts, sheet: &mut Sheet) -> f64 {
        let f_ck = concrete::strength(facts, sheet);
        sheet.step(H_EF, self.h_ef);
        let c_1 = sheet.step(C_1[self.side], self.c_1);
        let smallest = self.members.iter().fold(f64::INFINITY, |least, &place| least.min(facts.anchors[place].a_h));
        let a_h = sheet.step(A_H, smallest);
        let k_5 = if facts.is_cracked { sheet.step(K_5, 8.7) } else { sheet.step(K_5_WHOLE, 12.2) };
        let n_0 = sheet.step(N_0, k_5 * c_1 * sqrt(a_h) * sqrt(f_ck));
        let a_0 = sheet.step(A_0, (4.0 * c_1) * (4.0 * c_1));
        let a = sheet.detailed(A_C, self.area_mm2, || {
            let (heads, face) = self.faces(facts);
            corners(&union_outline(&heads, &face))
        });
        let psi_s = if less(self.c_2, 2.0 * c_1) {
            let c_2 =
                sheet.detailed(C_2, self.c_2, || facts.shortest_line_to_edge(&self.members, &sides_across(self.side)));
            sheet.step(PSI_S, 0.7 + 0.3 * c_2 / (2.0 * c_1))
        } else {
            sheet.step(PSI_S_FAR, 1.0)
        };
        let n = sheet.step(N, self.members.len() as f64);
        let psi_g = if self.members.len() > 1 {
            let s_2 = sheet.detailed(S_2, self.gap[0].distance_mm(self.gap[1]), || facts.line(self.gap));
            sheet.step(PSI_G, f64::max(1.0, sqrt(n) + (1.0 - sqrt(n)) * s_2 / (4.0 * c_1)))
        } else {
            sheet.step(PSI_G_ONE, 1.0)
        };
        n_0 * a / a_0 * psi_s * psi_g
    }

    /// The row against its pull.
    pub fn check(&self, facts: &Facts, (number, pull): (u16, &[f64]), sharing: usize, sheet: &mut Sheet) -> Found {
        let subject = Subject::Group(number);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionBlowout), System::Si);
        let along = |place: usize| facts.anchors[place].along_mm(self.side);
        if sheet.is_told() {
            self.basic(facts, sheet);
            let of = |value: &dyn Fn(usize) -> f64| -> Vec<f64> { self.members.iter().map(|&p| value(p)).collect() };
            sheet.carry_each(N_I, &of(&|place| pull[place]));
            sheet.each(T_I, &of(&along));
        }
        let n = self.members.len() as f64;
        let total = sum(&self.members, |place| pull[place]);
        let e = sum(&self.members, |place| pull[place] * along(place)) / total - sum(&self.members, along) / n;
        let e_n = sheet.step(E_N, e.abs());
        let psi_ec = sheet.step(PSI_EC, 1.0 / (1.0 + 2.0 * e_n / (4.0 * self.c_1)));
        let n_rk = sheet.step(N_RK, self.product * psi_ec);
        let k_eq = seismic::reduction(facts, Mode::BlowOut, sharing, sheet);
        let gamma = factor::concrete_tension(facts, sheet);
        let n_rd = sheet.step(N_RD, k_eq * n_rk / gamma);
        let n_ed = sheet.step(N_ED, total);
        sheet.step(BETA, n_ed / n_rd);
        (subject, compared(n_ed, n_rd))
    }
}
