//! The fingerprint of an input: what two people compare to know that they look at the same one.
//!
//! The SHA-256 of a canonical text: one line for every object, one for every field in the order of its table, defaults
//! written out, numbers as the sixteen hexadecimal digits of their 64-bit float. So it does not depend on how the file
//! was spaced or ordered, whether a default was typed, or how a number was written; and what the page notes about the
//! last result does not count.

use alloc::string::String;
use alloc::vec::Vec;

use sha2::{Digest, Sha256};

use super::draft::{Draft, Item};
use super::{drilling, neighbour, row};
use crate::cabinet::{self, anchor, foot, frame, lifting_point};
use crate::checks::{lifting, moving};
use crate::floor;
use crate::input::{Field, FieldShape, MayBe, Open, Value, Values};
use crate::load_out::{content, state};
use crate::shake_table;
use crate::slab::{self, boundary, edge, opening};

const DIGITS: usize = 12;

/// The fingerprint of an input without faults.
pub fn fingerprint(draft: &Draft, open: &[Open]) -> String {
    let mut canonical = Canonical(Vec::new());
    canonical.values("", super::FIELDS, &draft.top);
    canonical.items(&draft.cabinet, cabinet::FIELDS);
    canonical.items(&draft.frame, frame::FIELDS);
    canonical.items(&draft.feet, foot::FIELDS);
    for (anchor, own) in draft.anchors.iter().zip(&draft.own) {
        canonical.values(&anchor.spot.path, anchor::FIELDS, &anchor.values);
        if let Some(rule) = draft.anchorage.as_ref().and_then(|anchorage| anchorage.rule) {
            canonical.values("own", rule.fields, own);
        }
    }
    canonical.items(&draft.lifting_points, lifting_point::FIELDS);
    canonical.items(&draft.contents, content::FIELDS);
    canonical.items(&draft.states, state::FIELDS);
    canonical.items(&draft.slab, slab::FIELDS);
    canonical.items(&draft.edges, edge::FIELDS);
    canonical.items(&draft.boundary, boundary::FIELDS);
    canonical.items(&draft.openings, opening::FIELDS);
    canonical.items(&draft.neighbours, neighbour::FIELDS);
    canonical.items(&draft.row, row::FIELDS);
    canonical.items(&draft.drilling, drilling::FIELDS);
    canonical.items(&draft.motion, crate::motion::setting::FIELDS);
    canonical.items(&draft.floor, floor::FIELDS);
    canonical.items(&draft.raised, floor::raised::FIELDS);
    canonical.items(&draft.casters, floor::casters::FIELDS);
    canonical.items(&draft.standing, floor::standing::FIELDS);
    if let Some((rule, item)) = draft.site.as_ref().and_then(|site| Some((site.rule?, &site.item))) {
        canonical.values(rule.id, rule.fields, &item.values);
    }
    if let Some((rule, item)) = draft.anchorage.as_ref().and_then(|anchorage| Some((anchorage.rule?, &anchorage.item)))
    {
        canonical.values(rule.id, rule.fields, &item.values);
    }
    canonical.items(&draft.structure, crate::frame::FIELDS);
    canonical.items(&draft.moving, moving::FIELDS);
    canonical.items(&draft.lifting, lifting::FIELDS);
    canonical.items(&draft.shake_table, shake_table::fields::FIELDS);
    open.iter().for_each(|one| canonical.open(one));
    let mut digits = String::new();
    for byte in Sha256::digest(&canonical.0) {
        for half in [byte >> 4, byte & 15] {
            if digits.len() < DIGITS {
                digits.extend(char::from_digit(half as u32, 16));
            }
        }
    }
    digits
}

/// The canonical text, as far as it is written.
struct Canonical(Vec<u8>);

impl Canonical {
    fn items<'i, 'n: 'i>(&mut self, items: impl IntoIterator<Item = &'i Item<'n>>, fields: &[Field]) {
        for item in items {
            self.values(&item.spot.path, fields, &item.values);
        }
    }

    fn values(&mut self, name: &str, fields: &[Field], values: &Values) {
        self.text(name);
        self.text("\n");
        for (field, value) in fields.iter().zip(&values.0) {
            // What the page notes in the file about its last result.
            if matches!(field.key, "written_by" | "last_answer") {
                continue;
            }
            self.text(field.key);
            self.text("=");
            self.value(field, value);
            self.text("\n");
        }
    }

    fn value(&mut self, field: &Field, value: &Value) {
        match value {
            Value::Unknown => self.text("null"),
            Value::Number(number) => self.number(*number),
            Value::Numbers(numbers) => numbers.iter().for_each(|number| self.number(*number)),
            Value::Choice(place) => {
                if let FieldShape::Choice(words) = field.shape {
                    self.text(words[*place]);
                }
            }
            Value::Flag(flag) => self.text(if *flag { "true" } else { "false" }),
            // A text is on one line, so it cannot pretend to be another field; its quotes tell it from null.
            Value::Text(text) => {
                self.text("\"");
                self.text(text);
            }
            Value::Contents(places) => places.iter().for_each(|place| self.number(*place as f64)),
            Value::NumbersOfContents(numbers) => {
                for (place, number) in numbers {
                    self.number(*place as f64);
                    self.number(*number);
                }
            }
        }
    }

    /// What is not known is told apart by what it may be.
    fn open(&mut self, open: &Open) {
        self.text(&open.path);
        self.text(match open.may_be {
            MayBe::Between(..) => " between ",
            MayBe::OneOf { .. } => " one of ",
        });
        for end in open.ends() {
            match open.word(end) {
                Some(word) => self.text(word),
                None => self.number(end),
            }
            self.text(" ");
        }
        self.text("\n");
    }

    fn number(&mut self, number: f64) {
        let bits = number.to_bits();
        let mut digits = [b' '; 17];
        for (place, digit) in digits[..16].iter_mut().enumerate() {
            *digit = b"0123456789abcdef"[(bits >> (60 - 4 * place) & 15) as usize];
        }
        self.0.extend_from_slice(&digits);
    }

    #[inline(never)]
    fn text(&mut self, text: &str) {
        self.0.extend_from_slice(text.as_bytes());
    }
}
