//! The loads of a bench: which cases are put on for what, in which directions, and what each weighs and pushes.

use alloc::vec::Vec;
use core::f64::consts::TAU;

use super::bench::{Bench, Place, Purpose, Run};
use super::mirror::SAME_RAD;
use crate::base_reactions::told::CaseLoad;
use crate::base_reactions::{self, Plane};
use crate::calc::order::put_in_order;
use crate::load_case::{Directions, Level, LoadCase};
use crate::rules::anchor::Amplification;

/// Which directions a run tries.
pub enum Tried {
    /// All, with a search for the peaks.
    Sweep(base_reactions::Directions),
    /// Only these.
    Only(Vec<f64>),
}

impl Tried {
    /// All of them, ascending.
    pub fn list_rad(&self) -> &[f64] {
        match self {
            Tried::Sweep(directions) => directions.tried_rad(),
            Tried::Only(list) => list,
        }
    }
}

impl Bench<'_> {
    /// The load cases, none where no rule is chosen or where it does not reach.
    pub fn cases(&self) -> &[LoadCase] {
        match &self.demand {
            Some(Ok(demand)) => &demand.cases,
            _ => &[],
        }
    }

    /// Whether the demand rule has cases that are amplified for anchors in concrete.
    pub fn has_amplified_level(&self) -> bool {
        self.cases().iter().any(|case| case.level == Level::Amplified)
    }

    /// The directions of the plan that a run tries, ascending.
    pub fn plan_directions(&self, run: Run) -> Tried {
        match self.cases()[run.case].directions.named_rad() {
            None => Tried::Sweep(self.plan.clone()),
            Some(named) => Tried::Only(named.into()),
        }
    }

    /// The directions from which a run is searched; none where its rule names them all.
    ///
    /// The strength of a group jumps where an anchor begins to pull: both sides of such a direction are among them.
    /// `rows` are the directions that were asked, with the planes by which the cabinet settles there.
    pub fn searched_directions(
        &self,
        start: &Place,
        rows: &[(f64, Option<Plane>)],
    ) -> Option<base_reactions::Directions> {
        if self.cases()[start.run.case].directions == Directions::HundredThirty {
            return None;
        }
        let mut directions = self.plan.clone();
        if start.run.purpose == Purpose::Anchors {
            let mut rows = rows.to_vec();
            match self.mirror.range_rad() {
                // Unwound, so that they ascend from one end to the other.
                Some([from_rad, to_rad]) => rows.iter_mut().for_each(|(direction_rad, _)| {
                    if from_rad < 0.0 && *direction_rad > to_rad + SAME_RAD {
                        *direction_rad -= TAU;
                    }
                }),
                // Once round, to close the last gap.
                None => rows.extend(rows.first().map(|&(direction_rad, plane)| (direction_rad + TAU, plane))),
            }
            put_in_order(&mut rows, |(a, _), (b, _)| a.total_cmp(b));
            let found_rad = self.supports[start.stiffness].switches(&rows, &self.case_load(start).push());
            let images = found_rad.iter().flat_map(|&found_rad| self.mirror.images_rad(found_rad));
            directions.add(&images.collect::<Vec<_>>());
        }
        Some(directions)
    }

    /// The load of a place.
    pub fn case_load(&self, place: &Place) -> CaseLoad {
        let load = &self.loads[place.state];
        let case = &self.cases()[place.run.case];
        CaseLoad {
            mass_kg: load.mass_kg,
            centre_mm: load.centre_mm,
            gravity: case.gravity,
            vertical: case.vertical,
            horizontal: case.horizontal * case.directions.longer(),
            overstrength: if place.run.purpose == Purpose::Anchors { self.overstrength } else { 1.0 },
            direction_rad: place.direction_rad,
        }
    }

    /// The load without overstrength at a place where only the pull or only the shear is amplified.
    ///
    /// A demand rule with an amplified level of its own has the same case at the component's level; where it has not,
    /// both stay amplified.
    pub(super) fn plain_load(&self, place: &Place) -> Option<CaseLoad> {
        if !matches!(self.amplification, Amplification::TensionOnly | Amplification::ShearOnly) {
            return None;
        }
        let (cases, load) = (self.cases(), self.case_load(place));
        let here = &cases[place.run.case];
        if here.level != Level::Amplified {
            return Some(CaseLoad { overstrength: 1.0, ..load });
        }
        let is_like = |case: &&LoadCase| {
            case.level == Level::Component
                && case.gravity == here.gravity
                && case.vertical == here.vertical
                && case.directions == here.directions
        };
        let plain = cases.iter().find(is_like)?;
        Some(CaseLoad { horizontal: load.horizontal * plain.horizontal / here.horizontal, ..load })
    }

    pub(super) fn all_runs(&self) -> Vec<Run> {
        let cases = self.cases();
        let has = |level| cases.iter().any(|case| case.level == level);
        let for_anchors = match self.amplification {
            Amplification::Amplified | Amplification::TensionOnly | Amplification::ShearOnly
                if has(Level::Amplified) =>
            {
                Level::Amplified
            }
            _ if has(Level::Anchorage) => Level::Anchorage,
            _ => Level::Component,
        };
        let for_feet = if has(Level::Concrete) { Level::Concrete } else { Level::Component };
        let mut runs = Vec::new();
        for (case, load_case) in cases.iter().enumerate() {
            if load_case.level == for_feet {
                runs.push(Run { case, purpose: Purpose::Component });
            }
            if load_case.level == for_anchors && self.anchors.is_some() && self.anchors_refused.is_none() {
                runs.push(Run { case, purpose: Purpose::Anchors });
            }
        }
        runs
    }
}
