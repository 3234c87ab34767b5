//! The tension modes of the pulled anchors, one after the other.

use alloc::vec::Vec;

use super::anchorage::{KnownGroups, Round, breakout_groups, floor, larger, set_where, worst};
use super::blowout::SideFace;
use super::breakout::Group;
use super::coverage as c;
use super::facts::Facts;
use super::pulled_group::Pulled;
use super::set::{Set, members};
use super::{pullout, steel};
use crate::calc::{CheckId, Outcome, Subject};

/// What is known about a set of pulled anchors.
pub struct PulledSet {
    groups: Vec<Group>,
    side_faces: Vec<SideFace>,
}

impl PulledSet {
    fn new(facts: &Facts, pulled: Set) -> PulledSet {
        PulledSet {
            groups: breakout_groups(facts, pulled).into_iter().map(|group| Group::new(facts, group)).collect(),
            side_faces: SideFace::rows(facts, pulled),
        }
    }
}

/// Steel, breakout, shares, pullout and side faces.
pub fn check(round: &mut Round, known: &mut KnownGroups) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let floor = floor(pull.iter().fold(0.0, |most, &force| larger(most, force)));
    let pulled = set_where(pull, |&force| force > floor || force.is_nan());
    if pulled == 0 {
        for check in [
            CheckId::AnchorTensionSteel,
            CheckId::AnchorTensionBreakout,
            CheckId::AnchorTensionTributary,
            CheckId::AnchorTensionPullout,
            CheckId::AnchorTensionBlowout,
        ] {
            round.say(check, Outcome::NotNeeded(c::NO_PULL));
        }
        return;
    }
    most_loaded(round, pulled);
    let set = known.pulled.of(pulled, || PulledSet::new(facts, pulled));
    let mut shared = false;
    for (place, group) in set.groups.iter().enumerate() {
        let group = Pulled { number: place as u16 + 1, group, pull };
        let (subject, members) = (Subject::Group(group.number), &group.group.body.members);
        let outcome = group.check(facts, round.sheet);
        round.find(CheckId::AnchorTensionBreakout, subject, members, outcome);
        if let Some((anchor, outcome)) = group.check_share(facts, round.sheet) {
            shared = true;
            round.find(CheckId::AnchorTensionTributary, Subject::Anchor(anchor as u16), members, outcome);
        }
    }
    if !shared {
        round.say(CheckId::AnchorTensionTributary, Outcome::NotNeeded(c::NO_GROUP));
    }
    for (place, row) in set.side_faces.iter().enumerate() {
        let number = place as u16 + 1;
        let outcome = row.check(facts, number, pull, round.sheet);
        round.find(CheckId::AnchorTensionBlowout, Subject::Group(number), &row.members, outcome);
    }
    if set.side_faces.is_empty() {
        round.say(CheckId::AnchorTensionBlowout, Outcome::NotNeeded(c::NO_SIDE_FACE));
    }
}

/// Steel and pullout of the most loaded anchor (Table 17.5.2); every anchor's ratio counts in its own zone.
fn most_loaded(round: &mut Round, pulled: Set) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    match c::steel_uncovered(facts) {
        Some(reason) => round.say(CheckId::AnchorTensionSteel, Outcome::NotCovered(reason)),
        None => {
            let check = CheckId::AnchorTensionSteel;
            let ratio = |place: usize| pull[place] / facts.anchors[place].steel_tension;
            members(pulled).for_each(|place| round.raise(check, place, ratio(place)));
            let place = worst(pulled, ratio);
            let outcome = steel::check_tension(facts, place, pull[place], round.sheet);
            round.find(check, Subject::Anchor(place as u16), &[], outcome);
        }
    }
    let check = CheckId::AnchorTensionPullout;
    let ratio = |place: usize| pull[place] / facts.anchors[place].pullout;
    members(pulled).for_each(|place| round.raise(check, place, ratio(place)));
    let place = worst(pulled, ratio);
    let outcome = pullout::check(facts, place, pull[place], round.sheet);
    round.find(check, Subject::Anchor(place as u16), &[], outcome);
}
