//! Areas of anchors in concrete against another way to count them, and what a call costs.

use steadfoot::calc::Sheet;
use steadfoot::geometry::{Point, Rectangle};
use steadfoot::rules::anchor::{Amplification, AnchorForce, AnchorPlace, AnchorSite, Finding};
use steadfoot_tests::anchorages::*;
use steadfoot_tests::random::Random;

#[test]
fn the_united_area_is_inclusion_and_exclusion() {
    let mut random = Random::new(33);
    for _ in 0..300 {
        let mut case = pair_case(SI);
        let at = |random: &mut Random| Point::new(random.between(-200.0, 200.0), random.between(-200.0, 200.0));
        let places: Vec<Point> = (0..4).map(|_| at(&mut random)).collect();
        case.anchors = places.iter().map(|&at| AnchorPlace { at, ..case.anchors[0].clone() }).collect();
        case.forces = vec![case.forces[0]; 4];
        case.slab.outline.left_mm = -210.0 - random.between(0.0, 100.0);
        let outlines = {
            let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
            (case.rule.prepare)(&site).breakout_outlines(&[0, 1, 2, 3])
        };
        let drawn: f64 = outlines.iter().map(|outline| outline.area_mm2()).sum();
        let mut counted = 0.0;
        for subset in 1u32..16 {
            let mut shared = case.slab.outline;
            for (place, at) in places.iter().enumerate().filter(|(place, _)| subset & (1 << place) != 0) {
                let _ = place;
                shared = Rectangle {
                    left_mm: shared.left_mm.max(at.x_mm - 180.0),
                    right_mm: shared.right_mm.min(at.x_mm + 180.0),
                    front_mm: shared.front_mm.max(at.y_mm - 180.0),
                    rear_mm: shared.rear_mm.min(at.y_mm + 180.0),
                };
            }
            let area = (shared.right_mm - shared.left_mm).max(0.0) * (shared.rear_mm - shared.front_mm).max(0.0);
            counted += if subset.count_ones() % 2 == 1 { area } else { -area };
        }
        assert!((drawn - counted).abs() < 1e-6 * counted, "{drawn} and {counted}");
        let recorded: f64 = (1..=4)
            .filter_map(|number| {
                case.answers().get(&format!("group-{number}/tension-breakout/A_Nc")).map(|found| found.value)
            })
            .sum();
        assert!((recorded - counted).abs() < 1e-6 * counted, "{recorded} and {counted}");
    }
}

/// Reported, not gated: `cargo test --release -p steadfoot-tests --test anchors -- --ignored --nocapture`.
#[test]
#[ignore = "times the machine"]
fn cost_of_one_call() {
    let edges = Rectangle { left_mm: -400.0, right_mm: f64::INFINITY, front_mm: -400.0, rear_mm: f64::INFINITY };
    let mut case = pair_case(SI);
    let places = [
        (0.0, 0.0),
        (150.0, 0.0),
        (900.0, 0.0),
        (1050.0, 0.0),
        (0.0, 1200.0),
        (150.0, 1200.0),
        (900.0, 1200.0),
        (1050.0, 1200.0),
    ];
    case.anchors =
        places.iter().map(|&(x, y)| AnchorPlace { at: Point::new(x, y), ..case.anchors[0].clone() }).collect();
    case.slab.outline = edges;
    let force = |pull: f64| AnchorForce { tension_n: pull, shear_x_n: -2000.0, shear_y_n: -1000.0 };
    case.forces = (0..8).map(|place| force(if place < 4 { 5000.0 + 100.0 * place as f64 } else { 0.0 })).collect();
    let site = AnchorSite { values: &case.values, anchors: &case.anchors, own: case.own, slab: &case.slab };
    let mut prepared = (case.rule.prepare)(&site);
    let mut findings: Vec<Finding> = Vec::new();
    // The quickest of many short runs, because other work on the machine only ever adds.
    for (name, is_told, count) in [("quiet", false, 1000), ("told", true, 100)] {
        let mut quickest = f64::INFINITY;
        for _ in 0..200 {
            let start = std::time::Instant::now();
            for _ in 0..count {
                findings.clear();
                let mut sheet = if is_told { Sheet::told() } else { Sheet::quiet() };
                prepared.check(&case.forces, Amplification::Amplified, &mut sheet, &mut findings);
            }
            quickest = quickest.min(start.elapsed().as_secs_f64() * 1e6 / count as f64);
        }
        println!("{name}: {quickest:.3} microseconds");
    }
    let start = std::time::Instant::now();
    for _ in 0..1000 {
        std::hint::black_box((case.rule.prepare)(&site));
    }
    println!("prepare: {:.3} microseconds", start.elapsed().as_secs_f64() * 1e6 / 1000.0);
    println!("{} findings", findings.len());
}
