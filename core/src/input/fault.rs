//! Faults: where, what, and what would do.

use alloc::string::String;

/// What is wrong with one place of the input.
#[derive(Clone, PartialEq, Eq, Debug, serde::Serialize)]
pub struct Fault {
    /// Where: `cabinet.feet[2].size_mm[0]`; empty for the text as a whole.
    pub path: String,
    /// What is wrong.
    pub problem: Problem,
    /// What stands there, cut at 60 characters.
    pub given: String,
    /// What would do, as text in the reader's units; empty where nothing can be said.
    pub allowed: String,
    /// Line in the text, from 1.
    pub line: u32,
    /// Column in the line, in characters, from 1.
    pub column: u32,
}

/// The kinds of problems.
#[derive(Clone, Copy, PartialEq, Eq, Debug, serde::Serialize)]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)]
pub enum Problem {
    NotJson,
    TooLong,
    TooDeep,
    TooMany,
    NotAFormat,
    Missing,
    UnknownKey,
    DuplicateKey,
    NotANumber,
    NotFinite,
    BelowLimit,
    AboveLimit,
    NotAText,
    NotAFlag,
    NotAList,
    NotAnObject,
    WrongCount,
    NotAWord,
    EmptyName,
    NameTooLong,
    DuplicateName,
    ReservedName,
    UnknownName,
    OutsideBase,
    OnOnePlace,
    OutsideSlab,
    NoMass,
    NeedsOneOf,
    Excludes,
    NotInRule,
    MoreFaults,
}

impl Problem {
    /// All problems, in the order of [`PROBLEM_TEXTS`].
    pub const COUNT: usize = PROBLEM_TEXTS.len();
}

/// What each problem says, in the order of [`Problem`].
pub static PROBLEM_TEXTS: [&str; 31] = [
    "this is not JSON",
    "the text is too long",
    "it is nested too deep",
    "there are too many",
    "this is not a format that can be read",
    "this is missing",
    "there is no such key here",
    "this key stands twice",
    "a number belongs here",
    "a number belongs here that is not beyond all bounds",
    "the number is too small",
    "the number is too large",
    "a text belongs here",
    "true or false belongs here",
    "a list belongs here",
    "an object belongs here",
    "the list has the wrong length",
    "one of a few words belongs here",
    "a name may not be empty",
    "the name is too long",
    "the name is used twice",
    "the name is reserved",
    "nothing has this name",
    "it lies outside the base of the cabinet",
    "two of them stand on one place",
    "it lies outside the slab",
    "there is no mass at all",
    "one of several fields is needed",
    "these fields exclude each other",
    "the rule does not reach this",
    "more faults follow",
];
