//! What the building does to the shaking: amplification with height and reduction by its ductility, ASCE 7-22 13.3.1.1
//! and 13.3.1.2. Both are 1 at or below grade.

use super::{fields, steps};
use crate::calc::number::{pow, sqrt};
use crate::calc::{Sheet, StepId};
use crate::input::{Problem, Values};
use crate::rules::component_row::RowNumber;
use crate::rules::demand::Faults;

/// H_f and R_mu of these inputs.
pub struct Building {
    /// Amplification with height.
    pub h_f: f64,
    /// Reduction by ductility.
    pub r_mu: f64,
}

/// The building above whose grade the cabinet stands at `r_z` of the height.
pub fn above_grade(values: &Values, r_z: f64, sheet: &mut Sheet) -> Building {
    let system = system(values);
    sheet.step(SYSTEM_NAMES[values.choice(fields::SYSTEM).unwrap_or(UNKNOWN)], 0.0);
    let h_f = match period(values, system, sheet) {
        None => sheet.step(steps::H_F_UNKNOWN, 1.0 + 2.5 * r_z),
        Some(t_a) => {
            let t_1 = sheet.step(steps::T_1, 1.0);
            let a_1 = sheet.step(steps::A_1, f64::min(2.5, t_1 / t_a));
            let a_2 = sheet.step(steps::A_2, f64::max(0.0, 1.0 - pow(0.4 * t_1 / t_a, 2.0)));
            sheet.step(steps::H_F, 1.0 + a_1 * r_z + a_2 * pow(r_z, 10.0))
        }
    };
    Building { h_f, r_mu: reduction(values, system, sheet) }
}

/// At or below grade.
pub fn at_grade(sheet: &mut Sheet) -> Building {
    Building { h_f: sheet.step(steps::H_F_AT_GRADE, 1.0), r_mu: sheet.step(steps::R_MU_AT_GRADE, 1.0) }
}

/// T_a in s, where it is known.
fn period(values: &Values, system: Option<&System>, sheet: &mut Sheet) -> Option<f64> {
    match values.choice(fields::PERIOD) {
        Some(APPROXIMATE) => {
            let frame = system.map_or(&ALL_OTHER, |system| system.frame);
            let c_t = sheet.step(steps::C_T, frame.c_t);
            let x = sheet.step(steps::X, frame.x);
            let h_1 = sheet.step(steps::H_1, 1.0);
            Some(sheet.step(steps::T_A, c_t * pow(values.given(fields::ROOF) / h_1, x)))
        }
        Some(PERIOD_GIVEN) => Some(sheet.step(steps::T_A_GIVEN, values.given(fields::T_A))),
        _ => None,
    }
}

/// R_mu of 13.3-6, or of a system that is not known.
fn reduction(values: &Values, system: Option<&System>, sheet: &mut Sheet) -> f64 {
    if system.is_none() && values.choice(fields::SYSTEM) != Some(GIVEN) {
        return sheet.step(steps::R_MU_UNKNOWN, 1.3);
    }
    let r = RowNumber { field: fields::R, given: steps::R_GIVEN, table: steps::R_ROW };
    let omega_b = RowNumber { field: fields::OMEGA_B, given: steps::OMEGA_B_GIVEN, table: steps::OMEGA_B_ROW };
    let r = r.tell(values, system.map(|system| system.r), sheet);
    let omega_b = omega_b.tell(values, system.map(|system| system.omega_b), sheet);
    let i_e = sheet.step(steps::I_E, values.given(fields::I_E));
    sheet.step(steps::R_MU, f64::max(1.3, sqrt(1.1 * r / (i_e * omega_b))))
}

/// What the system and the period of the building still need.
pub fn faults(values: &Values, faults: &mut Faults) {
    let choice = values.choice(fields::SYSTEM).unwrap_or(UNKNOWN);
    let mut need = |field: usize, is_needed: bool, needed: &'static str, excluded: &'static str| match (
        values.number(field),
        is_needed,
    ) {
        (None, true) => faults.push((field, Problem::Missing, needed)),
        (Some(_), false) => faults.push((field, Problem::Excludes, excluded)),
        _ => {}
    };
    need(
        fields::T_A,
        values.choice(fields::PERIOD) == Some(PERIOD_GIVEN),
        "a time, because period is \"given\"",
        "only with period \"given\"",
    );
    let (needed, excluded) = ("a number, because building_system is \"given\"", "only with building_system \"given\"");
    need(fields::R, choice == GIVEN, needed, excluded);
    need(fields::OMEGA_B, choice == GIVEN, needed, excluded);
    need(
        fields::I_E,
        choice != UNKNOWN,
        "a number, because the building's system is known",
        "only with a known building_system",
    );
}

/// The system that was chosen; none where it is not known or the user gives the values.
fn system(values: &Values) -> Option<&'static System> {
    SYSTEMS.get(values.choice(fields::SYSTEM).unwrap_or(UNKNOWN).wrapping_sub(1))
}

// Places of words of the fields `building_system` and `period`.
const UNKNOWN: usize = 0;
const GIVEN: usize = 13;
const APPROXIMATE: usize = 1;
const PERIOD_GIVEN: usize = 2;

struct System {
    r: f64,
    omega_b: f64,
    frame: &'static Frame,
}

/// A row of Table 12.8-2, C_t for heights in m.
struct Frame {
    c_t: f64,
    x: f64,
}

static STEEL_MOMENT: Frame = Frame { c_t: 0.0724, x: 0.8 };
static CONCRETE_MOMENT: Frame = Frame { c_t: 0.0466, x: 0.9 };
static ECCENTRIC: Frame = Frame { c_t: 0.0731, x: 0.75 };
/// Also where the system is not known.
static ALL_OTHER: Frame = Frame { c_t: 0.0488, x: 0.75 };

/// The systems, in the order of the words of the field `building_system` between `unknown` and `given`.
static SYSTEMS: [System; 12] = [
    System { r: 8.0, omega_b: 3.0, frame: &STEEL_MOMENT },
    System { r: 8.0, omega_b: 3.0, frame: &CONCRETE_MOMENT },
    System { r: 5.0, omega_b: 3.0, frame: &CONCRETE_MOMENT },
    System { r: 3.0, omega_b: 3.0, frame: &CONCRETE_MOMENT },
    System { r: 5.0, omega_b: 2.5, frame: &ALL_OTHER },
    System { r: 6.0, omega_b: 2.5, frame: &ALL_OTHER },
    System { r: 4.0, omega_b: 2.5, frame: &ALL_OTHER },
    System { r: 6.0, omega_b: 2.0, frame: &ALL_OTHER },
    System { r: 3.25, omega_b: 2.0, frame: &ALL_OTHER },
    System { r: 8.0, omega_b: 2.5, frame: &ECCENTRIC },
    System { r: 8.0, omega_b: 2.0, frame: &ECCENTRIC },
    System { r: 3.0, omega_b: 3.0, frame: &ALL_OTHER },
];

static SYSTEM_NAMES: [StepId; 14] = [
    steps::SYSTEM_UNKNOWN,
    steps::SYSTEM_STEEL_MOMENT,
    steps::SYSTEM_CONCRETE_MOMENT,
    steps::SYSTEM_INTERMEDIATE_MOMENT,
    steps::SYSTEM_ORDINARY_MOMENT,
    steps::SYSTEM_SPECIAL_WALL_BEARING,
    steps::SYSTEM_SPECIAL_WALL_FRAME,
    steps::SYSTEM_ORDINARY_WALL_BEARING,
    steps::SYSTEM_SPECIAL_BRACED,
    steps::SYSTEM_ORDINARY_BRACED,
    steps::SYSTEM_BUCKLING_RESTRAINED,
    steps::SYSTEM_ECCENTRIC,
    steps::SYSTEM_STEEL_NOT_DETAILED,
    steps::SYSTEM_GIVEN,
];
