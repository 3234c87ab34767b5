//! Uniform Building Code 1994, section 1630: lateral force on equipment supported by structures.
//!
//! Covers F_p = Z I_p C_p W_p at service level, taken to strength with the factor 1.4. Does not cover: analysis of
//! nonrigid equipment on its structure, the lower limit at grade by the section on nonbuilding structures.

use alloc::vec::Vec;

use super::combination::{Acting, Pair};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::UBC_1994;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::{Problem, Values};
use crate::load_case::{Format, Level};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "ubc-1994",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
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
    id: "ubc-1994",
    title: "Uniform Building Code 1994, section 1630: equipment supported by structures",
    document: &UBC_1994,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Analysis of nonrigid equipment together with its structure is not here: twice the table value stands in its place. At or \
        below grade two thirds of C_p is taken; that this is not less than the value for nonbuilding structures is not checked. The \
        edition asks for no vertical force on equipment. It works at service level: strength design multiplies by 1.4; its allowable \
        stresses with their increase of one third are not here, nor the multipliers that its chapter on concrete puts on anchors \
        designed by strength. It has no overstrength factor, and anchor rules that need the amplified force ask for a factor. Most of \
        it is from memory.",
};

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        ZONE "zone" Choice(&["1", "2A", "2B", "3", "4"]), Unknown,
            "Seismic zone",
            "Zone of the site on the code's map. Give this, or give Z instead.",
            "UBC 1994 Figure 16-2, Table 16-I", ["1", "2A", "2B", "3", "4"];
        Z "zone_factor" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Unknown,
            "Zone factor Z",
            "Where a specification gives it for the site. It stands in place of the zone.",
            "UBC 1994 Table 16-I", [];
        IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
            "Importance factor I_p",
            "1.5 in essential and hazardous facilities and for life-safety systems, otherwise 1.0. It is another factor than that of the building.",
            "UBC 1994 Table 16-K", [];
        COMPONENT "component" Choice(&["rigid", "nonrigid", "given"]), Fault,
            "Kind of component",
            "A cabinet whose natural period with its supports is above 0.06 s is nonrigid.",
            "UBC 1994 1630.2, Table 16-O",
            ["Rigid equipment, period at most 0.06 s", "Nonrigid equipment, or on nonrigid supports", "Value given below"];
        C_P "component_coefficient" Number { kind: Kind::Number, min: 0.5, max: 2.0 }, Unknown,
            "Coefficient C_p",
            "Stands in place of the table's value, before what attachment at grade takes off.",
            "UBC 1994 Table 16-O", [];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above grade at which the cabinet is attached: 0 on the ground floor, below zero in a basement. Above grade the height makes no difference in this edition.",
            "UBC 1994 1630.2", [];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::UBC_1994;

    steps! { 36 "ubc-1994";
        ZONE_1 "zone" Number (UBC_1994 "Figure 16-2" Memory) "Zone 1": Name;
        ZONE_2A "zone" Number (UBC_1994 "Figure 16-2" Memory) "Zone 2A": Name;
        ZONE_2B "zone" Number (UBC_1994 "Figure 16-2" Memory) "Zone 2B": Name;
        ZONE_3 "zone" Number (UBC_1994 "Figure 16-2" Memory) "Zone 3": Name;
        ZONE_4 "zone" Number (UBC_1994 "Figure 16-2" Memory) "Zone 4": Name;
        Z "Z" Acceleration (UBC_1994 "Table 16-I" Memory) "Zone factor": Table;
        Z_GIVEN "Z" Acceleration (INPUT "" Derived) "Zone factor": Given;
        I_P "I_p" Number (INPUT "" Derived) "Importance factor (Table 16-K)": Given;
        RIGID "row" Number (UBC_1994 "Table 16-O" Memory) "Rigid equipment, period at most 0.06 s": Name;
        NONRIGID "row" Number (UBC_1994 "1630.2" Memory) "Nonrigid equipment, or on nonrigid supports": Name;
        ROW_GIVEN "row" Number (INPUT "" Derived) "Component with a value given by the user": Name;
        C_T "C_t" Number (UBC_1994 "Table 16-O" Memory) "Coefficient of rigid equipment": Table;
        C_T_NONRIGID "C_t" Number (UBC_1994 "1630.2" Secondary) "Coefficient of nonrigid equipment: twice that of rigid, not more than 2.0": Condition;
        C_T_GIVEN "C_t" Number (INPUT "" Derived) "Coefficient": Given;
        H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above grade": Given;
        C_P "C_p" Number (UBC_1994 "1630.2" Memory) "Coefficient above grade" = "C_t";
        C_P_GRADE "C_p" Number (UBC_1994 "1630.2" Memory) "Coefficient at or below grade" = "2 / 3 * C_t";
        FORCE "c_p" Acceleration (UBC_1994 "30-1" Secondary) "Horizontal force over the weight, at service level" = "Z * I_p * C_p";
        W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F_P "F_p" Force (UBC_1994 "30-1" Secondary) "Horizontal force on the cabinet, at service level" = "c_p * W_p";
        C_U "c_u" Acceleration (UBC_1994 "strength design" Memory) "Horizontal force over the weight, with its load factor" = "1.4 * c_p";
        C_V "c_v" Acceleration (UBC_1994 "1630" Memory) "No vertical force on equipment": Condition;
        V_HEAVY "v_1" Number (UBC_1994 "strength design" Memory) "Downward load over the weight, weight adding: 1.4 D" = "1.4 + c_v";
        V_LIGHT "v_2" Number (UBC_1994 "strength design" Memory) "Downward load over the weight, weight holding down: 0.9 D" = "0.9 - c_v";

        HEAVY "1.4" Number (UBC_1994 "strength design" Memory) "1.4 (D + E)": Name;
        LIGHT "0.9" Number (UBC_1994 "strength design" Memory) "0.9 D + 1.4 E": Name;

        CATEGORY_C "seismic design category" Number (UBC_1994 "Table 16-I, as compared in ACI 318-05 R1.1.8.3" Memory) "zone 2A and higher compare with seismic design category C or higher; anchors may not be designed as in A or B": Reason;
        NOT_AMPLIFIED "overstrength" Number (UBC_1994 "1630" Memory) "This edition has no overstrength factor for components.": Reason;
    }
}

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let z = zone_factor(values, sheet);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let c_p = coefficient(values, sheet);
    let push = sheet.step(steps::FORCE, z * i_p * c_p);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, push * w_p);
    let horizontal = sheet.step(steps::C_U, 1.4 * push);
    let vertical = sheet.step(steps::C_V, 0.0);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let mut cases = Vec::with_capacity(2);
    cases.extend(COMBINATIONS.cases(Acting { horizontal, vertical }, sheet));
    // Zone 2A has Z = 0.15.
    let category_c = limit::at_least(z, Z[1]).then_some(steps::CATEGORY_C);
    Ok(Demand {
        push,
        governs: steps::FORCE,
        vertical,
        cases,
        not_amplified: Some(steps::NOT_AMPLIFIED),
        category_c,
        anchors: AnchorsAsked::default(),
    })
}

const COMBINATIONS: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_HEAVY, steps::V_LIGHT],
    gravity: [1.4, 0.9],
    level: Level::Component,
};

fn zone_factor(values: &Values, sheet: &mut Sheet) -> f64 {
    match (values.number(fields::Z), values.choice(fields::ZONE)) {
        (None, Some(zone)) => {
            sheet.step(ZONE_NAMES[zone], 0.0);
            sheet.step(steps::Z, Z[zone])
        }
        _ => sheet.step(steps::Z_GIVEN, values.given(fields::Z)),
    }
}

/// C_p of Table 16-O with what flexibility adds and attachment at grade takes off (1630.2).
fn coefficient(values: &Values, sheet: &mut Sheet) -> f64 {
    let (name, id, of_row) = match values.choice(fields::COMPONENT) {
        Some(RIGID) => (steps::RIGID, steps::C_T, Some(0.75)),
        Some(NONRIGID) => (steps::NONRIGID, steps::C_T_NONRIGID, Some(1.5)),
        _ => (steps::ROW_GIVEN, steps::C_T_GIVEN, None),
    };
    sheet.step(name, 0.0);
    let c_t = match (values.number(fields::C_P), of_row) {
        (None, Some(number)) => sheet.step(id, number),
        _ => sheet.step(steps::C_T_GIVEN, values.given(fields::C_P)),
    };
    if sheet.step(steps::H_X, values.given(fields::ATTACHMENT)) > 0.0 {
        sheet.step(steps::C_P, c_t)
    } else {
        sheet.step(steps::C_P_GRADE, 2.0 / 3.0 * c_t)
    }
}

// Places of the words of the field `component`.
const RIGID: usize = 0;
const NONRIGID: usize = 1;
const GIVEN: usize = 2;

/// Table 16-I, by zone.
static Z: [f64; 5] = [0.075, 0.15, 0.20, 0.30, 0.40];
static ZONE_NAMES: [StepId; 5] = [steps::ZONE_1, steps::ZONE_2A, steps::ZONE_2B, steps::ZONE_3, steps::ZONE_4];

fn faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::ZONE), values.number(fields::Z)) {
        (None, None) => faults.push((fields::ZONE, Problem::NeedsOneOf, "zone or zone_factor")),
        (Some(_), Some(_)) => faults.push((fields::Z, Problem::Excludes, "zone or zone_factor, not both")),
        _ => {}
    }
    if values.choice(fields::COMPONENT) == Some(GIVEN) {
        super::component_row::given_faults(values, &[fields::C_P], faults);
    }
}
