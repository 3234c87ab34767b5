//! Criteria of the literature for bodies that stand free: quick answers, each from few numbers, none of them a proof.

use super::body::{HOUSNER_1963, RockingBody, Side};
use crate::calc::clause::{Document, STATICS};
use crate::calc::{Sheet, number, steps};
use core::f64::consts::PI;

/// Where both an acceleration and a velocity are asked for before a body falls.
pub static ISHIYAMA_1982: Document = Document {
    short: "Ishiyama 1982",
    title: "Y. Ishiyama: Motions of rigid bodies and criteria for overturning by earthquake excitations, Earthquake Engineering and Structural Dynamics 10, 1982",
};
/// Where furniture that falls is counted.
pub static KANEKO_HAYASHI: Document = Document {
    short: "Kaneko and Hayashi",
    title: "M. Kaneko, Y. Hayashi: A proposal for simple equations to express a relation between overturning ratios of rigid bodies and input excitations, 13th World Conference on Earthquake Engineering, paper 3304, 2004",
};
/// The oldest criterion of all.
pub static WEST: Document =
    Document { short: "West", title: "The criterion of the 1880s that bears the name of West, as J. Milne quotes it" };

steps! { 173 "criteria of falling";
    G "g" FreeFall (STATICS "" Derived) "Acceleration of free fall": Given;
    PI_ "pi" Number (STATICS "" Derived) "Half a turn": Constant;
    H "h" Length (STATICS "load-out" Derived) "Height of the centre of gravity above the floor": Given;
    X "x" Length (STATICS "" Derived) "Distance from the centre of gravity to the edge": Given;
    RHO "rho" Length (STATICS "load-out" Derived) "Radius of gyration about the centre of gravity": Given;
    R "R" Length (STATICS "" Derived) "From the edge to the centre of gravity" = "sqrt(x^2 + h^2)";
    ALPHA "alpha" Angle (STATICS "" Derived) "Angle at which it would fall by its own weight": Given;
    A_WEST "A_W" Acceleration (WEST "" Memory) "Acceleration below which it does not lift an edge" = "x / h";
    V_STEP "V" Velocity (STATICS "momentum and energy" Derived) "Velocity that throws it over if it starts or stops at once: a floor that jumps, or wheels that meet a kerb" = "sqrt(2 * g * (R - h) * (rho^2 + R^2) / h^2)";
    S_V "S_V" Velocity (HOUSNER_1963 "" Memory) "Undamped spectral velocity at which half of such bodies fall" = "alpha * sqrt(g * R) * sqrt((rho^2 + R^2) / R^2)";
    A_0 "A_0" Acceleration (ISHIYAMA_1982 "" Memory) "Peak acceleration below which it does not fall" = "x / h";
    V_0 "V_0" Velocity (ISHIYAMA_1982 "" Memory) "Peak velocity below which a uniform body does not fall; both must be exceeded" = "0.4 * sqrt(8 / 3 * g * R * (1 - cos(alpha)) / cos(alpha)^2)";
    B_F "B" Length (STATICS "" Derived) "Full width of the base of an even body like this" = "2 * x";
    H_F "H" Length (STATICS "" Derived) "Full height of it" = "2 * h";
    K_V "k_V" FreeFall (ISHIYAMA_1982 "" Memory) "Square of the constant 10 of the short form in cm and s": Constant;
    V_0_S "V_0s" Velocity (ISHIYAMA_1982 "" Memory) "Short form of the same, 10 B over the root of H in cm" = "B * sqrt(k_V / H)";
    K_F "k_F" FreeFall (KANEKO_HAYASHI "" Memory) "Square of the constant 15.6 in cm and s": Constant;
    F_B "F_b" Frequency (KANEKO_HAYASHI "" Memory) "Frequency of the floor above which its velocity counts and not its acceleration" = "sqrt(k_F / H) * (1 + B / H)^(-1.5)";
    A_50 "A_50" Acceleration (KANEKO_HAYASHI "" Memory) "Peak acceleration at which half of such furniture falls, where the floor is slower than that" = "B / H * (1 + B / H)";
    F_F "F_f" Frequency (KANEKO_HAYASHI "" Memory) "Equivalent frequency of the floor, peak acceleration over 2 pi times peak velocity": Given;
    A_50_Q "A_50" Acceleration (KANEKO_HAYASHI "" Memory) "Peak acceleration at which half of such furniture falls, the floor being quicker" = "B * sqrt(k_V / H) * (1 + B / H)^2.5 * 2 * pi * F_f / g";
}

/// What the criteria say of a body that falls over one of its edges.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Criteria {
    /// West: acceleration at which it lifts.
    pub west: f64,
    /// Velocity that throws it over if it comes at once.
    pub step_mm_per_s: f64,
    /// Housner: spectral velocity at which half of such bodies fall.
    pub housner_mm_per_s: f64,
    /// Ishiyama: peak velocity below which it does not fall.
    pub ishiyama_mm_per_s: f64,
    /// Kaneko and Hayashi: peak acceleration at which half fall, at the frequency asked for.
    pub kaneko: f64,
}

/// Square of 10 cm^0.5/s, in mm/s2.
const ISHIYAMA_MM_PER_S2: f64 = 1000.0;
/// Square of 15.6 cm^0.5/s, in mm/s2.
const KANEKO_MM_PER_S2: f64 = 2433.6;

/// The criteria for falling over one edge; `floor_hz` is the equivalent frequency of the floor, where it is known.
pub fn criteria(body: &RockingBody, side: Side, floor_hz: Option<f64>, sheet: &mut Sheet) -> Criteria {
    sheet.step(PI_, PI);
    let g = sheet.step(G, body.free_fall_mm_per_s2);
    let h = sheet.step(H, body.height_mm);
    let x = sheet.step(X, body.reach_mm(side));
    let rho = sheet.step(RHO, body.gyration_mm);
    let r = sheet.step(R, number::sqrt(x * x + h * h));
    let alpha = sheet.step(ALPHA, body.edge(side).alpha_rad);
    let west = sheet.step(A_WEST, x / h);
    let step = sheet.step(V_STEP, number::sqrt(2.0 * g * (r - h) * (rho * rho + r * r) / (h * h)));
    let housner = sheet.step(S_V, alpha * number::sqrt(g * r) * number::sqrt((rho * rho + r * r) / (r * r)));
    sheet.step(A_0, x / h);
    let cos = number::cos(alpha);
    let ishiyama = sheet.step(V_0, 0.4 * number::sqrt(8.0 / 3.0 * g * r * (1.0 - cos) / (cos * cos)));
    let b = sheet.step(B_F, 2.0 * x);
    let full = sheet.step(H_F, 2.0 * h);
    let k_v = sheet.step(K_V, ISHIYAMA_MM_PER_S2);
    sheet.step(V_0_S, b * number::sqrt(k_v / full));
    let k_f = sheet.step(K_F, KANEKO_MM_PER_S2);
    let limit_hz = sheet.step(F_B, number::sqrt(k_f / full) * number::pow(1.0 + b / full, -1.5));
    let kaneko = match floor_hz {
        Some(floor_hz) if floor_hz > limit_hz => {
            sheet.step(F_F, floor_hz);
            let form = number::pow(1.0 + b / full, 2.5);
            sheet.step(A_50_Q, b * number::sqrt(k_v / full) * form * 2.0 * PI * floor_hz / g)
        }
        _ => sheet.step(A_50, b / full * (1.0 + b / full)),
    };
    Criteria { west, step_mm_per_s: step, housner_mm_per_s: housner, ishiyama_mm_per_s: ishiyama, kaneko }
}
