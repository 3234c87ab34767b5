//! The table of outlines (Compact Font Format, Adobe Technical Note 5176) with unused glyphs emptied.
//!
//! Glyphs are numbered, not named, in the new table, since the names of eight thousand empty glyphs would weigh more
//! than the outlines that are kept.

use std::collections::BTreeSet;

use anyhow::{Context, ensure};

use super::{
    charstring::{self, Subroutines},
    dictionary::{self as dict, Operator},
    index,
};

/// The numbers of the first two strings of a font's own, behind the standard ones.
const OWN_STRINGS: i32 = 391;

/// A new table with the same glyph numbers in which only `kept` draw something.
pub fn cut(table: &[u8], name: &str, kept: &BTreeSet<u16>) -> anyhow::Result<Vec<u8>> {
    let old = Old::read(table)?;
    let mut programs = Vec::with_capacity(old.programs.len());
    for (glyph, program) in old.programs.iter().enumerate() {
        let is_kept = u16::try_from(glyph).is_ok_and(|glyph| kept.contains(&glyph));
        programs.push(if is_kept {
            charstring::written_out(program, &old.subroutines).with_context(|| format!("glyph {glyph}"))?
        } else {
            charstring::EMPTY.to_vec()
        });
    }
    New { name, font_box: old.font_box, private: &old.private, programs: &programs }.write()
}

struct Old<'a> {
    font_box: &'a [u8],
    /// The private dictionary's entries but the one that points to subroutines.
    private: Vec<u8>,
    programs: Vec<&'a [u8]>,
    subroutines: Subroutines<'a>,
}

impl<'a> Old<'a> {
    fn read(table: &'a [u8]) -> anyhow::Result<Self> {
        let header = usize::from(*table.get(2).context("the table of outlines is empty")?);
        let (_, at) = index::read(table, header)?;
        let (tops, at) = index::read(table, at)?;
        let (_, at) = index::read(table, at)?;
        let (global, _) = index::read(table, at)?;
        let top = dict::read(tops.first().context("the table of outlines holds no font")?)?;
        let entry = |operator: Operator| top.iter().find(|entry| entry.0 == operator).map(|entry| entry.1);
        ensure!(entry(dict::REGISTRY_ORDERING_SUPPLEMENT).is_none(), "the font's glyphs are numbered already");
        let offset = |operator| -> anyhow::Result<Vec<usize>> {
            let operands = entry(operator).with_context(|| format!("the font lacks the operator {operator}"))?;
            dict::numbers(operands)?.into_iter().map(|number| Ok(usize::try_from(number)?)).collect()
        };
        let &[private_size, private_at] = offset(dict::PRIVATE)?.as_slice() else {
            anyhow::bail!("the private dictionary's place has no two numbers");
        };
        let private_end = private_at + private_size;
        let private_data = table.get(private_at..private_end).context("the private dictionary is cut off")?;
        let mut private = Vec::new();
        let mut local = Vec::new();
        for (operator, operands) in dict::read(private_data)? {
            if operator == dict::LOCAL_SUBROUTINES {
                let numbers = dict::numbers(operands)?;
                let relative = numbers.first().context("the subroutines' place has no number")?;
                local = index::read(table, private_at + usize::try_from(*relative)?)?.0;
            } else {
                dict::put_as_read(&mut private, operator, operands);
            }
        }
        let programs_at = *offset(dict::CHAR_STRINGS)?.first().context("the programs' place has no number")?;
        let (programs, _) = index::read(table, programs_at)?;
        let font_box = entry(dict::FONT_BOX).context("the font has no box")?;
        Ok(Self { font_box, private, programs, subroutines: Subroutines { global, local } })
    }
}

struct New<'a> {
    name: &'a str,
    font_box: &'a [u8],
    private: &'a [u8],
    programs: &'a [Vec<u8>],
}

/// Where the parts of the new table begin.
#[derive(Default)]
struct Places {
    charset: i32,
    select: i32,
    programs: i32,
    dictionaries: i32,
}

impl New<'_> {
    fn write(&self) -> anyhow::Result<Vec<u8>> {
        // Every number in the dictionaries has a fixed length, so a first pass with zeros gives the places.
        let top_length = index::write(&[self.top(&Places::default())]).len();
        let mut out = vec![1, 0, 4, 4];
        out.extend(index::write(&[self.name]));
        let top_at = out.len();
        out.resize(top_at + top_length, 0);
        out.extend(index::write(&["Adobe", "Identity"]));
        out.extend(index::write::<&[u8]>(&[]));
        let count = u16::try_from(self.programs.len()).context("the font has too many glyphs")?;
        ensure!(count > 1, "the font has no glyphs");
        let mut places = Places { charset: place(&out)?, ..Places::default() };
        // Format 2: one run of numbers from 1 on; glyph 0 is not told.
        out.extend([2, 0, 1]);
        out.extend((count - 2).to_be_bytes());
        places.select = place(&out)?;
        // Format 3: one run, all glyphs with dictionary 0.
        out.extend([3, 0, 1, 0, 0, 0]);
        out.extend(count.to_be_bytes());
        places.programs = place(&out)?;
        out.extend(index::write(self.programs));
        let private_at = place(&out)?;
        out.extend_from_slice(self.private);
        places.dictionaries = place(&out)?;
        let mut dictionary = Vec::new();
        dict::put(&mut dictionary, dict::PRIVATE, &[i32::try_from(self.private.len())?, private_at]);
        out.extend(index::write(&[dictionary]));
        let top = index::write(&[self.top(&places)]);
        out[top_at..top_at + top_length].copy_from_slice(&top);
        Ok(out)
    }

    fn top(&self, places: &Places) -> Vec<u8> {
        let mut top = Vec::new();
        dict::put(&mut top, dict::REGISTRY_ORDERING_SUPPLEMENT, &[OWN_STRINGS, OWN_STRINGS + 1, 0]);
        dict::put_as_read(&mut top, dict::FONT_BOX, self.font_box);
        dict::put(&mut top, dict::CID_COUNT, &[self.programs.len() as i32]);
        dict::put(&mut top, dict::CHARSET, &[places.charset]);
        dict::put(&mut top, dict::FONT_SELECT, &[places.select]);
        dict::put(&mut top, dict::CHAR_STRINGS, &[places.programs]);
        dict::put(&mut top, dict::FONT_DICTIONARIES, &[places.dictionaries]);
        top
    }
}

fn place(out: &[u8]) -> anyhow::Result<i32> {
    Ok(i32::try_from(out.len())?)
}
