//! One row of a schedule: made into a project, read, assessed.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::column::{Head, of_cell};
use super::draft::Draft;
use super::file::Hall;
use super::schedule::Record;
use crate::calc::{Role, Status};
use crate::input::open::Open;
use crate::input::reader::cut;
use crate::input::{Fault, LimitUnits, Problem};
use crate::project::{self, HASH_START, bench::Bench, built_in, hashed, quick_told};
use crate::report::outcome::Verdict;

/// Most faults that a row tells; the others are counted.
const FAULTS_MAX: usize = 10;

/// What came of a row.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Row {
    /// Its number among the rows below the head, from 1.
    pub number: u32,
    /// Its first line in the text, from 1.
    pub line: u32,
    /// The row as it stands in the schedule.
    pub text: String,
    /// The name of the place.
    pub place: String,
    /// The name of the type.
    pub type_name: String,
    /// What is aboard, as the row says it; empty where it says nothing.
    pub load_out: String,
    /// The name of the floor.
    pub floor: String,
    /// The name of the storey.
    pub storey: String,
    /// Where it stands; none where the row does not say.
    pub standing: Option<Standing>,
    /// What was found; none where the row has faults.
    pub outcome: Option<RowOutcome>,
    /// What is wrong with the row; the paths of the first are names of columns, or empty for the row as a whole, those of
    /// the others lead into the project that it makes.
    pub faults: Vec<Fault>,
}

/// Where a cabinet stands in the plan of the hall.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Standing {
    /// The middle of its base.
    pub at_mm: [f64; 2],
    /// How far it is turned from having its front towards -y, against the clock as seen from above.
    pub turn_deg: f64,
    /// The corners of its base, the front left one first, against the clock; none where its size is not known.
    pub corners_mm: Option<[[f64; 2]; 4]>,
}

/// What was found of a row without faults.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct RowOutcome {
    /// The answer in one word.
    pub verdict: Verdict,
    /// Id of the check that governs.
    pub governs: Option<&'static str>,
    /// State and subject of it.
    pub of: String,
    /// Its utilisation; absent where it is not a number.
    pub utilisation: Option<f64>,
    /// Id of the first required check that is not covered.
    pub not_covered: Option<&'static str>,
    /// Row of the reason why it is not covered.
    pub reason: Option<u16>,
    /// Mass of the heaviest state.
    pub mass_kg: f64,
    /// The fingerprint of the project that the row makes.
    pub fingerprint: String,
}

impl Hall {
    /// What comes of a row: the project that it makes is read and assessed like any other.
    ///
    /// ```
    /// use steadfoot::hall::{Hall, Head, Record};
    /// let hall = Hall::read(include_str!("../../../demo-configs/02-full.json")).unwrap();
    /// let head = Head::of("place,anchorage.embedment_mm", 1).unwrap();
    /// let record = |text: &str| Record { number: 1, line: 2, text: text.into(), fault: None };
    /// let row = hall.row(&head, &record("A1,140"));
    /// let alone = steadfoot::project::read(&hall.project_text(&head, &record("A1,140")).unwrap(), steadfoot::calc::System::Si);
    /// assert_eq!(row.outcome.unwrap().governs, steadfoot::project::quick(&alone.unwrap()).1);
    /// let row = hall.row(&head, &record("A2,deep"));
    /// assert_eq!(row.faults[0].path, "anchorage.embedment_mm");
    /// ```
    pub fn row(&self, head: &Head, record: &Record) -> Row {
        let (mut row, text) = self.made(head, record);
        let Some(text) = text else { return row };
        match project::read(&text, LimitUnits::File) {
            Ok(project) if project.open.is_empty() => row.outcome = Some(assessed(&project)),
            // What stands in for an unknown is no answer for all that it may be.
            Ok(project) => {
                let open = |open: &Open| of_cell(record.line, &open.path, "", (Problem::CannotBeOpen, "a value"));
                row.faults = few(project.open.iter().map(open).collect());
            }
            Err(faults) => {
                let place = |fault| Fault { line: record.line, column: 1, ..fault };
                row.faults = few(faults.into_iter().map(place).collect());
            }
        }
        row
    }

    /// The text of the project that a row makes; none where the row itself has a fault.
    pub fn project_text(&self, head: &Head, record: &Record) -> Option<String> {
        self.made(head, record).1
    }

    fn made(&self, head: &Head, record: &Record) -> (Row, Option<String>) {
        let mut draft = Draft::of(head, record);
        let tree = draft.tree(self);
        if let Some(tree) = &tree {
            draft.stand(tree);
        }
        let faults = core::mem::take(&mut draft.row.faults);
        let is_sound = faults.is_empty();
        let row = Row { faults: few(faults), ..draft.row };
        let text = tree.filter(|_| is_sound).map(|tree| {
            let mut text = String::new();
            tree.write(&mut text);
            text
        });
        (row, text)
    }
}

fn few(mut faults: Vec<Fault>) -> Vec<Fault> {
    if faults.len() > FAULTS_MAX {
        let more = faults.split_off(FAULTS_MAX);
        let mut given = String::new();
        crate::input::fault::push_whole(&mut given, more.len());
        let last =
            Fault { path: String::new(), problem: Problem::MoreFaults, given, allowed: String::new(), ..more[0] };
        faults.push(last);
    }
    faults.iter_mut().for_each(|fault| fault.given = cut(&fault.given));
    faults
}

fn assessed(project: &project::Project) -> RowOutcome {
    let mut bench = Bench::new(project);
    let quick = quick_told(&mut bench);
    let governing = quick.governing();
    let uncovered =
        quick.checks.iter().find(|check| check.role == Role::Required && check.status == Status::NotCovered);
    RowOutcome {
        verdict: quick.verdict,
        governs: governing.map(|check| check.id),
        of: governing.map_or(String::new(), |check| check.of.clone()),
        utilisation: governing.and_then(|check| check.utilisation),
        not_covered: uncovered.map(|check| check.id),
        reason: uncovered.and_then(|check| check.reason),
        mass_kg: bench.loads.iter().fold(0.0, |most, load| if load.mass_kg > most { load.mass_kg } else { most }),
        fingerprint: project.fingerprint.clone(),
    }
}

/// A portion of a schedule of the built-in cabinet, anchored deeper from row to row, as a hash; the same on every target.
///
/// ```
/// assert_ne!(steadfoot::hall::hall_check(), 0);
/// ```
pub fn hall_check() -> u32 {
    let hall = built_in().and_then(|project| Hall::read(&project.source).ok());
    let Some((hall, head)) = hall.zip(Head::of("place,anchorage.embedment_mm", 1).ok()) else { return 0 };
    let rows = ["a,80", "b,100", "c,125", "d,140"].into_iter().zip(1..);
    rows.fold(HASH_START, |hash, (text, number)| {
        let row = hall.row(&head, &Record { number, line: number + 1, text: text.into(), fault: None });
        hashed(hash, row.outcome.and_then(|outcome| outcome.utilisation).unwrap_or(f64::NAN))
    })
}
