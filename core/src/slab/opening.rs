//! An opening in the slab: a shaft, a pit, a duct or a pipe through the concrete beside the cabinet.

use crate::calc::Kind;
use crate::fields;
use crate::geometry::{Point, Rectangle, Size};
use crate::input::field::{Absent::*, FieldShape::*, Values};

/// What an opening takes of the plan.
pub fn rectangle(opening: &Values) -> Rectangle {
    let ([x_mm, y_mm], [width_mm, depth_mm]) = (opening.pair(AT), opening.pair(SIZE));
    Rectangle::around(Point::new(x_mm, y_mm), Size::new(width_mm / 2.0, depth_mm / 2.0))
}

/// Most openings of a slab.
pub const OPENINGS_MAX: usize = 32;

fields! {
    AT "at_mm" Numbers { kind: Kind::Length, count: 2, min: -1_000_000.0, max: 1_000_000.0 }, Fault,
        "Position", "The middle of the opening: to the right and to the rear of the middle of the cabinet's base.", "", [];
    SIZE "size_mm" Numbers { kind: Kind::Length, count: 2, min: 1.0, max: 1_000_000.0 }, Fault,
        "Size", "Width and depth in plan. A round opening counts as the square about it.", "", [];
}
