//! One glyph's outline as a program (Adobe Technical Note 5177), with its subroutines written out.
//!
//! The steps and hints stay as they are; only the calls go, so that subroutines which the kept glyphs do not call need
//! not be shipped.

use anyhow::{Context, bail, ensure};

/// The subroutines that programs call.
pub struct Subroutines<'a> {
    pub global: Vec<&'a [u8]>,
    pub local: Vec<&'a [u8]>,
}

/// A program that draws nothing.
pub const EMPTY: [u8; 1] = [END_CHAR];

const END_CHAR: u8 = 14;
const RETURN: u8 = 11;
const CALL_LOCAL: u8 = 10;
const CALL_GLOBAL: u8 = 29;
const CALLS_DEEP: usize = 10;

/// The same program without calls.
pub fn written_out(program: &[u8], subroutines: &Subroutines) -> anyhow::Result<Vec<u8>> {
    let mut writer = Writer { subroutines, out: Vec::new(), operands: Vec::new(), stems: 0, ended: false };
    writer.run(program, 0)?;
    ensure!(writer.ended, "a glyph's program does not end");
    Ok(writer.out)
}

struct Writer<'a> {
    subroutines: &'a Subroutines<'a>,
    out: Vec<u8>,
    /// Where each operand that waits for its operator begins in `out`, and its value when it is a whole number.
    operands: Vec<(usize, Option<i32>)>,
    stems: usize,
    ended: bool,
}

impl Writer<'_> {
    fn run(&mut self, program: &[u8], depth: usize) -> anyhow::Result<()> {
        ensure!(depth <= CALLS_DEEP, "a glyph's program calls too deep");
        let mut rest = program;
        while let Some(&first) = rest.first() {
            if self.ended {
                return Ok(());
            }
            if let Some(length) = operand_length(first) {
                let bytes = rest.get(..length).context("a glyph's program ends within a number")?;
                self.operands.push((self.out.len(), whole_number(bytes)));
                self.out.extend_from_slice(bytes);
                rest = &rest[length..];
                continue;
            }
            rest = &rest[1..];
            match first {
                RETURN => return Ok(()),
                CALL_LOCAL => self.call(false, depth)?,
                CALL_GLOBAL => self.call(true, depth)?,
                END_CHAR => {
                    ensure!(self.operands.len() < 4, "a glyph is put together from two others");
                    self.out.push(first);
                    self.ended = true;
                }
                // hstem, vstem, hstemhm, vstemhm: two numbers a stem, before which the width may stand.
                1 | 3 | 18 | 23 => {
                    self.stems += self.operands.len() / 2;
                    self.operator(&[first]);
                }
                // hintmask, cntrmask: vertical stems may stand before, one bit for each stem behind.
                19 | 20 => {
                    self.stems += self.operands.len() / 2;
                    self.operator(&[first]);
                    let length = self.stems.div_ceil(8);
                    let mask = rest.get(..length).context("a glyph's program ends within a mask")?;
                    self.out.extend_from_slice(mask);
                    rest = &rest[length..];
                }
                // Moves, lines and curves.
                4 | 5 | 6 | 7 | 8 | 21 | 22 | 24 | 25 | 26 | 27 | 30 | 31 => self.operator(&[first]),
                12 => {
                    let second = *rest.first().context("a glyph's program ends within an operator")?;
                    ensure!((34..=37).contains(&second), "a glyph's program computes (operator 12 {second})");
                    rest = &rest[1..];
                    self.operator(&[first, second]);
                }
                other => bail!("a glyph's program holds the operator {other}"),
            }
        }
        Ok(())
    }

    fn operator(&mut self, bytes: &[u8]) {
        self.out.extend_from_slice(bytes);
        self.operands.clear();
    }

    fn call(&mut self, global: bool, depth: usize) -> anyhow::Result<()> {
        let (start, number) = self.operands.pop().context("a glyph's program calls without a number")?;
        let number = number.context("a glyph's program calls by a fraction")?;
        self.out.truncate(start);
        let all = if global { &self.subroutines.global } else { &self.subroutines.local };
        let bias = match all.len() {
            0..1240 => 107,
            1240..33_900 => 1131,
            _ => 32_768,
        };
        let subroutine = usize::try_from(number + bias).ok().and_then(|at| all.get(at));
        self.run(subroutine.context("a glyph's program calls a subroutine that is not there")?, depth + 1)
    }
}

fn operand_length(first: u8) -> Option<usize> {
    match first {
        28 => Some(3),
        32..=246 => Some(1),
        247..=254 => Some(2),
        255 => Some(5),
        _ => None,
    }
}

fn whole_number(bytes: &[u8]) -> Option<i32> {
    match *bytes {
        [28, high, low] => Some(i32::from(i16::from_be_bytes([high, low]))),
        [first @ 32..=246] => Some(i32::from(first) - 139),
        [first @ 247..=250, low] => Some((i32::from(first) - 247) * 256 + i32::from(low) + 108),
        [first @ 251..=254, low] => Some(-(i32::from(first) - 251) * 256 - i32::from(low) - 108),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::{Subroutines, written_out};

    #[test]
    fn calls_are_replaced_by_what_they_call() {
        // Local subroutine 0 is called by 0 - 107; it draws a line and calls global subroutine 0, which ends the glyph.
        let subroutines = Subroutines { global: vec![&[14]], local: vec![&[140, 141, 5, 32, 29, 11]] };
        // 1 2 rmoveto, 0-107 callsubr: the number -107 is the byte 32.
        let program = [140, 141, 21, 32, 10];
        assert_eq!(written_out(&program, &subroutines).unwrap(), [140, 141, 21, 140, 141, 5, 14]);
    }

    #[test]
    fn the_bytes_of_a_mask_are_no_operators() {
        let none = Subroutines { global: vec![], local: vec![] };
        // One horizontal stem, one vertical stem before the mask: one byte of mask, here 10, which would be a call.
        let program = [140, 141, 18, 140, 141, 19, 10, 14];
        assert_eq!(written_out(&program, &none).unwrap(), program);
    }

    #[test]
    fn what_cannot_be_written_out_is_a_fault() {
        let none = Subroutines { global: vec![], local: vec![] };
        for program in [&[32, 10][..], &[10], &[140], &[140, 12, 3, 14], &[28, 0], &[2, 14]] {
            assert!(written_out(program, &none).is_err(), "{program:?}");
        }
    }
}
