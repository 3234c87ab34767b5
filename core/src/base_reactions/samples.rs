//! What has been asked of checks in which direction, and where to ask next.

use alloc::vec::Vec;
use core::f64::consts::TAU;

use super::Peak;
use super::direction::wrapped_once;

/// A peak is known when its neighbours are this near.
const FOUND_RAD: f64 = 1e-4;
/// What may be missing at a peak, as a part of it, when the search ends early on a smooth one.
const FOUND_PART: f64 = 2e-5;
/// The part of a gap that the golden section leaves on the shorter side.
const GOLDEN: f64 = 0.381_966_011_250_105_1;
/// Gaps narrower than this hide nothing.
const GAP_RAD: f64 = 1e-3;
/// How far above the best value, as a part of it, a gap must reach to be searched.
const GAP_PART: f64 = 0.002;
/// Where between the smooth peak (0) and the peak against a jump (1) a gap's height is taken. Measured on 12,000 random
/// cabinets against a sweep every quarter degree: 0 asks 69 directions and misses up to 15 %, a quarter asks 76 and
/// misses 0.1 %, a half asks 82 and misses hardly less.
const GAP_LEAN: f64 = 0.25;
/// Tries for one peak; halving 15 degrees down to the limit takes 12, the golden section 18.
const TRIES_MAX: usize = 40;

/// What has been asked, in ascending order of direction; the values of one direction stand together.
pub(super) struct Samples {
    checks: usize,
    order: Vec<(f64, usize)>,
    values: Vec<f64>,
    /// The check at hand, and its directions and values in a line, with the two nearest from beyond each end.
    check: usize,
    line: Vec<(f64, f64)>,
}

/// How many samples the line repeats beyond each end.
const BEYOND: usize = 2;

impl Samples {
    pub(super) fn new(checks: usize, directions: usize) -> Samples {
        let room = directions + 24;
        let (order, values) = (Vec::with_capacity(room), Vec::with_capacity(room * checks));
        Samples { checks, order, values, check: 0, line: Vec::with_capacity(room + 2 * BEYOND) }
    }

    pub(super) fn ask(&mut self, place: usize, direction_rad: f64, values: &mut dyn FnMut(f64, &mut [f64])) {
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

    pub(super) fn best(&self, check: usize) -> Peak {
        let mut best = Peak { direction_rad: 0.0, value: f64::NEG_INFINITY };
        for (place, &(direction_rad, row)) in self.order.iter().enumerate() {
            let value = self.values[row + check];
            if value > best.value || place == 0 {
                best = Peak { direction_rad, value };
            }
        }
        Peak { direction_rad: wrapped_once(best.direction_rad), ..best }
    }

    /// Lays the samples of a check in a line, which everything that follows looks at.
    pub(super) fn turn_to(&mut self, check: usize) {
        self.check = check;
        self.line.clear();
        self.line.resize(BEYOND, (0.0, 0.0));
        let samples = self.order.iter().map(|&(direction_rad, row)| (direction_rad, self.values[row + check]));
        self.line.extend(samples);
        self.line.resize(self.order.len() + 2 * BEYOND, (0.0, 0.0));
        self.close();
    }

    /// Repeats the samples of each end beyond the other one, unwound.
    fn close(&mut self) {
        let count = self.order.len();
        for place in 0..BEYOND {
            let (last_rad, last) = self.line[count + place];
            let (first_rad, first) = self.line[BEYOND + place];
            self.line[place] = (last_rad - TAU, last);
            self.line[count + BEYOND + place] = (first_rad + TAU, first);
        }
    }

    /// Asks in a direction while there is a line.
    fn ask_in_line(&mut self, place: usize, direction_rad: f64, values: &mut dyn FnMut(f64, &mut [f64])) -> f64 {
        self.ask(place, direction_rad, values);
        let value = self.values[self.order[place].1 + self.check];
        self.line.insert(place + BEYOND, (direction_rad, value));
        self.close();
        value
    }

    fn value(&self, place: usize) -> f64 {
        self.line[place + BEYOND].1
    }

    /// So many samples from the one before or two before a place on, with directions unwound.
    fn about<const COUNT: usize>(&self, place: usize, before: usize) -> [(f64, f64); COUNT] {
        let start = place + BEYOND - before;
        self.line[start..start + COUNT].as_chunks().0[0]
    }

    /// The directions of the two highest samples that stand above their neighbours, the higher first.
    ///
    /// The second is left out where even straight lines on from its neighbours would not reach the first.
    pub(super) fn two_best_tops(&self) -> impl Iterator<Item = f64> + use<> {
        let mut tops: [Option<usize>; 2] = [None; 2];
        for place in 0..self.order.len() {
            let [(_, left), (_, value), (_, right)] = self.about(place, 1);
            if !(value > left && value >= right) {
                continue;
            }
            let is_higher = |other: Option<usize>| other.is_none_or(|other| value > self.value(other));
            if is_higher(tops[0]) {
                tops = [Some(place), tops[0]];
            } else if is_higher(tops[1]) {
                tops[1] = Some(place);
            }
        }
        if let [Some(first), Some(second)] = tops {
            let first = self.value(first);
            if self.ceiling(second).is_some_and(|ceiling| ceiling + 0.02 * ceiling.abs() < first) {
                tops[1] = None;
            }
        }
        tops.map(|place| place.map(|place| self.order[place].0)).into_iter().flatten()
    }

    /// Asks between the neighbours of a top until it is known.
    pub(super) fn climb(&mut self, top_rad: f64, values: &mut dyn FnMut(f64, &mut [f64])) {
        let Some(mut place) = self.order.iter().position(|&(direction_rad, _)| direction_rad == top_rad) else {
            return;
        };
        for tries in 0..TRIES_MAX {
            let [(left_rad, left), (middle_rad, middle), (right_rad, right)] = self.about(place, 1);
            let is_settled = middle == f64::INFINITY || right_rad - left_rad <= 2.0 * FOUND_RAD;
            let is_capped = self.ceiling(place).is_some_and(|ceiling| ceiling - middle <= FOUND_PART * middle.abs());
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
            let gained = self.ask_in_line(place_next, next_rad, values) - middle;
            if gained > 0.0 {
                place = place_next;
            } else if next_rad < middle_rad {
                place += 1;
            }
            let as_foreseen =
                vertex.is_some_and(|(_, foreseen)| (gained - foreseen).abs() <= FOUND_PART * middle.abs());
            if as_foreseen {
                return;
            }
        }
    }

    /// Halves every gap between samples in which the values may still rise above the best one.
    ///
    /// A value may jump where another anchor begins to pull, and then its peak leans against the jump, or it may bend
    /// upwards within a gap; both leave the samples on one side rising into the gap.
    pub(super) fn search_gaps(&mut self, values: &mut dyn FnMut(f64, &mut [f64])) {
        let mut best = self.best(self.check).value;
        let mut gaps: Vec<f64> = Vec::new();
        for place in 0..self.order.len() {
            if self.may_hide_more(place, best) {
                gaps.push(self.order[place].0);
            }
        }
        for _ in 0..TRIES_MAX {
            let Some(from_rad) = gaps.pop() else { return };
            let place = self.order.partition_point(|&(direction_rad, _)| direction_rad < from_rad);
            if !self.may_hide_more(place, best) {
                continue;
            }
            let [_, (to_rad, _)] = self.about(place, 0);
            let middle_rad = (from_rad + to_rad) / 2.0;
            let value = self.ask_in_line(place + 1, middle_rad, values);
            if value > best {
                best = value;
            }
            gaps.push(from_rad);
            gaps.push(middle_rad);
        }
    }

    /// True where the gap after a sample may hold a value notably above the best one.
    fn may_hide_more(&self, place: usize, best: f64) -> bool {
        let [ll, l, r, rr] = self.about(place, 1);
        let width_rad = r.0 - l.0;
        if width_rad < GAP_RAD || best == f64::INFINITY {
            return false;
        }
        let rise = |from: (f64, f64), to: (f64, f64)| {
            let rise = (to.1 - from.1) / (to.0 - from.0) * width_rad;
            if rise.is_finite() { rise } else { 0.0 }
        };
        let at_right = l.1 + rise(ll, l);
        let at_left = r.1 - rise(r, rr);
        // `max` would be a call in the browser.
        let highest = if at_right > at_left || at_left.is_nan() { at_right } else { at_left };
        let (over_right, over_left) = (at_right - r.1, at_left - l.1);
        let smooth = if over_right >= 0.0 && over_left > 0.0 {
            l.1 + over_left / (over_left + over_right) * (at_right - l.1)
        } else {
            highest
        };
        smooth + GAP_LEAN * (highest - smooth) > best + GAP_PART * best.abs()
    }

    /// The most that the peak at a top can reach if the values bend downwards around it: where the straight lines
    /// through the neighbours on both sides meet. None where a value is infinite.
    fn ceiling(&self, place: usize) -> Option<f64> {
        let [ll, l, m, r, rr] = self.about(place, 2);
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
