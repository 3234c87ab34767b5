//! What is not known: a number that is given as a range, a choice that is given as a set of words.
//!
//! `{ "between": [600, 900] }` stands where a number belongs, `{ "one_of": ["M16", "M20"] }` where one of a few words
//! belongs, `{ "one_of": [true, false] }` where true or false does. Something stands in for each of them, so that
//! drawings and forms have a project to show: the middle of the range, the first of the set.

use alloc::string::String;
use alloc::vec::Vec;

use super::allowed::Range;
use super::fault::Problem;
use super::reader::{Reader, Spot};
use super::text::{Json, Node};
use crate::calc::Kind;

/// Most inputs that may be left open.
pub const OPEN_MAX: usize = 8;
/// The key of a range.
pub const BETWEEN: &str = "between";
/// The key of a set.
pub const ONE_OF: &str = "one_of";
/// The words of what is true or false, by their places.
pub static FLAGS: [&str; 2] = ["false", "true"];

/// One input that is not known.
#[derive(Clone, PartialEq, Debug)]
pub struct Open {
    /// Where it stands: `cabinet.frame.mass_kg`.
    pub path: String,
    /// Offset in the text.
    pub at: usize,
    /// What it may be.
    pub may_be: MayBe,
    /// What stands in for it: a number in SI, or the place of a word among those of its field.
    pub stand_in: f64,
}

/// What an input that is not known may be.
#[derive(Clone, PartialEq, Debug)]
pub enum MayBe {
    /// Any number between two, in SI; the first is the smaller.
    Between(Kind, [f64; 2]),
    /// One of these words.
    OneOf {
        /// All words of the field.
        words: &'static [&'static str],
        /// The places of those that it may be.
        places: Vec<usize>,
    },
}

/// Another value for what stands at a place of the text.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Setting {
    /// Offset in the text.
    pub at: usize,
    /// A number in SI, or the place of a word among those of its field.
    pub value: f64,
}

/// A number that was read.
#[derive(Clone, PartialEq, Debug)]
pub struct Given {
    /// Where it stands.
    pub path: String,
    /// Offset in the text.
    pub at: usize,
    /// The number, in SI.
    pub value: f64,
    /// What it measures.
    pub kind: Kind,
}

impl Open {
    /// Its values at the ends of what it may be: both ends of a range, every word of a set.
    pub fn ends(&self) -> Vec<f64> {
        match &self.may_be {
            MayBe::Between(_, ends) => ends.to_vec(),
            MayBe::OneOf { places, .. } => places.iter().map(|&place| place as f64).collect(),
        }
    }

    /// Its value at a share of the way through what it may be; the share is below one.
    pub fn at_share(&self, share: f64) -> f64 {
        match &self.may_be {
            MayBe::Between(_, [low, high]) => low + share * (high - low),
            MayBe::OneOf { places, .. } => {
                places[((share * places.len() as f64) as usize).min(places.len() - 1)] as f64
            }
        }
    }

    /// The middle of its range, or the first of its words.
    pub fn middle(&self) -> f64 {
        match &self.may_be {
            MayBe::Between(_, [low, high]) => low + (high - low) / 2.0,
            MayBe::OneOf { places, .. } => places[0] as f64,
        }
    }

    /// The word of a value; none for a number.
    pub fn word(&self, value: f64) -> Option<&'static str> {
        match &self.may_be {
            MayBe::Between(..) => None,
            MayBe::OneOf { words, .. } => words.get(value as usize).copied(),
        }
    }
}

/// Whether an object says that something is not known.
pub fn is_open(node: &Node) -> bool {
    match &node.json {
        Json::Object(members) => members.iter().any(|member| member.key == BETWEEN || member.key == ONE_OF),
        _ => false,
    }
}

impl<'t> Reader<'t> {
    /// The value that was set for what stands at a place.
    pub(super) fn set_at(&self, at: usize) -> Option<f64> {
        self.settings.iter().find(|setting| setting.at == at).map(|setting| setting.value)
    }

    /// A number that is given as a range: what stands in for it.
    pub(super) fn between(&mut self, spot: &Spot, range: Range) -> Option<f64> {
        const ALLOWED: &str = "{ \"between\": [the smaller, the larger] }";
        let list = self.list_of_open(spot, BETWEEN, (Problem::NotARange, ALLOWED))?;
        let Json::List(nodes) = &list.node.json else { return None };
        let [first, second] = nodes.as_slice() else {
            self.fault(&list, Problem::NotARange, ALLOWED);
            return None;
        };
        let ends = [(0, first), (1, second)].map(|(place, node)| self.plain_number(&list.item(place, node), range));
        let [Some(low), Some(high)] = ends else { return None };
        if low > high {
            self.fault(&list, Problem::NotARange, ALLOWED);
            return None;
        }
        // A range of no width is known.
        if low == high {
            return Some(low);
        }
        self.leave_open(spot, MayBe::Between(range.kind, [low, high]))
    }

    /// A word that is given as a set: the place of what stands in for it. `words` may be [`FLAGS`].
    pub(super) fn one_of(&mut self, spot: &Spot, words: &'static [&'static str], allowed: &str) -> Option<usize> {
        const ALLOWED: &str = "{ \"one_of\": [two words or more] }";
        let list = self.list_of_open(spot, ONE_OF, (Problem::NotASet, ALLOWED))?;
        let Json::List(nodes) = &list.node.json else { return None };
        let is_flag = core::ptr::eq(words.as_ptr(), FLAGS.as_ptr());
        let mut places = Vec::new();
        let mut is_whole = true;
        for (number, node) in nodes.iter().enumerate() {
            let place = match &node.json {
                Json::Flag(flag) if is_flag => Some(usize::from(*flag)),
                Json::Text(text) if !is_flag => words.iter().position(|word| word == text),
                _ => None,
            };
            match place {
                Some(place) => places.push(place),
                None => {
                    is_whole = false;
                    let problem = if is_flag { Problem::NotAFlag } else { Problem::NotAWord };
                    self.fault(&list.item(number, node), problem, allowed);
                }
            }
        }
        let is_twice = (1..places.len()).any(|place| places[..place].contains(&places[place]));
        if is_whole && (places.len() < 2 || is_twice) {
            self.fault(&list, Problem::NotASet, ALLOWED);
            return None;
        }
        if !is_whole {
            return None;
        }
        self.leave_open(spot, MayBe::OneOf { words, places }).map(|place| place as usize)
    }

    /// The list of an object that says what something may be; none after a fault.
    fn list_of_open<'n>(&mut self, spot: &Spot<'n>, key: &str, or: (Problem, &str)) -> Option<Spot<'n>> {
        if self.is_closed {
            self.fault(spot, Problem::CannotBeOpen, "");
            return None;
        }
        let before = self.count();
        for member in spot.members() {
            if member.repeated {
                self.key_fault(spot, member, Problem::DuplicateKey, "");
            } else if member.key != key {
                self.key_fault(spot, member, Problem::UnknownKey, key);
            }
        }
        if self.count() > before {
            return None;
        }
        let list = spot.members().iter().find(|member| member.key == key).map(|member| spot.child(member))?;
        if list.item_count().is_none() {
            self.fault(&list, or.0, or.1);
            return None;
        }
        Some(list)
    }

    fn leave_open(&mut self, spot: &Spot, may_be: MayBe) -> Option<f64> {
        let at = spot.node.from;
        let mut open = Open { path: spot.path.clone(), at, may_be, stand_in: 0.0 };
        open.stand_in = self.set_at(at).unwrap_or_else(|| open.middle());
        let stand_in = open.stand_in;
        if self.open.len() == OPEN_MAX {
            self.fault(spot, Problem::TooMany, "at most 8 inputs that are not known");
            return None;
        }
        if let MayBe::Between(kind, _) = open.may_be {
            self.give(spot, stand_in, kind);
        }
        self.open.push(open);
        Some(stand_in)
    }

    /// Remembers a number, where somebody asked for all of them.
    pub(super) fn give(&mut self, spot: &Spot, value: f64, kind: Kind) {
        if let Some(numbers) = &mut self.numbers {
            numbers.push(Given { path: spot.path.clone(), at: spot.node.from, value, kind });
        }
    }
}
