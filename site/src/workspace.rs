//! Where things are.

use std::path::{Path, PathBuf};

use anyhow::{Context, ensure};

/// The folders of the repository that the builder reads and writes.
#[derive(Debug, Clone)]
pub struct Workspace {
    root: PathBuf,
}

impl Workspace {
    /// The workspace that this builder was compiled in.
    pub fn here() -> anyhow::Result<Self> {
        let site = Path::new(env!("CARGO_MANIFEST_DIR"));
        let root = site.parent().context("the site's folder has no parent")?.to_path_buf();
        ensure!(
            root.join("Cargo.toml").is_file(),
            "{} holds no Cargo.toml; the repository was moved since the builder was compiled, run it by `cargo run -p steadfoot-site`",
            root.display()
        );
        Ok(Self { root })
    }

    pub fn root(&self) -> &Path {
        &self.root
    }

    /// The finished folder site.
    pub fn dist(&self) -> PathBuf {
        self.root.join("site/dist")
    }

    /// The finished self-contained page.
    pub fn one_file(&self) -> PathBuf {
        self.dist().join(crate::one_file::NAME)
    }

    /// The page's code and style.
    pub fn page(&self) -> PathBuf {
        self.root.join("site/page")
    }

    /// The chapters.
    pub fn guide(&self) -> PathBuf {
        self.root.join("site/guide")
    }

    /// The example projects.
    pub fn demo_configs(&self) -> PathBuf {
        self.root.join("demo-configs")
    }

    /// The check values.
    pub fn check_values(&self) -> PathBuf {
        self.root.join("tests/values")
    }

    /// Cargo's folder for the browser's build, apart from the builder's own so that neither waits for the other.
    pub fn wasm_build(&self) -> PathBuf {
        self.root.join("target/wasm-build")
    }

    /// What is kept between two runs of the builder.
    pub fn kept(&self) -> PathBuf {
        self.root.join("target/site")
    }
}
