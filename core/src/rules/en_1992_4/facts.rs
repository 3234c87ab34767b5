//! The anchorage as EN 1992-4 sees it: what no load changes. N, mm and MPa throughout.

use alloc::vec::Vec;

use super::bolt::Bolt;
use super::coverage;
use super::fields as f;
use crate::calc::{Detail, Outcome, Sheet, StepId};
use crate::geometry::{Point, Polygon, Rectangle};
use crate::input::field::Values;
use crate::rules::anchor::{AnchorPlace, AnchorSite, Cracking};
use crate::rules::anchor_set::{ANCHORS_MAX, Set};

/// The anchorage.
pub struct Facts {
    /// What is said for all fasteners.
    pub values: Values,
    /// The fasteners: our own in the order of the file, then those of the neighbours.
    pub anchors: Vec<Anchor>,
    /// How many are our own.
    pub own: usize,
    /// The slab in plan.
    pub outline: Rectangle,
    /// Where bodies are cut: at the slab's edges, and at the lines beyond which the concrete is somebody else's.
    pub cut: Rectangle,
    /// Thickness of the slab.
    pub h: f64,
    /// Characteristic strength of the slab.
    pub f_ck_slab: f64,
    /// Strength that the equations take.
    pub f_ck: f64,
    /// Whether it counts as cracked.
    pub is_cracked: bool,
    /// Whether annex C applies.
    pub is_seismic: bool,
    /// The smallest spacing between two fasteners; infinite for one alone.
    pub closest_mm: f64,
    /// Why the rule does not reach this anchorage, if it does not.
    pub uncovered: Option<StepId>,
}

/// One fastener.
pub struct Anchor {
    /// Where it stands.
    pub at: Point,
    /// Its steel.
    pub bolt: Bolt,
    /// Diameter.
    pub d: f64,
    /// Stressed cross section.
    pub a_s: f64,
    /// Bearing area of the head; not a number where it has none.
    pub a_h: f64,
    /// Effective embedment.
    pub h_ef: f64,
    /// Outside diameter for edge failure.
    pub d_nom: f64,
    /// Distances to the left, right, front and rear edge.
    pub edges_mm: [f64; 4],
}

/// All four edges.
pub const ALL_SIDES: [usize; 4] = [0, 1, 2, 3];

/// Largest strength that the equations take (7.2.1.4, from memory).
pub const F_CK_MAX: f64 = 60.0;

impl Facts {
    /// The facts of a site.
    pub fn new(site: &AnchorSite) -> Facts {
        let is_seismic = site.values.choice(f::CATEGORY) != Some(f::STATIC);
        let slab = site.slab;
        let mut facts = Facts {
            values: site.values.clone(),
            anchors: Vec::new(),
            own: site.own,
            outline: slab.outline,
            cut: slab.outline.clipped(&slab.boundary).unwrap_or(slab.outline),
            h: slab.thickness_mm,
            f_ck_slab: slab.strength_mpa,
            f_ck: f64::min(slab.strength_mpa, F_CK_MAX),
            is_cracked: is_seismic || slab.cracking == Cracking::Cracked,
            is_seismic,
            closest_mm: f64::INFINITY,
            uncovered: None,
        };
        facts.anchors = site.anchors.iter().map(|place| Anchor::new(&facts, place)).collect();
        for (place, anchor) in facts.anchors.iter().enumerate().take(site.own) {
            for other in &facts.anchors[place + 1..] {
                facts.closest_mm = facts.closest_mm.min(anchor.at.distance_mm(other.at));
            }
        }
        facts.uncovered = coverage::uncovered(&facts, &slab.openings);
        facts
    }

    /// The number of a field, where it is known.
    pub fn number(&self, field: usize) -> Option<f64> {
        self.values.number(field)
    }

    /// Whether any of these fasteners is our own; a group of neighbours alone is nobody's finding.
    pub fn has_own(&self, members: &[usize]) -> bool {
        members.iter().any(|&place| place < self.own)
    }

    /// Our own fasteners.
    pub fn own_anchors(&self) -> &[Anchor] {
        &self.anchors[..self.own]
    }

    /// Our own fasteners of a set.
    pub fn own_of(&self, set: Set) -> Set {
        if self.own >= ANCHORS_MAX { set } else { set & ((1 << self.own) - 1) }
    }

    /// The number of one of two fields, for cracked or for uncracked concrete, where it is known.
    pub fn by_cracking(&self, [cracked, uncracked]: [usize; 2]) -> Option<f64> {
        self.number(if self.is_cracked { cracked } else { uncracked })
    }

    /// Whether this word of a choice was taken.
    pub fn is(&self, field: usize, place: usize) -> bool {
        self.values.choice(field) == Some(place)
    }

    /// Whether the fasteners are cast-in headed ones.
    pub fn is_headed(&self) -> bool {
        self.is(f::FASTENER, f::HEADED)
    }

    /// Whether they are bonded.
    pub fn is_bonded(&self) -> bool {
        self.is(f::FASTENER, f::BONDED)
    }

    /// A line between two points, as the detail of a length.
    pub fn line(&self, ends: [Point; 2]) -> Detail {
        Detail::Shape(ends.iter().map(|end| [end.x_mm, end.y_mm]).collect())
    }

    /// The line to an edge from the fastener of a group that is nearest to it, among some sides.
    pub fn shortest_line_to_edge(&self, members: &[usize], sides: &[usize]) -> Detail {
        let mut best = (members[0], sides[0]);
        for &place in members {
            for &side in sides {
                if self.anchors[place].edges_mm[side] < self.anchors[best.0].edges_mm[best.1] {
                    best = (place, side);
                }
            }
        }
        let at = self.anchors[best.0].at;
        let outline = &self.outline;
        let to = match best.1 {
            0 => Point::new(outline.left_mm, at.y_mm),
            1 => Point::new(outline.right_mm, at.y_mm),
            2 => Point::new(at.x_mm, outline.front_mm),
            _ => Point::new(at.x_mm, outline.rear_mm),
        };
        self.line([at, to])
    }
}

/// Corners of figures, each figure ended by a pair of NaN.
pub fn corners(figures: &[Polygon]) -> Detail {
    let mut corners = Vec::new();
    for (place, figure) in figures.iter().enumerate() {
        if place > 0 {
            corners.push([f64::NAN, f64::NAN]);
        }
        corners.extend(figure.corners.iter().map(|at| [at.x_mm, at.y_mm]));
    }
    Detail::Shape(corners)
}

/// A force against a resistance. A resistance of nothing is never enough.
pub fn compared(demand: f64, resistance: f64) -> Outcome {
    Outcome::Compared { value: demand, limit: resistance, utilisation: demand / resistance }
}

/// A sum over the members of a group, in their order.
pub fn sum(members: &[usize], of: impl Fn(usize) -> f64) -> f64 {
    let mut total = of(members[0]);
    for &place in &members[1..] {
        total += of(place);
    }
    total
}

/// The two edges at right angles to one.
pub fn sides_across(side: usize) -> [usize; 2] {
    if side < 2 { [2, 3] } else { [0, 1] }
}

impl Anchor {
    fn new(facts: &Facts, place: &AnchorPlace) -> Anchor {
        let (at, outline) = (place.at, &facts.outline);
        let bolt = Bolt::new(&place.values);
        let quiet = &mut Sheet::quiet();
        Anchor {
            at,
            bolt,
            d: bolt.d,
            a_s: bolt.stress_area(quiet),
            a_h: if facts.is_headed() { bolt.bearing_area(quiet) } else { f64::NAN },
            h_ef: place.values.given(f::EMBEDMENT),
            d_nom: facts.number(f::D_NOM).unwrap_or(bolt.d),
            edges_mm: [
                at.x_mm - outline.left_mm,
                outline.right_mm - at.x_mm,
                at.y_mm - outline.front_mm,
                outline.rear_mm - at.y_mm,
            ],
        }
    }

    /// The distance to the nearest edge.
    pub fn nearest_edge_mm(&self) -> f64 {
        self.edges_mm.iter().fold(f64::INFINITY, |least, &edge| least.min(edge))
    }

    /// Where it stands along an edge (0 left, 1 right, 2 front, 3 rear).
    pub fn along_mm(&self, side: usize) -> f64 {
        if side < 2 { self.at.y_mm } else { self.at.x_mm }
    }
}
