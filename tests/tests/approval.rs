//! The approval file: written and read again it is the same, and what is wrong with one is said with its path.

use serde_json::{Value as Json, json};
use steadfoot::calc::System;
use steadfoot::input::{Problem, Value};
use steadfoot::project::{approval, read};
use steadfoot::rules::anchor::ANCHOR_RULES;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_project::random_project;

fn file() -> Json {
    json!({
        "format": "steadfoot approval 1", "rule": "en-1992-4-2018", "title": "a bonded rod",
        "anchorage": { "fastener": "bonded", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 125, "gamma_inst": 1.2,
            "tau_rk_cr_mpa": 6.5, "tau_rk_ucr_mpa": 11, "c_cr_sp_mm": 200, "h_min_mm": 165, "s_min_mm": 80, "c_min_mm": 80 },
    })
}

/// Path and problem of every fault of the file after a change.
fn faults(change: impl FnOnce(&mut Json)) -> Vec<(String, Problem)> {
    let mut file = file();
    change(&mut file);
    match approval::read(&file.to_string()) {
        Ok(_) => Vec::new(),
        Err(faults) => faults.into_iter().map(|fault| (fault.path, fault.problem)).collect(),
    }
}

#[test]
fn what_is_written_is_read_again_as_it_was() {
    let Ok(first) = approval::read(&file().to_string()) else { panic!("it has faults") };
    let written = serde_json::to_value(&first).unwrap();
    for (key, value) in file().as_object().unwrap() {
        if key == "anchorage" {
            for (key, value) in value.as_object().unwrap() {
                let numbers = value.as_f64().map(|number| (Some(number), written["anchorage"][key].as_f64()));
                assert!(numbers.map_or(written["anchorage"][key] == *value, |(a, b)| a == b), "{key}");
            }
        } else {
            assert_eq!(written[key], *value, "{key}");
        }
    }
    let Ok(second) = approval::read(&written.to_string()) else { panic!("what was written has faults") };
    assert_eq!(
        (first.rule.id, &first.title, &first.known.values),
        (second.rule.id, &second.title, &second.known.values)
    );
}

#[test]
fn every_anchorage_without_faults_can_be_kept() {
    let mut random = Random::new(11);
    let mut kept = 0;
    for _ in 0..400 {
        let Ok(project) = read(&random_project(&mut random), System::Si) else { continue };
        let Some(approval) = approval::of_project(&project) else { continue };
        let text = serde_json::to_string(&approval).unwrap();
        let again = approval::read(&text);
        let Ok(again) = again else { panic!("{:?}\n{text}", again.err().map(|faults| faults[0].sentence())) };
        assert_eq!(again.known.values, approval.known.values);
        kept += 1;
    }
    assert!(kept > 100, "only {kept} were kept");
}

#[test]
fn nothing_but_the_fields_of_an_assessment_is_kept() {
    for rule in ANCHOR_RULES {
        let fields: Vec<&str> = rule.report_fields.iter().map(|&place| rule.fields[place].key).collect();
        for never in ["overstrength", "elastic_factor", "performance_category", "seismic_category", "alpha_sus"] {
            assert!(!fields.contains(&never), "{}: {never} is the project's matter", rule.id);
        }
    }
    let Ok(read) = approval::read(&file().to_string()) else { panic!("it has faults") };
    assert!(read.left_out().contains(&"n_rk_p_cr_n") && !read.left_out().contains(&"gamma_inst"));
    for (place, value) in read.known.values.0.iter().enumerate() {
        assert!(*value == Value::Unknown || read.rule.report_fields.contains(&place));
    }
}

#[test]
fn wrong_files_are_told_with_their_path() {
    let one = |path: &str, problem| vec![(path.to_string(), problem)];
    assert_eq!(faults(|_| ()), []);
    assert_eq!(faults(|file| file["format"] = "steadfoot 1".into()), one("format", Problem::NotAFormat));
    assert_eq!(faults(|file| file["format"] = Json::Null), one("format", Problem::Missing));
    assert_eq!(faults(|file| file["rule"] = "en-1992-4".into()), one("rule", Problem::NotAWord));
    assert_eq!(faults(|file| file["rule"] = 4.into()), one("rule", Problem::NotAWord));
    assert_eq!(faults(|file| file["rule"] = Json::Null), one("rule", Problem::Missing));
    assert_eq!(faults(|file| file["anchorage"] = Json::Null), one("anchorage", Problem::Missing));
    assert_eq!(faults(|file| file["anchorage"] = json!([1])), one("anchorage", Problem::NotAnObject));
    assert_eq!(faults(|file| file["maker"] = "x".into()), one("maker", Problem::UnknownKey));
    let field = |key: &'static str, value: Json| faults(move |file| file["anchorage"][key] = value);
    assert_eq!(field("gamma_inst", json!(1.41)), one("anchorage.gamma_inst", Problem::AboveLimit));
    assert_eq!(field("gamma_inst", json!("1.2")), one("anchorage.gamma_inst", Problem::NotANumber));
    assert_eq!(field("tau_rk_cr_mpa", json!(-1)), one("anchorage.tau_rk_cr_mpa", Problem::BelowLimit));
    assert_eq!(field("fastener", json!("glued")), one("anchorage.fastener", Problem::NotAWord));
    assert_eq!(field("fastener", Json::Null), one("anchorage.fastener", Problem::Missing));
    assert_eq!(field("holes", json!("filled")), one("anchorage.holes", Problem::UnknownKey));
    assert_eq!(field("rule", json!("en-1992-4-2018")), one("anchorage.rule", Problem::UnknownKey));
    let twice = file().to_string().replace("\"gamma_inst\":1.2", "\"gamma_inst\":1.2,\"gamma_inst\":1.0");
    let Err(found) = approval::read(&twice) else { panic!("a key twice was taken") };
    assert_eq!((found[0].path.as_str(), found[0].problem), ("anchorage.gamma_inst", Problem::DuplicateKey));
    let given = faults(|file| file["anchorage"]["bolt"] = "given".into());
    assert_eq!(
        given,
        [("anchorage.diameter_mm".into(), Problem::Missing), ("anchorage.stress_area_mm2".into(), Problem::Missing)]
    );
    for (text, problem) in [("", Problem::NotJson), ("[]", Problem::NotAnObject), ("{", Problem::NotJson)] {
        let Err(found) = approval::read(text) else { panic!("{text} was taken") };
        assert_eq!(found[0].problem, problem, "{text}");
    }
}

#[test]
fn absurd_files_never_panic() {
    let mut random = Random::new(3);
    let text = file().to_string();
    for _ in 0..3000 {
        let mut bytes = text.clone().into_bytes();
        for _ in 0..1 + random.below(4) {
            let place = random.below(bytes.len());
            bytes[place] = b"{}[]\",:0123456789.eE-truefalsn"[random.below(30)];
        }
        if let Ok(changed) = String::from_utf8(bytes) {
            let _ = approval::read(&changed);
        }
    }
}
