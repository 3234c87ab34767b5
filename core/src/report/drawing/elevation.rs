use alloc::string::String;
use alloc::vec::Vec;

use super::arrow::PUSH;
use super::board::{Board, Label};
use super::centre::{CENTRE_PX, draw_centre};
use super::dimension::{Course, Dimension, Lie};
use super::elevation_view::ElevationView;
use super::floor::{ARROW_PX, GROUND_PX, draw_ground, draw_pivot, draw_reactions, draw_soles};
use super::force::write_forces;
use super::lettering::Lettering;
use super::mark::Drawing;
use super::name::*;
use super::note::{push_text, tell, write_notes};
use super::number_text::*;
use super::of::Of;
use super::patch::{Extent, Patch};
use super::scale::Scale;
use super::scene::{Ending, Scene};
use super::spot::Spot;
use super::tray::{Trays, draw_trays};
use crate::calc::number::round;
use crate::calc::{StepId, System};
use crate::geometry::Point;

/// The elevation: everything projected onto the vertical plane of the push, which points to the right.
///
/// Scope: any scene. Units: as in the plan, and at the same scale. Forces at the floor are those on the cabinet, what
/// stands behind one another added up; their arrows are drawn below the floor, pulls downwards. The caption tells along
/// which direction one looks.
pub fn elevation(scene: &Scene, width_px: f64, system: System) -> Drawing {
    let scale = Scale::shared(scene, width_px);
    let view = ElevationView::new(scene, &scale);
    let height = view.ground + BELOW_PX;
    let mut board = Board::new(scale.width_px, height);
    draw_ground(&mut board, &view);
    let outline = view.cabinet_patch(scene);
    board.polygon("cabinet", &outline.corners()).of = Of::Cabinet;
    let trays = draw_trays(&mut board, scene, &view);
    draw_soles(&mut board, scene, &view);
    write_view(&mut board, scene);
    draw_heights(&mut board, scene, &view, &trays, system);
    let mut notes: Vec<String> = Vec::new();
    let all = board.confine(0.0, view.ground - 1.0);
    if !draw_push(&mut board, scene, &view, &trays, system) {
        notes.push(push_text(scene, system));
    }
    let masses = Trays { scene, patches: &trays, wall: outline.right, system };
    let masses_left_out_kg = masses.write_masses(&mut board);
    board.release(all);
    let all = board.confine(view.ground + GROUND_PX, height);
    let forces = draw_reactions(&mut board, scene, &view);
    let pivot = draw_pivot(&mut board, scene, &view);
    write_pivot(&mut board, scene, pivot, &outline);
    let forces_left_out = write_forces(&mut board, &forces, system);
    board.release(all);
    if masses_left_out_kg > 0.0 {
        notes.push(filled(MASSES_LEFT_OUT, &[&mass_text(masses_left_out_kg, system)]));
    }
    if forces_left_out > 0 {
        notes.push(filled(FORCES_LEFT_OUT, &[&count_text(forces_left_out)]));
    }
    let height = write_notes(&mut board, height, &notes);
    Drawing {
        view: "elevation",
        width: scale.width_px,
        height,
        mm_per_px: scale.mm_per_px(),
        title: title(scene, system),
        marks: board.into_marks(),
    }
}

/// Room below the floor for arrows and their numbers, px.
const BELOW_PX: f64 = ARROW_PX + 34.0;

/// From where to where the cabinet with all drawers reaches, px across.
fn reach(scene: &Scene, view: &ElevationView, trays: &[Patch]) -> (f64, f64) {
    let outline = view.cabinet_patch(scene);
    trays.iter().fold((outline.left, outline.right), |(left, right), tray| (left.min(tray.left), right.max(tray.right)))
}

/// The caption, and which sides of the cabinet lie left and right.
fn write_view(board: &mut Board, scene: &Scene) {
    let width = board.width();
    let direction = scene.push.direction_rad;
    let caption = filled(SEEN_ALONG, &[&direction_text(direction + core::f64::consts::FRAC_PI_2)]);
    let right = word(side_name(direction));
    let left = word(side_name(direction + core::f64::consts::PI));
    let level = 10.0;
    for (text, of, spot) in [
        (caption.as_str(), Of::View, Spot::centred([width / 2.0, level])),
        (left, Of::Nothing, Spot::from_left(6.0, level, Lettering::Word.width_px(left))),
        (right, Of::Nothing, Spot::from_right(width - 6.0, level, Lettering::Word.width_px(right))),
    ] {
        board.set(&Label::new(Lettering::Word, text, of), &spot);
    }
}

/// The side of the cabinet that lies in a direction, to an eighth of a turn.
fn side_name(direction_rad: f64) -> StepId {
    let eighth = round(direction_rad / core::f64::consts::FRAC_PI_4) as i64;
    // The last three bits count eighths round and round, below zero too.
    match eighth & 7 {
        0 => RIGHT,
        1 => REAR_RIGHT,
        2 => REAR,
        3 => REAR_LEFT,
        4 => LEFT,
        5 => FRONT_LEFT,
        6 => FRONT,
        _ => FRONT_RIGHT,
    }
}

fn draw_heights(board: &mut Board, scene: &Scene, view: &ElevationView, trays: &[Patch], system: System) {
    let (left, _) = reach(scene, view, trays);
    let wall = view.cabinet_patch(scene).left;
    let heights =
        [(scene.centre_mm[2], left - 12.0, Of::CentreHeight), (scene.cabinet.height_mm, left - 32.0, Of::Height)];
    for (height_mm, level, of) in heights {
        let text = length_text(height_mm, system);
        let (ends, roots) = ([view.height(height_mm), view.ground], [wall, level]);
        Dimension { lie: Lie::UprightLeft, ends, level, roots, text: &text, of, course: Course::Whole }.draw(board);
    }
}

/// The push from the centre of gravity out to the right, and the weight down; false where a number found no room.
fn draw_push(board: &mut Board, scene: &Scene, view: &ElevationView, trays: &[Patch], system: System) -> bool {
    let mut is_written = true;
    let at = [view.along(Point::new(scene.centre_mm[0], scene.centre_mm[1])), view.height(scene.centre_mm[2])];
    let (_, right) = reach(scene, view, trays);
    let width = board.width();
    let push = &scene.push;
    board.block(Patch::around(at, Extent { width: 2.0 * CENTRE_PX, height: 2.0 * CENTRE_PX }));
    if push.force_n > 0.0 {
        PUSH.draw(board, [at, [(right.max(at[0]) + 46.0).min(width - 8.0), at[1]]], Of::Push);
        let texts = [force_text(push.force_n, system), acceleration_text(push.acceleration_g)];
        for (text, side) in texts.iter().zip([-1.0, 1.0]) {
            let wide = Lettering::Push.width_px(text);
            let low = (right + 5.0).min(width - 2.0 - wide);
            let mut spots = Vec::new();
            for step in 0..8 {
                let away = f64::from(step) * 7.0;
                spots.push(Spot::from_left(low, at[1] + side * (11.0 + away), wide).costing(away));
                spots.push(Spot::from_left(low, at[1] - side * (11.0 + away), wide).costing(away + 10.0));
            }
            is_written &= board.write(&Label::new(Lettering::Push, text, Of::Push), &spots).is_some();
        }
    }
    if push.down_n != 0.0 {
        let down = if push.down_n > 0.0 { 1.0 } else { -1.0 };
        let length = (0.5 * (view.ground - at[1])).clamp(16.0, 34.0);
        let tip = [at[0], at[1] + down * length];
        PUSH.draw(board, [at, tip], Of::Weight);
        let text = force_text(push.down_n.abs(), system);
        let thing = Patch::around([tip[0], tip[1] - down * 4.0], Extent { width: 8.0, height: 8.0 });
        is_written &= board.write_around(&Label::new(Lettering::Push, &text, Of::Weight), &thing, [0.8, down * 0.6]);
    }
    draw_centre(board, at);
    is_written
}

fn write_pivot(board: &mut Board, scene: &Scene, pivot: Option<Patch>, outline: &Patch) {
    let (text, lettering) = match (scene.ending, pivot) {
        (Ending::Settles, None) => return,
        (Ending::Settles, Some(_)) => (word(PIVOT), Lettering::Word),
        (Ending::Tips, Some(_)) => (word(TIPS_HERE), Lettering::Outcome),
        (Ending::Tips, None) => (word(TIPS), Lettering::Outcome),
        (Ending::OnThePoint, _) => (word(ON_THE_POINT), Lettering::Outcome),
    };
    let label = Label::new(lettering, text, Of::Pivot);
    let thing = pivot.unwrap_or(Patch { top: outline.bottom, bottom: outline.bottom + 2.0, ..*outline });
    board.write_around(&label, &thing, [0.0, 1.0]);
}

fn title(scene: &Scene, system: System) -> String {
    let mut title = String::from(word(ELEVATION_TITLE));
    let seen = direction_text(scene.push.direction_rad + core::f64::consts::FRAC_PI_2);
    tell(&mut title, &filled(SEEN_ALONG, &[&seen]));
    tell(&mut title, &push_text(scene, system));
    tell(&mut title, &filled(CENTRE_HEIGHT, &[&length_text(scene.centre_mm[2], system)]));
    title
}
