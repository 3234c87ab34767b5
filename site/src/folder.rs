//! The site as a folder: one file for each page, script, texts, style and font beside them.

use crate::{
    dist::Dist,
    document::{Document, article},
    guide::Guide,
    link::{Links, Shape},
    markdown::Expander,
    notice, policy,
    product::Product,
    style_attribute::StyleClasses,
};

pub const SCRIPT: &str = "page.js";
pub const TEXTS: &str = "texts.js";
pub const STYLE: &str = "page.css";
pub const FONT: &str = "math.woff2";

/// Adds the pages and what they load.
pub fn add(dist: &mut Dist, guide: &Guide, product: &Product) -> anyhow::Result<()> {
    let links = Links { shape: Shape::Folder, pages: guide.names() };
    let expander = Expander { typesetter: &product.typesetter, links: &links };
    let policy = policy::of_folder_page(notice::NO_SCRIPT_STYLE);
    let head = format!(
        "<link rel=\"stylesheet\" href=\"{STYLE}\">\n<script src=\"{TEXTS}\" defer></script>\n\
         <script src=\"{SCRIPT}\" defer></script>\n"
    );
    let mut classes = StyleClasses::default();
    for chapter in &guide.chapters {
        let text = expander.expand(chapter, &mut classes)?;
        let title = if chapter.name == guide.landing().name {
            format!("Steadfoot: {}", chapter.title)
        } else {
            format!("{} · Steadfoot", chapter.title)
        };
        let document = Document {
            title: &title,
            present: Some(&chapter.name),
            policy: &policy,
            head: &head,
            articles: &article(chapter, &text, guide, &links),
            tail: "",
        };
        dist.put(&chapter.page(), document.html(guide, &links)?);
    }
    dist.put(SCRIPT, product.script.as_str());
    dist.put(TEXTS, product.texts.as_str());
    dist.put(STYLE, product.style(FONT, &classes));
    dist.put(FONT, product.font.woff2.as_slice());
    Ok(())
}
