//! What an assessment tells: plain data for the page and the command line.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use super::answer::Sentence;
use super::not_known::NotKnown;
use crate::calc::{Role, Status};

/// All that is told of one project.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Report {
    /// Version of the engine.
    pub engine: &'static str,
    /// Twelve hex digits of the SHA-256 of the input with defaults written out.
    pub fingerprint: String,
    /// Id of the demand rule.
    pub demand_rule: Option<&'static str>,
    /// Id of the anchor rule.
    pub anchor_rule: Option<&'static str>,
    /// The answer in one word.
    pub verdict: Verdict,
    /// The answer in sentences; the first three make one.
    pub answer: Vec<Sentence>,
    /// All states.
    pub states: Vec<StateTold>,
    /// All load cases of the demand rule.
    pub cases: Vec<CaseTold>,
    /// All checks, in the order of [`crate::calc::CheckId::ALL`].
    pub checks: Vec<CheckTold>,
    /// Place of the check that governs the answer.
    pub governs: Option<usize>,
    /// Utilisation of the required checks by direction.
    pub rose: Vec<RosePoint>,
    /// Rows that say which optional parts are absent and therefore not checked.
    pub absent: Vec<u16>,
    /// What is not known, where the file says so; then everything beside verdict and first sentences stands for what stands
    /// in for it.
    pub unknown: Option<NotKnown>,
}

/// The answer in one word.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// All required checks hold and none is uncovered.
    Holds,
    /// A required check fails.
    DoesNotHold,
    /// None fails, but a required one is not covered.
    CannotBeSaid,
}

/// A state of the cabinet.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct StateTold {
    /// Its name.
    pub name: String,
    /// Mass of frame and contents.
    pub mass_kg: f64,
    /// Mass of the contents alone.
    pub aboard_kg: f64,
    /// Centre of gravity.
    pub centre_mm: [f64; 3],
    /// Moments of inertia about it.
    pub inertia_kgmm2: [f64; 3],
}

/// A load case.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct CaseTold {
    /// Row of its name.
    pub name: u16,
    /// Factor on gravity.
    pub gravity: f64,
    /// Vertical action over the weight, downwards positive.
    pub vertical: f64,
    /// Horizontal action over the weight.
    pub horizontal: f64,
    /// What it is for.
    pub level: &'static str,
    /// Which way the push acts.
    pub directions: &'static str,
}

/// One check as it came out.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct CheckTold {
    /// Its id.
    pub id: &'static str,
    /// State and subject: `full/group-1`.
    pub of: String,
    /// Where it governs.
    pub at: Option<At>,
    /// What is demanded.
    pub value: Option<f64>,
    /// What is allowed.
    pub limit: Option<f64>,
    /// Code of the kind of both.
    pub kind: u16,
    /// Demand over capacity, the upper end of the span; absent where it is not a number.
    pub utilisation: Option<f64>,
    /// The utilisation with anchors four times softer and stiffer, where their stiffness was not given.
    pub span: Option<[f64; 2]>,
    /// Holds, fails, not needed, not covered.
    pub status: Status,
    /// What it counts for.
    pub role: Role,
    /// Row of the reason where it is not needed or not covered.
    pub reason: Option<u16>,
}

/// A place in the sweep, from which the working can be told again.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct At {
    /// Place of the state.
    pub state: usize,
    /// Place of the load case; absent for what depends on no case.
    pub case: Option<usize>,
    /// Whether the load is the one for the anchors.
    pub anchors: bool,
    /// Direction of the push.
    pub direction_rad: f64,
    /// What the check is about.
    pub subject: SubjectTold,
    /// Factor on the anchors' stiffness: 1 or, where it was not given, a quarter or four.
    pub stiffness: f64,
    /// The check.
    pub check: Option<&'static str>,
}

/// A subject in plain words.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
pub struct SubjectTold {
    /// `whole`, `foot`, `anchor` or `group`.
    pub kind: &'static str,
    /// Its number, from 1; 0 for the whole.
    pub number: u16,
}

/// One direction of the rose.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct RosePoint {
    /// Direction of the push.
    pub direction_rad: f64,
    /// The largest utilisation of the required checks; absent where it is not a number.
    pub utilisation: Option<f64>,
    /// Place of the check that governs there.
    pub check: Option<usize>,
    /// From where its working can be told.
    pub at: At,
}
