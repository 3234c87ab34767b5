//! The sweep: every state, load and direction, and for every check the place where it governs.

use alloc::vec::Vec;

use super::bench::{Bench, Place, Run};
use super::loads::Tried;
use crate::calc::{CheckId, Outcome, Sheet, StepId};
use crate::rules::anchor::{Finding, Findings};

/// How many checks there are.
pub const CHECKS: usize = CheckId::ALL.len();

/// Where a check governs.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Peak {
    /// Its utilisation there; infinite where it is not a number.
    pub utilisation: f64,
    /// The place.
    pub place: Place,
}

/// What the sweep found for one check.
#[derive(Clone, Copy, Debug, Default)]
pub struct Track {
    /// Where it governs, if it was ever compared.
    pub peak: Option<Peak>,
    /// Why it was not covered somewhere, and where that was met first.
    pub not_covered: Option<(StepId, Place)>,
    /// Why it was not needed somewhere, and where that was met first.
    pub not_needed: Option<(StepId, Place)>,
}

/// Utilisations of one place, by check, with the reasons that were met; a NaN counts as infinite.
#[derive(Clone, Debug)]
pub struct Levels {
    /// Utilisation of each check; minus infinity where it was not compared.
    pub utilisation: [f64; CHECKS],
    /// Reason why each check was not covered.
    pub not_covered: [Option<StepId>; CHECKS],
    /// Reason why each check was not needed.
    pub not_needed: [Option<StepId>; CHECKS],
}

impl Levels {
    /// Nothing found yet.
    pub fn new() -> Levels {
        Levels { utilisation: [f64::NEG_INFINITY; CHECKS], not_covered: [None; CHECKS], not_needed: [None; CHECKS] }
    }
}

impl Findings for Levels {
    fn find(&mut self, finding: Finding) {
        let check = finding.check as usize;
        match finding.outcome {
            Outcome::Compared { utilisation, .. } => {
                let utilisation = if utilisation.is_nan() { f64::INFINITY } else { utilisation };
                self.utilisation[check] = self.utilisation[check].max(utilisation);
            }
            Outcome::NotCovered(reason) => self.not_covered[check] = self.not_covered[check].or(Some(reason)),
            Outcome::NotNeeded(reason) => self.not_needed[check] = self.not_needed[check].or(Some(reason)),
        }
    }
}

/// A check is searched for its peak in a state and run where the directions tried come this near to its highest value
/// of all; elsewhere no search between them can overtake it. Held to by a test against searching everywhere.
const NEAR: f64 = 0.85;

/// Sweeps all states, runs and directions, with the anchors' stiffness at a place of the stiffness factors.
///
/// Every direction of every state and run is tried first; the search for peaks follows where it can matter.
pub fn sweep(bench: &mut Bench, stiffness: usize) -> [Track; CHECKS] {
    let mut tracks = [Track::default(); CHECKS];
    let mut looked: Vec<(usize, Run, Tried, Levels)> = Vec::new();
    let mut highest = [f64::NEG_INFINITY; CHECKS];
    for state in 0..bench.loads.len() {
        for run in bench.runs.clone() {
            let tried = bench.directions(state, run, stiffness);
            let start = Place { state, run, direction_rad: 0.0, stiffness };
            let levels = try_all(bench, start, &tried, &mut tracks);
            for check in 0..CHECKS {
                highest[check] = highest[check].max(levels.utilisation[check]);
            }
            looked.push((state, run, tried, levels));
        }
    }
    for (state, run, tried, levels) in looked {
        let mut wanted = [false; CHECKS];
        for check in 0..CHECKS {
            let level = levels.utilisation[check];
            wanted[check] = level > f64::NEG_INFINITY && level >= NEAR * highest[check];
        }
        if wanted.contains(&true) {
            let sought = Sought { state, run, stiffness, tried: &tried, wanted };
            sweep_run(bench, &sought, &mut tracks);
        }
    }
    tracks
}

/// The highest level of every check over the directions that are always tried, with the reasons that were met.
fn try_all(bench: &mut Bench, start: Place, tried: &Tried, tracks: &mut [Track; CHECKS]) -> Levels {
    let list = match tried {
        Tried::Sweep(directions) => directions.tried_rad(),
        Tried::Only(list) => list,
    };
    let mut highest = Levels::new();
    for &direction_rad in list {
        let place = Place { direction_rad, ..start };
        let levels = ask(bench, &place, tracks);
        for check in 0..CHECKS {
            highest.utilisation[check] = highest.utilisation[check].max(levels.utilisation[check]);
        }
    }
    highest
}

/// What is searched for peaks.
struct Sought<'t> {
    /// Place of the state.
    state: usize,
    /// Which load, for what.
    run: Run,
    /// Place of the stiffness factor.
    stiffness: usize,
    /// The directions.
    tried: &'t Tried,
    /// Which checks.
    wanted: [bool; CHECKS],
}

/// Searches the directions of one state and run for the peaks of the checks that are wanted.
fn sweep_run(bench: &mut Bench, sought: &Sought, tracks: &mut [Track; CHECKS]) {
    let &Sought { state, run, stiffness, tried, wanted } = sought;
    let checks: Vec<usize> = (0..CHECKS).filter(|&check| wanted[check]).collect();
    let mut levels_at = |bench: &mut Bench, direction_rad: f64, values: &mut [f64]| {
        let levels = ask(bench, &Place { state, run, direction_rad, stiffness }, tracks);
        for (value, &check) in values.iter_mut().zip(&checks) {
            *value = levels.utilisation[check];
        }
    };
    let peaks: Vec<(f64, f64)> = match tried {
        Tried::Sweep(directions) => {
            let found =
                directions.peaks(checks.len(), &mut |direction_rad, values| levels_at(bench, direction_rad, values));
            found.into_iter().map(|peak| (peak.value, peak.direction_rad)).collect()
        }
        Tried::Only(list) => {
            let mut best = alloc::vec![(f64::NEG_INFINITY, 0.0); checks.len()];
            let mut values = alloc::vec![0.0; checks.len()];
            for &direction_rad in list {
                levels_at(bench, direction_rad, &mut values);
                for (best, &value) in best.iter_mut().zip(&values) {
                    if value > best.0 {
                        *best = (value, direction_rad);
                    }
                }
            }
            best
        }
    };
    for (&check, (utilisation, direction_rad)) in checks.iter().zip(peaks) {
        let is_higher = tracks[check].peak.is_none_or(|known| utilisation > known.utilisation);
        if utilisation > f64::NEG_INFINITY && is_higher {
            let place = Place { state, run, direction_rad, stiffness };
            tracks[check].peak = Some(Peak { utilisation, place });
        }
    }
}

/// Asks one place, quietly, and keeps the first reasons that are met.
fn ask(bench: &mut Bench, place: &Place, tracks: &mut [Track; CHECKS]) -> Levels {
    let mut levels = Levels::new();
    bench.check(place, &mut Sheet::quiet(), &mut levels);
    for check in 0..CHECKS {
        let track = &mut tracks[check];
        let here = |reason: StepId| (reason, *place);
        track.not_covered = track.not_covered.or(levels.not_covered[check].map(here));
        track.not_needed = track.not_needed.or(levels.not_needed[check].map(here));
    }
    levels
}
