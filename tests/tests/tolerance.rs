//! Earned tolerance: inside the circle it holds in any direction, just outside it fails in the one that is named.

use std::path::PathBuf;

use serde_json::Value;
use steadfoot::calc::System;
use steadfoot::explore::{MOST_MM, STEP_MM, Tolerance};
use steadfoot::geometry::Point;
use steadfoot::project::{self, Project, assess};
use steadfoot::report::outcome::Verdict;

fn demo(file: &str) -> Project {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../demo-configs").join(file);
    let value: Value = serde_json::from_str(&std::fs::read_to_string(path).expect(file)).expect(file);
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn holds(project: &Project) -> bool {
    assess(project).verdict == Verdict::Holds
}

fn moved(project: &Project, anchor: usize, radius_mm: f64, towards_rad: f64) -> Project {
    let mut moved = project.clone();
    let at = &mut moved.cabinet.anchors[anchor].at;
    *at = Point::new(at.x_mm + radius_mm * towards_rad.cos(), at.y_mm + radius_mm * towards_rad.sin());
    moved
}

/// A cabinet that holds by little: the edge's demo with a harder push.
fn tight() -> Project {
    let project = demo("07-slab-edge.json");
    let limit = steadfoot::explore::limits(&project)
        .into_iter()
        .find(|limit| limit.of == steadfoot::explore::LimitOf::Bolted && limit.what == steadfoot::explore::What::Demand)
        .and_then(|limit| limit.low)
        .expect("the strongest demand is bracketed");
    steadfoot::explore::scaled_strength(&project, 0.98 * limit).expect("a field")
}

#[test]
fn inside_a_circle_it_holds_and_just_outside_it_does_not() {
    for project in [demo("07-slab-edge.json"), tight()] {
        let mut search = Tolerance::new(&project).expect("it holds as it is drawn");
        search.finish();
        assert_eq!(search.circles.len(), project.cabinet.anchors.len());
        let mut bracketed = 0;
        for (anchor, circle) in search.circles.iter().enumerate() {
            for step in 0..24 {
                let towards_rad = f64::from(step) * std::f64::consts::TAU / 24.0 + 0.05;
                for part in [1.0, 0.6] {
                    let inside = moved(&project, anchor, part * circle.holds_mm, towards_rad);
                    assert!(holds(&inside), "anchor {anchor}, {part} of {circle:?} towards {towards_rad}");
                }
            }
            if let Some(fails_mm) = circle.fails_mm {
                bracketed += 1;
                assert_eq!(fails_mm - circle.holds_mm, STEP_MM, "{circle:?}");
                let outside = moved(&project, anchor, fails_mm, circle.towards_rad);
                assert!(!holds(&outside), "anchor {anchor} {circle:?}");
            } else {
                assert_eq!(circle.holds_mm, MOST_MM);
            }
        }
        assert!(bracketed > 0);
    }
}

#[test]
fn all_at_once_may_be_off_by_no_more_than_each_alone() {
    let project = tight();
    let mut search = Tolerance::new(&project).expect("it holds as it is drawn");
    search.finish();
    let together = search.together.expect("it was searched");
    let least_mm = search.circles.iter().map(|circle| circle.holds_mm).fold(f64::INFINITY, f64::min);
    assert!(together.holds_mm <= least_mm, "{together:?} and {least_mm}");
    // A whole row of combinations of corners, moved at once.
    let corner = |number: usize| {
        let quarter = std::f64::consts::FRAC_PI_2;
        (number % 4) as f64 * quarter + quarter / 2.0
    };
    for number in (0..256).step_by(7) {
        let mut all = project.clone();
        for anchor in 0..4 {
            all = moved(&all, anchor, together.holds_mm, corner(number >> (2 * anchor)));
        }
        assert!(holds(&all), "combination {number} at {}", together.holds_mm);
    }
}

/// Bolts of a row come nearest to one another along the row, not over the corners of squares.
#[test]
fn all_at_once_may_be_off_along_the_row_too() {
    let project = demo("20-row-of-cabinets.json");
    let mut search = Tolerance::new(&project).expect("it holds as it is drawn");
    search.finish();
    let together = search.together.expect("it was searched");
    assert!(together.holds_mm > 0.0, "{together:?}");
    for number in (0..256).step_by(3) {
        let mut all = project.clone();
        for anchor in 0..4 {
            let towards_rad = (number >> (2 * anchor) & 3) as f64 * std::f64::consts::FRAC_PI_2;
            all = moved(&all, anchor, together.holds_mm, towards_rad);
        }
        assert!(holds(&all), "combination {number} at {}", together.holds_mm);
    }
}

#[test]
fn far_from_every_edge_a_hole_may_be_a_hands_width_off() {
    let mut search = Tolerance::new(&demo("02-full.json")).expect("it holds as it is drawn");
    search.finish();
    assert!(search.circles.iter().all(|circle| circle.holds_mm == MOST_MM), "{:?}", search.circles);
}

#[test]
fn the_direction_that_is_named_is_straight_towards_the_edge() {
    let mut search = Tolerance::new(&demo("07-slab-edge.json")).expect("it holds as it is drawn");
    search.finish();
    let front = search.circles.iter().filter(|circle| circle.fails_mm.is_some());
    for circle in front {
        assert!((circle.towards_rad.sin() + 1.0).abs() < 1e-12, "{circle:?}");
    }
}

#[test]
fn what_does_not_hold_as_it_is_drawn_has_nothing_to_spare() {
    assert!(Tolerance::new(&demo("09-must-not-pass.json")).is_none());
    assert!(Tolerance::new(&demo("10-cannot-be-said.json")).is_none());
}

#[test]
fn a_search_step_by_step_finds_one_circle_at_a_time() {
    let mut search = Tolerance::new(&demo("11-inch-bolts.json")).expect("it holds as it is drawn");
    let mut calls = 1;
    while search.next() {
        assert_eq!(search.circles.len(), calls);
        calls += 1;
    }
    assert_eq!(calls, 5);
}
