//! The checks of the rose: their dashes and their names.

use alloc::vec::Vec;

use super::board::{Board, Label, Need};
use super::lettering::Lettering;
use super::of::Of;
use super::order::ordered;
use super::patch::{Extent, Patch};
use super::rose_edge::{RoseView, Run, drawn};
use super::scene::RosePoint;
use super::spot::Spot;
use crate::calc::CheckId;
use crate::calc::number::{cos, sin};

/// Height of a line of the legend, px.
const LINE_PX: f64 = 17.0;
/// Classes of the edge by rank: each has its own dashes.
static EDGE_CLASSES: [&str; 6] = ["rose by-1", "rose by-2", "rose by-3", "rose by-4", "rose by-5", "rose by-6"];

/// The checks that govern anywhere, the most used first: their rank decides their dashes.
pub fn ranks(points: &[RosePoint], runs: &[Run]) -> Vec<CheckId> {
    let mut peaks: Vec<(CheckId, f64)> = Vec::new();
    for run in runs {
        let peak = peak(run, points);
        match peaks.iter_mut().find(|(check, _)| *check == run.check) {
            Some(known) => known.1 = known.1.max(peak),
            None => peaks.push((run.check, peak)),
        }
    }
    ordered(peaks.len(), &|place| -peaks[place].1).iter().map(|&place| peaks[place].0).collect()
}

/// The class of a check's part of the edge.
pub fn edge_class(ranks: &[CheckId], check: CheckId) -> &'static str {
    let rank = ranks.iter().position(|&one| one == check).unwrap_or(0);
    EDGE_CLASSES[rank.min(EDGE_CLASSES.len() - 1)]
}

/// Names every check once, at its highest run that has room beside it; returns those that found none.
pub fn write_names(
    board: &mut Board,
    points: &[RosePoint],
    runs: &[Run],
    ranks: &[CheckId],
    view: &RoseView,
) -> Vec<(CheckId, &'static str)> {
    let mut unnamed = Vec::new();
    for &check in ranks {
        let text = check.short();
        let label = Label { need: Need::May, ..Label::new(Lettering::Name, text, Of::Nothing) };
        let is_named = ordered(runs.len(), &|place| -peak(&runs[place], points)).iter().any(|&place| {
            let run = &runs[place];
            let point = &points[run.points[run.points.len() / 2]];
            let thing = Patch::around(view.kept(point), Extent { width: 3.0, height: 3.0 });
            let outwards = [cos(point.direction_rad), -sin(point.direction_rad)];
            run.check == check && board.write_around(&label, &thing, outwards)
        });
        if !is_named {
            unnamed.push((check, edge_class(ranks, check)));
        }
    }
    unnamed
}

/// The largest utilisation of a run, as it is drawn.
fn peak(run: &Run, points: &[RosePoint]) -> f64 {
    run.points.iter().map(|&place| drawn(points[place].utilisation)).fold(0.0, f64::max)
}

/// Checks that could not be named at the edge, each with a piece of its line; returns the full height.
pub fn write_legend(board: &mut Board, unnamed: &[(CheckId, &'static str)], height: f64) -> f64 {
    for (line, (check, class)) in unnamed.iter().enumerate() {
        let level = height + LINE_PX * (line as f64 + 0.5);
        board.line(class, [20.0, level], [56.0, level]);
        let text = check.short();
        let spot = Spot::from_left(64.0, level, Lettering::Name.width_px(text));
        board.set(&Label::new(Lettering::Name, text, Of::Nothing), &spot);
    }
    height + LINE_PX * unnamed.len() as f64
}
