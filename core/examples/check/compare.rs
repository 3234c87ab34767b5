//! Two files held against each other, as text and as JSON.

use std::collections::BTreeMap;

use serde_json::{Value, json};
use steadfoot::calc::show::{Reading, Rounding, Style, show};
use steadfoot::calc::{CheckId, Kind, Status, StepId, System};
use steadfoot::explore::{Alone, CheckMoved, Compared, StepMoved, compare};
use steadfoot::input::difference::Change;
use steadfoot::project::{Project, input_name};
use steadfoot::report::cautions::CAUTIONS;
use steadfoot::report::outcome::{CheckTold, Verdict};
use steadfoot::report::text_tables::tables;

/// What differs between two projects.
pub fn compared(before: &Project, after: &Project) -> Compared {
    let rows = tables().into_iter().flat_map(|table| {
        let id = |row: usize| StepId::of(table.number, row as u8);
        table.rows.iter().enumerate().map(move |(row, text)| (id(row), text.uses()))
    });
    let uses: BTreeMap<StepId, String> = rows.collect();
    compare(before, after, &|id| uses.get(&id).cloned().unwrap_or_default())
}

/// As JSON, with the words of every step.
pub fn json(compared: &Compared) -> Value {
    let mut told = json!({ "compared": compared, "engine": steadfoot::VERSION, "cautions": CAUTIONS });
    let checks = told["compared"]["checks"].as_array_mut().into_iter().flatten();
    for (check, moved) in checks.zip(&compared.checks) {
        for (step, one) in check["steps"].as_array_mut().into_iter().flatten().zip(&moved.steps) {
            step["at"] = json!(address(one));
        }
    }
    told
}

/// As text: the answers, the inputs, the checks, and the steps from input to result.
pub fn text(compared: &Compared, [before, after]: [&Project; 2]) -> String {
    let mut text = String::new();
    for (word, side) in ["before", "after "].iter().zip(&compared.sides) {
        let verdict = match side.verdict {
            Verdict::Holds => "holds",
            Verdict::DoesNotHold => "does not hold",
            Verdict::CannotBeSaid => "cannot be said",
        };
        let governs = side.governs.map_or(String::new(), |id| format!(", {} governs", title(id)));
        text += &format!("{word}: {verdict}{governs}, fingerprint {} {}\n", side.fingerprint, side.title);
        if side.open > 0 {
            text += &format!(
                "        {} inputs are open there; its numbers stand for what stands in for them\n",
                side.open
            );
        }
    }
    text += &format!("\ninputs that differ: {}\n", compared.inputs.len());
    for (place, input) in compared.inputs.iter().enumerate() {
        let value = |value: &Option<String>| value.as_deref().map_or("–".into(), short);
        let what = match input.change {
            Change::Value => format!("{} -> {}", value(&input.before), value(&input.after)),
            Change::Added => format!("added: {}", value(&input.after)),
            Change::Removed => format!("removed: {}", value(&input.before)),
            Change::Renamed => format!("renamed: {} -> {}", value(&input.before), value(&input.after)),
            Change::Moved => format!("in another order: {} -> {}", value(&input.before), value(&input.after)),
        };
        let alone = match input.alone {
            Alone::Moves => "",
            Alone::MovesNothing => " (by itself moves no check)",
            Alone::NotAlone => " (cannot stand by itself)",
            Alone::NotTried => " (not tried by itself)",
        };
        // What stands in the first file only has its rule there.
        let of = if input.change == Change::Removed { before } else { after };
        let name = input_name(&input.path, of);
        text += &format!("  [{}] {name} ({}): {what}{alone}\n", place + 1, input.path);
    }
    text +=
        &format!("\nchecks that moved: {}, to the last bit the same: {}\n", compared.checks.len(), compared.unmoved);
    for check in &compared.checks {
        text += &of_check(check);
    }
    text.push('\n');
    CAUTIONS.iter().for_each(|caution| text += &format!("{caution}\n"));
    text
}

fn of_check(check: &CheckMoved) -> String {
    let side = |told: &Option<CheckTold>| told.as_ref().map_or("not told".into(), came);
    let mut text = format!("  {}: {} -> {}\n", title(check.id), side(&check.before), side(&check.after));
    for by in &check.by {
        let used = by.utilisation.map_or("no number".into(), utilisation);
        text += &format!("    by [{}] alone: {used}\n", by.input + 1);
    }
    for step in &check.steps {
        text += &format!("    {}\n", of_step(step));
    }
    text
}

fn of_step(step: &StepMoved) -> String {
    let row = steadfoot::report::text_tables::text(step.id);
    let style = Style {
        reading: Reading::Base,
        from: step.system,
        to: step.system,
        ..Style::plain(System::Si, Rounding::Nearest)
    };
    let value = |value: Option<f64>| match (value, row) {
        (Some(value), Some(row)) => show(value, row.kind, style),
        _ => "–".into(),
    };
    let arrow = if step.from.is_empty() { "* " } else { "  " };
    let more = if step.count > 1 { format!(" (moved most of {})", step.count) } else { String::new() };
    let what = row.map_or("", |row| row.what);
    format!("{arrow}{}: {} -> {}{more}  {what}", address(step), value(step.before), value(step.after))
}

/// `part/subject/check/symbol` of a step, as in a report.
fn address(step: &StepMoved) -> String {
    let part = serde_json::to_value(step.part).unwrap_or(Value::Null);
    let check = step.check.and_then(CheckId::named).map_or("-", CheckId::section);
    let symbol = steadfoot::report::text_tables::text(step.id).map_or("", |row| row.symbol);
    let index = if step.index > 0 { format!("[{}]", step.index) } else { String::new() };
    format!("{}/{}/{check}/{symbol}{index}", part.as_str().unwrap_or("-"), step.of)
}

fn came(check: &CheckTold) -> String {
    let word = match check.status {
        Status::Holds => "holds",
        Status::Fails => "fails",
        Status::NotNeeded => "not needed",
        Status::NotCovered => "not covered",
    };
    check.utilisation.map_or(word.into(), |used| format!("{} {word}", utilisation(used)))
}

fn utilisation(value: f64) -> String {
    show(value, Kind::Utilisation, Style::plain(System::Si, Rounding::Up))
}

fn title(id: &str) -> &'static str {
    CheckId::named(id).map_or("", CheckId::title)
}

/// A value as it was written, on one line.
fn short(value: &str) -> String {
    let line = value.split_whitespace().collect::<Vec<_>>().join(" ");
    if line.chars().count() <= 80 { line } else { line.chars().take(79).chain(['…']).collect() }
}
