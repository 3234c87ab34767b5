//! The modulus of subgrade reaction from a bearing ratio or a class of soil, where no plate test is at hand.
//!
//! All of these are correlations with a wide scatter; the radius of relative stiffness feels only the fourth root.

use alloc::vec;

use super::documents::{FAA, IRC_58, PCA};
use crate::calc::clause::{INPUT, PRACTICE};
use crate::calc::{Detail, Kind, Sheet, StepId, limit, number, steps};

steps! { 161 "subgrade";
    CBR "CBR" Number (INPUT "floor" Derived) "California bearing ratio, in per cent": Given;
    K_IRC "k_s" Subgrade (IRC_58 "table of k and CBR" Secondary) "Modulus of subgrade reaction, between the rows of the table": Interpolated;
    U_PCI "k_u" Subgrade (FAA "" Secondary) "Unit of the correlations, 1 lbf/in3": Constant;
    K_FAA "k_FAA" Subgrade (FAA "correlation" Secondary) "The same by the correlation of the FAA, to set beside it" = "(1500 * CBR / 26)^0.7788 * k_u";
    K_PCA "k_PCA" Subgrade (PCA "correlation" Secondary) "The same by the correlation of the PCA, to set beside it" = "53.438 * CBR^0.5719 * k_u";
    K_SOIL "k_s" Subgrade (PRACTICE "typical ranges by class of soil" Memory) "Modulus of subgrade reaction: the lower end of the range for this class of soil": Table;
    OUTSIDE "" Number (IRC_58 "" Secondary) "the table of subgrade modulus and bearing ratio reaches from 2 to 100 per cent": Reason;
}

/// IRC 58: bearing ratio in per cent, modulus in MPa per m.
pub static BEARING_RATIOS: [[f64; 2]; 10] = [
    [2.0, 21.0],
    [3.0, 28.0],
    [4.0, 35.0],
    [5.0, 42.0],
    [7.0, 48.0],
    [10.0, 55.0],
    [15.0, 62.0],
    [20.0, 69.0],
    [50.0, 140.0],
    [100.0, 220.0],
];

/// Typical ranges by the unified classes of soil, lbf/in3: fat clay, lean clay and silt, silty or clayey sand, clean sand,
/// silty or clayey gravel, clean gravel.
pub static SOILS: [[f64; 2]; 6] =
    [[25.0, 175.0], [50.0, 200.0], [150.0, 300.0], [200.0, 350.0], [250.0, 400.0], [450.0, 500.0]];

const MPA_PER_M: f64 = 1e-3;

/// From a bearing ratio in per cent, N per mm3.
///
/// Errors: outside the table.
pub fn by_bearing_ratio(percent: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
    if !(limit::at_least(percent, BEARING_RATIOS[0][0]) && limit::at_most(percent, BEARING_RATIOS[9][0])) {
        return Err(OUTSIDE);
    }
    let percent = sheet.step(CBR, percent);
    let pair = BEARING_RATIOS.windows(2).find(|pair| percent <= pair[1][0]).unwrap_or(&BEARING_RATIOS[8..10]);
    let [from, to] = [0, 1].map(|end| [pair[end][0], pair[end][1] * MPA_PER_M]);
    let part = number::positive_part((percent - from[0]) / (to[0] - from[0]));
    let found = from[1] + part * (to[1] - from[1]);
    let found = sheet.detailed(K_IRC, found, || Detail::Rows(vec![from, to]));
    let unit = sheet.step(U_PCI, crate::calc::unit::us_unit_in_si(Kind::Subgrade));
    sheet.step(K_FAA, number::pow(1500.0 * percent / 26.0, 0.7788) * unit);
    sheet.step(K_PCA, 53.438 * number::pow(percent, 0.5719) * unit);
    Ok(found)
}

/// From a class of soil, N per mm3: the lower end of its range.
pub fn by_soil(class: usize, sheet: &mut Sheet) -> f64 {
    let unit = crate::calc::unit::us_unit_in_si(Kind::Subgrade);
    let [low, high] = SOILS[class].map(|end| end * unit);
    sheet.detailed(K_SOIL, low, || Detail::Rows(vec![[0.0, low], [1.0, high]]))
}
