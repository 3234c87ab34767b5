//! Knobs, how far each may go, and maps: what is turned is what a file with the same numbers says; brackets lie where a
//! scan finds them; cells are whole assessments, and the line at 1 crosses where the brackets lie.

use std::path::PathBuf;
use std::sync::LazyLock;

use serde_json::{Value, json};
use steadfoot::calc::{CheckId, System};
use steadfoot::explore::{
    Along, Edit, Ending, Found, HowFar, KNOBS, Knob, LimitOf, Ranged, Standing, What, edits, limits, map_cells, places,
    turned_both,
};
use steadfoot::project::{self, Project, quick};
use steadfoot::report::drawing::{Painter, plot};
use steadfoot::report::outcome::Verdict;
use steadfoot::report::table::Cell;
use steadfoot::study;
use steadfoot::study::limit_map::LimitMap;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

/// Puts edits into a file as the page does.
fn edited(value: &Value, edits: &[Edit]) -> Value {
    let mut value = value.clone();
    for edit in edits {
        let mut place = &mut value;
        for key in edit.path.replace('[', ".").replace(']', "").split('.') {
            place = match key.parse::<usize>() {
                Ok(number) => &mut place[number],
                Err(_) => &mut place[key],
            };
        }
        *place = edit.word.map_or(json!(edit.value), |word| json!(word));
    }
    value
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
fn cells_are_whole_assessments_bit_for_bit_in_whatever_portion_they_are_asked() {
    let project = read(&demo("07-slab-edge.json"));
    let along = |knob: Knob| places(knob, &project, knob.window(&project).expect("a window"), 5);
    let (xs, ys) = (along(Knob::Edge), along(Knob::Embedment));
    let (x, y) = (Along { knob: Knob::Edge, values: &xs }, Along { knob: Knob::Embedment, values: &ys });
    let cells = map_cells(&project, x, y);
    let mut compared = 0;
    for (row, &of_y) in ys.iter().enumerate() {
        let again = map_cells(&project, x, Along { knob: Knob::Embedment, values: &ys[row..=row] });
        for (column, &of_x) in xs.iter().enumerate() {
            let cell = cells[row * xs.len() + column];
            assert_eq!(cell.packed().map(f64::to_bits), again[column].packed().map(f64::to_bits));
            let Some(turned) = turned_both(&project, [(Knob::Edge, of_x), (Knob::Embedment, of_y)]) else {
                assert_eq!(cell.standing, Standing::NotBuilt);
                continue;
            };
            let report = project::assess(&turned);
            let governing = report.governs.map(|place| &report.checks[place]);
            let standing = match report.verdict {
                Verdict::Holds => Standing::Holds,
                Verdict::DoesNotHold => Standing::Fails,
                Verdict::CannotBeSaid => Standing::NotCovered,
            };
            assert_eq!(cell.standing, standing, "at {of_x} {of_y}");
            if let Some(utilisation) = governing.and_then(|check| check.utilisation) {
                assert_eq!(cell.utilisation.to_bits(), utilisation.to_bits());
                compared += 1;
            }
            assert_eq!(cell.governs.map(CheckId::id), governing.map(|check| check.id));
            let packed = Found::unpacked(cell.packed());
            assert_eq!((packed.standing, packed.reason), (cell.standing, cell.reason));
        }
    }
    assert!(compared > 8, "{compared}");
}

#[test]
fn the_line_at_one_crosses_where_the_bracket_lies() {
    let project = read(&demo("07-slab-edge.json"));
    let stretches = ranged(&BESIDE_AN_EDGE, Knob::Load).stretches();
    let limit = stretches.last().expect("it holds somewhere").to;
    let (beyond, _) = limit.beyond.expect("and fails with more");
    // A row of cells through the present strength, close about the limit.
    let now = Knob::Strength.now(&project).expect("a strength");
    let xs = places(Knob::Load, &project, [limit.holds * 0.9, beyond * 1.1], 5);
    let ys = [now * 0.999, now, now * 1.001];
    let (x, y) = (Along { knob: Knob::Load, values: &xs }, Along { knob: Knob::Strength, values: &ys });
    let cells = map_cells(&project, x, y);
    let map = LimitMap { project: &project, x, y, cells: &cells };
    let words = |_| "words".to_string();
    let drawing = plot(&map.plot(), &Painter { width_px: 720.0, system: System::Si, words: &words });
    let axis = drawing.marks.iter().find(|mark| mark.class == "plot-axis").expect("axes");
    let (left, bottom, right) = (axis.points[1][0], axis.points[1][1], axis.points[2][0]);
    let middle = (axis.points[0][1] + bottom) / 2.0;
    let line = drawing.marks.iter().find(|mark| mark.class == "contour one").expect("a line at 1");
    let crossing = line.points.iter().find(|point| (point[1] - middle).abs() < 1.0).expect("at the present strength");
    let load = xs[0] + (xs[4] - xs[0]) * (crossing[0] - left) / (right - left);
    assert!((load / beyond - 1.0).abs() < 0.005, "{load} against {beyond}");
    assert!(drawing.marks.iter().any(|mark| mark.class == "beyond-hatch"), "what fails is hatched");
    assert!(!drawing.marks.iter().any(|mark| mark.class == "plot-point present"), "it lies outside");
}

#[test]
fn what_cannot_be_built_and_what_is_not_covered_is_hatched_apart_and_named() {
    let project = read(&demo("07-slab-edge.json"));
    let (xs, ys) = ([900.0, 1100.0, 3300.0, 3400.0], [50.0, 60.0, 70.0, 140.0]);
    let (x, y) = (Along { knob: Knob::Width, values: &xs }, Along { knob: Knob::Embedment, values: &ys });
    let mut cells = map_cells(&project, x, y);
    assert_eq!(cells[3].standing, Standing::NotBuilt, "feet so far from the base are a mistake");
    cells[12] = Found { standing: Standing::NotCovered, governs: None, utilisation: f64::NAN, reason: None };
    let words = |id| steadfoot::study::text(id).map_or(String::new(), |row| row.what.to_string());
    let map = LimitMap { project: &project, x, y, cells: &cells };
    let drawing = plot(&map.plot(), &Painter { width_px: 720.0, system: System::Si, words: &words });
    for class in ["blank-hatch", "blank-hatch level", "region-border"] {
        assert!(drawing.marks.iter().any(|mark| mark.class == class), "{class}");
    }
    assert!(drawing.marks.iter().any(|mark| mark.class == "plot-point present"));
    for text in ["cannot be built", "not covered"] {
        assert!(drawing.marks.iter().any(|mark| mark.text == text), "{text}");
    }
}

#[test]
fn zones_are_told_by_their_names() {
    let mut value = demo("10-cannot-be-said.json");
    value["anchorage"]["overstrength"] = json!(2.5);
    let shown = (steadfoot::study::study("how-far").expect("the study").make)(&read(&value), "").expect("limits");
    let table = serde_json::to_value(&shown.tables[0]).expect("a table");
    let name = json!(Knob::Zone.name().code());
    let rows = table["rows"].as_array().expect("rows").iter();
    let zone = rows.map(|row| &row["cells"]).find(|cells| cells[0]["name"] == name).expect("the zone is turned");
    assert_eq!(zone[1]["text"], value["site"]["zone"]);
    assert!(zone[2]["text"].is_string(), "{zone}");
}
