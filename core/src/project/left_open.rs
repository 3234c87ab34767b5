//! A report of a project that leaves something open never tells the verdict of what stands in for it alone.

use alloc::vec;
use alloc::vec::Vec;

use super::Project;
use crate::calc::Kind;
use crate::input::{MayBe, Open};
use crate::report::answer::{Sentence, Slot, Topic, sentence};
use crate::report::not_known::{self, NotKnown, OpenTold, Tried, ValueTold};
use crate::report::outcome::{Report, Verdict};

/// Puts what is not known in front of a report: what was tried, or that nothing was. The verdict is that of what was
/// tried: it holds where every point holds, it does not where none does and nothing else is left to be said.
pub fn stated(project: &Project, report: &mut Report, tried: Option<Tried>) {
    if project.open.is_empty() {
        return;
    }
    report.verdict = tried.as_ref().map_or(Verdict::CannotBeSaid, verdict);
    // What follows is about one way only; turning its numbers would close what is open.
    for slot in report.answer.iter_mut().flat_map(|sentence| &mut sentence.slots) {
        if let Slot::Number { live, .. } = slot {
            *live = None;
        }
    }
    report.answer.retain(|sentence| sentence.topic != Topic::Unknown);
    report.answer.splice(0..0, sentences(project, tried.as_ref()));
    report.unknown = Some(NotKnown { inputs: project.open.iter().map(told).collect(), tried });
}

fn verdict(tried: &Tried) -> Verdict {
    if tried.holds == tried.of {
        Verdict::Holds
    } else if tried.fails > 0 && tried.fails + tried.unbuilt == tried.of {
        Verdict::DoesNotHold
    } else {
        Verdict::CannotBeSaid
    }
}

fn sentences(project: &Project, tried: Option<&Tried>) -> Vec<Sentence> {
    let count = |count: usize| Slot::number(count as f64, Kind::Number);
    let mut told = Vec::new();
    let mut say = |id, slots: Vec<Slot>| told.push(sentence(id, Topic::Unknown, slots));
    let open = count(project.open.len());
    match tried {
        None => say(not_known::NOT_TRIED, vec![open]),
        Some(tried) => {
            let slots = vec![open, count(tried.tried), count(tried.holds), count(tried.fails)];
            let id = match (tried.holds, tried.fails) {
                (holds, _) if holds == tried.tried => not_known::ALL,
                (0, _) => not_known::NONE,
                (_, 0) => not_known::HOLDS_IN,
                _ => not_known::SOME,
            };
            say(id, slots);
            if tried.unsaid > 0 {
                say(not_known::UNSAID, vec![count(tried.unsaid)]);
            }
            if tried.unbuilt > 0 {
                say(not_known::UNBUILT, vec![count(tried.unbuilt)]);
            }
            if tried.tried < tried.of {
                say(not_known::STOPPED, vec![count(tried.of)]);
            }
        }
    }
    let is_middle = project.open.iter().all(|open| open.stand_in == open.middle());
    say(if is_middle { not_known::STAND_IN } else { not_known::STAND_IN_OTHER }, Vec::new());
    told
}

fn told(open: &Open) -> OpenTold {
    let kind = if let MayBe::Between(kind, _) = open.may_be { kind } else { Kind::Number };
    OpenTold {
        path: open.path.clone(),
        kind: kind.code(),
        may_be: open.ends().iter().map(|&end| value_told(open, end)).collect(),
        stand_in: value_told(open, open.stand_in),
    }
}

/// A value of an input as it is told.
pub fn value_told(open: &Open, value: f64) -> ValueTold {
    open.word(value).map_or(ValueTold::Number(value), ValueTold::Word)
}

/// The values of all inputs that are not known, as they are told.
pub fn values_told(open: &[Open], values: &[f64]) -> Vec<ValueTold> {
    open.iter().zip(values).map(|(open, &value)| value_told(open, value)).collect()
}
