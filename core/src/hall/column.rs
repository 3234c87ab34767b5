//! The head of a schedule: what each of its columns is.

use alloc::string::String;
use alloc::vec::Vec;

use super::cells::cells;
use super::measure::{DecimalMark, UNIT_NAMES, Units};
use super::path::{Step, steps};
use super::shape::shape_at;
use crate::calc::Kind;
use crate::input::{Fault, FieldShape, Problem};

/// Most columns of a schedule.
pub const COLUMNS_MAX: usize = 200;
/// The names that a column may have, for faults.
const COLUMN_NAMES: &str = "place, type, load_out, floor, storey, x_mm, y_mm, turn_deg, a path of the project file, note, or note and more words";

/// What parts the cells of a row.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Separator {
    /// A comma; numbers have a decimal point.
    Comma,
    /// A semicolon; numbers may have a decimal comma.
    Semicolon,
    /// A tab; numbers may have a decimal comma.
    Tab,
    /// None: each row is an object of JSON whose keys are the columns.
    JsonLines,
}

impl Separator {
    /// The byte itself; none for lines of JSON.
    pub fn byte(self) -> Option<u8> {
        match self {
            Separator::Comma => Some(b','),
            Separator::Semicolon => Some(b';'),
            Separator::Tab => Some(b'\t'),
            Separator::JsonLines => None,
        }
    }

    /// Which marks may stand before decimals.
    pub(super) fn decimal_mark(self) -> DecimalMark {
        match self {
            Separator::Semicolon | Separator::Tab => DecimalMark::PointOrComma,
            Separator::Comma | Separator::JsonLines => DecimalMark::Point,
        }
    }
}

/// A column of a schedule.
#[derive(Clone, Debug)]
pub struct Column {
    /// Its head, as it is written.
    pub name: String,
    pub(super) means: Means,
    pub(super) units: Units,
}

/// What a column says.
#[derive(Clone, PartialEq, Debug)]
pub(super) enum Means {
    Place,
    Type,
    LoadOut,
    Floor,
    Storey,
    X,
    Y,
    Turn,
    /// The field of the project at a path.
    Field(Vec<Step>),
    /// Nothing that counts.
    Note,
}

impl Column {
    /// Whether its cells are numbers.
    pub(super) fn is_number(&self) -> bool {
        match &self.means {
            Means::X | Means::Y | Means::Turn => true,
            Means::Field(path) => matches!(shape_at(path, None), Some(FieldShape::Number { .. })),
            _ => false,
        }
    }

    /// The column of a head; otherwise what is wrong with it and what would do.
    pub(super) fn of(head: &str) -> Result<Column, (Problem, &'static str)> {
        let name = head.trim();
        let (plain, unit) = match name.strip_suffix(']').and_then(|open| open.rsplit_once('[')) {
            Some((plain, unit)) if plain.ends_with(' ') => (plain.trim_end(), Some(unit.trim())),
            _ => (name, None),
        };
        let lower = plain.to_ascii_lowercase();
        let is_note = lower == "note" || lower.starts_with("note ") || plain.starts_with("result.");
        let length = Units::of_kind(Kind::Length);
        let nothing = Units::of_kind(Kind::Number);
        let (means, units) = match lower.as_str() {
            _ if is_note => (Means::Note, nothing),
            "place" => (Means::Place, nothing),
            "type" => (Means::Type, nothing),
            "load_out" | "load-out" | "load out" => (Means::LoadOut, nothing),
            "floor" => (Means::Floor, nothing),
            "storey" => (Means::Storey, nothing),
            "x_mm" => (Means::X, length),
            "y_mm" => (Means::Y, length),
            "turn_deg" => (Means::Turn, Units::of_turn()),
            "x" | "y" | "turn" if unit.is_none() => return Err((Problem::Missing, "with its unit, such as x [m]")),
            "x" => (Means::X, length),
            "y" => (Means::Y, length),
            "turn" => (Means::Turn, Units::of_turn()),
            _ => {
                let path = steps(plain).ok_or((Problem::UnknownKey, COLUMN_NAMES))?;
                let kind = match shape_at(&path, None) {
                    Some(FieldShape::Number { kind, .. }) => kind,
                    Some(_) => Kind::Number,
                    None => return Err((Problem::UnknownKey, COLUMN_NAMES)),
                };
                (Means::Field(path), Units::of_kind(kind))
            }
        };
        let units = match unit {
            Some(unit) if !is_note => units.in_unit(unit).ok_or((Problem::NotAUnit, UNIT_NAMES))?,
            _ => units,
        };
        Ok(Column { name: name.into(), means, units })
    }
}

/// The first line of a schedule, read.
#[derive(Clone, Debug)]
pub struct Head {
    /// What parts the cells.
    pub separator: Separator,
    /// The columns; none for lines of JSON, where each line names its own.
    pub columns: Vec<Column>,
}

impl Head {
    /// Reads the first line of a schedule, or takes any line of JSON for one of many.
    ///
    /// Errors: two separators that would both do, columns that are unknown, twice there or missing, units that do not
    /// measure what their column holds. Nothing of the schedule can be read then.
    ///
    /// ```
    /// use steadfoot::hall::{Head, Separator};
    /// let head = Head::of("place;x [m];y [m];slab.thickness_mm", 1).unwrap();
    /// assert_eq!((head.separator, head.columns.len()), (Separator::Semicolon, 4));
    /// let faults = Head::of("place,slab.thicknes_mm", 1).unwrap_err();
    /// assert_eq!(faults[0].path, "slab.thicknes_mm");
    /// ```
    pub fn of(line: &str, number: u32) -> Result<Head, Vec<Fault>> {
        if line.trim_start().starts_with('{') {
            return Ok(Head { separator: Separator::JsonLines, columns: Vec::new() });
        }
        let separator = separator_of(line, number)?;
        let names = cells(line, separator).map_err(|problem| alloc::vec![at(number, line, problem, "")])?;
        if names.len() > COLUMNS_MAX {
            return Err(alloc::vec![at(number, "", Problem::TooMany, "at most 200 columns")]);
        }
        let mut faults = Vec::new();
        let mut columns: Vec<Column> = Vec::new();
        for name in &names {
            match Column::of(name) {
                Ok(column) => {
                    let is_same = |other: &Column| other.means == column.means && column.means != Means::Note;
                    if columns.iter().any(is_same) {
                        faults.push(at(number, name, Problem::DuplicateKey, ""));
                    }
                    columns.push(column);
                }
                Err((problem, allowed)) => faults.push(at(number, name, problem, allowed)),
            }
        }
        let has = |means: Means| columns.iter().any(|column| column.means == means);
        if faults.is_empty() && !has(Means::Place) {
            faults.push(at(number, "place", Problem::Missing, "a column of that name"));
        }
        if faults.is_empty() && has(Means::X) != has(Means::Y) {
            let missing = if has(Means::X) { "y_mm" } else { "x_mm" };
            faults.push(at(number, missing, Problem::Missing, "both x and y, or none"));
        }
        if faults.is_empty() { Ok(Head { separator, columns }) } else { Err(faults) }
    }
}

/// The separator with which the line has a column "place"; a fault where two would do.
fn separator_of(line: &str, number: u32) -> Result<Separator, Vec<Fault>> {
    let is_there = |separator: Separator| separator.byte().is_some_and(|byte| line.as_bytes().contains(&byte));
    let with_place = |separator: &Separator| {
        cells(line, *separator).is_ok_and(|cells| cells.iter().any(|cell| cell.trim().eq_ignore_ascii_case("place")))
    };
    let all = [Separator::Comma, Separator::Semicolon, Separator::Tab];
    let mut there = all.into_iter().filter(|separator| is_there(*separator));
    match (there.next(), there.next()) {
        (None, _) => Ok(Separator::Comma),
        (Some(only), None) => Ok(only),
        _ => {
            let mut fitting = all.into_iter().filter(|separator| is_there(*separator)).filter(with_place);
            match (fitting.next(), fitting.next()) {
                (Some(only), None) => Ok(only),
                _ => Err(alloc::vec![at(
                    number,
                    "",
                    Problem::TwoReadings,
                    "one of comma, semicolon and tab between the columns"
                )]),
            }
        }
    }
}

/// A fault of a column, or of a whole line where the column is empty.
pub(super) fn at(line: u32, column: &str, problem: Problem, allowed: &str) -> Fault {
    let path = crate::input::reader::cut(column.trim());
    Fault { path, problem, given: String::new(), allowed: allowed.into(), line, column: 1 }
}

/// A fault of what stands in a cell.
pub(super) fn of_cell(line: u32, column: &str, given: &str, said: (Problem, &str)) -> Fault {
    Fault { given: crate::input::reader::cut(given), ..at(line, column, said.0, said.1) }
}
