//! A schedule of many cabinets: rows are single assessments, nothing is lost, nothing panics, cells come back as they were.

use std::fs;
use std::path::PathBuf;

use steadfoot::calc::System;
use steadfoot::hall::{
    Hall, HallPlan, Head, Record, Row, RowWords, Schedule, Separator, cells, line, result_head, result_line,
};
use steadfoot::input::{Fault, Problem};
use steadfoot::project;
use steadfoot::report::outcome::Verdict;
use steadfoot_tests::random::Random;

fn demo(file: &str) -> String {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    fs::read_to_string(path).expect(file)
}

fn hall() -> Hall {
    Hall::read(&demo("hall/hall.json")).expect("the demo has no fault")
}

/// Head and rows of a text that comes in pieces of at most so many bytes.
fn records(text: &[u8], mut piece: impl FnMut() -> usize) -> Result<(Option<Head>, Vec<Record>), Vec<Fault>> {
    let mut schedule = Schedule::new();
    let mut records = Vec::new();
    let mut rest = text;
    loop {
        while let Some(record) = schedule.record()? {
            records.push(record);
        }
        if rest.is_empty() {
            if schedule.is_finished() {
                return Ok((schedule.head().cloned(), records));
            }
            schedule.finish();
            continue;
        }
        let (now, later) = rest.split_at(piece().clamp(1, rest.len()));
        schedule.push(now);
        rest = later;
    }
}

fn rows(hall: &Hall, text: &str) -> Vec<Row> {
    let (head, records) = records(text.as_bytes(), || 1 << 16).expect("a head");
    let head = head.expect("a head");
    let mut plan = HallPlan::new();
    let told = |mut record: Record| {
        plan.stand(hall, &head, &mut record);
        hall.row(&head, &record)
    };
    records.into_iter().map(told).collect()
}

fn only_fault(text: &str) -> (String, Problem) {
    let rows = rows(&hall(), text);
    let faults = &rows.last().expect("a row").faults;
    assert_eq!(faults.len(), 1, "{text:?}: {faults:?}");
    (faults[0].path.clone(), faults[0].problem)
}

fn head_fault(text: &[u8]) -> (String, Problem) {
    let faults = records(text, || 1 << 16).expect_err("the head has a fault");
    (faults[0].path.clone(), faults[0].problem)
}

#[test]
fn the_demo_shows_every_outcome_and_a_row_with_a_fault_among_good_ones() {
    let rows = rows(&hall(), &demo("hall/schedule.csv"));
    let count = |verdict| rows.iter().filter(|row| row.outcome.as_ref().map(|found| found.verdict) == verdict).count();
    assert_eq!(rows.len(), 48);
    assert_eq!(count(Some(Verdict::DoesNotHold)), 3);
    assert_eq!(count(Some(Verdict::CannotBeSaid)), 2);
    assert_eq!(count(None), 1);
    let fault = rows.iter().find(|row| !row.faults.is_empty()).expect("one has a fault");
    assert_eq!((fault.place.as_str(), fault.line, fault.faults[0].path.as_str()), ("D05", 42, "load_out"));
    assert!(fault.text.contains("lowest 9"));
    // The same recorders on the same floor hold two storeys further down.
    let of = |place: &str| rows.iter().find(|row| row.place == place).and_then(|row| row.outcome.as_ref()).unwrap();
    assert_eq!((of("D03").verdict, of("D04").verdict), (Verdict::DoesNotHold, Verdict::Holds));
    assert_eq!(of("C11").not_covered, Some("anchor.tension.bond"));
}

#[test]
fn a_row_is_the_single_assessment_of_the_project_that_it_makes_bit_by_bit() {
    let hall = hall();
    let (head, records) = records(demo("hall/schedule.csv").as_bytes(), || 1 << 16).unwrap();
    let head = head.unwrap();
    for record in records.iter().step_by(5) {
        let row = hall.row(&head, record);
        let Some(found) = row.outcome else { continue };
        let text = hall.project_text(&head, record).expect("a sound row makes a project");
        let report = project::assess(&project::read(&text, System::Si).expect("and one without faults"));
        let governing = report.governs.map(|place| &report.checks[place]);
        assert_eq!(found.verdict, report.verdict);
        assert_eq!(found.governs, governing.map(|check| check.id));
        assert_eq!(
            found.utilisation.map(f64::to_bits),
            governing.and_then(|check| check.utilisation).map(f64::to_bits)
        );
        assert_eq!(found.fingerprint, report.fingerprint);
        let heaviest = report.states.iter().map(|state| state.mass_kg).fold(0.0, f64::max);
        assert_eq!(found.mass_kg, heaviest);
        assert!(text.contains(&format!("Halvane Tide Survey, Orrin Sound, {}", row.place)));
    }
}

#[test]
fn columns_override_fields_and_load_outs_leave_contents_aboard() {
    let hall = hall();
    let text = "place,type,load_out,slab.thickness_mm [in],contents[recorder 1].mass_kg [lb],anchorage.bolt,slab.cracked,cabinet.frame.centre_mm\n\
        1,recorder,,,,,,\n2,recorder,,10,,,,\n3,recorder,,,1000,,,\n4,recorder,empty,,,,,\n5,recorder,lowest 2,,,,,\n\
        6,recorder,50 %,,,,,\n7,recorder,,,,M16,FALSE,\"[0, 0, 500]\"\n";
    let (head, records) = records(text.as_bytes(), || 1 << 16).unwrap();
    let head = head.unwrap();
    let made = |place: usize| project::read(&hall.project_text(&head, &records[place]).unwrap(), System::Si).unwrap();
    let aboard = |project: &steadfoot::project::Project| project.contents.iter().map(|one| one.mass_kg).sum::<f64>();
    assert_eq!(aboard(&made(0)), 3040.0);
    assert_eq!(made(1).slab.unwrap().thickness_mm, 254.0);
    assert_eq!(made(2).contents[0].mass_kg, 453.59237);
    assert!(made(3).contents.is_empty());
    assert_eq!(made(4).contents.iter().map(|one| one.name.as_str()).collect::<Vec<_>>(), ["recorder 1", "recorder 2"]);
    assert_eq!(aboard(&made(5)), 1520.0);
    let last = made(6);
    assert_eq!(last.cabinet.frame.centre_mm, [0.0, 0.0, 500.0]);
    assert!(!last.slab.unwrap().is_cracked);
}

#[test]
fn the_same_cabinets_come_from_every_separator_and_from_lines_of_json() {
    let hall = hall();
    let forms = [
        "place,type,load_out,x [m],y [m],turn [deg],anchorage.embedment_mm\nA1,recorder,lowest 4,1.5,2,90,120.5\n",
        "\u{feff}place;type;load_out;x [m];y [m];turn [deg];anchorage.embedment_mm\r\nA1;recorder;lowest 4;1,5;2;90;120,5\r\n",
        "place\ttype\tload_out\tx [m]\ty [m]\tturn [deg]\tanchorage.embedment_mm\nA1\t\"recorder\"\tlowest 4\t1.5\t2\t90\t120,5",
        "{\"place\": \"A1\", \"type\": \"recorder\", \"load_out\": \"lowest 4\", \"x_mm\": 1500, \"y [m]\": 2, \"turn_deg\": 90, \"anchorage.embedment_mm\": 120.5}\n",
    ];
    let found: Vec<Row> = forms.iter().map(|text| rows(&hall, text).remove(0)).collect();
    for row in &found {
        assert_eq!(row.outcome, found[0].outcome, "{}", row.text);
        assert!(row.outcome.is_some(), "{:?}", row.faults);
        assert_eq!(row.standing, found[0].standing, "{}", row.text);
    }
    // Turned by a right angle, the front left corner is where the front right one was, about the middle.
    let corner = found[0].standing.unwrap().corners_mm.unwrap()[0];
    assert!((corner[0] - 2200.0).abs() < 1e-9 && (corner[1] - 1400.0).abs() < 1e-9, "{corner:?}");
}

#[test]
fn what_is_wrong_with_the_head_is_told_before_anything_is_assessed() {
    let cases: [(&[u8], &str, Problem); 17] = [
        (b"", "", Problem::Missing),
        (b"\xef\xbb\xbf", "", Problem::Missing),
        (b"\n\n  \n", "", Problem::Missing),
        (b"name,type\nA,full", "name", Problem::UnknownKey),
        (b"type,floor\nfull,ground", "place", Problem::Missing),
        (b"place,place\nA,B", "place", Problem::DuplicateKey),
        (b"place,x_mm,x [m],y_mm", "x [m]", Problem::DuplicateKey),
        (b"place,x_mm\nA,1", "y_mm", Problem::Missing),
        (b"place,x,y\nA,1,1", "x", Problem::Missing),
        (b"place,x [kg],y [m]\nA,1,1", "x [kg]", Problem::NotAUnit),
        (b"place,slab.thickness_mm [furlong]", "slab.thickness_mm [furlong]", Problem::NotAUnit),
        (b"place,slab.thicknes_mm\nA,200", "slab.thicknes_mm", Problem::UnknownKey),
        (b"place,slab\nA,200", "slab", Problem::UnknownKey),
        (b"place,\"type\nA,B", "", Problem::LooseQuote),
        (b"\xff\xfep\0l\0a\0c\0e\0\n\0", "", Problem::NotJson),
        (b"place,type;place\nA,B;C", "", Problem::TwoReadings),
        (b"place,type,\n", "", Problem::UnknownKey),
    ];
    for (text, path, problem) in cases {
        assert_eq!(head_fault(text), (path.to_string(), problem), "{}", String::from_utf8_lossy(text));
    }
    // Only a head is a schedule without rows.
    assert!(records(b"place,type\n", || 7).unwrap().1.is_empty());
}

#[test]
fn what_is_wrong_with_a_row_is_told_of_that_row() {
    let cases = [
        ("place,type\n,recorder", "place", Problem::Missing),
        ("place,type\nA,\n", "type", Problem::Missing),
        ("place,type\nA,wardrobe\n", "type", Problem::UnknownName),
        ("place,type,floor\nA,relay,roof\n", "floor", Problem::UnknownName),
        ("place,type,storey\nA,relay,13\n", "storey", Problem::UnknownName),
        ("place,type,load_out\nA,relay,half\n", "load_out", Problem::UnknownName),
        ("place,type,load_out\nA,relay,highest 6\n", "load_out", Problem::AboveLimit),
        ("place,type\nA,relay\nA,relay\n", "place", Problem::DuplicateName),
        ("place,type\nA,relay,\nB\n", "", Problem::WrongCount),
        ("place,type\nA,relay,more\n", "", Problem::WrongCount),
        ("place,type,slab.thickness_mm\nA,relay,10 in\n", "slab.thickness_mm", Problem::MixedUnits),
        ("place,type,slab.thickness_mm\nA,relay,\"2,5\"\n", "slab.thickness_mm", Problem::TwoReadings),
        ("place;type;slab.thickness_mm\nA;relay;1.250\n", "slab.thickness_mm", Problem::TwoReadings),
        ("place,type,slab.thickness_mm\nA,relay,thick\n", "slab.thickness_mm", Problem::NotANumber),
        ("place,type,slab.thickness_mm\nA,relay,1e999\n", "slab.thickness_mm", Problem::NotFinite),
        ("place,type,slab.thickness_mm\nA,relay,-5\n", "slab.thickness_mm", Problem::BelowLimit),
        ("place,type,anchorage.bolt\nA,relay,=1+1\n", "anchorage.bolt", Problem::NotAWord),
        ("place,type,contents[tray 9].mass_kg\nA,relay,5\n", "contents[tray 9].mass_kg", Problem::UnknownName),
        ("place,type,x_mm,y_mm\nA,relay,1e9,0\n", "x_mm", Problem::AboveLimit),
        (
            "{\"place\": \"A\", \"type\": \"relay\", \"slab.thickness_mm\": {\"between\": [200, 250]}}",
            "slab.thickness_mm",
            Problem::CannotBeOpen,
        ),
        ("place,type\nA\0,relay\n", "", Problem::NotOneLine),
        ("place,type\n\"A\nB\",relay\n", "place", Problem::NotOneLine),
        ("place,type\nA,\"re\"lay\n", "", Problem::LooseQuote),
        ("place,type\nA,\"relay\n", "", Problem::LooseQuote),
        ("{\"place\": \"A\", \"type\": \"relay\", \"slab.thicknes_mm\": 1}", "slab.thicknes_mm", Problem::UnknownKey),
        ("{\"place\": \"A\", \"type\": \"relay\", \"type\": \"relay\"}", "type", Problem::DuplicateKey),
        ("{\"place\": \"A\", \"type\": \"relay\"", "", Problem::NotJson),
        ("{\"place\": \"A\", \"type\": [1]}", "type", Problem::NotAText),
        ("{\"place\": \"A\", \"type\": \"relay\"}\n[1]", "", Problem::NotAnObject),
    ];
    for (text, path, problem) in cases {
        let faults = rows(&hall(), text).pop().expect("a row").faults;
        let told = (faults[0].path.as_str(), faults[0].problem);
        assert_eq!(told, (path, problem), "{text:?}");
    }
    assert_eq!(only_fault("place,type\nA,relay\nA,relay"), ("place".to_string(), Problem::DuplicateName));
}

#[test]
fn a_quote_that_is_never_closed_costs_one_row_and_a_row_that_is_too_long_costs_itself() {
    let long = "x".repeat(70_000);
    let many = "A,relay\n".repeat(9_000);
    let text = format!(
        "place,type,note\n1,relay,\"open\n2,relay,\n{long}\n3,\"{long}\",\n4,relay,\r5,relay,\n6,relay,\"{many}"
    );
    for size in [1 << 16, 4096, 70_001] {
        let (head, records) = records(text.as_bytes(), || size).unwrap();
        let head = head.unwrap();
        let told: Vec<(u32, bool)> = records.iter().take(7).map(|row| (row.line, row.fault.is_none())).collect();
        assert_eq!(told, [(2, false), (3, true), (4, false), (5, false), (6, true), (7, true), (8, false)]);
        // What follows an open quote is read on, row by row.
        assert_eq!(records.len(), 7 + 8_999 + 1 - 1, "pieces of {size}");
        assert!(hall().row(&head, &records[1]).outcome.is_some());
    }
}

#[test]
fn cells_that_are_written_come_back_as_they_were_and_none_is_a_formula() {
    let mut random = Random::new(22);
    let letters: Vec<char> = "=+-@'\t\r\n ,;\"aé0.＝e%".chars().collect();
    for _ in 0..5_000 {
        let mut texts: Vec<String> = Vec::new();
        for _ in 0..1 + random.bits() % 4 {
            texts.push((0..random.bits() % 7).map(|_| letters[random.bits() as usize % letters.len()]).collect());
        }
        let written = line(texts.iter().map(String::as_str));
        let read = cells(&written, Separator::Comma).expect("what was written has no fault");
        assert_eq!(read, texts, "{written:?}");
        // As a spreadsheet sees it: quotes off, nothing else.
        for cell in sheet_cells(&written) {
            let first = cell.trim_start_matches(' ').chars().next();
            let is_formula = first.is_some_and(|letter| "=+-@\t\r\n＝＋－＠".contains(letter));
            assert!(!is_formula || cell.parse::<f64>().is_ok(), "{cell:?} in {written:?}");
        }
    }
}

/// The cells of a line as RFC 4180 has them.
fn sheet_cells(written: &str) -> Vec<String> {
    let (mut cells, mut cell, mut within) = (Vec::new(), String::new(), false);
    let mut letters = written.chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '"' if within && letters.peek() == Some(&'"') => cell.extend(letters.next()),
            '"' => within = !within,
            ',' if !within => cells.push(std::mem::take(&mut cell)),
            _ => cell.push(letter),
        }
    }
    cells.push(cell);
    cells
}

#[test]
fn a_file_of_results_is_a_schedule_with_the_same_results() {
    // One of them stands beyond the walls of the demo.
    let mut hall = hall();
    hall.outline_mm.clear();
    let text = "place;type;load_out;x [m];y [m];anchorage.embedment_mm;note\nA;recorder;lowest 4;1,5;2;120,5;=HYPERLINK(1)\n\
        B;relay;;-0,5;3;;\"a;b\"\nC;relay;;1;1;1.250;\n";
    let (head, records) = records(text.as_bytes(), || 5).unwrap();
    let head = head.unwrap();
    let first: Vec<Row> = records.iter().map(|record| hall.row(&head, record)).collect();
    let mut file = result_head(&head) + "\n";
    for row in &first {
        file += &(result_line(&head, row, RowWords { reason: "", caution: "An estimate." }) + "\n");
    }
    assert!(file.contains(",'=HYPERLINK(1),") && file.contains(",-0.5,") && file.contains("An estimate."));
    let again = rows(&hall, &file);
    for (row, other) in first.iter().zip(&again) {
        assert_eq!(row.place, other.place);
        assert_eq!(row.outcome, other.outcome);
        assert_eq!(row.standing, other.standing);
    }
    // What could be read in two ways stays a fault, and its row stands in the file as it was.
    assert_eq!(again.len(), 3);
    assert!(!first[2].faults.is_empty() && file.contains("C;relay;;1;1;1.250;"));
}

#[test]
fn whatever_the_text_nothing_panics_no_line_is_lost_and_pieces_do_not_matter() {
    let hall = hall();
    let seeds = [
        demo("hall/schedule.csv"),
        "place;type;load_out;slab.thickness_mm\nA;relay;80 %;250\nB;\"re\"\"lay\";;\"2,5\"\n".to_string(),
        "{\"place\": \"A\", \"type\": \"relay\"}\n{\"place\": \"B\", \"x_mm\": 5}\n".to_string(),
    ];
    let pieces: [&[u8]; 16] = [
        b"\"",
        b"\"\"",
        b",",
        b";",
        b"\t",
        b"\r",
        b"\n",
        b"\r\n",
        b"\0",
        b"\xff",
        b"\xef\xbb\xbf",
        b"=1+1",
        b"'",
        b"[*]",
        b"1e999",
        b"{",
    ];
    let mut random = Random::new(7);
    for turn in 0..1_500 {
        let mut text = seeds[turn % seeds.len()].clone().into_bytes();
        for _ in 0..1 + random.bits() % 6 {
            let at = random.bits() as usize % (text.len() + 1);
            let to = (at + random.bits() as usize % 9).min(text.len());
            text.splice(at..to, pieces[random.bits() as usize % pieces.len()].iter().copied());
        }
        let whole = records(&text, || 1 << 16);
        let parted = records(&text, || 1 + random.bits() as usize % 40);
        match (whole, parted) {
            (Ok((Some(head), whole)), Ok((_, parted))) => {
                assert_eq!(whole, parted);
                let kept: usize = whole.iter().map(|record| record.text.len()).sum();
                let lossless = String::from_utf8_lossy(&text);
                let below =
                    lossless.trim_start_matches('\u{feff}').trim_start_matches(['\r', '\n', ' ', ',', ';', '\t']);
                let first = below.find(['\n', '\r']).unwrap_or(below.len());
                let is_lines = head.separator == Separator::JsonLines;
                let rest = if is_lines { below } else { &below[first..] };
                let visible = |text: &str| text.chars().filter(|letter| !" ,;\t\r\n".contains(*letter)).count();
                let kept_visible: usize = whole.iter().map(|record| visible(&record.text)).sum();
                // A head with a quoted line break in it is longer than its first line.
                if !below[..first].contains('"') {
                    assert_eq!(kept_visible, visible(rest), "{lossless:?}");
                }
                assert!(kept <= lossless.len());
                for record in whole.iter().take(if turn % 10 == 0 { 2 } else { 0 }) {
                    let row = hall.row(&head, record);
                    assert_eq!(row.outcome.is_some(), row.faults.is_empty(), "{row:?}");
                    assert_eq!(row.text, record.text);
                    result_line(&head, &row, RowWords::default());
                }
            }
            (whole, parted) => assert_eq!(whole.map(|told| told.1), parted.map(|told| told.1)),
        }
    }
}
