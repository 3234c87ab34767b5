//! Posts alone: the softest that a frame with held feet can be, whatever its corners turn out to give.

use super::sway::G_MM_PER_S2;
use super::texts::RAYLEIGH;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::number::{pow, sqrt};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Sheet, steps};
use core::f64::consts::PI;

steps! { 191 "posts alone";
    N_C "n_c" Number (INPUT "structure" Derived) "Posts": Given;
    E "E" Stress (INPUT "structure" Derived) "Modulus of elasticity": Given;
    I_C "I_c" SecondMoment (INPUT "structure" Derived) "Second moment of area of a post for this push": Given;
    H_F "h_f" Length (INPUT "structure" Derived) "Height of the frame": Given;
    M_T "m_t" Mass (INPUT "contents" Derived) "Everything aboard, as if it were at the top": Given;
    M_F "m_f" Mass (INPUT "cabinet.frame" Derived) "Mass of the frame, even over its height": Given;
    K "k" Stiffness (STATICS "held at the foot, free at the head" Derived) "Sideways stiffness of the posts" = "n_c * 3 * E * I_c / h_f^3";
    M_E "m_e" Mass (RAYLEIGH "33/140 of a post's own mass" Memory) "Mass that swings" = "m_t + 33 / 140 * m_f";
    G "g" Gravity (STATICS "9.80665 m/s2" Derived) "Weight of a mass": Given;
    D "d" Length (STATICS "" Derived) "Movement under that weight laid sideways" = "m_e * g / k";
    G_F "g_f" FreeFall (STATICS "9.80665 m/s2" Derived) "Acceleration of gravity": Given;
    PI_ "pi" Number (STATICS "" Derived) "Half a turn": Constant;
    T "T" Time (RAYLEIGH "" Derived) "Period of the posts alone, their feet held" = "2 * pi * sqrt(d / g_f)";
}

/// Posts that stand like masts beside each other.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Cantilevers {
    /// How many.
    pub posts: f64,
    /// Modulus of elasticity.
    pub modulus_mpa: f64,
    /// Second moment of area of one.
    pub inertia_mm4: f64,
    /// Their height.
    pub height_mm: f64,
    /// Mass at the top.
    pub top_kg: f64,
    /// Mass that is even over the height.
    pub even_kg: f64,
}

/// Their period, told.
///
/// Statics of a cantilever, and Rayleigh's 33/140 for its own mass. Scope: small movements, feet held from turning, no
/// corner that helps: with them the frame is stiffer, so the period of a frame whose feet are held is never longer.
///
/// ```
/// use steadfoot::calc::Sheet;
/// use steadfoot::frame::{Cantilevers, cantilever_period_s};
/// let one = Cantilevers { posts: 1.0, modulus_mpa: 200_000.0, inertia_mm4: 371_410.0, height_mm: 2400.0, top_kg: 100.0, even_kg: 12.48 };
/// assert!((1.0 / cantilever_period_s(&one, &mut Sheet::quiet()) - 1.9916).abs() < 5e-4);
/// ```
pub fn cantilever_period_s(posts: &Cantilevers, sheet: &mut Sheet) -> f64 {
    let count = sheet.step(N_C, posts.posts);
    let modulus = sheet.step(E, posts.modulus_mpa);
    let inertia = sheet.step(I_C, posts.inertia_mm4);
    let height = sheet.step(H_F, posts.height_mm);
    let top = sheet.step(M_T, posts.top_kg);
    let even = sheet.step(M_F, posts.even_kg);
    let stiffness = sheet.step(K, count * 3.0 * modulus * inertia / pow(height, 3.0));
    let mass = sheet.step(M_E, top + 33.0 / 140.0 * even);
    let gravity = sheet.step(G, G_N_PER_KG);
    let movement = sheet.step(D, mass * gravity / stiffness);
    let fall = sheet.step(G_F, G_MM_PER_S2);
    let pi = sheet.step(PI_, PI);
    sheet.step(T, 2.0 * pi * sqrt(movement / fall))
}
