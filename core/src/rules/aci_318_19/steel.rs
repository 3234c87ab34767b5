//! Steel strength in tension (17.6.1) and in shear (17.7.1).

use super::anchor::Anchor;
use super::chosen;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::fields as f;
use super::reduction::{self, Action};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, Trust, number, steps};
use crate::input::field::Values;
use crate::rules::bolts::{STEELS, Toughness};

steps! { 53 "ACI 318-19, steel";
    F_U "f_u" Stress (INPUT "" Derived) "Specified tensile strength of the anchor's steel": Given;
    F_U_SECONDARY "f_u" Stress (ACI_318_19 "2.2, by the steel's standard" Secondary) "Specified tensile strength of the anchor's steel": Table;
    F_U_MEMORY "f_u" Stress (ACI_318_19 "2.2, by the steel's standard" Memory) "Specified tensile strength of the anchor's steel": Table;
    F_YA "f_ya" Stress (INPUT "" Derived) "Specified yield strength of the anchor's steel": Given;
    F_YA_SECONDARY "f_ya" Stress (ACI_318_19 "2.2, by the steel's standard" Secondary) "Specified yield strength of the anchor's steel": Table;
    F_YA_MEMORY "f_ya" Stress (ACI_318_19 "2.2, by the steel's standard" Memory) "Specified yield strength of the anchor's steel": Table;
    F_UTA "f_uta" Stress (ACI_318_19 "17.6.1.2" Secondary) "Tensile strength that may be counted on" = "min(f_u, 1.9 * f_ya, f_uta_max)";
    F_UTA_NO_YIELD "f_uta" Stress (ACI_318_19 "17.6.1.2" Secondary) "Tensile strength that may be counted on; the standard specifies no yield strength" = "min(f_u, f_uta_max)";
    N_SA "N_sa" Force (ACI_318_19 "17.6.1.2" Secondary) "Nominal strength of the steel in tension" = "A_se * f_uta";
    N_D "N_d" Force (ACI_318_19 "17.5.1.2" Secondary) "Design strength, phi N_sa" = "phi * N_sa";
    N_UA "N_ua" Force (STATICS "base reactions" Derived) "Pull on the most loaded anchor": Solved;
    R_N "r_N" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength" = "N_ua / N_d";
    V_SA_REPORT "V_sa" Force (INPUT "evaluation report" Derived) "Strength of the steel in shear, from the evaluation report": Given;
    V_SA_EQ "V_sa" Force (INPUT "evaluation report" Derived) "Strength of the steel in shear under simulated earthquakes, from the evaluation report": Given;
    V_SA "V_sa" Force (ACI_318_19 "17.7.1.2(b)" Secondary) "Nominal strength of the steel in shear, bolt or rod" = "0.6 * A_se * f_uta";
    V_SA_STUD "V_sa" Force (ACI_318_19 "17.7.1.2(a)" Secondary) "Nominal strength of the steel in shear, welded headed stud" = "A_se * f_uta";
    V_D "V_d" Force (ACI_318_19 "17.5.1.2" Secondary) "Design strength, phi V_sa" = "phi * V_sa";
    V_D_GROUT "V_d" Force (ACI_318_19 "17.7.1.2.1" Secondary) "Design strength, phi V_sa, on a built-up grout pad" = "phi * 0.80 * V_sa";
    V_X "V_x" Force (STATICS "base reactions" Derived) "Shear on the most loaded anchor, to the right": Solved;
    V_Y "V_y" Force (STATICS "base reactions" Derived) "Shear on the most loaded anchor, to the rear": Solved;
    V_UA "V_ua" Force (STATICS "" Derived) "Shear on the most loaded anchor" = "sqrt(V_x^2 + V_y^2)";
    R_V "r_V" Utilisation (ACI_318_19 "17.5.2" Secondary) "Demand over strength" = "V_ua / V_d";
}

/// Strengths of a steel as its standard or the user gives them.
pub struct Specified {
    /// Yield strength, if there is one.
    pub yield_mpa: Option<f64>,
    /// Tensile strength.
    pub tensile_mpa: f64,
    /// Whether it counts as ductile.
    pub toughness: Toughness,
}

/// The strengths of the steel that the values speak of.
pub fn specified(values: &Values) -> Specified {
    let listed = values.choice(f::STEEL).and_then(|place| STEELS.get(place));
    let by_standard = listed.map_or(Toughness::Brittle, |steel| steel.toughness);
    Specified {
        yield_mpa: listed.map_or(values.number(f::YIELD), |steel| steel.yield_mpa()),
        // A missing strength is a fault of the input; it must never become a strength.
        tensile_mpa: listed.map_or(values.number(f::TENSILE).unwrap_or(f64::NAN), |steel| steel.tensile_mpa()),
        toughness: match values.choice(f::DUCTILITY) {
            Some(chosen::DUCTILE) => Toughness::Ductile,
            Some(chosen::BRITTLE) => Toughness::Brittle,
            _ => by_standard,
        },
    }
}

/// f_uta (17.6.1.2).
pub fn tensile_strength(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let (f_u_id, f_ya_id) = match STEELS.get(anchor.steel).map(|steel| steel.trust) {
        None => (F_U, F_YA),
        Some(Trust::Memory) => (F_U_MEMORY, F_YA_MEMORY),
        Some(_) => (F_U_SECONDARY, F_YA_SECONDARY),
    };
    let f_u = sheet.step(f_u_id, anchor.f_u);
    let most = match anchor.f_ya {
        Some(f_ya) => 1.9 * sheet.step(f_ya_id, f_ya),
        None => f64::INFINITY,
    };
    let id = if anchor.f_ya.is_some() { F_UTA } else { F_UTA_NO_YIELD };
    let cap = facts.edition.tensile_max.told(sheet);
    // A strength that is no number must stay none.
    sheet.step(id, if f_u.is_nan() { f_u } else { f_u.min(most).min(cap) })
}

/// Nominal strength in tension, N_sa, in units of the edition.
pub fn nominal_tension(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let a_se = anchor.bolt.stress_area(facts.edition.system, sheet);
    let f_uta = tensile_strength(facts, anchor, sheet);
    sheet.step(N_SA, a_se * f_uta)
}

/// Design strength in tension, phi N_sa, in units of the edition.
pub fn tension(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let n_sa = nominal_tension(facts, anchor, sheet);
    let phi = reduction::steel(Action::Tension, anchor.toughness, sheet);
    sheet.step(N_D, phi * n_sa)
}

/// Design strength in shear, phi V_sa, in units of the edition.
pub fn shear(facts: &Facts, anchor: &Anchor, sheet: &mut Sheet) -> f64 {
    let v_sa = match anchor.shear_report {
        Some(v_sa) => sheet.step(if facts.seismic { V_SA_EQ } else { V_SA_REPORT }, v_sa),
        None => {
            let a_se = anchor.bolt.stress_area(facts.edition.system, sheet);
            let f_uta = tensile_strength(facts, anchor, sheet);
            match anchor.bolt.stud() {
                Some(_) => sheet.step(V_SA_STUD, a_se * f_uta),
                None => sheet.step(V_SA, 0.6 * a_se * f_uta),
            }
        }
    };
    let phi = reduction::steel(Action::Shear, anchor.toughness, sheet);
    if facts.seat == chosen::SEAT_GROUT {
        return sheet.step(V_D_GROUT, phi * 0.80 * v_sa);
    }
    sheet.step(V_D, phi * v_sa)
}

/// The most loaded anchor's steel against its pull, in units of the edition.
pub fn check_tension(facts: &Facts, place: usize, n_ua: f64, sheet: &mut Sheet) -> Outcome {
    let anchor = &facts.anchors[place];
    if sheet.is_told() {
        let subject = Subject::Anchor(place as u16);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorTensionSteel), facts.edition.system);
        tension(facts, anchor, sheet);
        sheet.carry(N_UA, n_ua);
        sheet.step(R_N, n_ua / anchor.steel_tension);
    }
    facts.compared(n_ua, anchor.steel_tension)
}

/// The shear on one anchor, in units of the edition.
#[derive(Clone, Copy)]
pub struct Shear {
    /// To the right.
    pub x: f64,
    /// To the rear.
    pub y: f64,
}

impl Shear {
    /// Its size.
    pub fn size(self) -> f64 {
        number::sqrt(self.x * self.x + self.y * self.y)
    }
}

/// The most loaded anchor's steel against its shear, in units of the edition.
pub fn check_shear(facts: &Facts, place: usize, shear_on: Shear, sheet: &mut Sheet) -> Outcome {
    let anchor = &facts.anchors[place];
    let v_ua = shear_on.size();
    if sheet.is_told() {
        let subject = Subject::Anchor(place as u16);
        sheet.open(Part::Anchors, subject, Some(CheckId::AnchorShearSteel), facts.edition.system);
        shear(facts, anchor, sheet);
        sheet.carry(V_X, shear_on.x);
        sheet.carry(V_Y, shear_on.y);
        sheet.step(V_UA, v_ua);
        sheet.step(R_V, v_ua / anchor.steel_shear);
    }
    facts.compared(v_ua, anchor.steel_shear)
}
