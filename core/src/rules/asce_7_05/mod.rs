//! ASCE/SEI 7-05 chapter 13: seismic demand on nonstructural components.
//!
//! Covers the equivalent static force of 13.3.1 with S_DS given or from S_S and the site class, the vertical force, and
//! the force for anchors in concrete by 13.4.2. Does not cover: site class F, modal analysis of the building, relative
//! displacement (13.3.2), components heavier than a quarter of the structure.

mod components;
mod fields;
mod steps;

use alloc::vec::Vec;

use super::asce_7::{self, ForceSteps, ForceTerms, SnubberSteps};
use super::attachment::{HeightFields, HeightSteps};
use super::combination::{Acting, Pair};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::ASCE_7_05;
use super::site_class::{F_A_1997, SiteClasses, SiteSteps, one_acceleration};
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::Values;
use crate::load_case::{Format, Level};
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "asce-7-05",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| Strength::Field(if values.number(fields::S_DS).is_some() { fields::S_DS } else { fields::S_S }),
    spectrum: Some(&SPECTRUM),
};

/// The ground: 11.4.5.
static SPECTRUM: GroundSpectrum = ground_spectrum::of_s_ds(&[&[steps::S_DS_GIVEN, steps::S_DS]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "asce-7-05",
    title: "ASCE/SEI 7-05, chapter 13: nonstructural components",
    document: &ASCE_7_05,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Site class F and sites that need their own hazard analysis: give S_DS from that analysis. A component heavier than 25 % of \
        the structure and itself together belongs to chapter 15. Steel storage racks at or below grade belong to 15.5.3. Relative \
        displacement between two attachments (13.3.2) and modal analysis of the building are not here. All of it is from memory. 13.4.2 \
        lets anchors be designed for the most that the component can pass on, where that is less than 1.3 times the prescribed force: not \
        here; the 1.3 is put on the vertical force too. That ductile steel governs a cast-in anchor is for whoever says so to show: only \
        brittle steel is refused. The edition has no overstrength factor for components, and anchor rules that need the amplified force \
        ask for a factor. In design category A, and B and C with I_p = 1.0, mechanical and electrical components are exempt; this is not \
        checked. Active equipment with I_p = 1.5 also needs certification by test or experience (13.2.2). On site class E the table's \
        products do not always rise with S_S.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };
const FORCE: ForceSteps = ForceSteps { c_1: steps::C_1, c_max: steps::C_MAX, c_min: steps::C_MIN };
const SNUBBERS: SnubberSteps =
    SnubberSteps { limited: steps::C_LIMITED, gap: steps::GAP, gap_max: steps::GAP_MAX, force: steps::C_P_ISOLATED };
const SNUBBERS_OF_ANCHORS: SnubberSteps =
    SnubberSteps { limited: steps::C_LA, gap: steps::GAP, gap_max: steps::GAP_MAX, force: steps::C_PA_ISOLATED };
const COMPONENT: Pair = Pair {
    names: [steps::LRFD_5, steps::LRFD_7],
    downs: [steps::V_5, steps::V_7],
    gravity: [1.2, 0.9],
    level: Level::Component,
};
const ANCHORS: Pair = Pair {
    names: [steps::LRFD_5_ANCHORS, steps::LRFD_7_ANCHORS],
    downs: [steps::V_5A, steps::V_7A],
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
/// Place of the word of the field `anchor_type`.
const QUALIFIED: usize = 0;

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let s_ds = match values.number(fields::S_DS) {
        Some(s_ds) => sheet.step(steps::S_DS_GIVEN, s_ds),
        None => {
            let s_ms = SITE.s_ms(values, sheet).inspect_err(|&reason| {
                sheet.step(reason, 0.0);
            })?;
            sheet.step(steps::S_DS, 2.0 / 3.0 * s_ms)
        }
    };
    let [a_p, r_p] = components::ROWS.tell(values, sheet);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);

    // 13.3-1 to 13.3-3
    let terms = ForceTerms { a_p, r_p, i_p, s_ds, r_z };
    let (c_limited, governs) = FORCE.limited(terms, sheet);
    let c_p = match values.number(fields::GAP) {
        None => sheet.step(steps::C_P, c_limited),
        Some(gap_mm) => SNUBBERS.force(c_limited, gap_mm, sheet),
    };
    let c_v = sheet.step(steps::C_V, 0.2 * s_ds);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);

    // 13.4.2
    let c_pa = on_anchors(values, terms, sheet);
    let h_a = sheet.step(steps::H_A, 1.3 * c_pa);
    sheet.step(steps::F_A_ANCHORS, h_a * w_p);
    let v_a = sheet.step(steps::V_A, 1.3 * c_v);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);

    // Vertically cantilevered: any horizontal direction (13.3.1).
    let mut cases = Vec::with_capacity(4);
    cases.extend(COMPONENT.cases(Acting { horizontal: c_p, vertical: c_v }, sheet));
    cases.extend(ANCHORS.cases(Acting { horizontal: h_a, vertical: v_a }, sheet));
    let category_c = limit::at_least(s_ds, asce_7::S_DS_CATEGORY_C).then_some(steps::CATEGORY_C);
    let not_amplified = Some(steps::NOT_AMPLIFIED);
    let is_qualified = values.choice(fields::ANCHORS) == Some(QUALIFIED);
    let not_qualified = is_qualified.then_some(steps::NOT_QUALIFIED);
    let anchors = AnchorsAsked { not_qualified, ..AnchorsAsked::default() };
    Ok(Demand { push: c_p, governs, vertical: c_v, cases, not_amplified, category_c, anchors })
}

/// The prescribed force once more, with the response factor that the anchors allow.
fn on_anchors(values: &Values, terms: ForceTerms, sheet: &mut Sheet) -> f64 {
    let ForceTerms { a_p, r_p, i_p, s_ds, r_z } = terms;
    let r_pa = match values.choice(fields::ANCHORS) {
        Some(QUALIFIED) => sheet.step(steps::R_PA_QUALIFIED, r_p),
        _ => sheet.step(steps::R_PA_OTHER, f64::min(1.5, r_p)),
    };
    let c_1a = sheet.step(steps::C_1A, 0.4 * a_p * s_ds / (r_pa / i_p) * (1.0 + 2.0 * r_z));
    let [c_max, c_min] = [1.6 * s_ds * i_p, 0.3 * s_ds * i_p];
    let c_la = f64::max(c_min, f64::min(c_max, c_1a));
    match values.number(fields::GAP) {
        None => sheet.step(steps::C_PA, c_la),
        Some(gap_mm) => SNUBBERS_OF_ANCHORS.force(c_la, gap_mm, sheet),
    }
}

fn faults(values: &Values, faults: &mut Faults) {
    one_acceleration(values, [fields::S_S, fields::S_DS], faults);
    components::ROWS.faults(values, faults);
    if components::ROWS.row(values).is_some() {
        asce_7::gap_faults(values, fields::GAP, components::is_isolated(values), faults);
    }
    HEIGHTS.faults(values, faults);
}
