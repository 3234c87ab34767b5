//! The document.

use crate::calc::Document;

/// EN 1992-4:2018.
pub static EN_1992_4: Document = Document {
    short: "EN 1992-4:2018",
    title: "EN 1992-4:2018, Eurocode 2: Design of concrete structures, Part 4: Design of fastenings for use in concrete",
};
/// EN 1993-1-8:2005, for the strengths of property classes.
pub static EN_1993_1_8: Document = Document {
    short: "EN 1993-1-8:2005",
    title: "EN 1993-1-8:2005, Eurocode 3: Design of steel structures, Part 1-8: Design of joints",
};
