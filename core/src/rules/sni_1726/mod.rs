//! SNI 1726:2019, chapter 9, of Indonesia: demand on nonstructural components, in the form of ASCE 7-16.
//!
//! Covers the equivalent static force with S_DS given or from S_S and the site class, the vertical force, and the
//! amplified force for anchors in concrete. Does not cover: site class SF, architectural components, modal analysis,
//! relative displacement.

mod components;
mod fields;
mod steps;

use super::asce_7::{self, CombinationSteps, ForceSteps, ForceTerms, Forces, SnubberSteps};
use super::attachment::{HeightFields, HeightSteps};
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::SNI_1726;
use super::site_class::{SiteClasses, SiteSteps, one_acceleration};
use super::table::Table;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::{Problem, Values};
use crate::load_case::Format;
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "sni-1726",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| Strength::Field(if values.number(fields::S_DS).is_some() { fields::S_DS } else { fields::S_S }),
    spectrum: Some(&SPECTRUM),
};

/// The ground: 6.4.
static SPECTRUM: GroundSpectrum = ground_spectrum::of_s_ds(&[&[steps::S_DS_GIVEN, steps::S_DS]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "sni-1726",
    title: "Indonesia: SNI 1726:2019, chapter 9: nonstructural components",
    document: &SNI_1726,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "All of it is from memory, as ASCE 7-16 with F_a of soft soil (SE) printed further, to 0.8; there S_DS does not always rise \
        with S_S, and S_DS given by you replaces the table. Only mechanical and electrical rows are here. Site class SF and sites that need \
        their own hazard analysis: give S_DS from that analysis. A component heavier than a quarter of the structure, steel storage racks, \
        relative displacement between attachments and modal analysis of the building are not here. Exemptions of low categories are not \
        checked. Active equipment with I_p = 1.5 also needs certification by test or experience.",
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
static SITE: SiteClasses = SiteClasses {
    s_s: fields::S_S,
    class: fields::SITE_CLASS,
    unknown: 4,
    names: &[steps::CLASS_A, steps::CLASS_B, steps::CLASS_C, steps::CLASS_D, steps::CLASS_E, steps::CLASS_F],
    rows: &F_A,
    steps: SiteSteps { s_s: steps::S_S, f_a: steps::F_A, s_ms: steps::S_MS },
    no_row: steps::NOT_CLASS_F,
};
/// Mapped accelerations of the columns of F_a.
const S_S: &[f64] = &[0.25, 0.50, 0.75, 1.00, 1.25, 1.50];

/// F_a of classes SA to SE.
static F_A: [Table; 5] = [
    Table { arguments: S_S, values: &[0.8; 6] },
    Table { arguments: S_S, values: &[0.9; 6] },
    Table { arguments: S_S, values: &[1.3, 1.3, 1.2, 1.2, 1.2, 1.2] },
    Table { arguments: S_S, values: &[1.6, 1.4, 1.2, 1.1, 1.0, 1.0] },
    Table { arguments: S_S, values: &[2.4, 1.7, 1.3, 1.1, 0.9, 0.8] },
];
/// The same in all rows.
const OMEGA_0: f64 = 2.0;

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
    if values.number(fields::S_S).is_some() && values.choice(fields::SITE_CLASS).is_none() {
        faults.push((fields::SITE_CLASS, Problem::Missing, "a site class, because s_s is given"));
    }
    components::ROWS.faults(values, faults);
    if components::ROWS.row(values).is_some() {
        asce_7::gap_faults(values, fields::GAP, components::is_isolated(values), faults);
    }
    HEIGHTS.faults(values, faults);
}
