use alloc::string::String;
use alloc::vec::Vec;

use super::board::{Board, Label, Need};
use super::division::{Division, Fit};
use super::field::{draw_field, write_regions};
use super::lettering::Lettering;
use super::mark::{Drawing, Shape};
use super::of::Of;
use super::painter::Painter;
use super::patch::{Extent, Patch};
use super::spot::Spot;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, Stroke};

/// A plot, painted in px: axes with numbers in the reader's units, curves with their names, contours with hatching.
///
/// Scope: any plot; what has no place on its axes is left out. Every mark of a curve is of the class `curve`, of a
/// point `plot-point`, so that tests can read them back.
///
/// ```
/// use steadfoot::calc::{Kind, StepId, System};
/// use steadfoot::report::drawing::{Painter, plot};
/// use steadfoot::report::plot::*;
/// let name = StepId::of(0, 0);
/// let axis = |kind| Axis { name, kind, scale: AxisScale::Linear, ends: None };
/// let line = Curve { name: PlotName::Text("line".into()), points: vec![[0.0, 0.0], [2.0, 1.0]], stroke: Stroke::Strong };
/// let (points, levels) = (vec![], vec![]);
/// let one = Plot { name, x: axis(Kind::Time), y: axis(Kind::Acceleration), curves: vec![line], points, levels, grid: None };
/// let words = |_: StepId| "name".to_string();
/// let drawing = plot(&one, &Painter { width_px: 400.0, system: System::Si, words: &words, inputs: &|_| String::new() });
/// assert!(drawing.marks.iter().any(|mark| mark.class.starts_with("curve")));
/// assert!(drawing.marks.iter().any(|mark| mark.text == "name (s)"));
/// ```
pub fn plot(plot: &Plot, painter: &Painter) -> Drawing {
    let width = painter.width();
    let height = (0.66 * width).clamp(230.0, 430.0);
    let frame = Patch { left: LEFT_PX, top: TOP_PX, right: width - RIGHT_PX, bottom: height - BOTTOM_PX };
    let x = divided(&plot.x, Side::X, plot, [frame.left, frame.right], painter);
    let y = divided(&plot.y, Side::Y, plot, [frame.bottom, frame.top], painter);
    let view = View { x, y, frame };
    let mut board = Board::new(width, height);
    if let Some(grid) = &plot.grid {
        draw_field(&mut board, grid, &view);
    }
    draw_axes(&mut board, &view);
    write_axes(&mut board, plot, &view, painter);
    for level in &plot.levels {
        let at = view.y.place(level.y);
        if at >= frame.top && at <= frame.bottom {
            board.line("level", [frame.left, at], [frame.right, at]);
            board.avoid_last(1.5);
        }
    }
    for curve in &plot.curves {
        draw_curve(&mut board, curve, &view);
    }
    for point in &plot.points {
        let at = view.place(point.at);
        if frame.holds(&Patch::around(at, Extent { width: 0.0, height: 0.0 })) {
            board.circle(if point.is_present { "plot-point present" } else { "plot-point" }, at, 3.5);
            board.avoid_last(3.0);
        }
    }
    let before = board.confine(frame.top, frame.bottom);
    write_points(&mut board, plot, &view, painter);
    let unnamed = write_curves(&mut board, plot, &view, painter);
    if let Some(grid) = &plot.grid {
        write_regions(&mut board, grid, &view, painter);
    }
    board.release(before);
    let height = write_legend(&mut board, &unnamed, height);
    let title = (painter.words)(plot.name);
    Drawing { view: "plot", width, height, mm_per_px: 0.0, title, marks: board.into_marks() }
}

/// Room for the numbers of the y axis, px.
const LEFT_PX: f64 = 52.0;
/// Room for the name of the y axis, px.
const TOP_PX: f64 = 26.0;
const RIGHT_PX: f64 = 16.0;
/// Room for the numbers and the name of the x axis, px.
const BOTTOM_PX: f64 = 46.0;
/// Height of a line of the legend, px.
const LINE_PX: f64 = 17.0;

/// The axes of a plot with the frame that they span.
pub(super) struct View {
    pub x: Division,
    pub y: Division,
    pub frame: Patch,
}

impl View {
    pub fn place(&self, at: [f64; 2]) -> [f64; 2] {
        [self.x.place(at[0]), self.y.place(at[1])]
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Side {
    X,
    Y,
}

/// The axis with ends that hold everything, where they are not said.
fn divided(axis: &Axis, side: Side, plot: &Plot, px: [f64; 2], painter: &Painter) -> Division {
    let mut low = f64::INFINITY;
    let mut high = f64::NEG_INFINITY;
    let mut take = |value: f64| {
        if value.is_finite() && (axis.scale == AxisScale::Linear || value > 0.0) {
            low = low.min(value);
            high = high.max(value);
        }
    };
    let place = usize::from(side == Side::Y);
    plot.curves.iter().flat_map(|curve| &curve.points).for_each(|point| take(point[place]));
    plot.points.iter().for_each(|point| take(point.at[place]));
    if side == Side::Y {
        plot.levels.iter().for_each(|level| take(level.y));
    }
    if let Some(grid) = &plot.grid {
        let along = if side == Side::X { &grid.x } else { &grid.y };
        along.iter().for_each(|&value| take(value));
    }
    let is_widened = axis.ends.is_none() && plot.grid.is_none();
    if let Some(ends) = axis.ends {
        [low, high] = ends;
    } else if !low.is_finite() {
        (low, high) = (if axis.scale == AxisScale::Log { 0.1 } else { 0.0 }, 1.0);
    }
    // Quantities that cannot be negative are shown from nothing on, unless they lie far from it.
    if is_widened && axis.scale == AxisScale::Linear && low > 0.0 && low < 0.5 * high {
        low = 0.0;
    }
    Division::new(axis.scale, axis.kind, painter.system, Fit { low, high, px, is_widened })
}

fn draw_axes(board: &mut Board, view: &View) {
    let frame = &view.frame;
    let mut fine = Vec::new();
    for (value, _) in &view.x.ticks {
        let at = view.x.place(*value);
        fine.extend([[at, frame.top], [at, frame.bottom]]);
    }
    for (value, _) in &view.y.ticks {
        let at = view.y.place(*value);
        fine.extend([[frame.left, at], [frame.right, at]]);
    }
    board.draw("plot-grid", Shape::Lines, &fine);
    let corners = [[frame.left, frame.top], [frame.left, frame.bottom], [frame.right, frame.bottom]];
    board.draw("plot-axis", Shape::Polyline, &corners);
}

fn write_axes(board: &mut Board, plot: &Plot, view: &View, painter: &Painter) {
    let frame = &view.frame;
    let mut free_from = f64::NEG_INFINITY;
    for (value, text) in &view.x.ticks {
        let (at, width) = (view.x.place(*value), Lettering::Size.width_px(text));
        if !text.is_empty() && at - width / 2.0 > free_from {
            board.set(&Label::new(Lettering::Size, text, Of::Nothing), &Spot::centred([at, frame.bottom + 11.0]));
            free_from = at + width / 2.0 + 6.0;
        }
    }
    let mut free_above = f64::INFINITY;
    for (value, text) in &view.y.ticks {
        let at = view.y.place(*value);
        if !text.is_empty() && at < free_above {
            let spot = Spot::from_right(frame.left - 6.0, at, Lettering::Size.width_px(text));
            board.set(&Label::new(Lettering::Size, text, Of::Nothing), &spot);
            free_above = at - 14.0;
        }
    }
    let name = painter.axis_text(plot.x.name, plot.x.kind);
    let spot = Spot::from_right(frame.right, frame.bottom + 31.0, Lettering::Word.width_px(&name));
    board.set(&Label::new(Lettering::Word, &name, Of::Nothing), &spot);
    let name = painter.axis_text(plot.y.name, plot.y.kind);
    let spot = Spot::from_left(4.0, 10.0, Lettering::Word.width_px(&name));
    board.set(&Label::new(Lettering::Word, &name, Of::Nothing), &spot);
}

fn curve_class(stroke: Stroke) -> &'static str {
    match stroke {
        Stroke::Strong => "curve strong",
        Stroke::Plain => "curve",
        Stroke::Dashed => "curve dashed",
        Stroke::Dotted => "curve dotted",
    }
}

/// The parts of a curve within the frame.
fn pieces(curve: &Curve, view: &View) -> Vec<Vec<[f64; 2]>> {
    let mut pieces: Vec<Vec<[f64; 2]>> = Vec::new();
    let mut last: Option<[f64; 2]> = None;
    for point in &curve.points {
        let at = view.place(*point);
        let is_there = at[0].is_finite() && at[1].is_finite();
        if let (Some(from), true) = (last, is_there)
            && let Some([from, to]) = within(&view.frame, from, at)
        {
            match pieces.last_mut() {
                Some(piece) if piece.last() == Some(&from) => piece.push(to),
                _ => pieces.push(alloc::vec![from, to]),
            }
        }
        last = is_there.then_some(at);
    }
    pieces
}

/// The part of a line inside the frame.
fn within(frame: &Patch, from: [f64; 2], to: [f64; 2]) -> Option<[[f64; 2]; 2]> {
    let mut ends = [0.0, 1.0];
    let run = [to[0] - from[0], to[1] - from[1]];
    for (start, length, low, high) in
        [(from[0], run[0], frame.left, frame.right), (from[1], run[1], frame.top, frame.bottom)]
    {
        if length == 0.0 {
            if start < low || start > high {
                return None;
            }
            continue;
        }
        let (a, b) = ((low - start) / length, (high - start) / length);
        ends[0] = f64::max(ends[0], a.min(b));
        ends[1] = f64::min(ends[1], a.max(b));
    }
    let at = |way: f64| [from[0] + way * run[0], from[1] + way * run[1]];
    (ends[0] <= ends[1])
        .then(|| [if ends[0] > 0.0 { at(ends[0]) } else { from }, if ends[1] < 1.0 { at(ends[1]) } else { to }])
}

fn draw_curve(board: &mut Board, curve: &Curve, view: &View) {
    for piece in pieces(curve, view) {
        board.draw(curve_class(curve.stroke), Shape::Polyline, &piece);
        board.avoid_last(2.0);
    }
}

fn write_points(board: &mut Board, plot: &Plot, view: &View, painter: &Painter) {
    for point in &plot.points {
        let text = painter.text(&point.name);
        let at = view.place(point.at);
        if !text.is_empty() && at[0].is_finite() && at[1].is_finite() {
            let thing = Patch::around(at, Extent { width: 8.0, height: 8.0 });
            board.write_around(&Label::new(Lettering::Name, &text, Of::Nothing), &thing, [0.3, -1.0]);
        }
    }
    for level in &plot.levels {
        let text = painter.text(&level.name);
        let at = view.y.place(level.y);
        let width = Lettering::Note.width_px(&text);
        let spots: Vec<Spot> = (0..8)
            .flat_map(|step| {
                let right = view.frame.right - 4.0 - 40.0 * f64::from(step);
                [Spot::from_right(right, at - 9.0, width), Spot::from_right(right, at + 9.0, width).costing(2.0)]
            })
            .collect();
        if !text.is_empty() {
            board.write(&Label::new(Lettering::Note, &text, Of::Nothing), &spots);
        }
    }
}

/// Writes every curve's name beside it; returns those that found no room, with their class.
fn write_curves(board: &mut Board, plot: &Plot, view: &View, painter: &Painter) -> Vec<(String, &'static str)> {
    let mut unnamed = Vec::new();
    for curve in &plot.curves {
        let text = painter.text(&curve.name);
        let all: Vec<[f64; 2]> = pieces(curve, view).into_iter().flatten().collect();
        if text.is_empty() || all.is_empty() {
            continue;
        }
        let is_named = [0.9, 0.7, 0.5, 0.3, 0.1].into_iter().any(|part| {
            let at = all[((all.len() - 1) as f64 * part) as usize];
            let thing = Patch::around(at, Extent { width: 4.0, height: 4.0 });
            let label = Label { need: Need::May, ..Label::new(Lettering::Name, &text, Of::Nothing) };
            board.write_around(&label, &thing, [0.4, -1.0])
        });
        if !is_named {
            unnamed.push((text, curve_class(curve.stroke)));
        }
    }
    unnamed
}

fn write_legend(board: &mut Board, unnamed: &[(String, &'static str)], height: f64) -> f64 {
    for (line, (text, class)) in unnamed.iter().enumerate() {
        let level = height + LINE_PX * (line as f64 + 0.5);
        board.line(class, [20.0, level], [56.0, level]);
        let spot = Spot::from_left(64.0, level, Lettering::Name.width_px(text));
        board.set(&Label::new(Lettering::Name, text, Of::Nothing), &spot);
    }
    height + LINE_PX * unnamed.len() as f64
}
