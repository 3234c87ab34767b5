//! Rods that bend in the plate: oversize holes whose plate washers are welded to the base (AISC Design Guide 1).
//!
//! ACI 318 has no rule for it. The washer takes the shear to the rod somewhat above the concrete, and the rod, held in the
//! grout or concrete below and in the washer above, bends in between.

use super::anchor::Anchor;
use super::anchorage::Round;
use super::chosen::HOLE_WASHERS;
use super::facts::Facts;
use super::set::{set_where, worst};
use super::steel::{self, Shear};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Outcome, Part, Sheet, Subject, number, steps};
use crate::rules::floor::documents::AISC_DG1;

steps! { 217 "AISC Design Guide 1, rods under welded washers";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the rod": Given;
    T_P "t_p" Length (INPUT "" Derived) "Thickness of the base plate": Given;
    T_W "t_w" Length (INPUT "" Derived) "Thickness of the washer": Given;
    LEVER "l" Length (AISC_DG1 "3rd ed., 4.4" Secondary) "Lever of the shear, the rod being held above and below: half of the plate and half the washer" = "(t_p + t_w / 2) / 2";
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    A_B "A_b" Area (STATICS "" Derived) "Gross cross section" = "pi / 4 * d_a^2";
    Z "Z" Empirical { force: 0, length: 18 } (STATICS "" Derived) "Plastic section modulus" = "d_a^3 / 6";
    V_UA "V_ua" Force (STATICS "base reactions" Derived) "Shear on the rod": Solved;
    N_UA "N_ua" Force (STATICS "base reactions" Derived) "Pull on the rod": Solved;
    F_V "f_v" Stress (STATICS "" Derived) "Shear stress" = "V_ua / A_b";
    M "M" Moment (AISC_DG1 "3rd ed., 4.4" Secondary) "Bending of the rod" = "V_ua * l";
    F_B "f_b" Stress (STATICS "" Derived) "Stress of bending" = "M / Z";
    F_A "f_a" Stress (STATICS "" Derived) "Stress of the pull" = "N_ua / A_b";
    F_T "f_t" Stress (STATICS "" Derived) "Both together" = "f_a + f_b";
    F_NT "F_nt" Stress (AISC_DG1 "3rd ed., AISC 360 Table J3.2" Secondary) "Nominal tensile stress" = "0.75 * f_uta";
    F_NV "F_nv" Stress (AISC_DG1 "3rd ed., AISC 360 Table J3.2" Secondary) "Nominal shear stress, threads in the shear plane" = "0.450 * f_uta";
    PHI "phi" Number (AISC_DG1 "3rd ed., AISC 360 J3.8" Secondary) "Resistance factor of rods": Condition;
    F_NT_LEFT "F'_nt" Stress (AISC_DG1 "3rd ed., AISC 360 J3.8" Secondary) "Tensile stress that the shear leaves" = "F_nt * max(0, min(1, 1.3 - f_v / (phi * F_nv)))";
    F_D "F_d" Stress (AISC_DG1 "3rd ed., AISC 360 J3.8" Secondary) "Design stress" = "phi * F'_nt";
    U "u" Utilisation (AISC_DG1 "3rd ed., AISC 360 J3.8" Secondary) "Stress over design stress" = "f_t / F_d";
}

/// The rod under a welded washer that is used most; nothing where no hole is made so.
pub fn check(round: &mut Round) {
    let facts = round.facts;
    let rods = facts.own & set_where(&facts.anchors, |anchor| anchor.hole == HOLE_WASHERS);
    if rods == 0 {
        return;
    }
    let check = CheckId::AnchorInteractionSteel;
    if let Some(reason) = facts.gaps.washers {
        round.say(check, Outcome::NotCovered(reason));
        return;
    }
    let (pull, shear) = (&round.forces.pull, &round.forces.shear);
    let used =
        |place: usize, sheet: &mut Sheet| stress(facts, &facts.anchors[place], (pull[place], shear[place]), sheet);
    let place = worst(rods, |place| used(place, &mut Sheet::quiet()));
    let subject = Subject::Anchor(place as u16);
    round.sheet.open(Part::Anchors, subject, Some(check), facts.edition.system);
    let value = used(place, round.sheet);
    let outcome = Outcome::Compared { value, limit: 1.0, utilisation: value };
    round.find(check, subject, &[], outcome);
}

/// The stress of one rod over its design stress.
fn stress(facts: &Facts, anchor: &Anchor, (n_ua, v_ua): (f64, Shear), sheet: &mut Sheet) -> f64 {
    let d_a = sheet.step(D_A, anchor.d_a);
    let t_p = sheet.step(T_P, facts.plate.unwrap_or(f64::NAN));
    let t_w = sheet.step(T_W, facts.washer.unwrap_or(f64::NAN));
    let lever = sheet.step(LEVER, (t_p + t_w / 2.0) / 2.0);
    let pi = sheet.step(PI, core::f64::consts::PI);
    let a_b = sheet.step(A_B, pi / 4.0 * (d_a * d_a));
    let z = sheet.step(Z, d_a * d_a * d_a / 6.0);
    let v_ua = sheet.carry(V_UA, v_ua.size());
    let n_ua = sheet.carry(N_UA, n_ua);
    let f_v = sheet.step(F_V, v_ua / a_b);
    let m = sheet.step(M, v_ua * lever);
    let f_b = sheet.step(F_B, m / z);
    let f_a = sheet.step(F_A, n_ua / a_b);
    let f_t = sheet.step(F_T, f_a + f_b);
    let f_uta = steel::tensile_strength(facts, anchor, sheet);
    let f_nt = sheet.step(F_NT, 0.75 * f_uta);
    let f_nv = sheet.step(F_NV, 0.450 * f_uta);
    let phi = sheet.step(PHI, 0.75);
    let part = 1.3 - f_v / (phi * f_nv);
    let left = sheet.step(F_NT_LEFT, f_nt * number::positive_part(if part > 1.0 { 1.0 } else { part }));
    let f_d = sheet.step(F_D, phi * left);
    sheet.step(U, f_t / f_d)
}
