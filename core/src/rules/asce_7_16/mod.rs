//! ASCE/SEI 7-16 chapter 13: seismic demand on nonstructural components.
//!
//! Covers the equivalent static force of 13.3.1 with S_DS given or from S_S and the site class, the vertical force, and
//! the amplified force for anchors in concrete. Does not cover: site class F, modal analysis of the building
//! (13.3.1.4), relative displacement (13.3.2), components heavier than a quarter of the structure.

mod components;
mod fields;
mod site;
mod steps;

use alloc::vec;

use super::demand::{Demand, DemandRule, DemandRuleText, Faults, Strength};
use super::documents::ASCE_7_16;
use crate::calc::{Part, Sheet, StepId, Subject, System, limit};
use crate::input::{Problem, Values};
use crate::load_case::{Directions, Format, Level, LoadCase};

/// The rule.
pub static RULE: DemandRule = DemandRule {
    id: "asce-7-16",
    fields: fields::FIELDS,
    format: |_| Format::Strength,
    faults,
    demand,
    strength: |values| Strength::Field(if values.number(fields::S_DS).is_some() { fields::S_DS } else { fields::S_S }),
};

/// Its texts.
pub static TEXT: DemandRuleText = DemandRuleText {
    id: "asce-7-16",
    title: "ASCE/SEI 7-16, chapter 13: nonstructural components",
    document: &ASCE_7_16,
    fields: fields::FIELD_TEXTS,
    steps: &steps::TEXTS,
    stops: "Site class F and sites that need their own hazard analysis: give S_DS from that analysis. A component heavier than \
        25 % of the structure and itself together belongs to chapter 15. Steel storage racks at or below grade belong to 15.5.3. \
        Relative displacement between two attachments (13.3.2) and modal analysis of the building (13.3.1.4) are not here. In \
        design categories A and B, and C with I_p = 1.0, mechanical and electrical components are exempt; this is not checked. \
        Active equipment with I_p = 1.5 also needs certification by test or experience (13.2.2).",
};

fn demand(values: &Values, weight_n: f64, sheet: &mut Sheet) -> Result<Demand, StepId> {
    sheet.open(Part::Demand, Subject::Whole, None, System::Si);
    let s_ds = match site::s_ds(values, sheet) {
        Ok(s_ds) => s_ds,
        Err(reason) => {
            sheet.step(reason, 0.0);
            return Err(reason);
        }
    };
    let component = components::component(values, sheet);
    let i_p = sheet.step(steps::I_P, values.given(fields::IMPORTANCE));
    let r_z = height_ratio(values, sheet);

    // 13.3-1 to 13.3-3
    let c_1 = sheet.step(steps::C_1, 0.4 * component.a_p * s_ds / (component.r_p / i_p) * (1.0 + 2.0 * r_z));
    let c_max = sheet.step(steps::C_MAX, 1.6 * s_ds * i_p);
    let c_min = sheet.step(steps::C_MIN, 0.3 * s_ds * i_p);
    let c_limited = f64::max(c_min, f64::min(c_max, c_1));
    let c_p = match component.gap_mm {
        None => sheet.step(steps::C_P, c_limited),
        Some(gap_mm) => snubbed(c_limited, gap_mm, sheet),
    };
    // 13.3.1.2
    let c_v = sheet.step(steps::C_V, 0.2 * s_ds);
    let w_p = sheet.carry(steps::W_P, weight_n);
    sheet.step(steps::F_P, c_p * w_p);
    sheet.step(steps::E_V, c_v * w_p);

    // 13.4.2 with 12.4.3: after the limits, before load factors; the vertical force is not multiplied.
    let omega_0 = sheet.step(component.omega_0.id, component.omega_0.value);
    let c_m = sheet.step(steps::C_M, omega_0 * c_p);

    // 2.3.6, combinations 6 and 7
    sheet.step(steps::V_6, 1.2 + c_v);
    sheet.step(steps::V_7, 0.9 - c_v);
    let directions = if values.choice(fields::DIRECTIONS) == Some(1) { Directions::HundredThirty } else { Directions::Any };
    let heavy = |name, level, horizontal| LoadCase { name, gravity: 1.2, vertical: c_v, horizontal, level, directions };
    let light = |name, level, horizontal| LoadCase { name, gravity: 0.9, vertical: -c_v, horizontal, level, directions };
    let cases = vec![
        heavy(steps::LRFD_6, Level::Component, c_p),
        light(steps::LRFD_7, Level::Component, c_p),
        heavy(steps::LRFD_6_AMPLIFIED, Level::Amplified, c_m),
        light(steps::LRFD_7_AMPLIFIED, Level::Amplified, c_m),
    ];
    Ok(Demand { push: c_p, vertical: c_v, cases, not_amplified: None })
}

/// z/h of 13.3.1: 0 at or below the base, at most 1.
fn height_ratio(values: &Values, sheet: &mut Sheet) -> f64 {
    let z = sheet.step(steps::Z, values.given(fields::ATTACHMENT));
    if z <= 0.0 {
        return sheet.step(steps::R_Z_BASE, 0.0);
    }
    let h = sheet.step(steps::H, values.given(fields::ROOF));
    sheet.step(steps::R_Z, f64::min(1.0, z / h))
}

/// Footnote b of Table 13.6-1: the force doubles where the snubbers leave more than 0.25 in of play.
fn snubbed(c_limited: f64, gap_mm: f64, sheet: &mut Sheet) -> f64 {
    let c_l = sheet.step(steps::C_LIMITED, c_limited);
    let gap_mm = sheet.step(steps::GAP, gap_mm);
    let gap_max_mm = sheet.step(steps::GAP_MAX, 0.25 * 25.4);
    let factor = if limit::more(gap_mm, gap_max_mm) { 2.0 } else { 1.0 };
    sheet.step(steps::C_P_ISOLATED, factor * c_l)
}

fn faults(values: &Values, faults: &mut Faults) {
    match (values.number(fields::S_S), values.number(fields::S_DS)) {
        (None, None) => faults.push((fields::S_S, Problem::NeedsOneOf, "s_s or s_ds")),
        (Some(_), Some(_)) => faults.push((fields::S_DS, Problem::Excludes, "s_s or s_ds, not both")),
        _ => {}
    }
    if let Some(choice) = values.choice(fields::COMPONENT) {
        component_faults(values, components::ROWS.get(choice), faults);
    }
    height_faults(values, faults);
}

fn component_faults(values: &Values, row: Option<&components::Row>, faults: &mut Faults) {
    let gap = values.number(fields::GAP);
    match row {
        None => {
            for field in [fields::A_P, fields::R_P, fields::OMEGA_0] {
                if values.number(field).is_none() {
                    faults.push((field, Problem::Missing, "a number, because component is \"given\""));
                }
            }
        }
        Some(row) if row.is_isolated && gap.is_none() => {
            faults.push((fields::GAP, Problem::Missing, "the clearance at the snubbers of an isolated component"));
        }
        Some(row) if !row.is_isolated && gap.is_some() => {
            faults.push((fields::GAP, Problem::Excludes, "only with an isolated component"));
        }
        _ => {}
    }
}

fn height_faults(values: &Values, faults: &mut Faults) {
    let Some(z) = values.number(fields::ATTACHMENT) else { return };
    match values.number(fields::ROOF) {
        None if z > 0.0 => faults.push((fields::ROOF, Problem::Missing, "the height of the roof, because the cabinet stands above the base")),
        Some(h) if limit::more(z, h) => faults.push((fields::ATTACHMENT, Problem::AboveLimit, "not above the roof")),
        _ => {}
    }
}
