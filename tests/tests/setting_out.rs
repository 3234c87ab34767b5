//! The setting-out sheet: its numbers are those of the file, its plan is to scale, and what it does not know it says.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::{StepId, System};
use steadfoot::explore::{Tolerance, holes};
use steadfoot::project::{self, Project};
use steadfoot::report::drawing::{Painter, figure};
use steadfoot::report::figure::FigurePart;
use steadfoot::report::table::{Cell, Table};
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

fn column(table: &Table, name: &str) -> Vec<Cell> {
    let names: Vec<&str> = table.columns.iter().map(|column| said(column.name)).collect();
    let place = names.iter().position(|known| *known == name).unwrap_or_else(|| panic!("no {name} in {names:?}"));
    table.rows.iter().map(|row| row.cells[place].clone()).collect()
}

#[test]
fn the_numbers_of_the_sheet_are_those_of_the_file() {
    let value = demo("07-slab-edge.json");
    let sheet = shown("setting-out", &read(&value));
    let table = &sheet.tables[0];
    let anchors = value["cabinet"]["anchors"].as_array().expect("a list");
    assert_eq!(table.rows.len(), anchors.len());
    let number = |value: &Value| value.as_f64().expect("a number");
    let edges = &value["slab"]["edges_mm"];
    for (place, anchor) in anchors.iter().enumerate() {
        let [x, y] = [0, 1].map(|axis| number(&anchor["at_mm"][axis]));
        assert_eq!(column(table, "hole")[place], Cell::Number((place + 1) as f64));
        assert_eq!(column(table, "name")[place], Cell::Text(anchor["name"].as_str().unwrap_or("").into()));
        assert_eq!(column(table, "to the right of the middle")[place], Cell::Number(x));
        assert_eq!(column(table, "to the rear of the middle")[place], Cell::Number(y));
        assert_eq!(column(table, "embedment")[place], Cell::Number(number(&value["anchorage"]["embedment_mm"])));
        let bolt = value["anchorage"]["bolt"].as_str().expect("a word");
        assert_eq!(column(table, "bolt")[place], Cell::Text(bolt.into()));
        for (side, along, outward) in [("left", x, -1.0), ("right", x, 1.0), ("front", y, -1.0), ("rear", y, 1.0)] {
            let is_told = table.columns.iter().any(|column| said(column.name) == format!("from the {side} edge"));
            assert_eq!(is_told, !edges[side].is_null(), "{side}");
            if is_told {
                let expected = number(&edges[side]) - outward * along;
                assert_eq!(column(table, &format!("from the {side} edge"))[place], Cell::Number(expected));
            }
        }
        for of_the_maker in ["diameter of the hole", "depth of the hole", "torque"] {
            assert!(
                matches!(column(table, of_the_maker)[place], Cell::Name(id) if said(id) == "from the maker's data")
            );
        }
    }
}

#[test]
fn the_circles_of_the_plan_are_those_that_were_earned() {
    let project = read(&demo("07-slab-edge.json"));
    let sheet = shown("setting-out", &project);
    let mut search = Tolerance::new(&project).expect("it holds");
    search.finish();
    let Picture::Figure(plan) = &sheet.pictures[0] else { panic!("the plan is a figure") };
    let circles: Vec<([f64; 2], f64)> = plan
        .parts
        .iter()
        .filter_map(|part| match part {
            FigurePart::Circle { class: "dashed", middle_mm, radius_mm } => Some((*middle_mm, *radius_mm)),
            _ => None,
        })
        .collect();
    let told = column(&sheet.tables[1], "holds when off by");
    for (place, (anchor, circle)) in project.cabinet.anchors.iter().zip(&search.circles).enumerate() {
        assert_eq!(circles[place], ([anchor.at.x_mm, anchor.at.y_mm], circle.holds_mm));
        assert_eq!(told[place], Cell::Number(circle.holds_mm));
    }
    assert_eq!(told[4], Cell::Number(search.together.expect("it was searched").holds_mm));
    // Painted, every hole lies where the file says, to the scale of the drawing.
    let words = |id: StepId| said(id).to_string();
    let drawing =
        figure(plan, &Painter { width_px: 480.0, system: System::Si, words: &words, inputs: &|path| path.into() });
    let holes: Vec<[f64; 2]> =
        drawing.marks.iter().filter(|mark| mark.class == "hole").map(|mark| mark.points[0]).collect();
    assert_eq!(holes.len(), 4);
    for (a, first) in project.cabinet.anchors.iter().zip(&holes) {
        for (b, second) in project.cabinet.anchors.iter().zip(&holes) {
            let across_mm = (second[0] - first[0]) * drawing.mm_per_px;
            let up_mm = (first[1] - second[1]) * drawing.mm_per_px;
            assert!((across_mm - (b.at.x_mm - a.at.x_mm)).abs() < 0.1 * drawing.mm_per_px);
            assert!((up_mm - (b.at.y_mm - a.at.y_mm)).abs() < 0.1 * drawing.mm_per_px);
        }
    }
}

#[test]
fn the_least_distances_are_the_rules() {
    // Tightened cast-in bolts: six diameters apart, and six from an edge where that is more than the cover on the head
    // (ACI 318-19 17.9.2).
    let mut value = demo("07-slab-edge.json");
    value["anchorage"]["bolt"] = json!("M20");
    let told = holes(&read(&value));
    for hole in &told {
        assert_eq!(hole.diameter_mm, Some(20.0));
        assert!((hole.least_spacing_mm.expect("the rule says") - 120.0).abs() < 1e-9);
        assert!((hole.least_edge_mm.expect("the rule says") - 120.0).abs() < 1e-9);
        let nearest =
            told.iter().filter(|other| other.number != hole.number).map(|other| other.at.distance_mm(hole.at));
        assert_eq!(hole.nearest_mm, Some(nearest.fold(f64::INFINITY, f64::min)));
    }
    // No demand, no states: the distances are told all the same.
    value.as_object_mut().expect("an object").remove("site");
    assert_eq!(holes(&read(&value)), told);
    value.as_object_mut().expect("an object").remove("anchorage");
    let unruled = holes(&read(&value));
    assert!(unruled.iter().all(|hole| hole.bolt.is_none() && hole.least_spacing_mm.is_none()));
}

#[test]
fn an_opening_is_drawn_and_counts_as_an_edge() {
    let mut value = demo("02-full.json");
    // 200 to the left of the front left hole and 150 in front of it: the corner is 250 away.
    value["slab"]["openings"] = json!([{ "at_mm": [-880, -880], "size_mm": [200, 100] }]);
    let project = read(&value);
    let told = holes(&project);
    assert_eq!(told[0].nearest_edge_mm, 250.0);
    let sheet = shown("setting-out", &project);
    assert_eq!(column(&sheet.tables[1], "nearest edge or opening")[0], Cell::Number(250.0));
    let Picture::Figure(plan) = &sheet.pictures[0] else { panic!("the plan is a figure") };
    let is_drawn = |part: &FigurePart| matches!(part, FigurePart::Outline { class: "strong", corners_mm } if corners_mm[0] == [-980.0, -930.0]);
    assert!(plan.parts.iter().any(is_drawn));
}

#[test]
fn what_the_maker_says_is_passed_on() {
    let mut value = demo("02-full.json");
    value["drilling"] = json!({ "hole_diameter_mm": 24, "hole_depth_mm": 155 });
    let sheet = shown("setting-out", &read(&value));
    assert!(column(&sheet.tables[0], "diameter of the hole").iter().all(|cell| *cell == Cell::Number(24.0)));
    assert!(column(&sheet.tables[0], "depth of the hole").iter().all(|cell| *cell == Cell::Number(155.0)));
}

#[test]
fn what_does_not_hold_is_set_out_without_any_tolerance() {
    let sheet = shown("setting-out", &read(&demo("09-must-not-pass.json")));
    assert_eq!(sheet.tables.len(), 1);
    assert!(sheet.notes.iter().any(|note| said(*note).contains("nothing here is fit to be drilled")));
    let Picture::Figure(plan) = &sheet.pictures[0] else { panic!("the plan is a figure") };
    assert!(!plan.parts.iter().any(|part| matches!(part, FigurePart::Circle { class: "dashed", .. })));
}

#[test]
fn as_drilled_stands_beside_as_planned() {
    let mut value = demo("07-slab-edge.json");
    assert!((study::study("as-built").expect("it is registered").make)(&read(&value), "").is_err());
    let at = value["cabinet"]["anchors"][0]["at_mm"].clone();
    value["cabinet"]["anchors"][0]["as_built_mm"] = at;
    let sheet = shown("as-built", &read(&value));
    let table = &sheet.tables[0];
    assert_eq!(column(table, "as planned"), column(table, "as drilled"), "a hole on its mark changes nothing");
    assert_eq!(column(table, "outcome as planned"), column(table, "outcome as drilled"));
    value["cabinet"]["anchors"][0]["as_built_mm"][1] =
        json!(value["cabinet"]["anchors"][0]["at_mm"][1].as_f64().expect("y") - 12.0);
    let sheet = shown("as-built", &read(&value));
    assert_ne!(column(&sheet.tables[0], "as planned"), column(&sheet.tables[0], "as drilled"));
    assert_eq!(column(&sheet.tables[1], "off by")[0], Cell::Number(12.0));
    assert!(matches!(column(&sheet.tables[1], "hole, to the right")[1], Cell::Name(id) if said(id) == "not measured"));
}

#[test]
fn what_would_hold_is_told_in_a_table_and_drawn() {
    let sheet = shown("what-would-hold", &read(&demo("09-must-not-pass.json")));
    let [alone, frontier] = &sheet.tables[..] else { panic!("two tables") };
    assert!(alone.rows[0].is_marked, "the present one stands first");
    let used = |table: &Table| column(table, "utilisation");
    assert!(matches!(used(alone)[0], Cell::Number(utilisation) if utilisation > 1.0), "{:?}", used(alone));
    assert!(used(frontier).iter().all(|cell| matches!(cell, Cell::Number(utilisation) if *utilisation <= 1.0)));
    assert!(!sheet.pictures.is_empty());
}
