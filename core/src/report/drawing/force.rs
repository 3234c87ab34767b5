use alloc::string::String;

use super::board::{Board, Label, Need};
use super::lettering::Lettering;
use super::number_text::small_force_text;
use super::of::Of;
use super::order::ordered;
use super::patch::Patch;
use crate::calc::System;

/// The number of a force beside the thing that feels it.
#[derive(Clone, Copy, Debug)]
pub struct ForceLabel {
    /// The force, by which the numbers are ranked.
    pub force_n: f64,
    /// How many forces were added up in it.
    pub count: usize,
    /// How it is lettered.
    pub lettering: Lettering,
    /// The thing.
    pub thing: Patch,
    /// The side of the thing on which it should stand.
    pub towards: [f64; 2],
    /// What it stands for.
    pub of: Of,
    /// Which working it opens.
    pub at: Option<u16>,
}

/// With more numbers than this, those that would clutter are left out and counted.
const CROWD: usize = 14;

/// Writes the numbers, the largest force first; returns how many found no room.
pub fn write_forces(board: &mut Board, labels: &[ForceLabel], system: System) -> usize {
    let largest_n = labels.iter().map(|one| one.force_n).fold(0.0, f64::max);
    let mut left_out = 0;
    for place in ordered(labels.len(), &|place| -labels[place].force_n) {
        let one = &labels[place];
        // That nothing is felt is told by the thing itself; the number may go where it would cover another.
        let need = if labels.len() > CROWD || one.force_n == 0.0 { Need::May } else { Need::Must };
        let mut text = String::new();
        if one.count > 1 {
            text.push_str("Σ\u{a0}");
        }
        text.push_str(&small_force_text(one.force_n, largest_n, system));
        let label = Label { text: &text, lettering: one.lettering, of: one.of, at: one.at, need };
        if !board.write_around(&label, &one.thing, one.towards) && one.force_n > 0.0 {
            left_out += 1;
        }
    }
    left_out
}
