//! What the landing page needs of the tables: everything that its own example tells, and tells when it is turned.

use std::collections::BTreeSet;

use anyhow::{Context, anyhow};
use serde_json::Value;
use steadfoot::calc::{Role, System};
use steadfoot::{explore, project};

/// The example that stands on the landing page.
pub const DEMO: &str = "02-full.json";

/// Loads aboard in kg and pushes over the weight that its live numbers are turned to. Whatever they are turned to beyond
/// these may name a row that has yet to be fetched.
const TURNED: [(&str, &[f64]); 2] = [("load", &[200.0, 1500.0, 6000.0]), ("strength", &[0.05, 0.15, 0.3, 0.8, 2.0])];

/// What an example names: rows of the step tables by their codes, 256 times the table's number and the place in it, and
/// checks by their ids.
#[derive(Default)]
pub struct Named {
    pub rows: BTreeSet<usize>,
    pub checks: BTreeSet<String>,
}

impl Named {
    /// What an example's project names, as it stands and turned.
    pub fn by(text: &str) -> anyhow::Result<Self> {
        let mut named = Self::default();
        let project = named.take_project(text)?;
        for (live, values) in TURNED {
            for &value in values {
                let mut turned: Value = serde_json::from_str(text)?;
                for edit in explore::turned(&project, live, value) {
                    let pointer = format!("/{}", edit.path.replace(['.', '['], "/").replace(']', ""));
                    let place = turned.pointer_mut(&pointer).with_context(|| format!("{pointer} is not there"))?;
                    *place = edit.word.map_or_else(|| edit.value.into(), Value::from);
                }
                named.take_project(&turned.to_string())?;
            }
        }
        Ok(named)
    }

    /// The report, and the working of one direction of the rose for each check that governs some, which differ in numbers
    /// only, and of every required check.
    fn take_project(&mut self, text: &str) -> anyhow::Result<project::Project> {
        let project =
            project::read(text, System::Si).map_err(|faults| anyhow!("the example has faults: {faults:?}"))?;
        let report = project::assess(&project);
        self.take(&serde_json::to_value(&report)?);
        let mut governing = BTreeSet::new();
        let points = report.rose.iter().filter(|point| governing.insert(point.check)).map(|point| &point.at);
        let required = report.checks.iter().filter(|check| check.role == Role::Required);
        for at in points.chain(required.filter_map(|check| check.at.as_ref())) {
            self.take(&serde_json::to_value(project::working_told(&project, at))?);
        }
        Ok(project)
    }

    fn take(&mut self, told: &Value) {
        match told {
            Value::Object(entries) => {
                for (key, value) in entries {
                    match (key.as_str(), value) {
                        ("id" | "name" | "reason", Value::Number(code)) => self.take_row(code.as_u64()),
                        ("absent", Value::Array(codes)) => codes.iter().for_each(|code| self.take_row(code.as_u64())),
                        ("id" | "check", Value::String(check)) => drop(self.checks.insert(check.clone())),
                        _ => self.take(value),
                    }
                }
            }
            Value::Array(values) => values.iter().for_each(|value| self.take(value)),
            _ => {}
        }
    }

    fn take_row(&mut self, code: Option<u64>) {
        self.rows.extend(code.map(|code| code as usize));
    }
}
