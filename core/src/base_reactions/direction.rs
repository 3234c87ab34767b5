use alloc::vec::Vec;
use core::f64::consts::{PI, TAU};

use crate::geometry::{Hull, Point};

/// Directions closer together than this are one.
const SAME_RAD: f64 = 1e-3;
/// A peak is known when its neighbours are this near.
const FOUND_RAD: f64 = 1e-4;
/// What may be missing at a peak, as a part of it, when the search ends early on a smooth one.
const FOUND_PART: f64 = 2e-5;
/// The part of a gap that the golden section leaves on the shorter side.
const GOLDEN: f64 = 0.381_966_011_250_105_1;
/// Tries for one peak; halving 15 degrees down to the limit takes 12, the golden section 18.
const TRIES_MAX: usize = 40;

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
        let plan: Vec<f64> = to_corners.chain(normals).map(wrapped).collect();
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
        tried_rad.sort_by(f64::total_cmp);
        Directions { tried_rad }
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
        let mut peaks = Vec::with_capacity(checks);
        for check in 0..checks {
            for top in samples.two_best_tops(check) {
                samples.climb(check, top, values);
            }
            peaks.push(samples.best(check));
        }
        // A later check may have asked for a direction that is worse for an earlier one.
        (0..checks).for_each(|check| peaks[check] = samples.best(check));
        peaks
    }
}

fn wrapped(direction_rad: f64) -> f64 {
    let turned = if direction_rad < 0.0 { direction_rad + TAU } else { direction_rad };
    if turned >= TAU - SAME_RAD { 0.0 } else { turned }
}

/// What has been asked, in ascending order of direction; the values of one direction stand together.
struct Samples {
    checks: usize,
    order: Vec<(f64, usize)>,
    values: Vec<f64>,
}

impl Samples {
    fn new(checks: usize, directions: usize) -> Samples {
        let room = directions + 24;
        Samples { checks, order: Vec::with_capacity(room), values: Vec::with_capacity(room * checks) }
    }

    fn ask(&mut self, place: usize, direction_rad: f64, values: &mut dyn FnMut(f64, &mut [f64])) {
        let row = self.values.len();
        self.values.resize(row + self.checks, f64::NAN);
        values(wrapped_once(direction_rad), &mut self.values[row..]);
        for value in &mut self.values[row..] {
            if value.is_nan() {
                *value = f64::INFINITY;
            }
        }
        self.order.insert(place, (direction_rad, row));
    }

    fn value(&self, check: usize, place: usize) -> f64 {
        self.values[self.order[place].1 + check]
    }

    fn best(&self, check: usize) -> Peak {
        let mut best = 0;
        for place in 1..self.order.len() {
            if self.value(check, place) > self.value(check, best) {
                best = place;
            }
        }
        Peak { direction_rad: wrapped_once(self.order[best].0), value: self.value(check, best) }
    }

    /// The sample so many places further round, with its direction unwound from the middle one.
    fn beside(&self, check: usize, place: usize, steps: isize) -> (f64, f64) {
        let count = self.order.len() as isize;
        let index = place as isize + steps;
        let turns = index.div_euclid(count);
        let place = index.rem_euclid(count) as usize;
        (self.order[place].0 + turns as f64 * TAU, self.value(check, place))
    }

    /// The directions of the two highest samples that stand above their neighbours, the higher first.
    ///
    /// The second is left out where even straight lines on from its neighbours would not reach the first.
    fn two_best_tops(&self, check: usize) -> impl Iterator<Item = f64> + use<> {
        let mut tops: [Option<usize>; 2] = [None; 2];
        for place in 0..self.order.len() {
            let value = self.value(check, place);
            if !(value > self.beside(check, place, -1).1 && value >= self.beside(check, place, 1).1) {
                continue;
            }
            let is_higher = |other: Option<usize>| other.is_none_or(|other| value > self.value(check, other));
            if is_higher(tops[0]) {
                tops = [Some(place), tops[0]];
            } else if is_higher(tops[1]) {
                tops[1] = Some(place);
            }
        }
        if let [Some(first), Some(second)] = tops {
            let first = self.value(check, first);
            if self.ceiling(check, second).is_some_and(|ceiling| ceiling + 0.02 * ceiling.abs() < first) {
                tops[1] = None;
            }
        }
        tops.map(|place| place.map(|place| self.order[place].0)).into_iter().flatten()
    }

    /// Asks between the neighbours of a top until it is known.
    fn climb(&mut self, check: usize, top_rad: f64, values: &mut dyn FnMut(f64, &mut [f64])) {
        let Some(mut place) = self.order.iter().position(|&(direction_rad, _)| direction_rad == top_rad) else { return };
        for tries in 0..TRIES_MAX {
            let (middle_rad, middle) = self.beside(check, place, 0);
            let (left_rad, left) = self.beside(check, place, -1);
            let (right_rad, right) = self.beside(check, place, 1);
            let is_settled = middle == f64::INFINITY || right_rad - left_rad <= 2.0 * FOUND_RAD;
            let is_capped =
                self.ceiling(check, place).is_some_and(|ceiling| ceiling - middle <= FOUND_PART * middle.abs());
            // Another check's search may have found something higher beside this top.
            if is_settled || is_capped || left > middle || right > middle {
                return;
            }
            let vertex = if tries % 2 == 0 {
                vertex((left_rad - middle_rad, left - middle), (right_rad - middle_rad, right - middle))
            } else {
                None
            };
            let next_rad = match vertex {
                Some((offset_rad, _)) => middle_rad + offset_rad,
                None if right_rad - middle_rad > middle_rad - left_rad => {
                    middle_rad + GOLDEN * (right_rad - middle_rad)
                }
                None => middle_rad - GOLDEN * (middle_rad - left_rad),
            };
            let place_next = if next_rad > middle_rad { place + 1 } else { place };
            self.ask(place_next, next_rad, values);
            let gained = self.value(check, place_next) - middle;
            if gained > 0.0 {
                place = place_next;
            } else if next_rad < middle_rad {
                place += 1;
            }
            let as_foreseen = vertex
                .is_some_and(|(_, foreseen)| (gained - foreseen).abs() <= FOUND_PART * middle.abs());
            if as_foreseen {
                return;
            }
        }
    }

    /// The most that the peak at a top can reach if the values bend downwards around it: where the straight lines
    /// through the neighbours on both sides meet. None where a value is infinite.
    fn ceiling(&self, check: usize, place: usize) -> Option<f64> {
        let [ll, l, m, r, rr] = [-2, -1, 0, 1, 2].map(|steps| self.beside(check, place, steps));
        let on_the_left = crossing([ll, l], [m, r])?;
        let on_the_right = crossing([l, m], [r, rr])?;
        Some(on_the_left.max(on_the_right))
    }
}

/// Where straight lines through two samples on the left and two on the right meet at the latest between the inner two.
///
/// None where the values bend upwards there or are infinite, so that the lines cap nothing.
fn crossing(outer_left: [(f64, f64); 2], outer_right: [(f64, f64); 2]) -> Option<f64> {
    let line = |[from, to]: [(f64, f64); 2], at: f64| from.1 + (to.1 - from.1) * ((at - from.0) / (to.0 - from.0));
    let ([_, left], [right, _]) = (outer_left, outer_right);
    let left_line_at_right = line(outer_left, right.0);
    let right_line_at_left = line(outer_right, left.0);
    let (over_right, over_left) = (left_line_at_right - right.1, right_line_at_left - left.1);
    let slack = 1e-9 * (left.1.abs() + right.1.abs());
    if !(over_right >= -slack && over_left >= -slack && over_right.is_finite() && over_left.is_finite()) {
        return None;
    }
    // The gap between the lines runs from over_left to -over_right; it closes where they meet.
    let way = if over_left > 0.0 { over_left / (over_left + over_right.max(0.0)) } else { 0.0 };
    Some(left.1 + way * (left_line_at_right - left.1))
}

/// The top of the parabola through the origin and two samples beside it, as an offset and what it should gain there.
///
/// Where the top is the origin itself, a place close by that can prove it. None where there is no top between the
/// samples.
fn vertex(left: (f64, f64), right: (f64, f64)) -> Option<(f64, f64)> {
    let (slope_left, slope_right) = (left.1 / left.0, right.1 / right.0);
    let bend = (slope_left - slope_right) / (left.0 - right.0);
    let slope = slope_left - bend * left.0;
    let top = -slope / (2.0 * bend);
    if !(bend < 0.0 && top > left.0 && top < right.0) {
        return None;
    }
    let side = if top > 0.0 { right.0 } else { left.0 };
    let offset = if top / side < 0.05 { 0.05 * side } else { top };
    Some((offset, slope * offset + bend * offset * offset))
}

fn wrapped_once(direction_rad: f64) -> f64 {
    if direction_rad < 0.0 { direction_rad + TAU } else { direction_rad }
}
