//! What is told of a project whose inputs are not all known: what they may be, and what became of trying it.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use crate::calc::clause::INPUT;
use crate::calc::steps;

steps! { 195 "what is not known";
    NOT_TRIED "unknown" Number (INPUT "" Derived) "With {0} of the inputs not known it cannot be said yet whether it holds: what they may be has not been tried.": Name;
    ALL "unknown" Number (INPUT "" Derived) "With {0} of the inputs not known, {1} ways in which they may be were tried, and it holds once bolted in all of them: tried, not proved.": Name;
    SOME "unknown" Number (INPUT "" Derived) "With {0} of the inputs not known it depends: of {1} ways in which they may be, it holds once bolted in {2} and does not hold in {3}.": Name;
    HOLDS_IN "unknown" Number (INPUT "" Derived) "With {0} of the inputs not known, {1} ways in which they may be were tried, and it holds once bolted in {2} of them.": Name;
    NONE "unknown" Number (INPUT "" Derived) "With {0} of the inputs not known, {1} ways in which they may be were tried, and it holds once bolted in none of them.": Name;
    UNSAID "unknown" Number (INPUT "" Derived) "In {0} of them it cannot be said.": Name;
    UNBUILT "unknown" Number (INPUT "" Derived) "What cannot be built was counted too: {0} of them.": Name;
    STOPPED "unknown" Number (INPUT "" Derived) "The trying was stopped before all {0} were tried.": Name;
    STAND_IN "unknown" Number (INPUT "" Derived) "What follows stands for the middle of each range and the first word of each set.": Name;
    STAND_IN_OTHER "unknown" Number (INPUT "" Derived) "What follows stands for one of the ways that can be built; the middle of each range with the first word of each set cannot.": Name;
}

/// What is not known, and what became of trying it.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct NotKnown {
    /// The inputs that are not known.
    pub inputs: Vec<OpenTold>,
    /// What became of trying what they may be; absent until it was tried.
    pub tried: Option<Tried>,
}

/// An input that is not known.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct OpenTold {
    /// Where it stands in the file.
    pub path: String,
    /// Code of the kind of a number.
    pub kind: u16,
    /// Both ends of a range, or all words of a set.
    pub may_be: Vec<ValueTold>,
    /// What stands in for it in drawings, checks and limits.
    pub stand_in: ValueTold,
}

/// A value of an input: a number in SI, or a word.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(untagged)]
pub enum ValueTold {
    /// A number, in SI.
    Number(f64),
    /// A word.
    Word(&'static str),
}

/// What became of the points that were tried.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Tried {
    /// How many there were to try.
    pub of: usize,
    /// How many were tried.
    pub tried: usize,
    /// How many of them hold once bolted.
    pub holds: usize,
    /// How many do not.
    pub fails: usize,
    /// Of how many it cannot be said.
    pub unsaid: usize,
    /// How many cannot be built.
    pub unbuilt: usize,
    /// The point nearest to what stands in that does not hold, or cannot be said or built where none fails.
    pub nearest: Option<PointTold>,
    /// The point that holds with the least to spare.
    pub closest: Option<PointTold>,
    /// What knowing one input would decide, the one that decides most first; none where everything tried agrees.
    pub settles: Vec<Settles>,
}

/// A point that was tried.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct PointTold {
    /// A value for every input that is not known.
    pub values: Vec<ValueTold>,
    /// The check that governs.
    pub governs: Option<&'static str>,
    /// Its utilisation.
    pub utilisation: Option<f64>,
    /// Why it cannot be built.
    pub fault: Option<String>,
}

/// What knowing one input would decide.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Settles {
    /// Place of the input.
    pub input: usize,
    /// The share of its range, or of its words, in which everything tried agrees whatever the other inputs are.
    pub decides: f64,
    /// Its range from either end as far as everything tried agrees, with what lies between; or its words.
    pub parts: Vec<Part>,
}

/// A part of a range, or a word of a set.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Part {
    /// Where it begins; the word of a set.
    pub from: ValueTold,
    /// Where it ends; the same word.
    pub to: ValueTold,
    /// How many were tried in it.
    pub tried: usize,
    /// How many of them hold.
    pub holds: usize,
}
