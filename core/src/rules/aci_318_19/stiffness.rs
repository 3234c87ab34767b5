//! The stiffness of an anchor in tension where the user gives none. Not a clause of ACI 318: the shank as a bar.

use super::edition::ACI_318M_19;
use super::facts::Facts;
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::{Kind, Sheet, steps};

steps! { 63 "stiffness of an anchor";
    E_S "E_s" Stress (ACI_318M_19 "20.2.2.2" Memory) "Modulus of elasticity of steel": Constant;
    A_SE "A_se" Area (INPUT "" Derived) "Effective cross section of the anchor": Given;
    H_EF "h_ef" Length (INPUT "" Derived) "Effective embedment": Given;
    K_A "k_a" Stiffness (PRACTICE "" Derived) "Stiffness of the anchor in tension, its shank as a bar from the surface to the head" = "E_s * A_se / h_ef";
}

/// Modulus of elasticity of steel.
const E_S_MPA: f64 = 200_000.0;

/// E_s A_se / h_ef of an anchor, written into the open section, which must be in SI.
pub fn tension_n_per_mm(facts: &Facts, anchor: usize, sheet: &mut Sheet) -> f64 {
    let anchor = &facts.anchors[anchor];
    let e_s = sheet.step(E_S, E_S_MPA);
    let a_se = sheet.step(A_SE, facts.edition.system.to_si(anchor.a_se, Kind::Area));
    let h_ef = sheet.step(H_EF, anchor.h_ef_mm);
    sheet.step(K_A, e_s * a_se / h_ef)
}
