//! Where a link of a chapter leads, in the folder and in the one-file page.

use std::collections::BTreeSet;

use anyhow::{bail, ensure};

/// The two shapes in which the guide is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// One file for each page.
    Folder,
    /// Everything in one document.
    OneFile,
}

/// The addresses that links may lead to.
#[derive(Debug)]
pub struct Links {
    pub shape: Shape,
    /// The names of all pages.
    pub pages: BTreeSet<String>,
}

impl Links {
    /// The address of a page.
    pub fn page(&self, name: &str) -> String {
        match self.shape {
            Shape::Folder => format!("{name}.html"),
            Shape::OneFile => format!("#{name}"),
        }
    }

    /// The id of a heading, one of its kind in the whole guide.
    pub fn heading_id(page: &str, heading: &str) -> String {
        let mut id = format!("{page}--");
        for character in heading.chars() {
            if character.is_alphanumeric() {
                id.extend(character.to_lowercase());
            } else if !id.ends_with('-') {
                id.push('-');
            }
        }
        id.trim_end_matches('-').to_string()
    }

    /// The address behind a link as a chapter writes it: `load-out.md`, `load-out.md#a-heading`, `#a-heading`, or
    /// a public address, which is left as it is.
    pub fn resolve(&self, written: &str, on_page: &str) -> anyhow::Result<String> {
        if written.starts_with("https://") || written.starts_with("mailto:") {
            return Ok(written.to_string());
        }
        let (page, heading) = written.split_once('#').unwrap_or((written, ""));
        let page = match page {
            "" => on_page,
            page => match page.strip_suffix(".md") {
                Some(name) => name.trim_start_matches(|c: char| c.is_ascii_digit()).trim_start_matches('-'),
                None => bail!("link to \"{written}\": write name.md, name.md#heading, #heading or https://..."),
            },
        };
        ensure!(self.pages.contains(page), "link to \"{written}\": there is no page \"{page}\"");
        if heading.is_empty() {
            return Ok(self.page(page));
        }
        let id = Self::heading_id(page, heading);
        Ok(match self.shape {
            Shape::Folder if page == on_page => format!("#{id}"),
            Shape::Folder => format!("{page}.html#{id}"),
            Shape::OneFile => format!("#{id}"),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::{Links, Shape};

    fn links(shape: Shape) -> Links {
        Links { shape, pages: ["load-out", "demand"].map(String::from).into() }
    }

    #[test]
    fn links_lead_to_files_in_the_folder_and_to_ids_in_the_one_file() {
        for (written, folder, one_file) in [
            ("demand.md", "demand.html", "#demand"),
            ("03-demand.md", "demand.html", "#demand"),
            ("demand.md#levels", "demand.html#demand--levels", "#demand--levels"),
            ("#states", "#load-out--states", "#load-out--states"),
            ("https://example.org/a#b", "https://example.org/a#b", "https://example.org/a#b"),
        ] {
            assert_eq!(links(Shape::Folder).resolve(written, "load-out").unwrap(), folder);
            assert_eq!(links(Shape::OneFile).resolve(written, "load-out").unwrap(), one_file);
        }
    }

    #[test]
    fn a_link_to_nowhere_is_a_fault() {
        assert!(links(Shape::Folder).resolve("moon.md", "demand").is_err());
        assert!(links(Shape::Folder).resolve("demand.html", "demand").is_err());
        assert!(links(Shape::Folder).resolve("http://example.org", "demand").is_err());
    }

    #[test]
    fn heading_ids_are_words_with_dashes() {
        assert_eq!(Links::heading_id("demand", "How hard, and where?"), "demand--how-hard-and-where");
    }
}
