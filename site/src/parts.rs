//! The page's code and style as they are written: many small files, put together in the order that one file lists.

use std::{collections::BTreeSet, fs, path::Path};

use anyhow::{Context, bail, ensure};

use crate::squeeze;

/// The file in the page's folder that lists the others, one a line, in the order in which they are put together.
pub const LIST: &str = "order.txt";

/// The line of the list behind which stands what the landing page does not need.
const LATER: &str = "later";

/// The page's code and style, put together and squeezed.
#[derive(Debug, Default)]
pub struct Parts {
    /// The scripts that the landing page needs.
    pub script: String,
    /// All others.
    pub later_script: String,
    /// The style of worksheets that have come to life, needed wherever one stands.
    pub worksheet_style: String,
    /// The part of it that belongs to the later scripts.
    pub later_style: String,
    /// The part of it that pages need as well, for what stands in a worksheet until it comes to life.
    pub still_style: String,
    /// The style of whole documents, needed on the guide's own pages only.
    pub document_style: String,
    /// Files that the list forgets; they are left out, which is said, and a test refuses it.
    pub unlisted: Vec<String>,
}

impl Parts {
    /// Reads the listed files; one that is missing is a fault.
    pub fn load(folder: &Path) -> anyhow::Result<Self> {
        let list_path = folder.join(LIST);
        let list = fs::read_to_string(&list_path).with_context(|| format!("{} cannot be read", list_path.display()))?;
        let names: Vec<&str> =
            list.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with('#')).collect();
        let mut parts = Self { unlisted: unlisted(folder, &names)?, ..Self::default() };
        let mut is_later = false;
        for name in names {
            if name == LATER {
                is_later = true;
                continue;
            }
            let source = fs::read_to_string(folder.join(name))
                .with_context(|| format!("page/{name}, listed in page/{LIST}, cannot be read"))?;
            parts.add(name, &source, is_later).with_context(|| format!("page/{name}"))?;
        }
        Ok(parts)
    }

    fn add(&mut self, name: &str, source: &str, is_later: bool) -> anyhow::Result<()> {
        if name.ends_with(".js") {
            let script = squeeze::script(source)?;
            for forbidden in ["</script", "<!--"] {
                ensure!(!script.contains(forbidden), "contains {forbidden}, which would end or twist an inline script");
            }
            if is_later { &mut self.later_script } else { &mut self.script }.push_str(&script);
        } else if name.ends_with(".css") {
            let style = squeeze::style(source)?;
            ensure!(!style.contains("</style"), "contains </style, which would end an inline style");
            ensure!(!style.contains("url(") && !style.contains("@import"), "loads something; the page loads nothing");
            if name.starts_with("document") {
                self.document_style.push_str(&style);
            } else {
                if is_later { &mut self.later_style } else { &mut self.worksheet_style }.push_str(&style);
                if !name.starts_with("live") {
                    self.still_style.push_str(&style);
                }
            }
        } else {
            bail!("is neither .js nor .css");
        }
        Ok(())
    }
}

/// The scripts and styles of the folder that the list forgets.
fn unlisted(folder: &Path, names: &[&str]) -> anyhow::Result<Vec<String>> {
    let listed: BTreeSet<&str> = names.iter().copied().collect();
    ensure!(listed.len() == names.len(), "page/{LIST} lists a file twice");
    let mut unlisted = Vec::new();
    for entry in fs::read_dir(folder)? {
        let name = entry?.file_name().to_string_lossy().into_owned();
        let is_part = name.ends_with(".js") || name.ends_with(".css");
        if is_part && !listed.contains(name.as_str()) {
            unlisted.push(name);
        }
    }
    unlisted.sort();
    Ok(unlisted)
}

#[cfg(test)]
mod tests {
    use super::Parts;

    #[test]
    fn a_part_that_would_break_out_of_its_tag_is_refused() {
        let mut parts = Parts::default();
        assert!(parts.add("a.js", "const a = \"</script>\";", false).is_err());
        assert!(parts.add("a.css", ".a{background:url(b.png)}", false).is_err());
        assert!(parts.add("a.txt", "", false).is_err());
        assert!(parts.add("a.js", "const a = 1;", false).is_ok());
    }

    #[test]
    fn only_document_styles_stay_on_whole_pages() {
        let mut parts = Parts::default();
        parts.add("document.css", "body{margin:0}", false).unwrap();
        parts.add("form.css", "input{margin:0}", false).unwrap();
        assert_eq!(parts.document_style, "body{margin:0}\n");
        assert_eq!(parts.worksheet_style, "input{margin:0}\n");
        assert_eq!(parts.still_style, "input{margin:0}\n");
    }

    #[test]
    fn what_is_later_comes_apart_and_its_still_style_stays_on_the_page() {
        let mut parts = Parts::default();
        parts.add("a.js", "const a = 1;", true).unwrap();
        parts.add("study.css", "b{margin:0}", true).unwrap();
        assert_eq!((parts.script.as_str(), parts.worksheet_style.as_str()), ("", ""));
        assert_eq!((parts.later_script.as_str(), parts.later_style.as_str()), ("const a = 1;\n", "b{margin:0}\n"));
        assert_eq!(parts.still_style, "b{margin:0}\n");
    }

    #[test]
    fn the_style_of_live_worksheets_stays_out_of_the_pages_style() {
        let mut parts = Parts::default();
        parts.add("live_form.css", "input{margin:0}", false).unwrap();
        assert_eq!(parts.worksheet_style, "input{margin:0}\n");
        assert_eq!(parts.still_style, "");
    }
}
