//! Base plates under a moment, three ways: rectangular block, triangular block, cracked elastic section.

use alloc::vec;

use super::documents::{AISC_DG1, BLODGETT};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Detail, Sheet, StepId, number, steps};

steps! { 156 "base plate";
    P "P" Force (INPUT "" Derived) "Compression; uplift is negative": Given;
    M "M" Moment (INPUT "" Derived) "Moment": Given;
    N "N" Length (INPUT "" Derived) "Length of the plate along the moment": Given;
    B "B" Length (INPUT "" Derived) "Width of the plate": Given;
    E "e" Length (STATICS "" Derived) "Eccentricity" = "M / P";
    F_PB "f_p" Stress (AISC_DG1 "2nd ed., 3.3.1" Memory) "Bearing pressure that is available": Given;
    Q_MAX "q" Stiffness (AISC_DG1 "2nd ed., 3.3.2" Memory) "The same over the width, per length" = "f_p * B";
    E_CRIT "e_crit" Length (AISC_DG1 "2nd ed., 3.3.2" Memory) "Eccentricity up to which no rod pulls" = "N / 2 - P / (2 * q)";
    Y_SMALL "Y" Length (AISC_DG1 "2nd ed., 3.3.2" Memory) "Length in bearing" = "N - 2 * e";
    Q_ACT "q_y" Stiffness (AISC_DG1 "2nd ed., 3.3.2" Memory) "Bearing per length over it" = "P / Y";
    F_ACT "f_y" Stress (AISC_DG1 "2nd ed., 3.3.2" Memory) "Bearing pressure over it" = "P / (Y * B)";
    F_ROD "f" Length (INPUT "" Derived) "From the middle of the plate to the rods": Given;
    Y_LARGE "Y" Length (AISC_DG1 "2nd ed., 3.4.2" Memory) "Length in bearing" = "f + N / 2 - sqrt((f + N / 2)^2 - 2 * (M + P * f) / q)";
    T_LARGE "T" Force (AISC_DG1 "2nd ed., 3.4.2" Memory) "Pull of the rods" = "q * Y - P";
    D_COL "d" Length (INPUT "" Derived) "Depth of the column": Given;
    B_F "b_f" Length (INPUT "" Derived) "Width of its flange": Given;
    M_OUT "m" Length (AISC_DG1 "2nd ed., 3.1.2" Memory) "Overhang of the plate along the depth" = "(N - 0.95 * d) / 2";
    N_OUT "n" Length (AISC_DG1 "2nd ed., 3.1.2" Memory) "Overhang of the plate along the flange" = "(B - 0.8 * b_f) / 2";
    F_Y "F_y" Stress (INPUT "" Derived) "Yield strength of the plate": Given;
    T_M "t_m" Length (AISC_DG1 "2nd ed., 3.3.2" Memory) "Thickness for the overhang m; 1.5 is 1.4907 rounded" = "1.5 * m * sqrt(f_y / F_y)";
    T_N "t_n" Length (AISC_DG1 "2nd ed., 3.3.2" Memory) "Thickness for the overhang n" = "1.5 * n * sqrt(f_y / F_y)";
    T_MY "t_m" Length (AISC_DG1 "2nd ed., 3.4.3" Memory) "Thickness for the overhang m where the bearing is shorter" = "2.11 * sqrt(f_p * Y * (m - Y / 2) / F_y)";
    X_T "x" Length (AISC_DG1 "2nd ed., 3.4.3" Memory) "From the rods to the middle of the flange in tension": Given;
    T_T "t_t" Length (AISC_DG1 "2nd ed., 3.4.3" Memory) "Thickness for the pull of the rods" = "2.11 * sqrt(T * x / (B * F_y))";
    F_C "f'_c" Stress (INPUT "" Derived) "Strength of the concrete": Given;
    A_REQ "A_1" Area (AISC_DG1 "2nd ed., 3.1.1" Memory) "Area that is needed without confinement" = "P / (0.65 * 0.85 * f'_c)";
    P_P "P_d" Force (AISC_DG1 "2nd ed., 3.1.1" Memory) "Design bearing strength without confinement" = "0.65 * 0.85 * f'_c * N * B";
    X_L "X" Number (AISC_DG1 "2nd ed., 3.1.2" Memory) "Load over strength for the lines between the flanges" = "4 * d * b_f / (d + b_f)^2 * P / P_d";
    LAMBDA "lambda" Number (AISC_DG1 "2nd ed., 3.1.2" Memory) "Factor of those lines" = "min(1, 2 * sqrt(X) / (1 + sqrt(1 - X)))";
    N_PRIME "n_l" Length (AISC_DG1 "2nd ed., 3.1.2" Memory) "Overhang between the flanges" = "lambda * sqrt(d * b_f) / 4";
    L_MAX "l" Length (AISC_DG1 "2nd ed., 3.1.2" Memory) "Largest overhang" = "max(m, n, n_l)";
    T_L "t" Length (AISC_DG1 "2nd ed., 3.1.2" Memory) "Thickness of the plate" = "l * sqrt(2 * P / (0.9 * F_y * B * N))";
    F_P1 "F_p" Stress (AISC_DG1 "1st ed." Memory) "Bearing pressure at the edge": Given;
    N_ROD "N'" Length (INPUT "" Derived) "From the rods to the compressed edge": Given;
    A_ROD "A'" Length (INPUT "" Derived) "From the rods to the middle of the column": Given;
    F_PRIME "f'" Force (AISC_DG1 "1st ed." Memory) "Auxiliary force" = "F_p * B * N' / 2";
    A_BLOCK "A" Length (AISC_DG1 "1st ed." Memory) "Length of the triangular block" = "(f' - sqrt(f'^2 - 4 * (F_p * B / 6) * (P * A' + M))) / (F_p * B / 3)";
    T_BLOCK "T" Force (AISC_DG1 "1st ed." Memory) "Pull of the rods" = "F_p * A * B / 2 - P";
    N_E "n" Number (BLODGETT "3.3" Memory) "Modulus of steel over that of concrete": Given;
    A_S "A_s" Area (INPUT "" Derived) "Area of the rods": Given;
    K_1 "K_1" Length (BLODGETT "3.3" Memory) "First coefficient; a sheet in circulation prints e + N / 2 here, which strains do not fit" = "3 * (e - N / 2)";
    K_2 "K_2" Area (BLODGETT "3.3" Memory) "Second coefficient" = "6 * n * A_s * (f + e) / B";
    K_3 "K_3" Empirical { force: 0, length: 18 } (BLODGETT "3.3" Memory) "Third coefficient" = "-K_2 * (N / 2 + f)";
    Y_ROOT "Y" Length (BLODGETT "3.3" Memory) "Length in bearing: the root of Y^3 + K_1 Y^2 + K_2 Y + K_3 = 0": Solved;
    T_ROOT "T" Force (BLODGETT "3.3" Memory) "Pull of the rods" = "-P * (N / 2 - Y / 3 - e) / (N / 2 - Y / 3 + f)";
    F_EDGE "f_c" Stress (BLODGETT "3.3" Memory) "Pressure at the edge" = "2 * (P + T) / (Y * B)";
    S_ROD "f_s" Stress (STATICS "" Derived) "Stress of the rods" = "T / A_s";
    S_STRAIN "f_e" Stress (STATICS "plane sections" Derived) "The same by the strain of the section: it must be equal" = "n * f_c * (N / 2 + f - Y) / Y";
    SMALL_PLATE "" Number (AISC_DG1 "2nd ed., 3.4" Memory) "the plate is too small: the pressure that is available cannot balance load and moment": Reason;
    ALL_PULLED "" Number (AISC_DG1 "3rd ed., 4.3.8" Secondary) "the uplift acts between the rods: all of them pull, and nothing bears": Reason;
    NO_ROOT "" Number (AISC_DG1 "1st ed." Memory) "the triangular block has no real length: the plate is too small": Reason;
    NO_PULL "" Number (BLODGETT "3.3" Memory) "the eccentricity is within a sixth of the plate: no rod pulls and the cubic is not needed": Reason;
}

/// A plate with its load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BasePlate {
    /// Compression.
    pub load: f64,
    /// Moment.
    pub moment: f64,
    /// Length along the moment.
    pub length: f64,
    /// Width.
    pub width: f64,
}

/// The column on it and the yield strength of the plate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Column {
    /// Depth.
    pub depth: f64,
    /// Width of the flange.
    pub flange: f64,
    /// Yield strength of the plate.
    pub yields: f64,
}

/// Length in bearing and pull of the rods.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Block {
    /// Length in bearing.
    pub bearing: f64,
    /// Pull of the rods together.
    pub pull: f64,
}

impl BasePlate {
    fn tell_sides(&self, sheet: &mut Sheet) {
        sheet.step(P, self.load);
        sheet.step(M, self.moment);
        sheet.step(N, self.length);
        sheet.step(B, self.width);
    }

    fn tell(&self, sheet: &mut Sheet) -> f64 {
        self.tell_sides(sheet);
        sheet.step(E, self.moment / self.load)
    }

    /// The rectangular block (2nd edition): `pressure` is phi 0.85 f'c with its confinement, `rods` their distance.
    ///
    /// A load of nothing leaves the moment alone; an uplift is a negative load.
    ///
    /// Errors: the plate is too small; the uplift acts so near to the middle that all rods pull.
    pub fn rectangular(&self, pressure: f64, rods: f64, sheet: &mut Sheet) -> Result<Block, StepId> {
        self.tell_sides(sheet);
        let pressure = sheet.step(F_PB, pressure);
        let q = sheet.step(Q_MAX, pressure * self.width);
        if self.load > 0.0 {
            let e = sheet.step(E, self.moment / self.load);
            let critical = sheet.step(E_CRIT, self.length / 2.0 - self.load / (2.0 * q));
            if e <= critical {
                let y = sheet.step(Y_SMALL, self.length - 2.0 * e);
                sheet.step(Q_ACT, self.load / y);
                sheet.step(F_ACT, self.load / (y * self.width));
                return Ok(Block { bearing: y, pull: 0.0 });
            }
        }
        let f = sheet.step(F_ROD, rods);
        let turned = self.moment + self.load * f;
        if !(turned > 0.0) {
            return Err(ALL_PULLED);
        }
        let far = f + self.length / 2.0;
        let left = number::pow(far, 2.0) - 2.0 * turned / q;
        if !(left >= 0.0) {
            return Err(SMALL_PLATE);
        }
        let y = sheet.step(Y_LARGE, far - number::sqrt(left));
        Ok(Block { bearing: y, pull: sheet.step(T_LARGE, q * y - self.load) })
    }

    /// Thickness of the plate under that block; `flange` is the distance from the rods to the flange in tension.
    pub fn thickness(&self, column: &Column, block: &Block, pressure: f64, flange: f64, sheet: &mut Sheet) -> f64 {
        let d = sheet.step(D_COL, column.depth);
        let b_f = sheet.step(B_F, column.flange);
        let m = sheet.step(M_OUT, (self.length - 0.95 * d) / 2.0);
        let n = sheet.step(N_OUT, (self.width - 0.8 * b_f) / 2.0);
        let yields = sheet.step(F_Y, column.yields);
        let y = block.bearing;
        let mut most = if block.pull > 0.0 && y < m {
            sheet.step(T_MY, 2.11 * number::sqrt(pressure * y * (m - y / 2.0) / yields))
        } else {
            let acting = if block.pull > 0.0 { pressure } else { self.load / (y * self.width) };
            sheet.carry(F_ACT, acting);
            sheet
                .step(T_M, 1.5 * m * number::sqrt(acting / yields))
                .max(sheet.step(T_N, 1.5 * n * number::sqrt(acting / yields)))
        };
        if block.pull > 0.0 {
            let x = sheet.step(X_T, flange);
            most = most.max(sheet.step(T_T, 2.11 * number::sqrt(block.pull * x / (self.width * yields))));
        }
        most
    }

    /// A plate under compression alone on concrete without confinement: the area that it needs, and its thickness.
    pub fn concentric(&self, column: &Column, strength: f64, sheet: &mut Sheet) -> [f64; 2] {
        self.tell(sheet);
        let strength = sheet.step(F_C, strength);
        let area = sheet.step(A_REQ, self.load / (0.65 * 0.85 * strength));
        let bearing = sheet.step(P_P, 0.65 * 0.85 * strength * self.length * self.width);
        let d = sheet.step(D_COL, column.depth);
        let b_f = sheet.step(B_F, column.flange);
        let m = sheet.step(M_OUT, (self.length - 0.95 * d) / 2.0);
        let n = sheet.step(N_OUT, (self.width - 0.8 * b_f) / 2.0);
        let x = sheet.step(X_L, 4.0 * d * b_f / number::pow(d + b_f, 2.0) * self.load / bearing);
        let root = number::sqrt(number::positive_part(1.0 - x));
        let lambda = sheet.step(LAMBDA, f64::min(1.0, 2.0 * number::sqrt(x) / (1.0 + root)));
        let between = sheet.step(N_PRIME, lambda * number::sqrt(d * b_f) / 4.0);
        let most = sheet.step(L_MAX, f64::max(m, f64::max(n, between)));
        let yields = sheet.step(F_Y, column.yields);
        let strength = 0.9 * yields * self.width * self.length;
        [area, sheet.step(T_L, most * number::sqrt(2.0 * self.load / strength))]
    }

    /// The triangular block (1st edition): edge pressure, distance of the rods from the compressed edge and the middle.
    ///
    /// Errors: no real length.
    pub fn triangular(&self, pressure: f64, rods: [f64; 2], sheet: &mut Sheet) -> Result<Block, StepId> {
        self.tell(sheet);
        let pressure = sheet.step(F_P1, pressure);
        let to_edge = sheet.step(N_ROD, rods[0]);
        let to_middle = sheet.step(A_ROD, rods[1]);
        let auxiliary = sheet.step(F_PRIME, pressure * self.width * to_edge / 2.0);
        let turned = self.load * to_middle + self.moment;
        let left = number::pow(auxiliary, 2.0) - 4.0 * (pressure * self.width / 6.0) * turned;
        if !(left >= 0.0) {
            return Err(NO_ROOT);
        }
        let block = sheet.step(A_BLOCK, (auxiliary - number::sqrt(left)) / (pressure * self.width / 3.0));
        let pull = sheet.step(T_BLOCK, pressure * block * self.width / 2.0 - self.load);
        Ok(Block { bearing: block, pull })
    }

    /// The cracked elastic section: distance of the rods from the middle, ratio of moduli, area of the rods.
    ///
    /// Errors: no rod pulls.
    pub fn elastic(&self, rods: &Rods, sheet: &mut Sheet) -> Result<Block, StepId> {
        let e = self.tell(sheet);
        if e <= self.length / 6.0 {
            return Err(NO_PULL);
        }
        let n = sheet.step(N_E, rods.modular_ratio);
        let area = sheet.step(A_S, rods.area);
        let f = sheet.step(F_ROD, rods.from_middle);
        let k_1 = sheet.step(K_1, 3.0 * (e - self.length / 2.0));
        let k_2 = sheet.step(K_2, 6.0 * n * area * (f + e) / self.width);
        let k_3 = sheet.step(K_3, -k_2 * (self.length / 2.0 + f));
        let y = root(k_1, k_2, k_3, self.length / 2.0 + f);
        let residual = cubic(k_1, k_2, k_3, y) / k_3;
        sheet.detailed(Y_ROOT, y, || Detail::Residuals(vec![residual]));
        let half = self.length / 2.0;
        let pull = sheet.step(T_ROOT, -self.load * (half - y / 3.0 - e) / (half - y / 3.0 + f));
        let edge = sheet.step(F_EDGE, 2.0 * (self.load + pull) / (y * self.width));
        sheet.step(S_ROD, pull / area);
        sheet.step(S_STRAIN, n * edge * (half + f - y) / y);
        Ok(Block { bearing: y, pull })
    }
}

/// The rods of a plate that is treated as a cracked elastic section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rods {
    /// Modulus of steel over that of concrete.
    pub modular_ratio: f64,
    /// Their area together.
    pub area: f64,
    /// From the middle of the plate to them.
    pub from_middle: f64,
}

fn cubic(k_1: f64, k_2: f64, k_3: f64, y: f64) -> f64 {
    ((y + k_1) * y + k_2) * y + k_3
}

/// The root of the cubic between 0, where it is negative, and the depth of the rods, where strains leave it positive.
fn root(k_1: f64, k_2: f64, k_3: f64, deepest: f64) -> f64 {
    let (mut low, mut high) = (0.0, deepest);
    while cubic(k_1, k_2, k_3, high) < 0.0 && high < 1e3 * deepest {
        high *= 2.0;
    }
    for _ in 0..200 {
        let middle = (low + high) / 2.0;
        if cubic(k_1, k_2, k_3, middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    (low + high) / 2.0
}
