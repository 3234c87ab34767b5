//! Anchor reinforcement in place of concrete breakout (17.5.2.1): bars that carry the whole force of each anchor.

use super::edition::ACI_318_19;
use super::facts::Facts;
use super::reduction;
use super::steel::Shear;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, steps};

steps! { 67 "ACI 318-19, anchor reinforcement";
    A_S "A_s" Area (INPUT "" Derived) "Area of the bars that serve the anchor": Given;
    F_Y "f_y" Stress (INPUT "" Derived) "Specified yield strength of the bars": Given;
    N_S "N_s" Force (ACI_318_19 "17.5.2.1" Secondary) "Nominal strength of the bars" = "A_s * f_y";
    N_D "N_d" Force (ACI_318_19 "17.5.2.1" Secondary) "Design strength of the bars" = "phi * N_s";
    N_UA "N_ua" Force (STATICS "base reactions" Derived) "Pull on the most loaded anchor": Solved;
    R_N "r_N" Utilisation (ACI_318_19 "17.5.2.1" Secondary) "Demand over strength" = "N_ua / N_d";
    V_S "V_s" Force (ACI_318_19 "17.5.2.1" Secondary) "Nominal strength of the bars" = "A_s * f_y";
    V_D "V_d" Force (ACI_318_19 "17.5.2.1" Secondary) "Design strength of the bars" = "phi * V_s";
    V_X "V_x" Force (STATICS "base reactions" Derived) "Shear on the most loaded anchor, to the right": Solved;
    V_Y "V_y" Force (STATICS "base reactions" Derived) "Shear on the most loaded anchor, to the rear": Solved;
    V_UA "V_ua" Force (STATICS "" Derived) "Shear on the most loaded anchor" = "sqrt(V_x^2 + V_y^2)";
    R_V "r_V" Utilisation (ACI_318_19 "17.5.2.1" Secondary) "Demand over strength" = "V_ua / V_d";
}

/// The bars of an anchor against its pull. Seismic design categories take nothing off (17.10.5.4).
pub fn check_tension(facts: &Facts, area: f64, (place, n_ua): (usize, f64), sheet: &mut Sheet) -> Outcome {
    let subject = Subject::Anchor(place as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionBreakout), facts.edition.system);
    let a_s = sheet.step(A_S, area);
    let f_y = sheet.step(F_Y, facts.bars.f_y);
    let n_s = sheet.step(N_S, a_s * f_y);
    let phi = reduction::bars(sheet);
    let n_d = sheet.step(N_D, phi * n_s);
    let n_ua = sheet.carry(N_UA, n_ua);
    sheet.step(R_N, n_ua / n_d);
    facts.compared(n_ua, n_d)
}

/// The bars of an anchor against its shear.
pub fn check_shear(facts: &Facts, area: f64, (place, shear): (usize, Shear), sheet: &mut Sheet) -> Outcome {
    let subject = Subject::Anchor(place as u16);
    sheet.open(Part::Anchors, subject, Some(CheckId::AnchorShearBreakout), facts.edition.system);
    let a_s = sheet.step(A_S, area);
    let f_y = sheet.step(F_Y, facts.bars.f_y);
    let v_s = sheet.step(V_S, a_s * f_y);
    let phi = reduction::bars(sheet);
    let v_d = sheet.step(V_D, phi * v_s);
    sheet.carry(V_X, shear.x);
    sheet.carry(V_Y, shear.y);
    let v_ua = sheet.step(V_UA, shear.size());
    let ratio = sheet.step(R_V, v_ua / v_d);
    Outcome::Compared { value: ratio, limit: 1.0, utilisation: ratio }
}
