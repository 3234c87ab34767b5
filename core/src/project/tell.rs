//! Tells the answer: picks the sentences and fills their slots from the checks.

use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::bench::Bench;
use crate::calc::{CheckId, Kind, Role, Status, StepId};
use crate::report::answer::{self, Sentence, Slot, Topic, sentence};
use crate::report::missing::NO_SITE;
use crate::report::outcome::{CheckTold, Verdict};

/// The answer: bolted, before bolting and what is not covered as one sentence, then what governs.
pub fn tell_answer(bench: &Bench, checks: &[CheckTold], governs: Option<usize>, verdict: Verdict) -> Vec<Sentence> {
    let governing = governs.map(|place| &checks[place]);
    let mut sentences = vec![bolted(bench, checks, governing, verdict), free(bench, checks), uncovered(bench, checks)];
    sentences.extend(governing.and_then(|check| what_governs(bench, check)));
    sentences
}

fn bolted(bench: &Bench, checks: &[CheckTold], governing: Option<&CheckTold>, verdict: Verdict) -> Sentence {
    let demand = match &bench.demand {
        Some(Ok(demand)) => demand,
        Some(Err(_)) => return sentence(answer::NOT_REACHED, Topic::Bolted, Vec::new()),
        None => return sentence(answer::NO_DEMAND, Topic::Bolted, Vec::new()),
    };
    let tipping =
        checks.iter().find(|check| check.id == CheckId::BaseEquilibrium.id() && check.status == Status::Fails);
    let is_stopped = |check: &&CheckTold| check.role == Role::Required && check.status == Status::NotCovered;
    // The state that is named is the one of what decides: where it tips, where it is not covered, or where it governs.
    let deciding = match verdict {
        _ if tipping.is_some() => tipping,
        Verdict::CannotBeSaid => checks.iter().find(is_stopped),
        _ => None,
    };
    let at = deciding.and_then(|check| check.at).or(governing.and_then(|check| check.at));
    let state = at.map_or(0, |at| at.state);
    let load = &bench.loads[state];
    let mut slots = vec![
        Slot::Text { text: capitalised(state_name(bench, state)) },
        Slot::live(load.aboard_kg, Kind::Mass, "load"),
        Slot::live(demand.push, Kind::Acceleration, "strength"),
    ];
    let crossing = governing.and_then(|check| check.span).filter(|ends| ends[0] <= 1.0 && ends[1] > 1.0);
    let others_fail = checks.iter().any(|check| {
        let is_other = governing.is_none_or(|governing| governing.id != check.id);
        let crosses = check.span.is_some_and(|ends| ends[0] <= 1.0);
        check.role == Role::Required && check.status == Status::Fails && is_other && !crosses
    });
    let is_empty = load.aboard_kg == 0.0;
    let pick = |full: StepId, empty: StepId| if is_empty { empty } else { full };
    let id = match verdict {
        _ if tipping.is_some() => pick(answer::TIPS, answer::TIPS_EMPTY),
        Verdict::DoesNotHold => match crossing {
            Some(ends) if !others_fail => {
                slots.extend(ends.map(|end| Slot::demand(end, Kind::Utilisation)));
                pick(answer::DEPENDS, answer::DEPENDS_EMPTY)
            }
            _ => pick(answer::FAILS, answer::FAILS_EMPTY),
        },
        Verdict::Holds => pick(answer::HOLDS, answer::HOLDS_EMPTY),
        Verdict::CannotBeSaid if bench.project.cabinet.anchors.is_empty() => {
            pick(answer::UNBOLTED, answer::UNBOLTED_EMPTY)
        }
        Verdict::CannotBeSaid => pick(answer::CANNOT, answer::CANNOT_EMPTY),
    };
    if is_empty {
        slots[1] = Slot::Text { text: String::new() };
    }
    sentence(id, Topic::Bolted, slots)
}

fn free(bench: &Bench, checks: &[CheckTold]) -> Sentence {
    let find = |id: CheckId| checks.iter().find(|check| check.id == id.id());
    let (Some(tipping), Some(sliding)) = (find(CheckId::FreeTipping), find(CheckId::FreeSliding)) else {
        return sentence(answer::FREE_UNKNOWN, Topic::Free, Vec::new());
    };
    let Some(Ok(demand)) = &bench.demand else { return sentence(answer::FREE_UNKNOWN, Topic::Free, Vec::new()) };
    if demand.vertical >= 1.0 {
        return sentence(answer::FREE_LIFTS, Topic::Free, Vec::new());
    }
    let limit = |check: &CheckTold| check.limit.unwrap_or(0.0);
    let fails = |check: &CheckTold| check.status == Status::Fails;
    let first = if limit(tipping) <= limit(sliding) { tipping } else { sliding };
    let threshold = vec![Slot::capacity(limit(first), Kind::Acceleration)];
    if limit(tipping) <= 0.0 {
        return sentence(answer::FREE_FALLS, Topic::Free, Vec::new());
    }
    let id = if !fails(tipping) && !fails(sliding) {
        answer::FREE_STANDS
    } else if core::ptr::eq(first, tipping) {
        answer::FREE_TIPS
    } else {
        answer::FREE_SLIDES
    };
    sentence(id, Topic::Free, threshold)
}

fn uncovered(bench: &Bench, checks: &[CheckTold]) -> Sentence {
    let mut reasons: Vec<u16> = Vec::new();
    if bench.demand.is_none() {
        reasons.push(NO_SITE.code());
    }
    for check in checks.iter().filter(|check| check.role == Role::Required && check.status == Status::NotCovered) {
        if let Some(reason) = check.reason
            && !reasons.contains(&reason)
        {
            reasons.push(reason);
        }
    }
    match reasons.as_slice() {
        [] => sentence(answer::COVERED, Topic::Uncovered, Vec::new()),
        [one] => sentence(answer::NOT_COVERED, Topic::Uncovered, vec![Slot::Name { name: *one }]),
        [first, rest @ ..] => {
            let slots = vec![Slot::Name { name: *first }, Slot::number(rest.len() as f64, Kind::Number)];
            sentence(answer::NOT_COVERED_MORE, Topic::Uncovered, slots)
        }
    }
}

fn what_governs(bench: &Bench, check: &CheckTold) -> Option<Sentence> {
    let utilisation = check.utilisation?;
    let id = CheckId::named(check.id)?;
    let Some(at) = check.at.filter(|at| at.case.is_some()) else {
        let slots = vec![Slot::Check { check: id.id() }, Slot::demand(utilisation, Kind::Utilisation)];
        return Some(sentence(answer::GOVERNS_PLACE, Topic::Governs, slots));
    };
    let mut slots = vec![
        Slot::Check { check: id.id() },
        Slot::Text { text: state_name(bench, at.state).into() },
        Slot::number(at.direction_rad, Kind::Angle),
        Slot::demand(utilisation, Kind::Utilisation),
    ];
    match check.span {
        Some(ends) => {
            slots.extend(ends.map(|end| Slot::demand(end, Kind::Utilisation)));
            Some(sentence(answer::GOVERNS_SPAN, Topic::Governs, slots))
        }
        None => Some(sentence(answer::GOVERNS, Topic::Governs, slots)),
    }
}

/// A frame without contents is as full as it is empty; the plain word is the second.
fn state_name<'b>(bench: &'b Bench, state: usize) -> &'b str {
    let load = &bench.loads[state];
    if load.aboard_kg == 0.0 && state == 0 { "empty" } else { &load.name }
}

fn capitalised(name: &str) -> String {
    let mut characters = name.chars();
    match characters.next() {
        Some(first) => first.to_uppercase().chain(characters).collect(),
        None => String::new(),
    }
}
