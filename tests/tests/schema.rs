//! The JSON Schema kept beside the demos is that of the engine's fields, and it and the reader refuse the same fields.

use std::fs;
use std::path::Path;

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::input::Problem;
use steadfoot::project::schema::schema;
use steadfoot::project::{self, parts::PARTS};

fn root() -> &'static Path {
    Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/.."))
}

fn read_schema() -> Value {
    serde_json::from_str(&schema()).expect("the schema is JSON")
}

/// The schema as it is kept.
const FILE: &str = "demo-configs/steadfoot.schema.json";

#[test]
fn the_kept_schema_is_the_engines() {
    let kept = fs::read_to_string(root().join(FILE)).unwrap_or_default();
    assert!(kept == schema(), "run: cargo test -p steadfoot-tests --test schema -- --ignored");
}

#[test]
#[ignore = "writes demo-configs/steadfoot.schema.json"]
fn write_the_schema() {
    fs::write(root().join(FILE), schema()).expect("the schema can be written");
}

/// As much of JSON Schema as ours uses; an unknown keyword is a failure, so that nothing is passed over.
fn accepts(schema: &Value, value: &Value) -> bool {
    let members = schema.as_object().expect("a schema is an object");
    members.iter().all(|(keyword, argument)| match keyword.as_str() {
        "$schema" | "title" | "description" | "default" => true,
        "type" => {
            let names = argument.as_array().cloned().unwrap_or(vec![argument.clone()]);
            names.iter().any(|name| name.as_str() == Some(type_of(value)))
        }
        "const" => value == argument,
        "enum" => argument.as_array().is_some_and(|words| words.contains(value)),
        "minimum" => value.as_f64().is_none_or(|number| number >= argument.as_f64().expect("a number")),
        "maximum" => value.as_f64().is_none_or(|number| number <= argument.as_f64().expect("a number")),
        "minLength" => {
            value.as_str().is_none_or(|text| text.chars().count() as u64 >= argument.as_u64().expect("a count"))
        }
        "maxLength" => {
            value.as_str().is_none_or(|text| text.chars().count() as u64 <= argument.as_u64().expect("a count"))
        }
        "minItems" => value.as_array().is_none_or(|items| items.len() as u64 >= argument.as_u64().expect("a count")),
        "maxItems" => value.as_array().is_none_or(|items| items.len() as u64 <= argument.as_u64().expect("a count")),
        "uniqueItems" => {
            value.as_array().is_none_or(|items| (1..items.len()).all(|at| !items[..at].contains(&items[at])))
        }
        "items" => value.as_array().is_none_or(|items| items.iter().all(|item| accepts(argument, item))),
        "properties" => value.as_object().is_none_or(|object| {
            object.iter().all(|(key, value)| argument.get(key).is_none_or(|schema| accepts(schema, value)))
        }),
        "required" => value.as_object().is_none_or(|object| {
            argument.as_array().expect("a list").iter().all(|key| object.contains_key(key.as_str().expect("a key")))
        }),
        "additionalProperties" => value.as_object().is_none_or(|object| {
            let known = |key: &str| members.get("properties").is_some_and(|known| known.get(key).is_some());
            object
                .iter()
                .all(|(key, value)| known(key) || argument.as_bool().unwrap_or_else(|| accepts(argument, value)))
        }),
        "anyOf" => argument.as_array().expect("a list").iter().any(|schema| accepts(schema, value)),
        "oneOf" => argument.as_array().expect("a list").iter().filter(|schema| accepts(schema, value)).count() == 1,
        other => panic!("the test does not know the keyword {other}"),
    })
}

fn type_of(value: &Value) -> &'static str {
    match value {
        Value::Null => "null",
        Value::Bool(_) => "boolean",
        Value::Number(_) => "number",
        Value::String(_) => "string",
        Value::Array(_) => "array",
        Value::Object(_) => "object",
    }
}

fn json_files(folder: &str) -> Vec<(String, Vec<u8>)> {
    let Ok(entries) = fs::read_dir(root().join(folder)) else { return Vec::new() };
    let mut paths: Vec<_> = entries.map(|entry| entry.expect("the folder can be read").path()).collect();
    paths.sort();
    let name = |path: &Path| path.file_name().expect("a file").to_string_lossy().into_owned();
    let is_project =
        |name: &str| name.ends_with(".json") && !name.ends_with(".schema.json") && !name.ends_with(".faults.json");
    let paths = paths.iter().filter(|path| is_project(&name(path)));
    paths.map(|path| (name(path), fs::read(path).expect("the file can be read"))).collect()
}

#[test]
fn the_schema_takes_every_demo() {
    let schema = read_schema();
    for (name, bytes) in json_files("demo-configs") {
        let value: Value = serde_json::from_slice(&bytes).expect("a demo is JSON");
        // What is claimed of the demos stands beside them and is no project.
        if value.get("format").is_some() {
            assert!(accepts(&schema, &value), "the schema refuses {name}");
        }
    }
}

/// What a schema does not see: whether an anchor may have something of its own depends on another part, and how much is
/// left open is counted over all of them.
const SEE_TWO_PARTS: [&str; 2] = ["anchor-own-value-without-anchorage.json", "open-more-than-eight.json"];

/// Whether a schema can see it: what single fields hold, not what parts agree in.
fn is_seen_by_a_schema(problem: Problem) -> bool {
    matches!(
        problem,
        Problem::NotAFormat
            | Problem::UnknownKey
            | Problem::NotANumber
            | Problem::NotAText
            | Problem::NotAFlag
            | Problem::NotAList
            | Problem::NotAnObject
            | Problem::WrongCount
            | Problem::NotAWord
            | Problem::NameTooLong
            | Problem::TooMany
    )
}

#[test]
fn the_schema_refuses_what_the_reader_refuses_in_single_fields() {
    let schema = read_schema();
    let mut refused = 0;
    for (name, bytes) in json_files("tests/invalid") {
        let Ok(value) = serde_json::from_slice::<Value>(&bytes) else { continue };
        if SEE_TWO_PARTS.contains(&name.as_str()) {
            continue;
        }
        let Err(faults) = project::read_bytes(&bytes, System::Si) else { panic!("{name} has no fault") };
        if faults.iter().any(|fault| is_seen_by_a_schema(fault.problem)) {
            assert!(!accepts(&schema, &value), "the schema takes {name}");
            refused += 1;
        }
    }
    assert!(refused >= 25, "only {refused} files show it");
}

#[test]
fn the_schema_takes_what_is_left_open_and_only_where_it_may_be() {
    let schema = read_schema();
    let taken = |change: &dyn Fn(&mut Value)| {
        let bytes = fs::read(root().join("demo-configs/50-nobody-knows.json")).expect("the demo is there");
        let mut file: Value = serde_json::from_slice(&bytes).expect("a demo is JSON");
        change(&mut file);
        let is_taken = accepts(&schema, &file);
        assert_eq!(is_taken, project::read(&file.to_string(), System::Si).is_ok(), "{file}");
        is_taken
    };
    assert!(taken(&|_| {}));
    assert!(taken(&|file| file["anchorage"]["bolt"] = json!({ "one_of": ["M16", "M20"] })));
    assert!(taken(&|file| file["cabinet"]["frame"]["centre_mm"][2] = json!({ "between": [900, 1000] })));
    assert!(!taken(&|file| file["anchorage"]["bolt"] = json!({ "one_of": ["M16"] })));
    assert!(!taken(&|file| file["anchorage"]["bolt"] = json!({ "one_of": ["M16", "a nail"] })));
    assert!(!taken(&|file| file["anchorage"]["embedment_mm"] = json!({ "between": [60] })));
    assert!(!taken(&|file| file["anchorage"]["embedment_mm"] = json!({ "between": [60, 1e6] })));
    assert!(!taken(&|file| file["anchorage"]["embedment_mm"] = json!({ "about": 60 })));
    assert!(!taken(&|file| file["part_filled"] = json!({ "one_of": [true, false] })));
}

/// Where a value stands in a file, as the steps to it.
fn number_places(value: &Value, at: &mut Vec<Step>, found: &mut Vec<Vec<Step>>) {
    match value {
        Value::Number(_) => found.push(at.clone()),
        Value::Array(items) => {
            for (place, item) in items.iter().enumerate() {
                at.push(Step::Item(place));
                number_places(item, at, found);
                at.pop();
            }
        }
        Value::Object(members) => {
            for (key, item) in members {
                at.push(Step::Key(key.clone()));
                number_places(item, at, found);
                at.pop();
            }
        }
        _ => {}
    }
}

#[derive(Clone, Debug)]
enum Step {
    Key(String),
    Item(usize),
}

fn place<'v>(value: &'v mut Value, steps: &[Step]) -> &'v mut Value {
    steps.iter().fold(value, |value, step| match step {
        Step::Key(key) => &mut value[key.as_str()],
        Step::Item(place) => &mut value[*place],
    })
}

#[test]
fn the_schemas_limits_are_the_readers() {
    let schema = read_schema();
    let mut all: Value = json!({});
    for part in PARTS {
        let fresh: Value = serde_json::from_str(part.fresh).expect("what a part begins with is JSON");
        if part.path.is_empty() {
            all = fresh;
        } else if let Some(list) = part.path.strip_suffix("[]") {
            *place(&mut all, &steps_to(list)) = json!([fresh]);
        } else if part.id != "site" && part.id != "anchorage" {
            *place(&mut all, &steps_to(part.path)) = fresh;
        }
    }
    for edge in ["left", "right", "front", "rear"] {
        all["slab"]["edges_mm"][edge] = json!(3000);
    }
    assert!(accepts(&schema, &all), "the schema refuses what the parts begin with");
    let faults = project::read(&all.to_string(), System::Si).err().unwrap_or_default();
    assert!(faults.is_empty(), "the reader refuses what the parts begin with: {faults:#?}");

    let mut places = Vec::new();
    number_places(&all, &mut Vec::new(), &mut places);
    assert!(places.len() > 30);
    for steps in places {
        for number in [-1e7, -30_001.0, -1.0, 0.0, 0.5, 12_000.0, 1e7, 1e12] {
            let mut changed = all.clone();
            *place(&mut changed, &steps) = json!(number);
            let faults = project::read(&changed.to_string(), System::Si).err().unwrap_or_default();
            // One side of a foot that is zero while the other is not is beyond what a schema sees.
            let within = |fault: &steadfoot::input::Fault| {
                matches!(fault.problem, Problem::BelowLimit | Problem::AboveLimit) && !fault.allowed.starts_with("both")
            };
            assert_eq!(accepts(&schema, &changed), !faults.iter().any(within), "{number} at {steps:?}: {faults:#?}");
        }
    }
}

fn steps_to(path: &str) -> Vec<Step> {
    path.split('.').map(|key| Step::Key(key.into())).collect()
}
