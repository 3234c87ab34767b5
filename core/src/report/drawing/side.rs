use crate::geometry::Rectangle;

/// A side of the cabinet in the plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Smaller x.
    Left,
    /// Larger x.
    Right,
    /// Smaller y.
    Front,
    /// Larger y.
    Rear,
}

/// Where the slab ends on a side, in mm of cabinet coordinates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EdgeAt {
    /// No edge is given.
    Nowhere,
    /// Near enough to be drawn where it is.
    Near(f64),
    /// Given, but too far away for the drawing.
    Far(f64),
}

impl Side {
    /// All four.
    pub const ALL: [Side; 4] = [Side::Left, Side::Right, Side::Front, Side::Rear];

    /// Where the slab's edge is on this side; near is what lies inside the frame.
    pub fn edge(self, slab: &Rectangle, frame: &Rectangle) -> EdgeAt {
        let edge_mm = self.of(slab);
        let is_near = match self {
            Side::Left | Side::Front => edge_mm >= self.of(frame),
            Side::Right | Side::Rear => edge_mm <= self.of(frame),
        };
        match edge_mm.is_finite() {
            false => EdgeAt::Nowhere,
            true if is_near => EdgeAt::Near(edge_mm),
            true => EdgeAt::Far(edge_mm),
        }
    }

    /// Where a rectangle ends on this side.
    pub fn of(self, rectangle: &Rectangle) -> f64 {
        match self {
            Side::Left => rectangle.left_mm,
            Side::Right => rectangle.right_mm,
            Side::Front => rectangle.front_mm,
            Side::Rear => rectangle.rear_mm,
        }
    }

    /// True where the edge runs along y.
    pub fn is_upright(self) -> bool {
        matches!(self, Side::Left | Side::Right)
    }
}
