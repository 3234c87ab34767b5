//! How far can it go: the intervals hold, the highest zone is that of trying every zone, the largest load that of a scan.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::explore::{Ending, Limit, LimitOf, What, limits, scaled_load, scaled_strength, turned};
use steadfoot::project::{self, Project, quick};
use steadfoot::report::outcome::Verdict;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn find(limits: &[Limit], of: LimitOf, what: What) -> &Limit {
    limits.iter().find(|limit| limit.of == of && limit.what == what).expect("the limit is told")
}

fn holds(project: &Project) -> bool {
    quick(project).0 == Verdict::Holds
}

#[test]
fn it_holds_at_the_low_end_and_not_at_the_high_end() {
    for file in
        ["02-full.json", "03-part-filled.json", "06-upper-floor.json", "07-slab-edge.json", "11-inch-bolts.json"]
    {
        let project = read(&demo(file));
        let found = limits(&project);
        let demand = find(&found, LimitOf::Bolted, What::Demand);
        assert_eq!(demand.ending, Ending::Bracketed, "{file}: {demand:?}");
        let (low, high) = (demand.low.expect("low"), demand.high.expect("high"));
        assert!(low < high && high - low <= 5e-4 * high);
        assert!(holds(&scaled_strength(&project, low).expect("a field")), "{file} holds at {low}");
        assert!(!holds(&scaled_strength(&project, high).expect("a field")), "{file} does not hold at {high}");
        let load = find(&found, LimitOf::Bolted, What::Load);
        let (low, high) = (load.low.expect("low"), load.high.expect("high"));
        assert!(holds(&scaled_load(&project, low / load.now)), "{file} holds with {low} kg");
        assert!(!holds(&scaled_load(&project, high / load.now)), "{file} does not hold with {high} kg");
        assert!(load.governs.is_some() && demand.governs.is_some());
    }
}

#[test]
fn the_largest_load_is_that_of_a_scan_of_two_thousand_points() {
    let project = read(&demo("02-full.json"));
    let found = limits(&project);
    let load = find(&found, LimitOf::Bolted, What::Load);
    let (low, high) = (load.low.expect("low"), load.high.expect("high"));
    let (mut last_holding, mut first_failing) = (0.0, f64::INFINITY);
    for point in 1..=2000 {
        let mass = high * 1.5 * point as f64 / 2000.0;
        if holds(&scaled_load(&project, mass / load.now)) {
            last_holding = mass;
        } else if first_failing.is_infinite() {
            first_failing = mass;
        }
    }
    assert!(last_holding < first_failing, "the scan finds one limit");
    let step = high * 1.5 / 2000.0;
    assert!((low - last_holding).abs() <= step + 1e-3 * high && (high - first_failing).abs() <= step + 1e-3 * high);
}

#[test]
fn the_highest_zone_is_that_of_trying_every_zone() {
    let mut value = demo("10-cannot-be-said.json");
    value["site"]["seismic_source"] = json!("C");
    let mut met = Vec::new();
    for overstrength in [1.0, 1.6, 2.5, 3.2, 4.0, 5.0] {
        value["anchorage"]["overstrength"] = json!(overstrength);
        value["anchorage"]["bolt"] = json!("M12");
        value["site"]["zone"] = json!("2B");
        let found = limits(&read(&value));
        let zone = find(&found, LimitOf::Bolted, What::Zone);
        let holds_in = |name: &&&str| {
            let mut value = value.clone();
            value["site"]["zone"] = json!(name);
            holds(&read(&value))
        };
        let highest = ["1", "2A", "2B", "3", "4"].iter().take_while(holds_in).last().copied();
        assert_eq!(zone.zone, highest, "with overstrength {overstrength}: {zone:?}");
        met.push(highest);
    }
    met.dedup();
    assert!(met.len() >= 3, "the limit lies at different zones: {met:?}");
}

#[test]
fn a_cabinet_that_slides_at_any_push_is_told_so() {
    let mut value = demo("02-full.json");
    value["slab"]["friction"] = json!(0.0);
    let found = limits(&read(&value));
    assert_eq!(find(&found, LimitOf::Free, What::Demand).ending, Ending::NeverHolds);
}

#[test]
fn a_cabinet_that_is_not_covered_has_no_limit() {
    let found = limits(&read(&demo("10-cannot-be-said.json")));
    assert_eq!(find(&found, LimitOf::Bolted, What::Load).ending, Ending::CannotBeSaid);
}

#[test]
fn without_contents_or_without_a_rule_there_is_no_such_limit() {
    assert!(limits(&read(&demo("01-empty-frame.json"))).iter().all(|limit| limit.what != What::Load));
    let mut value = demo("02-full.json");
    value.as_object_mut().expect("an object").remove("site");
    assert!(limits(&read(&value)).is_empty());
}

#[test]
fn a_turned_number_becomes_what_the_reader_turned_it_to() {
    let mut value = demo("02-full.json");
    for edit in turned(&read(&value), "load", 1520.0) {
        let place: usize =
            edit.path.trim_start_matches("contents[").split(']').next().and_then(|n| n.parse().ok()).expect("a place");
        value["contents"][place]["mass_kg"] = json!(edit.value);
    }
    let aboard: f64 = read(&value).contents.iter().map(|content| content.mass_kg).sum();
    assert!((aboard - 1520.0).abs() < 0.5, "{aboard}");
    let edits = turned(&read(&value), "strength", 0.60);
    assert_eq!((edits.len(), edits[0].path.as_str()), (1, "site.s_ds"));
    value["site"]["s_ds"] = json!(edits[0].value);
    let report = project::assess(&read(&value));
    let push =
        report.checks.iter().find(|check| check.id == "free.tipping").and_then(|check| check.value).expect("a push");
    assert!((push - 0.60).abs() < 0.001, "{push}");
    assert!(turned(&read(&value), "load", f64::NAN).is_empty() && turned(&read(&value), "anything", 1.0).is_empty());
}
