//! The sweep: every state, load and direction, and for every check the place where it governs.

use alloc::vec::Vec;

use super::bench::{Bench, Place, Run, Tried};
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
    /// Why it was not covered somewhere.
    pub not_covered: Option<StepId>,
    /// Why it was not needed somewhere.
    pub not_needed: Option<StepId>,
    /// The place where it was first found not covered or not needed.
    pub first: Option<Place>,
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

/// Sweeps all states, runs and directions with the anchors as stiff as they are given or taken.
pub fn sweep(bench: &mut Bench) -> [Track; CHECKS] {
    let mut tracks = [Track::default(); CHECKS];
    for state in 0..bench.loads.len() {
        for run in bench.runs.clone() {
            sweep_run(bench, state, run, 0, &mut tracks);
        }
    }
    tracks
}

/// Sweeps the directions of one state and run.
pub fn sweep_run(bench: &mut Bench, state: usize, run: Run, stiffness: usize, tracks: &mut [Track; CHECKS]) {
    let mut sheet = Sheet::quiet();
    let tried = bench.directions(state, run, stiffness);
    let mut ask = |bench: &mut Bench, direction_rad: f64, values: &mut [f64]| {
        let place = Place { state, run, direction_rad, stiffness };
        let mut levels = Levels::new();
        bench.check(&place, &mut sheet, &mut levels);
        values.copy_from_slice(&levels.utilisation);
        for check in 0..CHECKS {
            let track = &mut tracks[check];
            track.not_covered = track.not_covered.or(levels.not_covered[check]);
            track.not_needed = track.not_needed.or(levels.not_needed[check]);
            if track.first.is_none() && (levels.not_covered[check].is_some() || levels.not_needed[check].is_some()) {
                track.first = Some(place);
            }
        }
    };
    let peaks: Vec<(f64, f64)> = match tried {
        Tried::Sweep(directions) => directions
            .peaks(CHECKS, &mut |direction_rad, values| ask(bench, direction_rad, values))
            .into_iter()
            .map(|peak| (peak.value, peak.direction_rad))
            .collect(),
        Tried::Only(list) => {
            let mut best = alloc::vec![(f64::NEG_INFINITY, 0.0); CHECKS];
            let mut values = [0.0; CHECKS];
            for direction_rad in list {
                ask(bench, direction_rad, &mut values);
                for (best, &value) in best.iter_mut().zip(&values) {
                    if value > best.0 {
                        *best = (value, direction_rad);
                    }
                }
            }
            best
        }
    };
    for (check, (utilisation, direction_rad)) in peaks.into_iter().enumerate() {
        let is_higher = tracks[check].peak.is_none_or(|known| utilisation > known.utilisation);
        if utilisation > f64::NEG_INFINITY && is_higher {
            let place = Place { state, run, direction_rad, stiffness };
            tracks[check].peak = Some(Peak { utilisation, place });
        }
    }
}
