//! Areas of anchors in concrete against another way to count them, and what a call costs.

use steadfoot::geometry::{Point, Rectangle};
use steadfoot::rules::anchor::{AnchorPlace, AnchorSite};
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
