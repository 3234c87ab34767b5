//! GB 50011-2010 section 13.2: the equivalent lateral force on equipment, in the frequent earthquake.
//!
//! Covers F = gamma eta zeta_1 zeta_2 alpha_max G with the load factors of GB 50011 or of GB 55002-2021. Does not cover:
//! the floor-spectrum method of appendix M.3, vertical action, resistance.

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::combination::{Acting, Pair};
use super::component_row::{RowNumber, given_faults};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::GB_50011;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::{Format, Level};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "gb-50011",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |values| match values.number(fields::ALPHA) {
        Some(_) => Strength::Field(fields::ALPHA),
        None => Strength::Zones(fields::INTENSITY),
    },
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "gb-50011",
    title: "China: GB 50011-2010, section 13.2: nonstructural components",
    document: &GB_50011,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "The force is that of the frequent earthquake, so the load factor on it is part of the demand. The floor-spectrum method \
        (appendix M.3), which the code for mechanical and electrical works asks for where the equipment's period is above 0.1 s and its \
        weight above 1 % of the floor's, or its weight above 10 % of the floor's, is not here: give its coefficient directly. Vertical \
        action enters only where chapter 5 asks for it, and is not here. The formula and tables are from memory; the rows of table M.2.3 \
        are shaky, so give both factors yourself where they matter. The reduction of anchors' strength by JGJ 145 is not here, and the \
        edition has no amplified level for anchors.",
};

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        INTENSITY "intensity" Choice(&["6", "7", "7-0.15g", "8", "8-0.30g", "9"]), Unknown,
            "Intensity of fortification",
            "Of the place, with its design acceleration, from appendix A of the code. Give this, or the coefficient alpha_max instead.",
            "GB 50011-2010 Table 5.1.4-1",
            ["6 (0.05 g)", "7 (0.10 g)", "7 (0.15 g)", "8 (0.20 g)", "8 (0.30 g)", "9 (0.40 g)"];
        ALPHA "influence_coefficient" Number { kind: Kind::Acceleration, min: 0.01, max: 1.0 }, Unknown,
            "Greatest influence coefficient alpha_max",
            "For the frequent earthquake, where it is known for the site. It stands in place of the intensity.",
            "GB 50011-2010 Table 5.1.4-1", [];
        COMPONENT "component" Choice(&["emergency-power", "cabinet", "tank", "given"]), Fault,
            "Kind of component",
            "The row of the table that fits.",
            "GB 50011-2010 Table M.2.3",
            ["Emergency power and its control, generator, chiller", "Cabinet-like equipment", "Water tank, cooling tower", "Values given below"];
        CLASS "building_class" Choice(&["A", "B", "C"]), Fault,
            "Class of the building",
            "How much depends on the building: A most, B more than usual, C usual. Chooses the importance factor of the row; a usual building asks for less than half of the first.",
            "GB 50011-2010 Table M.2.3", ["A", "B", "C"];
        GAMMA "importance_factor" Number { kind: Kind::Number, min: 0.6, max: 2.0 }, Unknown,
            "Importance factor gamma",
            "Stands in place of the row's value.",
            "GB 50011-2010 Table M.2.3", [];
        ETA "class_factor" Number { kind: Kind::Number, min: 0.6, max: 2.0 }, Unknown,
            "Factor of the kind of component eta",
            "Stands in place of the row's value.",
            "GB 50011-2010 Table M.2.3", [];
        STATE "state_factor" Number { kind: Kind::Number, min: 1.0, max: 2.0 }, Unknown,
            "State factor zeta_1",
            "2.0 for equipment supported below its centre of mass, which a cabinet on its feet is, and for flexible systems. Give 1.0 only where the clause allows it.",
            "GB 50011-2010 13.2.3", [];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above the ground at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
            "GB 50011-2010 13.2.3", [];
        ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
            "Height of the building",
            "Height of the top of the building above the ground. Needed when the cabinet stands above the ground.",
            "GB 50011-2010 13.2.3", [];
        FACTORS "load_factors" Choice(&["gb-55002", "gb-50011"]), Word(0),
            "Load factors",
            "Those of the general code of 2021, or the lower ones that GB 50011 itself carries.",
            "GB 50011-2010 5.4.1, GB 55002-2021",
            ["GB 55002-2021: 1.3 and 1.4", "GB 50011-2010: 1.2 and 1.3"];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::{GB_50011, GB_55002};

    steps! { 38 "gb-50011";
        INTENSITY_6 "intensity" Number (GB_50011 "Table 5.1.4-1" Memory) "Intensity 6": Name;
        INTENSITY_7 "intensity" Number (GB_50011 "Table 5.1.4-1" Memory) "Intensity 7": Name;
        INTENSITY_7_HIGH "intensity" Number (GB_50011 "Table 5.1.4-1" Memory) "Intensity 7, design acceleration 0.15 g": Name;
        INTENSITY_8 "intensity" Number (GB_50011 "Table 5.1.4-1" Memory) "Intensity 8": Name;
        INTENSITY_8_HIGH "intensity" Number (GB_50011 "Table 5.1.4-1" Memory) "Intensity 8, design acceleration 0.30 g": Name;
        INTENSITY_9 "intensity" Number (GB_50011 "Table 5.1.4-1" Memory) "Intensity 9": Name;
        ALPHA "alpha_max" Acceleration (GB_50011 "Table 5.1.4-1" Memory) "Greatest influence coefficient in the frequent earthquake": Table;
        ALPHA_GIVEN "alpha_max" Acceleration (INPUT "" Derived) "Greatest influence coefficient in the frequent earthquake": Given;
        ROW_EMERGENCY "row" Number (GB_50011 "Table M.2.3" Memory) "Emergency power and its control, generator, chiller": Name;
        ROW_CABINET "row" Number (GB_50011 "Table M.2.3" Memory) "Cabinet-like equipment": Name;
        ROW_TANK "row" Number (GB_50011 "Table M.2.3" Memory) "Water tank, cooling tower": Name;
        ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
        CLASS_A "class" Number (GB_50011 "Table M.2.3" Memory) "Building of class A": Name;
        CLASS_B "class" Number (GB_50011 "Table M.2.3" Memory) "Building of class B": Name;
        CLASS_C "class" Number (GB_50011 "Table M.2.3" Memory) "Building of class C": Name;
        GAMMA "gamma" Number (GB_50011 "Table M.2.3" Memory) "Importance factor": Table;
        GAMMA_GIVEN "gamma" Number (INPUT "" Derived) "Importance factor": Given;
        ETA "eta" Number (GB_50011 "Table M.2.3" Memory) "Factor of the kind of component": Table;
        ETA_GIVEN "eta" Number (INPUT "" Derived) "Factor of the kind of component": Given;
        ZETA_1 "zeta_1" Number (GB_50011 "13.2.3" Memory) "State factor of equipment supported below its centre of mass": Condition;
        ZETA_1_GIVEN "zeta_1" Number (INPUT "" Derived) "State factor": Given;
        Z "z" Height (INPUT "" Derived) "Height of the attachment above the ground": Given;
        H "h" Height (INPUT "" Derived) "Height of the building": Given;
        R_Z "r_z" Number (GB_50011 "13.2.3" Memory) "Height of the attachment over height of the building, at most 1" = "min(1, z / h)";
        R_Z_BASE "r_z" Number (GB_50011 "13.2.3" Memory) "Attached at or below the ground": Condition;
        ZETA_2 "zeta_2" Number (GB_50011 "13.2.3" Memory) "Position factor: 1 at the bottom, 2 at the top, straight between" = "1 + r_z";
        FORCE "c_p" Acceleration (GB_50011 "13.2.3" Memory) "Horizontal force over the weight in the frequent earthquake, before its load factor" = "gamma * eta * zeta_1 * zeta_2 * alpha_max";
        W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F_P "F_p" Force (GB_50011 "13.2.3" Memory) "Horizontal force on the cabinet, before its load factor" = "c_p * W_p";
        C_V "c_v" Acceleration (GB_50011 "5.1.1" Memory) "No vertical force on equipment on an ordinary floor": Condition;
        C_D "c_d" Acceleration (GB_55002 "load factors" Memory) "Horizontal force over the weight, with its load factor" = "1.4 * c_p";
        C_D_OLD "c_d" Acceleration (GB_50011 "5.4.1" Memory) "Horizontal force over the weight, with its load factor" = "1.3 * c_p";
        V_HEAVY "v_1" Number (GB_55002 "load factors" Memory) "Downward load over the weight where weight adds" = "1.3 + c_v";
        V_HEAVY_OLD "v_1" Number (GB_50011 "5.4.1" Memory) "Downward load over the weight where weight adds" = "1.2 + c_v";
        V_LIGHT "v_2" Number (GB_50011 "5.4.1" Memory) "Downward load over the weight where weight helps" = "1.0 - c_v";

        HEAVY "1.3" Number (GB_55002 "load factors" Memory) "1.3 G + 1.4 E": Name;
        LIGHT "1.0" Number (GB_55002 "load factors" Memory) "1.0 G + 1.4 E": Name;
        HEAVY_OLD "1.2" Number (GB_50011 "5.4.1" Memory) "1.2 G + 1.3 E": Name;
        LIGHT_OLD "1.0 old" Number (GB_50011 "5.4.1" Memory) "1.0 G + 1.3 E": Name;

        NOT_AMPLIFIED "overstrength" Number (GB_50011 "13.2" Memory) "This edition has no amplified force for anchors: the reduction of their strength is in JGJ 145.": Reason;
    }
}

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let alpha_max = influence(values, sheet);
    let (gamma, eta) = component(values, sheet);
    let zeta_1 = match values.number(fields::STATE) {
        Some(zeta_1) => sheet.step(steps::ZETA_1_GIVEN, zeta_1),
        None => sheet.step(steps::ZETA_1, 2.0),
    };
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let zeta_2 = sheet.step(steps::ZETA_2, 1.0 + r_z);
    // 13.2.3
    let push = sheet.step(steps::FORCE, gamma * eta * zeta_1 * zeta_2 * alpha_max);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, push * w_p);
    let vertical = sheet.step(steps::C_V, 0.0);
    let (horizontal, pair) = match values.choice(fields::FACTORS) {
        Some(OLD_FACTORS) => (sheet.step(steps::C_D_OLD, 1.3 * push), OF_2010),
        _ => (sheet.step(steps::C_D, 1.4 * push), OF_2021),
    };
    sheet.step(steps::NOT_AMPLIFIED, 0.0);
    let mut cases = Vec::with_capacity(2);
    cases.extend(pair.cases(Acting { horizontal, vertical }, sheet));
    let not_amplified = Some(steps::NOT_AMPLIFIED);
    Ok(Demand {
        push,
        governs: steps::FORCE,
        vertical,
        cases,
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

const OF_2021: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_HEAVY, steps::V_LIGHT],
    gravity: [1.3, 1.0],
    level: Level::Component,
};
const OF_2010: Pair = Pair {
    names: [steps::HEAVY_OLD, steps::LIGHT_OLD],
    downs: [steps::V_HEAVY_OLD, steps::V_LIGHT],
    gravity: [1.2, 1.0],
    level: Level::Component,
};
/// Place of the word of the field `load_factors`.
const OLD_FACTORS: usize = 1;

fn influence(values: &Values, sheet: &mut Sheet) -> f64 {
    match (values.number(fields::ALPHA), values.choice(fields::INTENSITY)) {
        (None, Some(intensity)) => {
            sheet.step(INTENSITIES[intensity], 0.0);
            sheet.step(steps::ALPHA, ALPHA_MAX[intensity])
        }
        _ => sheet.step(steps::ALPHA_GIVEN, values.given(fields::ALPHA)),
    }
}

/// gamma and eta of Table M.2.3, or the user's in their place.
fn component(values: &Values, sheet: &mut Sheet) -> (f64, f64) {
    let row = ROWS.get(values.choice(fields::COMPONENT).unwrap_or(ROWS.len()));
    sheet.step(row.map_or(steps::ROW_GIVEN, |row| row.name), 0.0);
    let class = values.choice(fields::CLASS).unwrap_or(CLASSES.len() - 1);
    sheet.step(CLASSES[class], 0.0);
    let gamma = RowNumber { field: fields::GAMMA, given: steps::GAMMA_GIVEN, table: steps::GAMMA };
    let eta = RowNumber { field: fields::ETA, given: steps::ETA_GIVEN, table: steps::ETA };
    (gamma.tell(values, row.map(|row| row.gamma[class]), sheet), eta.tell(values, row.map(|row| row.eta), sheet))
}

/// A row of Table M.2.3.
struct Row {
    name: StepId,
    /// By class of the building.
    gamma: [f64; 3],
    eta: f64,
}

/// In the order of the words of the field `component`; the last word, `given`, has none.
static ROWS: [Row; 3] = [
    Row { name: steps::ROW_EMERGENCY, gamma: [1.4, 1.4, 1.4], eta: 1.0 },
    Row { name: steps::ROW_CABINET, gamma: [1.4, 1.0, 0.6], eta: 0.6 },
    Row { name: steps::ROW_TANK, gamma: [1.4, 1.0, 1.0], eta: 1.2 },
];
static CLASSES: [StepId; 3] = [steps::CLASS_A, steps::CLASS_B, steps::CLASS_C];

/// Table 5.1.4-1, frequent earthquake, by intensity.
static ALPHA_MAX: [f64; 6] = [0.04, 0.08, 0.12, 0.16, 0.24, 0.32];
static INTENSITIES: [StepId; 6] = [
    steps::INTENSITY_6,
    steps::INTENSITY_7,
    steps::INTENSITY_7_HIGH,
    steps::INTENSITY_8,
    steps::INTENSITY_8_HIGH,
    steps::INTENSITY_9,
];

fn faults(values: &Values, faults: &mut Faults) {
    match (values.choice(fields::INTENSITY), values.number(fields::ALPHA)) {
        (None, None) => faults.push((fields::INTENSITY, Problem::NeedsOneOf, "intensity or influence_coefficient")),
        (Some(_), Some(_)) => {
            faults.push((fields::ALPHA, Problem::Excludes, "intensity or influence_coefficient, not both"));
        }
        _ => {}
    }
    if values.choice(fields::COMPONENT) == Some(ROWS.len()) {
        given_faults(values, &[fields::GAMMA, fields::ETA], faults);
    }
    HEIGHTS.faults(values, faults);
}
