//! EN 1998-1:2004 4.3.5: non-structural elements, with the anchor side of EN 1992-4 annex C.
//!
//! Covers the horizontal force by periods, by resonance or by the tabulated amplification of EN 1992-4, both types of
//! spectra with the recommended soil factors or national ones, and for anchors the reduced behaviour factor and the
//! vertical force. Does not cover: floor spectra for very important or dangerous elements (4.3.5.1(2)), ground S1 and S2
//! without a soil factor, the second generation of the code.

mod anchors;
mod component;
mod fields;
mod ground;
mod steps;

use super::attachment::{HeightFields, HeightSteps};
use super::component_row;
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::EN_1998_1;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::Format;

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "en-1998-1",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |_| Strength::Field(fields::A_GR),
    spectrum: Some(&ground::SPECTRUM),
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "en-1998-1",
    title: "Europe: EN 1998-1:2004, 4.3.5: non-structural elements, with EN 1992-4 annex C for anchors",
    document: &EN_1998_1,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Very important or dangerous elements need floor spectra from a model of the structure (4.3.5.1(2)): give the coefficient \
        directly. Ground S1 and S2 need a study of the site, which gives S. The soil factors, the vertical ratio and the importance factors \
        are nationally determined; recommended values stand here and each can be replaced. Clause 4.3.5 has no vertical force; for anchors \
        that of EN 1992-4 annex C is taken, recalled from memory, as are its table of behaviour and amplification factors and its options \
        of design. Anchors count on no ductility unless an option is stated; that is the level that elastic design asks for. \
        Whether annex C also asks for 1.5 on what this simplified formula gives is recalled with little certainty: it is not in the force, and the factor \
        to elastic forces of the anchorage puts it in. Regions of low and very low seismicity, where a country may \
        release buildings, are not told apart. The second generation of EN 1998 is not here. Anchors \
        designed by capacity have no such level, and the code no overstrength factor.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let alpha = ground::alpha(values, sheet);
    let s = match ground::s(values, sheet) {
        Ok(s) => s,
        Err(reason) => {
            sheet.step(reason, 0.0);
            return Err(reason);
        }
    };
    let q_a = component::q_a(values, sheet);
    let gamma_a = sheet.step(steps::GAMMA_A, values.given(fields::GAMMA_A));
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let a_a = component::a_a(values, sheet);

    // 4.25
    let s_1 = sheet.step(steps::S_1, alpha * s * ((1.0 + r_z) * a_a - 0.5));
    let s_min = sheet.step(steps::S_MIN, alpha * s);
    let s_a = sheet.step(steps::S_A, f64::max(s_min, s_1));
    // 4.24
    let c_1 = sheet.step(steps::C_1, s_1 * gamma_a / q_a);
    let c_min = sheet.step(steps::C_MIN, s_min * gamma_a / q_a);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, c_1));
    let w_a = sheet.carry(steps::W_A, weight_n);
    sheet.step(steps::F_A, c_p * w_a);

    let vertical = anchors::vertical(values, alpha, a_a, sheet);
    let q_aa = anchors::q_aa(values, q_a, sheet);
    let c_pa = sheet.step(steps::C_PA, s_a * gamma_a / q_aa);
    sheet.step(steps::F_AA, c_pa * w_a);
    let vertical = vertical.map(|s_va| {
        let c_va = sheet.step(steps::C_VA, s_va * gamma_a / q_aa);
        sheet.step(steps::F_VA, c_va * w_a);
        c_va
    });
    let not_amplified = (!anchors::is_elastic(values)).then_some(steps::NOT_AMPLIFIED);
    if let Some(reason) = not_amplified {
        sheet.step(reason, 0.0);
    }
    let forces = anchors::Forces { component: c_p, anchors: c_pa, vertical };
    Ok(Demand {
        push: c_p,
        governs: demand::governing(c_p, &[(steps::C_1, c_1), (steps::C_MIN, c_min)]),
        vertical: 0.0,
        cases: anchors::cases(values, forces, sheet),
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

fn faults(values: &Values, faults: &mut Faults) {
    if values.choice(fields::COMPONENT).is_some() && component::row(values).is_none() {
        component_row::given_faults(values, &[fields::Q_A], faults);
        if values.choice(fields::AMPLIFICATION) == Some(component::BY_TABLE) {
            component_row::given_faults(values, &[fields::A_A], faults);
        }
    }
    if values.choice(fields::AMPLIFICATION) == Some(component::BY_PERIODS) {
        for field in [fields::T_A, fields::T_1] {
            if values.number(field).is_none() {
                faults.push((field, Problem::Missing, "a period, because amplification is \"periods\""));
            }
        }
    }
    HEIGHTS.faults(values, faults);
}
