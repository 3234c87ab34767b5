//! How large each part is, beside its budget.

use std::{fmt, io::Write};

use flate2::{Compression, write::GzEncoder};

use crate::{dist::Dist, engine::Engine, folder, one_file, product::Product, script};

/// One part: bytes as they are, bytes compressed by gzip, and the budgets.
#[derive(Debug, Clone, PartialEq)]
pub struct Size {
    pub part: &'static str,
    pub raw: usize,
    pub gzip: usize,
    pub raw_budget: Option<usize>,
    pub gzip_budget: Option<usize>,
}

impl Size {
    /// Whether each number keeps to its budget.
    pub fn keeps(&self) -> bool {
        self.raw_budget.is_none_or(|budget| self.raw <= budget)
            && self.gzip_budget.is_none_or(|budget| self.gzip <= budget)
    }

    /// Whether no number is over its budget by more than a twentieth, which is what the gate lets through.
    pub fn passes(&self) -> bool {
        let within = |bytes: usize, budget: Option<usize>| budget.is_none_or(|budget| bytes * 20 <= budget * 21);
        within(self.raw, self.raw_budget) && within(self.gzip, self.gzip_budget)
    }
}

/// The sizes of all parts that have a budget. A kilobyte is 1000 bytes.
///
/// The aim was 200 kB and 80 kB compressed for the engine, 60 kB for the texts, 40 kB for code and style, 260 kB for the
/// first page and 700 kB for the one file, for three demand rules and one anchor rule. The first texts, the first code and
/// the first page keep to theirs. The engine's first part is two and a half times its aim. With twenty-three demand rules,
/// eight anchor rules, floors, motion, frames, limits, maps, schedules and what is not known the rest is four to six times
/// that; the gate holds it where it is.
#[derive(Debug, Clone)]
pub struct Sizes(pub Vec<Size>);

impl Sizes {
    pub fn of(dist: &Dist, engine: &Engine, product: &Product) -> anyhow::Result<Self> {
        let style = dist.get(folder::STYLE).unwrap_or_default();
        let code = [script::page_code(engine, &product.parts)?.as_bytes(), style].concat();
        let one_file = dist.get(one_file::NAME).unwrap_or_default();
        let size = |part, bytes: &[u8]| Size {
            part,
            raw: bytes.len(),
            gzip: gzip(bytes),
            raw_budget: None,
            gzip_budget: None,
        };
        let mut first_page = Size {
            part: "first page over http, without the math font",
            raw: 0,
            gzip: 0,
            raw_budget: None,
            gzip_budget: Some(260_000),
        };
        for name in ["index.html", folder::SCRIPT, folder::TEXTS, folder::STYLE] {
            let bytes = dist.get(name).unwrap_or_default();
            first_page.raw += bytes.len();
            first_page.gzip += gzip(bytes);
        }
        Ok(Self(vec![
            Size {
                raw_budget: Some(495_000),
                gzip_budget: Some(214_000),
                ..size("engine, first part (wasm)", &engine.wasm)
            },
            Size {
                raw_budget: Some(1_178_000),
                ..size("engine, both parts (wasm)", &[engine.wasm.as_slice(), &engine.later].concat())
            },
            Size { gzip_budget: Some(9_100), ..size("first text tables", product.texts.as_bytes()) },
            Size { gzip_budget: Some(33_200), ..size("first page code and style", &code) },
            Size { gzip_budget: Some(475_000), ..size("what comes later", product.later.as_bytes()) },
            Size { raw_budget: Some(60_000), ..size("math font", &product.font.woff2) },
            first_page,
            Size { raw_budget: Some(2_720_000), ..size("one file", one_file) },
        ]))
    }
}

impl fmt::Display for Sizes {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let budget = |budget: Option<usize>| budget.map_or("-".to_string(), |budget| budget.to_string());
        writeln!(f, "{:<46}{:>9}{:>9}{:>9}{:>9}", "bytes", "raw", "budget", "gzip", "budget")?;
        for size in &self.0 {
            let over = if size.keeps() { "" } else { "  over" };
            writeln!(
                f,
                "{:<46}{:>9}{:>9}{:>9}{:>9}{over}",
                size.part,
                size.raw,
                budget(size.raw_budget),
                size.gzip,
                budget(size.gzip_budget)
            )?;
        }
        Ok(())
    }
}

fn gzip(bytes: &[u8]) -> usize {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    let written = encoder.write_all(bytes).and_then(|()| encoder.finish());
    written.expect("memory takes every byte").len()
}
