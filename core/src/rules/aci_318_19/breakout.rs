//! Concrete breakout in tension (17.6.2), of a group and of the hottest anchor on its own share of concrete.

use alloc::vec::Vec;

use super::body::Body;
use super::concrete;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::kind::AnchorKind;
use super::set::Set;
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::limit::{at_least, at_most};
use crate::calc::number::{pow, pow_1_5, sqrt};
use crate::calc::{Detail, Sheet, steps};
use crate::geometry::Polygon;

steps! { 54 "ACI 318-19, breakout in tension";
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    H_EF_FULL "h_ef_full" Length (INPUT "" Derived) "Effective embedment as built": Given;
    C_A_MAX "c_a_max" Length (ACI_318_19 "17.6.2.1.2" Secondary) "Largest of the edge distances that are below 1.5 h_ef": Geometry;
    S "s" Length (ACI_318_19 "17.6.2.1.2" Secondary) "Largest spacing between neighbouring anchors of the group; 0 for a single anchor": Geometry;
    H_EF_REDUCED "h_ef" Length (ACI_318_19 "17.6.2.1.2" Secondary) "Embedment that the breakout equations take, because three edges or more are nearer than 1.5 h_ef" = "min(h_ef_full, max(c_a_max / 1.5, s / 3))";
    A_NC "A_Nc" Area (ACI_318_19 "17.6.2.1.1" Secondary) "Projected area of the group: squares of 3 h_ef about each anchor, united and cut at the edges": Geometry;
    A_NC_CUT "A_Nc" Area (PRACTICE "" Memory) "Projected area of the anchor, cut half way to its neighbours": Geometry;
    A_NC_OWN "A_Nc_own" Area (PRACTICE "" Memory) "The anchor's own part of the projected area, cut half way to its neighbours": Geometry;
    A_NC_ALL "A_Nc_group" Area (ACI_318_19 "17.6.2.1.1" Secondary) "Projected area of the whole group": Geometry;
    N_ALL "n" Number (STATICS "" Derived) "Number of anchors in the group": Given;
    A_NC_SHARE "A_Nc" Area (PRACTICE "" Derived) "The anchor's share of the projected area: its own part, or an equal part, if that is larger, because the clause lets anchors that are pulled alike share alike" = "max(A_Nc_own, A_Nc_group / n)";
    A_NCO "A_Nco" Area (ACI_318_19 "17.6.2.1.4" Secondary) "Projected area of one anchor far from edges" = "9 * h_ef^2";
    C_A_MIN "c_a_min" Length (ACI_318_19 "17.6.2.4.1" Secondary) "Smallest distance from an anchor to an edge": Geometry;
    PSI_ED "psi_ed_N" Number (ACI_318_19 "17.6.2.4.1(b)" Secondary) "Effect of the edge" = "0.7 + 0.3 * c_a_min / (1.5 * h_ef)";
    PSI_ED_FAR "psi_ed_N" Number (ACI_318_19 "17.6.2.4.1(a)" Secondary) "1, because no edge is nearer than 1.5 h_ef": Condition;
    PSI_CP "psi_cp_N" Number (ACI_318_19 "17.6.2.6.2" Secondary) "1 for cast-in anchors": Condition;
    PSI_CP_CRACKED "psi_cp_N" Number (ACI_318_19 "17.6.2.6.1" Secondary) "1, because the anchor is designed for cracked concrete": Condition;
    PSI_CP_BARS "psi_cp_N" Number (ACI_318_19 "17.6.2.6.1" Secondary) "1, because reinforcement controls splitting": Condition;
    H_EF_CP "h_ef_cp" Length (INPUT "" Derived) "Effective embedment as built, which splitting goes by": Given;
    C_AC "c_ac" Length (INPUT "evaluation report" Derived) "Critical edge distance, from the evaluation report": Given;
    C_AC_4 "c_ac" Length (ACI_318_19 "17.9.5" Secondary) "Critical edge distance of expansion and screw anchors without a report's value" = "4 * h_ef_cp";
    C_AC_25 "c_ac" Length (ACI_318_19 "17.9.5" Secondary) "Critical edge distance of undercut anchors without a report's value" = "2.5 * h_ef_cp";
    C_AC_2 "c_ac" Length (ACI_318_19 "17.9.5" Secondary) "Critical edge distance of adhesive anchors without a report's value" = "2 * h_ef_cp";
    PSI_CP_FAR "psi_cp_N" Number (ACI_318_19 "17.6.2.6.1(a)" Secondary) "1, because no edge is nearer than c_ac": Condition;
    PSI_CP_NEAR "psi_cp_N" Number (ACI_318_19 "17.6.2.6.1(b)" Secondary) "Splitting of post-installed anchors near an edge of uncracked concrete, at most 1" = "min(1, max(c_a_min, 1.5 * h_ef_cp) / c_ac)";
    K_REPORT "k_c" Empirical { force: 3, length: -3 } (INPUT "evaluation report" Derived) "Effectiveness factor of the evaluation report": Given;
    N_B "N_b" Force (ACI_318_19 "17.6.2.2.1" Secondary) "Basic breakout strength of one anchor" = "k_c * lambda_a * sqrt(f'_c) * h_ef^1.5";
    N_B_DEEP "N_b" Force (ACI_318_19 "17.6.2.2.3" Secondary) "Basic breakout strength of one deep headed anchor in cracked concrete" = "k_c * lambda_a * sqrt(f'_c) * h_ef^(5/3)";
    T_I "T_i" Force (STATICS "base reactions" Derived) "Pull on each anchor of the group": Solved;
    X_I "x_i" Length (INPUT "" Derived) "Place of each anchor of the group, to the right": Given;
    Y_I "y_i" Length (INPUT "" Derived) "Place of each anchor of the group, to the rear": Given;
    N "n" Number (STATICS "" Derived) "Number of anchors in the group": Given;
    E_N_X "e'_N_x" Length (ACI_318_19 "17.6.2.3.1" Secondary) "Eccentricity of the pull along x" = "abs(sum(T_i * x_i) / sum(T_i) - sum(x_i) / n)";
    E_N_Y "e'_N_y" Length (ACI_318_19 "17.6.2.3.1" Secondary) "Eccentricity of the pull along y" = "abs(sum(T_i * y_i) / sum(T_i) - sum(y_i) / n)";
    PSI_EC_X "psi_ec_N_x" Number (ACI_318_19 "17.6.2.3.1" Secondary) "Effect of the eccentricity along x" = "1 / (1 + e'_N_x / (1.5 * h_ef))";
    PSI_EC_Y "psi_ec_N_y" Number (ACI_318_19 "17.6.2.3.1" Secondary) "Effect of the eccentricity along y" = "1 / (1 + e'_N_y / (1.5 * h_ef))";
    PSI_EC "psi_ec_N" Number (ACI_318_19 "17.6.2.3.1.1" Secondary) "Effect of both eccentricities" = "psi_ec_N_x * psi_ec_N_y";
    N_CB "N_cb" Force (ACI_318_19 "17.6.2.1(a)" Secondary) "Nominal breakout strength of the anchor" = "A_Nc / A_Nco * psi_ed_N * psi_c_N * psi_cp_N * N_b";
    N_CBG "N_cbg" Force (ACI_318_19 "17.6.2.1(b)" Secondary) "Nominal breakout strength of the group" = "A_Nc / A_Nco * psi_ec_N * psi_ed_N * psi_c_N * psi_cp_N * N_b";
    N_D "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_cb";
    N_D_GROUP "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_cbg";
    N_UA "N_ua" Force (STATICS "base reactions" Derived) "Pull on the anchor": Solved;
    N_UA_GROUP "N_ua" Force (STATICS "" Derived) "Pull on the group" = "sum(T_i)";
    R_N "r_N" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength" = "N_ua / N_d";
}

/// The factors of a breakout strength that no force changes, in units of the edition.
#[derive(Clone, Copy, Debug)]
pub struct Basic {
    a_nc: f64,
    a_nco: f64,
    h_ef: f64,
    psi_ed: f64,
    psi_c: f64,
    psi_cp: f64,
    n_b: f64,
}

/// How far the resultant of a group's forces lies from the group's centroid, in units of the edition.
#[derive(Clone, Copy, Debug)]
pub struct Eccentricity {
    /// Along x.
    pub x: f64,
    /// Along y.
    pub y: f64,
}

impl Basic {
    /// Nominal strength of a single anchor (17.6.2.1a).
    pub fn single(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(N_CB, self.a_nc / self.a_nco * self.psi_ed * self.psi_c * self.psi_cp * self.n_b)
    }

    /// Nominal strength of a group (17.6.2.1b) whose eccentricities stand on the sheet as e'_N_x and e'_N_y.
    pub fn group(&self, eccentricity: Eccentricity, sheet: &mut Sheet) -> f64 {
        let psi_x = sheet.step(PSI_EC_X, 1.0 / (1.0 + eccentricity.x / (1.5 * self.h_ef)));
        let psi_y = sheet.step(PSI_EC_Y, 1.0 / (1.0 + eccentricity.y / (1.5 * self.h_ef)));
        let psi_ec = sheet.step(PSI_EC, psi_x * psi_y);
        sheet.step(N_CBG, self.a_nc / self.a_nco * psi_ec * self.psi_ed * self.psi_c * self.psi_cp * self.n_b)
    }
}

/// A group with its body and its strengths.
pub struct Group {
    /// Its geometry.
    pub body: Body,
    /// Its factors; its members all have one embedment, or there are none.
    pub basic: Basic,
    /// The factors of each member on its share of the body.
    pub shares: Vec<Basic>,
    /// The factors of each member on the part of the body that is cut half way to its neighbours.
    pub cuts: Vec<Basic>,
}

impl Group {
    /// The group of a set of anchors.
    pub fn new(facts: &Facts, set: Set) -> Group {
        let body = Body::new(facts, set);
        let quiet = &mut Sheet::quiet();
        let basic = Basic::new(facts, &body, Piece::Whole, quiet);
        let mut each = |piece: fn(usize) -> Piece| -> Vec<Basic> {
            (0..body.members.len()).map(|place| Basic::new(facts, &body, piece(place), quiet)).collect()
        };
        let (shares, cuts) = (each(Piece::Share), each(Piece::Cut));
        Group { body, basic, shares, cuts }
    }
}

/// Which part of a body carries.
#[derive(Clone, Copy)]
pub enum Piece {
    /// All of it.
    Whole,
    /// The share of the member of this place in the group: its own part, or an equal part if that is larger.
    Share(usize),
    /// The own part of the member of this place, cut half way to its neighbours.
    Cut(usize),
}

impl Basic {
    /// The factors of a body or of one anchor's share of it, with the steps that lead to them.
    pub fn new(facts: &Facts, body: &Body, piece: Piece, sheet: &mut Sheet) -> Basic {
        concrete::tell(facts, sheet);
        let h_ef = depth(facts, body, sheet);
        let a_nc = projected_area(facts, body, piece, sheet);
        let a_nco = sheet.step(A_NCO, 9.0 * (h_ef * h_ef));
        let c_a_min = facts.length(match piece {
            Piece::Whole => body.nearest_mm,
            Piece::Share(place) | Piece::Cut(place) => body.shares[place].nearest_mm,
        });
        let (is_far, splits) = (at_least(c_a_min, 1.5 * h_ef), facts.may_split() && c_a_min.is_finite());
        if !is_far || splits {
            sheet.detailed(C_A_MIN, c_a_min, || match piece {
                Piece::Whole => facts.shortest_line(&body.members),
                Piece::Share(place) | Piece::Cut(place) => facts.shortest_line(&body.members[place..=place]),
            });
        }
        let psi_ed =
            if is_far { sheet.step(PSI_ED_FAR, 1.0) } else { sheet.step(PSI_ED, 0.7 + 0.3 * c_a_min / (1.5 * h_ef)) };
        let psi_c = concrete::breakout_cracking(facts, sheet);
        let psi_cp = splitting(facts, body, c_a_min, sheet);
        let n_b = basic_strength(facts, h_ef, sheet);
        Basic { a_nc, a_nco, h_ef, psi_ed, psi_c, psi_cp, n_b }
    }
}

/// A_Nc of a body (17.6.2.1.1), of one anchor's share or of its own part.
fn projected_area(facts: &Facts, body: &Body, piece: Piece, sheet: &mut Sheet) -> f64 {
    let whole = || corners(facts, &body.outline(facts));
    let own = |place| move || corners(facts, &body.share_outline(facts, place));
    match piece {
        Piece::Whole => sheet.detailed(A_NC, facts.area(body.area_mm2), whole),
        Piece::Cut(place) => sheet.detailed(A_NC_CUT, facts.area(body.shares[place].area_mm2), own(place)),
        Piece::Share(place) => {
            let all = sheet.detailed(A_NC_ALL, facts.area(body.area_mm2), whole);
            let part = sheet.detailed(A_NC_OWN, facts.area(body.shares[place].area_mm2), own(place));
            let n = sheet.step(N_ALL, body.members.len() as f64);
            sheet.step(A_NC_SHARE, part.max(all / n))
        }
    }
}

/// The embedment that the equations take (17.6.2.1.2).
fn depth(facts: &Facts, body: &Body, sheet: &mut Sheet) -> f64 {
    let full = facts.length(body.full_depth_mm);
    if body.near < 3 {
        return sheet.step(H_EF, full);
    }
    sheet.step(H_EF_FULL, full);
    let side = body.farthest_near.unwrap_or(0);
    let to_edge = || facts.shortest_line_to_edge(&body.members, &[side]);
    let c_a_max = sheet.detailed(C_A_MAX, facts.length(body.edges_mm[side]), to_edge);
    let s = sheet.detailed(S, facts.length(body.gap[0].distance_mm(body.gap[1])), || facts.line(body.gap));
    sheet.step(H_EF_REDUCED, full.min((c_a_max / 1.5).max(s / 3.0)))
}

/// N_b (17.6.2.2).
fn basic_strength(facts: &Facts, h_ef: f64, sheet: &mut Sheet) -> f64 {
    let edition = facts.edition;
    let root = sqrt(facts.f_c);
    if facts.deep && at_least(h_ef, edition.deep_from) && at_most(h_ef, edition.deep_to) {
        let k_c = edition.deep_breakout.told(sheet);
        return sheet.step(N_B_DEEP, k_c * facts.lambda_a * root * pow(h_ef, 5.0 / 3.0));
    }
    let reported = if facts.is_cracked { facts.report.k_cr } else { facts.report.k_uncr };
    let k_c = match (facts.kind.is_drilled(), reported) {
        (false, _) => edition.breakout.told(sheet),
        (true, Some(k_c)) => sheet.step(K_REPORT, k_c),
        (true, None) => edition.drilled_breakout.told(sheet),
    };
    sheet.step(N_B, k_c * facts.lambda_a * root * pow_1_5(h_ef))
}

/// psi_cp,N (17.6.2.6).
fn splitting(facts: &Facts, body: &Body, c_a_min: f64, sheet: &mut Sheet) -> f64 {
    if !facts.kind.is_drilled() {
        return sheet.step(PSI_CP, 1.0);
    }
    if facts.is_cracked {
        return sheet.step(PSI_CP_CRACKED, 1.0);
    }
    if facts.splitting_bars {
        return sheet.step(PSI_CP_BARS, 1.0);
    }
    let h_ef = sheet.step(H_EF_CP, facts.length(body.full_depth_mm));
    let c_ac = critical_edge(facts, h_ef, sheet);
    if at_least(c_a_min, c_ac) {
        return sheet.step(PSI_CP_FAR, 1.0);
    }
    sheet.step(PSI_CP_NEAR, f64::min(1.0, c_a_min.max(1.5 * h_ef) / c_ac))
}

/// c_ac of the report, or by 17.9.5 from the embedment that was just told as h_ef_cp.
pub fn critical_edge(facts: &Facts, h_ef: f64, sheet: &mut Sheet) -> f64 {
    match (facts.report.c_ac, facts.kind) {
        (Some(c_ac), _) => sheet.step(C_AC, c_ac),
        (None, AnchorKind::Undercut) => sheet.step(C_AC_25, 2.5 * h_ef),
        (None, AnchorKind::Adhesive) => sheet.step(C_AC_2, 2.0 * h_ef),
        (None, _) => sheet.step(C_AC_4, 4.0 * h_ef),
    }
}

/// Corners of figures in units of the edition, each figure ended by a pair of NaN.
pub fn corners(facts: &Facts, figures: &[Polygon]) -> Detail {
    let mut corners = Vec::new();
    for (place, figure) in figures.iter().enumerate() {
        if place > 0 {
            corners.push([f64::NAN, f64::NAN]);
        }
        corners.extend(figure.corners.iter().map(|at| [facts.length(at.x_mm), facts.length(at.y_mm)]));
    }
    Detail::Shape(corners)
}

/// A sum over the members of a group, in their order.
pub fn sum(members: &[usize], of: impl Fn(usize) -> f64) -> f64 {
    let mut total = of(members[0]);
    for &place in &members[1..] {
        total += of(place);
    }
    total
}

/// e'_N along both axes (17.6.2.3.1), from the centroid of the pulled anchors.
pub fn eccentricity(facts: &Facts, members: &[usize], pull: &[f64], sheet: &mut Sheet) -> Eccentricity {
    let anchors = &facts.anchors;
    if sheet.is_told() {
        let of = |value: &dyn Fn(usize) -> f64| -> Vec<f64> { members.iter().map(|&place| value(place)).collect() };
        sheet.carry_each(T_I, &of(&|place| pull[place]));
        sheet.each(X_I, &of(&|place| anchors[place].x));
        sheet.each(Y_I, &of(&|place| anchors[place].y));
    }
    let n = sheet.step(N, members.len() as f64);
    let total = sum(members, |place| pull[place]);
    let e_x = sum(members, |p| pull[p] * anchors[p].x) / total - sum(members, |p| anchors[p].x) / n;
    let e_y = sum(members, |p| pull[p] * anchors[p].y) / total - sum(members, |p| anchors[p].y) / n;
    Eccentricity { x: sheet.step(E_N_X, e_x.abs()), y: sheet.step(E_N_Y, e_y.abs()) }
}
