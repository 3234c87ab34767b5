//! The tension modes of the pulled anchors, one after the other.

use alloc::vec::Vec;

use super::anchorage::{KnownGroups, Round, breakout_groups};
use super::blowout::SideFace;
use super::bond::Bonded;
use super::breakout::Group;
use super::coverage as c;
use super::ductile::{self, Mode};
use super::facts::Facts;
use super::kind::AnchorKind;
use super::pulled_group::Pulled;
use super::reduction::{self, Action};
use super::set::{Set, floor, larger, members, only, set_where, worst};
use super::{bars, bond, pullout, steel};
use crate::calc::{CheckId, Kind, Outcome, Part, Sheet, Subject};

/// What is known about a set of pulled anchors.
pub struct PulledSet {
    groups: Vec<Group>,
    side_faces: Vec<SideFace>,
    bonded: Vec<Bonded>,
}

impl PulledSet {
    fn new(facts: &Facts, pulled: Set) -> PulledSet {
        let groups = breakout_groups(facts, pulled).into_iter().filter(|group| group & facts.own != 0);
        let has_bond = facts.kind == AnchorKind::Adhesive && facts.gaps.bond.is_none();
        PulledSet {
            groups: groups.map(|group| Group::new(facts, group)).collect(),
            side_faces: if facts.kind == AnchorKind::Headed { SideFace::rows(facts, pulled) } else { Vec::new() },
            bonded: if has_bond { Bonded::groups(facts, pulled) } else { Vec::new() },
        }
    }
}

/// Steel, breakout, shares, pullout, side faces and bond.
pub fn check(round: &mut Round, known: &mut KnownGroups) {
    lasting(round);
    let (facts, pull) = (round.facts, &round.forces.pull);
    let floor = floor(pull.iter().fold(0.0, |most, &force| larger(most, force)));
    let pulled = set_where(pull, |&force| force > floor || force.is_nan());
    if pulled & facts.own == 0 {
        for check in [
            CheckId::AnchorTensionSteel,
            CheckId::AnchorTensionBreakout,
            CheckId::AnchorTensionTributary,
            CheckId::AnchorTensionPullout,
            CheckId::AnchorTensionBlowout,
            CheckId::AnchorTensionBond,
            CheckId::AnchorDuctile,
        ] {
            round.say(check, Outcome::NotNeeded(c::NO_PULL));
        }
        return;
    }
    if !facts.options.ductile {
        round.say(CheckId::AnchorDuctile, Outcome::NotNeeded(c::OTHER_OPTION));
    } else if let Some(reason) = facts.gaps.ductile {
        round.stop(CheckId::AnchorDuctile, reason);
    } else {
        let mut found = Vec::new();
        ductile::check_make(facts, round.sheet, |subject, outcome| found.push((subject, outcome)));
        for (subject, outcome) in found {
            round.find(CheckId::AnchorDuctile, subject, &[], outcome);
        }
    }
    steel(round, pulled & facts.own);
    pullout(round, pulled & facts.own);
    let set = known.pulled.of(pulled, || PulledSet::new(facts, pulled));
    breakouts(round, set, pulled);
    for (place, row) in set.side_faces.iter().enumerate() {
        let number = place as u16 + 1;
        let outcome = row.check(facts, number, pull, round.sheet);
        round.find(CheckId::AnchorTensionBlowout, Subject::Group(number), &row.members, outcome);
        yields_first(round, (Mode::Blowout, Subject::Group(number)), &row.members, outcome);
    }
    if set.side_faces.is_empty() {
        let reason = if facts.kind == AnchorKind::Headed { c::NO_SIDE_FACE } else { c::NO_HEAD_THERE };
        round.say(CheckId::AnchorTensionBlowout, Outcome::NotNeeded(reason));
    }
    bonds(round, set);
}

/// A pull that lasts, on adhesive anchors.
fn lasting(round: &mut Round) {
    let facts = round.facts;
    let check = CheckId::AnchorSustained;
    if facts.kind != AnchorKind::Adhesive {
        round.say(check, Outcome::NotNeeded(c::NOT_BONDED));
    } else if facts.sustained == 0.0 {
        round.say(check, Outcome::NotNeeded(c::NOT_LASTING));
    } else if let Some(reason) = facts.gaps.sustained {
        round.say(check, Outcome::NotCovered(reason));
    } else {
        let strength = |place: usize| match bond::check_lasting(facts, place, &mut Sheet::quiet()) {
            Outcome::Compared { utilisation, .. } => utilisation,
            _ => f64::NAN,
        };
        let place = worst(facts.own, strength);
        let subject = Subject::Anchor(place as u16);
        round.sheet.open(Part::Anchors, subject, Some(check), facts.edition.system);
        let outcome = bond::check_lasting(facts, place, round.sheet);
        round.find(check, subject, &[], outcome);
    }
}

/// Steel of the most loaded anchor (Table 17.5.2); every anchor's ratio counts in its own zone.
fn steel(round: &mut Round, pulled: Set) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let check = CheckId::AnchorTensionSteel;
    if let Some(reason) = facts.gaps.steel_tension {
        round.stop(check, reason);
        return;
    }
    let ratio = |place: usize| pull[place] / facts.anchors[place].steel_tension;
    members(pulled).for_each(|place| round.raise(check, place, ratio(place)));
    let place = worst(pulled, ratio);
    let outcome = steel::check_tension(facts, place, pull[place], round.sheet);
    round.find(check, Subject::Anchor(place as u16), &[], outcome);
}

/// Pullout of the most loaded anchor (Table 17.5.2).
fn pullout(round: &mut Round, pulled: Set) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let check = CheckId::AnchorTensionPullout;
    if facts.kind == AnchorKind::Adhesive {
        round.say(check, Outcome::NotNeeded(c::BONDED));
        return;
    }
    if let Some(reason) = facts.gaps.pullout {
        round.stop(check, reason);
        return;
    }
    if facts.kind.is_mechanical() && !facts.report.pullout_decides {
        round.say(check, Outcome::NotNeeded(c::NOT_DECISIVE));
        return;
    }
    let ratio = |place: usize| pull[place] / facts.anchors[place].pullout;
    members(pulled).for_each(|place| round.raise(check, place, ratio(place)));
    let place = worst(pulled, ratio);
    let subject = Subject::Anchor(place as u16);
    let outcome = pullout::check(facts, place, pull[place], round.sheet);
    round.find(check, subject, &[], outcome);
    yields_first(round, (Mode::Pullout, subject), &[place], outcome);
}

/// Breakout of every group and of its hottest anchor, or the bars that stand for it.
fn breakouts(round: &mut Round, set: &PulledSet, pulled: Set) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let (check, tributary) = (CheckId::AnchorTensionBreakout, CheckId::AnchorTensionTributary);
    if let Some(area) = facts.bars.tension {
        let place = worst(pulled & facts.own, |place| pull[place]);
        let outcome = bars::check_tension(facts, area, (place, pull[place]), round.sheet);
        if let Outcome::Compared { utilisation, .. } = outcome {
            let share = |from: usize| if from == place { utilisation } else { utilisation * pull[from] / pull[place] };
            members(pulled & facts.own).for_each(|from| round.raise(check, from, share(from)));
        }
        let subject = Subject::Anchor(place as u16);
        round.find(check, subject, &[], outcome);
        yields_first(round, (Mode::Bars, subject), &[place], outcome);
        round.say(tributary, Outcome::NotNeeded(c::BARS_CARRY));
        return;
    }
    if let Some(reason) = facts.gaps.concrete {
        round.stop(check, reason);
        round.say(tributary, Outcome::NotCovered(reason));
        return;
    }
    let mut shared = false;
    for (place, group) in set.groups.iter().enumerate() {
        let group = Pulled { number: place as u16 + 1, group, pull };
        let (subject, members) = (Subject::Group(group.number), &group.group.body.members);
        let outcome = group.check(facts, round.sheet);
        round.find(check, subject, members, outcome);
        yields_first(round, (Mode::Breakout, subject), members, outcome);
        if let Some((anchor, outcome)) = group.check_share(facts, round.sheet) {
            shared = true;
            round.find(tributary, Subject::Anchor(anchor as u16), members, outcome);
        }
    }
    if !shared {
        round.say(tributary, Outcome::NotNeeded(c::NO_GROUP));
    }
}

/// Bond of every group of adhesive anchors.
fn bonds(round: &mut Round, set: &PulledSet) {
    let (facts, pull) = (round.facts, &round.forces.pull);
    let check = CheckId::AnchorTensionBond;
    if facts.kind != AnchorKind::Adhesive {
        round.say(check, Outcome::NotNeeded(c::NOT_BONDED));
        return;
    }
    if let Some(reason) = facts.gaps.bond {
        round.stop(check, reason);
        return;
    }
    for (place, group) in set.bonded.iter().enumerate() {
        let subject = Subject::Group(place as u16 + 1);
        let outcome = if group.alike {
            round.sheet.open(Part::Anchors, subject, Some(check), facts.edition.system);
            group.check(facts, pull, round.sheet)
        } else {
            Outcome::NotCovered(c::MIXED_BOND)
        };
        round.find(check, subject, &group.members, outcome);
        yields_first(round, (Mode::Bond, subject), &group.members, outcome);
    }
}

/// With option (a): whether the steel of a group yields before one of its concrete modes.
fn yields_first(round: &mut Round, (mode, subject): (Mode, Subject), group: &[usize], outcome: Outcome) {
    let facts = round.facts;
    let Outcome::Compared { value, limit, .. } = outcome else { return };
    if !facts.options.ductile || facts.gaps.ductile.is_some() {
        return;
    }
    let quiet = &mut Sheet::quiet();
    let reduced = match mode {
        Mode::Bars => reduction::bars(quiet),
        Mode::Pullout => reduction::pullout(facts, quiet) * reduction::seismic(facts, quiet),
        _ => reduction::concrete(Action::Tension, facts, quiet) * reduction::seismic(facts, quiet),
    };
    let force = |newtons| facts.edition.system.from_si(newtons, Kind::Force);
    let set = group.iter().fold(0, |set, &place| set | only(place));
    let concrete = (mode, force(value), force(limit) / reduced);
    let outcome = ductile::check(facts, subject, concrete, (set, &round.forces.pull), round.sheet);
    round.find(CheckId::AnchorDuctile, subject, &[], outcome);
}
