//! The reader and the pipeline under texts that nobody would write: changed at random, or as costly as can be.

use std::fs;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project;
use steadfoot_tests::random::Random;

fn json_files(folder: &str) -> Vec<Vec<u8>> {
    let entries = fs::read_dir(format!("{}/{folder}", env!("CARGO_MANIFEST_DIR"))).expect("the folder can be read");
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.expect("the folder can be read").path()).collect();
    paths.sort();
    paths.retain(|path| path.is_file() && !path.to_string_lossy().ends_with(".faults.json"));
    paths.iter().map(|path| fs::read(path).expect("the file can be read")).collect()
}

/// Texts to begin with: everything that is refused, and a file that fills every part.
fn seeds() -> Vec<Vec<u8>> {
    let mut seeds = json_files("invalid");
    seeds.extend(json_files("../demo-configs"));
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
            "anchorage": { "rule": "aci-318-19-si", "bolt": "M12", "steel": "iso-8.8", "embedment_mm": 100 },
            "shake_table": { "spectrum": "ac156", "s_ds": 1, "fixture_mass_kg": 500, "rig_travel_mm": 200 } })
        .to_string()
        .into_bytes(),
    );
    seeds
}

const PIECES: [&str; 26] = [
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "\"",
    "\\",
    "\\u",
    "\\ud800",
    "null",
    "true",
    "NaN",
    "1e999",
    "-",
    "-0.0",
    "1e-400",
    "\u{feff}",
    "\u{202e}",
    "\0",
    "\"name\":",
    "\"tray 1\"",
    "\"width_mm\": 1,",
    "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[",
    "\n",
    "é",
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
            let others =
                [-number, 0.0, number * 2.0, number / 3.0, number + 1.0, 1e-9, 1e9, random.between(-2_000.0, 2_000.0)];
            *value = json!(others[random.below(others.len())]);
        }
        _ => {
            let odd = [
                json!(null),
                json!(true),
                json!(0),
                json!(-1),
                json!(1e300),
                json!("tray 1"),
                json!(""),
                json!([]),
                json!([0, 0]),
                json!({}),
                json!("direct"),
                json!([[0]]),
                json!("full"),
                json!({ "tray 1": 5 }),
            ];
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
            let mut tree: Value =
                serde_json::from_slice(valid[random.below(valid.len())]).expect("a valid file is JSON");
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
    let contents: Vec<String> = names
        .iter()
        .map(|name| format!("{{\"name\":{name},\"mass_kg\":1,\"bottom_mm\":0,\"size_mm\":[1,1,1]}}"))
        .collect();
    let unknown: Vec<String> = (0..900).map(|key| format!("\"{key:03x}\":0")).collect();
    let unknown = format!("{{{}}}", unknown.join(","));
    let sixty = vec![unknown.as_str(); 60].join(",");
    let state = format!(
        "{{\"name\":\"s\",\"without\":[{0}],\"drawn_out_mm\":{{{1}}}}}",
        names.join(","),
        names.join(":1,") + ":1"
    );
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
        assert!(project::read(&text, System::Si).is_err());
        assert!(began.elapsed() < Duration::from_secs(5), "{} took {:?}", &text[..40], began.elapsed());
    }
}
