//! The edge of the rose: split by what governs, cut beyond 1.5.

use alloc::vec::Vec;

use super::scene::RosePoint;
use crate::calc::CheckId;
use crate::calc::number::{cos, hypot, sin, sqrt};

/// Beyond this utilisation the rose is cut.
pub const CUT: f64 = 1.5;
/// What is not finite is drawn as if it were this far out, to have a direction to be cut in.
const FAR_OUT: f64 = 1e3;

/// A run of directions in which one check governs.
#[derive(Clone, Debug)]
pub struct Run {
    /// The check.
    pub check: CheckId,
    /// The pieces of the edge that are drawn, in px.
    pub pieces: Vec<Vec<[f64; 2]>>,
    /// Where the edge was cut, in px.
    pub cuts: Vec<[f64; 2]>,
    /// The directions in the run, places in the list of points.
    pub points: Vec<usize>,
}

/// How directions and utilisations become px.
#[derive(Clone, Copy, Debug)]
pub struct RoseView {
    /// The middle.
    pub middle: [f64; 2],
    /// px of utilisation 1.
    pub one: f64,
}

impl RoseView {
    /// The place of a utilisation in a direction.
    pub fn place(&self, direction_rad: f64, utilisation: f64) -> [f64; 2] {
        let radius = self.one * utilisation;
        [self.middle[0] + radius * cos(direction_rad), self.middle[1] - radius * sin(direction_rad)]
    }

    /// The place of a point, at the rim where it is cut.
    pub fn kept(&self, point: &RosePoint) -> [f64; 2] {
        self.place(point.direction_rad, drawn(point.utilisation).min(CUT))
    }

    fn full(&self, point: &RosePoint) -> [f64; 2] {
        self.place(point.direction_rad, drawn(point.utilisation))
    }

    fn is_inside(&self, place: [f64; 2]) -> bool {
        hypot(place[0] - self.middle[0], place[1] - self.middle[1]) <= CUT * self.one * (1.0 + 1e-12)
    }

    /// Where the line from a place inside to one outside meets the rim.
    fn rim(&self, inside: [f64; 2], outside: [f64; 2]) -> [f64; 2] {
        let (x, y) = (inside[0] - self.middle[0], inside[1] - self.middle[1]);
        let (dx, dy) = (outside[0] - inside[0], outside[1] - inside[1]);
        let radius = CUT * self.one;
        let (a, b, c) = (dx * dx + dy * dy, x * dx + y * dy, x * x + y * y - radius * radius);
        let way = if a > 0.0 { (sqrt((b * b - a * c).max(0.0)) - b) / a } else { 0.0 };
        let way = way.clamp(0.0, 1.0);
        [inside[0] + way * dx, inside[1] + way * dy]
    }
}

/// What is drawn for a utilisation: nothing below zero, and something finite.
pub fn drawn(utilisation: f64) -> f64 {
    if utilisation.is_nan() { FAR_OUT } else { utilisation.clamp(0.0, FAR_OUT) }
}

/// The runs of the closed edge; points in the order of their directions.
pub fn runs(points: &[RosePoint], view: &RoseView) -> Vec<Run> {
    let count = points.len();
    if count < 2 {
        return Vec::new();
    }
    // Begin where a run begins, so that no run is torn in two.
    let begin = (0..count).find(|&place| points[place].check != points[(place + count - 1) % count].check).unwrap_or(0);
    let mut runs: Vec<Run> = Vec::new();
    let mut lines: Vec<Vec<[f64; 2]>> = Vec::new();
    for step in 0..count {
        let place = (begin + step) % count;
        let (before, point) = (&points[(place + count - 1) % count], &points[place]);
        let starts = step == 0 || runs[runs.len() - 1].check != point.check;
        if starts {
            let half = middle(view.full(before), view.full(point));
            if let Some(line) = lines.last_mut() {
                line.push(half);
            }
            let is_split = before.check != point.check;
            lines.push(if is_split { alloc::vec![half] } else { Vec::new() });
            runs.push(Run { check: point.check, pieces: Vec::new(), cuts: Vec::new(), points: Vec::new() });
        }
        let last = runs.len() - 1;
        lines[last].push(view.full(point));
        runs[last].points.push(place);
    }
    // The last run ends where the first begins.
    let (first, before) = (&points[begin], &points[(begin + count - 1) % count]);
    let end = if first.check == before.check { view.full(first) } else { middle(view.full(before), view.full(first)) };
    let last = lines.len() - 1;
    lines[last].push(end);
    for (run, line) in runs.iter_mut().zip(&lines) {
        cut(line, view, run);
    }
    runs
}

/// Keeps the parts of a line inside the rim.
fn cut(line: &[[f64; 2]], view: &RoseView, run: &mut Run) {
    let mut piece: Vec<[f64; 2]> = Vec::new();
    for (place, &to) in line.iter().enumerate() {
        let from = if place > 0 { line[place - 1] } else { to };
        match (view.is_inside(from), view.is_inside(to)) {
            (_, true) if place == 0 => piece.push(to),
            (true, true) => piece.push(to),
            (true, false) => {
                let rim = view.rim(from, to);
                piece.push(rim);
                run.cuts.push(rim);
                run.pieces.push(core::mem::take(&mut piece));
            }
            (false, true) => {
                let rim = view.rim(to, from);
                run.cuts.push(rim);
                piece.extend_from_slice(&[rim, to]);
            }
            (false, false) => {}
        }
    }
    if piece.len() > 1 {
        run.pieces.push(piece);
    }
}

fn middle(a: [f64; 2], b: [f64; 2]) -> [f64; 2] {
    [(a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0]
}
