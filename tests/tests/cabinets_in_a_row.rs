//! Cabinets side by side: not tied, as one body, tied at the top.

use serde_json::{Value, json};
use steadfoot::calc::{Detail, Status, System};
use steadfoot::explore::{NoRow, Pitched, as_one_body, one_of_the_row};
use steadfoot::project::{self, Project};
use steadfoot::report::table::{Cell, Line, Table};
use steadfoot::study::{self, Shown};

fn file() -> Value {
    let text = include_str!("../../demo-configs/53-four-in-a-row.json");
    serde_json::from_str(text).expect("the demo is JSON")
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn shown(value: &Value) -> Shown {
    let study = study::study("cabinets-in-a-row").expect("a known study");
    (study.make)(&read(value), "").unwrap_or_else(|_| panic!("the row is shown"))
}

fn number(table: &Table, row: usize, column: usize) -> f64 {
    match table.rows[row].cells[column] {
        Cell::Number(number) => number,
        ref other => panic!("{other:?} is no number"),
    }
}

fn governs(project: &Project) -> (Option<&'static str>, Option<f64>) {
    let report = project::assess(project);
    let told = report.governs.map(|place| &report.checks[place]);
    (told.map(|told| told.id), told.and_then(|told| told.utilisation))
}

#[test]
fn a_row_of_one_is_the_cabinet() {
    let project = read(&file());
    let row = Pitched { count: 1, pitch_mm: 1260.0 };
    let body = as_one_body(&project, &row).expect("one cabinet stands");
    assert_eq!(governs(&body), governs(&project));
    let one = one_of_the_row(&project, &row, 0).expect("one cabinet stands");
    assert_eq!(governs(&one), governs(&project));
}

#[test]
fn cabinets_that_are_not_tied_are_each_others_neighbours() {
    let project = read(&file());
    let row = Pitched { count: 3, pitch_mm: 1260.0 };
    let inner = one_of_the_row(&project, &row, 1).expect("it stands on the slab");
    let mut by_hand = file();
    by_hand["neighbours"] = json!([{ "name": "1", "at_mm": [-1260, 0] }, { "name": "3", "at_mm": [1260, 0] }]);
    assert_eq!(governs(&inner), governs(&read(&by_hand)));
    // Without edges nearby the row looks alike from both ends.
    let end = |place| project::assess(&one_of_the_row(&project, &row, place).expect("it stands on the slab")).checks;
    for (left, right) in end(0).iter().zip(&end(2)) {
        let near = |a: Option<f64>, b: Option<f64>| a.zip(b).is_none_or(|(a, b)| (a - b).abs() <= 1e-6 * a.abs());
        assert!(left.id == right.id && near(left.utilisation, right.utilisation), "{}", left.id);
    }
}

#[test]
fn one_body_has_the_weight_of_all_and_states_with_some_full() {
    let project = read(&file());
    let body = as_one_body(&project, &Pitched { count: 4, pitch_mm: 1260.0 }).expect("the row stands");
    let alone = project::assess(&project);
    let row = project::assess(&body);
    assert!((row.states[0].mass_kg - 4.0 * alone.states[0].mass_kg).abs() < 1e-6);
    assert!(row.states[0].centre_mm[0].abs() < 1e-6, "an even row is centred");
    let first = row.states.iter().find(|state| state.name == "full 1").expect("one of its states");
    let expected_kg = alone.states[0].mass_kg + 3.0 * alone.states[1].mass_kg;
    assert!((first.mass_kg - expected_kg).abs() < 1e-6);
    assert!(first.centre_mm[0] < -100.0, "the full one stands at the left end");
    assert_eq!(row.states.len(), 2 + 6 + 2, "all, none, from either end, each inner one alone");
}

#[test]
fn while_all_feet_bear_the_bar_takes_half_the_difference_of_the_moments() {
    let mut value = file();
    value["row"]["cabinets"] = json!(2);
    value["site"] = json!({ "rule": "direct", "format": "strength", "horizontal_coefficient": 0.05, "vertical_coefficient": 0,
        "gravity_heavy": 1, "gravity_light": 1, "overstrength": 1 });
    let report = project::assess(&read(&value));
    let moment = |state: usize| {
        let told = &report.states[state];
        0.05 * told.mass_kg * 9.80665 * told.centre_mm[2]
    };
    let expected_n = (moment(0) - moment(1)) / (2.0 * 2300.0);
    let table = &shown(&value).tables[1];
    assert_eq!(table.rows.len(), 1);
    let found_n = number(table, 0, 1);
    assert!((found_n - expected_n).abs() < 1e-6 * expected_n, "{found_n} for {expected_n} N");
    assert_eq!(number(table, 0, 2), 0.0, "nothing is pulled yet");
}

#[test]
fn an_empty_cabinet_is_pulled_harder_the_more_full_ones_lean_on_it() {
    let shown = shown(&file());
    let table = &shown.tables[1];
    let pulls: Vec<f64> = (0..table.rows.len()).map(|row| number(table, row, 4)).collect();
    assert!(pulls.windows(2).all(|two| two[0] < two[1]), "{pulls:?}");
    assert!((0..table.rows.len()).all(|row| number(table, row, 2) < number(table, row, 3)), "the full ones are helped");
    let step = shown.sections[0].steps.iter().find(|step| matches!(step.detail, Detail::Residuals(_)));
    assert!(step.is_some(), "the force is told with what is left of its equation");
}

#[test]
fn what_cannot_stand_in_a_row_is_said() {
    let project = read(&file());
    let mut value = file();
    value["slab"]["edges_mm"]["right"] = json!(2000);
    let short = read(&value);
    let row = Pitched { count: 4, pitch_mm: 1260.0 };
    assert_eq!(as_one_body(&short, &row).err(), Some(NoRow::OffTheSlab));
    assert_eq!(as_one_body(&project, &Pitched { count: 17, ..row }).err(), Some(NoRow::TooMany));
    let reason = |value: &Value| {
        let study = study::study("cabinets-in-a-row").expect("a known study");
        (study.make)(&read(value), "").err()
    };
    let mut half = file();
    half["row"]["cabinets"] = json!(2.5);
    assert!(reason(&half).is_some(), "half a cabinet stands nowhere");
    let mut none = file();
    none.as_object_mut().expect("an object").remove("row");
    assert!(reason(&none).is_some());
    let mut still = file();
    still.as_object_mut().expect("an object").remove("site");
    assert!(reason(&still).is_some(), "nothing pushes");
}

/// What holds one cabinet by itself holds a row that is tied at the top only where no pull and no shear rises above it.
#[test]
fn a_row_tied_at_the_top_is_not_covered_where_its_bars_bring_the_anchors_more() {
    let tied = |count: u32| {
        let mut value = file();
        value["row"]["tied"] = json!("top");
        value["row"]["cabinets"] = json!(count);
        let shown = shown(&value);
        let line = shown.tables[0].rows.iter().find(|line| line.is_marked).expect("the present way of standing");
        let status = line.cells[1].clone();
        (status, shown.tables[1].clone())
    };
    let is_not_covered = |line: &Line| line.cells[8] == Cell::Status(Status::NotCovered);
    let (status, four) = tied(4);
    assert_eq!(status, Cell::Status(Status::Holds));
    assert!(!four.rows.iter().any(is_not_covered));
    // The guide says so of the example.
    assert!(number(&four, 2, 4) > 4.0 * number(&four, 2, 5), "{:?}", four.rows[2]);
    // Straight across, bars between cabinets that stand evenly do nothing; no shear is greater than along the row.
    assert!((0..3).all(|row| number(&four, row, 6) <= number(&four, row, 7)));
    // Five or more full ones lean on one empty one, and pull it harder than a full one pulls by itself.
    let (status, many) = tied(8);
    assert_eq!(status, Cell::Status(Status::NotCovered));
    for (row, line) in many.rows.iter().enumerate() {
        let at = |column: usize| number(&many, row, column);
        let most = at(3).max(at(5));
        let rises = at(2).max(at(4)) > most || at(6) > at(7);
        assert!(is_not_covered(line) || !rises, "{line:?}");
        assert!(at(6) <= at(7), "the empty ones stay below the shear of a full one: {line:?}");
    }
    assert!(many.rows.iter().any(is_not_covered) && !many.rows.iter().all(is_not_covered));
    // A cabinet that does not hold by itself is no proof for a row.
    let mut weak = file();
    weak["row"]["tied"] = json!("top");
    weak["anchorage"]["embedment_mm"] = json!(40);
    let shown = shown(&weak);
    let line = shown.tables[0].rows.iter().find(|line| line.is_marked).expect("the present way of standing");
    assert_eq!(
        (&shown.tables[0].rows[0].cells[1], &line.cells[1]),
        (&Cell::Status(Status::Fails), &Cell::Status(Status::NotCovered))
    );
}
