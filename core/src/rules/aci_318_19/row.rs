//! Rows of anchors along an edge, and which row carries whose shear (Fig. R17.7.2.1b).

use crate::calc::order::put_in_order;
use alloc::vec::Vec;

use super::body::widest_gap;
use super::edge::Basic;
use super::facts::{Anchor, Facts, sides_across};
use super::set::{Set, connected, members, only};
use crate::calc::Sheet;
use crate::calc::limit::less;
use crate::geometry::{Point, Polygon, Rectangle, union_area_mm2, union_outline};

/// Anchors at one distance from an edge are a row within this.
pub const ROW_MM: f64 = 1.0;

/// How a row comes to its load.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Case {
    /// The row nearest to the edge carries its own share.
    Own,
    /// A row farther away carries everything, the rows before it having broken out.
    All,
    /// The row nearest to the edge carries the rows close behind it too.
    Front,
}

/// A row along an edge that breaks out as one body.
pub struct EdgeRow {
    /// The edge: 0 left, 1 right, 2 front, 3 rear.
    pub side: usize,
    /// The anchors of the row.
    pub members: Vec<usize>,
    /// The same as a set.
    pub set: Set,
    /// The anchors whose shear it carries.
    pub carried: Vec<usize>,
    /// How it comes to its load.
    pub case: Case,
    /// Whether its anchors are alike in diameter and embedment.
    pub alike: bool,
    /// Distance to the edge, of the nearest anchor.
    pub edge_mm: f64,
    /// Distances along the edge from the outer anchors to the corners.
    pub corners_mm: [f64; 2],
    /// The neighbours with the largest spacing along the edge.
    pub gap: [Point; 2],
    /// The edge distance that the equations take (17.7.2.1.2).
    pub depth_mm: f64,
    /// Whether the member is so narrow and thin that it is less than the real one.
    pub narrow: bool,
    /// The projected area on the face of the edge.
    pub area_mm2: f64,
    /// The factors of its strength.
    pub basic: Basic,
}

/// The rows along an edge among anchors that are sheared towards or along it.
pub fn rows(facts: &Facts, side: usize, acting: Set) -> Vec<EdgeRow> {
    let bodies = bodies(facts, side, acting);
    // Whether an anchor stands close behind a nearer row, which then carries it.
    let mut behind = 0;
    let mut spared = 0;
    let mut carried: Vec<Set> = bodies.clone();
    for later in 0..bodies.len() {
        for place in members(bodies[later]) {
            let Some(front) = close_front(facts, side, &bodies[..later], behind, place) else { continue };
            if is_welded(facts, bodies[front]) && is_welded(facts, bodies[later]) {
                spared |= bodies[front];
            } else {
                behind |= only(place);
                carried[front] |= only(place);
            }
        }
    }
    let mut found = Vec::new();
    for (place, &body) in bodies.iter().enumerate() {
        // A front row of studs is held by the rear row of their plate, unless it has to carry others besides.
        let is_held_behind = body & !spared == 0 && carried[place] == body;
        if body & !behind == 0 || is_held_behind {
            continue;
        }
        let before = bodies[..place].iter().fold(0, |set, nearer| set | nearer);
        let nearer = before & !same_row(facts, side, body, before);
        let taken = assigned(facts, side, &bodies, place, nearer);
        let case = match (taken != 0, carried[place] != body) {
            (true, _) => Case::All,
            (false, true) => Case::Front,
            (false, false) => Case::Own,
        };
        found.push(EdgeRow::new(facts, side, body, carried[place] | taken, case));
    }
    found
}

/// Anchors at one distance whose bodies overlap along the edge, the nearest to the edge first.
fn bodies(facts: &Facts, side: usize, acting: Set) -> Vec<Set> {
    let mut bodies = connected(acting, |a, b| {
        let (a, b) = (&facts.anchors[a], &facts.anchors[b]);
        let (c_a, c_b) = (a.edges_mm[side], b.edges_mm[side]);
        (c_a - c_b).abs() <= ROW_MM && less((a.along_mm(side) - b.along_mm(side)).abs(), 3.0 * c_a.min(c_b))
    });
    put_in_order(&mut bodies, |&a, &b| nearest_mm(facts, side, a).total_cmp(&nearest_mm(facts, side, b)));
    bodies
}

fn nearest_mm(facts: &Facts, side: usize, set: Set) -> f64 {
    members(set).fold(f64::INFINITY, |least, place| least.min(facts.anchors[place].edges_mm[side]))
}

/// The anchors of a set at the same distance from the edge as a body.
fn same_row(facts: &Facts, side: usize, body: Set, set: Set) -> Set {
    let c_a1 = nearest_mm(facts, side, body);
    members(set)
        .filter(|&place| (facts.anchors[place].edges_mm[side] - c_a1).abs() <= ROW_MM)
        .fold(0, |row, place| row | only(place))
}

/// The body before an anchor at less than that body's edge distance, overlapping it along the edge; the nearest one.
fn close_front(facts: &Facts, side: usize, nearer: &[Set], behind: Set, place: usize) -> Option<usize> {
    let anchor = &facts.anchors[place];
    let mut best: Option<(usize, f64)> = None;
    for (front, &body) in nearer.iter().enumerate() {
        let c_a1 = nearest_mm(facts, side, body);
        let s = anchor.edges_mm[side] - c_a1;
        if body & !behind == 0 || s <= ROW_MM || !less(s, c_a1) {
            continue;
        }
        let along_mm = distance_along(facts, side, body, anchor);
        if less(along_mm, 3.0 * c_a1) && best.is_none_or(|(_, known)| along_mm < known) {
            best = Some((front, along_mm));
        }
    }
    best.map(|(front, _)| front)
}

fn distance_along(facts: &Facts, side: usize, body: Set, anchor: &Anchor) -> f64 {
    members(body).fold(f64::INFINITY, |least, place| {
        least.min((facts.anchors[place].along_mm(side) - anchor.along_mm(side)).abs())
    })
}

/// The nearer anchors whose shear comes to a body once they have broken out: those within its reach along the edge to
/// which no other body of its row stands nearer.
fn assigned(facts: &Facts, side: usize, bodies: &[Set], place: usize, nearer: Set) -> Set {
    let c_a1 = nearest_mm(facts, side, bodies[place]);
    let in_row = |body: Set| (nearest_mm(facts, side, body) - c_a1).abs() <= ROW_MM;
    members(nearer)
        .filter(|&from| {
            let anchor = &facts.anchors[from];
            let own_mm = distance_along(facts, side, bodies[place], anchor);
            // Of two that are equally near, both take it: it cannot be said which.
            less(own_mm, 3.0 * c_a1)
                && bodies.iter().all(|&body| !in_row(body) || distance_along(facts, side, body, anchor) >= own_mm)
        })
        .fold(0, |set, from| set | only(from))
}

/// Whether all anchors of a body are studs welded to their plate.
fn is_welded(facts: &Facts, body: Set) -> bool {
    members(body).all(|place| facts.anchors[place].bolt.stud().is_some())
}

impl EdgeRow {
    fn new(facts: &Facts, side: usize, body: Set, carried: Set, case: Case) -> EdgeRow {
        let members: Vec<usize> = members(body).collect();
        let carried = super::set::members(carried).collect();
        let first = &facts.anchors[members[0]];
        let alike = members.iter().all(|&place| {
            let anchor = &facts.anchors[place];
            anchor.d_a == first.d_a && anchor.h_ef_mm == first.h_ef_mm
        });
        let edge_mm = nearest_mm(facts, side, body);
        let corner_mm = |corner: usize| {
            members.iter().fold(f64::INFINITY, |least, &place| least.min(facts.anchors[place].edges_mm[corner]))
        };
        let corners_mm = sides_across(side).map(corner_mm);
        let gap = widest_gap(&members.iter().map(|&place| facts.anchors[place].at).collect::<Vec<_>>());
        let h_a_mm = facts.thickness_mm;
        let wide_mm = 1.5 * edge_mm;
        let narrow = less(corners_mm[0], wide_mm) && less(corners_mm[1], wide_mm) && less(h_a_mm, wide_mm);
        let depth_mm = if narrow {
            edge_mm
                .min((corners_mm[0].max(corners_mm[1]) / 1.5).max(h_a_mm / 1.5).max(gap[0].distance_mm(gap[1]) / 3.0))
        } else {
            edge_mm
        };
        let (bodies, face) = faces(facts, side, &members, depth_mm);
        let mut row = EdgeRow {
            side,
            set: body,
            carried,
            case,
            alike,
            edge_mm,
            corners_mm,
            gap,
            depth_mm,
            narrow,
            area_mm2: union_area_mm2(&bodies, &face),
            basic: Basic::default(),
            members,
        };
        row.basic = Basic::new(facts, &row, &mut Sheet::quiet());
        row
    }

    /// The body on the face of the edge: across, position along the edge; up, depth below the surface.
    pub fn outline(&self, facts: &Facts) -> Vec<Polygon> {
        let (bodies, face) = faces(facts, self.side, &self.members, self.depth_mm);
        union_outline(&bodies, &face)
    }
}

fn faces(facts: &Facts, side: usize, members: &[usize], depth_mm: f64) -> (Vec<Rectangle>, Rectangle) {
    let reach_mm = 1.5 * depth_mm;
    let bodies = members
        .iter()
        .map(|&place| {
            let at_mm = facts.anchors[place].along_mm(side);
            Rectangle { left_mm: at_mm - reach_mm, right_mm: at_mm + reach_mm, front_mm: 0.0, rear_mm: reach_mm }
        })
        .collect();
    let outline = &facts.outline;
    let (left_mm, right_mm) =
        if side < 2 { (outline.front_mm, outline.rear_mm) } else { (outline.left_mm, outline.right_mm) };
    (bodies, Rectangle { left_mm, right_mm, front_mm: 0.0, rear_mm: facts.thickness_mm })
}
