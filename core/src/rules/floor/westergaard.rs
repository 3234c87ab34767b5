//! Westergaard's stresses and deflections of a slab on the ground under one load: interior, edge, corner.
//!
//! Three forms for an edge are in print and differ by a fifth: the early one and the two of 1948. Each is named.

use super::documents::{WESTERGAARD_1926, WESTERGAARD_1948};
use super::slab_on_ground::{LoadedSlab, SlabOnGround};
use crate::calc::clause::INPUT;
use crate::calc::{Sheet, StepId, number, steps};

steps! { 141 "Westergaard";
    P "P" Force (INPUT "" Derived) "Load of the leg": Given;
    A_LIMIT "a_lim" Length (WESTERGAARD_1926 "equivalent contact" Secondary) "Radius of contact up to which thick-plate theory replaces it" = "1.724 * h";
    B_THICK "b" Length (WESTERGAARD_1926 "equivalent contact" Secondary) "Radius that gives the stress of thick-plate theory" = "sqrt(1.6 * a^2 + h^2) - 0.675 * h";
    B_PLAIN "b" Length (WESTERGAARD_1926 "equivalent contact" Secondary) "Radius of the contact, which is wide enough" = "a";
    S_INNER "sigma" Stress (WESTERGAARD_1926 "interior" Memory) "Tension at the bottom under the load, far from edges" = "3 * (1 + nu) * P / (2 * 3.141592653589793 * h^2) * (ln(l / b) + 0.6159)";
    W_INNER "w" Length (WESTERGAARD_1926 "interior" Memory) "Deflection under the load, far from edges" = "P / (8 * k_s * l^2) * (1 + 1 / (2 * 3.141592653589793) * (ln(a / (2 * l)) - 0.673) * (a / l)^2)";
    S_EDGE_EARLY "sigma" Stress (WESTERGAARD_1926 "edge, early form for nu = 0.15" Secondary) "Tension at the bottom of a free edge, early form" = "0.572 * P / h^2 * (4 * log10(l / b) + 0.359)";
    S_EDGE_1948 "sigma" Stress (WESTERGAARD_1948 "edge, circle" Memory) "Tension at the bottom of a free edge, the form of 1948 for a circle" = "3 * (1 + nu) * P / (3.141592653589793 * (3 + nu) * h^2) * (ln(E * h^3 / (100 * k_s * a^4)) + 1.84 - 4 * nu / 3 + (1 - nu) / 2 + 1.18 * (1 + 2 * nu) * a / l)";
    W_EDGE_1948 "w" Length (WESTERGAARD_1948 "edge, circle" Memory) "Deflection of a free edge under the load, circle" = "sqrt(2 + 1.2 * nu) * P / sqrt(E * h^3 * k_s) * (1 - (0.76 + 0.4 * nu) * a / l)";
    A_HALF "a" Length (WESTERGAARD_1948 "edge, semicircle" Derived) "Radius of a semicircle of the same area" = "sqrt(2 * A / 3.141592653589793)";
    S_EDGE_HALF "sigma" Stress (WESTERGAARD_1948 "edge, semicircle" Memory) "Tension at the bottom of a free edge, the form of 1948 for a semicircle" = "3 * (1 + nu) * P / (3.141592653589793 * (3 + nu) * h^2) * (ln(E * h^3 / (100 * k_s * a^4)) + 3.84 - 4 * nu / 3 + (1 + 2 * nu) * a / (2 * l))";
    W_EDGE_HALF "w" Length (WESTERGAARD_1948 "edge, semicircle" Memory) "Deflection of a free edge under the load, semicircle" = "sqrt(2 + 1.2 * nu) * P / sqrt(E * h^3 * k_s) * (1 - (0.323 + 0.17 * nu) * a / l)";
    S_CORNER "sigma" Stress (WESTERGAARD_1926 "corner" Memory) "Tension at the top of a free corner" = "3 * P / h^2 * (1 - (a * sqrt(2) / l)^0.6)";
    W_CORNER "w" Length (WESTERGAARD_1926 "corner" Memory) "Deflection of a free corner" = "P / (k_s * l^2) * (1.1 - 0.88 * a * sqrt(2) / l)";
    X_CRACK "x_c" Length (WESTERGAARD_1926 "corner" Secondary) "Distance of the crack from the corner; some textbooks print 2.58 instead" = "2.38 * sqrt(a * l)";
    X_CRACK_258 "x_258" Length (WESTERGAARD_1926 "corner, as printed in Indian textbooks" Secondary) "The same with the coefficient that those textbooks print" = "2.58 * sqrt(a * l)";
    NOT_015 "" Number (WESTERGAARD_1926 "edge" Secondary) "the early form for an edge is printed for a Poisson's ratio of 0.15 only": Reason;
}

/// The forms for an edge.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum EdgeForm {
    /// The early one, for a Poisson's ratio of 0.15; a fifth and more below the others.
    Early,
    /// That of 1948 for a circle whose edge touches that of the slab.
    Circle,
    /// That of 1948 for a semicircle whose straight side lies on the edge.
    Semicircle,
}

/// A stress and the deflection that goes with it, where one is printed.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bending {
    /// The largest tension.
    pub stress_mpa: f64,
    /// The settlement under the load.
    pub deflection_mm: Option<f64>,
}

/// The Poisson's ratio of the early form.
const POISSON_EARLY: f64 = 0.15;
const PI: f64 = core::f64::consts::PI;

/// The radius b that replaces that of a small contact.
fn thick_plate_radius_mm(a: f64, h: f64, sheet: &mut Sheet) -> f64 {
    let limit = sheet.step(A_LIMIT, 1.724 * h);
    if a < limit {
        sheet.step(B_THICK, number::sqrt(1.6 * number::pow(a, 2.0) + number::pow(h, 2.0)) - 0.675 * h)
    } else {
        sheet.step(B_PLAIN, a)
    }
}

/// Tension under a load far from edges. Load in N.
pub fn interior(loaded: &LoadedSlab, load_n: f64, sheet: &mut Sheet) -> Bending {
    let SlabOnGround { poisson: nu, thickness_mm: h, subgrade_n_per_mm3: k, .. } = loaded.slab;
    let (l, a) = (loaded.radius_mm, loaded.contact_mm);
    let p = sheet.step(P, load_n);
    let b = thick_plate_radius_mm(a, h, sheet);
    let stress = 3.0 * (1.0 + nu) * p / (2.0 * PI * number::pow(h, 2.0)) * (number::ln(l / b) + 0.6159);
    let stress_mpa = sheet.step(S_INNER, stress);
    let bracket = 1.0 + 1.0 / (2.0 * PI) * (number::ln(a / (2.0 * l)) - 0.673) * number::pow(a / l, 2.0);
    let deflection = sheet.step(W_INNER, p / (8.0 * k * number::pow(l, 2.0)) * bracket);
    Bending { stress_mpa, deflection_mm: Some(deflection) }
}

/// Tension at a free edge under a load that touches it. Load in N.
///
/// Errors: the early form with another Poisson's ratio than 0.15.
pub fn edge(loaded: &LoadedSlab, form: EdgeForm, load_n: f64, sheet: &mut Sheet) -> Result<Bending, StepId> {
    let SlabOnGround { modulus_mpa: e, poisson: nu, thickness_mm: h, subgrade_n_per_mm3: k } = loaded.slab;
    let l = loaded.radius_mm;
    let p = sheet.step(P, load_n);
    let square = number::pow(h, 2.0);
    let ahead = 3.0 * (1.0 + nu) * p / (PI * (3.0 + nu) * square);
    let stiffness = number::sqrt(e * number::pow(h, 3.0) * k);
    let logarithm = |a: f64| number::ln(e * number::pow(h, 3.0) / (100.0 * k * number::pow(a, 4.0)));
    match form {
        EdgeForm::Early if (nu - POISSON_EARLY).abs() > 1e-9 => Err(NOT_015),
        EdgeForm::Early => {
            let b = thick_plate_radius_mm(loaded.contact_mm, h, sheet);
            let stress = 0.572 * p / square * (4.0 * number::log10(l / b) + 0.359);
            Ok(Bending { stress_mpa: sheet.step(S_EDGE_EARLY, stress), deflection_mm: None })
        }
        EdgeForm::Circle => {
            let a = loaded.contact_mm;
            let bracket = logarithm(a) + 1.84 - 4.0 * nu / 3.0 + (1.0 - nu) / 2.0 + 1.18 * (1.0 + 2.0 * nu) * a / l;
            let stress_mpa = sheet.step(S_EDGE_1948, ahead * bracket);
            let down = number::sqrt(2.0 + 1.2 * nu) * p / stiffness * (1.0 - (0.76 + 0.4 * nu) * a / l);
            Ok(Bending { stress_mpa, deflection_mm: Some(sheet.step(W_EDGE_1948, down)) })
        }
        EdgeForm::Semicircle => {
            let area = PI * number::pow(loaded.contact_mm, 2.0);
            let a = sheet.step(A_HALF, number::sqrt(2.0 * area / PI));
            let bracket = logarithm(a) + 3.84 - 4.0 * nu / 3.0 + (1.0 + 2.0 * nu) * a / (2.0 * l);
            let stress_mpa = sheet.step(S_EDGE_HALF, ahead * bracket);
            let down = number::sqrt(2.0 + 1.2 * nu) * p / stiffness * (1.0 - (0.323 + 0.17 * nu) * a / l);
            Ok(Bending { stress_mpa, deflection_mm: Some(sheet.step(W_EDGE_HALF, down)) })
        }
    }
}

/// Tension at the top of a free corner. Load in N.
pub fn corner(loaded: &LoadedSlab, load_n: f64, sheet: &mut Sheet) -> Bending {
    let SlabOnGround { thickness_mm: h, subgrade_n_per_mm3: k, .. } = loaded.slab;
    let (l, a) = (loaded.radius_mm, loaded.contact_mm);
    let p = sheet.step(P, load_n);
    let shrunk = number::pow(a * number::sqrt(2.0) / l, 0.6);
    let stress_mpa = sheet.step(S_CORNER, 3.0 * p / number::pow(h, 2.0) * (1.0 - shrunk));
    let down = p / (k * number::pow(l, 2.0)) * (1.1 - 0.88 * a * number::sqrt(2.0) / l);
    let deflection = sheet.step(W_CORNER, down);
    sheet.step(X_CRACK, 2.38 * number::sqrt(a * l));
    sheet.step(X_CRACK_258, 2.58 * number::sqrt(a * l));
    Bending { stress_mpa, deflection_mm: Some(deflection) }
}
