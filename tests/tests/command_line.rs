//! The command line: what it prints, what it streams, how it ends.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::OnceLock;

use serde_json::Value;

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The example, built once.
fn program() -> &'static Path {
    static PROGRAM: OnceLock<PathBuf> = OnceLock::new();
    PROGRAM.get_or_init(|| {
        let built = Command::new(env!("CARGO"))
            .args(["build", "-q", "-p", "steadfoot-core", "--example", "check"])
            .current_dir(root())
            .status()
            .expect("cargo can be run");
        assert!(built.success());
        let tests = std::env::current_exe().expect("this test is a file");
        let profile = tests.parent().and_then(Path::parent).expect("target/debug/deps/test");
        // The example is always built for development, whatever this test is built for.
        profile.with_file_name("debug").join("examples/check")
    })
}

fn run(arguments: &[&str], input: &[u8]) -> Output {
    let mut child = Command::new(program())
        .args(arguments)
        .current_dir(root())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the example can be run");
    let mut to_child = child.stdin.take().expect("its input");
    let input = input.to_vec();
    // Written from another thread, because the example answers line by line while it reads.
    let writer = std::thread::spawn(move || drop(to_child.write_all(&input)));
    let output = child.wait_with_output().expect("it ends");
    writer.join().expect("the writer ends");
    output
}

fn demo(file: &str) -> String {
    std::fs::read_to_string(root().join("demo-configs").join(file)).expect(file)
}

fn one_line(file: &str) -> String {
    let value: Value = serde_json::from_str(&demo(file)).expect(file);
    value.to_string()
}

#[test]
fn a_file_is_answered_in_plain_text_with_the_cautions() {
    let output = run(&["demo-configs/02-full.json"], b"");
    let text = String::from_utf8(output.stdout).expect("text");
    assert_eq!(output.status.code(), Some(0));
    assert!(text.contains("it stays put once bolted; before bolting it would slide at"));
    for caution in steadfoot::report::cautions::CAUTIONS {
        assert!(text.contains(caution), "no caution: {caution}");
    }
    assert!(text.contains("fingerprint") && text.contains("asce-7-16, aci-318-19-si"));
}

#[test]
fn the_report_as_json_has_every_check_and_every_step_with_its_address() {
    let output = run(&["demo-configs/02-full.json", "--json"], b"");
    assert_eq!(output.status.code(), Some(0));
    let told: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    let report = &told["report"];
    let checks = report["checks"].as_array().expect("checks");
    assert!(checks.len() > 10);
    for check in checks {
        for key in ["id", "of", "at_case", "value", "limit", "unit", "utilisation", "span", "status", "role"] {
            assert!(check.get(key).is_some(), "{check} has no {key}");
        }
    }
    let steps = report["steps"].as_array().expect("steps");
    let addresses: Vec<&str> = steps.iter().filter_map(|step| step["at"].as_str()).collect();
    for wanted in ["load-out/full/-/m", "demand/full/-/F_p", "base-reactions/full/-/P"] {
        assert!(addresses.contains(&wanted), "no step {wanted}");
    }
    assert!(
        addresses.iter().any(|at| at.starts_with("anchors/full/group-") && at.ends_with("/tension-breakout/N_b")),
        "{addresses:?}"
    );
    assert!(steps.iter().all(|step| step.get("value").is_some() && step.get("unit").is_some()));
    assert_eq!(report["cautions"].as_array().map(Vec::len), Some(steadfoot::report::cautions::CAUTIONS.len()));
}

#[test]
fn a_stream_is_answered_line_by_line_in_order_and_goes_on_after_a_fault() {
    let input = format!(
        "{}\n\n{{\"format\": \"steadfoot 1\"}}\nnot JSON\n{}\n",
        one_line("01-empty-frame.json"),
        one_line("09-must-not-pass.json")
    );
    let output = run(&[], input.as_bytes());
    assert_eq!(output.status.code(), Some(1), "there were faults");
    let lines: Vec<Value> = String::from_utf8(output.stdout)
        .expect("text")
        .lines()
        .map(|line| serde_json::from_str(line).expect("JSON"))
        .collect();
    assert_eq!(lines.len(), 4);
    assert_eq!(lines[0]["report"]["verdict"], "holds");
    assert_eq!((lines[1]["line"].as_u64(), lines[1]["faults"][0]["problem"].as_str()), (Some(3), Some("missing")));
    assert_eq!((lines[2]["line"].as_u64(), lines[2]["faults"][0]["problem"].as_str()), (Some(4), Some("not_json")));
    assert_eq!(lines[3]["report"]["verdict"], "does_not_hold");
}

#[test]
fn faults_end_with_one_and_wrong_use_with_two() {
    let broken = std::env::temp_dir().join(format!("steadfoot-broken-{}.json", std::process::id()));
    std::fs::write(&broken, "{\"format\": \"steadfoot 1\"}").expect("a temporary file");
    let path = broken.to_str().expect("a path");
    let output = run(&[path], b"");
    assert_eq!(output.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&output.stderr).contains("cabinet"));
    assert_eq!(run(&[path, "--json"], b"").status.code(), Some(1));
    std::fs::remove_file(&broken).expect("it can be removed");
    assert_eq!(run(&["no such file.json"], b"").status.code(), Some(2));
    assert_eq!(run(&["one.json", "two.json"], b"").status.code(), Some(2));
    assert_eq!(run(&["--json"], b"").status.code(), Some(2));
}

/// The same faults as the reader gives, which the page is held against too.
#[test]
fn every_invalid_file_ends_with_one_and_exactly_its_faults() {
    let entries = std::fs::read_dir(root().join("tests/invalid")).expect("the folder can be read");
    let paths = entries.map(|entry| entry.expect("the folder can be read").path());
    let mut files = 0;
    for path in paths.filter(|path| !path.to_string_lossy().ends_with(".faults.json")) {
        let expected = std::fs::read(path.with_extension("faults.json")).expect("its faults stand beside it");
        let expected: Value = serde_json::from_slice(&expected).expect("the faults are JSON");
        let output = run(&[path.to_str().expect("a path"), "--json"], b"");
        assert_eq!(output.status.code(), Some(1), "{}", path.display());
        let mut told: Value = serde_json::from_slice(&output.stdout).expect("JSON");
        for fault in told["faults"].as_array_mut().expect("a list of faults") {
            let sentence = fault.as_object_mut().and_then(|fault| fault.remove("sentence")).unwrap_or_default();
            assert!(sentence.as_str().is_some_and(|sentence| sentence.len() > 10), "{}", path.display());
        }
        assert_eq!(told["faults"], expected, "{}", path.display());
        files += 1;
    }
    assert!(files >= 60, "{files} files");
}

#[test]
fn a_file_of_ten_megabytes_is_refused() {
    let giant = std::env::temp_dir().join(format!("steadfoot-giant-{}.json", std::process::id()));
    std::fs::write(&giant, format!("{{ \"title\": \"{}\" }}", "x".repeat(10_000_000))).expect("a temporary file");
    let output = run(&[giant.to_str().expect("a path"), "--json"], b"");
    std::fs::remove_file(&giant).expect("it can be removed");
    assert_eq!(output.status.code(), Some(1));
    let told: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(
        (told["faults"].as_array().map(Vec::len), &told["faults"][0]["problem"]),
        (Some(1), &Value::from("too_long"))
    );
}

#[test]
fn a_schedule_is_answered_row_by_row_in_order_however_many_threads_assess() {
    let [hall, schedule] = ["demo-configs/hall/hall.json", "demo-configs/hall/schedule.csv"];
    let alone = run(&["--hall", hall, schedule, "--threads", "1"], b"");
    assert_eq!(alone.status.code(), Some(1), "a row of the demo has a fault");
    let text = String::from_utf8(alone.stdout.clone()).expect("text");
    let lines: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect();
    assert_eq!(lines[0]["cautions"].as_array().map(Vec::len), Some(steadfoot::report::cautions::CAUTIONS.len()));
    let rows = &lines[1..];
    assert_eq!(rows.iter().map(|row| row["row"].as_u64().unwrap()).collect::<Vec<_>>(), (1..=48).collect::<Vec<_>>());
    assert_eq!((rows[40]["place"].as_str(), rows[40]["faults"][0]["line"].as_u64()), (Some("D05"), Some(42)));
    assert_eq!((rows[0]["verdict"].as_str(), rows[0]["x_mm"].as_f64()), (Some("holds"), Some(1600.0)));
    for threads in ["2", "7"] {
        assert!(
            run(&["--hall", hall, schedule, "--threads", threads], b"").stdout == alone.stdout,
            "{threads} threads"
        );
    }
    let input = std::fs::read(root().join(schedule)).expect(schedule);
    let csv = run(&["--hall", hall, "-", "--csv"], &input);
    assert_eq!(String::from_utf8(csv.stdout).expect("text").lines().count(), 49);
}

#[test]
fn a_schedule_that_cannot_be_read_is_told_and_wrong_use_ends_with_two() {
    let hall = "demo-configs/hall/hall.json";
    let output = run(&["--hall", hall, "-"], b"name,type\nA,relay\n");
    assert_eq!(output.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&output.stderr).contains("there is no such key here"));
    assert_eq!(run(&["--hall", "demo-configs/claims.json", "-"], b"place\n").status.code(), Some(1));
    for wrong in [&["--hall"][..], &["--hall", hall], &["--hall", hall, "-", "--threads", "0"], &["--hall", "no", "no"]]
    {
        assert_eq!(run(wrong, b"").status.code(), Some(2), "{wrong:?}");
    }
}

#[test]
fn two_files_are_held_against_each_other_and_faults_of_either_bear_its_name() {
    let (before, after) = ("demo-configs/02-full.json", "demo-configs/06-upper-floor.json");
    let output = run(&["--compare", before, after], b"");
    assert_eq!(output.status.code(), Some(0));
    let text = String::from_utf8(output.stdout).expect("text");
    assert!(text.contains("(site.attachment_height_m): 0 -> ") && text.contains("checks that moved: "), "{text}");
    assert!(text.contains("* demand/full/-/z: ") && text.contains("licensed"), "{text}");
    let output = run(&["--compare", before, after, "--json"], b"");
    let told: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    let checks = told["compared"]["checks"].as_array().expect("checks that moved");
    assert!(checks.iter().any(|check| check["steps"].as_array().is_some_and(|steps| steps.len() > 3)));
    assert!(checks.iter().flat_map(|check| check["steps"].as_array().unwrap()).all(|step| step["at"].is_string()));
    let same = run(&["--compare", before, before], b"");
    assert!(String::from_utf8_lossy(&same.stdout).contains("inputs that differ: 0\n"));
    let faulty = std::env::temp_dir().join("steadfoot-compared-with-faults.json");
    std::fs::write(&faulty, demo("02-full.json").replace("\"mass_kg\": 720", "\"mass_kg\": -1")).expect("written");
    let faulty = faulty.to_str().expect("a path");
    for order in [[faulty, after], [before, faulty]] {
        let output = run(&["--compare", order[0], order[1]], b"");
        assert_eq!(output.status.code(), Some(1));
        assert!(String::from_utf8_lossy(&output.stderr).starts_with(faulty));
    }
    assert_eq!(run(&["--compare", before], b"").status.code(), Some(2));
}
