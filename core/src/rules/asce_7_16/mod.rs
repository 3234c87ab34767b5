//! ASCE/SEI 7-16 chapter 13: seismic demand on nonstructural components.
//!
//! Covers the equivalent static force of 13.3.1 with S_DS given or from S_S and the site class, the vertical force, and
//! the amplified force for anchors in concrete. Does not cover: site class F, modal analysis of the building
//! (13.3.1.4), relative displacement (13.3.2), components heavier than a quarter of the structure.

mod components;
mod fields;
mod site;
mod steps;

use super::asce_7::{self, CombinationSteps, ForceSteps, ForceTerms, Forces, SnubberSteps};
use super::attachment::{HeightFields, HeightSteps};
use super::component_row;
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::ASCE_7_16;
use super::site_class::one_acceleration;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::Values;
use crate::load_case::Format;
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "asce-7-16",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| Strength::Field(if values.number(fields::S_DS).is_some() { fields::S_DS } else { fields::S_S }),
    spectrum: Some(&SPECTRUM),
};

/// The ground: 11.4.6.
static SPECTRUM: GroundSpectrum = ground_spectrum::of_s_ds(&[&[steps::S_DS_GIVEN, steps::S_DS]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "asce-7-16",
    title: "ASCE/SEI 7-16, chapter 13: nonstructural components",
    document: &ASCE_7_16,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Site class F and sites that need their own hazard analysis: give S_DS from that analysis. A component heavier than 25 % of \
        the structure and itself together belongs to chapter 15. Steel storage racks at or below grade belong to 15.5.3. Relative \
        displacement between two attachments (13.3.2) and modal analysis of the building (13.3.1.4) are not here. In design categories A \
        and B, and C with I_p = 1.0, mechanical and electrical components are exempt; this is not checked. Active equipment with I_p = \
        1.5 also needs certification by test or experience (13.2.2). Electrical equipment with I_p = 1.5 has rules for its inside \
        (13.6.3), which are not checked: drawers latched, batteries wrapped and spaced, attachments of over 45 kg (100 lb) designed where \
        the maker has not, no bolt bearing on thin sheet without stiffener or washer.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };
const FORCE: ForceSteps = ForceSteps { c_1: steps::C_1, c_max: steps::C_MAX, c_min: steps::C_MIN };
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
    let s_ds = match site::s_ds(values, sheet) {
        Ok(s_ds) => s_ds,
        Err(reason) => {
            sheet.step(reason, 0.0);
            return Err(reason);
        }
    };
    let component = components::component(values, sheet);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);

    // 13.3-1 to 13.3-3
    let (c_limited, governs) =
        FORCE.limited(ForceTerms { a_p: component.a_p, r_p: component.r_p, i_p, s_ds, r_z }, sheet);
    let c_p = match values.number(fields::GAP) {
        None => sheet.step(steps::C_P, c_limited),
        Some(gap_mm) => SNUBBERS.force(c_limited, gap_mm, sheet),
    };
    // 13.3.1.2
    let c_v = sheet.step(steps::C_V, 0.2 * s_ds);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);

    // 13.4.2 with 12.4.3: after the limits, before load factors.
    let omega_0 = components::omega_0(values, sheet);
    let c_m = sheet.step(steps::C_M, omega_0 * c_p);
    sheet.step(steps::F_M, c_m * w_p);

    let forces = Forces { horizontal: c_p, amplified: c_m, vertical: c_v };
    let cases = COMBINATIONS.cases(forces, demand::directions(values, fields::DIRECTIONS), sheet);
    let category_c = limit::at_least(s_ds, asce_7::S_DS_CATEGORY_C).then_some(steps::CATEGORY_C);
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
    one_acceleration(values, [fields::S_S, fields::S_DS], faults);
    // An unknown choice is a fault of its own field already.
    if values.choice(fields::COMPONENT).is_some() {
        match components::row(values) {
            None => component_row::given_faults(values, &[fields::A_P, fields::R_P, fields::OMEGA_0], faults),
            Some(row) => asce_7::gap_faults(values, fields::GAP, row.is_isolated, faults),
        }
    }
    HEIGHTS.faults(values, faults);
}
