//! Steel failure in tension (7.2.1.3) and in shear without a lever arm (7.2.2.3.1).

use super::document::EN_1992_4;
use super::facts::{Anchor, Facts};
use super::fields as f;
use super::seismic::{self, Mode};
use super::{concrete, coverage, factor, hole};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{at_least, at_most, less, more};
use crate::calc::{Sheet, StepId, number, steps};

steps! { 73 "EN 1992-4, steel";
    N_RK "N_Rk_s" Force (EN_1992_4 "7.2.1.3" Secondary) "Characteristic resistance of the steel in tension" = "A_s * f_uk";
    N_RK_GIVEN "N_Rk_s" Force (INPUT "European Technical Assessment" Derived) "Characteristic resistance of the steel in tension": Given;
    N_RK_EQ "N_Rk_s" Force (INPUT "European Technical Assessment" Derived) "Characteristic resistance of the steel in tension, of the seismic category": Given;
    N_RD "N_Rd_s" Force (EN_1992_4 "Table 7.1, (C.8)" Secondary) "Design resistance of the steel in tension" = "k_eq * N_Rk_s / gamma_Ms";
    N_ED "N_Ed" Force (STATICS "base reactions" Derived) "Pull on the fastener": Solved;
    BETA_N "beta_N" Utilisation (EN_1992_4 "Table 7.1" Secondary) "Action over resistance" = "N_Ed / N_Rd_s";

    K_6 "k_6" Number (EN_1992_4 "(7.34)" Secondary) "Factor of steel up to 500 MPa in shear": Condition;
    K_6_HARD "k_6" Number (EN_1992_4 "(7.34)" Secondary) "Factor of steel above 500 and up to 1000 MPa in shear": Condition;
    K_SHALLOW "k_sh" Number (EN_1992_4 "7.2.2.3.1" Secondary) "The embedment is below 5 diameters and the concrete below C20/25": Condition;
    K_DEEP "k_sh" Number (EN_1992_4 "7.2.2.3.1" Secondary) "1, because the embedment is at least 5 diameters or the concrete at least C20/25": Condition;
    V_0 "V0_Rk_s" Force (EN_1992_4 "(7.34)" Secondary) "Resistance of the steel of one fastener in shear" = "k_sh * k_6 * A_s * f_uk";
    V_0_GIVEN "V0_Rk_s" Force (INPUT "European Technical Assessment" Derived) "Resistance of the steel of one fastener in shear": Given;
    K_7 "k_7" Number (EN_1992_4 "(7.35)" Secondary) "Factor of ductile steel, rupture elongation above 8 %, or of one fastener alone": Condition;
    K_7_BRITTLE "k_7" Number (EN_1992_4 "(7.35)" Secondary) "Factor of steel in a group whose rupture elongation is at most 8 % or not known": Condition;
    K_7_GIVEN "k_7" Number (INPUT "European Technical Assessment" Derived) "Factor for ductility in a group": Given;
    V_RK "V_Rk_s" Force (EN_1992_4 "(7.35)" Secondary) "Characteristic resistance of the steel in shear" = "k_7 * V0_Rk_s";
    T_GROUT "t_grout" Length (INPUT "" Derived) "Thickness of the mortar": Given;
    U_MM "u_mm" Length (EN_1992_4 "(7.36)" Secondary) "One millimetre, the unit of the clause": Constant;
    V_RK_GROUT "V_Rk_s" Force (EN_1992_4 "(7.36)" Secondary) "Characteristic resistance of the steel in shear, through mortar thicker than half a diameter" = "(1 - 0.01 * t_grout / u_mm) * k_7 * V0_Rk_s";
    V_RK_EQ "V_Rk_s" Force (INPUT "European Technical Assessment" Derived) "Characteristic resistance of the steel in shear, of the seismic category": Given;
    V_RD "V_Rd_s" Force (EN_1992_4 "Table 7.2, (C.8)" Secondary) "Design resistance of the steel in shear" = "k_eq * V_Rk_s / gamma_Ms";
    V_X "V_x" Force (STATICS "base reactions" Derived) "Shear on the fastener, to the right": Solved;
    V_Y "V_y" Force (STATICS "base reactions" Derived) "Shear on the fastener, to the rear": Solved;
    V_ED "V_Ed" Force (STATICS "" Derived) "Shear on the fastener" = "sqrt(V_x^2 + V_y^2)";
    BETA_V "beta_V" Utilisation (EN_1992_4 "Table 7.2" Secondary) "Action over resistance" = "V_Ed / V_Rd_s";
}

/// The shear on one fastener.
#[derive(Clone, Copy, Debug)]
pub struct Shear {
    /// To the right.
    pub x: f64,
    /// To the rear.
    pub y: f64,
}

impl Shear {
    /// Its size.
    pub fn size(self) -> f64 {
        number::sqrt(self.x * self.x + self.y * self.y)
    }

    /// Records it with its size.
    pub fn tell(self, sheet: &mut Sheet) -> f64 {
        sheet.carry(V_X, self.x);
        sheet.carry(V_Y, self.y);
        sheet.step(V_ED, self.size())
    }
}

/// Design resistance in tension.
pub fn tension(facts: &Facts, anchor: &Anchor, sharing: usize, sheet: &mut Sheet) -> f64 {
    let n_rk = match (facts.number(f::N_RK_S), facts.number(f::N_RK_S_EQ)) {
        (_, Some(given)) if facts.is_seismic => sheet.step(N_RK_EQ, given),
        (Some(given), _) => sheet.step(N_RK_GIVEN, given),
        _ => {
            seismic::tell_static(facts, sheet);
            let a_s = anchor.bolt.stress_area(sheet);
            let f_uk = anchor.bolt.tensile(sheet);
            sheet.step(N_RK, a_s * f_uk)
        }
    };
    let k_eq = seismic::reduction(facts, Mode::SteelTension, sharing, sheet);
    let gamma = factor::steel_tension(facts, &anchor.bolt, sheet);
    sheet.step(N_RD, k_eq * n_rk / gamma)
}

/// Why shear of the steel without a lever arm is not covered; none where it is.
pub fn uncovered(facts: &Facts, sharing: usize) -> Option<StepId> {
    let is_hard = |anchor: &Anchor| more(anchor.bolt.steel.f_uk, 1000.0);
    if facts.number(f::V_0_RK_S).is_none() && facts.anchors.iter().any(is_hard) {
        return Some(coverage::HARD_STEEL);
    }
    let thick = |anchor: &&Anchor| is_thick(facts, anchor);
    let anchor = facts.anchors.iter().find(thick)?;
    if facts.is_seismic {
        return Some(coverage::SEISMIC_GAP);
    }
    let t = facts.number(f::GROUT).unwrap_or(f64::NAN);
    // The rule of mortar layers (7.2.2.3.1), from memory.
    let is_within = sharing >= 2
        && at_most(t, f64::min(40.0, 5.0 * anchor.d))
        && facts
            .anchors
            .iter()
            .all(|anchor| more(anchor.h_ef, 5.0 * anchor.d) && more(facts.closest_mm, 10.0 * anchor.d))
        && at_least(facts.f_ck_slab, 20.0);
    (!is_within).then_some(coverage::THICK_MORTAR)
}

/// Whether the mortar is so thick that the steel bends in it.
fn is_thick(facts: &Facts, anchor: &Anchor) -> bool {
    facts.is(f::SEAT, f::SEAT_MORTAR) && !facts.number(f::GROUT).is_some_and(|t| at_most(t, 0.5 * anchor.d))
}

/// Design resistance in shear without a lever arm.
pub fn shear(facts: &Facts, anchor: &Anchor, sharing: usize, sheet: &mut Sheet) -> f64 {
    hole::tell(facts, anchor.d, sheet);
    let v_rk = match facts.number(f::V_RK_S_EQ) {
        Some(given) if facts.is_seismic => sheet.step(V_RK_EQ, given),
        _ => characteristic(facts, anchor, sharing, sheet),
    };
    let k_eq = seismic::reduction(facts, Mode::SteelShear, sharing, sheet);
    let gamma = factor::steel_shear(facts, &anchor.bolt, sheet);
    sheet.step(V_RD, k_eq * v_rk / gamma)
}

/// V_Rk_s (7.35), (7.36).
fn characteristic(facts: &Facts, anchor: &Anchor, sharing: usize, sheet: &mut Sheet) -> f64 {
    seismic::tell_static(facts, sheet);
    let v_0 = match facts.number(f::V_0_RK_S) {
        Some(given) => sheet.step(V_0_GIVEN, given),
        None => {
            let a_s = anchor.bolt.stress_area(sheet);
            let f_uk = anchor.bolt.tensile(sheet);
            concrete::strength(facts, sheet);
            let is_shallow = less(anchor.h_ef, 5.0 * anchor.d) && less(facts.f_ck_slab, 20.0);
            let k_sh = if is_shallow { sheet.step(K_SHALLOW, 0.8) } else { sheet.step(K_DEEP, 1.0) };
            let k_6 = if at_most(f_uk, 500.0) { sheet.step(K_6, 0.6) } else { sheet.step(K_6_HARD, 0.5) };
            sheet.step(V_0, k_sh * k_6 * a_s * f_uk)
        }
    };
    let is_ductile = anchor.bolt.steel.a_5.is_some_and(|a_5| more(a_5, 8.0));
    let k_7 = match facts.number(f::K_7) {
        Some(given) => sheet.step(K_7_GIVEN, given),
        None if is_ductile || sharing < 2 => sheet.step(K_7, 1.0),
        None => sheet.step(K_7_BRITTLE, 0.8),
    };
    if !is_thick(facts, anchor) {
        return sheet.step(V_RK, k_7 * v_0);
    }
    let t = sheet.step(T_GROUT, facts.number(f::GROUT).unwrap_or(f64::NAN));
    let u_mm = sheet.step(U_MM, 1.0);
    sheet.step(V_RK_GROUT, (1.0 - 0.01 * t / u_mm) * k_7 * v_0)
}
