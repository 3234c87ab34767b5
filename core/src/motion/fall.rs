//! How strong a motion must be before a body falls under it.

use super::body::RockingBody;
use super::course::{GroundMotion, Scaled};
use super::rocking::{End, Following, rock};
use crate::calc::number;

/// A strength at which a body falls, found between two others.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fall {
    /// Factor on the motion at which it falls.
    pub factor: f64,
    /// A weaker one, next to it, at which it does not.
    pub stands_at: f64,
}

/// Each strength tried is so many times the one before.
const RISE: f64 = 1.02;

/// The weakest strength at which a body falls, between two factors on a motion; none where it does not up to the second.
///
/// Strengths rise by a fiftieth until it falls, then the two ends are halved to a ten-thousandth. A body may fall under a
/// weak motion and stand under a stronger one, so a gap narrower than a fiftieth can be passed over.
pub fn first_fall(
    body: &RockingBody,
    motion: &dyn GroundMotion,
    following: &Following,
    ends: [f64; 2],
) -> Option<Fall> {
    let falls = |factor: f64| {
        let motion = Scaled { motion, horizontal: factor, vertical: factor.abs() };
        let end = rock(body, &motion, following, &mut |_, _| {}).end;
        !matches!(end, End::NeverLifts | End::Recovers)
    };
    let count = number::ceil(number::ln(ends[1] / ends[0]) / number::ln(RISE)).max(1.0) as usize;
    let place = |step: usize| ends[0] * number::pow(ends[1] / ends[0], step as f64 / count as f64);
    let first = (0..=count).find(|&step| falls(place(step)))?;
    let (mut low, mut high) = (if first == 0 { 0.0 } else { place(first - 1) }, place(first));
    while high - low > 1e-4 * high {
        let middle = (low + high) / 2.0;
        if falls(middle) { high = middle } else { low = middle }
    }
    Some(Fall { factor: high, stands_at: low })
}
