//! Not known is an answer: what is told of ranges and sets is what trying every corner by hand finds.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::explore::{Came, Unknowns, assess_open};
use steadfoot::input::Problem;
use steadfoot::project::{self, Project, assess};
use steadfoot::report::answer::Topic;
use steadfoot::report::not_known::{Tried, ValueTold};
use steadfoot::report::outcome::{Report, Verdict};
use steadfoot::report::print_sentence;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

/// The full cabinet with other values at some places.
fn full(changes: &[(&str, Value)]) -> Value {
    let mut file = demo("02-full.json");
    for (place, value) in changes {
        *file.pointer_mut(place).unwrap_or_else(|| panic!("{place}")) = value.clone();
    }
    file
}

fn tried(report: &Report) -> &Tried {
    report.unknown.as_ref().and_then(|unknown| unknown.tried.as_ref()).expect("it was tried")
}

const EMBEDMENT: &str = "/anchorage/embedment_mm";
const STRENGTH: &str = "/slab/strength_mpa";
const CRACKED: &str = "/slab/cracked";
const BOLT: &str = "/anchorage/bolt";

#[test]
fn every_corner_came_to_what_the_plain_file_comes_to() {
    let ends: [(&str, [Value; 2]); 3] = [
        (STRENGTH, [json!(21), json!(32)]),
        (CRACKED, [json!(true), json!(false)]),
        (EMBEDMENT, [json!(60), json!(120)]),
    ];
    let open = |(place, [low, high]): &(&'static str, [Value; 2])| {
        let key = if low.is_number() { "between" } else { "one_of" };
        (*place, json!({ key: [low, high] }))
    };
    let project = read(&full(&ends.iter().map(open).collect::<Vec<_>>()));
    let paths: Vec<&str> = project.open.iter().map(|open| open.path.as_str()).collect();
    assert_eq!(paths, ["slab.strength_mpa", "slab.cracked", "anchorage.embedment_mm"]);
    let mut unknowns = Unknowns::new(&project).expect("something is open");
    unknowns.finish();
    let (mut holds, mut fails) = (0, 0);
    for corner in 0..8 {
        let plain: Vec<(&str, Value)> = (0..3).map(|at| (ends[at].0, ends[at].1[corner >> at & 1].clone())).collect();
        let verdict = assess(&read(&full(&plain))).verdict;
        let number = |value: &Value| value.as_f64().unwrap_or_else(|| f64::from(u8::from(value == &json!(true))));
        let point: Vec<f64> = plain.iter().map(|(_, value)| number(value)).collect();
        let (_, came) = unknowns.tried().find(|(tried, _)| *tried == point).unwrap_or_else(|| panic!("{point:?}"));
        let Came::To(trial) = came else { panic!("{point:?} can be built") };
        assert_eq!(trial.verdict, verdict, "{point:?}");
        holds += usize::from(verdict == Verdict::Holds);
        fails += usize::from(verdict == Verdict::DoesNotHold);
    }
    assert!(holds > 0 && fails > 0, "corners of both kinds make a test: {holds} and {fails}");
    let report = unknowns.report();
    assert_eq!(report.verdict, Verdict::CannotBeSaid);
    let told = tried(&report);
    assert_eq!(told.holds + told.fails + told.unsaid + told.unbuilt, told.tried);
    assert!(told.holds >= holds && told.fails >= fails && told.tried == told.of);
}

#[test]
fn what_is_told_to_fail_nearest_and_to_have_least_to_spare_does_so_in_a_plain_file() {
    let report = assess_open(&read(&demo("50-nobody-knows.json")));
    let plain = |values: &[ValueTold]| {
        let mut file = demo("50-nobody-knows.json");
        for (input, value) in report.unknown.as_ref().unwrap().inputs.iter().zip(values) {
            let place = format!("/{}", input.path.replace('.', "/"));
            *file.pointer_mut(&place).unwrap() = match value {
                ValueTold::Number(number) => json!(number),
                ValueTold::Word(word) => json!(word == &"true"),
            };
        }
        assess(&read(&file))
    };
    let (nearest, closest) = (tried(&report).nearest.as_ref().unwrap(), tried(&report).closest.as_ref().unwrap());
    for (point, verdict) in [(nearest, Verdict::DoesNotHold), (closest, Verdict::Holds)] {
        let there = plain(&point.values);
        assert_eq!(there.verdict, verdict);
        let governing = &there.checks[there.governs.unwrap()];
        assert_eq!((Some(governing.id), governing.utilisation), (point.governs, point.utilisation));
    }
    let sections = {
        let mut unknowns = Unknowns::new(&read(&demo("50-nobody-knows.json"))).unwrap();
        unknowns.finish();
        unknowns.working()
    };
    assert!(sections.iter().any(|section| section.check.map(|check| check.id()) == nearest.governs));
}

#[test]
fn one_measurement_settles_what_its_parts_say() {
    let report = assess_open(&read(&demo("50-nobody-knows.json")));
    let first = &tried(&report).settles[0];
    assert_eq!(report.unknown.as_ref().unwrap().inputs[first.input].path, "anchorage.embedment_mm");
    assert!(first.decides > 0.9);
    for settles in &tried(&report).settles {
        let agree = |part: &&steadfoot::report::not_known::Part| part.holds == 0 || part.holds == part.tried;
        assert_eq!(settles.parts.iter().any(|part| agree(&part)), settles.decides > 0.0);
        assert_eq!(settles.parts.iter().map(|part| part.tried).sum::<usize>(), tried(&report).tried);
        assert!((0.0..=1.0).contains(&settles.decides));
    }
    let decides: Vec<f64> = tried(&report).settles.iter().map(|settles| settles.decides).collect();
    assert!(decides.windows(2).all(|pair| pair[0] >= pair[1]));
}

#[test]
fn a_range_of_no_width_is_the_number_itself() {
    let plain = assess(&read(&full(&[(EMBEDMENT, json!(100))])));
    let none = read(&full(&[(EMBEDMENT, json!({ "between": [100, 100] }))]));
    assert!(none.open.is_empty());
    assert_eq!(assess_open(&none), plain);
}

#[test]
fn narrowing_a_range_never_turns_all_into_none_nor_none_into_all() {
    let verdicts = |low: f64, high: f64| {
        let report = assess_open(&read(&full(&[
            (EMBEDMENT, json!({ "between": [low, high] })),
            (STRENGTH, json!({ "between": [21, 32] })),
        ])));
        let told = tried(&report);
        (told.holds == told.tried, told.holds == 0)
    };
    for (low, high) in [(90.0, 140.0), (60.0, 68.0), (60.0, 120.0)] {
        let (all, none) = verdicts(low, high);
        for share in [0.1, 0.3, 0.45] {
            let by = share * (high - low);
            let narrow = verdicts(low + by, high - by);
            assert!((!all || !narrow.1) && (!none || !narrow.0), "{low} to {high}, narrowed by {by}");
            assert!(!all || narrow.0, "all of {low} to {high} holds, so what lies within does here");
        }
    }
}

#[test]
fn the_stand_in_alone_never_gives_the_verdict() {
    for embedment in [json!({ "between": [90, 140] }), json!({ "between": [60, 120] })] {
        let project = read(&full(&[(EMBEDMENT, embedment)]));
        let report = assess(&project);
        assert_eq!(report.verdict, Verdict::CannotBeSaid);
        assert_eq!(report.answer[0].topic, Topic::Unknown);
        let sentence = print_sentence(&report.answer[0], System::Si);
        assert!(sentence.contains("has not been tried"), "{sentence}");
        let unknown = report.unknown.as_ref().expect("it says what is not known");
        assert!(unknown.tried.is_none());
        // What it stands for is the middle.
        let middle = (unknown.inputs[0].may_be[0], unknown.inputs[0].may_be[1], unknown.inputs[0].stand_in);
        let (ValueTold::Number(low), ValueTold::Number(high), ValueTold::Number(now)) = middle else { panic!() };
        assert_eq!(now, (low + high) / 2.0);
    }
    let all = assess_open(&read(&full(&[(EMBEDMENT, json!({ "between": [90, 140] }))])));
    assert_eq!(all.verdict, Verdict::Holds);
    assert!(print_sentence(&all.answer[0], System::Si).contains("tried, not proved"));
    let none = assess_open(&read(&full(&[(EMBEDMENT, json!({ "between": [60, 64] })), (STRENGTH, json!(21))])));
    assert_eq!(none.verdict, Verdict::DoesNotHold);
    assert!(none.unknown.unwrap().tried.unwrap().settles.is_empty(), "nothing is left to decide");
}

#[test]
fn trying_in_portions_finds_the_same() {
    let project = read(&demo("50-nobody-knows.json"));
    let mut unknowns = Unknowns::new(&project).unwrap();
    let of = unknowns.progress()[1];
    let mut portions = 0;
    while unknowns.next(10) {
        portions += 1;
        assert_eq!(unknowns.progress(), [10 * portions, of]);
        // Whoever stops here is told that it was stopped, and no verdict that needs all.
        let report = unknowns.report();
        assert_ne!(report.verdict, Verdict::Holds);
        assert!(report.answer.iter().any(|one| print_sentence(one, System::Si).contains("was stopped before all")));
    }
    assert_eq!(unknowns.report(), assess_open(&project));
}

#[test]
fn what_cannot_be_built_is_counted_and_told() {
    // The slab's rear edge may lie where the rear anchors would be outside it.
    let file = full(&[("/slab/edges_mm/rear", json!({ "between": [500, 2400] }))]);
    let report = assess_open(&read(&file));
    let told = tried(&report);
    assert!(told.unbuilt > 0 && told.holds > 0);
    assert_eq!(report.verdict, Verdict::CannotBeSaid);
    assert!(report.answer.iter().any(|one| print_sentence(one, System::Si).contains("cannot be built")));
    if told.fails == 0 {
        assert!(told.nearest.as_ref().unwrap().fault.as_ref().unwrap().contains("slab"));
    }
}

#[test]
fn another_way_stands_in_where_the_middle_cannot_be_built() {
    // Feet that are twice as far apart as the slab is wide would leave it; only the first of the words fits.
    let file = full(&[("/slab/edges_mm/rear", json!({ "between": [300, 900] }))]);
    let project = read(&file);
    assert_eq!(project.open[0].stand_in, 900.0);
    let report = assess(&project);
    assert!(report.answer.iter().any(|one| print_sentence(one, System::Si).contains("cannot.")));
    // Where nothing can be built, the faults are those of the middle.
    let faults =
        project::read(&full(&[("/slab/edges_mm/rear", json!({ "between": [300, 500] }))]).to_string(), System::Si)
            .unwrap_err();
    assert!(faults.iter().all(|fault| fault.problem == Problem::OutsideSlab), "{faults:?}");
}

#[test]
fn the_fingerprint_tells_what_may_be() {
    let fingerprint = |value: Value| read(&full(&[(EMBEDMENT, value)])).fingerprint;
    let mut all = vec![
        fingerprint(json!(100)),
        fingerprint(json!({ "between": [90, 110] })),
        fingerprint(json!({ "between": [80, 120] })),
    ];
    assert_eq!(fingerprint(json!({ "between": [100, 100] })), all[0]);
    assert_eq!(fingerprint(json!({ "between": [90.0, 1.1e2] })), all[1]);
    all.extend(
        [json!(["M16", "M20"]), json!(["M20", "M16"]), json!(["M20", "M24"])]
            .map(|words| read(&full(&[(BOLT, json!({ "one_of": words }))])).fingerprint),
    );
    let count = all.len();
    all.sort();
    all.dedup();
    assert_eq!(all.len(), count, "two inputs have one fingerprint");
}

#[test]
fn eight_may_be_open_and_nine_may_not() {
    let open = |count: usize| {
        let mut file = demo("02-full.json");
        for place in 0..count {
            file["contents"][place % 8]["mass_kg"] = json!({ "between": [150, 160] });
            if place >= 8 {
                file["cabinet"]["frame"]["mass_kg"] = json!({ "between": [700, 720] });
            }
        }
        file.to_string()
    };
    let project = project::read(&open(8), System::Si).expect("eight are read");
    let unknowns = Unknowns::new(&project).unwrap();
    assert_eq!(unknowns.progress()[1], 256 + 1 + 40);
    let faults = project::read(&open(9), System::Si).unwrap_err();
    assert_eq!((faults.len(), faults[0].problem), (1, Problem::TooMany));
}

#[test]
fn more_corners_than_can_be_tried_are_spread_over_all_words() {
    let bolts = ["M10", "M12", "M16", "M20", "M24", "M27", "M30", "M36"];
    let steels = ["f1554-36", "f1554-55", "f1554-105"];
    let mut changes = vec![(BOLT, json!({ "one_of": bolts })), ("/anchorage/steel", json!({ "one_of": steels }))];
    for place in ["/contents/0/mass_kg", "/contents/1/mass_kg", "/contents/2/mass_kg", "/contents/3/mass_kg"] {
        changes.push((place, json!({ "between": [400, 600] })));
    }
    let project = read(&full(&changes));
    let mut unknowns = Unknowns::new(&project).unwrap();
    assert!(unknowns.progress()[1] <= 256 + 1 + 40);
    unknowns.finish();
    let bolt = project.open.iter().position(|open| open.path == "anchorage.bolt").unwrap();
    for place in project.open[bolt].ends() {
        assert!(unknowns.tried().any(|(point, _)| point[bolt] == place), "{place} was never tried");
    }
}
