use alloc::string::String;
use alloc::vec::Vec;

use super::board::{Board, Label};
use super::lettering::Lettering;
use super::mark::{Drawing, Shape};
use super::name::*;
use super::note::{tell, write_notes};
use super::number_text::*;
use super::of::Of;
use super::order::ordered;
use super::patch::{Extent, Patch};
use super::rose_edge::{CUT, RoseView, Run, drawn, runs};
use super::rose_name::{edge_class, ranks, write_legend, write_names};
use super::scale::WIDTH_MIN_PX;
use super::scene::{RosePoint, RoseScene};
use super::spot::Spot;
use crate::calc::CheckId;
use crate::calc::number::{cos, hypot, sin};

/// The rose: utilisation for every direction of the push, its edge split and named by the check that governs there.
///
/// Scope: any list of directions; cut with a mark where the utilisation goes beyond 1.5. Units: width in px. The rear
/// is on top, as in the plan. Every direction is a mark of the class `direction` that opens its own working.
///
/// ```
/// use steadfoot::calc::CheckId;
/// use steadfoot::report::drawing::{RosePoint, RoseScene, rose};
/// let point = |direction_rad: f64| RosePoint { direction_rad, utilisation: 0.7, check: CheckId::FootBearing, at: None };
/// let scene = RoseScene { points: vec![point(0.0), point(2.0), point(4.0)], governing: Some(0) };
/// let drawing = rose(&scene, 320.0);
/// assert!(drawing.marks.iter().any(|mark| mark.text == "0.70 at 0°"));
/// assert!(drawing.marks.iter().any(|mark| mark.text == "bearing"));
/// ```
pub fn rose(scene: &RoseScene, width_px: f64) -> Drawing {
    let width = if width_px.is_finite() { width_px.max(WIDTH_MIN_PX) } else { WIDTH_MIN_PX };
    let rim = (width / 2.0 - SIDE_PX).min(RIM_MOST_PX);
    let view = RoseView { middle: [width / 2.0, SIDE_PX + rim], one: rim / CUT };
    let height = 2.0 * (SIDE_PX + rim);
    let mut board = Board::new(width, height);
    let order = ordered(scene.points.len(), &|place| turned(&scene.points[place]));
    let points: Vec<RosePoint> = order.iter().map(|&place| scene.points[place]).collect();
    let runs = runs(&points, &view);
    let ranks = ranks(&points, &runs);
    draw_area(&mut board, &points, &view);
    draw_rings(&mut board, &view);
    draw_edge(&mut board, &points, &runs, &ranks, &view);
    write_sides(&mut board, &view);
    let governing = scene.governing.and_then(|place| scene.points.get(place));
    let mut notes = Vec::new();
    if let Some(point) = governing
        && !draw_governing(&mut board, point, &view)
    {
        notes.push(governing_text(point));
    }
    write_rings(&mut board, &points, &view);
    let unnamed = write_names(&mut board, &points, &runs, &ranks, &view);
    draw_directions(&mut board, &points, &view);
    let height = write_legend(&mut board, &unnamed, height);
    let height = if notes.is_empty() { height } else { write_notes(&mut board, height, &notes) };
    if points.is_empty() {
        let label = Label::new(Lettering::Name, word(NOTHING_GOVERNS), Of::Nothing);
        let spots = [0.0, 20.0].map(|down| Spot::centred([view.middle[0], view.middle[1] + down]));
        board.write(&label, &spots);
    }
    Drawing { view: "rose", width, height, mm_per_px: 0.0, title: title(governing), marks: board.into_marks() }
}

/// Room around the rim for the words of the four sides, px.
const SIDE_PX: f64 = 19.0;
/// The rim of a wide rose, px: larger says nothing more.
const RIM_MOST_PX: f64 = 230.0;
fn turned(point: &RosePoint) -> f64 {
    let turn = 2.0 * core::f64::consts::PI;
    point.direction_rad - turn * crate::calc::number::floor(point.direction_rad / turn)
}

fn draw_rings(board: &mut Board, view: &RoseView) {
    let rim = CUT * view.one;
    let [x, y] = view.middle;
    board.draw("ray", Shape::Lines, &[[x - rim, y], [x + rim, y], [x, y - rim], [x, y + rim]]);
    board.circle("ring-limit", view.middle, rim);
    board.circle("ring-half", view.middle, 0.5 * view.one);
    board.circle("ring-one", view.middle, view.one);
}

fn draw_area(board: &mut Board, points: &[RosePoint], view: &RoseView) {
    if points.len() > 2 {
        let area: Vec<[f64; 2]> = points.iter().map(|point| view.kept(point)).collect();
        board.polygon("rose-area", &area);
    }
}

fn draw_edge(board: &mut Board, points: &[RosePoint], runs: &[Run], ranks: &[CheckId], view: &RoseView) {
    for run in runs {
        for piece in &run.pieces {
            board.draw(edge_class(ranks, run.check), Shape::Polyline, piece);
            board.avoid_last(2.5);
        }
        let mut strokes = Vec::new();
        for &at in &run.cuts {
            strokes.extend_from_slice(&cut_strokes(at, view));
        }
        if !strokes.is_empty() {
            board.draw("cut", Shape::Lines, &strokes);
            board.avoid_last(2.0);
        }
    }
    for point in points {
        board.avoid(Patch::around(view.kept(point), Extent { width: 6.0, height: 6.0 }), 1.5);
    }
    // Texts stand outside of the area: its inside is costly all over.
    for point in points {
        let steps = 5;
        for step in 1..steps {
            let part = f64::from(step) / f64::from(steps);
            let at = view.place(point.direction_rad, part * drawn(point.utilisation).min(CUT));
            board.avoid(Patch::around(at, Extent { width: 9.0, height: 9.0 }), 0.25);
        }
    }
}

/// Two short strokes across the ray, the sign for a line that goes on.
fn cut_strokes(at: [f64; 2], view: &RoseView) -> [[f64; 2]; 4] {
    let (x, y) = (at[0] - view.middle[0], at[1] - view.middle[1]);
    let length = hypot(x, y).max(1e-9);
    let (x, y) = (x / length, y / length);
    let stroke = |out: f64, side: f64| [at[0] + out * x - side * y, at[1] + out * y + side * x];
    [stroke(-1.5, -4.5), stroke(-1.5, 4.5), stroke(2.5, -4.5), stroke(2.5, 4.5)]
}

fn write_sides(board: &mut Board, view: &RoseView) {
    let rim = CUT * view.one + 9.5;
    let [x, y] = view.middle;
    for (id, spot) in [
        (REAR, Spot::centred([x, y - rim])),
        (FRONT, Spot::centred([x, y + rim])),
        (LEFT, Spot::centred([x - rim, y]).upwards()),
        (RIGHT, Spot::centred([x + rim, y]).upwards()),
    ] {
        board.write(&Label::new(Lettering::Word, word(id), Of::Nothing), &[spot]);
    }
}

/// False where the number found no room.
fn draw_governing(board: &mut Board, point: &RosePoint, view: &RoseView) -> bool {
    let at = view.kept(point);
    board.line("governing", view.middle, at);
    board.avoid_last(1.0);
    let dot = board.circle("governing dot", at, 4.0);
    dot.at = point.at;
    dot.direction_deg = Some(turned(point).to_degrees());
    dot.utilisation = point.utilisation.is_finite().then_some(point.utilisation);
    let text = governing_text(point);
    let towards = [cos(point.direction_rad), -sin(point.direction_rad)];
    let label = Label { at: point.at, ..Label::new(Lettering::Governing, &text, Of::Governing) };
    board.write_around(&label, &Patch::around(at, Extent { width: 10.0, height: 10.0 }), towards)
}

fn governing_text(point: &RosePoint) -> String {
    let is_finite = point.utilisation.is_finite();
    let value = if is_finite { utilisation_text(point.utilisation) } else { String::from(word(TIPS)) };
    filled(VALUE_AT, &[&value, &direction_text(point.direction_rad)])
}

/// The values of the rings on the ray where the edge is farthest from both.
fn write_rings(board: &mut Board, points: &[RosePoint], view: &RoseView) {
    let clear = |direction_rad: f64, ring: f64| {
        let place = view.place(direction_rad, ring);
        points
            .iter()
            .map(|point| {
                let at = view.kept(point);
                hypot(at[0] - place[0], at[1] - place[1])
            })
            .fold(60.0, f64::min)
    };
    for (text, ring) in [("1", 1.0), ("0.5", 0.5)] {
        let spots: Vec<Spot> = (0..24)
            .map(|step| {
                // Off the axes, first of all up to the right.
                let direction_rad = (45.0 + 15.0 * f64::from(step) + 7.5).to_radians();
                let cost = 60.0 - clear(direction_rad, ring) + 0.3 * f64::from(step);
                Spot::centred(view.place(direction_rad, ring)).costing(cost)
            })
            .collect();
        board.write(&Label::new(Lettering::RingValue, text, Of::Nothing), &spots);
    }
}

fn draw_directions(board: &mut Board, points: &[RosePoint], view: &RoseView) {
    for point in points {
        let class = if drawn(point.utilisation) > CUT { "direction beyond" } else { "direction" };
        let mark = board.circle(class, view.kept(point), 2.0);
        mark.at = point.at;
        mark.direction_deg = Some(turned(point).to_degrees());
        mark.utilisation = point.utilisation.is_finite().then_some(point.utilisation);
    }
}

fn title(governing: Option<&RosePoint>) -> String {
    let mut title = String::from(word(ROSE_TITLE));
    if let Some(point) = governing {
        tell(&mut title, &governing_text(point));
        tell(&mut title, point.check.short());
    }
    title
}
