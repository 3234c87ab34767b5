//! Words for what the engine says in codes, the same as the page's.

use steadfoot::calc::show::{Rounding, Style, show};
use steadfoot::calc::{CheckId, Kind, Part, Role, Status, System, Trust};
use steadfoot::report::outcome::{At, SubjectTold};
use steadfoot::report::text_tables::text_of_code;

use super::assessed::Assessed;

/// The word for what a check came to.
pub fn status(status: Status) -> &'static str {
    match status {
        Status::Holds => "holds",
        Status::Fails => "fails",
        Status::NotNeeded => "not needed",
        Status::NotCovered => "not covered",
    }
}

/// The heading over the checks of a role.
pub fn role(role: Role) -> &'static str {
    match role {
        Role::Required => "What was checked",
        Role::BeforeBolting => "Before bolting",
        Role::Information => "For information",
    }
}

/// The heading of a part of the pipeline.
pub fn part(part: Part) -> &'static str {
    match part {
        Part::LoadOut => "Load-out",
        Part::Demand => "Demand",
        Part::BaseReactions => "Base reactions",
        Part::StandingFree => "Standing free",
        Part::Anchors => "Anchors",
        Part::Feet => "Feet",
        Part::Floor => "Floor",
        Part::Frame => "Frame",
        Part::Moving => "Moving",
        Part::Lifting => "Lifting",
        Part::ShakeTable => "Shake table",
        Part::Limits => "Limits",
    }
}

/// The word for how far a text can be trusted.
pub fn trust(trust: Trust) -> &'static str {
    match trust {
        Trust::Published => "published",
        Trust::Secondary => "secondary",
        Trust::Memory => "memory",
        Trust::Derived => "derived",
    }
}

/// What that word means.
pub fn trust_meaning(trust: Trust) -> &'static str {
    match trust {
        Trust::Published => "read in the issuing text or a published book",
        Trust::Secondary => "read in another text that quotes it",
        Trust::Memory => "recalled, not read again",
        Trust::Derived => "our own arithmetic from first principles",
    }
}

/// The title of a check.
pub fn check_title(id: &str) -> &'static str {
    CheckId::named(id).map_or("", CheckId::title)
}

/// The text of a row.
pub fn row(code: u16) -> &'static str {
    text_of_code(code).map_or("", |row| row.what)
}

/// A number in plain SI units.
pub fn plain(value: f64, kind: Kind, rounding: Rounding) -> String {
    show(value, kind, Style::plain(System::Si, rounding))
}

/// "front left foot", "anchor 3", "group 1"; nothing for the whole.
pub fn subject(subject: &SubjectTold, assessed: &Assessed) -> String {
    let place = subject.number.saturating_sub(1) as usize;
    let cabinet = &assessed.project.cabinet;
    match subject.kind {
        "whole" => String::new(),
        "foot" => cabinet.feet.get(place).map_or(String::new(), |foot| format!("{} foot", foot.name)),
        "anchor" => {
            let name = cabinet.anchors.get(place).and_then(|anchor| anchor.name.clone());
            format!("anchor {}", name.unwrap_or_else(|| subject.number.to_string()))
        }
        other => format!("{other} {}", subject.number),
    }
}

/// The state, what it is about and the direction for which a result stands.
pub fn occasion(at: &At, assessed: &Assessed) -> String {
    let mut words = Vec::new();
    if let Some(state) = assessed.report.states.get(at.state) {
        words.push(state.name.clone());
    }
    words.push(subject(&at.subject, assessed));
    if at.case.is_some() {
        words.push(format!("push towards {}", plain(at.direction_rad, Kind::Angle, Rounding::Nearest)));
    }
    words.retain(|word| !word.is_empty());
    words.join(", ")
}

/// The same text with a capital at its beginning.
pub fn sentence_case(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use steadfoot::calc::{Part, Role, Status, Trust};

    const PAGE: &str = include_str!("../../page/wording.js");

    #[test]
    fn the_page_says_it_in_the_same_words() {
        let mut words = Vec::new();
        words.extend([Status::Holds, Status::Fails, Status::NotNeeded, Status::NotCovered].map(super::status));
        words.extend([Role::Required, Role::BeforeBolting, Role::Information].map(super::role));
        words.extend([Part::LoadOut, Part::Demand, Part::BaseReactions, Part::StandingFree].map(super::part));
        words.extend(
            [
                Part::Anchors,
                Part::Feet,
                Part::Floor,
                Part::Frame,
                Part::Moving,
                Part::Lifting,
                Part::ShakeTable,
                Part::Limits,
            ]
            .map(super::part),
        );
        words.extend([Trust::Published, Trust::Secondary, Trust::Memory, Trust::Derived].map(super::trust_meaning));
        for word in words {
            assert!(PAGE.contains(&format!("\"{word}\"")), "the page does not say \"{word}\"");
        }
    }
}
