use alloc::vec::Vec;

use crate::geometry::{HalfPlane, Point, Size};

/// The plane by which the body has settled, w = at_origin + slope_x x + slope_y y, positive downwards.
///
/// Units: mm, and mm per mm.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Plane {
    /// The settlement at the origin of the plan.
    pub at_origin_mm: f64,
    /// Its change with x.
    pub slope_x: f64,
    /// Its change with y.
    pub slope_y: f64,
}

/// What one foot feels.
///
/// Units: N and MPa. Under a foot without area a force has an infinite pressure, which no check lets pass.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct FootReaction {
    /// The compression.
    pub force_n: f64,
    /// The part of the foot's area that is pressed, 0 to 1.
    pub contact_fraction: f64,
    /// Half sides of the rectangle in the foot whose middle is where its force acts, in mm: the whole foot under an even
    /// pressure, less the more it leans.
    pub bearing_half: Size,
    /// The pressure at the foot's most pressed corner.
    pub peak_pressure_mpa: f64,
    /// The force over the pressed area.
    pub mean_pressure_mpa: f64,
}

/// The reactions of all supports to one load, in the order of the supports.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reactions {
    /// How the body has settled.
    pub plane: Plane,
    /// One for each foot.
    pub feet: Vec<FootReaction>,
    /// The tension of each anchor in N.
    pub anchors_n: Vec<f64>,
    /// Newton steps that were needed.
    pub steps: u32,
    /// What is left of the load in the worst of the three equations, as a part of the load's size
    /// |P| + |moments about the centre of the supports| / half their width.
    pub residual: f64,
}

impl Plane {
    /// The settlement at a place.
    pub fn at_mm(&self, place: Point) -> f64 {
        self.at_origin_mm + self.slope_x * place.x_mm + self.slope_y * place.y_mm
    }

    /// The part of the plan that is pressed down.
    pub fn pressed(&self) -> HalfPlane {
        HalfPlane { constant: self.at_origin_mm, slope_x: self.slope_x, slope_y: self.slope_y }
    }
}

impl Reactions {
    /// The greatest tension of any anchor in N, zero without anchors.
    pub fn tension_max_n(&self) -> f64 {
        self.anchors_n.iter().fold(0.0, |most: f64, &tension_n| most.max(tension_n))
    }

    /// The greatest compression of any foot in N, zero without feet.
    pub fn compression_max_n(&self) -> f64 {
        self.feet.iter().fold(0.0, |most: f64, foot| most.max(foot.force_n))
    }
}
