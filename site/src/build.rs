//! From the sources to the finished site.

use anyhow::Context;

use crate::{
    dist::Dist, embed, engine, folder, font::MathFont, formula::Typesetter, guide::Guide, one_file, parts::Parts,
    product::Product, script, size::Sizes, texts, workspace::Workspace,
};

/// The finished site.
pub struct Site {
    pub dist: Dist,
    pub sizes: Sizes,
    /// The engine as the page holds it.
    pub wasm: Vec<u8>,
}

/// Makes the site and writes it.
pub fn build(workspace: &Workspace) -> anyhow::Result<Site> {
    let site = make(workspace)?;
    site.dist.write(&workspace.dist()).context("the finished site could not be written")?;
    Ok(site)
}

/// Makes the site in memory.
pub fn make(workspace: &Workspace) -> anyhow::Result<Site> {
    let guide = Guide::load(&workspace.guide())?;
    let parts = Parts::load(&workspace.page())?;
    let engine = engine::build(workspace)?;
    let product = Product {
        typesetter: Typesetter::new()?,
        texts: script::of_texts(&texts::all(&workspace.demo_configs())?),
        script: script::of_page(&engine, &parts)?,
        parts,
        font: MathFont::kept_or_cut(&workspace.kept())?,
    };
    let mut dist = Dist::default();
    folder::add(&mut dist, &guide, &product)?;
    one_file::add(&mut dist, &guide, &product)?;
    embed::add(&mut dist, &product);
    if let Some(font) = &product.font {
        dist.put("math-font-licence.txt", font.licence.as_str());
    }
    let sizes = Sizes::of(&dist, &engine, &product)?;
    Ok(Site { dist, sizes, wasm: engine.wasm })
}
