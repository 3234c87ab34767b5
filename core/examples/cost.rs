//! Reports what an assessment costs on this machine: `cargo run --release --example cost`. Nothing is gated here.

use std::hint::black_box;
use std::time::Instant;

use steadfoot::base_reactions::{Anchor, BaseLoad, Foot, Push, Reactions, Supports};
use steadfoot::calc::System;
use steadfoot::geometry::{Point, Size};
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
    told("what would hold", || {
        if let Ok(mut search) = steadfoot::explore::WhatWouldHold::new(&project) {
            search.finish();
            black_box(search.frontier());
        }
    });
    if let Ok(mut search) = steadfoot::explore::WhatWouldHold::new(&project) {
        search.finish();
        let (count, tried, sweeps) = (search.count(), search.tried, search.sweeps());
        println!(
            "what would hold: {count} variants, {tried} tried, {sweeps} sweeps, {} on the frontier",
            search.frontier().len()
        );
    }
    told("tolerance", || {
        if let Some(mut search) = steadfoot::explore::Tolerance::new(&project) {
            search.finish();
        }
    });
    if let Some(mut search) = steadfoot::explore::Tolerance::new(&project) {
        search.finish();
        println!("tolerance: {:?} {:?}", search.circles, search.together);
    }
    told("rocking, 30 s record", || {
        black_box(steadfoot::motion::rocking_check());
    });
    told("self check", || {
        black_box(project::self_check());
    });
    base_reactions();
    println!("states {}, cases {}", report.states.len(), report.cases.len());
}

/// One solve with four feet and eight anchors, some of them pulled.
fn base_reactions() {
    let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
    let foot =
        |(x, y)| Foot { at: Point::new(430.0 * x, 580.0 * y), half: Size::new(60.0, 60.0), stiffness_n_per_mm: 4e5 };
    let anchor = |(x, y)| Anchor { at: Point::new(470.0 * x, 620.0 * y), stiffness_n_per_mm: 5e4 };
    let between =
        corners.map(|(x, y)| (x * if x * y > 0.0 { 0.3 } else { 1.0 }, y * if x * y > 0.0 { 1.0 } else { 0.3 }));
    let supports = Supports::new(&corners.map(foot), &[corners.map(anchor), between.map(anchor)].concat());
    let push =
        Push { down_n: 15e3, at: Point::new(20.0, -10.0), height_mm: 1000.0, horizontal_n: 16e3, direction_rad: 0.7 };
    let load = BaseLoad::from(push);
    let mut reactions = Reactions::default();
    told("base reactions", || {
        supports.settle_into(black_box(&load), &mut reactions).expect("the load is balanced");
    });
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
