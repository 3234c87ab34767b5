//! Style attributes that libraries write, turned into classes.
//!
//! The content security policy drops every `style` attribute. The table writer and the formula writer use a handful of
//! them for alignment; each becomes a class, and the rules behind the classes join the page's style.

use std::collections::BTreeMap;

use anyhow::{Context, bail, ensure};

const MARK: &str = " style=\"";

/// The classes met so far, by the declarations that they stand for.
#[derive(Debug, Default)]
pub struct StyleClasses {
    names: BTreeMap<String, String>,
}

impl StyleClasses {
    /// The same markup with classes where style attributes were.
    pub fn replace(&mut self, html: &str) -> anyhow::Result<String> {
        let mut out = String::with_capacity(html.len());
        let mut rest = html;
        while let Some(start) = rest.find(MARK) {
            let (before, after) = rest.split_at(start);
            let after = &after[MARK.len()..];
            let end = after.find('"').context("a style attribute does not end")?;
            let tag_start = before.rfind('<').context("a style attribute stands outside a tag")?;
            let tag_end = after.find('>').context("a tag with a style attribute does not end")?;
            ensure!(
                !before[tag_start..].contains(" class=") && !after[..tag_end].contains(" class="),
                "a tag carries both class and style: {}{MARK}{}",
                &before[tag_start..],
                &after[..=tag_end]
            );
            let name = self.class(&after[..end])?;
            out.push_str(before);
            out.push_str(&format!(" class=\"{name}\""));
            rest = &after[end + 1..];
        }
        out.push_str(rest);
        Ok(out)
    }

    /// The style rules behind the classes.
    pub fn css(&self) -> String {
        self.names.iter().map(|(declarations, name)| format!(".{name}{{{declarations}}}\n")).collect()
    }

    fn class(&mut self, declarations: &str) -> anyhow::Result<String> {
        let declarations = declarations.trim().trim_end_matches(';').replace("&quot;", "\"");
        if declarations.is_empty() || declarations.contains(['{', '}', '<', '&']) || declarations.contains("url(") {
            bail!("the style \"{declarations}\" cannot become a class");
        }
        if let Some(name) = self.names.get(&declarations) {
            return Ok(name.clone());
        }
        let words = declarations.split(|c: char| !c.is_ascii_alphanumeric()).filter(|word| !word.is_empty());
        let name = format!("as-{}", words.collect::<Vec<_>>().join("-"));
        self.names.insert(declarations, name.clone());
        Ok(name)
    }
}

#[cfg(test)]
mod tests {
    use super::StyleClasses;

    #[test]
    fn equal_styles_share_one_class() {
        let mut classes = StyleClasses::default();
        let html = r#"<td style="text-align: right">1</td><td style="text-align: right">2</td><td>3</td>"#;
        let out = classes.replace(html).unwrap();
        assert_eq!(out, r#"<td class="as-text-align-right">1</td><td class="as-text-align-right">2</td><td>3</td>"#);
        assert_eq!(classes.css(), ".as-text-align-right{text-align: right}\n");
    }

    #[test]
    fn a_tag_with_both_is_refused() {
        assert!(StyleClasses::default().replace(r#"<td class="a" style="b:c">"#).is_err());
    }
}
