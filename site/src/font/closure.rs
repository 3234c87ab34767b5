//! Which glyphs the characters reach.

use std::collections::BTreeSet;

use anyhow::Context;
use ttf_parser::{Face, GlyphId, math::GlyphConstructions};

/// The missing-glyph box, the characters' own glyphs, and their larger forms and the pieces of those.
pub fn glyphs(face: &Face, own: impl Iterator<Item = GlyphId>) -> anyhow::Result<BTreeSet<u16>> {
    let variants =
        face.tables().math.and_then(|math| math.variants).context("the font has no table of larger forms")?;
    let mut reached = BTreeSet::from([0]);
    let mut open: Vec<GlyphId> = own.collect();
    while let Some(glyph) = open.pop() {
        if !reached.insert(glyph.0) {
            continue;
        }
        for constructions in [&variants.vertical_constructions, &variants.horizontal_constructions] {
            open.extend(larger_forms(constructions, glyph));
        }
    }
    Ok(reached)
}

fn larger_forms(constructions: &GlyphConstructions, glyph: GlyphId) -> Vec<GlyphId> {
    let Some(construction) = constructions.get(glyph) else {
        return Vec::new();
    };
    let sizes = construction.variants.into_iter().map(|variant| variant.variant_glyph);
    let pieces = construction.assembly.iter().flat_map(|assembly| assembly.parts).map(|part| part.glyph_id);
    sizes.chain(pieces).collect()
}
