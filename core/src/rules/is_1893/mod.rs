//! India: the zones of IS 1893 (Part 1):2016 with the force on components of the IITK-GSDMA draft.
//!
//! IS 1893 itself has no general formula for equipment. Two published proposals differ by a factor of two in the zone
//! factor, so the choice between them is asked and never made here. Covers zones II to V, vibration isolators, shallow
//! anchors, the doubled force on connections. Does not cover: floor spectra, projections (7.13).

mod cases;
mod components;
mod fields;
mod steps;
mod zone;

use super::attachment::{HeightFields, HeightSteps};
use super::component_row;
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::IS_1893;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::Format;

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "is-1893",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |values| match values.number(fields::Z) {
        Some(_) => Strength::Field(fields::Z),
        None => Strength::Zones(fields::ZONE),
    },
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "is-1893",
    title: "India: zones of IS 1893:2016, with the component force of IITK-GSDMA",
    document: &IS_1893,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "IS 1893:2016 has no general force for equipment, only one for projections (7.13). What stands here is the draft for it \
        (IITK-GSDMA, Mondal and Jain 2005), recalled from memory. A book of 2012 and a clause of IS 16700:2017 are recalled to take the \
        whole zone factor in place of half of it: which one governs has to be asked of whoever approves, so it has no default. Whether \
        the load factor 1.5 is put on top of the doubled force for anchors is open too; both are on the sheet, and the larger is taken \
        unless said otherwise. Under isolators the force is doubled, and for anchors doubled again; the one recalled example doubles it \
        once. The vertical coefficient takes no reduction of the building. It acts here in zones IV and V; for the other cases of 6.3.3 \
        give it. Anchors are asked for their depth only, as far as the draft is recalled. A new zone map has been announced: Z can be \
        given. Floor spectra are not here. There is no overstrength factor beside that of the anchors.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::X, roof: steps::H, ratio: steps::R_X, ratio_at_base: steps::R_X_BASE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let z = zone::z(values, sheet);
    let a = zone::ground(values, z, sheet);
    let component = components::component(values, sheet);
    let (a_p, r_p) = (component.a_p, component.r_p);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let r_x = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);

    let c_1 = sheet.step(steps::C_1, a * (1.0 + r_x) * a_p / r_p * i_p);
    let c_min = sheet.step(steps::C_MIN, 0.10);
    let c_l = f64::max(c_min, c_1);
    let governs = demand::governing(c_l, &[(steps::C_1, c_1), (steps::C_MIN, c_min)]);
    let k_i = component.is_isolated.then(|| sheet.step(steps::K_I, 2.0));
    let c_p = match k_i {
        None => sheet.step(steps::C_P, c_l),
        Some(k_i) => sheet.step(steps::C_P_ISOLATED, k_i * c_l),
    };
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    let c_v = zone::vertical(values, z, sheet);
    sheet.step(steps::E_V, c_v * w_p);

    let is_deep = values.choice(fields::ANCHORS) == Some(DEEP);
    let r_pa = match is_deep {
        true => sheet.step(steps::R_PA_DEEP, r_p),
        false => sheet.step(steps::R_PA_SHALLOW, f64::min(1.5, r_p)),
    };
    let c_1a = sheet.step(steps::C_1A, a * (1.0 + r_x) * a_p / r_pa * i_p);
    let k_a = match values.number(fields::ANCHOR_FACTOR) {
        Some(k_a) => sheet.step(steps::K_A_GIVEN, k_a),
        None => sheet.step(steps::K_A, 2.0),
    };
    let c_pa = match k_i {
        None => sheet.step(steps::C_PA, k_a * f64::max(c_min, c_1a)),
        Some(k_i) => sheet.step(steps::C_PA_ISOLATED, k_a * k_i * f64::max(c_min, c_1a)),
    };
    sheet.step(steps::F_PA, c_pa * w_p);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);

    let forces = cases::Forces { component: c_p, anchors: c_pa, vertical: c_v };
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases: cases::cases(values, forces, sheet),
        not_amplified: Some(steps::NOT_AMPLIFIED),
        category_c: None,
        anchors: AnchorsAsked { depth: is_deep.then_some((8.0, steps::NOT_DEEP)), ..AnchorsAsked::default() },
    })
}

/// Place of the word of the field `anchor_type`.
const DEEP: usize = 0;

fn faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::ZONE), values.number(fields::Z)) {
        (None, None) => faults.push((fields::ZONE, Problem::NeedsOneOf, "zone or zone_factor")),
        (Some(_), Some(_)) => faults.push((fields::Z, Problem::Excludes, "zone or zone_factor, not both")),
        _ => {}
    }
    if values.choice(fields::COMPONENT).is_some() && components::row(values).is_none() {
        component_row::given_faults(values, &[fields::A_P, fields::R_P], faults);
    }
    HEIGHTS.faults(values, faults);
}
