//! The shaking of the floor: C7.2.11 of the Circolare for framed buildings, the form of EN 1998-1 for others.

use super::{fields, steps};
use crate::calc::{Sheet, limit};
use crate::input::Values;

/// The seismic coefficient before its limit; `ground` is alpha S.
pub fn s_1(values: &Values, ground: f64, r_z: f64, sheet: &mut Sheet) -> f64 {
    let k = sheet.step(steps::K, ground * (1.0 + r_z));
    if values.choice(fields::BUILDING) == Some(FRAMED) {
        return framed(values, k, sheet);
    }
    let a_a = match (values.number(fields::T_A), values.number(fields::T_1)) {
        (Some(t_a), Some(t_1)) => {
            let t_a = sheet.step(steps::T_A, t_a);
            let t_1 = sheet.step(steps::T_1, t_1);
            let apart = 1.0 - t_a / t_1;
            sheet.step(steps::A_A, 3.0 / (1.0 + apart * apart))
        }
        _ => sheet.step(steps::A_A_RESONANCE, 3.0),
    };
    sheet.step(steps::S_1_OTHER, k * a_a - 0.5 * ground)
}

/// Rising to a plateau of a_p, falling behind it. Without the period of the element it stands on the plateau.
fn framed(values: &Values, k: f64, sheet: &mut Sheet) -> f64 {
    let t_1 = sheet.step(steps::T_1, values.given(fields::T_1));
    let row = row(t_1);
    let a = sheet.step(steps::A, row.a);
    let b = sheet.step(steps::B, row.b);
    let a_p = sheet.step(steps::A_P, row.a_p);
    let Some(t_a) = values.number(fields::T_A) else {
        return sheet.step(steps::S_1_UNKNOWN, k * a_p);
    };
    let t_a = sheet.step(steps::T_A, t_a);
    let (step, end) = if limit::less(t_a, a * t_1) {
        (steps::S_1_SHORT, a)
    } else if limit::less(t_a, b * t_1) {
        return sheet.step(steps::S_1_PLATEAU, k * a_p);
    } else {
        (steps::S_1_LONG, b)
    };
    let apart = 1.0 - t_a / (end * t_1);
    sheet.step(step, k * a_p / (1.0 + (a_p - 1.0) * (apart * apart)))
}

/// Places of the words of the field `building`.
pub const FRAMED: usize = 0;
pub const OTHER: usize = 1;

/// One row of Table C7.2.II.
struct Row {
    a: f64,
    b: f64,
    a_p: f64,
}

fn row(t_1: f64) -> &'static Row {
    let place = if limit::less(t_1, 0.5) {
        0
    } else if limit::at_most(t_1, 1.0) {
        1
    } else {
        2
    };
    &ROWS[place]
}

static ROWS: [Row; 3] =
    [Row { a: 0.8, b: 1.4, a_p: 5.0 }, Row { a: 0.3, b: 1.2, a_p: 4.0 }, Row { a: 0.3, b: 1.0, a_p: 2.5 }];
