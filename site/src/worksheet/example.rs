//! A published example: what its source prints beside what the engine finds, and the working beneath.
//!
//! `{"block": "R4"}` names a block of the check values, `{"block": "EX-02", "case": "..."}` one of base reactions. `"working":
//! ["tension-breakout"]` tells the working of those checks or parts.

use std::borrow::Borrow;

use anyhow::{Context, anyhow};
use serde_json::Value;
use steadfoot::calc::{Section, Trust};
use steadfoot::report::text_tables::text;

use super::{math, trust, words, working::working};
use crate::check_value::{self, Block, Compared, Expect, block, part_word, statics};
use crate::document::escaped;

/// The example as a table.
pub fn example(config: &Value) -> anyhow::Result<String> {
    let name = config["block"].as_str().context("an example names its block")?;
    match config["case"].as_str() {
        Some(case) => of_statics(name, case),
        None => of_block(&block(name)?, &config["working"]),
    }
}

fn of_block(block: &Block, wanted: &Value) -> anyhow::Result<String> {
    let ran = check_value::told(&block.runs, &block.input)
        .map_err(|problem| anyhow!("{problem}"))
        .with_context(|| format!("check values {}", block.block))?;
    let mut rows = Vec::new();
    for expect in &block.expect {
        let compared = expect.compared(&ran.answers).map_err(|problem| anyhow!("{}: {problem}", block.block))?;
        let symbol = expect.at.rsplit('/').find(|word| word.parse::<u16>().is_err()).unwrap_or_default();
        let (bare, of_weight) = symbol.split_once('*').unwrap_or((symbol, ""));
        let described = described(expect, bare, &ran.sections);
        let mut what = described.map_or_else(|| named(bare), math::with_symbols);
        if !of_weight.is_empty() {
            what += ", as a force";
        }
        if let Some(factor) = expect.times {
            what += &format!(", times {factor}");
        }
        if let Some(divisor) = expect.divided_by {
            what += &format!(", divided by {divisor}");
        }
        let symbol = described.map(|_| math::math(&math::symbol(bare, 0)));
        rows.push(Row { what, symbol, unit: &expect.unit, compared, why: &expect.why });
    }
    let mut html = table(&rows, &block.trust);
    html += &source(&block.source, &block.trust, &block.note);
    let sections = wanted_sections(&ran.sections, wanted);
    if !sections.is_empty() {
        html += &format!(
            "<details class=\"example-working\"><summary>The working, step by step</summary>\n<div class=\"sheet\">{}</div></details>\n",
            working(sections)
        );
    }
    Ok(html)
}

/// The sections of these checks or parts; of equal ones, such as four like feet, the first.
fn wanted_sections<'a>(sections: &'a [Section], wanted: &Value) -> Vec<&'a Section> {
    let words: Vec<&str> = wanted.as_array().into_iter().flatten().filter_map(Value::as_str).collect();
    let mut found: Vec<&Section> = Vec::new();
    for section in sections {
        let word = section.check.map_or_else(|| part_word(section.part), |check| check.section().to_string());
        let is_known = found.iter().any(|known| known.part == section.part && known.check == section.check);
        if words.contains(&word.as_str()) && !is_known {
            found.push(section);
        }
    }
    found
}

/// What a step is, by the text of its row, if it has one.
fn described(expect: &Expect, symbol: &str, sections: &[Section]) -> Option<&'static str> {
    let words: Vec<&str> = expect.at.split('/').collect();
    let is_of_check = |section: &&Section| section.check.is_none_or(|check| words.contains(&check.section()));
    let steps = sections.iter().filter(is_of_check).flat_map(|section| &section.steps);
    steps.filter_map(|step| text(step.id)).find(|row| row.symbol == symbol).map(|row| row.what)
}

/// What has no text is called by its name: a letter is a symbol, a letter and a number are one with its place.
fn named(name: &str) -> String {
    let is_letter = |text: &str| text.trim_end_matches('\'').len() == 1;
    match name.split_once(' ') {
        Some((base, place)) if is_letter(base) => math::math(&math::symbol(&format!("{base}_{place}"), 0)),
        None if is_letter(name) => math::math(&math::symbol(name, 0)),
        _ => escaped(&words::sentence_case(name)),
    }
}

fn of_statics(name: &str, case: &str) -> anyhow::Result<String> {
    let sources = statics::sources()?;
    let found = sources.iter().find(|source| source.block == name);
    let found = found.with_context(|| format!("no base reactions are named \"{name}\""))?;
    let values: Vec<_> = found.values.iter().filter(|value| value.case == case).collect();
    let first = values.first().with_context(|| {
        let cases: Vec<_> = found.values.iter().map(|value| value.case.as_str()).collect();
        format!("{name} has no case \"{case}\"; it has {}", cases.join("; "))
    })?;
    let rows: Vec<_> = values
        .iter()
        .map(|value| {
            let (what, unit) = reading(&value.name);
            let what = if value.place > 0 { format!("{what} {}", value.place) } else { what.to_string() };
            Row { what, symbol: None, unit, compared: &value.compared, why: "" }
        })
        .collect();
    let note = format!("{}. {}.", found.title, words::sentence_case(&first.case));
    Ok(table(&rows, &found.trust) + &source(&words::sentence_case(&found.source), &found.trust, &note))
}

fn reading(name: &str) -> (&'static str, &'static str) {
    match name {
        "feet_kn" => ("Force of foot", "kN"),
        "anchors_kn" => ("Pull of anchor", "kN"),
        "contact_m2" => ("Pressed area of foot", "m²"),
        "peak_kpa" => ("Peak pressure", "kPa"),
        "peak_ksf" => ("Peak pressure", "ksf"),
        "tension_max_kn" => ("Largest pull", "kN"),
        "tension_second_kn" => ("Second largest pull", "kN"),
        "compression_max_kn" => ("Largest force of a foot", "kN"),
        "tension_max_n" => ("Largest pull", "N"),
        "pivot_far_n" => ("Pull of the far bolt, about the edge", "N"),
        "twist_nm" => ("Twist about the centroid", "N·m"),
        "shear_max_kn" => ("Largest shear of a bolt", "kN"),
        _ => ("Result", ""),
    }
}

/// One value as its source prints it and as it is computed here.
struct Row<'a, C> {
    /// What it is, as markup.
    what: String,
    symbol: Option<String>,
    unit: &'a str,
    compared: C,
    why: &'a str,
}

impl<C: Borrow<Compared>> Row<'_, C> {
    fn html(&self, has_symbols: bool) -> String {
        let compared = self.compared.borrow();
        let unit = match self.unit {
            "" => String::new(),
            "deg" => "°".to_string(),
            unit => format!(" {}", unit.replace('-', "·").replace("m2", "m²").replace("in2", "in²")),
        };
        let verdict = match (compared.is_met(), self.why.is_empty()) {
            (true, true) => "agrees".to_string(),
            (true, false) => format!("agrees; {}", escaped(&self.why.replace("in2", "in²"))),
            (false, _) => "<b>differs</b>".to_string(),
        };
        let symbol = has_symbols.then(|| format!("<td>{}</td>", self.symbol.as_deref().unwrap_or_default()));
        format!(
            "<tr><td>{}</td>{}<td class=\"number\">{}{unit}</td><td class=\"number\">{}{unit}</td><td>{verdict}</td></tr>\n",
            self.what,
            symbol.unwrap_or_default(),
            escaped(&compared.printed.replace('-', "\u{2212}")),
            compared.found_text(),
        )
    }
}

/// The rows under their heads; symbols have a column only where there are some beside words.
fn table<C: Borrow<Compared>>(rows: &[Row<C>], trust: &str) -> String {
    let has_symbols = rows.iter().any(|row| row.symbol.is_some());
    let (symbols, symbol) = if has_symbols { (" symbols", "<th scope=\"col\">Symbol</th>") } else { ("", "") };
    let theirs = if trust == "derived" { "By hand" } else { "Printed" };
    let rows: String = rows.iter().map(|row| row.html(has_symbols)).collect();
    format!(
        "<div class=\"wide example{symbols}\" tabindex=\"0\" role=\"group\" aria-label=\"{theirs} and computed\"><table>\n<thead><tr>\
         <th scope=\"col\">What</th>{symbol}<th scope=\"col\">{theirs}</th><th scope=\"col\">Computed here</th>\
         <td></td></tr></thead>\n<tbody>\n{rows}</tbody></table></div>\n"
    )
}

fn source(source: &str, trusted: &str, note: &str) -> String {
    let of = trust::ORDER.into_iter().find(|of| words::trust(*of) == trusted).unwrap_or(Trust::Memory);
    let note = if note.is_empty() { String::new() } else { format!(" {}", escaped(note)) };
    format!(
        "<p class=\"source-line\">{} {trusted}: {}.{note}</p>\n",
        trust::mark(of),
        escaped(without_scheme(source).trim_end_matches('.')),
    )
}

/// An address is told, not linked: the guide leads nowhere by itself.
pub fn without_scheme(source: &str) -> String {
    source.replace("https://", "").replace("http://", "")
}
