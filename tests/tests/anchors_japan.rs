//! The Japanese practice for bolts: every formula text gives what was recorded, every limit is hit from both sides, the
//! practice's own statics stand beside those of the base reactions, and other formats are refused.

use std::collections::BTreeSet;

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Outcome, Shape, Sheet, Status, StepId, System};
use steadfoot::geometry::{Point, Rectangle};
use steadfoot::project;
use steadfoot::rules::anchor::{
    ANCHOR_RULE_TEXTS, AnchorForce, AnchorPlace, AnchorSite, AnchorSlab, Cracking, Finding, WholeLoad, anchor_rule,
};
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_values::valid_values;
use steadfoot_tests::run_anchors::{Case, run};

const INPUTS: usize = 2000;

fn random_case(random: &mut Random) -> (Case, WholeLoad) {
    let rule = anchor_rule("japan-bolts").unwrap();
    let mut anchors = Vec::new();
    let values = valid_values(random, rule.fields, rule.faults);
    let [columns, rows] = [1 + random.below(3), 1 + random.below(3)];
    let [pitch_x, pitch_y] = [random.between(80.0, 900.0), random.between(80.0, 900.0)];
    for column in 0..columns {
        for row in 0..rows {
            let at = Point::new(column as f64 * pitch_x, row as f64 * pitch_y);
            anchors.push(AnchorPlace { at, values: values.clone() });
        }
    }
    let mut beyond = || if random.percent(40) { f64::INFINITY } else { random.between(20.0, 2000.0) };
    let outline =
        Rectangle { left_mm: -beyond(), right_mm: 2000.0 + beyond(), front_mm: -beyond(), rear_mm: 2000.0 + beyond() };
    let slab = AnchorSlab {
        strength_mpa: 21.0,
        thickness_mm: random.decades(50.0, 3000.0),
        cracking: Cracking::Cracked,
        outline,
        boundary: Rectangle::EVERYWHERE,
        openings: if random.percent(5) { vec![outline] } else { Vec::new() },
    };
    let idle = random.percent(10);
    let forces = (0..anchors.len())
        .map(|_| AnchorForce {
            tension_n: if idle || random.percent(30) { 0.0 } else { random.decades(10.0, 1e5) },
            shear_x_n: random.between(-1e4, 1e4),
            shear_y_n: random.between(-1e4, 1e4),
        })
        .collect();
    let weight_n = random.decades(1e3, 1e5);
    let load = WholeLoad {
        weight_n,
        upward_n: weight_n * random.between(-0.6, 0.6),
        horizontal_n: weight_n * random.between(0.1, 2.0),
        at: Point::new(random.between(0.0, 900.0), random.between(0.0, 900.0)),
        height_mm: random.between(100.0, 2000.0),
        direction_rad: if random.percent(30) { 0.0 } else { random.between(0.0, 6.2) },
    };
    (Case { rule, values, own: anchors.len(), anchors, slab, forces }, load)
}

#[test]
fn formula_texts_give_what_was_recorded_and_every_row_is_used() {
    let text = ANCHOR_RULE_TEXTS.iter().find(|text| text.id == "japan-bolts").unwrap();
    let mut proof = Proof::of(text.steps);
    let mut random = Random::new(1981);
    let mut used: BTreeSet<StepId> = BTreeSet::from([anchor_rule("japan-bolts").unwrap().other_format]);
    for _ in 0..INPUTS {
        let (case, load) = random_case(&mut random);
        let (sheet, findings) = case.told();
        let (whole, of_whole) = case.told_whole(&load);
        proof.take(&sheet.sections);
        proof.take(&whole.sections);
        let mut sheet = Sheet::told();
        sheet.open(steadfoot::calc::Part::BaseReactions, steadfoot::calc::Subject::Whole, None, System::Si);
        let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
        (case.rule.prepare)(&site).stiffness_n_per_mm(0, &mut sheet);
        proof.take(&sheet.sections);
        used.extend(findings.iter().chain(&of_whole).filter_map(|finding| match finding.outcome {
            Outcome::NotCovered(reason) | Outcome::NotNeeded(reason) => Some(reason),
            Outcome::Compared { .. } => None,
        }));
    }
    proof.close().must_be_clean();
    for (row, step) in text.steps[0].rows.iter().enumerate().filter(|(_, step)| step.shape == Shape::Reason) {
        let id = StepId::of(text.steps[0].number, row as u8);
        assert!(used.contains(&id), "nothing ever said: {}", step.what);
    }
}

#[test]
fn told_and_quiet_agree_and_every_check_is_spoken_of() {
    let checks = [
        CheckId::AnchorTensionSteel,
        CheckId::AnchorTensionBreakout,
        CheckId::AnchorTensionTributary,
        CheckId::AnchorTensionPullout,
        CheckId::AnchorTensionBond,
        CheckId::AnchorTensionSplitting,
        CheckId::AnchorTensionBlowout,
        CheckId::AnchorShearSteel,
        CheckId::AnchorShearBreakout,
        CheckId::AnchorShearPryout,
        CheckId::AnchorInteractionSteel,
        CheckId::AnchorInteraction,
        CheckId::AnchorSpacing,
        CheckId::AnchorEdge,
        CheckId::AnchorThickness,
    ];
    let mut random = Random::new(7);
    for _ in 0..INPUTS {
        let (case, load) = random_case(&mut random);
        let quiet = case.quiet();
        assert_eq!(quiet, case.told().1);
        let (_, whole) = case.told_whole(&load);
        let is_hung = quiet.iter().all(|finding| finding.check != CheckId::AnchorShearSteel);
        let is_spoken = |check| quiet.iter().chain(&whole).any(|finding: &Finding| finding.check == check);
        for check in checks {
            // A hung box in one row has no span along one axis; along the other the formula speaks.
            assert!(is_spoken(check) || is_hung, "{check:?}");
        }
        for finding in quiet.iter().chain(&whole) {
            if let Outcome::Compared { value, limit, .. } = finding.outcome {
                assert!(value.is_finite() && limit.is_finite() && limit > 0.0, "{finding:?}");
            }
        }
    }
}

/// Four M10 bolts of SS400 round a box of 10 kN, with changes.
fn box_of(changes: Json) -> Json {
    let mut input = json!({
        "rule": "japan-bolts", "bolt": "M10", "steel": "ss400", "embedment_mm": 80,
        "slab": { "strength": "21 MPa", "thickness": "200 mm" },
        "anchors": [{ "at": [-200, -200] }, { "at": [200, -200] }, { "at": [200, 200] }, { "at": [-200, 200] }],
        "whole": { "weight": "10 kN", "upward": "3 kN", "push": "6 kN", "at": [0, 0], "height": 1000, "direction_deg": 0 },
    });
    for (key, value) in changes.as_object().unwrap() {
        input[key] = value.clone();
    }
    input
}

#[test]
fn the_practice_turns_the_box_about_the_row_towards_which_it_is_pushed() {
    let at = |direction: f64, x: f64| {
        let input =
            box_of(json!({"whole": {"weight": "10 kN", "upward": "3 kN", "push": "6 kN", "at": [x, 0], "height": 1000,
            "direction_deg": direction}}));
        run(&input).unwrap()["tension-steel/R_b"].value
    };
    let by_hand = |lever: f64| (6000.0 * 1000.0 - 7000.0 * lever) / (400.0 * 2.0);
    assert!((at(0.0, 0.0) - by_hand(200.0)).abs() < 1e-9);
    assert!((at(0.0, 100.0) - by_hand(100.0)).abs() < 1e-9, "nearer to the row about which it turns");
    assert!((at(180.0, 100.0) - by_hand(300.0)).abs() < 1e-9);
    assert!((at(45.0, 100.0) - by_hand(100.0)).abs() < 1e-9, "of two axes the one that pulls more");
    assert!((at(90.0, 100.0) - by_hand(200.0)).abs() < 1e-9);
}

#[test]
fn shear_takes_from_the_allowable_tension_once_it_is_large_enough() {
    // 1.4 f_t - 1.6 tau meets f_t at tau = 0.25 f_t, 44 MPa.
    let of = |push_n: f64| {
        let whole = json!({"weight": "0.001 kN", "upward": "0 kN", "push": format!("{push_n} N"), "at": [0, 0], "height": 500, "direction_deg": 0});
        run(&box_of(json!({ "whole": whole }))).unwrap()
    };
    let area = of(1000.0)["tension-steel/A"].value;
    let below = of(4.0 * area * 43.9);
    let above = of(4.0 * area * 44.1);
    assert!((below["interaction-steel/f_ts"].value - 176.0).abs() < 1e-9);
    assert!((above["interaction-steel/f_ts"].value - (1.4 * 176.0 - 1.6 * 44.1)).abs() < 1e-6);
}

#[test]
fn given_stresses_and_lengths_stand_in_place_of_the_tables() {
    let given = box_of(json!({"allowable_tension_mpa": 150, "allowable_shear_mpa": 80}));
    let answers = run(&given).unwrap();
    assert_eq!((answers["tension-steel/f_t"].value, answers["shear-steel/f_s"].value), (150.0, 80.0));
    let with = |least: f64| {
        let mut input =
            box_of(json!({"least_spacing_mm": least, "least_edge_mm": least, "least_thickness_mm": least / 2.0}));
        input.as_object_mut().unwrap().remove("whole");
        input["slab"] = json!({"strength": "21 MPa", "thickness": "200 mm", "left": -600});
        run(&input).unwrap()
    };
    for key in ["spacing/u", "edge/u", "thickness/u"] {
        assert!((with(400.0)[key].value - 1.0).abs() < 1e-12 && with(401.0)[key].value > 1.0, "{key}");
    }
}

fn project_with(anchorage: Json, site: Json) -> Json {
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 800, "depth_mm": 800, "height_mm": 2000,
            "frame": { "mass_kg": 400, "centre_mm": [0, 0, 900] },
            "feet": [{ "name": "a", "at_mm": [-300, -300], "size_mm": [80, 80] }, { "name": "b", "at_mm": [300, -300], "size_mm": [80, 80] },
                     { "name": "c", "at_mm": [300, 300], "size_mm": [80, 80] }, { "name": "d", "at_mm": [-300, 300], "size_mm": [80, 80] }],
            "anchors": [{ "at_mm": [-350, -350] }, { "at_mm": [350, -350] }, { "at_mm": [350, 350] }, { "at_mm": [-350, 350] }] },
        "contents": [{ "name": "tray", "mass_kg": 300, "bottom_mm": 300, "size_mm": [600, 600, 900] }],
        "slab": { "strength_mpa": 24, "thickness_mm": 200, "edges_mm": { "left": null, "right": null, "front": null, "rear": null }, "cracked": true },
        "site": site, "anchorage": anchorage })
}

fn japanese_site() -> Json {
    json!({ "rule": "japan-equipment", "component": "equipment", "seismic_class": "A", "storeys": 6, "storey": 3 })
}

fn bolts() -> Json {
    json!({ "rule": "japan-bolts", "bolt": "M16", "steel": "ss400", "embedment_mm": 130, "allowable_pull_n": 12000,
        "allowable_concrete_shear_n": 9000, "least_spacing_mm": 260, "least_edge_mm": 100, "least_thickness_mm": 180 })
}

fn assessed(project: &Json) -> steadfoot::report::outcome::Report {
    project::assess(&project::read(&project.to_string(), System::Si).unwrap())
}

fn status(project: &Json, check: &str) -> Status {
    assessed(project).checks.iter().find(|told| told.id == check).unwrap_or_else(|| panic!("{check} is told")).status
}

#[test]
fn with_all_that_tables_give_the_bolts_of_a_japanese_cabinet_hold_and_without_it_they_are_not_covered() {
    let project = project_with(bolts(), japanese_site());
    for check in [
        "anchor.tension.steel",
        "anchor.tension.pullout",
        "anchor.shear.steel",
        "anchor.shear.breakout",
        "anchor.interaction.steel",
        "anchor.spacing",
        "anchor.thickness",
    ] {
        assert_eq!(status(&project, check), Status::Holds, "{check}");
    }
    for (field, check) in [
        ("allowable_pull_n", "anchor.tension.pullout"),
        ("allowable_concrete_shear_n", "anchor.shear.pryout"),
        ("least_spacing_mm", "anchor.spacing"),
        ("least_thickness_mm", "anchor.thickness"),
    ] {
        let mut less = project.clone();
        less["anchorage"].as_object_mut().unwrap().remove(field);
        assert_eq!(status(&less, check), Status::NotCovered, "{field}");
    }
}

#[test]
fn the_worse_of_the_practice_and_the_base_reactions_counts() {
    let mut project = project_with(bolts(), japanese_site());
    let report = assessed(&project);
    let found = report.checks.iter().find(|told| told.id == "anchor.tension.pullout").unwrap().utilisation.unwrap();
    // 700 kg, its centre at 900 x 4/7 + 750 x 3/7, K_H = 1.0, half of it upwards, turned about the far row.
    let weight = 700.0 * 9.80665;
    let height = (400.0 * 900.0 + 300.0 * 750.0) / 700.0;
    let r_b = (weight * height - 0.5 * weight * 350.0) / (700.0 * 2.0);
    assert!(found >= r_b / 12_000.0 - 1e-9, "{found} against {}", r_b / 12_000.0);
    project["anchorage"]["allowable_pull_n"] = json!(r_b * 0.99);
    assert_eq!(status(&project, "anchor.tension.pullout"), Status::Fails);
}

#[test]
fn formats_are_not_mixed() {
    let strength = json!({ "rule": "asce-7-16", "s_ds": 1.0, "importance_factor": 1.0, "component": "communication", "attachment_height_m": 0 });
    assert_eq!(status(&project_with(bolts(), strength), "anchor.anchorage"), Status::NotCovered);
    let aci = json!({ "rule": "aci-318-19-si", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 125 });
    assert_eq!(status(&project_with(aci, japanese_site()), "anchor.anchorage"), Status::NotCovered);
    let direct = json!({ "rule": "direct", "format": "allowable-stress", "horizontal_coefficient": 0.6, "vertical_coefficient": 0.3,
        "gravity_heavy": 1.0, "gravity_light": 1.0 });
    assert_eq!(status(&project_with(bolts(), direct), "anchor.tension.steel"), Status::Holds);
}

#[test]
fn a_hung_box_is_told_but_not_covered_as_a_whole() {
    let mut hung = bolts();
    hung["mounting"] = json!("hung");
    hung["fixing_height_mm"] = json!(2200);
    let project = project_with(hung, japanese_site());
    assert_eq!(status(&project, "anchor.anchorage"), Status::NotCovered);
    let report = assessed(&project);
    assert!(report.checks.iter().any(|told| told.id == "anchor.tension.steel" && told.utilisation.is_some()));
}
