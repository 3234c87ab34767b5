//! Holes as drilled: every required check before and after, side by side.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::{Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Kind, Role, StepId, steps};
use crate::project::bench::Bench;
use crate::project::{Project, as_built, as_planned, quick_told};
use crate::report::outcome::{CheckTold, Verdict};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 92 "as drilled, side by side";
    CHECKS "" Number (STATICS "" Derived) "every required check, as planned and as drilled": Name;
    HOLES "" Number (INPUT "cabinet.anchors" Derived) "marks and holes": Name;
    CHECK "" Number (STATICS "" Derived) "check": Name;
    PLANNED "" Number (STATICS "" Derived) "as planned": Name;
    PLANNED_STATUS "" Number (STATICS "" Derived) "outcome as planned": Name;
    BUILT "" Number (STATICS "" Derived) "as drilled": Name;
    BUILT_STATUS "" Number (STATICS "" Derived) "outcome as drilled": Name;
    ALL "" Number (STATICS "" Derived) "all required checks together": Name;
    HOLDS "" Number (STATICS "" Derived) "holds": Name;
    DOES_NOT_HOLD "" Number (STATICS "" Derived) "does not hold": Name;
    CANNOT_BE_SAID "" Number (STATICS "" Derived) "cannot be said": Name;
    HOLE "" Number (INPUT "cabinet.anchors" Derived) "hole": Name;
    NAME "" Number (INPUT "cabinet.anchors" Derived) "name": Name;
    MARK_X "" Number (INPUT "cabinet.anchors" Derived) "mark, to the right": Name;
    MARK_Y "" Number (INPUT "cabinet.anchors" Derived) "mark, to the rear": Name;
    HOLE_X "" Number (INPUT "cabinet.anchors" Derived) "hole, to the right": Name;
    HOLE_Y "" Number (INPUT "cabinet.anchors" Derived) "hole, to the rear": Name;
    OFF "" Number (INPUT "cabinet.anchors" Derived) "off by": Name;
    NOT_MEASURED "" Number (INPUT "cabinet.anchors" Derived) "not measured": Name;
    FOLLOWS "" Number (INPUT "cabinet.anchors" Derived) "anchors whose hole was not measured count where they were planned; each anchor is taken to hold the cabinet where its hole is": Reason;
    NOTHING_MEASURED "" Number (INPUT "cabinet.anchors" Derived) "no hole is given a position as drilled yet: type it beside the position of its anchor": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "as-built", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "as-built",
    title: "Does it hold where the holes were drilled?",
    help: "Measured positions of holes are typed beside those of the anchors. Everything is then checked a second time \
           with them, and both rounds stand side by side.",
    steps: &[&TEXTS],
};

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let built = as_built(project).ok_or(NOTHING_MEASURED)?;
    let planned = as_planned(project);
    let [before, after] = [&planned, &built].map(|project| quick_told(&mut Bench::new(project)));
    let mut rows = vec![Line {
        cells: vec![
            Cell::Name(ALL),
            utilisation(before.governing()),
            Cell::Name(verdict(before.verdict)),
            utilisation(after.governing()),
            Cell::Name(verdict(after.verdict)),
        ],
        is_marked: true,
    }];
    for &check in CheckId::ALL {
        let of = |checks: &[CheckTold]| {
            checks.iter().find(|told| told.id == check.id() && told.role == Role::Required).cloned()
        };
        let (before, after) = (of(&before.checks), of(&after.checks));
        if before.is_none() && after.is_none() {
            continue;
        }
        let status =
            |check: &Option<CheckTold>| check.as_ref().map_or(Cell::Nothing, |check| Cell::Status(check.status));
        rows.push(Line::plain(vec![
            Cell::Check(check),
            utilisation(before.as_ref()),
            status(&before),
            utilisation(after.as_ref()),
            status(&after),
        ]));
    }
    let columns = columns![
        Column::words(CHECK),
        Column::up(PLANNED, Kind::Utilisation),
        Column::words(PLANNED_STATUS),
        Column::up(BUILT, Kind::Utilisation),
        Column::words(BUILT_STATUS),
    ];
    let checks = Table { name: CHECKS, columns, rows };
    Ok(Shown { notes: vec![FOLLOWS], tables: vec![checks, holes(project)], pictures: Vec::new(), sections: Vec::new() })
}

fn utilisation(check: Option<&CheckTold>) -> Cell {
    check.and_then(|check| check.utilisation).map_or(Cell::Nothing, Cell::Number)
}

fn verdict(verdict: Verdict) -> StepId {
    match verdict {
        Verdict::Holds => HOLDS,
        Verdict::DoesNotHold => DOES_NOT_HOLD,
        Verdict::CannotBeSaid => CANNOT_BE_SAID,
    }
}

fn holes(project: &Project) -> Table {
    let mut rows = Vec::new();
    for (place, anchor) in project.cabinet.anchors.iter().enumerate() {
        let mut cells = vec![
            Cell::Number((place + 1) as f64),
            Cell::Text(anchor.name.clone().unwrap_or_else(String::new)),
            Cell::Number(anchor.at.x_mm),
            Cell::Number(anchor.at.y_mm),
        ];
        cells.extend(match anchor.as_built {
            Some(hole) => [hole.x_mm, hole.y_mm, anchor.at.distance_mm(hole)].map(Cell::Number),
            None => [Cell::Name(NOT_MEASURED), Cell::Nothing, Cell::Nothing],
        });
        rows.push(Line::plain(cells));
    }
    let mm = |name| Column::nearest(name, Kind::Length);
    let columns = vec![
        Column::nearest(HOLE, Kind::Number),
        Column::words(NAME),
        mm(MARK_X),
        mm(MARK_Y),
        mm(HOLE_X),
        mm(HOLE_Y),
        Column::up(OFF, Kind::Length),
    ];
    Table { name: HOLES, columns, rows }
}
