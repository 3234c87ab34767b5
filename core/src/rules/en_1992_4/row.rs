//! Fasteners along an edge that break out as one body, and which of them the shear comes to.

use alloc::vec::Vec;

use super::facts::{Facts, sides_across};
use super::fields as f;
use super::steel::Shear;
use crate::calc::limit::less;
use crate::geometry::{Point, Polygon, Rectangle, union_area_mm2, union_outline, widest_gap};
use crate::rules::anchor_set::{Set, connected, floor, larger, members};

/// Fasteners at one distance from an edge are a row within this.
pub const ROW_MM: f64 = 1.0;

/// A row along an edge that breaks out as one body.
pub struct EdgeRow {
    /// The edge: 0 left, 1 right, 2 front, 3 rear.
    pub side: usize,
    /// The fasteners of the row.
    pub members: Vec<usize>,
    /// Whether they are alike in diameter and embedment.
    pub alike: bool,
    /// Distance to the edge, of the nearest fastener.
    pub edge_mm: f64,
    /// Distances along the edge from the outer fasteners to the corners.
    pub corners_mm: [f64; 2],
    /// The neighbours with the largest spacing along the edge.
    pub gap: [Point; 2],
    /// The edge distance that the equations take.
    pub depth_mm: f64,
    /// Whether the member is so narrow and thin that it is less than the real one.
    pub narrow: bool,
    /// The projected area on the face of the edge.
    pub area_mm2: f64,
}

/// The rows along an edge among acting fasteners.
pub fn rows(facts: &Facts, side: usize, acting: Set) -> Vec<EdgeRow> {
    connected(acting, |a, b| {
        let (a, b) = (&facts.anchors[a], &facts.anchors[b]);
        let (c_a, c_b) = (a.edges_mm[side], b.edges_mm[side]);
        (c_a - c_b).abs() <= ROW_MM && less((a.along_mm(side) - b.along_mm(side)).abs(), 3.0 * c_a.min(c_b))
    })
    .into_iter()
    .map(|set| EdgeRow::new(facts, side, set))
    .collect()
}

impl EdgeRow {
    fn new(facts: &Facts, side: usize, set: Set) -> EdgeRow {
        let members: Vec<usize> = members(set).collect();
        let first = &facts.anchors[members[0]];
        let alike = members.iter().all(|&place| {
            let anchor = &facts.anchors[place];
            anchor.d_nom == first.d_nom && anchor.h_ef == first.h_ef
        });
        let least = |side: usize| {
            members.iter().fold(f64::INFINITY, |least, &place| least.min(facts.anchors[place].edges_mm[side]))
        };
        let edge_mm = least(side);
        let corners_mm = sides_across(side).map(least);
        let points: Vec<Point> = members.iter().map(|&place| facts.anchors[place].at).collect();
        let gap = widest_gap(&points);
        let wide_mm = 1.5 * edge_mm;
        let narrow = less(corners_mm[0], wide_mm) && less(corners_mm[1], wide_mm) && less(facts.h, wide_mm);
        let by_member = (corners_mm[0].max(corners_mm[1]) / 1.5).max(facts.h / 1.5);
        let depth_mm = if narrow { edge_mm.min(by_member.max(gap[0].distance_mm(gap[1]) / 3.0)) } else { edge_mm };
        let (bodies, face) = faces(facts, side, &members, depth_mm);
        let area_mm2 = union_area_mm2(&bodies, &face);
        EdgeRow { side, members, alike, edge_mm, corners_mm, gap, depth_mm, narrow, area_mm2 }
    }

    /// The body on the face of the edge: across, position along the edge; up, depth below the surface.
    pub fn outline(&self, facts: &Facts) -> Vec<Polygon> {
        let (bodies, face) = faces(facts, self.side, &self.members, self.depth_mm);
        union_outline(&bodies, &face)
    }
}

fn faces(facts: &Facts, side: usize, members: &[usize], depth_mm: f64) -> (Vec<Rectangle>, Rectangle) {
    let reach_mm = 1.5 * depth_mm;
    let bodies = members.iter().map(|&place| {
        let at_mm = facts.anchors[place].along_mm(side);
        Rectangle { left_mm: at_mm - reach_mm, right_mm: at_mm + reach_mm, front_mm: 0.0, rear_mm: reach_mm }
    });
    let outline = &facts.cut;
    let (left_mm, right_mm) =
        if side < 2 { (outline.front_mm, outline.rear_mm) } else { (outline.left_mm, outline.right_mm) };
    (bodies.collect(), Rectangle { left_mm, right_mm, front_mm: 0.0, rear_mm: facts.h })
}

/// The shears of all fasteners as an edge sees them.
#[derive(Default)]
pub struct EdgeForces {
    /// Towards the edge, as it comes to each fastener.
    pub towards: Vec<f64>,
    /// Along the edge.
    pub along: Vec<f64>,
    /// How the fasteners nearest to the edge take it all, where the holes have clearance.
    pub front: Option<Front>,
}

/// Shear that comes to the fasteners nearest to an edge: the same resultant on the same line.
pub struct Front {
    /// The fasteners.
    pub members: Vec<usize>,
    /// Elastic shares of all our fasteners towards the edge.
    pub shares: Vec<f64>,
    /// Their sum.
    pub total: f64,
    /// The middle of the nearest fasteners along the edge.
    pub middle_mm: f64,
    /// Moment of the shares about it.
    pub moment: f64,
    /// Sum of the squares of the distances from it.
    pub squares_mm2: f64,
}

impl EdgeForces {
    /// The forces at one edge.
    ///
    /// Clause: 6.2.2.2: with clearance in the holes and the edge nearer than 10 h_ef or 60 d only the fasteners nearest
    /// to it take the shear towards it; all share what goes along it.
    pub fn take(&mut self, facts: &Facts, side: usize, shear: &[Shear]) {
        let component = |on: &Shear| match side {
            0 => (-on.x, on.y),
            1 => (on.x, on.y),
            2 => (-on.y, on.x),
            _ => (on.y, on.x),
        };
        self.towards.clear();
        self.along.clear();
        let most = shear.iter().fold(0.0, |most, on| larger(most, on.size()));
        for on in shear {
            let (towards, along) = component(on);
            self.towards.push(towards);
            // What the statics leave by rounding is no shear along the edge.
            self.along.push(if along.abs() <= floor(most) { 0.0 } else { along });
        }
        self.front = self.front(facts, side);
        let Some(front) = &self.front else { return };
        for place in 0..self.towards.len() {
            // Neighbours are pushed alike, so theirs comes to their own nearest fasteners alike.
            let alike = place % facts.own;
            self.towards[place] = if front.members.contains(&alike) { front.on(facts, side, alike) } else { 0.0 };
        }
    }

    fn front(&self, facts: &Facts, side: usize) -> Option<Front> {
        let nearest = facts.own_anchors().iter().fold(f64::INFINITY, |least, anchor| least.min(anchor.edges_mm[side]));
        let is_near = |anchor: &super::facts::Anchor| less(nearest, f64::max(10.0 * anchor.h_ef, 60.0 * anchor.d));
        let shares = &self.towards[..facts.own];
        let total = shares.iter().fold(0.0, |total, force| total + force);
        // What goes away from the edge, or turns about, is left as the elastic shares have it.
        if facts.is(f::HOLES, f::FILLED) || !facts.own_anchors().iter().any(is_near) || total <= 0.0 {
            return None;
        }
        let in_front = |place: &usize| facts.anchors[*place].edges_mm[side] - nearest <= ROW_MM;
        let members: Vec<usize> = (0..facts.own).filter(in_front).collect();
        let along = |place: usize| facts.anchors[place].along_mm(side);
        let count = members.len() as f64;
        let middle_mm = members.iter().fold(0.0, |sum, &place| sum + along(place)) / count;
        let from_middle = shares.iter().enumerate().map(|(place, force)| force * (along(place) - middle_mm));
        let moment = from_middle.fold(0.0, |sum, part| sum + part);
        let squares_mm2 = members.iter().fold(0.0, |sum, &place| {
            let from_mm = along(place) - middle_mm;
            sum + from_mm * from_mm
        });
        Some(Front { members, shares: shares.to_vec(), total, middle_mm, moment, squares_mm2 })
    }
}

impl Front {
    /// The shear towards the edge on one of the nearest fasteners.
    pub fn on(&self, facts: &Facts, side: usize, place: usize) -> f64 {
        if self.members.len() < 2 {
            return self.total;
        }
        let from_mm = facts.anchors[place].along_mm(side) - self.middle_mm;
        self.total / self.members.len() as f64 + self.moment * from_mm / self.squares_mm2
    }
}
