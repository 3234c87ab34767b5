//! A schedule as it comes in: bytes in pieces of any size, rows out, never more than one row held.

use alloc::string::String;
use alloc::vec::Vec;

use super::cells::cells;
use super::column::{Head, Means, Separator, at, of_cell};
use super::places::{Insert, Places};
use crate::input::text::Json;
use crate::input::{Fault, Problem, text};

/// Longest row.
pub const RECORD_BYTES_MAX: usize = 64_000;
/// How much of a row that is too long is kept.
const KEPT_BYTES: usize = 200;

/// One row of a schedule.
#[derive(Clone, PartialEq, Debug)]
pub struct Record {
    /// Its number among the rows below the head, from 1.
    pub number: u32,
    /// Its first line in the text, from 1.
    pub line: u32,
    /// The row as it stands there, without its line break; what is not text is replaced by �.
    pub text: String,
    /// What keeps it from being read.
    pub fault: Option<Fault>,
}

impl Record {
    /// A fault of a row that follows from the rows above it: its place stands twice, or cannot be where it is.
    pub fn fault_of_place(line: u32, place: &str, problem: Problem, allowed: &str) -> Fault {
        of_cell(line, "place", place, (problem, allowed))
    }
}

/// Reads a schedule in pieces.
///
/// ```
/// use steadfoot::hall::Schedule;
/// let mut schedule = Schedule::new();
/// schedule.push(b"place,type\nA1,fu");
/// assert!(schedule.record().unwrap().is_none());
/// schedule.push(b"ll\nA1,empty\n");
/// schedule.finish();
/// let first = schedule.record().unwrap().unwrap();
/// assert_eq!((first.text.as_str(), first.line), ("A1,full", 2));
/// // The same place stands twice.
/// assert!(schedule.record().unwrap().unwrap().fault.is_some());
/// assert!(schedule.record().unwrap().is_none());
/// ```
#[derive(Debug, Default)]
pub struct Schedule {
    bytes: Vec<u8>,
    /// Where the next row begins.
    from: usize,
    scan: Scan,
    /// The line that begins there.
    line: u32,
    number: u32,
    /// The line break that a carriage return began may go on.
    after_return: bool,
    /// The rest of a line that is too long is passed over.
    skips: bool,
    is_finished: bool,
    has_begun: bool,
    head: Option<(Head, String)>,
    places: Places,
}

/// How far the present row was looked at.
#[derive(Clone, Copy, Debug, Default)]
struct Scan {
    at: usize,
    quotes: Quotes,
}

#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
enum Quotes {
    /// At the beginning of a cell, where a quote would count.
    #[default]
    Before,
    /// Within quotes.
    Within,
    /// Behind a quote within quotes: the end, unless another follows.
    Closing,
    /// In a cell where quotes do not count.
    Plain,
}

/// A row of bytes.
struct Raw {
    line: u32,
    bytes: Vec<u8>,
    problem: Option<Problem>,
}

impl Schedule {
    /// Nothing was read yet.
    pub fn new() -> Schedule {
        Schedule { line: 1, ..Schedule::default() }
    }

    /// Takes the next piece. Ask for the rows of one piece before the next comes, so that little is held.
    pub fn push(&mut self, bytes: &[u8]) {
        if self.from > 0 {
            self.bytes.drain(..self.from);
            self.scan.at -= self.from;
            self.from = 0;
        }
        self.bytes.extend_from_slice(bytes);
    }

    /// Nothing more will come.
    pub fn finish(&mut self) {
        self.is_finished = true;
    }

    /// Whether [`Schedule::finish`] was called.
    pub fn is_finished(&self) -> bool {
        self.is_finished
    }

    /// The head, once its line was read.
    pub fn head(&self) -> Option<&Head> {
        self.head.as_ref().map(|(head, _)| head)
    }

    /// The first line, from which [`Head::of`] makes the same head elsewhere.
    pub fn head_line(&self) -> &str {
        self.head.as_ref().map_or("", |(_, line)| line)
    }

    /// The next row; none where more has to come first, or where everything was read.
    ///
    /// Errors: the head cannot be read, or the text is empty; then there are no rows.
    pub fn record(&mut self) -> Result<Option<Record>, Vec<Fault>> {
        loop {
            let Some(raw) = self.raw() else {
                if self.is_finished && self.head.is_none() {
                    return Err(alloc::vec![at(1, "", Problem::Missing, "a line with the names of the columns")]);
                }
                return Ok(None);
            };
            let is_text = core::str::from_utf8(&raw.bytes).is_ok();
            let text = String::from_utf8_lossy(&raw.bytes).into_owned();
            if is_blank(&text) && raw.problem.is_none() {
                continue;
            }
            if self.head.is_none() {
                if let Some(problem) = raw.problem {
                    return Err(alloc::vec![of_cell(raw.line, "", &text, (problem, ""))]);
                }
                if !is_text || text.contains('\0') {
                    return Err(alloc::vec![of_cell(raw.line, "", &text, (Problem::NotJson, "text in UTF-8"))]);
                }
                let head = Head::of(&text, raw.line)?;
                let is_lines = head.separator == Separator::JsonLines;
                self.head = Some((head, text.clone()));
                if is_lines {
                    return Ok(Some(self.told(raw, text, is_text)));
                }
                continue;
            }
            return Ok(Some(self.told(raw, text, is_text)));
        }
    }

    fn told(&mut self, raw: Raw, text: String, is_text: bool) -> Record {
        self.number += 1;
        let said = |problem, allowed| Some(of_cell(raw.line, "", &text, (problem, allowed)));
        let fault = match raw.problem {
            Some(Problem::TooLong) => said(Problem::TooLong, "at most 64 000 bytes a row"),
            Some(problem) => said(problem, ""),
            None if !is_text => said(Problem::NotJson, "text in UTF-8"),
            None => self.repeated(&text, raw.line),
        };
        Record { number: self.number, line: raw.line, text, fault }
    }

    /// A fault where the place of this row was met before.
    fn repeated(&mut self, row: &str, line: u32) -> Option<Fault> {
        let (head, _) = self.head.as_ref()?;
        let place = place_of(head, row)?;
        let place = place.trim();
        if place.is_empty() {
            return None;
        }
        match self.places.insert(place) {
            Insert::New => None,
            Insert::Known => Some(Record::fault_of_place(line, place, Problem::DuplicateName, "")),
            Insert::Full => Some(Record::fault_of_place(line, place, Problem::TooMany, "at most 1 000 000 places")),
        }
    }

    /// The bytes of the next row that is there as a whole.
    fn raw(&mut self) -> Option<Raw> {
        if !self.has_begun {
            // A byte order mark comes whole or not at all.
            if self.bytes.len() < 3 && !self.is_finished {
                return None;
            }
            self.has_begun = true;
            if self.bytes.starts_with(b"\xef\xbb\xbf") {
                self.begin_at(3);
            }
        }
        loop {
            if self.after_return {
                match self.bytes.get(self.from) {
                    Some(b'\n') => self.begin_at(self.from + 1),
                    None if !self.is_finished => return None,
                    _ => {}
                }
                self.after_return = false;
            }
            if self.skips {
                let rest = &self.bytes[self.from..];
                let end = rest.iter().position(|byte| matches!(byte, b'\n' | b'\r'));
                match end {
                    Some(end) => {
                        self.skips = false;
                        self.end_line(self.from + end);
                    }
                    None => {
                        self.begin_at(self.bytes.len());
                        return None;
                    }
                }
                continue;
            }
            if self.from == self.bytes.len() && self.is_finished {
                return None;
            }
            return match self.end_of_row() {
                Some(end) => Some(self.take(end)),
                None if self.bytes.len() - self.from > RECORD_BYTES_MAX => Some(self.refuse()),
                None if !self.is_finished => None,
                None if self.scan.quotes == Quotes::Within => Some(self.refuse()),
                None => Some(self.take(self.bytes.len())),
            };
        }
    }

    /// Where the row ends, if that is there and not too far; looks at no byte twice.
    fn end_of_row(&mut self) -> Option<usize> {
        let separator = self.head.as_ref().map(|(head, _)| head.separator);
        let is_lines = match separator {
            Some(separator) => separator == Separator::JsonLines,
            None => self.bytes[self.from..].iter().find(|byte| !byte.is_ascii_whitespace()) == Some(&b'{'),
        };
        let mark = separator.and_then(Separator::byte);
        let is_mark = |byte: u8| match mark {
            Some(mark) => byte == mark,
            None => matches!(byte, b',' | b';' | b'\t'),
        };
        // However much of the text is there already, a row ends here or is refused here.
        let furthest = self.bytes.len().min(self.from + RECORD_BYTES_MAX + 1);
        while self.scan.at < furthest {
            let byte = self.bytes[self.scan.at];
            let quotes = self.scan.quotes;
            if matches!(byte, b'\n' | b'\r') && quotes != Quotes::Within {
                return Some(self.scan.at);
            }
            self.scan.quotes = match (quotes, byte) {
                _ if is_lines => Quotes::Plain,
                (Quotes::Within, b'"') => Quotes::Closing,
                (Quotes::Within, _) => Quotes::Within,
                (Quotes::Before | Quotes::Closing, b'"') => Quotes::Within,
                _ if is_mark(byte) => Quotes::Before,
                _ => Quotes::Plain,
            };
            self.scan.at += 1;
        }
        None
    }

    /// Takes the row up to an end, and passes the line break behind it.
    fn take(&mut self, end: usize) -> Raw {
        let bytes = self.bytes[self.from..end].to_vec();
        let line = self.line;
        self.line += lines_in(&bytes);
        self.end_line(end);
        Raw { line, bytes, problem: None }
    }

    /// A row that does not end. Where a quote was never closed, only the line in which it began is lost, and what
    /// follows is read on; a line that is too long by itself is passed over.
    fn refuse(&mut self) -> Raw {
        let rest = &self.bytes[self.from..];
        let first = rest.iter().take(RECORD_BYTES_MAX).position(|byte| matches!(byte, b'\n' | b'\r'));
        if self.scan.quotes == Quotes::Within && (first.is_some() || rest.len() <= RECORD_BYTES_MAX) {
            let end = self.from + first.unwrap_or(rest.len());
            let raw = self.take(end);
            return Raw { problem: Some(Problem::LooseQuote), ..raw };
        }
        let bytes = rest[..KEPT_BYTES.min(rest.len())].to_vec();
        self.skips = true;
        Raw { line: self.line, bytes, problem: Some(Problem::TooLong) }
    }

    fn end_line(&mut self, end: usize) {
        if let Some(&byte) = self.bytes.get(end) {
            self.line += 1;
            self.after_return = byte == b'\r';
            self.begin_at(end + 1);
        } else {
            self.begin_at(end);
        }
    }

    fn begin_at(&mut self, from: usize) {
        self.from = from;
        self.scan = Scan { at: from, quotes: Quotes::Before };
    }
}

fn lines_in(bytes: &[u8]) -> u32 {
    let breaks = bytes.iter().enumerate().filter(|(place, byte)| match byte {
        b'\n' => *place == 0 || bytes[place - 1] != b'\r',
        b'\r' => true,
        _ => false,
    });
    breaks.count() as u32
}

/// Whether a row says nothing: spaces, or cells that are all empty.
fn is_blank(row: &str) -> bool {
    row.bytes().all(|byte| matches!(byte, b' ' | b',' | b';' | b'\t'))
}

/// What stands in the column `place`; none where the row cannot be read.
fn place_of(head: &Head, row: &str) -> Option<String> {
    if head.separator == Separator::JsonLines {
        let node = text::read(row).ok()?;
        let Json::Object(members) = &node.json else { return None };
        let member = members.iter().find(|member| member.key == "place")?;
        return match &member.node.json {
            Json::Text(place) => Some(place.as_ref().into()),
            Json::Number(_) => row.get(member.node.from..member.node.to).map(String::from),
            _ => None,
        };
    }
    let column = head.columns.iter().position(|column| column.means == Means::Place)?;
    cells(row, head.separator).ok()?.into_iter().nth(column).map(|cell| cell.into_owned())
}
