//! A hall full for the page: rows out of a schedule here, what comes of them in workers.

use serde::Serialize;
use steadfoot::hall::{self, Hall, HallPlan, Head, Record, Row, Schedule};
use steadfoot::input::Fault;
use steadfoot::input::fault::PROBLEMS;
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

use crate::{FaultTold, plain, told};

/// What a hall file names, or what is wrong with it.
#[derive(Serialize)]
#[serde(rename_all = "lowercase")]
enum HallTold<'h> {
    Hall { title: &'h str, types: Vec<&'h str>, outline: &'h [[f64; 2]] },
    Faults(Vec<FaultTold>),
}

/// A row of the schedule. `refused` is what came of it where it cannot be read as a row at all; what else follows from the
/// rows above it goes with it to whoever assesses it: `mark` is the place of the problem, from 1, or 0 for none.
#[derive(Serialize)]
struct RecordTold {
    number: u32,
    line: u32,
    text: String,
    mark: u8,
    place: String,
    allowed: String,
    refused: Option<RowTold>,
}

/// What came of a row, with its faults as sentences, and the two pieces of its line in a file of results that stand before
/// and behind the reason why it is not covered.
#[derive(Serialize)]
struct RowTold {
    row: Row,
    sentences: Vec<String>,
    written: [String; 2],
}

/// Reads the pieces of a schedule.
#[wasm_bindgen]
pub struct HallReader {
    hall: Hall,
    schedule: Schedule,
    plan: HallPlan,
    faults: Vec<Fault>,
}

/// What a hall file names: `{ hall: { title, types, outline } }` or `{ faults }`.
#[wasm_bindgen]
pub fn hall(text: &str) -> JsValue {
    match Hall::read(text) {
        Ok(hall) => {
            plain(&HallTold::Hall { title: &hall.title, types: hall.type_names().collect(), outline: &hall.outline_mm })
        }
        Err(faults) => plain(&HallTold::Faults(faults.into_iter().map(told).collect())),
    }
}

#[wasm_bindgen]
impl HallReader {
    /// Begins a schedule for a hall file without faults; none with them.
    pub fn begin(hall: &str) -> Option<HallReader> {
        let hall = Hall::read(hall).ok()?;
        Some(HallReader { hall, schedule: Schedule::new(), plan: HallPlan::new(), faults: Vec::new() })
    }

    /// Takes the next piece of the schedule.
    pub fn push(&mut self, bytes: &[u8]) {
        self.schedule.push(bytes);
    }

    /// Nothing more will come.
    pub fn finish(&mut self) {
        self.schedule.finish();
    }

    /// The next rows, so many at most; fewer where more has to come first.
    pub fn records(&mut self, most: usize) -> JsValue {
        let mut records = Vec::new();
        while records.len() < most && self.faults.is_empty() {
            match self.schedule.record() {
                Ok(Some(record)) => records.push(self.told(record)),
                Ok(None) => break,
                Err(faults) => self.faults = faults,
            }
        }
        plain(&records)
    }

    /// What is wrong with the schedule as a whole.
    pub fn faults(&self) -> JsValue {
        let told = |fault: &Fault| told(fault.clone());
        plain(&self.faults.iter().map(told).collect::<Vec<_>>())
    }

    /// The first line of the schedule, which workers need.
    pub fn head_line(&self) -> String {
        self.schedule.head_line().into()
    }

    /// The head of a file of results.
    pub fn result_head(&self) -> String {
        self.schedule.head().map_or(String::new(), hall::result_head)
    }

    /// The project that a row makes.
    pub fn project_text(&self, number: u32, line: u32, text: String) -> Option<String> {
        self.hall.project_text(self.schedule.head()?, &Record { number, line, text, fault: None })
    }

    fn told(&mut self, mut record: Record) -> RecordTold {
        if let Some(head) = self.schedule.head() {
            self.plan.stand(&self.hall, head, &mut record);
        }
        let (mark, is_refused) = match &record.fault {
            None => (0, false),
            Some(fault) if fault.path.is_empty() => (0, true),
            Some(fault) => (fault.problem as u8 + 1, false),
        };
        let of_fault =
            |text: fn(&Fault) -> &String| record.fault.as_ref().map_or(String::new(), |fault| text(fault).clone());
        let (place, allowed) = (of_fault(|fault| &fault.given), of_fault(|fault| &fault.allowed));
        let head = self.schedule.head().filter(|_| is_refused);
        let refused = head.map(|head| row_told(head, self.hall.row(head, &record)));
        RecordTold { number: record.number, line: record.line, text: record.text, mark, place, allowed, refused }
    }
}

/// Assesses the rows of one schedule.
#[wasm_bindgen]
pub struct HallRows {
    hall: Hall,
    head: Head,
}

#[wasm_bindgen]
impl HallRows {
    /// For a hall file and the first line of a schedule, both without faults; none with them.
    pub fn begin(hall: &str, head_line: &str) -> Option<HallRows> {
        Some(HallRows { hall: Hall::read(hall).ok()?, head: Head::of(head_line, 1).ok()? })
    }

    /// What comes of one row.
    pub fn row(&self, number: u32, line: u32, text: String, mark: u8, place: &str, allowed: &str) -> JsValue {
        let problem = usize::from(mark).checked_sub(1).and_then(|problem| PROBLEMS.get(problem));
        let fault = problem.map(|&problem| Record::fault_of_place(line, place, problem, allowed));
        let record = Record { number, line, text, fault };
        plain(&row_told(&self.head, self.hall.row(&self.head, &record)))
    }
}

/// Rows of the built-in cabinet as a hash, without any JavaScript value.
#[wasm_bindgen]
pub fn hall_check() -> u32 {
    hall::hall_check()
}

/// Cells with commas between them, none of them a formula.
#[wasm_bindgen]
pub fn csv_line(cells: Vec<String>) -> String {
    hall::line(cells.iter().map(String::as_str))
}

fn row_told(head: &Head, row: Row) -> RowTold {
    let sentences = row.faults.iter().map(Fault::sentence).collect();
    RowTold { sentences, written: hall::result_parts(head, &row), row }
}
