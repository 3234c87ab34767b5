//! Floors: every formula text of their rules gives what was recorded, every numeral in it matters, and ranges are kept.

use steadfoot::calc::{Part, Sheet, Subject, System};
use steadfoot::rules::floor::kelvin::{by_integral, by_series};
use steadfoot::rules::floor::neighbours::{Neighbour, PlateOnSprings};
use steadfoot::rules::floor::slab_on_ground::SlabOnGround;
use steadfoot::rules::floor::westergaard::{self, EdgeForm};
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

/// Westergaard's forms of 1948 for an edge are of another hand: the mean moment along the edge that a circle touching it,
/// or a semicircle on it, makes there. The plate with an edge, summed over the same areas, gives their stress.
#[test]
fn the_plate_with_an_edge_gives_westergaards_stress_at_the_edge() {
    for (poisson, size) in [(0.10, 0.1), (0.15, 0.05), (0.15, 0.2), (0.25, 0.1)] {
        let slab = SlabOnGround { modulus_mpa: 30e3, poisson, thickness_mm: 200.0, subgrade_n_per_mm3: 0.05 };
        let radius_mm = slab.radius_mm();
        let plate = PlateOnSprings { radius_mm, poisson, thickness_mm: slab.thickness_mm };
        for form in [EdgeForm::Circle, EdgeForm::Semicircle] {
            let contact_mm = size * radius_mm;
            // Rings about the place on the edge, half of them: the other half is alike.
            const RINGS: usize = 24;
            let (mut moment, mut area) = (0.0, 0.0);
            for turn in 0..RINGS {
                let angle = core::f64::consts::FRAC_PI_2 * (turn as f64 + 0.5) / RINGS as f64;
                let reach = if form == EdgeForm::Circle { 2.0 * contact_mm * angle.sin() } else { contact_mm };
                for ring in 0..RINGS {
                    let r = reach * (ring as f64 + 0.5) / RINGS as f64;
                    let away_mm = [r * angle.cos(), r * angle.sin()];
                    let edge = Some(plate.beside_edge(0.0, away_mm));
                    let there = plate.moments_n(&Neighbour { load_n: 1.0, away_mm, edge }, &mut Sheet::quiet());
                    assert!(there[1].abs() < 1e-8, "nothing bends across a free edge: {}", there[1]);
                    moment += there[0] * r * reach;
                    area += r * reach;
                }
            }
            let stress = 6.0 * moment / area / (200.0 * 200.0);
            let area_mm2 =
                core::f64::consts::PI * contact_mm * contact_mm / if form == EdgeForm::Circle { 1.0 } else { 2.0 };
            let loaded = slab.loaded(area_mm2, &mut Sheet::quiet()).expect("within range");
            let printed = westergaard::edge(&loaded, form, 1.0, &mut Sheet::quiet()).expect("within range").stress_mpa;
            assert!((stress / printed - 1.0).abs() < 2.5e-3, "{form:?} {poisson} {size}: {stress} {printed}");
        }
    }
}
