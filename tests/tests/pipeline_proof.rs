//! The sheet of whole assessments: every formula text of every part gives the recorded number, and a quiet sweep gives
//! the same bits as a told one.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project::{self, Project};
use steadfoot::report::text_tables::tables;
use steadfoot::study::{study, tables as study_tables};
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_project::random_project;
use steadfoot_tests::values::{Block, blocks, told};

const PROJECTS: usize = 400;

fn projects() -> impl Iterator<Item = Project> {
    let mut random = Random::new(11);
    (0..PROJECTS).map(move |_| {
        let text = random_project(&mut random);
        project::read(&text, System::Si).unwrap_or_else(|faults| panic!("{}: {text}", faults[0].sentence()))
    })
}

#[test]
fn formula_texts_of_whole_assessments_give_what_was_recorded() {
    let mut proof = Proof::of(&tables());
    for project in projects() {
        let report = project::assess(&project);
        for at in report.checks.iter().filter_map(|check| check.at) {
            proof.take(&project::working(&project, &at));
        }
    }
    let account = proof.close();
    println!("{} of {} steps are formulas", account.formula_steps, account.steps);
    println!("{}", account.others.join("\n"));
    assert!(account.wrong.is_empty(), "{}", account.wrong.join("\n"));
    assert!(2 * account.formula_steps > account.computed_steps, "formulas are most of a sheet");
}

/// What no load case changes: the frame, moving, lifting. Here every numeral of every formula is felt.
#[test]
fn formulas_of_what_is_handled_feel_each_of_their_numerals() {
    let mut proof = Proof::of(&tables());
    let asked = |block: &Block| block.input["checks"].is_array() || block.input["ask"] == "posts alone";
    for (_, block) in blocks().into_iter().filter(|(_, block)| asked(block)) {
        proof.take(&told(&block.runs, &block.input).unwrap().sections);
    }
    // Stocky and slender braces, which no other input has: where one form of a strength takes over from the next.
    let angle = |block: &&(String, Block)| block.1.input["project"]["structure"]["brace_ends"] == "angle";
    let braced = blocks().iter().find(angle).expect("a block with an angle").1.input["project"].clone();
    let slender = [("en-1993", "limit-states", "whole", 110.0), ("en-1993", "limit-states", "angle", 20.0)];
    let at_the_change = [("aisc-360", "strength", "whole", 11.664)];
    let braced = slender.into_iter().chain(at_the_change).map(|(standard, format, ends, radius_mm)| {
        let mut value = braced.clone();
        let structure = &mut value["structure"];
        (structure["standard"], structure["brace_ends"]) = (json!(standard), json!(ends));
        (structure["brace_radius_mm"], structure["brace_net_area_mm2"]) = (json!(radius_mm), json!(410));
        (structure["modulus_mpa"], value["site"]["format"]) = (json!(200_000), json!(format));
        project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
    });
    for project in projects().chain(braced) {
        let report = project::assess(&project);
        let parts = ["frame.", "move.", "lift."];
        for check in report.checks.iter().filter(|check| parts.iter().any(|part| check.id.starts_with(part))) {
            if let Some(at) = check.at {
                proof.take(&project::working(&project, &at));
            }
        }
    }
    let account = proof.close();
    let of_these = |line: &&String| {
        ["frame", "angle braces", "posts alone", "moving", "carriers and hands", "lifting"]
            .iter()
            .any(|table| line.starts_with(table))
    };
    assert!(account.wrong.is_empty(), "{}", account.wrong.join("\n"));
    let idle: Vec<_> = account.idle.iter().filter(of_these).collect();
    let unseen: Vec<_> = account.unseen.iter().filter(of_these).collect();
    assert!(idle.is_empty() && unseen.is_empty(), "idle {idle:#?}\nunseen {unseen:#?}");
}

/// A project that stands otherwise: on stems, on pads, on a slab on the ground, through clips and brackets, in slots.
fn stands_otherwise(text: &str, place: usize) -> Option<Project> {
    let mut value: Value = serde_json::from_str(text).expect("JSON");
    let each = |value: &mut Value, key: &str, change: &dyn Fn(usize, &mut Value)| {
        let list = value["cabinet"][key].as_array_mut();
        list.into_iter().flatten().enumerate().for_each(|(place, item)| change(place, item));
    };
    let is_aci = value["anchorage"]["rule"].as_str().is_some_and(|rule| rule.starts_with("aci"));
    value["motion"] = json!({ "slope": 0.02, "push_height_mm": 1400 });
    match place % 6 {
        0 => each(&mut value, "feet", &|_, foot| {
            (foot["stem_diameter_mm"], foot["stem_length_mm"]) = (json!(24), json!(80))
        }),
        1 => {
            each(&mut value, "feet", &|_, foot| foot["pad_stiffness_n_per_mm"] = json!(5000));
            each(&mut value, "anchors", &|_, anchor| anchor["clip_stiffness_n_per_mm"] = json!(9000));
        }
        2 => value["floor"] = json!({ "kind": "on-ground", "subgrade_n_per_mm3": 0.05 }),
        3 => each(&mut value, "anchors", &|_, anchor| {
            (anchor["bracket_toe_mm"], anchor["bracket_lever_mm"]) = (json!(40), json!(55));
        }),
        4 if is_aci => each(&mut value, "anchors", &|place, anchor| {
            anchor["holes"] = json!(["slot-x", "standard", "slot-y", "standard"][place % 4]);
        }),
        _ => {
            // One bolt right under the mass, which has no twist to carry.
            let anchors = value["cabinet"]["anchors"].as_array_mut()?;
            anchors.truncate(1);
            let at = anchors.first()?["at_mm"].clone();
            (value["cabinet"]["frame"]["centre_mm"][0], value["cabinet"]["frame"]["centre_mm"][1]) =
                (at[0].clone(), at[1].clone());
            value["contents"] = json!([]);
            value.as_object_mut()?.remove("states");
        }
    }
    project::read(&value.to_string(), System::Si).ok()
}

/// The tables of what carries the cabinet and of how it stands by itself.
const STATICS: [&str; 10] = [
    "load-out",
    "base reactions",
    "prying",
    "equilibrium",
    "stiffness of feet",
    "feet",
    "standing free",
    "stability tests",
    "thresholds of standing",
    "other stability tests",
];

/// What carries the cabinet and what it does by itself: every row is told somewhere, every numeral of a formula is felt.
#[test]
fn formulas_of_statics_and_stiffness_feel_each_of_their_numerals() {
    let mut proof = Proof::of(&study_tables());
    let mut random = Random::new(11);
    let texts: Vec<String> = (0..PROJECTS).map(|_| random_project(&mut random)).collect();
    let otherwise = texts.iter().enumerate().filter_map(|(place, text)| stands_otherwise(text, place));
    let standing = study("standing-free").expect("a known study");
    for project in projects().chain(otherwise) {
        let report = project::assess(&project);
        for at in report.checks.iter().filter_map(|check| check.at) {
            proof.take(&project::working(&project, &at));
        }
        let free = (standing.make)(&project, "");
        proof.take(&free.map(|shown| shown.sections).unwrap_or_default());
    }
    let account = proof.close();
    let of_these = |line: &&String| STATICS.iter().any(|table| line.starts_with(table));
    assert!(account.wrong.is_empty(), "{}", account.wrong.join("\n"));
    let idle: Vec<_> = account.idle.iter().filter(of_these).collect();
    let unseen: Vec<_> = account.unseen.iter().filter(of_these).collect();
    assert!(idle.is_empty() && unseen.is_empty(), "idle {idle:#?}\nunseen {unseen:#?}");
}

#[test]
fn told_and_quiet_give_the_same_bits() {
    for project in projects().take(60) {
        let report = project::assess(&project);
        let again = project::assess(&project);
        assert_eq!(report, again);
        for check in &report.checks {
            let (Some(at), Some(utilisation)) = (check.at, check.utilisation) else { continue };
            let sections = project::working(&project, &at);
            let told = sections.iter().filter(|section| section.check.map(|id| id.id()) == Some(check.id));
            let found = told.flat_map(|section| &section.steps).any(|step| step.value == utilisation);
            assert!(found, "{} of {}: {utilisation} is no step of its working", check.id, check.of);
        }
    }
}
