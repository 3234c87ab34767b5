//! Reports what an assessment costs on this machine: `cargo run --release --example cost`. Nothing is gated here.

use std::hint::black_box;
use std::time::Instant;

use steadfoot::calc::System;
use steadfoot::project;

fn main() {
    let file = std::env::args().nth(1).expect("use: cost FILE");
    let text = std::fs::read_to_string(file).expect("the file can be read");
    let project = project::read(&text, System::Si).expect("the project has no faults");
    let report = project::assess(&project);
    let at = report.governs.and_then(|place| report.checks[place].at).expect("something governs");
    told("read", || drop(black_box(project::read(&text, System::Si))));
    told("assess quiet, no rose", || {
        black_box(project::quick(&project));
    });
    told("assess", || drop(black_box(project::assess(&project))));
    told("working", || drop(black_box(project::working(&project, &at))));
    told("limits", || drop(black_box(steadfoot::explore::limits(&project))));
    println!("states {}, cases {}", report.states.len(), report.cases.len());
}

/// The least of many runs, in microseconds.
fn told(what: &str, mut run: impl FnMut()) {
    let mut least = f64::INFINITY;
    let begin = Instant::now();
    while begin.elapsed().as_secs_f64() < 0.5 {
        let start = Instant::now();
        run();
        least = least.min(start.elapsed().as_secs_f64() * 1e6);
    }
    println!("{what:24} {least:10.1} microseconds");
}
