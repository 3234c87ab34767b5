//! Maps: cells are whole assessments, and the line at 1 crosses where the brackets lie.

use std::path::PathBuf;

use serde_json::Value;
use steadfoot::calc::{CheckId, System};
use steadfoot::explore::{Along, Found, HowFar, Knob, Standing, map_cells, places, turned_both};
use steadfoot::project::{self, Project};
use steadfoot::report::drawing::{Painter, plot};
use steadfoot::report::outcome::Verdict;
use steadfoot::study::limit_map::LimitMap;

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
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
    let mut search = HowFar::with(&project, None, [Knob::Load].into_iter());
    search.finish();
    let stretches = search.ranges[0].stretches();
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
    let drawing =
        plot(&map.plot(), &Painter { width_px: 720.0, system: System::Si, words: &words, inputs: &|path| path.into() });
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
    let drawing =
        plot(&map.plot(), &Painter { width_px: 720.0, system: System::Si, words: &words, inputs: &|path| path.into() });
    for class in ["blank-hatch", "blank-hatch level", "region-border"] {
        assert!(drawing.marks.iter().any(|mark| mark.class == class), "{class}");
    }
    assert!(drawing.marks.iter().any(|mark| mark.class == "plot-point present"));
    for text in ["cannot be built", "not covered"] {
        assert!(drawing.marks.iter().any(|mark| mark.text == text), "{text}");
    }
}
