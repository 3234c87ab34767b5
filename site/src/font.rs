//! The font of the formulas.

use std::path::Path;

/// A cut of an OpenType math font, and the licence that travels with it.
pub struct MathFont {
    pub woff2: Vec<u8>,
    pub licence: String,
}

impl MathFont {
    /// The font that was cut by an earlier run, or a new cut.
    pub fn kept_or_cut(_kept: &Path) -> anyhow::Result<Option<Self>> {
        Ok(None)
    }
}
