//! What the input at a path is called: its field's own label, behind the part or the item that it belongs to.
//!
//! Only native code refers to it; the page has the same tables, and makes the same words of them.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Project;
use super::parts::{PARTS, Part, Rules};
use crate::input::field::{Field, FieldShape, FieldText};
use crate::input::text::{self, Json, Node};
use crate::rules::anchor::{ANCHOR_RULE_TEXTS, ANCHOR_RULES};
use crate::rules::demand::{DEMAND_RULE_TEXTS, DEMAND_RULES};

/// "Site, Design acceleration S_DS" for `site.s_ds`; "tray 3, Mass" for `contents[2].mass_kg`; "Contents, Mass" for
/// `contents[*].mass_kg`, which means every one of them.
///
/// Scope: paths of a file that was read, as faults, searches and comparisons name them; a row may be known by its place or
/// by its name. What is not known is called by its key.
///
/// ```
/// use steadfoot::project::{built_in, input_name};
/// let project = built_in().unwrap();
/// assert_eq!(input_name("slab.thickness_mm", &project), "Slab, Thickness of the slab");
/// assert_eq!(input_name("contents[*].mass_kg", &project), "Contents, Mass");
/// assert_eq!(input_name("cabinet.frame.centre_mm[2]", &project), "Frame, Centre of gravity of the frame z");
/// ```
pub fn input_name(path: &str, project: &Project) -> String {
    let root = text::read(&project.source).ok();
    let mut node = root.as_ref();
    let mut words: Vec<String> = Vec::new();
    let mut at = String::new();
    let keys = keys(path);
    let mut keys = keys.iter().copied().peekable();
    while let Some(Key::Word(word)) = keys.next() {
        // An end of a range, or a word of a set, is told by its field.
        if word == "between" || word == "one_of" {
            break;
        }
        node = node.and_then(|node| member(node, word));
        let inside = if at.is_empty() { word.to_string() } else { format!("{at}.{word}") };
        let list = format!("{inside}[]");
        if let Some(part) = part(&inside) {
            words.push(part.title.into());
            at = inside;
        } else if let Some(part) = part(&list) {
            let item = keys.next();
            let place = if let Some(Key::Place(place)) = item { Some(place) } else { None };
            node = node.zip(place).and_then(|(node, place)| row(node, place));
            words.push(match item {
                Some(Key::Place(place)) => {
                    node.and_then(name).map_or_else(|| format!("{} {}", part.noun, place + 1), String::from)
                }
                Some(Key::Name(name)) => plain(name),
                _ => part.title.into(),
            });
            at = list;
        } else {
            words.push(field_name((&at, word), keys.next(), project));
            break;
        }
    }
    words.split_off(words.len().saturating_sub(2)).join(", ")
}

/// One step of a path.
#[derive(Clone, Copy)]
enum Key<'p> {
    Word(&'p str),
    Place(usize),
    Every,
    Name(&'p str),
}

fn keys(path: &str) -> Vec<Key<'_>> {
    let mut keys = Vec::new();
    let mut rest = path;
    while !rest.is_empty() {
        if let Some(named) = rest.strip_prefix("[\"") {
            // A quote within a name stands behind a backslash.
            let mut ends = named.match_indices("\"]").map(|(end, _)| end);
            let end = ends.find(|&end| !named[..end].ends_with('\\')).unwrap_or(named.len());
            let (name, behind) = (&named[..end], named.get(end + 2..).unwrap_or(""));
            keys.push(Key::Name(name));
            rest = behind;
        } else if let Some(inside) = rest.strip_prefix('[') {
            let (inside, behind) = inside.split_once(']').unwrap_or((inside, ""));
            keys.push(inside.parse().map_or(Key::Every, Key::Place));
            rest = behind;
        } else {
            rest = rest.strip_prefix('.').unwrap_or(rest);
            let (word, behind) = rest.split_at(rest.find(['.', '[']).unwrap_or(rest.len()));
            keys.push(Key::Word(word));
            rest = behind;
        }
    }
    keys
}

/// A name without the backslashes that it has in a path.
fn plain(name: &str) -> String {
    name.replace("\\\"", "\"").replace("\\\\", "\\")
}

fn part(pattern: &str) -> Option<&'static Part> {
    PARTS.iter().find(|part| !pattern.is_empty() && part.path == pattern)
}

/// The label of a field, with the axis or the content that is meant of several.
fn field_name((at, key): (&str, &str), behind: Option<Key>, project: &Project) -> String {
    let found = PARTS.iter().find(|part| part.path == at).and_then(|part| {
        let own = part.fields.iter().zip(part.texts);
        let site = project.site.as_ref().map(|site| site.rule.id);
        let anchorage = project.anchorage.as_ref().map(|anchorage| anchorage.rule.id);
        let of_rule: (&[Field], &[FieldText]) = match part.rules {
            Rules::None => (&[], &[]),
            Rules::Demand => {
                let place = DEMAND_RULES.iter().position(|rule| Some(rule.id) == site);
                place.map_or((&[], &[]), |place| (DEMAND_RULES[place].fields, DEMAND_RULE_TEXTS[place].fields))
            }
            Rules::Anchor | Rules::AnchorOwn => {
                let place = ANCHOR_RULES.iter().position(|rule| Some(rule.id) == anchorage);
                place.map_or((&[], &[]), |place| (ANCHOR_RULES[place].fields, ANCHOR_RULE_TEXTS[place].fields))
            }
        };
        own.chain(of_rule.0.iter().zip(of_rule.1)).find(|(field, _)| field.key == key)
    });
    let Some((field, text)) = found else { return if key == "rule" { "Rule".into() } else { key.into() } };
    match (behind, field.shape) {
        (Some(Key::Place(place)), FieldShape::Numbers { .. }) => {
            let axes = if key.starts_with("size") { ["wide", "deep", "high"] } else { ["x", "y", "z"] };
            format!("{} {}", text.label, axes.get(place).copied().unwrap_or(""))
        }
        (Some(Key::Name(name) | Key::Word(name)), _) => format!("{} {}", text.label, plain(name)),
        _ => text.label.into(),
    }
}

fn member<'n, 't>(node: &'n Node<'t>, key: &str) -> Option<&'n Node<'t>> {
    let Json::Object(members) = &node.json else { return None };
    members.iter().find(|member| member.key == key).map(|member| &member.node)
}

fn row<'n, 't>(list: &'n Node<'t>, place: usize) -> Option<&'n Node<'t>> {
    let Json::List(items) = &list.json else { return None };
    items.get(place)
}

fn name<'n>(row: &'n Node) -> Option<&'n str> {
    if let Json::Text(name) = &member(row, "name")?.json { Some(name) } else { None }
}
