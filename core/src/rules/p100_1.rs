//! P100-1/2013 chapter 10: non-structural components, Romania.
//!
//! Covers the horizontal force with its two limits. Does not cover: the factor by which fixings must be stronger than the
//! component, which has to be given; floor spectra; the vertical force.

use alloc::vec;

use super::attachment::{HeightFields, HeightSteps};
use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::P100_1;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::{Problem, Values};
use crate::load_case::{Directions, Format, Level, LoadCase};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "p100-1-2013",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |_| Strength::Field(fields::A_G),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "p100-1-2013",
    title: "Romania: P100-1/2013, chapter 10: non-structural components",
    document: &P100_1,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "The whole rule is from memory: hold it against the code before anything is built. The behaviour factors of its table are not \
        here, only that they lie between 1.5 and 2.5: look yours up. Fixings have to be stronger than the component; by how much could not \
        be recalled and has to be given. The soil does not enter the force. No vertical force is asked. Parts that need a floor spectrum \
        are not here. There is no overstrength factor beside that of the fixings.",
};

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::Z, roof: steps::H, ratio: steps::R_Z, ratio_at_base: steps::R_Z_BASE };

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        A_G "ground_acceleration" Number { kind: Kind::Acceleration, min: 0.01, max: 2.0 }, Fault,
            "Design ground acceleration a_g",
            "Of the place, from the map of the code, in g.",
            "P100-1/2013 3.1", [];
        GAMMA "component_importance" Number { kind: Kind::Number, min: 1.0, max: 2.0 }, Fault,
            "Importance factor of the component gamma_CNS",
            "1.5 for life safety systems and for dangerous contents, otherwise 1.0.",
            "P100-1/2013 10.3.1", [];
        FLEXIBILITY "flexibility" Choice(&["rigid", "flexible", "given"]), Fault,
            "Flexibility of the component",
            "Whether the component with its fixings amplifies the motion of its floor.",
            "P100-1/2013 10.3.1",
            ["rigid", "flexible", "factor given below"];
        BETA "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
            "Amplification factor beta_CNS",
            "Stands in place of 1.0 for rigid and 2.5 for flexible.",
            "P100-1/2013 10.3.1", [];
        Q "behaviour_factor" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Fault,
            "Behaviour factor q_CNS",
            "From the table of the code, mostly between 1.5 and 2.5; 1.0 takes no reduction.",
            "P100-1/2013 10.3.1", [];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above the base of the building at which the cabinet is attached; 0 or below there.",
            "P100-1/2013 10.3.1", [];
        ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
            "Height of the building",
            "Average height of the roof above the base. Needed when the cabinet stands above the base.",
            "P100-1/2013 10.3.1", [];
        ANCHOR_FACTOR "anchor_factor" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Fault,
            "Factor for fixings",
            "By how much fixings have to be stronger than the component. The code asks for it; its number could not be recalled, so look it up. 1.0 takes none.",
            "P100-1/2013 chapter 10", [];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::{EN_1990, P100_1};

    steps! { 102 "p100-1-2013";
        A_G "a_g" Acceleration (INPUT "" Derived) "Design ground acceleration": Given;
        GAMMA "gamma_CNS" Number (INPUT "" Derived) "Importance factor of the component": Given;
        RIGID "beta_CNS" Number (P100_1 "10.3.1" Memory) "Amplification factor of a rigid component": Condition;
        FLEXIBLE "beta_CNS" Number (P100_1 "10.3.1" Memory) "Amplification factor of a flexible component": Condition;
        BETA_GIVEN "beta_CNS" Number (INPUT "" Derived) "Amplification factor": Given;
        Q "q_CNS" Number (INPUT "" Derived) "Behaviour factor": Given;
        Z "z" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
        H "H" Height (INPUT "" Derived) "Height of the building above the base": Given;
        R_Z "r_z" Number (P100_1 "10.3.1" Memory) "Height of the attachment over height of the building, at most 1" = "min(1, z / H)";
        R_Z_BASE "r_z" Number (P100_1 "10.3.1" Memory) "Attached at or below the base": Condition;
        K_Z "K_z" Number (P100_1 "10.3.1" Memory) "Amplification with height" = "1 + 2 * r_z";
        C_1 "c_1" Acceleration (P100_1 "10.3.1" Memory) "Horizontal force over the weight, before limits" = "gamma_CNS * a_g * beta_CNS * K_z / q_CNS";
        C_MAX "c_max" Acceleration (P100_1 "10.3.1" Memory) "It need not be more than" = "4 * gamma_CNS * a_g";
        C_MIN "c_min" Acceleration (P100_1 "10.3.1" Memory) "It may not be less than" = "0.75 * gamma_CNS * a_g";
        C_P "c_p" Acceleration (P100_1 "10.3.1" Memory) "Horizontal force over the weight" = "max(c_min, min(c_max, c_1))";
        W "W" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F "F_CNS" Force (P100_1 "10.3.1" Memory) "Horizontal force on the cabinet" = "c_p * W";
        K_A "k_a" Number (INPUT "" Derived) "Factor for fixings": Given;
        C_PA "c_pa" Acceleration (P100_1 "chapter 10" Memory) "Horizontal force over the weight for anchors" = "k_a * c_p";
        F_A "F_a" Force (P100_1 "chapter 10" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W";

        CASE "G+A" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed": Name;
        CASE_ANCHORS "G+A a" Number (EN_1990 "6.4.3.4" Memory) "G + A_Ed, anchors": Name;

        NOT_AMPLIFIED "overstrength" Number (P100_1 "chapter 10" Memory) "This code has no overstrength factor for components beside the factor for fixings.": Reason;
    }
}

/// Place of the word of the field `flexibility`.
const FLEXIBLE: usize = 1;
const GIVEN: usize = 2;

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let a_g = sheet.step(steps::A_G, values.given(fields::A_G));
    let gamma = sheet.step(steps::GAMMA, values.given(fields::GAMMA));
    let beta = match (values.number(fields::BETA), values.choice(fields::FLEXIBILITY)) {
        (Some(beta), _) => sheet.step(steps::BETA_GIVEN, beta),
        (None, Some(FLEXIBLE)) => sheet.step(steps::FLEXIBLE, 2.5),
        (None, _) => sheet.step(steps::RIGID, 1.0),
    };
    let q = sheet.step(steps::Q, values.given(fields::Q));
    let r_z = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let k_z = sheet.step(steps::K_Z, 1.0 + 2.0 * r_z);
    let c_1 = sheet.step(steps::C_1, gamma * a_g * beta * k_z / q);
    let c_max = sheet.step(steps::C_MAX, 4.0 * gamma * a_g);
    let c_min = sheet.step(steps::C_MIN, 0.75 * gamma * a_g);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, f64::min(c_max, c_1)));
    let w = sheet.carry(steps::W, weight_n);
    sheet.step(steps::F, c_p * w);
    let k_a = sheet.step(steps::K_A, values.given(fields::ANCHOR_FACTOR));
    let c_pa = sheet.step(steps::C_PA, k_a * c_p);
    sheet.step(steps::F_A, c_pa * w);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);

    let case = |name, level, horizontal| LoadCase {
        name,
        gravity: 1.0,
        vertical: 0.0,
        horizontal,
        level,
        directions: Directions::Any,
    };
    Ok(Demand {
        push: c_p,
        governs: demand::governing(c_p, &[(steps::C_1, c_1), (steps::C_MAX, c_max), (steps::C_MIN, c_min)]),
        vertical: 0.0,
        cases: vec![case(steps::CASE, Level::Component, c_p), case(steps::CASE_ANCHORS, Level::Anchorage, c_pa)],
        not_amplified: Some(steps::NOT_AMPLIFIED),
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

fn faults(values: &Values, faults: &mut Faults) {
    if values.choice(fields::FLEXIBILITY) == Some(GIVEN) && values.number(fields::BETA).is_none() {
        faults.push((fields::BETA, Problem::Missing, "a number, because flexibility is \"given\""));
    }
    HEIGHTS.faults(values, faults);
}
