//! The zone statement: for every rule and every zone, with how much aboard a frame holds bolted and stands free, with which
//! bolts in which concrete. Made to be printed as the frame's data sheet, for others to use.

mod facts;
mod rows;
mod steps;

use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

pub use rows::{Row, rows};

use super::side_by_side::{Filled, name_cell};
use super::work::Work;
use super::{Shown, Study, StudyText};
use crate::calc::{CheckId, Kind, Status, StepId};
use crate::explore::{Ending, Found, Limit, Standing};
use crate::project::Project;
use crate::report::table::{Cell, Column, Line, Table};

/// The study.
pub static STUDY: Study = Study { id: "zone-statement", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "zone-statement",
    title: "Where else would it hold, and with how much aboard?",
    help: "Every rule at every zone, or at four strengths where it has none: whether the frame holds bolted as it is \
           loaded now, and the largest load with which it does and with which it stands free. It is a data sheet of the \
           frame with these bolts in this concrete, for somebody who has a place in mind.",
    steps: &[&steps::TEXTS],
};

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let mut work = begin(project, extra)?;
    while work.advance() {}
    Ok(work.shown())
}

/// Begins it in portions.
pub fn begin(project: &Project, _extra: &str) -> Result<Box<dyn Work>, StepId> {
    Ok(Box::new(Statement::new(project).ok_or(steps::NOTHING)?))
}

/// A statement under way.
pub struct Statement {
    project: Project,
    /// Its rows.
    pub rows: Vec<Row>,
    left_out: Vec<Filled>,
    /// Portions done: first every row at its present load, then every row's search.
    done: usize,
}

impl Statement {
    /// Prepares it; none where no rule can be asked.
    pub fn new(project: &Project) -> Option<Statement> {
        let (rows, left_out) = rows(project);
        (!rows.is_empty()).then(|| Statement { project: project.clone(), rows, left_out, done: 0 })
    }

    /// Asks up to `budget` further portions; true while some are left.
    pub fn next(&mut self, budget: usize) -> bool {
        let count = self.rows.len();
        for _ in 0..budget {
            match (self.done / count, self.rows.get_mut(self.done % count)) {
                (0, Some(row)) => row.ask_present(&self.project),
                (1, Some(row)) => row.search_limits(&self.project),
                _ => return false,
            }
            self.done += 1;
        }
        self.done < 2 * count
    }
}

impl Work for Statement {
    fn advance(&mut self) -> bool {
        self.next(1)
    }

    fn progress(&self) -> (usize, usize) {
        (self.done, 2 * self.rows.len())
    }

    fn shown(&self) -> Shown {
        let mut notes = vec![steps::INTERVALS, steps::SCALED, steps::STRENGTHS, steps::NOT_A_PLACE, steps::ONLY_THIS];
        if self.rows.iter().any(|row| row.is_other_format(&self.project)) {
            notes.push(steps::OTHER_FORMAT);
        }
        if !self.project.open.is_empty() {
            notes.push(steps::NOT_KNOWN);
        }
        if self.rows.iter().any(|row| row.limits.is_none()) {
            notes.push(steps::STOPPED);
        }
        let absent = crate::project::assess(&self.project).absent;
        notes.extend(absent.into_iter().map(StepId::from_code));
        notes.push(steps::NOT_A_PERMIT);
        let mut tables = vec![self.statement()];
        tables.extend(self.uncovered());
        tables.extend([facts::facts(&self.project), self.asked_with()]);
        tables.extend(self.left_out());
        Shown { notes, tables, pictures: Vec::new(), sections: Vec::new() }
    }
}

impl Statement {
    fn statement(&self) -> Table {
        let columns = vec![
            Column::words(steps::RULE),
            Column::words(steps::SHAKING),
            Column::words(steps::NOW),
            Column::up(steps::UTILISATION, Kind::Utilisation),
            Column::nearest(steps::BOLTED, Kind::Mass),
            Column::down(steps::SHARE, Kind::Number),
            Column::words(steps::GOVERNS),
            Column::nearest(steps::FREE, Kind::Mass),
            Column::words(steps::FREE_GOVERNS),
        ];
        let rows = self.rows.iter().map(|row| Line { cells: self.cells(row), is_marked: row.is_present });
        Table { name: steps::STATEMENT, columns, rows: rows.collect() }
    }

    fn cells(&self, row: &Row) -> Vec<Cell> {
        let present = row.present.unwrap_or(Found { standing: Standing::NotCovered, ..Found::NOT_BUILT });
        let now = match (row.present, present.standing) {
            (None, _) => Cell::Name(steps::NOT_TRIED),
            (_, Standing::Holds) => Cell::Status(Status::Holds),
            (_, Standing::Fails) => Cell::Status(Status::Fails),
            (_, Standing::NotCovered) => Cell::Status(Status::NotCovered),
            (_, Standing::NotBuilt) => Cell::Name(steps::REFUSED),
        };
        let is_compared = matches!(present.standing, Standing::Holds | Standing::Fails);
        let utilisation = Some(present.utilisation).filter(|used| is_compared && used.is_finite());
        let mut cells = vec![
            name_cell(row.filled.rule.id),
            Cell::Text(row.filled.text(|field| field == row.field)),
            now,
            utilisation.map_or(Cell::Nothing, Cell::Number),
        ];
        let is_refused = present.standing == Standing::NotBuilt;
        let is_uncovered = row.is_other_format(&self.project);
        let [bolted, free] = match &row.limits {
            Some(limits) => limits.each_ref().map(Option::as_ref),
            None => [None, None],
        };
        let none = |is_uncovered: bool| match &row.limits {
            _ if is_refused => Cell::Nothing,
            _ if is_uncovered => Cell::Name(steps::NOT_COVERED),
            None => Cell::Name(steps::NOT_TRIED),
            Some(_) => Cell::Name(steps::NOTHING_ABOARD),
        };
        cells.push(bolted.map_or_else(|| none(is_uncovered), load));
        let share = |limit: &Limit| Some(limit.low? / limit.now);
        cells.push(bolted.and_then(share).map_or(Cell::Nothing, Cell::Number));
        let of_now = || present.governs.filter(|_| is_compared).map_or(Cell::Nothing, Cell::Check);
        cells.push(match bolted {
            Some(limit) if limit.ending != Ending::CannotBeSaid => why(limit).unwrap_or_else(of_now),
            _ => of_now(),
        });
        cells.push(free.map_or_else(|| none(false), load));
        cells.push(free.and_then(why).unwrap_or(Cell::Nothing));
        cells
    }

    /// Why rules are not covered, each reason once.
    fn uncovered(&self) -> Option<Table> {
        let mut told: Vec<(&'static str, u16)> = Vec::new();
        for row in &self.rows {
            if let Some(reason) = row.present.and_then(|found| found.reason) {
                let one = (row.filled.rule.id, reason);
                if !told.contains(&one) {
                    told.push(one);
                }
            }
        }
        let row = |(id, reason)| Line::plain(vec![name_cell(id), Cell::Name(StepId::from_code(reason))]);
        let columns = vec![Column::words(steps::RULE), Column::words(steps::WHY)];
        let rows: Vec<Line> = told.into_iter().map(row).collect();
        (!rows.is_empty()).then_some(Table { name: steps::UNCOVERED, columns, rows })
    }

    fn asked_with(&self) -> Table {
        let columns = vec![Column::words(steps::RULE), Column::words(steps::OWN), Column::words(steps::TAKEN)];
        let mut rows: Vec<Line> = Vec::new();
        let mut before: Option<&'static str> = None;
        for row in &self.rows {
            let (filled, id) = (&row.filled, row.filled.rule.id);
            if before.replace(id) == Some(id) {
                continue;
            }
            let told = |is_own: bool| {
                let text = filled.text(|field| field != row.field && filled.own.contains(&field) == is_own);
                if text.is_empty() { Cell::Nothing } else { Cell::Text(text) }
            };
            rows.push(Line::plain(vec![name_cell(id), told(true), told(false)]));
        }
        Table { name: steps::ASKED_WITH, columns, rows }
    }

    fn left_out(&self) -> Option<Table> {
        let row = |filled: &Filled| Line::plain(vec![name_cell(filled.rule.id), Cell::Text(filled.needed_text())]);
        let rows: Vec<Line> = self.left_out.iter().map(row).collect();
        let columns = vec![Column::words(steps::RULE), Column::words(steps::WHY)];
        (!rows.is_empty()).then_some(Table { name: steps::LEFT_OUT, columns, rows })
    }
}

/// How much a limit lets stand aboard.
fn load(limit: &Limit) -> Cell {
    match (limit.ending, limit.low, limit.high) {
        (Ending::CannotBeSaid, ..) => Cell::Name(steps::NOT_COVERED),
        (Ending::HoldsToTheEnd, ..) => Cell::Name(steps::TO_THE_END),
        (_, Some(low), Some(high)) => Cell::Range([low, high]),
        _ => Cell::Name(steps::NOWHERE),
    }
}

/// What governs at a limit.
fn why(limit: &Limit) -> Option<Cell> {
    if limit.ending == Ending::NotMonotone {
        return Some(Cell::Name(steps::COMES_AND_GOES));
    }
    limit.governs.and_then(CheckId::named).map(Cell::Check)
}
