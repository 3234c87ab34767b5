//! The cautions that stand on every page, every printed sheet and every exported file.

/// The cautions, in the order in which they are printed.
pub static CAUTIONS: &[&str] = &[
    "These results are estimates for checking and discussion. A licensed engineer and the local code govern.",
    "Anchors need approval data and inspection; the torque and the drilling follow the maker's data.",
    "The texts of rules here are transcriptions from published and secondary sources; how far each line can be trusted stands beside it.",
    "A result that leaves the range of a clause says so where it stands: not covered is never a pass.",
    "Bolts that reach the slab through a raised floor or a stand-off bend; only EN 1992-4 has a rule for that here, and with any other it is not covered.",
];
