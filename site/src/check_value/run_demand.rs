//! Runs a block of demand values: a rule's inputs and a weight.
//!
//! Answers: every step by its symbol, and accelerations also as forces (`c_max*W`); for every load case by the symbol of
//! its name `gravity`, `vertical`, `horizontal` over the weight, and `down` and `push` as forces (`LRFD 7/down`).

use serde_json::Value as Json;
use steadfoot::calc::{Kind, Sheet};
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, demand_rule};

use super::{Answers, Found, Ran, field_values, quantity};

/// The answers for `{ "rule": id, "weight": force, fields ... }`.
pub fn run(input: &Json) -> Result<Answers, String> {
    told(input).map(|ran| ran.answers)
}

/// The answers with their working.
pub fn told(input: &Json) -> Result<Ran, String> {
    let id = input["rule"].as_str().ok_or("no rule")?;
    let rule = demand_rule(id).ok_or_else(|| format!("no rule {id}"))?;
    let text = DEMAND_RULE_TEXTS.iter().find(|text| text.id == id).ok_or("a rule without texts")?;
    for key in input.as_object().ok_or("an object belongs here")?.keys() {
        if !["rule", "weight"].contains(&key.as_str()) && rule.fields.iter().all(|field| field.key != key) {
            return Err(format!("{id} has no field {key}"));
        }
    }
    let values = field_values(rule.fields, input)?;
    let weight_n = quantity(&input["weight"], Kind::Force)?;
    let mut faults = Vec::new();
    (rule.faults)(&values, &mut faults);
    if let Some((place, problem, allowed)) = faults.first() {
        return Err(format!("{}: {problem:?}, allowed {allowed}", rule.fields[*place].key));
    }

    let mut sheet = Sheet::told();
    let demand = (rule.demand)(&values, weight_n, &mut sheet).map_err(|reason| text.steps.rows[reason.row()].what)?;
    let mut answers = Answers::new();
    let mut put = |at: String, value: f64, kind: Kind| {
        answers.insert(at, Found { value, kind });
    };
    for step in sheet.sections.iter().flat_map(|section| &section.steps) {
        let row = &text.steps.rows[step.id.row()];
        put(row.symbol.into(), step.value, row.kind);
        if row.kind == Kind::Acceleration {
            put(format!("{}*W", row.symbol), step.value * weight_n, Kind::Force);
        }
    }
    for case in &demand.cases {
        let name = text.steps.rows[case.name.row()].symbol;
        put(format!("{name}/gravity"), case.gravity, Kind::Number);
        put(format!("{name}/vertical"), case.vertical, Kind::Acceleration);
        put(format!("{name}/horizontal"), case.horizontal, Kind::Acceleration);
        put(format!("{name}/down"), (case.gravity + case.vertical) * weight_n, Kind::Force);
        put(format!("{name}/push"), case.horizontal * weight_n, Kind::Force);
    }
    Ok(Ran { answers, sections: sheet.sections })
}
