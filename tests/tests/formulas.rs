//! The sheet cannot lie about what was computed: every formula text gives the recorded number, and every numeral in it
//! matters. The steps that are not formulas are printed as one table (`--nocapture`).

use std::collections::BTreeSet;

use steadfoot::calc::{Sheet, StepId};
use steadfoot::input::{FieldShape, Values};
use steadfoot::rules::demand::{DEMAND_RULE_TEXTS, DEMAND_RULES, Strength};
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_values::valid_values;

/// A thousand would prove the values; the rarer rows of the tables want some more to be seen at all.
const INPUTS: usize = 5000;

#[test]
fn formula_texts_of_demand_rules_give_what_was_recorded() {
    let mut others = Vec::new();
    for (rule, text) in DEMAND_RULES.iter().zip(DEMAND_RULE_TEXTS) {
        let mut random = Random::new(2024);
        let mut proof = Proof::of(&[text.steps]);
        for _ in 0..INPUTS {
            let values = valid_values(&mut random, rule.fields, rule.faults);
            let mut sheet = Sheet::told();
            let _ = (rule.demand)(&values, random.decades(100.0, 1e6), &mut sheet);
            proof.take(&sheet.sections);
        }
        let account = proof.close();
        println!(
            "{}: {} of {} steps are formulas, {} were typed in or are names",
            rule.id,
            account.formula_steps,
            account.steps,
            account.steps - account.computed_steps
        );
        account.must_be_clean();
        others.extend(account.others);
    }
    println!("{}", others.join("\n"));
}

#[test]
fn names_and_reasons_of_demand_rules_are_all_used() {
    for (rule, text) in DEMAND_RULES.iter().zip(DEMAND_RULE_TEXTS) {
        let mut random = Random::new(7);
        let mut used = BTreeSet::new();
        let mut use_up = |values: &Values| {
            let mut sheet = Sheet::told();
            match (rule.demand)(values, 1000.0, &mut sheet) {
                Ok(demand) => used.extend(
                    demand
                        .cases
                        .iter()
                        .map(|case| case.name)
                        .chain(demand.not_amplified)
                        .chain(demand.category_c)
                        .chain(demand.anchors.depth.map(|(_, reason)| reason))
                        .chain(demand.anchors.not_ductile)
                        .chain(demand.anchors.not_expansion)
                        .chain(demand.anchors.not_qualified),
                ),
                Err(reason) => used.extend([reason]),
            }
            used.extend(sheet.sections.iter().flat_map(|section| section.steps.iter().map(|step| step.id)));
        };
        for _ in 0..INPUTS {
            let mut values = valid_values(&mut random, rule.fields, rule.faults);
            use_up(&values);
            // The search for the highest zone may meet a zone for which the input has too little.
            if let Strength::Zones(field) = (rule.strength)(&values) {
                let FieldShape::Choice(zones) = rule.fields[field].shape else { panic!("zones are words") };
                for zone in 0..zones.len() {
                    values.set_choice(field, zone);
                    use_up(&values);
                }
            }
        }
        for (row, step) in text.steps.rows.iter().enumerate() {
            let id = StepId::of(text.steps.number, row as u8);
            assert!(used.contains(&id), "{}: nothing ever told {}", rule.id, step.what);
        }
    }
}
