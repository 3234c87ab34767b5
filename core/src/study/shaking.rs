//! The motion that a study tries: a record that the reader brought, or the pulse of the project.

use alloc::vec;
use alloc::vec::Vec;

use super::Shown;
use crate::calc::clause::INPUT;
use crate::calc::{Kind, StepId, steps};
use crate::input::{Fault, Problem};
use crate::motion::{GroundMotion, MotionSetting, Pulse, Record, Recorded, Scaled, Segment, TwoRecords, read_records};
use crate::project::bench::Bench;
use crate::report::table::{Cell, Column, Line, Table, columns};

steps! { 179 "motion of the floor";
    NO_MOTION "" Number (INPUT "motion" Derived) "neither a record, nor the height of a pulse, nor a seismic rule says how strongly the floor moves": Reason;
    NO_RECORD "" Number (INPUT "motion" Derived) "this needs a record of motion: open its file": Reason;
    NO_UNIT "" Number (INPUT "motion" Derived) "in which unit the record is written has to be said: give the unit of the record under standing free": Reason;
    VERTICAL_TOO "" Number (INPUT "motion" Derived) "the record has a third column, which shakes the floor up and down at the same time; turned round, only the horizontal part changes its sign": Reason;
    FAULTS "" Number (INPUT "motion" Derived) "what is wrong with the record": Name;
    LINE "" Number (INPUT "motion" Derived) "line": Name;
    PROBLEM "" Number (INPUT "motion" Derived) "problem": Name;
    GIVEN "" Number (INPUT "motion" Derived) "what stands there": Name;
    ALLOWED "" Number (INPUT "motion" Derived) "what would do": Name;
    TOO_LONG "" Number (INPUT "motion" Derived) "the text is too long": Name;
    TOO_MANY "" Number (INPUT "motion" Derived) "there are too many values": Name;
    MISSING "" Number (INPUT "motion" Derived) "something is missing": Name;
    NOT_A_NUMBER "" Number (INPUT "motion" Derived) "a number belongs here": Name;
    NOT_FINITE "" Number (INPUT "motion" Derived) "this is no finite number": Name;
    WRONG_COUNT "" Number (INPUT "motion" Derived) "another count of values": Name;
    UNEVEN "" Number (INPUT "motion" Derived) "the times do not rise in even steps": Name;
    UNLIKELY "" Number (INPUT "motion" Derived) "a peak as high as this is unlikely": Name;
    MORE "" Number (INPUT "motion" Derived) "more faults follow": Name;
    OTHER "" Number (INPUT "motion" Derived) "it cannot be read": Name;
}

/// The motion.
#[derive(Clone, Debug)]
pub enum Shaking {
    /// A pulse.
    Pulse(Pulse),
    /// A record, with the factor that is asked for on it.
    Record(Recorded, f64),
}

impl GroundMotion for Shaking {
    fn segment(&self, number: usize) -> Option<Segment> {
        match self {
            Shaking::Pulse(pulse) => pulse.segment(number),
            Shaking::Record(Recorded { horizontal, vertical }, factor) => {
                let both;
                let motion: &dyn GroundMotion = match vertical {
                    Some(vertical) => {
                        both = TwoRecords { horizontal, vertical };
                        &both
                    }
                    None => horizontal,
                };
                Scaled { motion, horizontal: *factor, vertical: factor.abs() }.segment(number)
            }
        }
    }
}

impl Shaking {
    /// Its highest vertical acceleration either way; zero where it only shakes sideways.
    pub fn vertical_peak(&self) -> f64 {
        match self {
            Shaking::Record(Recorded { vertical: Some(vertical), .. }, factor) => vertical.facts().peak * factor.abs(),
            _ => 0.0,
        }
    }

    /// The vertical record, where there is one.
    pub fn vertical(&self) -> Option<&Record> {
        match self {
            Shaking::Record(record, _) => record.vertical.as_ref(),
            Shaking::Pulse(_) => None,
        }
    }

    /// The horizontal record and its factor, where it is one.
    pub fn record(&self) -> Option<(&Record, f64)> {
        match self {
            Shaking::Record(record, factor) => Some((&record.horizontal, *factor)),
            Shaking::Pulse(_) => None,
        }
    }
}

/// Why there is no motion.
pub enum Absent {
    /// A sentence.
    Reason(StepId),
    /// The faults of the record.
    Faults(Vec<Fault>),
}

impl Absent {
    /// What the study shows instead.
    pub fn shown(self) -> Result<Shown, StepId> {
        match self {
            Absent::Reason(reason) => Err(reason),
            Absent::Faults(faults) => Ok(Shown { tables: vec![table(&faults)], ..Shown::default() }),
        }
    }
}

/// The motion of a project: the record where one was brought, else the pulse.
pub fn shaking(bench: &Bench, setting: &MotionSetting, extra: &str) -> Result<Shaking, Absent> {
    if !extra.trim().is_empty() {
        return record(setting, extra).map(|record| Shaking::Record(record, setting.record_factor));
    }
    let push = match &bench.demand {
        Some(Ok(demand)) => Some(demand.push),
        _ => None,
    };
    let amplitude = setting.pulse_height.or(push).ok_or(Absent::Reason(NO_MOTION))?;
    Ok(Shaking::Pulse(Pulse { form: setting.pulse, amplitude, duration_s: setting.pulse_duration_s }))
}

/// The record that was brought.
pub fn record(setting: &MotionSetting, extra: &str) -> Result<Recorded, Absent> {
    if extra.trim().is_empty() {
        return Err(Absent::Reason(NO_RECORD));
    }
    let form = setting.record.ok_or(Absent::Reason(NO_UNIT))?;
    read_records(extra, &form).map_err(Absent::Faults)
}

fn table(faults: &[Fault]) -> Table {
    let rows = faults.iter().map(|fault| {
        let cells = vec![
            Cell::Number(fault.line as f64),
            Cell::Name(row(fault.problem)),
            Cell::Text(fault.given.clone()),
            Cell::Text(fault.allowed.clone()),
        ];
        Line::plain(cells)
    });
    let columns = columns![
        Column::nearest(LINE, Kind::Number),
        Column::words(PROBLEM),
        Column::words(GIVEN),
        Column::words(ALLOWED)
    ];
    Table { name: FAULTS, columns, rows: rows.collect() }
}

fn row(problem: Problem) -> StepId {
    match problem {
        Problem::TooLong => TOO_LONG,
        Problem::TooMany => TOO_MANY,
        Problem::Missing => MISSING,
        Problem::NotANumber => NOT_A_NUMBER,
        Problem::NotFinite => NOT_FINITE,
        Problem::WrongCount => WRONG_COUNT,
        Problem::UnevenSteps => UNEVEN,
        Problem::UnlikelyPeak => UNLIKELY,
        Problem::MoreFaults => MORE,
        _ => OTHER,
    }
}
