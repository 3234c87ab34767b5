//! One block of check values, as it stands in its file.

use std::path::{Path, PathBuf};

use anyhow::Context;
use serde::Deserialize;
use serde_json::Value as Json;

use super::{Answers, Compared};

/// One block of check values.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Block {
    pub block: String,
    pub source: String,
    pub trust: String,
    #[serde(default)]
    pub note: String,
    pub runs: String,
    pub input: Json,
    pub expect: Vec<Expect>,
}

/// One expected number.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expect {
    /// Which step or result it proves.
    pub at: String,
    /// As printed.
    pub value: Json,
    #[serde(default)]
    pub unit: String,
    pub tolerance: Option<f64>,
    #[serde(default)]
    pub why: String,
    pub times: Option<f64>,
    pub divided_by: Option<f64>,
}

/// The folder of the check values.
pub fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/values")
}

/// All blocks with the names of their files, in the order of the names.
pub fn load() -> anyhow::Result<Vec<(String, Block)>> {
    let mut blocks = Vec::new();
    for (name, text) in files(&folder())? {
        let list: Vec<Block> = serde_json::from_str(&text).with_context(|| format!("tests/values/{name}"))?;
        blocks.extend(list.into_iter().map(|block| (name.clone(), block)));
    }
    Ok(blocks)
}

/// All blocks, for tests.
///
/// # Panics
/// Where a file cannot be read.
pub fn blocks() -> Vec<(String, Block)> {
    load().unwrap_or_else(|fault| panic!("{fault:#}"))
}

/// The block of this name.
pub fn block(name: &str) -> anyhow::Result<Block> {
    let found = load()?.into_iter().find(|(_, block)| block.block == name);
    found.map(|(_, block)| block).with_context(|| format!("no check values are named \"{name}\""))
}

/// The JSON files of a folder with their texts, in the order of their names.
pub(super) fn files(folder: &Path) -> anyhow::Result<Vec<(String, String)>> {
    let entries = std::fs::read_dir(folder).with_context(|| format!("{} cannot be read", folder.display()))?;
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.map(|entry| entry.path())).collect::<Result<_, _>>()?;
    paths.retain(|path| path.extension().is_some_and(|extension| extension == "json"));
    paths.sort();
    let read = |path: PathBuf| {
        let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let text = std::fs::read_to_string(&path).with_context(|| format!("{} cannot be read", path.display()))?;
        Ok((name, text))
    };
    paths.into_iter().map(read).collect()
}

impl Block {
    /// What is wrong with the block itself: no source, no honest trust, a tolerance without a reason.
    pub fn flaws(&self) -> Vec<String> {
        let mut flaws = Vec::new();
        if self.source.trim().is_empty() {
            flaws.push("it has no source".into());
        }
        if !["published", "secondary", "memory", "derived"].contains(&self.trust.as_str()) {
            flaws.push(format!("its trust is \"{}\"", self.trust));
        }
        if self.expect.is_empty() {
            flaws.push("it expects nothing".into());
        }
        for expect in &self.expect {
            if expect.tolerance.is_some() && expect.why.trim().is_empty() {
                flaws.push(format!("{}: a tolerance without a reason", expect.at));
            }
        }
        flaws
    }

    /// The expected numbers that the answers do not meet, each as a sentence.
    pub fn unmet(&self, answers: &Answers) -> Vec<String> {
        let unmet = |expect: &Expect| match expect.compared(answers) {
            Ok(compared) if compared.is_met() => None,
            Ok(Compared { printed, tolerance, found, .. }) => {
                Some(format!("{}: {printed} {} expected within {tolerance}, found {found}", expect.at, expect.unit))
            }
            Err(problem) => Some(problem),
        };
        self.expect.iter().filter_map(unmet).collect()
    }
}
