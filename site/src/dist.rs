//! The finished files, held in memory first and then made true on disk.

use std::{collections::BTreeMap, fs, path::Path};

use anyhow::Context;

/// Finished files by their name below the folder, with `/` between folders.
#[derive(Debug, Default)]
pub struct Dist {
    files: BTreeMap<String, Vec<u8>>,
}

impl Dist {
    pub fn put(&mut self, name: &str, content: impl Into<Vec<u8>>) {
        self.files.insert(name.to_string(), content.into());
    }

    /// The named file's bytes, or none.
    pub fn get(&self, name: &str) -> Option<&[u8]> {
        self.files.get(name).map(Vec::as_slice)
    }

    /// Names and bytes in the order of the names.
    pub fn iter(&self) -> impl Iterator<Item = (&str, &[u8])> {
        self.files.iter().map(|(name, content)| (name.as_str(), content.as_slice()))
    }

    /// Makes the folder hold exactly these files; those that are already right stay untouched.
    pub fn write(&self, folder: &Path) -> anyhow::Result<()> {
        fs::create_dir_all(folder).with_context(|| format!("{} cannot be made", folder.display()))?;
        self.remove_strays(folder, "")?;
        for (name, content) in self.iter() {
            let path = folder.join(name);
            if fs::read(&path).is_ok_and(|old| old == content) {
                continue;
            }
            if let Some(parent) = path.parent() {
                fs::create_dir_all(parent).with_context(|| format!("{} cannot be made", parent.display()))?;
            }
            fs::write(&path, content).with_context(|| format!("{} cannot be written", path.display()))?;
        }
        Ok(())
    }

    fn remove_strays(&self, folder: &Path, before: &str) -> anyhow::Result<()> {
        for entry in fs::read_dir(folder)? {
            let entry = entry?;
            let name = format!("{before}{}", entry.file_name().to_string_lossy());
            if entry.file_type()?.is_dir() {
                let inside = format!("{name}/");
                if self.files.keys().any(|kept| kept.starts_with(&inside)) {
                    self.remove_strays(&entry.path(), &inside)?;
                } else {
                    fs::remove_dir_all(entry.path())?;
                }
            } else if !self.files.contains_key(&name) {
                fs::remove_file(entry.path())?;
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::Dist;

    #[test]
    fn the_folder_holds_exactly_the_files_given() {
        let folder = std::env::temp_dir().join(format!("steadfoot-dist-{}", std::process::id()));
        let mut first = Dist::default();
        first.put("a.html", "a");
        first.put("old/b.css", "b");
        first.write(&folder).unwrap();
        let mut second = Dist::default();
        second.put("a.html", "changed");
        second.put("new/c.css", "c");
        second.write(&folder).unwrap();
        assert_eq!(std::fs::read_to_string(folder.join("a.html")).unwrap(), "changed");
        assert!(folder.join("new/c.css").is_file());
        assert!(!folder.join("old").exists());
        std::fs::remove_dir_all(&folder).unwrap();
    }
}
