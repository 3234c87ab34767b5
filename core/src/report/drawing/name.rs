//! The words of the drawings.

use alloc::string::String;

use crate::calc::clause::STATICS;
use crate::calc::{StepId, steps};

steps! { 18 "drawing";
    REAR "" Number (STATICS "" Derived) "rear": Name;
    FRONT "" Number (STATICS "" Derived) "front": Name;
    LEFT "" Number (STATICS "" Derived) "left": Name;
    RIGHT "" Number (STATICS "" Derived) "right": Name;
    REAR_LEFT "" Number (STATICS "" Derived) "rear left": Name;
    REAR_RIGHT "" Number (STATICS "" Derived) "rear right": Name;
    FRONT_LEFT "" Number (STATICS "" Derived) "front left": Name;
    FRONT_RIGHT "" Number (STATICS "" Derived) "front right": Name;
    SEEN_ALONG "" Number (STATICS "" Derived) "seen along {0}": Name;
    SHEAR_EACH "" Number (STATICS "" Derived) "shear {0} in each anchor": Name;
    SHEAR_UP_TO "" Number (STATICS "" Derived) "shear up to {0} in an anchor": Name;
    PEAK_PRESSURE "" Number (STATICS "" Derived) "peak pressure {0}": Name;
    TIPS "" Number (STATICS "" Derived) "tips": Name;
    TIPS_HERE "" Number (STATICS "" Derived) "tips about this edge": Name;
    ON_THE_POINT "" Number (STATICS "" Derived) "on the point of tipping": Name;
    FORCES_LEFT_OUT "" Number (STATICS "" Derived) "forces not written: {0}": Name;
    MASSES_LEFT_OUT "" Number (STATICS "" Derived) "not written: {0} of contents": Name;
    VALUE_AT "" Number (STATICS "" Derived) "{0} at {1}": Name;
    NOTHING_GOVERNS "" Number (STATICS "" Derived) "no check to show": Name;
    PLAN_TITLE "" Number (STATICS "" Derived) "Plan, rear on top": Name;
    ELEVATION_TITLE "" Number (STATICS "" Derived) "Elevation": Name;
    ROSE_TITLE "" Number (STATICS "" Derived) "Utilisation for every direction of the push": Name;
    PUSH_TOWARDS "" Number (STATICS "" Derived) "push {0} towards {1}": Name;
    LARGEST_PULL "" Number (STATICS "" Derived) "largest pull {0} in anchor {1}": Name;
    LARGEST_PRESS "" Number (STATICS "" Derived) "largest force {0} under foot {1}": Name;
    PIVOT "" Number (STATICS "" Derived) "pivot": Name;
    CENTRE_HEIGHT "" Number (STATICS "" Derived) "centre of gravity {0} above the floor": Name;
}

/// The words of a row of this file.
pub fn word(id: StepId) -> &'static str {
    TEXTS.rows[id.row()].what
}

/// The words of a row with its slots `{0}`, `{1}` filled.
pub fn filled(id: StepId, slots: &[&str]) -> String {
    let mut text = String::new();
    for character in word(id).chars() {
        match character {
            '{' | '}' => {}
            '0'..='9' => text.push_str(slots.get(character as usize - '0' as usize).unwrap_or(&"")),
            _ => text.push(character),
        }
    }
    text
}
