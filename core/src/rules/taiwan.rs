//! The seismic design code of buildings of Taiwan, chapter 4: forces on components of buildings.
//!
//! Covers the horizontal force between its limits with S_DS given, the vertical force, and the reduced response factor
//! for anchors. Does not cover: the tables of places that give S_DS, rows of components.

use alloc::vec::Vec;

use super::attachment::{HeightFields, HeightSteps};
use super::combination::{Acting, Pair};
use super::demand::{AnchorsAsked, Demand, DemandRule, DemandRuleText, Strength, governing};
use super::documents::TAIWAN;
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::Values;
use crate::load_case::{Format, Level};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "taiwan",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults: |values, faults| HEIGHTS.faults(values, faults),
    demand,
    strength: |_| Strength::Field(fields::S_DS),
    spectrum: None,
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "taiwan",
    title: "Taiwan: seismic design code of buildings, chapter 4: components",
    document: &TAIWAN,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "S_DS, a_p and R_p are asked for, since the code's tables of places and of components were not at hand. All of it is from \
        memory; shaky are how R_pa comes from R_p in each region, which R_pa typed by you replaces, and the limits of R_p by the kind of \
        anchor. The vertical force on anchors is taken from the horizontal one on anchors. Each axis would do; the push is tried in every \
        direction, which asks for more. The edition has no overstrength factor for components, and anchor rules that need the amplified \
        force ask for a factor.",
};

mod fields {
    use crate::calc::Kind;
    use crate::fields;
    use crate::input::field::{Absent::*, FieldShape::*};

    fields! {
        S_DS "s_ds" Number { kind: Kind::Acceleration, min: 0.01, max: 5.0 }, Fault,
            "Design acceleration S_DS",
            "Design spectral acceleration at short periods of the site with its soil and near faults, in g, from the code's tables.",
            "Taiwan seismic code chapter 2", [];
        REGION "region" Choice(&["general", "near-fault", "taipei-basin"]), Fault,
            "Region",
            "Chooses how much of the response factor counts, and the share of the vertical force.",
            "Taiwan seismic code chapter 4", ["general", "near a listed fault", "Taipei basin"];
        IMPORTANCE "importance_factor" Number { kind: Kind::Number, min: 1.0, max: 1.5 }, Fault,
            "Importance factor I_p",
            "1.5 for life safety, dangerous contents and what must keep working, otherwise 1.0.",
            "Taiwan seismic code chapter 4", [];
        A_P "component_amplification" Number { kind: Kind::Number, min: 1.0, max: 2.5 }, Fault,
            "Component amplification factor a_p",
            "From the code's table: 1.0 for rigid, 2.5 for flexible components.",
            "Taiwan seismic code chapter 4", [];
        R_P "component_response" Number { kind: Kind::Number, min: 1.0, max: 6.0 }, Fault,
            "Component response factor R_p",
            "From the code's table.",
            "Taiwan seismic code chapter 4", [];
        R_PA "allowable_response" Number { kind: Kind::Number, min: 1.0, max: 6.0 }, Unknown,
            "Allowable response factor R_pa",
            "Stands in place of what comes from R_p in the region, for the component and its anchors alike.",
            "Taiwan seismic code chapter 4", [];
        ANCHORS "anchor_type" Choice(&["deep", "shallow", "nonductile"]), Fault,
            "Type of anchors",
            "Anchors embedded less than eight diameters count as shallow, adhesive ones as nonductile.",
            "Taiwan seismic code chapter 4",
            ["embedded at least eight diameters, ductile", "embedded less than eight diameters", "of nonductile material, or adhesive"];
        ATTACHMENT "attachment_height_m" Number { kind: Kind::Height, min: -100.0, max: 1000.0 }, Fault,
            "Height of the attachment",
            "Height above the base of the building at which the cabinet is attached: 0 on the ground floor, below zero in a basement.",
            "Taiwan seismic code chapter 4", [];
        ROOF "roof_height_m" Number { kind: Kind::Height, min: 1.0, max: 1000.0 }, Unknown,
            "Height of the roof",
            "Height of the roof above the base of the building. Needed when the cabinet stands above the base.",
            "Taiwan seismic code chapter 4", [];
    }
}

mod steps {
    use crate::calc::clause::{INPUT, STATICS};
    use crate::calc::steps;
    use crate::rules::documents::TAIWAN;

    steps! { 39 "taiwan";
        S_DS "S_DS" Acceleration (INPUT "" Derived) "Design spectral acceleration at short periods": Given;
        GENERAL "region" Number (TAIWAN "chapter 4" Memory) "General region": Name;
        NEAR_FAULT "region" Number (TAIWAN "chapter 4" Memory) "Near a listed fault": Name;
        TAIPEI "region" Number (TAIWAN "chapter 4" Memory) "Taipei basin": Name;
        I_P "I_p" Number (INPUT "" Derived) "Importance factor": Given;
        A_P "a_p" Number (INPUT "" Derived) "Component amplification factor": Given;
        R_P "R_p" Number (INPUT "" Derived) "Component response factor": Given;
        R_PA "R_pa" Number (TAIWAN "chapter 4" Memory) "Allowable response factor" = "1 + (R_p - 1) / 1.5";
        R_PA_TAIPEI "R_pa" Number (TAIWAN "chapter 4" Memory) "Allowable response factor in the Taipei basin" = "1 + (R_p - 1) / 2";
        R_PA_GIVEN "R_pa" Number (INPUT "" Derived) "Allowable response factor": Given;
        H_X "h_x" Height (INPUT "" Derived) "Height of the attachment above the base": Given;
        H_N "h_n" Height (INPUT "" Derived) "Height of the roof above the base": Given;
        R_H "r_h" Number (TAIWAN "chapter 4" Memory) "Height of the attachment over height of the roof, at most 1" = "min(1, h_x / h_n)";
        R_H_BASE "r_h" Number (TAIWAN "chapter 4" Memory) "Attached at or below the base": Condition;
        C_1 "c_1" Acceleration (TAIWAN "chapter 4" Memory) "Horizontal force over the weight, before limits" = "0.4 * S_DS * I_p * a_p / R_pa * (1 + 2 * r_h)";
        C_MAX "c_max" Acceleration (TAIWAN "chapter 4" Memory) "It need not be more than" = "1.6 * S_DS * I_p";
        C_MIN "c_min" Acceleration (TAIWAN "chapter 4" Memory) "It may not be less than" = "0.3 * S_DS * I_p";
        C_P "c_p" Acceleration (TAIWAN "chapter 4" Memory) "Horizontal force over the weight" = "max(c_min, min(c_max, c_1))";
        C_V "c_v" Acceleration (TAIWAN "chapter 4" Memory) "Vertical force over the weight, up or down together with the horizontal one" = "c_p / 2";
        C_V_NEAR "c_v" Acceleration (TAIWAN "chapter 4" Memory) "Vertical force over the weight near a fault, up or down together with the horizontal one" = "2 / 3 * c_p";
        W_P "W_p" Force (STATICS "" Derived) "Weight of the cabinet with its contents": Given;
        F_PH "F_ph" Force (TAIWAN "chapter 4" Memory) "Horizontal force on the cabinet" = "c_p * W_p";
        F_PV "F_pv" Force (TAIWAN "chapter 4" Memory) "Vertical force on the cabinet" = "c_v * W_p";
        R_DEEP "R_a" Number (TAIWAN "chapter 4" Memory) "Response factor for anchors embedded at least eight diameters" = "R_p";
        R_SHALLOW "R_a" Number (TAIWAN "chapter 4" Memory) "Response factor for anchors embedded less than eight diameters" = "min(1.5, R_p)";
        R_NONDUCTILE "R_a" Number (TAIWAN "chapter 4" Memory) "Response factor for anchors of nonductile material, or adhesive" = "min(1.0, R_p)";
        R_AA "R_aa" Number (TAIWAN "chapter 4" Memory) "Allowable response factor for anchors" = "1 + (R_a - 1) / 1.5";
        R_AA_TAIPEI "R_aa" Number (TAIWAN "chapter 4" Memory) "Allowable response factor for anchors in the Taipei basin" = "1 + (R_a - 1) / 2";
        R_AA_GIVEN "R_aa" Number (TAIWAN "chapter 4" Derived) "Allowable response factor for anchors: not above that of the component" = "min(R_a, R_pa)";
        R_R "R_r" Number (TAIWAN "chapter 4" Memory) "Allowable response factor from that of the anchors" = "1 + (R_a - 1) / 1.5";
        R_R_TAIPEI "R_r" Number (TAIWAN "chapter 4" Memory) "Allowable response factor from that of the anchors in the Taipei basin" = "1 + (R_a - 1) / 2";
        R_AA_LESSER "R_aa" Number (TAIWAN "chapter 4" Derived) "Allowable response factor for anchors: not above that of the component" = "min(R_r, R_pa)";
        C_1A "c_1a" Acceleration (TAIWAN "chapter 4" Memory) "Horizontal force over the weight for anchors, before limits" = "0.4 * S_DS * I_p * a_p / R_aa * (1 + 2 * r_h)";
        C_PA "c_pa" Acceleration (TAIWAN "chapter 4" Memory) "Horizontal force over the weight for anchors" = "max(c_min, min(c_max, c_1a))";
        C_VA "c_va" Acceleration (TAIWAN "chapter 4" Memory) "Vertical force over the weight for anchors" = "c_pa / 2";
        C_VA_NEAR "c_va" Acceleration (TAIWAN "chapter 4" Memory) "Vertical force over the weight for anchors near a fault" = "2 / 3 * c_pa";
        F_PA "F_pa" Force (TAIWAN "chapter 4" Memory) "Horizontal force on the cabinet for its anchors" = "c_pa * W_p";
        V_1 "v_1" Number (TAIWAN "combinations" Memory) "Downward load over the weight where weight adds" = "1.2 + c_v";
        V_2 "v_2" Number (TAIWAN "combinations" Memory) "Downward load over the weight where weight holds down" = "0.9 - c_v";
        V_1A "v_1a" Number (TAIWAN "combinations" Memory) "Downward load over the weight for anchors where weight adds" = "1.2 + c_va";
        V_2A "v_2a" Number (TAIWAN "combinations" Memory) "Downward load over the weight for anchors where weight holds down" = "0.9 - c_va";

        HEAVY "1.2" Number (TAIWAN "combinations" Memory) "1.2 D + 1.0 E": Name;
        LIGHT "0.9" Number (TAIWAN "combinations" Memory) "0.9 D - 1.0 E": Name;
        HEAVY_ANCHORS "1.2a" Number (TAIWAN "combinations" Memory) "1.2 D + 1.0 E, anchors": Name;
        LIGHT_ANCHORS "0.9a" Number (TAIWAN "combinations" Memory) "0.9 D - 1.0 E, anchors": Name;

        NOT_DEEP "anchor type" Number (TAIWAN "chapter 4" Memory) "an anchor is embedded less than eight diameters, but the demand was asked for deep anchors; the anchor type \"shallow\" would fit": Reason;
        NOT_AMPLIFIED "overstrength" Number (TAIWAN "chapter 4" Memory) "This edition has no overstrength factor for components: for anchors it lowers the response factor instead.": Reason;
        NOT_DUCTILE "anchor type" Number (TAIWAN "chapter 4" Memory) "an anchor is adhesive or of steel that counts as brittle, but the demand was asked for ductile anchors; the anchor type \"nonductile\" would fit": Reason;
    }
}

const HEIGHTS: HeightFields = HeightFields { attachment: fields::ATTACHMENT, roof: fields::ROOF };
const HEIGHT_STEPS: HeightSteps =
    HeightSteps { attachment: steps::H_X, roof: steps::H_N, ratio: steps::R_H, ratio_at_base: steps::R_H_BASE };
const COMPONENT: Pair = Pair {
    names: [steps::HEAVY, steps::LIGHT],
    downs: [steps::V_1, steps::V_2],
    gravity: [1.2, 0.9],
    level: Level::Component,
};
const ANCHORS: Pair = Pair {
    names: [steps::HEAVY_ANCHORS, steps::LIGHT_ANCHORS],
    downs: [steps::V_1A, steps::V_2A],
    gravity: [1.2, 0.9],
    level: Level::Anchorage,
};

// Places of the words of the fields `region` and `anchor_type`.
const NEAR_FAULT: usize = 1;
const TAIPEI: usize = 2;
const DEEP: usize = 0;
const SHALLOW: usize = 1;

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let s_ds = sheet.step(steps::S_DS, values.given(fields::S_DS));
    let region = values.choice(fields::REGION).unwrap_or(0);
    sheet.step([steps::GENERAL, steps::NEAR_FAULT, steps::TAIPEI][region], 0.0);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let a_p = sheet.step(steps::A_P, values.given(fields::A_P));
    let r_p = sheet.step(steps::R_P, values.given(fields::R_P));
    let r_pa = match (values.number(fields::R_PA), region) {
        (Some(r_pa), _) => sheet.step(steps::R_PA_GIVEN, r_pa),
        (None, TAIPEI) => sheet.step(steps::R_PA_TAIPEI, 1.0 + (r_p - 1.0) / 2.0),
        (None, _) => sheet.step(steps::R_PA, 1.0 + (r_p - 1.0) / 1.5),
    };
    let r_h = HEIGHTS.ratio(values, HEIGHT_STEPS, sheet);
    let c_1 = sheet.step(steps::C_1, 0.4 * s_ds * i_p * a_p / r_pa * (1.0 + 2.0 * r_h));
    let c_max = sheet.step(steps::C_MAX, 1.6 * s_ds * i_p);
    let c_min = sheet.step(steps::C_MIN, 0.3 * s_ds * i_p);
    let c_p = sheet.step(steps::C_P, f64::max(c_min, f64::min(c_max, c_1)));
    let governs = governing(c_p, &[(steps::C_1, c_1), (steps::C_MAX, c_max), (steps::C_MIN, c_min)]);
    let c_v = match region {
        NEAR_FAULT => sheet.step(steps::C_V_NEAR, 2.0 / 3.0 * c_p),
        _ => sheet.step(steps::C_V, c_p / 2.0),
    };
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_PH, c_p * w_p);
    sheet.step(steps::F_PV, c_v * w_p);

    let r_aa = response_of_anchors(values, sheet);
    let c_1a = sheet.step(steps::C_1A, 0.4 * s_ds * i_p * a_p / r_aa * (1.0 + 2.0 * r_h));
    let c_pa = sheet.step(steps::C_PA, f64::max(c_min, f64::min(c_max, c_1a)));
    let c_va = match region {
        NEAR_FAULT => sheet.step(steps::C_VA_NEAR, 2.0 / 3.0 * c_pa),
        _ => sheet.step(steps::C_VA, c_pa / 2.0),
    };
    sheet.step(steps::F_PA, c_pa * w_p);
    sheet.step(steps::NOT_AMPLIFIED, 0.0);

    let mut cases = Vec::with_capacity(4);
    cases.extend(COMPONENT.cases(Acting { horizontal: c_p, vertical: c_v }, sheet));
    cases.extend(ANCHORS.cases(Acting { horizontal: c_pa, vertical: c_va }, sheet));
    let depth = (values.choice(fields::ANCHORS) == Some(DEEP)).then_some((8.0, steps::NOT_DEEP));
    let is_ductile = matches!(values.choice(fields::ANCHORS), Some(DEEP | SHALLOW));
    let not_ductile = is_ductile.then_some(steps::NOT_DUCTILE);
    let not_amplified = Some(steps::NOT_AMPLIFIED);
    Ok(Demand {
        push: c_p,
        governs,
        vertical: c_v,
        cases,
        not_amplified,
        category_c: None,
        anchors: AnchorsAsked { depth, not_ductile, ..AnchorsAsked::default() },
    })
}

/// The allowable response factor that the anchors leave.
fn response_of_anchors(values: &Values, sheet: &mut Sheet) -> f64 {
    let r_p = values.given(fields::R_P);
    let r_a = match values.choice(fields::ANCHORS) {
        Some(DEEP) => sheet.step(steps::R_DEEP, r_p),
        Some(SHALLOW) => sheet.step(steps::R_SHALLOW, f64::min(1.5, r_p)),
        _ => sheet.step(steps::R_NONDUCTILE, f64::min(1.0, r_p)),
    };
    let is_taipei = values.choice(fields::REGION) == Some(TAIPEI);
    let of_region = 1.0 + (r_a - 1.0) / if is_taipei { 2.0 } else { 1.5 };
    match values.number(fields::R_PA) {
        // What is given stands in place of what comes from R_p, but not of what the anchors take off it.
        Some(r_pa) if values.choice(fields::ANCHORS) == Some(DEEP) => {
            sheet.step(steps::R_AA_GIVEN, f64::min(r_a, r_pa))
        }
        Some(r_pa) => {
            let r_r = sheet.step(if is_taipei { steps::R_R_TAIPEI } else { steps::R_R }, of_region);
            sheet.step(steps::R_AA_LESSER, f64::min(r_r, r_pa))
        }
        None => sheet.step(if is_taipei { steps::R_AA_TAIPEI } else { steps::R_AA }, of_region),
    }
}
