//! EN 1992-4: every formula text gives what was recorded, what must hold by symmetry and by sums holds, and bad input ends
//! in an outcome that says so.

use std::collections::BTreeSet;

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Outcome, Sheet, Status, StepId, Subject};
use steadfoot::geometry::{Point, Rectangle};
use steadfoot::rules::anchor::{
    ANCHOR_RULE_TEXTS, Amplification, AnchorForce, AnchorPlace, AnchorRuleText, AnchorSite, Finding,
};
use steadfoot::rules::en_1992_4 as en;
use steadfoot_tests::proof::Proof;
use steadfoot_tests::random::Random;
use steadfoot_tests::random_anchorage::random_anchorage;
use steadfoot_tests::run_anchors::{Case, read};

/// A thousand would prove the values; the rarer rows of the tables want some more to be seen at all.
const INPUTS: usize = 12_000;

fn text() -> &'static AnchorRuleText {
    ANCHOR_RULE_TEXTS.iter().find(|text| text.id == "en-1992-4-2018").unwrap()
}

/// Everything that is compared.
const STRENGTHS: [CheckId; 12] = [
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
];

#[test]
fn formula_texts_give_what_was_recorded() {
    let mut proof = Proof::of(text().steps);
    let mut random = Random::new(1992);
    for _ in 0..INPUTS {
        let case = random_anchorage(&mut random);
        proof.take(&case.told().0.sections);
        let mut sheet = Sheet::told();
        sheet.open(steadfoot::calc::Part::BaseReactions, Subject::Whole, None, steadfoot::calc::System::Si);
        let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
        (case.rule.prepare)(&site).stiffness_n_per_mm(0, &mut sheet);
        proof.take(&sheet.sections);
    }
    let account = proof.close();
    println!("{} of {} steps are formulas", account.formula_steps, account.steps);
    account.must_be_clean();
}

#[test]
fn every_reason_is_used() {
    let mut random = Random::new(4);
    let mut used: BTreeSet<StepId> = BTreeSet::from([en::RULE.other_format]);
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
        let mut case = random_anchorage(&mut random);
        if random.percent(5) {
            case.forces.fill(AnchorForce::default());
        }
        if random.percent(2) {
            case.slab.outline.left_mm = case.anchors[0].at.x_mm + 1.0;
        }
        if random.percent(2) {
            case.forces.iter_mut().for_each(|force| (force.shear_x_n, force.shear_y_n) = (1000.0, 0.0));
            case.slab.outline = Rectangle { left_mm: -100.0, ..Rectangle::EVERYWHERE };
        }
        take(&case, if random.percent(20) { Amplification::Plain } else { Amplification::Amplified });
    }
    let mut many = case(json!({}));
    many.anchors = (0..129)
        .map(|place| AnchorPlace { at: Point::new(place as f64 * 10.0, 0.0), values: many.values.clone() })
        .collect();
    many.forces = vec![AnchorForce::default(); 129];
    many.own = 129;
    take(&many, Amplification::Amplified);
    let mut unmeasured = case(json!({}));
    unmeasured.anchors[0].values.0[en::BOLT] = steadfoot::input::Value::Choice(en::BOLT_WORDS.len() - 1);
    take(&unmeasured, Amplification::Amplified);
    let mut unused = Vec::new();
    for table in text().steps {
        for (row, text) in table.rows.iter().enumerate() {
            let id = StepId::of(table.number, row as u8);
            if text.shape == steadfoot::calc::Shape::Reason && !used.contains(&id) {
                unused.push(text.what);
            }
        }
    }
    assert!(unused.is_empty(), "never given: {unused:#?}");
}

#[test]
fn quiet_and_told_find_the_same() {
    let mut random = Random::new(5);
    for _ in 0..2000 {
        let case = random_anchorage(&mut random);
        assert_eq!(case.quiet(), case.told().1);
    }
}

#[test]
fn every_call_says_something_about_every_check() {
    let mut random = Random::new(6);
    for _ in 0..2000 {
        let mut case = random_anchorage(&mut random);
        for force in &mut case.forces {
            if random.percent(20) {
                *force = AnchorForce::default();
            }
        }
        let findings = case.quiet();
        let places = [CheckId::AnchorSpacing, CheckId::AnchorEdge, CheckId::AnchorThickness];
        for check in STRENGTHS.into_iter().chain(places) {
            assert!(findings.iter().any(|finding| finding.check == check), "{check:?} is passed over in silence");
        }
    }
}

#[test]
fn every_outcome_is_a_step_of_its_section() {
    let mut random = Random::new(12);
    for _ in 0..1000 {
        let case = random_anchorage(&mut random);
        let (sheet, findings) = case.told();
        for finding in findings {
            let Outcome::Compared { utilisation, .. } = finding.outcome else { continue };
            let proves = |section: &&steadfoot::calc::Section| {
                section.check == Some(finding.check) && section.subject == finding.subject
            };
            let mut last = sheet.sections.iter().filter(proves).flat_map(|section| section.steps.last());
            // At a limit that the clause includes, the rounding above 1 is taken off.
            let is_told = last.any(|step| {
                step.value == utilisation || (utilisation == 1.0 && step.value >= 1.0 && step.value < 1.0 + 1e-9)
            });
            assert!(is_told, "{:?} of {:?} is not told", finding.check, finding.subject);
        }
    }
}

#[test]
fn a_mirror_and_a_quarter_turn_change_nothing() {
    let mut random = Random::new(4);
    for _ in 0..2000 {
        let case = random_anchorage(&mut random);
        let before = case.quiet();
        for (name, turned) in [("mirrored", false), ("turned", true)] {
            let after = moved(&case, turned).quiet();
            for &check in CheckId::ALL {
                let (a, b) = (largest(&before, check), largest(&after, check));
                assert!(a == b || (a - b).abs() <= 1e-9 * a.abs(), "{name}: {check:?} {a} and {b}");
            }
        }
    }
}

/// The mirror image in x, or the same turned by a quarter to the left.
fn moved(case: &Case, turned: bool) -> Case {
    let place = |x: f64, y: f64| if turned { (-y, x) } else { (-x, y) };
    let mut moved = read(&base()).unwrap();
    moved.values = case.values.clone();
    moved.own = case.own;
    moved.slab = case.slab.clone();
    let side = |old: Rectangle| match turned {
        true => {
            Rectangle { left_mm: -old.rear_mm, right_mm: -old.front_mm, front_mm: old.left_mm, rear_mm: old.right_mm }
        }
        false => Rectangle { left_mm: -old.right_mm, right_mm: -old.left_mm, ..old },
    };
    moved.slab.outline = side(case.slab.outline);
    moved.slab.boundary = side(case.slab.boundary);
    moved.slab.openings = case.slab.openings.iter().map(|&opening| side(opening)).collect();
    moved.anchors = case
        .anchors
        .iter()
        .map(|anchor| {
            let (x, y) = place(anchor.at.x_mm, anchor.at.y_mm);
            AnchorPlace { at: Point::new(x, y), values: anchor.values.clone() }
        })
        .collect();
    moved.forces = case
        .forces
        .iter()
        .map(|force| {
            let (shear_x_n, shear_y_n) = place(force.shear_x_n, force.shear_y_n);
            AnchorForce { shear_x_n, shear_y_n, ..*force }
        })
        .collect();
    moved
}

#[test]
fn twice_the_force_is_twice_the_utilisation() {
    let mut random = Random::new(2);
    for _ in 0..1000 {
        let mut case = random_anchorage(&mut random);
        let before = case.quiet();
        for force in &mut case.forces {
            force.tension_n *= 2.0;
            force.shear_x_n *= 2.0;
            force.shear_y_n *= 2.0;
        }
        let after = case.quiet();
        // The pull weakens a rod that bends, so its utilisation grows faster.
        let bends = case.values.choice(en::SEAT) == Some(en::SEAT_GAP);
        let is_line =
            |check: &CheckId| !(check.id().contains("interaction") || bends && *check == CheckId::AnchorShearSteel);
        for check in STRENGTHS.into_iter().filter(is_line) {
            let (a, b) = (largest(&before, check), largest(&after, check));
            assert!(a == b || (2.0 * a - b).abs() <= 1e-12 * b.abs(), "{check:?}: {a} and {b}");
        }
    }
}

#[test]
fn a_group_that_is_pulled_evenly_is_never_held_against_its_shares() {
    let mut random = Random::new(8);
    for _ in 0..1000 {
        let mut case = random_anchorage(&mut random);
        case.values.0[en::ARM] = steadfoot::input::Value::Unknown;
        case.forces.iter_mut().for_each(|force| force.tension_n = 1000.0);
        let findings = case.quiet();
        let group = largest(&findings, CheckId::AnchorTensionBreakout);
        let share = largest(&findings, CheckId::AnchorTensionTributary);
        assert!(share <= group * (1.0 + 1e-9), "group {group}, share {share}");
    }
}

#[test]
fn absurd_input_ends_in_an_outcome_and_never_holds_by_silence() {
    let odd = [0.0, -1.0, 1e-300, 1e300, f64::NAN, f64::INFINITY, f64::NEG_INFINITY];
    let mut random = Random::new(666);
    for _ in 0..4000 {
        let mut case = random_anchorage(&mut random);
        let number = odd[random.below(odd.len())];
        let place = random.below(case.anchors.len());
        match random.below(7) {
            0 => case.anchors[place].at.x_mm = number,
            1 => case.forces[place].tension_n = number,
            2 => case.forces[place].shear_x_n = number,
            3 => case.slab.strength_mpa = number,
            4 => case.slab.thickness_mm = number,
            5 => case.slab.outline.left_mm = number,
            _ => case.anchors.iter_mut().for_each(|anchor| anchor.at = Point::new(0.0, 0.0)),
        }
        let findings = case.quiet();
        if case.forces.iter().any(|force| force.tension_n.is_nan()) {
            let steel = findings.iter().find(|finding| finding.check == CheckId::AnchorTensionSteel).unwrap();
            assert!(steel.outcome.status() != Status::Holds, "a pull that is no number holds");
        }
        if case.forces.iter().any(|force| force.shear_x_n.is_nan()) {
            let steel = findings.iter().find(|finding| finding.check == CheckId::AnchorShearSteel).unwrap();
            assert!(steel.outcome.status() != Status::Holds, "a shear that is no number holds");
        }
    }
}

#[test]
fn one_alone_is_a_group_of_one_and_far_ones_are_as_many_singles() {
    let alone = case(json!({}));
    let far = |count: usize| {
        let anchors: Vec<Json> = (0..count).map(|place| bolt(5000.0 * place as f64, 0.0)).collect();
        case(json!({ "anchors": anchors, "slab": { "left": "-120 mm" } }))
    };
    let (one, three) = (case(json!({ "slab": { "left": "-120 mm" } })).quiet(), far(3).quiet());
    for check in [
        CheckId::AnchorTensionSteel,
        CheckId::AnchorTensionBreakout,
        CheckId::AnchorTensionPullout,
        CheckId::AnchorShearSteel,
        CheckId::AnchorShearPryout,
    ] {
        assert_eq!(largest(&one, check), largest(&three, check), "{check:?}");
    }
    let groups = three.iter().filter(|finding| finding.check == CheckId::AnchorTensionBreakout).count();
    assert_eq!(groups, 3);
    let doubled = case(json!({ "anchors": [bolt(0.0, 0.0), bolt(359.999, 0.0)] })).quiet();
    let (single, pair) =
        (largest(&alone.quiet(), CheckId::AnchorTensionBreakout), largest(&doubled, CheckId::AnchorTensionBreakout));
    assert!((single - pair).abs() < 1e-5 * single, "{single} and {pair}");
}

#[test]
fn resistances_grow_with_embedment_strength_and_edge_distance() {
    let with = |changes: Json| case(changes).answers();
    let grows = |step: &str, list: Vec<Json>| {
        let values: Vec<f64> = list.into_iter().map(|changes| with(changes)[step].value).collect();
        assert!(values.windows(2).all(|pair| pair[0] < pair[1]), "{step}: {values:?}");
    };
    let depths = || [60.0, 80.0, 120.0, 180.0].map(|mm| json!({ "embedment_mm": mm })).to_vec();
    grows("tension-breakout/N_Rk_c", depths());
    grows("shear-pryout/V_Rk_cp", depths());
    let strengths = || ["20 MPa", "25 MPa", "40 MPa", "60 MPa"].map(|f| json!({ "slab": { "strength": f } })).to_vec();
    grows("tension-breakout/N_Rk_c", strengths());
    grows("tension-pullout/N_Rk_p", strengths());
    let edges = || ["-80 mm", "-100 mm", "-150 mm", "-179 mm"].map(|c| json!({ "slab": { "left": c } })).to_vec();
    grows("tension-breakout/N_Rk_c", edges());
    let to_left = |c: &str| json!({ "slab": { "left": c }, "anchors": [{ "at": [0, 0], "shear": ["-1 kN", "0 kN"] }] });
    grows("shear-breakout/V_Rk_c", ["-80 mm", "-100 mm", "-150 mm", "-400 mm"].map(to_left).to_vec());
}

#[test]
fn a_demand_of_another_format_is_refused() {
    assert_eq!(en::RULE.format, steadfoot::load_case::Format::LimitStates);
    let row = text().steps.iter().find(|table| table.number == en::RULE.other_format.table()).unwrap();
    assert!(row.rows[en::RULE.other_format.row()].what.contains("would fit"));
}

#[test]
fn every_word_of_a_choice_has_its_label() {
    assert_eq!(en::FIELDS.len(), en::FIELD_TEXTS.len());
    for (field, text) in en::FIELDS.iter().zip(en::FIELD_TEXTS) {
        let words = match field.shape {
            steadfoot::input::FieldShape::Choice(words) => words.len(),
            _ => 0,
        };
        assert_eq!(words, text.words.len(), "{}", field.key);
        assert!(!text.label.is_empty() && !text.help.is_empty(), "{}", field.key);
    }
}

/// Reported, not gated: `cargo test -p steadfoot-tests --test anchors_en -- --ignored --nocapture`.
#[test]
#[ignore = "times the machine"]
fn cost_of_one_call() {
    let anchors: Vec<Json> = [0.0, 150.0, 900.0, 1050.0].map(|x| bolt(x, 0.0)).to_vec();
    let case =
        case(json!({ "anchors": anchors, "holes": "clearance", "slab": { "left": "-200 mm", "front": "-200 mm" } }));
    let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
    let mut prepared = (case.rule.prepare)(&site);
    let mut time = |told: bool, times: usize| {
        let begin = std::time::Instant::now();
        for _ in 0..times {
            let mut sheet = if told { Sheet::told() } else { Sheet::quiet() };
            let mut findings: Vec<Finding> = Vec::new();
            prepared.check(&case.forces, Amplification::Plain, &mut sheet, &mut findings);
        }
        begin.elapsed().as_secs_f64() / times as f64 * 1e6
    };
    let (quiet, told) = (time(false, 100_000), time(true, 10_000));
    println!("one call of four fasteners in two groups near two edges: {quiet:.2} us quiet, {told:.1} us told");
}

/// One M16 8.8 headed bolt, 120 mm deep in 300 mm of concrete of 25 MPa, static, pulled and sheared to the right.
fn base() -> Json {
    json!({
        "rule": "en-1992-4-2018", "fastener": "headed", "bolt": "M16", "steel": "iso-8.8", "embedment_mm": 120.0,
        "performance_category": "none", "holes": "filled", "reinforcement": "wide", "splitting": "reinforced",
        "slab": { "strength": "25 MPa", "thickness": "300 mm" },
        "anchors": [bolt(0.0, 0.0)],
    })
}

fn bolt(x_mm: f64, y_mm: f64) -> Json {
    json!({ "at": [x_mm, y_mm], "tension": "1 kN", "shear": ["1 kN", "0 kN"] })
}

/// The base with some members of it put otherwise; those of the slab one by one.
fn case(changes: Json) -> Case {
    let mut input = base();
    for (key, value) in changes.as_object().unwrap() {
        if key == "slab" {
            for (key, value) in value.as_object().unwrap() {
                input["slab"][key] = value.clone();
            }
        } else {
            input[key] = value.clone();
        }
    }
    read(&input).unwrap()
}

/// The largest utilisation of a check; minus infinity where it was not compared.
fn largest(findings: &[Finding], check: CheckId) -> f64 {
    let of_check = findings.iter().filter(|finding| finding.check == check);
    of_check.fold(f64::NEG_INFINITY, |most, finding| match finding.outcome {
        Outcome::Compared { utilisation, .. } => most.max(utilisation),
        _ => most,
    })
}
