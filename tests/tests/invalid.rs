//! Bad input: every file of `tests/invalid` has exactly the faults that stand beside it, and limits hold on both sides.

use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::input::fault::PROBLEM_TEXTS;
use steadfoot::input::{Fault, LimitUnits, Problem};
use steadfoot::project;

fn folder() -> &'static Path {
    Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/invalid"))
}

/// The files that are read, without those that hold their faults.
fn invalid_files() -> Vec<PathBuf> {
    let entries = fs::read_dir(folder()).expect("the folder can be read");
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.expect("the folder can be read").path()).collect();
    paths.retain(|path| !path.to_string_lossy().ends_with(".faults.json"));
    paths.sort();
    paths
}

fn faults(bytes: &[u8]) -> Vec<Fault> {
    project::read_bytes(bytes, LimitUnits::File).err().unwrap_or_default()
}

fn faults_of(file: &Value) -> Vec<Fault> {
    faults(file.to_string().as_bytes())
}

fn told(faults: &[Fault]) -> Value {
    serde_json::to_value(faults).expect("faults can be written")
}

#[test]
fn every_file_has_exactly_its_faults() {
    let paths = invalid_files();
    assert!(paths.len() >= 60, "only {} files", paths.len());
    let mut wrong = String::new();
    for path in paths {
        let bytes = fs::read(&path).expect("the file can be read");
        let expected = fs::read(path.with_extension("faults.json")).expect("its faults stand beside it");
        let expected: Value = serde_json::from_slice(&expected).expect("the faults are JSON");
        assert!(expected.as_array().is_some_and(|list| !list.is_empty()), "{} expects no fault", path.display());
        let found = told(&faults(&bytes));
        if found != expected {
            let _ = writeln!(wrong, "{}\n  found    {found}\n  expected {expected}", path.display());
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

/// Some faults allow the ids of all rules, or all keys of the file: where such a list has grown, it is written anew. What
/// else differs is for a person to look at.
#[test]
#[ignore = "writes lists that have grown into tests/invalid"]
fn write_the_lists_that_have_grown() {
    for path in invalid_files() {
        let found = faults(&fs::read(&path).expect("the file can be read"));
        let kept = path.with_extension("faults.json");
        let text = fs::read_to_string(&kept).expect("its faults stand beside it");
        let expected: Value = serde_json::from_str(&text).expect("the faults are JSON");
        let mut now = text.clone();
        for (fault, old) in found.iter().zip(expected.as_array().expect("a list")) {
            let old = old["allowed"].as_str().expect("a text");
            let has_grown =
                old.contains(", ") && old.split(", ").all(|word| fault.allowed.split(", ").any(|one| one == word));
            if has_grown && old != fault.allowed {
                now = now.replace(&Value::from(old).to_string(), &Value::from(fault.allowed.as_str()).to_string());
            }
        }
        if now != text {
            fs::write(&kept, now).expect("the faults can be written");
        }
    }
}

/// The place of a fault is where the text writes what was given, the key, or the object that lacks something.
#[test]
fn every_fault_points_at_what_is_given() {
    for path in invalid_files() {
        let Ok(text) = fs::read_to_string(&path) else { continue };
        for fault in faults(text.as_bytes()) {
            let line = text.split('\n').nth(fault.line as usize - 1).expect("the line is there");
            let rest: String = line.chars().skip(fault.column as usize - 1).collect();
            let starts = match fault.problem {
                Problem::UnknownKey | Problem::DuplicateKey | Problem::UnknownName => rest.starts_with('"'),
                Problem::Missing if fault.given.is_empty() => rest.starts_with('{'),
                Problem::TooLong | Problem::MoreFaults => true,
                _ => rest.replace('\0', " ").starts_with(fault.given.trim_end_matches('…')),
            };
            assert!(starts, "{}: {fault:?} points at {rest}", path.display());
        }
    }
}

#[test]
fn every_problem_of_a_file_is_shown_by_an_invalid_file() {
    let mut shown = vec![Problem::TooLong, Problem::TooMany, Problem::MoreFaults];
    // These are of records of motion, which a test of their own holds.
    shown.extend([Problem::UnevenSteps, Problem::UnlikelyPeak]);
    // And these are of schedules of a hall.
    shown.extend([Problem::LooseQuote, Problem::MixedUnits, Problem::TwoReadings, Problem::NotAUnit]);
    shown.extend([Problem::Overlaps, Problem::OutsideHall, Problem::NarrowsAisle]);
    for path in invalid_files() {
        shown.extend(faults(&fs::read(&path).expect("the file can be read")).iter().map(|fault| fault.problem));
    }
    let mut seen: Vec<usize> = shown.iter().map(|problem| *problem as usize).collect();
    seen.sort_unstable();
    seen.dedup();
    assert_eq!(seen, (0..PROBLEM_TEXTS.len()).collect::<Vec<_>>());
}

fn cabinet() -> Value {
    json!({ "width_mm": 600, "depth_mm": 800, "height_mm": 2000, "frame": { "mass_kg": 200, "centre_mm": [0, 0, 900] } })
}

fn file(key: &str, value: Value) -> Value {
    let mut file = json!({ "format": "steadfoot 1", "cabinet": cabinet() });
    file[key] = value;
    file
}

fn first(faults: &[Fault]) -> (&str, Problem, &str, &str) {
    let fault = &faults[0];
    (&fault.path, fault.problem, &fault.given, &fault.allowed)
}

#[test]
fn ten_megabytes_are_refused_at_once() {
    let text = format!("{{ \"format\": \"steadfoot 1\", \"title\": \"{}\" }}", "x".repeat(10_000_000));
    let began = Instant::now();
    let found = faults(text.as_bytes());
    assert!(began.elapsed() < Duration::from_millis(100));
    assert_eq!(found.len(), 1);
    assert_eq!(first(&found), ("", Problem::TooLong, "", "at most 1 000 000 bytes"));
}

#[test]
fn a_megabyte_is_read_and_a_byte_more_is_not() {
    let valid = file("title", json!("at the limit")).to_string();
    let padded = |bytes: usize| valid.clone() + &" ".repeat(bytes - valid.len());
    assert_eq!(faults(padded(1_000_000).as_bytes()), []);
    assert_eq!(faults(padded(1_000_001).as_bytes())[0].problem, Problem::TooLong);
    // Cut at two megabytes, as the command line does, or within a letter, it has the same fault; so has a picture.
    assert_eq!(faults(padded(2_000_000).as_bytes()), faults("é".repeat(4_000_001).as_bytes()));
    assert_eq!(faults(padded(2_000_000).as_bytes()), faults(&[0xff; 1_000_001]));
}

#[test]
fn thirty_two_levels_are_read_and_one_more_is_not() {
    // The file itself is one level.
    let nested = |levels: usize| format!("{{ \"deep\": {}{} }}", "[".repeat(levels - 1), "]".repeat(levels - 1));
    assert_eq!(faults(nested(32).as_bytes())[0].problem, Problem::Missing);
    assert_eq!(faults(nested(33).as_bytes())[0].problem, Problem::TooDeep);
}

#[test]
fn lists_are_read_up_to_their_limits() {
    let foot = |place: usize| json!({ "name": format!("f{place}"), "at_mm": [place as f64 * 10.0 - 400.0, 0], "size_mm": [9, 9] });
    let anchor = |place: usize| json!({ "at_mm": [place as f64 * 10.0 - 400.0, 0] });
    let lifting_point = |place: usize| json!({ "at_mm": [place as f64 * 10.0 - 400.0, 0, 2000] });
    let content =
        |place: usize| json!({ "name": format!("c{place}"), "mass_kg": 1, "bottom_mm": 0, "size_mm": [1, 1, 1] });
    let state = |place: usize| json!({ "name": format!("s{place}") });
    let in_cabinet = |key: &str, list: Value| {
        let mut cabinet = cabinet();
        cabinet[key] = list;
        file("cabinet", cabinet)
    };
    let check = |path: &str, max: usize, file: &dyn Fn(usize) -> Value| {
        assert_eq!(faults_of(&file(max)), [], "{path}");
        let found = faults_of(&file(max + 1));
        assert_eq!(
            first(&found),
            (path, Problem::TooMany, (max + 1).to_string().as_str(), format!("at most {max}").as_str())
        );
        assert_eq!(found.len(), 1);
    };
    check("cabinet.feet", 64, &|count| in_cabinet("feet", (0..count).map(foot).collect()));
    check("cabinet.anchors", 64, &|count| in_cabinet("anchors", (0..count).map(anchor).collect()));
    check("cabinet.lifting_points", 16, &|count| in_cabinet("lifting_points", (0..count).map(lifting_point).collect()));
    check("contents", 1_000, &|count| file("contents", (0..count).map(content).collect()));
    check("states", 100, &|count| file("states", (0..count).map(state).collect()));
}

#[test]
fn an_object_of_more_than_a_thousand_keys_ends_the_reading() {
    let keys =
        |count: usize| format!("{{{}}}", (0..count).map(|key| format!("\"k{key}\":0")).collect::<Vec<_>>().join(","));
    assert_eq!(faults(keys(1_000).as_bytes())[0].problem, Problem::Missing);
    let found = faults(keys(1_001).as_bytes());
    assert_eq!(first(&found), ("", Problem::TooMany, "\"k1000\":0}", "at most 1 000 keys in one object"));
}

#[test]
fn two_hundred_faults_are_listed_and_the_others_counted() {
    let contents: Vec<Value> = (0..250)
        .map(|place| json!({ "name": format!("c{place}"), "mass_kg": -1, "bottom_mm": 0, "size_mm": [1, 1, 1] }))
        .collect();
    let found = faults_of(&file("contents", contents.into()));
    assert_eq!(found.len(), 201);
    assert_eq!(found[199].path, "contents[199].mass_kg");
    assert_eq!(first(&found[200..]), ("", Problem::MoreFaults, "50", ""));
    assert!(found[200].sentence().ends_with("more faults follow: 50"));
    let two_hundred: Vec<Value> = (0..200)
        .map(|place| json!({ "name": format!("c{place}"), "mass_kg": -1, "bottom_mm": 0, "size_mm": [1, 1, 1] }))
        .collect();
    assert_eq!(faults_of(&file("contents", two_hundred.into())).len(), 200);
}

#[test]
fn names_may_have_two_hundred_characters_whatever_their_bytes() {
    let named = |count: usize| file("states", json!([{ "name": "ÿ".repeat(count) }]));
    assert_eq!(faults_of(&named(200)), []);
    assert_eq!(faults_of(&named(201))[0].problem, Problem::NameTooLong);
}

#[test]
fn what_only_leads_to_an_outcome_is_no_fault() {
    let foot = |name: &str, x: f64| json!({ "name": name, "at_mm": [x, 0], "size_mm": [50, 50] });
    for (feet, anchors) in [
        (json!([]), json!([])),
        (json!(null), json!([{ "at_mm": [100, 100] }])),
        (json!([foot("a", -200.0), foot("b", 0.0), foot("c", 200.0)]), json!([])),
        (json!([foot("a", -200.0)]), json!([{ "at_mm": [290, -390] }, { "at_mm": [290, 390] }])),
    ] {
        let mut cabinet = cabinet();
        cabinet["feet"] = feet;
        cabinet["anchors"] = anchors;
        assert_eq!(faults_of(&file("cabinet", cabinet)), []);
    }
}

#[test]
fn null_is_absent_and_a_byte_order_mark_is_passed_over() {
    let mut file = file("contents", json!(null));
    for key in ["title", "written_by", "part_filled", "states", "slab", "site", "anchorage", "shake_table"] {
        file[key] = json!(null);
    }
    assert_eq!(faults(format!("\u{feff}{file}").as_bytes()), []);
}

#[test]
fn what_is_allowed_is_told_in_the_readers_units() {
    let text = file("title", json!(""))
        .to_string()
        .replace("600", "0")
        .replace("200,", "0,")
        .replace("\"mass_kg\":200", "\"mass_kg\":0");
    let allowed = |system: System| -> Vec<String> {
        project::read(&text, system).expect_err("it has faults").into_iter().map(|fault| fault.allowed).collect()
    };
    let si = ["0.001 to 1\u{202f}000\u{202f}000\u{a0}kg", "10 to 20\u{202f}000\u{a0}mm"];
    let us = ["0.00220463 to 2\u{202f}204\u{202f}622\u{a0}lb", "0.393701 to 787.401\u{a0}in"];
    assert_eq!(allowed(System::Si), si);
    assert_eq!(allowed(System::Us), us);
}

/// The file has a load of a floor in MPa and a form shows it in kPa or psf: each is told its own limits.
#[test]
fn a_load_of_a_floor_is_told_its_limits_as_it_was_typed() {
    let mut file = file("slab", json!({ "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} }));
    file["floor"] = json!({ "kind": "on-ground", "live_load_mpa": 2 });
    let text = file.to_string();
    let allowed = |units: LimitUnits| project::read(&text, units).expect_err("it has a fault")[0].allowed.clone();
    assert_eq!(allowed(LimitUnits::File), "0.0001 to 1\u{a0}MPa");
    assert_eq!(allowed(System::Si.into()), "0.1 to 1000\u{a0}kPa");
    assert_eq!(allowed(System::Us.into()), "2.08855 to 20\u{202f}885.4\u{a0}psf");
    let [sentence] = &project::fault_sentences(&text)[..] else { panic!("it has one fault") };
    assert!(sentence.ends_with("the number is too large: 2; allowed: 0.0001 to 1\u{a0}MPa"), "{sentence}");
}
