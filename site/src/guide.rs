//! All chapters, in order, with what leads from one to the next.

use std::{collections::BTreeSet, fs, path::Path};

use anyhow::{Context, ensure};

use crate::chapter::{Chapter, Place};

/// The chapters in the order of their numbers.
#[derive(Debug)]
pub struct Guide {
    pub chapters: Vec<Chapter>,
}

impl Guide {
    /// Reads every chapter of the folder.
    pub fn load(folder: &Path) -> anyhow::Result<Self> {
        let mut chapters = Vec::new();
        for entry in fs::read_dir(folder).with_context(|| format!("{} cannot be read", folder.display()))? {
            let path = entry?.path();
            if path.extension().is_some_and(|extension| extension == "md") {
                chapters.push(Chapter::load(&path)?);
            }
        }
        Self::of(chapters)
    }

    /// Orders the chapters and looks for what must be there once.
    pub fn of(mut chapters: Vec<Chapter>) -> anyhow::Result<Self> {
        chapters.sort_by(|a, b| (a.order, &a.name).cmp(&(b.order, &b.name)));
        for (place, what) in [(Place::Landing, "landing"), (Place::Check, "check")] {
            let count = chapters.iter().filter(|chapter| chapter.place == place).count();
            ensure!(count == 1, "the guide has {count} pages with \"place: {what}\"; it needs one");
        }
        let guide = Self { chapters };
        let landing = &guide.landing().name;
        ensure!(landing == "index", "the landing page is named \"{landing}\"; a browser looks for \"index\"");
        let names = guide.names();
        ensure!(names.len() == guide.chapters.len(), "two chapters have the same name");
        Ok(guide)
    }

    /// The names of all pages.
    pub fn names(&self) -> BTreeSet<String> {
        self.chapters.iter().map(|chapter| chapter.name.clone()).collect()
    }

    pub fn landing(&self) -> &Chapter {
        self.at(Place::Landing).next().expect("a guide is made only with a landing page")
    }

    /// The pages that have this place, in order.
    pub fn at(&self, place: Place) -> impl Iterator<Item = &Chapter> {
        self.chapters.iter().filter(move |chapter| chapter.place == place)
    }

    /// The chapter before and the one behind, for a page that is one in the row.
    pub fn neighbours(&self, chapter: &Chapter) -> (Option<&Chapter>, Option<&Chapter>) {
        let row: Vec<&Chapter> = self.at(Place::Chapter).collect();
        let Some(at) = row.iter().position(|other| other.name == chapter.name) else {
            return (None, None);
        };
        (at.checked_sub(1).map(|before| row[before]), row.get(at + 1).copied())
    }
}

#[cfg(test)]
mod tests {
    use super::Guide;
    use crate::chapter::Chapter;

    fn chapter(file: &str, place: &str) -> Chapter {
        Chapter::read(file, &format!("---\ntitle: {file}\nplace: {place}\n---\n")).unwrap()
    }

    #[test]
    fn chapters_stand_in_the_order_of_their_numbers() {
        let guide = Guide::of(vec![
            chapter("20-check.md", "check"),
            chapter("02-demand.md", "chapter"),
            chapter("01-load-out.md", "chapter"),
            chapter("00-index.md", "landing"),
        ])
        .unwrap();
        let names: Vec<&str> = guide.chapters.iter().map(|chapter| chapter.name.as_str()).collect();
        assert_eq!(names, ["index", "load-out", "demand", "check"]);
        let (before, behind) = guide.neighbours(&guide.chapters[1]);
        assert!(before.is_none());
        assert_eq!(behind.unwrap().name, "demand");
    }

    #[test]
    fn a_guide_without_a_check_is_refused() {
        assert!(Guide::of(vec![chapter("00-index.md", "landing")]).is_err());
    }
}
