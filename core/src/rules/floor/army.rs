//! Stationary live loads and wall loads of the Army manual (UFC 3-320-06A, formerly TM 5-809-12).

use alloc::vec;

use super::documents::UFC_3_320_06A;
use crate::calc::clause::INPUT;
use crate::calc::{Detail, Sheet, StepId, limit, number, steps};

steps! { 146 "Army tables";
    F_R "f_r" Stress (INPUT "floor" Derived) "Flexural strength of the concrete at 28 days": Given;
    S "s" Stress (UFC_3_320_06A "Table 3-1" Memory) "Stress that is allowed: half of it" = "f_r / 2";
    E "E" Stress (UFC_3_320_06A "Table 3-1" Memory) "Modulus of elasticity that the table takes": Constant;
    H "h" Length (INPUT "slab" Derived) "Thickness of the slab": Given;
    K "k_s" Subgrade (INPUT "floor" Derived) "Modulus of subgrade reaction": Given;
    W "w" AreaLoad (UFC_3_320_06A "Table 3-1" Memory) "Stationary live load that is allowed" = "257.876 / 144 * s * sqrt(k_s * h / E)";
    T_E "t_e" Length (INPUT "slab" Derived) "Thickness of the slab under the wall": Given;
    K_R "k_r" Empirical { force: 3, length: -6 } (UFC_3_320_06A "Table 3-2" Memory) "Flexural strength over the root of the compressive strength": Constant;
    R_F "r_f" Empirical { force: 3, length: -6 } (UFC_3_320_06A "Table 3-2" Memory) "Root of the compressive strength" = "f_r / k_r";
    K_T "k_t" Number (UFC_3_320_06A "3-3" Published) "Allowed tension over that root": Constant;
    K_RT "k_rt" Empirical { force: 3, length: -6 } (UFC_3_320_06A "" Memory) "Unit of the root, one root of a psi": Constant;
    S_T "sigma_t" Stress (UFC_3_320_06A "3-3" Published) "Allowed tension" = "k_t * k_rt * r_f";
    K_M "k_m" Number (UFC_3_320_06A "Table 3-2" Memory) "Modulus of elasticity over that root": Constant;
    E_W "E" Stress (UFC_3_320_06A "Table 3-2" Memory) "Modulus of elasticity that the wall table takes" = "k_m * k_rt * r_f";
    P_W "P_w" LineLoad (UFC_3_320_06A "Table 3-2" Memory) "Wall load per length that is allowed in the middle of a slab, by the formula behind the table" = "4 / 6 * sigma_t * t_e^2 * (3 * k_s / (E * t_e^3))^(1 / 4)";
    P_W_EDGE "P_w" LineLoad (UFC_3_320_06A "Table 3-3" Memory) "Wall load per length that is allowed at a free edge" = "3.103 / 6 * sigma_t * t_e^2 * (3 * k_s / (E * t_e^3))^(1 / 4)";
    P_100 "P_100" LineLoad (UFC_3_320_06A "Table 3-2" Secondary) "Wall load of the table, for a subgrade of 100 lbf/in3": Interpolated;
    C_K "c_k" Number (UFC_3_320_06A "Table 3-2, note" Secondary) "Factor of the table on the thickness for this subgrade": Interpolated;
    OUTSIDE "" Number (UFC_3_320_06A "Table 3-2" Secondary) "the table of wall loads reaches slabs of 4 to 10 in. (102 to 254 mm), flexural strengths of 550 to 700 psi (3.79 to 4.83 MPa) and subgrades of 25 to 300 lbf/in3 (0.0068 to 0.081 N/mm3)": Reason;
    OUTSIDE_LIVE "" Number (UFC_3_320_06A "Table 3-1" Memory) "the table of stationary loads reaches slabs of 6 to 20 in. (152 to 508 mm) and subgrades of 25 to 300 lbf/in3 (0.0068 to 0.081 N/mm3)": Reason;
}

/// The modulus of elasticity of Table 3-1, in psi.
const MODULUS_PSI: f64 = 4e6;

/// A slab as the manual's tables take it, in pounds and inches.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ArmySlab {
    /// Flexural strength.
    pub flexural_psi: f64,
    /// Thickness.
    pub thickness_in: f64,
    /// Modulus of subgrade reaction, lbf/in3.
    pub subgrade_pci: f64,
}

/// Table 3-2, lbf per ft, by thickness in inches (4 to 10) and flexural strength (550 to 700 psi).
pub static WALLS: [[f64; 4]; 7] = [
    [425.0, 455.0, 485.0, 510.0],
    [565.0, 600.0, 640.0, 675.0],
    [710.0, 755.0, 805.0, 850.0],
    [860.0, 920.0, 975.0, 1030.0],
    [1015.0, 1080.0, 1150.0, 1215.0],
    [1175.0, 1255.0, 1330.0, 1410.0],
    [1340.0, 1430.0, 1520.0, 1605.0],
];
/// Subgrade and the factor on the thickness that it asks for.
pub static WALL_SUBGRADES: [[f64; 2]; 5] = [[25.0, 1.3], [50.0, 1.1], [100.0, 1.0], [200.0, 0.9], [300.0, 0.8]];

fn within(value: f64, least: f64, most: f64) -> bool {
    limit::at_least(value, least) && limit::at_most(value, most)
}

impl ArmySlab {
    /// The stationary live load of Table 3-1, psi, told in a section of US units.
    ///
    /// Errors: outside the table.
    pub fn stationary_psi(&self, sheet: &mut Sheet) -> Result<f64, StepId> {
        if !(within(self.thickness_in, 6.0, 20.0) && within(self.subgrade_pci, 25.0, 300.0)) {
            return Err(OUTSIDE_LIVE);
        }
        let strength = sheet.step(F_R, self.flexural_psi);
        let stress = sheet.step(S, strength / 2.0);
        let modulus = sheet.step(E, MODULUS_PSI);
        let h = sheet.step(H, self.thickness_in);
        let k = sheet.step(K, self.subgrade_pci);
        Ok(sheet.step(W, 257.876 / 144.0 * stress * number::sqrt(k * h / modulus)))
    }

    /// The wall load by the formula behind Table 3-2, lbf per in: in the middle of a slab and at a free edge.
    pub fn wall_by_formula(&self, sheet: &mut Sheet) -> [f64; 2] {
        let strength = sheet.step(F_R, self.flexural_psi);
        let t = sheet.step(T_E, self.thickness_in);
        let k = sheet.step(K, self.subgrade_pci);
        let nine = sheet.step(K_R, 9.0);
        let root = sheet.step(R_F, strength / nine);
        let unit = sheet.step(K_RT, 1.0);
        let tension = sheet.step(K_T, 1.6);
        let tension = sheet.step(S_T, tension * unit * root);
        let modulus = sheet.step(K_M, 57_000.0);
        let modulus = sheet.step(E_W, modulus * unit * root);
        let slender = number::pow(3.0 * k / (modulus * number::pow(t, 3.0)), 0.25);
        let middle = sheet.step(P_W, 4.0 / 6.0 * tension * number::pow(t, 2.0) * slender);
        [middle, sheet.step(P_W_EDGE, 3.103 / 6.0 * tension * number::pow(t, 2.0) * slender)]
    }

    /// The wall load of Table 3-2 as printed, lbf per in, and the factor that the subgrade puts on the thickness.
    ///
    /// Errors: outside the table.
    pub fn wall_by_table(&self, sheet: &mut Sheet) -> Result<[f64; 2], StepId> {
        let is_inside = within(self.thickness_in, 4.0, 10.0)
            && within(self.flexural_psi, 550.0, 700.0)
            && within(self.subgrade_pci, 25.0, 300.0);
        if !is_inside {
            return Err(OUTSIDE);
        }
        let (row, along) = place((self.thickness_in - 4.0).clamp(0.0, 6.0), WALLS.len());
        let (column, across) = place(((self.flexural_psi - 550.0) / 50.0).clamp(0.0, 3.0), 4);
        let at = |row: usize| WALLS[row][column] + across * (WALLS[row][column + 1] - WALLS[row][column]);
        let (low, high) = (at(row) / 12.0, at(row + 1) / 12.0);
        let thickness = |row: usize| 4.0 + row as f64;
        let rows = || Detail::Rows(vec![[thickness(row), low], [thickness(row + 1), high]]);
        let load = sheet.detailed(P_100, low + along * (high - low), rows);
        let pair = WALL_SUBGRADES.windows(2).find(|pair| limit::at_most(self.subgrade_pci, pair[1][0]));
        let [from, to] = pair.map_or([WALL_SUBGRADES[0]; 2], |pair| [pair[0], pair[1]]);
        let part = ((self.subgrade_pci - from[0]) / (to[0] - from[0])).clamp(0.0, 1.0);
        let factor = from[1] + part * (to[1] - from[1]);
        Ok([load, sheet.detailed(C_K, factor, || Detail::Rows(vec![from, to]))])
    }
}

/// The lower of two neighbouring places and how far beyond it.
fn place(at: f64, count: usize) -> (usize, f64) {
    let lower = (number::floor(at) as usize).min(count - 2);
    (lower, at - lower as f64)
}
