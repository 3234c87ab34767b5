//! Trials: whether projects that are much alike hold, without sweeping those that plainly do not.
//!
//! Where one project failed, its neighbour mostly fails too. So the places of earlier failures are asked first, on the
//! true checks; only a project that none of them stops is swept as a whole. An answer "holds" always comes from the whole
//! sweep.

use alloc::vec::Vec;

use crate::calc::{CheckId, Outcome, Role, Sheet};
use crate::project::bench::{Bench, Place};
use crate::project::{Project, place_of, quick_told};
use crate::report::outcome::{CheckTold, Verdict};
use crate::rules::anchor::{Finding, Findings};

/// Places that are remembered.
const SUSPECTS_MAX: usize = 24;
/// The sweep finds its peaks within half a percent, so a place that it did not ask itself stops a project only beyond that.
const PLAINLY: f64 = 1.005;

/// What one trial came to.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Trial {
    /// The answer in one word.
    pub verdict: Verdict,
    /// The check that governs or that stopped it.
    pub governs: Option<CheckId>,
    /// Its utilisation; absent where it is not a number.
    pub utilisation: Option<f64>,
    /// Row of the reason where something required is not covered.
    pub reason: Option<u16>,
}

/// Tries projects one after the other and remembers where they failed.
#[derive(Debug, Default)]
pub struct Trials {
    /// The places, the one that last stopped a project first.
    suspects: Vec<Place>,
    /// Sweeps so far.
    pub sweeps: usize,
}

/// The highest required utilisation over some places, with its check.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Glance {
    /// The utilisation; infinite where it is no number.
    pub utilisation: f64,
    /// The check.
    pub check: Option<CheckId>,
}

impl Trials {
    /// Nothing is suspected yet.
    pub fn new() -> Trials {
        Trials::default()
    }

    /// Whether a project holds.
    pub fn attempt(&mut self, project: &Project) -> Trial {
        let mut bench = Bench::new(project);
        self.stopped(&mut bench).unwrap_or_else(|| self.swept(&mut bench))
    }

    /// Whether a project is stopped at a place that is already suspected; none says nothing about it.
    pub fn stopped_early(&mut self, project: &Project) -> Option<Trial> {
        self.stopped(&mut Bench::new(project))
    }

    /// The highest utilisation of required checks at the suspected places alone.
    pub fn glance(&self, project: &Project) -> Glance {
        let mut bench = Bench::new(project);
        let mut highest = Highest::default();
        bench.check_places(&mut Sheet::quiet(), &mut highest);
        for place in &self.suspects {
            if is_there(&bench, place) {
                bench.check(place, &mut Sheet::quiet(), &mut highest);
            }
        }
        highest.glance()
    }

    /// Sweeps a project and suspects every place where one of its required checks is highest.
    pub fn learn(&mut self, project: &Project) -> Trial {
        let mut bench = Bench::new(project);
        let quick = quick_told(&mut bench);
        self.sweeps += 1;
        for check in quick.checks.iter().filter(|check| check.role == Role::Required && check.utilisation.is_some()) {
            self.suspect(check);
        }
        trial(quick.verdict, quick.governing(), &quick.checks)
    }

    fn stopped(&mut self, bench: &mut Bench) -> Option<Trial> {
        let mut highest = Highest::default();
        bench.check_places(&mut Sheet::quiet(), &mut highest);
        if let Some(trial) = highest.stop(1.0) {
            return Some(trial);
        }
        for number in 0..self.suspects.len() {
            let place = self.suspects[number];
            if !is_there(bench, &place) {
                continue;
            }
            bench.check(&place, &mut Sheet::quiet(), &mut highest);
            if let Some(trial) = highest.stop(PLAINLY) {
                self.suspects[..=number].rotate_right(1);
                return Some(trial);
            }
        }
        None
    }

    fn swept(&mut self, bench: &mut Bench) -> Trial {
        let quick = quick_told(bench);
        self.sweeps += 1;
        if let (Verdict::DoesNotHold, Some(check)) = (quick.verdict, quick.governing()) {
            self.suspect(check);
        }
        trial(quick.verdict, quick.governing(), &quick.checks)
    }

    fn suspect(&mut self, check: &CheckTold) {
        let Some(place) = check.at.as_ref().and_then(place_of) else { return };
        if !self.suspects.contains(&place) {
            self.suspects.truncate(SUSPECTS_MAX - 1);
            self.suspects.insert(0, place);
        }
    }
}

/// Whether a place that was met in one project exists in another.
fn is_there(bench: &Bench, place: &Place) -> bool {
    place.state < bench.loads.len() && place.stiffness < bench.supports.len() && bench.runs.contains(&place.run)
}

pub(super) fn trial(verdict: Verdict, governing: Option<&CheckTold>, checks: &[CheckTold]) -> Trial {
    let reason = |check: &&CheckTold| check.role == Role::Required && check.reason.is_some();
    let uncovered = checks.iter().filter(reason).find(|check| check.status == crate::calc::Status::NotCovered);
    Trial {
        verdict,
        governs: governing.and_then(|check| CheckId::named(check.id)),
        utilisation: governing.and_then(|check| check.utilisation),
        reason: uncovered.and_then(|check| check.reason).filter(|_| verdict == Verdict::CannotBeSaid),
    }
}

/// Keeps the required check with the highest utilisation.
#[derive(Default)]
struct Highest {
    check: Option<CheckId>,
    utilisation: f64,
}

impl Findings for Highest {
    fn find(&mut self, finding: Finding) {
        if finding.check.role() != Role::Required {
            return;
        }
        if let Outcome::Compared { utilisation, .. } = finding.outcome {
            let utilisation = if utilisation.is_nan() { f64::INFINITY } else { utilisation };
            if self.check.is_none() || utilisation > self.utilisation {
                (self.check, self.utilisation) = (Some(finding.check), utilisation);
            }
        }
    }
}

impl Highest {
    fn stop(&self, above: f64) -> Option<Trial> {
        (self.check.is_some() && self.utilisation > above).then(|| Trial {
            verdict: Verdict::DoesNotHold,
            governs: self.check,
            utilisation: self.utilisation.is_finite().then_some(self.utilisation),
            reason: None,
        })
    }

    fn glance(&self) -> Glance {
        Glance { utilisation: if self.check.is_some() { self.utilisation } else { 0.0 }, check: self.check }
    }
}
