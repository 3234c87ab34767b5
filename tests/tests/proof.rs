//! The proof itself finds what it is there to find.

use steadfoot::calc::clause::STATICS;
use steadfoot::calc::{Part, Sheet, StepId, Subject, System, steps};
use steadfoot_tests::proof::{Account, Proof};

steps! { 253 "sample";
    A "a" Length (STATICS "" Derived) "a side": Given;
    F_I "F_i" Force (STATICS "" Derived) "a share": Given;
    HALF "a_h" Length (STATICS "" Derived) "half of it" = "a / 2";
    AREA "A" Area (STATICS "" Derived) "its square" = "a^2";
    NOT_AN_AREA "A_l" Area (STATICS "" Derived) "wrong dimension" = "2 * a";
    CAPPED "k" Number (STATICS "" Derived) "a numeral that never acts" = "min(5, a / a)";
    TOTAL "F" Force (STATICS "" Derived) "all shares" = "sum(F_i)";
    FORWARD "b" Length (STATICS "" Derived) "uses what is not there yet" = "2 * c";
}

fn account(tell: impl Fn(&mut Sheet)) -> Account {
    let mut sheet = Sheet::told();
    sheet.open(Part::LoadOut, Subject::Whole, None, System::Si);
    tell(&mut sheet);
    let mut proof = Proof::of(&[&TEXTS]);
    proof.take(&sheet.sections);
    proof.close()
}

fn told(steps: &'static [(StepId, f64)]) -> Account {
    account(|sheet| {
        for &(id, value) in steps {
            sheet.step(id, value);
        }
    })
}

#[test]
fn honest_steps_pass_and_rows_that_were_not_told_are_named() {
    let account = told(&[(A, 300.0), (HALF, 150.0), (AREA, 90_000.0)]);
    assert!(account.wrong.is_empty() && account.idle.is_empty());
    assert_eq!(account.unseen.len(), 5);
    assert_eq!((account.formula_steps, account.computed_steps, account.steps), (2, 2, 3));
}

#[test]
fn a_wrong_value_is_found() {
    assert_eq!(told(&[(A, 300.0), (HALF, 150.000_001)]).wrong.len(), 1);
    assert!(!told(&[(A, 300.0), (HALF, f64::NAN)]).wrong.is_empty());
}

#[test]
fn a_wrong_dimension_is_found() {
    assert_eq!(told(&[(A, 300.0), (NOT_AN_AREA, 600.0)]).wrong.len(), 1);
}

#[test]
fn a_symbol_that_was_not_recorded_before_is_found() {
    assert_eq!(told(&[(FORWARD, 1.0)]).wrong.len(), 1);
    assert_eq!(told(&[(HALF, 150.0), (A, 300.0)]).wrong.len(), 1);
}

#[test]
fn a_numeral_that_never_acts_is_found() {
    let account = told(&[(A, 300.0), (CAPPED, 1.0)]);
    assert!(account.wrong.is_empty());
    assert_eq!(account.idle, ["sample: 5 in k = min(5, a / a)"]);
}

#[test]
fn a_sum_runs_over_the_last_run_of_its_indexed_symbol() {
    let account = account(|sheet| {
        sheet.each(F_I, &[1.0, 2.0, 4.0]);
        sheet.step(TOTAL, 7.0);
        sheet.each(F_I, &[8.0, 16.0]);
        sheet.step(TOTAL, 24.0);
    });
    assert!(account.wrong.is_empty(), "{:?}", account.wrong);
}
