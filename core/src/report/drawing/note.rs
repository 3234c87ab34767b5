use alloc::string::String;

use super::board::{Board, Label};
use super::lettering::Lettering;
use super::name::{PUSH_TOWARDS, filled};
use super::number_text::{direction_text, force_text};
use super::of::Of;
use super::patch::Spot;
use super::scene::Scene;
use crate::calc::System;

/// The push and its direction in words.
pub fn push_text(scene: &Scene, system: System) -> String {
    let push = &scene.push;
    filled(
        PUSH_TOWARDS,
        &[
            &force_text(push.force_n, system),
            &direction_text(push.direction_rad),
        ],
    )
}

/// Adds a clause to a title.
pub fn tell(title: &mut String, clause: &str) {
    title.push_str("; ");
    title.push_str(clause);
}

/// Height of a line of notes, px.
const LINE_PX: f64 = 17.0;

/// Writes lines beneath a drawing that is so high until now; returns its full height.
#[inline(never)]
pub fn write_notes(board: &mut Board, height: f64, notes: &[String]) -> f64 {
    let middle = board.width() / 2.0;
    for (line, text) in notes.iter().enumerate() {
        let spot = Spot::centred([middle, height + LINE_PX * (line as f64 + 0.5)]);
        board.set(&Label::new(Lettering::Note, text, Of::Nothing), &spot);
    }
    height + LINE_PX * notes.len() as f64 + 2.0
}
