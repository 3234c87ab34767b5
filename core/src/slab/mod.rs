//! The slab: the concrete under the cabinet and what lies on it.

pub mod boundary;
pub mod edge;
pub mod opening;

use alloc::vec::Vec;

use crate::calc::{Kind, number};
use crate::fields;
use crate::geometry::{Point, Rectangle};
use crate::input::field::{Absent::*, FieldShape::*};

/// The concrete that the cabinet stands on and is anchored in.
#[derive(Clone, PartialEq, Debug)]
pub struct Slab {
    /// Specified compressive strength of cylinders.
    pub strength_mpa: f64,
    /// Thickness.
    pub thickness_mm: f64,
    /// Its outline in the plan of the cabinet; infinite where an edge is far.
    pub outline: Rectangle,
    /// Lines beyond which the concrete belongs to somebody unknown; infinite where there is none.
    pub boundary: Rectangle,
    /// Openings in it.
    pub openings: Vec<Rectangle>,
    /// Whether it may be cracked where the anchors are.
    pub is_cracked: bool,
    /// Friction between the feet and the floor, for sliding of a cabinet that is not bolted down.
    pub friction: f64,
}

impl Slab {
    /// The same slab moved in the plan of the cabinet, with everything that lies in it.
    pub fn shifted(&self, by: Point) -> Slab {
        Slab {
            outline: self.outline.shifted(by),
            boundary: self.boundary.shifted(by),
            openings: self.openings.iter().map(|opening| opening.shifted(by)).collect(),
            ..self.clone()
        }
    }

    /// From the sides of a foot to the edges of the slab, or to an opening that lies on that side: left, right, front, rear.
    pub fn room_mm(&self, foot: &Rectangle) -> [f64; 4] {
        let outline = &self.outline;
        let mut room = [
            foot.left_mm - outline.left_mm,
            outline.right_mm - foot.right_mm,
            foot.front_mm - outline.front_mm,
            outline.rear_mm - foot.rear_mm,
        ];
        for opening in &self.openings {
            let gaps = [
                foot.left_mm - opening.right_mm,
                opening.left_mm - foot.right_mm,
                foot.front_mm - opening.rear_mm,
                opening.front_mm - foot.rear_mm,
            ];
            // An opening lies on the side where it is farthest away.
            let side = (0..4).fold(0, |best, side| if gaps[side] > gaps[best] { side } else { best });
            room[side] = room[side].min(gaps[side].max(0.0));
        }
        room.map(number::positive_part)
    }

    /// Whether there is concrete at a place: within the outline and in no opening.
    pub fn is_under(&self, at: Point) -> bool {
        self.outline.contains(at) && !self.openings.iter().any(|opening| opening.contains(at))
    }

    /// Whether there is concrete under the whole of a rectangle.
    pub fn is_under_all(&self, of: &Rectangle) -> bool {
        let [low, _, high, _] = of.corners();
        let is_open = |opening: &Rectangle| of.clipped(opening).is_some() || opening.contains(low);
        self.outline.contains(low) && self.outline.contains(high) && !self.openings.iter().any(is_open)
    }
}

/// Friction taken where none is given; common practice, no source.
pub const FRICTION_DEFAULT: f64 = 0.2;

fields! {
    STRENGTH "strength_mpa" Number { kind: Kind::Stress, min: 5.0, max: 200.0 }, Fault,
        "Strength of the concrete",
        "Specified compressive strength of cylinders, from the drawings of the building. An old slab of unknown strength needs a test.", "", [];
    THICKNESS "thickness_mm" Number { kind: Kind::Length, min: 20.0, max: 20_000.0 }, Fault,
        "Thickness of the slab", "Of the structural concrete, without screed, tiles or a raised floor.", "", [];
    CRACKED "cracked" Flag, Set(true),
        "Concrete may crack", "A slab that bends or shrinks cracks; uncracked needs an analysis that shows it.", "", [];
    FRICTION "friction" Number { kind: Kind::Number, min: 0.0, max: 2.0 }, Is(FRICTION_DEFAULT),
        "Friction between feet and floor",
        "Decides when a cabinet that is not bolted down slides. 0.2 is common practice without a source; a pull test on the real floor is better. On casters that are not locked a base rolls: 0.01 to 0.03, from memory. It never carries the shear of bolts.",
        "common practice", [];
}
