//! Plane figures: points, polygons, rectangles and their unions, hulls, and the cone of loads that supports can carry.
//!
//! Everything is in millimetres in the plan of the cabinet (x to the right, y to the rear) and exact up to rounding:
//! areas are cut and summed, never sampled.

mod cone;
mod gap;
mod hull;
mod moments;
mod point;
mod polygon;
mod rectangle;
mod union;

pub use cone::{Cone, Membership};
pub use gap::widest_gap;
pub use hull::{Hull, HullEdge};
pub use moments::Moments;
pub use point::{Edge, Point, Size};
pub use polygon::{HalfPlane, Polygon};
pub use rectangle::Rectangle;
pub use union::{union_area_mm2, union_outline};
