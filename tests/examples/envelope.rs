//! The envelope of base reactions of one file: supports and loads as plain numbers, the largest pull of each anchor and
//! the largest force of each foot over all of them, and how long that takes. `tests/compare_with_optimiser.py` reads it
//! and works the same out with a general-purpose optimiser.

use std::time::{Duration, Instant};

use serde_json::json;
use steadfoot::base_reactions::{BaseLoad, Reactions};
use steadfoot::calc::System;
use steadfoot::project::{
    self,
    bench::{Bench, Place},
};

/// Directions of the push, evenly round.
const DIRECTIONS: usize = 24;
/// The envelope is repeated for at least so long.
const LEAST: Duration = Duration::from_secs(1);

fn main() {
    let file = std::env::args().nth(1).expect("the file of a project");
    let text = std::fs::read_to_string(&file).expect("the file can be read");
    let project = project::read(&text, System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()));
    let bench = Bench::new(&project);
    let supports = &bench.supports[0];
    let mut loads: Vec<BaseLoad> = Vec::new();
    for state in 0..bench.loads.len() {
        for &run in &bench.runs {
            for direction in 0..DIRECTIONS {
                let direction_rad = core::f64::consts::TAU * direction as f64 / DIRECTIONS as f64;
                let place = Place { state, run, direction_rad, stiffness: 0 };
                let load = BaseLoad::from(bench.case_load(&place).push());
                if supports.holds(&load).is_ok() {
                    loads.push(load);
                }
            }
        }
    }
    let mut reactions = Reactions::default();
    let (mut pulls, mut forces) = (vec![0.0_f64; supports.anchors().len()], vec![0.0_f64; supports.feet().len()]);
    let (mut envelopes, begin) = (0_u32, Instant::now());
    while begin.elapsed() < LEAST {
        for load in &loads {
            if supports.settle_into(load, &mut reactions).is_err() {
                continue;
            }
            for (most, pull) in pulls.iter_mut().zip(&reactions.anchors_n) {
                *most = most.max(*pull);
            }
            for (most, foot) in forces.iter_mut().zip(&reactions.feet) {
                *most = most.max(foot.force_n);
            }
        }
        envelopes += 1;
    }
    let seconds = begin.elapsed().as_secs_f64() / f64::from(envelopes);
    let feet = supports
        .feet()
        .iter()
        .map(|foot| json!([foot.at.x_mm, foot.at.y_mm, foot.half.x_mm, foot.half.y_mm, foot.stiffness_n_per_mm]));
    let anchors = supports.anchors().iter().map(|one| json!([one.at.x_mm, one.at.y_mm, one.stiffness_n_per_mm]));
    let loads = loads.iter().map(|load| json!([load.down_n, load.moment_x_nmm, load.moment_y_nmm]));
    println!(
        "{}",
        json!({
            "feet": feet.collect::<Vec<_>>(), "anchors": anchors.collect::<Vec<_>>(), "loads": loads.collect::<Vec<_>>(),
            "pulls_n": pulls, "forces_n": forces, "seconds": seconds, "envelopes": envelopes,
        })
    );
}
