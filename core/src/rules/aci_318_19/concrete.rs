//! The concrete: strength that may be counted on, lightweight factor, cracking, modulus.

use super::edition::{ACI_318_19, EDITION_SI, EDITION_US};
use super::facts::Facts;
use super::kind::AnchorKind;
use crate::calc::clause::INPUT;
use crate::calc::{Kind, Sheet, StepId, System, number, steps};
use crate::rules::anchor::Cracking;

steps! { 51 "ACI 318-19, concrete";
    F_C "f'_c" Stress (INPUT "" Derived) "Specified compressive strength of the concrete": Given;
    F_C_SLAB "f'_c_slab" Stress (INPUT "" Derived) "Specified compressive strength of the slab": Given;
    F_C_USED "f'_c" Stress (ACI_318_19 "17.3.1" Secondary) "Strength that the equations take" = "min(f'_c_slab, f'_c_max)";
    LAMBDA "lambda" Number (ACI_318_19 "19.2.4" Memory) "Lightweight factor; 1 for normalweight concrete": Given;
    LAMBDA_A "lambda_a" Number (ACI_318_19 "Table 17.2.4.1" Secondary) "Lightweight factor of cast-in and undercut anchors, 1.0 lambda" = "lambda";
    LAMBDA_A_DRILLED "lambda_a" Number (ACI_318_19 "Table 17.2.4.1" Secondary) "Lightweight factor of expansion, screw and adhesive anchors in concrete failure" = "0.8 * lambda";
    LAMBDA_A_BOND "lambda_a" Number (ACI_318_19 "Table 17.2.4.1" Secondary) "Lightweight factor of adhesive anchors in bond failure" = "0.6 * lambda";
    LAMBDA_A_NORMAL "lambda_a" Number (ACI_318_19 "Table 17.2.4.1" Memory) "1, because the concrete is of normal weight": Condition;
    PSI_C_N_DRILLED "psi_c_N" Number (ACI_318_19 "17.6.2.5.1(a)" Secondary) "Post-installed anchors in concrete that does not crack under service loads, with the code's own k_c": Condition;
    PSI_C_N_REPORT "psi_c_N" Number (ACI_318_19 "17.6.2.5.1" Secondary) "1, because the report's k_c is that of uncracked concrete": Condition;
    PSI_C_P_REPORT "psi_c_P" Number (ACI_318_19 "17.6.3.3.1" Secondary) "1, because the report's value is for this state of the concrete": Condition;
    PSI_C_N_CRACKED "psi_c_N" Number (ACI_318_19 "17.6.2.5.1(b)" Secondary) "1, because the concrete may be cracked": Condition;
    PSI_C_N_SEISMIC "psi_c_N" Number (ACI_318_19 "17.10.5.4" Secondary) "1, because concrete is taken as cracked in seismic design categories C to F": Condition;
    PSI_C_N_UNCRACKED "psi_c_N" Number (ACI_318_19 "17.6.2.5.1(a)" Secondary) "Cast-in anchors in concrete that does not crack under service loads": Condition;
    PSI_C_P_CRACKED "psi_c_P" Number (ACI_318_19 "17.6.3.3.1(b)" Secondary) "1, because the concrete may be cracked": Condition;
    PSI_C_P_SEISMIC "psi_c_P" Number (ACI_318_19 "17.10.5.4" Secondary) "1, because concrete is taken as cracked in seismic design categories C to F": Condition;
    PSI_C_P_UNCRACKED "psi_c_P" Number (ACI_318_19 "17.6.3.3.1(a)" Secondary) "Concrete that does not crack under service loads": Condition;
}

/// Records the strength of the concrete and the lightweight factor that the equations take.
pub fn tell(facts: &Facts, sheet: &mut Sheet) {
    if !sheet.is_told() {
        return;
    }
    tell_strength(facts, sheet);
    sheet.step(LAMBDA, facts.lambda);
    let (id, lambda_a) = lightweight(facts.kind, facts.lambda);
    sheet.step(id, lambda_a);
}

/// lambda_a in concrete failure, with the row that says why (Table 17.2.4.1). Normalweight concrete has 1 for all.
pub fn lightweight(kind: AnchorKind, lambda: f64) -> (StepId, f64) {
    match kind {
        _ if lambda >= 1.0 => (LAMBDA_A_NORMAL, 1.0),
        AnchorKind::Headed | AnchorKind::Hooked | AnchorKind::Undercut => (LAMBDA_A, lambda),
        _ => (LAMBDA_A_DRILLED, 0.8 * lambda),
    }
}

/// lambda_a in bond failure, told.
pub fn bond_lightweight(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let lambda = sheet.step(LAMBDA, facts.lambda);
    if lambda >= 1.0 { sheet.step(LAMBDA_A_NORMAL, 1.0) } else { sheet.step(LAMBDA_A_BOND, 0.6 * lambda) }
}

/// Records the strength of the concrete that the equations take.
pub fn tell_strength(facts: &Facts, sheet: &mut Sheet) {
    if let Some(note) = facts.edition.note {
        sheet.step(note, 0.0);
    }
    if facts.f_c_slab > facts.strength_max().value() {
        sheet.step(F_C_SLAB, facts.f_c_slab);
        facts.strength_max().told(sheet);
        sheet.step(F_C_USED, facts.f_c);
    } else {
        sheet.step(F_C, facts.f_c);
    }
}

/// psi_c,N (17.6.2.5.1).
pub fn breakout_cracking(facts: &Facts, sheet: &mut Sheet) -> f64 {
    match (facts.cracking, facts.seismic) {
        (Cracking::Uncracked, false) if !facts.kind.is_drilled() => sheet.step(PSI_C_N_UNCRACKED, 1.25),
        (Cracking::Uncracked, false) if facts.report.k_uncr.is_some() => sheet.step(PSI_C_N_REPORT, 1.0),
        (Cracking::Uncracked, false) => sheet.step(PSI_C_N_DRILLED, 1.4),
        (Cracking::Cracked, _) => sheet.step(PSI_C_N_CRACKED, 1.0),
        (Cracking::Uncracked, true) => sheet.step(PSI_C_N_SEISMIC, 1.0),
    }
}

/// psi_c,P (17.6.3.3.1).
pub fn pullout_cracking(facts: &Facts, sheet: &mut Sheet) -> f64 {
    if facts.kind.is_drilled() {
        return sheet.step(PSI_C_P_REPORT, 1.0);
    }
    match (facts.cracking, facts.seismic) {
        (Cracking::Uncracked, false) => sheet.step(PSI_C_P_UNCRACKED, 1.4),
        (Cracking::Cracked, _) => sheet.step(PSI_C_P_CRACKED, 1.0),
        (Cracking::Uncracked, true) => sheet.step(PSI_C_P_SEISMIC, 1.0),
    }
}

/// Modulus of elasticity of normalweight concrete by the SI edition, MPa from MPa (19.2.2.1b).
pub fn modulus_si(strength_mpa: f64) -> f64 {
    EDITION_SI.modulus * number::sqrt(strength_mpa)
}

/// The same by the inch-pound edition, MPa from MPa.
pub fn modulus_us(strength_mpa: f64) -> f64 {
    let strength_psi = System::Us.from_si(strength_mpa, Kind::Stress);
    System::Us.to_si(EDITION_US.modulus * number::sqrt(strength_psi), Kind::Stress)
}
