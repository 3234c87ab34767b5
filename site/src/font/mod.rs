//! The font of the formulas: an OpenType math font cut down to the characters that formulas use.
//!
//! Glyph numbers are kept and the table of mathematical measures is copied byte by byte, since every number in it is a
//! glyph number or a measure of one. Glyphs that no formula can reach become empty.

pub mod cff;
pub mod characters;
pub mod charstring;
pub mod closure;
pub mod cmap;
pub mod coverage;
pub mod cut;
pub mod dictionary;
pub mod index;
pub mod licence;
pub mod sfnt;
pub mod source;

use std::{fs, path::Path};

use anyhow::Context;
use sha2::{Digest, Sha256};

/// A cut of an OpenType math font, and the notice that travels with it.
pub struct MathFont {
    pub woff2: Vec<u8>,
    pub licence: String,
}

/// What the cut depends on besides the source font; a change to any of these makes a new cut.
const CUTTER: [&str; 11] = [
    include_str!("mod.rs"),
    include_str!("cff.rs"),
    include_str!("characters.rs"),
    include_str!("charstring.rs"),
    include_str!("closure.rs"),
    include_str!("cmap.rs"),
    include_str!("cut.rs"),
    include_str!("dictionary.rs"),
    include_str!("index.rs"),
    include_str!("sfnt.rs"),
    include_str!("source.rs"),
];

impl MathFont {
    /// The font that was cut by an earlier run, or a new cut, kept for the next run.
    pub fn kept_or_cut(kept: &Path) -> anyhow::Result<Self> {
        let source = source::math_font()?;
        let licence = licence::notice(source)?;
        let path = kept.join(format!("math-{}.woff2", key(source)));
        if let Ok(woff2) = fs::read(&path) {
            return Ok(Self { woff2, licence });
        }
        let cut = cut::cut(source, &characters::all())?;
        let woff2 = compress(&cut)?;
        fs::create_dir_all(kept).with_context(|| format!("{} cannot be made", kept.display()))?;
        fs::write(&path, &woff2).with_context(|| format!("{} cannot be written", path.display()))?;
        Ok(Self { woff2, licence })
    }
}

/// The font packed for the web.
pub fn compress(font: &[u8]) -> anyhow::Result<Vec<u8>> {
    ttf2woff2::encode(font, ttf2woff2::BrotliQuality::default()).context("the math font could not be packed")
}

fn key(source: &[u8]) -> String {
    let mut hash = Sha256::new();
    hash.update(source);
    for part in CUTTER {
        hash.update(part);
    }
    hash.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect()
}
