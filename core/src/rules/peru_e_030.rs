//! Peru's E.030 (2018), chapter VI: nonstructural elements.
//!
//! Covers the force from a floor acceleration that an analysis of the building gave, the smallest force, the force at or
//! below the base, and the vertical force. Does not cover: that analysis; flexible equipment above the base.

use alloc::vec::Vec;

use super::combination::{Acting, Pair};
use super::component_row::RowNumber;
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength, governing};
use super::documents::E_030;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::{Format, Level};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "peru-e-030",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| {
        if values.number(fields::FLOOR).is_some() && is_above_base(values) {
            Strength::Field(fields::FLOOR)
        } else if values.number(fields::Z).is_some() {
            Strength::Field(fields::Z)
        } else {
            Strength::Zones(fields::ZONE)
        }
    },
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "peru-e-030",
    title: "Peru: E.030, chapter VI: nonstructural elements",
    document: &E_030,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Above the base the force needs the acceleration of the floor from an analysis of the building: without it only the smallest \
        force could be given, which is no design force, so that is not covered. Flexible or flexibly fixed equipment has no coefficient \
        above the base: it needs the spectrum of its floor, whose value can be given directly. Zone, soil and use factors are from memory; \
        each can be replaced. The soil factor given by you stands in place of the table for every zone. The edition has no amplified level \
        for anchors, and anchor rules that need it ask for a factor; its factor 0.8 for allowable stress is not here.",
};

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        ZONE "zone" Choice(&["1", "2", "3", "4"]), Unknown,
            "Seismic zone",
            "Zone of the district, from annex II of the standard. Give this, or give Z and S instead.",
            "E.030 article 10", ["1", "2", "3", "4"];
        SOIL "soil_profile" Choice(&["S0", "S1", "S2", "S3"]), Word(3),
            "Soil profile",
            "Soil under the building, from the soil study; the softest where it is not known. Only used with the zone.",
            "E.030 articles 12, 13", ["S_0: hard rock", "S_1: rock or very stiff soil", "S_2: intermediate soil", "S_3: soft soil"];
        Z "zone_factor" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Unknown,
            "Zone factor Z",
            "Stands in place of the zone, together with S.",
            "E.030 article 10", [];
        S "soil_factor" Number { kind: Kind::Number, min: 0.5, max: 2.5 }, Unknown,
            "Soil factor S",
            "Stands in place of the table's value.",
            "E.030 article 13", [];
        USE "building_use" Choice(&["A2", "B", "C"]), Fault,
            "Use of the building",
            "Category of the building: essential, important, common.",
            "E.030 article 15", ["A2: essential", "B: important", "C: common"];
        U "use_factor" Number { kind: Kind::Number, min: 1.0, max: 2.0 }, Unknown,
            "Use factor U",
            "Stands in place of the category's value.",
            "E.030 article 15", [];
        COMPONENT "component" Choice(&["rigid", "flexible", "falls-outside", "given"]), Fault,
            "Kind of component",
            "Rigid equipment rigidly fixed to the floor has a coefficient; flexible equipment has none above the base.",
            "E.030 article 38",
            ["Rigid equipment, rigidly fixed to the floor", "Flexible equipment, or flexibly fixed", "Element that could fall out of the building",
             "Coefficient given below"];
        C_1 "component_coefficient" Number { kind: Kind::Number, min: 1.0, max: 10.0 }, Unknown,
            "Coefficient C_1",
            "Stands in place of the table's value.",
            "E.030 article 38", [];
        FLOOR "floor_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
            "Acceleration of the floor",
            "At the level of the attachment, in g, from the seismic analysis of the building: its acceleration, or its storey force over its weight. Only used above the base.",
            "E.030 article 38", [];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above the base of the building at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
            "E.030 article 39", [];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::{E_030, E_060};

    steps! { 116 "peru-e-030";
        ZONE_1 "zone" Number (E_030 "article 10" Memory) "Zone 1": Name;
        ZONE_2 "zone" Number (E_030 "article 10" Memory) "Zone 2": Name;
        ZONE_3 "zone" Number (E_030 "article 10" Memory) "Zone 3": Name;
        ZONE_4 "zone" Number (E_030 "article 10" Memory) "Zone 4": Name;
        Z "Z" Acceleration (E_030 "article 10" Memory) "Zone factor": Table;
        Z_GIVEN "Z" Acceleration (INPUT "" Derived) "Zone factor": Given;
        SOIL_0 "soil" Number (E_030 "article 12" Memory) "Soil profile S_0": Name;
        SOIL_1 "soil" Number (E_030 "article 12" Memory) "Soil profile S_1": Name;
        SOIL_2 "soil" Number (E_030 "article 12" Memory) "Soil profile S_2": Name;
        SOIL_3 "soil" Number (E_030 "article 12" Memory) "Soil profile S_3": Name;
        S "S" Number (E_030 "article 13" Memory) "Soil factor in this zone": Table;
        S_GIVEN "S" Number (INPUT "" Derived) "Soil factor": Given;
        USE_A2 "use" Number (E_030 "article 15" Memory) "Essential building, A2": Name;
        USE_B "use" Number (E_030 "article 15" Memory) "Important building, B": Name;
        USE_C "use" Number (E_030 "article 15" Memory) "Common building, C": Name;
        U "U" Number (E_030 "article 15" Memory) "Use factor": Table;
        U_GIVEN "U" Number (INPUT "" Derived) "Use factor": Given;
        ROW_RIGID "row" Number (E_030 "article 38" Published) "Rigid equipment, rigidly fixed to the floor": Name;
        ROW_FLEXIBLE "row" Number (E_030 "article 38" Published) "Flexible equipment, or flexibly fixed": Name;
        ROW_OUTSIDE "row" Number (E_030 "article 38" Published) "Element that could fall out of the building": Name;
        ROW_GIVEN "row" Number (INPUT "" Derived) "Component with a coefficient given by the user": Name;
        H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
        C_1 "C_1" Number (E_030 "article 38" Published) "Coefficient of the component": Table;
        C_1_GIVEN "C_1" Number (INPUT "" Derived) "Coefficient of the component": Given;
        A_I "a_i" Acceleration (INPUT "" Derived) "Acceleration of the floor from the analysis of the building": Given;
        C_F "c_f" Acceleration (E_030 "article 38" Published) "Horizontal force over the weight, before its lower limit" = "a_i * C_1";
        C_MIN "c_min" Acceleration (E_030 "article 38" Published) "It may not be less than" = "0.5 * Z * U * S";
        C_P "c_p" Acceleration (E_030 "article 38" Published) "Horizontal force over the weight" = "max(c_min, c_f)";
        C_P_BASE "c_p" Acceleration (E_030 "article 39" Published) "Horizontal force over the weight at or below the base" = "0.5 * Z * U * S";
        C_V "c_v" Acceleration (E_030 "article 40" Published) "Vertical force over the weight, up or down together with the horizontal one" = "2 / 3 * c_p";
        W_P "P_e" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F_P "F" Force (E_030 "article 38" Published) "Horizontal force on the cabinet" = "c_p * P_e";
        F_V "F_v" Force (E_030 "article 40" Published) "Vertical force on the cabinet" = "c_v * P_e";
        V_1 "v_1" Number (E_060 "9.2" Memory) "Downward load over the weight where weight adds" = "1.25 + c_v";
        V_2 "v_2" Number (E_060 "9.2" Memory) "Downward load over the weight where weight holds down" = "0.9 - c_v";

        HEAVY "1.25" Number (E_060 "9.2" Memory) "1.25 CM + CS": Name;
        LIGHT "0.9" Number (E_060 "9.2" Memory) "0.9 CM - CS": Name;

        NO_FLOOR "floor acceleration" Number (E_030 "article 38" Published) "above the base the force needs the acceleration of the floor from an analysis of the building; the smallest force alone is no design force": Reason;
        NO_ROW "flexible equipment" Number (E_030 "article 38" Published) "flexible or flexibly fixed equipment has no coefficient above the base: it needs the spectrum of its floor": Reason;
        NOT_AMPLIFIED "overstrength" Number (E_030 "chapter VI" Published) "This edition has no overstrength factor for components.": Reason;
    }
}

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let z = zone_factor(values, sheet);
    let s = soil_factor(values, sheet);
    let place = values.choice(fields::USE).unwrap_or(0);
    sheet.step(USES[place], 0.0);
    let u = RowNumber { field: fields::U, given: steps::U_GIVEN, table: steps::U };
    let u = u.tell(values, Some(U[place]), sheet);
    let component = values.choice(fields::COMPONENT).unwrap_or(FLEXIBLE);
    sheet.step(ROWS[component], 0.0);
    sheet.step(steps::H_X, values.given(fields::ATTACHMENT));
    let (push, governs) = if is_above_base(values) {
        let c_f = from_floor(values, component, sheet).inspect_err(|&reason| {
            sheet.step(reason, 0.0);
        })?;
        let c_min = sheet.step(steps::C_MIN, 0.5 * z * u * s);
        let c_p = sheet.step(steps::C_P, f64::max(c_min, c_f));
        (c_p, governing(c_p, &[(steps::C_F, c_f), (steps::C_MIN, c_min)]))
    } else {
        (sheet.step(steps::C_P_BASE, 0.5 * z * u * s), steps::C_P_BASE)
    };
    let vertical = sheet.step(steps::C_V, 2.0 / 3.0 * push);
    let p_e = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, push * p_e);
    sheet.step(steps::F_V, vertical * p_e);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let mut cases = Vec::with_capacity(2);
    cases.extend(COMBINATIONS.cases(Acting { horizontal: push, vertical }, sheet));
    let not_amplified = Some(steps::NOT_AMPLIFIED);
    Ok(Demand { push, governs, vertical, cases, not_amplified, category_c: None, anchors: AnchorsAsked::default() })
}

const COMBINATIONS: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_1, steps::V_2],
    gravity: [1.25, 0.9],
    level: Level::Component,
};

fn is_above_base(values: &Values) -> bool {
    values.number(fields::ATTACHMENT).is_some_and(|height| height > 0.0)
}

/// Force over weight from the floor's acceleration; the reason where the chapter has none.
fn from_floor(values: &Values, component: usize, sheet: &mut Sheet) -> Result<f64, StepId> {
    let of_row = match component {
        RIGID => Some(1.5),
        OUTSIDE => Some(3.0),
        FLEXIBLE if values.number(fields::C_1).is_none() => return Err(steps::NO_ROW),
        _ => None,
    };
    let c_1 = RowNumber { field: fields::C_1, given: steps::C_1_GIVEN, table: steps::C_1 };
    let c_1 = c_1.tell(values, of_row, sheet);
    let a_i = sheet.step(steps::A_I, values.number(fields::FLOOR).ok_or(steps::NO_FLOOR)?);
    Ok(sheet.step(steps::C_F, a_i * c_1))
}

fn zone_factor(values: &Values, sheet: &mut Sheet) -> f64 {
    match (values.number(fields::Z), values.choice(fields::ZONE)) {
        (None, Some(zone)) => {
            sheet.step(ZONES[zone], 0.0);
            sheet.step(steps::Z, Z[zone])
        }
        _ => sheet.step(steps::Z_GIVEN, values.given(fields::Z)),
    }
}

fn soil_factor(values: &Values, sheet: &mut Sheet) -> f64 {
    match (values.number(fields::S), values.choice(fields::ZONE)) {
        (None, Some(zone)) => {
            let soil = values.choice(fields::SOIL).unwrap_or(SOILS.len() - 1);
            sheet.step(SOILS[soil], 0.0);
            sheet.step(steps::S, S[zone][soil])
        }
        _ => sheet.step(steps::S_GIVEN, values.given(fields::S)),
    }
}

// Places of the words of the field `component`.
const RIGID: usize = 0;
const FLEXIBLE: usize = 1;
const OUTSIDE: usize = 2;
const GIVEN: usize = 3;
static ROWS: [StepId; 4] = [steps::ROW_RIGID, steps::ROW_FLEXIBLE, steps::ROW_OUTSIDE, steps::ROW_GIVEN];

/// Article 10, by zone.
static Z: [f64; 4] = [0.10, 0.25, 0.35, 0.45];
static ZONES: [StepId; 4] = [steps::ZONE_1, steps::ZONE_2, steps::ZONE_3, steps::ZONE_4];
/// Article 13, by zone and soil.
static S: [[f64; 4]; 4] =
    [[0.80, 1.00, 1.60, 2.00], [0.80, 1.00, 1.20, 1.40], [0.80, 1.00, 1.15, 1.20], [0.80, 1.00, 1.05, 1.10]];
static SOILS: [StepId; 4] = [steps::SOIL_0, steps::SOIL_1, steps::SOIL_2, steps::SOIL_3];
/// Article 15, by use.
static U: [f64; 3] = [1.5, 1.3, 1.0];
static USES: [StepId; 3] = [steps::USE_A2, steps::USE_B, steps::USE_C];

fn faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::ZONE), values.number(fields::Z)) {
        (None, None) => faults.push((fields::ZONE, Problem::NeedsOneOf, "zone or zone_factor")),
        (Some(_), Some(_)) => faults.push((fields::Z, Problem::Excludes, "zone or zone_factor, not both")),
        (None, Some(_)) if values.number(fields::S).is_none() => {
            faults.push((fields::S, Problem::Missing, "a number, because zone_factor stands in place of the zone"));
        }
        _ => {}
    }
    if values.choice(fields::COMPONENT) == Some(GIVEN) && is_above_base(values) {
        super::component_row::given_faults(values, &[fields::C_1], faults);
    }
}
