//! NSCP 2015, section 208: lateral force on components supported by structures, after the form of UBC 1997.
//!
//! Covers zones 2 and 4 with soil S_A to S_E and near sources, both equations with their limits, and the reduced
//! response factor for anchors. Does not cover: soil S_F, vibration-isolated equipment, relative movement.

mod fields;
mod site;
mod steps;
mod zones;

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::combination::{Acting, Pair};
use super::component_row::{Row, Rows};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength, governing};
use super::documents::NSCP_2015;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::Values;
use crate::load_case::{Format, Level};
use crate::rules::ground_spectrum::{self, GroundSpectrum};

pub use zones::ZONES;

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "nscp-2015",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| match values.number(fields::C_A) {
        Some(_) => Strength::Field(fields::C_A),
        None => Strength::Zones(fields::ZONE),
    },
    spectrum: Some(&SPECTRUM),
};

/// The ground: figure 208-3.
static SPECTRUM: GroundSpectrum = ground_spectrum::of_c_a(&[&[steps::C_A_GIVEN, steps::C_A_ZONE_2, steps::C_A_ZONE_4]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "nscp-2015",
    title: "Philippines: NSCP 2015, section 208: components supported by structures",
    document: &NSCP_2015,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "All of it is from memory, after the form of UBC 1997; the number of the section (208.9) is shaky, and so is C_a of soil S_E \
        in zone 4, 0.44 N_a where UBC 1997 has 0.36 N_a: C_a typed by you replaces the tables. Soil profile S_F needs an investigation of \
        the site: give C_a from it. Vibration-isolated equipment, relative movement of attachments and equipment heavier than a quarter \
        of the structure are not here. The edition has no overstrength factor for components; anchors get a lower response factor \
        instead, and anchor rules that need the amplified force ask for a factor.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::H_X, roof: steps::H_R, ratio: steps::R_H, ratio_at_base: steps::R_H_GRADE };
static ROWS: Rows = Rows {
    field: fields::COMPONENT,
    rows: &[
        Row { name: steps::ROW_EQUIPMENT, a_p: 1.0, r_p: 3.0, steps: [steps::A_P_ROW, steps::R_P_ROW] },
        Row { name: steps::ROW_FLEXIBLE, a_p: 2.5, r_p: 3.0, steps: [steps::A_P_ROW, steps::R_P_ROW] },
    ],
    given: steps::ROW_GIVEN,
    number_fields: [fields::A_P, fields::R_P],
    number_steps: [steps::A_P_GIVEN, steps::R_P_GIVEN],
};
const COMPONENT: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_1, steps::V_2],
    gravity: [1.2, 0.9],
    level: Level::Component,
};
const ANCHORS: Pair =
    Pair { names: [steps::HEAVY_ANCHORS, steps::LIGHT_ANCHORS], level: Level::Anchorage, ..COMPONENT };

// Places of the words of the fields `equation` and `anchor_type`.
const SIMPLE: usize = 1;
const DEEP: usize = 0;
const SHALLOW: usize = 1;

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let c_a = site::c_a(values, sheet).inspect_err(|&reason| {
        sheet.step(reason, 0.0);
    })?;
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let is_simple = values.choice(fields::EQUATION) == Some(SIMPLE);
    let ([c_p, c_pa], governs) = if is_simple { simple(c_a, i_p, sheet) } else { full(values, c_a, i_p, sheet) };
    let c_v = sheet.step(steps::C_V, 0.5 * c_a * i_p);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);
    sheet.step(steps::F_PA, c_pa * w_p);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let mut cases = Vec::with_capacity(4);
    cases.extend(COMPONENT.cases(Acting { horizontal: c_p, vertical: c_v }, sheet));
    cases.extend(ANCHORS.cases(Acting { horizontal: c_pa, vertical: c_v }, sheet));
    let depth = (!is_simple && values.choice(fields::ANCHORS) == Some(DEEP)).then_some((8.0, steps::NOT_DEEP));
    let is_ductile = matches!(values.choice(fields::ANCHORS), Some(DEEP | SHALLOW));
    let not_ductile = (!is_simple && is_ductile).then_some(steps::NOT_DUCTILE);
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases,
        not_amplified: Some(steps::NOT_AMPLIFIED),
        category_c: Some(steps::CATEGORY_C),
        anchors: AnchorsAsked { depth, not_ductile, ..AnchorsAsked::default() },
    })
}

/// Force over weight of the component and of its anchors with the step that decided it: neither height nor response factor enters.
fn simple(c_a: f64, i_p: f64, sheet: &mut Sheet) -> ([f64; 2], StepId) {
    let c_1 = sheet.step(steps::C_1, 4.0 * c_a * i_p);
    ([sheet.step(steps::C_P_SIMPLE, c_1), sheet.step(steps::C_PA_SIMPLE, c_1)], steps::C_1)
}

/// The full equation between its limits, for the component and again for its anchors.
fn full(values: &Values, c_a: f64, i_p: f64, sheet: &mut Sheet) -> ([f64; 2], StepId) {
    let [a_p, r_p] = ROWS.tell(values, sheet);
    let r_h = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let c_2 = sheet.step(steps::C_2, a_p * c_a * i_p / r_p * (1.0 + 3.0 * r_h));
    let c_max = sheet.step(steps::C_MAX, 4.0 * c_a * i_p);
    let c_min = sheet.step(steps::C_MIN, 0.7 * c_a * i_p);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, f64::min(c_max, c_2)));
    let r_pa = match values.choice(fields::ANCHORS) {
        Some(DEEP) => sheet.step(steps::R_PA_DEEP, r_p),
        Some(SHALLOW) => sheet.step(steps::R_PA_SHALLOW, f64::min(1.5, r_p)),
        _ => sheet.step(steps::R_PA_NONDUCTILE, f64::min(1.0, r_p)),
    };
    let c_2a = sheet.step(steps::C_2A, a_p * c_a * i_p / r_pa * (1.0 + 3.0 * r_h));
    let c_pa = sheet.step(steps::C_PA, f64::max(c_min, f64::min(c_max, c_2a)));
    ([c_p, c_pa], governing(c_p, &[(steps::C_2, c_2), (steps::C_MAX, c_max), (steps::C_MIN, c_min)]))
}

fn faults(values: &Values, faults: &mut Faults) {
    site::faults(values, faults);
    ROWS.faults(values, faults);
    if values.choice(fields::EQUATION) != Some(SIMPLE) {
        HEIGHTS.faults(values, faults);
    }
}
