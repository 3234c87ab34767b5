//! Partial factors (Table 4.1).

use super::bolt::Bolt;
use super::document::EN_1992_4;
use super::facts::Facts;
use super::fields as f;
use crate::calc::clause::INPUT;
use crate::calc::limit::at_most;
use crate::calc::{Sheet, StepId, steps};

steps! { 71 "EN 1992-4, partial factors";
    GAMMA_C "gamma_c" Number (EN_1992_4 "Table 4.1" Secondary) "Partial factor of concrete; seismic as persistent (from memory), where the National Annex does not say otherwise": Given;
    GAMMA_INST_ONE "gamma_inst" Number (EN_1992_4 "Table 4.1" Secondary) "Installation factor of cast-in headed fasteners": Condition;
    GAMMA_INST_SHEAR "gamma_inst" Number (EN_1992_4 "Table 4.1" Secondary) "Installation factor of fasteners in shear": Condition;
    GAMMA_INST "gamma_inst" Number (INPUT "European Technical Assessment" Derived) "Installation factor, tension, by the assessment": Given;
    GAMMA_MC "gamma_Mc" Number (EN_1992_4 "Table 4.1" Secondary) "Partial factor for failure of the concrete, also for pull-out and splitting" = "gamma_c * gamma_inst";
    GAMMA_MS_N "gamma_Ms" Number (EN_1992_4 "Table 4.1" Secondary) "Partial factor of the steel in tension" = "max(1.4, 1.2 * f_uk / f_yk)";
    GAMMA_MS_V "gamma_Ms" Number (EN_1992_4 "Table 4.1" Secondary) "Partial factor of the steel in shear, f_uk being at most 800 MPa and f_yk at most 0.8 f_uk" = "max(1.25, f_uk / f_yk)";
    GAMMA_MS_V_HARD "gamma_Ms" Number (EN_1992_4 "Table 4.1" Secondary) "Partial factor of the steel in shear, f_uk being above 800 MPa or f_yk above 0.8 f_uk": Condition;
    GAMMA_MS_N_GIVEN "gamma_Ms" Number (INPUT "European Technical Assessment" Derived) "Partial factor of the steel in tension, given in place of Table 4.1": Given;
    GAMMA_MS_V_GIVEN "gamma_Ms" Number (INPUT "European Technical Assessment" Derived) "Partial factor of the steel in shear, given in place of Table 4.1": Given;
}

/// gamma_Mc in tension.
pub fn concrete_tension(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let gamma_c = sheet.step(GAMMA_C, facts.values.given(f::GAMMA_C));
    let gamma_inst = if facts.is_headed() {
        sheet.step(GAMMA_INST_ONE, 1.0)
    } else {
        // Without it the check is not covered, and never gets here.
        sheet.step(GAMMA_INST, facts.number(f::GAMMA_INST).unwrap_or(f64::NAN))
    };
    sheet.step(GAMMA_MC, gamma_c * gamma_inst)
}

/// gamma_Mc in shear.
pub fn concrete_shear(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let gamma_c = sheet.step(GAMMA_C, facts.values.given(f::GAMMA_C));
    let gamma_inst = sheet.step(GAMMA_INST_SHEAR, 1.0);
    sheet.step(GAMMA_MC, gamma_c * gamma_inst)
}

/// gamma_Ms in tension.
pub fn steel_tension(facts: &Facts, bolt: &Bolt, sheet: &mut Sheet) -> f64 {
    if let Some(given) = facts.number(f::GAMMA_MS_N) {
        return sheet.step(GAMMA_MS_N_GIVEN, given);
    }
    let (f_uk, f_yk) = strengths(bolt, sheet);
    sheet.step(GAMMA_MS_N, largest(1.4, 1.2 * f_uk / f_yk))
}

/// gamma_Ms in shear.
pub fn steel_shear(facts: &Facts, bolt: &Bolt, sheet: &mut Sheet) -> f64 {
    if let Some(given) = facts.number(f::GAMMA_MS_V) {
        return sheet.step(GAMMA_MS_V_GIVEN, given);
    }
    let (f_uk, f_yk) = strengths(bolt, sheet);
    let is_soft = at_most(f_uk, 800.0) && at_most(f_yk / f_uk, 0.8);
    let (id, value): (StepId, f64) =
        if is_soft { (GAMMA_MS_V, largest(1.25, f_uk / f_yk)) } else { (GAMMA_MS_V_HARD, 1.5) };
    sheet.step(id, value)
}

fn strengths(bolt: &Bolt, sheet: &mut Sheet) -> (f64, f64) {
    (bolt.tensile(sheet), bolt.yielding(sheet))
}

/// The larger of two; a strength that is no number must stay none.
fn largest(least: f64, value: f64) -> f64 {
    if value < least { least } else { value }
}
