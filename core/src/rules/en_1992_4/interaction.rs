//! Tension and shear together (Table 7.3, C.9): the steel of one fastener, and everything else of a group.

use super::document::EN_1992_4;
use super::facts::Facts;
use crate::calc::number::pow_1_5;
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, System, steps};

steps! { 82 "EN 1992-4, interaction";
    BETA_N "beta_N" Utilisation (EN_1992_4 "Table 7.3" Secondary) "Largest action over resistance in tension": Solved;
    BETA_V "beta_V" Utilisation (EN_1992_4 "Table 7.3" Secondary) "Largest action over resistance in shear": Solved;
    STEEL "u" Utilisation (EN_1992_4 "(7.54)" Secondary) "Steel: sum of the squares" = "beta_N^2 + beta_V^2";
    CURVE "u_curve" Utilisation (EN_1992_4 "(7.55)" Secondary) "Other failures: sum of the powers of 1.5" = "beta_N^1.5 + beta_V^1.5";
    LINE "u_line" Utilisation (EN_1992_4 "(7.56)" Secondary) "Other failures: sum over 1.2, which may be taken instead" = "(beta_N + beta_V) / 1.2";
    CONCRETE "u" Utilisation (EN_1992_4 "Table 7.3" Secondary) "The lesser of both, neither ratio being above 1" = "max(beta_N, beta_V, min(u_curve, u_line))";
    SEISMIC "u" Utilisation (EN_1992_4 "(C.9)" Secondary) "Under earthquakes: the sum" = "beta_N + beta_V";
}

/// Ratios of one fastener or group in one load case.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ratios {
    /// In tension.
    pub tension: f64,
    /// In shear.
    pub shear: f64,
}

/// What ratios are of.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Of {
    /// The steel of a fastener.
    Steel,
    /// Every other failure.
    Concrete,
}

/// The utilisation of a pair of ratios, with its steps.
pub fn utilisation(facts: &Facts, of: Of, ratios: Ratios, sheet: &mut Sheet) -> f64 {
    let b_n = sheet.carry(BETA_N, ratios.tension);
    let b_v = sheet.carry(BETA_V, ratios.shear);
    if facts.is_seismic {
        return sheet.step(SEISMIC, b_n + b_v);
    }
    if of == Of::Steel {
        return sheet.step(STEEL, b_n * b_n + b_v * b_v);
    }
    let curve = sheet.step(CURVE, pow_1_5(b_n) + pow_1_5(b_v));
    let line = sheet.step(LINE, (b_n + b_v) / 1.2);
    let lesser = if line < curve { line } else { curve };
    // What is no number must stay none.
    let most = if b_n > b_v || b_n.is_nan() { b_n } else { b_v };
    sheet.step(CONCRETE, if lesser > most || lesser.is_nan() { lesser } else { most })
}

/// A fastener or group under tension and shear together.
pub fn check(facts: &Facts, (of, subject): (Of, Subject), ratios: Ratios, sheet: &mut Sheet) -> Outcome {
    let check = if of == Of::Steel { CheckId::AnchorInteractionSteel } else { CheckId::AnchorInteraction };
    sheet.open(Part::Anchors, subject, Some(check), System::Si);
    let value = utilisation(facts, of, ratios, sheet);
    Outcome::Compared { value, limit: 1.0, utilisation: value }
}
