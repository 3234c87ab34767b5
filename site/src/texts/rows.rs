//! Rows of the step tables: symbols, what they are, formulas as MathML templates, clauses, trust.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};
use steadfoot::calc::check::CHECK_TITLES;
use steadfoot::calc::formula::{symbol_mathml, typeset};
use steadfoot::calc::{CheckId, Document, Shape, StepText, Trust};
use steadfoot::study::tables;

/// All rows by their code.
pub fn rows() -> Value {
    let mut all = Map::new();
    for table in tables() {
        for (row, text) in table.rows.iter().enumerate() {
            all.insert((table.number as usize * 256 + row).to_string(), one(text));
        }
    }
    Value::Object(all)
}

/// The MathML of every symbol that a row or a formula names.
pub fn symbols() -> Value {
    let mut all = BTreeMap::new();
    for text in tables().iter().flat_map(|table| table.rows) {
        let mut take = |name: &str| {
            if !name.is_empty() && !matches!(text.shape, Shape::Name | Shape::Reason) {
                all.insert(name.to_string(), symbol_mathml(name));
            }
        };
        take(text.symbol);
        if let Shape::Formula(formula) = text.shape {
            typeset(formula).iter().flat_map(|set| &set.symbols).for_each(|name| take(name));
        }
    }
    json!(all)
}

/// Titles of the checks with the kind of their values.
pub fn checks() -> Value {
    let checks = CheckId::ALL.iter().zip(CHECK_TITLES).map(|(check, title)| {
        let told = json!({ "title": title, "kind": check.kind().code(), "section": check.section() });
        (check.id().to_string(), told)
    });
    Value::Object(checks.collect())
}

/// Full titles of the documents by their short names.
pub fn documents() -> Value {
    let mut all = BTreeMap::new();
    for text in tables().iter().flat_map(|table| table.rows) {
        let Document { short, title } = text.clause.document;
        all.insert(*short, *title);
    }
    json!(all)
}

fn one(text: &StepText) -> Value {
    let mut row = json!({
        "s": text.symbol,
        "w": text.what,
        "k": text.kind.code(),
        "c": format!("{} {}", text.clause.document.short, text.clause.number).trim_end(),
        "t": trust(text.trust),
        "h": shape(text.shape),
    });
    if let Shape::Formula(formula) = text.shape
        && let Ok(set) = typeset(formula)
    {
        row["f"] = json!(set.template);
        row["y"] = json!(set.symbols);
    }
    row
}

/// The word for how far a text can be trusted.
pub fn trust(trust: Trust) -> &'static str {
    match trust {
        Trust::Published => "published",
        Trust::Secondary => "secondary",
        Trust::Memory => "memory",
        Trust::Derived => "derived",
    }
}

fn shape(shape: Shape) -> &'static str {
    match shape {
        Shape::Given => "given",
        Shape::Formula(_) => "formula",
        Shape::Constant => "constant",
        Shape::Table => "table",
        Shape::Interpolated => "interpolated",
        Shape::Geometry => "geometry",
        Shape::Solved => "solved",
        Shape::Searched => "searched",
        Shape::Condition => "condition",
        Shape::Reason => "reason",
        Shape::Name => "name",
    }
}
