//! AS 1170.4:2007 section 8: forces on parts and components.
//!
//! Covers the simple method (8.3), the method with a known floor acceleration (8.2), and the flat force in buildings of
//! design category I (5.3). Does not cover: the edition of 2024, vertical forces, walls and connections of structures.

mod cities;
mod component;
mod fields;
mod hazard;
mod steps;

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::component_row;
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::AS_1170_4;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::{Problem, Values};
use crate::load_case::{Directions, Format, Level, LoadCase};

pub use cities::CITIES;

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "as-1170-4",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |values| Strength::Field(if is_by_floor(values) { fields::A_FLOOR } else { fields::Z }),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "as-1170-4",
    title: "Australia: AS 1170.4:2007 (2018), section 8: parts and components",
    document: &AS_1170_4,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "An edition of 2024 exists and was not compared with this one. All factors, tables and limits are from memory or from a \
        transcription whose place was not noted; Z, the component factors and the upper limit can be replaced. The upper limit of half the \
        weight is recalled for the method with a known floor acceleration only, and is shaky; the simple method has none here. The simple \
        method has no vertical force. Anchors that are designed elastically get no ductility of the component, as the seismic annex of \
        AS 5216 is recalled to ask. A loose body is stable with 0.9 of its weight only; the check of standing free takes all of it. Ductile \
        anchors have no elastic level, and the edition no overstrength factor.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::H_X, roof: steps::H_N, ratio: steps::R_H, ratio_at_base: steps::R_H_BASE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    sheet.step(steps::EDITION, 0.0);
    let push = match values.choice(fields::METHOD) {
        Some(CATEGORY_I) => category_i(values, sheet)?,
        Some(BY_FLOOR) => by_floor(values, sheet),
        _ => simple(values, sheet),
    };
    let w_p = sheet.carry(steps::W_C, weight_n);
    sheet.step(steps::F_C, push.component * w_p);
    sheet.step(steps::F_CA, push.anchors * w_p);
    let is_elastic = component::is_elastic(values);
    let not_amplified = (!is_elastic).then_some(steps::NOT_AMPLIFIED);
    if let Some(reason) = not_amplified {
        sheet.step(reason, 0.0);
    }
    Ok(Demand {
        push: push.component,
        governs: push.governs,
        vertical: 0.0,
        cases: cases(&push, is_elastic.then_some(Level::Amplified)),
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

/// Horizontal force over weight.
struct Push {
    component: f64,
    governs: StepId,
    anchors: f64,
}

/// 8.3
fn simple(values: &Values, sheet: &mut Sheet) -> Push {
    let k_z = hazard::k_z(values, sheet);
    let c_h0 = hazard::c_h0(values, sheet);
    let a_x = height_amplification(values, sheet);
    let component = component::component(values, sheet);
    let of = |r_c: f64| k_z * c_h0 * a_x * component.i_c * component.a_c / r_c;
    let c_1 = sheet.step(steps::C_1, of(component.r_c));
    let c_min = sheet.step(steps::C_MIN, 0.05);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, c_1));
    let c_1a = sheet.step(steps::C_1A, of(component.r_ca));
    let governs = demand::governing(c_p, &[(steps::C_1, c_1), (steps::C_MIN, c_min)]);
    Push { component: c_p, governs, anchors: sheet.step(steps::C_PA, f64::max(c_min, c_1a)) }
}

/// 8.2
fn by_floor(values: &Values, sheet: &mut Sheet) -> Push {
    let a_f = sheet.step(steps::A_FLOOR, values.given(fields::A_FLOOR));
    let component = component::component(values, sheet);
    let (limit, c_max) = match values.number(fields::C_MAX) {
        Some(c_max) => (steps::C_MAX_GIVEN, c_max),
        None => (steps::C_MAX, 0.5),
    };
    sheet.step(limit, c_max);
    let of = |r_c: f64| a_f * component.i_c * component.a_c / r_c;
    let c_1 = sheet.step(steps::C_1_FLOOR, of(component.r_c));
    let c_p = sheet.step(steps::C_P_FLOOR, f64::min(c_max, c_1));
    let c_1a = sheet.step(steps::C_1A_FLOOR, of(component.r_ca));
    let governs = demand::governing(c_p, &[(steps::C_1_FLOOR, c_1), (limit, c_max)]);
    Push { component: c_p, governs, anchors: sheet.step(steps::C_PA_FLOOR, f64::min(c_max, c_1a)) }
}

/// 5.3, where Table 2.1 puts a building of importance level 2 into category I.
fn category_i(values: &Values, sheet: &mut Sheet) -> Result<Push, StepId> {
    let k_z = hazard::k_z(values, sheet);
    let k_max = hazard::k_z_of_category_i(values, sheet);
    let h_n = sheet.step(steps::H_N, values.given(fields::ROOF));
    let h_12 = sheet.step(steps::H_12, 12.0);
    if limit::more(k_z, k_max) || limit::more(h_n, h_12) || hazard::is_rare(values) {
        sheet.step(steps::NOT_CATEGORY_I, 0.0);
        return Err(steps::NOT_CATEGORY_I);
    }
    let c_p = sheet.step(steps::C_P_CATEGORY_I, 0.1);
    let anchors = sheet.step(steps::C_PA_CATEGORY_I, c_p);
    Ok(Push { component: c_p, governs: steps::C_P_CATEGORY_I, anchors })
}

/// a_x: 1 at the base, 3 at the roof of a building of 12 m and more.
fn height_amplification(values: &Values, sheet: &mut Sheet) -> f64 {
    let r_h = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    if HEIGHTS.is_at_base(values) {
        return sheet.step(steps::A_X_BASE, 1.0);
    }
    let h_12 = sheet.step(steps::H_12, 12.0);
    if limit::at_least(values.given(fields::ROOF), h_12) {
        return sheet.step(steps::A_X_HIGH, 1.0 + 2.0 * r_h);
    }
    let h_1 = sheet.step(steps::H_1, 1.0);
    sheet.step(steps::A_X_LOW, 1.0 + 0.17 * values.given(fields::ATTACHMENT) / h_1)
}

/// G + E_u, each axis alone: the full force in any direction holds them both. Elastic design is what anchor rules call the
/// amplified level.
fn cases(push: &Push, elastic: Option<Level>) -> Vec<LoadCase> {
    let case = |name, level, horizontal| LoadCase {
        name,
        gravity: 1.0,
        vertical: 0.0,
        horizontal,
        level,
        directions: Directions::Any,
    };
    let mut cases = Vec::with_capacity(3);
    cases.push(case(steps::CASE, Level::Component, push.component));
    cases.push(case(steps::CASE_ANCHORS, Level::Anchorage, push.anchors));
    cases.extend(elastic.map(|level| case(steps::CASE_ELASTIC, level, push.anchors)));
    cases
}

/// Places of the words of the field `method`.
const BY_FLOOR: usize = 1;
const CATEGORY_I: usize = 2;

fn is_by_floor(values: &Values) -> bool {
    values.choice(fields::METHOD) == Some(BY_FLOOR)
}

fn faults(values: &Values, faults: &mut Faults) {
    let mut need = |is_there: bool, field: usize, needed: &'static str| {
        if !is_there {
            faults.push((field, Problem::Missing, needed));
        }
    };
    if is_by_floor(values) {
        need(values.number(fields::A_FLOOR).is_some(), fields::A_FLOOR, "a number, because of the method");
    } else {
        need(values.number(fields::Z).is_some(), fields::Z, "a number, because of the method");
        need(values.choice(fields::PROBABILITY).is_some(), fields::PROBABILITY, "a word, because of the method");
        need(values.choice(fields::SOIL).is_some(), fields::SOIL, "a word, because of the method");
    }
    if values.choice(fields::METHOD) == Some(CATEGORY_I) {
        need(values.number(fields::ROOF).is_some(), fields::ROOF, "a height, because of the method");
    } else if values.choice(fields::COMPONENT).is_some() && component::row(values).is_none() {
        component_row::given_faults(values, &[fields::A_C, fields::R_C], faults);
    }
    if !is_by_floor(values) {
        HEIGHTS.faults(values, faults);
    }
}
