//! The table that leads from characters to glyphs.

use std::collections::BTreeMap;

/// A run of characters whose glyphs run alike.
struct Run {
    first: u32,
    last: u32,
    glyph: u16,
}

/// Formats 4 (characters of 16 bits, for what reads nothing else) and 12 (all characters).
pub fn write(glyphs: &BTreeMap<char, u16>) -> Vec<u8> {
    let all = runs(glyphs.iter().map(|(character, glyph)| (u32::from(*character), *glyph)));
    let short = runs(glyphs.iter().map(|(c, glyph)| (u32::from(*c), *glyph)).filter(|(c, _)| *c < 0xffff));
    let (short, all) = (format_4(&short), format_12(&all));
    let mut out = Vec::new();
    put_16(&mut out, &[0, 2]);
    let first_at = 4 + 2 * 8;
    put_16(&mut out, &[3, 1]);
    put_32(&mut out, &[first_at]);
    put_16(&mut out, &[3, 10]);
    put_32(&mut out, &[first_at + short.len() as u32]);
    out.extend(short);
    out.extend(all);
    out
}

fn runs(glyphs: impl Iterator<Item = (u32, u16)>) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for (character, glyph) in glyphs {
        match runs.last_mut() {
            Some(run)
                if character == run.last + 1 && u32::from(glyph) == u32::from(run.glyph) + character - run.first =>
            {
                run.last = character;
            }
            _ => runs.push(Run { first: character, last: character, glyph }),
        }
    }
    runs
}

fn format_4(runs: &[Run]) -> Vec<u8> {
    // The format asks for a last run of the character 0xffff that leads to no glyph.
    let count = runs.len() as u16 + 1;
    let power = count.ilog2() as u16;
    let search_range = 2 << power;
    let mut out = Vec::new();
    put_16(&mut out, &[4, 16 + 8 * count, 0, 2 * count, search_range, power, 2 * count - search_range]);
    out.extend(runs.iter().flat_map(|run| (run.last as u16).to_be_bytes()));
    put_16(&mut out, &[0xffff, 0]);
    out.extend(runs.iter().flat_map(|run| (run.first as u16).to_be_bytes()));
    put_16(&mut out, &[0xffff]);
    out.extend(runs.iter().flat_map(|run| run.glyph.wrapping_sub(run.first as u16).to_be_bytes()));
    put_16(&mut out, &[1]);
    out.resize(out.len() + 2 * usize::from(count), 0);
    out
}

fn format_12(runs: &[Run]) -> Vec<u8> {
    let mut out = Vec::new();
    put_16(&mut out, &[12, 0]);
    put_32(&mut out, &[16 + 12 * runs.len() as u32, 0, runs.len() as u32]);
    for run in runs {
        put_32(&mut out, &[run.first, run.last, u32::from(run.glyph)]);
    }
    out
}

fn put_16(out: &mut Vec<u8>, numbers: &[u16]) {
    out.extend(numbers.iter().flat_map(|number| number.to_be_bytes()));
}

fn put_32(out: &mut Vec<u8>, numbers: &[u32]) {
    out.extend(numbers.iter().flat_map(|number| number.to_be_bytes()));
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use ttf_parser::cmap;

    #[test]
    fn every_character_leads_to_its_glyph_in_both_formats() {
        let glyphs = BTreeMap::from([('a', 5), ('b', 6), ('c', 3), ('√', 1001), ('𝑥', 3570), ('𝑦', 3571)]);
        let written = super::write(&glyphs);
        let table = cmap::Table::parse(&written).unwrap();
        for subtable in table.subtables {
            for (character, glyph) in &glyphs {
                if subtable.encoding_id == 1 && u32::from(*character) > 0xffff {
                    continue;
                }
                assert_eq!(subtable.glyph_index(u32::from(*character)).map(|id| id.0), Some(*glyph), "{character}");
            }
            assert_eq!(subtable.glyph_index(u32::from('d')), None);
        }
    }
}
