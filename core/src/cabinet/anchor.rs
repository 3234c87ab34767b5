//! An anchor: where a bolt holds the cabinet down.

use alloc::string::String;

use crate::calc::Kind;
use crate::fields;
use crate::geometry::Point;
use crate::input::field::{Absent::*, FieldShape::*, Values};

/// An anchor pulls back where it is lifted and never pushes.
#[derive(Clone, PartialEq, Debug)]
pub struct Anchor {
    /// Its name, where it has one; no other anchor has it.
    pub name: Option<String>,
    /// Where it stands.
    pub at: Point,
    /// Where it was drilled, once somebody has measured that.
    pub as_built: Option<Point>,
    /// The pull that lifts it by one millimetre, where it is known.
    pub stiffness_n_per_mm: Option<f64>,
    /// The pull that bends its clip or the corner of the base frame by one millimetre, where it is known.
    pub clip_stiffness_n_per_mm: Option<f64>,
    /// The bracket or clip angle through which it holds, where its shape is given.
    pub bracket_mm: Option<[f64; 2]>,
    /// What this anchor has otherwise than the anchorage says for all, in the order of the anchor rule's fields; unknown
    /// where it has nothing of its own. Empty without an anchorage.
    pub own: Values,
}

impl Anchor {
    /// What holds for this anchor: its own values put in place of those for all.
    pub fn values(&self, of_all: &Values) -> Values {
        of_all.replaced_by(&self.own)
    }
}

fields! {
    NAME "name" Name, Unknown,
        "Name", "What it is called on drawings and sheets; without one it is counted.", "", [];
    AT "at_mm" Numbers { kind: Kind::Length, count: 2, min: -30_000.0, max: 30_000.0 }, Fault,
        "Position", "Where it meets the floor: to the right and to the rear of the middle of the base.", "", [];
    AS_BUILT "as_built_mm" Numbers { kind: Kind::Length, count: 2, min: -30_000.0, max: 30_000.0 }, Unknown,
        "Position as drilled", "Where the hole really is, measured in the same axes as the position. When one is given, everything is checked a second time with it.", "", [];
    STIFFNESS "stiffness_n_per_mm" Number { kind: Kind::Stiffness, min: 1.0, max: 1e9 }, Unknown,
        "Stiffness",
        "The pull that lifts it by a millimetre, with its bracket or clip, from a test or its approval. Left empty, it is that of the steel over the embedment, and the result is given as a span.",
        "", [];
    CLIP "clip_stiffness_n_per_mm" Number { kind: Kind::Stiffness, min: 1.0, max: 1e9 }, Unknown,
        "Stiffness of its clip", "Of the clip angle, the bracket or the corner of the base frame through which it holds. It comes in series with the anchor and often governs.", "", [];
    BRACKET_TOE "bracket_toe_mm" Number { kind: Kind::Length, min: 1.0, max: 2_000.0 }, Unknown,
        "Bolt to the toe of its bracket", "From the bolt to the far end of the clip that presses on the floor. With the next number it gives how much the clip pries; without both, prying is not counted.", "", [];
    BRACKET_LEVER "bracket_lever_mm" Number { kind: Kind::Length, min: 0.0, max: 2_000.0 }, Unknown,
        "Bolt to the cabinet's pull", "From the bolt to the line along which the cabinet pulls the clip up: its upright leg, or the bolts through it.", "", [];
}
