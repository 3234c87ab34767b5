//! The answer: every number in it is a recorded step, and it reads well.

use std::path::PathBuf;

use serde_json::{Value, json};
use steadfoot::calc::{Kind, Section, System};
use steadfoot::project::{self, Project};
use steadfoot::report::answer::Slot;
use steadfoot::report::outcome::{At, Report};
use steadfoot::report::print_sentence;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_project::random_project;

fn read(text: &str) -> Project {
    project::read(text, System::Si).unwrap_or_else(|faults| panic!("{}: {text}", faults[0].sentence()))
}

fn demo(file: &str) -> Value {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file)
}

fn told(project: &Project) -> String {
    let report = project::assess(project);
    let sentences: Vec<String> = report.answer.iter().map(|one| print_sentence(one, System::Si)).collect();
    sentences.join(" ").replace('\u{a0}', " ")
}

/// All values on the sheets of all checks, also with softer and stiffer anchors, where a span's lower end stands.
fn steps(project: &Project, report: &Report) -> Vec<f64> {
    let mut values = Vec::new();
    let mut take = |sections: Vec<Section>| {
        values.extend(sections.iter().flat_map(|section| section.steps.iter().map(|step| step.value)));
    };
    let places: Vec<At> = report.checks.iter().filter_map(|check| check.at).collect();
    for at in &places {
        take(project::working(project, at));
    }
    for state in 0..report.states.len() {
        let Some(at) = places.first() else { continue };
        take(project::working(project, &At { state, ..*at }));
    }
    values
}

#[test]
fn every_number_in_the_answer_is_a_recorded_step() {
    let mut random = Random::new(5);
    let mut numbers = 0;
    for _ in 0..200 {
        let project = read(&random_project(&mut random));
        let report = project::assess(&project);
        let steps = steps(&project, &report);
        for sentence in &report.answer {
            for slot in &sentence.slots {
                let Slot::Number { value, kind, .. } = slot else { continue };
                // How many more reasons there are is a count of sentences, not a quantity.
                if *kind == Kind::Number.code() {
                    continue;
                }
                let is_end_of_span =
                    report.checks.iter().any(|check| check.span.is_some_and(|ends| ends.contains(value)));
                let is_step = steps.iter().any(|step| (step - value).abs() <= 1e-12 * value.abs());
                assert!(is_step || is_end_of_span, "{value} of {:?} is no step: {}", sentence, told(&project));
                numbers += 1;
            }
        }
    }
    assert!(numbers > 500, "only {numbers} numbers were looked at");
}

#[test]
fn no_answer_has_an_unfilled_gap_or_a_missing_number() {
    let mut random = Random::new(6);
    for _ in 0..200 {
        let project = read(&random_project(&mut random));
        let text = told(&project);
        assert!(!text.contains('{') && !text.contains('}') && !text.contains('–') && !text.contains("  "), "{text}");
        let first_stop = text.find(". ").unwrap_or(text.len() - 1);
        let first = &text[..=first_stop];
        for word in ["bolted", "before bolting", "covered"] {
            let tells =
                first.contains(word) || word == "bolted" && (first.contains("tips") || first.contains("no anchors"));
            assert!(tells || first.contains("uncovered"), "the first sentence says nothing of {word}: {first}");
        }
    }
}

#[test]
fn it_reads_well_when_everything_holds() {
    let text = told(&read(&demo("02-full.json").to_string()));
    let begin = "Full, with 3040 kg aboard and a push of 0.50 g, it stays put once bolted; before bolting it would slide at 0.15 g; \
                 every check that decides is covered. Anchors: tension and shear together governs in state full, with the push towards ";
    assert!(text.starts_with(begin), "{text}");
}

#[test]
fn it_reads_well_when_it_tips() {
    let mut project = demo("02-full.json");
    // Anchors on one side only hold nothing against a push away from them.
    project["cabinet"]["anchors"] = json!([{ "at_mm": [-580, -680] }, { "at_mm": [-580, 680] }]);
    project["site"]["s_ds"] = json!(3.0);
    let text = told(&read(&project.to_string()));
    assert!(
        text.starts_with(
            "Full, with 3040 kg aboard and a push of 1.35 g, it tips over; before bolting it would slide at "
        ),
        "{text}"
    );
}

#[test]
fn it_reads_well_without_anchors() {
    let mut project = demo("02-full.json");
    project["cabinet"]["anchors"] = json!([]);
    project["site"]["importance_factor"] = json!(1.0);
    let text = told(&read(&project.to_string()));
    let begin = "Full, with 3040 kg aboard and a push of 0.33 g, it has no anchors, and it cannot be said whether it stays put; before bolting it would slide at 0.15 g; not covered: no anchors are given";
    assert!(text.starts_with(begin), "{text}");
}

#[test]
fn it_reads_well_when_something_is_not_covered() {
    let text = told(&read(&demo("10-cannot-be-said.json").to_string()));
    assert!(text.contains("it cannot be said whether it holds once bolted; before bolting it would slide at 0.16 g; not covered: in seismic design categories C to F anchors need"), "{text}");
}

#[test]
fn it_reads_well_when_states_are_equal() {
    let text = told(&read(&demo("01-empty-frame.json").to_string()));
    assert!(text.starts_with("Empty, with nothing aboard and a push of 0.50 g, it stays put once bolted; "), "{text}");
    assert!(text.contains(" governs in state empty, ") && !text.contains("full"), "one state has one name: {text}");
    let mut project = demo("02-full.json");
    let alone = told(&read(&project.to_string()));
    project["states"] = json!([{ "name": "twin" }, { "name": "third" }]);
    assert_eq!(told(&read(&project.to_string())), alone, "of states that are alike the first is named");
}

#[test]
fn it_reads_well_when_checks_are_equal() {
    // With so little shear, tension and shear together are the tension alone, and the mode itself is named.
    let mut project = demo("02-full.json");
    project["cabinet"]["frame"]["mass_kg"] = json!(100);
    let project = read(&project.to_string());
    let report = project::assess(&project);
    let used = |id: &str| report.checks.iter().find(|check| check.id == id).and_then(|check| check.utilisation);
    assert_eq!(used("anchor.tension.breakout"), used("anchor.interaction"));
    let text = told(&project);
    let begin =
        "every check that decides is covered. Anchors: concrete breakout in tension governs in state full, with";
    assert!(text.contains(begin) && text.matches("governs").count() == 1, "{text}");
}

#[test]
fn it_reads_well_when_several_things_are_not_covered() {
    let mut project = demo("02-full.json");
    project.as_object_mut().expect("an object").remove("slab");
    let text = told(&read(&project.to_string()));
    let end = "; not covered: no slab is given: anchors need its strength, thickness and edges; and 1 more.";
    assert!(text.contains("it cannot be said whether it holds once bolted; ") && text.ends_with(end), "{text}");
}

#[test]
fn it_reads_well_when_stiffness_decides() {
    let text = told(&read(&demo("12-stiffness-decides.json").to_string()));
    assert!(text.contains("it does not hold for certain once bolted, because the stiffness of anchors and feet decides between 0.86 and 1.04 of what is allowed; "), "{text}");
}

#[test]
fn it_reads_well_without_a_rule() {
    let mut project = demo("02-full.json");
    project.as_object_mut().expect("an object").remove("site");
    let text = told(&read(&project.to_string()));
    assert!(text.starts_with("No seismic rule is chosen, so it cannot be said whether it holds once bolted; how it stands before bolting cannot be said without a push; "), "{text}");
}
