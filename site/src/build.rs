//! From the sources to the finished site.

use anyhow::{Context, ensure};

use crate::{
    dist::Dist,
    embed, engine, folder,
    font::{MathFont, coverage},
    formula::Typesetter,
    guide::Guide,
    kept::Kept,
    one_file,
    pack::Packer,
    parts::{LIST, Parts},
    product::Product,
    script,
    size::Sizes,
    texts::{self, Tables},
    workspace::Workspace,
};

/// The finished site.
pub struct Site {
    pub dist: Dist,
    pub sizes: Sizes,
    /// The engine's modules, the first and the later one.
    pub wasm: [Vec<u8>; 2],
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
    for name in &parts.unlisted {
        eprintln!("warning: page/{name} is not listed in page/{LIST} and is left out");
    }
    let engine = engine::build(workspace)?;
    let mut tables = texts::all(&workspace.demo_configs())?;
    tables.mark(&[&engine.wasm, &engine.later, parts.script.as_bytes(), parts.later_script.as_bytes()]);
    let packer = Packer::new(&workspace.kept());
    let product = Product {
        typesetter: Typesetter::new()?,
        kept: Kept::open(&workspace.kept(), &[workspace.demo_configs(), workspace.check_values()])?,
        texts: script::of_texts(&tables.first),
        later: script::of_later(&engine, &parts, &tables, &packer)?,
        script: script::of_page(&engine, &parts, &tables, &packer)?,
        one_file_script: script::of_one_file(&engine, &parts, &tables, &packer)?,
        parts,
        font: MathFont::kept_or_cut(&workspace.kept())?,
    };
    let mut dist = Dist::default();
    folder::add(&mut dist, &guide, &product)?;
    one_file::add(&mut dist, &guide, &product)?;
    embed::add(&mut dist, &product);
    dist.put("math-font-licence.txt", product.font.licence.as_str());
    look_for_undrawn(&dist, &tables)?;
    let sizes = Sizes::of(&dist, &engine, &product)?;
    product.kept.close()?;
    Ok(Site { dist, sizes, wasm: [engine.wasm, engine.later] })
}

/// Formulas stand in the pages, and the engine's in the text tables.
fn look_for_undrawn(dist: &Dist, tables: &Tables) -> anyhow::Result<()> {
    let pages = dist.iter().filter(|(name, _)| name.ends_with(".html"));
    let pages = pages.map(|(name, content)| (name, String::from_utf8_lossy(content).into_owned()));
    for (name, content) in pages.chain([&tables.first, &tables.later].map(|table| (folder::TEXTS, table.to_string()))) {
        let missing = coverage::missing(&content);
        ensure!(
            missing.is_empty(),
            "{name}: the math font is cut without these characters of formulas: {}; write the formula without them, \
             or add them to site/src/font/characters.rs",
            missing.iter().map(|c| format!("{c} (U+{:04X})", u32::from(*c))).collect::<Vec<_>>().join(", ")
        );
    }
    Ok(())
}
