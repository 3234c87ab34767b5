//! A lifting point: where the cabinet hangs when it is lifted.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

/// Where a sling is fixed.
#[derive(Clone, PartialEq, Debug)]
pub struct LiftingPoint {
    /// x, y, z.
    pub at_mm: [f64; 3],
}

fields! {
    AT "at_mm" Numbers { kind: Kind::Length, count: 3, min: -30_000.0, max: 30_000.0 }, Fault,
        "Position", "Where the sling is fixed: to the right and to the rear of the middle of the base, and above the floor.", "", [];
}
