//! Reads the values of a table of fields.

use crate::calc::order::put_in_order;
use alloc::string::String;
use alloc::vec::Vec;

use super::allowed::{self, CONTENTS_MAX, NAME_MAX, Range};
use super::fault::Problem;
use super::field::{Absent, Field, FieldShape, Value, Values};
use super::open::{FLAGS, is_open};
use super::reader::{Reader, Spot};
use super::text::{Json, Node};

/// Which keys an object may hold beside its fields.
#[derive(Clone, Copy, Debug)]
pub enum Others<'k> {
    /// These.
    Only(&'k [&'k str]),
    /// Any, because it is not known what belongs there.
    Any,
}

impl<'t> Reader<'t> {
    /// Reads an object that holds these fields and the other keys, which the caller reads, and nothing else.
    ///
    /// A field with a fault stays unknown; the caller asks [`Reader::count`] before it trusts the values.
    pub fn object(&mut self, spot: &Spot<'t>, fields: &[Field], others: Others) -> Values {
        if !matches!(spot.node.json, Json::Object(_)) {
            self.fault(spot, Problem::NotAnObject, "an object in braces");
            return Values(fields.iter().map(|_| Value::Unknown).collect());
        }
        for member in spot.members() {
            let key = member.key.as_ref();
            if member.repeated {
                self.key_fault(spot, member, Problem::DuplicateKey, "");
            } else if let Others::Only(others) = others
                && !others.contains(&key)
                && !fields.iter().any(|field| field.key == key)
            {
                let mut known: Vec<&str> = fields.iter().map(|field| field.key).collect();
                known.extend(others);
                self.key_fault(spot, member, Problem::UnknownKey, &known.join(", "));
            }
        }
        Values(fields.iter().map(|field| self.field(spot, field)).collect())
    }

    /// Reads the items of a list; a fault where there are more than `max`. An absent list has no items.
    pub fn list(&mut self, parent: &Spot<'t>, key: &str, max: usize) -> Vec<Spot<'t>> {
        let Some(spot) = parent.member(key) else { return Vec::new() };
        let Json::List(nodes) = &spot.node.json else {
            self.fault(&spot, Problem::NotAList, "a list in brackets");
            return Vec::new();
        };
        if nodes.len() > max {
            self.too_many(&spot, nodes.len(), max);
            return Vec::new();
        }
        nodes.iter().enumerate().map(|(place, node)| spot.item(place, node)).collect()
    }

    /// Reads one field of an object.
    pub fn field(&mut self, parent: &Spot<'t>, field: &Field) -> Value {
        if let Some(spot) = parent.member(field.key) {
            return self.value(&spot, field).unwrap_or(Value::Unknown);
        }
        match field.absent {
            Absent::Fault => {
                self.missing(parent, field.key, &allowed::text(field, self.units));
                Value::Unknown
            }
            Absent::Unknown => match field.shape {
                FieldShape::NamesOfContents => Value::Contents(Vec::new()),
                FieldShape::NumbersOfContents { .. } => Value::NumbersOfContents(Vec::new()),
                _ => Value::Unknown,
            },
            Absent::Is(number) => Value::Number(number),
            Absent::Are(number) => {
                let count = if let FieldShape::Numbers { count, .. } = field.shape { count } else { 0 };
                Value::Numbers(core::array::from_fn(|place| if place < count { number } else { 0.0 }))
            }
            Absent::Word(place) => Value::Choice(place),
            Absent::Set(flag) => Value::Flag(flag),
        }
    }

    /// The value of a field that is there; `None` after a fault.
    fn value(&mut self, spot: &Spot<'t>, field: &Field) -> Option<Value> {
        let allowed = || allowed::text(field, self.units);
        match (field.shape, &spot.node.json) {
            (FieldShape::Number { kind, min, max }, _) => {
                return self.number(spot, Range { kind, min, max }).map(Value::Number);
            }
            (_, Json::Word) => self.fault(spot, Problem::NotJson, &allowed()),
            (FieldShape::Choice(words), _) if is_open(spot.node) => {
                return self.one_of(spot, words, &allowed()).map(Value::Choice);
            }
            (FieldShape::Flag, _) if is_open(spot.node) => {
                return self.one_of(spot, &FLAGS, &allowed()).map(|place| Value::Flag(place == 1));
            }
            (FieldShape::Text | FieldShape::Name, _) if is_open(spot.node) => {
                self.fault(spot, Problem::CannotBeOpen, &allowed());
            }
            (FieldShape::Numbers { count, kind, min, max }, Json::List(nodes)) => {
                if nodes.len() == count {
                    return self.numbers(spot, nodes, Range { kind, min, max });
                }
                self.fault(spot, Problem::WrongCount, &allowed());
            }
            (FieldShape::Numbers { .. }, _) => self.fault(spot, Problem::NotAList, &allowed()),
            (FieldShape::Choice(words), Json::Text(text)) => match words.iter().position(|word| word == text) {
                Some(place) => return Some(Value::Choice(place)),
                None => self.fault(spot, Problem::NotAWord, &allowed()),
            },
            (FieldShape::Choice(_), _) => self.fault(spot, Problem::NotAWord, &allowed()),
            (FieldShape::Flag, Json::Flag(flag)) => return Some(Value::Flag(*flag)),
            (FieldShape::Flag, _) => self.fault(spot, Problem::NotAFlag, &allowed()),
            (FieldShape::Text | FieldShape::Name, Json::Text(text)) => match fault_of_text(text, field.shape) {
                Some(problem) => self.fault(spot, problem, &allowed()),
                None => return Some(Value::Text(String::from(text.as_ref()))),
            },
            (FieldShape::Text | FieldShape::Name, _) => self.fault(spot, Problem::NotAText, &allowed()),
            (FieldShape::NamesOfContents, Json::List(nodes)) => return self.names_of_contents(spot, nodes),
            (FieldShape::NamesOfContents, _) => self.fault(spot, Problem::NotAList, &allowed()),
            (FieldShape::NumbersOfContents { kind, min, max }, Json::Object(_)) => {
                return self.numbers_of_contents(spot, Range { kind, min, max });
            }
            (FieldShape::NumbersOfContents { .. }, _) => self.fault(spot, Problem::NotAnObject, &allowed()),
        }
        None
    }

    fn number(&mut self, spot: &Spot, range: Range) -> Option<f64> {
        if is_open(spot.node) {
            return self.between(spot, range);
        }
        let number = self.plain_number(spot, range)?;
        self.give(spot, number, range.kind);
        Some(number)
    }

    /// A number that is known.
    pub(crate) fn plain_number(&mut self, spot: &Spot, range: Range) -> Option<f64> {
        let json = match (&spot.node.json, self.set_at(spot.node.from)) {
            (Json::Number(_), Some(set)) => &Json::Number(set),
            (json, _) => json,
        };
        let problem = match *json {
            Json::Null => Problem::Missing,
            Json::Number(number) if !number.is_finite() => Problem::NotFinite,
            Json::Number(number) if number < range.min => Problem::BelowLimit,
            Json::Number(number) if number > range.max => Problem::AboveLimit,
            Json::Number(number) => return Some(number),
            Json::Word if self.is_no_finite_number(spot) => Problem::NotFinite,
            Json::Word => Problem::NotJson,
            _ => Problem::NotANumber,
        };
        self.fault(spot, problem, &range.text(self.units));
        None
    }

    fn numbers(&mut self, spot: &Spot<'t>, nodes: &'t [Node<'t>], range: Range) -> Option<Value> {
        let mut numbers = [0.0; 3];
        let mut whole = true;
        for (place, node) in nodes.iter().enumerate() {
            match (self.number(&spot.item(place, node), range), numbers.get_mut(place)) {
                (Some(number), Some(slot)) => *slot = number,
                _ => whole = false,
            }
        }
        whole.then_some(Value::Numbers(numbers))
    }

    fn names_of_contents(&mut self, spot: &Spot<'t>, nodes: &'t [Node<'t>]) -> Option<Value> {
        if nodes.len() > CONTENTS_MAX {
            self.too_many(spot, nodes.len(), CONTENTS_MAX);
            return None;
        }
        let mut places = Vec::new();
        for (place, node) in nodes.iter().enumerate() {
            let item = spot.item(place, node);
            let Json::Text(name) = &node.json else {
                self.fault(&item, Problem::NotAText, "the name of a content");
                continue;
            };
            match self.place_of(name)? {
                Some(content) if places.contains(&content) => self.fault(&item, Problem::DuplicateName, ""),
                Some(content) => places.push(content),
                None => self.fault(&item, Problem::UnknownName, "the name of a content"),
            }
        }
        put_in_order(&mut places, Ord::cmp);
        Some(Value::Contents(places))
    }

    fn numbers_of_contents(&mut self, spot: &Spot<'t>, range: Range) -> Option<Value> {
        let mut numbers = Vec::new();
        for member in spot.members() {
            if member.repeated {
                self.key_fault(spot, member, Problem::DuplicateKey, "");
            } else if self.place_of(&member.key) == Some(None) {
                self.key_fault(spot, member, Problem::UnknownName, "the name of a content");
            } else if member.node.json != Json::Null {
                let number = self.number(&spot.child(member), range);
                let content = self.place_of(&member.key).flatten();
                numbers.extend(content.zip(number));
            }
        }
        put_in_order(&mut numbers, |a, b| a.0.cmp(&b.0));
        Some(Value::NumbersOfContents(numbers))
    }

    /// The place of the content of a name, if there is one; `None` where the contents are not known.
    fn place_of(&self, name: &str) -> Option<Option<usize>> {
        let names = self.contents.as_ref()?;
        Some(names.binary_search_by_key(&name, |(name, _)| name).ok().map(|found| names[found].1))
    }

    /// Whether a bare word is one of those that programs print for what is no finite number.
    fn is_no_finite_number(&self, spot: &Spot) -> bool {
        let word = self.source(spot.node).trim_start_matches(['-', '+']);
        ["nan", "inf", "infinity"].iter().any(|known| word.eq_ignore_ascii_case(known))
    }
}

/// What is wrong with a text; `None` if nothing is.
fn fault_of_text(text: &str, shape: FieldShape) -> Option<Problem> {
    if matches!(shape, FieldShape::Name) && text.trim().is_empty() {
        return Some(Problem::EmptyName);
    }
    if text.chars().count() > NAME_MAX {
        return Some(Problem::NameTooLong);
    }
    // A line break or a control character would tear a label, a sheet or an address.
    text.chars().any(char::is_control).then_some(Problem::NotOneLine)
}
