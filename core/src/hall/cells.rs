//! The cells of one row.

use alloc::borrow::Cow;
use alloc::string::String;
use alloc::vec::Vec;

use super::column::Separator;
use crate::input::Problem;
use crate::input::text::piece;

/// The cells of a row of text, quotes taken off and harmless marks removed (see [`super::cell`]).
///
/// A quote counts only where a cell begins with it. Errors: a quote that is never closed or that something follows.
pub fn cells(row: &str, separator: Separator) -> Result<Vec<Cow<'_, str>>, Problem> {
    let Some(mark) = separator.byte() else { return Ok(Vec::new()) };
    let bytes = row.as_bytes();
    let mut cells = Vec::new();
    let mut at = 0;
    loop {
        let cell = if bytes.get(at) == Some(&b'"') {
            let (cell, end) = quoted(row, at)?;
            at = end;
            cell
        } else {
            let end = bytes[at..].iter().position(|byte| *byte == mark).map_or(bytes.len(), |found| at + found);
            let cell = Cow::Borrowed(piece(row, at, end));
            at = end;
            cell
        };
        cells.push(unmarked(cell));
        match bytes.get(at) {
            None => return Ok(cells),
            Some(byte) if *byte == mark => at += 1,
            Some(_) => return Err(Problem::LooseQuote),
        }
    }
}

/// A cell that begins with a quote, and where it ends.
fn quoted(row: &str, opening: usize) -> Result<(Cow<'_, str>, usize), Problem> {
    let bytes = row.as_bytes();
    let mut from = opening + 1;
    let mut changed: Option<String> = None;
    let mut at = from;
    loop {
        let found = bytes[at..].iter().position(|byte| *byte == b'"').ok_or(Problem::LooseQuote)?;
        at += found + 1;
        if bytes.get(at) == Some(&b'"') {
            changed.get_or_insert_default().push_str(piece(row, from, at));
            at += 1;
            from = at;
            continue;
        }
        let rest = piece(row, from, at - 1);
        return Ok(match changed {
            Some(text) => (Cow::Owned(text + rest), at),
            None => (Cow::Borrowed(rest), at),
        });
    }
}

/// Takes off the apostrophe that keeps a spreadsheet from taking the cell for a formula.
fn unmarked(cell: Cow<'_, str>) -> Cow<'_, str> {
    if !cell.starts_with('\'') || !is_marked(&cell) {
        return cell;
    }
    match cell {
        Cow::Borrowed(text) => Cow::Borrowed(piece(text, 1, text.len())),
        Cow::Owned(text) => Cow::Owned(piece(&text, 1, text.len()).into()),
    }
}

/// Whether a cell is apostrophes and then what would begin a formula.
pub fn is_marked(cell: &str) -> bool {
    begins_a_formula(cell.trim_start_matches('\''))
}

/// Whether a spreadsheet might take a text for a formula: it begins with = + - @, their wide forms, a tab or a line
/// break, perhaps behind spaces.
pub fn begins_a_formula(text: &str) -> bool {
    let first = text.trim_start_matches(' ').chars().next();
    matches!(first, Some('=' | '+' | '-' | '@' | '\t' | '\r' | '\n' | '＝' | '＋' | '－' | '＠'))
}
