//! Other ways of standing, to set beside each other: casters, levelling feet, wide bases.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

fields! {
    PAD "pad_mm" Number { kind: Kind::Length, min: 10.0, max: 1_000.0 }, Is(100.0),
        "Side of a levelling foot", "Of the square plate under each stem.", "", [];
    BASE_WIDTH "base_width_mm" Number { kind: Kind::Length, min: 20.0, max: 2_000.0 }, Is(200.0),
        "Width of a wide base", "Of the strip under each side of the cabinet.", "", [];
    CASTER_RADIUS "caster_radius_mm" Number { kind: Kind::Length, min: 5.0, max: 1_000.0 }, Is(50.0),
        "Radius of the casters", "Half their diameter, where no wheels of the way in are given.", "", [];
    CASTER_WIDTH "caster_width_mm" Number { kind: Kind::Length, min: 2.0, max: 500.0 }, Is(40.0),
        "Width of the casters", "Of their treads, where no wheels of the way in are given.", "", [];
}
