//! The text of a record: two columns of time and acceleration, or a header with the time step and then values.
//!
//! A text never says its unit in a way that can be trusted, so the unit is asked for. Everything odd is a fault with its
//! line: a gap, a row with another number of columns, a comma for a point, something that is no number, a peak that
//! hints at another unit.

use alloc::string::String;
use alloc::vec::Vec;

use super::record::Record;
use super::record_row::{Header, Row, row};
use crate::calc::unit::{G_N_PER_KG, INCH_MM};
use crate::input::fault::push_whole;
use crate::input::{Fault, Problem};

/// The unit in which a text writes accelerations.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum RecordUnit {
    /// Multiples of g.
    G,
    /// Metres per second squared.
    MetresPerS2,
    /// Centimetres per second squared, gal.
    Gal,
    /// Millimetres per second squared.
    MillimetresPerS2,
    /// Inches per second squared.
    InchesPerS2,
}

impl RecordUnit {
    /// All of them, in the order of [`RecordUnit::WORDS`].
    pub const ALL: [RecordUnit; 5] = [
        RecordUnit::G,
        RecordUnit::MetresPerS2,
        RecordUnit::Gal,
        RecordUnit::MillimetresPerS2,
        RecordUnit::InchesPerS2,
    ];
    /// Their words in a project file.
    pub const WORDS: &'static [&'static str] = &["g", "m-per-s2", "cm-per-s2", "mm-per-s2", "in-per-s2"];

    /// One of the unit in multiples of g.
    pub fn in_g(self) -> f64 {
        match self {
            RecordUnit::G => 1.0,
            RecordUnit::MetresPerS2 => 1.0 / G_N_PER_KG,
            RecordUnit::Gal => 0.01 / G_N_PER_KG,
            RecordUnit::MillimetresPerS2 => 0.001 / G_N_PER_KG,
            RecordUnit::InchesPerS2 => INCH_MM * 0.001 / G_N_PER_KG,
        }
    }
}

/// What has to be said beside a text.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct RecordForm {
    /// The unit of its accelerations.
    pub unit: RecordUnit,
    /// The time from one value to the next, where the text does not say it.
    pub step_s: Option<f64>,
}

/// Most values of a record.
pub const RECORD_VALUES_MAX: usize = 200_000;
/// Longest text of a record.
pub const RECORD_BYTES_MAX: usize = 8_000_000;
/// A higher peak than this was hardly ever recorded; another unit is likelier.
pub const PEAK_MAX: f64 = 5.0;
/// Shortest and longest step of time.
const STEPS_S: [f64; 2] = [1e-5, 1.0];
/// Steps may differ by this part, for times are printed with few digits.
const UNEVEN: f64 = 0.1;
/// Most lines in front of the first number.
const HEADER_LINES_MAX: u32 = 200;
/// Most faults that are listed.
const FAULTS_MAX: usize = 200;

/// Reads the text of a record.
///
/// ```
/// use steadfoot::motion::{RecordForm, RecordUnit, read_record};
/// let form = RecordForm { unit: RecordUnit::Gal, step_s: None };
/// let record = read_record("time,acc\n0,0\n0.02,98.0665\n0.04,-49\n", &form).unwrap();
/// assert_eq!(record.step_s, 0.02);
/// assert!((record.accelerations[1] - 0.1).abs() < 1e-12);
/// let faults = read_record("0 0\n0.02 1\n0.06 2\n0.08 1\n", &form).unwrap_err();
/// assert_eq!(faults[0].line, 3);
/// ```
pub fn read_record(text: &str, form: &RecordForm) -> Result<Record, Vec<Fault>> {
    if text.len() > RECORD_BYTES_MAX {
        return Err(alloc::vec![fault(1, 1, Problem::TooLong, "", "at most 8 000 000 bytes")]);
    }
    let table = Table::read(text)?;
    let mut faults = Faults::default();
    let record = table.record(form, &mut faults);
    match record {
        Some(record) if faults.list.is_empty() => Ok(record),
        _ => Err(faults.all()),
    }
}

/// All numbers of a text, and which row and line each belongs to.
#[derive(Default)]
struct Table {
    header: Header,
    values: Vec<f64>,
    /// Where in the values each row begins, and its line in the text.
    rows: Vec<(usize, u32)>,
}

impl Table {
    fn read(text: &str) -> Result<Table, Vec<Fault>> {
        let mut table = Table::default();
        let mut faults = Faults::default();
        for (place, line) in text.lines().enumerate() {
            let number = place as u32 + 1;
            let begin = table.values.len();
            match row(line, &mut table.values) {
                Row::Empty => {}
                Row::Numbers => table.rows.push((begin, number)),
                Row::Words(_) if table.rows.is_empty() && number <= HEADER_LINES_MAX => {
                    table.values.truncate(begin);
                    table.header.take(line);
                }
                Row::Words(wrong) => {
                    table.values.truncate(begin);
                    let column = line[..wrong.at].chars().count() as u32 + 1;
                    faults.say(fault(number, column, wrong.problem, wrong.given, wrong.allowed));
                }
            }
            if table.values.len() > 2 * RECORD_VALUES_MAX {
                return Err(alloc::vec![too_many(number)]);
            }
        }
        if faults.list.is_empty() { Ok(table) } else { Err(faults.all()) }
    }

    fn record(&self, form: &RecordForm, faults: &mut Faults) -> Option<Record> {
        let width = self.width(0);
        let is_timed = width == 2 && self.looks_timed();
        let step_s = self.header.step_s.or(form.step_s);
        let (step_s, mut accelerations) = match step_s {
            _ if is_timed => self.two_columns(faults)?,
            Some(step_s) => (step_s, self.values.clone()),
            None => {
                let line = self.rows.first().map_or(1, |row| row.1);
                let (problem, allowed) = match width {
                    0 => (Problem::Missing, "rows of time and acceleration"),
                    1 => (
                        Problem::Missing,
                        "a time step: in a column before, as DT= in a header, or given beside the text",
                    ),
                    2 => return self.two_columns(faults).map(|_| None)?,
                    _ => (Problem::WrongCount, "two columns, or a header with DT="),
                };
                faults.say(fault(line, 1, problem, "", allowed));
                return None;
            }
        };
        if accelerations.len() > RECORD_VALUES_MAX {
            faults.list = alloc::vec![too_many(self.rows.last().map_or(1, |row| row.1))];
            return None;
        }
        if let Some(count) = self.header.count.filter(|&count| count != accelerations.len() && !is_timed) {
            let (mut given, mut allowed) = (String::new(), String::new());
            push_whole(&mut given, accelerations.len());
            push_whole(&mut allowed, count);
            allowed.push_str(" values, as NPTS says");
            faults.say(fault(self.rows.last().map_or(1, |row| row.1), 1, Problem::WrongCount, &given, &allowed));
        }
        if accelerations.len() < 3 {
            faults.say(fault(1, 1, Problem::WrongCount, "", "at least 3 values"));
        }
        if !(STEPS_S[0]..=STEPS_S[1]).contains(&step_s) {
            faults.say(fault(1, 1, Problem::UnevenSteps, "", "a time step of 0.00001 to 1 s"));
        }
        let unit = form.unit.in_g();
        accelerations.iter_mut().for_each(|value| *value *= unit);
        if let Some(place) = accelerations.iter().position(|value| value.abs() > PEAK_MAX) {
            let wide = if is_timed { 2 * place } else { place };
            let row = self.rows.partition_point(|row| row.0 <= wide).max(1) - 1;
            faults.say(fault(self.rows[row].1, 1, Problem::UnlikelyPeak, "", "at most 5 g: is the unit right?"));
        }
        Some(Record { step_s, accelerations })
    }

    /// How many numbers a row has.
    fn width(&self, row: usize) -> usize {
        let Some(&(begin, _)) = self.rows.get(row) else { return 0 };
        self.rows.get(row + 1).map_or(self.values.len(), |next| next.0) - begin
    }

    /// Whether the first of two columns rises as time does; without a step from elsewhere it has to be time.
    fn looks_timed(&self) -> bool {
        let firsts: Vec<f64> = self.rows.iter().take(4).map(|row| self.values[row.0]).collect();
        let rises = firsts.windows(2).all(|pair| pair[1] > pair[0]);
        match self.header.step_s {
            Some(step_s) => rises && firsts.windows(2).all(|pair| (pair[1] - pair[0] - step_s).abs() < UNEVEN * step_s),
            None => rises && firsts.len() > 1,
        }
    }

    fn two_columns(&self, faults: &mut Faults) -> Option<(f64, Vec<f64>)> {
        let time = |row: usize| self.values[self.rows[row].0];
        let mut accelerations = Vec::with_capacity(self.rows.len());
        let step_s = if self.rows.len() > 1 { time(1) - time(0) } else { 0.0 };
        for (place, &(begin, line)) in self.rows.iter().enumerate() {
            if self.width(place) != 2 {
                faults.say(fault(line, 1, Problem::WrongCount, "", "time and acceleration"));
                continue;
            }
            let passed_s = if place > 0 { time(place) - time(place - 1) } else { step_s };
            if !((passed_s - step_s).abs() <= UNEVEN * step_s.abs()) || step_s <= 0.0 {
                faults.say(fault(line, 1, Problem::UnevenSteps, "", "the time of the row before, and one step"));
            }
            accelerations.push(self.values[begin + 1]);
        }
        if !faults.list.is_empty() {
            return None;
        }
        // Times printed with few digits make single steps uneven; the mean is as good as the print allows.
        let last = self.rows.len().max(2) - 1;
        Some(((time(last.min(self.rows.len() - 1)) - time(0)) / last as f64, accelerations))
    }
}

/// Faults with their count.
#[derive(Default)]
struct Faults {
    list: Vec<Fault>,
    more: usize,
}

impl Faults {
    fn say(&mut self, fault: Fault) {
        if self.list.len() < FAULTS_MAX { self.list.push(fault) } else { self.more += 1 }
    }

    fn all(mut self) -> Vec<Fault> {
        if self.more > 0 {
            let mut given = String::new();
            push_whole(&mut given, self.more);
            let line = self.list.last().map_or(1, |fault| fault.line);
            self.list.push(fault(line, 1, Problem::MoreFaults, &given, ""));
        }
        self.list
    }
}

fn fault(line: u32, column: u32, problem: Problem, given: &str, allowed: &str) -> Fault {
    let given = given.chars().filter(|letter| !letter.is_control()).take(60).collect();
    Fault { path: String::new(), problem, given, allowed: allowed.into(), line, column }
}

fn too_many(line: u32) -> Fault {
    fault(line, 1, Problem::TooMany, "", "at most 200 000 values")
}
