use crate::calc::order::put_in_order;
use alloc::vec::Vec;

use super::point::turn_mm2;
use super::{Edge, Point};
use crate::calc::number;

/// The smallest convex figure around a number of places.
///
/// One corner where all places coincide, two where they lie on a line, none where there are none.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hull {
    corners: Vec<Point>,
}

/// A side of a hull as seen from a place inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HullEdge {
    /// The side.
    pub edge: Edge,
    /// How far away it is, positive for a place inside.
    pub distance_mm: f64,
}

impl Hull {
    /// The hull of these places.
    ///
    /// A place that stands out by less than 1e-12 of the figure's width is taken as lying on the side, so that sides
    /// that are straight on paper stay one side.
    ///
    /// ```
    /// use steadfoot::geometry::{Hull, Point};
    /// let places = [(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0), (1.0, 0.5)].map(|(x, y)| Point::new(x, y));
    /// let hull = Hull::new(&places);
    /// assert_eq!(hull.corners().len(), 4);
    /// assert_eq!(hull.nearest_edge(Point::new(1.0, 0.5)).unwrap().distance_mm, 0.5);
    /// ```
    pub fn new(places: &[Point]) -> Hull {
        let mut sorted: Vec<Point> = places.to_vec();
        put_in_order(&mut sorted, |a, b| a.x_mm.total_cmp(&b.x_mm).then(a.y_mm.total_cmp(&b.y_mm)));
        sorted.dedup_by(|a, b| a == b);
        if sorted.len() < 3 {
            return Hull { corners: sorted };
        }
        let width_mm = sorted
            .iter()
            .fold(0.0, |most: f64, p| most.max((p.x_mm - sorted[0].x_mm).abs()).max((p.y_mm - sorted[0].y_mm).abs()));
        let slack_mm2 = 1e-12 * width_mm * width_mm;
        let mut corners = chain(sorted.iter().copied(), slack_mm2);
        corners.pop();
        let mut back = chain(sorted.iter().rev().copied(), slack_mm2);
        back.pop();
        corners.append(&mut back);
        Hull { corners }
    }

    /// The corners, counter-clockwise.
    pub fn corners(&self) -> &[Point] {
        &self.corners
    }

    /// The sides, counter-clockwise with the inside to the left; none for a hull without area.
    pub fn edges(&self) -> impl Iterator<Item = Edge> + '_ {
        let sides = if self.corners.len() < 3 { 0 } else { self.corners.len() };
        let next = self.corners.iter().cycle().skip(1);
        self.corners.iter().zip(next).take(sides).map(|(&from, &to)| Edge { from, to })
    }

    /// The side nearest to a place and its distance, negative where the place lies outside of that side.
    ///
    /// None for a hull without area.
    pub fn nearest_edge(&self, inside: Point) -> Option<HullEdge> {
        let distances = self.edges().map(|edge| HullEdge { edge, distance_mm: edge.distance_mm(inside) });
        distances.min_by(|a, b| a.distance_mm.total_cmp(&b.distance_mm))
    }

    /// The side that a ray from a place inside leaves through, and how far away that is along the ray.
    ///
    /// Direction in radians from +x towards +y. None where the place lies outside or the hull has no area; zero where
    /// it lies on a side that the ray leaves through.
    pub fn ray_exit(&self, inside: Point, direction_rad: f64) -> Option<HullEdge> {
        let (step_x, step_y) = (number::cos(direction_rad), number::sin(direction_rad));
        let mut nearest: Option<HullEdge> = None;
        for edge in self.edges() {
            let depth_mm = edge.distance_mm(inside);
            if depth_mm < 0.0 {
                return None;
            }
            let length_mm = edge.length_mm();
            let (along_x, along_y) =
                ((edge.to.x_mm - edge.from.x_mm) / length_mm, (edge.to.y_mm - edge.from.y_mm) / length_mm);
            // The speed with which the ray nears this side; the outward normal is (along_y, -along_x).
            let nearing = step_x * along_y - step_y * along_x;
            if nearing > 1e-15 {
                let distance_mm = depth_mm / nearing;
                if nearest.is_none_or(|known| distance_mm < known.distance_mm) {
                    nearest = Some(HullEdge { edge, distance_mm });
                }
            }
        }
        nearest
    }
}

/// One half of the hull, turning left only.
fn chain(places: impl Iterator<Item = Point>, slack_mm2: f64) -> Vec<Point> {
    let mut chain: Vec<Point> = Vec::new();
    for place in places {
        while chain.len() >= 2 && turn_mm2(chain[chain.len() - 2], chain[chain.len() - 1], place) <= slack_mm2 {
            chain.pop();
        }
        chain.push(place);
    }
    chain
}
