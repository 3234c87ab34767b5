//! The edition of 2020, whose spectral acceleration holds the soil already.

use super::force::{self, ForceFields, ForceSteps, SiteAndWeight};
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::Values;
use crate::load_case::Format;
use crate::rules::attachment::{HeightFields, HeightSteps};
use crate::rules::demand::{Demand, DemandRule, DemandRuleText, Faults, Strength};
use crate::rules::documents::NBC_2020;

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "nbc-2020",
    fields: fields::FIELDS,
    format: |_| Format::LimitStates,
    faults,
    demand,
    strength: |_| Strength::Field(fields::S_02),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "nbc-2020",
    title: "Canada: National Building Code 2020, 4.1.8.18: components and equipment",
    document: &NBC_2020,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "The edition was not read: its form and the limits of S_p are taken over from 2015, the rest is from memory, and each number of \
        the table of components can be replaced. S(0.2) is the design value for the site designation. Seismic categories SC1 and SC2, \
        whose components the code releases, are recalled by their limits and told only where S(1.0) is given too; the force then stands \
        for information. That post-disaster buildings are not released is taken over from 2015. Only the exemption of whole groups is \
        looked at. Anchors take no friction from gravity. There is no vertical force and no overstrength factor; what CSA A23.3 annex D \
        asks beyond that belongs to the anchor rule.",
};

static FORCE_FIELDS: ForceFields = ForceFields {
    category: fields::CATEGORY,
    component: fields::COMPONENT,
    c_p: fields::C_P,
    a_r: fields::A_R,
    r_p: fields::R_P,
    anchors: fields::ANCHORS,
    heights: HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF },
};

static FORCE_STEPS: ForceSteps = ForceSteps {
    categories: [steps::CATEGORY_LOW, steps::CATEGORY_NORMAL, steps::CATEGORY_HIGH, steps::CATEGORY_POST_DISASTER],
    i_e: steps::I_E,
    rows: [
        steps::ROW_EQUIPMENT_RIGID,
        steps::ROW_EQUIPMENT_FLEXIBLE,
        steps::ROW_HAZARDOUS_RIGID,
        steps::ROW_HAZARDOUS_FLEXIBLE,
        steps::ROW_RIGID_DUCTILE,
        steps::ROW_RIGID_NONDUCTILE,
        steps::ROW_FLEXIBLE_DUCTILE,
        steps::ROW_FLEXIBLE_NONDUCTILE,
    ],
    row_given: steps::ROW_GIVEN,
    c_p_row: steps::C_P,
    c_p_given: steps::C_P_GIVEN,
    a_r_row: steps::A_R,
    a_r_given: steps::A_R_GIVEN,
    r_p_row: steps::R_P,
    r_p_given: steps::R_P_GIVEN,
    heights: HeightSteps {
        attachment: steps::H_X,
        roof: steps::H_N,
        ratio: steps::R_H,
        ratio_at_base: steps::R_H_BASE,
    },
    a_x: steps::A_X,
    s_1: steps::S_1,
    s_p: steps::S_P,
    c_1: steps::C_1,
    c_max: steps::C_MAX,
    c_min: steps::C_MIN,
    c: steps::C,
    w_p: steps::W_P,
    v_p: steps::V_P,
    r_pa: [steps::R_PA_DEEP, steps::R_PA_SHALLOW, steps::R_PA_NONDUCTILE],
    s_1a: steps::S_1A,
    s_pa: steps::S_PA,
    c_a: steps::C_A,
    v_pa: steps::V_PA,
    case: steps::CASE,
    case_anchors: steps::CASE_ANCHORS,
    not_deep: steps::NOT_DEEP,
    not_ductile: steps::NOT_DUCTILE,
    not_amplified: steps::NOT_AMPLIFIED,
};

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let s_02 = sheet.step(steps::S_02, values.given(fields::S_02));
    let i_e = force::importance(&FORCE_FIELDS, &FORCE_STEPS, values, sheet);
    let s_x = sheet.step(steps::S_X, i_e * s_02);
    if let Some(s_10) = values.number(fields::S_10) {
        let s_10 = sheet.step(steps::S_10, s_10);
        let s_y = sheet.step(steps::S_Y, i_e * s_10);
        let is_released = values.choice(fields::CATEGORY) != Some(force::POST_DISASTER);
        if is_released && limit::less(s_x, 0.35) && limit::less(s_y, 0.2) {
            sheet.step(steps::EXEMPT, 0.0);
        }
    }
    Ok(force::demand(&FORCE_FIELDS, &FORCE_STEPS, values, SiteAndWeight { s_x, weight_n }, sheet))
}

fn faults(values: &Values, faults: &mut Faults) {
    force::faults(&FORCE_FIELDS, values, faults);
}

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        S_02 "s_02" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Fault,
            "Design spectral acceleration S(0.2)",
            "Of the place at a period of 0.2 s for the site designation, in g: the soil is in it.",
            "NBC 2020 4.1.8.4", [];
        S_10 "s_10" Number { kind: Kind::Acceleration, min: 0.001, max: 5.0 }, Unknown,
            "Design spectral acceleration S(1.0)",
            "The same at a period of 1.0 s. Only used to see whether the code releases the component.",
            "NBC 2020 4.1.8.4, 4.1.8.5", [];
        CATEGORY "importance_category" Choice(&["low", "normal", "high", "post-disaster"]), Fault,
            "Importance category of the building",
            "Of the building that the cabinet stands in.",
            "NBC 2020 Tables 4.1.2.1, 4.1.8.5", ["low", "normal", "high", "post-disaster"];
        COMPONENT "component" Choice(&["equipment-rigid", "equipment-flexible", "hazardous-rigid", "hazardous-flexible", "rigid-ductile",
                "rigid-nonductile", "flexible-ductile", "flexible-nonductile", "given"]), Fault,
            "Kind of component",
            "The description of the table that fits; numbers of its lines shift between editions. Rigid is a period of component and connection together of at most 0.06 s. Most tall cabinets are flexible.",
            "NBC 2020 Table 4.1.8.18",
            ["Machinery, equipment, tank with contents: rigid and rigidly connected", "Machinery, equipment, tank with contents: flexible or flexibly connected",
             "The same with toxic or explosive contents or for fighting fire: rigid", "The same with toxic or explosive contents or for fighting fire: flexible",
             "Other rigid component, ductile material and connections", "Other rigid component, non-ductile material or connections",
             "Other flexible component, ductile material and connections", "Other flexible component, non-ductile material or connections",
             "Values given below"];
        C_P "component_factor" Number { kind: Kind::Number, min: 0.5, max: 2.0 }, Unknown,
            "Seismic factor of the component C_p",
            "Stands in place of the row's value.",
            "NBC 2020 Table 4.1.8.18", [];
        A_R "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Unknown,
            "Component force amplification factor A_r",
            "Stands in place of the row's value.",
            "NBC 2020 Table 4.1.8.18", [];
        R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 5.0 }, Unknown,
            "Component response modification factor R_p",
            "Stands in place of the row's value.",
            "NBC 2020 Table 4.1.8.18", [];
        ANCHORS "anchor_type" Choice(&["deep", "shallow", "nonductile"]), Fault,
            "Type of anchors",
            "Shallow expansion, chemical, epoxy or cast-in anchors, embedded less than eight diameters, get a response factor of at most 1.5; non-ductile connections, adhesives and powder-actuated fasteners one of 1.0. Power-actuated fasteners and drop-in anchors may not be used in tension.",
            "NBC 2020 4.1.8.18",
            ["embedded at least eight diameters", "embedded less than eight diameters", "non-ductile, adhesive or powder-actuated"];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above the base of the building at which the cabinet is attached; 0 or below there.",
            "NBC 2020 4.1.8.18.(1)", [];
        ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
            "Height of the building",
            "To the uppermost level, above the base. Needed when the cabinet stands above the base.",
            "NBC 2020 4.1.8.18.(1)", [];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::NBC_2020;

    steps! { 107 "nbc-2020";
        S_02 "S_02" Acceleration (INPUT "" Derived) "Design spectral acceleration at 0.2 s": Given;
        CATEGORY_LOW "category" Number (NBC_2020 "Table 4.1.2.1" Memory) "Importance category low": Name;
        CATEGORY_NORMAL "category" Number (NBC_2020 "Table 4.1.2.1" Memory) "Importance category normal": Name;
        CATEGORY_HIGH "category" Number (NBC_2020 "Table 4.1.2.1" Memory) "Importance category high": Name;
        CATEGORY_POST_DISASTER "category" Number (NBC_2020 "Table 4.1.2.1" Memory) "Importance category post-disaster": Name;
        I_E "I_E" Number (NBC_2020 "Table 4.1.8.5" Memory) "Importance factor of the building": Table;
        S_X "s_x" Acceleration (NBC_2020 "4.1.8.18.(1)" Memory) "Importance factor times spectral acceleration at 0.2 s" = "I_E * S_02";
        S_10 "S_10" Acceleration (INPUT "" Derived) "Design spectral acceleration at 1.0 s": Given;
        S_Y "s_y" Acceleration (NBC_2020 "Table 4.1.8.5.-B" Memory) "Importance factor times spectral acceleration at 1.0 s" = "I_E * S_10";
        EXEMPT "exempt" Number (NBC_2020 "4.1.8.18; Table 4.1.8.5.-B" Memory) "Seismic category SC1 or SC2 and not post-disaster: the code releases these components; the force stands for information": Name;
        ROW_EQUIPMENT_RIGID "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "Machinery, equipment, tank with contents: rigid and rigidly connected": Name;
        ROW_EQUIPMENT_FLEXIBLE "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "Machinery, equipment, tank with contents: flexible or flexibly connected": Name;
        ROW_HAZARDOUS_RIGID "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "The same with toxic or explosive contents or for fighting fire: rigid": Name;
        ROW_HAZARDOUS_FLEXIBLE "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "The same with toxic or explosive contents or for fighting fire: flexible": Name;
        ROW_RIGID_DUCTILE "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "Other rigid component, ductile material and connections": Name;
        ROW_RIGID_NONDUCTILE "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "Other rigid component, non-ductile material or connections": Name;
        ROW_FLEXIBLE_DUCTILE "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "Other flexible component, ductile material and connections": Name;
        ROW_FLEXIBLE_NONDUCTILE "row" Number (NBC_2020 "Table 4.1.8.18" Memory) "Other flexible component, non-ductile material or connections": Name;
        ROW_GIVEN "row" Number (INPUT "" Derived) "Component with values given by the user": Name;
        C_P "C_p" Number (NBC_2020 "Table 4.1.8.18" Memory) "Seismic factor of the component": Table;
        C_P_GIVEN "C_p" Number (INPUT "" Derived) "Seismic factor of the component": Given;
        A_R "A_r" Number (NBC_2020 "Table 4.1.8.18" Memory) "Component force amplification factor": Table;
        A_R_GIVEN "A_r" Number (INPUT "" Derived) "Component force amplification factor": Given;
        R_P "R_p" Number (NBC_2020 "Table 4.1.8.18" Memory) "Component response modification factor": Table;
        R_P_GIVEN "R_p" Number (INPUT "" Derived) "Component response modification factor": Given;
        H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
        H_N "h_n" Height (INPUT "" Derived) "Height of the building above the base": Given;
        R_H "r_h" Number (NBC_2020 "4.1.8.18.(1)" Memory) "Height of the attachment over height of the building, at most 1" = "min(1, h_x / h_n)";
        R_H_BASE "r_h" Number (NBC_2020 "4.1.8.18.(1)" Memory) "Attached at or below the base": Condition;
        A_X "A_x" Number (NBC_2020 "4.1.8.18.(1)" Memory) "Height factor" = "1 + 2 * r_h";
        S_1 "S_1" Number (NBC_2020 "4.1.8.18.(1)" Memory) "S_p before its limits" = "C_p * A_r * A_x / R_p";
        S_P "S_p" Number (NBC_2020 "4.1.8.18.(1)" Memory) "Factor of the component, from 0.7 to 4.0" = "max(0.7, min(4.0, S_1))";
        C_1 "c_1" Acceleration (NBC_2020 "4.1.8.18.(1)" Memory) "Horizontal force over the weight, before limits" = "0.3 * s_x * S_1";
        C_MAX "c_max" Acceleration (NBC_2020 "4.1.8.18.(1)" Memory) "It need not be more than" = "0.3 * s_x * 4.0";
        C_MIN "c_min" Acceleration (NBC_2020 "4.1.8.18.(1)" Memory) "It may not be less than" = "0.3 * s_x * 0.7";
        C "c_p" Acceleration (NBC_2020 "4.1.8.18.(1)" Memory) "Horizontal force over the weight" = "0.3 * s_x * S_p";
        W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        V_P "V_p" Force (NBC_2020 "4.1.8.18.(1)" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
        R_PA_DEEP "R_pa" Number (NBC_2020 "4.1.8.18" Memory) "Response factor for anchors embedded at least eight diameters" = "R_p";
        R_PA_SHALLOW "R_pa" Number (NBC_2020 "4.1.8.18" Memory) "Response factor for anchors embedded less than eight diameters" = "min(1.5, R_p)";
        R_PA_NONDUCTILE "R_pa" Number (NBC_2020 "4.1.8.18" Memory) "Response factor for non-ductile, adhesive or powder-actuated anchors" = "min(1.0, R_p)";
        S_1A "S_1a" Number (NBC_2020 "4.1.8.18.(1)" Memory) "S_p for anchors before its limits" = "C_p * A_r * A_x / R_pa";
        S_PA "S_pa" Number (NBC_2020 "4.1.8.18.(1)" Memory) "Factor of the component for its anchors, from 0.7 to 4.0" = "max(0.7, min(4.0, S_1a))";
        C_A "c_pa" Acceleration (NBC_2020 "4.1.8.18" Memory) "Horizontal force over the weight for anchors" = "0.3 * s_x * S_pa";
        V_PA "V_pa" Force (NBC_2020 "4.1.8.18" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W_p";

        CASE "D+E" Number (NBC_2020 "Table 4.1.3.2.A" Memory) "1.0 D + 1.0 E": Name;
        CASE_ANCHORS "D+E a" Number (NBC_2020 "Table 4.1.3.2.A" Memory) "1.0 D + 1.0 E, anchors": Name;

        NOT_DEEP "anchor type" Number (NBC_2020 "4.1.8.18" Memory) "an anchor is embedded less than eight diameters, but the demand was asked for deep anchors; the anchor type \"shallow\" would fit": Reason;
        NOT_AMPLIFIED "overstrength" Number (NBC_2020 "4.1.8.18" Memory) "This code has no overstrength factor for components: for anchors it lowers the response factor instead.": Reason;
        NOT_DUCTILE "anchor type" Number (NBC_2020 "4.1.8.18" Memory) "an anchor is adhesive or of steel that counts as brittle, but the demand was asked for ductile anchors; the anchor type \"nonductile\" would fit": Reason;
    }
}
