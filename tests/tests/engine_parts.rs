//! The engine is cut in two parts that are together what it was, and the first alone never gives a wrong number.

use std::collections::HashMap;

use steadfoot_site::engine::{
    cut::{Cut, cut},
    references::{Datum, References, Referred},
};
use steadfoot_tests::engine_opened::Opened;

const MODULE: &str = r#"
(module
  (memory (export "memory") 1)
  (table 4 funcref)
  (elem (i32.const 1) $listed $listed_later)
  (type $number (func (result i32)))
  (data (i32.const 16) "read by the first part alone....")
  (data (i32.const 64) "read by the later part alone....")
  (func $shared (result i32) (i32.load8_u (i32.const 16)))
  (func $later (result i32) (i32.add (call $shared) (call $only_for_later)))
  (func $only_for_later (result i32) (i32.load8_u (i32.const 64)))
  (func $listed (result i32) (i32.const 7))
  (func $listed_later (result i32) (call $later))
  (func $first (result i32) (call $shared))
  (func $through_a_door (result i32) (call $later))
  (func $through_the_table (result i32) (call_indirect (type $number) (i32.const 2)))
  (func $through_the_table_at_home (result i32) (call_indirect (type $number) (i32.const 1)))
  (export "first" (func $first))
  (export "later" (func $later))
  (export "through_a_door" (func $through_a_door))
  (export "through_the_table" (func $through_the_table))
  (export "through_the_table_at_home" (func $through_the_table_at_home)))
"#;

fn references() -> References {
    let data = vec![
        Datum { at: 16..48, refers: Referred::default() },
        Datum { at: 64..96, refers: Referred::default() },
        // The table of a kind of thing: what the first part finds there, it may call.
        Datum {
            at: 120..128,
            refers: Referred { data: Vec::new(), functions: vec!["listed".into(), "listed_later".into()] },
        },
    ];
    let reads = |data: &[usize]| Referred { data: data.to_vec(), functions: Vec::new() };
    let functions = [
        ("shared", reads(&[0])),
        ("later", reads(&[])),
        ("only_for_later", reads(&[1])),
        ("listed", reads(&[])),
        ("listed_later", reads(&[])),
        ("first", reads(&[])),
        ("through_a_door", reads(&[])),
        ("through_the_table", reads(&[2])),
        ("through_the_table_at_home", reads(&[2])),
    ];
    References { functions: HashMap::from(functions.map(|(name, referred)| (name.to_string(), referred))), data }
}

fn whole() -> Vec<u8> {
    wat::parse_str(MODULE).expect("the module is written well")
}

fn parts() -> Vec<Vec<u8>> {
    let Cut { first, later } = cut(&whole(), &references(), |name| name == "later").expect("it can be cut");
    vec![first, later]
}

const EXPORTS: [&str; 5] = ["first", "later", "through_a_door", "through_the_table", "through_the_table_at_home"];

#[test]
fn both_parts_together_answer_as_the_whole_does() {
    for export in EXPORTS {
        let (value, _) = Opened::new(&[whole()], export).call();
        assert_eq!(Opened::new(&parts(), export).call().0, value, "{export}");
    }
}

#[test]
fn the_first_part_alone_answers_alike_or_stops() {
    let first = &parts()[..1];
    for export in EXPORTS {
        let (value, _) = Opened::new(&[whole()], export).call();
        let alone = Opened::new(first, export).try_call();
        let needs_later = !["first", "through_the_table_at_home"].contains(&export);
        match alone {
            Ok((answer, _)) => assert!(!needs_later && answer == value, "{export} answers {answer}"),
            Err(_) => assert!(needs_later, "{export} stops"),
        }
    }
}

#[test]
fn what_only_the_later_part_reads_travels_with_it() {
    let parts = parts();
    let text = b"read by the later part alone....";
    let at = |opened: &Opened| opened.memory()[64..96] == text[..];
    assert!(!at(&Opened::new(&parts[..1], "first")), "the first part does not carry it");
    assert!(at(&Opened::new(&parts, "first")), "the later part brings it");
    let holds = |wasm: &[u8], text: &[u8]| wasm.windows(text.len()).any(|window| window == text);
    assert!(!holds(&parts[0], text) && holds(&parts[1], text));
    assert!(!holds(&parts[1], b"read by the first part alone"), "nothing travels twice");
}

#[test]
fn a_function_whose_references_nobody_knows_stops_the_cut() {
    let mut known = references();
    known.functions.remove("first");
    let fault = cut(&whole(), &known, |name| name == "later").err().expect("it is refused").to_string();
    assert!(fault.contains("first"), "{fault}");
}

#[test]
fn a_cut_that_takes_nothing_away_is_refused() {
    assert!(cut(&whole(), &references(), |_| false).is_err());
}
