//! All failure modes of an anchorage under simultaneous forces.

use alloc::vec::Vec;

use super::anchor::Anchor;
use super::attachment;
use super::body::{Body, bodies_overlap, breakouts_overlap};
use super::chosen::{HOLE_SLOT_X, HOLE_SLOT_Y};
use super::coverage as c;
use super::facts::Facts;
use super::interaction::{self, Ratios};
use super::kind::AnchorKind;
use super::pryout::PriedGroup;
use super::pulled::PulledSet;
use super::set::{Known, Set, connected, floor, larger, members, only};
use super::sheared::KnownEdges;
use super::steel::Shear;
use super::{pulled, sheared, spacing, stiffness, washers};
use crate::calc::{CheckId, Kind, Outcome, Sheet, StepId, Subject};
use crate::geometry::Polygon;
use crate::rules::anchor::{Amplification, AnchorForce, Finding, Findings, PreparedAnchors};
use crate::rules::bolts::Toughness;

/// An anchorage with what is already known about its groups.
pub struct Anchorage {
    facts: Facts,
    known: KnownGroups,
    zones: Zones,
    forces: Forces,
}

/// Groups that were worked out for sets of acting anchors.
pub struct KnownGroups {
    /// By the set of pulled anchors.
    pub pulled: Known<PulledSet>,
    /// By the set of sheared anchors.
    pub sheared: Known<Vec<PriedGroup>>,
    /// By edge and the set of anchors sheared towards or along it.
    pub edges: KnownEdges,
}

/// Anchors whose breakout bodies would overlap if all acted: tension and shear are paired within such a zone.
pub struct Zones {
    /// Zone of each anchor.
    of: Vec<usize>,
    /// Largest ratios of each zone under the forces at hand.
    ratios: Vec<Ratios>,
    /// Why a mode of the zone is not covered under them; its ratios are then not all there.
    uncovered: Vec<Option<StepId>>,
    /// Why a mode of all anchors is not covered.
    stopped: Option<StepId>,
    /// Whether any of our own anchors stands in it.
    is_own: Vec<bool>,
}

/// Forces on the anchors in units of the edition.
#[derive(Default)]
pub struct Forces {
    /// Pull on each anchor.
    pub pull: Vec<f64>,
    /// Shear on each anchor.
    pub shear: Vec<Shear>,
}

impl Anchorage {
    /// An anchorage with nothing known yet about its groups.
    pub fn new(facts: Facts) -> Anchorage {
        let zones = Zones::new(&facts);
        let known =
            KnownGroups { pulled: Known::new(), sheared: Known::new(), edges: KnownEdges::new(facts.lines.len()) };
        Anchorage { facts, known, zones, forces: Forces::default() }
    }

    /// Why none of the forces can be checked.
    fn refused(&self, level: Amplification) -> Option<StepId> {
        if self.facts.uncovered.is_some() {
            return self.facts.uncovered;
        }
        let needed = self.facts.options.amplification;
        let asks = !matches!(needed, Amplification::Plain | Amplification::Limited);
        (asks && level != needed && level != Amplification::Amplified).then_some(c::NOT_AMPLIFIED)
    }
}

/// The checks that forces decide.
const STRENGTH_CHECKS: [CheckId; 12] = [
    CheckId::AnchorTensionSteel,
    CheckId::AnchorTensionBreakout,
    CheckId::AnchorTensionTributary,
    CheckId::AnchorTensionPullout,
    CheckId::AnchorTensionBlowout,
    CheckId::AnchorTensionBond,
    CheckId::AnchorSustained,
    CheckId::AnchorDuctile,
    CheckId::AnchorShearSteel,
    CheckId::AnchorShearBreakout,
    CheckId::AnchorShearPryout,
    CheckId::AnchorInteraction,
];

impl PreparedAnchors for Anchorage {
    fn place(&self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let mut find = |check, subject, outcome| findings.find(Finding { check, subject, outcome });
        if let Some(reason) = self.facts.uncovered {
            for check in [CheckId::Anchorage, CheckId::AnchorSpacing, CheckId::AnchorEdge, CheckId::AnchorThickness] {
                find(check, Subject::Whole, Outcome::NotCovered(reason));
            }
            return;
        }
        if let Some(reason) = self.facts.gaps.steel_tension {
            find(CheckId::Anchorage, Subject::Whole, Outcome::NotCovered(reason));
        }
        let (subject, outcome) = spacing::spacing(&self.facts, sheet);
        find(CheckId::AnchorSpacing, subject, outcome);
        let (subject, outcome) = spacing::edge(&self.facts, sheet);
        find(CheckId::AnchorEdge, subject, outcome);
        let (subject, outcome) = spacing::thickness(&self.facts, sheet);
        find(CheckId::AnchorThickness, subject, outcome);
    }

    fn check(&mut self, forces: &[AnchorForce], level: Amplification, sheet: &mut Sheet, findings: &mut dyn Findings) {
        assert_eq!(forces.len(), self.facts.anchors.len(), "there must be one force for each anchor");
        if let Some(reason) = self.refused(level) {
            for check in STRENGTH_CHECKS {
                findings.find(Finding { check, subject: Subject::Whole, outcome: Outcome::NotCovered(reason) });
            }
            return;
        }
        self.forces.take(&self.facts, forces);
        self.forces.limit(&self.facts, sheet);
        self.zones.clear();
        let mut round = Round { facts: &self.facts, forces: &self.forces, zones: &mut self.zones, sheet, findings };
        pulled::check(&mut round, &mut self.known);
        sheared::check(&mut round, &mut self.known);
        washers::check(&mut round);
        round.together();
    }

    fn takes_shear(&self, anchor: usize) -> [bool; 2] {
        let hole = self.facts.anchors[anchor].hole;
        [hole != HOLE_SLOT_X, hole != HOLE_SLOT_Y]
    }

    fn stiffness_n_per_mm(&self, anchor: usize, sheet: &mut Sheet) -> f64 {
        stiffness::tension_n_per_mm(&self.facts, anchor, sheet)
    }

    fn least_depth_diameters(&self) -> f64 {
        self.facts.anchors.iter().fold(f64::INFINITY, |least, anchor| least.min(anchor.h_ef / anchor.d_a))
    }

    fn has_nonductile(&self) -> bool {
        self.facts.kind == AnchorKind::Adhesive || self.facts.anchors.iter().any(is_brittle)
    }

    fn has_brittle_cast_in(&self) -> bool {
        !self.facts.kind.is_drilled() && self.facts.anchors.iter().any(is_brittle)
    }

    fn has_expansion(&self) -> bool {
        matches!(self.facts.kind, AnchorKind::TorqueExpansion | AnchorKind::DisplacementExpansion)
    }

    fn breakout_outlines(&self, pulled: &[usize]) -> Vec<Polygon> {
        if self.facts.uncovered.is_some() {
            return Vec::new();
        }
        let set = pulled.iter().fold(0, |set, &place| set | only(place));
        breakout_groups(&self.facts, set)
            .into_iter()
            .flat_map(|group| Body::new(&self.facts, group).outline(&self.facts))
            .collect()
    }
}

fn is_brittle(anchor: &Anchor) -> bool {
    anchor.toughness == Toughness::Brittle
}

/// The groups that acting anchors break out in.
pub fn breakout_groups(facts: &Facts, acting: Set) -> Vec<Set> {
    connected(acting, |a, b| breakouts_overlap(&facts.anchors[a], &facts.anchors[b]))
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
    /// Passes an outcome on, and raises the ratio of the zones that the anchors of its group stand in.
    pub fn find(&mut self, check: CheckId, subject: Subject, group: &[usize], outcome: Outcome) {
        self.findings.find(Finding { check, subject, outcome });
        for &place in group {
            match outcome {
                Outcome::Compared { utilisation, .. } => self.zones.raise(check, place, utilisation),
                Outcome::NotCovered(reason) => self.zones.stop(place, reason),
                Outcome::NotNeeded(_) => {}
            }
        }
    }

    /// Says of a check why it is not needed or not covered.
    pub fn say(&mut self, check: CheckId, outcome: Outcome) {
        self.findings.find(Finding { check, subject: Subject::Whole, outcome });
    }

    /// Raises the ratio of an anchor's zone without a finding.
    pub fn raise(&mut self, check: CheckId, place: usize, ratio: f64) {
        self.zones.raise(check, place, ratio);
    }

    /// Says of a mode why it is not covered; tension with shear is then not covered anywhere.
    pub fn stop(&mut self, check: CheckId, reason: StepId) {
        self.say(check, Outcome::NotCovered(reason));
        self.zones.stopped = self.zones.stopped.or(Some(reason));
    }

    /// Tension and shear of each zone together.
    fn together(&mut self) {
        if let Some(reason) = self.zones.stopped {
            self.say(CheckId::AnchorInteraction, Outcome::NotCovered(reason));
            return;
        }
        let mut any = false;
        for zone in 0..self.zones.ratios.len() {
            if !self.zones.is_own[zone] {
                continue;
            }
            let ratios = self.zones.ratios[zone];
            let number = zone as u16 + 1;
            if let Some(reason) = self.zones.uncovered[zone] {
                any = true;
                self.find(CheckId::AnchorInteraction, Subject::Group(number), &[], Outcome::NotCovered(reason));
                continue;
            }
            if ratios == Ratios::default() {
                continue;
            }
            any = true;
            let outcome = interaction::check(self.facts, number, ratios, self.sheet);
            self.find(CheckId::AnchorInteraction, Subject::Group(number), &[], outcome);
        }
        if !any {
            self.say(CheckId::AnchorInteraction, Outcome::NotNeeded(c::NO_FORCE));
        }
    }
}

impl Zones {
    fn new(facts: &Facts) -> Zones {
        let mut of = alloc::vec![0; facts.anchors.len()];
        if facts.uncovered.is_some() {
            return Zones { of, ratios: Vec::new(), uncovered: Vec::new(), stopped: None, is_own: Vec::new() };
        }
        let all = (0..facts.anchors.len()).fold(0, |set, place| set | only(place));
        let zones = connected(all, |a, b| bodies_overlap(facts, a, b));
        for (zone, &set) in zones.iter().enumerate() {
            members(set).for_each(|place| of[place] = zone);
        }
        let count = zones.len();
        Zones {
            of,
            ratios: alloc::vec![Ratios::default(); count],
            uncovered: alloc::vec![None; count],
            stopped: None,
            is_own: zones.iter().map(|zone| zone & facts.own != 0).collect(),
        }
    }

    fn clear(&mut self) {
        self.ratios.fill(Ratios::default());
        self.uncovered.fill(None);
        self.stopped = None;
    }

    /// A mode of this anchor's zone is not covered.
    fn stop(&mut self, place: usize, reason: StepId) {
        let zone = &mut self.uncovered[self.of[place]];
        *zone = zone.or(Some(reason));
    }

    fn raise(&mut self, check: CheckId, place: usize, ratio: f64) {
        let zone = &mut self.ratios[self.of[place]];
        let raised = match check {
            CheckId::AnchorShearSteel | CheckId::AnchorShearBreakout | CheckId::AnchorShearPryout => &mut zone.shear,
            _ => &mut zone.tension,
        };
        *raised = larger(*raised, ratio);
    }
}

impl Forces {
    fn take(&mut self, facts: &Facts, forces: &[AnchorForce]) {
        let force = |newtons| facts.edition.system.from_si(newtons, Kind::Force);
        self.pull.clear();
        self.pull.extend(forces.iter().map(|on| force(on.tension_n)));
        self.shear.clear();
        self.shear.extend(forces.iter().map(|on| Shear { x: force(on.shear_x_n), y: force(on.shear_y_n) }));
    }

    /// Puts what the attachment passes in the place of the forces that the statics found, where an option says so.
    fn limit(&mut self, facts: &Facts, sheet: &mut Sheet) {
        let options = &facts.options;
        if let Some(most) = options.tension {
            let none = floor(self.pull.iter().fold(0.0, |most, &pull| larger(most, pull)));
            for pull in self.pull.iter_mut().filter(|pull| **pull > none) {
                *pull = most;
            }
            attachment::tell_tension(facts, most, sheet);
        }
        if let Some(most) = options.shear {
            let none = floor(self.shear.iter().fold(0.0, |most, on| larger(most, on.size())));
            for on in self.shear.iter_mut().filter(|on| on.size() > none) {
                let scale = most / on.size();
                *on = Shear { x: on.x * scale, y: on.y * scale };
            }
            attachment::tell_shear(facts, most, sheet);
        }
    }
}
