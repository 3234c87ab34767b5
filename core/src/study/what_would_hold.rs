//! What would hold: the smallest changes with which everything holds.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, StepId, steps};
use crate::explore::{CHANGES, Entry, PLOTTED, Refusal, Rungs, WhatWouldHold, is_by_report};
use crate::project::Project;
use crate::report::outcome::Verdict;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotName, PlotPoint, Stroke};
use crate::report::table::{Cell, Column, Line, Table};

steps! { 91 "what would hold";
    ALONE "" Number (INPUT "anchorage" Derived) "one change alone: the least value of those tried that holds": Name;
    FRONTIER "" Number (INPUT "anchorage" Derived) "changes together: the smallest that hold": Name;
    CHANGED "" Number (INPUT "anchorage" Derived) "what is changed": Name;
    BOLT "" Number (INPUT "anchorage" Derived) "bolt": Name;
    EMBEDMENT "" Number (INPUT "anchorage" Derived) "embedment": Name;
    EDGE "" Number (INPUT "slab" Derived) "edge that is nearest now, from the nearest bolt": Name;
    STRENGTH "" Number (INPUT "slab" Derived) "strength of the concrete": Name;
    NUMBER "" Number (INPUT "cabinet.anchors" Derived) "bolts": Name;
    UTILISATION "" Number (STATICS "" Derived) "utilisation": Name;
    GOVERNS "" Number (STATICS "" Derived) "what governs": Name;
    NOTHING "" Number (INPUT "anchorage" Derived) "nothing: as it is": Name;
    NONE_HOLDS "" Number (STATICS "" Derived) "none of the values tried holds": Name;
    FAR "" Number (INPUT "slab" Derived) "far": Name;
    OVER_BOLTS "" Number (STATICS "" Derived) "Least embedment that holds, by size of bolt": Name;
    OVER_EDGES "" Number (STATICS "" Derived) "Least embedment that holds, by distance to the edge": Name;
    OVER_STRENGTHS "" Number (STATICS "" Derived) "Least embedment that holds, by strength of the concrete": Name;
    DIAMETER "" Number (INPUT "anchorage" Derived) "diameter of the bolt": Name;
    LEAST "" Number (STATICS "" Derived) "least embedment that holds": Name;
    NOW "" Number (INPUT "anchorage" Derived) "now": Name;
    AS_MANY "" Number (INPUT "cabinet.anchors" Derived) "as many bolts as now": Name;
    TWICE "" Number (INPUT "cabinet.anchors" Derived) "two in place of each": Name;
    FOUR_TIMES "" Number (INPUT "cabinet.anchors" Derived) "four in place of each": Name;
    WEAKEST "" Number (INPUT "slab" Derived) "concrete two steps weaker": Name;
    WEAKER "" Number (INPUT "slab" Derived) "concrete a step weaker": Name;
    STRENGTH_NOW "" Number (INPUT "slab" Derived) "concrete as now": Name;
    STRONGER "" Number (INPUT "slab" Derived) "concrete a step stronger": Name;
    TRIED "" Number (STATICS "" Derived) "every line was swept as a whole and holds; one step less in any single column does not. Between and beyond the values tried nothing is said, and more is not always better": Reason;
    GROUPS "" Number (INPUT "cabinet.anchors" Derived) "more bolts stand in close groups about the present places, six diameters apart; base and brackets must be able to take them": Reason;
    MOVED "" Number (INPUT "slab" Derived) "another distance to the edge means that the cabinet, with its neighbours, stands elsewhere on the slab": Reason;
    APPROVAL "" Number (INPUT "anchorage" Derived) "size and embedment are not varied: the values given from an evaluation report or approval belong to this one": Reason;
    NO_ANCHORAGE "" Number (INPUT "anchorage" Derived) "without anchors, a slab and an anchor rule there is nothing to change": Reason;
    NO_DEMAND "" Number (INPUT "site" Derived) "no seismic rule is chosen, so nothing is pushed": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "what-would-hold", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "what-would-hold",
    title: "What would hold instead?",
    help: "The size and embedment of the bolts, the distance to the nearest edge, the strength of the concrete and the \
           number of bolts are varied, up to two thousand variants in all, and every one is checked as the cabinet \
           itself is. Told are the smallest that hold. A slab has the strength that it has: a line with stronger \
           concrete says what a test of it would be worth.",
    steps: &[&TEXTS],
};

/// The names of the columns, in the order of the changes.
const NAMES: [StepId; 5] = [BOLT, EMBEDMENT, EDGE, STRENGTH, NUMBER];

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let mut search = WhatWouldHold::new(project).map_err(|refusal| match refusal {
        Refusal::NoAnchorage => NO_ANCHORAGE,
        Refusal::NoDemand => NO_DEMAND,
    })?;
    search.finish();
    let mut tables = vec![alone(&search)];
    let frontier = search.frontier();
    if !frontier.is_empty() {
        let rows = frontier.iter().map(|entry| line(&search, entry, None)).collect();
        tables.push(Table { name: FRONTIER, columns: columns(None), rows });
    }
    let pictures = PLOTTED.iter().filter_map(|&axes| plot(&search, axes)).map(Picture::Plot).collect();
    let open = |change: usize| search.ladders[change].is_open();
    let notes = [(TRIED, true), (GROUPS, open(4)), (MOVED, open(2)), (APPROVAL, is_by_report(project))];
    let notes = notes.into_iter().filter(|(_, is_said)| *is_said).map(|(note, _)| note).collect();
    Ok(Shown { notes, tables, pictures, sections: Vec::new() })
}

fn columns(first: Option<StepId>) -> Vec<Column> {
    let measured = [
        Column::words(BOLT),
        Column::nearest(EMBEDMENT, Kind::Length),
        Column::nearest(EDGE, Kind::Length),
        Column::nearest(STRENGTH, Kind::Stress),
        Column::nearest(NUMBER, Kind::Number),
        Column::up(UTILISATION, Kind::Utilisation),
        Column::words(GOVERNS),
    ];
    first.map(Column::words).into_iter().chain(measured).collect()
}

fn alone(search: &WhatWouldHold) -> Table {
    let mut rows = Vec::new();
    if let Some(now) = search.entry(search.now()) {
        rows.push(Line { is_marked: true, ..line(search, &now, Some(NOTHING)) });
    }
    for (change, &name) in CHANGES.iter().zip(&NAMES) {
        let place = CHANGES.iter().position(|known| known == change).unwrap_or(0);
        if !search.ladders[place].is_open() {
            continue;
        }
        rows.push(match search.alone(*change) {
            Some(entry) => line(search, &entry, Some(name)),
            None => {
                let mut cells = vec![Cell::Name(name)];
                cells.extend((0..CHANGES.len()).map(|_| Cell::Nothing));
                cells.extend([Cell::Nothing, Cell::Name(NONE_HOLDS)]);
                Line::plain(cells)
            }
        });
    }
    Table { name: ALONE, columns: columns(Some(CHANGED)), rows }
}

fn line(search: &WhatWouldHold, entry: &Entry, first: Option<StepId>) -> Line {
    let mut cells: Vec<Cell> = first.map(Cell::Name).into_iter().collect();
    for (ladder, &rung) in search.ladders.iter().zip(&entry.rungs) {
        let rung = ladder.rungs[rung as usize];
        cells.push(match rung.word {
            Some(word) => Cell::Text(String::from(word)),
            None if rung.value.is_infinite() => Cell::Name(FAR),
            // A bolt whose measures are given has no word in the tables.
            None if rung.value == 0.0 => Cell::Nothing,
            None => Cell::Number(rung.value),
        });
    }
    let is_governed = entry.trial.verdict != Verdict::CannotBeSaid;
    cells.push(entry.trial.utilisation.filter(|_| is_governed).map_or(Cell::Nothing, Cell::Number));
    cells.push(match (entry.trial.governs, entry.trial.verdict) {
        (Some(check), Verdict::Holds | Verdict::DoesNotHold) => Cell::Check(check),
        _ => Cell::Status(crate::calc::Status::NotCovered),
    });
    Line::plain(cells)
}

/// Least embedments over one change, a line for each value of another.
fn plot(search: &WhatWouldHold, axes: [usize; 2]) -> Option<Plot> {
    const STRENGTHS: usize = 3;
    // Where no edge is near, the strength of the concrete takes its place along the axis.
    let (along, across) = if search.ladders[axes[0]].is_open() { (axes[0], axes[1]) } else { (axes[1], axes[0]) };
    if !search.ladders[along].is_open() || !search.ladders[EMBEDMENT_PLACE].is_open() {
        return None;
    }
    let (name, x_name) = match along {
        0 => (OVER_BOLTS, DIAMETER),
        2 => (OVER_EDGES, EDGE),
        _ => (OVER_STRENGTHS, STRENGTH),
    };
    let kind = if along == STRENGTHS { Kind::Stress } else { Kind::Length };
    let mut curves = Vec::new();
    let mut points = Vec::new();
    for second in 0..search.ladders[across].rungs.len() {
        let mut line = Vec::new();
        for first in 0..search.ladders[along].rungs.len() {
            let mut rungs: Rungs = search.now();
            (rungs[along], rungs[across]) = (first as u8, second as u8);
            let least = search.least_embedment(rungs);
            let y = least.map_or(f64::NAN, |entry| embedment(search, entry.rungs));
            let x = search.ladders[along].rungs[first].value;
            line.push([x, y]);
            if y.is_finite() {
                points.push(PlotPoint { name: PlotName::None, at: [x, y], is_present: false });
            }
        }
        let is_now = second == search.ladders[across].now;
        let stroke = match second {
            _ if is_now => Stroke::Strong,
            0 => Stroke::Dashed,
            1 => Stroke::Plain,
            _ => Stroke::Dotted,
        };
        curves.push(Curve { name: PlotName::Row(curve_name(search, across, second)), points: line, stroke });
    }
    if points.is_empty() {
        return None;
    }
    let now = search.now();
    let present = [search.ladders[along].present().value, embedment(search, now)];
    points.push(PlotPoint { name: PlotName::Row(NOW), at: present, is_present: true });
    let axis = |name, kind| Axis { name, kind, scale: AxisScale::Linear, ends: None };
    Some(Plot {
        name,
        x: axis(x_name, kind),
        y: axis(LEAST, Kind::Length),
        curves,
        points,
        levels: Vec::new(),
        grid: None,
    })
}

const EMBEDMENT_PLACE: usize = 1;

fn embedment(search: &WhatWouldHold, rungs: Rungs) -> f64 {
    search.ladders[EMBEDMENT_PLACE].rungs[rungs[EMBEDMENT_PLACE] as usize].value
}

fn curve_name(search: &WhatWouldHold, across: usize, rung: usize) -> StepId {
    let ladder = &search.ladders[across];
    match across {
        4 => [AS_MANY, TWICE, FOUR_TIMES][rung.min(2)],
        3 if rung + 1 < ladder.now => WEAKEST,
        3 if rung < ladder.now => WEAKER,
        3 if rung > ladder.now => STRONGER,
        3 => STRENGTH_NOW,
        _ => FAR,
    }
}
