//! The practice's own statics of a box: the pull R_b and the shear Q of a bolt.

use super::facts::{Bolt, Facts};
use super::steps as s;
use super::stress::{Pulled, Statics};
use crate::calc::{CheckId, Part, Sheet, Subject, System};
use crate::rules::anchor::WholeLoad;

/// Bolts whose places differ by less stand in one row.
const ROW_MM: f64 = 1.0;

/// A box and its bolts along one axis, in the direction of the push.
#[derive(Clone, Copy)]
pub struct Span {
    /// Distance between the row that is pulled and the one about which it turns.
    pub span_mm: f64,
    /// From the row about which it turns to the centre of gravity.
    pub from_pivot_mm: f64,
    /// Height of the centre of gravity above the base, or below the plane of a hung box.
    pub height_mm: f64,
    /// Bolts in the pulled row.
    pub pulled: usize,
    /// All bolts.
    pub all: usize,
}

/// An axis of the plan and the sense of the push along it.
#[derive(Clone, Copy, PartialEq)]
pub enum Axis {
    /// To the right.
    Right,
    /// To the left.
    Left,
    /// To the rear.
    Rear,
    /// To the front.
    Front,
}

impl Axis {
    /// The axes with a part of a push, each with the sense that it has there.
    pub fn of(direction_rad: f64) -> impl Iterator<Item = Axis> {
        let (along, across) = (crate::calc::number::cos(direction_rad), crate::calc::number::sin(direction_rad));
        let sense = |part: f64, onward, back| match part {
            part if part > NOTHING => Some(onward),
            part if part < -NOTHING => Some(back),
            _ => None,
        };
        [sense(along, Axis::Right, Axis::Left), sense(across, Axis::Rear, Axis::Front)].into_iter().flatten()
    }

    fn along(self, x_mm: f64, y_mm: f64) -> f64 {
        match self {
            Axis::Right => x_mm,
            Axis::Left => -x_mm,
            Axis::Rear => y_mm,
            Axis::Front => -y_mm,
        }
    }
}

/// A push across an axis leaves a rounding along it.
const NOTHING: f64 = 1e-9;

impl Span {
    /// The box along an axis; none where all bolts stand in one row across it.
    pub fn new(facts: &Facts, load: &WholeLoad, axis: Axis) -> Option<Span> {
        let place = |bolt: &Bolt| axis.along(bolt.at.x_mm, bolt.at.y_mm);
        let own = &facts.bolts[..facts.own];
        let pivot = own.iter().map(place).fold(f64::NEG_INFINITY, f64::max);
        let far = own.iter().map(place).fold(f64::INFINITY, f64::min);
        let span_mm = pivot - far;
        let height_mm = match facts.hung_at_mm {
            None => load.height_mm,
            Some(plane_mm) => plane_mm - load.height_mm,
        };
        (span_mm > ROW_MM).then_some(Span {
            span_mm,
            from_pivot_mm: pivot - axis.along(load.at.x_mm, load.at.y_mm),
            height_mm,
            pulled: own.iter().filter(|bolt| place(bolt) <= far + ROW_MM).count(),
            all: own.len(),
        })
    }

    /// Pull and shear of one bolt, told in a section of its own for a check.
    pub fn pulled(&self, load: &WholeLoad, is_hung: bool, check: CheckId, sheet: &mut Sheet) -> Pulled {
        sheet.open(Part::Anchors, Subject::Whole, Some(check), System::Si);
        let weight = sheet.carry(s::W, load.weight_n);
        let push = sheet.carry(s::F_H, load.horizontal_n);
        let height = sheet.carry(s::H_G, self.height_mm);
        let span = sheet.carry(s::L, self.span_mm);
        let row = sheet.carry(s::N_T, self.pulled as f64);
        let r_b = if is_hung {
            let down = sheet.carry(s::F_V_DOWN, -load.upward_n);
            let from_row = sheet.carry(s::L_G_HUNG, self.span_mm - self.from_pivot_mm);
            sheet.step(s::R_B_HUNG, (push * height + (weight + down) * (span - from_row)) / (span * row))
        } else {
            let up = sheet.carry(s::F_V, load.upward_n);
            let from_pivot = sheet.carry(s::L_G, self.from_pivot_mm);
            sheet.step(s::R_B, (push * height - (weight - up) * from_pivot) / (span * row))
        };
        let pull_n = if r_b > 0.0 { sheet.step(s::T_OWN, r_b) } else { 0.0 };
        let all = sheet.carry(s::N, self.all as f64);
        let shear_n = sheet.step(s::Q_OWN, push / all);
        Pulled { pull_n, shear_n, statics: Statics::Own }
    }
}
