//! The shear modes of the sheared anchors, one after the other.

use alloc::vec::Vec;

use super::anchorage::{KnownGroups, Round};
use super::bars;
use super::coverage as c;
use super::edge::{Way, together};
use super::pryout::{PriedGroup, Sheared};
use super::row::{EdgeRow, ROW_MM, rows};
use super::set::{Known, Set, floor, larger, members, set_where, worst};
use super::steel;
use crate::calc::{CheckId, Outcome, Sheet, Subject};

/// Steel, edges and pryout.
pub fn check(round: &mut Round, known: &mut KnownGroups) {
    let (facts, shear) = (round.facts, &round.forces.shear);
    let floor = floor(shear.iter().fold(0.0, |most, on| larger(most, on.size())));
    let sheared = set_where(shear, |on| on.size() > floor || on.size().is_nan());
    if sheared & facts.own == 0 {
        for check in [CheckId::AnchorShearSteel, CheckId::AnchorShearBreakout, CheckId::AnchorShearPryout] {
            round.say(check, Outcome::NotNeeded(c::NO_SHEAR));
        }
        return;
    }
    most_loaded(round, sheared);
    edges(round, &mut known.edges, (sheared, floor));
    let check = CheckId::AnchorShearPryout;
    if let Some(reason) = facts.gaps.bond {
        round.stop(check, reason);
        return;
    }
    let groups = known.sheared.of(sheared, || PriedGroup::groups(facts, sheared));
    for (place, group) in groups.iter().enumerate() {
        let group = Sheared { number: place as u16 + 1, group, shear };
        let outcome = group.check(facts, round.sheet);
        round.find(check, Subject::Group(group.number), &group.group.breakout.body.members, outcome);
        if let Some((anchor, outcome)) = group.check_opposed(facts, round.sheet) {
            round.find(check, Subject::Anchor(anchor as u16), &[anchor], outcome);
        }
    }
}

/// Steel of the most loaded anchor (Table 17.5.2); every anchor's ratio counts in its own zone.
fn most_loaded(round: &mut Round, sheared: Set) {
    let (facts, shear) = (round.facts, &round.forces.shear);
    let check = CheckId::AnchorShearSteel;
    if let Some(reason) = facts.gaps.steel_shear {
        round.stop(check, reason);
        return;
    }
    let ratio = |place: usize| shear[place].size() / facts.anchors[place].steel_shear;
    let sheared = sheared & facts.own;
    members(sheared).for_each(|place| round.raise(check, place, ratio(place)));
    let place = worst(sheared, ratio);
    let outcome = steel::check_shear(facts, place, shear[place], round.sheet);
    round.find(check, Subject::Anchor(place as u16), &[], outcome);
}

/// Breakout towards and along each edge of the concrete, or the bars that stand for it.
fn edges(round: &mut Round, known: &mut KnownEdges, (sheared, floor): (Set, f64)) {
    let facts = round.facts;
    if facts.lines.is_empty() {
        round.say(CheckId::AnchorShearBreakout, Outcome::NotNeeded(c::NO_EDGE));
        return;
    }
    if let Some(area) = facts.bars.shear {
        let check = CheckId::AnchorShearBreakout;
        let shear = &round.forces.shear;
        let (mut place, mut most) = (0, f64::NEG_INFINITY);
        for own in members(sheared & facts.own) {
            let quiet = &mut Sheet::quiet();
            let Outcome::Compared { utilisation, .. } = bars::check_shear(facts, area, (own, shear[own]), quiet) else {
                continue;
            };
            round.raise(check, own, utilisation);
            if utilisation > most || utilisation.is_nan() {
                (place, most) = (own, utilisation);
            }
        }
        let outcome = bars::check_shear(facts, area, (place, shear[place]), round.sheet);
        round.find(check, Subject::Anchor(place as u16), &[], outcome);
        return;
    }
    let mut told = 0;
    for line in 0..facts.lines.len() {
        edge(round, known, Edge { line, floor, told: &mut told });
    }
    if told == 0 {
        round.say(CheckId::AnchorShearBreakout, Outcome::NotNeeded(c::NOT_TOWARDS));
    }
}

/// Rows along the edges that were worked out for sets of sheared anchors.
pub struct KnownEdges {
    rows: Vec<Known<Vec<EdgeRow>>>,
    along: Vec<Along>,
}

impl KnownEdges {
    /// Nothing known yet about so many edges.
    pub fn new(edges: usize) -> KnownEdges {
        KnownEdges { rows: (0..edges).map(|_| Known::new()).collect(), along: Vec::new() }
    }
}

/// The place of an edge, the force that counts as none, and how many rows were told so far.
struct Edge<'a> {
    line: usize,
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
    let Edge { line: place, floor, told } = edge;
    let KnownEdges { rows: known, along: beside } = known;
    let (facts, shear) = (round.facts, &round.forces.shear);
    let line = &facts.lines[place];
    beside.clear();
    for way in [Way::Along, Way::Back, Way::Towards] {
        let acting = set_where(shear, |on| {
            let force = way.of(on, line.side);
            force > floor || force.is_nan()
        }) & line.reach;
        if acting == 0 {
            continue;
        }
        for row in known[place].of(acting, || rows(facts, line, acting)).iter() {
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
