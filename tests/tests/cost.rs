//! What the engine costs on a reader's machine, counted in instructions of the shipped WebAssembly module.
//!
//! Time differs from run to run; the number of instructions does not, so it can be a gate. The count is the
//! interpreter's fuel, which is comparable only for one version of it; that version is pinned in `Cargo.toml`.

use steadfoot_site::{build, workspace::Workspace};
use steadfoot_tests::engine_opened::Opened;

/// Counted with rustc 1.95.0 and wasmi 2.0.0. A change that moves it says why in its own commit.
///
/// It fell from 125 365 545 when the sweep began to ask each place once, to search only where a peak can stand, and to ask
/// one side of what looks alike from both; and from 67 501 715 when quiet loads stopped telling and allocating.
const SELF_CHECK_INSTRUCTIONS: u64 = 48_038_494;

/// One body under one record of 30 s with values every 0.02 s, rocking nearly all the time; counted likewise.
const ROCKING_INSTRUCTIONS: u64 = 12_363_340;

/// Pressures under eight feet from 360 directions; counted likewise.
const PRESSURE_INSTRUCTIONS: u64 = 6_502_259;

/// How far above the last count a change may go before the gate closes.
const ALLOWANCE: f64 = 1.05;

/// What an export without parameters returns, and the instructions that it took.
fn counted(modules: &[Vec<u8>], export: &str) -> (u32, u64) {
    let mut opened = Opened::new(modules, export);
    // The first call may set up what later calls use again; the second is what a reader feels.
    opened.call();
    opened.call()
}

fn shipped() -> [Vec<u8>; 2] {
    let workspace = Workspace::here().expect("the repository is where the builder was compiled");
    build::make(&workspace).expect("the site is made").wasm
}

#[test]
fn instructions_are_counted_and_the_count_repeats() {
    // (module (func (export "f") (result i32) (local i32)
    //   (loop (br_if 0 (i32.lt_u (local.tee 0 (i32.add (local.get 0) (i32.const 1))) (i32.const LIMIT)))) (local.get 0)))
    let module = |limit: u8| {
        let body =
            [1, 1, 0x7f, 3, 0x40, 0x20, 0, 0x41, 1, 0x6a, 0x22, 0, 0x41, limit, 0x49, 0x0d, 0, 0x0b, 0x20, 0, 0x0b];
        let mut bytes =
            vec![0, b'a', b's', b'm', 1, 0, 0, 0, 1, 5, 1, 0x60, 0, 1, 0x7f, 3, 2, 1, 0, 7, 5, 1, 1, b'f', 0, 0];
        bytes.extend([10, body.len() as u8 + 2, 1, body.len() as u8]);
        bytes.extend(body);
        bytes
    };
    let (value, ten) = counted(&[module(10)], "f");
    assert_eq!(value, 10);
    assert_eq!(counted(&[module(10)], "f"), (10, ten));
    let (value, twenty) = counted(&[module(20)], "f");
    assert_eq!(value, 20);
    let (_, thirty) = counted(&[module(30)], "f");
    assert_eq!(thirty - twenty, twenty - ten, "ten more turns cost the same each time");
    assert!(twenty > ten);
}

#[test]
fn the_self_check_takes_no_more_instructions_than_before() {
    let wasm = shipped();
    let (value, instructions) = counted(&wasm, "self_check");
    println!(
        "self_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {SELF_CHECK_INSTRUCTIONS}"
    );
    assert_eq!(counted(&wasm, "self_check"), (value, instructions), "the same bits and the same count each time");
    let most = SELF_CHECK_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}

/// The search for what would hold: some two thousand variants of the built-in cabinet, most of them never swept.
const SEARCH_INSTRUCTIONS: u64 = 2_449_146_371;

#[test]
fn the_search_for_what_would_hold_takes_no_more_instructions_than_before() {
    let (value, instructions) = Opened::new(&shipped(), "search_check").call();
    println!(
        "search_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {SEARCH_INSTRUCTIONS}"
    );
    assert_ne!(value, 0, "there is something to search");
    assert_eq!(value, steadfoot::explore::search_check(), "the same bits as on this machine");
    let most = SEARCH_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}

#[test]
fn rocking_under_a_record_takes_no_more_instructions_than_before() {
    let wasm = shipped();
    let (value, instructions) = Opened::new(&wasm, "rocking_check").call();
    println!(
        "rocking_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {ROCKING_INSTRUCTIONS}"
    );
    assert_eq!(value, steadfoot::motion::rocking_check(), "the same bits natively");
    let most = ROCKING_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}

#[test]
fn the_pressures_of_eight_feet_once_round_take_no_more_instructions_than_before() {
    let (value, instructions) = Opened::new(&shipped(), "pressure_check").call();
    println!(
        "pressure_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {PRESSURE_INSTRUCTIONS}"
    );
    assert_eq!(value, steadfoot::study::pressure_map::pressure_check(), "the same bits natively");
    assert_ne!(value, 0, "there are feet to press");
    let most = PRESSURE_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}

/// Two inputs of the built-in cabinet not known: 45 ways, each read anew and checked as a whole or stopped where it fails.
const OPEN_INSTRUCTIONS: u64 = 1_518_439_618;

#[test]
fn an_answer_about_what_is_not_known_takes_no_more_instructions_than_before() {
    let (value, instructions) = Opened::new(&shipped(), "open_check").call();
    println!(
        "open_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {OPEN_INSTRUCTIONS}"
    );
    assert_ne!(value, 0, "something is left open");
    assert_eq!(value, steadfoot::explore::open_check(), "the same bits natively");
    let most = OPEN_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}

/// A portion of a map of the built-in cabinet: twelve cells, each turned and checked as a whole.
const MAP_INSTRUCTIONS: u64 = 349_878_639;

#[test]
fn a_portion_of_a_map_takes_no_more_instructions_than_before() {
    let (value, instructions) = Opened::new(&shipped(), "map_check").call();
    println!("map_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {MAP_INSTRUCTIONS}");
    assert_eq!(value, steadfoot::explore::map_check(), "the same bits natively");
    let most = MAP_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}

/// Four rows of a schedule: each made into the text of a project, read, and checked as a whole.
const HALL_INSTRUCTIONS: u64 = 140_673_040;

#[test]
fn rows_of_a_hall_take_no_more_instructions_than_before() {
    let (value, instructions) = Opened::new(&shipped(), "hall_check").call();
    println!(
        "hall_check() = {value:08x} in {instructions} instructions; the gate is at 1.05 times {HALL_INSTRUCTIONS}"
    );
    assert_eq!(value, steadfoot::hall::hall_check(), "the same bits natively");
    let most = HALL_INSTRUCTIONS as f64 * ALLOWANCE;
    assert!(instructions as f64 <= most, "{instructions} instructions are more than {most:.0}");
}
