//! A neighbour: the same cabinet standing again at some distance, bolted into the same concrete.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

/// Most neighbours of a cabinet.
pub const NEIGHBOURS_MAX: usize = 8;

fields! {
    NAME "name" Name, Fault,
        "Name", "What the neighbour is called; no other neighbour has it.", "", [];
    AT "at_mm" Numbers { kind: Kind::Length, count: 2, min: -100_000.0, max: 100_000.0 }, Fault,
        "Position", "The middle of the neighbour's base: to the right and to the rear of the middle of this one's.", "", [];
}
