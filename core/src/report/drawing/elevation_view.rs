use super::patch::Patch;
use super::scale::{ELEVATION_LEFT_PX, ELEVATION_RIGHT_PX, Scale};
use super::scene::{Contents, Scene};
use crate::calc::number::{cos, sin};
use crate::geometry::{Point, Rectangle};

/// Room above for the caption, px.
const TOP_PX: f64 = 24.0;
/// A low cabinet still has this much room above the floor, for the numbers beside it, px.
const ABOVE_LEAST_PX: f64 = 96.0;

/// How places become px in the elevation.
#[derive(Clone, Copy, Debug)]
pub struct ElevationView {
    /// Level of the floor.
    pub ground: f64,
    middle: f64,
    middle_mm: f64,
    way: [f64; 2],
    px_per_mm: f64,
}

impl ElevationView {
    /// The view of a scene at its scale.
    pub fn new(scene: &Scene, scale: &Scale) -> ElevationView {
        let way = [cos(scene.push.direction_rad), sin(scene.push.direction_rad)];
        ElevationView {
            ground: TOP_PX + (scale.top_mm * scale.px_per_mm).max(ABOVE_LEAST_PX),
            middle: (ELEVATION_LEFT_PX + scale.width_px - ELEVATION_RIGHT_PX) / 2.0,
            middle_mm: scale.middle.x_mm * way[0] + scale.middle.y_mm * way[1],
            way,
            px_per_mm: scale.px_per_mm,
        }
    }

    /// px across of a place in the plan.
    pub fn along(&self, point: Point) -> f64 {
        let along_mm = point.x_mm * self.way[0] + point.y_mm * self.way[1];
        self.middle + (along_mm - self.middle_mm) * self.px_per_mm
    }

    /// px down of a height above the floor.
    pub fn height(&self, height_mm: f64) -> f64 {
        self.ground - height_mm * self.px_per_mm
    }

    /// From where to where these places of the plan reach, px across.
    pub fn span(&self, corners: &[Point]) -> (f64, f64) {
        let (mut left, mut right) = (f64::INFINITY, f64::NEG_INFINITY);
        for &corner in corners {
            let x = self.along(corner);
            (left, right) = (left.min(x), right.max(x));
        }
        (left, right)
    }

    /// The patch of a thing in the cabinet.
    pub fn box_patch(&self, one: &Contents) -> Patch {
        let (left, right) = self.span(&one.footprint().corners());
        Patch { left, top: self.height(one.top_mm()), right, bottom: self.height(one.bottom_mm) }
    }

    /// How far the middle of a rectangle lies behind the plane of the push.
    pub fn depth(&self, rectangle: Rectangle) -> f64 {
        let (x, y) = (rectangle.left_mm + rectangle.right_mm, rectangle.front_mm + rectangle.rear_mm);
        y * self.way[0] - x * self.way[1]
    }

    /// The patch of the cabinet's outline.
    pub fn cabinet_patch(&self, scene: &Scene) -> Patch {
        let (left, right) = self.span(&scene.cabinet.outline().corners());
        Patch { left, top: self.height(scene.cabinet.height_mm), right, bottom: self.ground }
    }
}
