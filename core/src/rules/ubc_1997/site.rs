//! From zone, soil and source to the seismic coefficient: UBC 1997 Tables 16-I, 16-Q and 16-S.

use alloc::vec;

use super::{fields, steps};
use crate::calc::{Detail, Sheet, StepId, limit};
use crate::input::Values;
use crate::rules::table::Table;

/// C_a, given or from the tables; the reason where they have none.
pub fn c_a(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    if let Some(c_a) = values.number(fields::C_A) {
        return Ok(sheet.step(steps::C_A_GIVEN, c_a));
    }
    let zone = values.choice(fields::ZONE).unwrap_or(ZONE_4);
    let soil = values.choice(fields::SOIL).unwrap_or(SOIL_D);
    sheet.step(ZONE_NAMES[zone], 0.0);
    let z = sheet.step(steps::Z, Z[zone]);
    sheet.step(SOIL_NAMES[soil], 0.0);
    let Some(row) = C_A.get(soil) else { return Err(steps::NOT_SOIL_F) };
    let of_table = row[zone];
    let id = match zone {
        ZONE_4 => steps::C_4,
        1 | 2 => steps::C_A_ZONE_2,
        _ => steps::C_A_ZONE_1_3,
    };
    sheet.detailed(id, of_table, || Detail::Rows(vec![[z, of_table]]));
    if zone != ZONE_4 {
        return Ok(of_table);
    }
    let n_a = near_source(values, sheet)?;
    Ok(sheet.step(steps::C_A_ZONE_4, of_table * n_a))
}

/// Whether the site is in zone 2A or higher; where only C_a is given, whether no soil of zone 1 has as much.
pub fn is_zone_2_or_higher(values: &Values, c_a: f64) -> bool {
    match values.choice(fields::ZONE) {
        Some(zone) => zone != ZONE_1,
        None => C_A.iter().all(|row| limit::more(c_a, row[ZONE_1])),
    }
}

/// N_a of Table 16-S.
fn near_source(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    let (name, table) = match values.choice(fields::SOURCE) {
        Some(SOURCE_A) => (steps::SOURCE_A, &N_A_OF_A),
        Some(SOURCE_B) => (steps::SOURCE_B, &N_A_OF_B),
        Some(_) => return Ok(sheet.step(steps::N_A_C, 1.0)),
        None => return Err(steps::NOT_SOURCE),
    };
    sheet.step(name, 0.0);
    let Some(distance_km) = values.number(fields::DISTANCE) else { return Err(steps::NOT_SOURCE) };
    sheet.step(steps::DISTANCE, distance_km);
    Ok(table.read(distance_km, steps::N_A, sheet))
}

// Places of the words of the fields `zone`, `soil_profile` and `seismic_source`.
const ZONE_1: usize = 0;
pub const ZONE_4: usize = 4;
const SOIL_D: usize = 3;
const SOURCE_A: usize = 0;
const SOURCE_B: usize = 1;
pub const SOURCE_C: usize = 2;

/// Table 16-I, by zone.
static Z: [f64; 5] = [0.075, 0.15, 0.20, 0.30, 0.40];

/// Table 16-Q, by soil and zone; zone 4 is to be multiplied by N_a. S_F has no row.
static C_A: [[f64; 5]; 5] = [
    [0.06, 0.12, 0.16, 0.24, 0.32],
    [0.08, 0.15, 0.20, 0.30, 0.40],
    [0.09, 0.18, 0.24, 0.33, 0.40],
    [0.12, 0.22, 0.28, 0.36, 0.44],
    [0.19, 0.30, 0.34, 0.36, 0.36],
];

/// Table 16-S by distance in km.
static N_A_OF_A: Table = Table { arguments: &[2.0, 5.0, 10.0], values: &[1.5, 1.2, 1.0] };
static N_A_OF_B: Table = Table { arguments: &[2.0, 5.0, 10.0], values: &[1.3, 1.0, 1.0] };

static ZONE_NAMES: [StepId; 5] = [steps::ZONE_1, steps::ZONE_2A, steps::ZONE_2B, steps::ZONE_3, steps::ZONE_4];
static SOIL_NAMES: [StepId; 6] =
    [steps::SOIL_A, steps::SOIL_B, steps::SOIL_C, steps::SOIL_D, steps::SOIL_E, steps::SOIL_F];
