//! Every check value of `values/*.json` is met: published, secondary, from memory or derived, each with its source.

use std::process::Command;

use serde_json::Value as Json;
use steadfoot::calc::Kind;
use steadfoot_tests::values::{Answers, Block, Found, blocks, folder, quantity, run};

#[test]
fn every_check_value_is_met() {
    let mut wrong = Vec::new();
    let mut compared = 0;
    for (file, block) in blocks() {
        let mut say = |problem: String| wrong.push(format!("{file}, {}: {problem}", block.block));
        block.flaws().into_iter().for_each(&mut say);
        match run(&block.runs, &block.input) {
            Ok(answers) => {
                compared += block.expect.len();
                block.unmet(&answers).into_iter().for_each(&mut say);
            }
            Err(problem) => say(problem),
        }
    }
    println!("{compared} values were compared");
    assert!(wrong.is_empty(), "{} of {compared} are not met:\n{}", wrong.len(), wrong.join("\n"));
    assert!(compared > 100, "only {compared} values were compared");
}

#[test]
fn block_names_are_unique() {
    let mut names: Vec<String> = blocks().into_iter().map(|(_, block)| block.block).collect();
    names.sort();
    let twice: Vec<_> = names.windows(2).filter(|pair| pair[0] == pair[1]).map(|pair| &pair[0]).collect();
    assert!(twice.is_empty(), "{twice:?}");
}

/// `derive_demand.py` prints `demand-derived.json`, and so on.
#[test]
fn derived_values_are_what_their_scripts_print() {
    let mut scripts = 0;
    for entry in std::fs::read_dir(folder()).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        let Some(topic) = name.strip_prefix("derive_").and_then(|rest| rest.strip_suffix(".py")) else { continue };
        let output = Command::new("python3").arg(&path).output().expect("python3 derives the values");
        assert!(output.status.success(), "{name}: {}", String::from_utf8_lossy(&output.stderr));
        let kept = std::fs::read_to_string(folder().join(format!("{topic}-derived.json"))).unwrap();
        assert!(
            String::from_utf8_lossy(&output.stdout) == kept,
            "{name} prints something else than {topic}-derived.json"
        );
        scripts += 1;
    }
    assert!(scripts > 0);
}

#[test]
fn a_wrong_value_a_wrong_unit_and_a_missing_step_are_not_met() {
    let expect = |expect: &str| {
        let text = format!(
            r#"{{"block": "b", "source": "s", "trust": "derived", "runs": "demand", "input": {{}}, "expect": [{expect}]}}"#
        );
        let block: Block = serde_json::from_str(&text).unwrap();
        let force = Found { value: 16_000.0, kind: Kind::Force };
        let height = Found { value: 3.048, kind: Kind::Height };
        block.unmet(&Answers::from([("F".into(), force), ("h".into(), height)])).len() + block.flaws().len()
    };
    assert_eq!(expect(r#"{"at": "F", "value": "16.0", "unit": "kN"}"#), 0);
    assert_eq!(expect(r#"{"at": "F", "value": "3.60", "unit": "kip"}"#), 0);
    assert_eq!(expect(r#"{"at": "F", "value": "3.59", "unit": "kip"}"#), 1);
    assert_eq!(expect(r#"{"at": "F", "value": "16.1", "unit": "kN"}"#), 1);
    assert_eq!(
        expect(r#"{"at": "F", "value": "16.1", "unit": "kN", "tolerance": 0.2}"#),
        1,
        "a tolerance wants a reason"
    );
    assert_eq!(expect(r#"{"at": "F", "value": "16.1", "unit": "kN", "tolerance": 0.2, "why": "printed so"}"#), 0);
    assert_eq!(expect(r#"{"at": "F", "value": "16000", "unit": "mm"}"#), 1);
    assert_eq!(expect(r#"{"at": "h", "value": "10.0", "unit": "ft"}"#), 0);
    assert_eq!(expect(r#"{"at": "G", "value": "16.0", "unit": "kN"}"#), 1);
    assert_eq!(expect(r#"{"at": "F", "value": "11.2", "unit": "kN", "times": 0.7}"#), 0);
    assert!((quantity(&Json::from("2 mi"), Kind::Distance).unwrap() - 3.218688).abs() < 1e-12);
    assert!(quantity(&Json::from("15 in"), Kind::Force).is_err());
}
