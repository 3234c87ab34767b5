//! What matters most, and what to move down: what is told is what a plain file comes to.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::{StepId, System};
use steadfoot::explore::{Reorder, WhatMatters};
use steadfoot::project::{self, Project, assess};
use steadfoot::report::drawing::{self, Painter};
use steadfoot::report::outcome::Verdict;
use steadfoot::report::plot::PlotName;
use steadfoot::study::Picture;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

/// Verdict, governing check and its utilisation, by the whole report.
fn came(value: &Value) -> (Verdict, Option<f64>) {
    let report = assess(&read(value));
    (report.verdict, report.governs.and_then(|place| report.checks[place].utilisation))
}

#[test]
fn every_group_moves_what_governs_as_far_as_a_changed_file_does() {
    let file = demo("51-filled-from-the-top.json");
    let mut search = WhatMatters::new(&read(&file));
    search.finish();
    assert_eq!(search.progress()[0], search.progress()[1]);
    let ranked = search.ranked();
    let moved = |path: &str| ranked.iter().find(|(group, _)| group.path == path).unwrap_or_else(|| panic!("{path}")).1;
    for (side, factor) in [(0, 0.9), (1, 1.1)] {
        let scaled = |change: &dyn Fn(&mut Value)| {
            let mut changed = file.clone();
            change(&mut changed);
            came(&changed)
        };
        let times = |value: &mut Value| *value = json!(value.as_f64().unwrap() * factor);
        let by_hand: [(&str, (Verdict, Option<f64>)); 4] = [
            ("anchorage.embedment_mm", scaled(&|file| times(&mut file["anchorage"]["embedment_mm"]))),
            ("cabinet.frame.centre_mm[2]", scaled(&|file| times(&mut file["cabinet"]["frame"]["centre_mm"][2]))),
            (
                "contents[*].mass_kg",
                scaled(&|file| {
                    file["contents"].as_array_mut().unwrap().iter_mut().for_each(|one| times(&mut one["mass_kg"]))
                }),
            ),
            (
                "cabinet.anchors[*].at_mm",
                scaled(&|file| {
                    for anchor in file["cabinet"]["anchors"].as_array_mut().unwrap() {
                        anchor["at_mm"].as_array_mut().unwrap().iter_mut().for_each(times);
                    }
                }),
            ),
        ];
        for (path, (verdict, used)) in by_hand {
            let trial = moved(path)[side].expect("it can be built");
            assert_eq!((trial.verdict, trial.utilisation), (verdict, used), "{path} times {factor}");
        }
    }
    // A place that is zero is moved by 25 mm.
    let mut shifted = file.clone();
    shifted["cabinet"]["frame"]["centre_mm"][0] = json!(25);
    assert_eq!(moved("cabinet.frame.centre_mm[0]")[1].unwrap().utilisation, came(&shifted).1);
    // An importance factor above its limit is no value that may be given.
    assert_eq!(moved("site.importance_factor")[1], None);
    let spans: Vec<f64> = ranked.iter().map(|(_, moved)| search.span(moved)).collect();
    assert!(spans.windows(2).all(|pair| pair[0] >= pair[1]));
    // Every number of the file that is not zero is in one group.
    let grouped: usize = ranked.iter().map(|(group, _)| group.numbers.len()).sum();
    let zero = project::numbers(&read(&file)).iter().filter(|number| number.value == 0.0).count();
    assert!(grouped >= project::numbers(&read(&file)).len() - zero);
}

/// Painted on any width, bars stay in their order and every name stands above its own.
#[test]
fn bars_are_painted_with_their_names_on_a_phone_too() {
    let shown = (steadfoot::study::study("what-matters").unwrap().make)(&read(&demo("02-full.json")), "").unwrap();
    let Picture::Bars(bars) = &shown.pictures[0] else { panic!("bars are expected") };
    let words = |id: StepId| steadfoot::study::text(id).map_or(String::new(), |row| row.what.into());
    for width_px in [240.0, 320.0, 720.0] {
        let drawing =
            drawing::bars(bars, &Painter { width_px, system: System::Si, words: &words, inputs: &|path| path.into() });
        let levels: Vec<f64> = bars
            .bars
            .iter()
            .map(|bar| {
                let PlotName::Input(name) = &bar.name else { panic!("inputs have labels") };
                drawing.marks.iter().find(|mark| mark.text == *name).unwrap_or_else(|| panic!("{name}")).points[0][1]
            })
            .collect();
        let tops: Vec<f64> =
            drawing.marks.iter().filter(|mark| mark.class == "steel").map(|mark| mark.points[0][1]).collect();
        assert_eq!(tops.len(), levels.len());
        for (place, (level, top)) in levels.iter().zip(&tops).enumerate() {
            assert!(level < top && (place == 0 || *level > tops[place - 1]), "bar {place} at {width_px} px");
        }
    }
}

#[test]
fn portions_find_what_one_go_finds() {
    let project = read(&demo("51-filled-from-the-top.json"));
    let (mut whole, mut portions) = (WhatMatters::new(&project), WhatMatters::new(&project));
    whole.finish();
    while portions.next(3) {}
    assert_eq!(whole.ranked(), portions.ranked());
    let (mut whole, mut portions) = (Reorder::new(&project).unwrap(), Reorder::new(&project).unwrap());
    whole.finish();
    while portions.next(3) {}
    assert_eq!(
        (whole.tried, &whole.best, &whole.one_exchange),
        (portions.tried, &portions.best, &portions.one_exchange)
    );
}

/// The file with its contents at the heights of another project.
fn restacked(file: &Value, like: &Project) -> Value {
    let mut changed = file.clone();
    for (content, other) in changed["contents"].as_array_mut().unwrap().iter_mut().zip(&like.contents) {
        content["bottom_mm"] = json!(other.bottom_mm);
        content["offset_mm"] = json!(other.offset_mm);
    }
    changed
}

fn assert_apart(project: &Project) {
    let mut boxes: Vec<(f64, f64)> =
        project.contents.iter().map(|one| (one.bottom_mm, one.bottom_mm + one.size_mm[2])).collect();
    boxes.sort_by(|a, b| a.0.total_cmp(&b.0));
    assert!(boxes.windows(2).all(|pair| pair[0].1 <= pair[1].0 + 1e-9), "{boxes:?}");
}

#[test]
fn the_best_order_is_what_a_plain_file_says_and_nothing_overlaps() {
    let file = demo("51-filled-from-the-top.json");
    let mut search = Reorder::new(&read(&file)).expect("there is something to move");
    search.finish();
    assert!(search.is_stack());
    let tops = |project: &Project| {
        project.contents.iter().map(|one| one.bottom_mm + one.size_mm[2]).fold(f64::NEG_INFINITY, f64::max)
    };
    let before = read(&file);
    let one = search.one_exchange.clone().expect("an exchange gains").0;
    for ordered in [&search.best, &one] {
        let after = search.project(&ordered.order);
        assert_apart(&after);
        assert!((tops(&after) - tops(&before)).abs() < 1e-9, "the stack is as tall as before");
        let mut sizes: Vec<String> =
            after.contents.iter().map(|one| format!("{:?} {}", one.size_mm, one.mass_kg)).collect();
        let mut known: Vec<String> =
            before.contents.iter().map(|one| format!("{:?} {}", one.size_mm, one.mass_kg)).collect();
        sizes.sort();
        known.sort();
        assert_eq!(sizes, known);
        assert_eq!(came(&restacked(&file, &after)), (ordered.verdict, ordered.bolted));
    }
    assert!(search.best.bolted < one.bolted && one.bolted < search.now.bolted);
    assert!(search.best.free <= search.now.free);
    // No exchange of two from the best gains anything, as a plain file says.
    let best = search.project(&search.best.order);
    let mut exchanged = 0;
    for (a, b) in [(0, 1), (0, 7), (3, 4), (2, 5)] {
        let mut order = search.best.order.clone();
        let (first, second) =
            (order.iter().position(|&one| one == a).unwrap(), order.iter().position(|&one| one == b).unwrap());
        order.swap(first, second);
        if best.contents[a].mass_kg != best.contents[b].mass_kg {
            let used = came(&restacked(&file, &search.project(&order))).1.unwrap();
            assert!(used >= search.best.bolted.unwrap() * (1.0 - 1e-6), "{a} and {b}");
            exchanged += 1;
        }
    }
    assert!(exchanged > 1);
}

#[test]
fn side_by_side_only_those_of_one_size_change_places() {
    let mut file = demo("02-full.json");
    let content = |name: &str, mass: f64, bottom: f64, x: f64, high: f64| json!({ "name": name, "mass_kg": mass, "bottom_mm": bottom, "size_mm": [500, 1100, high], "offset_mm": [x, 0] });
    file["contents"] = json!([
        content("a", 200.0, 200.0, -260.0, 300.0),
        content("b", 250.0, 200.0, 260.0, 400.0),
        content("c", 900.0, 1500.0, -260.0, 300.0),
        content("d", 800.0, 1400.0, 260.0, 400.0),
    ]);
    let mut search = Reorder::new(&read(&file)).expect("two of a size can change places");
    assert!(!search.is_stack());
    search.finish();
    let after = search.project(&search.best.order);
    let place = |name: &str| {
        let one = after.contents.iter().find(|one| one.name == name).unwrap();
        (one.bottom_mm, one.offset_mm[0])
    };
    assert_eq!([place("a"), place("c")], [(1500.0, -260.0), (200.0, -260.0)]);
    assert_eq!([place("b"), place("d")], [(1400.0, 260.0), (200.0, 260.0)]);
}

#[test]
fn where_nothing_can_change_places_nothing_is_searched() {
    assert!(Reorder::new(&read(&demo("01-empty-frame.json"))).is_none());
    let mut alike = demo("02-full.json");
    for content in alike["contents"].as_array_mut().unwrap() {
        content["mass_kg"] = json!(300);
    }
    assert!(Reorder::new(&read(&alike)).is_none());
}
