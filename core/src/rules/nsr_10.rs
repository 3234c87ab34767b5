//! NSR-10 of Colombia, chapter A.9: nonstructural elements.
//!
//! Covers the force from the acceleration at the point of support, its lower limit, and the response factor by kind of
//! anchor. Does not cover: the soil tables, the least response factor of each performance grade, vertical force.

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::combination::{Acting, Pair};
use super::component_row::RowNumber;
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength, governing};
use super::documents::NSR_10;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::Values;
use crate::load_case::{Format, Level};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "nsr-10",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    // At or below the base the building does not count.
    strength: |values| {
        let is_above_base = values.number(fields::ATTACHMENT).is_some_and(|height| height > 0.0);
        let is_of_building = is_above_base && values.number(fields::S_A).is_some();
        Strength::Field(if is_of_building { fields::S_A } else { fields::A_A })
    },
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "nsr-10",
    title: "Colombia: NSR-10, chapter A.9: nonstructural elements",
    document: &NSR_10,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "All of it is from memory. A_a and F_a are asked for, since the tables of municipalities and soils were not at hand. Where the \
        spectral value of the building is not given, the top of the spectrum is taken. The clause demands a least response factor by the \
        building's performance grade, which is not here: an anchor with a lower one may not be used there. R_p by kind of anchor can be \
        replaced. The acceleration at the support falls with height where S_a is below A_s; that is the clause's own. No vertical force is \
        recalled. The edition has no amplified level for anchors, and anchor rules that need it ask for a factor.",
};

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        A_A "peak_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Fault,
            "Effective peak acceleration A_a",
            "Of the municipality, from the tables of the regulation, in g.",
            "NSR-10 A.2.3", [];
        F_A "soil_coefficient" Number { kind: Kind::Number, min: 0.8, max: 3.5 }, Fault,
            "Site coefficient F_a",
            "For short periods, from the soil profile and A_a.",
            "NSR-10 Table A.2.4-3", [];
        IMPORTANCE "building_importance" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
            "Importance coefficient I",
            "Of the building's group of use: 1.0 for ordinary buildings, up to 1.5 for indispensable ones.",
            "NSR-10 Table A.2.5-1", [];
        S_A "building_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Unknown,
            "Spectral acceleration of the building S_a",
            "Of the design spectrum at the period of the building, with importance in it, in g. Without it the top of the spectrum is taken, 2.5 A_a F_a I.",
            "NSR-10 A.2.6", [];
        A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Fault,
            "Amplification factor a_p",
            "1.0 for rigid, 2.5 for flexible components.",
            "NSR-10 Table A.9.6-1", [];
        ANCHORS "anchor_type" Choice(&["special", "ductile", "nonductile", "wet"]), Fault,
            "Kind of anchors",
            "Chooses R_p. Expansion anchors, chemical ones, those set with powder and those embedded less than eight diameters are nonductile.",
            "NSR-10 A.9.4.9",
            ["special", "ductile", "nonductile", "set in mortar, without mechanical hold"];
        R_P "component_response" Number { kind: Kind::Number, min: 0.5, max: 6.0 }, Unknown,
            "Response factor R_p",
            "Stands in place of the value of the kind of anchor.",
            "NSR-10 A.9.4.9", [];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above the base of the building at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
            "NSR-10 A.9.4.2", [];
        ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
            "Height of the building",
            "Height of the roof above the base. Needed when the cabinet stands above the base.",
            "NSR-10 A.9.4.2", [];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::NSR_10;

    steps! { 117 "nsr-10";
        A_A "A_a" Acceleration (INPUT "" Derived) "Effective peak acceleration": Given;
        F_A "F_a" Number (INPUT "" Derived) "Site coefficient at short periods": Given;
        I "I" Number (INPUT "" Derived) "Importance coefficient of the building": Given;
        A_S "A_s" Acceleration (NSR_10 "A.9.4.2" Memory) "Acceleration at the surface" = "A_a * F_a * I";
        S_A "S_a" Acceleration (NSR_10 "A.2.6-3" Memory) "Spectral acceleration of the building: the top of the spectrum, since none is given" = "2.5 * A_a * F_a * I";
        S_A_GIVEN "S_a" Acceleration (INPUT "" Derived) "Spectral acceleration of the building": Given;
        H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
        H_N "h_n" Height (INPUT "" Derived) "Height of the roof above the base": Given;
        R_H "r_h" Number (NSR_10 "A.9.4.2" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, h_x / h_n)";
        R_H_BASE "r_h" Number (NSR_10 "A.9.4.2" Memory) "Attached at or below the base": Condition;
        R_EQ "r_eq" Number (NSR_10 "A.9.4.2" Memory) "Height of the attachment over the equivalent height, 0.75 of that of the roof" = "r_h / 0.75";
        A_X_LOW "a_x" Acceleration (NSR_10 "A.9.4.2" Memory) "Acceleration at the support, up to the equivalent height" = "A_s + (S_a - A_s) * r_eq";
        A_X_HIGH "a_x" Acceleration (NSR_10 "A.9.4.2" Memory) "Acceleration at the support, above the equivalent height" = "S_a * r_eq";
        A_P "a_p" Number (INPUT "" Derived) "Amplification factor": Given;
        SPECIAL "anchors" Number (NSR_10 "A.9.4.9" Memory) "Special anchors": Name;
        DUCTILE "anchors" Number (NSR_10 "A.9.4.9" Memory) "Ductile anchors": Name;
        NONDUCTILE "anchors" Number (NSR_10 "A.9.4.9" Memory) "Nonductile anchors": Name;
        WET "anchors" Number (NSR_10 "A.9.4.9" Memory) "Anchors set in mortar, without mechanical hold": Name;
        R_P "R_p" Number (NSR_10 "A.9.4.9" Memory) "Response factor of the kind of anchor": Table;
        R_P_GIVEN "R_p" Number (INPUT "" Derived) "Response factor": Given;
        C_F "c_f" Acceleration (NSR_10 "A.9.4.2" Memory) "Horizontal force over the weight, before its lower limit" = "a_x * a_p / R_p";
        C_MIN "c_min" Acceleration (NSR_10 "A.9.4.2" Memory) "It may not be less than" = "A_a * I / 2";
        C_P "c_p" Acceleration (NSR_10 "A.9.4.2" Memory) "Horizontal force over the weight" = "max(c_min, c_f)";
        W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F_P "F_p" Force (NSR_10 "A.9.4.2" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
        C_V "c_v" Acceleration (NSR_10 "A.9.4" Memory) "No vertical force on nonstructural elements": Condition;
        V_1 "v_1" Number (NSR_10 "B.2.4" Memory) "Downward load over the weight where weight adds" = "1.2 + c_v";
        V_2 "v_2" Number (NSR_10 "B.2.4" Memory) "Downward load over the weight where weight holds down" = "0.9 - c_v";

        HEAVY "1.2" Number (NSR_10 "B.2.4" Memory) "1.2 D + 1.0 E": Name;
        LIGHT "0.9" Number (NSR_10 "B.2.4" Memory) "0.9 D + 1.0 E": Name;

        NOT_DEEP "anchor type" Number (NSR_10 "A.9.4.9" Memory) "an anchor is embedded less than eight diameters, which makes it nonductile; the demand was asked for special or ductile anchors": Reason;
        NOT_AMPLIFIED "overstrength" Number (NSR_10 "A.9.4" Memory) "This edition has no overstrength factor for components: the kind of anchor lowers the response factor instead.": Reason;
        NOT_DUCTILE "anchor type" Number (NSR_10 "A.9.4.9" Memory) "an anchor is an expansion anchor, adhesive or of steel that counts as brittle, which makes it nonductile; the demand was asked for special or ductile anchors": Reason;
    }
}

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::H_X, roof: steps::H_N, ratio: steps::R_H, ratio_at_base: steps::R_H_BASE };
const COMBINATIONS: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_1, steps::V_2],
    gravity: [1.2, 0.9],
    level: Level::Component,
};

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let a_a = sheet.step(steps::A_A, values.given(fields::A_A));
    let f_a = sheet.step(steps::F_A, values.given(fields::F_A));
    let i = sheet.step(steps::I, values.given(fields::IMPORTANCE));
    let a_s = sheet.step(steps::A_S, a_a * f_a * i);
    let s_a = match values.number(fields::S_A) {
        Some(s_a) => sheet.step(steps::S_A_GIVEN, s_a),
        None => sheet.step(steps::S_A, 2.5 * a_a * f_a * i),
    };
    // A.9.4.2
    let r_h = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let r_eq = sheet.step(steps::R_EQ, r_h / 0.75);
    let a_x = if limit::at_most(r_eq, 1.0) {
        sheet.step(steps::A_X_LOW, a_s + (s_a - a_s) * r_eq)
    } else {
        sheet.step(steps::A_X_HIGH, s_a * r_eq)
    };
    let a_p = sheet.step(steps::A_P, values.given(fields::A_P));
    let anchors = values.choice(fields::ANCHORS).unwrap_or(WET);
    sheet.step(ANCHORS[anchors], 0.0);
    let r_p = RowNumber { field: fields::R_P, given: steps::R_P_GIVEN, table: steps::R_P };
    let r_p = r_p.tell(values, Some(R_P[anchors]), sheet);
    let c_f = sheet.step(steps::C_F, a_x * a_p / r_p);
    let c_min = sheet.step(steps::C_MIN, a_a * i / 2.0);
    let push = sheet.step(steps::C_P, f64::max(c_min, c_f));
    let governs = governing(push, &[(steps::C_F, c_f), (steps::C_MIN, c_min)]);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, push * w_p);
    let vertical = sheet.step(steps::C_V, 0.0);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let mut cases = Vec::with_capacity(2);
    cases.extend(COMBINATIONS.cases(Acting { horizontal: push, vertical }, sheet));
    let depth = (anchors <= DUCTILE).then_some((8.0, steps::NOT_DEEP));
    let not_ductile = (anchors <= DUCTILE).then_some(steps::NOT_DUCTILE);
    let not_amplified = Some(steps::NOT_AMPLIFIED);
    Ok(Demand {
        push,
        governs,
        vertical,
        cases,
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked { depth, not_ductile, not_expansion: not_ductile, ..AnchorsAsked::default() },
    })
}

/// R_p by kind of anchor, in the order of the words of the field.
static R_P: [f64; 4] = [6.0, 3.0, 1.5, 0.5];
static ANCHORS: [StepId; 4] = [steps::SPECIAL, steps::DUCTILE, steps::NONDUCTILE, steps::WET];
const DUCTILE: usize = 1;
const WET: usize = 3;

fn faults(values: &Values, faults: &mut Faults) {
    HEIGHTS.faults(values, faults);
}
