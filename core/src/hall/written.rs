//! Cells and rows written back, so that no spreadsheet takes one for a formula.

use alloc::string::String;
use alloc::vec::Vec;

use super::cells::{cells, is_marked};
use super::column::{Column, Head, Separator};
use super::row::Row;
use crate::calc::decimal::precise;
use crate::input::number::number;
use crate::report::outcome::Verdict;

/// A cell as it may stand between commas.
///
/// What a spreadsheet might take for a formula (it begins with = + - @, a tab or a line break) gets an apostrophe in
/// front, unless it is a number; what has a mark of the format in it gets quotes. Reading takes both off again, so every
/// text without control characters comes back as it was; of those, all but tab and line breaks become �.
///
/// ```
/// assert_eq!(steadfoot::hall::cell("=1+1"), "'=1+1");
/// assert_eq!(steadfoot::hall::cell("-1200"), "-1200");
/// assert_eq!(steadfoot::hall::cell("a \"b\", c"), "\"a \"\"b\"\", c\"");
/// ```
pub fn cell(text: &str) -> String {
    let needs_mark = is_marked(text) && number(text).is_none();
    let is_parted = |letter: char| matches!(letter, ',' | ';' | '"') || letter.is_control();
    let needs_quotes = text.contains(is_parted) || text.starts_with(' ') || text.ends_with(' ');
    let mut cell = String::new();
    if needs_quotes {
        cell.push('"');
    }
    if needs_mark {
        cell.push('\'');
    }
    for letter in text.chars() {
        match letter {
            '"' => cell.push_str("\"\""),
            '\t' | '\r' | '\n' => cell.push(letter),
            _ if letter.is_control() => cell.push('\u{fffd}'),
            _ => cell.push(letter),
        }
    }
    if needs_quotes {
        cell.push('"');
    }
    cell
}

/// A row of cells with commas between them and no line break behind it.
pub fn line<'c>(cells: impl IntoIterator<Item = &'c str>) -> String {
    let mut line = String::new();
    for (place, text) in cells.into_iter().enumerate() {
        if place > 0 {
            line.push(',');
        }
        line.push_str(&cell(text));
    }
    line
}

/// The columns that a row without a head of its own is written back in.
const PLAIN_COLUMNS: [&str; 8] = ["place", "type", "load_out", "floor", "storey", "x_mm", "y_mm", "turn_deg"];
/// The columns of what was found. Read again as a schedule they say nothing.
const RESULT_COLUMNS: [&str; 11] = [
    "result.verdict",
    "result.utilisation",
    "result.governs",
    "result.of",
    "result.not_covered",
    "result.reason",
    "result.mass_kg",
    "result.fingerprint",
    "result.faults",
    "result.row",
    "result.caution",
];

/// What stands beside a row that the engine has no words for.
#[derive(Clone, Copy, Debug, Default)]
pub struct RowWords<'w> {
    /// Why it is not covered.
    pub reason: &'w str,
    /// The cautions; they belong on the first row of a file.
    pub caution: &'w str,
}

/// The head of a file of results: the columns of the schedule, then those of what was found.
pub fn result_head(head: &Head) -> String {
    let own: Vec<&str> = match head.separator {
        Separator::JsonLines => PLAIN_COLUMNS.to_vec(),
        _ => own_columns(head).map(|(_, column)| column.name.as_str()).collect(),
    };
    line(own.into_iter().chain(RESULT_COLUMNS))
}

/// A row of the schedule with what was found, parted by commas and with decimal points, whatever the schedule had.
pub fn result_line(head: &Head, row: &Row, words: RowWords) -> String {
    let [before, behind] = result_parts(head, row);
    [before, cell(words.reason), behind, cell(words.caution)].join(",")
}

/// The same in two pieces: what stands before the reason and between it and the caution.
pub fn result_parts(head: &Head, row: &Row) -> [String; 2] {
    let mut before: Vec<String> = match head.separator {
        Separator::JsonLines => plain_cells(row),
        _ => own_cells(head, row),
    };
    let [found, behind] = found_cells(row);
    before.extend(found);
    let has_own_text = row.faults.is_empty() && head.separator != Separator::JsonLines;
    let text = if has_own_text { "" } else { row.text.as_str() };
    let line_of = |cells: &[String]| line(cells.iter().map(String::as_str));
    [line_of(&before), [line_of(&behind), cell(text)].join(",")]
}

/// Columns that an earlier file of results has already are not written twice.
fn own_columns(head: &Head) -> impl Iterator<Item = (usize, &Column)> {
    head.columns.iter().enumerate().filter(|(_, column)| !column.name.starts_with("result."))
}

fn own_cells(head: &Head, row: &Row) -> Vec<String> {
    let cells = cells(&row.text, head.separator).unwrap_or_default();
    let mark = head.separator.decimal_mark();
    let one = |(place, column): (usize, &Column)| {
        let Some(cell) = cells.get(place) else { return String::new() };
        // A decimal comma would be read in two ways between commas.
        if column.is_number() && cell.contains(',') && column.units.read(cell, mark).is_ok() {
            return cell.replace(',', ".");
        }
        String::from(cell.as_ref())
    };
    own_columns(head).map(one).collect()
}

fn plain_cells(row: &Row) -> Vec<String> {
    let mut cells: Vec<String> =
        [&row.place, &row.type_name, &row.load_out, &row.floor, &row.storey].map(String::clone).into();
    let numbers = row.standing.map(|standing| [standing.at_mm[0], standing.at_mm[1], standing.turn_deg]);
    for place in 0..3 {
        cells.push(number_cell(numbers.map(|numbers| numbers[place])));
    }
    cells
}

/// What was found: the cells before the reason, and those behind it.
fn found_cells(row: &Row) -> [Vec<String>; 2] {
    let found = row.outcome.as_ref();
    let word = match found.map(|found| found.verdict) {
        Some(Verdict::Holds) => "holds",
        Some(Verdict::DoesNotHold) => "does not hold",
        Some(Verdict::CannotBeSaid) => "cannot be said",
        None => "faults",
    };
    let mut faults = String::new();
    for fault in &row.faults {
        faults.push_str(if faults.is_empty() { "" } else { " | " });
        faults.push_str(&fault.sentence());
    }
    let text = |text: Option<&str>| String::from(text.unwrap_or(""));
    let before = [
        word.into(),
        number_cell(found.and_then(|found| found.utilisation)),
        text(found.and_then(|found| found.governs)),
        text(found.map(|found| found.of.as_str())),
        text(found.and_then(|found| found.not_covered)),
    ];
    let behind =
        [number_cell(found.map(|found| found.mass_kg)), text(found.map(|found| found.fingerprint.as_str())), faults];
    [before.into(), behind.into()]
}

fn number_cell(value: Option<f64>) -> String {
    let mut text = String::new();
    if let Some(value) = value.filter(|value| value.is_finite()) {
        if value < 0.0 {
            text.push('-');
        }
        precise(&mut text, value.abs());
    }
    text
}
