//! Patterns: one to four bolts about each foot, or in place of each present bolt.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::ladder::{diameter_mm, field};
use crate::cabinet::{ANCHORS_MAX, Anchor, Foot};
use crate::calc::number;
use crate::geometry::Point;
use crate::project::Project;

/// Where bolts stand about a foot.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Pattern {
    /// One bolt beside the foot, on the side away from the middle of the cabinet.
    One,
    /// One on either side of the foot, to the left and to the right of it.
    Across,
    /// One before and one behind the foot.
    Along,
    /// Three: left, right, and on the outer side between them.
    Three,
    /// One at each corner.
    Corners,
}

impl Pattern {
    /// All, with their words.
    pub const ALL: [(&'static str, Pattern); 5] = [
        ("one", Pattern::One),
        ("across", Pattern::Across),
        ("along", Pattern::Along),
        ("three", Pattern::Three),
        ("corners", Pattern::Corners),
    ];

    /// The pattern of a word.
    pub fn of_word(word: &str) -> Option<Pattern> {
        Pattern::ALL.iter().find(|(known, _)| *known == word).map(|(_, pattern)| *pattern)
    }
}

/// Anchors to be written into the file in place of those that are there.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct AnchorsEdit {
    /// Where: `cabinet.anchors`.
    pub path: &'static str,
    /// The new anchors.
    pub value: Vec<PlainAnchor>,
}

/// An anchor with nothing but its name and place.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct PlainAnchor {
    /// The foot's name and a number.
    pub name: String,
    /// Where it stands.
    pub at_mm: [f64; 2],
}

/// A name in the file has at most this many characters.
const NAME_MAX: usize = 200;
/// Positions are written to whole millimetres.
fn whole_mm(mm: f64) -> f64 {
    number::round(mm)
}

/// The anchors of a pattern about every foot, each `clear_mm` away from the foot's side; none where there are no feet or
/// the anchors would be too many.
///
/// What single anchors had of their own, and where they were drilled, goes with them: new places are new anchors.
pub fn patterned(project: &Project, pattern: Pattern, clear_mm: f64) -> Option<AnchorsEdit> {
    if !(0.0..=10_000.0).contains(&clear_mm) {
        return None;
    }
    let mut value = Vec::new();
    for foot in &project.cabinet.feet {
        let places = about(foot, pattern, clear_mm);
        let count = places.len();
        for (number, place) in places.into_iter().enumerate() {
            let name: String = foot.name.chars().take(NAME_MAX - 2).collect();
            let name = if count == 1 { name } else { alloc::format!("{name} {}", number + 1) };
            value.push(PlainAnchor { name, at_mm: [whole_mm(place.x_mm), whole_mm(place.y_mm)] });
        }
    }
    (!value.is_empty() && value.len() <= ANCHORS_MAX).then_some(AnchorsEdit { path: "cabinet.anchors", value })
}

fn about(foot: &Foot, pattern: Pattern, clear_mm: f64) -> Vec<Point> {
    let reach = (foot.size.x_mm / 2.0 + clear_mm, foot.size.y_mm / 2.0 + clear_mm);
    let at = |x: f64, y: f64| Point::new(foot.at.x_mm + x * reach.0, foot.at.y_mm + y * reach.1);
    // Outwards from the middle of the base; a foot on the middle line counts as one at the front or on the left.
    let out_x = if foot.at.x_mm > 0.0 { 1.0 } else { -1.0 };
    let out_y = if foot.at.y_mm > 0.0 { 1.0 } else { -1.0 };
    match pattern {
        Pattern::One => alloc::vec![at(out_x, 0.0)],
        Pattern::Across => alloc::vec![at(-1.0, 0.0), at(1.0, 0.0)],
        Pattern::Along => alloc::vec![at(0.0, -1.0), at(0.0, 1.0)],
        Pattern::Three => alloc::vec![at(-1.0, 0.0), at(1.0, 0.0), at(0.0, out_y)],
        Pattern::Corners => alloc::vec![at(-1.0, -1.0), at(1.0, -1.0), at(1.0, 1.0), at(-1.0, 1.0)],
    }
}

/// A close group in place of one bolt.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pitch {
    /// How many.
    pub count: usize,
    /// The direction in which two of them stand beside one another, of length 1.
    pub along: Point,
}

/// Bolts of a group stand this many diameters apart, as far as tightened cast-in bolts have to (ACI 318-19 17.9.2).
const APART_DIAMETERS: f64 = 6.0;
/// Rounded up to this.
const ROUND_MM: f64 = 10.0;

/// How far the bolts of a group stand apart: six diameters, or the least spacing that the anchor's maker gives.
pub fn pitch_mm(project: &Project) -> f64 {
    let given =
        project.anchorage.as_ref().and_then(|anchorage| anchorage.values.number(field(anchorage.rule, "s_min_mm")?));
    let least_mm = f64::max(APART_DIAMETERS * diameter_mm(project), given.unwrap_or(0.0));
    number::ceil(least_mm / ROUND_MM) * ROUND_MM
}

/// Puts a close group in place of every anchor: two in a line, or four in a square, about the place of the one.
pub fn spread(project: &mut Project, pitch: Pitch) {
    let half_mm = pitch_mm(project) / 2.0;
    let across = pitch.along.turned_right();
    let places: &[[f64; 2]] = match pitch.count {
        2 => &[[-1.0, 0.0], [1.0, 0.0]],
        4 => &[[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]],
        _ => return,
    };
    let mut anchors = Vec::with_capacity(project.cabinet.anchors.len() * pitch.count);
    for anchor in &project.cabinet.anchors {
        for [along, beside] in places {
            let at = Point::new(
                anchor.at.x_mm + half_mm * (along * pitch.along.x_mm + beside * across.x_mm),
                anchor.at.y_mm + half_mm * (along * pitch.along.y_mm + beside * across.y_mm),
            );
            anchors.push(Anchor { name: None, at, ..anchor.clone() });
        }
    }
    project.cabinet.anchors = anchors;
}
