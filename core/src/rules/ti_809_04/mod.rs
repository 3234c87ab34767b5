//! TI 809-04 of the United States Army, chapter 10, on the basis of FEMA 302: demand on nonstructural components.
//!
//! Covers equations 10-1 to 10-3 with S_DS given or from S_S, the site class and the ground motion, the vertical force,
//! and the raised force for anchors. Does not cover: vibration-isolated components, site class F, distributed systems.

mod components;
mod fields;
mod steps;

use alloc::vec::Vec;

use super::asce_7::{self, ForceSteps, ForceTerms};
use super::attachment::{HeightFields, HeightSteps};
use super::combination::{Acting, Pair};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::TI_809_04;
use super::site_class::{F_A_1997, SiteClasses, SiteSteps, one_acceleration};
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::{Problem, Values};
use crate::load_case::{Format, Level};
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "ti-809-04",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| Strength::Field(if values.number(fields::S_DS).is_some() { fields::S_DS } else { fields::S_S }),
    spectrum: Some(&SPECTRUM),
};

/// The ground: the two-period spectrum of FEMA 302 4.1.2.6.
static SPECTRUM: GroundSpectrum = ground_spectrum::of_s_ds(&[&[steps::S_DS_GIVEN, steps::S_DS_A, steps::S_DS_B]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "ti-809-04",
    title: "TI 809-04, United States Army, chapter 10: nonstructural components",
    document: &TI_809_04,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Only Table 10-1 and the numbers of the equations were read; the rest is recalled from FEMA 302, on which the document rests, \
        and shaky: Table 10-2, the two ground motions, the factor 1.3 and the limit of R_p for shallow anchors. Give S_DS, a_p and R_p \
        yourself where they matter. The 1.3 is put on the vertical force too. Of anchors FEMA 302 6.1.6 is recalled to ask for their \
        depth only: adhesive ones and brittle steel are treated as others. Vibration-isolated equipment is left out, since it could not \
        be established by how much its force is raised. Site class F, and E with S_S above 1.0, need an investigation of the site: give \
        S_DS from it; on site class E the table's products do not always rise with S_S. The document has no overstrength factor for \
        components, and anchor rules that need the amplified force ask for a factor. Later documents of the Department of Defense adopt \
        ASCE 7 instead.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };
const FORCE: ForceSteps = ForceSteps { c_1: steps::C_1, c_max: steps::C_MAX, c_min: steps::C_MIN };
const COMPONENT: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_1, steps::V_2],
    gravity: [1.2, 0.9],
    level: Level::Component,
};
const ANCHORS: Pair = Pair {
    names: [steps::HEAVY_ANCHORS, steps::LIGHT_ANCHORS],
    downs: [steps::V_1A, steps::V_2A],
    gravity: [1.2, 0.9],
    level: Level::Anchorage,
};
static SITE: SiteClasses = SiteClasses {
    s_s: fields::S_S,
    class: fields::SITE_CLASS,
    unknown: 3,
    names: &[steps::CLASS_A, steps::CLASS_B, steps::CLASS_C, steps::CLASS_D, steps::CLASS_E, steps::CLASS_F],
    rows: &F_A_1997,
    steps: SiteSteps { s_s: steps::S_S, f_a: steps::F_A, s_ms: steps::S_MS },
    no_row: steps::NOT_CLASS_F,
};
/// Place of the word of the field `site_class`, and the S_S up to which its row has values without an investigation.
const CLASS_E: usize = 4;
const S_S_MAX_OF_E: f64 = 1.0;
/// Place of the word of the field `ground_motion`.
const MOTION_B: usize = 1;
/// Place of the word of the field `anchor_type`.
const DEEP: usize = 0;

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let s_ds = design_acceleration(values, sheet).inspect_err(|&reason| {
        sheet.step(reason, 0.0);
    })?;
    let [a_p, r_p] = components::ROWS.tell(values, sheet);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);

    // 10-1 to 10-3
    let (c_p, governs) = FORCE.limited(ForceTerms { a_p, r_p, i_p, s_ds, r_z }, sheet);
    sheet.step(steps::C_P, c_p);
    let c_v = sheet.step(steps::C_V, 0.2 * s_ds);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);

    // FEMA 302 6.1.6
    let is_deep = values.choice(fields::ANCHORS) == Some(DEEP);
    let r_pa = match is_deep {
        true => sheet.step(steps::R_PA_DEEP, r_p),
        false => sheet.step(steps::R_PA_SHALLOW, f64::min(1.5, r_p)),
    };
    let c_1a = sheet.step(steps::C_1A, 0.4 * a_p * s_ds / (r_pa / i_p) * (1.0 + 2.0 * r_z));
    let [c_max, c_min] = [1.6 * s_ds * i_p, 0.3 * s_ds * i_p];
    let c_pa = sheet.step(steps::C_PA, f64::max(c_min, f64::min(c_max, c_1a)));
    let h_a = sheet.step(steps::H_A, 1.3 * c_pa);
    sheet.step(steps::F_PA, h_a * w_p);
    let v_a = sheet.step(steps::V_A, 1.3 * c_v);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);

    let mut cases = Vec::with_capacity(4);
    cases.extend(COMPONENT.cases(Acting { horizontal: c_p, vertical: c_v }, sheet));
    cases.extend(ANCHORS.cases(Acting { horizontal: h_a, vertical: v_a }, sheet));
    let category_c = limit::at_least(s_ds, asce_7::S_DS_CATEGORY_C).then_some(steps::CATEGORY_C);
    let depth = is_deep.then_some((8.0, steps::NOT_DEEP));
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases,
        not_amplified: Some(steps::NOT_AMPLIFIED),
        category_c,
        anchors: AnchorsAsked { depth, ..AnchorsAsked::default() },
    })
}

fn design_acceleration(values: &Values, sheet: &mut Sheet) -> Result<f64, StepId> {
    if let Some(s_ds) = values.number(fields::S_DS) {
        return Ok(sheet.step(steps::S_DS_GIVEN, s_ds));
    }
    let is_e = values.choice(fields::SITE_CLASS) == Some(CLASS_E);
    if is_e && limit::more(values.given(fields::S_S), S_S_MAX_OF_E) {
        return Err(steps::NOT_CLASS_F);
    }
    let s_ms = SITE.s_ms(values, sheet)?;
    Ok(match values.choice(fields::MOTION) {
        Some(MOTION_B) => sheet.step(steps::S_DS_B, 3.0 / 4.0 * s_ms),
        _ => sheet.step(steps::S_DS_A, 2.0 / 3.0 * s_ms),
    })
}

fn faults(values: &Values, faults: &mut Faults) {
    one_acceleration(values, [fields::S_S, fields::S_DS], faults);
    if values.number(fields::S_S).is_some() && values.choice(fields::MOTION).is_none() {
        faults.push((fields::MOTION, Problem::Missing, "A or B, because s_s is given"));
    }
    components::ROWS.faults(values, faults);
    HEIGHTS.faults(values, faults);
}
