//! Pryout (17.7.3): the breakout strength of all sheared anchors, pulled or not.

use alloc::vec::Vec;

use super::body::breakouts_overlap;
use super::bond::{self, Bonded, Extent, Width};
use super::breakout::{Basic, Eccentricity, Group, N, Piece, X_I, Y_I, sum};
use super::coverage::{MIXED_BOND, MIXED_DEPTHS};
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::kind::AnchorKind;
use super::reduction;
use super::set::{Set, connected};
use super::steel::Shear;
use crate::calc::clause::{PRACTICE, STATICS};
use crate::calc::limit::at_least;
use crate::calc::number::{hypot, sqrt};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, steps};

steps! { 59 "ACI 318-19, pryout";
    V_X_I "V_x_i" Force (STATICS "base reactions" Derived) "Shear on each anchor of the group, to the right": Solved;
    V_Y_I "V_y_i" Force (STATICS "base reactions" Derived) "Shear on each anchor of the group, to the rear": Solved;
    V_UA "V_ua" Force (STATICS "" Derived) "Resultant shear on the group" = "sqrt(sum(V_x_i)^2 + sum(V_y_i)^2)";
    M_Z "M_z" Moment (STATICS "" Derived) "Twist of the shears about the centroid of the group" = "sum(x_i * V_y_i - y_i * V_x_i) - sum(x_i) / n * sum(V_y_i) + sum(y_i) / n * sum(V_x_i)";
    E_MAX "e_max" Length (PRACTICE "shears that oppose each other" Derived) "From the centroid to the farthest anchor: the resultant of shears that oppose each other may lie anywhere, that of others within": Given;
    E "e'_N" Length (ACI_318_19 "17.7.3.1, R17.7.3" Memory) "Eccentricity of the shear resultant" = "min(e_max, abs(M_z) / V_ua)";
    E_X "e'_N_x" Length (ACI_318_19 "17.7.3.1, R17.7.3" Memory) "Its part along x" = "e'_N * abs(sum(V_y_i)) / V_ua";
    E_Y "e'_N_y" Length (ACI_318_19 "17.7.3.1, R17.7.3" Memory) "Its part along y" = "e'_N * abs(sum(V_x_i)) / V_ua";
    K_CP "k_cp" Number (ACI_318_19 "17.7.3.1" Secondary) "Pryout coefficient; the embedment is at least 65 mm (2.5 in.)": Condition;
    K_CP_SHALLOW "k_cp" Number (ACI_318_19 "17.7.3.1" Secondary) "Pryout coefficient; the embedment is below 65 mm (2.5 in.)": Condition;
    N_CP "N_cp" Force (ACI_318_19 "17.7.3.1.1" Secondary) "Of an adhesive anchor the lesser of bond and breakout" = "min(N_a, N_cb)";
    N_CPG "N_cpg" Force (ACI_318_19 "17.7.3.1.2" Secondary) "Of adhesive anchors the lesser of bond and breakout" = "min(N_ag, N_cbg)";
    V_CP_BONDED "V_cp" Force (ACI_318_19 "17.7.3.1(a)" Secondary) "Nominal pryout strength of the adhesive anchor" = "k_cp * N_cp";
    V_CPG_BONDED "V_cpg" Force (ACI_318_19 "17.7.3.1(b)" Secondary) "Nominal pryout strength of the adhesive anchors" = "k_cp * N_cpg";
    V_CP "V_cp" Force (ACI_318_19 "17.7.3.1(a)" Secondary) "Nominal pryout strength of the anchor" = "k_cp * N_cb";
    V_CPG "V_cpg" Force (ACI_318_19 "17.7.3.1(b)" Secondary) "Nominal pryout strength of the group" = "k_cp * N_cbg";
    V_CP_SHARE "V_cp" Force (PRACTICE "shears that oppose each other" Memory) "Nominal pryout strength of the worst single anchor, whose body is cut half way to its neighbours because their shears oppose" = "k_cp * N_cb";
    V_D "V_d" Force (ACI_318_19 "17.5.1.2" Secondary) "Design strength" = "phi * V_cp";
    V_D_GROUP "V_d" Force (ACI_318_19 "17.5.1.2" Secondary) "Design strength" = "phi * V_cpg";
    V_X "V_x" Force (STATICS "base reactions" Derived) "Shear on the anchor, to the right": Solved;
    V_Y "V_y" Force (STATICS "base reactions" Derived) "Shear on the anchor, to the rear": Solved;
    V_UA_SINGLE "V_ua" Force (STATICS "" Derived) "Shear on the anchor" = "sqrt(V_x^2 + V_y^2)";
    R_V "r_V" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength" = "V_ua / V_d";
}

/// A group of sheared anchors with its breakout body and, of adhesive anchors, its bond.
pub struct PriedGroup {
    /// Breakout.
    pub breakout: Group,
    bond: Option<Bonded>,
    /// The bond of each member, cut half way to its neighbours.
    cuts: Vec<Bonded>,
    set: Set,
    width: Width,
}

impl PriedGroup {
    /// The groups among sheared anchors, ours at least in part; of adhesive anchors by every width of what is pulled out.
    pub fn groups(facts: &Facts, sheared: Set) -> Vec<PriedGroup> {
        let mut groups = Vec::new();
        for &width in bond::widths(facts) {
            let sets = connected(sheared, |a, b| {
                let pair = [&facts.anchors[a], &facts.anchors[b]];
                breakouts_overlap(pair[0], pair[1])
                    || (facts.kind == AnchorKind::Adhesive && bond::overlap(facts, pair, width))
            });
            let own = sets.into_iter().filter(|set| set & facts.own != 0);
            groups.extend(own.map(|set| PriedGroup::new(facts, set, width)));
        }
        groups
    }

    fn new(facts: &Facts, set: Set, width: Width) -> PriedGroup {
        let breakout = Group::new(facts, set);
        let bond = |extent| Bonded::new(facts, set, (extent, width), &mut Sheet::quiet());
        let is_bonded = facts.kind == AnchorKind::Adhesive;
        let cut_members = if is_bonded { breakout.body.members.len() } else { 0 };
        PriedGroup {
            breakout,
            bond: is_bonded.then(|| bond(Extent::Whole)),
            cuts: (0..cut_members).map(|place| bond(Extent::Cut(place))).collect(),
            set,
            width,
        }
    }

    /// Why the equations do not reach this group.
    fn uncovered(&self) -> Option<StepId> {
        if !self.breakout.body.alike {
            return Some(MIXED_DEPTHS);
        }
        self.bond.as_ref().is_some_and(|bond| !bond.alike).then_some(MIXED_BOND)
    }
}

/// A group of sheared anchors.
pub struct Sheared<'a> {
    /// Number of the group, from 1.
    pub number: u16,
    /// The group.
    pub group: &'a PriedGroup,
    /// Shears of all anchors of the site, in units of the edition.
    pub shear: &'a [Shear],
}

impl Sheared<'_> {
    /// The group against its resultant.
    pub fn check(&self, facts: &Facts, sheet: &mut Sheet) -> Outcome {
        let breakout = &self.group.breakout;
        let (body, members) = (&breakout.body, &breakout.body.members);
        self.open(Subject::Group(self.number), facts, sheet);
        if let Some(reason) = self.group.uncovered() {
            return Outcome::NotCovered(reason);
        }
        if sheet.is_told() {
            Basic::new(facts, body, Piece::Whole, sheet);
        }
        if let [only] = members[..] {
            let n_cb = breakout.basic.single(sheet);
            let bond = self.group.bond.as_ref().map(|_| Extent::Whole);
            return self.single(facts, (only, n_cb, bond), sheet);
        }
        if sheet.is_told() {
            let of = |value: &dyn Fn(usize) -> f64| -> Vec<f64> { members.iter().map(|&place| value(place)).collect() };
            sheet.carry_each(V_X_I, &of(&|place| self.shear[place].x));
            sheet.carry_each(V_Y_I, &of(&|place| self.shear[place].y));
            sheet.each(X_I, &of(&|place| facts.anchors[place].x));
            sheet.each(Y_I, &of(&|place| facts.anchors[place].y));
        }
        let n = sheet.step(N, members.len() as f64);
        let (shear, anchors) = (self.shear, &facts.anchors);
        let (v_x, v_y) = (sum(members, |p| shear[p].x), sum(members, |p| shear[p].y));
        let v_ua = sheet.step(V_UA, sqrt(v_x * v_x + v_y * v_y));
        let m_z = sum(members, |p| anchors[p].x * shear[p].y - anchors[p].y * shear[p].x)
            - sum(members, |p| anchors[p].x) / n * v_y
            + sum(members, |p| anchors[p].y) / n * v_x;
        let m_z = sheet.step(M_Z, m_z);
        let middle = [sum(members, |p| anchors[p].x) / n, sum(members, |p| anchors[p].y) / n];
        let away = |p: usize| hypot(anchors[p].x - middle[0], anchors[p].y - middle[1]);
        let e_max = sheet.step(E_MAX, members.iter().fold(0.0, |far: f64, &place| far.max(away(place))));
        // A pure twist has no resultant; its anchors are checked alone.
        let size = if v_ua > 0.0 { v_ua } else { f64::INFINITY };
        let off = m_z.abs() / size;
        let off = sheet.step(E, if off > e_max { e_max } else { off });
        let eccentricity =
            Eccentricity { x: sheet.step(E_X, off * v_y.abs() / size), y: sheet.step(E_Y, off * v_x.abs() / size) };
        let n_cbg = breakout.basic.group(eccentricity, sheet);
        let (id, n_cpg) = match &self.group.bond {
            None => (V_CPG, n_cbg),
            Some(bond) => {
                if sheet.is_told() {
                    Bonded::new(facts, self.group.set, (Extent::Whole, self.group.width), sheet);
                }
                let n_ag = bond.group(eccentricity, sheet);
                (V_CPG_BONDED, sheet.step(N_CPG, n_ag.min(n_cbg)))
            }
        };
        let k_cp = coefficient(facts, body.full_depth_mm, sheet);
        let v_cpg = sheet.step(id, k_cp * n_cpg);
        let phi = reduction::pryout(sheet);
        let v_d = sheet.step(V_D_GROUP, phi * v_cpg);
        sheet.step(R_V, v_ua / v_d);
        facts.compared(v_ua, v_d)
    }

    /// The worst single anchor, where shears of the group oppose each other; none where they do not.
    pub fn check_opposed(&self, facts: &Facts, sheet: &mut Sheet) -> Option<(usize, Outcome)> {
        let breakout = &self.group.breakout;
        let members = &breakout.body.members;
        if self.group.uncovered().is_some() || !self.is_opposed() {
            return None;
        }
        let quiet = &mut Sheet::quiet();
        let bond = |place: usize| self.group.bond.as_ref().map(|_| Extent::Cut(place));
        let mut worst = (0, f64::NEG_INFINITY, Outcome::NotCovered(MIXED_DEPTHS));
        for (place, &member) in members.iter().enumerate().filter(|(_, member)| facts.is_own(**member)) {
            let n_cb = breakout.cuts[place].single(quiet);
            let outcome = self.single(facts, (member, n_cb, bond(place)), quiet);
            if let Outcome::Compared { utilisation, .. } = outcome
                && (utilisation > worst.1 || utilisation.is_nan())
            {
                worst = (place, utilisation, outcome);
            }
        }
        let (place, _, outcome) = worst;
        if sheet.is_told() {
            self.open(Subject::Anchor(members[place] as u16), facts, sheet);
            let n_cb = Basic::new(facts, &breakout.body, Piece::Cut(place), sheet).single(sheet);
            self.single(facts, (members[place], n_cb, bond(place)), sheet);
        }
        Some((members[place], outcome))
    }

    fn open(&self, subject: Subject, facts: &Facts, sheet: &mut Sheet) {
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorShearPryout), facts.edition.system);
    }

    /// One anchor with its breakout strength and how much of its group's bond it has.
    fn single(&self, facts: &Facts, anchor: (usize, f64, Option<Extent>), sheet: &mut Sheet) -> Outcome {
        let (only, n_cb, bond) = anchor;
        let body = &self.group.breakout.body;
        let is_alone = body.members.len() == 1;
        let (id, n_cp) = match bond {
            None => (if is_alone { V_CP } else { V_CP_SHARE }, n_cb),
            Some(extent) => {
                let known = match extent {
                    Extent::Whole => self.group.bond.as_ref(),
                    Extent::Cut(place) => self.group.cuts.get(place),
                };
                let n_a = match known.filter(|_| !sheet.is_told()) {
                    Some(bond) => bond.single(sheet),
                    None => Bonded::new(facts, self.group.set, (extent, self.group.width), sheet).single(sheet),
                };
                (V_CP_BONDED, sheet.step(N_CP, n_a.min(n_cb)))
            }
        };
        let k_cp = coefficient(facts, body.full_depth_mm, sheet);
        let v_cp = sheet.step(id, k_cp * n_cp);
        let phi = reduction::pryout(sheet);
        let v_d = sheet.step(V_D, phi * v_cp);
        let shear = self.shear[only];
        if sheet.is_told() {
            sheet.carry(V_X, shear.x);
            sheet.carry(V_Y, shear.y);
        }
        let v_ua = sheet.step(V_UA_SINGLE, shear.size());
        sheet.step(R_V, v_ua / v_d);
        facts.compared(v_ua, v_d)
    }

    /// Whether two shears of the group point away from each other.
    fn is_opposed(&self) -> bool {
        let members = &self.group.breakout.body.members;
        members.iter().enumerate().any(|(place, &a)| {
            let a = self.shear[a];
            members[place + 1..].iter().any(|&b| a.x * self.shear[b].x + a.y * self.shear[b].y < 0.0)
        })
    }
}

/// k_cp by the real embedment.
fn coefficient(facts: &Facts, depth_mm: f64, sheet: &mut Sheet) -> f64 {
    if at_least(facts.length(depth_mm), facts.edition.pryout_deep) {
        sheet.step(K_CP, 2.0)
    } else {
        sheet.step(K_CP_SHALLOW, 1.0)
    }
}
