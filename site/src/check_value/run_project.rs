//! Runs a block of values of a whole project: one state, one load case, one direction.
//!
//! Input: `{ "project": a project file, "state": "full", "case": "E", "direction_deg": 0 }`; without `case` the load is the
//! weight alone. The case is named by the symbol of its row. `checks` names checks that depend on no load case, by their ids.
//!
//! Answers: every step by its address without the subject, `load-out/z`, `standing-free/tipping/a_tip`; those of a foot,
//! an anchor or a group also with it, `feet/foot-1/bearing/B_n`; of an indexed quantity `base-reactions/T_i/3`.

use serde_json::Value as Json;
use steadfoot::calc::{CheckId, Part, Section, Subject, System};
use steadfoot::project;
use steadfoot::report::outcome::{At, SubjectTold};
use steadfoot::report::text_tables::{text, text_of_code};

use super::{Answers, Found, Ran};

/// The answers for an input with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    let project = project::read(&input["project"].to_string(), System::Si)
        .map_err(|faults| faults.iter().map(|fault| fault.sentence()).collect::<Vec<_>>().join(" "))?;
    let state_name = input["state"].as_str().unwrap_or("full");
    let states = project.all_states();
    let state = states.iter().position(|state| state.name == state_name).ok_or(format!("no state {state_name}"))?;
    let case = input["case"].as_str().map(|name| case(&project, name)).transpose()?;
    let direction_rad = input["direction_deg"].as_f64().unwrap_or(0.0).to_radians();
    let at = |anchors: bool| At {
        state,
        case,
        anchors,
        direction_rad,
        subject: SubjectTold { kind: "whole", number: 0 },
        stiffness: 1.0,
        check: None,
    };
    let mut sections = project::working(&project, &at(false));
    if case.is_some() && project.anchorage.is_some() {
        for section in project::working(&project, &at(true)) {
            if !sections.contains(&section) {
                sections.push(section);
            }
        }
    }
    for id in input["checks"].as_array().into_iter().flatten() {
        let known = CheckId::ALL.iter().find(|check| Some(check.id()) == id.as_str());
        let check = known.ok_or_else(|| format!("no check {id}"))?;
        let own = project::working(&project, &At { check: Some(check.id()), case: None, ..at(false) });
        sections.extend(own.into_iter().filter(|section| section.check == Some(*check)));
    }
    Ok(Ran { answers: answers(&sections), sections })
}

fn case(project: &project::Project, name: &str) -> Result<usize, String> {
    let cases = project::assess(project).cases;
    let is_named = |code: u16| text_of_code(code).is_some_and(|row| row.symbol == name);
    let names = || cases.iter().filter_map(|case| text_of_code(case.name)).map(|row| row.symbol).collect::<Vec<_>>();
    cases
        .iter()
        .position(|case| is_named(case.name))
        .ok_or_else(|| format!("no load case {name}; there are {:?}", names()))
}

fn answers(sections: &[Section]) -> Answers {
    let mut answers = Answers::new();
    for section in sections {
        let part = part_word(section.part);
        let check = section.check.map(|check| format!("/{}", check.section())).unwrap_or_default();
        let subject = match section.subject {
            Subject::Whole => String::new(),
            Subject::Foot(place) => format!("/foot-{}", place + 1),
            Subject::Anchor(place) => format!("/anchor-{}", place + 1),
            Subject::Group(number) => format!("/group-{number}"),
        };
        for step in &section.steps {
            let Some(row) = text(step.id) else { continue };
            let found = Found { value: section.system.to_si(step.value, row.kind), kind: row.kind };
            let index = if step.index > 0 { format!("/{}", step.index) } else { String::new() };
            answers.entry(format!("{part}{check}/{}{index}", row.symbol)).or_insert(found);
            answers.entry(format!("{part}{subject}{check}/{}{index}", row.symbol)).or_insert(found);
        }
    }
    answers
}

/// The word of a part in an address: `load-out`.
pub fn part_word(part: Part) -> String {
    serde_json::to_value(part).ok().and_then(|word| word.as_str().map(String::from)).unwrap_or_default()
}
