//! The working of base reactions: from the weight of a state to the forces of feet and anchors, step by step.

use alloc::vec;
use alloc::vec::Vec;

use super::{Held, Pivot, Push, Reactions, Supports};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Detail, Part, Sheet, Subject, System, number, steps};
use crate::geometry::Point;

steps! { 12 "base reactions";
    M "m" Mass (STATICS "load-out" Derived) "Mass of this state": Given;
    G "g" Gravity (STATICS "standard free fall" Published) "Weight of a mass": Constant;
    W "W" Force (STATICS "" Derived) "Weight" = "m * g";
    GAMMA_D "gamma_D" Number (STATICS "load case" Derived) "Factor on gravity of this load case": Given;
    E_V "e_v" Number (STATICS "load case" Derived) "Vertical action over the weight, downwards positive": Given;
    C_H "c_h" Acceleration (STATICS "load case" Derived) "Horizontal action over the weight": Given;
    OMEGA "Omega_0" Number (INPUT "anchorage" Derived) "Overstrength on the horizontal action, given with the anchorage": Given;
    P "P" Force (STATICS "" Derived) "Vertical load, downwards" = "(gamma_D + e_v) * W";
    H "H" Force (STATICS "" Derived) "Horizontal load at the centre of gravity" = "c_h * W";
    H_OMEGA "H" Force (STATICS "" Derived) "Horizontal load at the centre of gravity, amplified" = "Omega_0 * c_h * W";
    X_C "x_c" Length (STATICS "load-out" Derived) "Centre of gravity, to the right": Given;
    Y_C "y_c" Length (STATICS "load-out" Derived) "Centre of gravity, to the rear": Given;
    H_C "h" Length (STATICS "load-out" Derived) "Centre of gravity, above the floor": Given;
    THETA "theta" Angle (STATICS "" Derived) "Direction of the push, from the right towards the rear": Given;
    M_X "M_x" Moment (STATICS "" Derived) "Moment of the load along x" = "P * x_c + H * h * cos(theta)";
    M_Y "M_y" Moment (STATICS "" Derived) "Moment of the load along y" = "P * y_c + H * h * sin(theta)";
    K_A_I "k_i" Stiffness (STATICS "" Derived) "Stiffness of each anchor": Given;
    N_I "N_i" Force (STATICS "rigid body on one-sided supports" Derived) "Compression of each foot; the residuals are those of the three equations": Solved;
    T_I "T_i" Force (STATICS "rigid body on one-sided supports" Derived) "Tension of each anchor": Solved;
    P_SUM "P_sum" Force (STATICS "sum of forces" Derived) "Feet less anchors, which must equal P" = "sum(N_i) - sum(T_i)";
    P_SUM_FREE "P_sum" Force (STATICS "sum of forces" Derived) "Feet together, which must equal P" = "sum(N_i)";
    X_I "x_i" Length (INPUT "" Derived) "Place of each anchor, to the right": Given;
    Y_I "y_i" Length (INPUT "" Derived) "Place of each anchor, to the rear": Given;
    N_A "n" Number (INPUT "" Derived) "Number of anchors": Given;
    X_S "x_s" Length (STATICS "" Derived) "Centre of the anchors, to the right" = "sum(x_i) / n";
    Y_S "y_s" Length (STATICS "" Derived) "Centre of the anchors, to the rear" = "sum(y_i) / n";
    T_Z "T_z" Moment (STATICS "" Derived) "Twist of the push about the centre of the anchors" = "(x_c - x_s) * H * sin(theta) - (y_c - y_s) * H * cos(theta)";
    J "J" Area (STATICS "" Derived) "Sum of the squared distances from it" = "sum((x_i - x_s)^2 + (y_i - y_s)^2)";
    V_X_I "V_x_i" Force (STATICS "rigid plate on equal anchors" Derived) "Shear of each anchor along x" = "H * cos(theta) / n - T_z * (y_i - y_s) / J";
    V_Y_I "V_y_i" Force (STATICS "rigid plate on equal anchors" Derived) "Shear of each anchor along y" = "H * sin(theta) / n + T_z * (x_i - x_s) / J";
    V_X_ONE "V_x_i" Force (STATICS "" Derived) "Shear of the one place of anchors along x" = "H * cos(theta) / n";
    V_Y_ONE "V_y_i" Force (STATICS "" Derived) "Shear of the one place of anchors along y" = "H * sin(theta) / n";
    W_X_I "w_x_i" Number (INPUT "anchorage" Derived) "1 where the hole of the anchor lets it take shear along x, 0 where it is slotted that way": Given;
    W_Y_I "w_y_i" Number (INPUT "anchorage" Derived) "1 where the hole of the anchor lets it take shear along y, 0 where it is slotted that way": Given;
    N_X "n_x" Number (STATICS "" Derived) "Number of anchors that hold along x" = "sum(w_x_i)";
    N_Y "n_y" Number (STATICS "" Derived) "Number of anchors that hold along y" = "sum(w_y_i)";
    X_S_SLOTTED "x_s" Length (STATICS "" Derived) "Centre of the anchors that hold along y" = "sum(w_y_i * x_i) / n_y";
    Y_S_SLOTTED "y_s" Length (STATICS "" Derived) "Centre of the anchors that hold along x" = "sum(w_x_i * y_i) / n_x";
    J_SLOTTED "J" Area (STATICS "" Derived) "Sum of the squared levers of those that hold" = "sum(w_x_i * (y_i - y_s)^2 + w_y_i * (x_i - x_s)^2)";
    V_X_SLOTTED "V_x_i" Force (STATICS "rigid plate on equal anchors" Derived) "Shear of each anchor along x" = "w_x_i * (H * cos(theta) / n_x - T_z * (y_i - y_s) / J)";
    V_Y_SLOTTED "V_y_i" Force (STATICS "rigid plate on equal anchors" Derived) "Shear of each anchor along y" = "w_y_i * (H * sin(theta) / n_y + T_z * (x_i - x_s) / J)";
    M_EX "M_ex" Moment (STATICS "hand method" Derived) "Hand method: moment about the edge of the feet that gravity does not hold": Geometry;
    L_MAX "l" Length (STATICS "hand method" Derived) "Hand method: lever of the farthest anchor": Geometry;
    L_SQ "L_2" Area (STATICS "hand method" Derived) "Hand method: sum of the squared levers": Geometry;
    T_HAND "T_hand" Force (STATICS "hand method" Derived) "Pull of the farthest anchor by the hand method, pivoting about the edge, to set beside the largest T_i" = "M_ex * l / L_2";
}

/// The load of one state, case and direction, before it is put on the supports.
#[derive(Clone, Copy, Debug)]
pub struct CaseLoad {
    /// Mass of the state.
    pub mass_kg: f64,
    /// Centre of gravity of the state.
    pub centre_mm: [f64; 3],
    /// Factor on gravity.
    pub gravity: f64,
    /// Vertical action over the weight, downwards positive.
    pub vertical: f64,
    /// Horizontal action over the weight.
    pub horizontal: f64,
    /// Overstrength that the anchorage adds, 1 where it adds none.
    pub overstrength: f64,
    /// Direction of the push.
    pub direction_rad: f64,
}

impl CaseLoad {
    /// The weight of the state.
    pub fn weight_n(&self) -> f64 {
        self.mass_kg * G_N_PER_KG
    }

    /// The push on the base.
    pub fn push(&self) -> Push {
        let weight_n = self.weight_n();
        Push {
            down_n: (self.gravity + self.vertical) * weight_n,
            at: Point::new(self.centre_mm[0], self.centre_mm[1]),
            height_mm: self.centre_mm[2],
            horizontal_n: self.overstrength * self.horizontal * weight_n,
            direction_rad: self.direction_rad,
        }
    }

    /// Tells the load: the section that the reactions, if there are any, go on.
    pub fn tell(&self, sheet: &mut Sheet) {
        if !sheet.is_told() {
            return;
        }
        sheet.open(Part::BaseReactions, Subject::Whole, None, System::Si);
        sheet.carry(M, self.mass_kg);
        sheet.step(G, G_N_PER_KG);
        let weight_n = sheet.step(W, self.mass_kg * G_N_PER_KG);
        sheet.carry(GAMMA_D, self.gravity);
        sheet.carry(E_V, self.vertical);
        sheet.carry(C_H, self.horizontal);
        let down_n = sheet.step(P, (self.gravity + self.vertical) * weight_n);
        let horizontal_n = if self.overstrength == 1.0 {
            sheet.step(H, self.horizontal * weight_n)
        } else {
            sheet.step(OMEGA, self.overstrength);
            sheet.step(H_OMEGA, self.overstrength * self.horizontal * weight_n)
        };
        let [x_mm, y_mm, height_mm] = self.centre_mm;
        sheet.carry(X_C, x_mm);
        sheet.carry(Y_C, y_mm);
        sheet.carry(H_C, height_mm);
        sheet.step(THETA, self.direction_rad);
        let (cos, sin) = (number::cos(self.direction_rad), number::sin(self.direction_rad));
        sheet.step(M_X, down_n * x_mm + horizontal_n * height_mm * cos);
        sheet.step(M_Y, down_n * y_mm + horizontal_n * height_mm * sin);
    }
}

/// Tells the reactions to a load that was told just before.
pub fn tell_reactions(supports: &Supports, reactions: &Reactions, sheet: &mut Sheet) {
    if !sheet.is_told() {
        return;
    }
    let stiffness: Vec<f64> = supports.anchors().iter().map(|anchor| anchor.stiffness_n_per_mm).collect();
    sheet.each(K_A_I, &stiffness);
    let feet_n: Vec<f64> = reactions.feet.iter().map(|foot| foot.force_n).collect();
    sheet.each_detailed(N_I, &feet_n, || Detail::Residuals(vec![reactions.residual]));
    let together: f64 = feet_n.iter().sum();
    if reactions.anchors_n.is_empty() {
        sheet.step(P_SUM_FREE, together);
        return;
    }
    sheet.each_detailed(T_I, &reactions.anchors_n, || Detail::Residuals(vec![reactions.residual]));
    sheet.step(P_SUM, together - reactions.anchors_n.iter().sum::<f64>());
}

/// Tells how the push is shared by the anchors in shear.
pub fn tell_shear(load: &CaseLoad, places: &[Point], shares: &[super::Shear], sheet: &mut Sheet) {
    if !sheet.is_told() || places.is_empty() {
        return;
    }
    let count = places.len() as f64;
    let x_mm: Vec<f64> = places.iter().map(|place| place.x_mm).collect();
    let y_mm: Vec<f64> = places.iter().map(|place| place.y_mm).collect();
    sheet.each(X_I, &x_mm);
    sheet.each(Y_I, &y_mm);
    sheet.step(N_A, count);
    let centre_x = sheet.step(X_S, x_mm.iter().sum::<f64>() / count);
    let centre_y = sheet.step(Y_S, y_mm.iter().sum::<f64>() / count);
    let horizontal_n = load.push().horizontal_n;
    let (cos, sin) = (number::cos(load.direction_rad), number::sin(load.direction_rad));
    let [x_c, y_c, _] = load.centre_mm;
    sheet.step(T_Z, (x_c - centre_x) * horizontal_n * sin - (y_c - centre_y) * horizontal_n * cos);
    let square = |value: f64| value * value;
    let polar: f64 = x_mm.iter().zip(&y_mm).map(|(x, y)| square(x - centre_x) + square(y - centre_y)).sum();
    sheet.step(J, polar);
    let one_place = polar == 0.0;
    let x_n: Vec<f64> = shares.iter().map(|share| share.x_n).collect();
    let y_n: Vec<f64> = shares.iter().map(|share| share.y_n).collect();
    sheet.each(if one_place { V_X_ONE } else { V_X_I }, &x_n);
    sheet.each(if one_place { V_Y_ONE } else { V_Y_I }, &y_n);
}

/// Tells how the push is shared by anchors some of which stand in slotted holes.
pub fn tell_slotted_shear(load: &CaseLoad, held: &[Held], shares: &[super::Shear], sheet: &mut Sheet) {
    let of = |value: &dyn Fn(&Held) -> f64| -> Vec<f64> { held.iter().map(value).collect() };
    let weight = |way: usize| of(&|(_, ways): &Held| f64::from(u8::from(ways[way])));
    let (x_mm, y_mm, w_x, w_y) = (of(&|(at, _)| at.x_mm), of(&|(at, _)| at.y_mm), weight(0), weight(1));
    sheet.each(X_I, &x_mm);
    sheet.each(Y_I, &y_mm);
    sheet.each(W_X_I, &w_x);
    sheet.each(W_Y_I, &w_y);
    let n_x = sheet.step(N_X, w_x.iter().sum());
    let n_y = sheet.step(N_Y, w_y.iter().sum());
    let weighted = |weights: &[f64], of: &[f64]| weights.iter().zip(of).map(|(w, value)| w * value).sum::<f64>();
    let x_s = sheet.step(X_S_SLOTTED, weighted(&w_y, &x_mm) / n_y);
    let y_s = sheet.step(Y_S_SLOTTED, weighted(&w_x, &y_mm) / n_x);
    let horizontal_n = load.push().horizontal_n;
    let (cos, sin) = (number::cos(load.direction_rad), number::sin(load.direction_rad));
    let [x_c, y_c, _] = load.centre_mm;
    sheet.step(T_Z, (x_c - x_s) * horizontal_n * sin - (y_c - y_s) * horizontal_n * cos);
    let square = |value: f64| value * value;
    let levers = (0..held.len()).map(|i| w_x[i] * square(y_mm[i] - y_s) + w_y[i] * square(x_mm[i] - x_s));
    sheet.step(J_SLOTTED, levers.sum());
    sheet.each(V_X_SLOTTED, &shares.iter().map(|share| share.x_n).collect::<Vec<_>>());
    sheet.each(V_Y_SLOTTED, &shares.iter().map(|share| share.y_n).collect::<Vec<_>>());
}

/// Tells the hand method about its worst edge.
pub fn tell_hand_method(pivots: &[Pivot], sheet: &mut Sheet) {
    let worst = pivots
        .iter()
        .filter(|pivot| pivot.anchor.is_some() && pivot.excess_nmm > 0.0)
        .max_by(|a, b| a.tension_max_n.total_cmp(&b.tension_max_n));
    if let Some(pivot) = worst {
        let edge = || {
            let (from, to) = (pivot.edge.from, pivot.edge.to);
            Detail::Shape(vec![[from.x_mm, from.y_mm], [to.x_mm, to.y_mm]])
        };
        sheet.detailed(M_EX, pivot.excess_nmm, edge);
        sheet.detailed(L_MAX, pivot.lever_max_mm, edge);
        sheet.detailed(L_SQ, pivot.levers_squared_mm2, edge);
        sheet.step(T_HAND, pivot.excess_nmm * pivot.lever_max_mm / pivot.levers_squared_mm2);
    }
}
