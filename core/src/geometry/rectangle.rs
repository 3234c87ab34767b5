use alloc::vec;

use super::{Point, Polygon, Size};

/// An upright rectangle in the plan; a side may lie at infinity, where there is no edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rectangle {
    /// The smaller x.
    pub left_mm: f64,
    /// The larger x.
    pub right_mm: f64,
    /// The smaller y.
    pub front_mm: f64,
    /// The larger y.
    pub rear_mm: f64,
}

impl Rectangle {
    /// The whole plane: an outline without edges.
    pub const EVERYWHERE: Rectangle = Rectangle {
        left_mm: f64::NEG_INFINITY,
        right_mm: f64::INFINITY,
        front_mm: f64::NEG_INFINITY,
        rear_mm: f64::INFINITY,
    };

    /// The rectangle that reaches `half` to both sides of its centre.
    pub fn around(centre: Point, half: Size) -> Self {
        Rectangle {
            left_mm: centre.x_mm - half.x_mm,
            right_mm: centre.x_mm + half.x_mm,
            front_mm: centre.y_mm - half.y_mm,
            rear_mm: centre.y_mm + half.y_mm,
        }
    }

    /// What this rectangle shares with another, or none where they share no area.
    pub fn clipped(&self, outline: &Rectangle) -> Option<Rectangle> {
        let shared = Rectangle {
            left_mm: self.left_mm.max(outline.left_mm),
            right_mm: self.right_mm.min(outline.right_mm),
            front_mm: self.front_mm.max(outline.front_mm),
            rear_mm: self.rear_mm.min(outline.rear_mm),
        };
        (shared.left_mm < shared.right_mm && shared.front_mm < shared.rear_mm).then_some(shared)
    }

    /// The same rectangle moved; a side at infinity stays there.
    pub fn shifted(&self, by: Point) -> Rectangle {
        Rectangle {
            left_mm: self.left_mm + by.x_mm,
            right_mm: self.right_mm + by.x_mm,
            front_mm: self.front_mm + by.y_mm,
            rear_mm: self.rear_mm + by.y_mm,
        }
    }

    /// The sides' product.
    pub fn area_mm2(&self) -> f64 {
        (self.right_mm - self.left_mm) * (self.rear_mm - self.front_mm)
    }

    /// True where the place lies inside or on the edge.
    pub fn contains(&self, point: Point) -> bool {
        self.left_mm <= point.x_mm
            && point.x_mm <= self.right_mm
            && self.front_mm <= point.y_mm
            && point.y_mm <= self.rear_mm
    }

    /// The four corners, counter-clockwise from front left.
    pub fn corners(&self) -> [Point; 4] {
        [
            Point::new(self.left_mm, self.front_mm),
            Point::new(self.right_mm, self.front_mm),
            Point::new(self.right_mm, self.rear_mm),
            Point::new(self.left_mm, self.rear_mm),
        ]
    }

    /// The same figure as a polygon.
    pub fn polygon(&self) -> Polygon {
        Polygon::new(vec![self.corners()[0], self.corners()[1], self.corners()[2], self.corners()[3]])
    }
}
