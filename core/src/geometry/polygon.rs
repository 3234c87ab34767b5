use alloc::vec::Vec;

use super::{Moments, Point, Rectangle};

/// A figure with straight sides, its corners in order; counter-clockwise counts as positive.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Polygon {
    /// The corners. The last side runs back to the first corner.
    pub corners: Vec<Point>,
}

/// The side of a straight line where `constant + x slope_x + y slope_y` is not negative.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HalfPlane {
    /// The value at the origin.
    pub constant: f64,
    /// The change with x, per mm.
    pub slope_x: f64,
    /// The change with y, per mm.
    pub slope_y: f64,
}

impl HalfPlane {
    /// The value at a place: positive inside, zero on the line.
    pub fn at(&self, point: Point) -> f64 {
        self.constant + self.slope_x * point.x_mm + self.slope_y * point.y_mm
    }
}

impl Polygon {
    /// A polygon with these corners.
    pub fn new(corners: Vec<Point>) -> Self {
        Polygon { corners }
    }

    /// The area, negative where the corners run clockwise.
    pub fn area_mm2(&self) -> f64 {
        self.moments().area_mm2
    }

    /// Area, first and second moments about the origin, exactly, side by side.
    ///
    /// The sums run about the first corner and are carried to the origin afterwards, so that a small figure far from
    /// the origin keeps its digits.
    ///
    /// ```
    /// use steadfoot::geometry::{Point, Polygon};
    /// let triangle = Polygon::new(vec![Point::new(0.0, 0.0), Point::new(3.0, 0.0), Point::new(0.0, 3.0)]);
    /// let moments = triangle.moments();
    /// assert_eq!(moments.area_mm2, 4.5);
    /// assert_eq!(moments.centroid(), Some(Point::new(1.0, 1.0)));
    /// ```
    pub fn moments(&self) -> Moments {
        let Some(&base) = self.corners.first() else { return Moments::default() };
        let mut local = Moments::default();
        for (from, to) in self.sides() {
            let (x0, y0) = (from.x_mm - base.x_mm, from.y_mm - base.y_mm);
            let (x1, y1) = (to.x_mm - base.x_mm, to.y_mm - base.y_mm);
            let cross = x0 * y1 - x1 * y0;
            local.area_mm2 += cross / 2.0;
            local.first_x_mm3 += cross * (x0 + x1) / 6.0;
            local.first_y_mm3 += cross * (y0 + y1) / 6.0;
            local.second_xx_mm4 += cross * (x0 * x0 + x0 * x1 + x1 * x1) / 12.0;
            local.second_yy_mm4 += cross * (y0 * y0 + y0 * y1 + y1 * y1) / 12.0;
            local.second_xy_mm4 += cross * (2.0 * x0 * y0 + x0 * y1 + x1 * y0 + 2.0 * x1 * y1) / 24.0;
        }
        let Moments { area_mm2: a, first_x_mm3: sx, first_y_mm3: sy, .. } = local;
        Moments {
            area_mm2: a,
            first_x_mm3: sx + base.x_mm * a,
            first_y_mm3: sy + base.y_mm * a,
            second_xx_mm4: local.second_xx_mm4 + 2.0 * base.x_mm * sx + base.x_mm * base.x_mm * a,
            second_yy_mm4: local.second_yy_mm4 + 2.0 * base.y_mm * sy + base.y_mm * base.y_mm * a,
            second_xy_mm4: local.second_xy_mm4 + base.x_mm * sy + base.y_mm * sx + base.x_mm * base.y_mm * a,
        }
    }

    /// The part of a convex polygon on the inner side of a straight line; empty where nothing is left.
    ///
    /// Scope: convex figures, or concave ones that the line cuts in one piece.
    pub fn clipped(&self, half_plane: &HalfPlane) -> Polygon {
        let mut corners = Vec::with_capacity(self.corners.len() + 1);
        for (from, to) in self.sides() {
            let (inside_from, inside_to) = (half_plane.at(from), half_plane.at(to));
            if inside_from >= 0.0 {
                corners.push(from);
            }
            // Strictly on both sides, so that a corner on the line is not written twice.
            if (inside_from > 0.0 && inside_to < 0.0) || (inside_from < 0.0 && inside_to > 0.0) {
                let way = inside_from / (inside_from - inside_to);
                corners
                    .push(Point::new(from.x_mm + way * (to.x_mm - from.x_mm), from.y_mm + way * (to.y_mm - from.y_mm)));
            }
        }
        if corners.len() < 3 {
            corners.clear();
        }
        Polygon { corners }
    }

    /// The part of a convex polygon inside an upright rectangle.
    pub fn clipped_to(&self, outline: &Rectangle) -> Polygon {
        let side = |constant, slope_x, slope_y| HalfPlane { constant, slope_x, slope_y };
        self.clipped(&side(-outline.left_mm, 1.0, 0.0))
            .clipped(&side(outline.right_mm, -1.0, 0.0))
            .clipped(&side(-outline.front_mm, 0.0, 1.0))
            .clipped(&side(outline.rear_mm, 0.0, -1.0))
    }

    /// The sides, each as its two ends.
    pub fn sides(&self) -> impl Iterator<Item = (Point, Point)> + '_ {
        let next = self.corners.iter().cycle().skip(1);
        self.corners.iter().copied().zip(next.copied())
    }
}
