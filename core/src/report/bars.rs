//! Bars as data, one under the other on one scale. Painted by `drawing::bars`.

use alloc::vec::Vec;

use super::plot::PlotName;
use crate::calc::{Kind, StepId};

/// Bars on one scale. All numbers are in SI.
#[derive(Clone, PartialEq, Debug)]
pub struct Bars {
    /// Row of their name.
    pub name: StepId,
    /// What the scale measures.
    pub kind: Kind,
    /// Where the scale begins and ends.
    pub ends: [f64; 2],
    /// The bars, the uppermost first.
    pub bars: Vec<Bar>,
    /// Upright lines across all bars, the first of them strong.
    pub levels: Vec<BarLevel>,
}

/// A bar.
#[derive(Clone, PartialEq, Debug)]
pub struct Bar {
    /// What is written above it.
    pub name: PlotName,
    /// Where it begins and ends.
    pub ends: [f64; 2],
}

/// An upright line.
#[derive(Clone, PartialEq, Debug)]
pub struct BarLevel {
    /// What is written at it, before its number.
    pub name: PlotName,
    /// Where it stands.
    pub at: f64,
    /// The number that is written, which may be rounded to one side.
    pub told: f64,
}
