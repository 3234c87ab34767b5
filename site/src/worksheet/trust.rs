//! How far a clause's transcription can be trusted: one quiet mark, and a legend that says what it means.

use steadfoot::calc::Trust;

use super::words::{trust, trust_meaning};

/// From the most to the least to be trusted.
pub const ORDER: [Trust; 4] = [Trust::Published, Trust::Derived, Trust::Secondary, Trust::Memory];

/// The mark: a disc, a triangle, a half disc, a ring. A letter here, where the page draws it: it stands hundreds of times.
pub fn mark(of: Trust) -> String {
    let sign = match of {
        Trust::Published => '●',
        Trust::Derived => '▲',
        Trust::Secondary => '◐',
        Trust::Memory => '○',
    };
    format!("<span class=\"mark\" role=\"img\" aria-label=\"{}\">{sign}</span>", trust(of))
}

/// What the marks mean.
pub fn legend() -> String {
    let entries: Vec<String> = ORDER
        .iter()
        .map(|&of| format!("<span class=\"entry\">{} {}, {}</span>", mark(of), trust(of), trust_meaning(of)))
        .collect();
    format!("<p class=\"legend\">How far the text of a clause can be trusted: {}.</p>\n", entries.join("; "))
}

/// The least of these.
pub fn least(all: impl Iterator<Item = Trust>) -> Option<Trust> {
    let rank = |of: &Trust| ORDER.iter().position(|known| known == of);
    all.max_by_key(rank)
}
