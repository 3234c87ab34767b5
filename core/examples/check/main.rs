//! The command line: assesses a project file, or a stream of projects, one a line.
//!
//! `check FILE` prints the answer and the checks; `check FILE --json` the whole report with all steps; `check` without a
//! file reads one project a line on standard input and writes one result a line on standard output, in order.
//! `check --hall HALL SCHEDULE` assesses a schedule of many cabinets (CSV or JSON lines; `-` is standard input) and writes
//! a line for each, JSON or with `--csv` CSV, over all cores or as many as `--threads` says.
//! `check --compare BEFORE AFTER [--json]` tells in what two files differ, which checks moved, and by which steps.
//! Exit codes: 0 assessed, 1 faults, 2 wrong use.

mod compare;
mod hall;
mod print;
mod record;

use std::io::{BufRead, Read, Write};
use std::process::ExitCode;

use steadfoot::input::LimitUnits;
use steadfoot::project;

const USE: &str = "use: check FILE [--json]\n  or, for a stream of one project a line: check < FILE\n  or, for a schedule of many cabinets: check --hall HALL SCHEDULE [--csv] [--threads N]\n  or, for two files held against each other: check --compare BEFORE AFTER [--json]";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    if arguments.first().is_some_and(|argument| argument == "--hall") {
        return match wish_of(&arguments[1..]) {
            Some(wish) => hall::hall(&wish),
            None => wrong_use(),
        };
    }
    if arguments.iter().any(|argument| argument == "--help" || argument == "-h") {
        tell(&format!("{USE}\n"));
        return ExitCode::SUCCESS;
    }
    let json = arguments.iter().any(|argument| argument == "--json");
    let files: Vec<&String> = arguments.iter().filter(|argument| *argument != "--json").collect();
    match files.as_slice() {
        [] if !json => stream(),
        [file] if !file.starts_with('-') => one(file, json),
        [word, before, after] if *word == "--compare" && !before.starts_with('-') && !after.starts_with('-') => {
            two(before, after, json)
        }
        _ => {
            let known = |word: &String| !word.starts_with('-') || ["--json", "--compare"].contains(&word.as_str());
            if let Some(word) = arguments.iter().find(|word| !known(word)) {
                eprintln!("{word} is no option that is known here");
            }
            wrong_use()
        }
    }
}

/// Writes to standard output. Whoever reads it may have enough after a few lines; that is no fault.
fn tell(text: &str) {
    let _ = std::io::stdout().write_all(text.as_bytes());
}

fn wrong_use() -> ExitCode {
    eprintln!("{USE}");
    ExitCode::from(2)
}

/// What stands behind `--hall`.
fn wish_of(arguments: &[String]) -> Option<hall::Wish<'_>> {
    let [hall, schedule, options @ ..] = arguments else { return None };
    if [hall, schedule].into_iter().any(|file| file.starts_with('-') && file != "-") || hall == "-" {
        return None;
    }
    let mut wish = hall::Wish { hall, schedule, is_csv: false, threads: None };
    let mut options = options.iter();
    while let Some(option) = options.next() {
        match option.as_str() {
            "--csv" => wish.is_csv = true,
            "--threads" => wish.threads = Some(options.next()?.parse().ok().filter(|count| (1..=256).contains(count))?),
            _ => return None,
        }
    }
    Some(wish)
}

fn one(file: &str, json: bool) -> ExitCode {
    let bytes = match read_at_most(file) {
        Ok(bytes) => bytes,
        Err(error) => {
            eprintln!("{file}: {error}");
            return ExitCode::from(2);
        }
    };
    match project::read_bytes(&bytes, LimitUnits::File) {
        Ok(project) if json => {
            tell(&format!("{}\n", serde_json::json!({ "report": record::report(&project) })));
            ExitCode::SUCCESS
        }
        Ok(project) => {
            tell(&print::report(&project));
            ExitCode::SUCCESS
        }
        Err(faults) => {
            if json {
                tell(&format!("{}\n", serde_json::json!({ "faults": record::faults(&faults) })));
            } else {
                faults.iter().for_each(|fault| eprintln!("{}", fault.sentence()));
            }
            ExitCode::FAILURE
        }
    }
}

/// Two files held against each other; faults of either are told with its name.
fn two(before: &str, after: &str, json: bool) -> ExitCode {
    let mut projects = Vec::new();
    for file in [before, after] {
        let bytes = match read_at_most(file) {
            Ok(bytes) => bytes,
            Err(error) => {
                eprintln!("{file}: {error}");
                return ExitCode::from(2);
            }
        };
        match project::read_bytes(&bytes, LimitUnits::File) {
            Ok(project) => projects.push(project),
            Err(faults) if json => {
                tell(&format!("{}\n", serde_json::json!({ "file": file, "faults": record::faults(&faults) })));
                return ExitCode::FAILURE;
            }
            Err(faults) => {
                faults.iter().for_each(|fault| eprintln!("{file}: {}", fault.sentence()));
                return ExitCode::FAILURE;
            }
        }
    }
    let compared = compare::compared(&projects[0], &projects[1]);
    if json {
        tell(&format!("{}\n", compare::json(&compared)));
    } else {
        tell(&compare::text(&compared, [&projects[0], &projects[1]]));
    }
    ExitCode::SUCCESS
}

/// Reads a file, but not more of it than a fault needs to tell that it is too long.
fn read_at_most(file: &str) -> std::io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    std::fs::File::open(file)?.take(2_000_000).read_to_end(&mut bytes)?;
    Ok(bytes)
}

fn stream() -> ExitCode {
    let mut output = std::io::BufWriter::new(std::io::stdout().lock());
    let mut had_faults = false;
    for (number, line) in std::io::stdin().lock().split(b'\n').enumerate() {
        let Ok(line) = line else { return ExitCode::from(2) };
        if line.iter().all(u8::is_ascii_whitespace) {
            continue;
        }
        let result = match project::read_bytes(&line, LimitUnits::File) {
            Ok(project) => serde_json::json!({ "report": record::report(&project) }),
            Err(faults) => {
                had_faults = true;
                serde_json::json!({ "line": number + 1, "faults": record::faults(&faults) })
            }
        };
        if writeln!(output, "{result}").is_err() {
            return ExitCode::from(2);
        }
    }
    if output.flush().is_err() {
        return ExitCode::from(2);
    }
    if had_faults { ExitCode::FAILURE } else { ExitCode::SUCCESS }
}
