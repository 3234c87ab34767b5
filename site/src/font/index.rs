//! INDEX, the array of byte strings of the Compact Font Format (Adobe Technical Note 5176, section 5).

use anyhow::{Context, ensure};

/// The strings of an INDEX and the place behind it.
pub fn read(data: &[u8], at: usize) -> anyhow::Result<(Vec<&[u8]>, usize)> {
    let count = number(data, at, 2)?;
    if count == 0 {
        return Ok((Vec::new(), at + 2));
    }
    let offset_size = number(data, at + 2, 1)?;
    ensure!((1..=4).contains(&offset_size), "an INDEX has offsets of {offset_size} bytes");
    let offsets = at + 3;
    // Offsets count from the byte before the data.
    let origin = offsets + (count + 1) * offset_size - 1;
    let mut strings = Vec::with_capacity(count);
    let mut start = origin + number(data, offsets, offset_size)?;
    for i in 1..=count {
        let end = origin + number(data, offsets + i * offset_size, offset_size)?;
        strings.push(data.get(start..end).context("an INDEX reaches beyond its table")?);
        start = end;
    }
    Ok((strings, start))
}

/// An INDEX of these strings.
pub fn write<S: AsRef<[u8]>>(strings: &[S]) -> Vec<u8> {
    let mut out = (strings.len() as u16).to_be_bytes().to_vec();
    if strings.is_empty() {
        return out;
    }
    let total: usize = strings.iter().map(|string| string.as_ref().len()).sum();
    let offset_size = (1..4).find(|size| total + 1 < 1 << (8 * size)).unwrap_or(4);
    out.push(offset_size as u8);
    let mut offset: u32 = 1;
    let mut put = |offset: u32| out.extend_from_slice(&offset.to_be_bytes()[4 - offset_size..]);
    put(offset);
    for string in strings {
        offset += string.as_ref().len() as u32;
        put(offset);
    }
    for string in strings {
        out.extend_from_slice(string.as_ref());
    }
    out
}

fn number(data: &[u8], at: usize, size: usize) -> anyhow::Result<usize> {
    let bytes = data.get(at..at + size).context("an INDEX reaches beyond its table")?;
    Ok(bytes.iter().fold(0, |number, byte| number << 8 | usize::from(*byte)))
}

#[cfg(test)]
mod tests {
    use super::{read, write};

    #[test]
    fn what_is_written_is_read() {
        for strings in [vec![], vec![&b"a"[..], b"", b"bcd"], vec![&[7; 300][..], &[8; 70_000]]] {
            let written = write(&strings);
            let (read, end) = read(&written, 0).unwrap();
            assert_eq!(read, strings);
            assert_eq!(end, written.len());
        }
    }

    #[test]
    fn a_short_table_is_a_fault() {
        let written = write(&[b"abc"]);
        assert!(read(&written[..written.len() - 1], 0).is_err());
    }
}
