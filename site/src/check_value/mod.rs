//! The check values: blocks of data with their source, the units they are printed in, and the comparison.
//!
//! The guide runs them when it is made, to show examples and to say how many are met; the tests hold the engine to them.
//!
//! A file `tests/values/*.json` is a list of blocks:
//!
//! ```json
//! { "block": "R1", "source": "document, page", "trust": "published | secondary | memory | derived", "note": "cautions",
//!   "runs": "demand", "input": { "weight": "520 lbf", "rule": "..." },
//!   "expect": [ { "at": "F_p", "value": "281", "unit": "lbf", "tolerance": 1, "why": "printed from a rounded coefficient" } ] }
//! ```
//!
//! `value` is the text as printed: it is met within half its last digit, or within `tolerance`, which then needs a `why`.
//! `times` or `divided_by` is what the source does with the result before it prints it. Quantities of the input are
//! numbers in the unit of their field, or texts with a unit.

mod block;
mod compare;
mod fields;
mod floor_ask;
mod floor_ground;
mod floor_plate;
mod floor_suspended;
pub mod run_anchors;
pub mod run_demand;
pub mod run_feet;
pub mod run_floor;
pub mod run_motion;
pub mod run_project;
pub mod run_shake_table;
pub mod statics;
mod unit;

use std::collections::BTreeMap;

use serde_json::Value as Json;
use steadfoot::calc::{Kind, Section};

pub use block::{Block, Expect, block, blocks, folder, load};
pub use compare::Compared;
pub use fields::field_values;
pub use run_project::part_word;
pub use unit::quantity;

/// A number that the engine found, in SI base units of its kind.
#[derive(Clone, Copy, Debug)]
pub struct Found {
    pub value: f64,
    pub kind: Kind,
}

/// What a run gives, by the address that `at` names.
pub type Answers = BTreeMap<String, Found>;

/// What a run gives, with the sheet that it was told on.
pub struct Ran {
    pub answers: Answers,
    pub sections: Vec<Section>,
}

/// The answers of a block's input, by the word in `runs`.
pub fn run(runs: &str, input: &Json) -> Result<Answers, String> {
    if runs == "bolts" { run_anchors::run_bolts(input) } else { told(runs, input).map(|ran| ran.answers) }
}

/// The answers with the working that led to them.
pub fn told(runs: &str, input: &Json) -> Result<Ran, String> {
    match runs {
        "anchors" => run_anchors::told(input),
        "demand" => run_demand::told(input),
        "feet" => run_feet::told(input),
        "motion" => run_motion::told(input),
        "floor" => run_floor::told(input),
        "project" => run_project::told(input),
        "shake-table" => run_shake_table::told(input),
        other => Err(format!("nothing runs \"{other}\"")),
    }
}
