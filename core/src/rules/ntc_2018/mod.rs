//! NTC 2018 7.2.3: non-structural elements, with the formulas of the Circolare of 2019.
//!
//! Covers the limit state for the safeguard of life (SLV): the simplified form for framed buildings (C7.2.11), the form of
//! EN 1998-1 for others, soil and topography, and the reduced behaviour factor for anchors. Does not cover: the other
//! limit states, floor spectra from the modes of a building, soils that need a study of their own.

mod fields;
mod floor;
mod site;
mod steps;

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::component_row::{self, RowNumber};
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::NTC_2018;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::{Format, Level, LoadCase};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "ntc-2018",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |_| Strength::Field(fields::A_G),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "ntc-2018",
    title: "Italy: NTC 2018, 7.2.3: non-structural elements, with the simplified form of the Circolare",
    document: &NTC_2018,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Only the limit state for the safeguard of life (SLV) is here; others are checked with their own a_g. The floor spectra of the \
        Circolare from the modes of a building are not here: give the coefficient directly. The simplified form is for framed buildings; \
        its table, the behaviour factor of cabinets, the soil formulas and the options of anchors are from memory, and each number can be \
        replaced. On soft soil D the formula for S_S falls so fast that stronger shaking of the rock gives slightly less force where \
        F_o a_g lies between 0.8 and 1.0. A vertical force is asked in special cases only (7.2.2) and is not here. Friction alone may not \
        hold plant (7.2.4). Anchors designed by capacity have no elastic level, and the rules no \
        overstrength factor. Whether EN 1992-4 also asks for 1.5 on what a simplified form gives is recalled with little certainty: it is not in the \
        force, and the factor to elastic forces of the anchorage puts it in.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let alpha = sheet.step(steps::ALPHA, values.given(fields::A_G));
    let s = match site::s(values, alpha, sheet) {
        Ok(s) => s,
        Err(reason) => {
            sheet.step(reason, 0.0);
            return Err(reason);
        }
    };
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let s_1 = floor::s_1(values, alpha * s, r_z, sheet);
    let s_min = sheet.step(steps::S_MIN, alpha * s);
    let s_a = sheet.step(steps::S_A, f64::max(s_min, s_1));

    // 7.2.1
    let is_given = values.choice(fields::COMPONENT) == Some(GIVEN);
    sheet.step(if is_given { steps::ROW_GIVEN } else { steps::ROW_CABINET }, 0.0);
    let q_a = RowNumber { field: fields::Q_A, given: steps::Q_A_GIVEN, table: steps::Q_A };
    let q_a = q_a.tell(values, (!is_given).then_some(2.0), sheet);
    let c_1 = sheet.step(steps::C_1, s_1 / q_a);
    let c_min = sheet.step(steps::C_MIN, s_min / q_a);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, c_1));
    let w_a = sheet.carry(steps::W_A, weight_n);
    sheet.step(steps::F_A, c_p * w_a);

    let q_aa = match values.choice(fields::ANCHORS) {
        Some(CAPACITY_OR_DUCTILE) => sheet.step(steps::Q_AA_CAPACITY, q_a),
        Some(ELASTIC) => sheet.step(steps::Q_AA_ELASTIC, f64::min(1.5, q_a)),
        _ => sheet.step(steps::Q_AA_CAUTIOUS, 1.0),
    };
    let c_pa = sheet.step(steps::C_PA, s_a / q_aa);
    sheet.step(steps::F_AA, c_pa * w_a);
    let is_elastic = values.choice(fields::ANCHORS) != Some(CAPACITY_OR_DUCTILE);
    let not_amplified = (!is_elastic).then_some(steps::NOT_AMPLIFIED);
    if let Some(reason) = not_amplified {
        sheet.step(reason, 0.0);
    }

    let directions = demand::directions(values, fields::DIRECTIONS);
    let case = |name, level, horizontal| LoadCase { name, gravity: 1.0, vertical: 0.0, horizontal, level, directions };
    let mut cases = Vec::with_capacity(3);
    cases.push(case(steps::CASE, Level::Component, c_p));
    cases.push(case(steps::CASE_ANCHORS, Level::Anchorage, c_pa));
    // Elastic design is what anchor rules call the amplified level.
    if is_elastic {
        cases.push(case(steps::CASE_ELASTIC, Level::Amplified, c_pa));
    }
    Ok(Demand {
        push: c_p,
        governs: demand::governing(c_p, &[(steps::C_1, c_1), (steps::C_MIN, c_min)]),
        vertical: 0.0,
        cases,
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

/// Places of the words of the fields `component` and `anchor_design`.
const GIVEN: usize = 1;
const ELASTIC: usize = 1;
const CAPACITY_OR_DUCTILE: usize = 2;

fn faults(values: &Values, faults: &mut Faults) {
    if values.choice(fields::COMPONENT) == Some(GIVEN) {
        component_row::given_faults(values, &[fields::Q_A], faults);
    }
    site::faults(values, faults);
    match (values.choice(fields::BUILDING), values.number(fields::T_A), values.number(fields::T_1)) {
        (Some(floor::FRAMED), _, None) => {
            faults.push((fields::T_1, Problem::Missing, "a period, because the building is framed"));
        }
        (Some(floor::OTHER), Some(_), None) => {
            faults.push((fields::T_1, Problem::Missing, "a period, because component_period_s is given"));
        }
        (Some(floor::OTHER), None, Some(_)) => {
            faults.push((fields::T_A, Problem::Missing, "a period, because building_period_s is given"));
        }
        _ => {}
    }
    HEIGHTS.faults(values, faults);
}
