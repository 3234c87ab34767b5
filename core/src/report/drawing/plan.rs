use alloc::string::String;
use alloc::vec::Vec;

use super::base::{draw_base, draw_push, foot_patch};
use super::board::{Board, Label};
use super::dimension::{Course, Dimension, Lie};
use super::force::{ForceLabel, write_forces};
use super::lettering::Lettering;
use super::mark::Drawing;
use super::name::*;
use super::note::{push_text, tell, write_notes};
use super::number_text::*;
use super::of::Of;
use super::patch::{Extent, Patch};
use super::plan_layout::Layout;
use super::ring::rings_px;
use super::scale::{PlanView, Scale};
use super::scene::{Ending, Scene};
use super::slab::{dimension_edges, draw_edges};
use super::spot::Spot;
use crate::calc::System;
use crate::calc::number::{cos, sin};

/// The plan: the slab's edges, the base with what its feet press and its anchors pull, and the push.
///
/// Scope: any scene; what is too small to be drawn gets a sign, and numbers without room are counted in a note.
/// Units: the width in px, at least 240; one px of the result is one px of it. Rear on top. Numbers are in the
/// system's plain units, forces rounded up. The hatched part of a foot is the part that is pressed; the area of a ring
/// is proportional to the pull in its anchor.
///
/// ```
/// use steadfoot::calc::System;
/// use steadfoot::geometry::{Point, Rectangle, Size};
/// use steadfoot::report::drawing::{Anchor, Cabinet, Ending, Push, Scene, plan};
/// let anchor = Anchor { place: Point::new(450.0, 450.0), tension_n: Some(12_341.0), shear_n: [0.0, 0.0], at: None };
/// let scene = Scene {
///     cabinet: Cabinet { width_mm: 1000.0, depth_mm: 1000.0, height_mm: 2000.0 },
///     feet: vec![],
///     anchors: vec![anchor],
///     slab: Rectangle::EVERYWHERE,
///     openings: vec![],
///     neighbours: vec![],
///     breakouts: vec![],
///     contents: vec![],
///     centre_mm: [0.0, 0.0, 900.0],
///     push: Push { direction_rad: 0.0, force_n: 5000.0, acceleration_g: 0.5, down_n: 10_000.0 },
///     pivot: None,
///     ending: Ending::Settles,
/// };
/// let drawing = plan(&scene, 320.0, System::Si);
/// assert!(drawing.marks.iter().any(|mark| mark.text == "12.4\u{a0}kN" && mark.of.text() == "anchor 1"));
/// ```
pub fn plan(scene: &Scene, width_px: f64, system: System) -> Drawing {
    let scale = Scale::shared(scene, width_px);
    let layout = Layout::new(scene, &scale);
    let mut board = Board::new(scale.width_px, layout.height);
    draw_edges(&mut board, scene, &scale, &layout.view);
    draw_base(&mut board, scene, &scale, &layout.view);
    let tip = draw_push(&mut board, scene, &layout.view);
    write_sides(&mut board, &layout);
    draw_dimensions(&mut board, scene, &scale, &layout, system);
    write_ending(&mut board, scene, &layout.view);
    let mut notes = notes(scene, system);
    if !write_push(&mut board, scene, tip, system) {
        notes.push(push_text(scene, system));
    }
    let left_out = write_forces(&mut board, &force_labels(scene, &layout.view), system);
    if left_out > 0 {
        notes.push(filled(FORCES_LEFT_OUT, &[&count_text(left_out)]));
    }
    let height = write_notes(&mut board, layout.height, &notes);
    Drawing {
        view: "plan",
        width: scale.width_px,
        height,
        mm_per_px: scale.mm_per_px(),
        title: title(scene, system),
        marks: board.into_marks(),
    }
}

fn write_sides(board: &mut Board, layout: &Layout) {
    let middle = layout.view.origin[0];
    for (id, level) in [(REAR, layout.rim.top - 11.0), (FRONT, layout.rim.bottom + 12.0)] {
        let spots = [0.0, 24.0, -24.0, 48.0, -48.0]
            .map(|aside: f64| Spot::centred([middle + aside, level]).costing(aside.abs()));
        board.write(&Label::new(Lettering::Word, word(id), Of::Nothing), &spots);
    }
}

fn draw_dimensions(board: &mut Board, scene: &Scene, scale: &Scale, layout: &Layout, system: System) {
    dimension_edges(board, scene, scale, layout, system);
    let patch = layout.view.patch(&scene.cabinet.outline());
    let overall = [
        (Lie::Across, [patch.left, patch.right], layout.width_level, patch.bottom, scene.cabinet.width_mm, Of::Width),
        (
            Lie::UprightLeft,
            [patch.top, patch.bottom],
            layout.depth_upright,
            patch.left,
            scene.cabinet.depth_mm,
            Of::Depth,
        ),
    ];
    for (lie, ends, level, root, length_mm, of) in overall {
        let text = length_text(length_mm, system);
        Dimension { lie, ends, level, roots: [root, root], text: &text, of, course: Course::Whole }.draw(board);
    }
}

/// False where the number of the push found no room.
fn write_push(board: &mut Board, scene: &Scene, tip: [f64; 2], system: System) -> bool {
    if scene.push.force_n <= 0.0 {
        return true;
    }
    let text = force_text(scene.push.force_n, system);
    let thing = Patch::around(tip, Extent { width: 6.0, height: 6.0 });
    let towards = [cos(scene.push.direction_rad), -sin(scene.push.direction_rad)];
    board.write_around(&Label::new(Lettering::Push, &text, Of::Push), &thing, towards)
}

/// Pulls stand outside of the base, forces under feet inside, each on its own side.
fn force_labels(scene: &Scene, view: &PlanView) -> Vec<ForceLabel> {
    let outline = scene.cabinet.outline();
    let aside = |[x, y]: [f64; 2]| {
        let (x, y) = (x - view.origin[0], y - view.origin[1]);
        [x / (outline.right_mm * view.px_per_mm), y / (outline.rear_mm * view.px_per_mm)]
    };
    let rings = rings_px(&scene.anchors, view.px_per_mm);
    let mut labels = Vec::new();
    for (place, anchor) in scene.anchors.iter().enumerate() {
        let force_n = anchor.tension_n.unwrap_or(0.0);
        if force_n > 0.0 {
            let across = 2.0 * rings[place].max(3.0);
            let thing = Patch::around(view.place(anchor.place), Extent { width: across, height: across });
            let [x, y] = aside(thing.middle());
            let (lettering, of) = (Lettering::Pull, Of::Anchor(place));
            labels.push(ForceLabel { force_n, count: 1, lettering, thing, towards: [0.6 * x, y], of, at: anchor.at });
        }
    }
    for (place, foot) in scene.feet.iter().enumerate() {
        let Some(force_n) = foot.force_n else {
            continue;
        };
        let thing = foot_patch(scene, place, view);
        let [x, y] = aside(thing.middle());
        let (lettering, of) = (Lettering::Press, Of::Foot(place));
        labels.push(ForceLabel { force_n, count: 1, lettering, thing, towards: [-x, -0.3 * y], of, at: foot.at });
    }
    labels
}

fn write_ending(board: &mut Board, scene: &Scene, view: &PlanView) {
    let text = match scene.ending {
        Ending::Settles => return,
        Ending::Tips => word(TIPS),
        Ending::OnThePoint => word(ON_THE_POINT),
    };
    let outline = view.patch(&scene.cabinet.outline());
    let thing = match scene.pivot {
        Some(edge) => Patch::around(
            Patch::between(view.place(edge.from), view.place(edge.to)).middle(),
            Extent { width: 2.0, height: 2.0 },
        ),
        None => Patch::around(outline.middle(), Extent { width: 2.0, height: 2.0 }),
    };
    // Inwards: where no answer exists there are no forces under the feet, and the middle is free.
    let middle = thing.middle();
    let towards = [view.origin[0] - middle[0], view.origin[1] - middle[1]];
    board.write_around(&Label::new(Lettering::Outcome, text, Of::Pivot), &thing, towards);
}

fn notes(scene: &Scene, system: System) -> Vec<String> {
    let mut notes = Vec::new();
    let shears = || scene.anchors.iter().map(|anchor| anchor.shear_size_n());
    let most_n = shears().fold(0.0, f64::max);
    if most_n > 0.0 {
        let is_even = shears().all(|shear_n| most_n - shear_n <= 0.005 * most_n);
        let row = if is_even { SHEAR_EACH } else { SHEAR_UP_TO };
        notes.push(filled(row, &[&force_text(most_n, system)]));
    }
    let peak_mpa =
        scene.feet.iter().filter_map(|foot| foot.peak_mpa).filter(|peak| peak.is_finite()).fold(0.0, f64::max);
    if peak_mpa > 0.0 {
        notes.push(filled(PEAK_PRESSURE, &[&pressure_text(peak_mpa, system)]));
    }
    notes
}

fn title(scene: &Scene, system: System) -> String {
    let mut title = String::from(word(PLAN_TITLE));
    tell(&mut title, &push_text(scene, system));
    let pulls = scene.anchors.iter().map(|anchor| anchor.tension_n);
    let presses = scene.feet.iter().map(|foot| foot.force_n);
    for (row, largest) in [(LARGEST_PULL, largest(pulls)), (LARGEST_PRESS, largest(presses))] {
        if let Some((place, force_n)) = largest {
            tell(&mut title, &filled(row, &[&force_text(force_n, system), &count_text(place + 1)]));
        }
    }
    match scene.ending {
        Ending::Settles => {}
        Ending::Tips => tell(&mut title, word(TIPS)),
        Ending::OnThePoint => tell(&mut title, word(ON_THE_POINT)),
    }
    title
}

/// The first of the largest forces and its place.
fn largest(forces: impl Iterator<Item = Option<f64>>) -> Option<(usize, f64)> {
    let mut largest = None;
    for (place, force) in forces.enumerate() {
        let force_n = force.unwrap_or(0.0);
        if force_n > largest.map_or(0.0, |(_, known_n)| known_n) {
            largest = Some((place, force_n));
        }
    }
    largest
}
