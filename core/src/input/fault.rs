//! Faults: where, what, and what would do.

use alloc::string::String;

/// What is wrong with one place of the input.
#[derive(Clone, PartialEq, Eq, Debug, serde::Serialize)]
pub struct Fault {
    /// Where: `cabinet.feet[2].size_mm[0]`; empty for the text as a whole.
    pub path: String,
    /// What is wrong.
    pub problem: Problem,
    /// What stands there as the text writes it (a text with its quotes), cut at 60 characters.
    pub given: String,
    /// What would do, as text in the reader's units; empty where nothing can be said.
    pub allowed: String,
    /// Line in the text, from 1.
    pub line: u32,
    /// Column in the line, in characters, from 1.
    pub column: u32,
}

/// The kinds of problems, in the order of [`PROBLEM_TEXTS`].
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
    NotOneLine,
    DuplicateName,
    ReservedName,
    UnknownName,
    OutsideBase,
    OnOnePlace,
    OutsideSlab,
    OutsideCabinet,
    NeedsOneOf,
    Excludes,
    NotInRule,
    FarFromItsMark,
    MoreFaults,
    UnevenSteps,
    UnlikelyPeak,
    NotARange,
    NotASet,
    CannotBeOpen,
    LooseQuote,
    MixedUnits,
    TwoReadings,
    NotAUnit,
    Overlaps,
    OutsideHall,
    NarrowsAisle,
}

impl Fault {
    /// The fault as a sentence: where, what, what stands there, what would do.
    ///
    /// ```
    /// use steadfoot::calc::System;
    /// let faults = steadfoot::project::read("{\"format\": \"steadfoot 9\"}", System::Si).unwrap_err();
    /// assert_eq!(
    ///     faults[0].sentence(),
    ///     "format (line 1, column 12): this is not a format that can be read here: \"steadfoot 9\"; allowed: \"steadfoot 1\""
    /// );
    /// ```
    pub fn sentence(&self) -> String {
        let mut text = String::new();
        text.push_str(&self.path);
        text.push_str(if self.path.is_empty() { "Line " } else { " (line " });
        push_whole(&mut text, self.line as usize);
        text.push_str(", column ");
        push_whole(&mut text, self.column as usize);
        text.push_str(if self.path.is_empty() { ": " } else { "): " });
        text.push_str(PROBLEM_TEXTS[self.problem as usize]);
        if !self.given.is_empty() {
            text.push_str(": ");
            text.push_str(&self.given);
        }
        if !self.allowed.is_empty() {
            text.push_str("; allowed: ");
            text.push_str(&self.allowed);
        }
        text
    }
}

/// Writes a whole number, without the formatting machinery that the page would have to carry.
pub(crate) fn push_whole(text: &mut String, number: usize) {
    if number >= 10 {
        push_whole(text, number / 10);
    }
    text.push((b'0' + (number % 10) as u8) as char);
}

/// What each problem says, in the order of [`Problem`].
pub static PROBLEM_TEXTS: [&str; 45] = [
    "this is not JSON",
    "the text is too long",
    "it is nested too deep",
    "there are too many",
    "this is not a format that can be read here",
    "this is missing",
    "there is no such key here",
    "this key stands twice",
    "a number belongs here",
    "this is no finite number",
    "the number is too small",
    "the number is too large",
    "a text belongs here",
    "true or false belongs here",
    "a list belongs here",
    "an object belongs here",
    "the list has the wrong length",
    "one of a few words belongs here",
    "a name may not be empty",
    "the text is longer than 200 characters",
    "it has a line break or a control character",
    "the name is used twice",
    "the name is reserved",
    "nothing has this name",
    "it lies outside the base of the cabinet",
    "two of them stand on one place",
    "it lies outside the slab",
    "it lies outside the cabinet",
    "one of several fields is needed",
    "these fields exclude each other",
    "the rule does not reach this",
    "it lies far from its mark",
    "more faults follow",
    "the times do not rise in even steps",
    "a peak as high as this is unlikely",
    "a range is two numbers, the smaller first",
    "a set is two words or more, none of them twice",
    "this has to be known",
    "a quote is never closed, or something follows it",
    "the unit is not that of its column",
    "this can be read in two ways",
    "this is no unit of what the column holds",
    "two cabinets stand in one place",
    "it stands outside the outline of the hall",
    "an aisle is not clear",
];

/// All problems, in the order of [`PROBLEM_TEXTS`].
pub static PROBLEMS: [Problem; 45] = [
    Problem::NotJson,
    Problem::TooLong,
    Problem::TooDeep,
    Problem::TooMany,
    Problem::NotAFormat,
    Problem::Missing,
    Problem::UnknownKey,
    Problem::DuplicateKey,
    Problem::NotANumber,
    Problem::NotFinite,
    Problem::BelowLimit,
    Problem::AboveLimit,
    Problem::NotAText,
    Problem::NotAFlag,
    Problem::NotAList,
    Problem::NotAnObject,
    Problem::WrongCount,
    Problem::NotAWord,
    Problem::EmptyName,
    Problem::NameTooLong,
    Problem::NotOneLine,
    Problem::DuplicateName,
    Problem::ReservedName,
    Problem::UnknownName,
    Problem::OutsideBase,
    Problem::OnOnePlace,
    Problem::OutsideSlab,
    Problem::OutsideCabinet,
    Problem::NeedsOneOf,
    Problem::Excludes,
    Problem::NotInRule,
    Problem::FarFromItsMark,
    Problem::MoreFaults,
    Problem::UnevenSteps,
    Problem::UnlikelyPeak,
    Problem::NotARange,
    Problem::NotASet,
    Problem::CannotBeOpen,
    Problem::LooseQuote,
    Problem::MixedUnits,
    Problem::TwoReadings,
    Problem::NotAUnit,
    Problem::Overlaps,
    Problem::OutsideHall,
    Problem::NarrowsAisle,
];
