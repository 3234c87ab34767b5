//! A project that was read and assessed when the guide was made.

use std::collections::BTreeMap;
use std::sync::{Arc, LazyLock, Mutex, OnceLock};

use anyhow::{Context, anyhow, ensure};
use serde_json::Value;
use steadfoot::calc::{CheckId, System};
use steadfoot::explore::{Limit, assess_open, limits};
use steadfoot::project::{self, Project};
use steadfoot::report::outcome::{At, CheckTold, Report, SubjectTold};

use crate::workspace::Workspace;

/// A project with its report.
pub struct Assessed {
    /// What it is called where it is shown.
    pub title: String,
    /// What it teaches, for an example of `demo-configs`.
    pub claim: String,
    pub project: Project,
    /// The project file that it was read from.
    pub text: String,
    pub report: Report,
    limits: OnceLock<Vec<Limit>>,
}

/// The project that a worksheet begins with: one of its own, an example by its file, or the first example.
pub fn of_config(config: &Value) -> anyhow::Result<Arc<Assessed>> {
    if config["project"].is_object() {
        return Ok(Arc::new(Assessed::of_text(&config["project"].to_string())?));
    }
    demo(config["demo"].as_str().unwrap_or(""))
}

/// The example whose file has this name, or begins with it; assessed once.
pub fn demo(name: &str) -> anyhow::Result<Arc<Assessed>> {
    static KNOWN: LazyLock<Mutex<BTreeMap<String, Arc<Assessed>>>> = LazyLock::new(Mutex::default);
    let mut known = KNOWN.lock().map_err(|_| anyhow!("an assessment broke off before"))?;
    if let Some(found) = known.get(name) {
        return Ok(found.clone());
    }
    let files = demo_files()?;
    let file = files.iter().find(|file| file.starts_with(name)).with_context(|| {
        format!("demo-configs holds no example whose file begins with \"{name}\"; it holds {}", files.join(", "))
    })?;
    let folder = Workspace::here()?.demo_configs();
    let mut assessed = Assessed::of_text(&std::fs::read_to_string(folder.join(file))?)
        .with_context(|| format!("demo-configs/{file}"))?;
    let claims: Value = serde_json::from_str(&std::fs::read_to_string(folder.join("claims.json"))?)?;
    assessed.claim = claims[file].as_str().unwrap_or_default().to_string();
    let assessed = Arc::new(assessed);
    known.insert(name.to_string(), assessed.clone());
    Ok(assessed)
}

/// The files of the examples, in their order.
pub fn demo_files() -> anyhow::Result<Vec<String>> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(Workspace::here()?.demo_configs())? {
        let file = entry?.file_name().to_string_lossy().into_owned();
        if file.ends_with(".json") && file.starts_with(|c: char| c.is_ascii_digit()) {
            files.push(file);
        }
    }
    files.sort();
    Ok(files)
}

impl Assessed {
    fn of_text(text: &str) -> anyhow::Result<Self> {
        let project = project::read(text, System::Si).map_err(|faults| {
            anyhow!("{}", faults.iter().map(|fault| fault.sentence()).collect::<Vec<_>>().join("; "))
        })?;
        let report = assess_open(&project);
        let title = if project.title.is_empty() { "a cabinet".into() } else { project.title.clone() };
        Ok(Self { title, claim: String::new(), text: text.to_string(), project, report, limits: OnceLock::new() })
    }

    /// The check that governs.
    pub fn governing(&self) -> Option<&CheckTold> {
        self.report.governs.map(|place| &self.report.checks[place])
    }

    /// The check that is used most among those whose ids begin so; where none has a number, the one that governs.
    pub fn governing_of(&self, prefix: &str) -> Option<&CheckTold> {
        if prefix.is_empty() {
            return self.governing();
        }
        let own = self.report.checks.iter().filter(|check| check.id.starts_with(prefix) && check.at.is_some());
        let used = |check: &&CheckTold| check.utilisation.unwrap_or(f64::NEG_INFINITY);
        let most = own.max_by(|a, b| used(a).total_cmp(&used(b)));
        most.filter(|check| check.utilisation.is_some()).or(self.governing())
    }

    /// The check of this id.
    pub fn check(&self, id: &str) -> anyhow::Result<&CheckTold> {
        ensure!(CheckId::ALL.iter().any(|check| check.id() == id), "there is no check \"{id}\"");
        let found = self.report.checks.iter().find(|check| check.id == id);
        found.with_context(|| format!("\"{id}\" is not checked for {}", self.title))
    }

    /// The place of the state of this name.
    pub fn state(&self, name: &str) -> anyhow::Result<usize> {
        let states = &self.report.states;
        states.iter().position(|state| state.name == name).with_context(|| {
            let names: Vec<_> = states.iter().map(|state| state.name.as_str()).collect();
            format!("{} has no state \"{name}\"; it has {}", self.title, names.join(", "))
        })
    }

    /// How far it can go; searched for when it is first asked.
    pub fn limits(&self) -> &[Limit] {
        self.limits.get_or_init(|| limits(&self.project))
    }

    /// A place that depends on no check, as it stands in this state under its own weight.
    pub fn at_rest(&self, state: usize) -> At {
        At {
            state,
            case: None,
            anchors: false,
            direction_rad: 0.0,
            subject: SubjectTold { kind: "whole", number: 0 },
            stiffness: 1.0,
            check: None,
        }
    }
}
