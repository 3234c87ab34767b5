//! What becomes of everything that is not known, and what one measurement would settle.

use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::work::Work;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Kind, StepId, number, steps};
use crate::explore::{Came, Unknowns};
use crate::input::open::FLAGS;
use crate::input::{MayBe, Open};
use crate::project::{Project, value_told};
use crate::report::not_known::{PointTold, Tried, ValueTold};
use crate::report::plot::{Axis, AxisScale, Plot, PlotLevel, PlotName, PlotPoint};
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 196 "not known study";
    OPEN "" Number (INPUT "" Derived) "what is not known": Name;
    INPUT_NAME "" Number (INPUT "" Derived) "input": Name;
    FROM "" Number (INPUT "" Derived) "from": Name;
    TO "" Number (INPUT "" Derived) "to": Name;
    STANDS_IN "" Number (INPUT "" Derived) "stands in for it elsewhere": Name;
    COUNTS "" Number (STATICS "" Derived) "what was tried": Name;
    WHAT "" Number (STATICS "" Derived) "came to": Name;
    HOW_MANY "" Number (STATICS "" Derived) "how many": Name;
    HOLDS "" Number (STATICS "" Derived) "holds once bolted": Name;
    FAILS "" Number (STATICS "" Derived) "does not hold": Name;
    UNSAID "" Number (STATICS "" Derived) "cannot be said": Name;
    UNBUILT "" Number (STATICS "" Derived) "cannot be built": Name;
    POINTS "" Number (STATICS "" Derived) "two of the ways that were tried": Name;
    NEAREST "" Number (STATICS "" Derived) "does not hold, nearest to what stands in": Name;
    CLOSEST "" Number (STATICS "" Derived) "holds with the least to spare": Name;
    GOVERNS "" Number (STATICS "" Derived) "what governs": Name;
    UTILISATION "" Number (STATICS "" Derived) "utilisation": Name;
    SETTLES "" Number (STATICS "" Derived) "which one measurement would settle it, the one that decides most first": Name;
    DECIDES "" Number (STATICS "" Derived) "share of what it may be that decides by itself": Name;
    IN_IT "" Number (STATICS "" Derived) "tried in it": Name;
    HOLD "" Number (STATICS "" Derived) "of these hold": Name;
    PLOTTED "" Number (STATICS "" Derived) "everything that was tried, over the input that decides most": Name;
    THE_INPUT "" Number (INPUT "" Derived) "the input that decides most": Name;
    ALLOWED "" Number (STATICS "" Derived) "what is allowed": Name;
    TRIED "" Number (STATICS "" Derived) "tried, not proved: every corner of what the inputs may be (of more than 256, as many spread over them), the middle, and forty ways between; each was read anew and checked as the cabinet itself is": Reason;
    ALIKE "" Number (STATICS "" Derived) "everything that was tried comes to the same answer, so no measurement of these inputs would change it": Reason;
    RUNS "" Number (STATICS "" Derived) "a range is told from either end as far as everything tried agrees; what lies between two parts was not tried": Reason;
    AT_LEAST "" Number (STATICS "" Derived) "what does not hold is stopped where it first fails, so its utilisation is at least what is drawn": Reason;
    THE_WORKING "" Number (STATICS "" Derived) "the working below stands for the nearest way that does not hold": Reason;
 YES "" Number (INPUT "" Derived) "yes": Name;
    NO "" Number (INPUT "" Derived) "no": Name;
    EITHER "" Number (INPUT "" Derived) "yes or no": Name;
    ALL_KNOWN "" Number (INPUT "" Derived) "every input is known; say that one is not, and this tells what that may come to": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "not-known", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "not-known",
    title: "What may become of what is not known?",
    help: "A number that nobody knows is given as a range, a choice as a set. Every corner of them and points between are \
           tried with the whole check. Told is for how many it holds, the nearest way in which it does not, and which \
           one measurement would settle most.",
    steps: &[&TEXTS],
};

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let mut work = begin(project, extra)?;
    while work.advance() {}
    Ok(work.shown())
}

/// Begins it in portions.
pub fn begin(project: &Project, _extra: &str) -> Result<Box<dyn Work>, StepId> {
    let unknowns = Unknowns::new(project).ok_or(ALL_KNOWN)?;
    Ok(Box::new(UnderWay { open: project.open.clone(), unknowns }))
}

struct UnderWay {
    open: Vec<Open>,
    unknowns: Unknowns,
}

impl Work for UnderWay {
    fn advance(&mut self) -> bool {
        self.unknowns.next(1)
    }

    fn progress(&self) -> (usize, usize) {
        let [done, of] = self.unknowns.progress();
        (done, of)
    }

    fn shown(&self) -> Shown {
        let tried = self.unknowns.told();
        let mut tables = vec![self.opened(), counted(&tried)];
        let mut notes = vec![TRIED];
        if tried.nearest.is_some() || tried.closest.is_some() {
            tables.push(self.points(&tried));
        }
        if tried.settles.is_empty() {
            notes.push(ALIKE);
        } else {
            // What is asked first is answered first.
            tables.insert(0, self.settled(&tried));
            notes.push(RUNS);
        }
        let sections = self.unknowns.working();
        if !sections.is_empty() {
            notes.push(THE_WORKING);
        }
        let pictures: Vec<Picture> = self.plot(&tried).map(Picture::Plot).into_iter().collect();
        if !pictures.is_empty() && tried.fails > 0 {
            notes.push(AT_LEAST);
        }
        Shown { notes, tables, pictures, sections }
    }
}

impl UnderWay {
    fn opened(&self) -> Table {
        let rows = self.open.iter().map(|open| {
            let mut cells = vec![Cell::Input(open.path.clone())];
            match &open.may_be {
                MayBe::Between(kind, [low, high]) => {
                    cells.extend([measured(*low, *kind), measured(*high, *kind), measured(open.stand_in, *kind)]);
                }
                MayBe::OneOf { .. } => {
                    let words: Vec<&str> = open.ends().iter().filter_map(|&end| open.word(end)).collect();
                    let is_flag = words.iter().all(|word| FLAGS.contains(word));
                    let may_be = if is_flag { Cell::Name(EITHER) } else { Cell::Text(words.join(", ")) };
                    cells.extend([may_be, Cell::Nothing, cell(open, &value_told(open, open.stand_in))]);
                }
            }
            Line::plain(cells)
        });
        let columns = [INPUT_NAME, FROM, TO, STANDS_IN].map(Column::words).into();
        Table { name: OPEN, columns, rows: rows.collect() }
    }

    fn points(&self, tried: &Tried) -> Table {
        let points: Vec<(StepId, &PointTold)> = [(NEAREST, &tried.nearest), (CLOSEST, &tried.closest)]
            .into_iter()
            .filter_map(|(name, point)| point.as_ref().map(|point| (name, point)))
            .collect();
        let of_each =
            |cell: &dyn Fn(&PointTold) -> Cell| points.iter().map(|(_, point)| cell(point)).collect::<Vec<_>>();
        let row = |first: Cell, cells: Vec<Cell>| Line::plain(vec![first].into_iter().chain(cells).collect());
        let mut rows: Vec<Line> = self
            .open
            .iter()
            .enumerate()
            .map(|(place, open)| {
                row(Cell::Input(open.path.clone()), of_each(&|point| cell(open, &point.values[place])))
            })
            .collect();
        rows.push(row(
            Cell::Name(GOVERNS),
            of_each(&|point| match (&point.fault, point.governs) {
                (Some(_), _) => Cell::Name(UNBUILT),
                (None, Some(id)) => CheckId::named(id).map_or(Cell::Nothing, Cell::Check),
                (None, None) => Cell::Name(UNSAID),
            }),
        ));
        rows.push(row(
            Cell::Name(UTILISATION),
            of_each(&|point| point.utilisation.map_or(Cell::Nothing, |used| measured(used, Kind::Utilisation))),
        ));
        let columns = [INPUT_NAME].into_iter().chain(points.iter().map(|(name, _)| *name)).map(Column::words);
        Table { name: POINTS, columns: columns.collect(), rows }
    }

    fn settled(&self, tried: &Tried) -> Table {
        let mut rows = Vec::new();
        for (rank, settles) in tried.settles.iter().enumerate() {
            let open = &self.open[settles.input];
            for part in &settles.parts {
                let cells = vec![
                    Cell::Input(open.path.clone()),
                    Cell::Number(number::floor(100.0 * settles.decides) / 100.0),
                    cell(open, &part.from),
                    if part.from == part.to { Cell::Nothing } else { cell(open, &part.to) },
                    Cell::Number(part.tried as f64),
                    Cell::Number(part.holds as f64),
                ];
                rows.push(Line { cells, is_marked: rank == 0 && settles.decides > 0.0 });
            }
        }
        let columns = columns![
            Column::words(INPUT_NAME),
            Column::down(DECIDES, Kind::Number),
            Column::words(FROM),
            Column::words(TO),
            Column::nearest(IN_IT, Kind::Number),
            Column::nearest(HOLD, Kind::Number),
        ];
        Table { name: SETTLES, columns, rows }
    }

    /// Utilisations over the range that decides most.
    fn plot(&self, tried: &Tried) -> Option<Plot> {
        const TOP: f64 = 3.0;
        let ranked = tried.settles.iter().map(|settles| settles.input).chain(0..self.open.len());
        let mut ranges = ranked.filter_map(|place| match self.open[place].may_be {
            MayBe::Between(kind, ends) => Some((place, kind, ends)),
            MayBe::OneOf { .. } => None,
        });
        let (place, kind, ends) = ranges.next()?;
        let mut points = Vec::new();
        for (number, (point, came)) in self.unknowns.tried().enumerate() {
            let Came::To(trial) = came else { continue };
            let Some(used) = trial.utilisation.filter(|used| *used <= TOP) else { continue };
            points.push(PlotPoint { name: PlotName::None, at: [point[place], used], is_present: number == 0 });
        }
        if points.is_empty() {
            return None;
        }
        let axis = |name, kind, ends| Axis { name, kind, scale: AxisScale::Linear, ends };
        let most = points.iter().map(|point| point.at[1]).fold(1.0, f64::max);
        Some(Plot {
            name: PLOTTED,
            x: axis(THE_INPUT, kind, Some(ends)),
            y: axis(UTILISATION, Kind::Utilisation, Some([0.0, 1.05 * most])),
            curves: Vec::new(),
            points,
            levels: vec![PlotLevel { name: PlotName::Row(ALLOWED), y: 1.0 }],
            grid: None,
        })
    }
}

fn counted(tried: &Tried) -> Table {
    let rows = [(HOLDS, tried.holds), (FAILS, tried.fails), (UNSAID, tried.unsaid), (UNBUILT, tried.unbuilt)];
    let row = |(name, count): (StepId, usize)| Line::plain(vec![Cell::Name(name), Cell::Number(count as f64)]);
    let columns = columns![Column::words(WHAT), Column::nearest(HOW_MANY, Kind::Number)];
    Table { name: COUNTS, columns, rows: rows.map(row).into() }
}

fn cell(open: &Open, value: &ValueTold) -> Cell {
    match (value, &open.may_be) {
        (ValueTold::Number(number), MayBe::Between(kind, _)) => measured(*number, *kind),
        (ValueTold::Word(word), _) if *word == FLAGS[0] => Cell::Name(NO),
        (ValueTold::Word(word), _) if *word == FLAGS[1] => Cell::Name(YES),
        (ValueTold::Word(word), _) => Cell::Text(String::from(*word)),
        _ => Cell::Nothing,
    }
}

fn measured(value: f64, kind: Kind) -> Cell {
    Cell::Measured { ends: [value; 2], kind }
}
