//! The shear modes of the sheared anchors, one after the other.

use super::anchorage::{KnownGroups, Round, breakout_groups, floor, larger, set_where, worst};
use super::breakout::Group;
use super::coverage as c;
use super::edge::{Way, together};
use super::pryout::Sheared;
use super::row::{ROW_MM, EdgeRow, rows};
use super::set::{Known, Set, members, only};
use super::steel::{self, Shear};
use crate::calc::{CheckId, Outcome, Subject};

use alloc::vec::Vec;

/// Steel, edges and pryout.
pub fn check(round: &mut Round, known: &mut KnownGroups) {
    let (facts, shear) = (round.facts, &round.forces.shear);
    let floor = floor(shear.iter().fold(0.0, |most, on| larger(most, on.size())));
    let sheared = set_where(shear, |on| on.size() > floor || on.size().is_nan());
    if sheared == 0 {
        for check in [CheckId::AnchorShearSteel, CheckId::AnchorShearBreakout, CheckId::AnchorShearPryout] {
            round.say(check, Outcome::NotNeeded(c::NO_SHEAR));
        }
        return;
    }
    most_loaded(round, sheared);
    edges(round, &mut known.rows, floor);
    let groups = known.sheared.of(sheared, || {
        breakout_groups(facts, sheared).into_iter().map(|group| Group::new(facts, group)).collect()
    });
    for (place, group) in groups.iter().enumerate() {
        let group = Sheared { number: place as u16 + 1, group, shear };
        let check = CheckId::AnchorShearPryout;
        let outcome = group.check(facts, round.sheet);
        round.find(check, Subject::Group(group.number), &group.group.body.members, outcome);
        if let Some((anchor, outcome)) = group.check_opposed(facts, round.sheet) {
            round.find(check, Subject::Anchor(anchor as u16), &[anchor], outcome);
        }
    }
}

/// Steel of the most loaded anchor (Table 17.5.2); every anchor's ratio counts in its own zone.
fn most_loaded(round: &mut Round, sheared: Set) {
    let (facts, shear) = (round.facts, &round.forces.shear);
    let check = CheckId::AnchorShearSteel;
    if let Some(reason) = c::steel_uncovered(facts) {
        round.say(check, Outcome::NotCovered(reason));
        return;
    }
    let ratio = |place: usize| shear[place].size() / facts.anchors[place].steel_shear;
    members(sheared).for_each(|place| round.raise(check, place, ratio(place)));
    let place = worst(sheared, ratio);
    let outcome = steel::check_shear(facts, place, shear[place], round.sheet);
    round.find(check, Subject::Anchor(place as u16), &[], outcome);
}

/// Breakout towards and along each edge of the slab.
fn edges(round: &mut Round, known: &mut [Known<Vec<EdgeRow>>; 4], floor: f64) {
    let outline = &round.facts.outline;
    let edges_mm = [outline.left_mm, outline.right_mm, outline.front_mm, outline.rear_mm];
    let mut told = 0;
    for side in 0..4 {
        if edges_mm[side].is_finite() {
            told += edge(round, &mut known[side], Edge { side, floor, told });
        }
    }
    if told == 0 {
        let far = edges_mm.iter().all(|edge_mm| edge_mm.is_infinite());
        let reason = if far { c::NO_EDGE } else { c::NOT_TOWARDS };
        round.say(CheckId::AnchorShearBreakout, Outcome::NotNeeded(reason));
    }
}

/// One edge, the force that counts as none, and how many rows were told for the edges before.
struct Edge {
    side: usize,
    floor: f64,
    told: u16,
}

/// A row's ratio along the edge.
struct Along {
    number: u16,
    ratio: f64,
    edge_mm: f64,
    members: Set,
    paired: bool,
}

/// All rows along an edge; how many there were.
fn edge(round: &mut Round, known: &mut Known<Vec<EdgeRow>>, edge: Edge) -> u16 {
    let Edge { side, floor, mut told } = edge;
    let (before, facts) = (told, round.facts);
    // Outward components: towards left, right, front and rear.
    let outward: Vec<f64> = components(&round.forces.shear, |on| [-on.x, on.x, -on.y, on.y][side]);
    let sideways: Vec<f64> = components(&round.forces.shear, |on| if side < 2 { on.y } else { on.x });
    let acts = |force: &f64| *force > floor || force.is_nan();
    let mut alongs: Vec<Along> = Vec::new();
    for sign in [1.0, -1.0] {
        let along: Vec<f64> = sideways.iter().map(|force| sign * force).collect();
        let acting = set_where(&along, acts);
        if acting == 0 {
            continue;
        }
        for row in known.of(acting, || rows(facts, side, acting)).iter() {
            told += 1;
            if !row.alike {
                round.find(CheckId::AnchorShearBreakout, Subject::Group(told), &[], Outcome::NotCovered(c::MIXED_ROW));
                continue;
            }
            let ratio = row.ratio(facts, Way::Along, (told, &along), round.sheet);
            let members = row.members.iter().fold(0, |set, &place| set | only(place));
            for &place in &row.members {
                round.raise(CheckId::AnchorShearBreakout, place, ratio);
            }
            alongs.push(Along { number: told, ratio, edge_mm: row.edge_mm, members, paired: false });
        }
    }
    let acting = set_where(&outward, acts);
    if acting != 0 {
        for row in known.of(acting, || rows(facts, side, acting)).iter() {
            told += 1;
            let subject = Subject::Group(told);
            if !row.alike {
                round.find(CheckId::AnchorShearBreakout, subject, &[], Outcome::NotCovered(c::MIXED_ROW));
                continue;
            }
            let towards = row.ratio(facts, Way::Towards, (told, &outward), round.sheet);
            let mut along = 0.0;
            for beside in alongs.iter_mut() {
                let shares = row.members.iter().any(|&place| beside.members & only(place) != 0);
                if shares && (beside.edge_mm - row.edge_mm).abs() <= ROW_MM {
                    along = larger(along, beside.ratio);
                    beside.paired = true;
                }
            }
            let outcome = ratio_outcome(together(towards, along, round.sheet));
            round.find(CheckId::AnchorShearBreakout, subject, &row.members, outcome);
        }
    }
    for beside in alongs.iter().filter(|beside| !beside.paired) {
        round.find(CheckId::AnchorShearBreakout, Subject::Group(beside.number), &[], ratio_outcome(beside.ratio));
    }
    told - before
}

fn components(shear: &[Shear], of: impl Fn(&Shear) -> f64) -> Vec<f64> {
    shear.iter().map(of).collect()
}

fn ratio_outcome(ratio: f64) -> Outcome {
    Outcome::Compared { value: ratio, limit: 1.0, utilisation: ratio }
}
