//! Two sheets compared: in what two inputs differ, which checks that moved, and by which steps each came to move.
//!
//! A step belongs to the one at the same address of the other sheet: part, subject, check, symbol. It moved where its bits
//! did. From the utilisation of a check the moved steps are followed back along the symbols of their formulas to those
//! that hang on no other: there the input enters. Which input that was is not guessed from names: every difference is
//! put into the first file by itself, and the whole check asked.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::walk::{StepMoved, walk};
use crate::calc::{Status, StepId, System};
use crate::input::difference::{Change, Difference, Patch, differences};
use crate::input::text;
use crate::project::bench::Bench;
use crate::project::{Project, assess, quick_told, read};
use crate::report::outcome::{CheckTold, Report, Verdict};

/// Differences that are tried by themselves; each asks the whole check.
const TRIED_MAX: usize = 32;

/// What a row of the text tables is made of, as words in one line: its shape, its symbol or a dash, and the symbols that its
/// formula uses. Only native code and the page know the texts.
pub type Uses<'a> = &'a dyn Fn(StepId) -> String;

/// Two projects held against each other.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Compared {
    /// The first and the second, as they came out.
    pub sides: [Side; 2],
    /// In what their files differ.
    pub inputs: Vec<InputMoved>,
    /// The checks that differ, in the order of the sheet.
    pub checks: Vec<CheckMoved>,
    /// How many checks stand in both and are the same to the last bit.
    pub unmoved: usize,
}

/// One of the two.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Side {
    /// Its title.
    pub title: String,
    /// Its fingerprint.
    pub fingerprint: String,
    /// Its answer in one word.
    pub verdict: Verdict,
    /// The check that governs it.
    pub governs: Option<&'static str>,
    /// How many inputs its file leaves open; then the answer and all numbers stand for what stands in for them.
    pub open: usize,
}

/// A place where the files differ.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct InputMoved {
    /// Where; rows by their names.
    pub path: String,
    /// How.
    pub change: Change,
    /// What stood there, as it was written.
    pub before: Option<String>,
    /// What stands there now.
    pub after: Option<String>,
    /// What it does by itself.
    pub alone: Alone,
}

/// What one difference does when it is put into the first file by itself.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Alone {
    /// At least one check moves.
    Moves,
    /// No check moves.
    MovesNothing,
    /// The first file has faults with it alone.
    NotAlone,
    /// It was not tried: there are too many.
    NotTried,
}

/// A check that differs.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct CheckMoved {
    /// Its id.
    pub id: &'static str,
    /// As it was; absent where it is new.
    pub before: Option<CheckTold>,
    /// As it is; absent where it is gone.
    pub after: Option<CheckTold>,
    /// The differences that move it by themselves: place among the inputs, and what the check comes to.
    pub by: Vec<MovedBy>,
    /// The steps that moved, in the order of the sheet, from where inputs enter to its utilisation.
    pub steps: Vec<StepMoved>,
}

/// A difference that moves a check by itself.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct MovedBy {
    /// Place among the inputs.
    pub input: usize,
    /// The utilisation that it comes to, where it is a number.
    pub utilisation: Option<f64>,
    /// The word for it; absent where the check is gone.
    pub status: Option<Status>,
}

/// In what two projects differ, the first being the earlier one; which checks moved, by which of the differences alone, and
/// along which steps.
///
/// `uses` says which symbols the text of a step uses: only native code and the page know that.
pub fn compare(before: &Project, after: &Project, uses: Uses) -> Compared {
    let [old, new] = [before, after].map(assess);
    let side = |project: &Project, report: &Report| Side {
        title: project.title.clone(),
        fingerprint: report.fingerprint.clone(),
        verdict: report.verdict,
        governs: report.governs.map(|place| report.checks[place].id),
        open: project.open.len(),
    };
    let found = match [before, after].map(|project| text::read(&project.source)) {
        [Ok(first), Ok(second)] => differences([&before.source, &after.source], [&first, &second]),
        _ => Vec::new(),
    };
    let baseline = quick_told(&mut Bench::new(before)).checks;
    let alone = alone(before, &found);
    let told = |(one, alone): (Difference, &Result<Vec<CheckTold>, Alone>)| InputMoved {
        path: one.path,
        change: one.change,
        before: one.before,
        after: one.after,
        alone: match alone {
            Err(why) => *why,
            Ok(checks) if is_same_list(&baseline, checks) => Alone::MovesNothing,
            Ok(_) => Alone::Moves,
        },
    };
    let mut checks = Vec::new();
    let mut unmoved = 0;
    for id in crate::calc::CheckId::ALL.iter().map(|check| check.id()) {
        let of = |checks: &[CheckTold]| checks.iter().find(|check| check.id == id).cloned();
        let (was, is) = (of(&old.checks), of(&new.checks));
        if is_same(was.as_ref(), is.as_ref()) {
            unmoved += usize::from(is.is_some());
            continue;
        }
        let steps = match (was.as_ref().and_then(|check| check.at), &is) {
            (Some(at), Some(now)) => walk([(before, &at), (after, &now.at.unwrap_or(at))], now, uses),
            _ => Vec::new(),
        };
        let base = of(&baseline);
        let by = alone.iter().enumerate().filter_map(|(input, came)| {
            let check = of(came.as_ref().ok()?);
            let moved = MovedBy {
                input,
                utilisation: check.as_ref().and_then(|check| check.utilisation),
                status: check.as_ref().map(|check| check.status),
            };
            (!is_same(base.as_ref(), check.as_ref())).then_some(moved)
        });
        checks.push(CheckMoved { id, before: was, after: is, by: by.collect(), steps });
    }
    let sides = [side(before, &old), side(after, &new)];
    Compared { sides, inputs: found.into_iter().zip(&alone).map(told).collect(), checks, unmoved }
}

/// Every difference put into the first file by itself.
fn alone(before: &Project, found: &[Difference]) -> Vec<Result<Vec<CheckTold>, Alone>> {
    let mut known: Vec<(&Patch, Result<Vec<CheckTold>, Alone>)> = Vec::new();
    let mut all = Vec::new();
    for one in found {
        let Some(patch) = &one.patch else {
            all.push(Err(Alone::MovesNothing));
            continue;
        };
        let place = known.iter().position(|(tried, _)| *tried == patch).unwrap_or_else(|| {
            let came = if known.len() < TRIED_MAX {
                let project = read(&patch.applied(&before.source), System::Si);
                project.map(|project| quick_told(&mut Bench::new(&project)).checks).map_err(|_| Alone::NotAlone)
            } else {
                Err(Alone::NotTried)
            };
            known.push((patch, came));
            known.len() - 1
        });
        all.push(known[place].1.clone());
    }
    all
}

fn is_same_list(before: &[CheckTold], after: &[CheckTold]) -> bool {
    let alike = |(before, after): (&CheckTold, &CheckTold)| before.id == after.id && is_same(Some(before), Some(after));
    before.len() == after.len() && before.iter().zip(after).all(alike)
}

/// Whether a check came out the same to the last bit, wherever it governs.
fn is_same(before: Option<&CheckTold>, after: Option<&CheckTold>) -> bool {
    let told = |check: &CheckTold| {
        let [low, high] = check.span.unwrap_or([f64::NAN; 2]);
        let numbers = [check.value, check.limit, check.utilisation, Some(low), Some(high)];
        // Nothing turned round is still nothing.
        let bits = |number: f64| (number + 0.0).to_bits();
        (numbers.map(|number| number.map(bits)), check.status, check.role, check.reason)
    };
    before.map(told) == after.map(told)
}
