//! How often a body falls as the motion is made stronger: one strength after the other, so that whoever asks can show
//! how far it is and stop.

use alloc::vec::Vec;

use super::rocking::End;
use super::verdict::Scheme;

/// The answer at one strength.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FragilityPoint {
    /// Factor on the motions.
    pub factor: f64,
    /// How many runs fell.
    pub falls: usize,
    /// Of how many.
    pub runs: usize,
    /// The largest angle of those that did not fall, over the angle of falling.
    pub peak_ratio: f64,
}

/// A curve in the making.
#[derive(Clone, Debug)]
pub struct Fragility {
    factors: Vec<f64>,
    points: Vec<FragilityPoint>,
}

/// Most strengths of a curve.
pub const STRENGTHS_MAX: usize = 1_000;

impl Fragility {
    /// So many strengths, evenly from nothing (left out) up to the strongest; both cut at what is sensible.
    pub fn new(strongest: f64, count: usize) -> Fragility {
        let count = count.clamp(1, STRENGTHS_MAX);
        let factors = (1..=count).map(|place| strongest * place as f64 / count as f64).collect();
        Fragility { factors, points: Vec::new() }
    }

    /// Works out the next strength; none where all are done.
    pub fn advance(&mut self, scheme: &Scheme) -> Option<FragilityPoint> {
        let &factor = self.factors.get(self.points.len())?;
        let mut point = FragilityPoint { factor, falls: 0, runs: 0, peak_ratio: 0.0 };
        for motion in 0..scheme.motions.len() {
            for impulse in scheme.impulses() {
                for sign in [1.0, -1.0] {
                    let rocked = scheme.once(motion, impulse, sign * factor);
                    point.runs += 1;
                    match rocked.end {
                        End::NeverLifts | End::Recovers => point.peak_ratio = point.peak_ratio.max(rocked.peak_ratio),
                        _ => point.falls += 1,
                    }
                }
            }
        }
        self.points.push(point);
        Some(point)
    }

    /// How many are done, of how many.
    pub fn progress(&self) -> (usize, usize) {
        (self.points.len(), self.factors.len())
    }

    /// What is worked out so far, rising in strength.
    pub fn points(&self) -> &[FragilityPoint] {
        &self.points
    }

    /// The weakest strength at which any run fell, with the one before it; none while none did.
    pub fn first_fall(&self) -> Option<[f64; 2]> {
        let place = self.points.iter().position(|point| point.falls > 0)?;
        let before = if place == 0 { 0.0 } else { self.points[place - 1].factor };
        Some([before, self.points[place].factor])
    }
}
