//! The anchor side: EN 1992-4 annex C, and the load cases of EN 1990 6.4.3.4.

use alloc::vec::Vec;

use super::{fields, ground, steps};
use crate::calc::{Sheet, StepId, limit};
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

/// G + A_Ed; for anchors with a vertical force, the one whole and the other at 30 %. Elastic design is what anchor rules
/// call the amplified level: it is listed once more as that.
pub fn cases(values: &Values, forces: Forces, sheet: &mut Sheet) -> Vec<LoadCase> {
    let case = |name, level, horizontal, vertical| LoadCase {
        name,
        gravity: 1.0,
        vertical,
        horizontal,
        level,
        directions: Directions::Any,
    };
    let mut cases = Vec::with_capacity(9);
    cases.push(case(steps::CASE, Level::Component, forces.component, 0.0));
    let anchors = forces.anchors;
    let parts = forces
        .vertical
        .map(|c_va| (sheet.step(steps::V_PART, 0.3 * c_va), sheet.step(steps::H_PART, 0.3 * anchors), c_va));
    for (level, names) in [(Level::Anchorage, ANCHORAGE), (Level::Amplified, AMPLIFIED)] {
        if level == Level::Amplified && !is_elastic(values) {
            break;
        }
        match parts {
            None => cases.push(case(names[0], level, anchors, 0.0)),
            Some((v_part, h_part, c_va)) => {
                cases.push(case(names[1], level, anchors, v_part));
                cases.push(case(names[2], level, anchors, -v_part));
                cases.push(case(names[3], level, h_part, c_va));
                cases.push(case(names[4], level, h_part, -c_va));
            }
        }
    }
    cases
}

/// Whether the anchors are designed elastically, or no option is stated.
pub fn is_elastic(values: &Values) -> bool {
    values.choice(fields::ANCHORS) != Some(CAPACITY_OR_DUCTILE)
}

/// Forces over weight that enter the cases.
#[derive(Clone, Copy)]
pub struct Forces {
    /// Horizontal.
    pub component: f64,
    /// Horizontal, for anchors.
    pub anchors: f64,
    /// Vertical, for anchors; none where it may be left out.
    pub vertical: Option<f64>,
}

const ANCHORAGE: [StepId; 5] =
    [steps::CASE_ANCHORS, steps::PUSH_DOWN, steps::PUSH_UP, steps::LIFT_DOWN, steps::LIFT_UP];
const AMPLIFIED: [StepId; 5] = [
    steps::CASE_ELASTIC,
    steps::PUSH_DOWN_ELASTIC,
    steps::PUSH_UP_ELASTIC,
    steps::LIFT_DOWN_ELASTIC,
    steps::LIFT_UP_ELASTIC,
];

/// Places of the words of the field `anchor_design`.
const ELASTIC: usize = 1;
const CAPACITY_OR_DUCTILE: usize = 2;
