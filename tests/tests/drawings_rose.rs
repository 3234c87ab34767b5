//! What the rose promises: cut with a mark, split and named by what governs, legible, inside its box.

use std::collections::BTreeSet;

use steadfoot::calc::CheckId;
use steadfoot::report::drawing::{RosePoint, RoseScene, rose};
use steadfoot_tests::random::Random;
use steadfoot_tests::random_scene::{assert_legible, assert_near, rose_scene, texts};

const WIDTHS_PX: [f64; 5] = [240.0, 320.0, 400.0, 520.0, 900.0];

#[test]
fn random_roses_draw_inside_their_box_and_legibly() {
    let mut random = Random::new(5);
    for _ in 0..300 {
        let scene = rose_scene(&mut random);
        assert_legible(&rose(&scene, WIDTHS_PX[random.below(5)]));
    }
}

#[test]
fn the_rose_is_cut_beyond_one_and_a_half_with_a_mark() {
    let point = |place: usize, utilisation: f64| RosePoint {
        direction_rad: place as f64 * std::f64::consts::PI / 12.0,
        utilisation,
        check: CheckId::AnchorTensionBreakout,
        at: Some(place as u16),
    };
    let middle = 160.0;
    for (peak, is_cut) in [(1.49, false), (1.6, true), (40.0, true), (f64::INFINITY, true)] {
        let points: Vec<RosePoint> = (0..24).map(|place| point(place, if place == 3 { peak } else { 0.4 })).collect();
        let drawing = rose(&RoseScene { points, governing: Some(3) }, 320.0);
        let rim = drawing.marks.iter().find(|mark| mark.class == "ring-limit").unwrap().radius.unwrap();
        let one = drawing.marks.iter().find(|mark| mark.class == "ring-one").unwrap().radius.unwrap();
        assert_near(rim / one, 1.5, 0.001);
        assert_eq!(drawing.marks.iter().any(|mark| mark.class == "cut"), is_cut);
        assert_eq!(drawing.marks.iter().any(|mark| mark.class == "direction beyond"), is_cut);
        for mark in drawing.marks.iter().filter(|mark| mark.class.starts_with("rose")) {
            for [x, y] in &mark.points {
                assert!((x - middle).hypot(y - middle) <= rim + 0.02);
            }
        }
        let text = if peak.is_finite() { "at 45°" } else { "tips at 45°" };
        assert!(texts(&drawing).iter().any(|one| one.contains(text)));
        let directions = drawing.marks.iter().filter(|mark| mark.class.starts_with("direction"));
        assert_eq!(directions.filter(|mark| mark.at.is_some() && mark.direction_deg.is_some()).count(), 24);
    }
}

#[test]
fn every_check_that_governs_somewhere_is_named_and_has_its_own_dashes() {
    let mut random = Random::new(9);
    for _ in 0..100 {
        let scene = rose_scene(&mut random);
        let drawing = rose(&scene, 320.0);
        let names: BTreeSet<&str> =
            drawing.marks.iter().filter(|mark| mark.class == "name").map(|mark| mark.text.as_str()).collect();
        let checks: BTreeSet<CheckId> = scene.points.iter().map(|point| point.check).collect();
        if scene.points.len() > 2 {
            assert_eq!(names.len(), checks.len(), "{names:?}");
            let dashes: BTreeSet<&str> =
                drawing.marks.iter().map(|mark| mark.class).filter(|class| class.starts_with("rose by-")).collect();
            // There are six ways to draw an edge; a seventh check takes the last.
            assert_eq!(dashes.len(), checks.len().min(6), "{dashes:?}");
        }
    }
}

#[test]
fn every_check_has_a_short_name_of_its_own() {
    let names: BTreeSet<&str> = CheckId::ALL.iter().map(|check| check.short()).collect();
    assert_eq!(names.len(), CheckId::ALL.len());
    assert!(!names.contains(""));
}
