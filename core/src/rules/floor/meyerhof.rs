//! The plastic form in use in the United States: Meyerhof's loads as ACI 360R gives them.

use super::documents::ACI_360R;
use super::slab_on_ground::{LoadedSlab, Position};
use crate::calc::clause::INPUT;
use crate::calc::{Sheet, number, steps};

steps! { 145 "Meyerhof";
    F_R "f_r" Stress (INPUT "floor" Derived) "Flexural strength of the concrete": Given;
    M_0 "M_0" Force (ACI_360R "Meyerhof" Memory) "Cracking moment per width" = "f_r * h^2 / 6";
    P_INNER "P_u" Force (ACI_360R "Meyerhof, interior" Memory) "Collapse load far from edges" = "6 * (1 + 2 * a / l) * M_0";
    P_EDGE "P_u" Force (ACI_360R "Meyerhof, edge" Memory) "Collapse load at a free edge" = "3.5 * (1 + 3 * a / l) * M_0";
    P_CORNER "P_u" Force (ACI_360R "Meyerhof, corner" Memory) "Collapse load at a free corner" = "2 * (1 + 4 * a / l) * M_0";
}

/// The collapse load, N. Flexural strength in MPa.
pub fn collapse_n(loaded: &LoadedSlab, flexural_mpa: f64, position: Position, sheet: &mut Sheet) -> f64 {
    let (a, l, h) = (loaded.contact_mm, loaded.radius_mm, loaded.slab.thickness_mm);
    let strength = sheet.step(F_R, flexural_mpa);
    let moment = sheet.step(M_0, strength * number::pow(h, 2.0) / 6.0);
    match position {
        Position::Interior => sheet.step(P_INNER, 6.0 * (1.0 + 2.0 * a / l) * moment),
        Position::Edge => sheet.step(P_EDGE, 3.5 * (1.0 + 3.0 * a / l) * moment),
        Position::Corner => sheet.step(P_CORNER, 2.0 * (1.0 + 4.0 * a / l) * moment),
    }
}
