//! The static texts of the engine, baked once for the page: labels, help, clauses, formula texts, example projects.

mod folds;
mod form;
pub mod landing;
mod rows;

pub use rows::cited;

use std::{fs, path::Path};

use anyhow::{Context, ensure};
use serde_json::{Map, Value, json};
use sha2::{Digest, Sha256};
use steadfoot::calc::CheckId;
use steadfoot::project::asked::{ASKED, Put};
use steadfoot::study::STUDY_TEXTS;

/// What the page finds in `texts`: at first, and once the later part is there.
pub struct Tables {
    pub first: Value,
    /// What is added: entries of objects beside those of the first tables, lists in their place.
    pub later: Value,
    /// The build, once it is marked.
    pub build: String,
}

impl Tables {
    /// Marks them with the build that they belong to: texts, engine and code of one build fit together, no others do.
    pub fn mark(&mut self, beside: &[&[u8]]) {
        let mut hash = Sha256::new();
        for table in [&self.first, &self.later] {
            hash.update(table.to_string());
        }
        beside.iter().for_each(|bytes| hash.update(bytes));
        self.build = hash.finalize().iter().take(6).map(|byte| format!("{byte:02x}")).collect();
        self.first["build"] = self.build.clone().into();
    }
}

/// Everything that the page finds in `texts`.
pub fn all(demo_configs: &Path) -> anyhow::Result<Tables> {
    let demos = demos(demo_configs)?;
    let shown =
        demos.iter().find(|demo| demo["file"] == landing::DEMO).context("the landing page's example is missing")?;
    let named = landing::Named::by(shown["text"].as_str().unwrap_or_default())?;
    let is_first = |code: usize| named.rows.contains(&code);
    let words = rows::words(is_first);
    let (first, later): (Map<_, _>, Map<_, _>) = rows::symbols()
        .into_iter()
        .map(|(name, markup)| (name, Value::String(markup)))
        .partition(|(name, _)| words.contains(name.as_str()));
    let first = json!({
        "engine": steadfoot::VERSION,
        "rows": rows::columns(is_first),
        "symbols": first,
        "checks": rows::checks(|check| named.checks.contains(check)),
        "demos": [shown],
    });
    let (rules, fields) = form::rules();
    let later = json!({
        "rows": rows::columns(|code| !is_first(code)),
        "checks": rows::checks(|check| !named.checks.contains(check)),
        "symbols": later,
        "demos": demos,
        "problems": form::problems(),
        "parts": form::parts(),
        "fields": fields,
        "rules": rules,
        "studies": studies(),
        "asked": asked(),
        "not_of_site": steadfoot::project::asked::NOT_OF_SITE,
        "cautions": steadfoot::report::cautions::CAUTIONS,
    });
    Ok(Tables { first, later, build: String::new() })
}

/// The study with which a group of questions begins, and the heading of that group.
const QUESTION_GROUPS: &[(&str, &str)] = &[
    ("not-known", "What is unsure"),
    ("strength", "How far it may go"),
    ("setting-out", "Bolts and their holes"),
    ("standing-free", "While it stands free"),
    ("shaking-ideas", "Rules and places"),
    ("required-spectra", "On a shake table"),
    ("ways-of-standing", "Feet and floor"),
    ("cabinets-in-a-row", "Neighbours, frame, hook"),
];

/// Titles and helps of the studies, in the order in which the page offers them; the first of a group has its heading.
fn studies() -> Value {
    let known = |id| STUDY_TEXTS.iter().any(|text| text.id == id);
    assert!(QUESTION_GROUPS.iter().all(|&(id, _)| known(id)), "a group of questions begins with no study");
    let told = STUDY_TEXTS.iter().map(|text| {
        let mut study = json!({ "id": text.id, "title": text.title, "help": text.help });
        if let Some((_, heading)) = QUESTION_GROUPS.iter().find(|(id, _)| *id == text.id) {
            study["group"] = json!(heading);
        }
        study
    });
    Value::Array(told.collect())
}

/// What the owner of the floor is asked, in order, with the short names of the checks that wait for it.
fn asked() -> Value {
    let told = ASKED.iter().map(|asked| {
        let put = match asked.put {
            Put::Always => "always",
            Put::OnGround => "on-ground",
            Put::Suspended => "suspended",
        };
        json!({ "part": asked.part, "key": asked.key, "put": put, "instead": asked.is_instead, "why": waiting(asked.checks) })
    });
    Value::Array(told.collect())
}

/// The short names of checks, one after the other; an answer that is waited for at rest is waited for in an earthquake too.
pub fn waiting(checks: &[CheckId]) -> String {
    let names = checks.iter().map(|check| check.short());
    names.map(|name| name.trim_end_matches(", at rest").replace(", ", " ")).collect::<Vec<_>>().join(", ")
}

/// What each example teaches, by its file.
const CLAIMS: &str = "claims.json";

/// The example projects, each with its file's name and its text as it stands in the file.
fn demos(folder: &Path) -> anyhow::Result<Vec<Value>> {
    let mut demos = Vec::new();
    if folder.is_dir() {
        let mut paths: Vec<_> =
            fs::read_dir(folder)?.map(|entry| entry.map(|entry| entry.path())).collect::<Result<_, _>>()?;
        paths.sort();
        let claims: Value = serde_json::from_str(&fs::read_to_string(folder.join(CLAIMS))?)?;
        for path in paths {
            let file = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            if !file.ends_with(".json") || file.ends_with("schema.json") || file == CLAIMS {
                continue;
            }
            let text = fs::read_to_string(&path).with_context(|| format!("{} cannot be read", path.display()))?;
            let parsed: Value =
                serde_json::from_str(&text).with_context(|| format!("demo-configs/{file} is no JSON"))?;
            ensure!(parsed["title"].is_string(), "demo-configs/{file} has no title");
            let claim = claims.get(&file).with_context(|| format!("demo-configs/{CLAIMS} has no claim for {file}"))?;
            demos.push(json!({ "file": file, "title": parsed["title"], "claim": claim, "text": text }));
        }
    }
    Ok(demos)
}
