//! Tables of the rules: what each is, where it stops, and for every line its clause and how far it can be trusted.

use std::collections::BTreeMap;

use anyhow::Context;
use serde_json::Value;
use steadfoot::calc::{Document, Shape, StepTable, StepText, Trust};
use steadfoot::load_case::Format;
use steadfoot::report::text_tables::tables;
use steadfoot::rules::anchor::{ANCHOR_RULE_TEXTS, ANCHOR_RULES};
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, DEMAND_RULES};

use super::{math, trust, words};
use crate::document::escaped;

/// Every rule with its document and where it stops.
pub fn rules() -> String {
    let mut html = String::from("<h3>Demand</h3>\n<dl class=\"rules\">\n");
    for (rule, text) in DEMAND_RULES.iter().zip(DEMAND_RULE_TEXTS) {
        html += &entry(text.title, rule.id, text.document, "", text.stops);
    }
    html += "</dl>\n<h3>Anchors</h3>\n<dl class=\"rules\">\n";
    for (rule, text) in ANCHOR_RULES.iter().zip(ANCHOR_RULE_TEXTS) {
        let format = match rule.format {
            Format::Strength => "Takes a demand of strength design with load factors.",
            Format::LimitStates => "Takes a demand of limit states with partial factors.",
            Format::AllowableStress => "Takes a demand of allowable stress.",
        };
        html += &entry(text.title, rule.id, text.document, format, text.stops);
    }
    html + "</dl>\n"
}

fn entry(title: &str, id: &str, document: &Document, format: &str, stops: &str) -> String {
    format!(
        "<dt>{} <code>{id}</code></dt>\n<dd><p>{}. {format}</p><p>Where it stops: {}</p></dd>\n",
        escaped(title),
        escaped(document.title.trim_end_matches('.')),
        math::with_symbols(stops),
    )
}

/// Where one rule stops, in its own words: `{"rule": "asce-7-16"}`.
pub fn stops(config: &Value) -> anyhow::Result<String> {
    let id = config["rule"].as_str().context("it is asked of a rule")?;
    let demand = DEMAND_RULE_TEXTS.iter().find(|text| text.id == id).map(|text| (text.title, text.stops));
    let anchor = ANCHOR_RULE_TEXTS.iter().find(|text| text.id == id).map(|text| (text.title, text.stops));
    let (title, stops) = demand.or(anchor).with_context(|| format!("there is no rule \"{id}\""))?;
    Ok(format!("<p><em>{}:</em> {}</p>\n", escaped(title), math::with_symbols(stops)))
}

/// Every document with the number of lines taken from it, by trust.
pub fn documents() -> String {
    let mut counts: BTreeMap<&str, (&str, [usize; 4])> = BTreeMap::new();
    for row in tables().into_iter().flat_map(|table| table.rows).filter(|row| row.shape != Shape::Reason) {
        let place = trust::ORDER.iter().position(|of| *of == row.trust).unwrap_or(0);
        let Document { short, title } = row.clause.document;
        counts.entry(short).or_insert((title, [0; 4])).1[place] += 1;
    }
    let head: String = trust::ORDER.iter().map(|&of| head_of(of)).collect();
    let mut body = String::new();
    for (short, (title, count)) in counts {
        let cell = |count: &usize| {
            let text = if *count == 0 { "–".into() } else { count.to_string() };
            format!("<td class=\"number\">{text}</td>")
        };
        let cells: String = count.iter().map(cell).collect();
        body += &format!("<tr><th scope=\"row\"><b>{}</b> {}</th>{cells}</tr>\n", escaped(short), escaped(title));
    }
    format!(
        "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"Documents\"><table>\n<thead><tr><th scope=\"col\">Document\
         </th>{head}</tr></thead>\n<tbody>\n{body}</tbody></table></div>\n"
    )
}

/// The head of a column that counts lines of this trust.
pub fn head_of(of: Trust) -> String {
    format!("<th scope=\"col\">{}</th>", words::sentence_case(words::trust(of)))
}

/// Every line of every table, table by table: symbol, what it is, how it comes about, clause, trust.
pub fn lines() -> String {
    let mut html = String::new();
    for (title, group) in groups() {
        let rows: Vec<&StepText> = group.iter().flat_map(|table| table.rows).filter(|row| is_told(row)).collect();
        if rows.is_empty() {
            continue;
        }
        let counted: Vec<String> = trust::ORDER
            .iter()
            .map(|of| (words::trust(*of), rows.iter().filter(|row| row.trust == *of).count()))
            .filter(|(_, count)| *count > 0)
            .map(|(word, count)| format!("{count} {word}"))
            .collect();
        let body: String = in_one_line(&rows).into_iter().map(line).collect();
        html += &format!(
            "<details class=\"lines\"><summary>{}: {} lines, {}</summary>\n<div class=\"wide\" tabindex=\"0\" role=\"group\" \
             aria-label=\"{0}\"><table>\n{body}</table></div></details>\n",
            escaped(title),
            rows.len(),
            counted.join(", "),
        );
    }
    html
}

/// The tables of each rule, and what is not a rule's.
fn groups() -> Vec<(&'static str, Vec<&'static StepTable>)> {
    let mut groups: Vec<(&str, Vec<&StepTable>)> = Vec::new();
    let mut of_rules: Vec<u8> = Vec::new();
    for rule in DEMAND_RULE_TEXTS {
        groups.push((rule.title, vec![rule.steps]));
        of_rules.push(rule.steps.number);
    }
    // Two editions of one standard share their tables; they are told once.
    for rule in ANCHOR_RULE_TEXTS {
        let new: Vec<_> = rule.steps.iter().copied().filter(|table| !of_rules.contains(&table.number)).collect();
        of_rules.extend(new.iter().map(|table| table.number));
        if !new.is_empty() {
            groups.push((rule.title, new));
        }
    }
    let of_floors = steadfoot::rules::floor::TABLES;
    of_rules.extend(of_floors.iter().map(|table| table.number));
    groups.push(("Floors: slabs, panels, wheels", of_floors.to_vec()));
    let rest = tables().into_iter().filter(|table| !of_rules.contains(&table.number));
    groups.push(("What is no rule's: load-out, base reactions, standing free, feet", rest.collect()));
    groups
}

/// Rows that a reader may want to hold against a document: not what was typed, and not names of the page's own.
fn is_told(row: &StepText) -> bool {
    let is_own_name = row.shape == Shape::Name && row.clause.number.is_empty();
    row.shape != Shape::Given && !is_own_name && !row.what.is_empty()
}

/// Rows of a choice that stand in one clause, such as the soils of a table, make one line.
fn in_one_line<'a>(rows: &'a [&StepText]) -> Vec<&'a [&'a StepText]> {
    rows.chunk_by(|a, b| a.shape == Shape::Name && b.shape == Shape::Name && a.clause == b.clause && a.trust == b.trust)
        .collect()
}

fn line(rows: &[&StepText]) -> String {
    let Some(row) = rows.first() else { return String::new() };
    let symbol = match row.shape {
        Shape::Name | Shape::Reason => String::new(),
        _ => format!("<math>{}</math>", math::symbol(row.symbol, 0)),
    };
    let what: Vec<String> = rows.iter().map(|row| math::with_symbols(row.what)).collect();
    let clause = super::check_list::clause(row.clause);
    format!(
        "<tr><td>{symbol}<td>{}<td>{}<td>{}<td>{}\n",
        what.join("; "),
        shape_word(row.shape),
        escaped(&clause),
        words::trust(row.trust),
    )
}

fn shape_word(shape: Shape) -> &'static str {
    match shape {
        Shape::Given => "given",
        Shape::Formula(_) => "formula",
        Shape::Constant => "constant",
        Shape::Table => "table",
        Shape::Interpolated => "interpolated",
        Shape::Geometry => "geometry",
        Shape::Solved => "solved",
        Shape::Searched => "searched",
        Shape::Condition => "case",
        Shape::Reason => "reason",
        Shape::Name => "name",
    }
}
