//! Bond of adhesive anchors in tension (17.6.5), of a group and under a lasting pull.

use alloc::vec::Vec;

use super::anchor::Anchor;
use super::body::{nearest_mm, share, squares};
use super::breakout::{Eccentricity, corners, critical_edge, eccentricity, sum};
use super::concrete;
use super::edition::{ACI_318_19, Constant};
use super::facts::Facts;
use super::reduction::{self, Action};
use super::set::{Set, connected, members};
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::limit::{at_least, less};
use crate::calc::number::sqrt;
use crate::calc::{Detail, Kind, Outcome, Sheet, steps};
use crate::geometry::{Point, Polygon, union_area_mm2, union_outline};

steps! { 66 "ACI 318-19, bond";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the anchors": Given;
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    TAU_UNCR "tau_uncr" Stress (INPUT "evaluation report" Derived) "Characteristic bond stress in uncracked concrete, from the evaluation report": Given;
    TAU_UNCR_TABLE "tau_uncr" Stress (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Least bond stress in uncracked concrete": Table;
    TAU_UNCR_LEAST "tau_uncr_min" Stress (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Least bond stress in uncracked concrete, before any factor": Table;
    ALPHA_UNCR "alpha_uncr" Number (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Factor on it in seismic design categories C to F. Whether it enters the width is not clear: all is checked with it and without": Condition;
    TAU_UNCR_SEIS "tau_uncr" Stress (ACI_318_19 "Table 17.6.5.2.5" Derived) "Bond stress that the narrower width goes by" = "alpha_uncr * tau_uncr_min";
    TAU_CR "tau_cr" Stress (INPUT "evaluation report" Derived) "Characteristic bond stress in cracked concrete, from the evaluation report": Given;
    TAU_CR_TABLE "tau_cr" Stress (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Least bond stress in cracked concrete": Table;
    ALPHA_N_SEIS "alpha_N_seis" Number (INPUT "evaluation report" Derived) "Factor on bond stress under simulated earthquakes, from the evaluation report": Given;
    ALPHA_TABLE "alpha_N_seis" Number (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Factor on the least bond stress in cracked concrete in seismic design categories C to F": Condition;
    TAU_SEIS "tau" Stress (ACI_318_19 "17.10.3, 17.6.5.2" Memory) "Bond stress under earthquakes" = "alpha_N_seis * tau_cr";
    TAU_CRACKED "tau" Stress (ACI_318_19 "17.6.5.2.1" Secondary) "Bond stress that counts, in cracked concrete" = "tau_cr";
    TAU_SOUND "tau" Stress (ACI_318_19 "17.6.5.2.2" Secondary) "Bond stress that counts, in concrete that does not crack" = "tau_uncr";
    ALPHA_LASTING "alpha_sus" Number (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Factor on the least bond stress under a lasting pull": Condition;
    TAU_LASTING "tau_sus" Stress (ACI_318_19 "Table 17.6.5.2.5" Secondary) "Bond stress under a lasting pull" = "alpha_sus * tau";
    TAU_LASTING_REPORT "tau_sus" Stress (ACI_318_19 "17.5.2.2" Secondary) "Bond stress that the factor for a lasting pull goes with" = "tau";
    C_NA "c_Na" Length (ACI_318_19 "17.6.5.1.2" Secondary) "Half the width of what one anchor pulls out, by the bond stress of uncracked concrete" = "10 * d_a * sqrt(tau_uncr / tau_ref)";
    A_NA "A_Na" Area (ACI_318_19 "17.6.5.1.1" Secondary) "Projected area of the group: squares of 2 c_Na about each anchor, united and cut at the edges": Geometry;
    A_NA_CUT "A_Na" Area (PRACTICE "" Memory) "Projected area of the anchor, cut half way to its neighbours": Geometry;
    A_NAO "A_Nao" Area (ACI_318_19 "17.6.5.1.2" Secondary) "Projected area of one anchor far from edges" = "(2 * c_Na)^2";
    C_A_MIN "c_a_min" Length (ACI_318_19 "17.6.5.4.1" Secondary) "Smallest distance from an anchor to an edge": Geometry;
    PSI_ED "psi_ed_Na" Number (ACI_318_19 "17.6.5.4.1(b)" Secondary) "Effect of the edge" = "0.7 + 0.3 * c_a_min / c_Na";
    PSI_ED_FAR "psi_ed_Na" Number (ACI_318_19 "17.6.5.4.1(a)" Secondary) "1, because no edge is nearer than c_Na": Condition;
    PSI_CP_CRACKED "psi_cp_Na" Number (ACI_318_19 "17.6.5.5" Secondary) "1, because the anchor is designed for cracked concrete": Condition;
    PSI_CP_BARS "psi_cp_Na" Number (ACI_318_19 "17.6.5.5" Secondary) "1, because reinforcement controls splitting": Condition;
    H_EF_CP "h_ef_cp" Length (INPUT "" Derived) "Effective embedment, which splitting goes by": Given;
    PSI_CP_FAR "psi_cp_Na" Number (ACI_318_19 "17.6.5.5.1(a)" Secondary) "1, because no edge is nearer than c_ac": Condition;
    PSI_CP_NEAR "psi_cp_Na" Number (ACI_318_19 "17.6.5.5.1(b)" Secondary) "Splitting near an edge of uncracked concrete, at most 1" = "min(1, max(c_a_min, c_Na) / c_ac)";
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    N_BA "N_ba" Force (ACI_318_19 "17.6.5.2.1" Secondary) "Basic bond strength of one anchor" = "lambda_a * tau * pi * d_a * h_ef";
    N_BA_LASTING "N_ba" Force (ACI_318_19 "17.6.5.2.1" Secondary) "Basic bond strength of one anchor" = "lambda_a * tau_sus * pi * d_a * h_ef";
    PSI_EC_X "psi_ec_Na_x" Number (ACI_318_19 "17.6.5.3.1" Secondary) "Effect of the eccentricity along x" = "1 / (1 + e'_N_x / c_Na)";
    PSI_EC_Y "psi_ec_Na_y" Number (ACI_318_19 "17.6.5.3.1" Secondary) "Effect of the eccentricity along y" = "1 / (1 + e'_N_y / c_Na)";
    PSI_EC "psi_ec_Na" Number (ACI_318_19 "17.6.5.3.1" Secondary) "Effect of both eccentricities" = "psi_ec_Na_x * psi_ec_Na_y";
    N_A "N_a" Force (ACI_318_19 "17.6.5.1(a)" Secondary) "Nominal bond strength of the anchor" = "A_Na / A_Nao * psi_ed_Na * psi_cp_Na * N_ba";
    N_AG "N_ag" Force (ACI_318_19 "17.6.5.1(b)" Secondary) "Nominal bond strength of the group" = "A_Na / A_Nao * psi_ec_Na * psi_ed_Na * psi_cp_Na * N_ba";
    N_D "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_a";
    N_D_GROUP "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_ag";
    N_UA "N_ua" Force (STATICS "base reactions" Derived) "Pull on the anchor": Solved;
    N_UA_GROUP "N_ua" Force (STATICS "" Derived) "Pull on the group" = "sum(T_i)";
    R_N "r_N" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength" = "N_ua / N_d";
    N_UA_S "N_ua_s" Force (INPUT "" Derived) "Lasting pull on the most loaded anchor": Given;
    N_D_LASTING "N_d" Force (ACI_318_19 "17.5.2.2" Secondary) "Design strength under a lasting pull" = "0.55 * phi * N_ba";
    R_LASTING "r_N" Utilisation (ACI_318_19 "17.5.2.2" Secondary) "Demand over strength" = "N_ua_s / N_d";
}

/// Factors of Table 17.6.5.2.5 in seismic design categories C to F, in cracked and in uncracked concrete.
const TABLE_SEISMIC_CRACKED: f64 = 0.8;
const TABLE_SEISMIC_UNCRACKED: f64 = 0.4;
/// Factor of the same table under a lasting pull.
const TABLE_LASTING: f64 = 0.4;

/// How wide what is pulled out is taken. With the table's values it is not clear whether the seismic factor on the bond
/// stress of uncracked concrete enters the width, and either may be the weaker one: far from edges the wide one, with
/// pulls that differ across a diagonal the narrow one. So both are checked.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Width {
    /// By the bond stress as it is.
    Plain,
    /// By the table's bond stress with its seismic factor.
    Seismic,
}

/// The widths that are checked.
pub fn widths(facts: &Facts) -> &'static [Width] {
    if facts.seismic && facts.report.bond_stress > 0 { &[Width::Plain, Width::Seismic] } else { &[Width::Plain] }
}

/// Bond stress of uncracked concrete, which sets the width of what is pulled out; NaN while it is unknown, which the gaps
/// say.
fn tau_uncr(facts: &Facts, width: Width, sheet: &mut Sheet) -> f64 {
    let place = facts.report.bond_stress;
    if place == 0 {
        return sheet.step(TAU_UNCR, facts.report.tau_uncr.unwrap_or(f64::NAN));
    }
    let tau = facts.edition.least_bond[place - 1][1];
    let id = if width == Width::Plain { TAU_UNCR_TABLE } else { TAU_UNCR_LEAST };
    sheet.detailed(id, tau, || Detail::Rows(alloc::vec![[place as f64, tau]]));
    if width == Width::Plain {
        return tau;
    }
    let alpha = sheet.step(ALPHA_UNCR, TABLE_SEISMIC_UNCRACKED);
    sheet.step(TAU_UNCR_SEIS, alpha * tau)
}

/// The bond stress that counts in the state of the concrete.
fn tau(facts: &Facts, tau_uncr: f64, sheet: &mut Sheet) -> f64 {
    if !facts.is_cracked {
        return sheet.step(TAU_SOUND, tau_uncr);
    }
    let (tau_cr, alpha) = match facts.report.bond_stress {
        0 => {
            let tau_cr = sheet.step(TAU_CR, facts.report.tau_cr.unwrap_or(f64::NAN));
            (tau_cr, facts.report.alpha_n_seis.map(|alpha| (ALPHA_N_SEIS, alpha)))
        }
        place => {
            let tau_cr = facts.edition.least_bond[place - 1][0];
            let tau_cr = sheet.detailed(TAU_CR_TABLE, tau_cr, || Detail::Rows(alloc::vec![[place as f64, tau_cr]]));
            (tau_cr, Some((ALPHA_TABLE, TABLE_SEISMIC_CRACKED)))
        }
    };
    if !facts.seismic {
        return sheet.step(TAU_CRACKED, tau_cr);
    }
    let (id, alpha) = alpha.unwrap_or((ALPHA_N_SEIS, f64::NAN));
    let alpha = sheet.step(id, alpha);
    sheet.step(TAU_SEIS, alpha * tau_cr)
}

/// Half the width of what one adhesive anchor of this diameter pulls out, in mm; zero where the bond stress is unknown.
pub fn width_mm(facts: &Facts, d_a: f64, width: Width) -> f64 {
    let quiet = &mut Sheet::quiet();
    let c_na = half_width(facts, d_a, tau_uncr(facts, width, quiet), quiet);
    if c_na.is_nan() { 0.0 } else { facts.edition.system.to_si(c_na, Kind::Length) }
}

fn half_width(facts: &Facts, d_a: f64, tau_uncr: f64, sheet: &mut Sheet) -> f64 {
    let reference: Constant = facts.edition.bond_reference;
    let tau_ref = reference.told(sheet);
    sheet.step(C_NA, 10.0 * d_a * sqrt(tau_uncr / tau_ref))
}

/// Whether what two adhesive anchors pull out overlaps: both distances along the axes below 2 c_Na (Table 17.5.1.3.1).
pub fn overlap(facts: &Facts, [a, b]: [&Anchor; 2], width: Width) -> bool {
    let reach_mm = width_of(facts, a, width) + width_of(facts, b, width);
    less((a.at.x_mm - b.at.x_mm).abs(), reach_mm) && less((a.at.y_mm - b.at.y_mm).abs(), reach_mm)
}

/// c_Na of an anchor in mm; the plain one is kept with it.
fn width_of(facts: &Facts, anchor: &Anchor, width: Width) -> f64 {
    if width == Width::Plain { anchor.c_na_mm } else { width_mm(facts, anchor.d_a, width) }
}

/// How much of a group pulls out.
#[derive(Clone, Copy)]
pub enum Extent {
    /// All of it.
    Whole,
    /// The anchor of this place in it, cut half way to its neighbours.
    Cut(usize),
}

/// The factors of a group's bond strength that no force changes, in units of the edition.
pub struct Bonded {
    /// The anchors.
    pub members: Vec<usize>,
    width: Width,
    /// Whether all have the same diameter and embedment.
    pub alike: bool,
    c_na: f64,
    a_na: f64,
    a_nao: f64,
    psi_ed: f64,
    psi_cp: f64,
    n_ba: f64,
}

impl Bonded {
    /// The groups among pulled anchors, of every width.
    pub fn groups(facts: &Facts, pulled: Set) -> Vec<Bonded> {
        let mut groups = Vec::new();
        for &width in widths(facts) {
            let sets = connected(pulled, |a, b| overlap(facts, [&facts.anchors[a], &facts.anchors[b]], width));
            let own = sets.into_iter().filter(|set| set & facts.own != 0);
            groups.extend(own.map(|set| Bonded::new(facts, set, (Extent::Whole, width), &mut Sheet::quiet())));
        }
        groups
    }

    /// A group or one anchor of it, with the steps that lead to its factors.
    pub fn new(facts: &Facts, set: Set, (extent, width): (Extent, Width), sheet: &mut Sheet) -> Bonded {
        let all: Vec<usize> = members(set).collect();
        let members = match extent {
            Extent::Whole => all.clone(),
            Extent::Cut(place) => alloc::vec![all[place]],
        };
        let first = &facts.anchors[members[0]];
        let alike = members.iter().all(|&place| {
            let anchor = &facts.anchors[place];
            anchor.d_a == first.d_a && anchor.h_ef_mm == first.h_ef_mm
        });
        let d_a = sheet.step(D_A, first.d_a);
        let h_ef = sheet.step(H_EF, first.h_ef);
        let tau_uncr = tau_uncr(facts, width, sheet);
        let c_na = half_width(facts, d_a, tau_uncr, sheet);
        let points: Vec<Point> = all.iter().map(|&place| facts.anchors[place].at).collect();
        let parts = squares(facts, &points, width_of(facts, first, width));
        let a_na = match extent {
            Extent::Whole => {
                let parts = parts.concat();
                let area = facts.area(union_area_mm2(&parts, &facts.clip));
                sheet.detailed(A_NA, area, || corners(facts, &union_outline(&parts, &facts.clip)))
            }
            Extent::Cut(place) => {
                let own = share(&points, &parts, place);
                let area = facts.area(own.iter().map(Polygon::area_mm2).sum());
                sheet.detailed(A_NA_CUT, area, || corners(facts, &own))
            }
        };
        let a_nao = sheet.step(A_NAO, (2.0 * c_na) * (2.0 * c_na));
        let c_a_min = facts.length(nearest_mm(facts, &members));
        let (is_far, splits) = (at_least(c_a_min, c_na), facts.may_split() && c_a_min.is_finite());
        if !is_far || splits {
            sheet.detailed(C_A_MIN, c_a_min, || facts.shortest_line(&members));
        }
        let psi_ed = if is_far { sheet.step(PSI_ED_FAR, 1.0) } else { sheet.step(PSI_ED, 0.7 + 0.3 * c_a_min / c_na) };
        let psi_cp = splitting(facts, h_ef, (c_a_min, c_na), sheet);
        let n_ba = basic_strength(facts, first, tau_uncr, sheet);
        Bonded { members, width, alike, c_na, a_na, a_nao, psi_ed, psi_cp, n_ba }
    }

    /// Nominal strength of a single anchor (17.6.5.1a).
    pub fn single(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(N_A, self.a_na / self.a_nao * self.psi_ed * self.psi_cp * self.n_ba)
    }

    /// Nominal strength of a group (17.6.5.1b) whose eccentricities stand on the sheet as e'_N_x and e'_N_y.
    pub fn group(&self, eccentricity: Eccentricity, sheet: &mut Sheet) -> f64 {
        let psi_x = sheet.step(PSI_EC_X, 1.0 / (1.0 + eccentricity.x / self.c_na));
        let psi_y = sheet.step(PSI_EC_Y, 1.0 / (1.0 + eccentricity.y / self.c_na));
        let psi_ec = sheet.step(PSI_EC, psi_x * psi_y);
        sheet.step(N_AG, self.a_na / self.a_nao * psi_ec * self.psi_ed * self.psi_cp * self.n_ba)
    }

    /// The group against its pull, in the section that is open.
    pub fn check(&self, facts: &Facts, pull: &[f64], sheet: &mut Sheet) -> Outcome {
        if sheet.is_told() {
            let set = self.members.iter().fold(0, |set, &place| set | super::set::only(place));
            Bonded::new(facts, set, (Extent::Whole, self.width), sheet);
        }
        let (id, nominal) = if self.members.len() == 1 {
            (N_D, self.single(sheet))
        } else {
            let eccentricity = eccentricity(facts, &self.members, pull, sheet);
            (N_D_GROUP, self.group(eccentricity, sheet))
        };
        let phi = reduction::concrete(Action::Tension, facts, sheet);
        let k_e = reduction::seismic(facts, sheet);
        let n_d = sheet.step(id, k_e * phi * nominal);
        let n_ua = match self.members[..] {
            [only] => sheet.carry(N_UA, pull[only]),
            _ => sheet.step(N_UA_GROUP, sum(&self.members, |place| pull[place])),
        };
        sheet.step(R_N, n_ua / n_d);
        facts.compared(n_ua, n_d)
    }
}

/// psi_cp,Na (17.6.5.5).
fn splitting(facts: &Facts, h_ef: f64, (c_a_min, c_na): (f64, f64), sheet: &mut Sheet) -> f64 {
    if facts.is_cracked {
        return sheet.step(PSI_CP_CRACKED, 1.0);
    }
    if facts.splitting_bars {
        return sheet.step(PSI_CP_BARS, 1.0);
    }
    let h_ef = sheet.step(H_EF_CP, h_ef);
    let c_ac = critical_edge(facts, h_ef, sheet);
    if at_least(c_a_min, c_ac) {
        return sheet.step(PSI_CP_FAR, 1.0);
    }
    sheet.step(PSI_CP_NEAR, f64::min(1.0, c_a_min.max(c_na) / c_ac))
}

/// N_ba (17.6.5.2.1).
fn basic_strength(facts: &Facts, anchor: &Anchor, tau_uncr: f64, sheet: &mut Sheet) -> f64 {
    let lambda_a = concrete::bond_lightweight(facts, sheet);
    let tau = tau(facts, tau_uncr, sheet);
    let pi = sheet.step(PI, core::f64::consts::PI);
    sheet.step(N_BA, lambda_a * tau * pi * anchor.d_a * anchor.h_ef)
}

/// The lasting pull on one anchor of this place, in the section that is open (17.5.2.2).
pub fn check_lasting(facts: &Facts, place: usize, sheet: &mut Sheet) -> Outcome {
    let anchor = &facts.anchors[place];
    let d_a = sheet.step(D_A, anchor.d_a);
    let h_ef = sheet.step(H_EF, anchor.h_ef);
    let lambda_a = concrete::bond_lightweight(facts, sheet);
    // A lasting pull is no earthquake: the bond stress is the static one.
    let tau = match (facts.report.bond_stress, facts.is_cracked) {
        (_, false) => {
            let tau_uncr = tau_uncr(facts, Width::Plain, sheet);
            sheet.step(TAU_SOUND, tau_uncr)
        }
        (0, true) => {
            let tau_cr = sheet.step(TAU_CR, facts.report.tau_cr.unwrap_or(f64::NAN));
            sheet.step(TAU_CRACKED, tau_cr)
        }
        (row, true) => {
            let tau_cr = facts.edition.least_bond[row - 1][0];
            let tau_cr = sheet.detailed(TAU_CR_TABLE, tau_cr, || Detail::Rows(alloc::vec![[row as f64, tau_cr]]));
            sheet.step(TAU_CRACKED, tau_cr)
        }
    };
    let tau_sus = if facts.report.bond_stress == 0 {
        sheet.step(TAU_LASTING_REPORT, tau)
    } else {
        let alpha = sheet.step(ALPHA_LASTING, TABLE_LASTING);
        sheet.step(TAU_LASTING, alpha * tau)
    };
    let pi = sheet.step(PI, core::f64::consts::PI);
    let n_ba = sheet.step(N_BA_LASTING, lambda_a * tau_sus * pi * d_a * h_ef);
    let phi = reduction::concrete(Action::Tension, facts, sheet);
    let n_d = sheet.step(N_D_LASTING, 0.55 * phi * n_ba);
    let n_ua = sheet.step(N_UA_S, facts.sustained);
    sheet.step(R_LASTING, n_ua / n_d);
    facts.compared(n_ua, n_d)
}
