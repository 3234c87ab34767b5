//! A value over a whole plot: hatched beyond its first contour, with borders between what governs, and names.

use alloc::vec::Vec;

use super::board::{Board, Label, Need};
use super::contour::contour;
use super::division::Division;
use super::lettering::Lettering;
use super::mark::Shape;
use super::of::Of;
use super::painter::Painter;
use super::patch::{Extent, Patch};
use super::plot::View;
use crate::calc::CheckId;
use crate::report::plot::{Grid, PlotName};

/// Distance of the hatching, px.
const HATCH_PX: f64 = 7.0;
/// Which way the lines of a hatching run, as their slope on the page: beyond the first contour, then the blanks.
const BEYOND: f64 = -1.0;
const BLANKS: [(&str, f64); 2] = [("blank-hatch", 1.0), ("blank-hatch level", 0.0)];
/// A region narrower than this part of the field is named only where there is room.
const NARROW: f64 = 0.08;

pub(super) fn draw_field(board: &mut Board, grid: &Grid, view: &View) {
    let first = grid.contours.first().copied().unwrap_or(1.0);
    let columns = grid.x.len();
    let cells = Cells { x: bounds(&grid.x, &view.x), y: bounds(&grid.y, &view.y) };
    let is_beyond = |row: usize, column: usize| grid.values.get(row * columns + column).is_some_and(|one| *one > first);
    for row in 0..grid.y.len() {
        let mut column = 0;
        while column < columns {
            let begin = column;
            while column < columns && is_beyond(row, column) {
                column += 1;
            }
            if column > begin {
                let (low, high) = (cells.y[row], cells.y[row + 1]);
                let corners = Patch::between([cells.x[begin], low], [cells.x[column], high]).corners();
                board.polygon("beyond-field", &corners);
            }
            column += 1;
        }
    }
    draw_lines(board, "beyond-hatch", &cells.hatched(BEYOND, &is_beyond));
    for (blank, (class, slope)) in grid.blanks.iter().zip(BLANKS) {
        let is_blank = |row: usize, column: usize| blank.cells.get(row * columns + column) == Some(&true);
        draw_lines(board, class, &cells.hatched(slope, &is_blank));
    }
    if !grid.checks.is_empty() {
        draw_lines(board, "region-border", &cells.borders(&|row, column| grid.checks.get(row * columns + column)));
    }
    for (place, level) in grid.contours.iter().enumerate() {
        let ends: Vec<[f64; 2]> = contour(grid, *level).into_iter().flatten().map(|at| view.place(at)).collect();
        if !ends.is_empty() {
            board.draw(if place == 0 { "contour one" } else { "contour" }, Shape::Lines, &ends);
            board.avoid_last(1.0);
        }
    }
}

fn draw_lines(board: &mut Board, class: &'static str, ends: &[[f64; 2]]) {
    if !ends.is_empty() {
        board.draw(class, Shape::Lines, ends);
    }
}

/// Where the cells of a field begin and end, in px: half way between its places, and at the first and the last of them.
struct Cells {
    /// To the right.
    x: Vec<f64>,
    /// Upwards, so falling on the page.
    y: Vec<f64>,
}

fn bounds(places: &[f64], division: &Division) -> Vec<f64> {
    let at = |place: usize| division.place(places[place]);
    let mut bounds = Vec::with_capacity(places.len() + 1);
    for place in 0..places.len() {
        bounds.push(if place == 0 { at(0) } else { (at(place - 1) + at(place)) / 2.0 });
    }
    if let Some(last) = places.len().checked_sub(1) {
        bounds.push(at(last));
    }
    bounds
}

impl Cells {
    /// Hatching of the cells that are asked for, as pairs of points; lines run on through cells that touch.
    fn hatched(&self, slope: f64, is: &dyn Fn(usize, usize) -> bool) -> Vec<[f64; 2]> {
        let (columns, rows) = (self.x.len().saturating_sub(1), self.y.len().saturating_sub(1));
        let mut ends: Vec<[f64; 2]> = Vec::new();
        if columns == 0 || rows == 0 {
            return ends;
        }
        // A line is y = level + slope x; all hatchings of one slope lie on the same lines.
        let levels = [self.x[0], self.x[columns]].map(|x| [self.y[rows] - slope * x, self.y[0] - slope * x]);
        let least = f64::min(levels[0][0], levels[1][0]);
        let most = f64::max(levels[0][1], levels[1][1]);
        let mut level = crate::calc::number::ceil(least / HATCH_PX) * HATCH_PX;
        while level < most {
            let begin = ends.len();
            for column in 0..columns {
                let (left, right) = (self.x[column], self.x[column + 1]);
                for step in 0..rows {
                    // Cells in the order in which the line meets them.
                    let row = if slope > 0.0 { rows - 1 - step } else { step };
                    let (above, below) = (self.y[row + 1], self.y[row]);
                    let [from, to] = if slope == 0.0 {
                        if level < above || level >= below { [0.0, 0.0] } else { [left, right] }
                    } else {
                        let meets = [above, below].map(|y| (y - level) / slope);
                        [left.max(meets[0].min(meets[1])), right.min(meets[0].max(meets[1]))]
                    };
                    if from >= to || !is(row, column) {
                        continue;
                    }
                    let at = |x: f64| [x, level + slope * x];
                    match ends[begin..].last_mut() {
                        Some(last) if from - last[0] < 1e-6 => *last = at(to),
                        _ => ends.extend([at(from), at(to)]),
                    }
                }
            }
            level += HATCH_PX;
        }
        ends
    }

    /// The lines between neighbouring cells of which different things are told; sides that follow one another are one.
    fn borders<T: PartialEq>(&self, of: &dyn Fn(usize, usize) -> Option<T>) -> Vec<[f64; 2]> {
        let (columns, rows) = (self.x.len().saturating_sub(1), self.y.len().saturating_sub(1));
        let mut ends: Vec<[f64; 2]> = Vec::new();
        let take = |begin: usize, from: [f64; 2], to: [f64; 2], ends: &mut Vec<[f64; 2]>| match ends[begin..].last_mut()
        {
            Some(last) if *last == from => *last = to,
            _ => ends.extend([from, to]),
        };
        for row in 1..rows {
            let begin = ends.len();
            for column in (0..columns).filter(|&column| of(row - 1, column) != of(row, column)) {
                take(begin, [self.x[column], self.y[row]], [self.x[column + 1], self.y[row]], &mut ends);
            }
        }
        for column in 1..columns {
            let begin = ends.len();
            for row in (0..rows).filter(|&row| of(row, column - 1) != of(row, column)) {
                take(begin, [self.x[column], self.y[row]], [self.x[column], self.y[row + 1]], &mut ends);
            }
        }
        ends
    }
}

/// Names what governs, and what is blank, in the middle of the largest square of each.
pub(super) fn write_regions(board: &mut Board, grid: &Grid, view: &View, painter: &Painter) {
    let columns = grid.x.len();
    let mut named: Vec<CheckId> = Vec::new();
    for check in grid.checks.iter().flatten() {
        if !named.contains(check) {
            named.push(*check);
        }
    }
    let regions = named.into_iter().map(PlotName::Check);
    for name in regions.chain(grid.blanks.iter().map(|blank| PlotName::Row(blank.name))) {
        let is_own = |row: usize, column: usize| match &name {
            PlotName::Check(check) => grid.checks[row * columns + column] == Some(*check),
            PlotName::Row(id) => grid.blanks.iter().any(|one| one.name == *id && one.cells[row * columns + column]),
            _ => false,
        };
        let Some((side, row, column)) = largest_square(grid.y.len(), columns, &is_own) else { continue };
        let middle = |places: &[f64], last: usize, of: &Division| {
            (of.place(places[last + 1 - side]) + of.place(places[last])) / 2.0
        };
        let mut at = [middle(&grid.x, column, &view.x), middle(&grid.y, row, &view.y)];
        let is_narrow = side as f64 <= NARROW * columns.min(grid.y.len()) as f64;
        let text = painter.text(&name);
        // A name at the side of the field stays within it where it can.
        let half = Lettering::Name.width_px(&text) / 2.0;
        at[0] = at[0].min(view.frame.right - half).max(view.frame.left + half);
        let thing = Patch::around(at, Extent { width: 1.0, height: 1.0 });
        let need = if is_narrow { Need::May } else { Need::Must };
        let label = Label { need, ..Label::new(Lettering::Name, &text, Of::Nothing) };
        board.write_around(&label, &thing, [0.0, -1.0]);
    }
}

/// The side of the largest square of cells that are all of one kind, with its last row and column.
fn largest_square(rows: usize, columns: usize, is: &dyn Fn(usize, usize) -> bool) -> Option<(usize, usize, usize)> {
    let mut best: Option<(usize, usize, usize)> = None;
    let mut before = alloc::vec![0_usize; columns];
    for row in 0..rows {
        let mut sides = alloc::vec![0_usize; columns];
        for column in (0..columns).filter(|&column| is(row, column)) {
            let corner = if column == 0 { 0 } else { before[column - 1].min(sides[column - 1]) };
            sides[column] = 1 + corner.min(before[column]);
            if best.is_none_or(|(known, ..)| sides[column] > known) {
                best = Some((sides[column], row, column));
            }
        }
        before = sides;
    }
    best
}
