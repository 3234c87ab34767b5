//! The breakout body of anchors that act together, by geometry alone, whatever foot or cabinet they belong to.

use alloc::vec::Vec;

use super::facts::{ALL_SIDES, Anchor, Facts};
use super::set::{Set, members};
use crate::calc::limit::less;
pub use crate::geometry::widest_gap;
use crate::geometry::{HalfPlane, Point, Polygon, Rectangle, Size, union_area_mm2, union_outline};

/// Whether the breakout bodies of two anchors overlap: both distances along the axes below 3 h_ef
/// (Table 17.5.1.3.1; half of each where the embedments differ).
pub fn breakouts_overlap(a: &Anchor, b: &Anchor) -> bool {
    let reach_mm = 1.5 * (a.h_ef_mm + b.h_ef_mm);
    less((a.at.x_mm - b.at.x_mm).abs(), reach_mm) && less((a.at.y_mm - b.at.y_mm).abs(), reach_mm)
}

/// The breakout body of a group, as the geometry makes it.
pub struct Body {
    /// The group.
    pub members: Vec<usize>,
    /// Whether all have the same embedment.
    pub alike: bool,
    /// Their common embedment.
    pub full_depth_mm: f64,
    /// Distance of the nearest anchor to the left, right, front and rear edge.
    pub edges_mm: [f64; 4],
    /// How many edges are nearer than 1.5 h_ef.
    pub near: usize,
    /// The edge with the largest distance that is below 1.5 h_ef, if there is one.
    pub farthest_near: Option<usize>,
    /// The neighbours with the largest spacing.
    pub gap: [Point; 2],
    /// The embedment that the equations take (17.6.2.1.2).
    pub depth_mm: f64,
    /// The projected area: the squares of 3 h_ef about each anchor, united and cut at the edges.
    pub area_mm2: f64,
    /// Each anchor's own part of it, cut at half the spacing to its neighbours.
    pub shares: Vec<Share>,
}

/// The part of a body that one anchor has to itself.
pub struct Share {
    /// Its area.
    pub area_mm2: f64,
    /// The distance from the anchor to the nearest real edge.
    pub nearest_mm: f64,
}

impl Body {
    /// The body of a group.
    pub fn new(facts: &Facts, group: Set) -> Body {
        let members: Vec<usize> = members(group).collect();
        let points: Vec<Point> = members.iter().map(|&place| facts.anchors[place].at).collect();
        let full_depth_mm = facts.anchors[members[0]].h_ef_mm;
        let alike = members.iter().all(|&place| facts.anchors[place].h_ef_mm == full_depth_mm);
        let mut edges_mm = [f64::INFINITY; 4];
        for &place in &members {
            for (edge_mm, own_mm) in edges_mm.iter_mut().zip(facts.anchors[place].edges_mm) {
                *edge_mm = edge_mm.min(own_mm);
            }
        }
        let mut near = 0;
        let mut farthest_near: Option<usize> = None;
        for side in ALL_SIDES {
            if less(edges_mm[side], 1.5 * full_depth_mm) {
                near += 1;
                if farthest_near.is_none_or(|known| edges_mm[side] > edges_mm[known]) {
                    farthest_near = Some(side);
                }
            }
        }
        let gap = widest_gap(&points);
        let depth_mm = match farthest_near {
            Some(side) if near >= 3 => {
                f64::min(full_depth_mm, f64::max(edges_mm[side] / 1.5, gap[0].distance_mm(gap[1]) / 3.0))
            }
            _ => full_depth_mm,
        };
        let squares = squares(&points, depth_mm);
        let shares = (0..members.len())
            .map(|place| Share {
                area_mm2: share(facts, &points, &squares, place).area_mm2(),
                nearest_mm: facts.anchors[members[place]].nearest_edge_mm(),
            })
            .collect();
        Body {
            alike,
            full_depth_mm,
            edges_mm,
            near,
            farthest_near,
            gap,
            depth_mm,
            area_mm2: union_area_mm2(&squares, &facts.outline),
            shares,
            members,
        }
    }

    /// The outline of the body on the surface of the concrete.
    pub fn outline(&self, facts: &Facts) -> Vec<Polygon> {
        union_outline(&squares(&self.points(facts), self.depth_mm), &facts.outline)
    }

    /// The outline of one anchor's own part.
    pub fn share_outline(&self, facts: &Facts, place: usize) -> Polygon {
        let points = self.points(facts);
        share(facts, &points, &squares(&points, self.depth_mm), place)
    }

    /// The smallest distance of an anchor to an edge.
    pub fn nearest_mm(&self) -> f64 {
        self.edges_mm.iter().fold(f64::INFINITY, |least, &edge| least.min(edge))
    }

    fn points(&self, facts: &Facts) -> Vec<Point> {
        self.members.iter().map(|&place| facts.anchors[place].at).collect()
    }
}

fn squares(points: &[Point], depth_mm: f64) -> Vec<Rectangle> {
    let half = Size::new(1.5 * depth_mm, 1.5 * depth_mm);
    points.iter().map(|&at| Rectangle::around(at, half)).collect()
}

/// The square of an anchor, cut at the edges and half way to each neighbour.
fn share(facts: &Facts, points: &[Point], squares: &[Rectangle], place: usize) -> Polygon {
    let Some(own) = squares[place].clipped(&facts.outline) else { return Polygon::default() };
    let at = points[place];
    let mut part = own.polygon();
    for (other, &to) in points.iter().enumerate() {
        if other == place || at == to {
            continue;
        }
        // Nearer to this anchor than to the other: the side of the line half way between them.
        let (slope_x, slope_y) = (at.x_mm - to.x_mm, at.y_mm - to.y_mm);
        let middle = Point::new((at.x_mm + to.x_mm) / 2.0, (at.y_mm + to.y_mm) / 2.0);
        let constant = -(slope_x * middle.x_mm + slope_y * middle.y_mm);
        part = part.clipped(&HalfPlane { constant, slope_x, slope_y });
    }
    part
}
