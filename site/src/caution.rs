//! What stands at the foot of every page.

/// The cautions, each a sentence or two.
pub const CAUTIONS: [&str; 3] = [
    "Results are estimates for checking and discussion. A licensed engineer and the local code govern.",
    "Anchors need approval data and inspection.",
    "The rule texts are transcriptions; how far each can be trusted is stated on its line.",
];
