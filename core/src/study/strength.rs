//! How the utilisation of the bolted cabinet grows with the strength of shaking.

use alloc::vec;
use alloc::vec::Vec;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::clause::INPUT;
use crate::calc::{CheckId, Kind, StepId, steps};
use crate::explore::scaled_strength;
use crate::input::field::FieldShape;
use crate::project::{Project, assess};
use crate::report::outcome::Report;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotLevel, PlotName, PlotPoint, Stroke};
use crate::report::table::{Cell, Column, Line, Table};
use crate::rules::demand::Strength;

steps! { 21 "strength study";
    NAME "" Number (INPUT "site" Derived) "Utilisation over the strength of shaking": Name;
    STRENGTH "" Number (INPUT "site" Derived) "strength of shaking": Name;
    UTILISATION "" Number (INPUT "site" Derived) "utilisation": Name;
    GOVERNS "" Number (INPUT "site" Derived) "what governs": Name;
    NOW "" Number (INPUT "site" Derived) "now": Name;
    LIMIT "" Number (INPUT "site" Derived) "holds up to here": Name;
    NO_FIELD "" Number (INPUT "site" Derived) "without a seismic rule whose strength is a number above zero nothing can be scaled": Reason;
    NEVER_FINITE "" Number (INPUT "site" Derived) "where the line ends nothing balances the load, or nothing is compared": Reason;
}

/// The study.
pub static STUDY: Study = Study { id: "strength", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "strength",
    title: "How does it grow with the shaking?",
    help: "The highest utilisation among the required checks while the field that the rule names as its strength is \
           scaled from a fifth of its value to twice it. Everything else stays.",
    steps: &[&TEXTS],
};

/// How many strengths are tried.
const TRIED: usize = 19;

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let site = project.site.as_ref().ok_or(NO_FIELD)?;
    let Strength::Field(field) = (site.rule.strength)(&site.values) else { return Err(NO_FIELD) };
    let FieldShape::Number { kind, max, .. } = site.rule.fields[field].shape else { return Err(NO_FIELD) };
    let now = site.values.number(field).filter(|now| *now > 0.0).ok_or(NO_FIELD)?;
    let mut points = Vec::new();
    let mut rows = Vec::new();
    for step in 0..TRIED {
        let strength = now * (0.2 + 0.1 * step as f64);
        let Some(scaled) = scaled_strength(project, strength.min(max)) else { return Err(NO_FIELD) };
        let governing = governing(&assess(&scaled));
        points.push([strength.min(max), governing.map_or(f64::NAN, |(utilisation, _)| utilisation)]);
        let (utilisation, check) = match governing {
            Some((utilisation, check)) => (Cell::Number(utilisation), Cell::Check(check)),
            None => (Cell::Nothing, Cell::Nothing),
        };
        rows.push(Line { cells: vec![Cell::Number(strength.min(max)), utilisation, check], is_marked: step == 8 });
        if strength >= max {
            break;
        }
    }
    let ends = points.iter().any(|point| !point[1].is_finite());
    let present = points.iter().find(|point| (point[0] - now).abs() <= 1e-9 * now).filter(|point| point[1].is_finite());
    let axis = |name, kind| Axis { name, kind, scale: AxisScale::Linear, ends: None };
    let plot = Plot {
        name: NAME,
        x: axis(STRENGTH, kind),
        y: axis(UTILISATION, Kind::Utilisation),
        points: present.map(|&at| PlotPoint { name: PlotName::Row(NOW), at, is_present: true }).into_iter().collect(),
        curves: vec![Curve { name: PlotName::None, points, stroke: Stroke::Strong }],
        levels: vec![PlotLevel { name: PlotName::Row(LIMIT), y: 1.0 }],
        grid: None,
    };
    let columns =
        vec![Column::nearest(STRENGTH, kind), Column::up(UTILISATION, Kind::Utilisation), Column::words(GOVERNS)];
    let table = Table { name: NAME, columns, rows };
    Ok(Shown {
        notes: ends.then_some(NEVER_FINITE).into_iter().collect(),
        tables: vec![table],
        pictures: vec![Picture::Plot(plot)],
        sections: Vec::new(),
    })
}

/// The highest utilisation among the required checks, where it is a number, with its check.
fn governing(report: &Report) -> Option<(f64, CheckId)> {
    let check = &report.checks[report.governs?];
    let id = CheckId::named(check.id)?;
    check.utilisation.map(|utilisation| (utilisation, id))
}
