//! A content: a tray, a module, a battery, anything that is put in and taken out.

use alloc::string::String;

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

/// Something that the cabinet holds, as a uniform box.
#[derive(Clone, PartialEq, Debug)]
pub struct Content {
    /// Its name, which no other content has.
    pub name: String,
    /// Its mass.
    pub mass_kg: f64,
    /// The underside of its box above the floor.
    pub bottom_mm: f64,
    /// The sides of its box along x, y, z; zero for a mass at a point.
    pub size_mm: [f64; 3],
    /// The middle of its box to the right and to the rear of the middle of the base, drawn in.
    pub offset_mm: [f64; 2],
    /// How far it is drawn out to the front where a state does not say otherwise.
    pub drawn_out_mm: f64,
    /// How far it can be drawn out at most, where that is known.
    pub travel_mm: Option<f64>,
}

impl Content {
    /// The centre of its box, drawn out to the front by so much.
    pub fn centre_mm(&self, drawn_out_mm: f64) -> [f64; 3] {
        [self.offset_mm[0], self.offset_mm[1] - drawn_out_mm, self.bottom_mm + self.size_mm[2] / 2.0]
    }
}

fields! {
    NAME "name" Name, Fault,
        "Name", "What it is called on drawings and sheets, such as \u{201c}tray 1\u{201d}.", "", [];
    MASS "mass_kg" Number { kind: Kind::Mass, min: 0.0, max: 1_000_000.0 }, Fault,
        "Mass", "With everything that it holds.", "", [];
    BOTTOM "bottom_mm" Number { kind: Kind::Length, min: 0.0, max: 20_000.0 }, Fault,
        "Underside above the floor", "From the floor to the underside of its box.", "", [];
    SIZE "size_mm" Numbers { kind: Kind::Length, count: 3, min: 0.0, max: 20_000.0 }, Fault,
        "Size", "Width, depth and height of its box, whose mass is taken as evenly spread.", "", [];
    OFFSET "offset_mm" Numbers { kind: Kind::Length, count: 2, min: -20_000.0, max: 20_000.0 }, Are(0.0),
        "Offset", "The middle of its box to the right and to the rear of the middle of the base, when it is drawn in.", "", [];
    DRAWN_OUT "drawn_out_mm" Number { kind: Kind::Length, min: 0.0, max: 20_000.0 }, Is(0.0),
        "Drawn out", "How far it stands drawn out to the front in every state that does not say otherwise.", "", [];
    TRAVEL "travel_mm" Number { kind: Kind::Length, min: 0.0, max: 20_000.0 }, Unknown,
        "Travel", "How far its slides let it be drawn out. Nothing may be drawn out further.", "", [];
}
