//! Rows of the step tables: symbols, what they are, formulas as MathML templates, clauses, trust.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};
use steadfoot::calc::formula::{symbol_mathml, typeset};
use steadfoot::calc::{CheckId, Shape, StepText, Trust};
use steadfoot::study::tables;

/// The rows that are wanted, as columns: what stands in most rows alike is written once, and what is left packs well.
/// `texts.js` of the page makes rows of them again.
pub fn columns(is_wanted: impl Fn(usize) -> bool) -> Value {
    let mut runs: Vec<(usize, usize)> = Vec::new();
    let mut clauses: Vec<String> = Vec::new();
    let mut columns: BTreeMap<&str, Vec<Value>> = BTreeMap::new();
    let (mut trusts, mut shapes) = (String::new(), String::new());
    for (code, text) in rows().filter(|(code, _)| is_wanted(*code)) {
        match runs.last_mut() {
            Some((first, count)) if *first + *count == code => *count += 1,
            _ => runs.push((code, 1)),
        }
        let clause = cited(text.clause.document.short, text.clause.number);
        let place = clauses.iter().position(|known| *known == clause).unwrap_or_else(|| {
            clauses.push(clause);
            clauses.len() - 1
        });
        let mut put = |column, value| columns.entry(column).or_default().push(value);
        put("s", json!(text.symbol));
        put("w", json!(text.what));
        put("k", json!(text.kind.code()));
        put("c", json!(place));
        trusts.push(trust_letter(text.trust));
        shapes.push(shape_letter(text.shape));
        if let Shape::Formula(formula) = text.shape {
            let set = typeset(formula).ok();
            put("f", json!(set.as_ref().map_or("", |set| set.template.as_str())));
            put("y", json!(set.map(|set| set.symbols.join(" ")).unwrap_or_default()));
        }
    }
    let mut told = json!(columns);
    told["runs"] = json!(runs);
    told["clauses"] = json!(clauses);
    told["t"] = json!(trusts);
    told["h"] = json!(shapes);
    told
}

/// All rows of all tables with their codes.
fn rows() -> impl Iterator<Item = (usize, &'static StepText)> {
    tables()
        .into_iter()
        .flat_map(|table| table.rows.iter().enumerate().map(|(row, text)| (table.number as usize * 256 + row, text)))
}

/// The document with the number of the clause; what is no document but a plain word stands before a colon.
pub fn cited(document: &str, number: &str) -> String {
    let between = match (number.is_empty(), document.starts_with(char::is_lowercase)) {
        (true, _) => "",
        (false, true) => ": ",
        (false, false) => " ",
    };
    [document, between, number].concat()
}

/// The MathML of every symbol that a row or a formula names.
pub fn symbols() -> BTreeMap<String, String> {
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
    all
}

/// The names that could be symbols in the rows that are wanted: in their formulas and in their prose.
pub fn words(is_wanted: impl Fn(usize) -> bool) -> BTreeSet<String> {
    let mut all = BTreeSet::new();
    let is_part = |character: char| character.is_alphanumeric() || character == '_' || character == '\'';
    for (_, text) in rows().filter(|(code, _)| is_wanted(*code)) {
        all.insert(text.symbol.to_string());
        all.extend(text.what.split(|character| !is_part(character)).map(str::to_string));
        if let Shape::Formula(formula) = text.shape {
            all.extend(typeset(formula).into_iter().flat_map(|set| set.symbols).map(|name| name.to_string()));
        }
    }
    all
}

/// Titles of the checks that are wanted, with the kind of their values.
pub fn checks(is_wanted: impl Fn(&str) -> bool) -> Value {
    let checks = CheckId::ALL.iter().filter(|check| is_wanted(check.id())).map(|check| {
        let told = json!({ "title": check.title(), "kind": check.kind().code(), "section": check.section() });
        (check.id().to_string(), told)
    });
    Value::Object(checks.collect())
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

fn trust_letter(trust: Trust) -> char {
    match trust {
        Trust::Published => 'p',
        Trust::Secondary => 's',
        Trust::Memory => 'm',
        Trust::Derived => 'd',
    }
}

fn shape_letter(shape: Shape) -> char {
    match shape {
        Shape::Given => 'g',
        Shape::Formula(_) => 'f',
        Shape::Constant => 'k',
        Shape::Table => 't',
        Shape::Interpolated => 'i',
        Shape::Geometry => 'a',
        Shape::Solved => 's',
        Shape::Searched => 'b',
        Shape::Condition => 'c',
        Shape::Reason => 'r',
        Shape::Name => 'n',
    }
}
