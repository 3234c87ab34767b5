//! Lines beyond which the concrete belongs to somebody unknown, who may pull on it too.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    LEFT "left" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Boundary on the left", "From the middle of the cabinet's base to the line. Empty is none.", "", [];
    RIGHT "right" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Boundary on the right", "From the middle of the cabinet's base to the line. Empty is none.", "", [];
    FRONT "front" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Boundary in front", "From the middle of the cabinet's base to the line. Empty is none.", "", [];
    REAR "rear" Number { kind: Kind::Length, min: 0.0, max: 1_000_000.0 }, Unknown,
        "Boundary at the rear", "From the middle of the cabinet's base to the line. Empty is none.", "", [];
}
