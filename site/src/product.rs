//! What is made once and used by every output.

use crate::{font::MathFont, formula::Typesetter, kept::Kept, notice, parts::Parts, style_attribute::StyleClasses};

/// The parts of the outputs, ready for use.
pub struct Product {
    pub typesetter: Typesetter,
    pub kept: Kept,
    pub parts: Parts,
    /// The script that holds the first text tables.
    pub texts: String,
    /// The script that holds the page's code and the first part of the engine.
    pub script: String,
    /// The script that holds the rest of the engine and of the text tables.
    pub later: String,
    /// The script that holds everything, packed, for the one-file page.
    pub one_file_script: String,
    pub font: MathFont,
}

impl Product {
    /// The style of a whole page; the font is loaded from the address given.
    pub fn style(&self, font_address: &str, classes: &StyleClasses) -> String {
        // The family is set on the formula only: set on what is inside it as well, Firefox no longer makes scripts smaller.
        format!(
            "@font-face{{font-family:\"Steadfoot Math\";src:url({font_address}) format(\"woff2\")}}\n\
             math{{font-family:\"Steadfoot Math\",\"STIX Two Math\",\"Cambria Math\",\"Latin Modern Math\",math}}\n{}{}{}{}{}",
            self.parts.still_style,
            self.parts.document_style,
            classes.css(),
            notice::STYLE,
            notice::STYLE_MARK,
        )
    }
}
