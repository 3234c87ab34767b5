//! NZS 1170.5:2004 section 8: requirements for parts and components.
//!
//! Covers the horizontal force of 8.5 with the hazard of section 3 at zero period, height, period of the part and its
//! ductility, the vertical force where a spectrum is given for it, and the lower ductility of fixings (8.7). Does not
//! cover: near faults beyond a period of 1.5 s, parts heavier than the building can carry along, NZS 4219, TS 1170.5:2025.

mod cities;
mod coefficients;
mod fields;
mod steps;

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::NZS_1170_5;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::{Directions, Format, Level, LoadCase};

pub use cities::CITIES;

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "nzs-1170-5",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |_| Strength::Field(fields::Z),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "nzs-1170-5",
    title: "New Zealand: NZS 1170.5:2004, section 8: parts and components",
    document: &NZS_1170_5,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "TS 1170.5:2025, which gives tables by place instead of one hazard factor, and NZS 4219 for building services are not here. The \
        near-fault factor is taken as 1, as it is for short periods. Every class of part that applies has to be tried, one after the \
        other; serviceability classes need their own return period. The risk factors of the classes, the ductility that fixings may count \
        on, the return period factors and the vertical force are from memory; each can be replaced. Without a vertical spectrum no vertical \
        force acts. A loose body is stable with 0.9 of its weight only; the check of standing free takes all of it. Brittle fixings get \
        the force of an elastic cabinet; for others the edition has no overstrength factor, and an anchor rule that needs one asks for it.",
};

pub(super) const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
pub(super) const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::H_I, roof: steps::H_N, ratio: steps::R_H, ratio_at_base: steps::R_H_BASE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    // 8.2(1)
    let c_0 = coefficients::at_zero_period(values, sheet);
    let c_h = coefficients::with_height(values, sheet);
    let c_i = coefficients::with_period(values, sheet);
    let c_p_t = sheet.step(steps::C_P_T, c_0 * c_h * c_i);
    let mu_p = sheet.step(steps::MU_P, values.given(fields::DUCTILITY));
    let c_ph = coefficients::C_PH.read(mu_p, steps::C_PH, sheet);
    let r_p = coefficients::risk(values, sheet);

    // 8.5(1)
    let c_1 = sheet.step(steps::C_1, c_p_t * c_ph * r_p);
    let c_max = sheet.step(steps::C_MAX, 3.6);
    let c_p = sheet.step(steps::C_P, f64::min(c_max, c_1));
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_PH, c_p * w_p);
    let vertical = values.number(fields::VERTICAL);
    let c_v = vertical.map(|c_v| {
        let c_v = sheet.step(steps::C_V_T, c_v);
        let c_v = sheet.step(steps::C_V, f64::min(2.5, 0.7 * c_v * c_ph * r_p));
        sheet.step(steps::F_PV, c_v * w_p);
        c_v
    });

    // 8.7
    let mu_a = match values.choice(fields::FIXINGS) {
        Some(CAPACITY_DESIGNED) => sheet.step(steps::MU_A_CAPACITY, mu_p),
        Some(NOMINALLY_DUCTILE) => sheet.step(steps::MU_A_NOMINAL, f64::min(1.25, mu_p)),
        _ => sheet.step(steps::MU_A_BRITTLE, 1.0),
    };
    let c_pha = coefficients::C_PH.read(mu_a, steps::C_PHA, sheet);
    let c_1a = sheet.step(steps::C_1A, c_p_t * c_pha * r_p);
    let c_pa = sheet.step(steps::C_PA, f64::min(c_max, c_1a));
    sheet.step(steps::F_PA, c_pa * w_p);
    let c_va = vertical.map(|c_v| {
        let c_va = sheet.step(steps::C_VA, f64::min(2.5, 0.7 * c_v * c_pha * r_p));
        sheet.step(steps::F_PVA, c_va * w_p);
        c_va
    });
    let is_elastic = !matches!(values.choice(fields::FIXINGS), Some(NOMINALLY_DUCTILE | CAPACITY_DESIGNED));
    let not_amplified = (!is_elastic).then_some(steps::NOT_AMPLIFIED);
    if let Some(reason) = not_amplified {
        sheet.step(reason, 0.0);
    }

    let of_component = Acting { horizontal: c_p, vertical: c_v };
    let of_fixings = Acting { horizontal: c_pa, vertical: c_va };
    let directions = demand::directions(values, fields::DIRECTIONS);
    Ok(Demand {
        push: c_p,
        governs: demand::governing(c_p, &[(steps::C_1, c_1), (steps::C_MAX, c_max)]),
        vertical: c_v.unwrap_or(0.0),
        cases: cases([of_component, of_fixings], is_elastic, directions, sheet),
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

/// Places of the words of the field `fixings`.
const NOMINALLY_DUCTILE: usize = 1;
const CAPACITY_DESIGNED: usize = 2;

/// Forces over weight that act together.
#[derive(Clone, Copy)]
struct Acting {
    horizontal: f64,
    vertical: Option<f64>,
}

/// G + E_u; with a vertical force down and up. The force for brittle fixings is that of an elastic cabinet, which anchor
/// rules call the amplified level.
fn cases(forces: [Acting; 2], is_elastic: bool, directions: Directions, sheet: &mut Sheet) -> Vec<LoadCase> {
    let downs = [[steps::V_DOWN, steps::V_UP], [steps::V_DOWN_ANCHORS, steps::V_UP_ANCHORS]];
    for ([down, up], acting) in downs.into_iter().zip(forces) {
        if let Some(c_v) = acting.vertical {
            sheet.step(down, 1.0 + c_v);
            sheet.step(up, 1.0 - c_v);
        }
    }
    let [component, fixings] = forces;
    let levels = [
        (Level::Component, component, [steps::ALONE, steps::DOWN, steps::UP]),
        (Level::Anchorage, fixings, [steps::ALONE_ANCHORS, steps::DOWN_ANCHORS, steps::UP_ANCHORS]),
        (Level::Amplified, fixings, [steps::ALONE_ELASTIC, steps::DOWN_ELASTIC, steps::UP_ELASTIC]),
    ];
    let mut cases = Vec::with_capacity(6);
    for (level, Acting { horizontal, vertical }, names) in levels {
        if level == Level::Amplified && !is_elastic {
            break;
        }
        let case = |name, vertical| LoadCase { name, gravity: 1.0, vertical, horizontal, level, directions };
        match vertical {
            None => cases.push(case(names[0], 0.0)),
            Some(c_v) => cases.extend([case(names[1], c_v), case(names[2], -c_v)]),
        }
    }
    cases
}

fn faults(values: &Values, faults: &mut Faults) {
    if values.choice(fields::PROBABILITY).is_none() && values.number(fields::R).is_none() {
        faults.push((fields::PROBABILITY, Problem::NeedsOneOf, "annual_probability or return_period_factor"));
    }
    HEIGHTS.faults(values, faults);
}
