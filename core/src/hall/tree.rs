//! A project as a tree that can be changed: merged from parts, set by paths, and written as text again.

use alloc::string::String;
use alloc::vec::Vec;

use crate::input::text::Json;
use crate::input::{Problem, Reader, Spot};

/// A value as it is written, or what holds values.
#[derive(Clone, PartialEq, Debug)]
pub enum Tree {
    /// A number, a text with its quotes, true, false or null, as the text writes it.
    Leaf(String),
    /// A list.
    List(Vec<Tree>),
    /// An object, its keys in their order.
    Object(Vec<(String, Tree)>),
}

impl Tree {
    /// The tree of a value that was read. A key that stands twice is a fault.
    pub fn of<'t>(reader: &mut Reader<'t>, spot: &Spot<'t>) -> Tree {
        match &spot.node.json {
            Json::Object(members) => {
                let mut entries = Vec::new();
                for member in members {
                    if member.repeated {
                        reader.key_fault(spot, member, Problem::DuplicateKey, "");
                    } else {
                        entries.push((member.key.as_ref().into(), Tree::of(reader, &spot.child(member))));
                    }
                }
                Tree::Object(entries)
            }
            Json::List(nodes) => {
                let items = nodes.iter().enumerate();
                Tree::List(items.map(|(place, node)| Tree::of(reader, &spot.item(place, node))).collect())
            }
            _ => Tree::Leaf(reader.source(spot.node).into()),
        }
    }

    /// An object without keys.
    pub fn empty() -> Tree {
        Tree::Object(Vec::new())
    }

    /// The value of a key.
    pub fn member(&self, key: &str) -> Option<&Tree> {
        match self {
            Tree::Object(entries) => entries.iter().find(|(known, _)| known == key).map(|(_, value)| value),
            _ => None,
        }
    }

    /// The value of a key, to be changed.
    pub fn member_mut(&mut self, key: &str) -> Option<&mut Tree> {
        match self {
            Tree::Object(entries) => entries.iter_mut().find(|(known, _)| known == key).map(|(_, value)| value),
            _ => None,
        }
    }

    /// A text without its quotes; `None` for anything else and for a text with an escape in it.
    pub fn text(&self) -> Option<&str> {
        match self {
            Tree::Leaf(source) => source.strip_prefix('"')?.strip_suffix('"').filter(|text| !text.contains('\\')),
            _ => None,
        }
    }

    /// Puts a part on top: objects are joined key by key, null takes a key away, anything else is put in its place.
    pub fn merge(&mut self, part: &Tree) {
        let Tree::Object(changes) = part else {
            self.clone_from(part);
            return;
        };
        if !matches!(self, Tree::Object(_)) {
            *self = Tree::empty();
        }
        let Tree::Object(entries) = self else { return };
        for (key, change) in changes {
            let place = entries.iter().position(|(known, _)| known == key);
            match place {
                Some(place) if change.is_null() => drop(entries.remove(place)),
                Some(place) => entries[place].1.merge(change),
                None if change.is_null() => {}
                None => entries.push((key.clone(), change.clone())),
            }
        }
    }

    fn is_null(&self) -> bool {
        matches!(self, Tree::Leaf(source) if source == "null")
    }

    /// Writes it as JSON.
    pub fn write(&self, text: &mut String) {
        match self {
            Tree::Leaf(source) => text.push_str(source),
            Tree::List(items) => {
                text.push('[');
                for (place, item) in items.iter().enumerate() {
                    if place > 0 {
                        text.push_str(", ");
                    }
                    item.write(text);
                }
                text.push(']');
            }
            Tree::Object(entries) => {
                text.push('{');
                for (place, (key, value)) in entries.iter().enumerate() {
                    if place > 0 {
                        text.push_str(", ");
                    }
                    quote(text, key);
                    text.push_str(": ");
                    value.write(text);
                }
                text.push('}');
            }
        }
    }
}

/// A text as JSON writes it.
pub fn quote(text: &mut String, plain: &str) {
    text.push('"');
    for letter in plain.chars() {
        match letter {
            '"' | '\\' => text.extend(['\\', letter]),
            '\n' => text.push_str("\\n"),
            '\r' => text.push_str("\\r"),
            '\t' => text.push_str("\\t"),
            _ if (letter as u32) < 0x20 => {
                text.push_str("\\u00");
                text.extend(
                    [letter as u32 >> 4, letter as u32 & 15].iter().filter_map(|&half| char::from_digit(half, 16)),
                );
            }
            _ => text.push(letter),
        }
    }
    text.push('"');
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::LimitUnits;
    use crate::input::text;

    fn tree(source: &str) -> Tree {
        let node = text::read(source).unwrap();
        Tree::of(&mut Reader::new(source, LimitUnits::File), &Spot { path: String::new(), node: &node })
    }

    fn written(tree: &Tree) -> String {
        let mut text = String::new();
        tree.write(&mut text);
        text
    }

    #[test]
    fn a_part_on_top_joins_objects_and_replaces_lists_and_null_takes_away() {
        let mut base = tree(r#"{"a": {"b": 1, "c": [1, 2]}, "d": 4}"#);
        base.merge(&tree(r#"{"a": {"c": [3], "e": "x"}, "d": null, "f": null}"#));
        assert_eq!(written(&base), r#"{"a": {"b": 1, "c": [3], "e": "x"}}"#);
    }

    #[test]
    fn what_is_written_reads_as_the_same_tree() {
        let source = r#"{"a\"b": [1.50, true, null, {"c": "\u00e9\n"}], "": {}}"#;
        let first = tree(source);
        assert_eq!(tree(&written(&first)), first);
    }

    #[test]
    fn control_characters_are_quoted_as_json_asks() {
        let mut text = String::new();
        quote(&mut text, "a\u{0}\"\t\u{1f}");
        assert_eq!(text, "\"a\\u0000\\\"\\t\\u001f\"");
    }
}
