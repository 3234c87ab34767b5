//! What neighbouring legs add to the bending under a leg: a plate on springs, far from edges or beside one.

use alloc::vec;

use super::documents::{WINKLER_HALF_PLATE, WINKLER_PLATE};
use super::free_edge::{RAYS, Seen, sent_back};
use super::kelvin::{by_integral, by_series, kelvin};
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Detail, Sheet, number, steps};

steps! { 143 "neighbouring legs";
    P_J "P_j" Force (INPUT "" Derived) "Load of a neighbouring leg": Given;
    R_J "r_j" Length (STATICS "plan" Derived) "Distance of that leg": Given;
    COS_J "c_j" Number (STATICS "plan" Derived) "Cosine of the direction to that leg": Given;
    SIN_J "s_j" Number (STATICS "plan" Derived) "Sine of the direction to that leg": Given;
    X_J "x_j" Number (WINKLER_PLATE "" Derived) "Its distance over the radius of relative stiffness" = "r_j / l";
    KER "ker" Number (WINKLER_PLATE "ker x" Derived) "Kelvin's function ker; the residual compares series and integral": Solved;
    KEI "kei" Number (WINKLER_PLATE "kei x" Derived) "Kelvin's function kei; the residual compares series and integral": Solved;
    KEI_SLOPE "kei'" Number (WINKLER_PLATE "kei' x" Derived) "Derivative of kei; the residual compares series and integral": Solved;
    W_RATIO "w_j" Number (WINKLER_PLATE "" Derived) "Settlement there over that under the leg itself" = "-4 / 3.141592653589793 * kei";
    M_R "m_r" Force (WINKLER_PLATE "" Derived) "Moment along the line to that leg, per width" = "P_j / (2 * 3.141592653589793) * (ker - (1 - nu) * kei' / x_j)";
    M_T "m_t" Force (WINKLER_PLATE "" Derived) "Moment across the line to that leg, per width" = "P_j / (2 * 3.141592653589793) * (nu * ker + (1 - nu) * kei' / x_j)";
    M_X "m_x" Force (STATICS "moments turned" Derived) "What it adds to the moment along x" = "m_r * c_j^2 + m_t * s_j^2";
    M_Y "m_y" Force (STATICS "moments turned" Derived) "What it adds to the moment along y" = "m_r * s_j^2 + m_t * c_j^2";
    M_XY "m_xy" Force (STATICS "moments turned" Derived) "What it adds to the twisting moment" = "(m_r - m_t) * c_j * s_j";
    M_X_I "M_x_i" Force (STATICS "" Derived) "Moments along x of all neighbours": Given;
    M_Y_I "M_y_i" Force (STATICS "" Derived) "Moments along y of all neighbours": Given;
    M_XY_I "M_xy_i" Force (STATICS "" Derived) "Twisting moments of all neighbours": Given;
    M_SUM "m_mean" Force (STATICS "" Derived) "Mean of the moments along x and y" = "(sum(M_x_i) + sum(M_y_i)) / 2";
    M_HALF "m_half" Force (STATICS "" Derived) "Half of their difference" = "(sum(M_x_i) - sum(M_y_i)) / 2";
    M_PRINCIPAL "m_1" Force (STATICS "principal moment" Derived) "Larger principal moment of the neighbours, per width" = "m_mean + sqrt(m_half^2 + sum(M_xy_i)^2)";
    S_NEIGHBOURS "sigma_n" Stress (STATICS "sigma = 6 m / h^2" Derived) "Tension that the neighbours add" = "6 * m_1 / h^2";
    Y_PLACE "y" Length (STATICS "plan" Derived) "Distance of the leg's middle from the free edge; x runs along this edge and y away from it": Given;
    Y_LOAD "y_j" Length (STATICS "plan" Derived) "Distance of that leg's middle from the free edge": Given;
    E_X "e_x" Number (WINKLER_HALF_PLATE "reflected part" Derived) "Moment along the edge that the free edge sends back, per load; the residual compares two paths of integration": Solved;
    E_Y "e_y" Number (WINKLER_HALF_PLATE "reflected part" Derived) "Moment across the edge that it sends back, per load; the residual compares two paths": Solved;
    E_XY "e_xy" Number (WINKLER_HALF_PLATE "reflected part" Derived) "Twisting moment that it sends back, per load; the residual compares two paths": Solved;
    M_X_EDGE "m_x" Force (WINKLER_HALF_PLATE "" Derived) "What that leg adds to the moment along x on the plate with an edge" = "m_x0 + P_j * e_x";
    M_Y_EDGE "m_y" Force (WINKLER_HALF_PLATE "" Derived) "What it adds to the moment along y" = "m_y0 + P_j * e_y";
    M_XY_EDGE "m_xy" Force (WINKLER_HALF_PLATE "" Derived) "What it adds to the twisting moment" = "m_xy0 + P_j * e_xy";
    M_X_0 "m_x0" Force (STATICS "moments turned" Derived) "What it would add to the moment along x if there were no edge" = "m_r * c_j^2 + m_t * s_j^2";
    M_Y_0 "m_y0" Force (STATICS "moments turned" Derived) "What it would add to the moment along y" = "m_r * s_j^2 + m_t * c_j^2";
    M_XY_0 "m_xy0" Force (STATICS "moments turned" Derived) "What it would add to the twisting moment" = "(m_r - m_t) * c_j * s_j";
}

/// A leg beside the one that is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Neighbour {
    /// Its load.
    pub load_n: f64,
    /// Where it stands as seen from the leg: to the right, to the rear; or along the free edge and away from it.
    pub away_mm: [f64; 2],
    /// The free edge beside both, where there is one.
    pub edge: Option<BesideEdge>,
}

/// A straight free edge beside a leg and its neighbour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BesideEdge {
    /// From the edge to the leg's middle; that of the neighbour follows from where it stands.
    pub from_edge_mm: f64,
    /// What the edge sends back to the leg, per load of the neighbour: moments along the edge, across it, twisting.
    pub sent_back: Moments,
}

/// The slab that both stand on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlateOnSprings {
    /// Radius of relative stiffness.
    pub radius_mm: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Thickness.
    pub thickness_mm: f64,
}

/// Moments per width at the leg: along x, along y, twisting.
pub type Moments = [f64; 3];

impl PlateOnSprings {
    /// A free edge beside a leg and a neighbour that stands away from it along the edge and inwards.
    pub fn beside_edge(&self, from_edge_mm: f64, away_mm: [f64; 2]) -> BesideEdge {
        BesideEdge { from_edge_mm, sent_back: self.sent_back(from_edge_mm, away_mm, RAYS[0]) }
    }

    fn sent_back(&self, from_edge_mm: f64, [along_mm, inwards_mm]: [f64; 2], ray: f64) -> Moments {
        let l = self.radius_mm;
        let load = (from_edge_mm + inwards_mm) / l;
        sent_back(&Seen { along: along_mm / l, place: from_edge_mm / l, load }, self.poisson, ray)
    }

    /// What one neighbour adds to the moments at the leg, told. `nu` and `l` stand in the section already.
    pub fn moments_n(&self, neighbour: &Neighbour, sheet: &mut Sheet) -> Moments {
        let [dx, dy] = neighbour.away_mm;
        let p = sheet.step(P_J, neighbour.load_n);
        let r = sheet.step(R_J, number::hypot(dx, dy));
        let cos = sheet.step(COS_J, dx / r);
        let sin = sheet.step(SIN_J, dy / r);
        let x = sheet.step(X_J, r / self.radius_mm);
        let at = kelvin(x);
        let residual = |of: fn(&super::kelvin::Kelvin) -> f64| {
            let other = if x <= 6.0 { of(&by_series(x)) - of(&by_integral(x)) } else { 0.0 };
            move || Detail::Residuals(vec![other])
        };
        if sheet.is_told() {
            sheet.detailed(KER, at.ker, residual(|kelvin| kelvin.ker));
            sheet.detailed(KEI, at.kei, residual(|kelvin| kelvin.kei));
            sheet.detailed(KEI_SLOPE, at.kei_slope, residual(|kelvin| kelvin.kei_slope));
        }
        let (nu, pi) = (self.poisson, core::f64::consts::PI);
        sheet.step(W_RATIO, -4.0 / pi * at.kei);
        let m_r = sheet.step(M_R, p / (2.0 * pi) * (at.ker - (1.0 - nu) * at.kei_slope / x));
        let m_t = sheet.step(M_T, p / (2.0 * pi) * (nu * at.ker + (1.0 - nu) * at.kei_slope / x));
        let turned = if neighbour.edge.is_some() { [M_X_0, M_Y_0, M_XY_0] } else { [M_X, M_Y, M_XY] };
        let m_x = sheet.step(turned[0], m_r * number::pow(cos, 2.0) + m_t * number::pow(sin, 2.0));
        let m_y = sheet.step(turned[1], m_r * number::pow(sin, 2.0) + m_t * number::pow(cos, 2.0));
        let m_xy = sheet.step(turned[2], (m_r - m_t) * cos * sin);
        let Some(edge) = &neighbour.edge else { return [m_x, m_y, m_xy] };
        sheet.carry(Y_PLACE, edge.from_edge_mm);
        sheet.carry(Y_LOAD, edge.from_edge_mm + dy);
        let [e_x, e_y, e_xy] = edge.sent_back;
        if sheet.is_told() {
            let other = self.sent_back(edge.from_edge_mm, neighbour.away_mm, RAYS[1]);
            for (place, id) in [E_X, E_Y, E_XY].into_iter().enumerate() {
                let one = edge.sent_back[place];
                sheet.detailed(id, one, || Detail::Residuals(vec![one - other[place]]));
            }
        }
        [
            sheet.step(M_X_EDGE, m_x + p * e_x),
            sheet.step(M_Y_EDGE, m_y + p * e_y),
            sheet.step(M_XY_EDGE, m_xy + p * e_xy),
        ]
    }

    /// The tension that neighbours add at the leg, by their larger principal moment; never less than nothing.
    ///
    /// Neighbours on one place with the leg are no neighbours: merge their loads first.
    pub fn stress_mpa(&self, neighbours: &[Neighbour], sheet: &mut Sheet) -> f64 {
        if neighbours.is_empty() {
            return 0.0;
        }
        let mut each: [alloc::vec::Vec<f64>; 3] = Default::default();
        for neighbour in neighbours {
            let moments = self.moments_n(neighbour, sheet);
            for (list, moment) in each.iter_mut().zip(moments) {
                list.push(moment);
            }
        }
        sheet.carry_each(M_X_I, &each[0]);
        sheet.carry_each(M_Y_I, &each[1]);
        sheet.carry_each(M_XY_I, &each[2]);
        let [m_x, m_y, m_xy] = each.map(|list| list.iter().sum::<f64>());
        let mean = sheet.step(M_SUM, (m_x + m_y) / 2.0);
        let half = sheet.step(M_HALF, (m_x - m_y) / 2.0);
        let principal = mean + number::sqrt(number::pow(half, 2.0) + number::pow(m_xy, 2.0));
        let principal = sheet.step(M_PRINCIPAL, principal);
        let stress = sheet.step(S_NEIGHBOURS, 6.0 * principal / number::pow(self.thickness_mm, 2.0));
        number::positive_part(stress)
    }
}
