//! What would hold: what is told to hold does on a full assessment, and one step less of anything does not.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::explore::{CHANGES, Change, Refusal, Rungs, WhatWouldHold};
use steadfoot::project::{self, Project, assess};
use steadfoot::report::outcome::Verdict;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn searched(value: &Value) -> WhatWouldHold {
    let mut search = WhatWouldHold::new(&read(value)).expect("there is something to search");
    search.finish();
    search
}

fn holds(search: &WhatWouldHold, rungs: Rungs) -> bool {
    search.project(rungs).is_some_and(|project| assess(&project).verdict == Verdict::Holds)
}

#[test]
fn the_smallest_that_hold_do_and_one_step_less_of_anything_does_not() {
    for file in ["07-slab-edge.json", "09-must-not-pass.json", "11-inch-bolts.json"] {
        let search = searched(&demo(file));
        let frontier = search.frontier();
        assert!(!frontier.is_empty(), "{file}");
        for entry in &frontier {
            let report = assess(&search.project(entry.rungs).expect("it can be built"));
            assert_eq!(report.verdict, Verdict::Holds, "{file} {:?}", entry.rungs);
            let governing = &report.checks[report.governs.expect("something governs")];
            assert_eq!(entry.trial.governs.map(|check| check.id()), Some(governing.id), "{file}");
            assert_eq!(entry.trial.utilisation, governing.utilisation, "{file}");
            for change in 0..CHANGES.len() {
                let mut less = entry.rungs;
                if less[change] > 0 {
                    less[change] -= 1;
                    assert!(!holds(&search, less), "{file}: {less:?} is less than {:?} and holds", entry.rungs);
                }
            }
        }
        for a in &frontier {
            let is_covered = |b: Rungs| a.rungs != b && a.rungs.iter().zip(b).all(|(a, b)| *a >= b);
            assert!(
                !frontier.iter().any(|b| is_covered(b.rungs)),
                "{file}: no entry is more than another in everything"
            );
        }
    }
}

#[test]
fn one_change_alone_is_the_first_of_its_values_that_holds() {
    let search = searched(&demo("09-must-not-pass.json"));
    let mut found = 0;
    for (place, &change) in CHANGES.iter().enumerate() {
        let count = search.ladders[place].rungs.len();
        let first = (0..count).find(|&rung| {
            let mut rungs = search.now();
            rungs[place] = rung as u8;
            holds(&search, rungs)
        });
        let told = search.alone(change).map(|entry| entry.rungs[place] as usize);
        assert_eq!(told, first, "{change:?}");
        found += usize::from(first.is_some());
        assert_eq!(search.along(place).len(), count, "every value of {change:?} is told");
    }
    assert!(found > 0, "some single change is enough here");
}

#[test]
fn a_search_in_small_portions_finds_the_same_as_one_at_once() {
    let value = demo("07-slab-edge.json");
    let whole = searched(&value);
    let mut portions = WhatWouldHold::new(&read(&value)).expect("there is something to search");
    let mut calls = 0;
    while portions.next(17) {
        calls += 1;
    }
    assert!(calls > 10, "{calls}");
    assert_eq!(portions.frontier(), whole.frontier());
    assert_eq!(portions.tried, whole.tried);
    assert_eq!(whole.count(), 2268);
    assert!(whole.sweeps() < 80, "{} sweeps for {} variants", whole.sweeps(), whole.tried);
}

#[test]
fn the_present_value_is_a_rung_and_the_rungs_rise() {
    for file in ["02-full.json", "07-slab-edge.json", "09-must-not-pass.json", "11-inch-bolts.json"] {
        let value = demo(file);
        let search = WhatWouldHold::new(&read(&value)).expect("there is something to search");
        for ladder in &search.ladders {
            let values: Vec<f64> = ladder.rungs.iter().map(|rung| rung.value).collect();
            assert!(values.windows(2).all(|pair| pair[0] < pair[1]), "{file} {:?}: {values:?}", ladder.change);
        }
        let present = search.ladders.each_ref().map(|ladder| ladder.present().value);
        assert_eq!(present[1], value["anchorage"]["embedment_mm"].as_f64().expect("a number"), "{file}");
        assert_eq!(present[3], value["slab"]["strength_mpa"].as_f64().expect("a number"), "{file}");
        assert_eq!(present[4], value["cabinet"]["anchors"].as_array().expect("a list").len() as f64, "{file}");
        let same = search.project(search.now()).expect("the present one can be built");
        assert_eq!(format!("{same:?}"), format!("{:?}", read(&value)), "{file}: nothing is changed by no change");
    }
}

#[test]
fn what_an_anchor_has_of_its_own_is_not_changed_for_all() {
    let mut value = demo("07-slab-edge.json");
    value["cabinet"]["anchors"][0]["bolt"] = json!("M24");
    let search = WhatWouldHold::new(&read(&value)).expect("there is something to search");
    assert!(!search.ladders[0].is_open() && search.ladders[1].is_open());
    value["cabinet"]["anchors"][1]["embedment_mm"] = json!(120);
    let search = WhatWouldHold::new(&read(&value)).expect("there is something to search");
    assert!(!search.ladders[1].is_open());
}

#[test]
fn what_an_approval_says_of_one_product_is_not_stretched_to_others() {
    let mut value = demo("07-slab-edge.json");
    let anchorage = value["anchorage"].as_object_mut().expect("an object");
    anchorage.insert("anchor_kind".into(), json!("undercut"));
    let search = WhatWouldHold::new(&read(&value)).expect("there is something to search");
    assert!(!search.ladders[0].is_open() && !search.ladders[1].is_open(), "size and embedment stay");
    assert!(search.ladders[2].is_open() && search.ladders[3].is_open(), "edge and concrete do not");
}

#[test]
fn without_slab_anchors_or_demand_there_is_nothing_to_search() {
    let mut value = demo("02-full.json");
    value.as_object_mut().expect("an object").remove("site");
    assert_eq!(WhatWouldHold::new(&read(&value)).err(), Some(Refusal::NoDemand));
    let mut value = demo("02-full.json");
    value["cabinet"]["anchors"] = json!([]);
    assert_eq!(WhatWouldHold::new(&read(&value)).err(), Some(Refusal::NoAnchorage));
    let mut value = demo("02-full.json");
    value.as_object_mut().expect("an object").remove("slab");
    assert_eq!(WhatWouldHold::new(&read(&value)).err(), Some(Refusal::NoAnchorage));
}

#[test]
fn a_cabinet_moved_away_from_its_edge_keeps_its_feet_on_the_slab() {
    let mut value = demo("07-slab-edge.json");
    // A second edge close behind: moving away from the first one would push the feet over it.
    let (at, edges) = (value["cabinet"]["feet"].clone(), &mut value["slab"]["edges_mm"]);
    let rearmost =
        at.as_array().expect("a list").iter().map(|foot| foot["at_mm"][1].as_f64().expect("y")).fold(0.0, f64::max);
    edges["rear"] = json!(rearmost + 90.0);
    if edges["front"].is_null() {
        edges["front"] = json!(760);
    }
    let search = WhatWouldHold::new(&read(&value)).expect("there is something to search");
    let place = CHANGES.iter().position(|&change| change == Change::Edge).expect("it is one of them");
    for rung in 0..search.ladders[place].rungs.len() {
        let mut rungs = search.now();
        rungs[place] = rung as u8;
        let Some(project) = search.project(rungs) else { continue };
        let outline = project.slab.expect("there is one").outline;
        for foot in &project.cabinet.feet {
            let foot = foot.rectangle();
            assert!(foot.front_mm >= outline.front_mm - 1e-9 && foot.rear_mm <= outline.rear_mm + 1e-9);
        }
    }
}
