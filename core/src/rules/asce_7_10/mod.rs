//! ASCE/SEI 7-10 chapter 13: seismic demand on nonstructural components.
//!
//! Covers the equivalent static force of 13.3.1 with S_DS given or from S_S and the site class, the vertical force, and
//! the amplified force for anchors in concrete. Does not cover: site class F, modal analysis of the building, relative
//! displacement (13.3.2), components heavier than a quarter of the structure.

mod components;
mod fields;
mod steps;

use super::asce_7::{self, CombinationSteps, ForceSteps, ForceTerms, Forces, SnubberSteps};
use super::attachment::{HeightFields, HeightSteps};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::ASCE_7_10;
use super::site_class::{F_A_1997, SiteClasses, SiteSteps, one_acceleration};
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::Values;
use crate::load_case::{Directions, Format};
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "asce-7-10",
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
    id: "asce-7-10",
    title: "ASCE/SEI 7-10, chapter 13: nonstructural components",
    document: &ASCE_7_10,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Site class F and sites that need their own hazard analysis: give S_DS from that analysis. A component heavier than 25 % of \
        the structure and itself together belongs to chapter 15. Steel storage racks at or below grade belong to 15.5.3. Relative \
        displacement between two attachments (13.3.2) and modal analysis of the building are not here. The overstrength factor of 2.5 is \
        recalled from later prints of the edition and shaky: look it up and give your own. In design category A, and B and C with I_p = \
        1.0, mechanical and electrical components are exempt; this is not checked. Active equipment with I_p = 1.5 also needs \
        certification by test or experience (13.2.2). Electrical equipment with I_p = 1.5 has rules for its inside (13.6.4), which are \
        not checked: drawers latched, batteries wrapped and spaced, attachments of over 45 kg (100 lb) designed where the maker has not, \
        no bolt bearing on thin sheet without stiffener or washer. On site class E the table's products do not always rise with S_S.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };
const FORCE: ForceSteps = ForceSteps { c_1: steps::C_1, c_max: steps::C_MAX, c_min: steps::C_MIN };
const SNUBBERS: SnubberSteps =
    SnubberSteps { limited: steps::C_LIMITED, gap: steps::GAP, gap_max: steps::GAP_MAX, force: steps::C_P_ISOLATED };
const COMBINATIONS: CombinationSteps = CombinationSteps {
    down_6: steps::V_5,
    down_7: steps::V_7,
    names: [steps::LRFD_5, steps::LRFD_7],
    amplified_names: [steps::LRFD_5_AMPLIFIED, steps::LRFD_7_AMPLIFIED],
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
/// For all rows, by later prints of the edition.
const OMEGA_0: f64 = 2.5;

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
    let (c_limited, governs) = FORCE.limited(ForceTerms { a_p, r_p, i_p, s_ds, r_z }, sheet);
    let c_p = match values.number(fields::GAP) {
        None => sheet.step(steps::C_P, c_limited),
        Some(gap_mm) => SNUBBERS.force(c_limited, gap_mm, sheet),
    };
    let c_v = sheet.step(steps::C_V, 0.2 * s_ds);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);

    // After the limits, before load factors.
    let omega_0 = match values.number(fields::OMEGA_0) {
        Some(omega_0) => sheet.step(steps::OMEGA_GIVEN, omega_0),
        None => sheet.step(steps::OMEGA_ROW, OMEGA_0),
    };
    let c_m = sheet.step(steps::C_M, omega_0 * c_p);
    sheet.step(steps::F_M, c_m * w_p);

    let forces = Forces { horizontal: c_p, amplified: c_m, vertical: c_v };
    // Vertically cantilevered: any horizontal direction (13.3.1).
    let cases = COMBINATIONS.cases(forces, Directions::Any, sheet);
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
    components::ROWS.faults(values, faults);
    if components::ROWS.row(values).is_some() {
        asce_7::gap_faults(values, fields::GAP, components::is_isolated(values), faults);
    }
    HEIGHTS.faults(values, faults);
}
