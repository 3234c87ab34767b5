//! The tension modes of the pulled fasteners, one after the other.

use alloc::vec::Vec;

use super::anchorage::{KnownGroups, Round};
use super::blowout::SideFace;
use super::body::{Reach, groups};
use super::coverage as c;
use super::facts::{Facts, compared};
use super::group::{Group, mode};
use super::{pullout, splitting, steel};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System};
use crate::rules::anchor_set::{Set, floor, larger, members, set_where, worst};

/// What is known about a set of pulled fasteners.
pub struct PulledSet {
    cones: Result<Vec<Group>, StepId>,
    bonds: Result<Vec<Group>, StepId>,
    splits: Result<Vec<Group>, StepId>,
    side_faces: Vec<SideFace>,
    steel: Vec<f64>,
    pull_out: Vec<f64>,
    released: Option<StepId>,
    sharing: usize,
}

impl PulledSet {
    fn new(facts: &Facts, pulled: Set) -> PulledSet {
        let quiet = &mut Sheet::quiet();
        let places: Vec<usize> = members(facts.own_of(pulled)).collect();
        let sharing = places.len();
        let is_own = |group: &Group| facts.has_own(&group.body.members);
        let released = splitting::released(facts, &places);
        let unless = |missing: Option<StepId>, reach| match missing {
            Some(reason) => Err(reason),
            None => Ok(groups(facts, reach, pulled).into_iter().filter(is_own).collect()),
        };
        PulledSet {
            cones: unless(c::missing(facts, &c::of_concrete(facts), quiet), Reach::Cone),
            bonds: match facts.is_bonded() {
                true => unless(c::missing(facts, &c::of_bond(facts), quiet), Reach::Bond),
                false => Ok(Vec::new()),
            },
            splits: match released {
                Some(_) => Ok(Vec::new()),
                None => unless(c::missing(facts, &c::of_splitting(facts), quiet), Reach::Splitting),
            },
            side_faces: if facts.is_headed() { SideFace::rows(facts, pulled) } else { Vec::new() },
            steel: facts.anchors.iter().map(|anchor| steel::tension(facts, anchor, sharing, quiet)).collect(),
            pull_out: facts.anchors.iter().map(|anchor| pullout::design(facts, anchor, sharing, quiet)).collect(),
            released,
            sharing,
        }
    }
}

/// Steel, cone, shares, pull-out, bond, splitting and side faces.
pub fn check(round: &mut Round, known: &mut KnownGroups) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let floor = floor(pull.iter().fold(0.0, |most, &force| larger(most, force)));
    let pulled = set_where(pull, |&force| force > floor || force.is_nan());
    if facts.own_of(pulled) == 0 {
        for check in [
            CheckId::AnchorTensionSteel,
            CheckId::AnchorTensionBreakout,
            CheckId::AnchorTensionTributary,
            CheckId::AnchorTensionPullout,
            CheckId::AnchorTensionBond,
            CheckId::AnchorTensionSplitting,
            CheckId::AnchorTensionBlowout,
        ] {
            round.say(check, Outcome::NotNeeded(c::NO_PULL));
        }
        return;
    }
    let set = known.pulled.of(pulled, || PulledSet::new(facts, pulled));
    check_steel(round, set, pulled);
    check_groups(round, (CheckId::AnchorTensionBreakout, &set.cones), set.sharing, pulled);
    check_shares(round, set);
    check_pull_out(round, set, pulled);
    if facts.is_bonded() {
        check_groups(round, (CheckId::AnchorTensionBond, &set.bonds), set.sharing, pulled);
    } else {
        round.say(CheckId::AnchorTensionBond, Outcome::NotNeeded(c::NOT_BONDED));
    }
    match set.released {
        Some(reason) => round.say(CheckId::AnchorTensionSplitting, Outcome::NotNeeded(reason)),
        None => check_groups(round, (CheckId::AnchorTensionSplitting, &set.splits), set.sharing, pulled),
    }
    for (place, row) in set.side_faces.iter().enumerate() {
        let found = row.check(facts, (place as u16 + 1, pull), set.sharing, round.sheet);
        round.find(CheckId::AnchorTensionBlowout, found, &row.members);
    }
    if set.side_faces.is_empty() {
        let reason = if facts.is_headed() { c::NO_SIDE_FACE } else { c::NOT_HEADED };
        round.say(CheckId::AnchorTensionBlowout, Outcome::NotNeeded(reason));
    }
}

/// Steel of the most loaded fastener; every fastener's ratio counts in its own pair.
fn check_steel(round: &mut Round, set: &PulledSet, pulled: Set) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let check = CheckId::AnchorTensionSteel;
    if let Some(reason) = c::missing(facts, &c::of_steel_tension(facts), &mut Sheet::quiet()) {
        tell_missing(round, check, &c::of_steel_tension(facts));
        round.say(check, Outcome::NotCovered(reason));
        round.zones.stop_steel(Outcome::NotCovered(reason));
        return;
    }
    let ratio = |place: usize| pull[place] / set.steel[place];
    members(pulled).for_each(|place| round.zones.steel_tension(place, ratio(place)));
    let place = worst(facts.own_of(pulled), ratio);
    let subject = Subject::Anchor(place as u16);
    if round.sheet.is_told() {
        round.sheet.open(Part::Anchors, subject, Some(check), System::Si);
        let n_rd = steel::tension(facts, &facts.anchors[place], set.sharing, round.sheet);
        let n_ed = round.sheet.carry(steel::N_ED, pull[place]);
        round.sheet.step(steel::BETA_N, n_ed / n_rd);
    }
    round.find(check, (subject, compared(pull[place], set.steel[place])), &[]);
}

/// Pull-out of the most loaded fastener; every fastener's ratio counts in its own zone.
fn check_pull_out(round: &mut Round, set: &PulledSet, pulled: Set) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let check = CheckId::AnchorTensionPullout;
    if facts.is_bonded() {
        round.say(check, Outcome::NotNeeded(c::IN_BOND));
        return;
    }
    if let Some(reason) = c::missing(facts, &c::of_pull_out(facts), &mut Sheet::quiet()) {
        tell_missing(round, check, &c::of_pull_out(facts));
        round.stop(check, reason, pulled);
        return;
    }
    let ratio = |place: usize| pull[place] / set.pull_out[place];
    members(pulled).for_each(|place| round.zones.raise(check, place, ratio(place)));
    let place = worst(facts.own_of(pulled), ratio);
    let subject = Subject::Anchor(place as u16);
    if round.sheet.is_told() {
        round.sheet.open(Part::Anchors, subject, Some(check), System::Si);
        let n_rd = pullout::design(facts, &facts.anchors[place], set.sharing, round.sheet);
        let n_ed = round.sheet.carry(super::group::N_ED, pull[place]);
        round.sheet.step(pullout::BETA, n_ed / n_rd);
    }
    round.find(check, (subject, compared(pull[place], set.pull_out[place])), &[]);
}

/// Every group of a mode, or what is missing for it.
fn check_groups(
    round: &mut Round,
    (check, groups): (CheckId, &Result<Vec<Group>, StepId>),
    sharing: usize,
    pulled: Set,
) {
    let facts = round.facts;
    match groups {
        Ok(groups) => {
            for (place, group) in groups.iter().enumerate() {
                debug_assert_eq!(mode(group.body.reach).check, check);
                let found = group.check(facts, (place as u16 + 1, &round.forces.pull), sharing, round.sheet);
                round.find(check, found, &group.body.members);
            }
        }
        Err(reason) => {
            match check {
                CheckId::AnchorTensionBond => tell_missing(round, check, &c::of_bond(facts)),
                CheckId::AnchorTensionSplitting => tell_missing(round, check, &c::of_splitting(facts)),
                _ => tell_missing(round, check, &c::of_concrete(facts)),
            }
            round.stop(check, *reason, pulled);
        }
    }
}

/// The hottest fastener of every group on its own share of the concrete.
fn check_shares(round: &mut Round, set: &PulledSet) {
    let check = CheckId::AnchorTensionTributary;
    let groups = match &set.cones {
        Ok(groups) => groups,
        Err(reason) => return round.say(check, Outcome::NotCovered(*reason)),
    };
    let mut any = false;
    for group in groups {
        if let Some(found) = group.check_share(round.facts, &round.forces.pull, set.sharing, round.sheet) {
            any = true;
            round.find(check, found, &group.body.members);
        }
    }
    if !any {
        round.say(check, Outcome::NotNeeded(c::NO_GROUP));
    }
}

/// Lists everything that a check lacks.
pub fn tell_missing(round: &mut Round, check: CheckId, needs: &[(bool, usize, StepId)]) {
    round.sheet.open(Part::Anchors, Subject::Whole, Some(check), System::Si);
    c::missing(round.facts, needs, round.sheet);
}
