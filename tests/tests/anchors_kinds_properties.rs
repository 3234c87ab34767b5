//! What must hold of every kind of anchor by sums and by order: singles and groups, more of everything, openings and
//! neighbours.

use serde_json::{Value as Json, json};
use steadfoot::calc::{CheckId, Outcome};
use steadfoot::geometry::{Point, Rectangle, Size};
use steadfoot::rules::anchor::{AnchorPlace, anchor_rule};
use steadfoot_tests::anchorages::{SI, Utilised, random_case, random_case_like, strengths};
use steadfoot_tests::random::Random;
use steadfoot_tests::run_anchors::{Case, read};

/// A kind of anchor with all that its report says.
fn input(kind: &str, changes: Json) -> Json {
    let mut all = json!({
        "rule": SI, "anchor_kind": kind, "bolt": "M16", "steel": "f1554-36", "embedment_mm": 120.0,
        "seismic_category": "A-B", "slab": { "strength": "30 MPa", "thickness": "400 mm" },
        "anchors": [pulled(0.0)],
    });
    let report = match kind {
        "cast-headed" => json!({}),
        "cast-hooked" => json!({ "hook_mm": 60.0 }),
        "adhesive" => json!({ "anchor_category": "2", "tau_cr_mpa": 6.0, "tau_uncr_mpa": 9.0 }),
        _ => json!({ "anchor_category": "2", "n_p_cr_n": 20e3, "n_p_uncr_n": 25e3 }),
    };
    for from in [report, changes] {
        for (key, value) in from.as_object().unwrap() {
            all[key] = value.clone();
        }
    }
    all
}

fn pulled(x_mm: f64) -> Json {
    json!({ "at": [x_mm, 0], "tension": "4 kN", "shear": ["2 kN", "1 kN"] })
}

fn case(kind: &str, changes: Json) -> Case {
    read(&input(kind, changes)).unwrap()
}

const KINDS: [&str; 7] =
    ["cast-headed", "cast-hooked", "expansion-torque", "expansion-displacement", "undercut", "screw", "adhesive"];

#[test]
fn anchors_far_apart_are_singles_of_every_kind() {
    for kind in KINDS {
        let alone = case(kind, json!({})).quiet();
        let far = case(kind, json!({ "anchors": [pulled(0.0), pulled(2000.0)] })).quiet();
        let near = case(kind, json!({ "anchors": [pulled(0.0), pulled(150.0)] })).quiet();
        for check in strengths().filter(|check| *check != CheckId::AnchorTensionTributary) {
            assert_eq!(alone.largest(check), far.largest(check), "{kind}: {check:?}");
        }
        let breakout = CheckId::AnchorTensionBreakout;
        assert!(near.largest(breakout) > alone.largest(breakout), "{kind}");
    }
    let bond = CheckId::AnchorTensionBond;
    let near = case("adhesive", json!({ "anchors": [pulled(0.0), pulled(150.0)] })).quiet();
    assert!(near.largest(bond) > case("adhesive", json!({})).quiet().largest(bond));
}

/// The sum of what two anchors hold alone is what they hold as a group of bodies that only touch.
#[test]
fn a_group_of_bodies_that_touch_is_the_sum_of_singles() {
    for (kind, check, symbol, reach_mm) in
        [("undercut", "tension-breakout", ["N_cb", "N_cbg"], 360.0), ("adhesive", "tension-bond", ["N_a", "N_ag"], 0.0)]
    {
        let single = case(kind, json!({})).answers();
        let alone = single[&format!("{check}/{}", symbol[0])].value;
        let reach_mm = if reach_mm > 0.0 { reach_mm } else { 2.0 * single["tension-bond/c_Na"].value };
        let anchors = json!([pulled(0.0), pulled(reach_mm - 1e-6)]);
        let pair = case(kind, json!({ "anchors": anchors })).answers();
        let together = pair[&format!("{check}/{}", symbol[1])].value;
        assert!((together / (2.0 * alone) - 1.0).abs() < 1e-8, "{kind}: {together} and twice {alone}");
    }
}

#[test]
fn more_of_what_a_clause_counts_on_never_hurts() {
    let edges = |mm: f64| json!({ "strength": "30 MPa", "thickness": "400 mm", "left": format!("-{mm} mm") });
    let more = [
        ("adhesive", json!({ "tau_cr_mpa": 6.5 })),
        ("undercut", json!({ "n_p_cr_n": 22e3 })),
        ("undercut", json!({ "k_cr": 8.0 })),
        ("cast-hooked", json!({ "hook_mm": 64.0 })),
        ("screw", json!({ "anchor_category": "1" })),
        ("expansion-torque", json!({ "supplementary_tension": "present" })),
        ("adhesive", json!({ "slab": { "strength": "33 MPa", "thickness": "400 mm" } })),
    ];
    for (kind, changes) in more {
        let (before, after) = (case(kind, json!({})).quiet(), case(kind, changes.clone()).quiet());
        for check in strengths() {
            let (a, b) = (before.largest(check), after.largest(check));
            assert!(b <= a * (1.0 + 1e-12), "{kind} with {changes}: {check:?} rises from {a} to {b}");
        }
    }
    for kind in KINDS {
        for cracking in ["cracked", "uncracked"] {
            let mut last = f64::INFINITY;
            for mm in [60.0, 90.0, 120.0, 180.0, 240.0, 400.0, 800.0] {
                let mut slab = edges(mm);
                slab["cracking"] = json!(cracking);
                let findings = case(kind, json!({ "slab": slab })).quiet();
                let most = [CheckId::AnchorTensionBreakout, CheckId::AnchorTensionBond, CheckId::AnchorTensionBlowout]
                    .into_iter()
                    .fold(0.0, |most: f64, check| most.max(findings.largest(check)));
                assert!(most <= last * (1.0 + 1e-12), "{kind}, {cracking}: {mm} mm from an edge");
                last = most;
            }
        }
    }
}

#[test]
fn an_opening_never_helps() {
    let mut random = Random::new(91);
    let mut compared = 0;
    for _ in 0..1500 {
        let mut case = random_case(&mut random, anchor_rule(SI).unwrap());
        case.slab.outline = Rectangle::EVERYWHERE;
        case.slab.openings.clear();
        let before = case.quiet();
        let half = Size::new(random.decades(10.0, 800.0), random.decades(10.0, 800.0));
        let at = Point::new(random.between(-800.0, 1500.0), random.between(-800.0, 1500.0));
        let opening = Rectangle::around(at, half);
        if case.anchors.iter().any(|anchor| opening.contains(anchor.at)) {
            continue;
        }
        case.slab.openings.push(opening);
        let (sheet, after) = case.told();
        // Three sides near a group reduce the embedment, which the clause itself lets raise the strength.
        let steps = sheet.sections.iter().flat_map(|section| &section.steps);
        let texts = steadfoot::rules::anchor::ANCHOR_RULE_TEXTS[0].steps;
        let is_reduced = |step: &steadfoot::calc::Step| {
            let table = texts.iter().find(|table| table.number == step.id.table()).unwrap();
            table.rows[step.id.row()].symbol == "h_ef_full"
        };
        if steps.into_iter().any(is_reduced) {
            continue;
        }
        for check in [
            CheckId::AnchorTensionBreakout,
            CheckId::AnchorTensionBond,
            CheckId::AnchorShearPryout,
            CheckId::AnchorShearBreakout,
        ] {
            let (a, b) = (before.largest(check), after.largest(check));
            compared += usize::from(b > a);
            assert!(b >= a * (1.0 - 1e-12) || !a.is_finite(), "{check:?}: an opening lowers {a} to {b}");
        }
    }
    assert!(compared > 100, "openings were felt {compared} times");
}

#[test]
fn a_neighbour_never_helps_and_is_never_told() {
    let mut random = Random::new(92);
    for _ in 0..1000 {
        let mut case = random_case(&mut random, anchor_rule(SI).unwrap());
        case.slab.outline = Rectangle::EVERYWHERE;
        case.slab.openings.clear();
        case.own = case.anchors.len();
        let before = case.quiet();
        let mut beside = random_case_like(&case);
        let offset = Point::new(random.between(800.0, 1500.0), random.between(-500.0, 500.0));
        let moved = |anchor: &AnchorPlace| AnchorPlace {
            at: Point::new(anchor.at.x_mm + offset.x_mm, anchor.at.y_mm + offset.y_mm),
            ..anchor.clone()
        };
        beside.anchors.extend(case.anchors.iter().map(moved));
        beside.forces.extend(case.forces.clone());
        let after = beside.quiet();
        for finding in &after {
            if let steadfoot::calc::Subject::Anchor(place) = finding.subject {
                assert!((place as usize) < case.own, "{:?} of a neighbour", finding.check);
            }
        }
        if after.iter().any(|finding| matches!(finding.outcome, Outcome::NotCovered(_))) {
            continue;
        }
        let concrete = |findings: &Vec<_>| {
            findings.largest(CheckId::AnchorTensionBreakout).max(findings.largest(CheckId::AnchorTensionTributary))
        };
        let (a, b) = (concrete(&before), concrete(&after));
        assert!(b >= a * (1.0 - 1e-12) || !a.is_finite(), "a neighbour lowers {a} to {b}");
        for check in [CheckId::AnchorTensionSteel, CheckId::AnchorShearSteel, CheckId::AnchorTensionPullout] {
            assert_eq!(before.largest(check), after.largest(check), "{check:?}");
        }
    }
}
