use alloc::vec::Vec;

use super::lettering::Lettering;
use super::mark::{Mark, Shape, hundredth};
use super::of::Of;
use super::patch::{Extent, Patch};
use super::spot::{Reading, Spot, spots_around};
use crate::calc::number::{ceil, hypot};

/// A drawing in the making: shapes below, texts above, and what is in the way of a text.
#[derive(Debug)]
pub struct Board {
    width: f64,
    bounds: Patch,
    shapes: Vec<Mark>,
    texts: Vec<Mark>,
    written: Vec<Patch>,
    obstacles: Vec<(Patch, f64)>,
}

/// A text to be placed.
#[derive(Clone, Copy, Debug)]
pub struct Label<'a> {
    /// What it says.
    pub text: &'a str,
    /// How it is lettered.
    pub lettering: Lettering,
    /// What it stands for.
    pub of: Of,
    /// Which working it opens.
    pub at: Option<u16>,
    /// Whether it has to be written.
    pub need: Need,
}

/// Whether a label may be left out where the drawing is crowded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// At any price, as long as it stands free of other texts.
    Must,
    /// Only where it does not clutter.
    May,
}

impl<'a> Label<'a> {
    /// A label that has to be written and opens nothing.
    pub fn new(lettering: Lettering, text: &'a str, of: Of) -> Label<'a> {
        Label { text, lettering, of, at: None, need: Need::Must }
    }
}

/// A text may not touch another one closer than this, in px; beside it three times as far.
const CLEARANCE: f64 = 2.0;
/// A label that may be left out is, where its cheapest place costs more.
const COST_MOST: f64 = 85.0;
/// A text farther than this from its thing is tied to it by a thin line.
const TIED_FROM: f64 = 6.0;

impl Board {
    /// An empty board; texts stay inside it.
    pub fn new(width: f64, height: f64) -> Board {
        let bounds = Patch { left: 1.0, top: 1.0, right: width - 1.0, bottom: height - 1.0 };
        Board { width, bounds, shapes: Vec::new(), texts: Vec::new(), written: Vec::new(), obstacles: Vec::new() }
    }

    /// The width of the drawing.
    pub fn width(&self) -> f64 {
        self.width
    }

    /// Draws a shape; what it stands for can be set on the mark that comes back.
    #[inline(never)]
    pub fn draw(&mut self, class: &'static str, shape: Shape, points: &[[f64; 2]]) -> &mut Mark {
        let place = self.shapes.len();
        self.shapes.push(Mark::new(class, shape, points));
        &mut self.shapes[place]
    }

    /// Draws a straight line.
    pub fn line(&mut self, class: &'static str, from: [f64; 2], to: [f64; 2]) -> &mut Mark {
        self.draw(class, Shape::Line, &[from, to])
    }

    /// Draws a closed figure.
    pub fn polygon(&mut self, class: &'static str, corners: &[[f64; 2]]) -> &mut Mark {
        self.draw(class, Shape::Polygon, corners)
    }

    /// Draws a circle.
    pub fn circle(&mut self, class: &'static str, middle: [f64; 2], radius: f64) -> &mut Mark {
        let mark = self.draw(class, Shape::Circle, &[middle]);
        mark.radius = Some(hundredth(radius));
        mark
    }

    /// Makes an area undesirable for texts; the weight is in px of distance for a px2 covered.
    pub fn avoid(&mut self, patch: Patch, weight: f64) {
        self.obstacles.push((patch, weight));
    }

    /// Makes the shape that was drawn last undesirable for texts: its line, or the whole of a circle.
    #[inline(never)]
    pub fn avoid_last(&mut self, weight: f64) {
        let Some(mark) = self.shapes.last() else {
            return;
        };
        if mark.shape == Shape::Circle {
            let across = 2.0 * mark.radius.unwrap_or(0.0);
            let patch = Patch::around(mark.points[0], Extent { width: across, height: across });
            self.obstacles.push((patch, weight));
            return;
        }
        let step = if mark.shape == Shape::Lines { 2 } else { 1 };
        let count = mark.points.len();
        let mut place = 0;
        while place < count {
            let next = if place + 1 < count { place + 1 } else { 0 };
            if next > 0 || mark.shape == Shape::Polygon {
                push_line(&mut self.obstacles, mark.points[place], mark.points[next], weight);
            }
            place += step;
        }
    }

    /// Keeps texts clear of an area altogether.
    pub fn block(&mut self, patch: Patch) {
        self.written.push(patch);
    }

    /// Keeps the next texts between two levels of the drawing; returns what held before.
    pub fn confine(&mut self, top: f64, bottom: f64) -> Patch {
        let before = self.bounds;
        self.bounds.top = self.bounds.top.max(top);
        self.bounds.bottom = self.bounds.bottom.min(bottom);
        before
    }

    /// Lets texts stand where they could before.
    pub fn release(&mut self, before: Patch) {
        self.bounds = before;
    }

    /// Writes the label at the cheapest of the spots that is free and returns the patch it took; none where none is.
    pub fn write(&mut self, label: &Label, spots: &[Spot]) -> Option<Patch> {
        self.write_tied(label, spots, None)
    }

    /// Writes the label around a thing, on the side of `towards` if it can, tied to it by a line where it stands away.
    #[inline(never)]
    pub fn write_around(&mut self, label: &Label, thing: &Patch, towards: [f64; 2]) -> bool {
        let extent = label.lettering.extent(label.text);
        let spots = spots_around(extent, thing, towards);
        self.write_tied(label, &spots, Some(thing)).is_some()
    }

    /// Writes the label at this spot whatever stands there; for texts that have a place of their own.
    #[inline(never)]
    pub fn set(&mut self, label: &Label, spot: &Spot) -> Patch {
        let mut mark = Mark::new(label.lettering.class(), Shape::Text, &[spot.text_point(label.lettering, label.text)]);
        mark.text.push_str(label.text);
        mark.anchor = Some(spot.anchor);
        mark.of = label.of;
        mark.at = label.at;
        if spot.reading == Reading::Upwards {
            mark.turn = Some(-90.0);
        }
        let patch = spot.patch(label.lettering, label.text);
        self.texts.push(mark);
        self.written.push(patch);
        patch
    }

    /// Two levels moved apart until all that stands on the board is between them, px.
    pub fn levels_around(&self, [mut top, mut bottom]: [f64; 2]) -> [f64; 2] {
        let mut take = |patch: &Patch| (top, bottom) = (top.min(patch.top), bottom.max(patch.bottom));
        self.written.iter().for_each(&mut take);
        self.obstacles.iter().for_each(|(patch, _)| take(patch));
        [top, bottom]
    }

    /// What stands on the board: shapes first, then texts.
    pub fn into_marks(mut self) -> Vec<Mark> {
        self.shapes.append(&mut self.texts);
        self.shapes
    }

    #[inline(never)]
    fn write_tied(&mut self, label: &Label, spots: &[Spot], thing: Option<&Patch>) -> Option<Patch> {
        let mut best: Option<(f64, usize)> = None;
        for (place, spot) in spots.iter().enumerate() {
            let patch = spot.patch(label.lettering, label.text);
            if best.is_some_and(|(least, _)| least <= spot.cost) || !self.is_free(&patch) {
                continue;
            }
            let mut cost = spot.cost;
            for (obstacle, weight) in &self.obstacles {
                cost += weight * patch.shared_with(obstacle);
            }
            if let Some(ends) = thing.and_then(|thing| tie_ends(thing, &patch)) {
                cost += self.tie_cost(ends);
            }
            if best.is_none_or(|(least, _)| cost < least) {
                best = Some((cost, place));
            }
        }
        let (cost, place) = best?;
        if label.need == Need::May && cost > COST_MOST {
            return None;
        }
        let patch = self.set(label, &spots[place]);
        if let Some([from, to]) = thing.and_then(|thing| tie_ends(thing, &patch)) {
            self.line("tie", from, to);
            self.avoid_last(2.0);
        }
        Some(patch)
    }

    /// True where a text may stand: inside the bounds and off every other text.
    fn is_free(&self, patch: &Patch) -> bool {
        let wide = Patch { left: patch.left - 3.0 * CLEARANCE, right: patch.right + 3.0 * CLEARANCE, ..*patch };
        self.bounds.holds(patch) && self.written.iter().all(|other| other.shared_with(&wide) == 0.0)
    }

    /// A tie that runs over another text, or over things that are not its own, misleads.
    fn tie_cost(&self, [from, to]: [[f64; 2]; 2]) -> f64 {
        let mut cost = 0.0;
        for step in 2..=8 {
            let way = f64::from(step) / 8.0;
            let place = [from[0] + way * (to[0] - from[0]), from[1] + way * (to[1] - from[1])];
            let spot = Patch::around(place, Extent { width: 3.0, height: 3.0 });
            if self.written.iter().any(|other| other.shared_with(&spot) > 0.0) {
                cost += 15.0;
            }
            let crossed = self.obstacles.iter().filter(|(other, _)| other.shared_with(&spot) > 0.0);
            cost += crossed.map(|(_, weight)| 4.0 * weight).sum::<f64>().min(12.0);
        }
        cost
    }
}

/// Adds a line to the obstacles, a slanting one as a row of small patches.
fn push_line(obstacles: &mut Vec<(Patch, f64)>, from: [f64; 2], to: [f64; 2], weight: f64) {
    let length = hypot(to[0] - from[0], to[1] - from[1]);
    if from[0] == to[0] || from[1] == to[1] || length == 0.0 {
        obstacles.push((Patch::between(from, to).grown(0.75), weight));
        return;
    }
    let pieces = ceil(length / 6.0);
    for piece in 0..pieces as u32 {
        let way = (f64::from(piece) + 0.5) / pieces;
        let middle = [from[0] + way * (to[0] - from[0]), from[1] + way * (to[1] - from[1])];
        obstacles.push((Patch::around(middle, Extent { width: 3.0, height: 3.0 }), weight));
    }
}

fn tie_ends(thing: &Patch, patch: &Patch) -> Option<[[f64; 2]; 2]> {
    let to = patch.nearest_to(thing.middle());
    let from = thing.nearest_to(to);
    (hypot(to[0] - from[0], to[1] - from[1]) > TIED_FROM).then_some([from, to])
}
