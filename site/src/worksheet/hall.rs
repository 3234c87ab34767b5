//! The hall of the example: its rows assessed when the guide is made, as table, plan and numbers in prose.

use std::fs;
use std::sync::OnceLock;

use anyhow::{Context, anyhow, bail};
use serde_json::{Value, json};
use steadfoot::calc::Kind;
use steadfoot::calc::show::Rounding::{Nearest, Up};
use steadfoot::hall::{Hall, HallPlan, Row, Schedule};
use steadfoot::report::outcome::Verdict;

use super::words;
use crate::document::escaped;
use crate::workspace::Workspace;

const HALL: &str = "hall.json";
const SCHEDULE: &str = "schedule.csv";
/// Outcomes in the order in which they are told, with the names of their classes.
const OUTCOMES: [(&str, &str); 4] = [
    ("does_not_hold", "does not hold"),
    ("cannot_be_said", "cannot be said"),
    ("faults", "has faults"),
    ("holds", "holds"),
];
/// Hatching of the outcomes in a square of eight units, as the page has it.
const HATCHES: [(&str, &str); 3] = [
    ("does_not_hold", "M0 0L8 8M8 0L0 8M4 -4L12 4M-4 4L4 12M-4 4L4 -4M4 12L12 4"),
    ("cannot_be_said", "M-2 10L10 -2M-2 2L2 -2M6 10L10 6"),
    ("faults", "M1.5 2H2.5M5.5 6H6.5"),
];
const PLAN_WIDTH: f64 = 720.0;

struct Example {
    hall: Hall,
    texts: [String; 2],
    rows: Vec<Row>,
}

/// What the live worksheet begins with.
pub fn config(config: &Value) -> anyhow::Result<Value> {
    let [hall, schedule] = &example()?.texts;
    let mut config = config.clone();
    config["hall"] = json!(hall);
    config["hallName"] = json!(HALL);
    config["schedule"] = json!(schedule);
    config["scheduleName"] = json!(SCHEDULE);
    Ok(config)
}

/// Counts, plan and table of the example.
pub fn still(title: &str) -> anyhow::Result<String> {
    let example = example()?;
    let mut html = format!(
        "<div class=\"sheet still hall\">\n<div class=\"worksheet-head\"><h2>{}</h2> \
         <span class=\"whose\">Worked out for an example: {}</span></div>\n<ul class=\"hall-summary\">\n",
        escaped(title),
        escaped(&example.hall.title),
    );
    for (outcome, words) in OUTCOMES {
        let of = |row: &&Row| outcome_of(row) == outcome;
        let places: Vec<&str> = example.rows.iter().filter(of).map(|row| row.place.as_str()).collect();
        let names = if outcome == "holds" { String::new() } else { places.join(", ") };
        html += &format!(
            "<li data-outcome=\"{outcome}\" data-count=\"{0}\">{1}<b>{0}</b> {words} <span class=\"note\">{2}</span></li>\n",
            places.len(),
            swatch(outcome),
            escaped(&names)
        );
    }
    html += "</ul>\n<figure class=\"figure\">";
    html += &plan(example);
    html += "<figcaption>Plan of the hall to scale; a thick line is the front of a cabinet</figcaption></figure>\n";
    html += &table(example);
    Ok(html + "</div>")
}

/// A number of the example for prose: `rows`, `count OUTCOME`, `utilisation PLACE`, `governs PLACE`, `reason PLACE`.
pub fn number(query: &str) -> anyhow::Result<String> {
    let example = example()?;
    let (asked, of) = query.split_once(' ').unwrap_or((query, ""));
    let place = || example.rows.iter().find(|row| row.place == of).with_context(|| format!("no place \"{of}\""));
    let found = || place()?.outcome.as_ref().with_context(|| format!("\"{of}\" has faults"));
    Ok(match asked {
        "rows" => example.rows.len().to_string(),
        "count" => example.rows.iter().filter(|row| outcome_of(row) == of).count().to_string(),
        "utilisation" => words::plain(found()?.utilisation.context("no number")?, Kind::Utilisation, Up),
        "governs" => words::check_title(found()?.governs.context("nothing governs")?).to_lowercase(),
        "reason" => words::row(found()?.reason.context("it is covered")?).to_string(),
        "fault" => place()?.faults.first().context("it has no fault")?.sentence(),
        other => bail!("a hall has no \"{other}\""),
    })
}

fn example() -> anyhow::Result<&'static Example> {
    static EXAMPLE: OnceLock<Result<Example, String>> = OnceLock::new();
    EXAMPLE
        .get_or_init(|| assessed().map_err(|error| format!("{error:#}")))
        .as_ref()
        .map_err(|error| anyhow!("{error}"))
}

fn assessed() -> anyhow::Result<Example> {
    let folder = Workspace::here()?.demo_configs().join("hall");
    let text = |file: &str| fs::read_to_string(folder.join(file)).with_context(|| format!("demo-configs/hall/{file}"));
    let texts = [text(HALL)?, text(SCHEDULE)?];
    let told = |faults: Vec<steadfoot::input::Fault>| anyhow!("{}", faults[0].sentence());
    let hall = Hall::read(&texts[0]).map_err(told)?;
    let mut schedule = Schedule::new();
    schedule.push(texts[1].as_bytes());
    schedule.finish();
    let (mut rows, mut plan) = (Vec::new(), HallPlan::new());
    while let Some(mut record) = schedule.record().map_err(told)? {
        let head = schedule.head().context("the schedule has no head")?;
        plan.stand(&hall, head, &mut record);
        rows.push(hall.row(head, &record));
    }
    Ok(Example { hall, texts, rows })
}

fn outcome_of(row: &Row) -> &'static str {
    match row.outcome.as_ref().map(|found| found.verdict) {
        Some(Verdict::Holds) => "holds",
        Some(Verdict::DoesNotHold) => "does_not_hold",
        Some(Verdict::CannotBeSaid) => "cannot_be_said",
        None => "faults",
    }
}

/// `scale` is of both axes; in the plan y points upwards.
fn hatch(outcome: &str, id: &str, scale: &str) -> String {
    let Some((_, path)) = HATCHES.iter().find(|(known, _)| *known == outcome) else { return String::new() };
    format!(
        "<pattern id=\"{id}\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\" patternTransform=\"scale({scale})\">\
         <path class=\"hatch {outcome}\" d=\"{path}\"></path></pattern>"
    )
}

fn fill(outcome: &str, id: &str) -> String {
    if outcome == "holds" { "none".into() } else { format!("url(#{id})") }
}

fn swatch(outcome: &str) -> String {
    let id = format!("hall-still-swatch-{outcome}");
    format!(
        "<svg class=\"hall-swatch\" width=\"30\" height=\"18\" viewBox=\"0 0 30 18\" aria-hidden=\"true\"><defs>{}</defs>\
         <rect class=\"base {outcome}\" x=\"1\" y=\"1\" width=\"28\" height=\"16\" fill=\"{}\"></rect></svg>",
        hatch(outcome, &id, "1"),
        fill(outcome, &id)
    )
}

fn plan(example: &Example) -> String {
    let standing = || example.rows.iter().filter_map(|row| Some((row, row.standing?)));
    let corners = || standing().filter_map(|(row, standing)| Some((row, standing.corners_mm?)));
    let points = || example.hall.outline_mm.iter().copied().chain(corners().flat_map(|(_, corners)| corners));
    let least = |axis: usize| points().map(|point| point[axis]).fold(f64::INFINITY, f64::min);
    let most = |axis: usize| points().map(|point| point[axis]).fold(f64::NEG_INFINITY, f64::max);
    let (low, high) = ([least(0), least(1)], [most(0), most(1)]);
    let margin = 0.03 * (high[0] - low[0]).max(high[1] - low[1]);
    let (width, height) = (high[0] - low[0] + 2.0 * margin, high[1] - low[1] + 2.0 * margin);
    let unit = width / PLAN_WIDTH;
    let closed = |points: &[[f64; 2]]| {
        let texts: Vec<String> = points.iter().map(|[x, y]| format!("{x:.1} {y:.1}")).collect();
        format!("M{}Z", texts.join("L"))
    };
    let (mut hatches, mut paths, mut fronts, mut names) = (String::new(), String::new(), String::new(), String::new());
    for (outcome, _) in OUTCOMES {
        let id = format!("hall-still-{outcome}");
        hatches += &hatch(outcome, &id, &format!("{unit} {}", -unit));
        let of: Vec<_> = corners().filter(|(row, _)| outcome_of(row) == outcome).collect();
        let all: String = of.iter().map(|(_, corners)| closed(corners)).collect();
        let (count, fill) = (of.len(), fill(outcome, &id));
        paths += &format!(
            "<path class=\"base {outcome}\" data-outcome=\"{outcome}\" data-count=\"{count}\" d=\"{all}\" fill=\"{fill}\"></path>"
        );
    }
    for (_, [left, right, ..]) in corners() {
        fronts += &format!("M{:.1} {:.1}L{:.1} {:.1}", left[0], left[1], right[0], right[1]);
    }
    for (row, standing) in standing() {
        let [x, y] = standing.at_mm;
        names += &format!(
            "<text x=\"{x:.1}\" y=\"{:.1}\" font-size=\"{:.1}\" stroke-width=\"{:.1}\" text-anchor=\"middle\">{}</text>",
            4.0 * unit - y,
            11.0 * unit,
            3.0 * unit,
            escaped(&row.place)
        );
    }
    format!(
        "<svg class=\"hall-plan\" width=\"{PLAN_WIDTH}\" height=\"{:.0}\" viewBox=\"{:.1} {:.1} {width:.1} {height:.1}\" \
         role=\"img\" aria-label=\"Plan of the hall\"><defs>{hatches}</defs><g transform=\"scale(1 -1)\">\
         <path class=\"outline\" d=\"{}\"></path>{paths}<path class=\"front\" d=\"{fronts}\"></path></g>{names}</svg>",
        PLAN_WIDTH * height / width,
        low[0] - margin,
        -high[1] - margin,
        closed(&example.hall.outline_mm)
    )
}

fn table(example: &Example) -> String {
    let heads = [
        ("number", "Row"),
        ("place", "Place"),
        ("type", "Type"),
        ("load-out", "Load-out"),
        ("floor", "Floor"),
        ("storey", "Storey"),
        ("outcome", "Outcome"),
        ("utilisation", "Used"),
        ("mass", "Mass"),
        ("why", "What decides"),
    ];
    let head: String = heads.iter().map(|(_, head)| format!("<th scope=\"col\">{head}</th>")).collect();
    let mut body = String::new();
    for row in &example.rows {
        let outcome = outcome_of(row);
        let words = OUTCOMES.iter().find(|(known, _)| *known == outcome).map_or("", |(_, words)| words);
        let found = row.outcome.as_ref();
        let cells = [
            row.number.to_string(),
            row.place.clone(),
            row.type_name.clone(),
            row.load_out.clone(),
            row.floor.clone(),
            row.storey.clone(),
            words.into(),
            found
                .and_then(|found| found.utilisation)
                .map_or("–".into(), |used| words::plain(used, Kind::Utilisation, Up)),
            found.map_or("–".into(), |found| words::plain(found.mass_kg, Kind::Mass, Nearest)),
            why(row),
        ];
        let cells: String = cells
            .iter()
            .zip(heads)
            .map(|(cell, (class, _))| format!("<td class=\"{class}\">{}</td>", escaped(cell)))
            .collect();
        body +=
            &format!("<tr class=\"{outcome}\" data-row=\"{}\" data-outcome=\"{outcome}\">{cells}</tr>\n", row.number);
    }
    format!(
        "<div class=\"hall-scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Cabinets of the hall\">\
         <table class=\"hall-table\">\n<thead><tr>{head}</tr></thead>\n<tbody>\n{body}</tbody></table></div>\n"
    )
}

fn why(row: &Row) -> String {
    let Some(found) = &row.outcome else { return row.faults.first().map_or(String::new(), |fault| fault.sentence()) };
    match (found.verdict, found.not_covered, found.reason) {
        (Verdict::CannotBeSaid, Some(check), Some(reason)) => {
            format!("{} is not covered: {}", words::check_title(check), words::row(reason))
        }
        _ => found.governs.map_or(String::new(), |check| format!("{}, {}", words::check_title(check), found.of)),
    }
}
