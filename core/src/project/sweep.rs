//! The sweep: every state, load, direction and stiffness, and for every check the place where it governs.

use alloc::vec::Vec;

use super::bench::{Bench, Place};
use super::loads::Tried;
use super::mirror::SAME_RAD;
use crate::base_reactions::Plane;
use crate::calc::{CheckId, Outcome, Sheet, StepId};
use crate::rules::anchor::{Finding, Findings};
use crate::rules::anchor_set::{Set, members as places, only};

/// How many checks there are.
pub const CHECKS: usize = CheckId::ALL.len();

// Checks are kept in sets as anchors are.
const _: () = assert!(CHECKS <= Set::BITS as usize);

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
    /// Where it governs over all stiffnesses, if it was ever compared.
    pub peak: Option<Peak>,
    /// The lowest and the highest of its utilisations at each stiffness, where both ends were asked for.
    pub ends: Option<[f64; 2]>,
    /// Why it was not covered somewhere, and where that was met first.
    pub not_covered: Option<(StepId, Place)>,
    /// Why it was not needed somewhere with the first stiffness, and where that was met first.
    pub not_needed: Option<(StepId, Place)>,
}

/// What is to be known of the span that the stiffness of the anchors opens.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Ends {
    /// Only its worse end, which the verdict takes.
    Worse,
    /// Both.
    Both,
}

/// Utilisations by check; minus infinity where it was not compared.
#[derive(Clone, Debug)]
struct Levels {
    of: [f64; CHECKS],
    found: Set,
}

impl Levels {
    fn new() -> Levels {
        Levels { of: [f64::NEG_INFINITY; CHECKS], found: 0 }
    }

    fn clear(&mut self) {
        for check in places(self.found) {
            self.of[check] = f64::NEG_INFINITY;
        }
        self.found = 0;
    }

    /// A NaN counts as infinite, so that it is never lost.
    fn raise(&mut self, check: usize, utilisation: f64) {
        let utilisation = if utilisation.is_nan() { f64::INFINITY } else { utilisation };
        // `max` would be a call in the browser; neither of both is no number.
        if utilisation > self.of[check] {
            self.of[check] = utilisation;
        }
        self.found |= only(check);
    }

    fn raise_all(&mut self, other: &Levels) {
        for check in places(other.found) {
            self.raise(check, other.of[check]);
        }
    }
}

/// Takes what is found at one place.
struct Ask<'a> {
    place: Place,
    levels: &'a mut Levels,
    tracks: &'a mut [Track; CHECKS],
}

impl Findings for Ask<'_> {
    fn find(&mut self, finding: Finding) {
        let check = finding.check as usize;
        match finding.outcome {
            Outcome::Compared { utilisation, .. } => self.levels.raise(check, utilisation),
            Outcome::NotCovered(reason) => {
                self.tracks[check].not_covered.get_or_insert((reason, self.place));
            }
            Outcome::NotNeeded(reason) => {
                // Reasons stand in their tables from the general to the particular: where an anchor is pulled in one
                // place, "no anchor is pulled" in another says less than why the check is not needed for it.
                let known = &mut self.tracks[check].not_needed;
                if self.place.stiffness == 0 && known.is_none_or(|(known, _)| known < reason) {
                    *known = Some((reason, self.place));
                }
            }
        }
    }
}

/// A check is searched for its peak in a state and run where the directions of the plan come this near to its highest
/// value of all; elsewhere no search between them overtakes it. Measured on 13,000 checks of 3,000 random projects: 0.95
/// loses nothing against searching everywhere.
const NEAR: f64 = 0.9;

/// A state and run is tried at the other stiffnesses where it reaches this part of some check's highest value at the
/// first, because stiffness moves all states alike. Measured likewise: 0.5 loses nothing, 0.6 does.
const AT_OTHERS: f64 = 0.35;

/// Runs whose answers are kept until the search, so that it need not ask them again.
const KEPT_MAX: usize = 256;

/// A state and run after the directions of the plan were tried.
struct Looked {
    start: Place,
    tried: Tried,
    highest: Levels,
    /// The directions that were asked, with the plane by which it settled there.
    asked: Vec<(f64, Option<Plane>)>,
    /// The answers there.
    kept: Kept,
}

/// The answers in the directions that were tried: for each the checks that were compared, and their utilisations.
#[derive(Default)]
struct Kept {
    rows: Vec<(Set, usize)>,
    values: Vec<f64>,
}

impl Kept {
    fn keep(&mut self, levels: &Levels) {
        self.rows.push((levels.found, self.values.len()));
        self.values.extend(places(levels.found).map(|check| levels.of[check]));
    }

    fn get(&self, row: usize, check: usize) -> f64 {
        let (found, start) = self.rows[row];
        let bit = only(check);
        if found & bit == 0 {
            return f64::NEG_INFINITY;
        }
        self.values[start + (found & (bit - 1)).count_ones() as usize]
    }
}

/// Sweeps all states, runs and directions with every stiffness of the anchors.
///
/// Every state and run is tried in the directions of the plan first; the search for peaks follows where it can matter.
pub fn sweep(bench: &mut Bench, ends: Ends) -> [Track; CHECKS] {
    let mut sweep = Sweep { tracks: [Track::default(); CHECKS], levels: Levels::new(), quiet: Sheet::quiet() };
    let mut looked: Vec<Looked> = Vec::new();
    let mut highest: Vec<Levels> = Vec::new();
    let mut of_all = Levels::new();
    let mut kept = 0;
    for stiffness in 0..bench.supports.len() {
        let mut of_stiffness = Levels::new();
        for state in 0..bench.loads.len() {
            for place in 0..bench.runs.len() {
                let start = Place { state, run: bench.runs[place], direction_rad: 0.0, stiffness };
                let first =
                    highest.first().map(|of_first| (of_first, &looked[state * bench.runs.len() + place].highest));
                if first.is_some_and(|(of_first, levels)| near(levels, of_first, AT_OTHERS) == 0) {
                    continue;
                }
                let mut one = sweep.look(bench, start);
                of_stiffness.raise_all(&one.highest);
                of_all.raise_all(&one.highest);
                if kept < KEPT_MAX && near(&one.highest, &of_all, NEAR) != 0 {
                    kept += 1;
                } else {
                    one.kept = Kept::default();
                }
                looked.push(one);
            }
        }
        highest.push(of_stiffness);
    }
    let mut peaks: Vec<Levels> = highest.iter().map(|_| Levels::new()).collect();
    for one in &looked {
        sweep.search(bench, one, near(&one.highest, &of_all, NEAR), &mut peaks[one.start.stiffness]);
    }
    if ends == Ends::Both && highest.len() > 1 {
        for one in &looked {
            let stiffness = one.start.stiffness;
            let known = near(&highest[stiffness], &of_all, NEAR);
            let wanted = near(&one.highest, &highest[stiffness], NEAR) & !known;
            sweep.search(bench, one, wanted, &mut peaks[stiffness]);
        }
        for (check, track) in sweep.tracks.iter_mut().enumerate() {
            let levels =
                || peaks.iter().filter(|levels| levels.found & only(check) != 0).map(|levels| levels.of[check]);
            track.ends = levels().reduce(f64::min).zip(levels().reduce(f64::max)).map(|(low, high)| [low, high]);
        }
    }
    sweep.tracks
}

/// The checks that reach this part of the highest of all.
fn near(levels: &Levels, highest: &Levels, part: f64) -> Set {
    let is_near = |&check: &usize| levels.of[check] >= part * highest.of[check];
    places(levels.found).filter(is_near).fold(0, |set, check| set | only(check))
}

/// The row of a direction among those that were asked.
#[inline(always)]
fn row_of(asked: &[(f64, Option<Plane>)], direction_rad: f64) -> Option<usize> {
    asked.iter().position(|(known, _)| (known - direction_rad).abs() <= SAME_RAD)
}

/// A sweep on its way.
struct Sweep {
    tracks: [Track; CHECKS],
    levels: Levels,
    quiet: Sheet,
}

impl Sweep {
    /// Asks one place, quietly; the answer is in the levels.
    fn ask(&mut self, bench: &mut Bench, place: &Place) {
        self.levels.clear();
        let mut ask = Ask { place: *place, levels: &mut self.levels, tracks: &mut self.tracks };
        bench.check(place, &mut self.quiet, &mut ask);
    }

    /// Tries one state and run in the directions of the plan.
    fn look(&mut self, bench: &mut Bench, start: Place) -> Looked {
        let tried = bench.plan_directions(start.run);
        let asked = Vec::with_capacity(tried.list_rad().len());
        let mut looked = Looked { start, tried, highest: Levels::new(), asked, kept: Kept::default() };
        for &direction_rad in looked.tried.list_rad() {
            let direction_rad = bench.mirror.asked_rad(direction_rad);
            if row_of(&looked.asked, direction_rad).is_some() {
                continue;
            }
            self.ask(bench, &Place { direction_rad, ..start });
            looked.highest.raise_all(&self.levels);
            looked.asked.push((direction_rad, bench.plane()));
            looked.kept.keep(&self.levels);
        }
        looked
    }

    /// Searches one state and run for the peaks of some checks.
    fn search(&mut self, bench: &mut Bench, looked: &Looked, wanted: Set, peaks: &mut Levels) {
        if wanted == 0 {
            return;
        }
        let checks: Vec<usize> = places(wanted).collect();
        let start = looked.start;
        let mirror = bench.mirror;
        let searched = bench.searched_directions(&start, &looked.asked);
        // What is asked from here on, so that the images of a direction need not be asked again.
        let mut further: Vec<(f64, Option<Plane>)> = Vec::new();
        let mut answers: Vec<f64> = Vec::new();
        let mut levels_at = |direction_rad: f64, values: &mut [f64]| {
            let direction_rad = mirror.asked_rad(direction_rad);
            if let (Some(row), false) = (row_of(&looked.asked, direction_rad), looked.kept.rows.is_empty()) {
                for (value, &check) in values.iter_mut().zip(&checks) {
                    *value = looked.kept.get(row, check);
                }
                return;
            }
            if let Some(row) = row_of(&further, direction_rad) {
                values.copy_from_slice(&answers[row * checks.len()..(row + 1) * checks.len()]);
                return;
            }
            self.ask(bench, &Place { direction_rad, ..start });
            for (value, &check) in values.iter_mut().zip(&checks) {
                *value = self.levels.of[check];
            }
            further.push((direction_rad, None));
            answers.extend_from_slice(values);
        };
        let mut found = alloc::vec![(f64::NEG_INFINITY, 0.0); checks.len()];
        match searched {
            Some(directions) => {
                for (found, peak) in found.iter_mut().zip(directions.peaks(checks.len(), &mut levels_at)) {
                    *found = (peak.value, peak.direction_rad);
                }
            }
            None => {
                let mut values = alloc::vec![0.0; checks.len()];
                for &direction_rad in looked.tried.list_rad() {
                    levels_at(direction_rad, &mut values);
                    for (found, &value) in found.iter_mut().zip(&values) {
                        if value > found.0 {
                            *found = (value, direction_rad);
                        }
                    }
                }
            }
        }
        for (&check, (utilisation, direction_rad)) in checks.iter().zip(found) {
            if utilisation == f64::NEG_INFINITY {
                continue;
            }
            peaks.raise(check, utilisation);
            // Told at the very direction that was asked, to the last bit.
            let asked_rad = mirror.asked_rad(direction_rad);
            let known = |rows: &[(f64, Option<Plane>)]| row_of(rows, asked_rad).map(|row| rows[row].0);
            let kept = if looked.kept.rows.is_empty() { None } else { known(&looked.asked) };
            let direction_rad = kept.or_else(|| known(&further)).unwrap_or(asked_rad);
            let track = &mut self.tracks[check];
            if track.peak.is_none_or(|known| utilisation > known.utilisation) {
                track.peak = Some(Peak { utilisation, place: Place { direction_rad, ..start } });
            }
        }
    }
}
