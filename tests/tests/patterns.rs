//! One to four bolts about every foot: where they stand, what they are called, and that a file takes them.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::explore::{Pattern, patterned};
use steadfoot::project::{self, Project};

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

#[test]
fn every_pattern_stands_clear_of_its_foot_and_is_read_back() {
    let value = demo("02-full.json");
    let project = read(&value);
    for (word, pattern) in Pattern::ALL {
        assert_eq!(Pattern::of_word(word), Some(pattern));
        let edit = patterned(&project, pattern, 60.0).expect("there are feet");
        assert_eq!(edit.path, "cabinet.anchors");
        let each = edit.value.len() / project.cabinet.feet.len();
        let expected = match word {
            "one" => 1,
            "across" | "along" => 2,
            "three" => 3,
            _ => 4,
        };
        assert_eq!(each, expected, "{word}");
        for (number, anchor) in edit.value.iter().enumerate() {
            let foot = &project.cabinet.feet[number / each];
            let off = [(anchor.at_mm[0] - foot.at.x_mm).abs(), (anchor.at_mm[1] - foot.at.y_mm).abs()];
            let beside = |axis: usize, half: f64| off[axis] == half + 60.0;
            let half = [foot.size.x_mm / 2.0, foot.size.y_mm / 2.0];
            let is_clear = beside(0, half[0]) || beside(1, half[1]);
            assert!(is_clear, "{word}: {anchor:?} beside {foot:?}");
            assert!(anchor.name.starts_with(&foot.name));
        }
        let mut changed = value.clone();
        changed["cabinet"]["anchors"] = serde_json::to_value(&edit.value).expect("it can be written");
        assert_eq!(read(&changed).cabinet.anchors.len(), edit.value.len());
    }
}

#[test]
fn one_bolt_stands_on_the_outer_side() {
    let edit = patterned(&read(&demo("02-full.json")), Pattern::One, 60.0).expect("there are feet");
    for anchor in edit.value {
        assert_eq!(anchor.at_mm[0].abs(), 520.0 + 60.0 + 60.0, "{anchor:?}");
    }
}

#[test]
fn without_feet_or_with_too_many_bolts_there_is_no_pattern() {
    let mut value = demo("02-full.json");
    assert!(patterned(&read(&value), Pattern::Corners, f64::NAN).is_none());
    assert!(patterned(&read(&value), Pattern::Corners, -1.0).is_none());
    let feet: Vec<Value> = (0..17)
        .map(|place| json!({ "name": format!("{place}"), "at_mm": [-560 + 70 * place, 0], "size_mm": [20, 20] }))
        .collect();
    value["cabinet"]["feet"] = json!(feet);
    value["cabinet"]["anchors"] = json!([]);
    assert!(patterned(&read(&value), Pattern::Corners, 10.0).is_none(), "68 are more than 64");
    assert!(patterned(&read(&value), Pattern::Three, 10.0).is_some(), "51 are not");
    value["cabinet"]["feet"] = json!([]);
    assert!(patterned(&read(&value), Pattern::One, 10.0).is_none());
}
