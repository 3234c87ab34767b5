//! The engine's formulas and numbers as MathML, filled as the page fills them.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use steadfoot::calc::formula::{Typeset, symbol_mathml, typeset};
use steadfoot::calc::{Shape, StepText};
use steadfoot::study::tables;

use crate::document::escaped;

/// One formula in a line of its own.
pub fn math(markup: &str) -> String {
    format!("<math displaystyle=\"true\"><mrow>{markup}</mrow></math>")
}

/// A symbol, of an indexed quantity that of its place: `T_i` becomes T with 3 beneath.
pub fn symbol(name: &str, index: u16) -> String {
    match name.strip_suffix("_i") {
        Some(base) if index > 0 => symbol_mathml(&format!("{base}_{index}")),
        _ if index > 0 => format!("<msub><mrow>{}</mrow><mn>{index}</mn></msub>", symbol_mathml(name)),
        _ => symbol_mathml(name),
    }
}

/// The formula of a row, set.
pub fn formula(row: &StepText) -> Option<Typeset> {
    match row.shape {
        Shape::Formula(text) => typeset(text).ok(),
        _ => None,
    }
}

/// A formula whose every name is filled.
pub fn filled(set: &Typeset, fill: impl Fn(&str) -> String) -> String {
    let mut markup = String::new();
    for sign in set.template.chars() {
        let place = (sign as u32).checked_sub(0xe000).map(|place| place as usize);
        match place.and_then(|place| set.symbols.get(place)) {
            Some(name) => markup.push_str(&fill(name)),
            None => markup.push(sign),
        }
    }
    markup
}

/// A printed number: a power of ten is set as a power, a negative number inside a formula stands in parentheses.
pub fn number(text: &str, is_inside: Inside) -> String {
    let (digits, exponent) = text.split_once("×10").unwrap_or((text, ""));
    let mut markup = format!("<mn>{digits}</mn>");
    if !exponent.is_empty() {
        markup =
            format!("<mrow>{markup}<mo>×</mo><msup><mn>10</mn><mn>{}</mn></msup></mrow>", plain_exponent(exponent));
    }
    if is_inside == Inside::Formula && text.starts_with('−') {
        markup = format!("<mrow><mo>(</mo>{markup}<mo>)</mo></mrow>");
    }
    markup
}

/// Where a number stands.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Inside {
    /// Between other parts of a formula.
    Formula,
    /// Alone, as a result.
    Nothing,
}

fn plain_exponent(raised: &str) -> String {
    let plain = |sign: char| match sign {
        '⁻' => Some('−'),
        '^' => None,
        other => "⁰¹²³⁴⁵⁶⁷⁸⁹"
            .chars()
            .position(|digit| digit == other)
            .map_or(Some(other), |digit| char::from_digit(digit as u32, 10)),
    };
    raised.chars().filter_map(plain).collect()
}

/// A printed number with its unit.
pub fn quantity(text: &str) -> String {
    let (digits, unit) = text.split_once('\u{a0}').unwrap_or((text, ""));
    let mut markup = number(digits, Inside::Nothing);
    if !unit.is_empty() {
        let factors: Vec<String> = unit.split('·').map(factor).collect();
        markup += &format!("<mspace width=\"0.25em\"></mspace>{}", factors.join("<mtext>·</mtext>"));
    }
    markup
}

fn factor(unit: &str) -> String {
    match unit.split_once('^') {
        None => format!("<mtext>{unit}</mtext>"),
        Some((name, power)) => {
            format!("<msup><mtext>{name}</mtext><mtext>{}</mtext></msup>", power.replace(['(', ')'], ""))
        }
    }
}

/// Plain text in which names such as h_ef are set as formulas set them.
pub fn with_symbols(text: &str) -> String {
    let text = text.replace(" - ", " − ");
    let is_part = |c: char| c.is_ascii_alphanumeric() || c == '_' || c == '\'';
    let mut markup = String::new();
    let mut rest = text.as_str();
    while let Some(start) = rest.find(is_part) {
        let word = &rest[start..];
        let word = &word[..word.find(|c| !is_part(c)).unwrap_or(word.len())];
        markup += &escaped(&rest[..start]);
        if is_symbol(word) {
            markup += &format!("<math>{}</math>", symbol_mathml(word));
        } else {
            markup += &escaped(word);
        }
        rest = &rest[start + word.len()..];
    }
    markup + &escaped(rest)
}

/// A name of the tables, or one capital with something beneath, as load cases are called (E_h).
fn is_symbol(word: &str) -> bool {
    let is_capital = |base: &str| base.len() == 1 && base.chars().all(|c| c.is_ascii_uppercase());
    word.split_once('_').is_some_and(|(base, _)| is_capital(base) || SYMBOLS.contains(word))
}

static SYMBOLS: LazyLock<BTreeSet<String>> = LazyLock::new(|| {
    let rows = tables().into_iter().flat_map(|table| table.rows);
    let rows = rows.filter(|row| !matches!(row.shape, Shape::Name | Shape::Reason));
    rows.map(|row| row.symbol.to_string()).collect()
});

#[cfg(test)]
mod tests {
    use super::{Inside, number, quantity, symbol, with_symbols};

    #[test]
    fn numbers_and_units_are_set() {
        assert_eq!(
            number("−4.2×10⁻³", Inside::Nothing),
            "<mrow><mn>−4.2</mn><mo>×</mo><msup><mn>10</mn><mn>−3</mn></msup></mrow>"
        );
        assert_eq!(quantity("12.4\u{a0}kN"), "<mn>12.4</mn><mspace width=\"0.25em\"></mspace><mtext>kN</mtext>");
        assert!(quantity("10\u{a0}N^(1/2)·mm^(−1)").ends_with("<msup><mtext>mm</mtext><mtext>−1</mtext></msup>"));
    }

    #[test]
    fn an_indexed_symbol_carries_its_place() {
        assert_eq!(symbol("T_i", 3), "<msub><mi>T</mi><mi>3</mi></msub>");
        assert_eq!(symbol("T_i", 0), "<msub><mi>T</mi><mi>i</mi></msub>");
    }

    #[test]
    fn only_known_names_become_symbols() {
        let markup = with_symbols("nearer than 0.4 h_ef & no_name");
        assert_eq!(markup, "nearer than 0.4 <math><msub><mi>h</mi><mi>ef</mi></msub></math> &amp; no_name");
    }
}
