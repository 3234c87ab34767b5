//! What would hold instead: the smallest changes of bolt, embedment, edge distance, concrete and number of bolts with
//! which every required check holds, and what governs then.
//!
//! A grid of variants is tried, small ones first. One that is nowhere smaller than another that holds is passed over: it
//! cannot be one of the smallest. So every variant that is told to hold was swept as a whole, and every variant that is
//! smaller in one step and the same in all others was found not to hold, by a sweep or by a place where it plainly fails.
//! No assumption is made that more of anything always helps: deeper anchors near three edges, or thicker ones at a small
//! spacing, can be worse.

use alloc::vec::Vec;

use super::ladder::{CHANGES, Change, Ladder, Rungs, ladders, varied};
use super::trial::{Trial, Trials};
use crate::project::{Project, as_planned, built_in};
use crate::report::outcome::Verdict;

/// The search on its way. Ask [`WhatWouldHold::next`] until it says that nothing is left.
pub struct WhatWouldHold {
    project: Project,
    /// The values of each change.
    pub ladders: [Ladder; 5],
    /// What each variant tried came to, by its number in the grid.
    results: Vec<Option<Trial>>,
    plan: Vec<(Rungs, Errand)>,
    done: usize,
    /// The smallest that hold.
    frontier: Vec<Rungs>,
    trials: Trials,
    /// Variants tried so far.
    pub tried: usize,
}

/// Why a variant is tried.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Errand {
    /// One change alone; every rung is tried.
    Alone,
    /// A column of a plot, from its least embedment upwards until one holds.
    Column,
    /// The frontier over all changes.
    Frontier,
}

/// One variant as it came out.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Entry {
    /// Its rungs.
    pub rungs: Rungs,
    /// What it came to.
    pub trial: Trial,
}

/// Why there is nothing to search.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Refusal {
    /// No slab, no anchorage or no anchors.
    NoAnchorage,
    /// No demand: nothing is pushed.
    NoDemand,
}

const EMBEDMENT: usize = 1;

impl WhatWouldHold {
    /// Prepares the search about a project.
    pub fn new(project: &Project) -> Result<WhatWouldHold, Refusal> {
        project.site.as_ref().ok_or(Refusal::NoDemand)?;
        // What was drilled already is another question.
        let project = as_planned(project);
        let mut trials = Trials::new();
        let now = trials.attempt(&project);
        let ladders = ladders(&project, now.verdict).ok_or(Refusal::NoAnchorage)?;
        let count = ladders.iter().map(|ladder| ladder.rungs.len()).product();
        let plan = plan(&ladders);
        let results = alloc::vec![None; count];
        let frontier = Vec::new();
        Ok(WhatWouldHold { project, ladders, results, plan, done: 0, frontier, trials, tried: 0 })
    }

    /// Tries up to `budget` further variants; true while some are left.
    pub fn next(&mut self, budget: usize) -> bool {
        let until = self.tried + budget;
        while self.done < self.plan.len() && self.tried < until {
            let (rungs, errand) = self.plan[self.done];
            self.done += 1;
            match errand {
                Errand::Alone => {
                    self.result(rungs);
                }
                Errand::Column if self.column_holds_below(rungs) => {}
                Errand::Column => {
                    self.result(rungs);
                }
                Errand::Frontier if self.frontier.iter().any(|known| covers(&rungs, known)) => {}
                Errand::Frontier => {
                    if self.result(rungs).verdict == Verdict::Holds {
                        self.frontier.push(rungs);
                    }
                }
            }
        }
        self.done < self.plan.len()
    }

    /// All at once.
    pub fn finish(&mut self) {
        while self.next(usize::MAX / 2) {}
    }

    /// Variants of the grid.
    pub fn count(&self) -> usize {
        self.results.len()
    }

    /// Whole sweeps so far.
    pub fn sweeps(&self) -> usize {
        self.trials.sweeps
    }

    /// The rungs of the project as it is.
    pub fn now(&self) -> Rungs {
        core::array::from_fn(|change| self.ladders[change].now as u8)
    }

    /// The smallest that hold, those that change least first.
    pub fn frontier(&self) -> Vec<Entry> {
        let mut entries: Vec<Entry> = self.frontier.iter().filter_map(|&rungs| self.entry(rungs)).collect();
        crate::calc::order::put_in_order(&mut entries, |a, b| self.far(a.rungs).cmp(&self.far(b.rungs)));
        entries
    }

    /// With one change alone, the smallest value that holds; none where no value tried does.
    pub fn alone(&self, change: Change) -> Option<Entry> {
        let place = CHANGES.iter().position(|&known| known == change)?;
        self.ladder(place).filter_map(|rungs| self.entry(rungs)).find(|entry| entry.trial.verdict == Verdict::Holds)
    }

    /// What one change alone comes to at each of its values.
    pub fn along(&self, change: usize) -> Vec<Entry> {
        self.ladder(change).filter_map(|rungs| self.entry(rungs)).collect()
    }

    /// The least embedment that holds in the column of a variant; none where none of those tried does.
    pub fn least_embedment(&self, mut rungs: Rungs) -> Option<Entry> {
        for rung in 0..self.ladders[EMBEDMENT].rungs.len() {
            rungs[EMBEDMENT] = rung as u8;
            if let Some(entry) = self.entry(rungs).filter(|entry| entry.trial.verdict == Verdict::Holds) {
                return Some(entry);
            }
        }
        None
    }

    /// What a variant came to, if it was tried.
    pub fn entry(&self, rungs: Rungs) -> Option<Entry> {
        self.results[self.number(rungs)].map(|trial| Entry { rungs, trial })
    }

    /// The project of a variant; none where it cannot be built.
    pub fn project(&self, rungs: Rungs) -> Option<Project> {
        varied(&self.project, &self.ladders, rungs)
    }

    fn ladder(&self, change: usize) -> impl Iterator<Item = Rungs> + '_ {
        (0..self.ladders[change].rungs.len()).map(move |rung| {
            let mut rungs = self.now();
            rungs[change] = rung as u8;
            rungs
        })
    }

    /// How many steps a variant lies away from the project as it is.
    fn far(&self, rungs: Rungs) -> u32 {
        rungs.iter().zip(self.now()).map(|(&rung, now)| u32::from(rung.abs_diff(now))).sum()
    }

    fn number(&self, rungs: Rungs) -> usize {
        let mut number = 0;
        for change in 0..CHANGES.len() {
            number = number * self.ladders[change].rungs.len() + rungs[change] as usize;
        }
        number
    }

    fn result(&mut self, rungs: Rungs) -> Trial {
        let number = self.number(rungs);
        if let Some(known) = self.results[number] {
            return known;
        }
        self.tried += 1;
        let trial = match self.project(rungs) {
            Some(project) => self.trials.attempt(&project),
            None => Trial { verdict: Verdict::CannotBeSaid, governs: None, utilisation: None, reason: None },
        };
        self.results[number] = Some(trial);
        trial
    }

    fn column_holds_below(&self, mut rungs: Rungs) -> bool {
        let own = rungs[EMBEDMENT];
        (0..own).any(|rung| {
            rungs[EMBEDMENT] = rung;
            self.results[self.number(rungs)].is_some_and(|trial| trial.verdict == Verdict::Holds)
        })
    }
}

/// Whether a variant is nowhere smaller than a known one.
fn covers(rungs: &Rungs, known: &Rungs) -> bool {
    rungs.iter().zip(known).all(|(rung, known)| rung >= known)
}

fn plan(ladders: &[Ladder; 5]) -> Vec<(Rungs, Errand)> {
    let now: Rungs = core::array::from_fn(|change| ladders[change].now as u8);
    let counts: [u8; 5] = core::array::from_fn(|change| ladders[change].rungs.len() as u8);
    let mut plan = Vec::new();
    for change in 0..CHANGES.len() {
        for rung in 0..counts[change] {
            let mut rungs = now;
            rungs[change] = rung;
            plan.push((rungs, Errand::Alone));
        }
    }
    // One plot over bolt and number at the present edge and concrete, one over edge and concrete with the present bolts.
    for [first, second] in PLOTTED {
        for a in 0..counts[first] {
            for b in 0..counts[second] {
                for rung in 0..counts[EMBEDMENT] {
                    let mut rungs = now;
                    (rungs[first], rungs[second], rungs[EMBEDMENT]) = (a, b, rung);
                    plan.push((rungs, Errand::Column));
                }
            }
        }
    }
    let steps: u32 = counts.iter().map(|&count| u32::from(count) - 1).sum();
    for level in 0..=steps {
        let mut rungs: Rungs = [0; 5];
        loop {
            if rungs.iter().map(|&rung| u32::from(rung)).sum::<u32>() == level {
                plan.push((rungs, Errand::Frontier));
            }
            let Some(place) = (0..5).rev().find(|&place| rungs[place] + 1 < counts[place]) else { break };
            rungs[place] += 1;
            rungs[place + 1..].fill(0);
        }
    }
    plan
}

/// The pairs of changes that a plot of least embedments is drawn over, by their places in [`CHANGES`].
pub const PLOTTED: [[usize; 2]; 2] = [[0, 4], [2, 3]];

/// Searches about the built-in cabinet, and hashes what was found; the same on every target. The cost gate counts it.
///
/// Zero says that there was nothing to search, which a test holds to be impossible.
pub fn search_check() -> u32 {
    let Some(mut search) = built_in().and_then(|project| WhatWouldHold::new(&project).ok()) else { return 0 };
    search.finish();
    let mut hash: u32 = 0x811c_9dc5;
    let mut take =
        |bytes: &[u8]| bytes.iter().for_each(|byte| hash = (hash ^ u32::from(*byte)).wrapping_mul(0x0100_0193));
    for entry in search.frontier() {
        take(&entry.rungs);
        take(&entry.trial.utilisation.unwrap_or(f64::NAN).to_bits().to_le_bytes());
    }
    hash
}
