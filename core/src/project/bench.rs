//! The bench: everything of a project that no load changes, and the forces and checks of one place in the sweep.

use alloc::boxed::Box;
use alloc::vec::Vec;

use super::Project;
use super::anchored::{MayBend, Unshared, amplification, may_bend, other_anchors, prepared_anchors};
use super::floored::Floored;
use super::footed::{anchored, feet_on_slab, foot_stiffnesses, supports};
use super::holding::Holding;
use super::mirror::Mirror;
use crate::base_reactions::told::{CaseLoad, tell_hand_method, tell_reactions};
use crate::base_reactions::{BaseLoad, Bracket, Directions, Plane, Reactions, Shear, Supports, Unbalanced, pivots};
use crate::calc::{CheckId, Outcome, Part, Sheet, StepId, Subject, System, limit, number};
use crate::checks::check_equilibrium;
use crate::checks::feet::{self, FootForce, FootOnSlab};
use crate::load_case::Format;
use crate::load_out::{self, Load};
use crate::report::missing::TURNS_FAR;
use crate::rules::anchor::{Amplification, AnchorForce, Finding, Findings, PreparedAnchors, WholeLoad};
use crate::rules::demand::Demand;

/// One place in the sweep.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Place {
    /// Place of the state.
    pub state: usize,
    /// Which load, for what.
    pub run: Run,
    /// Direction of the push.
    pub direction_rad: f64,
    /// Place in [`STIFFNESS_FACTORS`].
    pub stiffness: usize,
}

/// A load case and what it is used for.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Run {
    /// Place of the load case.
    pub case: usize,
    /// What it is used for.
    pub purpose: Purpose,
}

/// What a load is used for: the same case may serve the feet as it is and the anchors amplified.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Purpose {
    /// Feet and equilibrium.
    Component,
    /// Anchors.
    Anchors,
}

/// The balance of forces and moments closes to this part of the load.
const RESIDUAL_MAX: f64 = 1e-9;

/// Rotations above this are no longer small.
const TURN_MAX_RAD: f64 = 0.05;

/// Factors on the anchors' stiffness; the last two are tried where the user gives none.
pub const STIFFNESS_FACTORS: [f64; 3] = [1.0, 0.25, 4.0];

/// Everything of a project that no load changes.
pub struct Bench<'p> {
    /// The project.
    pub project: &'p Project,
    /// All states with their masses.
    pub loads: Vec<Load>,
    /// What the demand rule asks for, or why it does not reach.
    pub demand: Option<Result<Demand, StepId>>,
    /// Which loads are put on.
    pub runs: Vec<Run>,
    /// The supports for each stiffness factor; only the first where every stiffness is given.
    pub supports: Vec<Supports>,
    /// The directions of the plan.
    pub(super) plan: Directions,
    /// Which halves of the plan are each other's image.
    pub mirror: Mirror,
    feet: Option<Vec<FootOnSlab>>,
    pub(super) anchors: Option<Box<dyn PreparedAnchors>>,
    holding: Holding,
    /// Under the load without overstrength, where only the pull or only the shear is amplified.
    plain: Reactions,
    pub(super) amplification: Amplification,
    pub(super) overstrength: f64,
    /// The cabinet on its floor, where one is given.
    pub(super) floor: Option<Floored<'p>>,
    /// Why the anchors are not checked, where they are not.
    pub anchors_refused: Option<StepId>,
    /// Why bearing under the feet is not checked, where it is not.
    pub feet_refused: Option<StepId>,
    reactions: Reactions,
    /// Whether something balanced the load of the last place.
    is_settled: bool,
    /// Whether nobody said if the anchors bend.
    may_bend: bool,
    forces: Vec<AnchorForce>,
}

impl<'p> Bench<'p> {
    /// Puts a project on the bench.
    pub fn new(project: &'p Project) -> Bench<'p> {
        let loads = load_out::loads(&project.cabinet, &project.contents, &project.all_states());
        let demand = project.site.as_ref().map(|site| (site.rule.demand)(&site.values, 1.0, &mut Sheet::quiet()));
        let format = project.site.as_ref().map(|site| (site.rule.format)(&site.values));
        let anchors = prepared_anchors(project);
        let (anchors, anchors_refused) = match anchors {
            Ok(_)
                if format.is_some_and(|format| project.anchorage.as_ref().is_some_and(|a| a.rule.format != format)) =>
            {
                (anchors.ok(), project.anchorage.as_ref().map(|anchorage| anchorage.rule.other_format))
            }
            Ok(anchors) => {
                let refused = other_anchors(project, demand.as_ref(), &*anchors);
                (Some(anchors), refused)
            }
            Err(reason) => (None, Some(reason)),
        };
        let feet = project.slab.as_ref().map(|_| feet_on_slab(project));
        let is_weak = project.slab.as_ref().is_some_and(|slab| limit::less(slab.strength_mpa, feet::STRENGTH_MIN_MPA));
        let feet_refused = match (&feet, format) {
            (None, _) => Some(feet::NO_SLAB),
            (_, Some(format)) if format != Format::Strength => Some(feet::NOT_STRENGTH),
            _ if is_weak => Some(feet::WEAK),
            _ => None,
        };
        let (amplification, given) = amplification(project, demand.as_ref().and_then(|demand| demand.as_ref().ok()));
        let supports = supports(project, anchors.as_deref());
        let holding = Holding::new(project, anchors.as_deref());
        let mirror = Mirror::of(project, &loads, &supports[0]);
        let mut bench = Bench {
            project,
            loads,
            runs: Vec::new(),
            demand,
            mirror,
            plan: supports[0].directions(),
            supports,
            feet,
            floor: Floored::new(project, format),
            anchors,
            holding,
            plain: Reactions::default(),
            amplification,
            overstrength: given,
            anchors_refused,
            feet_refused,
            reactions: Reactions::default(),
            may_bend: may_bend(project),
            is_settled: false,
            forces: Vec::new(),
        };
        bench.runs = bench.all_runs();
        bench
    }

    /// Everything that is checked at a place, quiet or told.
    pub fn check(&mut self, place: &Place, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let load = self.case_load(place);
        let push = load.push();
        load.tell(sheet);
        let supports = &self.supports[place.stiffness];
        let towards = push.towards();
        let settled = supports.settle_into(&push.base_load(towards), &mut self.reactions);
        // Within a millionth of tipping a corner of a foot carries all, and rounding keeps the balance from closing: such
        // a load counts as one that nothing balances.
        let is_closed = self.reactions.residual <= RESIDUAL_MAX;
        let settled = settled.and(if is_closed { Ok(()) } else { Err(Unbalanced::Unresolved) });
        self.is_settled = settled.is_ok();
        if self.is_settled {
            tell_reactions(supports, &self.reactions, sheet);
        }
        let is_for_anchors = place.run.purpose == Purpose::Anchors;
        let shares = if is_for_anchors { self.holding.shares(&push, towards) } else { None };
        if let Some(shares) = &shares {
            self.holding.tell(&load, shares, sheet);
            if sheet.is_told() {
                tell_hand_method(&pivots(supports.feet_hull(), supports.anchors(), &BaseLoad::from(push)), sheet);
            }
        }
        let equilibrium = check_equilibrium(supports, &push, towards, sheet);
        let equilibrium = match (&settled, equilibrium) {
            // A load that nothing balances is never passed over, whatever the margin says.
            (Err(_), Outcome::Compared { value, limit, utilisation }) if utilisation > 1.0 => {
                Outcome::Compared { value, limit, utilisation }
            }
            (Err(_), Outcome::NotCovered(reason)) => Outcome::NotCovered(reason),
            (Err(_), _) => {
                Outcome::Compared { value: push.horizontal_n * push.height_mm, limit: 0.0, utilisation: f64::INFINITY }
            }
            (Ok(()), outcome) => outcome,
        };
        findings.find(Finding { check: CheckId::BaseEquilibrium, subject: Subject::Whole, outcome: equilibrium });
        if settled.is_err() {
            return;
        }
        let plane = &self.reactions.plane;
        if number::hypot(plane.slope_x, plane.slope_y) > TURN_MAX_RAD {
            let outcome = Outcome::NotCovered(TURNS_FAR);
            findings.find(Finding { check: CheckId::BaseEquilibrium, subject: Subject::Whole, outcome });
        }
        match place.run.purpose {
            Purpose::Component => {
                self.check_feet(sheet, findings);
                if let Some(floor) = &self.floor {
                    floor.check_shaken(&self.reactions, load.weight_n(), sheet, findings);
                }
            }
            Purpose::Anchors => {
                self.check_anchors(place, shares, sheet, findings);
                self.check_whole(&load, sheet, findings);
            }
        }
    }

    /// What does not depend on the load: spacing and edges of the anchors.
    pub fn check_places(&self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        if let (Some(anchors), None) = (&self.anchors, self.anchors_refused) {
            anchors.place(sheet, findings);
        }
    }

    /// The cabinet on its floor, where floor and slab are given.
    pub fn floor_site(&self) -> Option<&crate::checks::floor::FloorSite<'p>> {
        self.floor.as_ref().map(Floored::site)
    }

    /// The stiffness of every foot and anchor, told once for those that are alike.
    pub fn tell_stiffness(&self, sheet: &mut Sheet) {
        if let Some(floor) = &self.floor {
            floor.tell_stiffness(sheet);
        }
        let mut told: Vec<f64> = Vec::new();
        for foot in foot_stiffnesses(self.project) {
            let stiffness = foot.stiffness_n_per_mm(&mut Sheet::quiet());
            if !told.contains(&stiffness) {
                foot.stiffness_n_per_mm(sheet);
                told.push(stiffness);
            }
        }
        told.clear();
        for (place, anchor) in self.project.cabinet.anchors.iter().enumerate() {
            if let (None, Some(prepared)) = (anchor.stiffness_n_per_mm, &self.anchors) {
                let quiet = &mut Sheet::quiet();
                let alone = prepared.stiffness_n_per_mm(place, quiet);
                let stiffness = anchored(self.project, place, alone, quiet);
                if !told.contains(&stiffness) {
                    sheet.open(Part::BaseReactions, Subject::Anchor(place as u16), None, System::Si);
                    prepared.stiffness_n_per_mm(place, sheet);
                    anchored(self.project, place, alone, sheet);
                    told.push(stiffness);
                }
            }
        }
    }

    /// The plane by which the cabinet settled at the last place that was checked; none where nothing balances the load.
    pub fn plane(&self) -> Option<Plane> {
        self.is_settled.then_some(self.reactions.plane)
    }

    /// The reactions of the last place that was checked.
    pub fn reactions(&self) -> &Reactions {
        &self.reactions
    }

    /// The forces in the cabinet's own anchors at the last place that was checked.
    pub fn anchor_forces(&self) -> &[AnchorForce] {
        &self.forces[..self.forces.len().min(self.holding.count())]
    }

    /// Outlines of the breakout bodies of these anchors; none where the anchors are not checked.
    pub fn breakout_outlines(&self, pulled: &[usize]) -> Vec<crate::geometry::Polygon> {
        match &self.anchors {
            Some(anchors) if !pulled.is_empty() => {
                let own = self.holding.count();
                let of_all = (0..=self.project.neighbours.len())
                    .flat_map(|cabinet| pulled.iter().map(move |place| cabinet * own + place));
                anchors.breakout_outlines(&of_all.collect::<Vec<_>>())
            }
            _ => Vec::new(),
        }
    }

    fn check_feet(&mut self, sheet: &mut Sheet, findings: &mut dyn Findings) {
        if self.feet_refused.is_some() {
            return;
        }
        let Some(feet) = &self.feet else { return };
        for (foot, reaction) in feet.iter().zip(&self.reactions.feet) {
            if reaction.force_n <= 0.0 {
                continue;
            }
            let subject = Subject::Foot(foot.number);
            let area_mm2 = reaction.contact_fraction * 4.0 * foot.half.area_mm2();
            let outcomes = if area_mm2 > 0.0 {
                let force = FootForce {
                    force_n: reaction.force_n,
                    bearing_half: reaction.bearing_half,
                    area_mm2,
                    peak_mpa: reaction.peak_pressure_mpa,
                };
                foot.check(&force, sheet)
            } else {
                [Outcome::NotCovered(feet::POINT); 2]
            };
            for (check, outcome) in [CheckId::FootBearing, CheckId::FootPressure].into_iter().zip(outcomes) {
                findings.find(Finding { check, subject, outcome });
            }
        }
    }

    /// What the anchor rule finds by statics of its own.
    fn check_whole(&self, load: &CaseLoad, sheet: &mut Sheet, findings: &mut dyn Findings) {
        let (Some(anchors), None) = (&self.anchors, self.anchors_refused) else { return };
        let push = load.push();
        let whole = WholeLoad {
            weight_n: load.gravity * load.weight_n(),
            upward_n: -load.vertical * load.weight_n(),
            horizontal_n: push.horizontal_n,
            at: push.at,
            height_mm: push.height_mm,
            direction_rad: push.direction_rad,
        };
        anchors.check_whole(&whole, sheet, findings);
    }

    fn check_anchors(
        &mut self,
        place: &Place,
        shares: Option<Vec<Shear>>,
        sheet: &mut Sheet,
        findings: &mut dyn Findings,
    ) {
        if self.anchors_refused.is_some() || self.anchors.is_none() {
            return;
        }
        // Pulls do not wait for shares of the shear.
        let unshared = &mut Unshared { findings: &mut *findings, reason: self.holding.reason() };
        let findings: &mut dyn Findings = if shares.is_none() { unshared } else { unshared.findings };
        let none = || alloc::vec![Shear { x_n: 0.0, y_n: 0.0 }; self.holding.count()];
        let mut shares = shares.unwrap_or_else(none);
        let mut pulls = &self.reactions.anchors_n;
        if let Some(plain) = self.plain_load(place) {
            let supports = &self.supports[place.stiffness];
            let push = plain.push();
            let towards = push.towards();
            let settled = supports.settle_into(&push.base_load(towards), &mut self.plain);
            let plain_shares = self.holding.shares(&push, towards);
            // What does not settle without overstrength is left amplified, which is the harsher of both.
            if let (Ok(()), Some(plain_shares)) = (settled, plain_shares) {
                plain.tell(sheet);
                tell_reactions(supports, &self.plain, sheet);
                self.holding.tell(&plain, &plain_shares, sheet);
                if self.amplification == Amplification::TensionOnly {
                    shares = plain_shares;
                } else {
                    pulls = &self.plain.anchors_n;
                }
            }
        }
        let Some(anchors) = &mut self.anchors else { return };
        self.forces.clear();
        let brackets = self.project.cabinet.anchors.iter().map(|anchor| anchor.bracket_mm);
        let pried = pulls.iter().zip(brackets).enumerate().map(|(anchor, (&pull_n, bracket))| match bracket {
            Some([toe_mm, lever_mm]) => Bracket { toe_mm, lever_mm }.tension_n(pull_n, anchor, sheet),
            None => pull_n,
        });
        self.forces.extend(pried.zip(&shares).map(|(tension_n, share)| AnchorForce {
            tension_n,
            shear_x_n: share.x_n,
            shear_y_n: share.y_n,
        }));
        for _ in &self.project.neighbours {
            self.forces.extend_from_within(..self.holding.count());
        }
        if self.may_bend {
            anchors.check(&self.forces, self.amplification, sheet, &mut MayBend(findings));
        } else {
            anchors.check(&self.forces, self.amplification, sheet, findings);
        }
    }
}
