//! The shear modes of the sheared anchors, one after the other.

use alloc::vec::Vec;

use super::anchorage::{KnownGroups, Round, breakout_groups, floor, larger, set_where, worst};
use super::breakout::Group;
use super::coverage as c;
use super::edge::{Way, together};
use super::facts::ALL_SIDES;
use super::pryout::Sheared;
use super::row::{EdgeRow, ROW_MM, rows};
use super::set::{Known, Set, members};
use super::steel;
use crate::calc::{CheckId, Outcome, Subject};

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
    edges(round, &mut known.edges, floor);
    let groups = known
        .sheared
        .of(sheared, || breakout_groups(facts, sheared).into_iter().map(|group| Group::new(facts, group)).collect());
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
fn edges(round: &mut Round, known: &mut KnownEdges, floor: f64) {
    let outline = &round.facts.outline;
    let edges_mm = [outline.left_mm, outline.right_mm, outline.front_mm, outline.rear_mm];
    let mut told = 0;
    for side in ALL_SIDES {
        if edges_mm[side].is_finite() {
            edge(round, known, Edge { side, floor, told: &mut told });
        }
    }
    if told == 0 {
        let far = edges_mm.iter().all(|edge_mm| edge_mm.is_infinite());
        let reason = if far { c::NO_EDGE } else { c::NOT_TOWARDS };
        round.say(CheckId::AnchorShearBreakout, Outcome::NotNeeded(reason));
    }
}

/// Rows along the edges that were worked out for sets of sheared anchors.
pub struct KnownEdges {
    rows: [Known<Vec<EdgeRow>>; 4],
    along: Vec<Along>,
}

impl KnownEdges {
    /// Nothing known yet.
    pub fn new() -> KnownEdges {
        KnownEdges { rows: [Known::new(), Known::new(), Known::new(), Known::new()], along: Vec::new() }
    }
}

/// One edge, the force that counts as none, and how many rows were told so far.
struct Edge<'a> {
    side: usize,
    floor: f64,
    told: &'a mut u16,
}

/// A row's ratio along the edge.
struct Along {
    number: u16,
    ratio: f64,
    edge_mm: f64,
    members: Set,
    paired: bool,
}

/// All rows along an edge: first along it both ways, then towards it, each together with what it carries along.
fn edge(round: &mut Round, known: &mut KnownEdges, edge: Edge) {
    let Edge { side, floor, told } = edge;
    let KnownEdges { rows: known, along: beside } = known;
    let (facts, shear) = (round.facts, &round.forces.shear);
    beside.clear();
    for way in [Way::Along, Way::Back, Way::Towards] {
        let acting = set_where(shear, |on| {
            let force = way.of(on, side);
            force > floor || force.is_nan()
        });
        if acting == 0 {
            continue;
        }
        for row in known[side].of(acting, || rows(facts, side, acting)).iter() {
            *told += 1;
            let (number, subject) = (*told, Subject::Group(*told));
            if !row.alike {
                round.find(CheckId::AnchorShearBreakout, subject, &row.members, Outcome::NotCovered(c::MIXED_ROW));
                continue;
            }
            let ratio = row.ratio(facts, way, (number, shear), round.sheet);
            if way != Way::Towards {
                for &place in &row.members {
                    round.raise(CheckId::AnchorShearBreakout, place, ratio);
                }
                beside.push(Along { number, ratio, edge_mm: row.edge_mm, members: row.set, paired: false });
                continue;
            }
            let mut along = 0.0;
            for one in beside.iter_mut() {
                if one.members & row.set != 0 && (one.edge_mm - row.edge_mm).abs() <= ROW_MM {
                    along = larger(along, one.ratio);
                    one.paired = true;
                }
            }
            let outcome = ratio_outcome(together(ratio, along, round.sheet));
            round.find(CheckId::AnchorShearBreakout, subject, &row.members, outcome);
        }
    }
    for one in beside.iter().filter(|one| !one.paired) {
        round.find(CheckId::AnchorShearBreakout, Subject::Group(one.number), &[], ratio_outcome(one.ratio));
    }
}

fn ratio_outcome(ratio: f64) -> Outcome {
    Outcome::Compared { value: ratio, limit: 1.0, utilisation: ratio }
}
