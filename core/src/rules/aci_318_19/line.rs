//! Edges of the concrete: the sides of the slab, and the sides of its openings.

use alloc::vec::Vec;

use super::anchor::Anchor;
use super::set::{Set, only};
use crate::calc::limit::less;
use crate::geometry::{Point, Rectangle};

/// One edge. Sides: 0 on the left of the anchors, 1 on the right, 2 in front, 3 at the rear.
#[derive(Clone, PartialEq, Debug)]
pub struct EdgeLine {
    /// On which side of the anchors it lies.
    pub side: usize,
    /// Where it lies across its own direction.
    pub at_mm: f64,
    /// Where it begins along its own direction; the side of a slab has no ends.
    pub from_mm: f64,
    /// Where it ends.
    pub to_mm: f64,
    /// The opening whose side it is, if it is one.
    pub opening: Option<usize>,
    /// The anchors that it can concern.
    pub reach: Set,
}

/// The edges of a slab with openings: its sides that are not far, then four sides of each opening.
pub fn lines(outline: &Rectangle, openings: &[Rectangle]) -> Vec<EdgeLine> {
    let endless = |side, at_mm: f64| EdgeLine {
        side,
        at_mm,
        from_mm: f64::NEG_INFINITY,
        to_mm: f64::INFINITY,
        opening: None,
        reach: 0,
    };
    let sides = [outline.left_mm, outline.right_mm, outline.front_mm, outline.rear_mm];
    let mut lines: Vec<EdgeLine> = Vec::new();
    for (side, &at_mm) in sides.iter().enumerate() {
        let far_mm = if side % 2 == 0 { f64::NEG_INFINITY } else { f64::INFINITY };
        if at_mm != far_mm {
            lines.push(endless(side, at_mm));
        }
    }
    for (place, opening) in openings.iter().enumerate() {
        // What lies to the left of an opening has its left side as an edge on the right.
        let facing = [
            (0, opening.right_mm, opening.front_mm, opening.rear_mm),
            (1, opening.left_mm, opening.front_mm, opening.rear_mm),
            (2, opening.rear_mm, opening.left_mm, opening.right_mm),
            (3, opening.front_mm, opening.left_mm, opening.right_mm),
        ];
        for (side, at_mm, from_mm, to_mm) in facing {
            lines.push(EdgeLine { side, at_mm, from_mm, to_mm, opening: Some(place), reach: 0 });
        }
    }
    lines
}

/// Notes of every edge which anchors it can concern.
pub fn note_reach(lines: &mut [EdgeLine], anchors: &[Anchor]) {
    for place in 0..lines.len() {
        let line = &lines[place];
        let is_seen =
            |anchor: &Anchor| line.concerns(anchor) && !lines.iter().any(|nearer| nearer.shields(anchor, line));
        let seen = anchors.iter().enumerate().filter(|(_, anchor)| is_seen(anchor));
        lines[place].reach = seen.fold(0, |set, (anchor, _)| set | only(anchor));
    }
}

/// The two sides at right angles to one.
pub fn sides_across(side: usize) -> [usize; 2] {
    if side < 2 { [2, 3] } else { [0, 1] }
}

impl EdgeLine {
    /// How far an anchor stands from the line, positive on the side of the concrete.
    pub fn distance_mm(&self, anchor: &Anchor) -> f64 {
        let at = anchor.at;
        match self.side {
            0 => at.x_mm - self.at_mm,
            1 => self.at_mm - at.x_mm,
            2 => at.y_mm - self.at_mm,
            _ => self.at_mm - at.y_mm,
        }
    }

    /// Whether a body that reaches so far to both sides of a place meets the edge between its ends.
    pub fn meets(&self, along_mm: f64, reach_mm: f64) -> bool {
        self.opening.is_none() || (less(self.from_mm, along_mm + reach_mm) && less(along_mm - reach_mm, self.to_mm))
    }

    /// Whether the edge is one for the shear of an anchor: it lies before it, and a breakout body 1.5 c_a1 to both sides
    /// meets it.
    pub fn concerns(&self, anchor: &Anchor) -> bool {
        let distance_mm = self.distance_mm(anchor);
        self.opening.is_none() || (distance_mm > 0.0 && self.meets(anchor.along_mm(self.side), 1.5 * distance_mm))
    }

    /// Whether it lies before a farther edge, seen from an anchor: an opening right before the anchor is its edge, and
    /// the concrete behind it is none of its own.
    fn shields(&self, anchor: &Anchor, from: &EdgeLine) -> bool {
        let distance_mm = self.distance_mm(anchor);
        let along_mm = anchor.along_mm(self.side);
        self.opening.is_some()
            && self.opening != from.opening
            && self.side == from.side
            && distance_mm > 0.0
            && less(distance_mm, from.distance_mm(anchor))
            && self.from_mm <= along_mm
            && along_mm <= self.to_mm
    }

    /// Whether a side of an opening lies between the edge and an anchor, at right angles to the edge.
    pub fn is_cut_by(&self, across: &EdgeLine, anchor: &Anchor) -> bool {
        let at_mm = anchor.along_mm(across.side);
        let (from_mm, to_mm) = (at_mm.min(self.at_mm), at_mm.max(self.at_mm));
        across.opening.is_some()
            && across.opening != self.opening
            && less(across.from_mm, to_mm)
            && less(from_mm, across.to_mm)
    }

    /// The place on the edge that is nearest to a place.
    pub fn nearest(&self, at: Point) -> Point {
        let between = |along_mm: f64| along_mm.max(self.from_mm).min(self.to_mm);
        if self.side < 2 { Point::new(self.at_mm, between(at.y_mm)) } else { Point::new(between(at.x_mm), self.at_mm) }
    }
}
