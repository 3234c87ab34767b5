//! The cut math font against the uncut one: same numbers, same measures, same outlines.

use std::collections::BTreeSet;

use steadfoot_site::font::{characters, closure, cut, sfnt, source};
use ttf_parser::{Face, GlyphId, OutlineBuilder};

fn uncut() -> &'static [u8] {
    source::math_font().expect("the font package carries the font")
}

fn cut_font() -> Vec<u8> {
    cut::cut(uncut(), &characters::all()).expect("the font is cut")
}

fn kept() -> BTreeSet<u16> {
    let cut = cut_font();
    let cut = Face::parse(&cut, 0).unwrap();
    let own = characters::all().into_iter().filter_map(|character| cut.glyph_index(character));
    closure::glyphs(&Face::parse(uncut(), 0).unwrap(), own).unwrap()
}

/// An outline as text, to the last bit of its numbers.
#[derive(Default)]
struct Outline(String);

impl Outline {
    fn of(face: &Face, glyph: u16) -> String {
        let mut outline = Self::default();
        face.outline_glyph(GlyphId(glyph), &mut outline);
        outline.0
    }
}

impl OutlineBuilder for Outline {
    fn move_to(&mut self, x: f32, y: f32) {
        self.0 += &format!("M{x} {y}");
    }
    fn line_to(&mut self, x: f32, y: f32) {
        self.0 += &format!("L{x} {y}");
    }
    fn quad_to(&mut self, x1: f32, y1: f32, x: f32, y: f32) {
        self.0 += &format!("Q{x1} {y1} {x} {y}");
    }
    fn curve_to(&mut self, x1: f32, y1: f32, x2: f32, y2: f32, x: f32, y: f32) {
        self.0 += &format!("C{x1} {y1} {x2} {y2} {x} {y}");
    }
    fn close(&mut self) {
        self.0 += "Z";
    }
}

#[test]
fn glyph_numbers_stay() {
    let cut = cut_font();
    let (cut, uncut) = (Face::parse(&cut, 0).unwrap(), Face::parse(uncut(), 0).unwrap());
    assert_eq!(cut.number_of_glyphs(), uncut.number_of_glyphs());
    let mut found = 0;
    for character in characters::all() {
        if let Some(glyph) = uncut.glyph_index(character) {
            found += 1;
            // The prime alone leads elsewhere, to the form that stands in superscripts.
            assert_eq!(cut.glyph_index(character) == Some(glyph), character != '′', "{character}");
        }
    }
    assert!(found > 230, "only {found} characters are in the font");
    assert_eq!(cut.glyph_index('ж'), None);
}

#[test]
fn the_table_of_mathematical_measures_stays_byte_by_byte() {
    let cut = cut_font();
    assert_eq!(sfnt::table(&cut, b"MATH").unwrap(), sfnt::table(uncut(), b"MATH").unwrap());
    assert_eq!(sfnt::table(&cut, b"hhea").unwrap(), sfnt::table(uncut(), b"hhea").unwrap());
    assert_eq!(sfnt::table(&cut, b"OS/2").unwrap(), sfnt::table(uncut(), b"OS/2").unwrap());
}

#[test]
fn kept_glyphs_have_the_same_outline_and_width_and_the_others_are_empty() {
    let cut = cut_font();
    let (cut, uncut) = (Face::parse(&cut, 0).unwrap(), Face::parse(uncut(), 0).unwrap());
    let kept = kept();
    assert!((300..800).contains(&kept.len()), "{} glyphs are kept", kept.len());
    for glyph in 0..uncut.number_of_glyphs() {
        let outline = Outline::of(&cut, glyph);
        if kept.contains(&glyph) {
            assert_eq!(outline, Outline::of(&uncut, glyph), "glyph {glyph}");
            assert_eq!(cut.glyph_hor_advance(GlyphId(glyph)), uncut.glyph_hor_advance(GlyphId(glyph)), "glyph {glyph}");
        } else {
            assert_eq!(outline, "", "glyph {glyph}");
        }
    }
}

#[test]
fn brackets_and_roots_keep_every_size_and_piece() {
    let uncut_face = Face::parse(uncut(), 0).unwrap();
    let variants = uncut_face.tables().math.unwrap().variants.unwrap();
    let kept = kept();
    for character in "()[]{}|‖⌊⌋⌈⌉⟨⟩√∑∏∫".chars() {
        let glyph = uncut_face.glyph_index(character).unwrap();
        let construction = variants.vertical_constructions.get(glyph).unwrap();
        for variant in construction.variants {
            assert!(kept.contains(&variant.variant_glyph.0), "{character}: a size is missing");
        }
        for part in construction.assembly.iter().flat_map(|assembly| assembly.parts) {
            assert!(kept.contains(&part.glyph_id.0), "{character}: a piece is missing");
        }
    }
}

#[test]
fn the_packed_font_keeps_its_budget() {
    let packed = steadfoot_site::font::compress(&cut_font()).expect("the font is packed");
    assert!(packed.len() <= 60_000, "{} bytes", packed.len());
}
