//! A file that is there whole or not at all, whoever else reads or writes it.

use std::{
    fs,
    path::Path,
    process,
    sync::atomic::{AtomicU32, Ordering},
};

use anyhow::Context;

/// Writes the file beside its place first, and then puts it there. The folder is made where it is missing.
pub fn write(path: &Path, bytes: &[u8]) -> anyhow::Result<()> {
    static WRITTEN: AtomicU32 = AtomicU32::new(0);
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).with_context(|| format!("{} cannot be made", folder.display()))?;
    }
    // Other builders and other threads of this one may be at the same file.
    let turn = WRITTEN.fetch_add(1, Ordering::Relaxed);
    let beside = path.with_extension(format!("{}-{turn}", process::id()));
    fs::write(&beside, bytes).with_context(|| format!("{} cannot be written", beside.display()))?;
    fs::rename(&beside, path).with_context(|| format!("{} cannot be written", path.display()))
}

#[cfg(test)]
mod tests {
    use std::{env, fs, process, thread};

    use super::write;

    #[test]
    fn many_at_once_leave_one_whole_file() {
        let folder = env::temp_dir().join(format!("steadfoot-whole-{}", process::id()));
        let path = folder.join("kept");
        thread::scope(|scope| {
            for letter in [b'a', b'b', b'c', b'd'] {
                let path = &path;
                scope.spawn(move || (0..50).for_each(|_| write(path, &[letter; 10_000]).expect("it is written")));
            }
        });
        let kept = fs::read(&path).expect("it is there");
        assert!(kept.len() == 10_000 && kept.iter().all(|&byte| byte == kept[0]));
        assert_eq!(fs::read_dir(&folder).expect("a folder").count(), 1, "nothing is left beside it");
        fs::remove_dir_all(&folder).expect("it can go");
    }
}
