//! Results as plain text.

use steadfoot::calc::show::{Rounding, Style, show};
use steadfoot::calc::{CheckId, Kind, Role, Status, System};
use steadfoot::project::{self, Project};
use steadfoot::report::cautions::CAUTIONS;
use steadfoot::report::outcome::{CheckTold, Report};
use steadfoot::report::print_sentence;
use steadfoot::report::text_tables::text_of_code;

/// The answer, the checks and the cautions.
pub fn report(project: &Project) -> String {
    let report = project::assess(project);
    let mut text = String::new();
    if !project.title.is_empty() {
        text.push_str(&format!("{}\n", project.title));
    }
    text.push_str(&format!("{}\n\n", answer(&report)));
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

fn line(check: &CheckTold) -> String {
    let id = CheckId::ALL.iter().position(|known| known.id() == check.id).unwrap_or(0);
    let title = steadfoot::calc::check::CHECK_TITLES[id];
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
