//! All failure modes of an anchorage under simultaneous forces.

use alloc::vec::Vec;

use super::body::{Body, Reach};
use super::coverage as c;
use super::facts::Facts;
use super::fields as f;
use super::interaction::{self, Of, Ratios};
use super::pulled::{self, PulledSet};
use super::sheared::{self, KnownEdges, ShearedSet};
use super::steel::Shear;
use super::{spacing, stiffness};
use crate::calc::{CheckId, Outcome, Sheet, StepId, Subject};
use crate::geometry::Polygon;
use crate::rules::anchor::{Amplification, AnchorForce, Finding, Findings, PreparedAnchors};
use crate::rules::anchor_set::{Known, Set, connected, larger, members, only};

/// An anchorage with what is already known about its groups.
pub struct Anchorage {
    facts: Facts,
    known: KnownGroups,
    zones: Zones,
    forces: Forces,
}

/// Groups that were worked out for sets of acting fasteners.
pub struct KnownGroups {
    /// By the set of pulled fasteners.
    pub pulled: Known<PulledSet>,
    /// By the set of sheared fasteners.
    pub sheared: Known<ShearedSet>,
    /// By edge and the set of fasteners sheared towards or along it.
    pub edges: KnownEdges,
}

/// Fasteners whose cones would overlap if all were pulled: tension and shear are paired within such a zone.
pub struct Zones {
    /// Zone of each fastener.
    of: Vec<usize>,
    /// Whether any of our own fasteners stands in it.
    is_own: Vec<bool>,
    /// Largest ratios of each zone under the forces at hand, steel left out.
    ratios: Vec<Ratios>,
    /// Why a mode of the zone is not covered under them; its ratios are then not all there.
    uncovered: Vec<Option<StepId>>,
    /// Ratios of the steel of each fastener.
    steel: Vec<Ratios>,
    /// Why the steel is not paired.
    steel_stop: Option<Outcome>,
}

/// Forces on the fasteners.
#[derive(Default)]
pub struct Forces {
    /// Pull on each.
    pub pull: Vec<f64>,
    /// Shear on each.
    pub shear: Vec<Shear>,
}

/// The checks that forces decide.
const STRENGTH_CHECKS: [CheckId; 12] = [
    CheckId::AnchorTensionSteel,
    CheckId::AnchorTensionBreakout,
    CheckId::AnchorTensionTributary,
    CheckId::AnchorTensionPullout,
    CheckId::AnchorTensionBond,
    CheckId::AnchorTensionSplitting,
    CheckId::AnchorTensionBlowout,
    CheckId::AnchorShearSteel,
    CheckId::AnchorShearBreakout,
    CheckId::AnchorShearPryout,
    CheckId::AnchorInteractionSteel,
    CheckId::AnchorInteraction,
];

impl Anchorage {
    /// An anchorage with nothing known yet about its groups.
    pub fn new(facts: Facts) -> Anchorage {
        let zones = Zones::new(&facts);
        let known = KnownGroups { pulled: Known::new(), sheared: Known::new(), edges: KnownEdges::new() };
        Anchorage { facts, known, zones, forces: Forces::default() }
    }
}

impl PreparedAnchors for Anchorage {
    fn place(&self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let facts = &self.facts;
        let mut find = |check, subject, outcome| findings.find(Finding { check, subject, outcome });
        if let Some(reason) = facts.uncovered {
            for check in [CheckId::Anchorage, CheckId::AnchorSpacing, CheckId::AnchorEdge, CheckId::AnchorThickness] {
                find(check, Subject::Whole, Outcome::NotCovered(reason));
            }
            return;
        }
        if facts.values.flag(f::CARRIES) && facts.is(f::SEAT, f::SEAT_GAP) {
            find(CheckId::Anchorage, Subject::Whole, Outcome::NotCovered(c::COMPRESSED));
        }
        let (subject, outcome) = spacing::spacing(facts, sheet);
        find(CheckId::AnchorSpacing, subject, outcome);
        let (subject, outcome) = spacing::edge(facts, sheet);
        find(CheckId::AnchorEdge, subject, outcome);
        let (subject, outcome) = spacing::thickness(facts, sheet);
        find(CheckId::AnchorThickness, subject, outcome);
    }

    fn check(&mut self, forces: &[AnchorForce], level: Amplification, sheet: &mut Sheet, findings: &mut dyn Findings) {
        assert_eq!(forces.len(), self.facts.anchors.len(), "there must be one force for each anchor");
        if let Some(reason) = c::refused(&self.facts, level) {
            for check in STRENGTH_CHECKS {
                findings.find(Finding { check, subject: Subject::Whole, outcome: Outcome::NotCovered(reason) });
            }
            return;
        }
        self.forces.take(forces);
        self.zones.clear();
        let mut round = Round { facts: &self.facts, forces: &self.forces, zones: &mut self.zones, sheet, findings };
        pulled::check(&mut round, &mut self.known);
        sheared::check(&mut round, &mut self.known);
        round.together_in_steel();
        round.together();
    }

    fn stiffness_n_per_mm(&self, anchor: usize, sheet: &mut Sheet) -> f64 {
        stiffness::tension_n_per_mm(&self.facts, anchor, sheet)
    }

    fn least_depth_diameters(&self) -> f64 {
        self.facts.anchors.iter().fold(f64::INFINITY, |least, anchor| least.min(anchor.h_ef / anchor.d))
    }

    fn has_nonductile(&self) -> bool {
        self.facts.is_bonded()
    }

    fn has_expansion(&self) -> bool {
        self.facts.is(f::FASTENER, f::EXPANSION)
    }

    fn breakout_outlines(&self, pulled: &[usize]) -> Vec<Polygon> {
        if self.facts.uncovered.is_some() {
            return Vec::new();
        }
        let set = pulled.iter().fold(0, |set, &place| set | only(place));
        overlapping(&self.facts, set)
            .into_iter()
            .flat_map(|group| Body::new(&self.facts, Reach::Cone, group).outline(&self.facts))
            .collect()
    }
}

/// The sets of fasteners whose cones overlap.
fn overlapping(facts: &Facts, acting: Set) -> Vec<Set> {
    connected(acting, |a, b| Reach::Cone.overlap(facts, &facts.anchors[a], &facts.anchors[b]))
}

/// One set of forces going through all modes.
pub struct Round<'a> {
    /// The anchorage.
    pub facts: &'a Facts,
    /// The forces.
    pub forces: &'a Forces,
    /// Where the largest ratios are kept.
    pub zones: &'a mut Zones,
    /// Where steps are written.
    pub sheet: &'a mut Sheet,
    findings: &'a mut dyn Findings,
}

impl Round<'_> {
    /// Passes an outcome on, and raises the ratio of the zones that the fasteners of its group stand in.
    pub fn find(&mut self, check: CheckId, (subject, outcome): (Subject, Outcome), group: &[usize]) {
        self.findings.find(Finding { check, subject, outcome });
        for &place in group {
            match outcome {
                Outcome::Compared { utilisation, .. } => self.zones.raise(check, place, utilisation),
                Outcome::NotCovered(reason) => self.zones.stop(place, reason),
                Outcome::NotNeeded(_) => {}
            }
        }
    }

    /// Says of a check why it is not needed.
    pub fn say(&mut self, check: CheckId, outcome: Outcome) {
        self.findings.find(Finding { check, subject: Subject::Whole, outcome });
    }

    /// Says of a check why it is not covered for these fasteners, which then cannot be paired either.
    pub fn stop(&mut self, check: CheckId, reason: StepId, acting: Set) {
        self.say(check, Outcome::NotCovered(reason));
        for place in members(acting) {
            self.zones.stop(place, reason);
        }
    }

    /// Tension and shear of the steel of each fastener together; the worst is told.
    fn together_in_steel(&mut self) {
        let check = CheckId::AnchorInteractionSteel;
        if let Some(outcome) = self.zones.steel_stop {
            self.say(check, outcome);
            return;
        }
        let quiet = &mut Sheet::quiet();
        let mut worst: Option<(usize, f64)> = None;
        for (place, ratios) in self.zones.steel.iter().enumerate().take(self.facts.own) {
            let ratio = interaction::utilisation(self.facts, Of::Steel, *ratios, quiet);
            if *ratios != Ratios::default() && worst.is_none_or(|(_, known)| ratio > known || ratio.is_nan()) {
                worst = Some((place, ratio));
            }
        }
        let Some((place, _)) = worst else {
            self.say(check, Outcome::NotNeeded(c::NO_FORCE));
            return;
        };
        let subject = Subject::Anchor(place as u16);
        let ratios = self.zones.steel[place];
        let outcome = interaction::check(self.facts, (Of::Steel, subject), ratios, self.sheet);
        self.findings.find(Finding { check, subject, outcome });
    }

    /// Tension and shear of each zone together, steel left out.
    fn together(&mut self) {
        let check = CheckId::AnchorInteraction;
        let mut any = false;
        for zone in (0..self.zones.ratios.len()).filter(|&zone| self.zones.is_own[zone]).collect::<Vec<_>>() {
            let ratios = self.zones.ratios[zone];
            let subject = Subject::Group(zone as u16 + 1);
            let outcome = match self.zones.uncovered[zone] {
                Some(reason) => Outcome::NotCovered(reason),
                None if ratios == Ratios::default() => continue,
                None => interaction::check(self.facts, (Of::Concrete, subject), ratios, self.sheet),
            };
            any = true;
            self.findings.find(Finding { check, subject, outcome });
        }
        if !any {
            self.say(check, Outcome::NotNeeded(c::NO_FORCE));
        }
    }
}

impl Zones {
    fn new(facts: &Facts) -> Zones {
        let count = facts.anchors.len();
        let mut of = alloc::vec![0; count];
        let steel = alloc::vec![Ratios::default(); count];
        let zones = if facts.uncovered.is_some() {
            Vec::new()
        } else {
            overlapping(facts, (0..count).fold(0, |set, place| set | only(place)))
        };
        for (zone, &set) in zones.iter().enumerate() {
            members(set).for_each(|place| of[place] = zone);
        }
        Zones {
            is_own: zones.iter().map(|&zone| facts.own_of(zone) != 0).collect(),
            of,
            ratios: alloc::vec![Ratios::default(); zones.len()],
            uncovered: alloc::vec![None; zones.len()],
            steel,
            steel_stop: None,
        }
    }

    fn clear(&mut self) {
        self.ratios.fill(Ratios::default());
        self.uncovered.fill(None);
        self.steel.fill(Ratios::default());
        self.steel_stop = None;
    }

    /// A mode of this fastener's zone is not covered.
    fn stop(&mut self, place: usize, reason: StepId) {
        let zone = &mut self.uncovered[self.of[place]];
        *zone = zone.or(Some(reason));
    }

    /// The steel is not paired; a stop outweighs a release.
    pub fn stop_steel(&mut self, outcome: Outcome) {
        if !matches!(self.steel_stop, Some(Outcome::NotCovered(_))) {
            self.steel_stop = Some(outcome);
        }
    }

    /// Ratio of the steel of a fastener in tension.
    pub fn steel_tension(&mut self, place: usize, ratio: f64) {
        self.steel[place].tension = ratio;
    }

    /// Ratio of the steel of a fastener in shear.
    pub fn steel_shear(&mut self, place: usize, ratio: f64) {
        self.steel[place].shear = ratio;
    }

    /// Raises the ratio of the zone of a fastener, for every failure but that of the steel.
    pub fn raise(&mut self, check: CheckId, place: usize, ratio: f64) {
        let zone = &mut self.ratios[self.of[place]];
        let raised = match check {
            CheckId::AnchorShearBreakout | CheckId::AnchorShearPryout => &mut zone.shear,
            _ => &mut zone.tension,
        };
        *raised = larger(*raised, ratio);
    }
}

impl Forces {
    fn take(&mut self, forces: &[AnchorForce]) {
        self.pull.clear();
        self.pull.extend(forces.iter().map(|on| on.tension_n));
        self.shear.clear();
        self.shear.extend(forces.iter().map(|on| Shear { x: on.shear_x_n, y: on.shear_y_n }));
    }
}
