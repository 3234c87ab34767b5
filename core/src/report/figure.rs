//! A figure as data: lines, outlines, arrows, labels and dimensions in millimetres. Painted to scale by `drawing::figure`.

use alloc::vec::Vec;

use super::plot::PlotName;
use crate::calc::{Kind, StepId};

/// A figure to scale. Units: mm, x to the right, y upwards.
#[derive(Clone, PartialEq, Debug)]
pub struct Figure {
    /// Row of its name.
    pub name: StepId,
    /// What it shows, the first lowest.
    pub parts: Vec<FigurePart>,
}

/// One thing of a figure. A class is a word of the stylesheet: `cabinet`, `content`, `concrete`, `ground`, `steel`,
/// `foot`, `anchor`, `hatched`, `hole`, `force`, `centre`, `thin`, `strong`, `dashed`, `axis`.
#[derive(Clone, PartialEq, Debug)]
pub enum FigurePart {
    /// A closed outline.
    Outline {
        /// Its class.
        class: &'static str,
        /// Its corners.
        corners_mm: Vec<[f64; 2]>,
    },
    /// A straight line.
    Line {
        /// Its class.
        class: &'static str,
        /// Its ends.
        ends_mm: [[f64; 2]; 2],
    },
    /// A line through points.
    Path {
        /// Its class.
        class: &'static str,
        /// Its points.
        points_mm: Vec<[f64; 2]>,
    },
    /// A circle.
    Circle {
        /// Its class.
        class: &'static str,
        /// Its middle.
        middle_mm: [f64; 2],
        /// Its radius.
        radius_mm: f64,
    },
    /// An arrow, with words at its beginning.
    Arrow {
        /// Its class.
        class: &'static str,
        /// Where it begins.
        from_mm: [f64; 2],
        /// Where its point is.
        to_mm: [f64; 2],
        /// What it is.
        name: PlotName,
        /// How large it is.
        value: Option<(f64, Kind)>,
    },
    /// Words near a place, with a number if there is one.
    Label {
        /// The place.
        at_mm: [f64; 2],
        /// The words.
        name: PlotName,
        /// The number, rounded to the nearest.
        value: Option<(f64, Kind)>,
    },
    /// A dimension line beside two points, lettered with their distance along the axis in which they are farther apart.
    Dimension {
        /// From here,
        from_mm: [f64; 2],
        /// to here.
        to_mm: [f64; 2],
        /// How far the line stands off: to the right of an upright one and above a level one where positive.
        offset_px: f64,
    },
}
