//! The response spectrum of a record that the reader brought.

use alloc::vec;
use alloc::vec::Vec;

use super::shaking::{self, record};
use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::order::put_in_order;
use crate::calc::{Kind, Sheet, StepId, number, steps};
use crate::motion::code_spectrum::Beside;
use crate::motion::{
    CodeSpectrum, MotionSetting, Record, Recorded, Response, SpectrumSetting, response, spectrum, spectrum_rows,
};
use crate::project::Project;
use crate::project::bench::Bench;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, Stroke};
use crate::report::table::{Cell, Column, Line, Table, columns};

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
    GROUND "" Number (INPUT "site" Derived) "the ground by the rule": Name;
    GROUND_TOP "" Number (INPUT "site" Derived) "top of the ground's spectrum by the rule": Name;
    OVER "" Number (INPUT "site" Derived) "record over rule": Name;
    UP_AND_DOWN "" Number (INPUT "motion" Derived) "up and down": Name;
    PART "" Number (INPUT "motion" Derived) "shakes": Name;
    SIDEWAYS "" Number (INPUT "motion" Derived) "sideways": Name;
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
    help: "The highest answer of oscillators of every period to a record of motion that you open here, with its damping, \
           beside the ground's spectrum by the seismic rule where the rule has one. It needs the unit of the record, which \
           no file can be trusted to say.",
    steps: &[&TEXTS, &shaking::TEXTS, &spectrum_rows::TEXTS],
};

/// Shortest and longest period that is drawn.
const ENDS_S: [f64; 2] = [0.02, 5.0];
/// Periods of the table.
const PERIODS_S: [f64; 11] = [0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0];

/// Periods at which the working reads the rule's spectrum, one on each part of it.
const TOLD_S: [f64; 4] = [0.05, 0.3, 1.0, 3.0];

fn make(project: &Project, extra: &str) -> Result<Shown, StepId> {
    let setting = project.motion.clone().unwrap_or_default();
    let Recorded { mut horizontal, mut vertical } = match record(&setting, extra) {
        Ok(record) => record,
        Err(absent) => return absent.shown(),
    };
    for part in [Some(&mut horizontal), vertical.as_mut()].into_iter().flatten() {
        part.accelerations.iter_mut().for_each(|value| *value *= setting.record_factor);
    }
    let mut notes = vec![EXACT, SHORT, NO_BASELINE];
    let mut sheet = Sheet::told();
    let ground = ground(project, &setting, &mut notes, &mut sheet);
    let curve = |name: StepId, record: &Record, damping: f64, stroke: Stroke| {
        let found = spectrum(record, ENDS_S, 120, &SpectrumSetting::of(damping));
        let points = found.iter().map(|one| [one.period_s, one.acceleration]).collect();
        Curve { name: PlotName::Row(name), points, stroke }
    };
    let mut curves = vec![
        curve(THIS, &horizontal, setting.damping, Stroke::Strong),
        curve(LIGHT, &horizontal, 0.02, Stroke::Dashed),
        curve(HEAVY, &horizontal, 0.1, Stroke::Dotted),
    ];
    if let Some(vertical) = &vertical {
        curves.push(curve(UP_AND_DOWN, vertical, setting.damping, Stroke::Plain));
    }
    let mut levels = Vec::new();
    match ground {
        Some(CodeSpectrum { corners_s: Some(_), .. }) => curves.extend(ground.map(ground_curve)),
        Some(CodeSpectrum { top, .. }) => levels.push(PlotLevel { name: PlotName::Row(GROUND_TOP), y: top }),
        None => {}
    }
    if let Some(Ok(demand)) = &Bench::new(project).demand {
        levels.push(PlotLevel { name: PlotName::Row(RULE), y: demand.push });
    }
    let plot = Plot {
        name: NAME,
        x: Axis { name: PERIOD, kind: Kind::Time, scale: AxisScale::Log, ends: Some(ENDS_S) },
        y: Axis { name: ACCELERATION, kind: Kind::Acceleration, scale: AxisScale::Linear, ends: None },
        curves,
        points: Vec::new(),
        levels,
        grid: None,
    };
    Ok(Shown {
        notes,
        tables: vec![facts_table(&horizontal, vertical.as_ref()), periods_table(&horizontal, setting.damping, ground)],
        pictures: vec![Picture::Plot(plot)],
        sections: sheet.sections,
    })
}

/// The ground's spectrum by the rule, and what is to be said of it.
fn ground(
    project: &Project,
    setting: &MotionSetting,
    notes: &mut Vec<StepId>,
    sheet: &mut Sheet,
) -> Option<CodeSpectrum> {
    let site = project.site.as_ref()?;
    let beside = Beside { damping: setting.damping, corner_s: setting.corner_s };
    let found = match CodeSpectrum::of(site.rule, &site.values, &beside, sheet) {
        Ok(found) => found,
        Err(reason) => {
            notes.push(reason);
            return None;
        }
    };
    notes.push(spectrum_rows::OF_GROUND);
    if found.corners_s.is_none() {
        notes.push(spectrum_rows::NO_CORNER);
    }
    if site.rule.spectrum.is_some_and(|form| !form.is_damped) && setting.damping != 0.05 {
        notes.push(spectrum_rows::ONLY_5);
    }
    for period_s in TOLD_S {
        found.at(period_s, sheet);
    }
    Some(found)
}

/// Its line: bends where its corners are, and is rounded behind them.
fn ground_curve(ground: CodeSpectrum) -> Curve {
    let rise = number::ln(ENDS_S[1] / ENDS_S[0]);
    let mut periods: Vec<f64> = (0..=80).map(|place| ENDS_S[0] * number::exp(rise * place as f64 / 80.0)).collect();
    periods.extend(ground.corners_s.into_iter().flatten().filter(|corner| *corner < ENDS_S[1] && *corner > ENDS_S[0]));
    put_in_order(&mut periods, f64::total_cmp);
    let points = periods.into_iter().filter_map(|period_s| Some([period_s, ground.at(period_s, &mut Sheet::quiet())?]));
    Curve { name: PlotName::Row(GROUND), points: points.collect(), stroke: Stroke::Plain }
}

fn facts_table(horizontal: &Record, vertical: Option<&Record>) -> Table {
    let line = |(name, record): (StepId, &Record)| {
        let facts = record.facts();
        Line::plain(vec![
            Cell::Name(name),
            Cell::Number(record.accelerations.len() as f64),
            Cell::Number(record.step_s),
            Cell::Number(facts.duration_s),
            Cell::Number(facts.ends[0]),
            Cell::Number(facts.ends[1]),
            Cell::Number(facts.velocity_mm_per_s),
        ])
    };
    let rows = [Some((SIDEWAYS, horizontal)), vertical.map(|record| (UP_AND_DOWN, record))]
        .into_iter()
        .flatten()
        .map(line)
        .collect();
    let columns = columns![
        Column::words(PART),
        Column::nearest(COUNT, Kind::Number),
        Column::nearest(STEP, Kind::Time),
        Column::nearest(DURATION, Kind::Time),
        Column::nearest(LOWEST, Kind::Acceleration),
        Column::nearest(HIGHEST, Kind::Acceleration),
        Column::nearest(PEAK_VELOCITY, Kind::Velocity),
    ];
    Table { name: FACTS, columns, rows }
}

fn periods_table(record: &Record, damping: f64, ground: Option<CodeSpectrum>) -> Table {
    let rows = PERIODS_S.into_iter().map(|period_s| {
        let Response { displacement_mm, velocity_mm_per_s, acceleration, .. } =
            response(record, period_s, &SpectrumSetting::of(damping));
        let mut cells = vec![
            Cell::Number(period_s),
            Cell::Number(acceleration),
            Cell::Number(velocity_mm_per_s),
            Cell::Number(displacement_mm),
        ];
        if let Some(code) = ground.and_then(|ground| ground.at(period_s, &mut Sheet::quiet())) {
            cells.extend([Cell::Number(code), Cell::Number(acceleration / code)]);
        }
        Line::plain(cells)
    });
    let mut columns = columns![
        Column::nearest(PERIOD, Kind::Time),
        Column::up(ACCELERATION, Kind::Acceleration),
        Column::up(VELOCITY, Kind::Velocity),
        Column::up(DISPLACEMENT, Kind::Length),
    ];
    if ground.is_some_and(|ground| ground.corners_s.is_some()) {
        columns.extend([Column::nearest(GROUND, Kind::Acceleration), Column::up(OVER, Kind::Number)]);
    }
    Table { name: NAME, columns, rows: rows.collect() }
}
