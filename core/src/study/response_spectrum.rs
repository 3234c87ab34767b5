//! The response spectrum of a record that the reader brought.

use alloc::vec;
use alloc::vec::Vec;

use super::shaking::{self, record};
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{Kind, StepId, steps};
use crate::motion::{Record, Response, SpectrumSetting, response, spectrum};
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table};

steps! { 183 "response spectrum study";
    NAME "" Number (INPUT "motion" Derived) "pseudo-acceleration spectrum of the record": Name;
    PERIOD "" Number (INPUT "motion" Derived) "natural period": Name;
    ACCELERATION "" Number (INPUT "motion" Derived) "pseudo-acceleration": Name;
    DISPLACEMENT "" Number (INPUT "motion" Derived) "displacement": Name;
    VELOCITY "" Number (INPUT "motion" Derived) "pseudo-velocity": Name;
    THIS "" Number (INPUT "motion" Derived) "with the damping given": Name;
    LIGHT "" Number (INPUT "motion" Derived) "with 2 %": Name;
    HEAVY "" Number (INPUT "motion" Derived) "with 10 %": Name;
    RULE "" Number (INPUT "site" Derived) "push of the rule": Name;
    FACTS "" Number (INPUT "motion" Derived) "what the record says of itself": Name;
    COUNT "" Number (INPUT "motion" Derived) "values": Name;
    STEP "" Number (INPUT "motion" Derived) "time step": Name;
    DURATION "" Number (INPUT "motion" Derived) "duration": Name;
    LOWEST "" Number (INPUT "motion" Derived) "lowest acceleration": Name;
    HIGHEST "" Number (INPUT "motion" Derived) "highest acceleration": Name;
    PEAK_VELOCITY "" Number (INPUT "motion" Derived) "peak velocity": Name;
    EXACT "" Number (INPUT "motion" Derived) "integrated exactly for straight lines between the values of the record, and looked at forty times in a period or oftener": Reason;
    NO_BASELINE "" Number (INPUT "motion" Derived) "the velocity is the sum of the accelerations from rest; no baseline is corrected": Reason;
    SHORT "" Number (INPUT "motion" Derived) "periods near the time step of the record, or longer than the record, say little": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "response-spectrum", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "response-spectrum",
    title: "What is in this record?",
    help: "The highest answer of oscillators of every period to a record of motion that you open here, with its damping. It \
           needs the unit of the record, which no file can be trusted to say.",
    steps: &[&TEXTS, &shaking::TEXTS],
};

/// Shortest and longest period that is drawn.
const ENDS_S: [f64; 2] = [0.02, 5.0];
/// Periods of the table.
const PERIODS_S: [f64; 11] = [0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0];

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let setting = project.motion.clone().unwrap_or_default();
    let mut record = match record(&setting, extra) {
        Ok(record) => record,
        Err(absent) => return absent.shown(),
    };
    record.accelerations.iter_mut().for_each(|value| *value *= setting.record_factor);
    let curve = |name: StepId, damping: f64, stroke: Stroke| {
        let found = spectrum(&record, ENDS_S, 120, &SpectrumSetting::of(damping));
        let points = found.iter().map(|one| [one.period_s, one.acceleration]).collect();
        Curve { name: PlotName::Row(name), points, stroke }
    };
    let bench = Bench::new(project);
    let push = match &bench.demand {
        Some(Ok(demand)) => Some(PlotLevel { name: PlotName::Row(RULE), y: demand.push }),
        _ => None,
    };
    let plot = Plot {
        name: NAME,
        x: Axis { name: PERIOD, kind: Kind::Time, scale: AxisScale::Log, ends: Some(ENDS_S) },
        y: Axis { name: ACCELERATION, kind: Kind::Acceleration, scale: AxisScale::Linear, ends: None },
        curves: vec![
            curve(THIS, setting.damping, Stroke::Strong),
            curve(LIGHT, 0.02, Stroke::Dashed),
            curve(HEAVY, 0.1, Stroke::Dotted),
        ],
        points: Vec::new(),
        levels: push.into_iter().collect(),
        grid: None,
    };
    Ok(Shown {
        notes: vec![EXACT, SHORT, NO_BASELINE],
        tables: vec![facts_table(&record), periods_table(&record, setting.damping)],
        pictures: vec![Picture::Plot(plot)],
        sections: Vec::new(),
    })
}

fn facts_table(record: &Record) -> Table {
    let facts = record.facts();
    let cells = vec![
        Cell::Number(record.accelerations.len() as f64),
        Cell::Number(record.step_s),
        Cell::Number(facts.duration_s),
        Cell::Number(facts.ends[0]),
        Cell::Number(facts.ends[1]),
        Cell::Number(facts.velocity_mm_per_s),
    ];
    let columns = vec![
        Column::nearest(COUNT, Kind::Number),
        Column::nearest(STEP, Kind::Time),
        Column::nearest(DURATION, Kind::Time),
        Column::nearest(LOWEST, Kind::Acceleration),
        Column::nearest(HIGHEST, Kind::Acceleration),
        Column::nearest(PEAK_VELOCITY, Kind::Velocity),
    ];
    Table { name: FACTS, columns, rows: vec![Line::plain(cells)] }
}

fn periods_table(record: &Record, damping: f64) -> Table {
    let rows = PERIODS_S.into_iter().map(|period_s| {
        let Response { displacement_mm, velocity_mm_per_s, acceleration, .. } =
            response(record, period_s, &SpectrumSetting::of(damping));
        Line::plain(vec![
            Cell::Number(period_s),
            Cell::Number(acceleration),
            Cell::Number(velocity_mm_per_s),
            Cell::Number(displacement_mm),
        ])
    });
    let columns = vec![
        Column::nearest(PERIOD, Kind::Time),
        Column::up(ACCELERATION, Kind::Acceleration),
        Column::up(VELOCITY, Kind::Velocity),
        Column::up(DISPLACEMENT, Kind::Length),
    ];
    Table { name: NAME, columns, rows: rows.collect() }
}
