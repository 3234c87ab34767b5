//! The part of the concrete that a group influences, by geometry alone: squares about each fastener, united.

use alloc::vec::Vec;

use super::cone;
use super::facts::{ALL_SIDES, Anchor, Facts};
use super::fields as f;
use super::{bond, group};
use crate::calc::limit::less;
use crate::geometry::{HalfPlane, Point, Polygon, Rectangle, Size, union_area_mm2, union_outline, widest_gap};
use crate::rules::anchor_set::{Set, members};

/// Which failure a body belongs to: that decides how far its squares reach.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Reach {
    /// Cone: c_cr_N.
    Cone,
    /// Bond: c_cr_Np.
    Bond,
    /// Splitting: c_cr_sp.
    Splitting,
}

impl Reach {
    /// The characteristic edge distance of a fastener, half its characteristic spacing.
    pub fn edge_distance(self, facts: &Facts, anchor: &Anchor) -> f64 {
        match self {
            Reach::Cone => facts.number(f::C_CR_N).unwrap_or(1.5 * anchor.h_ef),
            Reach::Bond => bond::edge_distance(facts, anchor),
            Reach::Splitting => facts.number(f::C_CR_SP).unwrap_or(f64::NAN),
        }
    }

    /// Whether two fasteners influence each other: both distances along the axes below the characteristic spacing.
    pub fn overlap(self, facts: &Facts, a: &Anchor, b: &Anchor) -> bool {
        let spacing_mm = self.edge_distance(facts, a) + self.edge_distance(facts, b);
        less((a.at.x_mm - b.at.x_mm).abs(), spacing_mm) && less((a.at.y_mm - b.at.y_mm).abs(), spacing_mm)
    }
}

/// The body of a group.
pub struct Body {
    /// Which failure.
    pub reach: Reach,
    /// The group.
    pub members: Vec<usize>,
    /// Whether all have the same embedment.
    pub alike: bool,
    /// Their common embedment.
    pub full_depth: f64,
    /// Characteristic edge distance before any reduction.
    pub full_c_cr: f64,
    /// Distance of the nearest fastener to the left, right, front and rear edge.
    pub edges_mm: [f64; 4],
    /// How many edges are nearer than that.
    pub near: usize,
    /// The edge with the largest distance that is below it, if there is one.
    pub farthest_near: Option<usize>,
    /// The neighbours with the largest spacing.
    pub gap: [Point; 2],
    /// Characteristic edge distance that the equations take.
    pub c_cr: f64,
    /// The projected area.
    pub area_mm2: f64,
    /// Each fastener's own part of it, cut at half the spacing to its neighbours.
    pub shares: Vec<Share>,
}

/// The part of a body that one fastener has to itself.
pub struct Share {
    /// Its area.
    pub area_mm2: f64,
    /// The distance from the fastener to the nearest real edge.
    pub nearest_mm: f64,
}

/// Which part of a body resists.
#[derive(Clone, Copy)]
pub enum Piece {
    /// All of it.
    Whole,
    /// The share of the member of this place in the group: its own part, or an equal part if that is larger.
    Share(usize),
    /// The own part of the member of this place, cut half way to its neighbours.
    Cut(usize),
}

impl Body {
    /// The body of a group.
    pub fn new(facts: &Facts, reach: Reach, set: Set) -> Body {
        let members: Vec<usize> = members(set).collect();
        let points: Vec<Point> = members.iter().map(|&place| facts.anchors[place].at).collect();
        let first = &facts.anchors[members[0]];
        let alike = members.iter().all(|&place| facts.anchors[place].h_ef == first.h_ef);
        let full_c_cr = reach.edge_distance(facts, first);
        let mut edges_mm = [f64::INFINITY; 4];
        for &place in &members {
            for (edge_mm, own_mm) in edges_mm.iter_mut().zip(facts.anchors[place].edges_mm) {
                *edge_mm = edge_mm.min(own_mm);
            }
        }
        let near = ALL_SIDES.iter().filter(|&&side| less(edges_mm[side], full_c_cr));
        let farthest_near = near.clone().copied().reduce(|a, b| if edges_mm[b] > edges_mm[a] { b } else { a });
        let mut body = Body {
            reach,
            alike,
            full_depth: first.h_ef,
            full_c_cr,
            edges_mm,
            near: near.count(),
            farthest_near,
            gap: widest_gap(&points),
            c_cr: full_c_cr,
            area_mm2: 0.0,
            shares: Vec::new(),
            members,
        };
        if let Some(reduced) = cone::reduced_depth(&body) {
            body.c_cr = full_c_cr * reduced / body.full_depth;
        }
        let squares = body.squares(&points);
        body.area_mm2 = union_area_mm2(&squares, &facts.cut);
        body.shares = (0..points.len())
            .map(|place| Share {
                area_mm2: share(facts, &points, &squares, place).area_mm2(),
                nearest_mm: facts.anchors[body.members[place]].nearest_edge_mm(),
            })
            .collect();
        body
    }

    /// The outline of the body on the surface of the concrete.
    pub fn outline(&self, facts: &Facts) -> Vec<Polygon> {
        union_outline(&self.squares(&self.points(facts)), &facts.cut)
    }

    /// The outline of one fastener's own part.
    pub fn share_outline(&self, facts: &Facts, place: usize) -> Polygon {
        let points = self.points(facts);
        share(facts, &points, &self.squares(&points), place)
    }

    /// The smallest distance to an edge.
    pub fn nearest_mm(&self, piece: Piece) -> f64 {
        match piece {
            Piece::Whole => self.edges_mm.iter().fold(f64::INFINITY, |least, &edge| least.min(edge)),
            Piece::Share(place) | Piece::Cut(place) => self.shares[place].nearest_mm,
        }
    }

    /// The members that a piece speaks of.
    pub fn of(&self, piece: Piece) -> &[usize] {
        match piece {
            Piece::Whole => &self.members,
            Piece::Share(place) | Piece::Cut(place) => &self.members[place..=place],
        }
    }

    fn points(&self, facts: &Facts) -> Vec<Point> {
        self.members.iter().map(|&place| facts.anchors[place].at).collect()
    }

    fn squares(&self, points: &[Point]) -> Vec<Rectangle> {
        let half = Size::new(self.c_cr, self.c_cr);
        points.iter().map(|&at| Rectangle::around(at, half)).collect()
    }
}

/// The groups that acting fasteners make.
pub fn groups(facts: &Facts, reach: Reach, acting: Set) -> Vec<group::Group> {
    crate::rules::anchor_set::connected(acting, |a, b| reach.overlap(facts, &facts.anchors[a], &facts.anchors[b]))
        .into_iter()
        .map(|set| group::Group::new(facts, Body::new(facts, reach, set)))
        .collect()
}

/// The square of a fastener, cut at the edges and half way to each neighbour.
fn share(facts: &Facts, points: &[Point], squares: &[Rectangle], place: usize) -> Polygon {
    let Some(own) = squares[place].clipped(&facts.cut) else { return Polygon::default() };
    let at = points[place];
    let mut part = own.polygon();
    for (other, &to) in points.iter().enumerate() {
        if other == place || at == to {
            continue;
        }
        // Nearer to this fastener than to the other: the side of the line half way between them.
        let (slope_x, slope_y) = (at.x_mm - to.x_mm, at.y_mm - to.y_mm);
        let middle = Point::new((at.x_mm + to.x_mm) / 2.0, (at.y_mm + to.y_mm) / 2.0);
        let constant = -(slope_x * middle.x_mm + slope_y * middle.y_mm);
        part = part.clipped(&HalfPlane { constant, slope_x, slope_y });
    }
    part
}
