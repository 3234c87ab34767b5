//! The shear modes of the sheared fasteners, one after the other.

use alloc::vec::Vec;

use super::anchorage::{KnownGroups, Round};
use super::body::{Reach, groups};
use super::coverage as c;
use super::edge::KnownRow;
use super::facts::{ALL_SIDES, Facts, compared};
use super::fields as f;
use super::group::Group;
use super::lever::{self, Pulled};
use super::pryout::Sheared;
use super::pulled::tell_missing;
use super::row::{EdgeForces, rows};
use super::steel;
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System};
use crate::rules::anchor_set::{Known, Set, floor, larger, members, set_where, worst};

/// What is known about a set of sheared fasteners.
pub struct ShearedSet {
    cones: Vec<Group>,
    bonds: Result<Vec<Group>, StepId>,
    steel: Vec<f64>,
    sharing: usize,
}

impl ShearedSet {
    fn new(facts: &Facts, sheared: Set) -> ShearedSet {
        let quiet = &mut Sheet::quiet();
        let sharing = facts.own_of(sheared).count_ones() as usize;
        let own = |reach| -> Vec<Group> {
            groups(facts, reach, sheared).into_iter().filter(|group| facts.has_own(&group.body.members)).collect()
        };
        let bonds = if !facts.is_bonded() {
            Ok(Vec::new())
        } else {
            match c::missing(facts, &c::of_bond(facts)[..3], quiet) {
                Some(reason) => Err(reason),
                None => Ok(own(Reach::Bond)),
            }
        };
        ShearedSet {
            cones: own(Reach::Cone),
            bonds,
            steel: facts.anchors.iter().map(|anchor| steel::shear(facts, anchor, sharing, quiet)).collect(),
            sharing,
        }
    }
}

/// Steel, edges and pry-out.
pub fn check(round: &mut Round, known: &mut KnownGroups) {
    let (facts, shear) = (round.facts, &round.forces.shear);
    let floor = floor(shear.iter().fold(0.0, |most, on| larger(most, on.size())));
    let sheared = set_where(shear, |on| on.size() > floor || on.size().is_nan());
    let checks = [CheckId::AnchorShearSteel, CheckId::AnchorShearBreakout, CheckId::AnchorShearPryout];
    if facts.own_of(sheared) == 0 {
        for check in checks {
            round.say(check, Outcome::NotNeeded(c::NO_SHEAR));
        }
        return;
    }
    if let Some(reason) = c::holes(facts) {
        for check in checks {
            round.stop(check, reason, sheared);
        }
        round.zones.stop_steel(Outcome::NotCovered(reason));
        return;
    }
    let set = known.sheared.of(sheared, || ShearedSet::new(facts, sheared));
    check_steel(round, set, sheared);
    check_edges(round, &mut known.edges, (floor, set.sharing));
    check_pry_out(round, set, sheared);
}

/// Steel of the most loaded fastener, with a lever arm where it passes a gap.
fn check_steel(round: &mut Round, set: &ShearedSet, sheared: Set) {
    let facts = round.facts;
    let check = CheckId::AnchorShearSteel;
    if facts.is(f::SEAT, f::SEAT_GAP) {
        return check_lever(round, sheared);
    }
    let needs = c::of_steel_shear(facts);
    let missing = c::missing(facts, &needs, &mut Sheet::quiet());
    if missing.is_some() {
        tell_missing(round, check, &needs);
    }
    if let Some(reason) = missing.or(steel::uncovered(facts, set.sharing)) {
        round.say(check, Outcome::NotCovered(reason));
        round.zones.stop_steel(Outcome::NotCovered(reason));
        return;
    }
    let shear = &round.forces.shear;
    let ratio = |place: usize| shear[place].size() / set.steel[place];
    members(sheared).for_each(|place| round.zones.steel_shear(place, ratio(place)));
    let place = worst(facts.own_of(sheared), ratio);
    let subject = Subject::Anchor(place as u16);
    if round.sheet.is_told() {
        round.sheet.open(Part::Anchors, subject, Some(check), System::Si);
        let v_rd = steel::shear(facts, &facts.anchors[place], set.sharing, round.sheet);
        let v_ed = shear[place].tell(round.sheet);
        round.sheet.step(steel::BETA_V, v_ed / v_rd);
    }
    round.find(check, (subject, compared(shear[place].size(), set.steel[place])), &[]);
}

/// The rod that bends most in its gap.
fn check_lever(round: &mut Round, sheared: Set) {
    let facts = round.facts;
    let check = CheckId::AnchorShearSteel;
    let is_missing = c::is_reduced(facts) && facts.number(f::M_0_RK_S).is_none();
    let reason = match (facts.is_seismic, is_missing) {
        (true, _) => Some(c::SEISMIC_GAP),
        (_, true) => Some(c::MISSING_M_0_RK_S),
        // The pull that leaves less for bending is compared with the steel's resistance to it.
        _ => c::missing(facts, &c::of_steel_tension(facts), &mut Sheet::quiet()),
    };
    if let Some(reason) = reason {
        round.say(check, Outcome::NotCovered(reason));
        round.zones.stop_steel(Outcome::NotCovered(reason));
        return;
    }
    let (pull, shear) = (&round.forces.pull, &round.forces.shear);
    let sharing = pull[..facts.own].iter().filter(|&&force| force > 0.0).count();
    let quiet = |place: usize| {
        let pulled = Pulled { n_ed: pull[place], sharing };
        lever::shear(facts, &facts.anchors[place], pulled, &mut Sheet::quiet())
    };
    let place = worst(facts.own_of(sheared), |place| shear[place].size() / quiet(place));
    let subject = Subject::Anchor(place as u16);
    round.sheet.open(Part::Anchors, subject, Some(check), System::Si);
    let pulled = Pulled { n_ed: pull[place], sharing };
    let v_rd = lever::shear(facts, &facts.anchors[place], pulled, round.sheet);
    let v_ed = shear[place].tell(round.sheet);
    round.sheet.step(lever::BETA_V, v_ed / v_rd);
    round.find(check, (subject, compared(v_ed, v_rd)), &[]);
    round.zones.stop_steel(Outcome::NotNeeded(c::LEVER_HAS_PULL));
}

/// Rows along the edges that were worked out for sets of sheared fasteners.
pub struct KnownEdges {
    rows: [Known<Vec<KnownRow>>; 4],
    forces: EdgeForces,
}

impl KnownEdges {
    /// Nothing known yet.
    pub fn new() -> KnownEdges {
        KnownEdges { rows: [Known::new(), Known::new(), Known::new(), Known::new()], forces: EdgeForces::default() }
    }
}

/// Edge failure towards and along each edge of the slab.
fn check_edges(round: &mut Round, known: &mut KnownEdges, (floor, sharing): (f64, usize)) {
    let facts = round.facts;
    let check = CheckId::AnchorShearBreakout;
    if c::has_no_edge(facts) || c::is_far(facts) {
        let reason = if c::has_no_edge(facts) { c::NO_EDGE } else { c::FAR_EDGES };
        round.say(check, Outcome::NotNeeded(reason));
        return;
    }
    let outline = &facts.outline;
    let edges_mm = [outline.left_mm, outline.right_mm, outline.front_mm, outline.rear_mm];
    let mut told = 0;
    for side in ALL_SIDES.into_iter().filter(|&side| edges_mm[side].is_finite()) {
        known.forces.take(facts, side, &round.forces.shear);
        let forces = &known.forces;
        let acts = |force: f64| force > floor || force.is_nan();
        let towards = set_where(&forces.towards, |&force| acts(force));
        let along = set_where(&forces.along, |&force| acts(force.abs())) & !towards;
        for (acting, is_towards) in [(towards, true), (along, false)] {
            if acting == 0 {
                continue;
            }
            let make = || {
                let own = rows(facts, side, acting).into_iter().filter(|row| facts.has_own(&row.members));
                own.map(|row| KnownRow::new(facts, row)).collect()
            };
            for row in known.rows[side].of(acting, make).iter() {
                told += 1;
                let subject = Subject::Group(told);
                let outcome = if !row.row.alike {
                    Outcome::NotCovered(c::MIXED_ROW)
                } else {
                    let of = (told, sharing);
                    let ratio = match is_towards {
                        true => row.ratio(facts, forces, of, round.sheet),
                        false => row.ratio_along(facts, forces, of, round.sheet),
                    };
                    Outcome::Compared { value: ratio, limit: 1.0, utilisation: ratio }
                };
                round.find(check, (subject, outcome), &row.row.members);
            }
        }
    }
    if told == 0 {
        round.say(check, Outcome::NotNeeded(c::NOT_TOWARDS));
    }
}

/// Pry-out by the cone and, of bonded anchors, by the bond: the lesser counts, so both are checked.
fn check_pry_out(round: &mut Round, set: &ShearedSet, sheared: Set) {
    let facts = round.facts;
    let check = CheckId::AnchorShearPryout;
    let bonds: &[Group] = match &set.bonds {
        Ok(bonds) => bonds,
        Err(reason) => {
            tell_missing(round, check, &c::of_bond(facts)[..3]);
            round.stop(check, *reason, sheared);
            return;
        }
    };
    for (place, group) in set.cones.iter().chain(bonds).enumerate() {
        let shear = &round.forces.shear;
        let group = Sheared { number: place as u16 + 1, group, shear, sharing: set.sharing };
        let found = group.check(facts, round.sheet);
        round.find(check, found, &group.group.body.members);
        if let Some((anchor, found)) = group.check_opposed(facts, round.sheet) {
            round.find(check, found, &[anchor]);
        }
    }
}
