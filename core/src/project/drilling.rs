//! The holes to be drilled, as the maker of the anchor asks for them. No rule knows these numbers; they are only passed on.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*, Values};

/// What the setting-out sheet says of every hole; none of it where the maker's paper is not at hand yet.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Drilling {
    /// Diameter of the hole in the concrete.
    pub diameter_mm: Option<f64>,
    /// Its depth.
    pub depth_mm: Option<f64>,
}

impl Drilling {
    /// As it was read.
    pub fn new(values: &Values) -> Drilling {
        Drilling { diameter_mm: values.number(DIAMETER), depth_mm: values.number(DEPTH) }
    }
}

fields! {
    DIAMETER "hole_diameter_mm" Number { kind: Kind::Length, min: 5.0, max: 300.0 }, Unknown,
        "Diameter of the hole", "Of the drill bit, from the anchor's approval or its maker's instructions. Only printed on the setting-out sheet.", "", [];
    DEPTH "hole_depth_mm" Number { kind: Kind::Length, min: 20.0, max: 3500.0 }, Unknown,
        "Depth of the hole", "From the surface of the concrete, from the anchor's approval or its maker's instructions; at least the embedment. Only printed on the setting-out sheet.", "", [];
}
