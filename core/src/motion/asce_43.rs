//! The approximate methods of ASCE/SEI 43-05 for unanchored rocking and sliding bodies, beside the motion in time.
//!
//! Only parts of the appendix were read; how the equations go on from there is derived or recalled, and said line by
//! line. They stand here for comparison and give no verdict.

use super::body::{RockingBody, Side};
use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::{Detail, Sheet, number, steps};
use core::f64::consts::PI;

/// ASCE/SEI 43-05.
pub static ASCE_43: Document = Document {
    short: "ASCE/SEI 43-05",
    title: "Seismic Design Criteria for Structures, Systems, and Components in Nuclear Facilities (ASCE/SEI 43-05), American Society of Civil Engineers, 2005",
};

steps! { 174 "approximate rocking and sliding";
    G "g" FreeFall (STATICS "" Derived) "Acceleration of free fall": Given;
    PI_ "pi" Number (STATICS "" Derived) "Half a turn": Constant;
    H "h" Length (STATICS "load-out" Derived) "Height of the centre of gravity above the floor": Given;
    X "x" Length (STATICS "" Derived) "Distance from the centre of gravity to the edge": Given;
    RHO "rho" Length (STATICS "load-out" Derived) "Radius of gyration about the centre of gravity": Given;
    A "a" Number (ASCE_43 "A.2" Secondary) "Slenderness" = "x / h";
    C_I "C_I" Number (ASCE_43 "A.2" Memory) "Inertia about the edge over m h^2" = "(rho^2 + x^2 + h^2) / h^2";
    C_R "C_R" Number (ASCE_43 "A.2" Memory) "Restitution" = "1 - 2 * a^2 / C_I";
    GAMMA "gamma" Number (ASCE_43 "A.2" Memory) "What an impact takes" = "-2 * ln(C_R)";
    BETA "beta_e" Number (ASCE_43 "A.2" Memory) "Effective damping" = "gamma / sqrt(4 * pi^2 + gamma^2)";
    THETA "theta_0" Angle (ASCE_43 "A.2" Memory) "Angle of rocking": Given;
    THETA_SEEN "theta_0" Angle (ASCE_43 "A.2" Memory) "Least angle at which the capacity reaches the demand": Searched;
    B "B" Number (ASCE_43 "(A-5)" Secondary) "How the resistance runs with the angle" = "cos(theta_0) + a * sin(theta_0) - 1";
    F_E "f_e" Frequency (ASCE_43 "A.2" Memory) "Effective frequency at this angle" = "sqrt(2 * g * B / (C_I * theta_0^2 * h)) / (2 * pi)";
    F_V "F_V" Number (ASCE_43 "A.2" Memory) "Factor for the vertical motion, sqrt(1 + (a S_V / S_H)^2) by the spectra at this frequency": Given;
    S_CAP "S_cap" Acceleration (ASCE_43 "(A-5)" Derived) "Spectral acceleration that it bears at this angle" = "2 * B / (F_V * theta_0)";
    MU "mu" Number (INPUT "" Derived) "Friction between feet and floor": Given;
    A_V "A_v" Acceleration (INPUT "" Derived) "Peak vertical acceleration": Given;
    MU_E "mu_e" Number (ASCE_43 "(A-1)" Secondary) "Effective friction" = "mu * (1 - 0.4 * A_v)";
    C_S "c_s" Acceleration (ASCE_43 "(A-2)" Secondary) "Sliding coefficient, over g" = "2 * mu_e";
    F_ES "f_es" Frequency (ASCE_43 "(A-3)" Secondary) "Lowest frequency at which the spectrum of 10 % damping reaches the sliding coefficient": Searched;
    DELTA "delta_s" Length (ASCE_43 "(A-3)" Derived) "Sliding distance" = "c_s * g / (2 * pi * f_es)^2";
}

/// A body that rocks as an oscillator of the same angle.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct RockingOscillator {
    /// Its frequency.
    pub frequency_hz: f64,
    /// Its damping.
    pub damping: f64,
    /// The spectral acceleration that it bears.
    pub capacity: f64,
}

/// What a body bears when it rocks to this angle about one edge.
pub fn rocking_capacity(
    body: &RockingBody,
    side: Side,
    angle: Rocking,
    vertical_factor: f64,
    sheet: &mut Sheet,
) -> RockingOscillator {
    sheet.step(PI_, PI);
    let g = sheet.step(G, body.free_fall_mm_per_s2);
    let h = sheet.step(H, body.height_mm);
    let x = sheet.step(X, body.reach_mm(side));
    let rho = sheet.step(RHO, body.gyration_mm);
    let a = sheet.step(A, x / h);
    let c_i = sheet.step(C_I, (rho * rho + x * x + h * h) / (h * h));
    let c_r = sheet.step(C_R, 1.0 - 2.0 * (a * a) / c_i);
    let gamma = sheet.step(GAMMA, -2.0 * number::ln(c_r));
    let damping = sheet.step(BETA, gamma / number::sqrt(4.0 * (PI * PI) + gamma * gamma));
    let theta = match angle {
        Rocking::At(angle_rad) => sheet.step(THETA, angle_rad),
        Rocking::Found { angle_rad, bracket_rad } => {
            sheet.detailed(THETA_SEEN, angle_rad, || Detail::Bracket(bracket_rad))
        }
    };
    let b = sheet.step(B, number::cos(theta) + a * number::sin(theta) - 1.0);
    let frequency_hz = sheet.step(F_E, number::sqrt(2.0 * g * b / (c_i * (theta * theta) * h)) / (2.0 * PI));
    let f_v = sheet.step(F_V, vertical_factor);
    let capacity = sheet.step(S_CAP, 2.0 * b / (f_v * theta));
    RockingOscillator { frequency_hz, damping, capacity }
}

/// The angle to which it rocks.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Rocking {
    /// An angle that is asked for.
    At(f64),
    /// An angle that was searched for.
    Found {
        /// The angle.
        angle_rad: f64,
        /// The two ends of the search.
        bracket_rad: [f64; 2],
    },
}

/// Steps of the angle, as parts of that of falling.
const ANGLES: usize = 200;

/// The least angle at which the capacity reaches the demand, as the best estimate; none up to the angle of falling means
/// that it falls. `demand` gives the spectral acceleration of a frequency and a damping.
pub fn rocking_angle(
    body: &RockingBody,
    side: Side,
    vertical_factor: f64,
    demand: &dyn Fn(f64, f64) -> f64,
) -> Option<Rocking> {
    let alpha_rad = body.edge(side).alpha_rad;
    let is_enough = |angle_rad: f64| {
        let one = rocking_capacity(body, side, Rocking::At(angle_rad), vertical_factor, &mut Sheet::quiet());
        demand(one.frequency_hz, one.damping) <= one.capacity
    };
    let place = |step: usize| alpha_rad * step as f64 / ANGLES as f64;
    let first = (1..=ANGLES).find(|&step| is_enough(place(step)))?;
    let (mut low, mut high) = (place(first - 1), place(first));
    for _ in 0..30 {
        // Below this the body does not rock to speak of, and its frequency runs away.
        if high < 1e-3 * alpha_rad {
            break;
        }
        let middle = (low + high) / 2.0;
        if middle > 0.0 && is_enough(middle) { high = middle } else { low = middle }
    }
    Some(Rocking::Found { angle_rad: high, bracket_rad: [low, high] })
}

/// Sliding as the appendix estimates it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SlidingEstimate {
    /// Friction between feet and floor.
    pub friction: f64,
    /// Peak vertical acceleration.
    pub vertical: f64,
    /// Acceleration of free fall.
    pub free_fall_mm_per_s2: f64,
}

/// Lowest and highest frequency that are tried, and the step between.
const FREQUENCIES_HZ: [f64; 3] = [0.05, 50.0, 0.005];

/// How far it slides; none where the spectrum never reaches the sliding coefficient, or does so below the frequencies that
/// are tried: there the method gives no estimate.
/// `demand` gives the spectral acceleration of a frequency for 10 % damping, both directions together.
pub fn sliding_distance_mm(estimate: &SlidingEstimate, demand: &dyn Fn(f64) -> f64, sheet: &mut Sheet) -> Option<f64> {
    sheet.step(PI_, PI);
    let g = sheet.step(G, estimate.free_fall_mm_per_s2);
    let mu = sheet.step(MU, estimate.friction);
    let a_v = sheet.step(A_V, estimate.vertical);
    let mu_e = sheet.step(MU_E, mu * (1.0 - 0.4 * a_v));
    let c_s = sheet.step(C_S, 2.0 * mu_e);
    let [low_hz, high_hz, step_hz] = FREQUENCIES_HZ;
    let count = number::round((high_hz - low_hz) / step_hz) as usize;
    let place = |step: usize| low_hz + step as f64 * step_hz;
    // Where the lowest frequency reaches it already, a lower one does so first: how far it slides is open.
    let found = (0..=count).find(|&step| demand(place(step)) >= c_s).filter(|&step| step > 0)?;
    let f_es = place(found);
    sheet.detailed(F_ES, f_es, || Detail::Bracket([f_es - step_hz, f_es]));
    let angular = 2.0 * PI * f_es;
    Some(sheet.step(DELTA, c_s * g / (angular * angular)))
}
