//! Which contents to move down, and what that gains.

use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

use super::work::Work;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, StepId, steps};
use crate::explore::{ORDERS_MAX, Ordered, Reorder};
use crate::project::Project;
use crate::report::figure::{Figure, FigurePart};
use crate::report::outcome::Verdict;
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 198 "what to move down";
    GAINS "" Number (STATICS "" Derived) "what another order gains": Name;
    ORDER "" Number (INPUT "contents" Derived) "order": Name;
    CENTRE "" Number (STATICS "" Derived) "height of the full cabinet's centre of gravity": Name;
    BOLTED "" Number (STATICS "" Derived) "utilisation once bolted": Name;
    GOVERNS "" Number (STATICS "" Derived) "what governs": Name;
    FREE "" Number (STATICS "" Derived) "utilisation of tipping before bolting": Name;
    AS_IT_IS "" Number (INPUT "contents" Derived) "as it stands": Name;
    ONE "" Number (INPUT "contents" Derived) "the best exchange of two": Name;
    BEST "" Number (INPUT "contents" Derived) "the best that was found": Name;
    PLACES "" Number (INPUT "contents" Derived) "where each content goes": Name;
    CONTENT "" Number (INPUT "contents" Derived) "content": Name;
    MASS "" Number (INPUT "contents" Derived) "mass": Name;
    NOW "" Number (INPUT "contents" Derived) "bottom now": Name;
    AFTER_ONE "" Number (INPUT "contents" Derived) "after the exchange": Name;
    AFTER_ALL "" Number (INPUT "contents" Derived) "in the best order": Name;
    FIGURE "" Number (INPUT "contents" Derived) "as it stands, and in the best order that was found": Name;
    BEFORE_NAME "" Number (INPUT "contents" Derived) "now": Name;
    AFTER_NAME "" Number (INPUT "contents" Derived) "then": Name;
    TRIED "" Number (STATICS "" Derived) "tried were the orders by mass per height and by mass, and exchanges of two for as long as one gained, each with the whole check; no claim is made that none is better": Reason;
    CUT_SHORT "" Number (STATICS "" Derived) "four hundred orders were tried, and there are more": Reason;
    KEPT "" Number (INPUT "contents" Derived) "contents keep their sizes, and what lies between two of them stays as high; whether cables, rails and cooling allow it is for whoever fills the cabinet to say": Reason;
    SIDE_BY_SIDE "" Number (INPUT "contents" Derived) "some contents stand side by side, so only those of one size change places": Reason;
    NO_GAIN "" Number (STATICS "" Derived) "no order that was tried gains anything": Reason;
    NOTHING_TO_MOVE "" Number (INPUT "contents" Derived) "there are no two contents of different mass that could change places": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "what-to-move-down", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "what-to-move-down",
    title: "Which contents should move down?",
    help: "The contents are put in other orders, and the whole check is made for each: once bolted, and for tipping before \
           bolting. Told are the best exchange of two and the best order that was found.",
    steps: &[&TEXTS],
};

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let mut work = begin(project, extra)?;
    while work.advance() {}
    Ok(work.shown())
}

/// Begins it in portions.
pub fn begin(project: &Project, _extra: &str) -> Result<Box<dyn Work>, StepId> {
    let search = Reorder::new(project).ok_or(NOTHING_TO_MOVE)?;
    Ok(Box::new(UnderWay { project: project.clone(), search }))
}

struct UnderWay {
    project: Project,
    search: Reorder,
}

impl Work for UnderWay {
    fn advance(&mut self) -> bool {
        self.search.next(1)
    }

    fn progress(&self) -> (usize, usize) {
        (self.search.tried, ORDERS_MAX.max(self.search.tried))
    }

    fn shown(&self) -> Shown {
        let search = &self.search;
        let one = search.one_exchange.as_ref().map(|(one, _)| one);
        let is_gained = search.best != search.now;
        let mut rows = vec![line(AS_IT_IS, &search.now, true)];
        rows.extend(one.map(|one| line(ONE, one, false)));
        if is_gained && Some(&search.best) != one {
            rows.push(line(BEST, &search.best, false));
        }
        let columns = columns![
            Column::words(ORDER),
            Column::nearest(CENTRE, Kind::Length),
            Column::up(BOLTED, Kind::Utilisation),
            Column::words(GOVERNS),
            Column::up(FREE, Kind::Utilisation),
        ];
        let mut tables = vec![Table { name: GAINS, columns, rows }];
        let mut pictures = Vec::new();
        if is_gained {
            tables.push(self.places(one));
            pictures.push(Picture::Figure(self.figure()));
        }
        let notes = [
            (NO_GAIN, !is_gained),
            (TRIED, true),
            (CUT_SHORT, search.tried >= ORDERS_MAX),
            (KEPT, is_gained),
            (SIDE_BY_SIDE, !search.is_stack()),
        ];
        let notes = notes.into_iter().filter(|(_, is_said)| *is_said).map(|(note, _)| note).collect();
        Shown { notes, tables, pictures, sections: Vec::new() }
    }
}

impl UnderWay {
    /// Every content with its height now and then, the lowest of the best order first.
    fn places(&self, one: Option<&Ordered>) -> Table {
        let after = self.search.project(&self.search.best.order);
        let after_one = one.map(|one| self.search.project(&one.order));
        let mut columns =
            columns![Column::words(CONTENT), Column::nearest(MASS, Kind::Mass), Column::nearest(NOW, Kind::Length)];
        if after_one.is_some() {
            columns.push(Column::nearest(AFTER_ONE, Kind::Length));
        }
        columns.push(Column::nearest(AFTER_ALL, Kind::Length));
        let row = |&place: &usize| {
            let content = &self.project.contents[place];
            let bottom = |project: &Project| Cell::Number(project.contents[place].bottom_mm);
            let mut cells =
                vec![Cell::Text(content.name.clone()), Cell::Number(content.mass_kg), bottom(&self.project)];
            cells.extend(after_one.as_ref().map(bottom));
            cells.push(bottom(&after));
            Line::plain(cells)
        };
        Table { name: PLACES, columns, rows: self.search.best.order.iter().map(row).collect() }
    }

    /// Both orders side by side, seen from the front.
    fn figure(&self) -> Figure {
        let cabinet = &self.project.cabinet;
        let apart_mm = 1.6 * cabinet.width_mm;
        let after = self.search.project(&self.search.best.order);
        let mut parts = Vec::new();
        for (project, name, centre_mm, left_mm) in [
            (&self.project, BEFORE_NAME, self.search.now.centre_mm, 0.0),
            (&after, AFTER_NAME, self.search.best.centre_mm, apart_mm),
        ] {
            let half = cabinet.width_mm / 2.0;
            let outline = |class, [left, right]: [f64; 2], [bottom, top]: [f64; 2]| FigurePart::Outline {
                class,
                corners_mm: vec![
                    [left_mm + left, bottom],
                    [left_mm + right, bottom],
                    [left_mm + right, top],
                    [left_mm + left, top],
                ],
            };
            parts.push(outline("cabinet", [-half, half], [0.0, cabinet.height_mm]));
            for (content, now) in project.contents.iter().zip(&self.project.contents) {
                let [wide, _, high] = content.size_mm;
                let middle = content.offset_mm[0];
                // What has moved is hatched, so that it is found without reading.
                let class = if content.bottom_mm != now.bottom_mm || left_mm == 0.0 && self.moves(&content.name, &after)
                {
                    "hatched"
                } else {
                    "content"
                };
                let sides = [middle - wide / 2.0, middle + wide / 2.0];
                parts.push(outline(class, sides, [content.bottom_mm, content.bottom_mm + high]));
                let at_mm = [left_mm + middle, content.bottom_mm + high / 2.0];
                parts.push(FigurePart::Label { at_mm, name: PlotName::Text(content.name.clone()), value: None });
            }
            parts.push(FigurePart::Line {
                class: "axis",
                ends_mm: [[left_mm - half, centre_mm], [left_mm + half, centre_mm]],
            });
            let name = PlotName::Row(name);
            parts.push(FigurePart::Label { at_mm: [left_mm, cabinet.height_mm], name, value: None });
            let value = Some((centre_mm, Kind::Length));
            parts.push(FigurePart::Label { at_mm: [left_mm + half, centre_mm], name: PlotName::None, value });
        }
        Figure { name: FIGURE, parts }
    }

    fn moves(&self, name: &str, after: &Project) -> bool {
        let bottom = |project: &Project| project.contents.iter().find(|one| one.name == name).map(|one| one.bottom_mm);
        bottom(&self.project) != bottom(after)
    }
}

fn line(name: StepId, came: &Ordered, is_marked: bool) -> Line {
    let number = |used: Option<f64>| used.map_or(Cell::Nothing, Cell::Number);
    let governs = match came.governs {
        Some(check) if came.verdict != Verdict::CannotBeSaid => Cell::Check(check),
        _ => Cell::Status(crate::calc::Status::NotCovered),
    };
    Line {
        cells: vec![Cell::Name(name), Cell::Number(came.centre_mm), number(came.bolted), governs, number(came.free)],
        is_marked,
    }
}
