//! A coefficient that somebody else has determined: the client's specification, a floor spectrum, another country's rule.
//!
//! Covers any horizontal coefficient with its vertical one, the factors on gravity and, if known, overstrength for
//! anchors in concrete. It checks nothing of where the numbers come from.

use alloc::vec::Vec;

use super::demand::{self, AnchorsAsked, Demand, DemandRule, DemandRuleText, Faults, Strength};
use crate::calc::clause::INPUT;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::{Problem, Values};
use crate::load_case::{Format, Level, LoadCase};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "direct",
    fields: fields::FIELDS,
    format,
    faults,
    demand,
    strength: |_| Strength::Field(fields::HORIZONTAL),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "direct",
    title: "A coefficient given directly",
    document: &INPUT,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "It takes the numbers as they are given: whether they suit the site, the building and the format is for whoever gives them \
        to show. Without an overstrength factor there is no amplified level for anchors in concrete.",
};

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        FORMAT "format" Choice(&["strength", "limit-states", "allowable-stress"]), Fault,
            "Format of the numbers",
            "How the coefficient is meant to be compared with capacity. Only an anchor rule of the same format can be used with it.",
            "", ["Strength design with load factors", "Limit states with partial factors", "Allowable stress"];
        HORIZONTAL "horizontal_coefficient" Number { kind: Kind::Acceleration, min: 0.001, max: 10.0 }, Fault,
            "Horizontal coefficient",
            "Horizontal force over weight, as it enters the load case: with importance and load factor in it, before overstrength.",
            "", [];
        VERTICAL "vertical_coefficient" Number { kind: Kind::Acceleration, min: 0.0, max: 5.0 }, Fault,
            "Vertical coefficient",
            "Vertical force over weight that acts up or down together with the horizontal one, as it enters the load case. 0 where none is asked for.",
            "", [];
        HEAVY "gravity_heavy" Number { kind: Kind::Number, min: 0.5, max: 2.0 }, Fault,
            "Gravity factor where weight adds",
            "Factor on the weight in the heavy load case, such as 1.2 in strength design or 1.0 in limit states.",
            "", [];
        LIGHT "gravity_light" Number { kind: Kind::Number, min: 0.0, max: 1.2 }, Fault,
            "Gravity factor where weight holds down",
            "Factor on the weight in the light load case, such as 0.9 in strength design, 0.6 in allowable stress, 1.0 in limit states.",
            "", [];
        OVERSTRENGTH "overstrength" Number { kind: Kind::Number, min: 1.0, max: 4.0 }, Unknown,
            "Overstrength factor",
            "Factor on the horizontal force for anchors in concrete whose failure is brittle. There is no usual value: leave it empty if the specification gives none, and seismic concrete checks that need it are then not covered.",
            "", [];
        DIRECTIONS "directions" Choice(&["any", "100-30"]), Word(0),
            "Directions",
            "The full force in any horizontal direction, or 100 % along one axis together with 30 % along the other.",
            "", ["the full force in every horizontal direction", "100 % along one axis with 30 % along the other"];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;

    steps! { 33 "direct";
        STRENGTH "format" Number (INPUT "" Derived) "Strength design with load factors": Name;
        LIMIT_STATES "format" Number (INPUT "" Derived) "Limit states with partial factors": Name;
        ALLOWABLE_STRESS "format" Number (INPUT "" Derived) "Allowable stress": Name;
        C_P "c_p" Acceleration (INPUT "" Derived) "Horizontal force over the weight": Given;
        C_V "c_v" Acceleration (INPUT "" Derived) "Vertical force over the weight, up or down together with the horizontal one": Given;
        W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F_P "F_p" Force (STATICS "" Derived) "Horizontal force on the cabinet" = "c_p * W_p";
        E_V "E_v" Force (STATICS "" Derived) "Vertical force on the cabinet" = "c_v * W_p";
        OMEGA_0 "Omega_0" Number (INPUT "" Derived) "Overstrength factor": Given;
        C_M "c_m" Acceleration (STATICS "" Derived) "Horizontal force over the weight for anchors in concrete" = "Omega_0 * c_p";
        F_M "F_m" Force (STATICS "" Derived) "Horizontal force on the cabinet for anchors in concrete" = "c_m * W_p";
        G_HEAVY "g_h" Number (INPUT "" Derived) "Gravity factor where weight adds": Given;
        G_LIGHT "g_l" Number (INPUT "" Derived) "Gravity factor where weight holds down": Given;
        V_HEAVY "v_h" Number (STATICS "" Derived) "Downward load over the weight in the heavy load case" = "g_h + c_v";
        V_LIGHT "v_l" Number (STATICS "" Derived) "Downward load over the weight in the light load case" = "g_l - c_v";

        HEAVY "heavy" Number (INPUT "" Derived) "heavy: weight and vertical force add": Name;
        LIGHT "light" Number (INPUT "" Derived) "light: the vertical force lifts": Name;
        HEAVY_AMPLIFIED "heavy m" Number (INPUT "" Derived) "heavy, with overstrength": Name;
        LIGHT_AMPLIFIED "light m" Number (INPUT "" Derived) "light, with overstrength": Name;

        NOT_AMPLIFIED "overstrength" Number (INPUT "" Derived) "No overstrength factor was given with the coefficient.": Reason;
    }
}

fn format(values: &Values) -> Format {
    match values.choice(fields::FORMAT) {
        Some(1) => Format::LimitStates,
        Some(2) => Format::AllowableStress,
        _ => Format::Strength,
    }
}

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let name = match format(values) {
        Format::Strength => steps::STRENGTH,
        Format::LimitStates => steps::LIMIT_STATES,
        Format::AllowableStress => steps::ALLOWABLE_STRESS,
    };
    sheet.step(name, 0.0);
    let c_p = sheet.step(steps::C_P, values.given(fields::HORIZONTAL));
    let c_v = sheet.step(steps::C_V, values.given(fields::VERTICAL));
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);
    let g_heavy = sheet.step(steps::G_HEAVY, values.given(fields::HEAVY));
    let g_light = sheet.step(steps::G_LIGHT, values.given(fields::LIGHT));
    sheet.step(steps::V_HEAVY, g_heavy + c_v);
    sheet.step(steps::V_LIGHT, g_light - c_v);

    let directions = demand::directions(values, fields::DIRECTIONS);
    let heavy =
        |name, level, horizontal| LoadCase { name, gravity: g_heavy, vertical: c_v, horizontal, level, directions };
    let light =
        |name, level, horizontal| LoadCase { name, gravity: g_light, vertical: -c_v, horizontal, level, directions };
    let mut cases = Vec::with_capacity(4);
    cases.push(heavy(steps::HEAVY, Level::Component, c_p));
    cases.push(light(steps::LIGHT, Level::Component, c_p));
    let not_amplified = match values.number(fields::OVERSTRENGTH) {
        Some(omega_0) => {
            sheet.step(steps::OMEGA_0, omega_0);
            let c_m = sheet.step(steps::C_M, omega_0 * c_p);
            sheet.step(steps::F_M, c_m * w_p);
            cases.push(heavy(steps::HEAVY_AMPLIFIED, Level::Amplified, c_m));
            cases.push(light(steps::LIGHT_AMPLIFIED, Level::Amplified, c_m));
            None
        }
        None => {
            sheet.step(steps::NOT_AMPLIFIED, 0.0);
            Some(steps::NOT_AMPLIFIED)
        }
    };
    let governs = steps::C_P;
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases,
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked::default(),
    })
}

fn faults(values: &Values, faults: &mut Faults) {
    match (values.number(fields::HEAVY), values.number(fields::LIGHT)) {
        (Some(heavy), Some(light)) if limit::more(light, heavy) => {
            faults.push((fields::LIGHT, Problem::AboveLimit, "not above gravity_heavy"));
        }
        _ => {}
    }
}
