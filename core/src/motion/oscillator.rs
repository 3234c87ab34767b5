//! A single mass on a spring with damping, from rest, under a load that runs straight between even steps of time.
//!
//! The exact recurrence for such a load (Nigam and Jennings 1969; Chopra, Dynamics of Structures, Table 5.2.1) makes no
//! error of its own. The step-by-step methods beside it stand in the same textbook, for comparison.

use alloc::vec::Vec;

use crate::calc::number;

/// A mass on a spring.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Oscillator {
    /// Natural angular frequency.
    pub omega_rad_per_s: f64,
    /// Damping, as a share of the critical one, from 0 to less than 1.
    pub damping: f64,
}

/// What carries displacement and velocity over one step, for a unit of stiffness.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Recurrence {
    /// Displacement from displacement, velocity, the load before and the load after.
    pub displacement: [f64; 4],
    /// Velocity from the same.
    pub velocity: [f64; 4],
}

/// A step-by-step method.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Method {
    /// Exact for a load of straight lines.
    Exact,
    /// Central difference.
    CentralDifference,
    /// Newmark's, with the average acceleration in a step.
    AverageAcceleration,
    /// Newmark's, with an acceleration that runs straight in a step.
    LinearAcceleration,
}

impl Oscillator {
    /// One of a natural period.
    pub fn of_period(period_s: f64, damping: f64) -> Oscillator {
        Oscillator { omega_rad_per_s: 2.0 * core::f64::consts::PI / period_s, damping }
    }

    /// The exact recurrence for a step.
    pub fn recurrence(&self, step_s: f64) -> Recurrence {
        let (w, z) = (self.omega_rad_per_s, self.damping);
        let rest = number::sqrt(1.0 - z * z);
        let (wd, q) = (w * rest, z / rest);
        let fading = number::exp(-z * w * step_s);
        let (s, c) = (number::sin(wd * step_s), number::cos(wd * step_s));
        let r = 2.0 * z / (w * step_s);
        Recurrence {
            displacement: [
                fading * (q * s + c),
                fading * s / wd,
                r + fading * (((1.0 - 2.0 * z * z) / (wd * step_s) - q) * s - (1.0 + r) * c),
                1.0 - r + fading * ((2.0 * z * z - 1.0) / (wd * step_s) * s + r * c),
            ],
            velocity: [
                -fading * (w / rest * s),
                fading * (c - q * s),
                -1.0 / step_s + fading * ((w / rest + q / step_s) * s + c / step_s),
                (1.0 - fading * (q * s + c)) / step_s,
            ],
        }
    }

    /// Displacements and velocities under a load over the stiffness, given at even steps of time, from rest.
    ///
    /// The central difference has no velocity of its own; it is told as the mean slope over two steps.
    pub fn response(&self, static_load: &[f64], step_s: f64, method: Method) -> Vec<[f64; 2]> {
        match method {
            Method::Exact => self.exact(static_load, step_s),
            Method::CentralDifference => self.central_difference(static_load, step_s),
            Method::AverageAcceleration => self.newmark(static_load, step_s, 0.25),
            Method::LinearAcceleration => self.newmark(static_load, step_s, 1.0 / 6.0),
        }
    }

    fn exact(&self, load: &[f64], step_s: f64) -> Vec<[f64; 2]> {
        let recurrence = self.recurrence(step_s);
        let mut at = [0.0; 2];
        let mut all: Vec<[f64; 2]> = load.first().map(|_| at).into_iter().collect();
        for pair in load.windows(2) {
            at = recurrence.next(at, pair[0], pair[1]);
            all.push(at);
        }
        all
    }

    /// With a unit of stiffness the mass is 1 / w^2 and the damping 2 z / w.
    fn central_difference(&self, load: &[f64], step_s: f64) -> Vec<[f64; 2]> {
        let (mass, damping) = (1.0 / (self.omega_rad_per_s * self.omega_rad_per_s), self.viscous());
        let first = load.first().copied().unwrap_or(0.0) / mass;
        let (mut before, mut now) = (first * step_s * step_s / 2.0, 0.0);
        let in_front = mass / (step_s * step_s) + damping / (2.0 * step_s);
        let behind = mass / (step_s * step_s) - damping / (2.0 * step_s);
        let mut all = Vec::new();
        for &force in load {
            let next = (force - behind * before - (1.0 - 2.0 * mass / (step_s * step_s)) * now) / in_front;
            all.push([now, (next - before) / (2.0 * step_s)]);
            (before, now) = (now, next);
        }
        all
    }

    fn newmark(&self, load: &[f64], step_s: f64, beta: f64) -> Vec<[f64; 2]> {
        const GAMMA: f64 = 0.5;
        let (mass, damping) = (1.0 / (self.omega_rad_per_s * self.omega_rad_per_s), self.viscous());
        let (mut u, mut v) = (0.0, 0.0);
        let mut a = load.first().copied().unwrap_or(0.0) / mass;
        let stiffness = 1.0 + GAMMA * damping / (beta * step_s) + mass / (beta * step_s * step_s);
        let of_v = mass / (beta * step_s) + GAMMA * damping / beta;
        let of_a = mass / (2.0 * beta) + step_s * (GAMMA / (2.0 * beta) - 1.0) * damping;
        let mut all: Vec<[f64; 2]> = load.first().map(|_| [u, v]).into_iter().collect();
        for pair in load.windows(2) {
            let du = (pair[1] - pair[0] + of_v * v + of_a * a) / stiffness;
            let dv = GAMMA * du / (beta * step_s) - GAMMA * v / beta + step_s * (1.0 - GAMMA / (2.0 * beta)) * a;
            let da = du / (beta * step_s * step_s) - v / (beta * step_s) - a / (2.0 * beta);
            (u, v, a) = (u + du, v + dv, a + da);
            all.push([u, v]);
        }
        all
    }

    fn viscous(&self) -> f64 {
        2.0 * self.damping / self.omega_rad_per_s
    }
}

impl Recurrence {
    /// One step on.
    pub fn next(&self, [u, v]: [f64; 2], load: f64, next: f64) -> [f64; 2] {
        let of = |row: &[f64; 4]| row[0] * u + row[1] * v + row[2] * load + row[3] * next;
        [of(&self.displacement), of(&self.velocity)]
    }
}
