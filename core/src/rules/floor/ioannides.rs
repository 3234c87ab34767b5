//! A free corner of a slab on the ground, after Ioannides, Thompson and Barenberg.

use super::documents::IOANNIDES_1985;
use super::slab_on_ground::{LoadedSlab, SlabOnGround};
use super::westergaard::Bending;
use crate::calc::clause::INPUT;
use crate::calc::{Sheet, number, steps};

steps! { 142 "Ioannides";
    P "P" Force (INPUT "" Derived) "Load of the leg": Given;
    C "c" Length (IOANNIDES_1985 "corner" Memory) "Side of a square of the loaded area" = "1.772 * a";
    S_CORNER "sigma" Stress (IOANNIDES_1985 "corner" Memory) "Tension at the top of a free corner" = "3 * P / h^2 * (1 - (c / l)^0.72)";
    W_CORNER "w" Length (IOANNIDES_1985 "corner" Memory) "Deflection of a free corner" = "P / (k_s * l^2) * (1.205 - 0.69 * c / l)";
}

/// Tension at the top of a free corner. Load in N.
pub fn corner(loaded: &LoadedSlab, load_n: f64, sheet: &mut Sheet) -> Bending {
    let SlabOnGround { thickness_mm: h, subgrade_n_per_mm3: k, .. } = loaded.slab;
    let l = loaded.radius_mm;
    let p = sheet.step(P, load_n);
    let c = sheet.step(C, 1.772 * loaded.contact_mm);
    let stress = 3.0 * p / number::pow(h, 2.0) * (1.0 - number::pow(c / l, 0.72));
    let stress_mpa = sheet.step(S_CORNER, stress);
    let down = p / (k * number::pow(l, 2.0)) * (1.205 - 0.69 * c / l);
    Bending { stress_mpa, deflection_mm: Some(sheet.step(W_CORNER, down)) }
}
