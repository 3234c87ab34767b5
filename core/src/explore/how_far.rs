//! How far each input may go by itself: the stretches of its values in which everything, or one check alone, holds.
//!
//! Values are scanned first, in even ratios over the whole reach, so that an answer that comes and goes is noticed; then
//! every change between two of them is bracketed on the true checks. Nothing is assumed about which way is worse: a
//! deeper anchor can be the one that fails.

use alloc::vec::Vec;

use super::found::{Found, Standing};
use super::knob::{KNOBS, Knob};
use super::trial::Trials;
use crate::calc::{CheckId, number};
use crate::project::Project;

/// Values that a scan tries, beside the present one.
const SCAN: usize = 24;
/// What may go down to nothing is tried down to this part of its most.
const LEAST: f64 = 1e-4;
/// A bracket is narrowed until its ends are this near, relative.
const NARROW: f64 = 5e-4;

/// The search on its way. Ask [`HowFar::next`] until it says that nothing is left.
pub struct HowFar {
    project: Project,
    of: Option<CheckId>,
    trials: Trials,
    /// What is known of each knob of the project.
    pub ranges: Vec<Ranged>,
    /// The one that is tried now.
    at: usize,
}

/// What is known of one knob.
#[derive(Clone, PartialEq, Debug)]
pub struct Ranged {
    /// The knob.
    pub knob: Knob,
    /// Its present value.
    pub now: f64,
    /// What was tried, by rising value.
    pub tried: Vec<(f64, Found)>,
    /// Values of the scan that are still to be tried, the next one last.
    ahead: Vec<f64>,
    /// Whether there is something between two of its values.
    is_even: bool,
}

/// A stretch of values in which it holds.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Stretch {
    /// Where it begins.
    pub from: Bound,
    /// Where it ends.
    pub to: Bound,
}

/// One end of a stretch.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bound {
    /// A value that holds.
    pub holds: f64,
    /// The nearest value tried beyond it, which does not, with what it came to; none at the end of what was tried.
    pub beyond: Option<(f64, Found)>,
}

impl HowFar {
    /// Prepares the search: for one check of whatever role, or for all required ones together.
    pub fn new(project: &Project, of: Option<CheckId>) -> HowFar {
        HowFar::with(project, of, KNOBS.iter().map(|&(_, knob, _)| knob))
    }

    /// The same for some knobs only.
    pub fn with(project: &Project, of: Option<CheckId>, knobs: impl Iterator<Item = Knob>) -> HowFar {
        let ranges = knobs.filter_map(|knob| Ranged::new(project, knob)).collect();
        HowFar { project: project.clone(), of, trials: Trials::new(), ranges, at: 0 }
    }

    /// Tries up to `budget` further values; true while some are left.
    pub fn next(&mut self, budget: usize) -> bool {
        for _ in 0..budget {
            let Some(ranged) = self.ranges.get_mut(self.at) else { return false };
            let Some(value) = ranged.next_value() else {
                self.at += 1;
                continue;
            };
            let found = match (ranged.knob.turned(&self.project, value), self.of) {
                (None, _) => Found::NOT_BUILT,
                // One that plainly fails where another failed before is not swept; one that holds always is.
                (Some(turned), None) => Found::from(self.trials.attempt(&turned)),
                (Some(turned), Some(check)) => Found::assess(&turned, Some(check)),
            };
            ranged.take(value, found);
        }
        self.at < self.ranges.len()
    }

    /// All at once.
    pub fn finish(&mut self) {
        while self.next(usize::MAX / 2) {}
    }

    /// Knobs done, of how many.
    pub fn progress(&self) -> (usize, usize) {
        (self.at, self.ranges.len())
    }
}

impl Ranged {
    /// The scan of a knob; none where the project has no such knob.
    fn new(project: &Project, knob: Knob) -> Option<Ranged> {
        let (now, [low, high]) = (knob.now(project)?, knob.reach(project)?);
        let (notches, low) = (knob.notches(project), low.max(LEAST * high));
        let is_even = notches.is_none();
        let ahead = match notches {
            Some(notches) => notches.iter().rev().map(|notch| notch.value).collect(),
            None => {
                let ratio = number::pow(low / high, 1.0 / (SCAN - 1) as f64);
                let mut ahead = Vec::with_capacity(SCAN + 1);
                let mut value = high;
                for step in 0..SCAN {
                    let value_now = if step + 1 == SCAN { low } else { value };
                    let last = ahead.last().copied().unwrap_or(f64::INFINITY);
                    if value_now < now && now < last {
                        ahead.push(now);
                    }
                    ahead.push(value_now);
                    value *= ratio;
                }
                ahead
            }
        };
        Some(Ranged { knob, now, tried: Vec::new(), ahead, is_even })
    }

    /// The next value of the scan, then the middle of the first bracket that is still wide.
    fn next_value(&mut self) -> Option<f64> {
        if let Some(value) = self.ahead.pop() {
            return Some(value);
        }
        let wide = self.tried.windows(2).filter(|pair| {
            let [(low, before), (high, after)] = [pair[0], pair[1]];
            let changes = (before.standing == Standing::Holds) != (after.standing == Standing::Holds);
            self.is_even && changes && high - low > NARROW * high
        });
        wide.map(|pair| pair[0].0 + (pair[1].0 - pair[0].0) / 2.0).next()
    }

    fn take(&mut self, value: f64, found: Found) {
        let place = self.tried.iter().position(|(known, _)| *known > value).unwrap_or(self.tried.len());
        self.tried.insert(place, (value, found));
    }

    /// The stretches in which it holds, rising. More than one says that the answer comes and goes.
    pub fn stretches(&self) -> Vec<Stretch> {
        let mut stretches: Vec<Stretch> = Vec::new();
        let mut before: Option<(f64, Found)> = None;
        for &(value, found) in &self.tried {
            let held = before.is_some_and(|(_, known)| known.standing == Standing::Holds);
            match (found.standing == Standing::Holds, held, stretches.last_mut()) {
                (true, true, Some(last)) => last.to.holds = value,
                (true, ..) => stretches.push(Stretch {
                    from: Bound { holds: value, beyond: before },
                    to: Bound { holds: value, beyond: None },
                }),
                (false, true, Some(last)) => last.to.beyond = Some((value, found)),
                _ => {}
            }
            before = Some((value, found));
        }
        stretches
    }
}
