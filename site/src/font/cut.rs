//! The cut itself.

use std::collections::{BTreeMap, BTreeSet};

use anyhow::Context;
use ttf_parser::{Face, GlyphId};

use super::{cff, closure, cmap, sfnt};

/// The name of the cut font; the licence of the uncut one asks for another name than its own.
const NAME: &str = "Steadfoot Math";
const POSTSCRIPT_NAME: &str = "SteadfootMath";

/// The prime. Fonts draw it small and high for use in plain text, and again, larger and lower, for superscripts. In
/// formulas it is always a superscript, but not every browser asks the font for that form.
const PRIME: char = '′';

/// The font with only these characters, glyph numbers kept.
pub fn cut(font: &[u8], characters: &BTreeSet<char>) -> anyhow::Result<Vec<u8>> {
    let face = Face::parse(font, 0).context("the math font cannot be read")?;
    let own = own_glyphs(&face, characters);
    let kept = closure::glyphs(&face, own.values().map(|glyph| GlyphId(*glyph)))?;
    let mut tables = vec![
        (*b"CFF ", cff::cut(sfnt::table(font, b"CFF ")?, POSTSCRIPT_NAME, &kept)?),
        (*b"cmap", cmap::write(&own)),
        (*b"hmtx", widths(&face, sfnt::table(font, b"hmtx")?, &kept)),
        (*b"name", names()),
    ];
    for tag in [b"MATH", b"OS/2", b"head", b"hhea", b"maxp", b"post"] {
        tables.push((*tag, sfnt::table(font, tag)?.to_vec()));
    }
    sfnt::write(tables)
}

/// The glyph of each character that the font has.
fn own_glyphs(face: &Face, characters: &BTreeSet<char>) -> BTreeMap<char, u16> {
    let glyph = |character: &char| Some((*character, face.glyph_index(*character)?.0));
    let mut own: BTreeMap<char, u16> = characters.iter().filter_map(glyph).collect();
    let script = own.get(&PRIME).and_then(|prime| script_form(face, GlyphId(*prime)));
    if let Some(script) = script {
        own.insert(PRIME, script.0);
    }
    own
}

/// The form of a glyph for the first level of scripts.
fn script_form(face: &Face, glyph: GlyphId) -> Option<GlyphId> {
    use ttf_parser::gsub::SubstitutionSubtable;
    let substitutions = face.tables().gsub?;
    let feature = substitutions.features.into_iter().find(|feature| feature.tag.to_bytes() == *b"ssty")?;
    feature.lookup_indices.into_iter().find_map(|lookup| {
        let lookup = substitutions.lookups.get(lookup)?;
        (0..lookup.subtables.len()).find_map(|at| match lookup.subtables.get(at)? {
            SubstitutionSubtable::Alternate(forms) => {
                forms.alternate_sets.get(forms.coverage.get(glyph)?)?.alternates.get(0)
            }
            _ => None,
        })
    })
}

/// The advance widths; zeros for glyphs that are not kept, since they pack into nothing.
fn widths(face: &Face, old: &[u8], kept: &BTreeSet<u16>) -> Vec<u8> {
    let long_records = usize::from(face.tables().hhea.number_of_metrics);
    let mut new = old.to_vec();
    for glyph in (0..face.number_of_glyphs()).filter(|glyph| !kept.contains(glyph)) {
        let at = usize::from(glyph);
        let record = if at < long_records {
            4 * at..4 * at + 4
        } else {
            4 * long_records + 2 * (at - long_records)..4 * long_records + 2 * (at - long_records) + 2
        };
        // The last long record gives the width of all glyphs behind it.
        let gives_width_to_others = at + 1 == long_records && long_records < usize::from(face.number_of_glyphs());
        if let Some(bytes) = new.get_mut(record).filter(|_| !gives_width_to_others) {
            bytes.fill(0);
        }
    }
    new
}

fn names() -> Vec<u8> {
    let texts = [(1, NAME), (2, "Book"), (4, NAME), (6, POSTSCRIPT_NAME)];
    let mut records = Vec::new();
    let mut storage = Vec::new();
    for (id, text) in texts {
        let bytes: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
        // Windows, Unicode, English of the United States.
        for number in [3, 1, 0x0409, id, bytes.len() as u16, storage.len() as u16] {
            records.extend(number.to_be_bytes());
        }
        storage.extend(bytes);
    }
    let count = texts.len() as u16;
    let mut out = Vec::new();
    for number in [0, count, 6 + 12 * count] {
        out.extend(number.to_be_bytes());
    }
    out.extend(records);
    out.extend(storage);
    out
}
