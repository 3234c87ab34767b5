//! Japanese practice for building equipment (Building Centre of Japan): seismic force, bolts, allowable stresses.
//!
//! The force is a standard coefficient by class and storey; it acts with half of itself upwards or downwards, and is
//! compared with short-term allowable stresses. The anchors have formulas of their own.

mod coefficient;
mod fields;
mod regions;
mod steps;

use alloc::vec::Vec;

use super::combination::{Acting, Pair};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::JAPAN_EQUIPMENT;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::Values;
use crate::load_case::{Format, Level};

pub use regions::REGIONS;

/// The demand rule.
pub static RULE: DemandRule = DemandRule {
    id: "japan-equipment",
    fields: fields::FIELDS,
    format: |_| Format::AllowableStress,
    faults,
    demand,
    strength: |values| match values.number(fields::K_S) {
        Some(_) => Strength::Field(fields::K_S),
        None => Strength::Zones(fields::REGION),
    },
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "japan-equipment",
    title: "Japan: practice for building equipment (Building Centre of Japan), local seismic coefficient",
    document: &JAPAN_EQUIPMENT,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "The guideline itself was not read: its tables come from reprints and from makers' strength sheets. The choice of class is the \
        owner's; isolated equipment takes at least class A. Region factors other than 1.0 are from memory. Buildings whose response is known \
        from analysis, the coefficients for water heaters, and equipment that is heavy against its building are not here: give the coefficient. \
        The guideline studies each axis of the plan alone; the push is tried in every direction, which asks for no less. The forces belong to \
        short-term allowable stresses and to nothing else.",
};

const COMBINATIONS: Pair = Pair {
    names: [steps::DOWN, steps::UP],
    downs: [steps::V_DOWN, steps::V_UP],
    gravity: [1.0, 1.0],
    level: Level::Component,
};

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let k_h = coefficient::horizontal(values, sheet);
    let k_v = sheet.step(steps::K_V, k_h / 2.0);
    let w = sheet.carry(steps::W, weight_n);
    sheet.step(steps::F_H, k_h * w);
    sheet.step(steps::F_V, k_v * w);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let mut cases = Vec::with_capacity(2);
    cases.extend(COMBINATIONS.cases(Acting { horizontal: k_h, vertical: k_v }, sheet));
    let not_amplified = Some(steps::NOT_AMPLIFIED);
    Ok(Demand {
        push: k_h,
        governs: steps::K_H,
        vertical: k_v,
        cases,
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

fn faults(values: &Values, faults: &mut Faults) {
    coefficient::faults(values, faults);
}
