//! How levels move when their weights are laid sideways, and the period that follows.

use alloc::vec::Vec;

use crate::calc::number::sqrt;

/// Masses and storeys from below.
#[derive(Clone, PartialEq, Debug)]
pub struct Levels {
    /// Mass at each level.
    pub masses_kg: Vec<f64>,
    /// Height of each level over the base.
    pub heights_mm: Vec<f64>,
    /// Stiffness of the storey below each level.
    pub storeys_n_per_mm: Vec<f64>,
    /// Stiffness of the base against turning, moment per radian; infinite where it cannot turn.
    pub base_nmm: f64,
}

/// Acceleration of gravity in mm/s2.
const G_MM_PER_S2: f64 = 9806.65;

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
            movements.push(sway + turn_rad * self.heights_mm[level]);
        }
        movements
    }
}

/// The circular frequency by Rayleigh's quotient with the shape under sideways weight, in rad/s.
///
/// An upper bound of the true lowest frequency, near it for such a shape.
///
/// ```
/// use steadfoot::frame::{Levels, rayleigh_rad_per_s};
/// let levels = Levels {
///     masses_kg: vec![1000.0; 3], heights_mm: vec![1000.0, 2000.0, 3000.0], storeys_n_per_mm: vec![1000.0; 3],
///     base_nmm: f64::INFINITY,
/// };
/// let frequency_hz = rayleigh_rad_per_s(&levels) / (2.0 * std::f64::consts::PI);
/// assert!((frequency_hz - 2.25079).abs() < 1e-4);
/// ```
pub fn rayleigh_rad_per_s(levels: &Levels) -> f64 {
    let movements = levels.movements_mm();
    let sum = |power: i32| -> f64 {
        let one =
            |(mass, movement): (&f64, &f64)| if power == 1 { mass * movement } else { mass * movement * movement };
        levels.masses_kg.iter().zip(&movements).map(one).sum()
    };
    sqrt(G_MM_PER_S2 * sum(1) / sum(2))
}
