//! Cabinets side by side: as one body where they are tied stiffly, each with the others' anchors in its concrete where
//! they are not.

use alloc::string::String;
use alloc::vec::Vec;

use crate::cabinet::{ANCHORS_MAX, FEET_MAX};
use crate::geometry::Point;
use crate::input::fault::push_whole;
use crate::load_out::State;
use crate::project::{Neighbour, Project};

/// Why a row cannot be made of a cabinet.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum NoRow {
    /// Together they have more feet or anchors than a project may have.
    TooMany,
    /// A foot or an anchor of the row would stand beside the slab or over an opening.
    OffTheSlab,
}

/// Cabinets at their pitch.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pitched {
    /// How many.
    pub count: usize,
    /// From middle to middle.
    pub pitch_mm: f64,
}

/// One cabinet of a row that is not tied, with the others as its neighbours; `place` counts from the left end.
///
/// Errors: [`NoRow::OffTheSlab`].
pub fn one_of_the_row(project: &Project, row: &Pitched, place: usize) -> Result<Project, NoRow> {
    let mut one = project.clone();
    one.slab = one.slab.map(|slab| slab.shifted(Point::new(-row.pitch_mm * place as f64, 0.0)));
    one.neighbours = (0..row.count)
        .filter(|&other| other != place)
        .map(|other| {
            let mut name = String::new();
            push_whole(&mut name, other + 1);
            Neighbour { name, at: Point::new(row.pitch_mm * (other as f64 - place as f64), 0.0) }
        })
        .collect();
    on_the_slab(one)
}

/// The row as one stiff body: all feet, all anchors, all contents. Beside all full and all empty it has the states in
/// which the cabinets from one end on, or one alone, are full, and the user's own states in all cabinets at once.
///
/// Its origin is the middle of the row. What belongs to the single cabinet is left out: its frame's structure, moving,
/// lifting, neighbours, and the floor, whose area loads count on one cabinet's plan.
///
/// Errors: [`NoRow`].
pub fn as_one_body(project: &Project, row: &Pitched) -> Result<Project, NoRow> {
    let cabinet = &project.cabinet;
    if cabinet.feet.len() * row.count > FEET_MAX || cabinet.anchors.len() * row.count > ANCHORS_MAX {
        return Err(NoRow::TooMany);
    }
    let middle_mm = row.pitch_mm * (row.count - 1) as f64 / 2.0;
    let mut body = project.clone();
    body.cabinet.width_mm += 2.0 * middle_mm;
    body.cabinet.frame.mass_kg *= row.count as f64;
    (body.cabinet.feet, body.cabinet.anchors, body.contents) = (Vec::new(), Vec::new(), Vec::new());
    body.cabinet.lifting_points = Vec::new();
    for place in 0..row.count {
        let by = Point::new(row.pitch_mm * place as f64 - middle_mm, 0.0);
        let moved = |at: Point| Point::new(at.x_mm + by.x_mm, at.y_mm + by.y_mm);
        body.cabinet.feet.extend(cabinet.feet.iter().cloned().map(|mut foot| {
            foot.at = moved(foot.at);
            foot
        }));
        body.cabinet.anchors.extend(cabinet.anchors.iter().cloned().map(|mut anchor| {
            anchor.at = moved(anchor.at);
            anchor.as_built = anchor.as_built.map(moved);
            anchor
        }));
        body.contents.extend(project.contents.iter().cloned().map(|mut content| {
            content.offset_mm[0] += by.x_mm;
            content
        }));
    }
    body.states = states(project, row.count);
    body.is_part_filled = false;
    body.slab = body.slab.map(|slab| slab.shifted(Point::new(-middle_mm, 0.0)));
    body.neighbours = Vec::new();
    body.floor = None;
    (body.structure, body.moving, body.lifting, body.shake_table, body.drilling) = (None, None, None, None, None);
    on_the_slab(body)
}

/// The states of a row beside all full and all empty.
fn states(project: &Project, count: usize) -> Vec<State> {
    let each = project.contents.len();
    let mut states = Vec::new();
    let mut full = |from: usize, to: usize| {
        let mut name = String::from("full ");
        push_whole(&mut name, from + 1);
        if to > from + 1 {
            name.push('–');
            push_whole(&mut name, to);
        }
        let without = (0..each * count).filter(|place| !(from * each..to * each).contains(place)).collect();
        states.push(State { name, without, drawn_out_mm: Vec::new() });
    };
    if each > 0 {
        for some in 1..count {
            full(0, some);
            full(count - some, count);
        }
        for alone in 1..count - 1 {
            full(alone, alone + 1);
        }
    }
    for state in &project.states {
        let places = |cabinet: usize| move |place: usize| cabinet * each + place;
        states.push(State {
            name: state.name.clone(),
            without: (0..count).flat_map(|cabinet| state.without.iter().copied().map(places(cabinet))).collect(),
            drawn_out_mm: (0..count)
                .flat_map(|cabinet| state.drawn_out_mm.iter().map(move |&(place, mm)| (cabinet * each + place, mm)))
                .collect(),
        });
    }
    states
}

fn on_the_slab(project: Project) -> Result<Project, NoRow> {
    let Some(slab) = &project.slab else { return Ok(project) };
    let own = core::iter::once(Point::default());
    let all = || own.clone().chain(project.neighbours.iter().map(|neighbour| neighbour.at));
    let bolted = |anchor: &crate::cabinet::Anchor| {
        all().all(|by| slab.is_under(Point::new(anchor.at.x_mm + by.x_mm, anchor.at.y_mm + by.y_mm)))
    };
    let stands = |foot: &crate::cabinet::Foot| slab.is_under_all(&foot.rectangle());
    let is_on = project.cabinet.feet.iter().all(stands) && project.cabinet.anchors.iter().all(bolted);
    if is_on { Ok(project) } else { Err(NoRow::OffTheSlab) }
}
