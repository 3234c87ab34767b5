//! The frame: everything of the cabinet that is never taken out.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

/// Mass and centre of the frame. For its inertia it counts as a uniform box of the cabinet's size about its centre.
#[derive(Clone, PartialEq, Debug)]
pub struct Frame {
    /// Its mass.
    pub mass_kg: f64,
    /// Its centre of gravity: x, y, z.
    pub centre_mm: [f64; 3],
}

fields! {
    MASS "mass_kg" Number { kind: Kind::Mass, min: 0.001, max: 1_000_000.0 }, Fault,
        "Mass of the frame",
        "The cabinet without its contents: frame, doors, panels, cabling and everything that always stays in.", "", [];
    CENTRE "centre_mm" Numbers { kind: Kind::Length, count: 3, min: -20_000.0, max: 20_000.0 }, Fault,
        "Centre of gravity of the frame",
        "To the right and to the rear of the middle of the base, and above the floor. It lies inside the cabinet.", "", [];
}
