//! The stiffness of a fastener in tension where the user gives none. Not a clause of EN 1992-4: the shank as a bar.

use super::document::EN_1993_1_8;
use super::facts::Facts;
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::{Sheet, steps};

steps! { 88 "EN 1992-4, stiffness";
    E_S "E_s" Stress (EN_1993_1_8 "with EN 1993-1-1 3.2.6" Memory) "Modulus of elasticity of steel": Constant;
    A_S "A_s" Area (INPUT "" Derived) "Stressed cross section of the fastener": Given;
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    E_1 "e_1" Length (INPUT "" Derived) "Free length above the concrete": Given;
    K_A "k_a" Stiffness (PRACTICE "" Derived) "Stiffness of the fastener in tension, its shank as a bar" = "E_s * A_s / h_ef";
    K_A_GAP "k_a" Stiffness (PRACTICE "" Derived) "Stiffness of the rod in tension, with its free length" = "E_s * A_s / (h_ef + e_1)";
}

/// Modulus of elasticity of steel.
const E_S_MPA: f64 = 210_000.0;

/// E_s A_s over the length of a fastener, written into the open section.
pub fn tension_n_per_mm(facts: &Facts, anchor: usize, sheet: &mut Sheet) -> f64 {
    use super::fields as f;
    let anchor = &facts.anchors[anchor];
    let e_s = sheet.step(E_S, E_S_MPA);
    let a_s = sheet.step(A_S, anchor.a_s);
    let h_ef = sheet.step(H_EF, anchor.h_ef);
    match facts.number(f::LEVER) {
        Some(e_1) if facts.is(f::SEAT, f::SEAT_GAP) => {
            let e_1 = sheet.step(E_1, e_1);
            sheet.step(K_A_GAP, e_s * a_s / (h_ef + e_1))
        }
        _ => sheet.step(K_A, e_s * a_s / h_ef),
    }
}
