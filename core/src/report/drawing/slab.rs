//! The slab's edges in the plan: where the concrete ends, and how far that is.

use alloc::vec::Vec;

use super::board::Board;
use super::dimension::{Course, Dimension, Lie};
use super::mark::Shape;
use super::number_text::length_text;
use super::of::Of;
use super::patch::Patch;
use super::plan_layout::Layout;
use super::scale::{FAR_PX, PlanView, Scale};
use super::scene::Scene;
use super::side::{EdgeAt, Side};
use crate::calc::System;
use crate::geometry::{Point, Rectangle};

/// How far an edge line runs beyond what is shown, px.
const BEYOND_PX: f64 = 10.0;
/// Distance and size of the ticks on the concrete's side, px.
const TICK_EVERY_PX: f64 = 9.0;
const TICK_PX: f64 = 5.0;

/// Draws the edges: near ones where they are, far ones broken at the rim.
pub fn draw_edges(board: &mut Board, scene: &Scene, scale: &Scale, view: &PlanView) {
    let room = room(scene, scale, view);
    for side in Side::ALL {
        let edge = side.edge(&scene.slab, &scale.frame);
        let Some(level) = level_px(side, edge, scale, view) else {
            continue;
        };
        let ends = if side.is_upright() {
            [[level, room.top], [level, room.bottom]]
        } else {
            [[room.left, level], [room.right, level]]
        };
        if let EdgeAt::Far(_) = edge {
            board.line("edge far", ends[0], ends[1]).of = Of::Edge(side);
            board.avoid_last(1.5);
            continue;
        }
        // Ticks on the side of the concrete, as under the ground line of the elevation.
        let inward = match side {
            Side::Left | Side::Rear => 1.0,
            Side::Right | Side::Front => -1.0,
        };
        let mut ticks = Vec::new();
        let (from, to) = if side.is_upright() { (room.top, room.bottom) } else { (room.left, room.right) };
        let mut along = from + TICK_EVERY_PX;
        while along < to {
            let (root, tip) = match side.is_upright() {
                true => ([level, along], [level + inward * TICK_PX, along - TICK_PX]),
                false => ([along, level], [along - TICK_PX, level + inward * TICK_PX]),
            };
            ticks.extend_from_slice(&[root, tip]);
            along += TICK_EVERY_PX;
        }
        board.draw("edge-hatch", Shape::Lines, &ticks);
        board.line("edge", ends[0], ends[1]).of = Of::Edge(side);
        board.avoid_last(2.5);
    }
}

/// Dimensions from the outermost anchors to the edges; without anchors, from the cabinet's own outline.
pub fn dimension_edges(board: &mut Board, scene: &Scene, scale: &Scale, layout: &Layout, system: System) {
    for side in Side::ALL {
        let edge = side.edge(&scene.slab, &scale.frame);
        let Some(level) = level_px(side, edge, scale, &layout.view) else {
            continue;
        };
        let (EdgeAt::Near(edge_mm) | EdgeAt::Far(edge_mm)) = edge else {
            continue;
        };
        let root = outermost(scene, side);
        let root_px = layout.view.place(root);
        let course = if matches!(edge, EdgeAt::Near(_)) { Course::Whole } else { Course::Broken };
        // Along the dimension and across it.
        let (root_mm, from, across, lie, at) = match side.is_upright() {
            true => (root.x_mm, root_px[0], root_px[1], Lie::Across, layout.edge_level),
            false => (root.y_mm, root_px[1], root_px[0], Lie::UprightRight, layout.edge_upright),
        };
        let text = length_text((edge_mm - root_mm).abs(), system);
        let (ends, roots) = ([from, level], [across, at]);
        Dimension { lie, ends, level: at, roots, text: &text, of: Of::Edge(side), course }.draw(board);
    }
}

/// Where the line of an edge lies, px across its direction.
fn level_px(side: Side, edge: EdgeAt, scale: &Scale, view: &PlanView) -> Option<f64> {
    let shown = view.patch(&scale.shown);
    Some(match (edge, side) {
        (EdgeAt::Nowhere, _) => return None,
        (EdgeAt::Near(x_mm), Side::Left | Side::Right) => view.place(Point::new(x_mm, 0.0))[0],
        (EdgeAt::Near(y_mm), _) => view.place(Point::new(0.0, y_mm))[1],
        (EdgeAt::Far(_), Side::Left) => shown.left - FAR_PX,
        (EdgeAt::Far(_), Side::Right) => shown.right + FAR_PX,
        (EdgeAt::Far(_), Side::Front) => shown.bottom + FAR_PX,
        (EdgeAt::Far(_), Side::Rear) => shown.top - FAR_PX,
    })
}

/// How far the edge lines run: to the next edge around the corner, or a little beyond what is shown.
fn room(scene: &Scene, scale: &Scale, view: &PlanView) -> Patch {
    let shown = view.patch(&scale.shown).grown(BEYOND_PX);
    let limit =
        |side: Side, free: f64| level_px(side, side.edge(&scene.slab, &scale.frame), scale, view).unwrap_or(free);
    Patch {
        left: limit(Side::Left, shown.left),
        right: limit(Side::Right, shown.right),
        top: limit(Side::Rear, shown.top),
        bottom: limit(Side::Front, shown.bottom),
    }
}

/// The anchor nearest to an edge, of several the one nearest to where the dimension stands.
fn outermost(scene: &Scene, side: Side) -> Point {
    let outward = |point: Point| match side {
        Side::Left => -point.x_mm,
        Side::Right => point.x_mm,
        Side::Front => -point.y_mm,
        Side::Rear => point.y_mm,
    };
    let along = |point: Point| {
        if side.is_upright() { -point.y_mm } else { point.x_mm }
    };
    let mut nearest: Option<Point> = None;
    for anchor in &scene.anchors {
        let (place, out) = (anchor.place, outward(anchor.place));
        let is_nearer = |known: Point| out > outward(known) || (out == outward(known) && along(place) > along(known));
        if nearest.is_none_or(is_nearer) {
            nearest = Some(place);
        }
    }
    let outline: Rectangle = scene.cabinet.outline();
    nearest.unwrap_or(match side {
        Side::Left => Point::new(outline.left_mm, outline.front_mm),
        Side::Right => Point::new(outline.right_mm, outline.front_mm),
        Side::Front => Point::new(outline.right_mm, outline.front_mm),
        Side::Rear => Point::new(outline.right_mm, outline.rear_mm),
    })
}
