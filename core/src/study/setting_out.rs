//! The setting-out sheet: where the holes are drilled, and how far off each of them may be.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::setting_out_plan::plan;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, StepId, number, steps};
use crate::explore::{Circle, Hole, Tolerance, holes};
use crate::project::Project;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 93 "setting-out sheet";
    COORDINATES "" Number (INPUT "cabinet.anchors" Derived) "where the holes are": Name;
    OFF "" Number (STATICS "" Derived) "how far off its mark a hole may be drilled": Name;
    HOLE "" Number (INPUT "cabinet.anchors" Derived) "hole": Name;
    NAME "" Number (INPUT "cabinet.anchors" Derived) "name": Name;
    X "" Number (INPUT "cabinet.anchors" Derived) "to the right of the middle": Name;
    Y "" Number (INPUT "cabinet.anchors" Derived) "to the rear of the middle": Name;
    LEFT "" Number (INPUT "slab" Derived) "from the left edge": Name;
    RIGHT "" Number (INPUT "slab" Derived) "from the right edge": Name;
    FRONT "" Number (INPUT "slab" Derived) "from the front edge": Name;
    REAR "" Number (INPUT "slab" Derived) "from the rear edge": Name;
    BOLT "" Number (INPUT "anchorage" Derived) "bolt": Name;
    EMBEDMENT "" Number (INPUT "anchorage" Derived) "embedment": Name;
    HOLE_DIAMETER "" Number (INPUT "drilling" Derived) "diameter of the hole": Name;
    HOLE_DEPTH "" Number (INPUT "drilling" Derived) "depth of the hole": Name;
    TORQUE "" Number (INPUT "drilling" Derived) "torque": Name;
    FROM_THE_MAKER "" Number (INPUT "drilling" Derived) "from the maker's data": Name;
    NEAREST "" Number (INPUT "cabinet.anchors" Derived) "nearest other hole": Name;
    LEAST_SPACING "" Number (STATICS "" Derived) "least spacing": Name;
    EDGE "" Number (INPUT "slab" Derived) "nearest edge or opening": Name;
    LEAST_EDGE "" Number (STATICS "" Derived) "least edge distance": Name;
    HOLDS "" Number (STATICS "" Derived) "holds when off by": Name;
    FAILS "" Number (STATICS "" Derived) "no longer when off by": Name;
    TOWARDS "" Number (STATICS "" Derived) "worst towards": Name;
    WHAT_FAILS "" Number (STATICS "" Derived) "what fails first": Name;
    ALL_AT_ONCE "" Number (STATICS "" Derived) "all holes at once": Name;
    AS_FAR_AS_TRIED "" Number (STATICS "" Derived) "not as far as is tried": Name;
    LEAVES "" Number (STATICS "" Derived) "the hole would leave the slab or meet another": Name;
    FAR "" Number (INPUT "slab" Derived) "far": Name;
    AXES "" Number (INPUT "cabinet" Derived) "measured from the middle of the cabinet's base to the right and to the rear, as seen by a person in front of it; from the slab's edges where they are given. Directions count from the right towards the rear": Reason;
    ALIKE "" Number (STATICS "" Derived) "an anchor that is drilled off its mark is taken to hold the cabinet where it stands; whether its bracket reaches there is not checked": Reason;
    CIRCLES "" Number (STATICS "" Derived) "the dashed circles show how far each hole may be off by itself; if several are off, the line for all holes at once counts": Reason;
    BARS "" Number (INPUT "slab" Derived) "find reinforcement, pipes and cables before drilling; a bar is not cut without the engineer, and a hole that is given up is filled and noted": Reason;
    NOTHING_TO_SPARE "" Number (STATICS "" Derived) "as planned it does not hold, or cannot be said to: there is no tolerance to give, and nothing here is fit to be drilled": Reason;
    NO_HOLES "" Number (INPUT "cabinet.anchors" Derived) "there are no anchors to set out": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "setting-out", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "setting-out",
    title: "The setting-out sheet",
    help: "Every hole with its number, its place and its distances, and how far off its mark it may be before a required \
           check passes 1: each hole alone in the direction that is worst for it, then all at once, each \
           in one of eight directions. Tried in whole millimetres, up to 100 mm.",
    steps: &[&TEXTS, &super::setting_out_plan::TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let holes = holes(project);
    if holes.is_empty() {
        return Err(NO_HOLES);
    }
    let tolerance = Tolerance::new(project).map(|mut search| {
        search.finish();
        search
    });
    let circles: &[Circle] = tolerance.as_ref().map_or(&[], |search| &search.circles);
    let pictures = vec![Picture::Figure(plan(project, &holes, circles))];
    let mut tables = vec![coordinates(project, &holes)];
    let mut notes = vec![AXES];
    match &tolerance {
        Some(search) => {
            tables.push(off(&holes, search));
            notes.extend([CIRCLES, ALIKE]);
        }
        None => notes.push(NOTHING_TO_SPARE),
    }
    notes.push(BARS);
    Ok(Shown { notes, tables, pictures, sections: Vec::new() })
}

fn coordinates(project: &Project, holes: &[Hole]) -> Table {
    let sides: Vec<usize> = (0..4).filter(|&side| holes.iter().any(|hole| hole.edges_mm[side].is_finite())).collect();
    let mm = |name| Column::nearest(name, Kind::Length);
    let mut columns = vec![Column::nearest(HOLE, Kind::Number), Column::words(NAME), mm(X), mm(Y)];
    columns.extend(sides.iter().map(|&side| mm([LEFT, RIGHT, FRONT, REAR][side])));
    columns.extend([Column::words(BOLT), mm(EMBEDMENT), mm(HOLE_DIAMETER), mm(HOLE_DEPTH), Column::words(TORQUE)]);
    let drilled = |measure: Option<f64>| measure.map_or(Cell::Name(FROM_THE_MAKER), Cell::Number);
    let diameter = drilled(project.drilling.and_then(|drilling| drilling.diameter_mm));
    let depth = drilled(project.drilling.and_then(|drilling| drilling.depth_mm));
    let line = |hole: &Hole| {
        let mut cells = vec![
            Cell::Number(hole.number as f64),
            Cell::Text(hole.name.clone().unwrap_or_default()),
            Cell::Number(hole.at.x_mm),
            Cell::Number(hole.at.y_mm),
        ];
        cells.extend(sides.iter().map(|&side| Cell::Number(hole.edges_mm[side])));
        cells.push(hole.bolt.map_or(Cell::Nothing, |bolt| Cell::Text(String::from(bolt))));
        cells.push(hole.embedment_mm.map_or(Cell::Nothing, Cell::Number));
        cells.extend([diameter.clone(), depth.clone(), Cell::Name(FROM_THE_MAKER)]);
        Line::plain(cells)
    };
    Table { name: COORDINATES, columns, rows: holes.iter().map(line).collect() }
}

fn off(holes: &[Hole], search: &Tolerance) -> Table {
    let columns = columns![
        Column::words(HOLE),
        Column::down(HOLDS, Kind::Length),
        Column::up(FAILS, Kind::Length),
        Column::nearest(TOWARDS, Kind::Angle),
        Column::words(WHAT_FAILS),
        Column::nearest(NEAREST, Kind::Length),
        Column::up(LEAST_SPACING, Kind::Length),
        Column::nearest(EDGE, Kind::Length),
        Column::up(LEAST_EDGE, Kind::Length),
    ];
    let mut rows = Vec::new();
    let asked = |least: Option<f64>| least.map_or(Cell::Name(FROM_THE_MAKER), Cell::Number);
    for (hole, circle) in holes.iter().zip(&search.circles) {
        let edge_mm = hole.nearest_edge_mm;
        let mut cells = vec![Cell::Text(number_text(hole.number))];
        cells.extend(circle_cells(circle));
        cells.extend([
            hole.nearest_mm.map_or(Cell::Nothing, Cell::Number),
            if hole.nearest_mm.is_some() { asked(hole.least_spacing_mm) } else { Cell::Nothing },
            if edge_mm.is_finite() { Cell::Number(edge_mm) } else { Cell::Name(FAR) },
            asked(hole.least_edge_mm),
        ]);
        rows.push(Line::plain(cells));
    }
    if let Some(together) = search.together.as_ref().filter(|_| holes.len() > 1) {
        let mut cells = vec![Cell::Name(ALL_AT_ONCE)];
        cells.extend(circle_cells(together));
        // The first of several moves says nothing about the others.
        cells[3] = Cell::Nothing;
        cells.extend([Cell::Nothing, Cell::Nothing, Cell::Nothing, Cell::Nothing]);
        rows.push(Line { cells, is_marked: true });
    }
    Table { name: OFF, columns, rows }
}

fn circle_cells(circle: &Circle) -> [Cell; 4] {
    let Some(fails_mm) = circle.fails_mm else {
        return [Cell::Number(circle.holds_mm), Cell::Name(AS_FAR_AS_TRIED), Cell::Nothing, Cell::Nothing];
    };
    let turn = core::f64::consts::TAU;
    let towards_rad = circle.towards_rad - turn * number::floor(circle.towards_rad / turn);
    [
        Cell::Number(circle.holds_mm),
        Cell::Number(fails_mm),
        Cell::Number(towards_rad),
        circle.governs.map_or(Cell::Name(LEAVES), Cell::Check),
    ]
}

/// The number of a hole as it stands on the sheet and on the plan.
pub(super) fn number_text(number: usize) -> String {
    let mut text = String::new();
    crate::input::fault::push_whole(&mut text, number);
    text
}
