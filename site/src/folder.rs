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
/// What the landing page fetches only when it is wanted.
pub const LATER: &str = "later.js";
pub const STYLE: &str = "page.css";
pub const FONT: &str = "math.woff2";

/// Adds the pages and what they load.
pub fn add(dist: &mut Dist, guide: &Guide, product: &Product) -> anyhow::Result<()> {
    let links = Links { shape: Shape::Folder, pages: guide.names() };
    let expander = Expander { typesetter: &product.typesetter, links: &links, kept: &product.kept };
    let policy = policy::of_folder_page(notice::NO_SCRIPT_STYLE);
    let landing = guide.landing().name.as_str();
    let head = |scripts: &[&str]| {
        let scripts = scripts.iter().map(|name| format!("<script src=\"{name}\" defer></script>\n"));
        format!("<link rel=\"stylesheet\" href=\"{STYLE}\">\n{}", scripts.collect::<String>())
    };
    let (landing_head, chapter_head) = (head(&[TEXTS, SCRIPT]), head(&[TEXTS, LATER, SCRIPT]));
    let mut classes = StyleClasses::default();
    for chapter in &guide.chapters {
        let text = expander.expand(chapter, &mut classes)?;
        let title = if chapter.name == landing {
            format!("Steadfoot: {}", chapter.title)
        } else {
            format!("{} · Steadfoot", chapter.title)
        };
        let document = Document {
            title: &title,
            present: Some(&chapter.name),
            policy: &policy,
            head: if chapter.name == landing { &landing_head } else { &chapter_head },
            articles: &article(chapter, &text, guide, &links),
            tail: "",
        };
        dist.put(&chapter.page(), document.html(guide, &links)?);
    }
    dist.put(SCRIPT, product.script.as_str());
    dist.put(TEXTS, product.texts.as_str());
    dist.put(LATER, product.later.as_str());
    dist.put(STYLE, product.style(FONT, &classes));
    dist.put(FONT, product.font.woff2.as_slice());
    Ok(())
}
