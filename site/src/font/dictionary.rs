//! DICT, the list of operators with their operands before them (Adobe Technical Note 5176, section 4).

use anyhow::{Context, bail};

/// An operator: one byte, or 12 and another byte.
pub type Operator = u16;

pub const CHARSET: Operator = 15;
pub const CHAR_STRINGS: Operator = 17;
pub const PRIVATE: Operator = 18;
pub const LOCAL_SUBROUTINES: Operator = 19;
pub const FONT_BOX: Operator = 5;
pub const REGISTRY_ORDERING_SUPPLEMENT: Operator = 0x0c1e;
pub const CID_COUNT: Operator = 0x0c22;
pub const FONT_DICTIONARIES: Operator = 0x0c24;
pub const FONT_SELECT: Operator = 0x0c25;

/// The operators in their order, each with the bytes of its operands.
pub fn read(data: &[u8]) -> anyhow::Result<Vec<(Operator, &[u8])>> {
    let mut entries = Vec::new();
    let mut operands = 0;
    let mut at = 0;
    while let Some(first) = data.get(at) {
        let length = match first {
            0..=21 => {
                let (operator, length) = match first {
                    12 => (0x0c00 | Operator::from(*data.get(at + 1).context("a DICT ends within an operator")?), 2),
                    _ => (Operator::from(*first), 1),
                };
                entries.push((operator, &data[operands..at]));
                operands = at + length;
                length
            }
            28 => 3,
            29 => 5,
            // A decimal number, half a byte for each digit, ends with a half byte of ones.
            30 => {
                let rest = &data[at + 1..];
                let end = rest.iter().position(|byte| byte & 0x0f == 0x0f || byte >> 4 == 0x0f);
                2 + end.context("a DICT ends within a number")?
            }
            32..=246 => 1,
            247..=254 => 2,
            other => bail!("a DICT holds the byte {other}, which begins nothing"),
        };
        at += length;
    }
    Ok(entries)
}

/// The whole numbers among an entry's operands.
pub fn numbers(operands: &[u8]) -> anyhow::Result<Vec<i32>> {
    let mut numbers = Vec::new();
    let mut rest = operands;
    while let Some(first) = rest.first() {
        let byte = |i: usize| rest.get(i).map(|byte| i32::from(*byte)).context("a DICT ends within a number");
        let (number, length) = match first {
            28 => (i32::from((byte(1)? << 8 | byte(2)?) as i16), 3),
            29 => (byte(1)? << 24 | byte(2)? << 16 | byte(3)? << 8 | byte(4)?, 5),
            32..=246 => (i32::from(*first) - 139, 1),
            247..=250 => ((i32::from(*first) - 247) * 256 + byte(1)? + 108, 2),
            251..=254 => (-(i32::from(*first) - 251) * 256 - byte(1)? - 108, 2),
            other => bail!("an operand begins with the byte {other}, which is no whole number"),
        };
        numbers.push(number);
        rest = &rest[length..];
    }
    Ok(numbers)
}

/// Appends an entry with whole numbers, each in the five bytes that take any of them, so that lengths are known
/// before the numbers are.
pub fn put(out: &mut Vec<u8>, operator: Operator, numbers: &[i32]) {
    for number in numbers {
        out.push(29);
        out.extend_from_slice(&number.to_be_bytes());
    }
    put_operator(out, operator);
}

/// Appends an entry with operands as they were read.
pub fn put_as_read(out: &mut Vec<u8>, operator: Operator, operands: &[u8]) {
    out.extend_from_slice(operands);
    put_operator(out, operator);
}

fn put_operator(out: &mut Vec<u8>, operator: Operator) {
    if operator > 0xff {
        out.push((operator >> 8) as u8);
    }
    out.push(operator as u8);
}

#[cfg(test)]
mod tests {
    use super::{numbers, put, put_as_read, read};

    #[test]
    fn numbers_are_read_as_the_format_note_prints_them() {
        // The examples of Technical Note 5176, table 4.
        for (bytes, number) in [
            (&[0x8b][..], 0),
            (&[0xef], 100),
            (&[0x27], -100),
            (&[0xfa, 0x7c], 1000),
            (&[0xfe, 0x7c], -1000),
            (&[0x1c, 0x27, 0x10], 10_000),
            (&[0x1c, 0xd8, 0xf0], -10_000),
            (&[0x1d, 0x00, 0x01, 0x86, 0xa0], 100_000),
            (&[0x1d, 0xff, 0xfe, 0x79, 0x60], -100_000),
        ] {
            assert_eq!(numbers(bytes).unwrap(), [number]);
        }
    }

    #[test]
    fn entries_come_back_with_their_operands() {
        let mut dictionary = Vec::new();
        put(&mut dictionary, 17, &[5, -70_000]);
        // -2.25, the example of the same note for a decimal number.
        put_as_read(&mut dictionary, 0x0c09, &[0x1e, 0xe2, 0xa2, 0x5f]);
        let entries = read(&dictionary).unwrap();
        assert_eq!(entries.len(), 2);
        assert_eq!((entries[0].0, numbers(entries[0].1).unwrap()), (17, vec![5, -70_000]));
        assert_eq!(entries[1], (0x0c09, &[0x1e, 0xe2, 0xa2, 0x5f][..]));
    }
}
