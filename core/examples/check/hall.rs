//! A hall full: a schedule of many cabinets as a stream, over all cores, in the order of the schedule.
//!
//! One thread reads rows and deals them out in small batches, one batch to each worker in turn; results are collected in
//! the same turn. Every queue holds a few batches, so memory does not grow with the schedule.

use std::fmt::Write as _;
use std::io::{Read, Write};
use std::process::ExitCode;
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};

use serde_json::json;
use steadfoot::hall::{Hall, HallPlan, Head, Record, Row, RowWords, Schedule, result_head, result_line};
use steadfoot::input::Fault;
use steadfoot::report::cautions::CAUTIONS;
use steadfoot::report::text_tables::text_of_code;

/// Rows that travel together.
const BATCH_ROWS: usize = 32;
/// Batches that wait before and behind each worker.
const QUEUE_BATCHES: usize = 4;
const PIECE_BYTES: usize = 64 * 1024;

/// What is asked for.
pub struct Wish<'a> {
    /// The hall file, or a project file.
    pub hall: &'a str,
    /// The schedule; `-` is standard input.
    pub schedule: &'a str,
    /// Results as CSV; otherwise one JSON object a line.
    pub is_csv: bool,
    /// How many threads assess; none for one a core.
    pub threads: Option<usize>,
}

/// Writes the results to standard output. 0: every row was assessed; 1: some have faults; 2: nothing could be read.
pub fn hall(wish: &Wish) -> ExitCode {
    match run(wish) {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(Trouble::Faults(name, faults)) => {
            faults.iter().for_each(|fault| eprintln!("{name}: {}", fault.sentence()));
            ExitCode::FAILURE
        }
        Err(Trouble::Io(error)) => {
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}

enum Trouble {
    Faults(String, Vec<Fault>),
    Io(String),
}

type Batch = Vec<Record>;
/// The lines of a batch and whether none of its rows has a fault.
type Told = (String, bool);

fn run(wish: &Wish) -> Result<bool, Trouble> {
    let text = std::fs::read_to_string(wish.hall).map_err(|error| Trouble::Io(format!("{}: {error}", wish.hall)))?;
    let hall = Hall::read(&text).map_err(|faults| Trouble::Faults(wish.hall.into(), faults))?;
    let mut source: Box<dyn Read + Send> = match wish.schedule {
        "-" => Box::new(std::io::stdin()),
        file => Box::new(std::fs::File::open(file).map_err(|error| Trouble::Io(format!("{file}: {error}")))?),
    };
    let (schedule, plan) = (Schedule::new(), HallPlan::new());
    let mut reading = Reading { hall: &hall, schedule, plan, source: &mut *source, name: wish.schedule };
    // The first rows come before the workers start, since they need the head.
    let first = reading.batch()?;
    let Some(head) = reading.schedule.head().cloned() else { return Ok(true) };
    let cores = std::thread::available_parallelism().map_or(1, |count| count.get());
    let count = wish.threads.unwrap_or(cores).max(1);
    let mut output = std::io::BufWriter::new(std::io::stdout().lock());
    let broken = |error: std::io::Error| Trouble::Io(error.to_string());
    writeln!(output, "{}", preface(wish, &head)).map_err(broken)?;
    std::thread::scope(|scope| {
        let (mut to_workers, mut from_workers) = (Vec::new(), Vec::new());
        for _ in 0..count {
            let (sender, batches) = sync_channel::<Batch>(QUEUE_BATCHES);
            let (results, receiver) = sync_channel::<Told>(QUEUE_BATCHES);
            to_workers.push(sender);
            from_workers.push(receiver);
            let (hall, head) = (&hall, &head);
            scope.spawn(move || work(&batches, &results, |record| line(wish.is_csv, head, &hall.row(head, record))));
        }
        let dealer = scope.spawn(move || deal(first, &mut reading, &to_workers));
        let mut all_sound = true;
        // A worker whose turn has nothing more to come has ended, and so have all behind it.
        'turns: loop {
            for receiver in &from_workers {
                let Ok((lines, is_sound)) = receiver.recv() else { break 'turns };
                all_sound &= is_sound;
                output.write_all(lines.as_bytes()).map_err(broken)?;
            }
        }
        output.flush().map_err(broken)?;
        dealer.join().unwrap_or_else(|_| Err(Trouble::Io("reading the schedule stopped".into())))?;
        Ok(all_sound)
    })
}

fn deal(first: Batch, reading: &mut Reading, to_workers: &[SyncSender<Batch>]) -> Result<(), Trouble> {
    let mut batch = first;
    let mut turn = 0;
    while !batch.is_empty() {
        if to_workers[turn].send(batch).is_err() {
            return Ok(());
        }
        turn = (turn + 1) % to_workers.len();
        batch = reading.batch()?;
    }
    Ok(())
}

fn work(batches: &Receiver<Batch>, results: &SyncSender<Told>, told: impl Fn(&Record) -> (String, bool)) {
    while let Ok(batch) = batches.recv() {
        let mut lines = String::new();
        let mut is_sound = true;
        for record in &batch {
            let (line, is_line_sound) = told(record);
            let _ = writeln!(lines, "{line}");
            is_sound &= is_line_sound;
        }
        if results.send((lines, is_sound)).is_err() {
            return;
        }
    }
}

/// Rows out of a file, piece by piece.
struct Reading<'r> {
    hall: &'r Hall,
    schedule: Schedule,
    plan: HallPlan,
    source: &'r mut (dyn Read + Send),
    name: &'r str,
}

impl Reading<'_> {
    /// The next rows; none at the end.
    fn batch(&mut self) -> Result<Batch, Trouble> {
        let mut batch = Vec::new();
        let mut piece = vec![0; PIECE_BYTES];
        while batch.len() < BATCH_ROWS {
            let record = self.schedule.record().map_err(|faults| Trouble::Faults(self.name.into(), faults))?;
            if let Some(mut record) = record {
                if let Some(head) = self.schedule.head() {
                    self.plan.stand(self.hall, head, &mut record);
                }
                batch.push(record);
                continue;
            }
            if self.schedule.is_finished() {
                break;
            }
            match self.source.read(&mut piece) {
                Ok(0) => self.schedule.finish(),
                Ok(count) => self.schedule.push(&piece[..count]),
                Err(error) => return Err(Trouble::Io(format!("{}: {error}", self.name))),
            }
        }
        Ok(batch)
    }
}

/// The first line of the results.
fn preface(wish: &Wish, head: &Head) -> String {
    match wish.is_csv {
        true => result_head(head),
        false => json!({ "engine": steadfoot::VERSION, "cautions": CAUTIONS }).to_string(),
    }
}

fn line(is_csv: bool, head: &Head, row: &Row) -> (String, bool) {
    let reason = row.outcome.as_ref().and_then(|found| text_of_code(found.reason?)).map_or("", |text| text.what);
    let caution = if row.number == 1 { CAUTIONS.join(" ") } else { String::new() };
    let text = match is_csv {
        true => result_line(head, row, RowWords { reason, caution: &caution }),
        false => object(row, reason).to_string(),
    };
    (text, row.faults.is_empty())
}

fn object(row: &Row, reason: &str) -> serde_json::Value {
    let mut object = json!({
        "row": row.number, "line": row.line, "place": row.place, "type": row.type_name, "load_out": row.load_out,
        "floor": row.floor, "storey": row.storey,
    });
    if let Some(standing) = row.standing {
        let [x_mm, y_mm] = standing.at_mm;
        object["x_mm"] = json!(x_mm);
        object["y_mm"] = json!(y_mm);
        object["turn_deg"] = json!(standing.turn_deg);
    }
    if let Some(found) = &row.outcome {
        object["verdict"] = json!(found.verdict);
        object["utilisation"] = json!(found.utilisation);
        object["governs"] = json!(found.governs);
        object["of"] = json!(found.of);
        object["mass_kg"] = json!(found.mass_kg);
        object["fingerprint"] = json!(found.fingerprint);
        if let Some(check) = found.not_covered {
            object["not_covered"] = json!(check);
            object["reason"] = json!(reason);
        }
    }
    if !row.faults.is_empty() {
        object["faults"] = json!(super::record::faults(&row.faults));
        object["text"] = json!(row.text);
    }
    object
}
