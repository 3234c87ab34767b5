//! The force of 4.1.8.18.(1), which the editions share: each brings its own steps and the places of its fields.

use alloc::vec;

use crate::calc::{Sheet, StepId};
use crate::input::Values;
use crate::load_case::{Directions, Level, LoadCase};
use crate::rules::attachment::{HeightFields, HeightSteps};
use crate::rules::component_row::{self, RowNumber};
use crate::rules::demand::{self, AnchorsAsked, Demand, Faults};

/// Places of an edition's fields.
pub struct ForceFields {
    pub category: usize,
    pub component: usize,
    pub c_p: usize,
    pub a_r: usize,
    pub r_p: usize,
    pub anchors: usize,
    pub heights: HeightFields,
}

/// An edition's steps.
pub struct ForceSteps {
    pub categories: [StepId; 4],
    pub i_e: StepId,
    pub rows: [StepId; 8],
    pub row_given: StepId,
    pub c_p_row: StepId,
    pub c_p_given: StepId,
    pub a_r_row: StepId,
    pub a_r_given: StepId,
    pub r_p_row: StepId,
    pub r_p_given: StepId,
    pub heights: HeightSteps,
    pub a_x: StepId,
    pub s_1: StepId,
    pub s_p: StepId,
    pub c_1: StepId,
    pub c_max: StepId,
    pub c_min: StepId,
    pub c: StepId,
    pub w_p: StepId,
    pub v_p: StepId,
    pub r_pa: [StepId; 3],
    pub s_1a: StepId,
    pub s_pa: StepId,
    pub c_a: StepId,
    pub v_pa: StepId,
    pub case: StepId,
    pub case_anchors: StepId,
    pub not_deep: StepId,
    pub not_ductile: StepId,
    pub not_amplified: StepId,
}

/// I_E of the importance category.
pub fn importance(fields: &ForceFields, steps: &ForceSteps, values: &Values, sheet: &mut Sheet) -> f64 {
    let category = values.choice(fields.category).unwrap_or(POST_DISASTER);
    sheet.step(steps.categories[category], 0.0);
    sheet.step(steps.i_e, I_E[category])
}

/// The demand for a site's I_E times its spectral acceleration at 0.2 s with the soil.
pub fn demand(
    fields: &ForceFields,
    steps: &ForceSteps,
    values: &Values,
    site: SiteAndWeight,
    sheet: &mut Sheet,
) -> Demand {
    let row = ROWS.get(values.choice(fields.component).unwrap_or(ROWS.len()));
    sheet.step(
        values.choice(fields.component).and_then(|place| steps.rows.get(place)).copied().unwrap_or(steps.row_given),
        0.0,
    );
    let c_p = RowNumber { field: fields.c_p, given: steps.c_p_given, table: steps.c_p_row };
    let a_r = RowNumber { field: fields.a_r, given: steps.a_r_given, table: steps.a_r_row };
    let r_p = RowNumber { field: fields.r_p, given: steps.r_p_given, table: steps.r_p_row };
    let c_p = c_p.tell(values, row.map(|row| row.c_p), sheet);
    let a_r = a_r.tell(values, row.map(|row| row.a_r), sheet);
    let r_p = r_p.tell(values, row.map(|row| row.r_p), sheet);
    let r_h = fields.heights.ratio(values, steps.heights, sheet);
    let a_x = sheet.step(steps.a_x, 1.0 + 2.0 * r_h);

    let s_x = site.s_x;
    let s_1 = sheet.step(steps.s_1, c_p * a_r * a_x / r_p);
    let s_p = sheet.step(steps.s_p, s_1.clamp(0.7, 4.0));
    let c_1 = sheet.step(steps.c_1, 0.3 * s_x * s_1);
    let c_max = sheet.step(steps.c_max, 0.3 * s_x * 4.0);
    let c_min = sheet.step(steps.c_min, 0.3 * s_x * 0.7);
    let c = sheet.step(steps.c, 0.3 * s_x * s_p);
    let w_p = sheet.carry(steps.w_p, site.weight_n);
    sheet.step(steps.v_p, c * w_p);

    let anchors = values.choice(fields.anchors).unwrap_or(NONDUCTILE);
    let r_pa = match anchors {
        DEEP => r_p,
        SHALLOW => f64::min(1.5, r_p),
        _ => f64::min(1.0, r_p),
    };
    sheet.step(steps.r_pa[anchors], r_pa);
    let s_1a = sheet.step(steps.s_1a, c_p * a_r * a_x / r_pa);
    let s_pa = sheet.step(steps.s_pa, s_1a.clamp(0.7, 4.0));
    let c_a = sheet.step(steps.c_a, 0.3 * s_x * s_pa);
    sheet.step(steps.v_pa, c_a * w_p);
    sheet.step(steps.not_amplified, 0.0);

    let case = |name, level, horizontal| LoadCase {
        name,
        gravity: 1.0,
        vertical: 0.0,
        horizontal,
        level,
        directions: Directions::Any,
    };
    Demand {
        push: c,
        governs: demand::governing(c, &[(steps.c_1, c_1), (steps.c_max, c_max), (steps.c_min, c_min)]),
        vertical: 0.0,
        cases: vec![case(steps.case, Level::Component, c), case(steps.case_anchors, Level::Anchorage, c_a)],
        not_amplified: Some(steps.not_amplified),
        category_c: None,
        anchors: AnchorsAsked {
            depth: (anchors == DEEP).then_some((8.0, steps.not_deep)),
            not_ductile: (anchors != NONDUCTILE).then_some(steps.not_ductile),
            ..AnchorsAsked::default()
        },
    }
}

/// What an edition has worked out of the site, and the weight.
pub struct SiteAndWeight {
    /// I_E times the spectral acceleration at 0.2 s with the soil.
    pub s_x: f64,
    /// Weight of the cabinet.
    pub weight_n: f64,
}

/// Values that the word `given` asks for, and heights.
pub fn faults(fields: &ForceFields, values: &Values, faults: &mut Faults) {
    if values.choice(fields.component) == Some(ROWS.len()) {
        component_row::given_faults(values, &[fields.c_p, fields.a_r, fields.r_p], faults);
    }
    fields.heights.faults(values, faults);
}

/// Places of the words of the fields `importance_category` and `anchor_type`.
pub const POST_DISASTER: usize = 3;
const DEEP: usize = 0;
const SHALLOW: usize = 1;
const NONDUCTILE: usize = 2;

/// Importance factors of the ultimate limit state.
static I_E: [f64; 4] = [0.8, 1.0, 1.3, 1.5];

/// One row of Table 4.1.8.18.
struct Row {
    c_p: f64,
    a_r: f64,
    r_p: f64,
}

/// The rows, in the order of the words of the field `component`; the last word, `given`, has none.
static ROWS: [Row; 8] = [
    Row { c_p: 1.0, a_r: 1.0, r_p: 1.25 },
    Row { c_p: 1.0, a_r: 2.5, r_p: 2.5 },
    Row { c_p: 1.5, a_r: 1.0, r_p: 1.25 },
    Row { c_p: 1.5, a_r: 2.5, r_p: 2.5 },
    Row { c_p: 1.0, a_r: 1.0, r_p: 2.5 },
    Row { c_p: 1.0, a_r: 1.0, r_p: 1.0 },
    Row { c_p: 1.0, a_r: 2.5, r_p: 2.5 },
    Row { c_p: 1.0, a_r: 2.5, r_p: 1.0 },
];
