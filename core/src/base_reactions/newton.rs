//! Newton's steps on the active parts, with a line search on the convex energy.

use super::scaled::{Answer, Resistance, ScaledSupports};

/// What is left of the scaled load, whose size is one, when the equilibrium counts as reached.
const REACHED: f64 = 1e-12;
/// What may be left where rounding allows no better step.
const STALLED: f64 = 1e-9;
const STEPS_MAX: u32 = 200;

/// A settled state in scaled coordinates.
#[derive(Clone, Copy, Debug)]
pub(super) struct Settled {
    pub unknowns: [f64; 3],
    pub steps: u32,
    pub residual: f64,
}

/// Looks for the plane under which the supports balance the load, starting from a guess.
///
/// The energy is E(z) - f.z with E half of force.z, because E is of the second degree along every ray. Its slope along
/// a step is monotone; a step is taken whole where the slope has not turned or the energy has fallen, else it is cut
/// by the secant of the slope.
pub(super) fn settle(supports: &ScaledSupports, load: &[f64; 3], start: [f64; 3]) -> Option<Settled> {
    let mut unknowns = start;
    let mut answer = supports.answer(&unknowns);
    let mut left = difference(load, &answer.force);
    let mut residual = largest(&left);
    for steps in 0..STEPS_MAX {
        if residual <= REACHED {
            return Some(Settled { unknowns, steps, residual });
        }
        let step = answer.resistance.solve(&left);
        let falls = dot(&left, &step);
        if !(falls > 0.0) {
            break;
        }
        let energy = energy(&answer, load, &unknowns);
        let mut length = 1.0;
        loop {
            let next = [0, 1, 2].map(|i| unknowns[i] + length * step[i]);
            let next_answer = supports.answer(&next);
            let next_left = difference(load, &next_answer.force);
            let next_residual = largest(&next_left);
            let slope = dot(&next_left, &step);
            let is_taken = next_residual <= REACHED
                || slope >= 0.0
                || self::energy(&next_answer, load, &next) < energy - 1e-4 * length * falls;
            if is_taken {
                (unknowns, answer, left, residual) = (next, next_answer, next_left, next_residual);
                break;
            }
            let cut = length * falls / (falls - slope);
            let stands_still = [0, 1, 2].iter().all(|&i| unknowns[i] + cut * step[i] == unknowns[i]);
            if stands_still || !(cut < length) {
                return (residual <= STALLED).then_some(Settled { unknowns, steps, residual });
            }
            length = cut;
        }
    }
    (residual <= STALLED).then_some(Settled { unknowns, steps: STEPS_MAX, residual })
}

fn energy(answer: &Answer, load: &[f64; 3], unknowns: &[f64; 3]) -> f64 {
    dot(&answer.force, unknowns) / 2.0 - dot(load, unknowns)
}

impl Resistance {
    /// The step that the active parts need to answer what is left.
    ///
    /// While fewer than three supports are active, or all of them lie on a line, the matrix has no inverse; then a
    /// billionth of its size is added to its diagonal, and the line search does the rest.
    pub(super) fn solve(&self, left: &[f64; 3]) -> [f64; 3] {
        self.solve_exactly(left).unwrap_or_else(|| {
            let added = 1e-9 * (self.k + self.kxx + self.kyy).max(1e-6);
            let firmer =
                Resistance { k: self.k + added, kxx: self.kxx + added, kyy: self.kyy + added, ..*self };
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

fn difference(a: &[f64; 3], b: &[f64; 3]) -> [f64; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn dot(a: &[f64; 3], b: &[f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn largest(parts: &[f64; 3]) -> f64 {
    // A part that is not a number must not hide behind the others, and `max` would hide it.
    let sum = parts[0].abs() + parts[1].abs() + parts[2].abs();
    if sum.is_nan() { f64::INFINITY } else { parts[0].abs().max(parts[1].abs()).max(parts[2].abs()) }
}
