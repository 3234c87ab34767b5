//! What happens at the floor in the elevation: ground line, pulls, forces under the feet, the pivot.

use alloc::vec::Vec;

use super::arrow::{PRESS, PULL};
use super::board::Board;
use super::elevation_view::ElevationView;
use super::force::ForceLabel;
use super::lettering::Lettering;
use super::mark::Shape;
use super::of::Of;
use super::order::ordered;
use super::patch::{Extent, Patch};
use super::scene::Scene;
use crate::geometry::{Moments, Point};

/// Depth of the hatching under the ground line, px.
pub const GROUND_PX: f64 = 6.0;
/// Length of the arrow of the largest force at the floor, px.
pub const ARROW_PX: f64 = 40.0;
/// Length of an arrow that is hardly anything, px.
const ARROW_LEAST_PX: f64 = 12.0;
/// Forces closer than this along the view are told together, px.
const TOGETHER_PX: f64 = 8.0;
/// Arrows of different kinds are drawn at least this far apart, px.
const APART_PX: f64 = 7.0;
/// More places than this are told together in fewer.
const STATIONS_MOST: usize = 6;
/// Distance of the ticks under the ground line, px.
const TICK_EVERY_PX: f64 = 9.0;
/// Height of the pivot's triangle, px.
const PIVOT_PX: f64 = 10.0;

/// Draws the ground line across the whole drawing.
pub fn draw_ground(board: &mut Board, view: &ElevationView) {
    let (y, width) = (view.ground, board.width());
    let mut ticks = Vec::new();
    let mut x = 6.0 + TICK_EVERY_PX;
    while x < width - 4.0 {
        ticks.extend_from_slice(&[[x, y], [x - GROUND_PX, y + GROUND_PX]]);
        x += TICK_EVERY_PX;
    }
    board.draw("ground-hatch", Shape::Lines, &ticks);
    board.line("ground", [6.0, y], [width - 6.0, y]);
    board.avoid_last(2.0);
}

/// Draws the feet as bars on the floor, the pressed part of each beneath.
pub fn draw_soles(board: &mut Board, scene: &Scene, view: &ElevationView) {
    for (place, foot) in scene.feet.iter().enumerate() {
        let (left, right) = view.span(&foot.outline.corners());
        let spread = if right - left < 2.0 { 1.5 } else { 0.0 };
        let sole = Patch { left: left - spread, top: view.ground - 4.0, right: right + spread, bottom: view.ground };
        let mark = board.polygon("sole", &sole.corners());
        mark.of = Of::Foot(place);
        mark.at = foot.at;
    }
    for foot in &scene.feet {
        for pressed in &foot.pressed {
            if !pressed.corners.is_empty() {
                let (left, right) = view.span(&pressed.corners);
                let y = view.ground + 2.0;
                board.line("pressed", [left, y], [right, y]);
            }
        }
    }
}

/// Draws the forces at the floor as arrows on the cabinet and returns their numbers, to be written.
pub fn draw_reactions(board: &mut Board, scene: &Scene, view: &ElevationView) -> Vec<ForceLabel> {
    let mut presses = Vec::new();
    for (place, foot) in scene.feet.iter().enumerate() {
        let x = view.along(pressed_middle(scene, place));
        push_station(&mut presses, x, foot.force_n, Of::Foot(place), foot.at);
    }
    let mut pulls = Vec::new();
    for (place, anchor) in scene.anchors.iter().enumerate() {
        push_station(&mut pulls, view.along(anchor.place), anchor.tension_n, Of::Anchor(place), anchor.at);
    }
    let (mut presses, mut pulls) = (few(presses), few(pulls));
    part(&mut presses, &mut pulls);
    let most_n = presses.iter().chain(&pulls).map(|one| one.force_n).fold(0.0, f64::max);
    let mut labels = Vec::new();
    for (stations, lettering) in [(&presses, Lettering::Press), (&pulls, Lettering::Pull)] {
        for station in stations {
            labels.push(draw_station(board, view, station, lettering, station.force_n / most_n));
        }
    }
    labels
}

/// Draws the pivot: the edge on the floor and a triangle under its middle; returns where that is.
pub fn draw_pivot(board: &mut Board, scene: &Scene, view: &ElevationView) -> Option<Patch> {
    let edge = scene.pivot?;
    let (from, to) = (view.along(edge.from), view.along(edge.to));
    let (x, y) = ((from + to) / 2.0, view.ground);
    let half = 0.6 * PIVOT_PX;
    if (from - to).abs() > 1.0 {
        board.line("pivot-span", [from, y], [to, y]).of = Of::Pivot;
    }
    board.polygon("pivot-mark", &[[x, y], [x + half, y + PIVOT_PX], [x - half, y + PIVOT_PX]]).of = Of::Pivot;
    let patch = Patch { left: x - half, top: y, right: x + half, bottom: y + PIVOT_PX };
    board.avoid(patch, 2.0);
    Some(patch)
}

/// One force at the floor, seen from the side: what lies behind one another is added up.
#[derive(Clone, Copy)]
struct Station {
    x: f64,
    force_n: f64,
    count: usize,
    of: Of,
    at: Option<u16>,
}

fn push_station(stations: &mut Vec<Station>, x: f64, force_n: Option<f64>, of: Of, at: Option<u16>) {
    let force_n = force_n.unwrap_or(0.0);
    if force_n > 0.0 && force_n.is_finite() {
        stations.push(Station { x, force_n, count: 1, of, at });
    }
}

fn draw_station(
    board: &mut Board,
    view: &ElevationView,
    station: &Station,
    lettering: Lettering,
    share: f64,
) -> ForceLabel {
    let length = ARROW_LEAST_PX + (ARROW_PX - ARROW_LEAST_PX) * share;
    let (upper, lower) = ([station.x, view.ground + 3.0], [station.x, view.ground + 3.0 + length]);
    board.line("halo", [upper[0], upper[1] + 1.0], lower);
    match lettering {
        Lettering::Pull => PULL.draw(board, [upper, lower], station.of),
        _ => PRESS.draw(board, [lower, upper], station.of),
    }
    ForceLabel {
        force_n: station.force_n,
        count: station.count,
        lettering,
        thing: Patch::around(lower, Extent { width: 4.0, height: 2.0 }),
        towards: [0.0, 1.0],
        of: station.of,
        at: station.at,
    }
}

/// Moves a pull and a pressing force that would cover each other a little apart; the arrows stand for them all the same.
fn part(presses: &mut [Station], pulls: &mut [Station]) {
    for press in presses {
        let Some(pull) = pulls.iter_mut().find(|pull| (pull.x - press.x).abs() < APART_PX) else {
            continue;
        };
        let away = (APART_PX - (pull.x - press.x).abs()) / 2.0;
        let side = if pull.x < press.x { -away } else { away };
        pull.x += side;
        press.x -= side;
    }
}

/// Forces in the order of their place, those close together added up until there are few.
fn few(all: Vec<Station>) -> Vec<Station> {
    let mut stations: Vec<Station> =
        ordered(all.len(), &|place| all[place].x).iter().map(|&place| all[place]).collect();
    let mut together_px = TOGETHER_PX;
    loop {
        let mut kept: Vec<Station> = Vec::new();
        for one in &stations {
            match kept.last_mut() {
                Some(last) if one.x - last.x < together_px => {
                    let sum_n = last.force_n + one.force_n;
                    let x = (last.x * last.force_n + one.x * one.force_n) / sum_n;
                    *last = Station { x, force_n: sum_n, count: last.count + one.count, of: Of::Nothing, at: None };
                }
                _ => kept.push(*one),
            }
        }
        if kept.len() <= STATIONS_MOST {
            return kept;
        }
        stations = kept;
        together_px *= 1.5;
    }
}

/// The middle of the pressed part of a foot, or of the foot.
fn pressed_middle(scene: &Scene, place: usize) -> Point {
    let foot = &scene.feet[place];
    let outline = &foot.outline;
    let pressed = foot.pressed.iter().fold(Moments::default(), |sum, part| sum.with(&part.moments()));
    let middle = Point::new((outline.left_mm + outline.right_mm) / 2.0, (outline.front_mm + outline.rear_mm) / 2.0);
    pressed.centroid().unwrap_or(middle)
}
