//! A row on its way to a project: its cells put into the pieces of the hall file that it calls.

use alloc::borrow::Cow;
use alloc::string::String;
use alloc::vec::Vec;

use super::aboard::{self, Aboard};
use super::cells::cells;
use super::column::{Column, Head, Means, Separator, of_cell};
use super::file::{FURTHEST_MM, Hall, Named};
use super::path::{self, Step};
use super::row::{Row, Standing};
use super::schedule::Record;
use super::shape::shape_at;
use super::tree::{Tree, quote};
use crate::calc::number::{cos, sin};
use crate::input::allowed::NAME_MAX;
use crate::input::number::number;
use crate::input::reader::cut;
use crate::input::text::{self, Json};
use crate::input::{FieldShape, LimitUnits, Problem, Reader, Spot};
use crate::project;

/// A row on its way to a project.
pub struct Draft<'r> {
    pub row: Row,
    separator: Separator,
    head: Cow<'r, [Column]>,
    cells: Vec<Cell<'r>>,
}

/// What stands in one column of a row.
enum Cell<'r> {
    /// A text; empty where nothing is said.
    Text(Cow<'r, str>),
    /// A list or an object, or null, of a line of JSON.
    Value(Tree),
}

impl<'r> Draft<'r> {
    pub fn of(head: &'r Head, record: &'r Record) -> Draft<'r> {
        let row = Row {
            number: record.number,
            line: record.line,
            text: record.text.clone(),
            place: String::new(),
            type_name: String::new(),
            load_out: String::new(),
            floor: String::new(),
            storey: String::new(),
            standing: None,
            outcome: None,
            faults: record.fault.iter().cloned().collect(),
        };
        let separator = head.separator;
        let mut draft = Draft { row, separator, head: Cow::Borrowed(&head.columns), cells: Vec::new() };
        let is_refused = record.fault.as_ref().is_some_and(|fault| fault.path.is_empty());
        if is_refused {
            return draft;
        }
        if separator == Separator::JsonLines {
            draft.read_object(&record.text);
            return draft;
        }
        if record.text.chars().any(|letter| letter.is_control() && !matches!(letter, '\t' | '\r' | '\n')) {
            draft.fault("", "", (Problem::NotOneLine, ""));
        }
        match cells(&record.text, separator) {
            Ok(cells) => {
                let is_rest_empty = cells.iter().skip(head.columns.len()).all(|cell| cell.trim().is_empty());
                if cells.len() < head.columns.len() || !is_rest_empty {
                    draft.fault("", "", (Problem::WrongCount, "as many cells as the head has"));
                    let place = head.columns.iter().position(|column| column.means == Means::Place);
                    let place = place.and_then(|place| cells.get(place));
                    draft.row.place = place.map_or(String::new(), |place| cut(place.trim()));
                } else {
                    draft.cells = cells.into_iter().take(head.columns.len()).map(Cell::Text).collect();
                }
            }
            Err(problem) => draft.fault("", &record.text, (problem, "")),
        }
        draft
    }

    /// Reads a line of JSON; its keys are the columns.
    fn read_object(&mut self, source: &str) {
        let root = match text::read(source) {
            Ok(root) => root,
            Err(trouble) => {
                self.fault("", source, (trouble.problem, trouble.allowed));
                return;
            }
        };
        let mut reader = Reader::new(source, LimitUnits::File);
        let spot = Spot { path: String::new(), node: &root };
        if !spot.is_object() {
            self.fault("", source, (Problem::NotAnObject, "an object in braces"));
        }
        let mut columns: Vec<Column> = Vec::new();
        for member in spot.members() {
            let source = reader.source(&member.node);
            if member.repeated {
                self.fault(&member.key, source, (Problem::DuplicateKey, ""));
                continue;
            }
            match Column::of(&member.key) {
                Ok(column) if columns.iter().any(|known| known.means == column.means && known.means != Means::Note) => {
                    self.fault(&member.key, source, (Problem::DuplicateKey, ""));
                }
                Ok(column) => {
                    columns.push(column);
                    self.cells.push(match &member.node.json {
                        Json::Text(text) => Cell::Text(Cow::Owned(text.as_ref().into())),
                        Json::Number(_) | Json::Flag(_) | Json::Word => Cell::Text(Cow::Owned(source.into())),
                        Json::Null | Json::List(_) | Json::Object(_) => {
                            Cell::Value(Tree::of(&mut reader, &spot.child(member)))
                        }
                    });
                }
                Err(said) => self.fault(&member.key, source, said),
            }
        }
        if reader.count() > 0 {
            self.row.faults.extend(reader.faults());
        }
        self.head = Cow::Owned(columns);
    }

    fn fault(&mut self, column: &str, given: &str, said: (Problem, &str)) {
        self.row.faults.push(of_cell(self.row.line, column, given, said));
    }

    /// The cell of a column that is a name or a number of the plan; empty where nothing is said.
    fn plain(&mut self, means: Means) -> (String, String) {
        let place = self.head.iter().position(|column| column.means == means);
        let Some((place, column)) = place.and_then(|place| Some((place, self.head.get(place)?))) else {
            return Default::default();
        };
        let name = column.name.clone();
        match self.cells.get(place) {
            Some(Cell::Text(text)) => (name, text.trim().into()),
            Some(Cell::Value(Tree::Leaf(_))) | None => (name, String::new()),
            Some(Cell::Value(_)) => {
                self.fault(&name, "", (Problem::NotAText, ""));
                (name, String::new())
            }
        }
    }

    /// The project that the row makes; none where the row cannot be read as cells, or calls what is not there.
    pub fn tree(&mut self, hall: &Hall) -> Option<Tree> {
        if self.cells.is_empty() {
            return None;
        }
        self.row.place = self.plain(Means::Place).1;
        let place = self.row.place.clone();
        if place.is_empty() {
            self.fault("place", "", (Problem::Missing, "the name of the place"));
        } else if place.chars().count() > NAME_MAX {
            self.fault("place", &place, (Problem::NameTooLong, ""));
        } else if place.chars().any(char::is_control) {
            self.fault("place", &place, (Problem::NotOneLine, ""));
        }
        let mut tree = hall.base.clone();
        let (_, mut type_name) = self.plain(Means::Type);
        if type_name.is_empty()
            && let [(only, _)] = hall.types.as_slice()
        {
            type_name.clone_from(only);
        }
        let mut is_whole = self.put(&mut tree, &hall.types, "type", &type_name);
        self.row.type_name = type_name;
        let (_, floor) = self.plain(Means::Floor);
        is_whole &= floor.is_empty() || self.put(&mut tree, &hall.floors, "floor", &floor);
        self.row.floor = floor;
        let (_, storey) = self.plain(Means::Storey);
        is_whole &= storey.is_empty() || self.put(&mut tree, &hall.storeys, "storey", &storey);
        self.row.storey = storey;
        let (_, load_out) = self.plain(Means::LoadOut);
        let aboard = Aboard::of(&load_out);
        if !load_out.is_empty() && aboard.is_none() {
            is_whole &= self.put(&mut tree, &hall.load_outs, "load_out", &load_out);
        }
        self.row.load_out = load_out;
        if !is_whole {
            return None;
        }
        self.head_it(&mut tree, hall);
        self.set_fields(&mut tree);
        if let Some(aboard) = aboard
            && let Err(problem) = aboard.leave(&mut tree)
        {
            let given = self.row.load_out.clone();
            self.fault("load_out", &given, (problem, "at most the number of contents"));
        }
        Some(tree)
    }

    /// Puts a part that is called by name on top.
    fn put(&mut self, tree: &mut Tree, parts: &Named, column: &str, name: &str) -> bool {
        if let Some((_, part)) = parts.iter().find(|(known, _)| known == name) {
            tree.merge(part);
            return true;
        }
        let mut allowed = String::new();
        if column == "load_out" {
            allowed.push_str(aboard::ALLOWED);
        } else {
            for (place, (known, _)) in parts.iter().enumerate() {
                allowed.push_str(if place > 0 { ", " } else { "" });
                allowed.push_str(known);
            }
        }
        let problem = if name.is_empty() { Problem::Missing } else { Problem::UnknownName };
        let allowed: String = allowed.chars().take(NAME_MAX).collect();
        self.fault(column, name, (problem, &allowed));
        false
    }

    /// The format, and a title that says which place it is.
    fn head_it(&self, tree: &mut Tree, hall: &Hall) {
        let mut title = hall.title.clone();
        if title.is_empty() {
            title.push_str(tree.member("title").and_then(Tree::text).unwrap_or(""));
        }
        if !title.is_empty() {
            title.push_str(", ");
        }
        title.push_str(&self.row.place);
        let title: String = title.chars().take(NAME_MAX).collect();
        let mut quoted = [String::new(), String::new()];
        quote(&mut quoted[0], project::FORMAT_NAME);
        quote(&mut quoted[1], &title);
        for (key, value) in ["format", "title"].into_iter().zip(quoted) {
            path::set(tree, &[Step::Key(key.into())], &Tree::Leaf(value));
        }
    }

    /// Puts what the columns say of fields into the project; rules first, since they say which fields there are.
    fn set_fields(&mut self, tree: &mut Tree) {
        let head = core::mem::take(&mut self.head);
        let cells = core::mem::take(&mut self.cells);
        for is_rule in [true, false] {
            for (column, cell) in head.iter().zip(&cells) {
                let Means::Field(path) = &column.means else { continue };
                if (path.last() == Some(&Step::Key("rule".into()))) == is_rule {
                    self.set_field(tree, column, (path, cell));
                }
            }
        }
        self.head = head;
        self.cells = cells;
    }

    fn set_field(&mut self, tree: &mut Tree, column: &Column, (path, cell): (&[Step], &Cell)) {
        let text = match cell {
            Cell::Value(value) => {
                if !path::set(tree, path, value) {
                    self.fault(&column.name, "", (Problem::UnknownName, ""));
                }
                return;
            }
            Cell::Text(text) => text.trim(),
        };
        if text.is_empty() {
            return;
        }
        let value = match shape_at(path, Some(tree)) {
            _ if text == "null" => Ok(String::from("null")),
            Some(FieldShape::Number { .. }) => column.units.read(text, self.separator.decimal_mark()),
            Some(FieldShape::Flag) if text.eq_ignore_ascii_case("true") => Ok(String::from("true")),
            Some(FieldShape::Flag) if text.eq_ignore_ascii_case("false") => Ok(String::from("false")),
            Some(FieldShape::Choice(_) | FieldShape::Text | FieldShape::Name | FieldShape::Flag) => Ok(quoted(text)),
            // Lists and objects are written as in the project file; what the rule does not know is told by its reader.
            _ if text::read(text).is_ok() => Ok(text.into()),
            _ => Ok(quoted(text)),
        };
        match value {
            Ok(value) => {
                if !path::set(tree, path, &Tree::Leaf(value)) {
                    self.fault(&column.name, text, (Problem::UnknownName, ""));
                }
            }
            Err(problem) => {
                let allowed = match problem {
                    Problem::MixedUnits => "the unit of the column, or none",
                    Problem::TwoReadings => "a decimal mark, and nothing between thousands",
                    _ => "a number",
                };
                self.fault(&column.name, text, (problem, allowed));
            }
        }
    }

    /// Where it stands, and the corners of its base.
    pub fn stand(&mut self, tree: &Tree) {
        let [x, y, turn] = [Means::X, Means::Y, Means::Turn].map(|means| {
            let units = self.head.iter().find(|column| column.means == means).map(|column| column.units);
            let (column, cell) = self.plain(means);
            let units = units.filter(|_| !cell.is_empty())?;
            let value = match units.read(&cell, self.separator.decimal_mark()) {
                Ok(text) => number(&text).filter(|value| value.abs() <= FURTHEST_MM).ok_or(Problem::AboveLimit),
                Err(problem) => Err(problem),
            };
            if let Err(problem) = value {
                self.fault(&column, &cell, (problem, "a number in the unit of the column, no further than 10 000 m"));
            }
            value.ok()
        });
        let (Some(x), Some(y)) = (x, y) else { return };
        let turn_deg = turn.unwrap_or(0.0);
        let cabinet = tree.member("cabinet");
        let side = |key: &str| match cabinet?.member(key)? {
            Tree::Leaf(source) => number(source).filter(|mm| *mm > 0.0 && *mm <= FURTHEST_MM),
            _ => None,
        };
        let corners_mm = side("width_mm").zip(side("depth_mm")).map(|(width, depth)| {
            let turn_rad = turn_deg * core::f64::consts::PI / 180.0;
            let (cosine, sine) = (cos(turn_rad), sin(turn_rad));
            [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)].map(|(right, rear)| {
                let (right, rear) = (right * width, rear * depth);
                [x + right * cosine - rear * sine, y + right * sine + rear * cosine]
            })
        });
        self.row.standing = Some(Standing { at_mm: [x, y], turn_deg, corners_mm });
    }
}

fn quoted(text: &str) -> String {
    let mut quoted = String::new();
    quote(&mut quoted, text);
    quoted
}
