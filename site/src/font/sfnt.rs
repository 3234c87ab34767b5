//! The container of an OpenType font: a directory of tables.

use anyhow::Context;
use ttf_parser::RawFace;

/// The bytes of a table.
pub fn table<'a>(font: &'a [u8], tag: &[u8; 4]) -> anyhow::Result<&'a [u8]> {
    let face = RawFace::parse(font, 0).context("the font cannot be read")?;
    face.table(ttf_parser::Tag::from_bytes(tag))
        .with_context(|| format!("the font has no table {}", String::from_utf8_lossy(tag)))
}

/// A font with outlines of the compact format, of these tables.
pub fn write(tables: Vec<([u8; 4], Vec<u8>)>) -> anyhow::Result<Vec<u8>> {
    let mut tables = tables;
    tables.sort();
    let count = u16::try_from(tables.len()).context("too many tables")?;
    let power = count.ilog2();
    let search_range = 16u16 << power;
    let mut out = b"OTTO".to_vec();
    for number in [count, search_range, power as u16, count * 16 - search_range] {
        out.extend(number.to_be_bytes());
    }
    let mut at = out.len() + 16 * tables.len();
    let mut head_at = None;
    for (tag, content) in &mut tables {
        if tag == b"head" {
            content.get_mut(8..12).context("the table head is short")?.fill(0);
            head_at = Some(at);
        }
        out.extend_from_slice(tag);
        for number in [checksum(content), u32::try_from(at)?, u32::try_from(content.len())?] {
            out.extend(number.to_be_bytes());
        }
        at += content.len().next_multiple_of(4);
    }
    for (_, content) in &tables {
        out.extend_from_slice(content);
        out.resize(out.len().next_multiple_of(4), 0);
    }
    // The whole font's sum, with this number in place, is this constant of the format.
    let adjustment = 0xb1b0_afba_u32.wrapping_sub(checksum(&out));
    let head_at = head_at.context("the font has no table head")?;
    out[head_at + 8..head_at + 12].copy_from_slice(&adjustment.to_be_bytes());
    Ok(out)
}

fn checksum(bytes: &[u8]) -> u32 {
    bytes.chunks(4).fold(0, |sum: u32, chunk| {
        let mut word = [0; 4];
        word[..chunk.len()].copy_from_slice(chunk);
        sum.wrapping_add(u32::from_be_bytes(word))
    })
}

#[cfg(test)]
mod tests {
    use super::{checksum, table, write};

    #[test]
    fn tables_come_back_and_the_whole_sums_to_the_constant() {
        let font = write(vec![(*b"name", vec![1, 2, 3]), (*b"head", vec![7; 54])]).unwrap();
        assert_eq!(table(&font, b"name").unwrap(), [1, 2, 3]);
        assert_eq!(checksum(&font), 0xb1b0_afba);
        assert!(table(&font, b"MATH").is_err());
    }
}
