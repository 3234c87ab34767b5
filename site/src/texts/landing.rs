//! What the landing page needs of the tables: everything from which its own example tells anything.

use std::collections::BTreeSet;

use anyhow::anyhow;
use serde_json::Value;
use steadfoot::calc::{Role, System};
use steadfoot::project;

/// The example that stands on the landing page.
pub const DEMO: &str = "02-full.json";

/// The numbers of the step tables that a project's report and the workings of its rose name. Whole tables are taken, so
/// that turning a number of the example, which may lead to other rows of the same clauses, needs nothing more.
pub fn tables_of(text: &str) -> anyhow::Result<BTreeSet<usize>> {
    let project = project::read(text, System::Si).map_err(|faults| anyhow!("the example has faults: {faults:?}"))?;
    let report = project::assess(&project);
    let mut tables = BTreeSet::new();
    take(&serde_json::to_value(&report)?, &mut tables);
    // Every required check of the example may come to govern some direction of the rose when a number is turned.
    let checks =
        report.checks.iter().filter(|check| check.role == Role::Required).filter_map(|check| check.at.as_ref());
    for at in report.rose.iter().map(|point| &point.at).chain(checks) {
        take(&serde_json::to_value(project::working_told(&project, at))?, &mut tables);
    }
    Ok(tables)
}

/// A row's code is 256 times its table's number and its place in it.
fn take(told: &Value, tables: &mut BTreeSet<usize>) {
    match told {
        Value::Object(entries) => {
            for (key, value) in entries {
                let code = value.as_u64().filter(|_| ["id", "name", "reason"].contains(&key.as_str()));
                tables.extend(code.map(|code| code as usize / 256));
                if key == "absent" {
                    tables.extend(
                        value
                            .as_array()
                            .into_iter()
                            .flatten()
                            .filter_map(Value::as_u64)
                            .map(|code| code as usize / 256),
                    );
                }
                take(value, tables);
            }
        }
        Value::Array(values) => values.iter().for_each(|value| take(value, tables)),
        _ => {}
    }
}
