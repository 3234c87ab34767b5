//! How levels move when their weights are laid sideways, and the period that follows.

use alloc::vec::Vec;

use crate::calc::number::positive_part;

/// Masses and storeys from below.
#[derive(Clone, PartialEq, Debug)]
pub struct Levels {
    /// Mass at each level.
    pub masses_kg: Vec<f64>,
    /// Height of each level over the base.
    pub heights_mm: Vec<f64>,
    /// Stiffness of the storey below each level.
    pub storeys_n_per_mm: Vec<f64>,
    /// Stiffness against the lengthening of the posts, modulus times area of a post times the square of the span, summed
    /// over the faces; infinite where it is not counted.
    pub posts_nmm2: f64,
    /// Stiffness of the base against turning, moment per radian; infinite where it cannot turn.
    pub base_nmm: f64,
}

/// Acceleration of gravity in mm/s2.
pub(super) const G_MM_PER_S2: f64 = 9806.65;

impl Levels {
    /// The movement of each level under its own weight laid sideways, in mm.
    pub fn movements_mm(&self) -> Vec<f64> {
        let weight = |level: usize| self.masses_kg[level] * G_MM_PER_S2 / 1000.0;
        let turning: f64 = (0..self.masses_kg.len()).map(|level| weight(level) * self.heights_mm[level]).sum();
        let turn_rad = turning / self.base_nmm;
        let mut sway = 0.0;
        let mut movements = Vec::new();
        for level in 0..self.masses_kg.len() {
            let above: f64 = (level..self.masses_kg.len()).map(weight).sum();
            sway += above / self.storeys_n_per_mm[level];
            movements.push(sway + turn_rad * self.heights_mm[level] + self.lengthening_mm(level));
        }
        movements
    }

    /// What the lengthening and shortening of all posts below adds to the movement of a level.
    ///
    /// Virtual work on a row of panels with one working diagonal each: one post of a panel carries the moment at its
    /// foot, the other that at its head.
    pub(super) fn lengthening_mm(&self, level: usize) -> f64 {
        let weight = |place: usize| self.masses_kg[place] * G_MM_PER_S2 / 1000.0;
        let mut sum = 0.0;
        let mut foot_mm = 0.0;
        for &head_mm in &self.heights_mm[..=level] {
            for from_mm in [foot_mm, head_mm] {
                let arm = |place: usize| positive_part(self.heights_mm[place] - from_mm);
                let moment: f64 = (0..self.masses_kg.len()).map(|place| weight(place) * arm(place)).sum();
                sum += (head_mm - foot_mm) * moment * arm(level);
            }
            foot_mm = head_mm;
        }
        sum / self.posts_nmm2
    }
}

/// How a frame sways under its own weight laid sideways.
#[derive(Clone, PartialEq, Debug)]
pub struct Sway {
    /// Height of each level over the base.
    pub heights_mm: Vec<f64>,
    /// Movement of each level.
    pub movements_mm: Vec<f64>,
    /// Its period.
    pub period_s: f64,
    /// What is left of the balance of the lowest storey, relative to the weight.
    pub residual: f64,
}

impl Sway {
    /// Movement of the highest level.
    pub fn top_mm(&self) -> f64 {
        self.movements_mm.last().copied().unwrap_or(0.0)
    }
}

/// The movement of the mass as a whole for Rayleigh's quotient: sum of m d^2 over sum of m d.
///
/// The circular frequency is the root of the acceleration of gravity over it: an upper bound of the true lowest one,
/// near it for the shape under sideways weight.
///
/// ```
/// use steadfoot::frame::{Levels, whole_movement_mm};
/// let levels = Levels {
///     masses_kg: vec![1000.0; 3], heights_mm: vec![1000.0, 2000.0, 3000.0], storeys_n_per_mm: vec![1000.0; 3],
///     posts_nmm2: f64::INFINITY, base_nmm: f64::INFINITY,
/// };
/// let whole_mm = whole_movement_mm(&levels.masses_kg, &levels.movements_mm());
/// let frequency_hz = (9806.65 / whole_mm).sqrt() / (2.0 * std::f64::consts::PI);
/// assert!((frequency_hz - 2.25079).abs() < 1e-4);
/// ```
pub fn whole_movement_mm(masses_kg: &[f64], movements_mm: &[f64]) -> f64 {
    let each = || masses_kg.iter().zip(movements_mm);
    let squares: f64 = each().map(|(mass, movement)| mass * (movement * movement)).sum();
    let plain: f64 = each().map(|(mass, movement)| mass * movement).sum();
    squares / plain
}
