//! Ids and symbols are addresses that people keep: renaming one is a result that changes.
//!
//! They are listed in `tests/ids.txt`. After a change that is meant, write the list anew with
//! `cargo test -p steadfoot-tests --test ids --test schema --test invalid -- --ignored` and tell it in the changelog.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use steadfoot::calc::{CheckId, Shape};
use steadfoot::study::tables;

fn file() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("ids.txt")
}

fn listed() -> String {
    let mut text = String::new();
    for check in CheckId::ALL {
        let _ = writeln!(text, "check {} {}", check.id(), check.section());
    }
    let mut symbols: Vec<String> = tables()
        .iter()
        .flat_map(|table| table.rows.iter().map(move |row| (table.name, row)))
        .filter(|(_, row)| !matches!(row.shape, Shape::Name | Shape::Reason))
        .map(|(table, row)| format!("symbol {table} {}", row.symbol))
        .collect();
    symbols.sort();
    symbols.dedup();
    for symbol in symbols {
        let _ = writeln!(text, "{symbol}");
    }
    text
}

#[test]
fn ids_and_symbols_are_those_of_the_list() {
    let kept = std::fs::read_to_string(file()).expect("tests/ids.txt");
    let now = listed();
    let gone: Vec<&str> = kept.lines().filter(|line| !now.lines().any(|other| other == *line)).collect();
    let new: Vec<&str> = now.lines().filter(|line| !kept.lines().any(|other| other == *line)).collect();
    assert!(gone.is_empty() && new.is_empty(), "gone: {gone:#?}\nnew: {new:#?}");
}

#[test]
fn every_table_has_its_own_number_and_its_rows_are_counted() {
    let tables = tables();
    for (place, table) in tables.iter().enumerate() {
        assert!(table.rows.len() <= 256, "{} has more rows than an id can count", table.name);
        assert!(
            tables[..place].iter().all(|other| other.number != table.number),
            "two tables have the number {}",
            table.number
        );
    }
}

#[test]
fn every_table_of_the_sources_is_listed_under_a_number_of_its_own() {
    let mut numbers: Vec<u8> = Vec::new();
    for file in sources(&PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../core/src")) {
        let text = std::fs::read_to_string(file).expect("a source");
        let made = text.lines().map(str::trim_start).filter_map(|line| line.strip_prefix("steps! { "));
        numbers.extend(made.filter_map(|line| line.split(' ').next()?.parse::<u8>().ok()));
    }
    assert!(numbers.len() > 100, "only {} tables were found", numbers.len());
    let free: Vec<u8> = (10..240).filter(|number| !numbers.contains(number)).collect();
    let listed: Vec<u8> = tables().iter().map(|table| table.number).collect();
    for number in &numbers {
        let (made, told) = (numbers.iter().filter(|other| *other == number).count(), listed.contains(number));
        assert!(made == 1, "{made} tables have the number {number}; free are {free:?}");
        assert!(told, "the table {number} is not listed in core/src/report/text_tables.rs, nor by a rule or a study");
    }
}

fn sources(folder: &Path) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path());
    entries.flat_map(|path| if path.is_dir() { sources(&path) } else { vec![path] }).collect()
}

#[test]
#[ignore = "writes tests/ids.txt"]
fn write_the_list() {
    std::fs::write(file(), listed()).expect("tests/ids.txt can be written");
}
