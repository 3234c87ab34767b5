//! A row of the same cabinet side by side, tied to each other or not. Asked by the study of rows; the check itself is of
//! one cabinet.

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*, Values};

/// Most cabinets of a row.
pub const CABINETS_MAX: usize = 8;

/// The row, as it was read.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Row {
    /// How many cabinets, as it was given; this one stands at the left end.
    pub cabinets: f64,
    /// From the middle of one to the middle of the next.
    pub pitch_mm: f64,
    /// How they are tied.
    pub tied: Tied,
    /// Height of bars at the top; none where the cabinet's height is meant.
    pub tie_height_mm: Option<f64>,
}

/// How the cabinets of a row are tied to each other.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tied {
    /// Not at all.
    Not,
    /// So stiffly, at the base or at base and top, that the row is one body.
    AsOneBody,
    /// At the top only, by bars with pinned ends.
    AtTheTop,
}

impl Row {
    /// How many cabinets; none where that is no whole number.
    pub fn count(&self) -> Option<usize> {
        (self.cabinets % 1.0 == 0.0).then_some(self.cabinets as usize)
    }

    /// As it was read.
    pub fn new(values: &Values) -> Row {
        let tied = [Tied::Not, Tied::AsOneBody, Tied::AtTheTop];
        Row {
            cabinets: values.given(COUNT),
            pitch_mm: values.given(PITCH),
            tied: values.choice(TIED).map_or(Tied::Not, |place| tied[place]),
            tie_height_mm: values.number(TIE_HEIGHT),
        }
    }
}

fields! {
    COUNT "cabinets" Number { kind: Kind::Number, min: 2.0, max: CABINETS_MAX as f64 }, Fault,
        "Cabinets in the row", "A whole number. This cabinet stands at the left end, the others to the right of it.", "", [];
    PITCH "pitch_mm" Number { kind: Kind::Length, min: 50.0, max: 30_000.0 }, Fault,
        "Pitch", "From the middle of one cabinet to the middle of the next; at least the cabinet's width.", "", [];
    TIED "tied" Choice(&["no", "one-body", "top"]), Word(0),
        "Tied to each other", "Ties at the base make one body of the row only where they carry the shear between the cabinets; that is theirs to prove.", "",
        ["not tied", "at the base, or at base and top: one body", "at the top only, by bars with pinned ends"];
    TIE_HEIGHT "tie_height_mm" Number { kind: Kind::Length, min: 1.0, max: 20_000.0 }, Unknown,
        "Height of the bars at the top", "Above the floor. Empty takes the cabinet's height.", "", [];
}
