//! How far each input may go: brackets lie where a scan finds them, one check goes as far as it goes, zones have names.

use std::path::PathBuf;
use std::sync::LazyLock;

use serde_json::{Value, json};
use steadfoot::calc::{CheckId, System};
use steadfoot::explore::{Ending, Found, HowFar, Knob, LimitOf, Ranged, Standing, What, edits, limits};
use steadfoot::project::{self, Project, quick};
use steadfoot::report::outcome::Verdict;
use steadfoot::report::table::Cell;
use steadfoot::study;
use steadfoot_tests::edited::edited;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

/// How far everything goes beside an edge, searched once for all tests.
static BESIDE_AN_EDGE: LazyLock<HowFar> = LazyLock::new(|| {
    let mut search = HowFar::new(&read(&demo("07-slab-edge.json")), None);
    search.finish();
    search
});

fn ranged(search: &HowFar, knob: Knob) -> &Ranged {
    search.ranges.iter().find(|one| one.knob == knob).expect("the knob is there")
}

#[test]
fn stretches_are_those_of_a_scan_of_the_whole_reach_and_both_ends_of_a_bracket_are_true() {
    let project = read(&demo("07-slab-edge.json"));
    let search = &*BESIDE_AN_EDGE;
    let holds = |turned: Option<Project>| turned.is_some_and(|turned| quick(&turned).0 == Verdict::Holds);
    let mut brackets = 0;
    for one in &search.ranges {
        let knob = one.knob;
        let stretches = one.stretches();
        for bound in stretches.iter().flat_map(|stretch| [stretch.from, stretch.to]) {
            assert!(holds(knob.turned(&project, bound.holds)), "{knob:?} holds at {}", bound.holds);
            if let Some((beyond, found)) = bound.beyond {
                assert!(!holds(knob.turned(&project, beyond)), "{knob:?} does not hold at {beyond}");
                assert!(found.standing != Standing::Holds);
                if knob.notches(&project).is_none() {
                    assert!((beyond - bound.holds).abs() <= 5e-4 * beyond.max(bound.holds), "{knob:?}");
                }
                brackets += 1;
            }
        }
    }
    assert!(brackets >= 8, "{brackets}");
    // By brute force: as many steps again over the whole reach never find another answer than the stretches do.
    for knob in [Knob::Load, Knob::Embedment, Knob::Edge] {
        let [low, high] = knob.reach(&project).expect("a reach");
        let stretches = ranged(search, knob).stretches();
        for step in 0..=30 {
            let value = low * (high / low).powf(f64::from(step) / 30.0);
            let inside = stretches.iter().any(|one| one.from.holds <= value && value <= one.to.holds);
            let ends = stretches.iter().flat_map(|one| [one.from, one.to]);
            let is_between = ends.into_iter().any(|end| {
                end.beyond.is_some_and(|(beyond, _)| (end.holds.min(beyond)..=end.holds.max(beyond)).contains(&value))
            });
            if !is_between {
                assert_eq!(holds(knob.turned(&project, value)), inside, "{knob:?} at {value}: {stretches:?}");
            }
        }
    }
}

/// Between two edges of the slab a narrow base pulls its anchors out, and a wide one brings them to the edges: it fails,
/// holds, and fails again, each end for a reason of its own.
#[test]
fn a_base_that_fails_when_narrow_and_when_wide_holds_between_and_all_three_are_told() {
    let mut value = demo("02-full.json");
    value["slab"]["edges_mm"] = json!({ "left": 800, "right": 800 });
    let project = read(&value);
    let mut search = HowFar::with(&project, None, [Knob::Width].into_iter());
    search.finish();
    let [stretch] = ranged(&search, Knob::Width).stretches()[..] else { panic!("it holds in one stretch") };
    let (narrow, below) = stretch.from.beyond.expect("it fails when narrow");
    let (wide, above) = stretch.to.beyond.expect("it fails when wide");
    let now = Knob::Width.now(&project).expect("a width");
    assert!(
        narrow < stretch.from.holds && stretch.from.holds < now && now < stretch.to.holds && stretch.to.holds < wide
    );
    assert_eq!((below.standing, above.standing), (Standing::Fails, Standing::Fails));
    assert_eq!((below.governs, above.governs), (Some(CheckId::AnchorInteraction), Some(CheckId::AnchorEdge)));
    // By files with those widths: fails, holds, holds, holds, fails, and farther out it still fails.
    let at = |width: f64| Knob::Width.turned(&project, width).expect("it can be built");
    for (width, verdict) in [
        (0.9 * narrow, Verdict::DoesNotHold),
        (narrow, Verdict::DoesNotHold),
        (stretch.from.holds, Verdict::Holds),
        (now, Verdict::Holds),
        (stretch.to.holds, Verdict::Holds),
        (wide, Verdict::DoesNotHold),
        (1.05 * wide, Verdict::DoesNotHold),
    ] {
        let file = read(&edited(&value, &edits(&project, &at(width))));
        assert_eq!((quick(&at(width)).0, quick(&file).0), (verdict, verdict), "{width} mm");
    }
    // How hard it may be pushed says the same of each: less than it is, more, less.
    let push = |width: f64| {
        let found = limits(&at(width));
        let demand = found.iter().find(|one| one.of == LimitOf::Bolted && one.what == What::Demand).expect("a limit");
        assert_eq!(demand.ending, if demand.low.is_some() { Ending::Bracketed } else { Ending::NeverHolds });
        demand.low.unwrap_or(0.0) / demand.now
    };
    assert!(push(0.9 * narrow) < 1.0 && push(now) > 1.0 && push(1.05 * wide) < 1.0);
    // And the study prints the stretch with both reasons.
    let study = study::study("how-far").expect("a study");
    let shown = (study.make)(&project, "").expect("something is shown");
    let line =
        shown.tables[0].rows.iter().find(|line| line.cells[0] == Cell::Name(Knob::Width.name())).expect("a line");
    let is_between = |cell: &Cell, ends: [f64; 2]| {
        let Cell::Measured { ends: told, .. } = cell else { panic!("{cell:?}") };
        let [low, high] = if ends[0] < ends[1] { ends } else { [ends[1], ends[0]] };
        told.iter().all(|end| (low..=high).contains(end))
    };
    assert!(is_between(&line.cells[2], [narrow, stretch.from.holds]), "{line:?}");
    assert!(is_between(&line.cells[4], [stretch.to.holds, wide]), "{line:?}");
}

#[test]
fn one_check_alone_goes_as_far_as_that_check_goes() {
    let project = read(&demo("02-full.json"));
    let mut search = HowFar::new(&project, Some(CheckId::FreeTipping));
    search.finish();
    let stretches = ranged(&search, Knob::Strength).stretches();
    assert_eq!(stretches.len(), 1, "{stretches:?}");
    let (beyond, found) = stretches[0].to.beyond.expect("it tips at last");
    assert_eq!(found.governs, Some(CheckId::FreeTipping));
    let status = |value: f64| {
        let turned = Knob::Strength.turned(&project, value).expect("it can be built");
        Found::assess(&turned, Some(CheckId::FreeTipping)).standing
    };
    assert_eq!((status(stretches[0].to.holds), status(beyond)), (Standing::Holds, Standing::Fails));
    // What has nothing to do with it changes nothing: it tips with any bolt, and with a wide base it never does.
    assert!(ranged(&search, Knob::Bolt).stretches().is_empty());
    let wide = ranged(&search, Knob::Width).stretches();
    assert!(wide[0].from.beyond.is_some_and(|(_, found)| found.governs == Some(CheckId::FreeTipping)));
    assert!(wide[0].to.beyond.is_some_and(|(_, found)| found.standing == Standing::NotBuilt));
}

#[test]
fn limits_of_a_block_on_its_edge_are_those_of_hand_arithmetic() {
    // A frame of 450 kg with its mass at 1.2 m and 3000 kg aboard at 1.5 m on feet that reach 0.5 m to the front.
    let foot = |place: usize, at: [i32; 2]| json!({ "name": format!("{place}"), "at_mm": at, "size_mm": [100, 100] });
    let value: Value = json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1200, "depth_mm": 1000, "height_mm": 2400, "frame": { "mass_kg": 450, "centre_mm": [0, 0, 1200] },
            "feet": [foot(1, [-550, -450]), foot(2, [550, -450]), foot(3, [550, 450]), foot(4, [-550, 450])] },
        "contents": [{ "name": "load", "mass_kg": 3000, "bottom_mm": 700, "size_mm": [1000, 800, 1600] }],
        "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": 0.3, "vertical_coefficient": 0,
            "gravity_heavy": 1.2, "gravity_light": 0.9 } });
    let project = read(&value);
    let mut search = HowFar::new(&project, Some(CheckId::FreeTipping));
    search.finish();
    let bracket = |knob: Knob| {
        let stretches = ranged(&search, knob).stretches();
        assert_eq!(stretches.len(), 1, "{knob:?}: {stretches:?}");
        [stretches[0].to.holds, stretches[0].to.beyond.expect("it tips at last").0]
    };
    let centre = (450.0 * 1.2 + 3000.0 * 1.5) / 3450.0;
    let holds =
        |[low, high]: [f64; 2], by_hand: f64| assert!(low <= by_hand && by_hand <= high, "{low} {by_hand} {high}");
    holds(bracket(Knob::Strength), 0.5 / centre);
    holds(bracket(Knob::Centre), 1000.0 * 0.5 / 0.3);
    // At 0.345 the mass may be at 0.5 / 0.345 m, and it comes there with so much aboard; the empty frame holds.
    let turned = Knob::Strength.turned(&project, 0.345).expect("a push");
    let mut search = HowFar::with(&turned, Some(CheckId::FreeTipping), [Knob::Load].into_iter());
    search.finish();
    let to = search.ranges[0].stretches()[0].to;
    let height = 0.5 / 0.345;
    holds([to.holds, to.beyond.expect("it tips at last").0], 450.0 * (height - 1.2) / (1.5 - height));
}

#[test]
fn an_input_that_may_be_neither_little_nor_much_is_told_with_all_its_ends() {
    let search = &*BESIDE_AN_EDGE;
    // Thin bolts pull out of their strength; thick ones stand too near to the edge for their size.
    let bolt = ranged(search, Knob::Bolt).stretches();
    let ends = [bolt[0].from, bolt[0].to].map(|end| end.beyond.and_then(|(_, found)| found.governs));
    assert_eq!(ends, [Some(CheckId::AnchorInteraction), Some(CheckId::AnchorEdge)], "{bolt:?}");
    // Moved far enough from one edge the cabinet comes too near to the opposite one.
    let edge = ranged(search, Knob::Edge).stretches();
    assert!(edge.iter().any(|one| one.from.beyond.is_some() && one.to.beyond.is_some()), "{edge:?}");
}

#[test]
fn zones_are_told_by_their_names() {
    let mut value = demo("10-cannot-be-said.json");
    value["anchorage"]["overstrength"] = json!(2.5);
    let shown = (steadfoot::study::study("how-far").expect("the study").make)(&read(&value), "").expect("limits");
    let table = serde_json::to_value(&shown.tables[0]).expect("a table");
    let name = json!("site.zone");
    let rows = table["rows"].as_array().expect("rows").iter();
    let zone = rows.map(|row| &row["cells"]).find(|cells| cells[0]["input"] == name).expect("the zone is turned");
    assert_eq!(zone[1]["text"], value["site"]["zone"]);
    assert!(zone[2]["text"].is_string(), "{zone}");
}
