//! Load cases of IS 1893 (Part 1):2016 6.3.
//!
//! 1.2 (DL + EL) is not listed: with contents counted as dead load it is 1.5 (DL + EL) made smaller as a whole.

use alloc::vec::Vec;

use super::{fields, steps};
use crate::calc::number::sqrt;
use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::load_case::{Directions, Level, LoadCase};
use crate::rules::demand;

/// Forces over weight before load factors.
#[derive(Clone, Copy)]
pub struct Forces {
    /// Horizontal.
    pub component: f64,
    /// Horizontal, for anchors.
    pub anchors: f64,
    /// Vertical, up or down.
    pub vertical: f64,
}

/// 1.5 (DL + EL) and 0.9 DL + 1.5 EL, with EL as one axis whole and the others at 30 %.
pub fn cases(values: &Values, forces: Forces, sheet: &mut Sheet) -> Vec<LoadCase> {
    let h = sheet.step(steps::H_E, 1.5 * forces.component);
    let on_top = sheet.step(steps::H_ON_TOP, 1.5 * forces.anchors);
    let alone = sheet.step(steps::H_ALONE, f64::max(h, forces.anchors));
    let h_a = match values.choice(fields::ON_TOP) {
        Some(ALONE) => sheet.step(steps::H_A_ALONE, alone),
        _ => sheet.step(steps::H_A_ON_TOP, on_top),
    };
    let v = sheet.step(steps::V_E, 1.5 * forces.vertical);
    let v_part = sheet.step(steps::V_PART, 0.3 * v);

    let directions = demand::directions(values, fields::DIRECTIONS);
    let mut cases = Vec::with_capacity(8);
    for (names, level, horizontal) in [(PUSHED, Level::Component, h), (PUSHED_ANCHORS, Level::Anchorage, h_a)] {
        for (name, gravity, vertical) in [(names[0], 1.5, v_part), (names[1], 0.9, -v_part)] {
            cases.push(LoadCase { name, gravity, vertical, horizontal, level, directions });
        }
    }
    if forces.vertical > 0.0 {
        // 30 % along both axes is one vector; in any direction it is at least as severe.
        let h_part = sheet.step(steps::H_PART, 0.3 * sqrt(2.0) * h);
        let h_a_part = sheet.step(steps::H_A_PART, 0.3 * sqrt(2.0) * h_a);
        for (names, level, horizontal) in
            [(LIFTED, Level::Component, h_part), (LIFTED_ANCHORS, Level::Anchorage, h_a_part)]
        {
            for (name, gravity, vertical) in [(names[0], 1.5, v), (names[1], 0.9, -v)] {
                cases.push(LoadCase { name, gravity, vertical, horizontal, level, directions: Directions::Any });
            }
        }
    }
    cases
}

/// Place of the word of the field `anchor_load_factor`.
const ALONE: usize = 1;

const PUSHED: [StepId; 2] = [steps::HEAVY, steps::LIGHT];
const PUSHED_ANCHORS: [StepId; 2] = [steps::HEAVY_ANCHORS, steps::LIGHT_ANCHORS];
const LIFTED: [StepId; 2] = [steps::HEAVY_Z, steps::LIGHT_Z];
const LIFTED_ANCHORS: [StepId; 2] = [steps::HEAVY_Z_ANCHORS, steps::LIGHT_Z_ANCHORS];
