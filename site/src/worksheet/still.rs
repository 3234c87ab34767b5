//! What stands in a worksheet until the page's code brings it to life, and for readers without scripts for good.

use serde_json::Value;
use steadfoot::report::answer::Topic;

use super::answer::answer;
use super::assessed::{Assessed, of_config};
use super::assessed_tables::{cases, states};
use super::check_list::{Headings, check_list};
use super::drawings::{View, of_governing};
use super::kind::{Kind, Table, kind};
use super::{hall, owner, study, words};
use crate::document::escaped;

/// The worksheet of a kind for the example that stands in it.
pub fn still(word: &str, config: &Value) -> anyhow::Result<String> {
    let kind = kind(word)?;
    if kind.word == "hall" {
        return hall::still(config["title"].as_str().unwrap_or(kind.title));
    }
    let assessed = of_config(config)?;
    let topics = topics(kind, config);
    let views = views(kind, config)?;
    // The whole check has a page to itself, whose heading says it already.
    let title = match config["title"].as_str().unwrap_or(kind.title) {
        _ if kind.word == "check" => String::new(),
        title => format!("<h2>{}</h2> ", escaped(title)),
    };
    let mut html = format!(
        "<div class=\"sheet still {word}\">\n<div class=\"worksheet-head\">{title}\
         <span class=\"whose\">Worked out for an example: {}</span></div>\n",
        escaped(&assessed.title),
    );
    html += &answer(&assessed.report, &topics);
    html += "<div class=\"results\">\n";
    if !views.is_empty() {
        html += &of_governing(&assessed, &views, drawn_checks(kind));
    }
    if let Some(prefix) = kind.checks {
        let headings = if kind.word == "check" { Headings::Written } else { Headings::Left };
        html += &check_list(&assessed, headings, |id| id.starts_with(prefix));
    }
    for id in kind.studies {
        html += &study::of_project(id, &assessed.project)?;
    }
    if kind.word == "ask-the-owner" {
        html += &owner::questions(&assessed)?;
    }
    if kind.word == "check" {
        html += "<h2>What was assessed</h2>\n";
    }
    for table in kind.tables {
        html += &match table {
            Table::States => states(&assessed),
            Table::Cases => cases(&assessed),
        };
    }
    if kind.word == "check" {
        html += &absent(&assessed);
    }
    Ok(html + "</div>\n</div>")
}

/// Which checks a worksheet's drawings are about: its own where it tips or presses, else whatever governs.
fn drawn_checks(kind: &Kind) -> &'static str {
    match kind.word {
        "standing-free" => "free.tipping",
        "feet" => "foot.",
        "slab" => "slab.",
        _ => "",
    }
}

fn absent(assessed: &Assessed) -> String {
    let line = |&code: &u16| format!("<li>{}.</li>\n", escaped(&words::sentence_case(words::row(code))));
    let lines: String = assessed.report.absent.iter().map(line).collect();
    if lines.is_empty() { lines } else { format!("<ul class=\"absent\">\n{lines}</ul>\n") }
}

/// A worksheet may tell less, or more, than its kind.
fn topics(kind: &Kind, config: &Value) -> Vec<Topic> {
    let Some(words) = config["answer"].as_array() else { return kind.topics.to_vec() };
    let of = |word: &Value| match word.as_str() {
        Some("bolted") => Some(Topic::Bolted),
        Some("free") => Some(Topic::Free),
        Some("uncovered") => Some(Topic::Uncovered),
        Some("governs") => Some(Topic::Governs),
        _ => None,
    };
    words.iter().filter_map(of).collect()
}

fn views(kind: &Kind, config: &Value) -> anyhow::Result<Vec<View>> {
    match &config["drawing"] {
        Value::Null => Ok(kind.views.to_vec()),
        Value::String(word) if word == "all" => Ok(vec![View::Plan, View::Elevation, View::Rose]),
        Value::String(word) => Ok(vec![View::of(word)?]),
        Value::Array(words) => words.iter().map(|word| View::of(word.as_str().unwrap_or_default())).collect(),
        _ => Ok(Vec::new()),
    }
}
