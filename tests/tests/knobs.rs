//! Knobs: what is turned is what a file with the same numbers says, and what a file refuses cannot be built.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::explore::{KNOBS, Knob, edits, turned_both};
use steadfoot::project::{self, Project};
use steadfoot_tests::edited::edited;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

/// Everything that decides, as text with all digits.
fn decisive(project: &Project) -> String {
    let all = (&project.cabinet, &project.contents, &project.slab);
    let values = (project.site.as_ref().map(|one| &one.values), project.anchorage.as_ref().map(|one| &one.values));
    format!("{all:?} {values:?}")
}

const DEMOS: [&str; 7] = [
    "01-empty-frame.json",
    "02-full.json",
    "07-slab-edge.json",
    "10-cannot-be-said.json",
    "11-inch-bolts.json",
    "13-partial-factors.json",
    "20-row-of-cabinets.json",
];

#[test]
fn a_turned_project_is_the_one_that_a_file_with_the_same_numbers_says_and_what_cannot_be_built_has_faults() {
    let (mut built, mut refused) = ([0; KNOBS.len()], 0);
    for file in DEMOS {
        let (value, project) = (demo(file), read(&demo(file)));
        for (place, &(word, knob, _)) in KNOBS.iter().enumerate() {
            let (Some(now), Some([low, high])) = (knob.now(&project), knob.reach(&project)) else { continue };
            assert!(low <= now && now <= high, "{file} {word}: {low} {now} {high}");
            let mut values: Vec<f64> = [0.1, 0.3, 0.7, 1.0, 1.3, 2.0, 5.0].map(|factor| now * factor).into();
            values.extend(knob.notches(&project).into_iter().flatten().map(|notch| notch.value));
            values.extend([low, high, low * 0.999, high * 1.001]);
            for value_now in values {
                // The same numbers, whether it can be built or not, by way of a knob that is never refused.
                let Some(turned) = knob.turned(&project, value_now) else {
                    refused += 1;
                    continue;
                };
                built[place] += 1;
                let again = read(&edited(&value, &edits(&project, &turned)));
                assert_eq!(decisive(&turned), decisive(&again), "{file} {word} at {value_now}");
            }
        }
    }
    assert!(built.iter().all(|&count| count > 0), "every knob was turned: {built:?}");
    assert!(refused > 0);
}

#[test]
fn what_a_file_refuses_cannot_be_built_and_what_it_takes_can() {
    let value = demo("07-slab-edge.json");
    let project = read(&value);
    let mut seen = [0, 0];
    let mut agree = |knob: Knob, turned: f64, edited: Value| {
        let is_read = project::read(&edited.to_string(), System::Si).is_ok();
        assert_eq!(knob.turned(&project, turned).is_some(), is_read, "{knob:?} at {turned}");
        seen[usize::from(is_read)] += 1;
    };
    let nearest = Knob::Edge.now(&project).expect("an edge");
    let side = ["left", "right", "front", "rear"]
        .into_iter()
        .filter(|side| value["slab"]["edges_mm"][side].is_number())
        .min_by(|a, b| {
            let of = |side: &str| value["slab"]["edges_mm"][side].as_f64().expect("a number");
            of(a).total_cmp(&of(b))
        })
        .expect("a side");
    for step in 1..=60 {
        let distance = 5.0 * f64::from(step);
        let mut moved = value.clone();
        for (name, sign) in [("left", 1.0), ("right", 1.0), ("front", 1.0), ("rear", 1.0)] {
            let opposite = [("left", "right"), ("right", "left"), ("front", "rear"), ("rear", "front")];
            let sign = if name == side { sign } else { -1.0 };
            let is_along = name == side || opposite.contains(&(side, name));
            if let Some(edge) = value["slab"]["edges_mm"][name].as_f64().filter(|_| is_along) {
                moved["slab"]["edges_mm"][name] = json!(edge + sign * (distance - nearest));
            }
        }
        agree(Knob::Edge, distance, moved);
        let mut wide = value.clone();
        let now = Knob::Width.now(&project).expect("a width");
        let factor = f64::from(step) / 12.0;
        for list in ["feet", "anchors"] {
            for item in wide["cabinet"][list].as_array_mut().expect("a list") {
                item["at_mm"][0] = json!(item["at_mm"][0].as_f64().expect("x") * (now * factor / now));
            }
        }
        agree(Knob::Width, now * factor, wide);
        let mut deep = value.clone();
        let embedment = 30.0 * f64::from(step);
        deep["anchorage"]["embedment_mm"] = json!(embedment);
        agree(Knob::Embedment, embedment, deep);
    }
    assert!(seen.iter().all(|&count| count > 20), "{seen:?}");
}

#[test]
fn two_knobs_turn_alike_whichever_is_named_first() {
    let project = read(&demo("07-slab-edge.json"));
    for (_, a, _) in KNOBS {
        for (_, b, _) in KNOBS {
            let (Some(of_a), Some(of_b)) = (a.now(&project), b.now(&project)) else { continue };
            let (of_a, of_b) = (of_a * 1.05, of_b * 1.1);
            let one = turned_both(&project, [(a, of_a), (b, of_b)]);
            let other = turned_both(&project, [(b, of_b), (a, of_a)]);
            assert_eq!(one.is_some(), other.is_some());
            if let Some((one, other)) = one.zip(other) {
                assert_eq!(decisive(&one), decisive(&other), "{a:?} {b:?}");
                for (knob, wanted) in [(a, of_a), (b, of_b)] {
                    let reached = knob.now(&one).expect("still there");
                    assert!((reached / wanted - 1.0).abs() < 1e-9, "{a:?} {b:?}: {knob:?} {reached} {wanted}");
                }
            }
        }
    }
}
