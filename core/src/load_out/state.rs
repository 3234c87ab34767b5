//! A state: what is in the cabinet, and what is drawn out, at one time of its life.

use alloc::string::String;
use alloc::vec::Vec;

use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*};

/// A state of the user's own.
#[derive(Clone, PartialEq, Debug)]
pub struct State {
    /// Its name, which no other state has.
    pub name: String,
    /// Places of the contents that are not there, rising.
    pub without: Vec<usize>,
    /// Places of contents, rising, with how far each is drawn out in this state.
    pub drawn_out_mm: Vec<(usize, f64)>,
}

/// Most states of the user's own.
pub const STATES_MAX: usize = 100;

/// Whether a name belongs to the states that always exist, in whatever letters: full, empty, lowest 1, highest 12,
/// leaning left 3.
pub fn is_reserved(name: &str) -> bool {
    let name = name.trim().to_ascii_lowercase();
    let counted = |word: &str| {
        let rest = name.strip_prefix(word).unwrap_or("");
        !rest.is_empty() && rest.bytes().all(|byte| byte.is_ascii_digit())
    };
    let leans = || super::load_state::LEANING.iter().any(|(word, ..)| counted(word));
    name == "full" || name == "empty" || counted("lowest ") || counted("highest ") || leans()
}

fields! {
    NAME "name" Name, Fault,
        "Name", "What this state is called, such as \u{201c}service\u{201d}. Full and empty always exist.", "", [];
    WITHOUT "without" NamesOfContents, Unknown,
        "Without", "The contents that are not in the cabinet in this state.", "", [];
    DRAWN_OUT "drawn_out_mm" NumbersOfContents { kind: Kind::Length, min: 0.0, max: 20_000.0 }, Unknown,
        "Drawn out", "How far contents are drawn out to the front in this state.", "", [];
}
