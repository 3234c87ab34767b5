//! One cabinet under every rule of the registry: how hard each pushes, what decided it, and what is left to hold it down.
//!
//! Numbers of different formats stand in tables of their own: a force of strength design is not the same thing as one of
//! allowable stress.

mod inputs;
mod samples;
mod steps;

use alloc::vec;
use alloc::vec::Vec;

pub use inputs::{Filled, fill, heights_m, spoken, storeys_of};
pub use samples::sample;

use super::{Picture, Shown, Study, StudyText};
use crate::calc::order::put_in_order;
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Kind, Sheet, Status, StepId};
use crate::geometry::{Hull, Point};
use crate::load_case::{Format, Level};
use crate::load_out;
use crate::project::{Project, Site, assess};
use crate::report::outcome::Verdict;
use crate::report::plot::{Axis, AxisScale, Curve, Plot, PlotName, PlotPoint, Stroke};
use crate::report::table::{Cell, Column, Line, Table};
use crate::rules::demand::{DEMAND_RULES, Demand};

/// The study.
pub static STUDY: Study = Study { id: "side-by-side", make };

/// Its texts.
pub static TEXT: StudyText = StudyText {
    id: "side-by-side",
    title: "What would every other rule ask for?",
    help: "The same cabinet under every rule: with your own values where a rule asks for the same thing, else with a place of the \
           rule’s own, listed below. It compares rules, not places: the ground under each is another one.",
    steps: &[&steps::TEXTS, &samples::TEXTS],
};

/// The formats, each with the names of its table and its plot.
static FORMATS: [(Format, StepId); 3] = [
    (Format::Strength, steps::STRENGTH),
    (Format::LimitStates, steps::LIMIT_STATES),
    (Format::AllowableStress, steps::ALLOWABLE_STRESS),
];

/// A rule with what came of it.
pub struct Compared {
    /// The rule and its inputs.
    pub filled: Filled,
    /// Format of its numbers.
    pub format: Format,
    /// Whether it is the project's own rule.
    pub is_own: bool,
    /// What it asks for; the reason where it does not reach; none where inputs are needed.
    pub demand: Option<Result<Demand, StepId>>,
}

/// Every rule of the registry, asked for this project.
pub fn compared(project: &Project) -> Vec<Compared> {
    let site = project.site.as_ref();
    let one = |rule: &&'static _| {
        let filled = fill(rule, site);
        let demand = filled
            .needed
            .is_empty()
            .then(|| (filled.rule.demand)(&filled.values, heaviest_n(project), &mut Sheet::quiet()));
        Compared {
            format: (filled.rule.format)(&filled.values),
            is_own: site.is_some_and(|site| core::ptr::eq(site.rule, filled.rule)),
            filled,
            demand,
        }
    };
    DEMAND_RULES.iter().map(one).collect()
}

/// The name of a rule in a table.
pub fn name_cell(id: &str) -> Cell {
    sample(id).map_or_else(|| Cell::Text(id.into()), |sample| Cell::Name(sample.name))
}

/// The name of a rule in a plot.
pub fn plot_name(id: &str) -> PlotName {
    sample(id).map_or_else(|| PlotName::Text(id.into()), |sample| PlotName::Row(sample.name))
}

fn heaviest_n(project: &Project) -> f64 {
    let loads = load_out::loads(&project.cabinet, &project.contents, &project.all_states());
    loads.iter().fold(0.0, |most, load| f64::max(most, load.mass_kg * G_N_PER_KG))
}

fn make(project: &Project, _extra: &str) -> Result<Shown, StepId> {
    let all = compared(project);
    let mut shown = Shown {
        notes: vec![steps::NOT_ONE_PLACE, steps::FORMATS_APART, steps::FACTORS, steps::HEIGHTS_TAKEN],
        ..Shown::default()
    };
    for (format, name) in FORMATS {
        let told: Vec<(&Compared, &Demand)> = all
            .iter()
            .filter(|one| one.format == format)
            .filter_map(|one| Some((one, one.demand.as_ref()?.as_ref().ok()?)))
            .collect();
        // One point compares nothing.
        if told.len() > 1 {
            shown.pictures.push(Picture::Plot(drawn(project, name, &told)));
        }
        if !told.is_empty() {
            shown.tables.push(table(project, name, &told));
        }
    }
    shown.tables.push(given(&all));
    shown.tables.extend(left_out(&all));
    if let Some(site) = &project.site {
        let mut sheet = Sheet::told();
        let _ = (site.rule.demand)(&site.values, heaviest_n(project), &mut sheet);
        shown.sections = sheet.sections;
    }
    Ok(shown)
}

/// The horizontal force over weight that anchors in concrete are designed for; none where the rule has none of its own.
fn anchors(demand: &Demand) -> Option<f64> {
    let for_anchors = demand.cases.iter().filter(|case| case.level != Level::Component);
    for_anchors.map(|case| case.horizontal).reduce(f64::max)
}

/// The push over weight in the load cases of the cabinet itself, with load factors.
fn factored(demand: &Demand) -> f64 {
    let pushed = demand.cases.iter().filter(|case| case.level == Level::Component);
    pushed.map(|case| case.horizontal).fold(0.0, f64::max)
}

/// The least downward load over weight among the cases of the cabinet itself.
fn least_down(demand: &Demand) -> f64 {
    let down = demand.cases.iter().filter(|case| case.level == Level::Component);
    down.map(|case| case.gravity + case.vertical).fold(f64::INFINITY, f64::min)
}

fn table(project: &Project, name: StepId, told: &[(&Compared, &Demand)]) -> Table {
    let columns = vec![
        Column::words(steps::RULE),
        Column::up(steps::PUSH, Kind::Acceleration),
        Column::words(steps::DECIDED),
        Column::up(steps::FACTORED, Kind::Acceleration),
        Column::down(steps::DOWN, Kind::Number),
        Column::up(steps::ANCHORS, Kind::Acceleration),
        Column::up(steps::UTILISATION, Kind::Utilisation),
        Column::words(steps::ANSWER),
    ];
    let row = |(one, demand): &(&Compared, &Demand)| {
        let (utilisation, status) = answer(project, one);
        let cells = vec![
            name_cell(one.filled.rule.id),
            Cell::Number(demand.push),
            Cell::Name(demand.governs),
            Cell::Number(factored(demand)),
            Cell::Number(least_down(demand)),
            anchors(demand).map_or(Cell::Nothing, Cell::Number),
            utilisation.map_or(Cell::Nothing, Cell::Number),
            Cell::Status(status),
        ];
        Line { cells, is_marked: one.is_own }
    };
    Table { name, columns, rows: told.iter().map(row).collect() }
}

/// What comes of the whole check with this rule in place of the project's: the highest utilisation, and whether it holds.
fn answer(project: &Project, one: &Compared) -> (Option<f64>, Status) {
    let site = Some(Site { rule: one.filled.rule, values: one.filled.values.clone() });
    let report = assess(&Project { site, ..project.clone() });
    let status = match report.verdict {
        Verdict::Holds => Status::Holds,
        Verdict::DoesNotHold => Status::Fails,
        Verdict::CannotBeSaid => Status::NotCovered,
    };
    // Where something required is not covered, the highest of what is left would look like an answer.
    let governs = report.governs.filter(|_| status != Status::NotCovered);
    (governs.and_then(|place| report.checks[place].utilisation), status)
}

fn given(all: &[Compared]) -> Table {
    let columns = vec![Column::words(steps::RULE), Column::words(steps::OWN), Column::words(steps::TAKEN)];
    let text = |text: alloc::string::String| if text.is_empty() { Cell::Nothing } else { Cell::Text(text) };
    let row = |one: &Compared| Line {
        cells: vec![name_cell(one.filled.rule.id), text(one.filled.own_text()), text(one.filled.taken_text())],
        is_marked: one.is_own,
    };
    Table { name: steps::GIVEN, columns, rows: all.iter().map(row).collect() }
}

/// Rules that need more, or that do not reach.
fn left_out(all: &[Compared]) -> Option<Table> {
    let why = |one: &Compared| match &one.demand {
        None => Some(Cell::Text(one.filled.needed_text())),
        Some(Err(reason)) => Some(Cell::Name(*reason)),
        Some(Ok(_)) => None,
    };
    let row = |one: &Compared| {
        let cells = vec![name_cell(one.filled.rule.id), why(one)?];
        Some(Line { cells, is_marked: one.is_own })
    };
    let rows: Vec<Line> = all.iter().filter_map(row).collect();
    let columns = vec![Column::words(steps::RULE), Column::words(steps::WHY)];
    (!rows.is_empty()).then_some(Table { name: steps::LEFT_OUT, columns, rows })
}

/// Each rule as a point by its push, from the least to the most; the upright line is the push at which the full cabinet
/// tips by its weight alone.
fn drawn(project: &Project, name: StepId, told: &[(&Compared, &Demand)]) -> Plot {
    let mut ranked: Vec<(&Compared, f64)> = told.iter().map(|(one, demand)| (*one, factored(demand))).collect();
    put_in_order(&mut ranked, |a, b| a.1.total_cmp(&b.1));
    let points = ranked.iter().enumerate().map(|(place, (one, push))| PlotPoint {
        name: plot_name(one.filled.rule.id),
        at: [*push, place as f64 + 1.0],
        is_present: one.is_own,
    });
    let top = ranked.len() as f64 + 1.0;
    let tips = tipping_push(project).map(|push| Curve {
        name: PlotName::Row(steps::TIPS),
        points: vec![[push, 0.0], [push, top]],
        stroke: Stroke::Dashed,
    });
    let most = ranked.last().map_or(1.0, |(_, push)| *push);
    let axis = |name, kind, end| Axis { name, kind, scale: AxisScale::Linear, ends: Some([0.0, end]) };
    Plot {
        name,
        // Room to the right of the last point for its name.
        x: axis(steps::FACTORED, Kind::Acceleration, 1.35 * most),
        y: axis(steps::RANK, Kind::Number, top),
        curves: tips.into_iter().collect(),
        points: points.collect(),
        levels: Vec::new(),
        grid: None,
    }
}

/// The push over weight at which the full cabinet tips over its nearest edge by its weight alone.
fn tipping_push(project: &Project) -> Option<f64> {
    let corners: Vec<Point> = project
        .cabinet
        .feet
        .iter()
        .flat_map(|foot| {
            let half = [foot.size.x_mm / 2.0, foot.size.y_mm / 2.0];
            [[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]]
                .map(|[x, y]| Point::new(foot.at.x_mm + x * half[0], foot.at.y_mm + y * half[1]))
        })
        .collect();
    let full = load_out::loads(&project.cabinet, &project.contents, &project.all_states()).into_iter().next()?;
    let [x, y, z] = full.centre_mm;
    let edge = Hull::new(&corners).nearest_edge(Point::new(x, y))?;
    (edge.distance_mm > 0.0).then(|| edge.distance_mm / z)
}
