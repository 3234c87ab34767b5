//! A pulled group against its breakout strength, and its hottest anchor against its own share of the concrete.

use super::breakout::{Basic, Group, N_D, N_D_GROUP, N_UA, N_UA_GROUP, Piece, R_N, eccentricity, sum};
use super::coverage::MIXED_DEPTHS;
use super::facts::Facts;
use super::reduction::{self, Action};
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject};

/// A group that is pulled: its number from 1, and the pull on each anchor of the site in units of the edition.
pub struct Pulled<'a> {
    /// Number of the group.
    pub number: u16,
    /// The group.
    pub group: &'a Group,
    /// Pulls of all anchors.
    pub pull: &'a [f64],
}

impl Pulled<'_> {
    /// Breakout of the group (17.6.2).
    pub fn check(&self, facts: &Facts, sheet: &mut Sheet) -> Outcome {
        let (body, members) = (&self.group.body, &self.group.body.members);
        let subject = Subject::Group(self.number);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionBreakout), facts.edition.system);
        if !body.alike {
            return Outcome::NotCovered(MIXED_DEPTHS);
        }
        if sheet.is_told() {
            Basic::new(facts, body, Piece::Whole, sheet);
        }
        if let [only] = members[..] {
            let n_cb = self.group.basic.single(sheet);
            let phi = reduction::concrete(Action::Tension, facts, sheet);
            let k_e = reduction::seismic(facts, sheet);
            let n_d = sheet.step(N_D, k_e * phi * n_cb);
            let n_ua = sheet.carry(N_UA, self.pull[only]);
            sheet.step(R_N, n_ua / n_d);
            return facts.compared(n_ua, n_d);
        }
        let eccentricity = eccentricity(facts, members, self.pull, sheet);
        let n_cbg = self.group.basic.group(eccentricity, sheet);
        let phi = reduction::concrete(Action::Tension, facts, sheet);
        let k_e = reduction::seismic(facts, sheet);
        let n_d = sheet.step(N_D_GROUP, k_e * phi * n_cbg);
        let n_ua = sheet.step(N_UA_GROUP, sum(members, |place| self.pull[place]));
        sheet.step(R_N, n_ua / n_d);
        facts.compared(n_ua, n_d)
    }

    /// The hottest anchor of the group on its own share of concrete; none for an anchor alone.
    ///
    /// psi_ec can hide a hot anchor in a long chain; common practice checks it on the area cut half way to its
    /// neighbours, with psi_ed only from real edges. An equal part of the group's area is taken where that is larger, so
    /// that inner anchors of a group that is pulled evenly are not held against a clause that passes them.
    pub fn check_share(&self, facts: &Facts, sheet: &mut Sheet) -> Option<(usize, Outcome)> {
        let members = &self.group.body.members;
        if members.len() < 2 {
            return None;
        }
        if !self.group.body.alike {
            return Some((members[0], Outcome::NotCovered(MIXED_DEPTHS)));
        }
        let quiet = &mut Sheet::quiet();
        let phi = reduction::concrete(Action::Tension, facts, quiet);
        let k_e = reduction::seismic(facts, quiet);
        let mut worst = (0, f64::NEG_INFINITY, f64::NAN);
        for (place, &member) in members.iter().enumerate().filter(|(_, member)| facts.is_own(**member)) {
            let n_d = k_e * phi * self.group.shares[place].single(quiet);
            let ratio = self.pull[member] / n_d;
            // A ratio that is no number is the worst of all.
            if ratio > worst.1 || ratio.is_nan() {
                worst = (place, ratio, n_d);
            }
        }
        let (place, ratio, n_d) = worst;
        let n_ua = self.pull[members[place]];
        if sheet.is_told() {
            let subject = Subject::Anchor(members[place] as u16);
            sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionTributary), facts.edition.system);
            Basic::new(facts, &self.group.body, Piece::Share(place), sheet).single(sheet);
            reduction::concrete(Action::Tension, facts, sheet);
            reduction::seismic(facts, sheet);
            sheet.step(N_D, n_d);
            sheet.carry(N_UA, n_ua);
            sheet.step(R_N, ratio);
        }
        Some((members[place], facts.compared(n_ua, n_d)))
    }
}
