//! Where a number comes from, and how far the text of that place can be trusted.

/// A published document, or an honest name for the lack of one.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Document {
    /// Short name with its edition, as it is printed beside a step.
    pub short: &'static str,
    /// Full title.
    pub title: &'static str,
}

/// A place in a document.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Clause {
    /// The document.
    pub document: &'static Document,
    /// Its clause, equation, table or page; empty where the whole document is meant.
    pub number: &'static str,
}

/// How far the transcription of a clause can be trusted.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Trust {
    /// Read in the issuing text or in a published book.
    Published,
    /// Read in another text that quotes it.
    Secondary,
    /// Recalled, not read again.
    Memory,
    /// Our own arithmetic from first principles.
    Derived,
}

/// What the user typed.
pub static INPUT: Document = Document { short: "input", title: "Given by the user" };
/// Equilibrium and elementary mechanics.
pub static STATICS: Document = Document { short: "statics", title: "Equilibrium and elementary mechanics" };
/// A rule of thumb.
pub static PRACTICE: Document = Document { short: "practice", title: "Common practice, no source" };
