//! The sheet of whole assessments: every formula text of every part gives the recorded number, and a quiet sweep gives
//! the same bits as a told one.

use steadfoot::calc::System;
use steadfoot::project::{self, Project};
use steadfoot::report::text_tables::tables;
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
    for project in projects() {
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
