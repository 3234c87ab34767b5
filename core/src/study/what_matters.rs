//! What matters most: the inputs in the order in which they move the governing utilisation.

use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

use super::work::Work;
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, StepId, number, steps};
use crate::explore::{Group, Moved, Trial, WhatMatters};
use crate::project::Project;
use crate::report::bars::{Bar, BarLevel, Bars};
use crate::report::outcome::Verdict;
use crate::report::plot::PlotName;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 197 "what matters most";
    NAME "" Number (STATICS "" Derived) "how far the governing utilisation moves when an input moves, the most first": Name;
    BARS "" Number (STATICS "" Derived) "from less to more of each input, the governing utilisation": Name;
    WHAT "" Number (INPUT "" Derived) "input": Name;
    COUNT "" Number (INPUT "" Derived) "numbers moved together": Name;
    VALUE "" Number (INPUT "" Derived) "now": Name;
    LESS "" Number (STATICS "" Derived) "with less of it": Name;
    LESS_GOVERNS "" Number (STATICS "" Derived) "what governs then": Name;
    MORE "" Number (STATICS "" Derived) "with more of it": Name;
    MORE_GOVERNS "" Number (STATICS "" Derived) "what governs with more": Name;
    ANSWER "" Number (STATICS "" Derived) "the answer": Name;
    SAME "" Number (STATICS "" Derived) "stays": Name;
    TURNS "" Number (STATICS "" Derived) "turns": Name;
    UNBUILT "" Number (STATICS "" Derived) "no value that may be given": Name;
    NOW "" Number (STATICS "" Derived) "now": Name;
    LIMIT "" Number (STATICS "" Derived) "what is allowed": Name;
    STEPS "" Number (INPUT "" Derived) "every number is made a tenth smaller and a tenth larger; places that are zero are moved 25 mm one way and the other, and what else is zero is left out": Reason;
    TOGETHER "" Number (INPUT "" Derived) "numbers of one kind in a list move together: the masses of all contents, the places of all anchors, which come nearer to the middle or go farther from it": Reason;
    NO_STRAIGHT_LINE "" Number (STATICS "" Derived) "a tenth says nothing of what twice as much would do": Reason;
    UNMOVED "" Number (STATICS "" Derived) "inputs that move nothing are not listed": Reason;
    NO_NUMBER "" Number (STATICS "" Derived) "nothing governs with a number, so there is nothing to move": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "what-matters", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "what-matters",
    title: "What matters most?",
    help: "Every number of the file is made a tenth smaller and a tenth larger, those that belong together at once, and \
           the whole check is made again. The inputs are told in the order in which they move what governs: that is the \
           order in which to measure, to ask and to change.",
    steps: &[&TEXTS],
};

/// Bars that are drawn.
const BARS_MAX: usize = 12;
/// What moves less than this is not listed.
const UNMOVED_BELOW: f64 = 1e-9;

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let mut work = begin(project, extra)?;
    while work.advance() {}
    Ok(work.shown())
}

/// Begins it in portions.
pub fn begin(project: &Project, _extra: &str) -> Result<Box<dyn Work>, StepId> {
    let search = WhatMatters::new(project);
    if search.now.utilisation.is_none() {
        return Err(NO_NUMBER);
    }
    Ok(Box::new(UnderWay(search)))
}

struct UnderWay(WhatMatters);

impl Work for UnderWay {
    fn advance(&mut self) -> bool {
        self.0.next(1)
    }

    fn progress(&self) -> (usize, usize) {
        let [done, of] = self.0.progress();
        (done, of)
    }

    fn shown(&self) -> Shown {
        let ranked = self.0.ranked();
        let is_told = |moved: &Moved| {
            let turns = moved.iter().flatten().any(|trial| trial.verdict != self.0.now.verdict);
            turns || moved.contains(&None) || self.0.span(moved) > UNMOVED_BELOW
        };
        let told: Vec<(&Group, Moved)> = ranked.into_iter().filter(|(_, moved)| is_told(moved)).collect();
        let columns = columns![
            Column::words(WHAT),
            Column::nearest(COUNT, Kind::Number),
            Column::words(VALUE),
            Column::up(LESS, Kind::Utilisation),
            Column::words(LESS_GOVERNS),
            Column::up(MORE, Kind::Utilisation),
            Column::words(MORE_GOVERNS),
            Column::words(ANSWER),
        ];
        let rows = told.iter().map(|(group, moved)| self.line(group, moved)).collect();
        let pictures = bars(&told, self.0.now.utilisation.unwrap_or(0.0)).map(Picture::Bars);
        Shown {
            notes: vec![STEPS, TOGETHER, NO_STRAIGHT_LINE, UNMOVED],
            tables: vec![Table { name: NAME, columns, rows }],
            pictures: pictures.into_iter().collect(),
            sections: Vec::new(),
        }
    }
}

impl UnderWay {
    fn line(&self, group: &Group, moved: &Moved) -> Line {
        let turns = moved.iter().flatten().any(|trial| trial.verdict != self.0.now.verdict);
        let value =
            group.value().map_or(Cell::Nothing, |value| Cell::Measured { ends: [value; 2], kind: group.kind() });
        let mut cells = vec![Cell::Input(group.path.clone()), Cell::Number(group.numbers.len() as f64), value];
        for trial in moved {
            cells.extend(came(trial));
        }
        cells.push(Cell::Name(if turns { TURNS } else { SAME }));
        Line { cells, is_marked: turns }
    }
}

fn came(trial: &Option<Trial>) -> [Cell; 2] {
    let Some(trial) = trial else { return [Cell::Nothing, Cell::Name(UNBUILT)] };
    let is_said = trial.verdict != Verdict::CannotBeSaid;
    let governs = match trial.governs {
        Some(check) if is_said => Cell::Check(check),
        _ => Cell::Status(crate::calc::Status::NotCovered),
    };
    [trial.utilisation.map_or(Cell::Nothing, Cell::Number), governs]
}

/// Bars one under the other, the most important first: from the utilisation with less to that with more.
fn bars(told: &[(&Group, Moved)], now: f64) -> Option<Bars> {
    let used = |moved: &Moved| -> Vec<f64> { moved.iter().flatten().filter_map(|trial| trial.utilisation).collect() };
    let drawn: Vec<Bar> = told
        .iter()
        .filter(|(_, moved)| !used(moved).is_empty())
        .take(BARS_MAX)
        .map(|(group, moved)| {
            let used = used(moved);
            let ends = [used.iter().copied().fold(now, f64::min), used.iter().copied().fold(now, f64::max)];
            Bar { name: PlotName::Input(group.path.clone()), ends }
        })
        .collect();
    let (low, high) = drawn.iter().fold((now, now), |(low, high), bar| (low.min(bar.ends[0]), high.max(bar.ends[1])));
    // What is allowed is drawn where it is near.
    let high = if high < 1.0 && high > 0.7 { 1.0 } else { high };
    // Demands are told rounded up, so the ends of the scale are numbers that stay what they are.
    let up = |used: f64| number::ceil(100.0 * used - 1e-9) / 100.0;
    let ends = [number::floor(100.0 * low) / 100.0, up(high)];
    let mut levels = vec![BarLevel { name: PlotName::Row(NOW), at: now, told: up(now) }];
    if ends[1] >= 1.0 && ends[0] <= 1.0 {
        levels.push(BarLevel { name: PlotName::Row(LIMIT), at: 1.0, told: 1.0 });
    }
    (!drawn.is_empty()).then_some(Bars { name: BARS, kind: Kind::Utilisation, ends, bars: drawn, levels })
}
