//! The sheet of floors: over random floors under random cabinets every formula text gives what was recorded.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project::{self, assess, working};
use steadfoot::report::text_tables::tables;
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_project::random_project;

#[test]
fn formula_texts_of_floor_checks_give_what_was_recorded() {
    let mut random = Random::new(23);
    let mut proof = Proof::of(&tables());
    let mut taken = 0;
    for round in 0..160 {
        let text = random_project(&mut random);
        let mut value: Value = serde_json::from_str(&text).expect("JSON");
        if value["slab"].is_null() {
            continue;
        }
        value["floor"] = floor(&mut random, round);
        let project = match project::read(&value.to_string(), System::Si) {
            Ok(project) => project,
            Err(faults) => panic!("{}", faults[0].sentence()),
        };
        let report = assess(&project);
        for check in &report.checks {
            let Some(at) = check.at else { continue };
            let sections = working(&project, &at);
            if let Some(utilisation) = check.utilisation {
                let own = sections.iter().filter(|section| section.check.map(|id| id.id()) == Some(check.id));
                let is_told = own.flat_map(|section| &section.steps).any(|step| step.value == utilisation);
                assert!(is_told, "{} of {}: {utilisation} is no step of its working", check.id, check.of);
            }
            proof.take(&sections);
            taken += 1;
        }
    }
    let account = proof.close();
    assert!(taken > 500, "{taken}");
    assert!(account.wrong.is_empty(), "{}", account.wrong.join("\n"));
}

fn floor(random: &mut Random, round: usize) -> Value {
    let pick = |random: &mut Random, words: &[&str]| {
        words[(random.part() * words.len() as f64) as usize % words.len()].to_string()
    };
    let mut floor = json!({
        "kind": pick(random, &["on-ground", "on-ground", "suspended"]),
        "load_class": pick(random, &["live", "permanent"]),
        "load_factors": pick(random, &["asce-7", "en-1990", "tr-34"]),
        "reinforcement": pick(random, &["plain", "fabric", "fibres"]),
        "edge_form": pick(random, &["1948-circle", "1948-semicircle", "early"]),
        "corner_form": pick(random, &["ioannides", "westergaard"]),
        "tensile_strength_mpa": 1.8, "effective_depth_mm": 100, "reinforcement_ratio": 0.004, "residual_moment_n": 8000,
        "span_mm": 5000, "pitch_mm": [2000 + round, 3000], "foot_plate_mm": 12,
        "casters": { "radius_mm": 60, "width_mm": 40, "tread": pick(random, &["steel", "nylon", "polyurethane"]) },
        "raised": { "en_class": pick(random, &["3", "6"]), "rolling_n": 6000 },
        "stands_on": pick(random, &["feet", "rails"]), "grout_mm": 20, "grout_strength_mpa": 50,
    });
    match round % 4 {
        0 => floor["subgrade_n_per_mm3"] = json!(0.02 + 0.06 * random.part()),
        1 => floor["bearing_ratio_percent"] = json!(3.0 + 40.0 * random.part()),
        2 => floor["soil"] = json!("clean-sand"),
        _ => floor["subgrade_n_per_mm3"] = json!(0.2),
    }
    if round.is_multiple_of(3) {
        floor["live_load_mpa"] = json!(0.01);
        floor["raised"]["psa_grade"] = json!("medium");
        floor["raised"].as_object_mut().expect("an object").remove("en_class");
    } else {
        floor["occupancy"] = json!(pick(random, &["telecom-room", "en-office", "us-storage-heavy"]));
        floor["flexural_strength_mpa"] = json!(4.0);
    }
    floor
}
