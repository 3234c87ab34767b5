//! Bad input: every file of `tests/invalid` has exactly the faults that stand beside it, and nothing makes the reader panic.

use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::input::fault::PROBLEM_TEXTS;
use steadfoot::input::{Fault, Problem};
use steadfoot::project;
use steadfoot_tests::random::Random;

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
    project::read_bytes(bytes, System::Si).err().unwrap_or_default()
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
    let content = |place: usize| json!({ "name": format!("c{place}"), "mass_kg": 1, "bottom_mm": 0, "size_mm": [1, 1, 1] });
    let state = |place: usize| json!({ "name": format!("s{place}") });
    let in_cabinet = |key: &str, list: Value| {
        let mut cabinet = cabinet();
        cabinet[key] = list;
        file("cabinet", cabinet)
    };
    let check = |path: &str, max: usize, file: &dyn Fn(usize) -> Value| {
        assert_eq!(faults_of(&file(max)), [], "{path}");
        let found = faults_of(&file(max + 1));
        assert_eq!(first(&found), (path, Problem::TooMany, (max + 1).to_string().as_str(), format!("at most {max}").as_str()));
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
    let keys = |count: usize| format!("{{{}}}", (0..count).map(|key| format!("\"k{key}\":0")).collect::<Vec<_>>().join(","));
    assert_eq!(faults(keys(1_000).as_bytes())[0].problem, Problem::Missing);
    let found = faults(keys(1_001).as_bytes());
    assert_eq!(first(&found), ("", Problem::TooMany, "\"k1000\":0}", "at most 1 000 keys in one object"));
}

#[test]
fn two_hundred_faults_are_listed_and_the_others_counted() {
    let contents: Vec<Value> = (0..250).map(|place| json!({ "name": format!("c{place}"), "mass_kg": -1, "bottom_mm": 0, "size_mm": [1, 1, 1] })).collect();
    let found = faults_of(&file("contents", contents.into()));
    assert_eq!(found.len(), 201);
    assert_eq!(found[199].path, "contents[199].mass_kg");
    assert_eq!(first(&found[200..]), ("", Problem::MoreFaults, "50", ""));
    assert!(found[200].sentence().ends_with("more faults follow: 50"));
    let two_hundred: Vec<Value> = (0..200).map(|place| json!({ "name": format!("c{place}"), "mass_kg": -1, "bottom_mm": 0, "size_mm": [1, 1, 1] })).collect();
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
    for key in ["title", "written_by", "part_filled", "states", "slab", "site", "anchorage"] {
        file[key] = json!(null);
    }
    assert_eq!(faults(format!("\u{feff}{file}").as_bytes()), []);
}

#[test]
fn what_is_allowed_is_told_in_the_readers_units() {
    let text = file("title", json!("")).to_string().replace("600", "0").replace("200,", "0,").replace("\"mass_kg\":200", "\"mass_kg\":0");
    let allowed = |system: System| -> Vec<String> {
        project::read(&text, system).expect_err("it has faults").into_iter().map(|fault| fault.allowed).collect()
    };
    let si = ["0.001 to 1\u{202f}000\u{202f}000\u{a0}kg", "10 to 20\u{202f}000\u{a0}mm"];
    let us = ["0.00220463 to 2\u{202f}204\u{202f}622\u{a0}lb", "0.393701 to 787.401\u{a0}in"];
    assert_eq!(allowed(System::Si), si);
    assert_eq!(allowed(System::Us), us);
}

#[test]
fn fingerprints_tell_inputs_apart_and_nothing_else() {
    let fingerprint = |text: &str| project::read(text, System::Si).map(|project| project.fingerprint).expect("no faults");
    let plain = file("contents", json!([{ "name": "a", "mass_kg": 5, "bottom_mm": 0, "size_mm": [1, 1, 1] }]));
    let known = fingerprint(&plain.to_string());
    assert!(known.len() == 12 && known.bytes().all(|byte| byte.is_ascii_hexdigit() && !byte.is_ascii_uppercase()));

    // Spacing, order, defaults written out, ways to write a number, notes of the page.
    assert_eq!(fingerprint(&format!("{plain:#}")), known);
    assert_eq!(fingerprint(&plain.to_string().replace("600", "6.00e2")), known);
    let mut written_out = plain.clone();
    written_out["contents"][0]["offset_mm"] = json!([0, -0.0]);
    written_out["contents"][0]["drawn_out_mm"] = json!(0);
    written_out["part_filled"] = json!(false);
    written_out["slab"] = json!(null);
    written_out["states"] = json!([]);
    written_out["written_by"] = json!("0.0.1");
    assert_eq!(fingerprint(&written_out.to_string()), known);

    let mut others = vec![known];
    let mut differs = |change: &dyn Fn(&mut Value)| {
        let mut changed = plain.clone();
        change(&mut changed);
        others.push(fingerprint(&changed.to_string()));
    };
    differs(&|file| file["title"] = json!("null"));
    differs(&|file| file["title"] = json!(""));
    differs(&|file| file["cabinet"]["width_mm"] = json!(600.0000000000001));
    differs(&|file| file["contents"][0]["name"] = json!("b"));
    differs(&|file| file["contents"][0]["travel_mm"] = json!(0));
    differs(&|file| file["part_filled"] = json!(true));
    differs(&|file| file["cabinet"]["anchors"] = json!([{ "at_mm": [0, 1, ] }]));
    differs(&|file| file["cabinet"]["lifting_points"] = json!([{ "at_mm": [0, 1, 0] }]));
    differs(&|file| file["slab"] = json!({ "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} }));
    differs(&|file| file["slab"] = json!({ "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {}, "cracked": false }));
    differs(&|file| file["states"] = json!([{ "name": "a", "without": ["a"] }]));
    differs(&|file| file["states"] = json!([{ "name": "a", "drawn_out_mm": { "a": 0 } }]));
    let count = others.len();
    others.sort();
    others.dedup();
    assert_eq!(others.len(), count, "two inputs have one fingerprint");
}

/// Texts to begin with: everything that is refused, and a file that fills every part.
fn seeds() -> Vec<Vec<u8>> {
    let mut seeds: Vec<Vec<u8>> = invalid_files().iter().map(|path| fs::read(path).expect("the file can be read")).collect();
    let demos = fs::read_dir(folder().join("../../demo-configs")).into_iter().flatten();
    let mut demos: Vec<PathBuf> = demos.map(|entry| entry.expect("the folder can be read").path()).collect();
    demos.sort();
    demos.retain(|path| !path.to_string_lossy().ends_with("schema.json"));
    seeds.extend(demos.iter().map(|path| fs::read(path).expect("the file can be read")));
    seeds.push(
        json!({ "format": "steadfoot 1", "title": "all of it", "part_filled": true,
            "cabinet": { "width_mm": 600, "depth_mm": 800, "height_mm": 2000, "frame": { "mass_kg": 200, "centre_mm": [0, 0, 900] },
                "feet": [{ "name": "left", "at_mm": [-200, 0], "size_mm": [90, 90], "stem_diameter_mm": 20, "stem_length_mm": 60 },
                    { "name": "right", "at_mm": [200, 0], "size_mm": [0, 0], "stiffness_n_per_mm": 2e5 }],
                "anchors": [{ "name": "A", "at_mm": [0, 350], "embedment_mm": 80 }, { "at_mm": [0, -350], "stiffness_n_per_mm": 5e4 }],
                "lifting_points": [{ "at_mm": [0, 0, 2000] }] },
            "contents": [{ "name": "tray 1", "mass_kg": 80, "bottom_mm": 300, "size_mm": [500, 700, 200], "travel_mm": 600 }],
            "states": [{ "name": "service", "without": [], "drawn_out_mm": { "tray 1": 600 } }],
            "slab": { "strength_mpa": 28, "thickness_mm": 200, "edges_mm": { "left": 900 }, "friction": 0.3 },
            "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": 0.5, "vertical_coefficient": 0.2,
                "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2 },
            "anchorage": { "rule": "aci-318-19-si", "bolt": "M12", "steel": "iso-8.8", "embedment_mm": 100 } })
        .to_string()
        .into_bytes(),
    );
    seeds
}

const PIECES: [&str; 26] = [
    "{", "}", "[", "]", ",", ":", "\"", "\\", "\\u", "\\ud800", "null", "true", "NaN", "1e999", "-", "-0.0", "1e-400", "\u{feff}", "\u{202e}", "\0",
    "\"name\":", "\"tray 1\"", "\"width_mm\": 1,", "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[", "\n", "é",
];

fn mutate(bytes: &mut Vec<u8>, random: &mut Random) {
    for _ in 0..=random.below(4) {
        let at = random.below(bytes.len() + 1);
        let to = (at + random.below(20)).min(bytes.len());
        match random.below(7) {
            0 => bytes.truncate(at),
            1 => drop(bytes.drain(at..to)),
            2 if at < bytes.len() => bytes[at] ^= 1 << random.below(8),
            3 if at < bytes.len() => bytes[at] = b'0' + random.below(10) as u8,
            4 => {
                let copy = bytes[at..to].to_vec();
                let here = random.below(bytes.len() + 1);
                bytes.splice(here..here, copy);
            }
            _ => drop(bytes.splice(at..at, PIECES[random.below(PIECES.len())].bytes())),
        }
    }
}

/// Puts an odd value in the place of one value of the tree, or gives an object the value of another key.
fn mutate_tree(value: &mut Value, random: &mut Random) {
    match value {
        Value::Array(items) if !items.is_empty() && random.percent(85) => {
            let place = random.below(items.len());
            match random.below(12) {
                0 => items.push(items[place].clone()),
                1 => drop(items.remove(place)),
                _ => mutate_tree(&mut items[place], random),
            }
        }
        Value::Object(members) if !members.is_empty() && random.percent(95) => {
            let keys: Vec<String> = members.keys().cloned().collect();
            let key = &keys[random.below(keys.len())];
            match random.below(20) {
                0 => drop(members.remove(key)),
                1 => drop(members.insert(key.clone(), members[&keys[random.below(keys.len())]].clone())),
                _ => members.get_mut(key).into_iter().for_each(|value| mutate_tree(value, random)),
            }
        }
        Value::Number(number) if random.percent(70) => {
            let number = number.as_f64().unwrap_or(0.0);
            let others = [-number, 0.0, number * 2.0, number / 3.0, number + 1.0, 1e-9, 1e9, random.between(-2_000.0, 2_000.0)];
            *value = json!(others[random.below(others.len())]);
        }
        _ => {
            let odd = [json!(null), json!(true), json!(0), json!(-1), json!(1e300), json!("tray 1"), json!(""), json!([]), json!([0, 0]), json!({}),
                json!("direct"), json!([[0]]), json!("full"), json!({ "tray 1": 5 })];
            *value = odd[random.below(odd.len())].clone();
        }
    }
}

#[test]
fn forty_thousand_changed_files_make_nothing_panic() {
    let seeds = seeds();
    let (_, valid): (Vec<_>, Vec<_>) = seeds.iter().partition(|seed| project::read_bytes(seed, System::Si).is_err());
    let mut random = Random::new(20_000);
    let mut without_fault = 0;
    for run in 0..40_000 {
        let bytes = if run % 2 == 0 {
            let mut bytes = seeds[random.below(seeds.len())].clone();
            mutate(&mut bytes, &mut random);
            bytes
        } else {
            let mut tree: Value = serde_json::from_slice(valid[random.below(valid.len())]).expect("a valid file is JSON");
            for _ in 0..=random.below(3) {
                mutate_tree(&mut tree, &mut random);
            }
            tree.to_string().into_bytes()
        };
        let found = match project::read_bytes(&bytes, if random.percent(50) { System::Si } else { System::Us }) {
            Ok(project) => {
                assert!(project.cabinet.frame.mass_kg > 0.0);
                without_fault += 1;
                continue;
            }
            Err(found) => found,
        };
        assert!(!found.is_empty() && found.len() <= 201);
        let places: Vec<(u32, u32)> = found.iter().map(|fault| (fault.line, fault.column)).collect();
        assert!(places.is_sorted() && places[0] >= (1, 1), "{found:#?}");
        for fault in &found {
            assert!(fault.given.chars().count() <= 61 && !fault.sentence().is_empty());
            assert!(!fault.sentence().contains(char::is_control));
        }
    }
    assert!(without_fault > 1_000, "only {without_fault} changes were harmless");
}

/// What the reader takes, the pipeline has to take too, however odd it is.
#[test]
fn odd_projects_without_a_fault_are_assessed_without_a_panic() {
    let seeds = seeds();
    let valid: Vec<&Vec<u8>> = seeds.iter().filter(|seed| project::read_bytes(seed, System::Si).is_ok()).collect();
    let mut random = Random::new(30_000);
    let mut assessed = 0;
    while assessed < 1_500 {
        let mut tree: Value = serde_json::from_slice(valid[random.below(valid.len())]).expect("a valid file is JSON");
        for _ in 0..=random.below(4) {
            mutate_tree(&mut tree, &mut random);
        }
        if let Ok(project) = project::read(&tree.to_string(), System::Si) {
            let told = std::panic::catch_unwind(|| serde_json::to_string(&project::assess(&project)));
            let told = told.unwrap_or_else(|_| panic!("{tree}"));
            assert!(told.is_ok(), "{tree}");
            assessed += 1;
        }
    }
}

/// Texts of a megabyte with many values, keys, names, faults or digits.
#[test]
fn the_costliest_texts_are_read_in_seconds() {
    let many = |piece: &str, around: (&str, &str)| {
        let count = (999_900 - around.0.len() - around.1.len()) / (piece.len() + 1);
        format!("{}{}{}", around.0, vec![piece; count].join(","), around.1)
    };
    let keys: Vec<String> = (0..1_000).map(|key| format!("\"{key:03x}\":0")).collect();
    let object = format!("{{{}}}", keys.join(","));
    let names: Vec<String> = (0..1_000).map(|name| format!("\"{name:03x}\"")).collect();
    let contents: Vec<String> =
        names.iter().map(|name| format!("{{\"name\":{name},\"mass_kg\":1,\"bottom_mm\":0,\"size_mm\":[1,1,1]}}")).collect();
    let unknown: Vec<String> = (0..900).map(|key| format!("\"{key:03x}\":0")).collect();
    let unknown = format!("{{{}}}", unknown.join(","));
    let sixty = vec![unknown.as_str(); 60].join(",");
    let state = format!("{{\"name\":\"s\",\"without\":[{0}],\"drawn_out_mm\":{{{1}}}}}", names.join(","), names.join(":1,") + ":1");
    let states = vec![state.as_str(); 50].join(",");
    for text in [
        many("[]", ("[", "]")),
        many("1", ("[", "]")),
        many("1.2345678901234567890e-300", ("[", "]")),
        many("9007199254740993e250", ("[", "]")),
        many(&format!("{}e-1090", "3".repeat(790)), ("[", "]")),
        many("{\"a\":1}", ("{\"contents\":[", "]}")),
        many(&object, ("{\"contents\":[", "]}")),
        // Parts are read in another order than that of this text.
        format!("{{\"cabinet\":{{\"anchors\":[{sixty}],\"feet\":[{sixty}]}}}}"),
        many("\"\\u0041\"", ("{\"format\":\"steadfoot 1\",\"states\":[", "]}")),
        format!("{{\"format\":\"steadfoot 1\",\"contents\":[{}],\"states\":[{states}]}}", contents.join(",")),
        format!("{{\"title\":\"{}\"", " ".repeat(999_000)),
        "1".repeat(1_000_000),
    ] {
        assert!(text.len() <= 1_000_000, "{}", text.len());
        let began = Instant::now();
        assert!(!faults(text.as_bytes()).is_empty());
        assert!(began.elapsed() < Duration::from_secs(5), "{} took {:?}", &text[..40], began.elapsed());
    }
}
