//! Floors: every formula text of their rules gives what was recorded, every numeral in it matters, and ranges are kept.

use steadfoot::calc::{Part, Sheet, Subject, System};
use steadfoot::rules::floor::kelvin::{by_integral, by_series};
use steadfoot::rules::floor::{TABLES, live_load, load_factor, raised, subgrade};
use steadfoot_tests::proof::Proof;
use steadfoot_tests::values::{blocks, told};

#[test]
fn formula_texts_of_floors_give_what_was_recorded_and_every_numeral_matters() {
    let mut proof = Proof::of(TABLES);
    let mut taken = 0;
    for (file, block) in blocks() {
        if block.runs == "floor" {
            let ran =
                told("floor", &block.input).unwrap_or_else(|problem| panic!("{file}, {}: {problem}", block.block));
            proof.take(&ran.sections);
            taken += 1;
        }
    }
    assert!(taken > 200, "{taken} blocks of floors");
    let mut sheet = Sheet::told();
    sheet.open(Part::Floor, Subject::Whole, None, System::Si);
    for row in 0..live_load::LIVE_LOADS.len() {
        live_load::uniform_mpa(row, &mut sheet);
    }
    sheet.step(live_load::GIVEN, 5e-3);
    for class in 0..subgrade::SOILS.len() {
        subgrade::by_soil(class, &mut sheet);
    }
    sheet.step(load_factor::PHI_PLAIN, 0.6);
    sheet.step(raised::Q_GRADE, 12e-3);
    proof.take(&sheet.sections);
    let account = proof.close();
    println!("{} formulas of {} steps", account.formula_steps, account.steps);
    account.must_be_clean();
}

#[test]
fn series_and_integral_of_kelvin_functions_agree_to_twelve_digits() {
    for step in 1..60 {
        let x = 0.1 * step as f64;
        let (series, integral) = (by_series(x), by_integral(x));
        for (a, b) in [(series.ker, integral.ker), (series.kei, integral.kei), (series.kei_slope, integral.kei_slope)] {
            assert!((a - b).abs() < 1e-12, "at {x}: {a} and {b}");
        }
    }
}

#[test]
fn the_words_of_the_live_load_table_are_those_of_its_rows() {
    let words: Vec<&str> = live_load::LIVE_LOADS.iter().map(|row| row.word).collect();
    assert_eq!(words, live_load::OCCUPANCIES);
}
