//! A plot as data: axes, curves, points, levels, and a field of values with its contours. Painted by `drawing::plot`.

use alloc::string::String;
use alloc::vec::Vec;

use crate::calc::{CheckId, Kind, StepId};

/// A plot. All numbers are in SI.
#[derive(Clone, PartialEq, Debug)]
pub struct Plot {
    /// Row of its name.
    pub name: StepId,
    /// What is laid off to the right.
    pub x: Axis,
    /// What is laid off upwards.
    pub y: Axis,
    /// Lines.
    pub curves: Vec<Curve>,
    /// Single points.
    pub points: Vec<PlotPoint>,
    /// Levels across the whole plot.
    pub levels: Vec<PlotLevel>,
    /// A value over the whole plot.
    pub grid: Option<Grid>,
}

/// An axis.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Axis {
    /// Row of its name.
    pub name: StepId,
    /// What it measures.
    pub kind: Kind,
    /// How it is divided.
    pub scale: AxisScale,
    /// Where it begins and ends; fitted to what is shown where it is not said.
    pub ends: Option<[f64; 2]>,
}

/// How an axis is divided.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum AxisScale {
    /// Evenly.
    Linear,
    /// By equal ratios; what is not above zero is not shown.
    Log,
}

/// A line through points, in their order. A point that is not finite breaks it.
#[derive(Clone, PartialEq, Debug)]
pub struct Curve {
    /// What is written at it.
    pub name: PlotName,
    /// Its points.
    pub points: Vec<[f64; 2]>,
    /// How it is drawn.
    pub stroke: Stroke,
}

/// How a line is drawn, so that lines are told apart without colour.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stroke {
    /// The line that the plot is about.
    Strong,
    /// Others.
    Plain,
    /// Others again.
    Dashed,
    /// And others.
    Dotted,
}

/// A point.
#[derive(Clone, PartialEq, Debug)]
pub struct PlotPoint {
    /// What is written at it.
    pub name: PlotName,
    /// Where it lies.
    pub at: [f64; 2],
    /// Whether it is the reader's own.
    pub is_present: bool,
}

/// A level of y.
#[derive(Clone, PartialEq, Debug)]
pub struct PlotLevel {
    /// What is written at it.
    pub name: PlotName,
    /// The level.
    pub y: f64,
}

/// A value for every pair of an x and a y, with the check that governs there.
#[derive(Clone, PartialEq, Debug)]
pub struct Grid {
    /// Rising places on the x axis.
    pub x: Vec<f64>,
    /// Rising places on the y axis.
    pub y: Vec<f64>,
    /// Values, the rows of y one after the other; NaN where there is none.
    pub values: Vec<f64>,
    /// What governs, in the same order; empty where nothing is named.
    pub checks: Vec<Option<CheckId>>,
    /// Levels at which contours are drawn; beyond the first the field is hatched.
    pub contours: Vec<f64>,
    /// Places where there is a reason instead of a value, each kind hatched in a way of its own; at most two kinds.
    pub blanks: Vec<Blank>,
}

/// Places of a field that have no value, for one reason.
#[derive(Clone, PartialEq, Debug)]
pub struct Blank {
    /// Row of what is written there.
    pub name: StepId,
    /// Whether each place of the field is one of them, in the order of its values.
    pub cells: Vec<bool>,
}

/// What is written at a line or a point.
#[derive(Clone, PartialEq, Debug)]
pub enum PlotName {
    /// Nothing.
    None,
    /// Words of a text table.
    Row(StepId),
    /// Words of the reader, or of a published table.
    Text(String),
    /// An input by its path; `[*]` stands for every item of a list.
    Input(String),
    /// The short name of a check.
    Check(CheckId),
}
