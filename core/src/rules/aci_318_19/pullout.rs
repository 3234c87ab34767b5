//! Pullout of headed anchors (17.6.3).

use super::anchor::Anchor;
use super::concrete;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::kind::AnchorKind;
use super::reduction;
use super::steel::{N_UA, R_N};
use crate::calc::clause::INPUT;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, steps};

steps! { 56 "ACI 318-19, pullout";
    N_P "N_p" Force (ACI_318_19 "17.6.3.2.2(a)" Secondary) "Basic pullout strength of a headed anchor" = "8 * A_brg * f'_c";
    N_P_HOOK "N_p" Force (ACI_318_19 "17.6.3.2.2(b)" Secondary) "Basic pullout strength of a hooked bolt" = "0.9 * f'_c * e_h * d_a";
    E_H "e_h" Length (INPUT "" Derived) "Length of the hook, from the inner face of the shank to its tip": Given;
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the anchor": Given;
    N_P_REPORT "N_p" Force (INPUT "evaluation report" Derived) "Pullout strength of the evaluation report": Given;
    N_PN "N_pn" Force (ACI_318_19 "17.6.3.1" Secondary) "Nominal pullout strength" = "psi_c_P * N_p";
    N_D "N_d" Force (ACI_318_19 "17.5.1.2, 17.10.5.4" Secondary) "Design strength" = "k_E * phi * N_pn";
}

/// Design strength against pullout in units of the edition.
pub fn strength(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let n_p = match facts.kind {
        AnchorKind::Headed => {
            if sheet.is_told() {
                concrete::tell_strength(facts, sheet);
                anchor.bolt.bearing_area(facts.edition.system, sheet);
            }
            sheet.step(N_P, 8.0 * anchor.a_brg * facts.f_c)
        }
        AnchorKind::Hooked => {
            concrete::tell_strength(facts, sheet);
            let e_h = sheet.step(E_H, anchor.hook.unwrap_or(f64::NAN));
            let d_a = sheet.step(D_A, anchor.d_a);
            sheet.step(N_P_HOOK, 0.9 * facts.f_c * e_h * d_a)
        }
        _ => sheet.step(N_P_REPORT, anchor.pullout_report.unwrap_or(f64::NAN)),
    };
    let psi_c_p = concrete::pullout_cracking(facts, sheet);
    let n_pn = sheet.step(N_PN, psi_c_p * n_p);
    let phi = reduction::pullout(facts, sheet);
    let k_e = reduction::seismic(facts, sheet);
    sheet.step(N_D, k_e * phi * n_pn)
}

/// The most loaded anchor against its pull, in units of the edition.
pub fn check(facts: &Facts, place: usize, n_ua: f64, sheet: &mut Sheet) -> Outcome {
    let anchor = &facts.anchors[place];
    if sheet.is_told() {
        let subject = Subject::Anchor(place as u16);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionPullout), facts.edition.system);
        strength(facts, anchor, sheet);
        sheet.carry(N_UA, n_ua);
        sheet.step(R_N, n_ua / anchor.pullout);
    }
    facts.compared(n_ua, anchor.pullout)
}
