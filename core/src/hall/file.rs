//! The hall file: the types, floors, storeys and load-outs that a schedule calls by name.

use alloc::string::String;
use alloc::vec::Vec;

use super::tree::Tree;
use crate::calc::Kind;
use crate::input::text::{self, Json};
use crate::input::{Fault, LimitUnits, Problem, Range, Reader, Spot};
use crate::project;

/// What the file says it is.
pub const FORMAT_NAME: &str = "steadfoot hall 1";

/// The keys of the file, in the order in which the schema tells them.
pub const KEYS: [&str; 9] =
    ["format", "title", "base", "types", "floors", "storeys", "load_outs", "outline_mm", "aisle_mm"];
/// Most corners of an outline.
pub(super) const CORNERS_MAX: usize = 200;
/// Narrowest and widest aisle.
pub(super) const AISLE_LIMITS_MM: [f64; 2] = [1.0, 20_000.0];
/// Furthest coordinate of a hall.
pub(super) const FURTHEST_MM: f64 = 10_000_000.0;

/// What a schedule calls by name.
#[derive(Clone, Debug)]
pub struct Hall {
    /// What the sheets of its cabinets are headed with; may be empty.
    pub title: String,
    /// The corners of the room, for the plan; may be none.
    pub outline_mm: Vec<[f64; 2]>,
    /// How deep the clear way in front of every cabinet is.
    pub aisle_mm: Option<f64>,
    pub(super) base: Tree,
    pub(super) types: Named,
    pub(super) floors: Named,
    pub(super) storeys: Named,
    pub(super) load_outs: Named,
}

/// Parts of projects with their names.
pub(super) type Named = Vec<(String, Tree)>;

impl Hall {
    /// Reads a hall file; a project file is a hall with that one type.
    ///
    /// `base` is a part of a project that all types begin with; each of `types`, `floors`, `storeys` and `load_outs` is
    /// an object of parts by their names. A part is put on top of what stands below it: objects are joined, null takes
    /// away, anything else replaces. Errors: what is wrong with the file itself; whether a type makes a whole project is
    /// told of each row that calls it.
    ///
    /// ```
    /// use steadfoot::hall::Hall;
    /// let text = r#"{ "format": "steadfoot hall 1", "types": { "tall": { "cabinet": { "height_mm": 2300 } } } }"#;
    /// assert_eq!(Hall::read(text).unwrap().type_names().collect::<Vec<_>>(), ["tall"]);
    /// assert_eq!(Hall::read("{}").unwrap_err()[0].path, "types");
    /// ```
    pub fn read(text: &str) -> Result<Hall, Vec<Fault>> {
        let mut reader = Reader::new(text, LimitUnits::File);
        let root = match text::read(text) {
            Ok(root) => root,
            Err(trouble) => {
                reader.trouble(trouble);
                return Err(reader.faults());
            }
        };
        let spot = Spot { path: String::new(), node: &root };
        let is_project = match spot.member("format").map(|spot| &spot.node.json) {
            Some(Json::Text(name)) if name == FORMAT_NAME => false,
            Some(Json::Text(name)) if name == project::FORMAT_NAME => true,
            None => spot.member("cabinet").is_some(),
            _ => {
                reader.member_fault(&spot, "format", Problem::NotAFormat, "\"steadfoot hall 1\" or \"steadfoot 1\"");
                return Err(reader.faults());
            }
        };
        let hall = if is_project {
            let title = spot.member("title").map_or(String::new(), |title| plain_text(&title));
            Hall { title, types: alloc::vec![(String::new(), Tree::of(&mut reader, &spot))], ..Hall::empty() }
        } else {
            of_keys(&mut reader, &spot)
        };
        if reader.count() == 0 { Ok(hall) } else { Err(reader.faults()) }
    }

    /// The names of the types, in the order of the file.
    pub fn type_names(&self) -> impl Iterator<Item = &str> {
        self.types.iter().map(|(name, _)| name.as_str())
    }

    fn empty() -> Hall {
        Hall {
            title: String::new(),
            outline_mm: Vec::new(),
            aisle_mm: None,
            base: Tree::empty(),
            types: Vec::new(),
            floors: Vec::new(),
            storeys: Vec::new(),
            load_outs: Vec::new(),
        }
    }
}

fn of_keys<'t>(reader: &mut Reader<'t>, spot: &Spot<'t>) -> Hall {
    let mut hall = Hall::empty();
    if !spot.is_object() {
        reader.fault(spot, Problem::NotAnObject, "an object in braces");
        return hall;
    }
    for member in spot.members() {
        if member.repeated {
            reader.key_fault(spot, member, Problem::DuplicateKey, "");
        } else if !KEYS.contains(&member.key.as_ref()) {
            reader.key_fault(spot, member, Problem::UnknownKey, &KEYS.join(", "));
        }
    }
    if let Some(title) = spot.member("title") {
        match &title.node.json {
            Json::Text(_) => hall.title = plain_text(&title),
            _ => reader.fault(&title, Problem::NotAText, ""),
        }
    }
    if let Some(base) = spot.member("base") {
        hall.base = part(reader, &base);
    }
    hall.types = named(reader, spot, "types");
    hall.floors = named(reader, spot, "floors");
    hall.storeys = named(reader, spot, "storeys");
    hall.load_outs = named(reader, spot, "load_outs");
    if let Some(load_outs) = spot.member("load_outs") {
        for member in load_outs.members().iter().filter(|member| super::aboard::is_word(&member.key)) {
            reader.key_fault(&load_outs, member, Problem::ReservedName, "");
        }
    }
    if hall.types.is_empty() && reader.count() == 0 {
        reader.missing(spot, "types", "an object of project files, or parts of them, by their names");
    }
    if let Some(aisle) = spot.member("aisle_mm") {
        let [min, max] = AISLE_LIMITS_MM;
        hall.aisle_mm = reader.plain_number(&aisle, Range { kind: Kind::Length, min, max });
    }
    for corner in reader.list(spot, "outline_mm", CORNERS_MAX) {
        match &corner.node.json {
            Json::List(nodes) if nodes.len() == 2 => match [&nodes[0].json, &nodes[1].json] {
                [Json::Number(x), Json::Number(y)] if x.abs() <= FURTHEST_MM && y.abs() <= FURTHEST_MM => {
                    hall.outline_mm.push([*x, *y]);
                }
                _ => reader.fault(&corner, Problem::NotANumber, "two numbers, each −10 000 000 to 10 000 000 mm"),
            },
            _ => reader.fault(&corner, Problem::WrongCount, "a list of two numbers"),
        }
    }
    hall
}

fn named<'t>(reader: &mut Reader<'t>, spot: &Spot<'t>, key: &str) -> Named {
    let Some(named) = spot.member(key) else { return Vec::new() };
    if !named.is_object() {
        reader.fault(&named, Problem::NotAnObject, "an object of parts by their names");
    }
    let mut parts = Vec::new();
    for member in named.members() {
        if member.repeated {
            reader.key_fault(&named, member, Problem::DuplicateKey, "");
            continue;
        }
        if member.key.trim().is_empty() {
            reader.key_fault(&named, member, Problem::EmptyName, "");
        }
        parts.push((member.key.trim().into(), part(reader, &named.child(member))));
    }
    parts
}

fn part<'t>(reader: &mut Reader<'t>, spot: &Spot<'t>) -> Tree {
    if !spot.is_object() {
        reader.fault(spot, Problem::NotAnObject, "a project, or a part of one, in braces");
        return Tree::empty();
    }
    Tree::of(reader, spot)
}

fn plain_text(spot: &Spot) -> String {
    match &spot.node.json {
        Json::Text(text) => text.as_ref().into(),
        _ => String::new(),
    }
}
