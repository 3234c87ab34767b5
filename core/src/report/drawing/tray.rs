//! What the cabinet carries, in the elevation: boxes with their masses as numbers.

use alloc::string::String;
use alloc::vec::Vec;

use super::board::{Board, Label};
use super::elevation_view::ElevationView;
use super::lettering::Lettering;
use super::mark::Shape;
use super::number_text::{count_text, mass_text};
use super::of::Of;
use super::order::ordered;
use super::patch::Patch;
use super::scene::Scene;
use super::spot::Spot;
use crate::calc::System;

/// How dark the heaviest box is; a number in ink stays readable on it.
const DARKEST: f64 = 0.36;
/// The lowest box that takes a line of text, px.
const LINE_PX: f64 = 13.0;
/// The lowest stack of thin boxes that is told together, px.
const STACK_PX: f64 = 16.0;

/// Draws the boxes, the farthest first, and returns their patches in the order of the file.
pub fn draw_trays(board: &mut Board, scene: &Scene, view: &ElevationView) -> Vec<Patch> {
    let patches: Vec<Patch> = scene.contents.iter().map(|one| view.box_patch(one)).collect();
    let heaviest_kg = scene.contents.iter().map(|one| one.mass_kg).fold(0.0, f64::max);
    for place in ordered(patches.len(), &|place| -view.depth(scene.contents[place].footprint())) {
        let corners = patches[place].corners();
        board.polygon("tray-back", &corners);
        let share = if heaviest_kg > 0.0 { scene.contents[place].mass_kg / heaviest_kg } else { 0.0 };
        let tray = board.polygon("tray", &corners);
        tray.of = Of::Contents(place);
        tray.tone = Some(DARKEST * share);
    }
    patches
}

/// The boxes whose masses are to be written.
#[derive(Clone, Copy)]
pub struct Trays<'a> {
    /// What they are.
    pub scene: &'a Scene,
    /// Where they are, in the order of the file.
    pub patches: &'a [Patch],
    /// The right wall of the cabinet, px.
    pub wall: f64,
    /// The system of the numbers.
    pub system: System,
}

impl Trays<'_> {
    /// Writes the masses; boxes too thin for a line are told together. Returns the mass that found no room.
    pub fn write_masses(&self, board: &mut Board) -> f64 {
        let mass_kg = |place: usize| self.scene.contents[place].mass_kg;
        let mut left_out_kg = 0.0;
        let mut stack: Vec<usize> = Vec::new();
        for place in ordered(self.patches.len(), &|place| self.patches[place].top + self.patches[place].bottom) {
            if self.write_inside(board, place) {
                left_out_kg += self.write_stack(board, &mut stack);
                continue;
            }
            // A stack goes on while its boxes are alike, or while it is too low for a line.
            let is_alike = stack.iter().all(|&other| mass_kg(other) == mass_kg(place));
            if !is_alike && self.hull(&stack).extent().height >= STACK_PX {
                left_out_kg += self.write_stack(board, &mut stack);
            }
            stack.push(place);
        }
        left_out_kg + self.write_stack(board, &mut stack)
    }

    fn write_inside(&self, board: &mut Board, place: usize) -> bool {
        let patch = &self.patches[place];
        let text = mass_text(self.scene.contents[place].mass_kg, self.system);
        let extent = patch.extent();
        let spare = extent.width - Lettering::Mass.width_px(&text) - 4.0;
        if extent.height < LINE_PX || spare < 0.0 {
            return false;
        }
        let spots = row(&text, [patch.left + 2.0 + spare.min(2.0), patch.middle()[1]], spare - 2.0);
        board.write(&Label::new(Lettering::Mass, &text, Of::Contents(place)), &spots).is_some()
    }

    /// One number for a stack of boxes, with a bracket where there are several; returns the mass that found no room.
    fn write_stack(&self, board: &mut Board, stack: &mut Vec<usize>) -> f64 {
        if stack.is_empty() {
            return 0.0;
        }
        let places = core::mem::take(stack);
        let hull = self.hull(&places);
        let is_one = places.len() == 1;
        let text = self.stack_text(&places);
        let of = if is_one { Of::Contents(places[0]) } else { Of::Nothing };
        let label = Label::new(Lettering::MassOver, &text, of);
        let level = hull.middle()[1];
        let indent = if is_one { 4.0 } else { 10.0 };
        let spare = hull.extent().width - indent - Lettering::MassOver.width_px(&text) - 2.0;
        let mut spots = if spare >= 0.0 { row(&text, [hull.left + indent, level], spare) } else { Vec::new() };
        if let Some(patch) = board.write(&label, &spots) {
            // A plate under the number, for the sides of thin boxes would strike it through.
            board.polygon("plate", &patch.grown(1.0).corners());
            if !is_one {
                draw_bracket(board, &hull, [hull.left + 3.0, hull.left + 6.0]);
            }
            return 0.0;
        }
        let x = hull.right.max(self.wall) + indent;
        let width = Lettering::MassOver.width_px(&text);
        spots.clear();
        for step in 0..=6 {
            let away = f64::from(step) * 7.0;
            spots.push(Spot::from_left(x, level + away, width).costing(away));
            spots.push(Spot::from_left(x, level - away, width).costing(away + 1.0));
        }
        let Some(patch) = board.write(&label, &spots) else {
            return self.mass_kg(&places);
        };
        if !is_one {
            draw_bracket(board, &hull, [x - 5.0, x - 8.0]);
        }
        board.line("tie", [hull.right - 3.0, level], [patch.left - 2.0, patch.middle()[1]]);
        0.0
    }

    fn mass_kg(&self, places: &[usize]) -> f64 {
        places.iter().map(|&place| self.scene.contents[place].mass_kg).sum()
    }

    /// The mass of one box, the mass of every box with their number, or the sum of different ones.
    fn stack_text(&self, places: &[usize]) -> String {
        let first_kg = self.scene.contents[places[0]].mass_kg;
        let mut text = String::new();
        let mut mass_kg = first_kg;
        if places.iter().any(|&place| self.scene.contents[place].mass_kg != first_kg) {
            text.push_str("Σ\u{a0}");
            mass_kg = self.mass_kg(places);
        } else if places.len() > 1 {
            text.push_str(&count_text(places.len()));
            text.push_str("\u{a0}×\u{a0}");
        }
        text.push_str(&mass_text(mass_kg, self.system));
        text
    }

    /// The patch around all of these boxes; nothing around none.
    fn hull(&self, places: &[usize]) -> Patch {
        let nothing = Patch { left: 0.0, top: 0.0, right: 0.0, bottom: 0.0 };
        let Some((&first, others)) = places.split_first() else {
            return nothing;
        };
        others.iter().fold(self.patches[first], |hull, &place| hull.with(&self.patches[place]))
    }
}

/// Spots in a row: from the given start, and farther to the right as far as there is room.
fn row(text: &str, [x, y]: [f64; 2], spare: f64) -> Vec<Spot> {
    let width = Lettering::Mass.width_px(text);
    let mut spots = Vec::new();
    for step in 0..=6 {
        let aside = spare.max(0.0) * f64::from(step) / 6.0;
        spots.push(Spot::from_left(x + aside, y, width).costing(f64::from(step)));
    }
    spots
}

/// A bracket beside the boxes that one number stands for: where its back is and where its ends are, px.
fn draw_bracket(board: &mut Board, hull: &Patch, [back, ends]: [f64; 2]) {
    let (top, bottom) = (hull.top + 1.0, hull.bottom - 1.0);
    board.draw("bracket", Shape::Polyline, &[[ends, top], [back, top], [back, bottom], [ends, bottom]]);
    board.avoid_last(1.0);
}
