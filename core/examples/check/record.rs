//! Results as JSON.

use serde_json::{Value, json};
use steadfoot::calc::show::{Reading, unit_text};
use steadfoot::calc::{CheckId, Kind, System};
use steadfoot::explore;
use steadfoot::input::Fault;
use steadfoot::project::{self, Project};
use steadfoot::report::cautions::CAUTIONS;
use steadfoot::report::outcome::{At, CheckTold, Report};
use steadfoot::report::sheet_told::SectionTold;
use steadfoot::report::text_tables::text_of_code;

/// The report with every step of every check that was compared.
pub fn report(project: &Project) -> Value {
    let report = explore::assess_open(project);
    let mut steps: Vec<Value> = Vec::new();
    let mut seen: std::collections::BTreeSet<String> = Default::default();
    for at in report.checks.iter().filter_map(|check| check.at) {
        for section in project::working_told(project, &at) {
            for step in section_steps(&section, &at) {
                if seen.insert(step.to_string()) {
                    steps.push(step);
                }
            }
        }
    }
    let checks: Vec<Value> = report.checks.iter().map(|told| check(told, &report)).collect();
    json!({
        "engine": report.engine,
        "fingerprint": report.fingerprint,
        "demand_rule": report.demand_rule,
        "anchor_rule": report.anchor_rule,
        "verdict": report.verdict,
        "answer": super::print::answer(&report),
        "states": report.states,
        "checks": checks,
        "steps": steps,
        "unknown": report.unknown,
        "cautions": CAUTIONS,
    })
}

/// Faults as JSON, each with its sentence.
pub fn faults(faults: &[Fault]) -> Vec<Value> {
    let told = faults.iter().map(|fault| {
        json!({
            "path": fault.path, "problem": fault.problem, "given": fault.given, "allowed": fault.allowed,
            "line": fault.line, "column": fault.column, "sentence": fault.sentence(),
        })
    });
    told.collect()
}

fn check(check: &CheckTold, report: &Report) -> Value {
    let at_case = check.at.map(|at| {
        json!({
            "state": report.states[at.state].name,
            "case": at.case.and_then(|case| text_of_code(report.cases[case].name)).map(|text| text.what),
            "direction_deg": at.direction_rad.to_degrees(),
        })
    });
    let kind = Kind::from_code(check.kind).unwrap_or(Kind::Number);
    json!({
        "id": check.id, "of": check.of, "at_case": at_case, "value": check.value, "limit": check.limit,
        "unit": unit_text(kind, System::Si, Reading::Base), "utilisation": check.utilisation, "span": check.span,
        "status": check.status, "role": check.role,
        "reason": check.reason.and_then(text_of_code).map(|text| text.what),
    })
}

fn section_steps(section: &SectionTold, at: &At) -> Vec<Value> {
    let part = serde_json::to_value(section.part).unwrap_or(Value::Null);
    let part = part.as_str().unwrap_or("-").to_string();
    let check = section.check.and_then(CheckId::named).map_or("-", CheckId::section);
    let own = section.steps.iter().filter(|step| !step.carried);
    own.filter_map(|step| {
        let text = text_of_code(step.id)?;
        let index = if step.index > 0 { format!("[{}]", step.index) } else { String::new() };
        let unit = unit_text(text.kind, section.system, Reading::Base);
        let symbol = text.symbol;
        Some(json!({
            "at": format!("{part}/{}/{check}/{symbol}{index}", section.of),
            "value": step.value, "unit": unit,
            "case": at.case, "direction_deg": at.direction_rad.to_degrees(),
        }))
    })
    .collect()
}
