//! Stability tests of equipment standards: a tilt, and a push with a load on top, before anything shakes.
//!
//! IEC 62368-1:2018 8.6.2.2 asks for one of: a tilt of 10 degrees in every direction; a turn on a plane of 10 degrees; or
//! a push and a downward force on a level floor. Both kinds are worked out here by statics, for every side of the feet's
//! hull. Other clauses that a product may come under are named in the guide, not checked.

use alloc::vec;
use alloc::vec::Vec;

use crate::calc::clause::{Document, STATICS};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Subject, System, number, steps};
use crate::geometry::{Hull, Point};

/// IEC 62368-1, third edition.
pub static IEC_62368: Document = Document {
    short: "IEC 62368-1:2018",
    title: "Audio/video, information and communication technology equipment - Part 1: Safety requirements, third edition, International Electrotechnical Commission, 2018",
};

steps! { 177 "stability tests";
    M "m" Mass (STATICS "load-out" Derived) "Mass of this state": Given;
    G "g" Gravity (STATICS "" Derived) "Weight of a mass": Constant;
    W "W" Force (STATICS "" Derived) "Weight" = "m * g";
    H "h" Length (STATICS "load-out" Derived) "Height of the centre of gravity above the floor": Given;
    T "t" Length (STATICS "" Derived) "Distance from the centre of gravity to this side of the feet's hull": Geometry;
    THETA "theta" Angle (IEC_62368 "8.6.2.2" Secondary) "Tilt of the test, 10 degrees": Constant;
    S "s" Length (IEC_62368 "8.6.2.2" Secondary) "How far the tilt moves the centre of gravity" = "h * tan(theta)";
    U_TILT "u" Utilisation (IEC_62368 "8.6.2.2" Secondary) "Movement over the distance to the side" = "s / t";
    K_F "k_F" Number (IEC_62368 "8.6.2.2" Secondary) "Push over the weight": Constant;
    F_MAX "F_max" Force (IEC_62368 "8.6.2.2" Secondary) "Largest push": Constant;
    F "F" Force (IEC_62368 "8.6.2.2" Secondary) "Push of the test" = "min(k_F * W, F_max)";
    K_V "k_V" Number (IEC_62368 "8.6.2.2" Secondary) "Downward force over the weight": Constant;
    V_MAX "V_max" Force (IEC_62368 "8.6.2.2" Secondary) "Largest downward force": Constant;
    V "V" Force (IEC_62368 "8.6.2.2" Secondary) "Downward force of the test" = "min(k_V * W, V_max)";
    Z_MAX "z_max" Length (IEC_62368 "8.6.2.2" Secondary) "Greatest height of the push": Constant;
    H_C "H" Length (STATICS "cabinet" Derived) "Height of the cabinet": Given;
    Z "z" Length (IEC_62368 "8.6.2.2" Secondary) "Height of the push" = "min(z_max, H)";
    E "e" Length (STATICS "" Derived) "How far the cabinet and what is drawn out of it stand beyond that side": Geometry;
    M_O "M_o" Moment (STATICS "moments about the edge" Derived) "Moment that tips it" = "F * z + V * e";
    M_R "M_r" Moment (STATICS "moments about the edge" Derived) "Moment of its weight" = "W * t";
    U_PUSH "u" Utilisation (IEC_62368 "8.6.2.2" Secondary) "Moment over moment" = "M_o / M_r";
}

/// Tilt of the test.
pub const TILT_RAD: f64 = 10.0 * core::f64::consts::PI / 180.0;
const PUSH_OF_WEIGHT: f64 = 0.13;
const PUSH_MAX_N: f64 = 250.0;
const DOWN_OF_WEIGHT: f64 = 0.5;
const DOWN_MAX_N: f64 = 100.0;
const PUSH_HEIGHT_MAX_MM: f64 = 1500.0;

/// A cabinet that is tested in one state.
#[derive(Clone, Debug)]
pub struct Tested<'a> {
    /// Hull of the feet.
    pub hull: &'a Hull,
    /// Its mass.
    pub mass_kg: f64,
    /// Its centre of gravity.
    pub centre_mm: [f64; 3],
    /// Height of the cabinet.
    pub height_mm: f64,
    /// Corners in plan of the cabinet and of everything that is drawn out of it.
    pub outline: Vec<Point>,
}

/// A side of the hull that it may tip over.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TestedSide {
    /// At right angles to the side, outwards.
    pub direction_rad: f64,
    /// From the centre of gravity to the side; negative where it stands beyond.
    pub reach_mm: f64,
    /// How far the cabinet stands beyond the side; not negative.
    pub beyond_mm: f64,
}

impl Tested<'_> {
    /// All sides; one without any reach where the feet span no area.
    pub fn sides(&self) -> Vec<TestedSide> {
        let centre = Point::new(self.centre_mm[0], self.centre_mm[1]);
        let sides = self.hull.edges().map(|edge| {
            let beyond = self.outline.iter().map(|&corner| -edge.distance_mm(corner));
            TestedSide {
                direction_rad: number::atan2(-(edge.to.x_mm - edge.from.x_mm), edge.to.y_mm - edge.from.y_mm),
                reach_mm: edge.distance_mm(centre),
                beyond_mm: beyond.fold(0.0, f64::max),
            }
        });
        let sides: Vec<TestedSide> = sides.collect();
        if sides.is_empty() { vec![TestedSide { direction_rad: 0.0, reach_mm: 0.0, beyond_mm: 0.0 }] } else { sides }
    }

    /// The side that lies in a direction: the one whose outward direction is nearest to it.
    pub fn side(&self, direction_rad: f64) -> TestedSide {
        let near = |side: &TestedSide| -number::cos(side.direction_rad - direction_rad);
        let nearest = self.sides().into_iter().min_by(|a, b| near(a).total_cmp(&near(b)));
        nearest.unwrap_or(TestedSide { direction_rad, reach_mm: 0.0, beyond_mm: 0.0 })
    }

    /// The side that is worst for a check.
    pub fn worst(&self, check: CheckId) -> TestedSide {
        let level = |side: &TestedSide| match self.check(check, side, &mut Sheet::quiet()) {
            Outcome::Compared { utilisation, .. } if !utilisation.is_nan() => utilisation,
            _ => f64::INFINITY,
        };
        let sides = self.sides();
        sides
            .iter()
            .copied()
            .reduce(|worst, next| if level(&next) > level(&worst) { next } else { worst })
            .unwrap_or(TestedSide { direction_rad: 0.0, reach_mm: 0.0, beyond_mm: 0.0 })
    }

    /// The tilt or the push, over one side, told.
    pub fn check(&self, check: CheckId, side: &TestedSide, sheet: &mut Sheet) -> Outcome {
        sheet.open(Part::StandingFree, Subject::Whole, Some(check), System::Si);
        if check == CheckId::FreeTilt { self.tilt(side, sheet) } else { self.push(side, sheet) }
    }

    fn tilt(&self, side: &TestedSide, sheet: &mut Sheet) -> Outcome {
        let h = sheet.step(H, self.centre_mm[2]);
        let t = self.reach(side, sheet);
        let theta = sheet.step(THETA, TILT_RAD);
        let s = sheet.step(S, h * number::tan(theta));
        Outcome::told_ratio(s, t, U_TILT, sheet)
    }

    fn push(&self, side: &TestedSide, sheet: &mut Sheet) -> Outcome {
        let m = sheet.step(M, self.mass_kg);
        let g = sheet.step(G, G_N_PER_KG);
        let w = sheet.step(W, m * g);
        let t = self.reach(side, sheet);
        let k_f = sheet.step(K_F, PUSH_OF_WEIGHT);
        let f_max = sheet.step(F_MAX, PUSH_MAX_N);
        let f = sheet.step(F, f64::min(k_f * w, f_max));
        let k_v = sheet.step(K_V, DOWN_OF_WEIGHT);
        let v_max = sheet.step(V_MAX, DOWN_MAX_N);
        let v = sheet.step(V, f64::min(k_v * w, v_max));
        let z_max = sheet.step(Z_MAX, PUSH_HEIGHT_MAX_MM);
        let height = sheet.step(H_C, self.height_mm);
        let z = sheet.step(Z, f64::min(z_max, height));
        let e = sheet.detailed(E, side.beyond_mm, || {
            Detail::Shape(self.outline.iter().map(|corner| [corner.x_mm, corner.y_mm]).collect())
        });
        let m_o = sheet.step(M_O, f * z + v * e);
        let m_r = sheet.step(M_R, w * t);
        Outcome::told_ratio(m_o, m_r, U_PUSH, sheet)
    }

    fn reach(&self, side: &TestedSide, sheet: &mut Sheet) -> f64 {
        let corners = || self.hull.corners().iter().map(|corner| [corner.x_mm, corner.y_mm]).collect();
        sheet.detailed(T, side.reach_mm, || Detail::Shape(corners()))
    }
}
