use crate::calc::order::put_in_order;
use alloc::vec::Vec;
use core::f64::consts::{PI, TAU};

use super::samples::Samples;
use crate::geometry::{Hull, Point};

/// Directions closer together than this are one.
const SAME_RAD: f64 = 1e-3;
/// The directions in which a cabinet is pushed, and the search for the worst of them.
///
/// Units: radians from +x towards +y, 0 to 2 pi, ascending.
#[derive(Clone, Debug, PartialEq)]
pub struct Directions {
    tried_rad: Vec<f64>,
}

/// The worst direction for one check.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Peak {
    /// The direction.
    pub direction_rad: f64,
    /// The value there.
    pub value: f64,
}

impl Directions {
    /// Every 15 degrees, the corners of the plan as seen from their centroid, and the normals of its sides.
    pub fn new(places: &[Point]) -> Directions {
        let hull = Hull::new(places);
        let corners = hull.corners();
        let share = 1.0 / corners.len() as f64;
        let centroid = corners.iter().fold(Point::default(), |sum, corner| {
            Point::new(sum.x_mm + corner.x_mm * share, sum.y_mm + corner.y_mm * share)
        });
        let round = (0..24).map(|step| PI * step as f64 / 12.0);
        let to_corners = corners.iter().map(|&corner| centroid.direction_rad(corner));
        let normals = hull.edges().map(|edge| edge.from.direction_rad(edge.to) - PI / 2.0);
        let away = corners.iter().map(|&corner| corner.direction_rad(centroid));
        let plan: Vec<f64> = to_corners.chain(normals).chain(away).map(wrapped).collect();
        let mut tried_rad: Vec<f64> = round.collect();
        for direction_rad in plan {
            let is_new = |known: &f64| {
                let apart_rad = (known - direction_rad).abs();
                apart_rad > SAME_RAD && TAU - apart_rad > SAME_RAD
            };
            if tried_rad.iter().all(is_new) {
                tried_rad.push(direction_rad);
            }
        }
        put_in_order(&mut tried_rad, f64::total_cmp);
        Directions { tried_rad }
    }

    /// Adds further directions, kept apart however close they are to others.
    pub fn add(&mut self, further_rad: &[f64]) {
        self.tried_rad.extend(further_rad.iter().map(|&direction_rad| wrapped_once(direction_rad)));
        put_in_order(&mut self.tried_rad, f64::total_cmp);
        self.tried_rad.dedup();
    }

    /// The directions that are tried before any refinement.
    pub fn tried_rad(&self) -> &[f64] {
        &self.tried_rad
    }

    /// The worst direction for each of a number of checks.
    ///
    /// `values` is asked for a direction and writes one value for each check; greater is worse. The two best peaks of
    /// every check are refined, all checks sharing what has been asked already. A value that is not a number counts as
    /// infinite, so it cannot be lost; minus infinity says that there is nothing to check in a direction.
    ///
    /// ```
    /// use steadfoot::base_reactions::Directions;
    /// let directions = Directions::new(&[]);
    /// let peaks = directions.peaks(1, &mut |direction_rad, values| values[0] = (direction_rad - 1.0).cos());
    /// assert!((peaks[0].direction_rad - 1.0).abs() < 0.01);
    /// assert!(peaks[0].value > 0.9999);
    /// ```
    pub fn peaks(&self, checks: usize, values: &mut dyn FnMut(f64, &mut [f64])) -> Vec<Peak> {
        let mut samples = Samples::new(checks, self.tried_rad.len());
        for (place, &direction_rad) in self.tried_rad.iter().enumerate() {
            samples.ask(place, direction_rad, values);
        }
        for check in 0..checks {
            samples.turn_to(check);
            for top in samples.two_best_tops() {
                samples.climb(top, values);
            }
            samples.search_gaps(values);
        }
        // At the end, because a later check may have asked for a direction that is worse for an earlier one.
        (0..checks).map(|check| samples.best(check)).collect()
    }
}

fn wrapped(direction_rad: f64) -> f64 {
    let turned = if direction_rad < 0.0 { direction_rad + TAU } else { direction_rad };
    if turned >= TAU - SAME_RAD { 0.0 } else { turned }
}

/// The same direction between 0 and 2 pi, from at most one turn away.
pub(super) fn wrapped_once(direction_rad: f64) -> f64 {
    if direction_rad < 0.0 {
        direction_rad + TAU
    } else if direction_rad >= TAU {
        direction_rad - TAU
    } else {
        direction_rad
    }
}
