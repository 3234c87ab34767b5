//! The answer: one sentence that tells all three, bolted, before bolting and what is not covered, and one on what governs.
//!
//! The engine picks a template and fills its slots; templates are rows of the text table, so a page or a command line
//! prints them with its own units.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use crate::calc::clause::STATICS;
use crate::calc::{Kind, StepId, steps};

steps! { 17 "answer";
    HOLDS "bolted" Number (STATICS "" Derived) "{0}, with {1} aboard and a push of {2}, it stays put once bolted;": Name;
    HOLDS_EMPTY "bolted" Number (STATICS "" Derived) "{0}, with nothing aboard and a push of {2}, it stays put once bolted;": Name;
    FAILS "bolted" Number (STATICS "" Derived) "{0}, with {1} aboard and a push of {2}, it does not hold once bolted;": Name;
    FAILS_EMPTY "bolted" Number (STATICS "" Derived) "{0}, with nothing aboard and a push of {2}, it does not hold once bolted;": Name;
    CANNOT "bolted" Number (STATICS "" Derived) "{0}, with {1} aboard and a push of {2}, it cannot be said whether it holds once bolted;": Name;
    CANNOT_EMPTY "bolted" Number (STATICS "" Derived) "{0}, with nothing aboard and a push of {2}, it cannot be said whether it holds once bolted;": Name;
    DEPENDS "bolted" Number (STATICS "" Derived) "{0}, with {1} aboard and a push of {2}, it does not hold for certain once bolted, because the stiffness of anchors and feet decides between {3} and {4} of what is allowed;": Name;
    DEPENDS_EMPTY "bolted" Number (STATICS "" Derived) "{0}, with nothing aboard and a push of {2}, it does not hold for certain once bolted, because the stiffness of anchors and feet decides between {3} and {4} of what is allowed;": Name;
    UNBOLTED "bolted" Number (STATICS "" Derived) "{0}, with {1} aboard and a push of {2}, it has no anchors, and it cannot be said whether it stays put;": Name;
    UNBOLTED_EMPTY "bolted" Number (STATICS "" Derived) "{0}, with nothing aboard and a push of {2}, it has no anchors, and it cannot be said whether it stays put;": Name;
    TIPS "bolted" Number (STATICS "" Derived) "{0}, with {1} aboard and a push of {2}, it tips over;": Name;
    TIPS_EMPTY "bolted" Number (STATICS "" Derived) "{0}, with nothing aboard and a push of {2}, it tips over;": Name;
    NO_DEMAND "bolted" Number (STATICS "" Derived) "No seismic rule is chosen, so it cannot be said whether it holds once bolted;": Name;
    NOT_REACHED "bolted" Number (STATICS "" Derived) "The seismic rule does not reach this case, so it cannot be said whether it holds once bolted;": Name;
    FREE_SLIDES "free" Number (STATICS "" Derived) "before bolting it would slide at {0};": Name;
    FREE_TIPS "free" Number (STATICS "" Derived) "before bolting it would tip at {0};": Name;
    FREE_FALLS "free" Number (STATICS "" Derived) "before bolting it would fall by its own weight;": Name;
    FREE_LIFTS "free" Number (STATICS "" Derived) "before bolting the vertical motion alone would lift it;": Name;
    FREE_STANDS "free" Number (STATICS "" Derived) "before bolting it stands by itself and would slide or tip first at {0};": Name;
    FREE_UNKNOWN "free" Number (STATICS "" Derived) "how it stands before bolting cannot be said without a push;": Name;
    COVERED "uncovered" Number (STATICS "" Derived) "every check that decides is covered.": Name;
    NOT_COVERED "uncovered" Number (STATICS "" Derived) "not covered: {0}.": Name;
    NOT_COVERED_MORE "uncovered" Number (STATICS "" Derived) "not covered: {0}; and {1} more.": Name;
    GOVERNS "governs" Number (STATICS "" Derived) "{0} governs in state {1}, with the push towards {2}: {3} of what is allowed.": Name;
    GOVERNS_PLACE "governs" Number (STATICS "" Derived) "{0} governs: {1} of what is allowed.": Name;
    GOVERNS_SPAN "governs" Number (STATICS "" Derived) "{0} governs in state {1}, with the push towards {2}: {3} of what is allowed; anchors four times softer or stiffer give {4} to {5}.": Name;
}

/// A template with what goes into its slots.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Sentence {
    /// Row of the template.
    pub id: u16,
    /// What it is about.
    pub topic: Topic,
    /// What goes into `{0}`, `{1}` ...
    pub slots: Vec<Slot>,
}

/// What a sentence is about.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Topic {
    /// What is not known.
    Unknown,
    /// Once bolted.
    Bolted,
    /// Before bolting.
    Free,
    /// What is not covered.
    Uncovered,
    /// What governs.
    Governs,
}

/// What goes into a gap of a template.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(untagged)]
pub enum Slot {
    /// A number of a kind.
    Number {
        /// The value, in SI.
        value: f64,
        /// Code of its kind.
        kind: u16,
        /// How its last digit is made.
        rounding: &'static str,
        /// Which input turns when a reader turns the number.
        live: Option<&'static str>,
    },
    /// A text of the user.
    Text {
        /// The text.
        text: String,
    },
    /// A row of a text table.
    Name {
        /// Its code.
        name: u16,
    },
    /// The title of a check.
    Check {
        /// The check's id.
        check: &'static str,
    },
}

impl Slot {
    /// A demand: rounded up.
    pub fn demand(value: f64, kind: Kind) -> Slot {
        Slot::Number { value, kind: kind.code(), rounding: "up", live: None }
    }

    /// A demand that the reader can turn.
    pub fn live(value: f64, kind: Kind, live: &'static str) -> Slot {
        Slot::Number { value, kind: kind.code(), rounding: "up", live: Some(live) }
    }

    /// A capacity: rounded down.
    pub fn capacity(value: f64, kind: Kind) -> Slot {
        Slot::Number { value, kind: kind.code(), rounding: "down", live: None }
    }

    /// A number that is neither.
    pub fn number(value: f64, kind: Kind) -> Slot {
        Slot::Number { value, kind: kind.code(), rounding: "nearest", live: None }
    }

    /// A row of a text table.
    pub fn name(id: StepId) -> Slot {
        Slot::Name { name: id.code() }
    }
}

/// A sentence of a template.
pub fn sentence(id: StepId, topic: Topic, slots: Vec<Slot>) -> Sentence {
    Sentence { id: id.code(), topic, slots }
}
