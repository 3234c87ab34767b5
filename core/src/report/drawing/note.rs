use alloc::string::String;

use super::board::{Board, Label};
use super::lettering::Lettering;
use super::name::{PUSH_TOWARDS, filled};
use super::number_text::{direction_text, force_text};
use super::of::Of;
use super::scene::Scene;
use super::spot::Spot;
use crate::calc::System;

/// The push and its direction in words.
pub fn push_text(scene: &Scene, system: System) -> String {
    let push = &scene.push;
    filled(PUSH_TOWARDS, &[&force_text(push.force_n, system), &direction_text(push.direction_rad)])
}

/// Adds a clause to a title.
pub fn tell(title: &mut String, clause: &str) {
    title.push_str("; ");
    title.push_str(clause);
}

/// Height of a line of notes, px.
const LINE_PX: f64 = 17.0;

/// Writes notes beneath a drawing that is so high until now, each on lines of its own; returns its full height.
#[inline(never)]
pub fn write_notes(board: &mut Board, height: f64, notes: &[String]) -> f64 {
    let mut lines = 0.0;
    for note in notes {
        let mut line = String::new();
        for word in note.split(' ') {
            let longer = if line.is_empty() { String::from(word) } else { [&line, word].join(" ") };
            if !line.is_empty() && Lettering::Note.width_px(&longer) > board.width() - 4.0 {
                write_line(board, height + LINE_PX * lines, &line);
                lines += 1.0;
                line = String::from(word);
            } else {
                line = longer;
            }
        }
        write_line(board, height + LINE_PX * lines, &line);
        lines += 1.0;
    }
    height + LINE_PX * lines + 2.0
}

fn write_line(board: &mut Board, top: f64, line: &str) {
    let spot = Spot::centred([board.width() / 2.0, top + LINE_PX / 2.0]);
    board.set(&Label::new(Lettering::Note, line, Of::Nothing), &spot);
}
