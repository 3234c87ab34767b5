//! Bytes packed for the road: raw deflate as base64 text.
//!
//! The packing tries harder than servers do (the crate `zopfli`): it takes a second for the engine and makes it a
//! twentieth smaller. What has not changed since the last run is not packed again.

use std::{
    fs,
    path::{Path, PathBuf},
};

use anyhow::Context;
use base64::{Engine as _, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};
use zopfli::{Format, Options};

use crate::whole_file;

const HASH_BYTES: usize = 32;

/// Packs, and keeps what it packed.
pub struct Packer {
    kept: PathBuf,
}

impl Packer {
    /// `kept` is the folder for what outlives a run.
    pub fn new(kept: &Path) -> Packer {
        Packer { kept: kept.to_path_buf() }
    }

    /// The packed bytes as text. `name` says whose they are: of each name the last is kept.
    pub fn packed(&self, name: &str, bytes: &[u8]) -> anyhow::Result<String> {
        let hash = Sha256::digest(bytes);
        let path = self.kept.join(format!("packed-{name}"));
        if let Ok(kept) = fs::read(&path)
            && let Some(packed) = kept.strip_prefix(hash.as_slice())
        {
            return Ok(STANDARD.encode(packed));
        }
        let mut kept = hash.to_vec();
        let options = Options { iteration_count: 1.try_into()?, ..Options::default() };
        zopfli::compress(options, Format::Deflate, bytes, &mut kept).context("memory takes every byte")?;
        whole_file::write(&path, &kept)?;
        Ok(STANDARD.encode(&kept[HASH_BYTES..]))
    }
}

#[cfg(test)]
mod tests {
    use std::{env, fs, io::Read, process};

    use base64::{Engine as _, engine::general_purpose::STANDARD};
    use flate2::read::DeflateDecoder;

    use super::Packer;

    fn unpacked(text: &str) -> String {
        let bytes = STANDARD.decode(text).expect("it is base64");
        let mut unpacked = String::new();
        DeflateDecoder::new(&bytes[..]).read_to_string(&mut unpacked).expect("it is deflate");
        unpacked
    }

    #[test]
    fn packed_bytes_come_back_and_what_changed_is_packed_anew() {
        let kept = env::temp_dir().join(format!("steadfoot-packed-{}", process::id()));
        let packer = Packer::new(&kept);
        let words = "one cabinet, two cabinets, three cabinets";
        let first = packer.packed("words", words.as_bytes()).expect("it packs");
        assert_eq!(unpacked(&first), words);
        assert_eq!(packer.packed("words", words.as_bytes()).expect("it is kept"), first);
        assert_eq!(unpacked(&packer.packed("words", b"other").expect("it packs")), "other");
        assert_eq!(fs::read_dir(&kept).expect("it is there").count(), 1, "of each name the last is kept");
        fs::remove_dir_all(&kept).expect("it can go");
    }
}
