//! How far any one input may go, everything else left as it is.

use alloc::boxed::Box;
use alloc::vec;
use alloc::vec::Vec;

use super::work::Work;
use super::{Shown, Study, StudyText};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Kind, StepId, steps};
use crate::explore::{self, Bound, Found, HowFar, Knob, Notch, Ranged, Standing, Stretch};
use crate::project::Project;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 201 "how far";
    NAME "" Number (STATICS "" Derived) "how far each input may go by itself": Name;
    WHAT "" Number (INPUT "" Derived) "what is changed": Name;
    NOW "" Number (INPUT "" Derived) "now": Name;
    FROM "" Number (STATICS "" Derived) "holds from": Name;
    BELOW "" Number (STATICS "" Derived) "below that": Name;
    TO "" Number (STATICS "" Derived) "holds up to": Name;
    ABOVE "" Number (STATICS "" Derived) "above that": Name;
    NOWHERE "" Number (STATICS "" Derived) "nowhere in what was tried": Name;
    NOT_TRIED "" Number (STATICS "" Derived) "not tried": Name;
    FAILS "" Number (STATICS "" Derived) "fails": Name;
    NOT_COVERED "" Number (STATICS "" Derived) "not covered": Name;
    NOT_BUILT "" Number (STATICS "" Derived) "cannot be built": Name;
    INTERVALS "" Number (STATICS "" Derived) "an interval says: at one end of it everything asked holds, at the other it does not; both ends were assessed as the cabinet itself is": Reason;
    SCANNED "" Number (STATICS "" Derived) "24 values and the present one were tried over the whole reach and every change between two of them was narrowed down; what comes and goes between two neighbours is not seen": Reason;
    COMES_AND_GOES "" Number (STATICS "" Derived) "where an input has more than one line, it holds, stops holding and holds again: more of it is not simply better or worse": Reason;
    ONE_ALONE "" Number (STATICS "" Derived) "only one check was asked here; others may fail before it does": Reason;
    NOTHING "" Number (INPUT "" Derived) "there is nothing to turn: without contents, a slab or a seismic rule no input decides anything": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "how-far", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "how-far",
    title: "How far can each input go?",
    help: "Every input that is one number is turned down and up by itself, and the whole check is asked at each value: \
           mass, height of the centre of mass, shaking, concrete, slab, friction, embedment, bolt, edge, width and depth \
           of the base. Told is the stretch that holds, and what stops it at both ends. Choose one check to ask for it \
           alone.",
    steps: &[&TEXTS, &explore::KNOB_TEXTS],
};

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let mut work = begin(project, extra)?;
    while work.advance() {}
    Ok(work.shown())
}

/// Begins it in portions; `extra` is the id of the one check that is asked, empty for all required ones.
pub fn begin(project: &Project, extra: &str) -> Result<Box<dyn Work>, StepId> {
    let of = CheckId::named(extra);
    let search = HowFar::new(project, of);
    if search.ranges.is_empty() {
        return Err(NOTHING);
    }
    let scale = |one: &Ranged| Scale {
        name: one.knob.field_of_rule(project).map_or(Cell::Name(one.knob.name()), Cell::Input),
        kind: one.knob.kind(project),
        zones: zones(one.knob, project),
    };
    Ok(Box::new(UnderWay { scales: search.ranges.iter().map(scale).collect(), of, search }))
}

struct UnderWay {
    search: HowFar,
    scales: Vec<Scale>,
    of: Option<CheckId>,
}

/// How a knob and its values are told.
struct Scale {
    /// What it is called.
    name: Cell,
    kind: Kind,
    /// Zones have names, and nothing between them.
    zones: Vec<Notch>,
}

fn zones(knob: Knob, project: &Project) -> Vec<Notch> {
    if knob == Knob::Zone { knob.notches(project).unwrap_or_default() } else { Vec::new() }
}

impl Scale {
    fn told(&self, ends: [f64; 2]) -> Cell {
        let word = |value: f64| self.zones.iter().find(|notch| notch.value == value).map(|notch| notch.word);
        match ends.map(word) {
            [Some(low), Some(high)] if low == high => Cell::Text(low.into()),
            [Some(low), Some(high)] => Cell::Text([low, high].join(" to ")),
            _ => Cell::Measured { ends, kind: self.kind },
        }
    }
}

impl Work for UnderWay {
    fn advance(&mut self) -> bool {
        self.search.next(1)
    }

    fn progress(&self) -> (usize, usize) {
        self.search.progress()
    }

    fn shown(&self) -> Shown {
        let mut rows = Vec::new();
        let mut comes_and_goes = false;
        for (ranged, scale) in self.search.ranges.iter().zip(&self.scales).filter(|(one, _)| !one.tried.is_empty()) {
            let stretches = ranged.stretches();
            comes_and_goes |= stretches.len() > 1;
            if stretches.is_empty() {
                rows.push(line(ranged, scale, [Cell::Name(NOWHERE), Cell::Nothing, Cell::Nothing, Cell::Nothing]));
            }
            rows.extend(stretches.iter().map(|stretch| line(ranged, scale, told(stretch, scale))));
        }
        let columns = columns![
            Column::words(WHAT),
            Column::nearest(NOW, Kind::Number),
            Column::nearest(FROM, Kind::Number),
            Column::words(BELOW),
            Column::nearest(TO, Kind::Number),
            Column::words(ABOVE),
        ];
        let mut notes = vec![INTERVALS, SCANNED];
        if comes_and_goes {
            notes.insert(0, COMES_AND_GOES);
        }
        if self.of.is_some() {
            notes.push(ONE_ALONE);
        }
        let tables = vec![Table { name: NAME, columns, rows }];
        Shown { notes, tables, pictures: Vec::new(), sections: Vec::new() }
    }
}

fn line(ranged: &Ranged, scale: &Scale, cells: [Cell; 4]) -> Line {
    let mut all = vec![scale.name.clone(), scale.told([ranged.now; 2])];
    all.extend(cells);
    Line::plain(all)
}

fn told(stretch: &Stretch, scale: &Scale) -> [Cell; 4] {
    let ends = |bound: &Bound| {
        let beyond = bound.beyond.map_or(bound.holds, |(value, _)| value);
        scale.told([bound.holds.min(beyond), bound.holds.max(beyond)])
    };
    [ends(&stretch.from), why(&stretch.from), ends(&stretch.to), why(&stretch.to)]
}

/// What is beyond the end of a stretch.
fn why(bound: &Bound) -> Cell {
    let Some((_, found)) = bound.beyond else { return Cell::Name(NOT_TRIED) };
    match found {
        Found { standing: Standing::NotBuilt, .. } => Cell::Name(NOT_BUILT),
        Found { standing: Standing::Fails, governs: Some(check), .. } => Cell::Check(check),
        Found { standing: Standing::Fails, .. } => Cell::Name(FAILS),
        Found { reason: Some(code), .. } => Cell::Name(StepId::from_code(code)),
        _ => Cell::Name(NOT_COVERED),
    }
}
