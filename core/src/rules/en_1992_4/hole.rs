//! Clearance holes (Table 6.1), and which fasteners take shear.

use alloc::vec;

use super::document::EN_1992_4;
use super::facts::Facts;
use super::fields as f;
use crate::calc::clause::INPUT;
use crate::calc::limit::more;
use crate::calc::{Detail, Sheet, steps};

steps! { 87 "EN 1992-4, holes";
    D_F "d_f_max" Length (EN_1992_4 "Table 6.1" Secondary) "Largest clearance hole with which all fasteners share the shear": Table;
    HOLE "d_f" Length (INPUT "" Derived) "Hole in the base": Given;
    FILLED "d_f" Number (EN_1992_4 "6.2.2.1" Secondary) "the holes are filled or the fasteners welded: all share the shear": Name;
}

/// Diameter of the fastener and of its clearance hole.
const TABLE_6_1: [[f64; 2]; 12] = [
    [6.0, 7.0],
    [8.0, 9.0],
    [10.0, 12.0],
    [12.0, 14.0],
    [14.0, 16.0],
    [16.0, 18.0],
    [18.0, 20.0],
    [20.0, 22.0],
    [22.0, 24.0],
    [24.0, 26.0],
    [27.0, 30.0],
    [30.0, 33.0],
];

/// The row of a fastener and its largest hole: that of the next smaller diameter in the table; none above the table.
pub fn clearance_mm(d: f64) -> Option<(f64, f64)> {
    let last = TABLE_6_1[TABLE_6_1.len() - 1][0];
    if more(d, last) {
        return None;
    }
    TABLE_6_1.iter().rev().find(|row| !more(row[0], d)).map(|row| (row[0], row[1]))
}

/// Records what lets all fasteners share the shear.
pub fn tell(facts: &Facts, d: f64, sheet: &mut Sheet) {
    if facts.is(f::HOLES, f::FILLED) {
        sheet.step(FILLED, 0.0);
        return;
    }
    if let Some((row, most)) = clearance_mm(d) {
        sheet.detailed(D_F, most, || Detail::Rows(vec![[row, most]]));
    }
    if let Some(hole) = facts.number(f::HOLE) {
        sheet.step(HOLE, hole);
    }
}
