//! Studies of the floor: what they show is what the engine computes, and every name has its text.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project::{self, Project};
use steadfoot::report::table::{Cell, Table};
use steadfoot::study::{Picture, STUDIES, Shown, study, text};

const OF_FLOORS: [&str; 6] =
    ["ways-of-standing", "pressure-map", "stiffness", "uneven-floor", "row-of-cabinets", "slab-forms"];

fn cabinet() -> Value {
    let foot = |x: i32, y: i32| json!({ "name": format!("{x} {y}"), "at_mm": [x, y], "size_mm": [120, 120] });
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1000, "depth_mm": 1200, "height_mm": 2200, "frame": { "mass_kg": 2000, "centre_mm": [0, 0, 1000] },
            "feet": [foot(-430, -530), foot(430, -530), foot(430, 530), foot(-430, 530)],
            "anchors": [{ "at_mm": [-430, -530] }, { "at_mm": [430, -530] }, { "at_mm": [430, 530] }, { "at_mm": [-430, 530] }] },
        "slab": { "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} },
        "floor": { "kind": "on-ground", "subgrade_n_per_mm3": 0.05, "live_load_mpa": 0.01, "pitch_mm": [1000, 2400] },
        "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": 0.6, "vertical_coefficient": 0.1,
            "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2.0 },
        "anchorage": { "rule": "aci-318-19-si", "bolt": "M16", "steel": "f1554-36", "embedment_mm": 125 } })
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn shown(id: &str, value: &Value) -> Shown {
    let study = study(id).unwrap_or_else(|| panic!("no study {id}"));
    (study.make)(&read(value), "").unwrap_or_else(|reason| panic!("{id}: {:?}", text(reason).map(|row| row.what)))
}

fn number(table: &Table, row: usize, column: usize) -> f64 {
    match table.rows[row].cells[column] {
        Cell::Number(number) => number,
        ref other => panic!("{other:?} is no number"),
    }
}

#[test]
fn every_name_of_a_study_has_its_text_and_every_row_as_many_cells_as_columns() {
    for id in OF_FLOORS {
        let shown = shown(id, &cabinet());
        assert!(!shown.tables.is_empty(), "{id} shows a table");
        for table in &shown.tables {
            assert!(text(table.name).is_some(), "{id}");
            for column in &table.columns {
                assert!(text(column.name).is_some_and(|row| !row.what.is_empty()), "{id}");
            }
            for line in &table.rows {
                assert_eq!(line.cells.len(), table.columns.len(), "{id}");
                for cell in &line.cells {
                    if let Cell::Name(name) = cell {
                        assert!(text(*name).is_some(), "{id}");
                    }
                }
            }
        }
        for note in &shown.notes {
            assert!(text(*note).is_some(), "{id}");
        }
    }
}

#[test]
fn studies_of_floors_answer_or_say_why_for_every_bare_project() {
    let mut bare = cabinet();
    let object = bare.as_object_mut().expect("an object");
    for part in ["floor", "slab", "site", "anchorage"] {
        object.remove(part);
    }
    bare["cabinet"]["feet"] = json!([]);
    bare["cabinet"]["anchors"] = json!([]);
    for id in OF_FLOORS {
        let study = study(id).expect("a study");
        if let Err(reason) = (study.make)(&read(&bare), "") {
            assert!(text(reason).is_some_and(|row| !row.what.is_empty()), "{id}");
        }
    }
    assert!(STUDIES.len() >= OF_FLOORS.len());
}

#[test]
fn a_caster_presses_harder_than_a_foot_and_a_foot_harder_than_a_wide_base() {
    let shown = shown("ways-of-standing", &cabinet());
    let rest = &shown.tables[0];
    let weight_n = 2000.0 * 9.80665;
    assert!((number(rest, 0, 1) - weight_n / 4.0).abs() < 1e-6 && (number(rest, 2, 1) - weight_n / 2.0).abs() < 1e-6);
    for table in &shown.tables[..2] {
        let peak = table.columns.iter().position(|column| text(column.name).unwrap().what == "peak pressure").unwrap();
        assert!(number(table, 0, peak) > number(table, 1, peak) && number(table, 1, peak) > number(table, 2, peak));
    }
    // At rest the slab is told too; on the way in all three roll on the same wheels, and two are set down.
    for (row, used) in [(0, 5), (1, 5), (2, 5), (0, 6), (1, 6)] {
        assert!(number(rest, row, used) > 0.0, "row {row}, column {used}");
    }
    let way = &shown.tables[2];
    let wheel = 1.25 * weight_n / 3.0;
    for (row, load) in [wheel, wheel, weight_n / 3.0, wheel, weight_n / 2.0].into_iter().enumerate() {
        assert!((number(way, row, 2) - load).abs() < 1e-6, "row {row}: {}", number(way, row, 2));
    }
}

#[test]
fn the_map_of_bolt_pull_has_the_present_cabinet_on_it_and_rises_with_soft_feet() {
    let shown = shown("stiffness", &cabinet());
    let Picture::Plot(map) = &shown.pictures[0] else { panic!("a map comes first") };
    let grid = map.grid.as_ref().expect("a grid");
    let (side, middle) = (grid.x.len(), grid.x.len() / 2);
    assert!((grid.x[middle] / map.points[0].at[0] - 1.0).abs() < 1e-9);
    assert!((grid.y[middle] / map.points[0].at[1] - 1.0).abs() < 1e-9);
    let at = |row: usize, column: usize| grid.values[row * side + column];
    assert!(
        at(middle, 0) > at(middle, middle) && at(middle, middle) > at(middle, side - 1),
        "softer feet, harder pull"
    );
    assert!(at(side - 1, middle) > at(middle, middle) && at(middle, middle) > at(0, middle), "stiffer anchors too");
    // Scaling all springs alike changes nothing.
    assert!((at(0, 0) / at(middle, middle) - 1.0).abs() < 1e-6);
    assert!((grid.contours[0] / at(middle, middle) - 1.0).abs() < 1e-6);
}

#[test]
fn a_foot_hangs_when_the_hollow_is_the_weight_over_its_stiffness() {
    let mut value = cabinet();
    for foot in value["cabinet"]["feet"].as_array_mut().expect("feet") {
        foot["size_mm"] = json!([0, 0]);
        foot["stiffness_n_per_mm"] = json!(5000);
    }
    let shown = shown("uneven-floor", &value);
    let weight_n = 2000.0 * 9.80665;
    let table = &shown.tables[0];
    for row in 0..4 {
        assert!((number(table, row, 4) - weight_n / 5000.0).abs() < 1e-6, "{}", number(table, row, 4));
        assert!((number(table, row, 5) - weight_n / 2.0).abs() < 1e-3);
        assert!((number(table, row, 6) - 2.0).abs() < 1e-6, "two feet carry all");
    }
}

#[test]
fn the_row_of_cabinets_marks_the_present_aisle() {
    let shown = shown("row-of-cabinets", &cabinet());
    let table = &shown.tables[0];
    let present = table.rows.iter().position(|row| row.is_marked).expect("the present aisle is there");
    assert_eq!(number(table, present, 0), 1200.0);
    let expected = 2000.0 * 9.80665 / (1000.0 * 2400.0);
    assert!((number(table, present, 1) - expected).abs() < 1e-12);
    assert!((number(table, present, 3) - expected / 0.01).abs() < 1e-9);
}
