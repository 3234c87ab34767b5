//! The kinds of anchors that the chapter knows.

/// How an anchor holds in the concrete.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum AnchorKind {
    /// Cast in, with a head, nut or washer, or a welded stud.
    Headed,
    /// Cast in, a J or L bolt.
    Hooked,
    /// Expansion anchor set by a torque.
    TorqueExpansion,
    /// Expansion anchor set by driving a part of it.
    DisplacementExpansion,
    /// Undercut anchor.
    Undercut,
    /// Screw anchor.
    Screw,
    /// Adhesive anchor.
    Adhesive,
}

/// The words for them in the file.
pub static KIND_WORDS: &[&str] =
    &["cast-headed", "cast-hooked", "expansion-torque", "expansion-displacement", "undercut", "screw", "adhesive"];

const KINDS: [AnchorKind; 7] = [
    AnchorKind::Headed,
    AnchorKind::Hooked,
    AnchorKind::TorqueExpansion,
    AnchorKind::DisplacementExpansion,
    AnchorKind::Undercut,
    AnchorKind::Screw,
    AnchorKind::Adhesive,
];

impl AnchorKind {
    /// The kind of a word's place; the common one where none is chosen.
    pub fn of(place: Option<usize>) -> AnchorKind {
        place.and_then(|place| KINDS.get(place).copied()).unwrap_or(AnchorKind::Headed)
    }

    /// Whether it is installed in hardened concrete.
    pub fn is_drilled(self) -> bool {
        !matches!(self, AnchorKind::Headed | AnchorKind::Hooked)
    }

    /// Whether it is drilled and holds without adhesive.
    pub fn is_mechanical(self) -> bool {
        self.is_drilled() && self != AnchorKind::Adhesive
    }
}
