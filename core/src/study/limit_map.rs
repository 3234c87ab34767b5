//! Two inputs against each other: where it holds, where it does not, and what governs there.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, StepId, steps};
use crate::explore::{self, Along, Found, Knob, Standing, map_cells, places};
use crate::project::Project;
use crate::report::plot::{Axis, AxisScale, Blank, Grid, Plot, PlotName, PlotPoint};
use crate::report::table::{Cell, Column, Line, Table};

steps! { 202 "limit map";
    NAME "" Number (STATICS "" Derived) "where it holds: utilisation, hatched beyond 1, with what governs": Name;
    PRESENT "" Number (INPUT "" Derived) "the cabinet as it is": Name;
    NOT_COVERED "" Number (STATICS "" Derived) "not covered": Name;
    NOT_BUILT "" Number (STATICS "" Derived) "cannot be built": Name;
    COUNTED "" Number (STATICS "" Derived) "points of the map by what governs": Name;
    GOVERNS "" Number (STATICS "" Derived) "what governs": Name;
    HOLD "" Number (STATICS "" Derived) "points that hold": Name;
    FAIL "" Number (STATICS "" Derived) "points that fail": Name;
    NEITHER "" Number (STATICS "" Derived) "points that do neither": Name;
    EACH "" Number (STATICS "" Derived) "every point of the map was assessed as the cabinet itself is; the line at 1 is drawn straight between them": Reason;
    NO_TWO "" Number (INPUT "" Derived) "a map needs two inputs to turn, and this project has none, or one": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "limit-map", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "limit-map",
    title: "Two inputs against each other",
    help: "Any two inputs are laid off, and the whole check is asked at every point between. The thick line is where the \
           governing check is used up; beyond it the map is hatched. Each region carries the name of what governs in it. \
           Any point opens to its own working.",
    steps: &[&TEXTS, &explore::KNOB_TEXTS],
};

/// Pairs worth looking at: of two groups the first knob that the project has.
pub static PAIRS: [[&[Knob]; 2]; 3] = [
    [&[Knob::Load], &[Knob::Strength, Knob::Zone]],
    [&[Knob::Edge], &[Knob::Embedment]],
    [&[Knob::Centre], &[Knob::Width]],
];

/// The map that stands in the guide has so many values a side.
const STILL: usize = 24;

/// The two knobs of a pair; none where the project lacks one.
pub fn pair(project: &Project, pair: &[&[Knob]; 2]) -> Option<[Knob; 2]> {
    let first = |knobs: &[Knob]| knobs.iter().copied().find(|knob| knob.now(project).is_some());
    Some([first(pair[0])?, first(pair[1])?])
}

/// The axes of a map with everything that was assessed on it.
pub struct LimitMap<'a> {
    /// The project.
    pub project: &'a Project,
    /// What is laid off to the right.
    pub x: Along<'a>,
    /// What is laid off upwards.
    pub y: Along<'a>,
    /// The cells, the rows of `y` one after the other.
    pub cells: &'a [Found],
}

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let [x, y] = PAIRS.iter().find_map(|one| pair(project, one)).ok_or(NO_TWO)?;
    let along = |knob: Knob| knob.window(project).map(|window| places(knob, project, window, STILL));
    let (xs, ys) = along(x).zip(along(y)).ok_or(NO_TWO)?;
    let (x, y) = (Along { knob: x, values: &xs }, Along { knob: y, values: &ys });
    let cells = map_cells(project, x, y);
    let map = LimitMap { project, x, y, cells: &cells };
    let (notes, tables) = (vec![EACH], vec![map.counted()]);
    Ok(Shown { notes, tables, pictures: vec![Picture::Plot(map.plot())], sections: Vec::new() })
}

impl LimitMap<'_> {
    /// The picture.
    pub fn plot(&self) -> Plot {
        let axis = |along: &Along| Axis {
            name: along.knob.name(),
            kind: along.knob.kind(self.project),
            scale: if along.knob.is_by_ratio() { AxisScale::Log } else { AxisScale::Linear },
            // The cabinet as it is may lie outside of what is looked at; then it is not drawn.
            ends: along.values.first().zip(along.values.last()).map(|(&low, &high)| [low, high]),
        };
        let is = |standing: Standing| self.cells.iter().map(|cell| cell.standing == standing).collect();
        let is_compared = |cell: &&Found| matches!(cell.standing, Standing::Holds | Standing::Fails);
        let value = |cell: &Found| Some(cell).filter(is_compared).map_or(f64::NAN, |cell| cell.utilisation);
        let now = self.x.knob.now(self.project).zip(self.y.knob.now(self.project));
        let point = |(x, y)| PlotPoint { name: PlotName::Row(PRESENT), at: [x, y], is_present: true };
        Plot {
            name: NAME,
            x: axis(&self.x),
            y: axis(&self.y),
            curves: Vec::new(),
            points: now.map(point).into_iter().collect(),
            levels: Vec::new(),
            grid: Some(Grid {
                x: self.x.values.into(),
                y: self.y.values.into(),
                values: self.cells.iter().map(value).collect(),
                checks: self.cells.iter().map(|cell| cell.governs.filter(|_| is_compared(&cell))).collect(),
                contours: vec![1.0],
                blanks: vec![
                    Blank { name: NOT_COVERED, cells: is(Standing::NotCovered) },
                    Blank { name: NOT_BUILT, cells: is(Standing::NotBuilt) },
                ],
            }),
        }
    }

    /// How many points each check governs.
    fn counted(&self) -> Table {
        let mut rows: Vec<(Cell, [usize; 3])> = Vec::new();
        for cell in self.cells {
            let name = match (cell.standing, cell.governs) {
                (Standing::NotBuilt, _) => Cell::Name(NOT_BUILT),
                (Standing::NotCovered, _) | (_, None) => Cell::Name(NOT_COVERED),
                (_, Some(check)) => Cell::Check(check),
            };
            let place = rows.iter().position(|(known, _)| *known == name).unwrap_or(rows.len());
            if place == rows.len() {
                rows.push((name, [0; 3]));
            }
            match cell.standing {
                Standing::Holds => rows[place].1[0] += 1,
                Standing::Fails => rows[place].1[1] += 1,
                _ => rows[place].1[2] += 1,
            }
        }
        let mut columns = vec![Column::words(GOVERNS)];
        columns.extend([HOLD, FAIL, NEITHER].map(|name| Column::nearest(name, Kind::Number)));
        let line = |(name, counts): (Cell, [usize; 3])| {
            let mut cells = vec![name];
            cells.extend(counts.map(|count| Cell::Number(count as f64)));
            Line::plain(cells)
        };
        Table { name: COUNTED, columns, rows: rows.into_iter().map(line).collect() }
    }
}
