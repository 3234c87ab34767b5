//! Points of what is not known: the corners, and points that fill the space between them.

use alloc::vec::Vec;

use super::open::{Open, Setting};
use crate::calc::number;

/// Most corners that are tried.
pub const CORNERS_MAX: usize = 256;

/// How many corners there are: combinations of the ends of ranges and of words; infinite where nobody could try them.
pub fn corner_count(open: &[Open]) -> f64 {
    open.iter().map(|one| one.ends().len() as f64).product()
}

/// The corners of what is not known, each with a value for every input: all of them, or where there are more than
/// [`CORNERS_MAX`] that many, spread evenly over them. None where everything is known.
pub fn corners(open: &[Open]) -> impl Iterator<Item = Vec<f64>> {
    let ends: Vec<Vec<f64>> = open.iter().map(Open::ends).collect();
    let all = corner_count(open);
    let count = if open.is_empty() { 0 } else { all.min(CORNERS_MAX as f64) as usize };
    let spread = Spread::new(open.len());
    (0..count).map(move |number| {
        let shares = spread.point(number);
        let mut rest = number;
        let pick = |(ends, share): (&Vec<f64>, &f64)| {
            if all > CORNERS_MAX as f64 {
                return ends[((share * ends.len() as f64) as usize).min(ends.len() - 1)];
            }
            let place = rest % ends.len();
            rest /= ends.len();
            ends[place]
        };
        ends.iter().zip(&shares).map(pick).collect()
    })
}

/// The values of all inputs that are not known, as settings.
pub fn settings(open: &[Open], values: &[f64]) -> Vec<Setting> {
    open.iter().zip(values).map(|(one, &value)| Setting { at: one.at, value }).collect()
}

/// Points that fill a cube of some dimensions evenly, always the same ones: multiples of powers of the root of
/// x^(d + 1) = x + 1, of which only what stands behind the point is kept.
pub struct Spread {
    steps: Vec<f64>,
}

impl Spread {
    /// For a number of dimensions.
    pub fn new(dimensions: usize) -> Spread {
        let mut root = 1.5;
        for _ in 0..40 {
            root = number::pow(1.0 + root, 1.0 / (dimensions as f64 + 1.0));
        }
        let mut step = 1.0;
        let next = |_| {
            step /= root;
            step
        };
        Spread { steps: (0..dimensions).map(next).collect() }
    }

    /// A point, each coordinate from zero to below one.
    pub fn point(&self, place: usize) -> Vec<f64> {
        let share = |step: &f64| {
            let turned = 0.5 + (place as f64 + 1.0) * step;
            turned - number::floor(turned)
        };
        self.steps.iter().map(share).collect()
    }
}
