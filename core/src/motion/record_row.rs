//! One line of a record's text: numbers, or words of a header.

use alloc::string::String;
use alloc::vec::Vec;

use crate::input::Problem;
use crate::input::number::number;

/// What a line holds.
pub(super) enum Row<'t> {
    /// Nothing, or a remark.
    Empty,
    /// Numbers, which were pushed, and whether they may be fewer: `0,12` may be one with a comma for its point.
    Numbers { has_decimal_commas: bool },
    /// Something that is no number.
    Words(Wrong<'t>),
}

/// The first thing in a line that is no number.
pub(super) struct Wrong<'t> {
    /// Its offset in the line.
    pub(super) at: usize,
    /// What is wrong with it.
    pub(super) problem: Problem,
    /// It.
    pub(super) given: &'t str,
    /// What would do.
    pub(super) allowed: &'static str,
}

/// Reads a line and pushes its numbers, also those in front of something wrong.
pub(super) fn row<'t>(line: &'t str, values: &mut Vec<f64>) -> Row<'t> {
    let is_blank = |letter: char| letter.is_whitespace() || letter == '\u{feff}';
    let trimmed = line.trim_matches(is_blank);
    if trimmed.is_empty() || trimmed.starts_with(['#', '%', '!', '/']) {
        return Row::Empty;
    }
    let begin = line.len() - line.trim_start_matches(is_blank).len();
    let separator = [';', ','].into_iter().find(|&sign| trimmed.chars().any(|letter| letter == sign));
    let mut at = begin;
    let mut has_decimal_commas = false;
    let mut piece = |token: &'t str, at: usize| -> Option<Wrong<'t>> {
        match value(token) {
            Ok(number) => {
                values.push(number);
                None
            }
            Err((problem, allowed)) => Some(Wrong { at, problem, given: token, allowed }),
        }
    };
    match separator {
        Some(sign) => {
            has_decimal_commas = sign == ',' && looks_like_decimals(trimmed);
            // One separator at the end of a line is a habit of some programs.
            let body = trimmed.strip_suffix(sign).unwrap_or(trimmed);
            for token in body.split(sign) {
                let inner = token.trim();
                let lead = token.len() - token.trim_start().len();
                if let Some(wrong) = piece(inner, at + lead) {
                    return Row::Words(wrong);
                }
                at += token.len() + sign.len_utf8();
            }
        }
        None => {
            // A lone carriage return is no blank: lines that end with it would become one row.
            let is_gap = |letter: char| letter.is_whitespace() && letter != '\r';
            for token in trimmed.split(is_gap).filter(|token| !token.is_empty()) {
                at = begin + (token.as_ptr() as usize - trimmed.as_ptr() as usize);
                if let Some(wrong) = piece(token, at) {
                    return Row::Words(wrong);
                }
            }
        }
    }
    Row::Numbers { has_decimal_commas }
}

/// Whether every second comma of a row stands between digits as a point would: the digits behind it bare, no blank about.
fn looks_like_decimals(row: &str) -> bool {
    let tokens = row.split(',');
    let is_bare = |token: &str| !token.is_empty() && token.bytes().all(|byte| byte.is_ascii_digit());
    let is_whole = |token: &str| is_bare(token.trim_start().trim_start_matches(['-', '+']));
    let count = tokens.clone().count();
    count.is_multiple_of(2)
        && tokens.enumerate().all(|(place, token)| if place % 2 == 0 { is_whole(token) } else { is_bare(token) })
}

/// The number of a token in the ways in which programs write numbers: `.5`, `+1.`, `-3.2D-02`.
fn value(token: &str) -> Result<f64, (Problem, &'static str)> {
    if token.contains(|letter: char| letter.is_whitespace()) || token.contains(',') {
        return Err((Problem::NotANumber, "a point before the decimals, and one kind of separator"));
    }
    let (sign, rest) = match token.strip_prefix('-') {
        Some(rest) => ("-", rest),
        None => ("", token.strip_prefix('+').unwrap_or(token)),
    };
    let lower = |word: &str| rest.eq_ignore_ascii_case(word);
    if lower("nan") || lower("inf") || lower("infinity") {
        return Err((Problem::NotFinite, "a number"));
    }
    let is_number = |text: &str| text.bytes().next().is_some_and(|byte| byte.is_ascii_digit() || byte == b'.');
    if !is_number(rest) || rest == "." {
        return Err((Problem::NotANumber, "a number"));
    }
    let (mantissa, power) = match rest.split_once(['e', 'E', 'd', 'D']) {
        Some((mantissa, power)) => (mantissa, Some(power)),
        None => (rest, None),
    };
    let (whole, decimals) = mantissa.split_once('.').unwrap_or((mantissa, ""));
    let mut plain = String::from(sign);
    let whole = whole.trim_start_matches('0');
    plain.push_str(if whole.is_empty() { "0" } else { whole });
    if !decimals.is_empty() {
        plain.push('.');
        plain.push_str(decimals);
    }
    if let Some(power) = power {
        plain.push('e');
        plain.push_str(power);
    }
    match number(&plain) {
        Some(found) if found.is_finite() => Ok(found),
        Some(_) => Err((Problem::NotFinite, "a number")),
        None => Err((Problem::NotANumber, "a number")),
    }
}

/// What the lines in front of the first number say.
#[derive(Default)]
pub(super) struct Header {
    /// The time step.
    pub(super) step_s: Option<f64>,
    /// How many values there are.
    pub(super) count: Option<usize>,
}

impl Header {
    /// Takes `NPTS= 5372, DT= .0100 SEC` or `5372 0.01 NPTS, DT`; any other line says nothing.
    pub(super) fn take(&mut self, line: &str) {
        let is_part = |letter: char| letter.is_ascii_alphanumeric() || matches!(letter, '.' | '+' | '-');
        let words: Vec<&str> = line.split(|letter: char| !is_part(letter)).filter(|word| !word.is_empty()).collect();
        // `DT= .01` says it itself, whatever else stands in the line.
        let behind = |place: usize| words.get(place + 1).and_then(|word| value(word).ok());
        let mut asked: Vec<(bool, Option<f64>)> = Vec::new();
        for (place, word) in words.iter().enumerate() {
            if word.eq_ignore_ascii_case("dt") {
                asked.push((true, behind(place)));
            } else if word.eq_ignore_ascii_case("npts") {
                asked.push((false, behind(place)));
            }
        }
        if asked.iter().any(|(_, found)| found.is_none()) {
            // Numbers in front of the words are theirs only where they are as many.
            let numbers: Vec<f64> = words.iter().filter_map(|word| value(word).ok()).collect();
            if numbers.len() != asked.len() {
                return;
            }
            asked.iter_mut().zip(numbers).for_each(|((_, found), number)| *found = Some(number));
        }
        for (is_step, found) in asked {
            let Some(found) = found else { continue };
            if is_step {
                self.step_s = Some(found);
            } else if (1.0..1e9).contains(&found) {
                self.count = Some(found as usize);
            }
        }
    }
}
