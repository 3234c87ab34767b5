use super::Point;

/// Area and moments of a figure about the origin.
///
/// Units: mm2, mm3 and mm4. A figure that is run through clockwise has them negative, so a hole subtracts itself.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Moments {
    /// The area.
    pub area_mm2: f64,
    /// The integral of x.
    pub first_x_mm3: f64,
    /// The integral of y.
    pub first_y_mm3: f64,
    /// The integral of x x.
    pub second_xx_mm4: f64,
    /// The integral of x y.
    pub second_xy_mm4: f64,
    /// The integral of y y.
    pub second_yy_mm4: f64,
}

impl Moments {
    /// The centroid, or none where the figure has no area.
    pub fn centroid(&self) -> Option<Point> {
        if self.area_mm2 == 0.0 {
            return None;
        }
        Some(Point::new(self.first_x_mm3 / self.area_mm2, self.first_y_mm3 / self.area_mm2))
    }

    /// The moments of two figures that do not overlap, taken together.
    pub fn with(&self, other: &Moments) -> Moments {
        Moments {
            area_mm2: self.area_mm2 + other.area_mm2,
            first_x_mm3: self.first_x_mm3 + other.first_x_mm3,
            first_y_mm3: self.first_y_mm3 + other.first_y_mm3,
            second_xx_mm4: self.second_xx_mm4 + other.second_xx_mm4,
            second_xy_mm4: self.second_xy_mm4 + other.second_xy_mm4,
            second_yy_mm4: self.second_yy_mm4 + other.second_yy_mm4,
        }
    }
}
