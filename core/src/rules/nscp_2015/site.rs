//! From zone, soil and source to the seismic coefficient of NSCP 2015.

use super::{fields, steps};
use crate::calc::{Sheet, StepId};
use crate::input::{Problem, Values};
use crate::rules::demand::Faults;
use crate::rules::table::Table;

/// C_a, given or from the tables; the reason where they have none.
pub fn c_a(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    if let Some(c_a) = values.number(fields::C_A) {
        return Ok(sheet.step(steps::C_A_GIVEN, c_a));
    }
    let zone = values.choice(fields::ZONE).unwrap_or(ZONE_4);
    let soil = values.choice(fields::SOIL).unwrap_or(SOIL_D);
    sheet.step(if zone == ZONE_4 { steps::ZONE_4 } else { steps::ZONE_2 }, 0.0);
    sheet.step(SOIL_NAMES[soil], 0.0);
    let &[zone_2, zone_4] = C_A.get(soil).ok_or(steps::NOT_SOIL_F)?;
    if zone != ZONE_4 {
        return Ok(sheet.step(steps::C_A_ZONE_2, zone_2));
    }
    let c_4 = sheet.step(steps::C_4, zone_4);
    let n_a = near_source(values, sheet)?;
    Ok(sheet.step(steps::C_A_ZONE_4, c_4 * n_a))
}

fn near_source(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    let (name, table) = match values.choice(fields::SOURCE) {
        Some(SOURCE_A) => (steps::SOURCE_A, &N_A_OF_A),
        Some(SOURCE_B) => (steps::SOURCE_B, &N_A_OF_B),
        Some(_) => return Ok(sheet.step(steps::N_A_C, 1.0)),
        None => return Err(steps::NOT_SOURCE),
    };
    sheet.step(name, 0.0);
    let distance_km = values.number(fields::DISTANCE).ok_or(steps::NOT_SOURCE)?;
    sheet.step(steps::DISTANCE, distance_km);
    Ok(table.read(distance_km, steps::N_A, sheet))
}

/// What is missing or too much for C_a.
pub fn faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::ZONE), values.number(fields::C_A)) {
        (None, None) => faults.push((fields::ZONE, Problem::NeedsOneOf, "zone or seismic_coefficient")),
        (Some(_), Some(_)) => faults.push((fields::C_A, Problem::Excludes, "zone or seismic_coefficient, not both")),
        (Some(ZONE_4), None) => source_faults(values, faults),
        _ => {}
    }
}

/// What zone 4 asks for. In zone 2 a source may be given already, so that the higher zone can be looked for.
fn source_faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::SOURCE), values.number(fields::DISTANCE)) {
        (None, _) => faults.push((fields::SOURCE, Problem::Missing, "A, B or C, because zone is \"4\"")),
        (Some(SOURCE_C), _) | (_, Some(_)) => {}
        (Some(_), None) => faults.push((fields::DISTANCE, Problem::Missing, "a distance, because zone is \"4\"")),
    }
}

// Places of the words of the fields `zone`, `soil_profile` and `seismic_source`.
const ZONE_4: usize = 1;
const SOIL_D: usize = 3;
const SOURCE_A: usize = 0;
const SOURCE_B: usize = 1;
const SOURCE_C: usize = 2;

/// By soil: in zone 2, and in zone 4 before N_a. S_F has no row.
static C_A: [[f64; 2]; 5] = [[0.16, 0.32], [0.20, 0.40], [0.24, 0.40], [0.28, 0.44], [0.34, 0.44]];

/// By distance in km.
static N_A_OF_A: Table = Table { arguments: &[2.0, 5.0, 10.0], values: &[1.5, 1.2, 1.0] };
static N_A_OF_B: Table = Table { arguments: &[2.0, 5.0, 10.0], values: &[1.3, 1.0, 1.0] };

static SOIL_NAMES: [StepId; 6] =
    [steps::SOIL_A, steps::SOIL_B, steps::SOIL_C, steps::SOIL_D, steps::SOIL_E, steps::SOIL_F];
