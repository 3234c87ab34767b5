//! The characters that formulas may use.

use std::{collections::BTreeSet, ops::RangeInclusive};

/// Plain characters but the signs of bookkeeping and programming, and the italic form that a single letter of a formula takes.
const RANGES: [RangeInclusive<char>; 9] = [
    ' '..='!',
    '%'..='%',
    '\''..='?',
    'A'..='[',
    ']'..='^',
    'a'..='~',
    // Italic Latin; the gap at h is filled by the Planck constant below.
    '\u{1d434}'..='\u{1d454}',
    '\u{1d456}'..='\u{1d467}',
    // Invisible operators.
    '\u{2061}'..='\u{2064}',
];

/// Greek capitals that no Latin one looks like; the italic ones follow. Small Greek is italic only.
const GREEK: &str = "ΓΔΘΛΞΠΣΦΨΩαμ𝛤𝛥𝛩𝛬𝛯𝛱𝛴𝛷𝛹𝛺𝛼𝛽𝛾𝛿𝜀𝜁𝜂𝜃𝜄𝜅𝜆𝜇𝜈𝜉𝜋𝜌𝜎𝜏𝜐𝜑𝜒𝜓𝜔𝜕𝜖𝜗𝜙";

const SIGNS: &str = "\u{a0}\u{202f}ℎ°±·×÷‐–—‖…′″∂∅∆∇∈∉∏∑−∗∘√∝∞∠∣∥∧∨∩∪∫∼≃≈≔≠≡≤≥≪≫⊂⊆⊥⋅⋮⋯⋱⌈⌉⌊⌋⟨⟩←↑→↓⇒";

/// Marks above and below, spacing and combining.
const MARKS: &str = "ˆ˜¯˙¨\u{302}\u{303}\u{304}\u{305}\u{307}\u{308}\u{332}\u{20d7}";

/// All of them.
pub fn all() -> BTreeSet<char> {
    RANGES.into_iter().flatten().chain([GREEK, SIGNS, MARKS].into_iter().flat_map(str::chars)).collect()
}

#[cfg(test)]
mod tests {
    use super::all;

    #[test]
    fn letters_digits_and_signs_of_formulas_are_there() {
        let all = all();
        for character in "f′cN√∑≤·×0.9𝑓𝑁𝜑𝜓𝜆ℎΔ(){}[]|".chars() {
            assert!(all.contains(&character), "{character}");
        }
    }
}
