//! The text of a record: columns of time, horizontal and perhaps vertical acceleration, or a header with the time step
//! and then values.
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
///
/// A longer one shows nothing of an earthquake: such times are milliseconds, or rows that are counted.
const STEPS_S: [f64; 2] = [1e-5, RECORD_STEP_MAX_S];
/// The longest step of time.
pub const RECORD_STEP_MAX_S: f64 = 0.2;
/// Steps may differ by this part, for times are printed with few digits.
const UNEVEN: f64 = 0.1;
/// Most lines in front of the first number.
const HEADER_LINES_MAX: u32 = 200;
/// Most faults that are listed.
const FAULTS_MAX: usize = 200;

/// A record that was read, with its vertical part where the text has one.
#[derive(Clone, PartialEq, Debug)]
pub struct Recorded {
    /// Horizontal.
    pub horizontal: Record,
    /// Vertical, positive upwards, with the same steps.
    pub vertical: Option<Record>,
}

/// Reads the text of a record of one direction; a vertical one beside it is left out.
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
    read_records(text, form).map(|read| read.horizontal)
}

/// Reads the text of a record with its vertical part, which is a third column behind time and horizontal acceleration.
///
/// ```
/// use steadfoot::motion::{RecordForm, RecordUnit, read_records};
/// let form = RecordForm { unit: RecordUnit::G, step_s: None };
/// let read = read_records("0 0 0\n0.02 0.1 -0.05\n0.04 -0.2 0.1\n", &form).unwrap();
/// assert_eq!(read.vertical.unwrap().accelerations, [0.0, -0.05, 0.1]);
/// ```
pub fn read_records(text: &str, form: &RecordForm) -> Result<Recorded, Vec<Fault>> {
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
    /// How many of them may be written with commas for points.
    with_decimal_commas: usize,
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
                Row::Numbers { has_decimal_commas } => {
                    table.with_decimal_commas += usize::from(has_decimal_commas);
                    table.rows.push((begin, number));
                }
                Row::Words(_) if table.rows.is_empty() && number <= HEADER_LINES_MAX => {
                    table.values.truncate(begin);
                    table.header.take(line);
                }
                Row::Words(wrong) => {
                    table.values.truncate(begin);
                    let column = line.get(..wrong.at).unwrap_or("").chars().count() as u32 + 1;
                    faults.say(fault(number, column, wrong.problem, wrong.given, wrong.allowed));
                }
            }
            if table.values.len() > 3 * RECORD_VALUES_MAX {
                return Err(alloc::vec![too_many(number)]);
            }
        }
        if faults.list.is_empty() { Ok(table) } else { Err(faults.all()) }
    }

    fn record(&self, form: &RecordForm, faults: &mut Faults) -> Option<Recorded> {
        let width = self.width(0);
        let step_s = self.header.step_s.or(form.step_s);
        let is_timed = self.is_timed(width, step_s);
        let first_line = self.rows.first().map_or(1, |row| row.1);
        if !is_timed && step_s.is_some() && self.rows.len() > 2 && self.with_decimal_commas == self.rows.len() {
            faults.say(fault(first_line, 1, Problem::NotANumber, "", "a point before the decimals, not a comma"));
            return None;
        }
        let said_s = step_s;
        let (step_s, mut accelerations) = match step_s {
            _ if is_timed && width > 3 => {
                faults.say(fault(first_line, 1, Problem::WrongCount, "", "time and one or two accelerations"));
                return None;
            }
            _ if is_timed => self.columns(width, faults)?,
            Some(step_s) => (step_s, self.values.clone()),
            None => {
                let (problem, allowed) = match width {
                    0 => (Problem::Missing, "rows of time and acceleration"),
                    1 => (
                        Problem::Missing,
                        "a time step: in a column before, as DT= in a header, or given beside the text",
                    ),
                    2 | 3 => return self.columns(width, faults).map(|_| None)?,
                    _ => (Problem::WrongCount, "two or three columns, or a header with DT="),
                };
                faults.say(fault(first_line, 1, problem, "", allowed));
                return None;
            }
        };
        let wide = if is_timed { width - 1 } else { 1 };
        if accelerations.len() > wide * RECORD_VALUES_MAX {
            faults.list = alloc::vec![too_many(self.rows.last().map_or(1, |row| row.1))];
            return None;
        }
        if said_s.is_some_and(|said_s| !((said_s - step_s).abs() <= UNEVEN * step_s)) {
            faults.say(fault(first_line, 1, Problem::UnevenSteps, "", "the time step that is said beside the times"));
        }
        let counted = accelerations.len() / wide;
        if let Some(count) = self.header.count.filter(|&count| count != counted) {
            let (mut given, mut allowed) = (String::new(), String::new());
            push_whole(&mut given, counted);
            push_whole(&mut allowed, count);
            allowed.push_str(" values, as NPTS says");
            faults.say(fault(self.rows.last().map_or(1, |row| row.1), 1, Problem::WrongCount, &given, &allowed));
        }
        if accelerations.len() < 3 * wide {
            faults.say(fault(1, 1, Problem::WrongCount, "", "at least 3 values"));
        }
        if !(STEPS_S[0]..=STEPS_S[1]).contains(&step_s) {
            faults.say(fault(1, 1, Problem::UnevenSteps, "", "a time step of 0.00001 to 0.2 s"));
        }
        let unit = form.unit.in_g();
        accelerations.iter_mut().for_each(|value| *value *= unit);
        if let Some(place) = accelerations.iter().position(|value| value.abs() > PEAK_MAX) {
            let place = if is_timed { place / wide * width } else { place };
            let row = self.rows.partition_point(|row| row.0 <= place).max(1) - 1;
            faults.say(fault(self.rows[row].1, 1, Problem::UnlikelyPeak, "", "at most 5 g: is the unit right?"));
        }
        let part = |first: usize| Record {
            step_s,
            accelerations: accelerations.iter().copied().skip(first).step_by(wide).collect(),
        };
        Some(Recorded { horizontal: part(0), vertical: (wide > 1).then(|| part(1)) })
    }

    /// How many numbers a row has.
    fn width(&self, row: usize) -> usize {
        let Some(&(begin, _)) = self.rows.get(row) else { return 0 };
        self.rows.get(row + 1).map_or(self.values.len(), |next| next.0) - begin
    }

    /// Whether the first column is time: it only rises, or only falls, which is a fault of its own.
    ///
    /// Rows that a header counts, all of their values together, are one motion. Few rows rise by chance: where a step is
    /// said they must be even or many.
    fn is_timed(&self, width: usize, said_s: Option<f64>) -> bool {
        if self.rows.len() < 2 || width < 2 || self.header.count == Some(self.values.len()) {
            return false;
        }
        let Some(said_s) = said_s else { return width < 4 && self.rises_at_first() };
        let time = |place: usize| self.values[self.rows[place].0];
        let (first, whole) = (time(1) - time(0), time(self.rows.len() - 1) - time(0));
        let mut is_even = true;
        for place in 1..self.rows.len() {
            let step = time(place) - time(place - 1);
            // Times printed with too few digits stand still now and then.
            if step * whole < 0.0 || whole == 0.0 {
                return false;
            }
            is_even &= (step - first).abs() <= UNEVEN * first.abs();
        }
        let is_as_said = (first - said_s).abs() < UNEVEN * said_s;
        width < 4 && (is_as_said || is_even && self.rows.len() > 2) || self.rows.len() > 7
    }

    /// Whether the first column rises from its first rows on.
    fn rises_at_first(&self) -> bool {
        let firsts: Vec<f64> = self.rows.iter().take(4).map(|row| self.values[row.0]).collect();
        firsts.windows(2).all(|pair| pair[1] > pair[0])
    }

    /// The step, and the accelerations of a row one after the other.
    fn columns(&self, width: usize, faults: &mut Faults) -> Option<(f64, Vec<f64>)> {
        let time = |row: usize| self.values[self.rows[row].0];
        let mut accelerations = Vec::with_capacity(self.rows.len());
        let step_s = if self.rows.len() > 1 { time(1) - time(0) } else { 0.0 };
        for (place, &(begin, line)) in self.rows.iter().enumerate() {
            if self.width(place) != width {
                let allowed = if width == 2 { "time and acceleration" } else { "time and two accelerations" };
                faults.say(fault(line, 1, Problem::WrongCount, "", allowed));
                continue;
            }
            let passed_s = if place > 0 { time(place) - time(place - 1) } else { step_s };
            if !((passed_s - step_s).abs() <= UNEVEN * step_s.abs()) || step_s <= 0.0 {
                faults.say(fault(line, 1, Problem::UnevenSteps, "", "the time of the row before, and one step"));
            }
            accelerations.extend_from_slice(&self.values[begin + 1..begin + width]);
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
