//! What the native engine tells of projects: one JSON string a line on standard input, each the text of a file; one JSON
//! object a line on standard output that holds what the page's bindings give for the same calls, so that both can be
//! compared to the last bit.

use std::io::{BufRead, Write};

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::input::Fault;
use steadfoot::project::{self, Project};
use steadfoot::{explore, report::drawing};

const WIDTH_PX: f64 = 400.0;

fn main() {
    let mut output = std::io::BufWriter::new(std::io::stdout().lock());
    for line in std::io::stdin().lock().lines() {
        let line = line.expect("standard input is text");
        let text: String = serde_json::from_str(&line).expect("each line is a JSON string");
        let told = json!({
            "si": assessed(&text, System::Si),
            "us": assessed(&text, System::Us),
            "rest": project::read(&text, System::Si).ok().map(|project| rest(&project)),
        });
        writeln!(output, "{told}").expect("standard output is open");
    }
}

fn assessed(text: &str, system: System) -> Value {
    match project::read(text, system) {
        Ok(project) => json!({ "report": project::assess(&project) }),
        Err(faults) => {
            let sentences = project::fault_sentences(text);
            json!({ "faults": faults.iter().zip(sentences).map(|(fault, of_file)| told(fault, of_file)).collect::<Vec<_>>() })
        }
    }
}

fn told(fault: &Fault, sentence: String) -> Value {
    json!({
        "path": fault.path, "problem": fault.problem, "given": fault.given, "allowed": fault.allowed,
        "line": fault.line, "column": fault.column, "sentence": sentence,
    })
}

/// The working of every check and of every point of the rose, the drawings, and how far it can go.
fn rest(project: &Project) -> Value {
    let report = project::assess(project);
    let checks = report.checks.iter().map(|check| check.at.map(|at| project::working_told(project, &at)));
    let rose = report.rose.iter().map(|point| project::working_told(project, &point.at));
    let scene = project::scene(project, None);
    json!({
        "checks": checks.collect::<Vec<_>>(),
        "rose": rose.collect::<Vec<_>>(),
        "plan": drawing::plan(&scene, WIDTH_PX, System::Us),
        "elevation": drawing::elevation(&scene, WIDTH_PX, System::Si),
        "rose_drawn": drawing::rose(&project::rose_scene(&report), WIDTH_PX),
        "limits": explore::limits(project),
    })
}
