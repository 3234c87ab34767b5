use alloc::string::String;
use alloc::vec::Vec;

use super::of::Of;
use crate::calc::number::round;

/// A drawing as a list of marks, to be drawn in this order.
///
/// Units: px of the width that was asked for, x to the right, y downwards from the upper left corner.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct Drawing {
    /// Which drawing it is: `plan`, `elevation` or `rose`.
    pub view: &'static str,
    /// Width in px.
    pub width: f64,
    /// Height in px.
    pub height: f64,
    /// How many millimetres one px is worth; zero in the rose, which has no scale.
    pub mm_per_px: f64,
    /// What it shows, in words, for those who do not see it.
    pub title: String,
    /// The marks.
    pub marks: Vec<Mark>,
}

/// One thing that is drawn: a shape of a class, or a text.
#[derive(Clone, Debug, PartialEq, serde::Serialize)]
pub struct Mark {
    /// What it is, in the words of the stylesheet.
    pub class: &'static str,
    /// How the points are to be joined.
    pub shape: Shape,
    /// Places in px.
    pub points: Vec<[f64; 2]>,
    /// Radius of a circle in px.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub radius: Option<f64>,
    /// The text; its point is the baseline's start, middle or end.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub text: String,
    /// Where the point of a text is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub anchor: Option<Anchor>,
    /// Degrees by which a text is turned about its point, clockwise; -90 reads upwards.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turn: Option<f64>,
    /// How dark it is filled, from 0 to 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tone: Option<f64>,
    /// What of the cabinet it stands for; written as `foot 1`, `anchor 3`, `edge left`.
    #[serde(skip_serializing_if = "Of::is_nothing")]
    pub of: Of,
    /// Which working it opens: the number that came with the scene.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at: Option<u16>,
    /// The direction of the push that a point of the rose stands for, in degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub direction_deg: Option<f64>,
    /// The utilisation that a point of the rose stands for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub utilisation: Option<f64>,
}

/// How the points of a mark are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Shape {
    /// Round the points and back.
    Polygon,
    /// From the first point to the last.
    Polyline,
    /// Between two points.
    Line,
    /// Between the first and the second, the third and the fourth, and so on.
    Lines,
    /// Around one point.
    Circle,
    /// A text at one point.
    Text,
}

/// Where the point of a text is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Anchor {
    /// Where it begins.
    Start,
    /// In its middle.
    Middle,
    /// Where it ends.
    End,
}

impl Mark {
    /// A shape without text.
    // One copy of it: the code for the browser is weighed.
    #[inline(never)]
    pub fn new(class: &'static str, shape: Shape, points: &[[f64; 2]]) -> Mark {
        Mark {
            class,
            shape,
            points: points.iter().map(|&[x, y]| [hundredth(x), hundredth(y)]).collect(),
            radius: None,
            text: String::new(),
            anchor: None,
            turn: None,
            tone: None,
            of: Of::Nothing,
            at: None,
            direction_deg: None,
            utilisation: None,
        }
    }
}

/// A coordinate to the hundredth of a px, which is finer than any screen and short to write.
pub fn hundredth(x: f64) -> f64 {
    round(x * 100.0) / 100.0
}
