//! Anchors in concrete: every formula text gives what was recorded, every reason can be met, every outcome is told.

use std::collections::BTreeSet;

use serde_json::json;
use steadfoot::calc::{CheckId, Outcome, Sheet, StepId, Subject};
use steadfoot::geometry::Point;
use steadfoot::rules::aci_318_19 as aci;
use steadfoot::rules::anchor::{
    ANCHOR_RULE_TEXTS, Amplification, AnchorForce, AnchorPlace, AnchorSite, Finding, anchor_rule,
};
use steadfoot_tests::anchorages::*;
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::run_anchors::{Case, read};

/// A thousand would prove the values; the rarer rows of the tables want some more to be seen at all.
const INPUTS: usize = 5000;

#[test]
fn formula_texts_of_anchor_rules_give_what_was_recorded() {
    let mut proof = Proof::of(ANCHOR_RULE_TEXTS[0].steps);
    let mut random = Random::new(318);
    for rule in aci_rules() {
        for _ in 0..INPUTS {
            let case = random_case(&mut random, rule);
            proof.take(&case.told().0.sections);
            let mut sheet = Sheet::told();
            sheet.open(steadfoot::calc::Part::BaseReactions, Subject::Whole, None, steadfoot::calc::System::Si);
            let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
            (rule.prepare)(&site).stiffness_n_per_mm(0, &mut sheet);
            proof.take(&sheet.sections);
        }
    }
    for case in rare_cases() {
        proof.take(&case.told().0.sections);
    }
    let account = proof.close();
    println!(
        "{} of {} steps are formulas, {} were typed in or are names",
        account.formula_steps,
        account.steps,
        account.steps - account.computed_steps
    );
    println!("{}", account.others.join("\n"));
    account.must_be_clean();
}

/// What random layouts never meet: terms that matter at a limit only.
fn rare_cases() -> Vec<Case> {
    let screws = json!({
        "rule": SI, "anchor_kind": "screw", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 160.0,
        "seismic_category": "A-B", "anchor_category": "1", "n_p_cr_n": 9000.0,
        "slab": { "strength": "25 MPa", "thickness": "400 mm" },
        "anchors": [{ "at": [0, 0], "tension": "1 kN" }, { "at": [200, 0], "tension": "1 kN" }],
    });
    let wide_bond = json!({
        "rule": SI, "anchor_kind": "adhesive", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 100.0,
        "seismic_category": "A-B", "anchor_category": "1", "tau_uncr_mpa": 20.0, "c_ac_mm": 120.0,
        "slab": { "strength": "25 MPa", "thickness": "400 mm", "cracking": "uncracked", "left": "-100 mm" },
        "anchors": [{ "at": [0, 0], "tension": "1 kN" }],
    });
    let mut no_report = wide_bond.clone();
    no_report["c_ac_mm"] = serde_json::Value::Null;
    [screws, wide_bond, no_report].iter().map(|input| read(input).unwrap()).collect()
}

#[test]
fn reasons_of_anchor_rules_are_all_used() {
    let mut random = Random::new(17);
    let mut used: BTreeSet<StepId> = aci_rules().map(|rule| rule.other_format).collect();
    let mut take = |case: &Case, level| {
        let mut findings: Vec<Finding> = Vec::new();
        let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
        let mut prepared = (case.rule.prepare)(&site);
        prepared.place(&mut Sheet::quiet(), &mut findings);
        prepared.check(&case.forces, level, &mut Sheet::quiet(), &mut findings);
        used.extend(findings.iter().filter_map(|finding| match finding.outcome {
            Outcome::NotCovered(reason) | Outcome::NotNeeded(reason) => Some(reason),
            Outcome::Compared { .. } => None,
        }));
    };
    for _ in 0..INPUTS {
        let id = [SI, "aci-318-14"][random.below(2)];
        let case = random_case(&mut random, anchor_rule(id).unwrap());
        take(&case, if random.percent(50) { Amplification::Plain } else { Amplification::Amplified });
    }
    let mut case = pair_case(SI);
    case.forces = vec![AnchorForce::default(); 2];
    take(&case, Amplification::Amplified);
    case.slab.outline.left_mm = -500.0;
    case.forces[0].shear_x_n = 100.0;
    case.forces[1].shear_x_n = 100.0;
    take(&case, Amplification::Amplified);
    case.slab.outline.left_mm = 0.0;
    take(&case, Amplification::Amplified);
    let mut thick = pair_case(SI);
    for anchor in &mut thick.anchors {
        set(&mut anchor.values, aci::BOLT, "given");
        set(&mut anchor.values, aci::HEAD, "given");
        anchor.values.set_number(aci::DIAMETER, 101.0);
        anchor.values.set_number(aci::STRESS_AREA, 7000.0);
        anchor.values.set_number(aci::BEARING_AREA, 9000.0);
    }
    take(&thick, Amplification::Amplified);
    let mut headless = pair_case(SI);
    set(&mut headless.anchors[0].values, aci::HEAD, "heavy-hex");
    take(&headless, Amplification::Amplified);
    let mut soft = pair_case(SI);
    for values in soft.anchors.iter_mut().map(|anchor| &mut anchor.values).chain([&mut soft.values]) {
        set(values, aci::STEEL, "a307-a");
        set(values, aci::TENSION_OPTION, "a");
        set(values, aci::BUCKLING, "protected");
        values.set_number(aci::STRETCH, 200.0);
    }
    take(&soft, Amplification::Amplified);
    let mut many = pair_case(SI);
    many.anchors = (0..129)
        .map(|place| AnchorPlace { at: Point::new(place as f64 * 100.0, 0.0), ..many.anchors[0].clone() })
        .collect();
    many.forces = vec![AnchorForce::default(); 129];
    take(&many, Amplification::Amplified);
    for table in ANCHOR_RULE_TEXTS[0].steps {
        for (row, text) in table.rows.iter().enumerate() {
            let id = StepId::of(table.number, row as u8);
            let is_said = matches!(text.shape, steadfoot::calc::Shape::Reason);
            assert!(!is_said || used.contains(&id), "nothing ever said: {}", text.what);
        }
    }
}

#[test]
fn told_and_quiet_give_the_same_bits() {
    let mut random = Random::new(50);
    for rule in aci_rules() {
        for _ in 0..1000 {
            let case = random_case(&mut random, rule);
            assert_eq!(case.quiet(), case.told().1);
        }
    }
}

#[test]
fn every_call_says_something_about_every_check() {
    let strength = [
        CheckId::AnchorTensionSteel,
        CheckId::AnchorTensionBreakout,
        CheckId::AnchorTensionTributary,
        CheckId::AnchorTensionPullout,
        CheckId::AnchorTensionBlowout,
        CheckId::AnchorShearSteel,
        CheckId::AnchorShearBreakout,
        CheckId::AnchorShearPryout,
        CheckId::AnchorInteraction,
        CheckId::AnchorSpacing,
        CheckId::AnchorEdge,
    ];
    let mut random = Random::new(9);
    for rule in aci_rules() {
        for _ in 0..2000 {
            let mut case = random_case(&mut random, rule);
            for force in &mut case.forces {
                if random.percent(20) {
                    *force = AnchorForce::default();
                }
            }
            let findings = case.quiet();
            for check in strength {
                assert!(findings.iter().any(|finding| finding.check == check), "{check:?} is passed over in silence");
            }
        }
    }
}

#[test]
fn every_outcome_is_a_step_of_its_section() {
    let mut random = Random::new(12);
    for rule in aci_rules() {
        for _ in 0..500 {
            let case = random_case(&mut random, rule);
            let (sheet, findings) = case.told();
            for finding in findings {
                let Outcome::Compared { utilisation, .. } = finding.outcome else { continue };
                let proves = |section: &&steadfoot::calc::Section| {
                    section.check == Some(finding.check) && section.subject == finding.subject
                };
                let last = sheet.sections.iter().filter(proves).flat_map(|section| section.steps.last());
                // At a limit that the clause includes, the rounding above 1 is taken off.
                let is_told = last
                    .map(|step| step.value)
                    .any(|told| told == utilisation || (utilisation == 1.0 && told < 1.0 + 1e-9));
                assert!(is_told, "{:?} of {:?} is not told", finding.check, finding.subject);
            }
        }
    }
}

#[test]
fn every_word_of_a_choice_has_its_label() {
    for (rule, text) in aci_rules().zip(ANCHOR_RULE_TEXTS) {
        assert_eq!(rule.fields.len(), text.fields.len());
        for (field, text) in rule.fields.iter().zip(text.fields) {
            let words = match field.shape {
                steadfoot::input::FieldShape::Choice(words) => words.len(),
                _ => 0,
            };
            assert_eq!(words, text.words.len(), "{}", field.key);
            assert!(!text.label.is_empty() && !text.help.is_empty(), "{}", field.key);
        }
    }
}
