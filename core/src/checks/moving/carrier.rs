//! On a pallet truck or a guided vehicle: higher up, on other wheels, braking and turning.

use alloc::vec;

use super::texts::{A_B, A_T, EN_12195_1, H, L_S, SLOPE};
use super::{Moved, fields};
use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::number::sqrt;
use crate::calc::{CheckId, Detail, Outcome, Sheet, steps};
use crate::geometry::Point;
use core::f64::consts::PI;

/// The revised lifting equation.
pub static NIOSH: Document = Document {
    short: "NIOSH 1994",
    title: "Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication 94-110, 1994",
};

steps! { 193 "carriers and hands";
    H_D "h_d" Length (INPUT "moving" Derived) "How high it is lifted": Given;
    H_C "h_c" Length (STATICS "" Derived) "Height of the centre of gravity while it is carried" = "h + h_d";
    L_V "L_v" Length (INPUT "moving" Derived) "Length of the carrier's wheels": Given;
    W_V "W_v" Length (INPUT "moving" Derived) "Width of the carrier's wheels": Given;
    E_A "e_a" Length (STATICS "" Derived) "Centre of gravity beside the middle, along the way": Geometry;
    E_B "e_b" Length (STATICS "" Derived) "Centre of gravity beside the middle, across the way": Geometry;
    T_A "t_a" Length (STATICS "" Derived) "From there to the nearer wheels of the carrier, along" = "L_v / 2 - e_a";
    T_B "t_b" Length (STATICS "" Derived) "From there to the nearer wheels of the carrier, across" = "W_v / 2 - e_b";
    T_1 "t_1" Length (STATICS "" Derived) "From there to the nearer feet of the cabinet, along": Geometry;
    T_2 "t_2" Length (STATICS "" Derived) "From there to the nearer feet of the cabinet, across": Geometry;
    A_1 "a_1" Acceleration (STATICS "the cabinet over its feet, or with the carrier over its wheels; the carrier's own mass is left out" Derived) "Braking at which it tips down the slope" = "(min(t_a / h_c, t_1 / h) - s) / l_s";
    A_2 "a_2" Acceleration (STATICS "the same, on the level" Derived) "Sideways acceleration at which it tips" = "min(t_b / h_c, t_2 / h)";
    U_C "u" Utilisation (STATICS "" Derived) "The larger of braking and turning over that at which it tips" = "max(a_b / a_1, a_t / a_2)";
    MU_D "mu_d" Number (EN_12195_1 "bare deck 0.2" Secondary) "Friction on forks or deck": Given;
    A_SLIDE "a_s" Acceleration (STATICS "" Derived) "Acceleration at which it slides down the slope" = "(mu_d - s) / l_s";
    U_D "u" Utilisation (STATICS "" Derived) "The larger of braking and turning over that at which it slides" = "max(a_b, a_t) / a_s";
    NO_CARRIER "" Number (INPUT "moving" Derived) "it is carried on neither": Reason;
    NO_WHEELS "" Number (INPUT "moving" Derived) "the length and width of the carrier's wheels or the height of the lift are not given (carrier_length_mm, carrier_width_mm, deck_height_mm)": Reason;
    NO_FEET "" Number (STATICS "" Derived) "without feet that span an area it does not stand on a carrier": Reason;
    FALLS "" Number (STATICS "" Derived) "its centre of gravity does not stand over the wheels of the carrier or over its own feet on this slope": Reason;

    L_C "L_C" Mass (NIOSH "2.1" Memory) "What may be lifted at best": Constant;
    H_H "H" Length (INPUT "moving" Derived) "Hands in front of the ankles": Given;
    H_0 "H_0" Length (NIOSH "2.1" Memory) "Reach at which nothing is taken off": Constant;
    HM "HM" Number (NIOSH "2.1" Memory) "Factor for the reach" = "min(1, H_0 / H)";
    V_H "V" Length (INPUT "moving" Derived) "Hands above the floor": Given;
    V_0 "V_0" Length (NIOSH "2.1" Memory) "Height at which nothing is taken off": Constant;
    VM "VM" Number (NIOSH "2.1" Memory) "Factor for the height" = "1 - 0.225 * abs(V - V_0) / V_0";
    D_H "D" Length (INPUT "moving" Derived) "Lifted by": Given;
    DM "DM" Number (NIOSH "2.1" Memory) "Factor for the way up" = "0.82 + 0.18 * H_0 / max(D, H_0)";
    A_H "A" Number (INPUT "moving" Derived) "Twist of the body, degrees": Given;
    AM "AM" Number (NIOSH "2.1" Memory) "Factor for the twist" = "1 - 0.0032 * A";
    FM "FM" Number (INPUT "moving" Derived) "Factor for how often": Given;
    CM "CM" Number (INPUT "moving" Derived) "Factor for the grip": Given;
    RWL "RWL" Mass (NIOSH "2.1" Memory) "What one person should lift at most" = "L_C * HM * VM * DM * AM * FM * CM";
    M_H "m_h" Mass (INPUT "contents" Derived) "Heaviest content": Given;
    U_H "u" Utilisation (NIOSH "2.1" Memory) "Mass over what one person should lift" = "m_h / RWL";
    NO_HANDS "" Number (INPUT "moving" Derived) "nothing is said of lifting by hand: how far the hands are in front of the ankles": Reason;
    NOTHING_ABOARD "" Number (INPUT "contents" Derived) "there is nothing to lift in": Reason;
}

impl Moved<'_> {
    /// Braking and turning against tipping: of the cabinet on the carrier, and of both over the carrier's wheels.
    pub(super) fn check_carrier(&self, sheet: &mut Sheet) -> Outcome {
        if self.is_not_carried() {
            return Outcome::NotNeeded(NO_CARRIER);
        }
        let number = |field: usize| self.values.number(field);
        let given = (number(fields::CARRIER_LENGTH), number(fields::CARRIER_WIDTH), number(fields::DECK_HEIGHT));
        let (Some(length), Some(width), Some(lifted)) = given else { return Outcome::NotCovered(NO_WHEELS) };
        if self.hull.corners().len() < 3 {
            return Outcome::NotCovered(NO_FEET);
        }
        self.open(CheckId::MoveCarrier, sheet);
        let (along, across) = if self.values.choice(fields::CARRIER_ALONG) == Some(1) { (0, 1) } else { (1, 0) };
        let height = sheet.step(H, self.centre_mm[2]);
        let lifted = sheet.step(H_D, lifted);
        let carried = sheet.step(H_C, height + lifted);
        let length = sheet.step(L_V, length);
        let width = sheet.step(W_V, width);
        let centre = || Detail::Shape(vec![[self.centre_mm[0], self.centre_mm[1]]]);
        let e_a = sheet.detailed(E_A, self.centre_mm[along].abs(), centre);
        let e_b = sheet.detailed(E_B, self.centre_mm[across].abs(), centre);
        let t_a = sheet.step(T_A, length / 2.0 - e_a);
        let t_b = sheet.step(T_B, width / 2.0 - e_b);
        let t_1 = sheet.detailed(T_1, self.reach_mm(along), || Detail::Shape(self.outline()));
        let t_2 = sheet.detailed(T_2, self.reach_mm(across), || Detail::Shape(self.outline()));
        let slope = sheet.step(SLOPE, self.values.given(fields::SLOPE));
        let run = sheet.step(L_S, sqrt(1.0 + slope * slope));
        let brakes = sheet.step(A_1, (f64::min(t_a / carried, t_1 / height) - slope) / run);
        let turns = sheet.step(A_2, f64::min(t_b / carried, t_2 / height));
        let braking = sheet.step(A_B, self.values.given(fields::BRAKE));
        let turning = sheet.step(A_T, self.values.given(fields::TURN));
        let (value, limit) = if braking * turns > turning * brakes { (braking, brakes) } else { (turning, turns) };
        if !(brakes > 0.0 && turns > 0.0) {
            sheet.step(FALLS, 0.0);
            return Outcome::Compared { value, limit: f64::min(brakes, turns), utilisation: f64::INFINITY };
        }
        let utilisation = sheet.step(U_C, f64::max(braking / brakes, turning / turns));
        Outcome::Compared { value, limit, utilisation }
    }

    /// Braking and turning against friction: above it, it has to be strapped to the carrier.
    pub(super) fn check_deck(&self, sheet: &mut Sheet) -> Outcome {
        if self.is_not_carried() {
            return Outcome::NotNeeded(NO_CARRIER);
        }
        self.open(CheckId::MoveDeck, sheet);
        let friction = sheet.step(MU_D, self.values.given(fields::DECK_FRICTION));
        let slope = sheet.step(SLOPE, self.values.given(fields::SLOPE));
        let run = sheet.step(L_S, sqrt(1.0 + slope * slope));
        let slides = sheet.step(A_SLIDE, (friction - slope) / run);
        let braking = sheet.step(A_B, self.values.given(fields::BRAKE));
        let turning = sheet.step(A_T, self.values.given(fields::TURN));
        let value = f64::max(braking, turning);
        if !(slides > 0.0) {
            return Outcome::Compared { value, limit: slides, utilisation: f64::INFINITY };
        }
        let utilisation = sheet.step(U_D, value / slides);
        Outcome::Compared { value, limit: slides, utilisation }
    }

    fn is_not_carried(&self) -> bool {
        self.values.choice(fields::CARRIER).unwrap_or(0) == 0
    }

    /// From the centre of gravity to where the hull of the feet ends, either way along an axis; zero beyond it.
    fn reach_mm(&self, axis: usize) -> f64 {
        let centre = Point::new(self.centre_mm[0], self.centre_mm[1]);
        let way = |direction_rad: f64| self.hull.ray_exit(centre, direction_rad).map_or(0.0, |side| side.distance_mm);
        let first_rad = if axis == 0 { 0.0 } else { PI / 2.0 };
        f64::min(way(first_rad), way(first_rad + PI))
    }
}
