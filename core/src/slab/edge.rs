//! The edges of the slab, as distances from the middle of the cabinet's base.

use crate::calc::Kind;
use crate::fields;
use crate::geometry::Rectangle;
use crate::input::field::{Absent::*, FieldShape::*, Values};

/// The outline of a slab with these edges; infinite where an edge is far.
pub fn outline(edges: &Values) -> Rectangle {
    let distance_mm = |edge| edges.number(edge).unwrap_or(f64::INFINITY);
    Rectangle {
        left_mm: -distance_mm(LEFT),
        right_mm: distance_mm(RIGHT),
        front_mm: -distance_mm(FRONT),
        rear_mm: distance_mm(REAR),
    }
}

fields! {
    LEFT "left" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Edge on the left", "From the middle of the cabinet's base to the edge of the slab, a joint or an opening. Empty is far.", "", [];
    RIGHT "right" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Edge on the right", "From the middle of the cabinet's base to the edge of the slab, a joint or an opening. Empty is far.", "", [];
    FRONT "front" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Edge in front", "From the middle of the cabinet's base to the edge of the slab, a joint or an opening. Empty is far.", "", [];
    REAR "rear" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Edge at the rear", "From the middle of the cabinet's base to the edge of the slab, a joint or an opening. Empty is far.", "", [];
}
