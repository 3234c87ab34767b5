//! ASCE/SEI 7-22 chapter 13: seismic demand on nonstructural components.
//!
//! Covers the equivalent static force of 13.3.1 with S_DS given, the building known or not known, the vertical force, and
//! the amplified force for anchors in concrete. Does not cover: floor spectra of the building (13.3.1.5), relative
//! displacement (13.3.2), equipment support structures and platforms, components heavier than a fifth of the structure.

mod building;
mod components;
mod fields;
mod steps;

use super::asce_7::{self, CombinationSteps, Forces, SnubberSteps};
use super::attachment::{HeightFields, HeightSteps};
use super::component_row;
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::ASCE_7_22;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::Values;
use crate::load_case::Format;
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "asce-7-22",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |_| Strength::Field(fields::S_DS),
    spectrum: Some(&SPECTRUM),
};

/// The ground: 11.4.5.2, two-period.
static SPECTRUM: GroundSpectrum = ground_spectrum::of_s_ds(&[&[steps::S_DS]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "asce-7-22",
    title: "ASCE/SEI 7-22, chapter 13: nonstructural components",
    document: &ASCE_7_22,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "The design acceleration is taken as given: this edition has it from site data, and class F needs a site response \
        analysis. A component heavier than 20 % of the structure and itself together belongs to chapter 15. Steel storage racks at or \
        below grade belong to 15.5.3. Floor spectra of the building (13.3.1.5), relative displacement between two attachments (13.3.2) \
        and platforms under the equipment are not here. Exemptions by design category are not checked. Active equipment with \
        I_p = 1.5 also needs certification by test or experience (13.2.2). Most rows of the tables are from memory.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };
const SNUBBERS: SnubberSteps =
    SnubberSteps { limited: steps::C_LIMITED, gap: steps::GAP, gap_max: steps::GAP_MAX, force: steps::C_P_ISOLATED };
const COMBINATIONS: CombinationSteps = CombinationSteps {
    down_6: steps::V_6,
    down_7: steps::V_7,
    names: [steps::LRFD_6, steps::LRFD_7],
    amplified_names: [steps::LRFD_6_AMPLIFIED, steps::LRFD_7_AMPLIFIED],
};

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let s_ds = sheet.step(steps::S_DS, values.given(fields::S_DS));
    let is_at_grade = HEIGHTS.is_at_base(values);
    let component = components::component(values, is_at_grade, sheet);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let building = if is_at_grade { building::at_grade(sheet) } else { building::above_grade(values, r_z, sheet) };

    // 13.3-1 to 13.3-3
    let c_1 =
        sheet.step(steps::C_1, 0.4 * s_ds * i_p * (building.h_f / building.r_mu) * (component.c_ar / component.r_po));
    let c_max = sheet.step(steps::C_MAX, 1.6 * s_ds * i_p);
    let c_min = sheet.step(steps::C_MIN, 0.3 * s_ds * i_p);
    let c_limited = f64::max(c_min, f64::min(c_max, c_1));
    let c_p = match values.number(fields::GAP) {
        None => sheet.step(steps::C_P, c_limited),
        Some(gap_mm) => SNUBBERS.force(c_limited, gap_mm, sheet),
    };
    let c_v = sheet.step(steps::C_V, 0.2 * s_ds);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);

    // 13.4.2 with 12.4.3: after the limits, before load factors.
    let omega_0p = components::omega_0p(values, sheet);
    let c_m = sheet.step(steps::C_M, omega_0p * c_p);
    sheet.step(steps::F_M, c_m * w_p);

    let forces = Forces { horizontal: c_p, amplified: c_m, vertical: c_v };
    let cases = COMBINATIONS.cases(forces, demand::directions(values, fields::DIRECTIONS), sheet);
    let category_c = limit::at_least(s_ds, asce_7::S_DS_CATEGORY_C).then_some(steps::CATEGORY_C);
    let governs = demand::governing(c_limited, &[(steps::C_1, c_1), (steps::C_MAX, c_max), (steps::C_MIN, c_min)]);
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases,
        not_amplified: None,
        category_c,
        anchors: AnchorsAsked::default(),
    })
}

fn faults(values: &Values, faults: &mut Faults) {
    // An unknown choice is a fault of its own field already.
    if values.choice(fields::COMPONENT).is_some() {
        match components::row(values) {
            None => component_row::given_faults(values, &[fields::C_AR, fields::R_PO, fields::OMEGA_0P], faults),
            Some(row) => asce_7::gap_faults(values, fields::GAP, row.is_isolated, faults),
        }
    }
    HEIGHTS.faults(values, faults);
    building::faults(values, faults);
}
