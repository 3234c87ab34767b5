use crate::geometry::{Point, Rectangle, Size};

/// A foot: a rectangle that pushes back where it is pressed and never pulls.
///
/// Units: mm; N per mm for the whole foot. Half sizes of zero make it a spring at a point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Foot {
    /// The centre of the foot.
    pub at: Point,
    /// Half of its sides.
    pub half: Size,
    /// The force that presses the whole foot down by one millimetre.
    pub stiffness_n_per_mm: f64,
}

/// An anchor: a spring at a point that pulls back where it is lifted and never pushes.
///
/// Units: mm; N per mm. It has no slack and no preload.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Anchor {
    /// Where the anchor stands.
    pub at: Point,
    /// The pull that lifts it by one millimetre.
    pub stiffness_n_per_mm: f64,
}

impl Foot {
    /// The rectangle under the foot.
    pub fn rectangle(&self) -> Rectangle {
        Rectangle::around(self.at, self.half)
    }

    /// The area under the foot, zero for a spring at a point.
    pub fn area_mm2(&self) -> f64 {
        4.0 * self.half.area_mm2()
    }
}
