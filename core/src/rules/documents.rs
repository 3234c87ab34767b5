//! The documents that the demand rules transcribe.

use crate::calc::Document;

/// Uniform Building Code, 1997.
pub static UBC_1997: Document = Document {
    short: "UBC 1997",
    title: "Uniform Building Code, Volume 2: Structural Engineering Design Provisions, 1997 edition",
};

/// ASCE/SEI 7-16.
pub static ASCE_7_16: Document = Document {
    short: "ASCE 7-16",
    title: "ASCE/SEI 7-16, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
};

/// ASCE/SEI 7-22.
pub static ASCE_7_22: Document = Document {
    short: "ASCE 7-22",
    title: "ASCE/SEI 7-22, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
};
