//! The breakout body of anchors that act together, by geometry alone, whatever foot or cabinet they belong to.

use alloc::vec::Vec;

use super::anchor::Anchor;
use super::facts::{ALL_SIDES, Facts};
use super::kind::AnchorKind;
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

/// Whether what two anchors break or pull out overlaps.
pub fn bodies_overlap(facts: &Facts, a: usize, b: usize) -> bool {
    let (a, b) = (&facts.anchors[a], &facts.anchors[b]);
    breakouts_overlap(a, b)
        || (facts.kind == AnchorKind::Adhesive && super::bond::overlap(facts, [a, b], super::bond::Width::Plain))
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
    /// The smallest distance of an anchor to an edge.
    pub nearest_mm: f64,
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
        let squares = squares(facts, &points, 1.5 * depth_mm);
        let shares = (0..members.len())
            .map(|place| Share {
                area_mm2: share(&points, &squares, place).iter().map(Polygon::area_mm2).sum(),
                nearest_mm: facts.anchors[members[place]].nearest_mm,
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
            area_mm2: union_area_mm2(&squares.concat(), &facts.clip),
            nearest_mm: nearest_mm(facts, &members),
            shares,
            members,
        }
    }

    /// The outline of the body on the surface of the concrete.
    pub fn outline(&self, facts: &Facts) -> Vec<Polygon> {
        union_outline(&squares(facts, &self.points(facts), 1.5 * self.depth_mm).concat(), &facts.clip)
    }

    /// The outline of one anchor's own part.
    pub fn share_outline(&self, facts: &Facts, place: usize) -> Vec<Polygon> {
        let points = self.points(facts);
        share(&points, &squares(facts, &points, 1.5 * self.depth_mm), place)
    }

    fn points(&self, facts: &Facts) -> Vec<Point> {
        self.members.iter().map(|&place| facts.anchors[place].at).collect()
    }
}

/// The smallest distance of some anchors to an edge.
pub fn nearest_mm(facts: &Facts, members: &[usize]) -> f64 {
    members.iter().fold(f64::INFINITY, |least, &place| least.min(facts.anchors[place].nearest_mm))
}

/// The square about each point, in parts that are cut at the edges and leave out the openings and what lies behind them.
pub fn squares(facts: &Facts, points: &[Point], half_mm: f64) -> Vec<Vec<Rectangle>> {
    let half = Size::new(half_mm, half_mm);
    points
        .iter()
        .map(|&at| {
            let mut parts: Vec<Rectangle> = Rectangle::around(at, half).clipped(&facts.clip).into_iter().collect();
            for opening in &facts.openings {
                let shadow = shadow(at, opening);
                parts = parts.iter().flat_map(|part| without(part, &shadow)).collect();
            }
            parts
        })
        .collect()
}

/// An opening with what lies behind it, seen from an anchor: concrete there does not reach the anchor.
fn shadow(at: Point, opening: &Rectangle) -> Rectangle {
    let mut shadow = *opening;
    if opening.left_mm > at.x_mm {
        shadow.right_mm = f64::INFINITY;
    } else if opening.right_mm < at.x_mm {
        shadow.left_mm = f64::NEG_INFINITY;
    }
    if opening.front_mm > at.y_mm {
        shadow.rear_mm = f64::INFINITY;
    } else if opening.rear_mm < at.y_mm {
        shadow.front_mm = f64::NEG_INFINITY;
    }
    shadow
}

/// What is left of a rectangle when another is taken out of it: at most four parts that do not overlap.
fn without(whole: &Rectangle, hole: &Rectangle) -> Vec<Rectangle> {
    let Some(hole) = whole.clipped(hole) else { return alloc::vec![*whole] };
    let parts = [
        Rectangle { right_mm: hole.left_mm, ..*whole },
        Rectangle { left_mm: hole.right_mm, ..*whole },
        Rectangle { rear_mm: hole.front_mm, left_mm: hole.left_mm, right_mm: hole.right_mm, ..*whole },
        Rectangle { front_mm: hole.rear_mm, left_mm: hole.left_mm, right_mm: hole.right_mm, ..*whole },
    ];
    parts.into_iter().filter(|part| part.left_mm < part.right_mm && part.front_mm < part.rear_mm).collect()
}

/// The parts of an anchor's square that lie nearer to it than to its neighbours.
pub fn share(points: &[Point], squares: &[Vec<Rectangle>], place: usize) -> Vec<Polygon> {
    let at = points[place];
    let nearer = |part: &Rectangle| {
        let mut part = part.polygon();
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
    };
    squares[place].iter().map(nearer).filter(|part| part.corners.len() > 2).collect()
}
