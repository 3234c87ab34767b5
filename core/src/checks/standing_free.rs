//! Standing free: at which acceleration a cabinet that is not bolted slides, and at which it tips.
//!
//! Statics of a rigid body on a rigid floor (common knowledge since West's criterion of the 1880s, a = g b / h). The
//! vertical motion unloads the feet by the share that the demand rule gives. Codes do not let friction carry the
//! seismic shear of a component that must be attached (ASCE 7-16 13.4): sliding is told, never counted as an anchorage.

use alloc::vec::Vec;

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{CheckId, Detail, Outcome, Part, Sheet, Subject, System, steps};
use crate::geometry::{Hull, Point};
use crate::load_case::Directions;

steps! { 13 "standing free";
    H "h" Length (STATICS "" Derived) "Height of the centre of gravity above the floor": Given;
    T "t" Length (STATICS "" Derived) "Distance from the centre of gravity to the edge of the feet's hull, along the push": Geometry;
    MU "mu" Number (INPUT "" Derived) "Friction between feet and floor": Given;
    A_V "a_v" Acceleration (STATICS "" Derived) "Vertical acceleration that unloads the feet, of the demand rule": Given;
    A_P "a_p" Acceleration (STATICS "" Derived) "Push of the demand rule over the weight; where the rule takes 100 % along one axis with 30 % along the other, both together": Given;
    A_TIP "a_tip" Acceleration (STATICS "moments about the edge" Derived) "Push at which it tips" = "(1 - a_v) * t / h";
    A_SLIDE "a_slide" Acceleration (STATICS "forces along the floor" Derived) "Push at which it slides" = "mu * (1 - a_v)";
    U_TIP "u" Utilisation (STATICS "" Derived) "Push over the push at which it tips" = "a_p / a_tip";
    U_SLIDE "u" Utilisation (STATICS "" Derived) "Push over the push at which it slides" = "a_p / a_slide";
    OUTSIDE "" Number (STATICS "" Derived) "the centre of gravity does not stand over the feet: it falls by its own weight": Reason;
}

/// A cabinet that stands by its weight alone.
#[derive(Clone, Copy, Debug)]
pub struct Standing<'a> {
    /// Hull of the feet.
    pub hull: &'a Hull,
    /// Centre of gravity.
    pub centre_mm: [f64; 3],
    /// Friction between feet and floor.
    pub friction: f64,
    /// Push of the demand rule over the weight, both axes together.
    pub push: f64,
    /// Which way it may act.
    pub directions: Directions,
    /// Vertical acceleration of the demand rule, as a share of the weight.
    pub vertical: f64,
}

impl Standing<'_> {
    /// The push over the weight at which it tips in a direction; zero where its centre stands beside the feet.
    ///
    /// Direction in radians from +x towards +y, the way the inertia force acts.
    pub fn tipping_push(&self, direction_rad: f64) -> f64 {
        let along = self.distance_mm(direction_rad);
        (1.0 - self.vertical) * along / self.centre_mm[2]
    }

    /// The push over the weight at which it slides, the same in every direction.
    pub fn sliding_push(&self) -> f64 {
        self.friction * (1.0 - self.vertical)
    }

    /// The direction in which the least push tips it: at right angles to the nearest side of the feet's hull, or of those
    /// that the rule names the one with the least way to the hull.
    pub fn weakest_direction_rad(&self) -> f64 {
        if let Some(named) = self.directions.named_rad() {
            let farther = |a: f64, b: f64| if self.distance_mm(b) < self.distance_mm(a) { b } else { a };
            return named.into_iter().reduce(farther).unwrap_or(0.0);
        }
        let centre = Point::new(self.centre_mm[0], self.centre_mm[1]);
        match self.hull.nearest_edge(centre) {
            Some(side) => {
                let (from, to) = (side.edge.from, side.edge.to);
                crate::calc::number::atan2(-(to.x_mm - from.x_mm), to.y_mm - from.y_mm)
            }
            None => 0.0,
        }
    }

    /// Tipping in a direction, told.
    pub fn check_tipping(&self, direction_rad: f64, sheet: &mut Sheet) -> Outcome {
        sheet.open(Part::StandingFree, Subject::Whole, Some(CheckId::FreeTipping), System::Si);
        sheet.step(H, self.centre_mm[2]);
        sheet.detailed(T, self.distance_mm(direction_rad), || Detail::Shape(self.outline()));
        sheet.carry(A_V, self.vertical);
        sheet.carry(A_P, self.push);
        let limit = sheet.step(A_TIP, self.tipping_push(direction_rad));
        Outcome::told_ratio(self.push, limit, U_TIP, sheet)
    }

    /// Sliding, told.
    pub fn check_sliding(&self, sheet: &mut Sheet) -> Outcome {
        sheet.open(Part::StandingFree, Subject::Whole, Some(CheckId::FreeSliding), System::Si);
        sheet.step(MU, self.friction);
        sheet.carry(A_V, self.vertical);
        sheet.carry(A_P, self.push);
        let limit = sheet.step(A_SLIDE, self.sliding_push());
        Outcome::told_ratio(self.push, limit, U_SLIDE, sheet)
    }

    fn distance_mm(&self, direction_rad: f64) -> f64 {
        let centre = Point::new(self.centre_mm[0], self.centre_mm[1]);
        self.hull.ray_exit(centre, direction_rad).map_or(0.0, |side| side.distance_mm)
    }

    fn outline(&self) -> Vec<[f64; 2]> {
        self.hull.corners().iter().map(|corner| [corner.x_mm, corner.y_mm]).collect()
    }
}
