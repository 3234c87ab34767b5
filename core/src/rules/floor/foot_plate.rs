//! Bending of a foot's plate, the thickness that it needs, and spreader plates sized for a wanted pressure.

use super::documents::{AISC_360_16, EN_1993_1_8};
use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::{Sheet, StepId, number, steps};

steps! { 150 "foot plate";
    Q "q" Pressure (STATICS "force over area" Derived) "Mean pressure under the plate": Given;
    B "B" Length (INPUT "cabinet" Derived) "Side of the plate": Given;
    D_ROUND "D" Length (INPUT "floor" Derived) "Diameter of the round plate": Given;
    B_ROUND "B" Length (PRACTICE "square of equal area" Memory) "Side of a square of the same area" = "0.886 * D";
    D_STEM "d_s" Length (INPUT "floor" Derived) "Diameter of the stem": Given;
    C_FIXED "c" Length (STATICS "cantilever" Derived) "Overhang of the plate beside a stem that is fixed to it" = "(B - d_s) / 2";
    C_SWIVEL "c" Length (PRACTICE "line at 0.8 of the stem's diameter" Memory) "Overhang of the plate beside a stem on a swivel" = "(B - 0.8 * d_s) / 2";
    F_Y "F_y" Stress (INPUT "floor" Derived) "Yield strength of the plate": Given;
    T_EN "t" Length (EN_1993_1_8 "6.2.5(4)" Memory) "Thickness that the plate needs, limit states, gamma_M0 = 1" = "c * sqrt(3 * q / F_y)";
    T_LRFD "t" Length (AISC_360_16 "F11, elastic line" Memory) "Thickness that the plate needs, strength design" = "c * sqrt(2 * q / (0.9 * F_y))";
    T_ASD "t" Length (AISC_360_16 "F11, elastic line" Memory) "Thickness that the plate needs, allowable stress" = "c * sqrt(3.34 * q / F_y)";
    P "P" Force (INPUT "" Derived) "Load on the plate": Given;
    Q_WANTED "q_w" Pressure (INPUT "floor" Derived) "Pressure that is wanted": Given;
    B_SPREAD "B_s" Length (STATICS "area over pressure" Derived) "Side of the square spreader plate that gives it" = "sqrt(P / q_w)";
    B_FOOT "b_f" Length (INPUT "cabinet" Derived) "Side of the foot on the spreader plate": Given;
    C_SPREAD "c" Length (STATICS "cantilever" Derived) "Overhang of the spreader plate beside the foot" = "(B_s - b_f) / 2";
    T_SPREAD "t_s" Length (AISC_360_16 "F11, elastic line" Memory) "Thickness that the spreader plate needs, strength design" = "c * sqrt(2 * q_w / (0.9 * F_y))";
    T_SPREAD_EN "t_s" Length (EN_1993_1_8 "6.2.5(4)" Memory) "Thickness that the spreader plate needs, limit states" = "c * sqrt(3 * q_w / F_y)";
    T_SPREAD_ASD "t_s" Length (AISC_360_16 "F11, elastic line" Memory) "Thickness that the spreader plate needs, allowable stress" = "c * sqrt(3.34 * q_w / F_y)";
    SMALLER "" Number (STATICS "" Derived) "the foot alone gives no more than the wanted pressure: no spreader plate is needed": Reason;
    NO_STEM "" Number (INPUT "cabinet.feet" Derived) "no stem is given, so it is not known where the plate of the foot is held": Reason;
    WIDE_STEM "" Number (INPUT "cabinet.feet" Derived) "the stem is as wide as the plate: nothing overhangs": Reason;
}

/// In which format the plate is checked.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum PlateFormat {
    /// Strength design.
    Strength,
    /// Limit states.
    LimitStates,
    /// Allowable stress.
    AllowableStress,
}

/// How the stem meets the plate.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stem {
    /// Fixed to it.
    Fixed,
    /// By a ball or a swivel.
    Swivel,
}

/// The plate of a foot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FootPlate {
    /// Longer side, or the diameter of a round plate.
    pub side_mm: f64,
    /// Whether it is round.
    pub shape: PlateShape,
    /// Diameter of the stem.
    pub stem_mm: f64,
    /// How the stem meets it.
    pub stem: Stem,
    /// Yield strength.
    pub yield_mpa: f64,
}

/// Square or round.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum PlateShape {
    /// Rectangular, by its longer side.
    Square,
    /// Round.
    Round,
}

impl FootPlate {
    /// The thickness that the plate needs under a mean pressure.
    ///
    /// Errors: a stem as wide as the plate.
    pub fn thickness_mm(&self, pressure_mpa: f64, format: PlateFormat, sheet: &mut Sheet) -> Result<f64, StepId> {
        let q = sheet.step(Q, pressure_mpa);
        let side = match self.shape {
            PlateShape::Square => sheet.step(B, self.side_mm),
            PlateShape::Round => {
                let diameter = sheet.step(D_ROUND, self.side_mm);
                sheet.step(B_ROUND, 0.886 * diameter)
            }
        };
        let stem = sheet.step(D_STEM, self.stem_mm);
        let overhang = match self.stem {
            Stem::Fixed => sheet.step(C_FIXED, (side - stem) / 2.0),
            Stem::Swivel => sheet.step(C_SWIVEL, (side - 0.8 * stem) / 2.0),
        };
        if !(overhang > 0.0) {
            return Err(WIDE_STEM);
        }
        let yields = sheet.step(F_Y, self.yield_mpa);
        Ok(needed(overhang, q, yields, format, [T_LRFD, T_EN, T_ASD], sheet))
    }
}

fn needed(c: f64, q: f64, f_y: f64, format: PlateFormat, rows: [StepId; 3], sheet: &mut Sheet) -> f64 {
    match format {
        PlateFormat::Strength => sheet.step(rows[0], c * number::sqrt(2.0 * q / (0.9 * f_y))),
        PlateFormat::LimitStates => sheet.step(rows[1], c * number::sqrt(3.0 * q / f_y)),
        PlateFormat::AllowableStress => sheet.step(rows[2], c * number::sqrt(3.34 * q / f_y)),
    }
}

/// A load on a foot that a spreader plate is to bring down to a wanted pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// The load.
    pub load_n: f64,
    /// The pressure that is wanted.
    pub wanted_mpa: f64,
    /// Side of the foot on it.
    pub foot_mm: f64,
    /// Yield strength of the plate.
    pub yield_mpa: f64,
}

impl Spread {
    /// Side and thickness of the square plate.
    ///
    /// Errors: the foot alone is wide enough.
    pub fn plate_mm(&self, format: PlateFormat, sheet: &mut Sheet) -> Result<[f64; 2], StepId> {
        let load = sheet.step(P, self.load_n);
        let wanted = sheet.step(Q_WANTED, self.wanted_mpa);
        let side = sheet.step(B_SPREAD, number::sqrt(load / wanted));
        let foot = sheet.step(B_FOOT, self.foot_mm);
        if side <= foot {
            return Err(SMALLER);
        }
        let overhang = sheet.step(C_SPREAD, (side - foot) / 2.0);
        let yields = sheet.step(F_Y, self.yield_mpa);
        let rows = [T_SPREAD, T_SPREAD_EN, T_SPREAD_ASD];
        Ok([side, needed(overhang, wanted, yields, format, rows, sheet)])
    }
}
