//! In what two texts differ: value by value, rows of a list by their names and not by their places.
//!
//! Scope: texts that were read without a fault. What is null counts as absent, because the reader takes it so; how a
//! number was written and how a text was spaced does not count.

use alloc::string::String;
use alloc::vec::Vec;

use super::reader::child_path;
use super::text::{Json, Member, Node, piece};

/// One place where two texts differ.
#[derive(Clone, PartialEq, Debug)]
pub struct Difference {
    /// Where: `contents["tray 1"].mass_kg`; rows with a name by it, others by their place in the second text.
    pub path: String,
    /// What kind of difference it is.
    pub change: Change,
    /// What stands in the first text there.
    pub before: Option<String>,
    /// What stands in the second.
    pub after: Option<String>,
    /// What makes the first text differ in this alone; none for what cannot be taken by itself.
    pub patch: Option<Patch>,
}

/// How a place differs.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Change {
    /// Another value.
    Value,
    /// It stands in the second text only.
    Added,
    /// It stands in the first text only.
    Removed,
    /// A row of the same values under another name.
    Renamed,
    /// The rows of a list stand in another order.
    Moved,
}

/// A piece of the first text with what stands in its place.
#[derive(Clone, PartialEq, Debug)]
pub struct Patch {
    from: usize,
    to: usize,
    text: String,
}

impl Patch {
    /// The text with this one piece replaced.
    pub fn applied(&self, text: &str) -> String {
        let mut patched = String::from(piece(text, 0, self.from));
        patched.push_str(&self.text);
        patched.push_str(piece(text, self.to, text.len()));
        patched
    }
}

/// What stands in a file beside its input: notes about its last result.
const NOT_INPUT: [&str; 2] = ["written_by", "last_answer"];
/// The key by which a row is known.
const NAME: &str = "name";
/// The key whose word says what all other keys beside it mean.
const RULE: &str = "rule";
/// The list whose names other parts refer to.
const REFERRED: &str = "contents";

/// Every difference between two texts, in the order of the first.
///
/// ```
/// use steadfoot::input::{difference::{Change, differences}, text};
/// let texts = ["{\"feet\": [{\"name\": \"a\", \"x\": 1}, {\"name\": \"b\"}]}", "{\"feet\": [{\"name\": \"b\"}, {\"name\": \"a\", \"x\": 2.0}]}"];
/// let [before, after] = texts.map(|text| text::read(text).unwrap());
/// let found = differences(texts, [&before, &after]);
/// assert_eq!((found[0].path.as_str(), found[0].change), ("feet[\"a\"].x", Change::Value));
/// assert_eq!((found[1].path.as_str(), found[1].change), ("feet", Change::Moved));
/// ```
pub fn differences(texts: [&str; 2], roots: [&Node; 2]) -> Vec<Difference> {
    let mut walk = Walk { texts, found: Vec::new(), renamed: Vec::new(), whole: None };
    if let [Some(before), Some(after)] = roots.map(|root| rows(member(root, REFERRED)?)) {
        for (before, after) in renamings(before, after) {
            walk.renamed.push([name(before), name(after)].map(|name| String::from(name.unwrap_or(""))));
        }
    }
    walk.values("", roots[0], roots[1]);
    walk.found
}

struct Walk<'t> {
    texts: [&'t str; 2],
    found: Vec<Difference>,
    /// Contents that have another name: before, after.
    renamed: Vec<[String; 2]>,
    /// What replaces a whole object whose rule changed: nothing in it can be taken by itself.
    whole: Option<Patch>,
}

impl Walk<'_> {
    fn values(&mut self, path: &str, before: &Node, after: &Node) {
        match (&before.json, &after.json) {
            (Json::Object(old), Json::Object(new)) => self.members(path, [before, after], old, new),
            (Json::List(old), Json::List(new)) => match [before, after].map(rows) {
                [Some(old), Some(new)] => self.rows(path, [before, after], old, new),
                _ if old.len() == new.len() && !old.iter().any(|item| matches!(item.json, Json::Text(_))) => {
                    for (place, (old, new)) in old.iter().zip(new).enumerate() {
                        self.values(&place_path(path, place), old, new);
                    }
                }
                _ => self.value(path, before, after),
            },
            _ => self.value(path, before, after),
        }
    }

    fn value(&mut self, path: &str, before: &Node, after: &Node) {
        if !self.same(before, after) {
            let patch = Patch { from: before.from, to: before.to, text: self.source(1, after).into() };
            self.push(path.into(), Change::Value, [Some(before), Some(after)], Some(patch));
        }
    }

    fn members(&mut self, path: &str, objects: [&Node; 2], old: &[Member], new: &[Member]) {
        let [was, is] = objects.map(|object| member(object, RULE).and_then(text));
        let is_outer = self.whole.is_none() && was != is;
        if is_outer {
            let [before, after] = objects;
            self.whole = Some(Patch { from: before.from, to: before.to, text: self.source(1, after).into() });
        }
        let stands = |member: &&Member| member.node.json != Json::Null && !NOT_INPUT.contains(&&*member.key);
        for member in old.iter().filter(stands) {
            let path = child_path(path, &member.key);
            match new.iter().filter(stands).find(|other| self.is_key(new, &member.key, &other.key)) {
                Some(other) => self.values(&path, &member.node, &other.node),
                None => {
                    let patch = Patch { from: member.node.from, to: member.node.to, text: "null".into() };
                    self.push(path, Change::Removed, [Some(&member.node), None], Some(patch));
                }
            }
        }
        for member in new.iter().filter(stands) {
            let is_known = |one: &Member| stands(&one) && self.is_key(new, &one.key, &member.key);
            if old.iter().any(is_known) {
                continue;
            }
            let patch = match old.iter().find(|one| one.key == member.key) {
                // A null that the first text has is what the value comes to stand for.
                Some(null) => {
                    Patch { from: null.node.from, to: null.node.to, text: self.source(1, &member.node).into() }
                }
                None => {
                    let at = objects[0].from + 1;
                    let mut text = String::from(piece(self.texts[1], member.at, member.node.to));
                    text.push_str(if old.is_empty() { "" } else { "," });
                    Patch { from: at, to: at, text }
                }
            };
            self.push(child_path(path, &member.key), Change::Added, [None, Some(&member.node)], Some(patch));
        }
        if is_outer {
            self.whole = None;
        }
    }

    fn rows(&mut self, path: &str, lists: [&Node; 2], old: &[Node], new: &[Node]) {
        let pairs = paired(old, new);
        for (place, row) in old.iter().enumerate() {
            match pairs.iter().find(|pair| pair[0] == place) {
                Some(&[_, other]) => {
                    let path = row_path(path, row, other);
                    let names = [name(row), name(&new[other])];
                    if names[0] != names[1] {
                        self.push(path, Change::Renamed, [member(row, NAME), member(&new[other], NAME)], None);
                    } else {
                        self.values(&path, row, &new[other]);
                    }
                }
                None => {
                    // From the row before to its end, or up to the next row, so that the commas stay right.
                    let [from, to] = match (place, old.get(place + 1)) {
                        (_, Some(next)) => [row.from, next.from],
                        (0, None) => [row.from, row.to],
                        (_, None) => [old[place - 1].to, row.to],
                    };
                    let patch = Patch { from, to, text: String::new() };
                    self.push(row_path(path, row, place), Change::Removed, [Some(row), None], Some(patch));
                }
            }
        }
        for (place, row) in new.iter().enumerate() {
            if !pairs.iter().any(|pair| pair[1] == place) {
                let at = old.last().map_or(lists[0].from + 1, |last| last.to);
                let mut text = String::from(if old.is_empty() { "" } else { "," });
                text.push_str(self.source(1, row));
                let patch = Patch { from: at, to: at, text };
                self.push(row_path(path, row, place), Change::Added, [None, Some(row)], Some(patch));
            }
        }
        if !pairs.is_sorted_by_key(|pair| pair[1]) {
            let patch = Patch { from: lists[0].from, to: lists[0].to, text: reordered(self.texts[0], old, &pairs) };
            self.push(path.into(), Change::Moved, lists.map(Some), Some(patch));
        }
    }

    #[inline(never)]
    fn push(&mut self, path: String, change: Change, nodes: [Option<&Node>; 2], patch: Option<Patch>) {
        let mut shown = [0, 1].map(|side| nodes[side].map(|node| String::from(self.source(side, node))));
        if change == Change::Moved {
            shown = nodes.map(|node| node.and_then(rows).map(names_of));
        }
        let [before, after] = shown;
        let patch = self.whole.clone().or(patch);
        self.found.push(Difference { path, change, before, after, patch });
    }

    fn source(&self, side: usize, node: &Node) -> &str {
        piece(self.texts[side], node.from, node.to)
    }

    /// Under which name a content of the first text stands in the second.
    fn renamed_to<'n>(&'n self, name: &'n str) -> &'n str {
        self.renamed.iter().find(|pair| pair[0] == name).map_or(name, |pair| &pair[1])
    }

    /// Whether a key is meant by another: the same, or that of a content which has another name now.
    fn is_key(&self, new: &[Member], key: &str, other: &str) -> bool {
        key == other || self.renamed_to(key) == other && new.iter().all(|one| one.key != key)
    }

    /// Whether two values say the same, contents that were renamed counting as themselves.
    fn same(&self, before: &Node, after: &Node) -> bool {
        match (&before.json, &after.json) {
            (Json::Text(old), Json::Text(new)) => old == new || self.renamed_to(old) == new,
            _ => same_but(before, after, "", &|old, new| self.same(old, new)),
        }
    }
}

/// Whether two values are alike but for one key, their parts compared by `same`.
fn same_but(before: &Node, after: &Node, ignored: &str, same: &dyn Fn(&Node, &Node) -> bool) -> bool {
    match (&before.json, &after.json) {
        (Json::List(old), Json::List(new)) => {
            old.len() == new.len() && old.iter().zip(new).all(|(old, new)| same(old, new))
        }
        (Json::Object(old), Json::Object(new)) => {
            let stands = |one: &&Member| one.key != ignored && one.node.json != Json::Null;
            let in_new = |one: &Member| {
                new.iter().filter(stands).any(|other| other.key == one.key && same(&one.node, &other.node))
            };
            old.iter().filter(stands).count() == new.iter().filter(stands).count()
                && old.iter().filter(stands).all(in_new)
        }
        (old, new) => old == new,
    }
}

fn alike(before: &Node, after: &Node) -> bool {
    same_but(before, after, "", &alike)
}

/// Whether two rows are alike but for their names.
fn alike_but_name(before: &Node, after: &Node) -> bool {
    same_but(before, after, NAME, &alike)
}

fn text<'n>(node: &'n Node) -> Option<&'n str> {
    if let Json::Text(text) = &node.json { Some(text) } else { None }
}

fn member<'n, 't>(node: &'n Node<'t>, key: &str) -> Option<&'n Node<'t>> {
    let Json::Object(members) = &node.json else { return None };
    members.iter().find(|member| member.key == key).map(|member| &member.node)
}

fn name<'n>(row: &'n Node) -> Option<&'n str> {
    member(row, NAME).and_then(text)
}

/// The rows of a list of objects; none for any other list.
fn rows<'n, 't>(list: &'n Node<'t>) -> Option<&'n [Node<'t>]> {
    let Json::List(items) = &list.json else { return None };
    items.iter().all(|item| matches!(item.json, Json::Object(_))).then_some(items)
}

/// Which row of one list is which of the other: by name; then by equal values; then those without a name by their order.
fn paired(old: &[Node], new: &[Node]) -> Vec<[usize; 2]> {
    let mut partner: Vec<Option<usize>> = alloc::vec![None; old.len()];
    let mut is_taken = alloc::vec![false; new.len()];
    let rules: [fn(&Node, &Node) -> bool; 3] = [
        |a, b| name(a).is_some() && name(a) == name(b),
        |a, b| name(a).is_some() == name(b).is_some() && alike_but_name(a, b),
        |a, b| name(a).is_none() && name(b).is_none(),
    ];
    for is_pair in rules {
        for (place, row) in old.iter().enumerate().filter(|(place, _)| partner[*place].is_none()).collect::<Vec<_>>() {
            let found = (0..new.len()).find(|&other| !is_taken[other] && is_pair(row, &new[other]));
            if let Some(other) = found {
                (partner[place], is_taken[other]) = (Some(other), true);
            }
        }
    }
    partner.iter().enumerate().filter_map(|(place, other)| Some([place, (*other)?])).collect()
}

/// Rows that have the same values under another name.
fn renamings<'n, 't>(old: &'n [Node<'t>], new: &'n [Node<'t>]) -> Vec<(&'n Node<'t>, &'n Node<'t>)> {
    let pairs = paired(old, new).into_iter().map(|[before, after]| (&old[before], &new[after]));
    pairs.filter(|(before, after)| name(before) != name(after)).collect()
}

/// The rows of the first text in the order of the second; those that the second lacks come last.
fn reordered(text: &str, old: &[Node], pairs: &[[usize; 2]]) -> String {
    let mut order: Vec<usize> = (0..old.len()).collect();
    let rank = |place: usize| pairs.iter().find(|pair| pair[0] == place).map_or(usize::MAX, |pair| pair[1]);
    crate::calc::order::put_in_order(&mut order, |&a, &b| rank(a).cmp(&rank(b)));
    let mut list = String::from("[");
    for (number, place) in order.into_iter().enumerate() {
        list.push_str(if number > 0 { "," } else { "" });
        list.push_str(piece(text, old[place].from, old[place].to));
    }
    list.push(']');
    list
}

fn names_of(rows: &[Node]) -> String {
    let mut names = String::new();
    for row in rows {
        names.push_str(if names.is_empty() { "" } else { ", " });
        names.push_str(name(row).unwrap_or("…"));
    }
    names
}

/// A row with a name is known by it; in quotes, because a name is no key, whatever its letters.
fn row_path(path: &str, row: &Node, place: usize) -> String {
    let Some(name) = name(row) else { return place_path(path, place) };
    let mut path = String::from(path);
    path.push_str("[\"");
    for letter in name.chars() {
        if matches!(letter, '"' | '\\') {
            path.push('\\');
        }
        path.push(letter);
    }
    path.push_str("\"]");
    path
}

fn place_path(path: &str, place: usize) -> String {
    let mut path = String::from(path);
    path.push('[');
    super::fault::push_whole(&mut path, place);
    path.push(']');
    path
}
