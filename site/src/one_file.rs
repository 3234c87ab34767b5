//! The site as one self-contained file that opens from disk: every page, script, texts, style and font inside.

use anyhow::ensure;
use base64::{Engine as _, engine::general_purpose::STANDARD};

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

pub const NAME: &str = "steadfoot.html";

/// Adds the page.
pub fn add(dist: &mut Dist, guide: &Guide, product: &Product) -> anyhow::Result<()> {
    let links = Links { shape: Shape::OneFile, pages: guide.names() };
    let expander = Expander { typesetter: &product.typesetter, links: &links, kept: &product.kept };
    let mut classes = StyleClasses::default();
    let mut articles = String::new();
    for chapter in &guide.chapters {
        let text = expander.expand(chapter, &mut classes)?;
        articles.push_str(&article(chapter, &text, guide, &links));
    }
    let font = format!("data:font/woff2;base64,{}", STANDARD.encode(&product.font.woff2));
    let style = product.style(&font, &classes);
    let script = &product.one_file_script;
    for forbidden in ["</script", "<!--"] {
        ensure!(!script.contains(forbidden), "the script contains {forbidden} and cannot stand inside a page");
    }
    let document = Document {
        title: &format!("Steadfoot: {}", guide.landing().title),
        present: None,
        policy: &policy::of_one_file(script, &[&style, notice::NO_SCRIPT_STYLE]),
        head: &format!("<style>{style}</style>\n"),
        articles: &articles,
        // At the very end: a file that was cut short loses its script, and the notice stays.
        tail: &format!("<script>{script}</script>\n"),
    };
    dist.put(NAME, document.html(guide, &links)?);
    Ok(())
}
