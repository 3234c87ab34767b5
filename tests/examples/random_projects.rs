//! Prints so many random projects, one a line, from a seed: `random_projects COUNT SEED`.

use std::{env, process::ExitCode};

use steadfoot_tests::{random::Random, random_project::random_project};

fn main() -> ExitCode {
    let numbers: Vec<u64> = env::args().skip(1).filter_map(|argument| argument.parse().ok()).collect();
    let [count, seed] = numbers[..] else {
        eprintln!("use: random_projects COUNT SEED");
        return ExitCode::from(2);
    };
    let mut random = Random::new(seed);
    (0..count).for_each(|_| println!("{}", random_project(&mut random)));
    ExitCode::SUCCESS
}
