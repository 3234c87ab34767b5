//! Stability tests of other clauses than the one that the checks take: an older standard for equipment, and the tests that
//! IEC 62368-1 keeps for what may do more harm.
//!
//! IEC 60950-1 4.1 pushes with a fifth of the weight up to 2 m, and presses 800 N down on what stands out; IEC 62368-1
//! 8.6.5 lets a tilt of 15 degrees stand for its push. All of them by statics, for a side of the feet's hull.

use super::stability::{IEC_62368, Tested, TestedSide};
use crate::calc::clause::{Document, STATICS};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Detail, Part, Sheet, Subject, System, number, steps};

/// IEC 60950-1.
pub static IEC_60950: Document = Document {
    short: "IEC 60950-1",
    title: "Information technology equipment - Safety - Part 1: General requirements, second edition, International Electrotechnical Commission, 2005",
};

steps! { 194 "other stability tests";
    M "m" Mass (STATICS "load-out" Derived) "Mass of this state": Given;
    G "g" Gravity (STATICS "" Derived) "Weight of a mass": Constant;
    W "W" Force (STATICS "" Derived) "Weight" = "m * g";
    H "h" Length (STATICS "load-out" Derived) "Height of the centre of gravity above the floor": Given;
    T "t" Length (STATICS "" Derived) "Distance from the centre of gravity to this side of the feet's hull": Geometry;
    THETA "theta" Angle (IEC_62368 "8.6.5" Secondary) "Tilt of the test, 15 degrees": Constant;
    S "s" Length (IEC_62368 "8.6.5" Secondary) "How far the tilt moves the centre of gravity" = "h * tan(theta)";
    U_1 "u_1" Utilisation (IEC_62368 "8.6.5" Secondary) "Movement over the distance to the side" = "s / t";
    K_F "k_F" Number (IEC_60950 "4.1; IEC 62368-1 8.6.3 and 8.6.5 push as hard" Memory) "Push over the weight": Constant;
    F_MAX "F_max" Force (IEC_60950 "4.1" Memory) "Largest push": Constant;
    F "F" Force (IEC_60950 "4.1" Memory) "Push of the test" = "min(k_F * W, F_max)";
    Z_MAX "z_max" Length (IEC_60950 "4.1" Memory) "Greatest height of the push": Constant;
    H_C "H" Length (STATICS "cabinet" Derived) "Height of the cabinet": Given;
    Z "z" Length (IEC_60950 "4.1" Memory) "Height of the push" = "min(z_max, H)";
    U_2 "u_2" Utilisation (IEC_60950 "4.1" Memory) "Moment of the push over that of the weight" = "F * z / (W * t)";
    V "V" Force (IEC_60950 "4.1" Memory) "Force down on a level surface up to 1 m above the floor": Constant;
    E "e" Length (STATICS "" Derived) "How far the cabinet and what is drawn out of it stand beyond that side": Geometry;
    U_3 "u_3" Utilisation (IEC_60950 "4.1" Memory) "Moment of that force over that of the weight" = "V * e / (W * t)";
}

/// What the other tests use of the weight's moment over one side.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct OtherTests {
    /// The tilt of 15 degrees.
    pub tilt: f64,
    /// The push with a fifth of the weight.
    pub push: f64,
    /// The 800 N on what stands out; of whatever height it stands, which is the safe side.
    pub down: f64,
}

/// The other tests over a side, told.
pub fn other_tests(tested: &Tested, side: &TestedSide, sheet: &mut Sheet) -> OtherTests {
    sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
    let m = sheet.step(M, tested.mass_kg);
    let g = sheet.step(G, G_N_PER_KG);
    let w = sheet.step(W, m * g);
    let h = sheet.step(H, tested.centre_mm[2]);
    let corners = || Detail::Shape(tested.hull.corners().iter().map(|corner| [corner.x_mm, corner.y_mm]).collect());
    let t = sheet.detailed(T, side.reach_mm, corners);
    let theta = sheet.step(THETA, 15.0 * core::f64::consts::PI / 180.0);
    let s = sheet.step(S, h * number::tan(theta));
    let tilt = sheet.step(U_1, s / t);
    let k_f = sheet.step(K_F, 0.2);
    let f_max = sheet.step(F_MAX, 250.0);
    let f = sheet.step(F, f64::min(k_f * w, f_max));
    let z_max = sheet.step(Z_MAX, 2000.0);
    let height = sheet.step(H_C, tested.height_mm);
    let z = sheet.step(Z, f64::min(z_max, height));
    let push = sheet.step(U_2, f * z / (w * t));
    let v = sheet.step(V, 800.0);
    let outline = || Detail::Shape(tested.outline.iter().map(|corner| [corner.x_mm, corner.y_mm]).collect());
    let e = sheet.detailed(E, side.beyond_mm, outline);
    let down = sheet.step(U_3, v * e / (w * t));
    OtherTests { tilt, push, down }
}
