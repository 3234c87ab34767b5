//! What must hold of anchors by symmetry, by sums and by order, and that bad input ends in an outcome that says so.

use steadfoot::calc::{CheckId, Outcome};
use steadfoot::geometry::{Point, Rectangle};
use steadfoot::input::Value;
use steadfoot::rules::aci_318_19 as aci;
use steadfoot::rules::anchor::{AnchorForce, AnchorPlace, AnchorSlab, anchor_rule};
use steadfoot_tests::anchorages::*;
use steadfoot_tests::random::Random;
use steadfoot_tests::run_anchors::Case;

#[test]
fn a_quarter_turn_and_a_mirror_change_nothing() {
    let mut random = Random::new(4);
    for rule in aci_rules() {
        for _ in 0..1000 {
            let case = random_case(&mut random, rule);
            let turned = transformed(&case, |x, y| (-y, x));
            let mirrored = transformed(&case, |x, y| (-x, y));
            let before = case.quiet();
            for (name, other) in [("turned", turned.quiet()), ("mirrored", mirrored.quiet())] {
                for &check in CheckId::ALL {
                    let (a, b) = (before.largest(check), other.largest(check));
                    assert!(a == b || (a - b).abs() <= 1e-9 * a.abs(), "{name}: {check:?} {a} and {b}");
                }
            }
        }
    }
}

fn transformed(case: &Case, by: fn(f64, f64) -> (f64, f64)) -> Case {
    let point = |x, y| {
        let (x_mm, y_mm) = by(x, y);
        Point::new(x_mm, y_mm)
    };
    let outline = case.slab.outline;
    // A corner at infinity turns with its own axis only, so the sides are turned one by one.
    let (a, b) = (by(outline.left_mm, 0.0), by(outline.right_mm, 0.0));
    let (c, d) = (by(0.0, outline.front_mm), by(0.0, outline.rear_mm));
    let side = |of: fn((f64, f64)) -> f64, pick: fn(f64, f64) -> f64| {
        let sides = [a, b, c, d].map(of).into_iter().filter(|side| *side != 0.0 && !side.is_nan());
        sides.fold(if pick(0.0, 1.0) == 0.0 { f64::INFINITY } else { f64::NEG_INFINITY }, pick)
    };
    let outline = Rectangle {
        left_mm: side(|p| p.0, f64::min),
        right_mm: side(|p| p.0, f64::max),
        front_mm: side(|p| p.1, f64::min),
        rear_mm: side(|p| p.1, f64::max),
    };
    let openings = case.slab.openings.iter().map(|opening| {
        let [a, b] = [point(opening.left_mm, opening.front_mm), point(opening.right_mm, opening.rear_mm)];
        Rectangle {
            left_mm: a.x_mm.min(b.x_mm),
            right_mm: a.x_mm.max(b.x_mm),
            front_mm: a.y_mm.min(b.y_mm),
            rear_mm: a.y_mm.max(b.y_mm),
        }
    });
    let openings = openings.collect();
    let anchors =
        case.anchors.iter().map(|anchor| AnchorPlace { at: point(anchor.at.x_mm, anchor.at.y_mm), ..anchor.clone() });
    let forces = case.forces.iter().map(|force| {
        let (shear_x_n, shear_y_n) = by(force.shear_x_n, force.shear_y_n);
        AnchorForce { shear_x_n, shear_y_n, ..*force }
    });
    Case {
        rule: case.rule,
        values: case.values.clone(),
        anchors: anchors.collect(),
        slab: AnchorSlab { outline, openings, ..case.slab.clone() },
        forces: forces.collect(),
        own: case.own,
    }
}

#[test]
fn twice_the_force_is_twice_the_utilisation() {
    let mut random = Random::new(2);
    for rule in aci_rules() {
        for _ in 0..500 {
            let mut case = random_case(&mut random, rule);
            let before = case.quiet();
            for force in &mut case.forces {
                force.tension_n *= 2.0;
                force.shear_x_n *= 2.0;
                force.shear_y_n *= 2.0;
            }
            let after = case.quiet();
            for check in strengths() {
                let (a, b) = (before.largest(check), after.largest(check));
                assert!(a == b || (2.0 * a - b).abs() <= 1e-12 * b.abs(), "{check:?}: {a} and {b}");
            }
        }
    }
}

#[test]
fn an_anchor_that_is_not_pulled_leaves_the_others_alone() {
    let mut pair = pair_case(SI);
    pair.forces[1] = AnchorForce { tension_n: 0.0, ..pair.forces[1] };
    let mut alone = pair_case(SI);
    alone.anchors.truncate(1);
    alone.forces.truncate(1);
    let (pair, alone) = (pair.quiet(), alone.quiet());
    for check in [CheckId::AnchorTensionBreakout, CheckId::AnchorTensionSteel, CheckId::AnchorTensionPullout] {
        assert_eq!(pair.largest(check), alone.largest(check), "{check:?}");
    }
}

#[test]
fn anchors_far_apart_are_singles() {
    for rule in [SI, US] {
        let mut near = pair_case(rule);
        let mut far = pair_case(rule);
        far.anchors[1].at.x_mm = 360.0;
        let mut alone = pair_case(rule);
        alone.anchors.truncate(1);
        alone.forces.truncate(1);
        let (a, b) = (far.quiet(), alone.quiet());
        for check in strengths().filter(|check| *check != CheckId::AnchorTensionTributary) {
            assert_eq!(a.largest(check), b.largest(check), "{check:?}");
        }
        near.anchors[1].at.x_mm = 359.9;
        assert!(near.quiet().largest(CheckId::AnchorTensionBreakout) > b.largest(CheckId::AnchorTensionBreakout));
    }
}

#[test]
fn si_and_us_editions_agree_within_the_rounding_of_their_coefficients() {
    // 318M rounds 10.04, 13.29, 0.58, 3.77 and the limits of strengths; no mode differs by more than 4 %.
    let mut random = Random::new(1);
    let (si, us) = (anchor_rule(SI).unwrap(), anchor_rule(US).unwrap());
    let mut widest: f64 = 0.0;
    for _ in 0..2000 {
        let mut case = random_case(&mut random, si);
        case.slab.strength_mpa = random.between(18.0, 65.0);
        // A limit in mm and its twin in inches differ: 280 mm and 11 in., 65 mm and 2.5 in., 10 mm and 3/8 in.
        let depths = case.anchors.iter().map(|anchor| anchor.values.given(aci::EMBEDMENT));
        let is_between = depths.into_iter().any(|depth| (63.0..66.0).contains(&depth))
            || (63.0..66.0).contains(&closest_mm(&case))
            || case.values.number(aci::PLATE).is_some_and(|plate| (9.0..10.5).contains(&plate))
            || case.values.choice(aci::BREAKOUT_FORM) == Some(1);
        if is_between {
            continue;
        }
        let a = case.quiet();
        case.rule = us;
        let b = case.quiet();
        for check in strengths() {
            let (a, b) = (a.largest(check), b.largest(check));
            if a.is_finite() && b.is_finite() {
                widest = widest.max((a / b - 1.0).abs());
                assert!((a / b - 1.0).abs() < 0.04, "{check:?}: {a} and {b}");
            }
        }
    }
    println!("they differ by at most {:.2} %", 100.0 * widest);
    assert!(widest > 0.02, "they are two editions");
}

fn closest_mm(case: &Case) -> f64 {
    let pairs = case.anchors.iter().flat_map(|a| case.anchors.iter().map(move |b| a.at.distance_mm(b.at)));
    pairs.filter(|distance| *distance > 0.0).fold(f64::INFINITY, f64::min)
}

#[test]
fn more_strength_embedment_and_edge_distance_never_hurt() {
    let mut random = Random::new(77);
    for _ in 0..1000 {
        let case = random_case(&mut random, anchor_rule(SI).unwrap());
        let before = case.quiet();
        let mut stronger = random_case_like(&case);
        stronger.slab.strength_mpa *= 1.2;
        let after = stronger.quiet();
        for check in strengths() {
            let (a, b) = (before.largest(check), after.largest(check));
            assert!(b <= a * (1.0 + 1e-12) || !a.is_finite(), "{check:?}: stronger concrete raises {a} to {b}");
        }
        // One anchor far from all edges, deeper. Near edges a deeper body is cut more, and the clause is not monotone.
        let mut alone = random_case_like(&case);
        alone.anchors.truncate(1);
        alone.forces.truncate(1);
        alone.slab.outline = Rectangle::EVERYWHERE;
        let shallow = alone.quiet();
        let depth_mm = alone.anchors[0].values.given(aci::EMBEDMENT);
        // The equation for deep anchors begins at 280 mm with 0.3 % less than the common one.
        let crosses = depth_mm < 280.0 && depth_mm * 1.1 >= 280.0;
        alone.anchors[0].values.set_number(aci::EMBEDMENT, depth_mm * 1.1);
        alone.slab.thickness_mm *= 1.1;
        let deep = alone.quiet();
        for check in [CheckId::AnchorTensionBreakout, CheckId::AnchorShearPryout].into_iter().filter(|_| !crosses) {
            let (a, b) = (shallow.largest(check), deep.largest(check));
            // Where the shallow one is not covered for want of concrete beneath it, there is nothing to compare.
            if a == f64::NEG_INFINITY {
                continue;
            }
            assert!(b <= a * (1.0 + 1e-12), "{check:?}: a deeper anchor raises {a} to {b}");
        }
        // One edge farther away. The reduced embedment near three edges is no clause to be monotone, so those are left out.
        let outline = case.slab.outline;
        let edges = [outline.left_mm, outline.right_mm, outline.front_mm, outline.rear_mm];
        if edges.iter().filter(|edge| edge.is_finite()).count() != 1 || !outline.left_mm.is_finite() {
            continue;
        }
        let mut farther = random_case_like(&case);
        farther.slab.outline.left_mm -= 100.0;
        let after = farther.quiet();
        for check in [CheckId::AnchorTensionBreakout, CheckId::AnchorTensionBlowout] {
            let (a, b) = (before.largest(check), after.largest(check));
            assert!(b <= a * (1.0 + 1e-12), "{check:?}: a farther edge raises {a} to {b}");
        }
    }
}

#[test]
fn a_group_that_is_pulled_evenly_is_never_held_against_its_shares() {
    let mut random = Random::new(8);
    for rule in aci_rules() {
        for _ in 0..1000 {
            let mut case = random_case(&mut random, rule);
            for force in &mut case.forces {
                force.tension_n = 1000.0;
            }
            let findings = case.quiet();
            let (group, share) =
                (findings.largest(CheckId::AnchorTensionBreakout), findings.largest(CheckId::AnchorTensionTributary));
            assert!(share <= group * (1.0 + 1e-9), "group {group}, share {share}");
        }
    }
}

#[test]
fn no_shear_towards_an_edge_is_left_out() {
    let mut random = Random::new(71);
    for rule in aci_rules() {
        for _ in 0..1000 {
            let mut case = random_case(&mut random, rule);
            case.slab.outline = Rectangle { right_mm: case.slab.outline.right_mm, ..Rectangle::EVERYWHERE };
            case.slab.openings.clear();
            case.own = case.anchors.len();
            case.values.0[aci::SHEAR_BARS] = Value::Unknown;
            set(&mut case.values, aci::SHEAR_OPTION, "c");
            for force in &mut case.forces {
                *force = AnchorForce { tension_n: 0.0, shear_x_n: random.between(100.0, 1000.0), shear_y_n: 0.0 };
            }
            let (sheet, findings) = case.told();
            let is_covered = findings.iter().all(|finding| !matches!(finding.outcome, Outcome::NotCovered(_)));
            if !is_covered || case.slab.outline.right_mm.is_infinite() {
                continue;
            }
            let of_row = |section: &&steadfoot::calc::Section| section.check == Some(CheckId::AnchorShearBreakout);
            let carried: f64 = sheet
                .sections
                .iter()
                .filter(of_row)
                .flat_map(|section| &section.steps)
                .filter(|step| step.carried && step.index > 0)
                .map(|step| rule.system.to_si(step.value, steadfoot::calc::Kind::Force))
                .sum();
            let pushed: f64 = case.forces.iter().map(|force| force.shear_x_n).sum();
            assert!(carried >= pushed * (1.0 - 1e-9), "{carried} N of {pushed} N");
        }
    }
}

#[test]
fn absurd_input_ends_in_an_outcome_and_never_holds_by_silence() {
    let odd = [0.0, -1.0, 1e-300, 1e300, f64::NAN, f64::INFINITY, f64::NEG_INFINITY];
    let mut random = Random::new(666);
    for rule in aci_rules() {
        for _ in 0..3000 {
            let mut case = random_case(&mut random, rule);
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
                let holds = steadfoot::calc::Status::Holds;
                assert!(steel.outcome.status() != holds, "a pull that is no number holds");
            }
        }
    }
}
