//! A foot: a levelling foot, a caster or a wide base support.

use alloc::string::String;

use crate::calc::Kind;
use crate::fields;
use crate::geometry::{Point, Rectangle, Size};
use crate::input::field::{Absent::*, FieldShape::*};

/// A foot pushes back where it is pressed and never pulls.
#[derive(Clone, PartialEq, Debug)]
pub struct Foot {
    /// Its name, which no other foot has.
    pub name: String,
    /// The centre of its contact with the floor.
    pub at: Point,
    /// The sides of its contact; both zero for a foot that bears on a point.
    pub size: Size,
    /// The force that presses the whole foot down by one millimetre, where it is known.
    pub stiffness_n_per_mm: Option<f64>,
    /// The stem that carries it, where one is given.
    pub stem: Option<Stem>,
    /// Stiffness of an elastic pad or a soft tread under it, where there is one.
    pub pad_stiffness_n_per_mm: Option<f64>,
    /// How far it hangs above the floor before the cabinet settles.
    pub gap_mm: f64,
}

/// The steel stem of a levelling foot.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Stem {
    /// Its diameter, at the thread's root.
    pub diameter_mm: f64,
    /// Its free length.
    pub length_mm: f64,
}

impl Foot {
    /// What it covers of the floor.
    pub fn rectangle(&self) -> Rectangle {
        Rectangle::around(self.at, Size::new(self.size.x_mm / 2.0, self.size.y_mm / 2.0))
    }
}

fields! {
    NAME "name" Name, Fault,
        "Name", "What it is called on drawings and sheets, such as \u{201c}front left\u{201d}.", "", [];
    AT "at_mm" Numbers { kind: Kind::Length, count: 2, min: -30_000.0, max: 30_000.0 }, Fault,
        "Position", "The middle of its contact with the floor: to the right and to the rear of the middle of the base.", "", [];
    SIZE "size_mm" Numbers { kind: Kind::Length, count: 2, min: 0.0, max: 10_000.0 }, Fault,
        "Size of contact",
        "Width and depth of what touches the floor. Both zero for a foot that bears on a point; then its stiffness is needed and bearing on concrete is not covered.",
        "", [];
    STIFFNESS "stiffness_n_per_mm" Number { kind: Kind::Stiffness, min: 1.0, max: 1e9 }, Unknown,
        "Stiffness",
        "The force that presses the foot down by a millimetre, from a test or its maker. Left empty, it follows from the concrete under the foot and from its stem, and the result is given as a span.",
        "", [];
    STEM_DIAMETER "stem_diameter_mm" Number { kind: Kind::Length, min: 1.0, max: 1_000.0 }, Unknown,
        "Diameter of the stem", "Of the steel rod of a levelling foot, at the root of its thread. Only together with the length.", "", [];
    STEM_LENGTH "stem_length_mm" Number { kind: Kind::Length, min: 1.0, max: 5_000.0 }, Unknown,
        "Free length of the stem", "From the plate of the foot to the nut in the frame. Only together with the diameter.", "", [];
    PAD_STIFFNESS "pad_stiffness_n_per_mm" Number { kind: Kind::Stiffness, min: 1.0, max: 1e9 }, Unknown,
        "Stiffness of its pad or tread", "Of an elastic pad or the soft tread of a caster, from its maker's curve. It comes in series with concrete and stem.", "", [];
    GAP "gap_mm" Number { kind: Kind::Length, min: 0.0, max: 100.0 }, Is(0.0),
        "Gap under it", "How far the foot hangs above the floor before the cabinet settles: a short foot, or a hollow in the floor. Shimming makes it 0.", "", [];
}
