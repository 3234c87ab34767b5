//! The earthquake test of telecommunications equipment, zones 0 to 4 as they are publicly known.
//!
//! Floor motion of an upper storey at 2 % damping; straight lines on logarithmic axes between 0.3 and 50 Hz. The zones are the
//! document's own and no demand of a building code. Three axes, one at a time, with the same spectrum.

use alloc::vec;

use super::documents::GR_63;
use crate::calc::clause::STATICS;
use crate::calc::number::{ln, pow};
use crate::calc::{Detail, Sheet, StepId, limit, steps};

steps! { 133 "telecom";
    F "f" Frequency (STATICS "" Derived) "Frequency": Given;
    F_1 "f_1" Frequency (GR_63 "required response spectrum" Memory) "Knot of the zone at or below it": Table;
    A_1 "a_1" Acceleration (GR_63 "required response spectrum" Memory) "Acceleration at that knot": Table;
    F_2 "f_2" Frequency (GR_63 "required response spectrum" Memory) "Next knot": Table;
    A_2 "a_2" Acceleration (GR_63 "required response spectrum" Memory) "Acceleration at the next knot": Table;
    BETWEEN "A_f" Acceleration (GR_63 "required response spectrum" Memory) "Required acceleration: a straight line on logarithmic axes" = "a_1 * (f / f_1)^(ln(a_2 / a_1) / ln(f_2 / f_1))";
    NO_TEST "zone" Number (GR_63 "zone 0" Memory) "zone 0 asks for no test": Reason;
    OUTSIDE "frequency" Number (GR_63 "required response spectrum" Memory) "the spectrum begins at 0.3 Hz and ends at 50 Hz": Reason;
}

/// A knot of a spectrum: frequency in Hz, acceleration in g.
pub type Knot = [f64; 2];

/// Zones 1 and 2, which share one spectrum.
pub static ZONE_1_2: &[Knot] = &[[0.3, 0.2], [0.6, 2.0], [5.0, 2.0], [15.0, 0.6], [50.0, 0.6]];
/// Zone 3.
pub static ZONE_3: &[Knot] = &[[0.3, 0.2], [0.6, 2.0], [1.0, 3.0], [5.0, 3.0], [15.0, 1.0], [50.0, 1.0]];
/// Zone 4.
pub static ZONE_4: &[Knot] = &[[0.3, 0.2], [0.6, 2.0], [2.0, 5.0], [5.0, 5.0], [15.0, 1.6], [50.0, 1.6]];

/// The required acceleration of a zone at a frequency, g; the reason outside of its spectrum.
pub fn at(zone: &[Knot], frequency_hz: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
    let f = sheet.step(F, frequency_hz);
    let last = zone.len() - 1;
    if limit::less(f, zone[0][0]) || limit::more(f, zone[last][0]) {
        sheet.step(OUTSIDE, 0.0);
        return Err(OUTSIDE);
    }
    let next = zone.iter().position(|knot| f <= knot[0]).unwrap_or(last).max(1);
    let ([f_1, a_1], [f_2, a_2]) = (zone[next - 1], zone[next]);
    sheet.step(F_1, f_1);
    sheet.detailed(A_1, a_1, || Detail::Rows(vec![[f_1, a_1]]));
    sheet.step(F_2, f_2);
    sheet.detailed(A_2, a_2, || Detail::Rows(vec![[f_2, a_2]]));
    Ok(sheet.step(BETWEEN, a_1 * pow(f / f_1, ln(a_2 / a_1) / ln(f_2 / f_1))))
}

/// Tells why there is no spectrum in zone 0.
pub fn no_test(sheet: &mut Sheet) -> StepId {
    sheet.step(NO_TEST, 0.0);
    NO_TEST
}
