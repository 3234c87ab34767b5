//! Uniform Building Code 1997, section 1632: lateral force on equipment supported by structures.
//!
//! Covers zones 1 to 4 with soil S_A to S_E and near sources, both equations with their limits, and the reduced response
//! factor for anchors. Does not cover: soil S_F, the relief of 1629.4.2 on the near-source factor, relative movement (1632.4).

mod components;
mod fields;
mod site;
mod steps;

use alloc::vec;
use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::component_row;
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::UBC_1997;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::{Directions, Format, Level, LoadCase};
use crate::rules::ground_spectrum::{self, GroundSpectrum};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "ubc-1997",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| match values.number(fields::C_A) {
        Some(_) => Strength::Field(fields::C_A),
        None => Strength::Zones(fields::ZONE),
    },
    spectrum: Some(&SPECTRUM),
};

/// The ground: figure 16-3.
static SPECTRUM: GroundSpectrum =
    ground_spectrum::of_c_a(&[&[steps::C_A_GIVEN, steps::C_A_ZONE_1_3, steps::C_A_ZONE_2, steps::C_A_ZONE_4]]);

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "ubc-1997",
    title: "Uniform Building Code 1997, section 1632: equipment supported by structures",
    document: &UBC_1997,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Soil profile S_F needs an investigation of the site: give C_a from it. The relief of 1629.4.2 on the near-source factor and \
        relative movement of attachments (1632.4) are not here. Equipment heavier than 25 % of the structure is designed with it. \
        Attachments of floor-mounted equipment under 181 kg (400 lb) are exempt; this is not checked. The edition has no \
        overstrength factor for components; anchors get a lower response factor instead, and anchor rules that need the amplified \
        force ask for a factor. Most rows of Table 16-O are from memory.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::H_X, roof: steps::H_R, ratio: steps::R_H, ratio_at_base: steps::R_H_GRADE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let c_a = match site::c_a(values, sheet) {
        Ok(c_a) => c_a,
        Err(reason) => {
            sheet.step(reason, 0.0);
            return Err(reason);
        }
    };
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let Push { component: c_p, governs, anchors: c_pa } = if values.choice(fields::EQUATION) == Some(SIMPLE) {
        simple(c_a, i_p, sheet)
    } else {
        full(values, c_a, i_p, sheet)
    };
    // 30-1 with I_p for I
    let c_v = sheet.step(steps::C_V, 0.5 * c_a * i_p);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);
    let horizontal_anchors = anchors(values, c_pa, w_p, sheet);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let cases = cases(Forces { component: c_p, anchors: horizontal_anchors, vertical: c_v }, sheet);
    let category_c = site::is_zone_2_or_higher(values, c_a).then_some(steps::CATEGORY_C);
    // The simple equation does not ask how deep anchors are, but the footnote on isolators does.
    let is_simple = values.choice(fields::EQUATION) == Some(SIMPLE);
    let asks_depth = !is_simple || components::is_isolated(values);
    let is_deep = values.choice(fields::ANCHORS) == Some(DEEP);
    let depth = (is_deep && asks_depth).then_some((8.0, steps::NOT_DEEP));
    let is_ductile = matches!(values.choice(fields::ANCHORS), Some(DEEP | SHALLOW));
    // Footnote 14 of Table 16-O.
    let not_expansion = (is_deep && components::is_isolated(values)).then_some(steps::NOT_EXPANSION);
    let not_ductile = (!is_simple && is_ductile).then_some(steps::NOT_DUCTILE);
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases,
        not_amplified: Some(steps::NOT_AMPLIFIED),
        category_c,
        anchors: AnchorsAsked { depth, not_ductile, not_expansion, ..AnchorsAsked::default() },
    })
}

/// Place of the word of the field `equation`.
const SIMPLE: usize = 1;
/// Place of the word of the field `anchor_type`.
const DEEP: usize = 0;
const SHALLOW: usize = 1;

/// Horizontal force over weight after the limits.
struct Push {
    component: f64,
    governs: StepId,
    anchors: f64,
}

/// 32-1, which knows neither height nor response factor.
fn simple(c_a: f64, i_p: f64, sheet: &mut Sheet) -> Push {
    let c_1 = sheet.step(steps::C_1, 4.0 * c_a * i_p);
    Push {
        component: sheet.step(steps::C_P_SIMPLE, c_1),
        governs: steps::C_1,
        anchors: sheet.step(steps::C_PA_SIMPLE, c_1),
    }
}

/// 32-2 within 32-3, for the component and again for its anchors.
fn full(values: &Values, c_a: f64, i_p: f64, sheet: &mut Sheet) -> Push {
    let component = components::component(values, sheet);
    let (a_p, r_p) = (component.a_p, component.r_p);
    let r_h = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let c_2 = sheet.step(steps::C_2, a_p * c_a * i_p / r_p * (1.0 + 3.0 * r_h));
    let c_max = sheet.step(steps::C_MAX, 4.0 * c_a * i_p);
    let c_min = sheet.step(steps::C_MIN, 0.7 * c_a * i_p);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, f64::min(c_max, c_2)));
    let r_pa = match values.choice(fields::ANCHORS) {
        Some(DEEP) => sheet.step(steps::R_PA_DEEP, r_p),
        Some(SHALLOW) => sheet.step(steps::R_PA_SHALLOW, f64::min(1.5, r_p)),
        _ => sheet.step(steps::R_PA_NONDUCTILE, f64::min(1.0, r_p)),
    };
    let c_2a = sheet.step(steps::C_2A, a_p * c_a * i_p / r_pa * (1.0 + 3.0 * r_h));
    let governs = demand::governing(c_p, &[(steps::C_2, c_2), (steps::C_MAX, c_max), (steps::C_MIN, c_min)]);
    Push { component: c_p, governs, anchors: sheet.step(steps::C_PA, f64::max(c_min, f64::min(c_max, c_2a))) }
}

/// Horizontal force over weight for anchors in concrete: doubled under isolators by footnote 14, then times 1.1.
fn anchors(values: &Values, c_pa: f64, w_p: f64, sheet: &mut Sheet) -> f64 {
    if components::is_isolated(values) && values.choice(fields::ANCHORS) != Some(DEEP) {
        let k_a = sheet.step(steps::K_ISOLATED, 2.0);
        let c_pi = sheet.step(steps::C_PA_ISOLATED, k_a * c_pa);
        sheet.step(steps::F_PA_ISOLATED, c_pi * w_p);
        return sheet.step(steps::H_ANCHORS_ISOLATED, 1.1 * c_pi);
    }
    sheet.step(steps::F_PA, c_pa * w_p);
    sheet.step(steps::H_ANCHORS, 1.1 * c_pa)
}

/// Forces over weight that enter the combinations; those for anchors with their load factor.
struct Forces {
    component: f64,
    anchors: f64,
    vertical: f64,
}

/// 1612.2.1, with exception 2 for concrete: what the feet press on, and what anchors hold in.
fn cases(forces: Forces, sheet: &mut Sheet) -> Vec<LoadCase> {
    let c_v = forces.vertical;
    let v_1 = sheet.step(steps::V_HEAVY, 1.2 + c_v);
    let v_2 = sheet.step(steps::V_LIGHT, 0.9 - c_v);
    let horizontal_concrete = sheet.step(steps::H_CONCRETE, 1.1 * forces.component);
    sheet.step(steps::V_HEAVY_ANCHORS, 1.1 * v_1);
    sheet.step(steps::V_LIGHT_ANCHORS, 1.1 * v_2);
    let case = |name, level, gravity, vertical, horizontal| LoadCase {
        name,
        gravity,
        vertical,
        horizontal,
        level,
        directions: Directions::Any,
    };
    vec![
        case(steps::HEAVY, Level::Component, 1.2, c_v, forces.component),
        case(steps::LIGHT, Level::Component, 0.9, -c_v, forces.component),
        case(steps::HEAVY_CONCRETE, Level::Concrete, 1.1 * 1.2, 1.1 * c_v, horizontal_concrete),
        case(steps::LIGHT_CONCRETE, Level::Concrete, 1.1 * 0.9, -1.1 * c_v, horizontal_concrete),
        case(steps::HEAVY_ANCHORS, Level::Anchorage, 1.1 * 1.2, 1.1 * c_v, forces.anchors),
        case(steps::LIGHT_ANCHORS, Level::Anchorage, 1.1 * 0.9, -1.1 * c_v, forces.anchors),
    ]
}

fn faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::ZONE), values.number(fields::C_A)) {
        (None, None) => faults.push((fields::ZONE, Problem::NeedsOneOf, "zone or seismic_coefficient")),
        (Some(_), Some(_)) => faults.push((fields::C_A, Problem::Excludes, "zone or seismic_coefficient, not both")),
        (Some(site::ZONE_4), None) => source_faults(values, faults),
        _ => {}
    }
    if values.choice(fields::COMPONENT).is_some() && components::row(values).is_none() {
        component_row::given_faults(values, &[fields::A_P, fields::R_P], faults);
    }
    if values.choice(fields::EQUATION) != Some(SIMPLE) {
        HEIGHTS.faults(values, faults);
    }
}

/// What zone 4 asks for. In other zones a source may be given already, so that the highest zone can be looked for.
fn source_faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::SOURCE), values.number(fields::DISTANCE)) {
        (None, _) => faults.push((fields::SOURCE, Problem::Missing, "A, B or C, because zone is \"4\"")),
        (Some(site::SOURCE_C), _) | (_, Some(_)) => {}
        (Some(_), None) => faults.push((fields::DISTANCE, Problem::Missing, "a distance, because zone is \"4\"")),
    }
}
