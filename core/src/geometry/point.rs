use crate::calc::number;

/// A place in the plan.
///
/// Units: mm from the centre of the base, x to the right, y to the rear.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right.
    pub x_mm: f64,
    /// To the rear.
    pub y_mm: f64,
}

/// Two lengths along the axes: the sides of a rectangle, or half of them where the name says so.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Size {
    /// Along x.
    pub x_mm: f64,
    /// Along y.
    pub y_mm: f64,
}

/// A straight line between two places, about which something tips or at which something ends.
///
/// Both ends are equal where the edge is a single point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edge {
    /// One end.
    pub from: Point,
    /// The other end.
    pub to: Point,
}

impl Point {
    /// The place x, y in mm.
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Point { x_mm, y_mm }
    }

    /// The distance to another place in mm.
    pub fn distance_mm(self, other: Point) -> f64 {
        number::hypot(other.x_mm - self.x_mm, other.y_mm - self.y_mm)
    }

    /// The direction of another place as seen from here, in radians from +x towards +y.
    pub fn direction_rad(self, other: Point) -> f64 {
        number::atan2(other.y_mm - self.y_mm, other.x_mm - self.x_mm)
    }

    /// The same way turned by a right angle, from +y towards +x.
    pub fn turned_right(self) -> Point {
        Point::new(self.y_mm, -self.x_mm)
    }
}

impl Size {
    /// The lengths x, y in mm.
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Size { x_mm, y_mm }
    }

    /// The product of both, the area of a rectangle with these sides.
    pub fn area_mm2(self) -> f64 {
        self.x_mm * self.y_mm
    }
}

impl Edge {
    /// The length of the edge, zero where it is a point.
    pub fn length_mm(self) -> f64 {
        self.from.distance_mm(self.to)
    }

    /// The distance of a place from the endless line through the edge; from the point where the edge is one.
    ///
    /// Positive to the left of the way from `from` to `to`.
    pub fn distance_mm(self, point: Point) -> f64 {
        let length_mm = self.length_mm();
        if length_mm == 0.0 {
            return self.from.distance_mm(point);
        }
        turn_mm2(self.from, self.to, point) / length_mm
    }
}

/// Twice the area of the triangle a, b, c: positive where the way from a over b to c turns left.
pub(super) fn turn_mm2(a: Point, b: Point, c: Point) -> f64 {
    (b.x_mm - a.x_mm) * (c.y_mm - a.y_mm) - (b.y_mm - a.y_mm) * (c.x_mm - a.x_mm)
}
