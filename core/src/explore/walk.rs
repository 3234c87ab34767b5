//! The steps of a check that moved, followed back from its utilisation to where inputs enter.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::compared::Uses;
use crate::calc::{Part, Section, StepId, Subject, System};
use crate::project::{Project, state_and_subject, working};
use crate::report::outcome::{At, CheckTold};

/// A step that moved.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct StepMoved {
    /// Part of the pipeline.
    pub part: Part,
    /// State and subject.
    pub of: String,
    /// The check that its section proves.
    pub check: Option<&'static str>,
    /// Its row.
    pub id: StepId,
    /// Place of an indexed quantity, from 1; of several that moved, the one that moved most.
    pub index: u16,
    /// How many places of it moved.
    pub count: usize,
    /// As it was; absent where it is new or no finite number.
    pub before: Option<f64>,
    /// As it is.
    pub after: Option<f64>,
    /// The system of both.
    pub system: System,
    /// The steps of this list that it hangs on; none where an input enters.
    pub from: Vec<usize>,
}

/// A quantity of one section of the second sheet that moved, all its places together.
struct Quantity {
    section: usize,
    id: StepId,
    carried: bool,
    index: u16,
    count: usize,
    values: [f64; 2],
    is_new: bool,
    system: System,
    /// Whether its section proves a check.
    is_checked: bool,
    /// Whether it belongs to what feet and anchors feel.
    is_statics: bool,
    /// The values of every place that moved.
    all: Vec<[f64; 2]>,
}

/// What the text tables say of a row.
struct Words(String);

impl Words {
    fn shape(&self) -> &str {
        self.0.split(' ').next().unwrap_or("")
    }

    fn symbol(&self) -> &str {
        self.0.split(' ').nth(1).unwrap_or("-")
    }

    fn uses(&self) -> impl Iterator<Item = &str> {
        self.0.split(' ').skip(2)
    }
}

/// The moved steps of a check, in the order of the sheet; `now` is the check as it came out in the second project.
pub fn walk([(before, was_at), (after, at)]: [(&Project, &At); 2], now: &CheckTold, uses: Uses) -> Vec<StepMoved> {
    let [old, new] = [(before, was_at), (after, at)].map(|(project, at)| told(project, at, now.id));
    let moved = moved(&old, &new, now.id);
    let words: Vec<Words> = moved.iter().map(|one| Words(uses(one.id))).collect();
    let is_number = |place: &usize| !matches!(words[*place].shape(), "reason" | "name");
    let own = |place: &usize| new[moved[*place].section].check.map(|check| check.id()) == Some(now.id);
    let is_result =
        |place: &usize| now.utilisation.is_some_and(|used| used.to_bits() == moved[*place].values[1].to_bits());
    let last = |is: &dyn Fn(&usize) -> bool| (0..moved.len()).filter(own).filter(is_number).rfind(is);
    let Some(target) = last(&is_result).or_else(|| last(&|_| true)) else { return Vec::new() };
    let mut sources: Vec<Option<Vec<usize>>> = Vec::new();
    sources.resize_with(moved.len(), || None);
    let mut ahead = alloc::vec![target];
    while let Some(place) = ahead.pop() {
        if sources[place].is_none() {
            let found: Vec<usize> = from(place, &moved, &words).into_iter().filter(is_number).collect();
            ahead.extend(&found);
            sources[place] = Some(found);
        }
    }
    let kept: Vec<usize> = (0..moved.len()).filter(|&place| sources[place].is_some()).collect();
    let step = |&place: &usize| {
        let (one, section) = (&moved[place], &new[moved[place].section]);
        let from = sources[place].iter().flatten().filter_map(|source| kept.iter().position(|other| other == source));
        let finite = |value: f64| value.is_finite().then_some(value);
        StepMoved {
            part: section.part,
            of: state_and_subject(after, at.state, section.subject),
            check: section.check.map(|check| check.id()),
            id: one.id,
            index: one.index,
            count: one.count,
            before: finite(one.values[0]).filter(|_| !one.is_new),
            after: finite(one.values[1]),
            system: section.system,
            from: from.collect(),
        }
    };
    kept.iter().map(step).collect()
}

/// The sections that lead to a check: of a place in the sweep those of all other checks too, since a check of several
/// forces together brings its ratios from there.
fn told(project: &Project, at: &At, check: &str) -> Vec<Section> {
    let own = working(project, at);
    if at.case.is_none() {
        return own;
    }
    let is_own = |section: &Section| section.check.is_some_and(|one| one.id() == check);
    let mut all = working(project, &At { check: None, ..*at });
    all.retain(|section| !is_own(section));
    all.extend(own.into_iter().filter(is_own));
    all
}

/// Everything that moved between two workings, in the order of the second.
fn moved(old: &[Section], new: &[Section], check: &str) -> Vec<Quantity> {
    // Of the two workings each tells its own foot, anchor or group: what is asked about is the same thing in both.
    let subject_of = |sections: &[Section]| {
        let own = sections.iter().find(|section| section.check.is_some_and(|one| one.id() == check));
        own.map(|section| section.subject)
    };
    let subjects = [subject_of(old), subject_of(new)];
    let key = |section: &Section, own: Option<Subject>| {
        let subject = (Some(section.subject) != own).then_some(section.subject);
        (section.part, section.check, section.system, subject)
    };
    // First every section that stands in both; then, where another one governs now, its sections are held against those
    // of the one that did.
    let mut partners: Vec<Option<usize>> = alloc::vec![None; new.len()];
    for by_subject in [true, false] {
        for (place, section) in new.iter().enumerate().filter(|(_, section)| !section.steps.is_empty()) {
            let is = |other: &Section| {
                let [was, is] = [key(other, subjects[0]), key(section, subjects[1])];
                (was.0, was.1, was.2) == (is.0, is.1, is.2) && (was.3 == is.3 || !by_subject)
            };
            if partners[place].is_none() {
                partners[place] = (0..old.len()).find(|other| !partners.contains(&Some(*other)) && is(&old[*other]));
            }
        }
    }
    let mut all: Vec<Quantity> = Vec::new();
    for (place, section) in new.iter().enumerate() {
        let partner = partners[place];
        for step in &section.steps {
            let same = |other: &&crate::calc::Step| other.id == step.id && other.index == step.index;
            // A row may stand twice in a section; the same one of them is meant.
            let number = section.steps.iter().take_while(|other| !core::ptr::eq(*other, step)).filter(same).count();
            let was = partner.and_then(|other| old[other].steps.iter().filter(same).nth(number));
            // Nothing turned round is still nothing.
            if was.is_some_and(|was| was.value == step.value || was.value.to_bits() == step.value.to_bits()) {
                continue;
            }
            let values = [was.map_or(f64::NAN, |was| was.value), step.value];
            let by = |values: [f64; 2]| (values[1] - values[0]).abs();
            let known = all.iter_mut().rfind(|known| known.section == place && known.id == step.id && step.index > 0);
            match known {
                Some(known) => {
                    known.count += 1;
                    known.all.push(values);
                    if by(values) > by(known.values) {
                        (known.index, known.values, known.is_new) = (step.index, values, was.is_none());
                    }
                }
                None => all.push(Quantity {
                    section: place,
                    id: step.id,
                    carried: step.carried,
                    index: step.index,
                    count: 1,
                    values,
                    is_new: was.is_none(),
                    system: section.system,
                    is_checked: section.check.is_some(),
                    is_statics: section.part == Part::BaseReactions,
                    all: alloc::vec![values],
                }),
            }
        }
    }
    all
}

/// The moved quantities that one of them hangs on.
fn from(place: usize, moved: &[Quantity], words: &[Words]) -> Vec<usize> {
    let (one, said) = (&moved[place], &words[place]);
    let beside = || (0..place).filter(|&other| moved[other].section == one.section);
    match (said.shape(), one.carried) {
        ("formula", false) => {
            beside().filter(|&other| said.uses().any(|symbol| symbol == words[other].symbol())).collect()
        }
        ("given" | "constant" | "formula", _) => brought(place, moved, words).into_iter().collect(),
        // What is read from tables, drawn, solved or searched has no formula: it may hang on all that stands before it in
        // its section.
        (_, false) if beside().next().is_some() => beside().collect(),
        _ => match brought(place, moved, words) {
            Some(other) => alloc::vec![other],
            // Nothing bears its name, so it hangs on the statics as a whole.
            None => {
                (0..place).filter(|&other| moved[other].is_statics && moved[other].section != one.section).collect()
            }
        },
    }
}

/// The quantity of an earlier section that one was brought from: the same row, else the same symbol among what is said to
/// be brought, else the same value.
fn brought(place: usize, moved: &[Quantity], words: &[Words]) -> Option<usize> {
    let one = &moved[place];
    // What the user gave enters in every section that uses it, unless it comes from before the checks; only what is said
    // to be brought comes from another check.
    let is_source = |&other: &usize| {
        let source = &moved[other];
        let is_input = matches!(words[other].shape(), "given" | "constant");
        !source.carried && source.section != one.section && (one.carried || !source.is_checked && !is_input)
    };
    let earlier = || (0..place).rev().filter(is_source);
    let has = |other: usize, is: &dyn Fn([f64; 2]) -> bool| moved[other].all.iter().any(|values| is(*values));
    let [was, is] = one.values.map(|value| value.abs().to_bits());
    // In another system of units, or with another factor on stiffness, the number is another one, but it moved alike.
    let factor = one.values[1] / one.values[0];
    let alike = |other: usize| !moved[other].is_checked || moved[other].system != one.system;
    earlier()
        .find(|&other| moved[other].id == one.id)
        .or_else(|| earlier().find(|&other| one.carried && words[other].symbol() == words[place].symbol()))
        .or_else(|| {
            earlier().find(|&other| has(other, &|values| values.map(|value| value.abs().to_bits()) == [was, is]))
        })
        .or_else(|| earlier().find(|&other| has(other, &|[_, new]| new.abs().to_bits() == is)))
        .or_else(|| {
            earlier().find(|&other| alike(other) && has(other, &|[old, new]| (new / old - factor).abs() < 1e-12))
        })
}
