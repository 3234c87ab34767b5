//! Prying: a clip that leans on its toe pulls its bolt harder, by as much as its shape says and never less.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project::{assess, read, working};
use steadfoot::report::outcome::CheckTold;

fn demo() -> Value {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-configs/02-full.json");
    serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap()
}

fn with_brackets(toe_mm: f64, lever_mm: f64) -> Value {
    let mut demo = demo();
    for anchor in demo["cabinet"]["anchors"].as_array_mut().unwrap() {
        anchor["bracket_toe_mm"] = json!(toe_mm);
        anchor["bracket_lever_mm"] = json!(lever_mm);
    }
    demo
}

fn check(project: &Value, id: &str) -> CheckTold {
    let project = read(&project.to_string(), System::Si).unwrap();
    assess(&project).checks.into_iter().find(|check| check.id == id).unwrap()
}

#[test]
fn a_bracket_multiplies_the_tension_of_its_bolt_and_nothing_else() {
    for (toe, lever) in [(40.0, 40.0), (50.0, 20.0), (30.0, 75.0)] {
        let pried = with_brackets(toe, lever);
        let factor = 1.0 + lever / toe;
        for id in ["anchor.tension.steel", "anchor.tension.pullout"] {
            let (plain, more) = (check(&demo(), id).utilisation.unwrap(), check(&pried, id).utilisation.unwrap());
            assert!((more / plain / factor - 1.0).abs() < 1e-9, "{id}: {plain} becomes {more}");
        }
        for id in ["anchor.shear.steel", "foot.bearing"] {
            assert_eq!(check(&demo(), id).utilisation, check(&pried, id).utilisation, "{id}");
        }
    }
}

#[test]
fn a_bolt_in_the_line_of_the_pull_is_not_pried() {
    let id = "anchor.tension.steel";
    assert_eq!(check(&with_brackets(40.0, 0.0), id).utilisation, check(&demo(), id).utilisation);
}

#[test]
fn the_working_shows_the_lever() {
    let text = with_brackets(40.0, 50.0).to_string();
    let project = read(&text, System::Si).unwrap();
    let steel = assess(&project).checks.into_iter().find(|check| check.id == "anchor.tension.steel").unwrap();
    let sections = working(&project, &steel.at.unwrap());
    let steps = sections.iter().flat_map(|section| &section.steps);
    let row = |id| steadfoot::study::text(id).unwrap();
    let factors: Vec<f64> = steps.filter(|step| row(step.id).symbol == "q").map(|step| step.value).collect();
    assert!(!factors.is_empty() && factors.iter().all(|factor| (factor - 2.25).abs() < 1e-12), "{factors:?}");
}

#[test]
fn where_no_bracket_is_given_that_is_said() {
    let said = |project: &Value| {
        let project = read(&project.to_string(), System::Si).unwrap();
        let rows = assess(&project).absent;
        rows.into_iter().filter_map(steadfoot::report::text_tables::text_of_code).any(|row| row.what.contains("prying"))
    };
    assert!(said(&demo()) && !said(&with_brackets(40.0, 40.0)));
}
