//! A published example: what its source prints beside what the engine finds, and the working beneath.
//!
//! `{"block": "R4"}` names a block of the check values, `{"block": "EX-02", "case": "..."}` one of base reactions. `"working":
//! ["tension-breakout"]` tells the working of those checks or parts.

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
    let mut rows = String::new();
    for expect in &block.expect {
        let compared = expect.compared(&ran.answers).map_err(|problem| anyhow!("{}: {problem}", block.block))?;
        let symbol = expect.at.rsplit('/').find(|word| word.parse::<u16>().is_err()).unwrap_or_default();
        let (bare, of_weight) = symbol.split_once('*').unwrap_or((symbol, ""));
        let mut what = described(expect, bare, &ran.sections);
        if !of_weight.is_empty() {
            what += ", as a force";
        }
        if let Some(factor) = expect.times {
            what += &format!(", times {factor}");
        }
        if let Some(divisor) = expect.divided_by {
            what += &format!(", divided by {divisor}");
        }
        rows += &row(&what, &math::math(&math::symbol(bare, 0)), &expect.unit, &compared, &expect.why);
    }
    let mut html = table(&rows, Columns { has_symbols: true, trust: &block.trust });
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

/// What a step is, by the text of its row.
fn described(expect: &Expect, symbol: &str, sections: &[Section]) -> String {
    let words: Vec<&str> = expect.at.split('/').collect();
    let is_of_check = |section: &&Section| section.check.is_none_or(|check| words.contains(&check.section()));
    let steps = sections.iter().filter(is_of_check).flat_map(|section| &section.steps);
    let row = steps.filter_map(|step| text(step.id)).find(|row| row.symbol == symbol);
    row.map_or_else(|| symbol.to_string(), |row| row.what.to_string())
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
    let mut rows = String::new();
    for value in &values {
        let (what, unit) = reading(&value.name);
        let what = if value.place > 0 { format!("{what} {}", value.place) } else { what.to_string() };
        rows += &row(&what, "", unit, &value.compared, "");
    }
    let note = format!("{}. {}.", found.title, words::sentence_case(&first.case));
    let columns = Columns { has_symbols: false, trust: &found.trust };
    Ok(table(&rows, columns) + &source(&words::sentence_case(&found.source), &found.trust, &note))
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

fn row(what: &str, symbol: &str, unit: &str, compared: &Compared, why: &str) -> String {
    let unit = unit.replace("mm2", "mm²").replace("in2", "in²").replace("-", "·");
    let unit = unit.replace("kg·m2", "kg·m²");
    let verdict = match (compared.is_met(), why.is_empty()) {
        (true, true) => "agrees".to_string(),
        (true, false) => format!("agrees; {}", escaped(&why.replace("in2", "in²"))),
        (false, _) => "<b>differs</b>".to_string(),
    };
    let symbol = if symbol.is_empty() { String::new() } else { format!("<td>{symbol}</td>") };
    format!(
        "<tr><td>{}</td>{symbol}<td class=\"number\">{} {unit}</td><td class=\"number\">{} {unit}</td><td>{verdict}</td></tr>\n",
        math::with_symbols(what),
        escaped(&compared.printed),
        compared.found_text(),
    )
}

/// What the columns of an example are called.
struct Columns<'a> {
    has_symbols: bool,
    trust: &'a str,
}

fn table(rows: &str, columns: Columns) -> String {
    let symbol = if columns.has_symbols { "<th scope=\"col\">Symbol</th>" } else { "" };
    let theirs = if columns.trust == "derived" { "By hand" } else { "Printed" };
    format!(
        "<div class=\"wide example\" tabindex=\"0\" role=\"group\" aria-label=\"{theirs} and computed\"><table>\n<thead><tr>\
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
