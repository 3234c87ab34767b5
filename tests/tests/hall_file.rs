//! The hall file: what is wrong with it is told with its path, a project file is one, and its schema is that of its reader.

use std::fs;
use std::path::PathBuf;

use serde_json::Value;
use steadfoot::calc::System;
use steadfoot::hall::{Hall, Head, Record, schema};
use steadfoot::input::Problem;
use steadfoot::project;

fn demo(file: &str) -> String {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    fs::read_to_string(path).expect(file)
}

#[test]
fn faults_of_the_hall_file_are_told_with_their_paths() {
    let cases = [
        ("[1]", "", Problem::NotAnObject),
        ("{", "", Problem::NotJson),
        ("{\"format\": \"steadfoot 9\"}", "format", Problem::NotAFormat),
        ("{\"format\": \"steadfoot hall 1\"}", "types", Problem::Missing),
        ("{\"types\": {}}", "types", Problem::Missing),
        ("{\"types\": [1]}", "types", Problem::NotAnObject),
        ("{\"types\": {\"a\": 5}}", "types.a", Problem::NotAnObject),
        ("{\"types\": {\"a\": {}, \"a\": {}}}", "types.a", Problem::DuplicateKey),
        ("{\"types\": {\"a\": {\"b\": {\"c\": 1, \"c\": 1}}}}", "types.a.b.c", Problem::DuplicateKey),
        ("{\"types\": {\" \": {}}}", "types[\" \"]", Problem::EmptyName),
        ("{\"types\": {\"a\": {}}, \"floor\": {}}", "floor", Problem::UnknownKey),
        ("{\"types\": {\"a\": {}}, \"title\": 5}", "title", Problem::NotAText),
        (
            "{\"types\": {\"a\": {}}, \"load_outs\": {\"lowest 3\": {}}}",
            "load_outs[\"lowest 3\"]",
            Problem::ReservedName,
        ),
        ("{\"types\": {\"a\": {}}, \"outline_mm\": [[0]]}", "outline_mm[0]", Problem::WrongCount),
        ("{\"types\": {\"a\": {}}, \"outline_mm\": [[0, \"1\"]]}", "outline_mm[0]", Problem::NotANumber),
        ("{\"types\": {\"a\": {}}, \"aisle_mm\": \"1200\"}", "aisle_mm", Problem::NotANumber),
        ("{\"types\": {\"a\": {}}, \"aisle_mm\": 0.5}", "aisle_mm", Problem::BelowLimit),
        ("{\"types\": {\"a\": {}}, \"aisle_mm\": 20001}", "aisle_mm", Problem::AboveLimit),
    ];
    for (text, path, problem) in cases {
        let faults = Hall::read(text).expect_err(text);
        assert_eq!((faults[0].path.as_str(), faults[0].problem), (path, problem), "{text}");
    }
}

#[test]
fn a_project_file_is_a_hall_of_one_type() {
    let hall = Hall::read(&demo("02-full.json")).unwrap();
    let record = Record { number: 1, line: 2, text: "here".into(), fault: None };
    let row = hall.row(&Head::of("place", 1).unwrap(), &record);
    let report = project::assess(&project::read(&demo("02-full.json"), System::Si).unwrap());
    assert_eq!(row.outcome.unwrap().verdict, report.verdict);
}

#[test]
fn the_kept_schema_is_the_readers_and_its_limits_are_those_that_the_reader_refuses_beyond() {
    let run = "run: cargo run -p steadfoot-core --example schema -- hall > demo-configs/hall/hall.schema.json";
    assert!(demo("hall/hall.schema.json") == schema(), "{run}");
    assert!(!schema().contains(": true"), "a key of the hall file is not described");
    let told: Value = serde_json::from_str(&schema()).expect("the schema is JSON");
    let keys = told["properties"].as_object().expect("properties");
    let allowed = |text: &str| Hall::read(text).expect_err(text)[0].allowed.clone();
    let known = allowed("{\"types\": {\"a\": {}}, \"no such key\": 1}");
    assert!(keys.keys().all(|key| known.split(", ").any(|one| one == key)) && known.split(", ").count() == keys.len());
    let with = |key: &str, value: &str| Hall::read(&format!("{{\"types\": {{\"a\": {{}}}}, \"{key}\": {value}}}"));
    let aisle = &keys["aisle_mm"];
    for (limit, beyond) in [(&aisle["minimum"], -0.5), (&aisle["maximum"], 0.5)] {
        let limit = limit.as_f64().expect("a limit");
        assert!(
            with("aisle_mm", &limit.to_string()).is_ok() && with("aisle_mm", &(limit + beyond).to_string()).is_err()
        );
    }
    let outline = &keys["outline_mm"];
    let most = outline["maxItems"].as_u64().expect("a count") as usize;
    let corners = |count: usize| format!("[{}]", vec!["[0, 0]"; count].join(", "));
    assert!(with("outline_mm", &corners(most)).is_ok() && with("outline_mm", &corners(most + 1)).is_err());
    for (limit, beyond) in [("minimum", -1.0), ("maximum", 1.0)] {
        let limit = outline["items"]["items"][limit].as_f64().expect("a limit");
        assert!(with("outline_mm", &format!("[[0, {limit}]]")).is_ok());
        assert!(with("outline_mm", &format!("[[0, {}]]", limit + beyond)).is_err());
    }
}
