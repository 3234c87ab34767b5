//! A suspended slab: load over the footprint, over the pitch with aisles, as an equivalent uniform load, dispersed.

use alloc::vec::Vec;

use super::documents::{BS_8110, EN_1991_2, VENDOR_FLOOR};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, Sheet, StepId, System, number, steps};

steps! { 151 "suspended slab";
    W "W" Force (STATICS "" Derived) "Weight of the cabinet": Given;
    L_X "L_x" Length (INPUT "cabinet" Derived) "Width of the footprint": Given;
    L_Y "L_y" Length (INPUT "cabinet" Derived) "Depth of the footprint": Given;
    Q_F "q_f" AreaLoad (STATICS "" Derived) "Load over the footprint" = "W / (L_x * L_y)";
    P_X "p_x" Length (INPUT "floor" Derived) "Pitch of the cabinets along a row": Given;
    P_Y "p_y" Length (INPUT "floor" Derived) "Pitch of the rows, with half an aisle on both sides": Given;
    Q_A "q_a" AreaLoad (INPUT "floor" Derived) "Live load on the aisles": Given;
    Q_P "q_p" AreaLoad (STATICS "" Derived) "Load over the pitch: the cabinet and the live load on what it leaves free" = "W / (p_x * p_y) + q_a * (1 - L_x * L_y / (p_x * p_y))";
    S "S" Length (INPUT "floor" Derived) "Span of the slab, one way": Given;
    X_C "x" Length (INPUT "floor" Derived) "Distance of the middle of the cabinet from the nearer support": Given;
    N_I "N_i" Force (STATICS "base reactions" Derived) "Force of each leg": Given;
    U_I "u_i" Length (STATICS "plan" Derived) "Place of each leg along the span, from that support; the way round that is worse": Given;
    R_A "R_A" Force (STATICS "simply supported span" Derived) "Reaction of that support" = "sum(N_i * (S - u_i)) / S";
    U_M "u_m" Length (STATICS "plan" Derived) "Place of the leg under which the moment is largest": Given;
    M "M" Moment (STATICS "simply supported span" Derived) "Moment under that leg" = "R_A * u_m - sum(N_i * (max(u_m, u_i) - u_i))";
    B_L "b_l" Length (INPUT "cabinet" Derived) "Width of the load across the span": Given;
    B_E "b_e" Length (BS_8110 "3.5.2.2" Memory) "Width of the strip that carries it" = "b_l + 2.4 * x * (1 - x / S)";
    E_D "e_d" Length (INPUT "slab" Derived) "Distance from the middle of the load to the unsupported edge": Given;
    B_EDGE "b_e" Length (BS_8110 "3.5.2.2" Memory) "Width of the strip that carries it near an unsupported edge" = "min(b_l + 2.4 * x * (1 - x / S), b_l / 2 + 1.2 * x * (1 - x / S) + e_d)";
    Q_M "q_M" AreaLoad (STATICS "same moment" Derived) "Uniform load of the same moment" = "8 * M / (S^2 * b_e)";
    Q_V "q_V" AreaLoad (STATICS "same shear" Derived) "Uniform load of the same shear" = "2 * R_A / (S * b_e)";
    Q_EQ "q_eq" AreaLoad (STATICS "" Derived) "Equivalent uniform load" = "max(q_M, q_V)";
    B_FOOT "b" Length (INPUT "cabinet" Derived) "Side of the foot along x": Given;
    D_FOOT "d" Length (INPUT "cabinet" Derived) "Side of the foot along y": Given;
    H "h" Length (INPUT "slab" Derived) "Thickness of the slab": Given;
    Q_D "q_d" AreaLoad (EN_1991_2 "4.3.6" Memory) "Pressure of a foot's load spread at 45 degrees to the middle of the slab" = "W / ((b + h) * (d + h))";
    W_LB "W" Force (INPUT "" Derived) "Weight": Given;
    A_F "A_f" Area (INPUT "" Derived) "Footprint": Given;
    A_T "A_t" Area (INPUT "" Derived) "Footprint with the clear area around it": Given;
    Q_LIVE "q_l" AreaLoad (VENDOR_FLOOR "" Secondary) "Live load that it takes on the clear area, 15 psf": Constant;
    Q_RAISED "q_r" AreaLoad (VENDOR_FLOOR "" Secondary) "Weight of a raised floor that it takes on the whole area, 10 psf": Constant;
    Q_VENDOR "q" AreaLoad (VENDOR_FLOOR "" Secondary) "Load on the structural slab by that formula" = "(W + q_l * 0.5 * (A_t - A_f) + q_r * A_t) / A_t";
    NO_PITCH "" Number (INPUT "floor" Derived) "no pitch of the cabinets is given (pitch_mm): the load over an area needs it": Reason;
    PITCH_SMALL "" Number (INPUT "floor" Derived) "the pitch is smaller than the cabinet itself": Reason;
    NO_SPAN "" Number (INPUT "floor" Derived) "no span of the slab is given (span_mm): an equivalent uniform load needs it": Reason;
    SHORT_SPAN "" Number (STATICS "" Derived) "the legs of the cabinet do not all stand within the span": Reason;
    NO_LIVE_LOAD "" Number (INPUT "floor" Derived) "no design live load of the floor is given (live_load_mpa), nor an occupancy to take it from: ask the owner": Reason;
}

/// A cabinet on a floor, as an area load.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AreaLoad {
    /// Its weight.
    pub weight_n: f64,
    /// Width and depth of its footprint.
    pub footprint_mm: [f64; 2],
}

/// A one-way span with a cabinet on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span<'a> {
    /// The span.
    pub span_mm: f64,
    /// From the middle of the cabinet to a support.
    pub middle_mm: f64,
    /// Its legs: place along the span from the middle of the cabinet, and force.
    pub legs: &'a [[f64; 2]],
    /// Width of the load across the span.
    pub across_mm: f64,
    /// From the middle of the load to an unsupported edge, where one is near.
    pub edge_mm: Option<f64>,
}

impl AreaLoad {
    /// Load over the footprint, MPa.
    pub fn over_footprint_mpa(&self, sheet: &mut Sheet) -> f64 {
        let weight = sheet.step(W, self.weight_n);
        let width = sheet.step(L_X, self.footprint_mm[0]);
        let depth = sheet.step(L_Y, self.footprint_mm[1]);
        sheet.step(Q_F, weight / (width * depth))
    }

    /// Load over the pitch with a live load on the aisles, MPa. The footprint stands in the section already.
    ///
    /// Errors: a pitch smaller than the cabinet.
    pub fn over_pitch_mpa(&self, pitch_mm: [f64; 2], aisle_mpa: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
        let [width, depth] = self.footprint_mm;
        if crate::calc::limit::less(pitch_mm[0], width) || crate::calc::limit::less(pitch_mm[1], depth) {
            return Err(PITCH_SMALL);
        }
        let p_x = sheet.step(P_X, pitch_mm[0]);
        let p_y = sheet.step(P_Y, pitch_mm[1]);
        let aisle = sheet.step(Q_A, aisle_mpa);
        let area = p_x * p_y;
        Ok(sheet.step(Q_P, self.weight_n / area + aisle * (1.0 - width * depth / area)))
    }

    /// Pressure of a load spread from a foot, or from the plate under it, at 45 degrees to the middle of the slab, MPa.
    pub fn dispersed_mpa(load_n: f64, foot_mm: [f64; 2], thickness_mm: f64, sheet: &mut Sheet) -> f64 {
        let load = sheet.step(W, load_n);
        let b = sheet.step(B_FOOT, foot_mm[0]);
        let d = sheet.step(D_FOOT, foot_mm[1]);
        let h = sheet.step(H, thickness_mm);
        sheet.step(Q_D, load / ((b + h) * (d + h)))
    }

    /// The formula of a maker of computers, psi, told in a section of US units: weight in lbf, areas in in2.
    pub fn vendor_psi(weight_lbf: f64, footprint_in2: f64, total_in2: f64, sheet: &mut Sheet) -> f64 {
        let weight = sheet.step(W_LB, weight_lbf);
        let footprint = sheet.step(A_F, footprint_in2);
        let total = sheet.step(A_T, total_in2);
        let live = sheet.step(Q_LIVE, 15.0 / 144.0);
        let raised = sheet.step(Q_RAISED, 10.0 / 144.0);
        sheet.step(Q_VENDOR, (weight + live * 0.5 * (total - footprint) + raised * total) / total)
    }
}

impl Span<'_> {
    /// Equivalent uniform load on a one-way span, MPa: the larger of same moment and same shear.
    ///
    /// The legs press as they do; which side of the cabinet lies towards the nearer support is not asked, so the worse
    /// way round counts. Errors: legs beside the span.
    pub fn equivalent_mpa(&self, sheet: &mut Sheet) -> Result<f64, StepId> {
        let [one, other] = [1.0, -1.0].map(|sense| self.one_way_round(sense, &mut Sheet::quiet()));
        self.one_way_round(if other? > one? { -1.0 } else { 1.0 }, sheet)
    }

    fn one_way_round(&self, sense: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
        // Counted from the support that is nearer, whichever was meant.
        let x = f64::min(self.middle_mm, self.span_mm - self.middle_mm);
        let places: Vec<f64> = self.legs.iter().map(|[along_mm, _]| x + sense * along_mm).collect();
        if places.is_empty() || places.iter().any(|&place| place < 0.0 || place > self.span_mm) {
            return Err(SHORT_SPAN);
        }
        let forces: Vec<f64> = self.legs.iter().map(|[_, force_n]| *force_n).collect();
        let each = || forces.iter().zip(&places);
        let s = sheet.step(S, self.span_mm);
        let x = sheet.step(X_C, x);
        sheet.each(N_I, &forces);
        sheet.each(U_I, &places);
        let reaction = sheet.step(R_A, each().map(|(force, place)| force * (s - place)).sum::<f64>() / s);
        let under =
            |at: f64| reaction * at - each().map(|(force, place)| force * (f64::max(at, *place) - place)).sum::<f64>();
        let first = places[0];
        let at = places.iter().fold(first, |worst, &place| if under(place) > under(worst) { place } else { worst });
        let at = sheet.step(U_M, at);
        let moment = sheet.step(M, under(at));
        let across = sheet.step(B_L, self.across_mm);
        let wide = across + 2.4 * x * (1.0 - x / s);
        let strip = match self.edge_mm {
            None => sheet.step(B_E, wide),
            Some(edge) => {
                let edge = sheet.step(E_D, edge);
                sheet.step(B_EDGE, f64::min(wide, across / 2.0 + 1.2 * x * (1.0 - x / s) + edge))
            }
        };
        let by_moment = sheet.step(Q_M, 8.0 * moment / (number::pow(s, 2.0) * strip));
        let by_shear = sheet.step(Q_V, 2.0 * reaction / (s * strip));
        Ok(sheet.step(Q_EQ, f64::max(by_moment, by_shear)))
    }
}

/// One psf in MPa.
pub fn psf_mpa() -> f64 {
    System::Us.to_si(1.0, Kind::Pressure) / 144.0
}
