//! Four equal feet by closed form: on an even floor, and with a hollow under one of them.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Sheet, StepId, limit, steps};

steps! { 160 "four feet";
    W "W" Force (STATICS "" Derived) "Weight": Given;
    XI "xi" Number (STATICS "" Derived) "Eccentricity along x over the spacing of the feet": Given;
    ETA "eta" Number (STATICS "" Derived) "Eccentricity along y over the spacing of the feet": Given;
    N_PP "N_pp" Force (STATICS "four equal feet" Derived) "Foot on the side of the load on both axes, all bearing" = "W * (1 / 4 + xi / 2 + eta / 2)";
    N_PM "N_pm" Force (STATICS "four equal feet" Derived) "Foot on its side along x only, all bearing" = "W * (1 / 4 + xi / 2 - eta / 2)";
    N_MP "N_mp" Force (STATICS "four equal feet" Derived) "Foot on its side along y only, all bearing" = "W * (1 / 4 - xi / 2 + eta / 2)";
    N_MM "N_mm" Force (STATICS "four equal feet" Derived) "Foot away from the load, all bearing" = "W * (1 / 4 - xi / 2 - eta / 2)";
    N_PP_3 "N_pp" Force (STATICS "three feet" Derived) "Foot on the side of the load on both axes, three bearing" = "W * (xi + eta)";
    N_PM_3 "N_pm" Force (STATICS "three feet" Derived) "Foot on its side along x only, three bearing" = "W * (1 / 2 - eta)";
    N_MP_3 "N_mp" Force (STATICS "three feet" Derived) "Foot on its side along y only, three bearing" = "W * (1 / 2 - xi)";
    K_F "k" Stiffness (INPUT "" Derived) "Stiffness of each foot": Given;
    DELTA "delta" Length (INPUT "" Derived) "Hollow under one foot": Given;
    D_LIFT "delta_0" Length (STATICS "four equal feet" Derived) "Hollow at which that foot bears nothing" = "W / k";
    N_LESS "N_less" Force (STATICS "four equal feet" Derived) "Feet of the diagonal with the hollow" = "W / 4 - k * delta / 4";
    N_MORE "N_more" Force (STATICS "four equal feet" Derived) "Feet of the other diagonal" = "W / 4 + k * delta / 4";
    N_HALF "N_half" Force (STATICS "two feet" Derived) "Feet of the other diagonal, which carry all" = "W / 2";
    TIPS "" Number (STATICS "" Derived) "the load stands beside the feet: it tips unless it is anchored": Reason;
}

/// Four equal feet on an even floor under an eccentric weight, N: (+,+), (+,-), (-,+), (-,-).
///
/// Eccentricities over the spacings, not negative. Errors: the load beside the feet.
pub fn even_n(weight_n: f64, xi: f64, eta: f64, sheet: &mut Sheet) -> Result<[f64; 4], StepId> {
    if limit::more(xi, 0.5) || limit::more(eta, 0.5) {
        return Err(TIPS);
    }
    let w = sheet.step(W, weight_n);
    let xi = sheet.step(XI, xi);
    let eta = sheet.step(ETA, eta);
    if limit::at_most(xi + eta, 0.5) {
        return Ok([
            sheet.step(N_PP, w * (0.25 + xi / 2.0 + eta / 2.0)),
            sheet.step(N_PM, w * (0.25 + xi / 2.0 - eta / 2.0)),
            sheet.step(N_MP, w * (0.25 - xi / 2.0 + eta / 2.0)),
            sheet.step(N_MM, w * (0.25 - xi / 2.0 - eta / 2.0)),
        ]);
    }
    let pp = sheet.step(N_PP_3, w * (xi + eta));
    let pm = sheet.step(N_PM_3, w * (0.5 - eta));
    Ok([pp, pm, sheet.step(N_MP_3, w * (0.5 - xi)), 0.0])
}

/// A hollow under one of four equal feet with the weight in the middle, N: that diagonal, the other one.
pub fn hollow_n(weight_n: f64, stiffness_n_per_mm: f64, hollow_mm: f64, sheet: &mut Sheet) -> [f64; 2] {
    let w = sheet.step(W, weight_n);
    let k = sheet.step(K_F, stiffness_n_per_mm);
    let delta = sheet.step(DELTA, hollow_mm);
    let lifts = sheet.step(D_LIFT, w / k);
    if delta < lifts {
        let less = sheet.step(N_LESS, w / 4.0 - k * delta / 4.0);
        return [less, sheet.step(N_MORE, w / 4.0 + k * delta / 4.0)];
    }
    [0.0, sheet.step(N_HALF, w / 2.0)]
}
