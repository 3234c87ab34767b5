//! The working: one result told again, with every section that is needed to follow it.

use alloc::string::String;
use alloc::vec::Vec;

use super::Project;
use super::assess::subject_told;
use super::bench::{Bench, Place, Purpose, Run, STIFFNESS_FACTORS};
use super::floored::check_state;
use super::handled;
use crate::calc::{CheckId, Part, Section, Sheet, When};
use crate::load_out;
use crate::report::outcome::{At, SubjectTold};

/// The sections that lead to one result: load-out, demand, stiffness, base reactions, and the check itself.
///
/// `at` comes from a report of the same project; a place that does not exist there gives no sections. Each section is in
/// the units of its rule, which it names.
///
/// ```
/// use steadfoot::project::{assess, built_in, working};
/// let project = built_in().unwrap();
/// let report = assess(&project);
/// let at = report.checks[report.governs.unwrap()].at.unwrap();
/// let sections = working(&project, &at);
/// assert!(sections.iter().any(|section| section.check.map(|check| check.id()) == at.check));
/// ```
pub fn working(project: &Project, at: &At) -> Vec<Section> {
    let mut bench = Bench::new(project);
    if at.state >= bench.loads.len() || at.case.is_some_and(|case| case >= bench.cases().len()) {
        return Vec::new();
    }
    let mut sheet = Sheet::told();
    load_out::tell(&project.cabinet, &project.contents, &project.all_states()[at.state], &mut sheet);
    if let Some(site) = &project.site {
        let weight_n = bench.loads[at.state].mass_kg * crate::calc::unit::G_N_PER_KG;
        // A rule that does not reach tells how far it came before it stopped.
        let _ = (site.rule.demand)(&site.values, weight_n, &mut sheet);
    }
    let check = at.check.and_then(CheckId::named);
    let when = check.map(CheckId::when);
    if let Some(place) = place(at) {
        bench.tell_stiffness(&mut sheet);
        bench.check(&place, &mut sheet, &mut Vec::new());
    }
    if let Some(standing) = bench.standing(at.state) {
        standing.check_tipping(at.direction_rad, &mut sheet);
        standing.check_sliding(&mut sheet);
    }
    if let Some(check @ (CheckId::FreeTilt | CheckId::FreePush)) = check {
        let tested = bench.tested(at.state);
        tested.check(check, &tested.side(at.direction_rad), &mut sheet);
    }
    if when == Some(When::AtRest) {
        bench.tell_stiffness(&mut sheet);
        check_state(&bench, at.state, &mut sheet);
    }
    bench.check_places(&mut sheet, &mut Vec::new());
    if check == Some(CheckId::AnchorAsBuilt) {
        super::as_built::check(project, &mut sheet);
    }
    let is_handling = when == Some(When::Handled);
    let is_frame = check.is_some_and(|check| check.id().starts_with("frame."));
    if is_handling {
        handled::check(&bench, at.state, &mut sheet, &mut Vec::new());
    }
    let mut sections = sheet.sections;
    // A check of a group may be proved on its hottest anchor: then no section bears the group's own name.
    let is_own = |section: &Section| section.check == check && subject_told(section.subject) == at.subject;
    let has_own = sections.iter().any(is_own);
    sections.retain(|section| {
        let is_idle = section.steps.is_empty() || is_handling && !is_frame && section.part == Part::Demand;
        !is_idle && (is_needed(section, check, at) || !has_own && section.check == check)
    });
    sections
}

/// The place in the sweep that a result comes from; none for what depends on no load case.
pub fn place(at: &At) -> Option<Place> {
    let purpose = if at.anchors { Purpose::Anchors } else { Purpose::Component };
    Some(Place {
        state: at.state,
        run: Run { case: at.case?, purpose },
        direction_rad: at.direction_rad,
        stiffness: STIFFNESS_FACTORS.iter().position(|&factor| factor == at.stiffness)?,
    })
}

fn is_needed(section: &Section, check: Option<CheckId>, at: &At) -> bool {
    let subject: SubjectTold = subject_told(section.subject);
    match (section.check, check) {
        (None, _) => true,
        (Some(_), None) => true,
        (Some(of), Some(wanted)) => of == wanted && (subject == at.subject || at.subject.kind == "whole"),
    }
}

/// State and subject of a section in one text, as addresses have it: `full/group-1`.
pub fn state_and_subject(project: &Project, state: usize, subject: crate::calc::Subject) -> String {
    let state = project.all_states().get(state).map(|state| state.name.replace('/', "∕")).unwrap_or_default();
    match subject_told(subject) {
        SubjectTold { kind: "whole", .. } => state,
        subject => alloc::format!("{state}/{}-{}", subject.kind, subject.number),
    }
}

/// The working as plain data, each section with its state and subject.
pub fn working_told(project: &Project, at: &At) -> Vec<crate::report::sheet_told::SectionTold> {
    let told = working(project, at).into_iter().map(|section| {
        let of = state_and_subject(project, at.state, section.subject);
        crate::report::sheet_told::section_told(&section, of)
    });
    told.collect()
}
