//! A rigid body that can turn about either of two parallel edges of its base.

use alloc::vec;

use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Detail, Sheet, StepId, number, steps};

/// Where rocking of a rigid body was first worked out.
pub static HOUSNER_1963: Document = Document {
    short: "Housner 1963",
    title: "G. W. Housner: The behavior of inverted pendulum structures during earthquakes, Bulletin of the Seismological Society of America 53(2), 1963",
};
/// Measured impacts that lose less than the theory says.
pub static KALLIONTZIS_2016: Document = Document {
    short: "Kalliontzis et al. 2016",
    title: "D. Kalliontzis, S. Sritharan, A. Schultz: Improved coefficient of restitution estimation for free rocking members, Journal of Structural Engineering 142(12), 06016002, 2016",
};

steps! { 170 "rocking body";
    G "g" FreeFall (STATICS "" Derived) "Acceleration of free fall": Given;
    M "m" Mass (STATICS "load-out" Derived) "Mass of this state": Given;
    J "J" Inertia (STATICS "load-out" Derived) "Moment of inertia about the axis through the centre of gravity along the edges": Given;
    H "h" Length (STATICS "load-out" Derived) "Height of the centre of gravity above the floor": Given;
    RHO "rho" Length (STATICS "" Derived) "Radius of gyration about the centre of gravity" = "sqrt(J / m)";
    X_N "x_n" Length (STATICS "base reactions" Derived) "Distance from the centre of gravity to the edge that it turns about, along the push": Geometry;
    X_O "x_o" Length (STATICS "base reactions" Derived) "Distance from the centre of gravity to the edge opposite to it": Geometry;
    R "R" Length (HOUSNER_1963 "" Memory) "From the edge to the centre of gravity" = "sqrt(x_n^2 + h^2)";
    ALPHA "alpha" Angle (HOUSNER_1963 "" Memory) "Angle at which it would fall by its own weight: tan(alpha) = x_n / h": Solved;
    A_UP "a_up" Acceleration (STATICS "moments about the edge" Derived) "Acceleration of the floor at which the opposite edge lifts" = "x_n / h";
    P "p" AngularVelocity (HOUSNER_1963 "" Memory) "Frequency parameter: how quick it is at rocking; large bodies are slow" = "sqrt(g * R / (rho^2 + R^2))";
    KAPPA "kappa_e" Number (INPUT "" Derived) "Where the impulse of an impact acts, as a share of the way to the new edge: 1 by Housner; tests lie on both sides of that": Given;
    E "e" Number (KALLIONTZIS_2016 "momentum about the impulse" Derived) "Speed after an impact over the speed before, onto this edge" = "(rho^2 + h^2 - kappa_e * x_o * x_n) / (rho^2 + h^2 + kappa_e * x_n^2)";
    FALLS "" Number (STATICS "" Derived) "the centre of gravity does not stand between the edges: it falls by its own weight and cannot rock": Reason;
    SQUAT "" Number (STATICS "" Derived) "it is so squat that the first impact stops it: it lifts an edge and sets it down again, and does not rock on": Reason;
    FLAT "" Number (STATICS "" Derived) "it has no height, no mass or no inertia, so that it cannot rock": Reason;
}

/// Which edge, seen with x to the right.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Side {
    /// The edge on the right; angles about it are positive.
    Right,
    /// The edge on the left; angles about it are negative.
    Left,
}

impl Side {
    /// +1 for the right, -1 for the left.
    pub fn sign(self) -> f64 {
        if self == Side::Right { 1.0 } else { -1.0 }
    }

    /// The opposite edge.
    pub fn other(self) -> Side {
        if self == Side::Right { Side::Left } else { Side::Right }
    }
}

/// A rigid body on two edges.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct RockingBody {
    /// Height of the centre of gravity.
    pub height_mm: f64,
    /// From the centre of gravity to the right edge.
    pub right_mm: f64,
    /// From the centre of gravity to the left edge.
    pub left_mm: f64,
    /// Radius of gyration about the centre of gravity.
    pub gyration_mm: f64,
    /// Acceleration of free fall.
    pub free_fall_mm_per_s2: f64,
}

/// What a body is made from.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct MassAndReach {
    /// Its mass.
    pub mass_kg: f64,
    /// Its moment of inertia about the axis through the centre of gravity along the edges.
    pub inertia_kgmm2: f64,
    /// Height of the centre of gravity.
    pub height_mm: f64,
    /// From the centre of gravity to the right edge.
    pub right_mm: f64,
    /// From the centre of gravity to the left edge.
    pub left_mm: f64,
    /// Acceleration of free fall.
    pub free_fall_mm_per_s2: f64,
}

/// Standard acceleration of free fall.
pub const FREE_FALL_MM_PER_S2: f64 = G_N_PER_KG * 1000.0;

/// One edge as the body turns about it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Edge {
    /// From the edge to the centre of gravity.
    pub radius_mm: f64,
    /// Angle at which the body stands on this edge alone.
    pub alpha_rad: f64,
    /// Frequency parameter.
    pub p_rad_per_s: f64,
    /// Acceleration at which the body begins to turn about it, in multiples of g.
    pub uplift: f64,
}

impl RockingBody {
    /// A uniform rectangle.
    ///
    /// ```
    /// use steadfoot::motion::{RockingBody, Side};
    /// let edge = RockingBody::rectangle(600.0, 1200.0).edge(Side::Right);
    /// assert!((edge.alpha_rad - 0.463648).abs() < 1e-6);
    /// ```
    pub fn rectangle(half_width_mm: f64, half_height_mm: f64) -> RockingBody {
        let gyration_mm = number::sqrt((half_width_mm * half_width_mm + half_height_mm * half_height_mm) / 3.0);
        RockingBody {
            height_mm: half_height_mm,
            right_mm: half_width_mm,
            left_mm: half_width_mm,
            gyration_mm,
            free_fall_mm_per_s2: FREE_FALL_MM_PER_S2,
        }
    }

    /// The body of a mass with its inertia, told into the open section.
    pub fn of(given: &MassAndReach, sheet: &mut Sheet) -> RockingBody {
        let g = sheet.step(G, given.free_fall_mm_per_s2);
        let m = sheet.step(M, given.mass_kg);
        let j = sheet.step(J, given.inertia_kgmm2);
        let h = sheet.step(H, given.height_mm);
        let gyration_mm = sheet.step(RHO, number::sqrt(j / m));
        let (right_mm, left_mm) = (given.right_mm, given.left_mm);
        RockingBody { height_mm: h, right_mm, left_mm, gyration_mm, free_fall_mm_per_s2: g }
    }

    /// Why it cannot rock, where it cannot: no height or inertia, a centre beside its edges, or too squat.
    pub fn cannot(&self) -> Option<StepId> {
        let is_length = |length_mm: f64| length_mm.is_finite() && length_mm > 0.0;
        if ![self.height_mm, self.gyration_mm, self.free_fall_mm_per_s2].into_iter().all(is_length) {
            return Some(FLAT);
        }
        if !is_length(self.right_mm) || !is_length(self.left_mm) {
            return Some(FALLS);
        }
        (self.restitution(Side::Right, 1.0) <= 0.0 || self.restitution(Side::Left, 1.0) <= 0.0).then_some(SQUAT)
    }

    /// From the centre of gravity to an edge.
    pub fn reach_mm(&self, side: Side) -> f64 {
        if side == Side::Right { self.right_mm } else { self.left_mm }
    }

    /// The body about one of its edges.
    pub fn edge(&self, side: Side) -> Edge {
        let (h, x, rho) = (self.height_mm, self.reach_mm(side), self.gyration_mm);
        let radius_mm = number::sqrt(x * x + h * h);
        Edge {
            radius_mm,
            alpha_rad: number::atan2(x, h),
            p_rad_per_s: number::sqrt(self.free_fall_mm_per_s2 * radius_mm / (rho * rho + radius_mm * radius_mm)),
            uplift: x / h,
        }
    }

    /// Speed after an impact over the speed before, coming down onto an edge; not less than nothing.
    ///
    /// `impulse` says where the impulse acts, as a share of the way from the centre of gravity to that edge: at the edge
    /// itself it is Housner's. Tests lie on both sides of his value, so one alone proves nothing.
    pub fn restitution(&self, onto: Side, impulse: f64) -> f64 {
        number::positive_part(self.restitution_unclamped(onto, impulse))
    }

    fn restitution_unclamped(&self, onto: Side, impulse: f64) -> f64 {
        let (h, rho) = (self.height_mm, self.gyration_mm);
        let (new, old) = (self.reach_mm(onto), self.reach_mm(onto.other()));
        (rho * rho + h * h - impulse * old * new) / (rho * rho + h * h + impulse * (new * new))
    }

    /// Writes the body about one edge into the open section; its gyration must be there already.
    pub fn tell(&self, side: Side, impulse: f64, sheet: &mut Sheet) {
        let edge = self.edge(side);
        let (x_n, x_o) = (self.reach_mm(side), self.reach_mm(side.other()));
        sheet.detailed(X_N, x_n, || Detail::Shape(vec![[0.0, 0.0], [x_n, 0.0]]));
        sheet.detailed(X_O, x_o, || Detail::Shape(vec![[0.0, 0.0], [-x_o, 0.0]]));
        sheet.step(R, edge.radius_mm);
        let residual = number::tan(edge.alpha_rad) * self.height_mm / x_n - 1.0;
        sheet.detailed(ALPHA, edge.alpha_rad, || Detail::Residuals(vec![residual]));
        sheet.step(A_UP, edge.uplift);
        sheet.step(P, edge.p_rad_per_s);
        sheet.step(KAPPA, impulse);
        sheet.step(E, self.restitution_unclamped(side, impulse));
    }
}
