//! One chapter as it was written: a Markdown file with a few named lines at its head.

use std::path::Path;

use anyhow::{Context, bail, ensure};

/// Where a page of the guide has its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// The first page.
    Landing,
    /// A chapter of the guide, one in a row.
    Chapter,
    /// The whole check.
    Check,
    /// A page beside the row: verification, sources.
    Apart,
}

/// A chapter before its text is expanded.
#[derive(Debug, Clone)]
pub struct Chapter {
    /// The address: `load-out` becomes `load-out.html`, or `#load-out` in the one-file page.
    pub name: String,
    /// The number at the front of the file's name; gives the order.
    pub order: u32,
    /// The heading of the page.
    pub title: String,
    /// The label in the navigation, the title if not given.
    pub short: String,
    /// The pipeline noun that the chapter is about, if it is about one.
    pub part: Option<String>,
    /// The one question that the chapter answers, if it asks one.
    pub question: Option<String>,
    pub place: Place,
    /// The Markdown below the head.
    pub text: String,
    /// The file's name, for messages.
    pub file: String,
    /// How many lines of the file stand before the text, for messages.
    pub head_lines: usize,
}

impl Chapter {
    /// Reads a chapter from its file.
    pub fn load(path: &Path) -> anyhow::Result<Self> {
        let file = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let text = std::fs::read_to_string(path).with_context(|| format!("{} cannot be read", path.display()))?;
        Self::read(&file, &text).with_context(|| format!("guide/{file}"))
    }

    /// Reads a chapter from the name and the text of its file.
    pub fn read(file: &str, text: &str) -> anyhow::Result<Self> {
        let (order, name) = number_and_name(file)?;
        let text = text.replace("\r\n", "\n");
        let head_and_text = text.strip_prefix("---\n").and_then(|rest| rest.split_once("\n---\n"));
        let Some((head, body)) = head_and_text else {
            bail!("does not begin with a head: a line ---, named lines such as \"title: ...\", a line ---");
        };
        let mut title = None;
        let mut short = None;
        let mut part = None;
        let mut question = None;
        let mut place = Place::Chapter;
        for line in head.lines().filter(|line| !line.trim().is_empty()) {
            let (key, value) = line.split_once(':').with_context(|| format!("\"{line}\" in the head has no colon"))?;
            let value = value.trim().to_string();
            ensure!(!value.is_empty(), "\"{key}\" in the head has nothing behind its colon");
            match key.trim() {
                "title" => title = Some(value),
                "short" => short = Some(value),
                "part" => part = Some(value),
                "question" => question = Some(value),
                "place" => place = place_of(&value)?,
                other => bail!("\"{other}\" in the head is not known; title, short, part, question, place are"),
            }
        }
        let title = title.context("the head has no title")?;
        Ok(Self {
            name,
            order,
            short: short.unwrap_or_else(|| title.clone()),
            title,
            part,
            question,
            place,
            text: body.to_string(),
            file: file.to_string(),
            head_lines: head.lines().count() + 2,
        })
    }

    /// The page's file in the folder site.
    pub fn page(&self) -> String {
        format!("{}.html", self.name)
    }
}

fn number_and_name(file: &str) -> anyhow::Result<(u32, String)> {
    let parts = file.strip_suffix(".md").and_then(|stem| stem.split_once('-'));
    let numbered = parts.and_then(|(number, name)| Some((number.parse().ok()?, name.to_string())));
    let Some((number, name)) = numbered else {
        bail!("a chapter's file is named by a number, a dash and a name, such as 02-load-out.md");
    };
    ensure!(
        !name.is_empty() && name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-'),
        "the name \"{name}\" becomes an address: small letters, digits and dashes only"
    );
    Ok((number, name))
}

fn place_of(value: &str) -> anyhow::Result<Place> {
    Ok(match value {
        "landing" => Place::Landing,
        "chapter" => Place::Chapter,
        "check" => Place::Check,
        "apart" => Place::Apart,
        other => bail!("place \"{other}\" is not known; landing, chapter, check, apart are"),
    })
}

#[cfg(test)]
mod tests {
    use super::{Chapter, Place};

    #[test]
    fn a_head_is_read() {
        let chapter = Chapter::read(
            "02-load-out.md",
            "---\ntitle: What stands there\npart: load-out\nquestion: How heavy: and where?\n---\nText.\n",
        )
        .unwrap();
        assert_eq!((chapter.order, chapter.name.as_str()), (2, "load-out"));
        assert_eq!(chapter.title, "What stands there");
        assert_eq!(chapter.short, "What stands there");
        assert_eq!(chapter.question.as_deref(), Some("How heavy: and where?"));
        assert_eq!(chapter.place, Place::Chapter);
        assert_eq!(chapter.text, "Text.\n");
        assert_eq!(chapter.head_lines, 5);
    }

    #[test]
    fn faults_of_the_head_are_named() {
        for (file, text, part) in [
            ("load-out.md", "---\ntitle: a\n---\n", "named by a number"),
            ("02-Load.md", "---\ntitle: a\n---\n", "small letters"),
            ("02-a.md", "title: a\n", "does not begin with a head"),
            ("02-a.md", "---\npart: a\n---\n", "has no title"),
            ("02-a.md", "---\ntitle: a\ncolour: red\n---\n", "\"colour\""),
            ("02-a.md", "---\ntitle: a\nplace: moon\n---\n", "\"moon\""),
        ] {
            let fault = Chapter::read(file, text).unwrap_err().to_string();
            assert!(fault.contains(part), "{fault:?} does not say {part:?}");
        }
    }
}
