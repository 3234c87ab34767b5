//! The anchor side: EN 1992-4 annex C, and the load cases of EN 1990 6.4.3.4.

use alloc::vec::Vec;

use super::{fields, ground, steps};
use crate::calc::{Sheet, limit};
use crate::input::Values;
use crate::load_case::{Directions, Level, LoadCase};

/// The behaviour factor of the option of design.
pub fn q_aa(values: &Values, q_a: f64, sheet: &mut Sheet) -> f64 {
    match values.choice(fields::ANCHORS) {
        Some(CAPACITY_OR_DUCTILE) => sheet.step(steps::Q_AA_CAPACITY, q_a),
        Some(ELASTIC) => sheet.step(steps::Q_AA_ELASTIC, f64::min(1.5, q_a)),
        _ => sheet.step(steps::Q_AA_CAUTIOUS, 1.0),
    }
}

/// S_va; none where the vertical force may be left out, because the ground shakes little up and down and the cabinet
/// stands on the structure.
pub fn vertical(values: &Values, alpha: f64, a_a: f64, sheet: &mut Sheet) -> Option<f64> {
    let r_v = ground::vertical_ratio(values, sheet);
    let alpha_v = sheet.step(steps::ALPHA_V, r_v * alpha);
    if limit::at_most(alpha_v, 0.25) {
        sheet.step(steps::NO_VERTICAL, 0.0);
        return None;
    }
    Some(sheet.step(steps::S_VA, alpha_v * a_a))
}

/// G + A_Ed; for anchors with a vertical force, the one whole and the other at 30 %.
pub fn cases(component: f64, anchors: f64, vertical: Option<f64>, sheet: &mut Sheet) -> Vec<LoadCase> {
    let case = |name, level, horizontal, vertical| LoadCase {
        name,
        gravity: 1.0,
        vertical,
        horizontal,
        level,
        directions: Directions::Any,
    };
    let mut cases = Vec::with_capacity(5);
    cases.push(case(steps::CASE, Level::Component, component, 0.0));
    match vertical {
        None => cases.push(case(steps::CASE_ANCHORS, Level::Anchorage, anchors, 0.0)),
        Some(c_va) => {
            let v_part = sheet.step(steps::V_PART, 0.3 * c_va);
            let h_part = sheet.step(steps::H_PART, 0.3 * anchors);
            let anchorage = |name, horizontal, vertical| case(name, Level::Anchorage, horizontal, vertical);
            cases.push(anchorage(steps::PUSH_DOWN, anchors, v_part));
            cases.push(anchorage(steps::PUSH_UP, anchors, -v_part));
            cases.push(anchorage(steps::LIFT_DOWN, h_part, c_va));
            cases.push(anchorage(steps::LIFT_UP, h_part, -c_va));
        }
    }
    cases
}

/// Places of the words of the field `anchor_design`.
const ELASTIC: usize = 1;
const CAPACITY_OR_DUCTILE: usize = 2;
