//! The cabinet: its size, its frame, what it stands on, what holds it down, what it is lifted by.

pub mod anchor;
pub mod foot;
pub mod frame;
pub mod lifting_point;

use alloc::vec::Vec;

pub use anchor::Anchor;
pub use foot::{Foot, Stem};
pub use frame::Frame;
pub use lifting_point::LiftingPoint;

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

/// A cabinet. Positions in mm: x to the right, y to the rear, z up, from the centre of the base on the floor.
#[derive(Clone, PartialEq, Debug)]
pub struct Cabinet {
    /// Along x.
    pub width_mm: f64,
    /// Along y.
    pub depth_mm: f64,
    /// From the floor to the top.
    pub height_mm: f64,
    /// The frame with everything that is never taken out.
    pub frame: Frame,
    /// What it stands on; none is an input whose outcome is that it tips.
    pub feet: Vec<Foot>,
    /// What holds it down; none means that it stands free.
    pub anchors: Vec<Anchor>,
    /// What it is lifted by.
    pub lifting_points: Vec<LiftingPoint>,
}

/// Most feet of a cabinet.
pub const FEET_MAX: usize = 64;
/// Most anchors of a cabinet.
pub const ANCHORS_MAX: usize = 64;
/// Most lifting points of a cabinet.
pub const LIFTING_POINTS_MAX: usize = 16;

fields! {
    WIDTH "width_mm" Number { kind: Kind::Length, min: 10.0, max: 20_000.0 }, Fault,
        "Width", "From the left to the right side, as seen by a person in front of the cabinet.", "", [];
    DEPTH "depth_mm" Number { kind: Kind::Length, min: 10.0, max: 20_000.0 }, Fault,
        "Depth", "From the front to the rear.", "", [];
    HEIGHT "height_mm" Number { kind: Kind::Length, min: 10.0, max: 20_000.0 }, Fault,
        "Height", "From the floor to the top of the frame, feet included.", "", [];
}
