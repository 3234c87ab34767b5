//! The project: the whole input, and how it is read.

mod agreement;
mod anchored;
pub mod approval;
mod as_built;
pub mod asked;
mod assess;
pub mod bench;
mod buildable;
mod draft;
pub mod drilling;
mod fingerprint;
mod floored;
mod footed;
mod handled;
mod holding;
mod left_open;
mod loads;
pub mod mirror;
pub mod neighbour;
pub mod parts;
mod picture;
mod read;
mod rose;
pub mod row;
pub mod schema;
mod self_check;
mod surroundings;
mod sweep;
mod tell;
mod unbolted;
mod verdict;
mod working;

use alloc::string::String;
use alloc::vec::Vec;

pub use as_built::{as_built, as_planned};
pub use assess::{Quick, assess, quick, quick_told};
pub use buildable::is_buildable;
pub use drilling::Drilling;
pub use handled::swayed;
pub use left_open::{stated, value_told, values_told};
pub use loads::Tried;
pub use picture::{rose_scene, scene};
pub use read::{fault_sentences, numbers, read, read_bytes, read_set};
pub use self_check::{HASH_START, built_in, built_in_of, hashed, self_check};
pub use working::{place as place_of, state_and_subject, working, working_told};

use crate::cabinet::Cabinet;
use crate::fields;
use crate::floor::Floor;
use crate::geometry::Point;
use crate::input::field::{Absent::*, FieldShape::*, Values};
use crate::input::open::Open;
use crate::load_out::{Content, LoadState, State, load_state};
use crate::motion::MotionSetting;
use crate::rules::anchor::AnchorRule;
use crate::rules::demand::DemandRule;
use crate::shake_table::ShakeTable;
use crate::slab::Slab;

/// The whole input, read and without a fault.
#[derive(Clone, Debug)]
pub struct Project {
    /// What the sheet is headed with; may be empty.
    pub title: String,
    /// The version of the engine that last wrote the file, where it says so.
    pub written_by: Option<String>,
    /// The cabinet.
    pub cabinet: Cabinet,
    /// What it holds, in the order of the file.
    pub contents: Vec<Content>,
    /// Whether the states with only the lowest and only the highest contents are assessed too.
    pub is_part_filled: bool,
    /// The states of the user's own.
    pub states: Vec<State>,
    /// The concrete under it; without one, feet and anchors in concrete are not checked.
    pub slab: Option<Slab>,
    /// What it is tried under while it stands free; without it, defaults.
    pub motion: Option<MotionSetting>,
    /// What the slab rests on and what lies on it; without it only bearing is checked.
    pub floor: Option<Floor>,
    /// How hard it is shaken; without one, nothing is pushed.
    pub site: Option<Site>,
    /// How it is bolted down; without one, anchors are not checked.
    pub anchorage: Option<Anchorage>,
    /// The same cabinet standing again nearby, bolted into the same slab.
    pub neighbours: Vec<Neighbour>,
    /// Whether it stands in a row of its own kind; only the study of rows asks.
    pub row: Option<row::Row>,
    /// The holes as the maker of the anchor asks for them.
    pub drilling: Option<Drilling>,
    /// How its frame is built, by the fields of [`crate::frame`]; without it, the frame is not checked.
    pub structure: Option<Values>,
    /// How it is moved, by the fields of [`crate::checks::moving`]; without it, moving is not checked.
    pub moving: Option<Values>,
    /// How it is lifted, by the fields of [`crate::checks::lifting`]; without it, lifting is not checked.
    pub lifting: Option<Values>,
    /// A test that a cabinet of its kind is to pass; without one, nothing is said of tests.
    pub shake_table: Option<ShakeTable>,
    /// The first twelve hexadecimal digits of the SHA-256 of the input as it was read, with defaults written out. It
    /// stays that of the file when values are changed for a search.
    pub fingerprint: String,
    /// What is not known; everything else here stands for what stands in for it.
    pub open: Vec<Open>,
    /// The text that it was read from, also when values were changed since.
    pub source: String,
}

/// The same cabinet again, standing at some distance in the same concrete.
#[derive(Clone, PartialEq, Debug)]
pub struct Neighbour {
    /// Its name.
    pub name: String,
    /// The middle of its base in the axes of this cabinet.
    pub at: Point,
}

/// The demand rule with its inputs.
#[derive(Clone)]
pub struct Site {
    /// The rule.
    pub rule: &'static DemandRule,
    /// Its inputs, in the order of its fields.
    pub values: Values,
}

/// The anchor rule with its inputs.
#[derive(Clone)]
pub struct Anchorage {
    /// The rule.
    pub rule: &'static AnchorRule,
    /// Its inputs for all anchors, in the order of its fields.
    pub values: Values,
}

impl Project {
    /// Every state that is assessed: full, empty, the part-filled ones where they are asked for, the user's own.
    pub fn all_states(&self) -> Vec<LoadState> {
        let mut states = Vec::from(load_state::always(&self.contents));
        if self.is_part_filled {
            states.extend(load_state::part_filled(&self.contents));
            let leaning = load_state::leaning(&self.cabinet, &self.contents, &states);
            states.extend(leaning);
        }
        states.extend(self.states.iter().map(|state| load_state::own(&self.contents, state)));
        states
    }
}

impl core::fmt::Debug for Site {
    fn fmt(&self, formatter: &mut core::fmt::Formatter) -> core::fmt::Result {
        formatter.write_str(self.rule.id)
    }
}

impl core::fmt::Debug for Anchorage {
    fn fmt(&self, formatter: &mut core::fmt::Formatter) -> core::fmt::Result {
        formatter.write_str(self.rule.id)
    }
}

/// What the file says it is.
pub const FORMAT_NAME: &str = "steadfoot 1";

fields! {
    FORMAT "format" Choice(&[FORMAT_NAME]), Fault,
        "Format", "Which kind of file this is.", "", ["Steadfoot project, first format"];
    TITLE "title" Text, Unknown,
        "Title", "What the calculation sheet is headed with.", "", [];
    WRITTEN_BY "written_by" Text, Unknown,
        "Written by", "The version of Steadfoot that last wrote the file. Written by the page, so that it can say when numbers may have moved.", "", [];
    LAST_ANSWER "last_answer" Text, Unknown,
        "Last answer", "What came out when the file was last written. Written by the page, so that it can say whether a newer version of Steadfoot moved it.", "", [];
    PART_FILLED "part_filled" Flag, Set(false),
        "Part-filled states",
        "Assess also the states with only the lowest one, two, three and so on of the contents, and with only the highest ones; where contents stand beside each other also with only those that tip it most to the left, to the right, to the front or to the rear.", "", [];
}
