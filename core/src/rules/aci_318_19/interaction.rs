//! Tension and shear together (17.8).

use super::edition::ACI_318_19;
use super::facts::Facts;
use crate::calc::limit::at_most;
use crate::calc::number::pow;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, steps};

steps! { 60 "ACI 318-19, interaction";
    R_N "r_N" Utilisation (ACI_318_19 "17.8" Secondary) "Largest demand over strength of the group's tension modes": Solved;
    R_V "r_V" Utilisation (ACI_318_19 "17.8" Secondary) "Largest demand over strength of the group's shear modes": Solved;
    U_ALONE "u" Utilisation (ACI_318_19 "17.8.1, 17.8.2" Secondary) "One of both is at most 0.2: the other may be used in full" = "max(r_N, r_V)";
    U_SUM "u" Utilisation (ACI_318_19 "17.8.3" Secondary) "Both are above 0.2: their sum over 1.2" = "(r_N + r_V) / 1.2";
    U_CURVE "u" Utilisation (ACI_318_19 "R17.8" Secondary) "Sum of the powers of 5/3" = "r_N^(5/3) + r_V^(5/3)";
}

/// Where the straight lines begin.
const FREE: f64 = 0.2;

/// Ratios of one group in one load case.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ratios {
    /// Largest of the tension modes.
    pub tension: f64,
    /// Largest of the shear modes.
    pub shear: f64,
}

/// The utilisation of a pair of ratios, with its steps.
pub fn utilisation(facts: &Facts, ratios: Ratios, sheet: &mut Sheet) -> f64 {
    let r_n = sheet.carry(R_N, ratios.tension);
    let r_v = sheet.carry(R_V, ratios.shear);
    if facts.five_thirds {
        return sheet.step(U_CURVE, pow(r_n, 5.0 / 3.0) + pow(r_v, 5.0 / 3.0));
    }
    if at_most(r_n, FREE) || at_most(r_v, FREE) {
        return sheet.step(U_ALONE, if r_n > r_v || r_n.is_nan() { r_n } else { r_v });
    }
    sheet.step(U_SUM, (r_n + r_v) / 1.2)
}

/// A group under tension and shear together.
pub fn check(facts: &Facts, number: u16, ratios: Ratios, sheet: &mut Sheet) -> Outcome {
    sheet.open(Part::Anchors, Subject::Group(number), Some(CheckId::AnchorInteraction), facts.edition.system);
    let value = utilisation(facts, ratios, sheet);
    Outcome::Compared { value, limit: 1.0, utilisation: value }
}
