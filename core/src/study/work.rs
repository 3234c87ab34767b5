//! A study that takes long: done in portions, so that whoever asks can show how far it is, and stop.

use alloc::boxed::Box;

use super::{Shown, fragility, how_far, not_known, reorder, what_matters, zone_statement};
use crate::calc::StepId;
use crate::project::Project;

/// A study under way.
pub trait Work {
    /// Does one portion; false when nothing is left to do.
    fn advance(&mut self) -> bool;
    /// Portions done, of how many.
    fn progress(&self) -> (usize, usize);
    /// What is found so far.
    fn shown(&self) -> Shown;
}

/// Begins a study in portions.
pub type Begin = fn(&Project, &str) -> Result<Box<dyn Work>, StepId>;

/// Ids of the studies that are done in portions, with how they begin.
pub static IN_PORTIONS: &[(&str, Begin)] = &[
    ("not-known", not_known::begin),
    ("what-matters", what_matters::begin),
    ("what-to-move-down", reorder::begin),
    ("fragility", fragility::begin),
    ("how-far", how_far::begin),
    ("zone-statement", zone_statement::begin),
];

/// How a study is begun in portions; none where it is done at once.
pub fn begin_of(id: &str) -> Option<Begin> {
    IN_PORTIONS.iter().find(|(known, _)| *known == id).map(|(_, begin)| *begin)
}
