//! Newton's steps on the active parts, with a line search on the convex energy.

use super::scaled::{Answer, Resistance, ScaledSupports};
use crate::calc::number;

/// What is left of the scaled load, whose size is one, when the equilibrium counts as reached.
const REACHED: f64 = 1e-12;
/// What may be left where rounding allows no better: within a millionth of tipping, where the pressed part of a foot
/// shrinks to a sliver, and where supports hold a load a thousand times and more by their own forces on a short lever.
/// With more left than this, nothing is said.
const STALLED: f64 = 1e-6;
/// Steps without a smaller residual after which rounding is held to be the reason.
const PATIENCE: u32 = 8;
const STEPS_MAX: u32 = 200;
const SEARCHES_MAX: u32 = 80;

/// A load divided by its size, and one over that size, by which gaps are scaled.
#[derive(Clone, Copy, Debug)]
pub(super) struct ScaledLoad {
    pub parts: [f64; 3],
    pub per_size: f64,
}

/// A settled state in scaled coordinates.
#[derive(Clone, Copy, Debug)]
pub(super) struct Settled {
    pub unknowns: [f64; 3],
    pub steps: u32,
    pub residual: f64,
}

/// A place on the way: the unknowns, what the supports answer there and what that leaves of the load.
#[derive(Clone, Copy)]
struct Place {
    unknowns: [f64; 3],
    answer: Answer,
    left: [f64; 3],
    residual: f64,
}

/// Looks for the plane under which the supports balance the load, starting from a guess.
///
/// The energy is E(z) - f.z with E half of force.z, because E is of the second degree along every ray; where feet hang
/// above the floor by a gap, what they push over it is taken off.
pub(super) fn settle(supports: &ScaledSupports, load: &ScaledLoad, start: [f64; 3]) -> Option<Settled> {
    let mut here = Place::new(supports, load, start);
    let (mut best, mut best_steps) = ((here.unknowns, here.residual), 0);
    let mut steps = 0;
    while here.residual > here.reached() && steps < STEPS_MAX {
        let step = here.answer.resistance.solve(&here.left);
        match here.stepped(supports, load, &step) {
            Some(next) => here = next,
            None => break,
        }
        steps += 1;
        if here.residual < best.1 {
            (best, best_steps) = ((here.unknowns, here.residual), steps);
        } else if best.1 < STALLED && steps > best_steps + PATIENCE {
            break;
        }
    }
    let (unknowns, residual) = best;
    (residual <= STALLED).then_some(Settled { unknowns, steps, residual })
}

impl Place {
    #[inline(always)]
    fn new(supports: &ScaledSupports, load: &ScaledLoad, unknowns: [f64; 3]) -> Place {
        let answer = supports.answer(&unknowns, load.per_size);
        let left = farther(&load.parts, &answer.force, -1.0);
        Place { unknowns, answer, left, residual: largest(&left) }
    }

    /// What may be left: a part of the load, or what the last bit of the unknowns is worth where the supports work
    /// against each other on a short lever and hardly move the load.
    fn reached(&self) -> f64 {
        let [a, b, c] = self.unknowns;
        let last_bit = f64::EPSILON / 2.0 * (a.abs() + b.abs() + c.abs()) * self.answer.resistance.k;
        // `max` and `min` would be calls in the browser.
        let least = if last_bit > REACHED { last_bit } else { REACHED };
        if least < STALLED { least } else { STALLED }
    }

    /// The place a step further, or none where rounding allows no better one.
    ///
    /// A step is taken whole where the energy still falls at its end, or has fallen enough.
    fn stepped(&self, supports: &ScaledSupports, load: &ScaledLoad, step: &[f64; 3]) -> Option<Place> {
        let falls = dot(&self.left, step);
        if !(falls > 0.0) {
            return None;
        }
        let next = Place::new(supports, load, farther(&self.unknowns, step, 1.0));
        let energy_falls = || next.energy(load) < self.energy(load) - 1e-4 * falls;
        if next.residual <= REACHED || dot(&next.left, step) >= 0.0 || energy_falls() {
            return Some(next);
        }
        self.searched(supports, load, step, falls, dot(&next.left, step))
    }

    /// The place along a step that overshoots where the slope of the energy has fallen to a tenth.
    ///
    /// The slope only grows along the step, so what lies between a falling and a rising place closes in on the lowest.
    /// Secants and halvings take turns; halvings go by powers while the place may still be decades nearer, as it is
    /// when too few supports are active to stop the step.
    #[cold]
    fn searched(
        &self,
        supports: &ScaledSupports,
        load: &ScaledLoad,
        step: &[f64; 3],
        falls: f64,
        end_slope: f64,
    ) -> Option<Place> {
        let (mut near, mut near_slope) = (0.0, falls);
        let (mut far, mut far_slope) = (1.0, end_slope);
        let mut found = None;
        for tries in 0..SEARCHES_MAX {
            let length = if tries % 2 == 0 {
                near + (far - near) * near_slope / (near_slope - far_slope)
            } else if near < 1e-3 * far {
                number::sqrt(near.max(1e-12 * far) * far)
            } else {
                (near + far) / 2.0
            };
            let next = Place::new(supports, load, farther(&self.unknowns, step, length));
            if next.unknowns == self.unknowns {
                near = length.max(near);
                continue;
            }
            let slope = dot(&next.left, step);
            if slope >= 0.0 {
                (near, near_slope) = (length, slope);
                found = Some(next);
            } else {
                (far, far_slope) = (length, slope);
            }
            if next.residual <= REACHED || slope.abs() <= 0.1 * falls {
                return Some(next);
            }
        }
        found
    }

    fn energy(&self, load: &ScaledLoad) -> f64 {
        (dot(&self.answer.force, &self.unknowns) - self.answer.gapped) / 2.0 - dot(&load.parts, &self.unknowns)
    }
}

impl Resistance {
    /// The step that the active parts need to answer what is left.
    ///
    /// While fewer than three supports are active, or all of them lie on a line, the matrix has no inverse; then a
    /// billionth of its size is added to its diagonal, and the line search does the rest.
    pub(super) fn solve(&self, left: &[f64; 3]) -> [f64; 3] {
        self.solve_exactly(left).unwrap_or_else(|| {
            let added = 1e-9 * (self.k + self.kxx + self.kyy).max(1e-6);
            let firmer = Resistance { k: self.k + added, kxx: self.kxx + added, kyy: self.kyy + added, ..*self };
            firmer.solve_exactly(left).unwrap_or(left.map(|part| part / added))
        })
    }

    /// By elimination along the diagonal, or none where a pivot is lost in rounding.
    fn solve_exactly(&self, left: &[f64; 3]) -> Option<[f64; 3]> {
        const LOST: f64 = 1e-14;
        if !(self.k > 0.0) {
            return None;
        }
        let inverse = 1.0 / self.k;
        let (row_x, row_y) = (self.kx * inverse, self.ky * inverse);
        let pivot_x = self.kxx - row_x * self.kx;
        if !(pivot_x > LOST * self.kxx) {
            return None;
        }
        let cross = self.kxy - row_x * self.ky;
        let row_xy = cross / pivot_x;
        let pivot_y = self.kyy - row_y * self.ky - row_xy * cross;
        if !(pivot_y > LOST * self.kyy) {
            return None;
        }
        let x = left[1] - row_x * left[0];
        let c = (left[2] - row_y * left[0] - row_xy * x) / pivot_y;
        let b = x / pivot_x - row_xy * c;
        Some([left[0] * inverse - row_x * b - row_y * c, b, c])
    }
}

// Small, and asked at every step: copied into their places.
/// So many times a step away from a place.
#[inline(always)]
fn farther(from: &[f64; 3], step: &[f64; 3], times: f64) -> [f64; 3] {
    [from[0] + times * step[0], from[1] + times * step[1], from[2] + times * step[2]]
}

#[inline(always)]
fn dot(a: &[f64; 3], b: &[f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

#[inline(always)]
fn largest(parts: &[f64; 3]) -> f64 {
    // A part that is not a number must not hide behind the others, and `max` would hide it.
    let (a, b, c) = (parts[0].abs(), parts[1].abs(), parts[2].abs());
    if (a + b + c).is_nan() {
        return f64::INFINITY;
    }
    let largest = if a > b { a } else { b };
    if largest > c { largest } else { c }
}
