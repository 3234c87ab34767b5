//! Concrete breakout towards an edge in shear (17.7.2).

use alloc::vec::Vec;

use super::breakout::{corners, sum};
use super::concrete;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::kind::AnchorKind;
use super::reduction::{self, Action};
use super::row::{Case, EdgeRow};
use super::steel::Shear;
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::limit::{at_least, less, more};
use crate::calc::number::{pow, pow_1_5, sqrt};
use crate::calc::{CheckId, Part, Sheet, StepId, Subject, steps};
use crate::rules::anchor::Cracking;

steps! { 58 "ACI 318-19, breakout in shear";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the anchors": Given;
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    H_A "h_a" Length (INPUT "" Derived) "Thickness of the slab": Given;
    C_A1_LEFT "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge on the left": Given;
    C_A1_RIGHT "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge on the right": Given;
    C_A1_FRONT "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge in front": Given;
    C_A1_REAR "c_a1" Length (INPUT "" Derived) "Distance of the row to the edge at the rear": Given;
    C_A1_FULL_LEFT "c_a1_full" Length (INPUT "" Derived) "Distance of the row to the edge on the left": Given;
    C_A1_FULL_RIGHT "c_a1_full" Length (INPUT "" Derived) "Distance of the row to the edge on the right": Given;
    C_A1_FULL_FRONT "c_a1_full" Length (INPUT "" Derived) "Distance of the row to the edge in front": Given;
    C_A1_FULL_REAR "c_a1_full" Length (INPUT "" Derived) "Distance of the row to the edge at the rear": Given;
    C_A2_MAX "c_a2_max" Length (ACI_318_19 "17.7.2.1.2" Secondary) "The larger of the distances to the edges at right angles, both below 1.5 c_a1": Geometry;
    S "s" Length (ACI_318_19 "17.7.2.1.2" Secondary) "Largest spacing between neighbours along the edge; 0 for a single anchor": Geometry;
    C_A1_REDUCED "c_a1" Length (ACI_318_19 "17.7.2.1.2" Secondary) "Edge distance that the equations take, because the slab is narrow and thin" = "min(c_a1_full, max(c_a2_max / 1.5, h_a / 1.5, s / 3))";
    A_VC "A_Vc" Area (ACI_318_19 "17.7.2.1.1" Secondary) "Projected area on the face of the edge: 1.5 c_a1 to both sides of each anchor and below it, united and cut at corners and underside": Geometry;
    A_VCO "A_Vco" Area (ACI_318_19 "17.7.2.1.3" Secondary) "Projected area of one anchor in a deep member far from corners" = "4.5 * c_a1^2";
    C_A2 "c_a2" Length (ACI_318_19 "17.7.2.4.1" Secondary) "Smallest distance to an edge at right angles": Geometry;
    PSI_ED "psi_ed_V" Number (ACI_318_19 "17.7.2.4.1(b)" Secondary) "Effect of the corner" = "0.7 + 0.3 * c_a2 / (1.5 * c_a1)";
    PSI_ED_FAR "psi_ed_V" Number (ACI_318_19 "17.7.2.4.1(a)" Secondary) "1, because no edge at right angles is nearer than 1.5 c_a1": Condition;
    PSI_C_UNCRACKED "psi_c_V" Number (ACI_318_19 "17.7.2.5.1(a)" Secondary) "Concrete that does not crack under service loads": Condition;
    PSI_C_NONE "psi_c_V" Number (ACI_318_19 "17.7.2.5.1(b)" Secondary) "Cracked concrete without a bar of at least 13 mm (No. 4) along the edge": Condition;
    PSI_C_BAR "psi_c_V" Number (ACI_318_19 "17.7.2.5.1(b)" Secondary) "Cracked concrete with a bar of at least 13 mm (No. 4) along the edge": Condition;
    PSI_C_STIRRUPS "psi_c_V" Number (ACI_318_19 "17.7.2.5.1(b)" Secondary) "Cracked concrete with such a bar enclosed in stirrups at most 100 mm (4 in.) apart": Condition;
    PSI_H "psi_h_V" Number (ACI_318_19 "17.7.2.6.1" Secondary) "Effect of the thickness, which is below 1.5 c_a1" = "sqrt(1.5 * c_a1 / h_a)";
    PSI_H_THICK "psi_h_V" Number (ACI_318_19 "17.7.2.6.1" Secondary) "1, because the slab is at least 1.5 c_a1 thick": Condition;
    L_E_SLEEVE "l_e" Length (ACI_318_19 "17.7.2.2.1, 2.2" Secondary) "Length over which a torque-controlled expansion anchor bears whose distance sleeve is apart from the expansion sleeve" = "2 * d_a";
    L_E "l_e" Length (ACI_318_19 "17.7.2.2.1, 2.2" Secondary) "Length over which the anchor bears" = "min(h_ef, 8 * d_a)";
    V_B1 "V_b1" Force (ACI_318_19 "17.7.2.2.1(a)" Secondary) "Basic shear breakout strength by the anchor's stiffness" = "k_v * (l_e / d_a)^0.2 * sqrt(d_a) * lambda_a * sqrt(f'_c) * c_a1^1.5";
    V_B2 "V_b2" Force (ACI_318_19 "17.7.2.2.1(b)" Secondary) "Basic shear breakout strength, upper bound" = "k_v2 * lambda_a * sqrt(f'_c) * c_a1^1.5";
    V_B "V_b" Force (ACI_318_19 "17.7.2.2.1" Secondary) "Basic shear breakout strength" = "min(V_b1, V_b2)";
    V_I "V_i" Force (STATICS "base reactions" Derived) "Shear towards the edge on each anchor whose load the row carries": Solved;
    T_I "t_i" Length (INPUT "" Derived) "Place along the edge of each anchor whose load the row carries": Given;
    U_I "u_i" Length (INPUT "" Derived) "Place along the edge of each anchor of the row": Given;
    N "n" Number (STATICS "" Derived) "Number of anchors in the row": Given;
    E_V "e'_V" Length (ACI_318_19 "17.7.2.3.1" Secondary) "Eccentricity of the shear along the edge" = "abs(sum(V_i * t_i) / sum(V_i) - sum(u_i) / n)";
    PSI_EC "psi_ec_V" Number (ACI_318_19 "17.7.2.3.1" Secondary) "Effect of the eccentricity" = "1 / (1 + e'_V / (1.5 * c_a1))";
    V_CB "V_cb" Force (ACI_318_19 "17.7.2.1(a)" Secondary) "Nominal breakout strength of the anchor towards the edge" = "A_Vc / A_Vco * psi_ed_V * psi_c_V * psi_h_V * V_b";
    V_CBG "V_cbg" Force (ACI_318_19 "17.7.2.1(b)" Secondary) "Nominal breakout strength of the row towards the edge" = "A_Vc / A_Vco * psi_ec_V * psi_ed_V * psi_c_V * psi_h_V * V_b";
    V_CB_ALONG "V_cb" Force (ACI_318_19 "17.7.2.1(c)" Secondary) "Nominal breakout strength for shear along the edge: twice that towards it, psi_ed_V and psi_ec_V being 1" = "2 * A_Vc / A_Vco * psi_c_V * psi_h_V * V_b";
    V_D "V_d" Force (ACI_318_19 "17.5.1.2" Secondary) "Design strength" = "phi * V_cb";
    V_D_GROUP "V_d" Force (ACI_318_19 "17.5.1.2" Secondary) "Design strength" = "phi * V_cbg";
    V_UA_OWN "V_ua" Force (ACI_318_19 "Fig. R17.7.2.1b, case 1" Secondary) "Shear on the row, which carries its own share" = "sum(V_i)";
    V_UA_ALL "V_ua" Force (ACI_318_19 "Fig. R17.7.2.1b, case 2" Secondary) "Shear on the row, which carries everything once the rows before it have broken out" = "sum(V_i)";
    V_UA_FRONT "V_ua" Force (ACI_318_19 "Fig. R17.7.2.1b, case 3" Secondary) "Shear on the row, which carries those close behind it too" = "sum(V_i)";
    R_TOWARDS "r_towards" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength towards the edge" = "V_ua / V_d";
    R_ALONG "r_along" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength along the edge" = "V_ua / V_d";
    R_V "r_V" Utilisation (PRACTICE "" Derived) "Both together, by the root of the squares" = "sqrt(r_towards^2 + r_along^2)";
}

const C_A1: [StepId; 4] = [C_A1_LEFT, C_A1_RIGHT, C_A1_FRONT, C_A1_REAR];
const C_A1_FULL: [StepId; 4] = [C_A1_FULL_LEFT, C_A1_FULL_RIGHT, C_A1_FULL_FRONT, C_A1_FULL_REAR];

/// The factors of a row's strength that no force changes, in units of the edition.
#[derive(Clone, Copy, Debug, Default)]
pub struct Basic {
    a_vc: f64,
    a_vco: f64,
    c_a1: f64,
    psi_ed: f64,
    psi_c: f64,
    psi_h: f64,
    v_b: f64,
}

impl Basic {
    /// The factors of a row, with the steps that lead to them.
    pub fn new(facts: &Facts, row: &EdgeRow, sheet: &mut Sheet) -> Basic {
        concrete::tell(facts, sheet);
        let h_a = sheet.step(H_A, facts.h_a);
        let c_a1 = edge_distance(facts, row, sheet);
        let a_vc = sheet.detailed(A_VC, facts.area(row.area_mm2), || corners(facts, &row.outline(facts)));
        let a_vco = sheet.step(A_VCO, 4.5 * (c_a1 * c_a1));
        let c_a2 = facts.length(row.corners_mm[0].min(row.corners_mm[1]));
        let psi_ed = if at_least(c_a2, 1.5 * c_a1) {
            sheet.step(PSI_ED_FAR, 1.0)
        } else {
            let nearer = usize::from(row.corners_mm[1] < row.corners_mm[0]);
            sheet.detailed(C_A2, c_a2, || row.line_to_corner(facts, nearer));
            sheet.step(PSI_ED, 0.7 + 0.3 * c_a2 / (1.5 * c_a1))
        };
        let psi_c = cracking(facts, sheet);
        let psi_h = if less(h_a, 1.5 * c_a1) {
            sheet.step(PSI_H, sqrt(1.5 * c_a1 / h_a))
        } else {
            sheet.step(PSI_H_THICK, 1.0)
        };
        let v_b = basic_strength(facts, row, c_a1, sheet);
        Basic { a_vc, a_vco, c_a1, psi_ed, psi_c, psi_h, v_b }
    }
}

/// The edge distance that the equations take (17.7.2.1.2).
fn edge_distance(facts: &Facts, row: &EdgeRow, sheet: &mut Sheet) -> f64 {
    let full = facts.length(row.edge_mm);
    if !row.narrow {
        return sheet.step(C_A1[row.side], full);
    }
    sheet.step(C_A1_FULL[row.side], full);
    let farther = usize::from(row.corners_mm[1] > row.corners_mm[0]);
    let c_a2_max =
        sheet.detailed(C_A2_MAX, facts.length(row.corners_mm[farther]), || row.line_to_corner(facts, farther));
    let s = sheet.detailed(S, facts.length(row.gap[0].distance_mm(row.gap[1])), || facts.line(row.gap));
    sheet.step(C_A1_REDUCED, full.min((c_a2_max / 1.5).max(facts.h_a / 1.5).max(s / 3.0)))
}

/// psi_c,V (17.7.2.5.1).
fn cracking(facts: &Facts, sheet: &mut Sheet) -> f64 {
    if facts.cracking == Cracking::Uncracked && !facts.seismic {
        return sheet.step(PSI_C_UNCRACKED, 1.4);
    }
    match facts.edge_bars {
        1 => sheet.step(PSI_C_BAR, 1.2),
        2 => sheet.step(PSI_C_STIRRUPS, 1.4),
        _ => sheet.step(PSI_C_NONE, 1.0),
    }
}

/// V_b (17.7.2.2).
fn basic_strength(facts: &Facts, row: &EdgeRow, c_a1: f64, sheet: &mut Sheet) -> f64 {
    let first = &facts.anchors[row.members[0]];
    let d_a = sheet.step(D_A, first.d_a);
    let h_ef = sheet.step(H_EF, first.h_ef);
    let l_e = if facts.report.sleeve && facts.kind == AnchorKind::TorqueExpansion {
        sheet.step(L_E_SLEEVE, 2.0 * d_a)
    } else {
        sheet.step(L_E, h_ef.min(8.0 * d_a))
    };
    let root = sqrt(facts.f_c);
    let constant = if is_stiffly_welded(facts, row) { &facts.edition.edge_welded } else { &facts.edition.edge };
    let k_v = constant.told(sheet);
    let v_b1 = sheet.step(V_B1, k_v * pow(l_e / d_a, 0.2) * sqrt(d_a) * facts.lambda_a * root * pow_1_5(c_a1));
    let k_any = facts.edition.edge_any.told(sheet);
    let v_b2 = sheet.step(V_B2, k_any * facts.lambda_a * root * pow_1_5(c_a1));
    sheet.step(V_B, v_b1.min(v_b2))
}

/// Whether the higher strength of welded anchors applies (17.7.2.2.2): a thick plate, wide spacing, and supplementary
/// reinforcement where a corner is near.
fn is_stiffly_welded(facts: &Facts, row: &EdgeRow) -> bool {
    let Some(plate) = facts.plate else { return false };
    let edition = facts.edition;
    let near_corner = row.corners_mm.iter().any(|&corner_mm| {
        let anchor = &facts.anchors[row.members[0]];
        !more(corner_mm, 1.5 * anchor.h_ef_mm)
    });
    row.members.iter().all(|&place| {
        let anchor = &facts.anchors[place];
        anchor.bolt.stud().is_some() && at_least(plate, f64::max(0.5 * anchor.d_a, edition.welded_plate))
    }) && at_least(facts.closest(), edition.welded_spacing)
        && (!near_corner || facts.supplementary_shear)
}

/// Which part of the shear a row resists.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Way {
    /// Towards the edge.
    Towards,
    /// Along it, one way.
    Along,
    /// Along it, the other way.
    Back,
}

impl Way {
    /// The component of a shear in this way at an edge (0 left, 1 right, 2 front, 3 rear).
    pub fn of(self, on: &Shear, side: usize) -> f64 {
        let (towards, along) = match side {
            0 => (-on.x, on.y),
            1 => (on.x, on.y),
            2 => (-on.y, on.x),
            _ => (on.y, on.x),
        };
        match self {
            Way::Towards => towards,
            Way::Along => along,
            Way::Back => -along,
        }
    }
}

impl EdgeRow {
    /// The row's demand over strength in one way, told as group `number`.
    pub fn ratio(&self, facts: &Facts, way: Way, (number, shear): (u16, &[Shear]), sheet: &mut Sheet) -> f64 {
        let subject = Subject::Group(number);
        let shear = |place: usize| way.of(&shear[place], self.side);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorShearBreakout), facts.edition.system);
        if sheet.is_told() {
            Basic::new(facts, self, sheet);
            let shears: Vec<f64> = self.carried.iter().map(|&place| shear(place)).collect();
            sheet.carry_each(V_I, &shears);
        }
        let Basic { a_vc, a_vco, psi_ed, psi_c, psi_h, v_b, .. } = self.basic;
        let strength = if way != Way::Towards {
            let v_cb = sheet.step(V_CB_ALONG, 2.0 * a_vc / a_vco * psi_c * psi_h * v_b);
            let phi = reduction::concrete(Action::Shear, facts, sheet);
            sheet.step(V_D, phi * v_cb)
        } else if self.carried.len() == 1 {
            let v_cb = sheet.step(V_CB, a_vc / a_vco * psi_ed * psi_c * psi_h * v_b);
            let phi = reduction::concrete(Action::Shear, facts, sheet);
            sheet.step(V_D, phi * v_cb)
        } else {
            let psi_ec = self.eccentricity(facts, shear, sheet);
            let v_cbg = sheet.step(V_CBG, a_vc / a_vco * psi_ec * psi_ed * psi_c * psi_h * v_b);
            let phi = reduction::concrete(Action::Shear, facts, sheet);
            sheet.step(V_D_GROUP, phi * v_cbg)
        };
        let id = match self.case {
            Case::Own => V_UA_OWN,
            Case::All => V_UA_ALL,
            Case::Front => V_UA_FRONT,
        };
        let v_ua = sheet.step(id, sum(&self.carried, shear));
        sheet.step(if way == Way::Towards { R_TOWARDS } else { R_ALONG }, v_ua / strength)
    }

    /// psi_ec,V (17.7.2.3.1), from the centroid of the row to the resultant of what it carries.
    fn eccentricity(&self, facts: &Facts, shear: impl Fn(usize) -> f64, sheet: &mut Sheet) -> f64 {
        let along = |place: usize| facts.anchors[place].along(self.side);
        if sheet.is_told() {
            let places = |of: &[usize]| -> Vec<f64> { of.iter().map(|&place| along(place)).collect() };
            sheet.each(T_I, &places(&self.carried));
            sheet.each(U_I, &places(&self.members));
        }
        let n = sheet.step(N, self.members.len() as f64);
        let total = sum(&self.carried, &shear);
        let resultant = sum(&self.carried, |place| shear(place) * along(place)) / total;
        let e_v = sheet.step(E_V, (resultant - sum(&self.members, along) / n).abs());
        sheet.step(PSI_EC, 1.0 / (1.0 + e_v / (1.5 * self.basic.c_a1)))
    }
}

/// Both ratios of a row together, appended to the section of the ratio towards the edge.
pub fn together(towards: f64, along: f64, sheet: &mut Sheet) -> f64 {
    sheet.carry(R_ALONG, along);
    sheet.step(R_V, sqrt(towards * towards + along * along))
}
