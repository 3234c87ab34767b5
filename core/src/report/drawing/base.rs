//! The base in the plan: outline, drawers, breakout, feet, anchors, and the push.

use alloc::vec::Vec;

use super::arrow::{PUSH, SHEAR};
use super::board::Board;
use super::centre::{CENTRE_PX, draw_centre};
use super::hatch::hatch;
use super::mark::Shape;
use super::of::Of;
use super::patch::{Extent, Patch};
use super::ring::rings_px;
use super::scale::{PlanView, Scale};
use super::scene::Scene;
use crate::calc::number::{cos, hypot, sin};
use crate::geometry::{Point, Polygon};

/// Distance of the hatching lines, measured along the axes, px.
const HATCH_PX: f64 = 5.0;
/// Radius of an anchor's dot, px.
const BOLT_PX: f64 = 2.2;
/// A foot smaller than this is drawn as a small circle, for its outline would vanish, px.
const FOOT_LEAST_PX: f64 = 2.0;
/// Length of the largest shear arrow, px.
const SHEAR_PX: f64 = 16.0;
/// How far the pivot's line runs beyond the edge, px.
const PIVOT_BEYOND_PX: f64 = 12.0;

/// Draws the cabinet with its feet, anchors and breakout.
pub fn draw_base(board: &mut Board, scene: &Scene, scale: &Scale, view: &PlanView) {
    for outline in &scene.breakouts {
        let kept = outline.clipped_to(&scale.frame);
        if kept.corners.len() > 2 {
            board.polygon("breakout", &corners(&kept, view));
            board.avoid_last(0.8);
        }
    }
    draw_surroundings(board, scene, scale, view);
    for (place, one) in scene.contents.iter().enumerate() {
        if one.drawn_out_mm > 0.0 {
            board.polygon("drawer", &view.patch(&one.footprint()).corners()).of = Of::Contents(place);
            board.avoid_last(0.5);
        }
    }
    board.polygon("cabinet", &view.patch(&scene.cabinet.outline()).corners()).of = Of::Cabinet;
    board.avoid_last(2.0);
    draw_feet(board, scene, view);
    draw_anchors(board, scene, view);
    if let Some(edge) = scene.pivot {
        draw_pivot(board, view.place(edge.from), view.place(edge.to));
    }
}

/// Openings in the slab, and the anchors of the neighbours as far as they are in sight.
fn draw_surroundings(board: &mut Board, scene: &Scene, scale: &Scale, view: &PlanView) {
    for opening in scene.openings.iter().filter_map(|opening| opening.clipped(&scale.frame)) {
        board.polygon("opening", &view.patch(&opening).corners());
        board.avoid_last(0.8);
    }
    for &anchor in scene.neighbours.iter().filter(|anchor| scale.frame.contains(**anchor)) {
        board.circle("bolt neighbour", view.place(anchor), BOLT_PX);
        board.avoid_last(1.0);
    }
}

/// Draws the centre of gravity and the push that acts there; returns the tip of the arrow.
pub fn draw_push(board: &mut Board, scene: &Scene, view: &PlanView) -> [f64; 2] {
    let at = view.place(Point::new(scene.centre_mm[0], scene.centre_mm[1]));
    let cabinet = view.patch(&scene.cabinet.outline()).extent();
    let length = (0.42 * cabinet.width.min(cabinet.height)).clamp(26.0, 64.0);
    let direction = scene.push.direction_rad;
    let tip = [at[0] + length * cos(direction), at[1] - length * sin(direction)];
    if scene.push.force_n > 0.0 {
        PUSH.draw(board, [at, tip], Of::Push);
    }
    draw_centre(board, at);
    board.block(Patch::around(at, Extent { width: 2.0 * CENTRE_PX, height: 2.0 * CENTRE_PX }));
    tip
}

/// The patch that a foot takes in the drawing.
pub fn foot_patch(scene: &Scene, place: usize, view: &PlanView) -> Patch {
    let patch = view.patch(&scene.feet[place].outline);
    if is_tiny(&patch) { Patch::around(patch.middle(), Extent { width: 5.0, height: 5.0 }) } else { patch }
}

fn is_tiny(patch: &Patch) -> bool {
    let extent = patch.extent();
    extent.width.max(extent.height) < FOOT_LEAST_PX
}

fn draw_feet(board: &mut Board, scene: &Scene, view: &PlanView) {
    for (place, foot) in scene.feet.iter().enumerate() {
        let class = if foot.force_n == Some(0.0) { "foot lifted" } else { "foot" };
        let patch = view.patch(&foot.outline);
        let mark = if is_tiny(&patch) {
            board.circle(class, patch.middle(), 2.5)
        } else {
            board.polygon(class, &patch.corners())
        };
        mark.of = Of::Foot(place);
        mark.at = foot.at;
        board.avoid(foot_patch(scene, place, view), 0.6);
        let mut lines = Vec::new();
        for pressed in &foot.pressed {
            hatch(&corners(pressed, view), HATCH_PX, &mut lines);
        }
        if !lines.is_empty() {
            board.draw("pressure", Shape::Lines, &lines).of = Of::Foot(place);
        }
    }
}

fn draw_anchors(board: &mut Board, scene: &Scene, view: &PlanView) {
    let rings = rings_px(&scene.anchors, view.px_per_mm);
    let most_shear_n = scene.anchors.iter().map(|anchor| anchor.shear_size_n()).fold(0.0, f64::max);
    for (place, anchor) in scene.anchors.iter().enumerate() {
        let at = view.place(anchor.place);
        if rings[place] > 0.0 {
            let mark = board.circle("ring", at, rings[place]);
            mark.of = Of::Anchor(place);
            mark.at = anchor.at;
            board.avoid_last(0.6);
        }
        if anchor.shear_size_n() > 0.02 * most_shear_n {
            let [x_n, y_n] = anchor.shear_n;
            let long = SHEAR_PX / most_shear_n;
            SHEAR.draw(board, [at, [at[0] + x_n * long, at[1] - y_n * long]], Of::Anchor(place));
        }
        let mark = board.circle("bolt", at, BOLT_PX);
        mark.of = Of::Anchor(place);
        mark.at = anchor.at;
        board.avoid_last(2.0);
    }
}

/// The axis about which it turns, drawn a little beyond its ends.
fn draw_pivot(board: &mut Board, from: [f64; 2], to: [f64; 2]) {
    let length = hypot(to[0] - from[0], to[1] - from[1]);
    let mark = if length < 1.0 {
        board.circle("pivot", from, 5.0)
    } else {
        let (x, y) = (PIVOT_BEYOND_PX * (to[0] - from[0]) / length, PIVOT_BEYOND_PX * (to[1] - from[1]) / length);
        board.line("pivot", [from[0] - x, from[1] - y], [to[0] + x, to[1] + y])
    };
    mark.of = Of::Pivot;
    board.avoid_last(1.0);
}

fn corners(polygon: &Polygon, view: &PlanView) -> Vec<[f64; 2]> {
    polygon.corners.iter().map(|&corner| view.place(corner)).collect()
}
