//! Results as plain text.

use steadfoot::calc::show::{Rounding, Style, show};
use steadfoot::calc::{CheckId, Kind, Role, Status, System};
use steadfoot::explore;
use steadfoot::project::Project;
use steadfoot::report::cautions::CAUTIONS;
use steadfoot::report::not_known::{NotKnown, Part, ValueTold};
use steadfoot::report::outcome::{CheckTold, Report};
use steadfoot::report::print_sentence;
use steadfoot::report::text_tables::text_of_code;

/// The answer, the checks and the cautions.
pub fn report(project: &Project) -> String {
    let report = explore::assess_open(project);
    let mut text = String::new();
    if !project.title.is_empty() {
        text.push_str(&format!("{}\n", project.title));
    }
    text.push_str(&format!("{}\n\n", answer(&report)));
    if let Some(not_known) = &report.unknown {
        text.push_str(&self::not_known(not_known));
    }
    for check in &report.checks {
        text.push_str(&line(check));
    }
    for row in report.absent.iter().filter_map(|&row| text_of_code(row)) {
        text.push_str(&format!("  not checked: {}\n", row.what));
    }
    text.push('\n');
    for caution in CAUTIONS {
        text.push_str(&format!("{caution}\n"));
    }
    let rules = [report.demand_rule, report.anchor_rule].map(|rule| rule.unwrap_or("no rule"));
    text.push_str(&format!("fingerprint {}, engine {}, {}\n", report.fingerprint, report.engine, rules.join(", ")));
    text
}

/// The answer in SI.
pub fn answer(report: &Report) -> String {
    let sentences: Vec<String> = report.answer.iter().map(|one| print_sentence(one, System::Si)).collect();
    sentences.join(" ")
}

/// What is not known, where it fails first, and what knowing each would decide.
fn not_known(told: &NotKnown) -> String {
    let kind = |input: usize| Kind::from_code(told.inputs[input].kind).unwrap_or(Kind::Number);
    let value = |input: usize, value: &ValueTold| match value {
        ValueTold::Number(number) => show(*number, kind(input), Style::plain(System::Si, Rounding::Nearest)),
        ValueTold::Word(word) => word.to_string(),
    };
    let mut text = String::new();
    for (place, input) in told.inputs.iter().enumerate() {
        let may_be: Vec<String> = input.may_be.iter().map(|one| value(place, one)).collect();
        let joint = if matches!(input.may_be[0], ValueTold::Number(_)) { " to " } else { " or " };
        text.push_str(&format!("  not known: {}, {}\n", input.path, may_be.join(joint)));
    }
    let Some(tried) = &told.tried else { return text };
    for (what, point) in [("nearest that does not hold", &tried.nearest), ("least to spare", &tried.closest)] {
        let Some(point) = point else { continue };
        let name = |(place, one): (usize, &ValueTold)| format!("{} {}", told.inputs[place].path, value(place, one));
        let values: Vec<String> = point.values.iter().enumerate().map(name).collect();
        let title = point.governs.and_then(CheckId::named).map_or("", CheckId::title);
        let used = point.utilisation.map_or(String::new(), |used| {
            format!(", {}", show(used, Kind::Utilisation, Style::plain(System::Si, Rounding::Up)))
        });
        let why = point.fault.as_deref().unwrap_or(title);
        text.push_str(&format!("  {what}: {}: {why}{used}\n", values.join(", ")));
    }
    for settles in &tried.settles {
        let part = |part: &Part| {
            let ends = [&part.from, &part.to].map(|end| value(settles.input, end));
            let range = if ends[0] == ends[1] { ends[0].clone() } else { ends.join(" to ") };
            format!("{range} holds in {} of {}", part.holds, part.tried)
        };
        let parts: Vec<String> = settles.parts.iter().map(part).collect();
        let (path, percent) = (&told.inputs[settles.input].path, (100.0 * settles.decides).round());
        text.push_str(&format!("  knowing {path} decides over {percent} % of what it may be: {}\n", parts.join("; ")));
    }
    text
}

fn line(check: &CheckTold) -> String {
    let title = CheckId::named(check.id).map_or("", CheckId::title);
    let word = match check.status {
        Status::Holds => "holds",
        Status::Fails => "fails",
        Status::NotNeeded => "not needed",
        Status::NotCovered => "not covered",
    };
    let role = match check.role {
        Role::Required => "",
        Role::BeforeBolting => " (before bolting)",
        Role::Information => " (for information)",
    };
    let utilisation = |value| show(value, Kind::Utilisation, Style::plain(System::Si, Rounding::Up));
    let level = check.utilisation.map_or("   –".into(), utilisation);
    let span = check.span.map_or(String::new(), |ends| {
        format!(", {} to {} with softer and stiffer anchors", utilisation(ends[0]), utilisation(ends[1]))
    });
    let reason = check.reason.and_then(text_of_code).map_or(String::new(), |text| format!(": {}", text.what));
    format!("  {level}  {title}, {}{role}: {word}{span}{reason}\n", check.of)
}
