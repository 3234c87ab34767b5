//! The notice that travels with the cut font.

use anyhow::Context;
use ttf_parser::{Face, name_id};

use super::source;

/// Who made the font, under which terms, and what was changed.
pub fn notice(font: &[u8]) -> anyhow::Result<String> {
    let face = Face::parse(font, 0).context("the math font cannot be read")?;
    let copyright = source::name(&face, name_id::COPYRIGHT_NOTICE).context("the math font states no copyright")?;
    let version = source::name(&face, name_id::VERSION).unwrap_or_default();
    Ok(format!(
        "\"Steadfoot Math\" (math.woff2, and the font within steadfoot.html) is an altered cut of {name}, version {version}.\n\n\
         {copyright}\n\n\
         The GUST Font License 1.0 allows distribution and change under the LaTeX Project Public License, version 1.3c or\n\
         later (https://www.latex-project.org/lppl/), and asks that an altered font bear another name.\n\n\
         Altered: glyphs that the formulas here do not use are empty; subroutines of the outlines are written out; the\n\
         prime points to its form for superscripts; substitution, positioning and editing tables are left out; names.\n\
         Unaltered: glyph numbers, the outlines and hints of the glyphs used, advance widths, the table of mathematical measures.\n\n\
         The unaltered font is part of the NewComputerModern fonts (https://ctan.org/pkg/newcomputermodern) and of the Rust\n\
         package typst-assets.\n",
        name = source::NAME,
    ))
}
