//! Side-face blowout of headed anchors near an edge (17.6.4).

use alloc::vec::Vec;

use super::concrete;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::line::sides_across;
use super::reduction::{self, Action};
use super::row::ROW_MM;
use super::set::{Set, connected, members};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{less, more};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, steps};

use super::breakout::sum;

steps! { 57 "ACI 318-19, side-face blowout";
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment, above 2.5 c_a1": Given;
    C_A1_LEFT "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge on the left": Given;
    C_A1_RIGHT "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge on the right": Given;
    C_A1_FRONT "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge in front": Given;
    C_A1_REAR "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge at the rear": Given;
    A_BRG "A_brg" Area (INPUT "" Derived) "Net bearing area of the smallest head of the row": Given;
    N_SB "N_sb" Force (ACI_318_19 "17.6.4.1" Secondary) "Side-face blowout strength of one anchor far from a corner" = "k_sb * c_a1 * sqrt(A_brg) * lambda_a * sqrt(f'_c)";
    C_A2 "c_a2" Length (INPUT "" Derived) "Distance of the anchor to the nearer corner's other edge": Given;
    K_CORNER "k_corner" Number (ACI_318_19 "17.6.4.1.1" Secondary) "Effect of the corner, c_a2 being below 3 c_a1" = "(1 + c_a2 / c_a1) / 4";
    K_CORNER_LEAST "k_corner" Number (ACI_318_19 "17.6.4.1.1" Secondary) "Effect of the corner with c_a2 / c_a1 taken as 1, its least value": Condition;
    N_SB_CORNER "N_sb_corner" Force (ACI_318_19 "17.6.4.1.1" Secondary) "Strength near the corner" = "k_corner * N_sb";
    S "s" Length (STATICS "" Derived) "Distance between the outer anchors of the row": Geometry;
    N_SBG "N_sbg" Force (ACI_318_19 "17.6.4.2" Secondary) "Side-face blowout strength of the row" = "(1 + s / (6 * c_a1)) * N_sb";
    K_CORNER_I "k_corner_i" Number (ACI_318_19 "17.6.4.1.1" Secondary) "Effect of the corner on each anchor; 1 where c_a2 is at least 3 c_a1": Condition;
    N_SUM "N_sb_sum" Force (ACI_318_19 "17.6.4.1.1" Memory) "Sum of the single strengths with the effect of the corner" = "sum(k_corner_i * N_sb)";
    N_LEAST "N_sb_least" Force (ACI_318_19 "17.6.4.2" Memory) "Near a corner the smaller of both is taken, as a caution" = "min(N_sbg, N_sb_sum)";
    N_D_SINGLE "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_sb";
    N_D_CORNER "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_sb_corner";
    N_D_GROUP "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_sbg";
    N_D_LEAST "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_sb_least";
    T_I "T_i" Force (STATICS "base reactions" Derived) "Pull on each anchor of the row": Solved;
    N_UA "N_ua" Force (ACI_318_19 "R17.6.4.2" Memory) "Pull on the anchors of the row, which all stand nearer to the edge than 0.4 h_ef" = "sum(T_i)";
    R_N "r_N" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength" = "N_ua / N_d";
}

const C_A1: [StepId; 4] = [C_A1_LEFT, C_A1_RIGHT, C_A1_FRONT, C_A1_REAR];

/// A row of pulled anchors near an edge, with its strength.
pub struct SideFace {
    /// The anchors.
    pub members: Vec<usize>,
    side: usize,
    edge_mm: f64,
    strength: f64,
}

impl SideFace {
    /// The rows near edges among pulled anchors.
    pub fn rows(facts: &Facts, pulled: Set) -> Vec<SideFace> {
        let mut rows = Vec::new();
        for line in &facts.lines {
            let side = line.side;
            let near = members(pulled & line.reach)
                .filter(|&place| {
                    let anchor = &facts.anchors[place];
                    more(anchor.h_ef_mm, 2.5 * line.distance_mm(anchor))
                })
                .fold(0, |set, place| set | super::set::only(place));
            // 17.6.4.2 asks for the spacing alone: two that are not quite at one distance burst one face all the same. Those
            // at one distance are a row by themselves besides.
            let is_near = |reach_mm: f64| {
                connected(near, |a, b| {
                    let (a, b) = (&facts.anchors[a], &facts.anchors[b]);
                    let (c_a, c_b) = (line.distance_mm(a), line.distance_mm(b));
                    let along_mm = (a.along_mm(side) - b.along_mm(side)).abs();
                    (c_a - c_b).abs() <= reach_mm && less(along_mm, 6.0 * c_a.min(c_b))
                })
            };
            let mut groups = is_near(ROW_MM);
            let all = is_near(f64::INFINITY);
            groups.extend(all.into_iter().filter(|group| !groups.contains(group)).collect::<Vec<_>>());
            for group in groups.into_iter().filter(|group| group & facts.own != 0) {
                let members: Vec<usize> = members(group).collect();
                let nearest_mm = |least: f64, &place: &usize| least.min(line.distance_mm(&facts.anchors[place]));
                let edge_mm = members.iter().fold(f64::INFINITY, nearest_mm);
                let mut row = SideFace { members, side, edge_mm, strength: 0.0 };
                row.strength = row.strength(facts, &mut Sheet::quiet());
                rows.push(row);
            }
        }
        rows
    }

    /// The row against its pull, in units of the edition.
    pub fn check(&self, facts: &Facts, number: u16, pull: &[f64], sheet: &mut Sheet) -> Outcome {
        let subject = Subject::Group(number);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionBlowout), facts.edition.system);
        if sheet.is_told() {
            self.strength(facts, sheet);
            let pulls: Vec<f64> = self.members.iter().map(|&place| pull[place]).collect();
            sheet.carry_each(T_I, &pulls);
        }
        let n_ua = sheet.step(N_UA, sum(&self.members, |place| pull[place]));
        sheet.step(R_N, n_ua / self.strength);
        facts.compared(n_ua, self.strength)
    }

    /// Design strength.
    fn strength(&self, facts: &Facts, sheet: &mut Sheet) -> f64 {
        let least = |of: &dyn Fn(usize) -> f64| self.members.iter().fold(f64::INFINITY, |least, &p| least.min(of(p)));
        concrete::tell(facts, sheet);
        sheet.step(H_EF, facts.anchors[self.members[0]].h_ef);
        let c_a1 = sheet.step(C_A1[self.side], facts.length(self.edge_mm));
        let a_brg = sheet.step(A_BRG, least(&|place| facts.anchors[place].a_brg));
        let k_sb = facts.edition.side_face.told(sheet);
        let n_sb = sheet.step(N_SB, k_sb * c_a1 * sqrt(a_brg) * facts.lambda_a * sqrt(facts.f_c));
        if let [only] = self.members[..] {
            return self.single(facts, only, (c_a1, n_sb), sheet);
        }
        let outer = self.outer(facts);
        let along = |place: usize| facts.anchors[place].along_mm(self.side);
        let s = sheet.detailed(S, facts.length(along(outer[1]) - along(outer[0])), || {
            facts.line(outer.map(|place| facts.anchors[place].at))
        });
        let n_sbg = sheet.step(N_SBG, (1.0 + s / (6.0 * c_a1)) * n_sb);
        let corners: Vec<f64> = self
            .members
            .iter()
            .map(|&place| corner(facts.length(self.corner_mm(facts, place)), c_a1).map_or(1.0, |corner| corner.value()))
            .collect();
        if corners.iter().all(|&corner| corner == 1.0) {
            let (phi, k_e) = reductions(facts, sheet);
            return sheet.step(N_D_GROUP, k_e * phi * n_sbg);
        }
        sheet.each(K_CORNER_I, &corners);
        let mut total = corners[0] * n_sb;
        for corner in &corners[1..] {
            total += corner * n_sb;
        }
        let n_sum = sheet.step(N_SUM, total);
        let n_least = sheet.step(N_LEAST, n_sbg.min(n_sum));
        let (phi, k_e) = reductions(facts, sheet);
        sheet.step(N_D_LEAST, k_e * phi * n_least)
    }

    fn single(&self, facts: &Facts, only: usize, (c_a1, n_sb): (f64, f64), sheet: &mut Sheet) -> f64 {
        let c_a2 = facts.length(self.corner_mm(facts, only));
        let Some(corner) = corner(c_a2, c_a1) else {
            let (phi, k_e) = reductions(facts, sheet);
            return sheet.step(N_D_SINGLE, k_e * phi * n_sb);
        };
        sheet.step(C_A2, c_a2);
        let id = if matches!(corner, Corner::Least) { K_CORNER_LEAST } else { K_CORNER };
        let k_corner = sheet.step(id, corner.value());
        let n_corner = sheet.step(N_SB_CORNER, k_corner * n_sb);
        let (phi, k_e) = reductions(facts, sheet);
        sheet.step(N_D_CORNER, k_e * phi * n_corner)
    }

    /// The outer anchors of the row.
    fn outer(&self, facts: &Facts) -> [usize; 2] {
        let along = |place: usize| facts.anchors[place].along_mm(self.side);
        self.members.iter().fold([self.members[0]; 2], |[low, high], &place| {
            [if along(place) < along(low) { place } else { low }, if along(place) > along(high) { place } else { high }]
        })
    }

    /// The distance of an anchor to the nearer of the two edges at right angles to this one.
    fn corner_mm(&self, facts: &Facts, place: usize) -> f64 {
        let edges_mm = &facts.anchors[place].edges_mm;
        let [low, high] = sides_across(self.side);
        edges_mm[low].min(edges_mm[high])
    }
}

/// The effect of a corner (17.6.4.1.1).
enum Corner {
    Between(f64),
    Least,
}

impl Corner {
    fn value(&self) -> f64 {
        match *self {
            Corner::Between(value) => value,
            Corner::Least => 0.5,
        }
    }
}

/// The effect of the corner; none where it is far.
fn corner(c_a2: f64, c_a1: f64) -> Option<Corner> {
    if !less(c_a2, 3.0 * c_a1) {
        return None;
    }
    Some(if less(c_a2, c_a1) { Corner::Least } else { Corner::Between((1.0 + c_a2 / c_a1) / 4.0) })
}

fn reductions(facts: &Facts, sheet: &mut Sheet) -> (f64, f64) {
    (reduction::concrete(Action::Tension, facts, sheet), reduction::seismic(facts, sheet))
}
