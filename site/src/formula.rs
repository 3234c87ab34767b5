//! A formula of the prose, written in LaTeX, as MathML.

use anyhow::{Context, anyhow};
use math_core::{LatexToMathML, MathCoreConfig, MathDisplay};

/// The writer of formulas.
pub struct Typesetter {
    converter: LatexToMathML,
}

impl Typesetter {
    pub fn new() -> anyhow::Result<Self> {
        let converter = LatexToMathML::new(MathCoreConfig::default())
            .map_err(|error| anyhow!("the formula writer did not start: {error:?}"))?;
        Ok(Self { converter })
    }

    /// A formula within a line.
    pub fn in_line(&self, latex: &str) -> anyhow::Result<String> {
        self.write(latex, MathDisplay::Inline)
    }

    /// A formula on lines of its own, in a box that scrolls when the page is narrower than the formula.
    pub fn displayed(&self, latex: &str) -> anyhow::Result<String> {
        let mathml = self.write(latex, MathDisplay::Block)?;
        Ok(format!("<div class=\"formula\" tabindex=\"0\" role=\"group\" aria-label=\"formula\">{mathml}</div>"))
    }

    fn write(&self, latex: &str, display: MathDisplay) -> anyhow::Result<String> {
        let written = self
            .converter
            .convert_with_local_state(latex, display)
            .map_err(|error| anyhow!("{error:?}"))
            .with_context(|| format!("the formula ${latex}$"))?;
        Ok(written.mathml)
    }
}
