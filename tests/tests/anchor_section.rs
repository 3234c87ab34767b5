//! The section and the plan of the concrete that would break out, and the drawings of every way to fail: to scale, from
//! the numbers that are checked.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::{CheckId, Kind, StepId, System};
use steadfoot::geometry::{Point, Polygon};
use steadfoot::project::{self, Project, assess, working};
use steadfoot::report::figure::{Figure, FigurePart};
use steadfoot::report::outcome::Report;
use steadfoot::report::table::Cell;
use steadfoot::report::text_tables::text;
use steadfoot::study::{self, Picture, Shown};

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn shown(id: &str, project: &Project) -> Shown {
    (study::study(id).expect("it is registered").make)(project, "").unwrap_or_else(|reason| panic!("{}", said(reason)))
}

fn said(id: StepId) -> &'static str {
    study::text(id).expect("every row has its text").what
}

fn figures(shown: &Shown) -> Vec<&Figure> {
    shown
        .pictures
        .iter()
        .map(|picture| match picture {
            Picture::Figure(figure) => figure,
            Picture::Plot(_) | Picture::Bars(_) => panic!("a figure is expected"),
        })
        .collect()
}

fn hatched(figure: &Figure) -> Vec<Polygon> {
    let outlines = figure.parts.iter().filter_map(|part| match part {
        FigurePart::Outline { class: "hatched", corners_mm } => Some(corners_mm),
        _ => None,
    });
    outlines.map(|corners| Polygon::new(corners.iter().map(|&[x, y]| Point::new(x, y)).collect())).collect()
}

/// The step of a check's own working.
fn step(project: &Project, report: &Report, check: CheckId, symbol: &str) -> f64 {
    let told = report.checks.iter().find(|told| told.id == check.id()).expect("it is checked");
    let sections = working(project, told.at.as_ref().expect("it opens"));
    let steps = sections.iter().filter(|section| section.check == Some(check)).flat_map(|section| &section.steps);
    let named = |step: &&steadfoot::calc::Step| text(step.id).is_some_and(|row| row.symbol == symbol);
    steps.into_iter().find(named).unwrap_or_else(|| panic!("no {symbol}")).value
}

#[test]
fn the_area_of_the_plan_is_the_area_that_is_checked() {
    for file in ["02-full.json", "07-slab-edge.json", "09-must-not-pass.json"] {
        let project = read(&demo(file));
        let sheet = shown("anchor-section", &project);
        let bodies = hatched(figures(&sheet)[1]);
        let report = assess(&project);
        let checked_mm2 = step(&project, &report, CheckId::AnchorTensionBreakout, "A_Nc");
        let is_there = bodies.iter().any(|body| (body.area_mm2().abs() - checked_mm2).abs() < 1e-6 * checked_mm2);
        assert!(is_there, "{file}: {checked_mm2} among {:?}", bodies.iter().map(Polygon::area_mm2).collect::<Vec<_>>());
        let told = &sheet.tables[0];
        assert_eq!(told.rows.len(), bodies.len());
        for (row, body) in told.rows.iter().zip(&bodies) {
            assert_eq!(row.cells[2], Cell::Number(body.area_mm2()));
        }
    }
}

#[test]
fn the_section_rises_by_one_in_one_and_a_half_and_ends_at_the_edge() {
    let mut value = demo("07-slab-edge.json");
    value["slab"]["edges_mm"] = json!({ "left": null, "right": null, "front": 780, "rear": null });
    let project = read(&value);
    let sheet = shown("anchor-section", &project);
    let section = figures(&sheet)[0];
    let embedment_mm = value["anchorage"]["embedment_mm"].as_f64().expect("a number");
    let edge_mm = 100.0;
    let bodies = hatched(section);
    let lowest = |body: &Polygon| body.corners.iter().map(|corner| corner.y_mm).fold(0.0, f64::min);
    let body = bodies.iter().find(|body| (lowest(body) + embedment_mm).abs() < 1e-9).expect("one reaches the head");
    let reach_mm = 1.5 * embedment_mm;
    let ends = |of: fn(f64, f64) -> f64, start: f64| body.corners.iter().map(|corner| corner.x_mm).fold(start, of);
    let (from, to) = (ends(f64::min, f64::INFINITY), ends(f64::max, f64::NEG_INFINITY));
    // Front is the smaller y: the section runs from front to rear, and the edge cuts one side off.
    let is_cut = (to - from - (edge_mm + reach_mm)).abs() < 1e-9 || (to - from - 2.0 * reach_mm).abs() < 1e-9;
    assert!(is_cut, "{from} to {to}");
    let cut_mm2 = (reach_mm - edge_mm) * (reach_mm - edge_mm) / 1.5 / 2.0;
    let whole_mm2 = reach_mm * embedment_mm;
    let area_mm2 = body.area_mm2().abs();
    let is_right = (area_mm2 - whole_mm2).abs() < 1e-6 || (area_mm2 - (whole_mm2 - cut_mm2)).abs() < 1e-6;
    assert!(is_right, "{area_mm2} of {whole_mm2}");
}

#[test]
fn bodies_that_meet_are_united_in_the_section() {
    // Four bolts in a square, 100 apart: the section through two of them is one body.
    let mut value = demo("02-full.json");
    value["cabinet"]["anchors"] = json!([
        { "at_mm": [-580, -680] }, { "at_mm": [580, -680] }, { "at_mm": [580, 580] }, { "at_mm": [580, 680] },
        { "at_mm": [-580, 680] }, { "at_mm": [-580, 580] }
    ]);
    value["slab"]["edges_mm"]["rear"] = json!(800);
    let sheet = shown("anchor-section", &read(&value));
    let bodies = hatched(figures(&sheet)[0]);
    let embedment_mm = value["anchorage"]["embedment_mm"].as_f64().expect("a number");
    let heads = |body: &Polygon| body.corners.iter().filter(|corner| (corner.y_mm + embedment_mm).abs() < 1e-9).count();
    assert!(bodies.iter().any(|body| heads(body) == 2), "{bodies:?}");
}

#[test]
fn without_pull_nothing_breaks_out() {
    // A fiftieth of the weight sideways lifts nothing of so broad and heavy a cabinet.
    let mut value = demo("02-full.json");
    value["site"] = json!({ "rule": "direct", "format": "strength", "horizontal_coefficient": 0.02,
        "vertical_coefficient": 0, "gravity_heavy": 1.2, "gravity_light": 0.9 });
    let project = read(&value);
    let report = assess(&project);
    let check = report.checks.iter().find(|check| check.id == "anchor.tension.breakout").expect("it is told");
    assert_eq!(check.utilisation, None, "{check:?}");
    assert!((study::study("anchor-section").expect("it is registered").make)(&project, "").is_err());
}

#[test]
fn every_way_to_fail_is_drawn_with_the_cabinets_own_measures() {
    let value = demo("07-slab-edge.json");
    let project = read(&value);
    let sheet = shown("anchor-modes", &project);
    let report = assess(&project);
    assert!(sheet.pictures.len() >= 7, "{}", sheet.pictures.len());
    let embedment_mm = value["anchorage"]["embedment_mm"].as_f64().expect("a number");
    let thickness_mm = value["slab"]["thickness_mm"].as_f64().expect("a number");
    for figure in figures(&sheet) {
        let mut lengths: Vec<f64> = Vec::new();
        for part in &figure.parts {
            match part {
                FigurePart::Dimension { from_mm, to_mm, .. } => {
                    lengths.push((to_mm[0] - from_mm[0]).abs().max((to_mm[1] - from_mm[1]).abs()));
                }
                FigurePart::Label { value: Some((utilisation, Kind::Utilisation)), .. } => {
                    let is_told = report.checks.iter().any(|check| check.utilisation == Some(*utilisation));
                    assert!(is_told, "{} tells {utilisation}, which no check does", said(figure.name));
                }
                _ => {}
            }
        }
        assert!(lengths.contains(&thickness_mm), "{}: {lengths:?}", said(figure.name));
        let is_known = |length: &f64| {
            [thickness_mm, embedment_mm, 1.5 * embedment_mm, 130.0].iter().any(|known| (known - length).abs() < 1e-9)
        };
        assert!(lengths.iter().all(is_known), "{}: {lengths:?}", said(figure.name));
    }
    // The table holds every mode with the number of its check.
    for (row, id) in
        sheet.tables[0].rows.iter().zip(["anchor.tension.steel", "anchor.tension.breakout", "anchor.tension.pullout"])
    {
        let check = report.checks.iter().find(|check| check.id == id).expect("it is checked");
        assert_eq!(row.cells[1], check.utilisation.map_or(Cell::Nothing, Cell::Number), "{id}");
    }
}

#[test]
fn without_a_near_edge_the_modes_at_an_edge_are_not_drawn() {
    let sheet = shown("anchor-modes", &read(&demo("02-full.json")));
    assert!(sheet.notes.iter().any(|note| said(*note).contains("no edge is given near")));
    assert!(figures(&sheet).iter().all(|figure| !said(figure.name).starts_with("Edge breakout")));
}
