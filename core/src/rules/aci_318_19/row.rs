//! Rows of anchors along an edge, and which row carries whose shear (Fig. R17.7.2.1b).

use crate::calc::order::put_in_order;
use alloc::vec::Vec;

use super::anchor::Anchor;
use super::body::widest_gap;
use super::chosen::{HOLE_TIGHT, HOLE_WASHERS};
use super::edge::Basic;
use super::facts::Facts;
use super::line::{EdgeLine, sides_across};
use super::set::{Set, connected, members, only};
use crate::calc::limit::less;
use crate::calc::{Detail, Sheet};
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
    /// On which side the edge is: 0 left, 1 right, 2 front, 3 rear.
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
    /// Where the edge ends, at its two corners.
    pub ends_mm: [f64; 2],
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
pub fn rows(facts: &Facts, line: &EdgeLine, acting: Set) -> Vec<EdgeRow> {
    let bodies = bodies(facts, line, acting);
    // Whether an anchor stands close behind a nearer row, which then carries it.
    let mut behind = 0;
    let mut spared = 0;
    let mut carried: Vec<Set> = bodies.clone();
    for later in 0..bodies.len() {
        for place in members(bodies[later]) {
            // An anchor without slack bears with its own share.
            if matches!(facts.anchors[place].hole, HOLE_TIGHT | HOLE_WASHERS) {
                continue;
            }
            let Some(front) = close_front(facts, line, &bodies[..later], behind, place) else { continue };
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
        let nearer = before & !same_row(facts, line, body, before);
        let taken = assigned(facts, line, &bodies, place, nearer);
        let case = match (taken != 0, carried[place] != body) {
            (true, _) => Case::All,
            (false, true) => Case::Front,
            (false, false) => Case::Own,
        };
        if (body | carried[place] | taken) & facts.own == 0 {
            continue;
        }
        found.push(EdgeRow::new(facts, line, body, carried[place] | taken, case));
    }
    found
}

/// Anchors at one distance whose bodies overlap along the edge, the nearest to the edge first.
fn bodies(facts: &Facts, line: &EdgeLine, acting: Set) -> Vec<Set> {
    let mut bodies = connected(acting, |a, b| {
        let (a, b) = (&facts.anchors[a], &facts.anchors[b]);
        let (c_a, c_b) = (line.distance_mm(a), line.distance_mm(b));
        (c_a - c_b).abs() <= ROW_MM
            && less((a.along_mm(line.side) - b.along_mm(line.side)).abs(), 3.0 * c_a.min(c_b))
            && !is_parted(facts, line, [a, b])
    });
    put_in_order(&mut bodies, |&a, &b| nearest_mm(facts, line, a).total_cmp(&nearest_mm(facts, line, b)));
    bodies
}

/// Whether an opening between the edge and two anchors parts what they break out.
fn is_parted(facts: &Facts, line: &EdgeLine, pair: [&Anchor; 2]) -> bool {
    let along_mm = pair.map(|anchor| anchor.along_mm(line.side));
    let (from_mm, to_mm) = (along_mm[0].min(along_mm[1]), along_mm[0].max(along_mm[1]));
    let is_between = |across: &EdgeLine| from_mm < across.at_mm && across.at_mm < to_mm;
    let [low, _] = sides_across(line.side);
    let mut parting = facts.lines.iter().filter(|across| across.side == low && is_between(across));
    parting.any(|across| pair.iter().any(|anchor| line.is_cut_by(across, anchor)))
}

fn nearest_mm(facts: &Facts, line: &EdgeLine, set: Set) -> f64 {
    members(set).fold(f64::INFINITY, |least, place| least.min(line.distance_mm(&facts.anchors[place])))
}

/// The anchors of a set at the same distance from the edge as a body.
fn same_row(facts: &Facts, line: &EdgeLine, body: Set, set: Set) -> Set {
    let c_a1 = nearest_mm(facts, line, body);
    members(set)
        .filter(|&place| (line.distance_mm(&facts.anchors[place]) - c_a1).abs() <= ROW_MM)
        .fold(0, |row, place| row | only(place))
}

/// The body before an anchor at less than that body's edge distance, overlapping it along the edge; the nearest one.
fn close_front(facts: &Facts, line: &EdgeLine, nearer: &[Set], behind: Set, place: usize) -> Option<usize> {
    let anchor = &facts.anchors[place];
    let mut best: Option<(usize, f64)> = None;
    for (front, &body) in nearer.iter().enumerate() {
        let c_a1 = nearest_mm(facts, line, body);
        let s = line.distance_mm(anchor) - c_a1;
        // A neighbour's anchors share the concrete, but no plate: its shear never comes to ours.
        let is_one_cabinet = members(body).any(|place| facts.anchors[place].owner == anchor.owner);
        if body & !behind == 0 || s <= ROW_MM || !less(s, c_a1) || !is_one_cabinet {
            continue;
        }
        let along_mm = distance_along(facts, line, body, anchor);
        if less(along_mm, 3.0 * c_a1) && best.is_none_or(|(_, known)| along_mm < known) {
            best = Some((front, along_mm));
        }
    }
    best.map(|(front, _)| front)
}

fn distance_along(facts: &Facts, line: &EdgeLine, body: Set, anchor: &Anchor) -> f64 {
    members(body).fold(f64::INFINITY, |least, place| {
        least.min((facts.anchors[place].along_mm(line.side) - anchor.along_mm(line.side)).abs())
    })
}

/// The nearer anchors whose shear comes to a body once they have broken out: those within its reach along the edge to
/// which no other body of its row stands nearer.
fn assigned(facts: &Facts, line: &EdgeLine, bodies: &[Set], place: usize, nearer: Set) -> Set {
    let c_a1 = nearest_mm(facts, line, bodies[place]);
    let in_row = |body: Set| (nearest_mm(facts, line, body) - c_a1).abs() <= ROW_MM;
    members(nearer)
        .filter(|&from| {
            let anchor = &facts.anchors[from];
            let own_mm = distance_along(facts, line, bodies[place], anchor);
            // Of two that are equally near, both take it: it cannot be said which.
            members(bodies[place]).any(|place| facts.anchors[place].owner == anchor.owner)
                && less(own_mm, 3.0 * c_a1)
                && bodies.iter().all(|&body| !in_row(body) || distance_along(facts, line, body, anchor) >= own_mm)
        })
        .fold(0, |set, from| set | only(from))
}

/// Whether all anchors of a body are studs welded to their plate.
fn is_welded(facts: &Facts, body: Set) -> bool {
    members(body).all(|place| facts.anchors[place].bolt.stud().is_some())
}

impl EdgeRow {
    fn new(facts: &Facts, line: &EdgeLine, body: Set, carried: Set, case: Case) -> EdgeRow {
        let members: Vec<usize> = members(body).collect();
        let carried = super::set::members(carried).collect();
        let first = &facts.anchors[members[0]];
        let alike = members.iter().all(|&place| {
            let anchor = &facts.anchors[place];
            anchor.d_a == first.d_a && anchor.h_ef_mm == first.h_ef_mm
        });
        let edge_mm = nearest_mm(facts, line, body);
        let ends_mm = ends_mm(facts, line, &members);
        let along_mm = |place: usize| facts.anchors[place].along_mm(line.side);
        let corner = |least: f64, distance_mm: f64| least.min(distance_mm);
        let corners_mm = [
            members.iter().map(|&place| along_mm(place) - ends_mm[0]).fold(f64::INFINITY, corner),
            members.iter().map(|&place| ends_mm[1] - along_mm(place)).fold(f64::INFINITY, corner),
        ];
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
        let mut row = EdgeRow {
            side: line.side,
            set: body,
            carried,
            case,
            alike,
            edge_mm,
            ends_mm,
            corners_mm,
            gap,
            depth_mm,
            narrow,
            area_mm2: 0.0,
            basic: Basic::default(),
            members,
        };
        let (bodies, face) = row.faces(facts);
        row.area_mm2 = union_area_mm2(&bodies, &face);
        row.basic = Basic::new(facts, &row, &mut Sheet::quiet());
        row
    }

    /// The body on the face of the edge: across, position along the edge; up, depth below the surface.
    pub fn outline(&self, facts: &Facts) -> Vec<Polygon> {
        let (bodies, face) = self.faces(facts);
        union_outline(&bodies, &face)
    }

    /// The line from the outer anchor of the row to the edge around one of the corners.
    pub fn line_to_corner(&self, facts: &Facts, corner: usize) -> Detail {
        let along_mm = |place: usize| facts.anchors[place].along_mm(self.side);
        let outer = |best: usize, place: usize| {
            let is_outer =
                if corner == 0 { along_mm(place) < along_mm(best) } else { along_mm(place) > along_mm(best) };
            if is_outer { place } else { best }
        };
        let at = facts.anchors[self.members.iter().fold(self.members[0], |best, &place| outer(best, place))].at;
        let end_mm = self.ends_mm[corner];
        facts.line([at, if self.side < 2 { Point::new(at.x_mm, end_mm) } else { Point::new(end_mm, at.y_mm) }])
    }

    fn faces(&self, facts: &Facts) -> (Vec<Rectangle>, Rectangle) {
        let reach_mm = 1.5 * self.depth_mm;
        let bodies = self
            .members
            .iter()
            .map(|&place| {
                let at_mm = facts.anchors[place].along_mm(self.side);
                Rectangle { left_mm: at_mm - reach_mm, right_mm: at_mm + reach_mm, front_mm: 0.0, rear_mm: reach_mm }
            })
            .collect();
        // Where the concrete is somebody else's the body ends too, but that is no corner.
        let clip = &facts.clip;
        let (low_mm, high_mm) =
            if self.side < 2 { (clip.front_mm, clip.rear_mm) } else { (clip.left_mm, clip.right_mm) };
        let face = Rectangle {
            left_mm: self.ends_mm[0].max(low_mm),
            right_mm: self.ends_mm[1].min(high_mm),
            front_mm: 0.0,
            rear_mm: facts.thickness_mm,
        };
        (bodies, face)
    }
}

/// Where the edge ends on both sides of a row: at the sides of the slab, or at an opening that lies between the row and
/// the edge, or beside it.
fn ends_mm(facts: &Facts, line: &EdgeLine, row: &[usize]) -> [f64; 2] {
    let [low, high] = sides_across(line.side);
    let mut ends_mm = [f64::NEG_INFINITY, f64::INFINITY];
    for across in facts.lines.iter().filter(|across| across.side == low || across.side == high) {
        let cuts = |&place: &usize| {
            let anchor = &facts.anchors[place];
            across.opening.is_none() || (across.distance_mm(anchor) > 0.0 && line.is_cut_by(across, anchor))
        };
        if row.iter().any(cuts) {
            let end_mm = &mut ends_mm[usize::from(across.side == high)];
            *end_mm = if across.side == low { end_mm.max(across.at_mm) } else { end_mm.min(across.at_mm) };
        }
    }
    ends_mm
}
