//! What worksheets and made parts of chapters came to, kept for the other shape of the guide and for the next run.
//!
//! They are results of the engine and take most of the builder's time. They depend on their own words, on the builder
//! itself and on the files that it reads for them; where any of these has changed, nothing that was kept is used.

use std::{
    cell::{Cell, RefCell},
    collections::BTreeMap,
    env, fs,
    path::{Path, PathBuf},
    time::UNIX_EPOCH,
};

use anyhow::Context;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use crate::whole_file;

/// What was made, by its own words.
pub struct Kept {
    path: Option<PathBuf>,
    file: RefCell<File>,
    has_more: Cell<bool>,
}

#[derive(Default, Serialize, Deserialize)]
struct File {
    /// What it was made by and from.
    stamp: String,
    made: BTreeMap<String, String>,
}

impl Kept {
    /// Kept in memory only.
    pub fn for_once() -> Kept {
        Kept { path: None, file: RefCell::default(), has_more: Cell::new(false) }
    }

    /// Kept in a folder; `inputs` are the folders that the parts are made from.
    pub fn open(folder: &Path, inputs: &[PathBuf]) -> anyhow::Result<Kept> {
        let stamp = stamp(inputs)?;
        let path = folder.join("made.json");
        let file = fs::read(&path).ok().and_then(|kept| serde_json::from_slice::<File>(&kept).ok());
        let file = file.filter(|file| file.stamp == stamp).unwrap_or(File { stamp, made: BTreeMap::new() });
        Ok(Kept { path: Some(path), file: RefCell::new(file), has_more: Cell::new(false) })
    }

    /// The part of these words, made where it is not kept.
    pub fn of(&self, words: &[&str], make: impl FnOnce() -> anyhow::Result<String>) -> anyhow::Result<String> {
        let key = words.join("\n\0");
        if let Some(made) = self.file.borrow().made.get(&key) {
            return Ok(made.clone());
        }
        let made = make()?;
        self.file.borrow_mut().made.insert(key, made.clone());
        self.has_more.set(true);
        Ok(made)
    }

    /// Writes what is new to the folder.
    pub fn close(self) -> anyhow::Result<()> {
        let Some(path) = self.path.filter(|_| self.has_more.get()) else { return Ok(()) };
        whole_file::write(&path, &serde_json::to_vec(&self.file.into_inner())?)
    }
}

/// The running program, by the time it was linked, and the bytes of all files in the folders.
fn stamp(inputs: &[PathBuf]) -> anyhow::Result<String> {
    let program = env::current_exe().context("the builder does not know its own file")?;
    let about = fs::metadata(&program)?;
    let linked = about.modified()?.duration_since(UNIX_EPOCH)?.as_nanos();
    let mut hash = Sha256::new();
    hash.update(format!("{} {} {linked}\n", program.display(), about.len()));
    for folder in inputs {
        read_into(&mut hash, folder)?;
    }
    Ok(hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect())
}

fn read_into(hash: &mut Sha256, folder: &Path) -> anyhow::Result<()> {
    let entries = fs::read_dir(folder).with_context(|| format!("{} cannot be read", folder.display()))?;
    let mut paths: Vec<PathBuf> = entries.map(|entry| Ok(entry?.path())).collect::<anyhow::Result<_>>()?;
    paths.sort_unstable();
    for path in paths {
        if path.is_dir() {
            read_into(hash, &path)?;
        } else {
            let bytes = fs::read(&path).with_context(|| format!("{} cannot be read", path.display()))?;
            hash.update(format!("{} {}\n", path.display(), bytes.len()));
            hash.update(bytes);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::{env, fs, process};

    use super::Kept;

    #[test]
    fn a_part_is_made_once_until_what_it_is_made_from_changes() {
        let folder = env::temp_dir().join(format!("steadfoot-kept-{}", process::id()));
        let input = folder.join("input");
        fs::create_dir_all(&input).expect("a folder");
        let made = |what: &str| {
            let kept = Kept::open(&folder, std::slice::from_ref(&input)).expect("it opens");
            let part = kept.of(&["worksheet", "demand"], || Ok(what.to_string())).expect("it is made");
            kept.close().expect("it is written");
            part
        };
        fs::write(input.join("demo.json"), "1").expect("a file");
        assert_eq!(made("first"), "first");
        assert_eq!(made("second"), "first", "it is kept");
        fs::write(input.join("demo.json"), "2").expect("a file");
        assert_eq!(made("third"), "third", "its input has changed");
        fs::remove_dir_all(&folder).expect("it can go");
    }
}
