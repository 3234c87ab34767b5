//! What the drawings are made of: results as they came out, in the cabinet's own millimetres and newtons.

use alloc::vec::Vec;

use crate::calc::CheckId;
use crate::geometry::{Edge, Point, Polygon, Rectangle};

/// Everything that plan and elevation show: one state, one load case, one direction of the push.
///
/// Units: mm in the cabinet's axes (x right, y rear, z up from the floor), N, kg, MPa, rad.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// The cabinet's outline.
    pub cabinet: Cabinet,
    /// The feet, in the order of the file.
    pub feet: Vec<Foot>,
    /// The anchors, in the order of the file.
    pub anchors: Vec<Anchor>,
    /// The slab's edges in cabinet coordinates; a side that is far away is infinite.
    pub slab: Rectangle,
    /// Openings in the slab.
    pub openings: Vec<Rectangle>,
    /// Anchors of the neighbouring cabinets.
    pub neighbours: Vec<Point>,
    /// The outlines of the concrete that would break out.
    pub breakouts: Vec<Polygon>,
    /// What the cabinet carries in this state, in the order of the file.
    pub contents: Vec<Contents>,
    /// The centre of gravity.
    pub centre_mm: [f64; 3],
    /// The push and the weight.
    pub push: Push,
    /// The edge about which it turns or would turn, where there is one to show.
    pub pivot: Option<Edge>,
    /// How it ends.
    pub ending: Ending,
}

/// The outer sizes of the cabinet, its base centred on the origin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cabinet {
    /// Along x.
    pub width_mm: f64,
    /// Along y.
    pub depth_mm: f64,
    /// Along z, from the floor.
    pub height_mm: f64,
}

/// A foot and what it feels.
#[derive(Clone, Debug, PartialEq)]
pub struct Foot {
    /// Its contact area.
    pub outline: Rectangle,
    /// The part of it that is pressed.
    pub pressed: Vec<Polygon>,
    /// The force under it; none where there is no answer.
    pub force_n: Option<f64>,
    /// The largest pressure under it; none where it has no area or there is no answer.
    pub peak_mpa: Option<f64>,
    /// Which working it opens.
    pub at: Option<u16>,
}

/// An anchor and what it feels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Anchor {
    /// Where it stands.
    pub place: Point,
    /// The pull in it; none where there is no answer.
    pub tension_n: Option<f64>,
    /// The shear that the cabinet puts on it, along x and y.
    pub shear_n: [f64; 2],
    /// Which working it opens.
    pub at: Option<u16>,
}

/// One thing in the cabinet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contents {
    /// Its mass.
    pub mass_kg: f64,
    /// The centre of its footprint with drawers in.
    pub centre: Point,
    /// Along x, y and z.
    pub size_mm: [f64; 3],
    /// Its underside above the floor.
    pub bottom_mm: f64,
    /// How far it is drawn out towards the front.
    pub drawn_out_mm: f64,
}

/// The forces at the centre of gravity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Push {
    /// The way the inertia force acts on the cabinet, from +x towards +y.
    pub direction_rad: f64,
    /// Its size.
    pub force_n: f64,
    /// Its size over the weight.
    pub acceleration_g: f64,
    /// The vertical load, downwards positive.
    pub down_n: f64,
}

/// How the cabinet ends under the load.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// It finds its balance.
    Settles,
    /// It tips about the pivot, or as a whole where no pivot is given.
    Tips,
    /// It is on the point of tipping, and there are no reactions to give.
    OnThePoint,
}

/// What the rose shows: for every direction of the push, how much of the governing check is used.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RoseScene {
    /// The directions, in any order.
    pub points: Vec<RosePoint>,
    /// The place in `points` of the one that governs.
    pub governing: Option<usize>,
}

/// One direction of the push.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RosePoint {
    /// The direction.
    pub direction_rad: f64,
    /// Demand over capacity; not finite where there is no balance at all.
    pub utilisation: f64,
    /// Which check it is.
    pub check: CheckId,
    /// Which working it opens.
    pub at: Option<u16>,
}

impl Cabinet {
    /// The outline in the plan.
    pub fn outline(&self) -> Rectangle {
        Rectangle {
            left_mm: -self.width_mm / 2.0,
            right_mm: self.width_mm / 2.0,
            front_mm: -self.depth_mm / 2.0,
            rear_mm: self.depth_mm / 2.0,
        }
    }
}

impl Contents {
    /// The footprint where it stands now, drawn out or not.
    pub fn footprint(&self) -> Rectangle {
        let y_mm = self.centre.y_mm - self.drawn_out_mm;
        Rectangle {
            left_mm: self.centre.x_mm - self.size_mm[0] / 2.0,
            right_mm: self.centre.x_mm + self.size_mm[0] / 2.0,
            front_mm: y_mm - self.size_mm[1] / 2.0,
            rear_mm: y_mm + self.size_mm[1] / 2.0,
        }
    }

    /// Its upper side above the floor.
    pub fn top_mm(&self) -> f64 {
        self.bottom_mm + self.size_mm[2]
    }
}

impl Anchor {
    /// The size of the shear.
    pub fn shear_size_n(&self) -> f64 {
        crate::calc::number::hypot(self.shear_n[0], self.shear_n[1])
    }
}
