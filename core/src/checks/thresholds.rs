//! Thresholds of standing by weight and friction alone: on a slope, under a push at a height, under a tilt.
//!
//! Statics of a rigid body on a rigid floor. Whether it slides or tips first is decided by friction against the
//! slenderness of the side that it is pushed to.

use alloc::vec;

use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::unit::G_N_PER_KG;
use crate::calc::{Detail, Part, Sheet, StepId, Subject, System, number, steps};

/// The clause by which friction counts for nothing, as a thread of its publisher's forum quotes it.
pub static ASCE_7_FRICTION: Document = Document {
    short: "ASCE 7-16",
    title: "Minimum Design Loads and Associated Criteria for Buildings and Other Structures (ASCE/SEI 7-16), American Society of Civil Engineers, 2016",
};

steps! { 176 "thresholds of standing";
    M "m" Mass (STATICS "load-out" Derived) "Mass of this state": Given;
    G "g" Gravity (STATICS "" Derived) "Weight of a mass": Constant;
    W "W" Force (STATICS "" Derived) "Weight" = "m * g";
    H "h" Length (STATICS "load-out" Derived) "Height of the centre of gravity above the floor": Given;
    T "t" Length (STATICS "" Derived) "Distance from the centre of gravity to the edge of the feet's hull, along the push": Geometry;
    MU "mu" Number (INPUT "" Derived) "Friction between feet and floor": Given;
    A_V "a_v" Acceleration (STATICS "" Derived) "Vertical acceleration that unloads the feet": Given;
    THETA "theta" Angle (INPUT "" Derived) "Slope of the floor, down in the direction of the push": Given;
    A_TIP "a_tip" Acceleration (STATICS "moments about the edge" Derived) "Push along the slope at which it tips" = "(1 - a_v) * (t * cos(theta) - h * sin(theta)) / h";
    A_SLIDE "a_slide" Acceleration (STATICS "forces along the slope" Derived) "Push along the slope at which it slides" = "(1 - a_v) * (mu * cos(theta) - sin(theta))";
    SLIDES_FIRST "" Number (STATICS "" Derived) "slides before it tips": Name;
    TIPS_FIRST "" Number (STATICS "" Derived) "tips before it slides": Name;
    THETA_TIP "theta_tip" Angle (STATICS "" Derived) "Tilt at which it tips by its weight: tan(theta_tip) = t / h": Solved;
    THETA_SLIDE "theta_slide" Angle (STATICS "" Derived) "Tilt at which it slides by its weight: tan(theta_slide) = mu": Solved;
    Z "z" Length (INPUT "" Derived) "Height at which somebody or something pushes": Given;
    F_TIP "F_tip" Force (STATICS "moments about the edge" Derived) "Push at that height which tips it" = "W * t / z";
    F_SLIDE "F_slide" Force (STATICS "forces along the floor" Derived) "Push which slides it" = "mu * W";
    Z_TIP "z_tip" Length (STATICS "" Derived) "Pushed above this height it tips, below it slides" = "t / mu";
    FRICTION_BAN "" Number (ASCE_7_FRICTION "13.4" Secondary) "friction from gravity is never counted as an anchorage of a component: what slides later than it is pushed still has to be bolted": Name;
}

/// Where a body stands that is asked for its thresholds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stand {
    /// Its mass.
    pub mass_kg: f64,
    /// Height of its centre of gravity.
    pub height_mm: f64,
    /// Distance to the edge of the feet's hull along the push.
    pub reach_mm: f64,
    /// Friction between feet and floor.
    pub friction: f64,
    /// Vertical acceleration that unloads the feet.
    pub vertical: f64,
    /// Slope of the floor, down in the direction of the push.
    pub slope_rad: f64,
    /// Height of a push.
    pub push_height_mm: f64,
}

/// What it bears.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thresholds {
    /// Push along the slope at which it tips, over the weight; not positive where it tips by itself.
    pub tips: f64,
    /// Push along the slope at which it slides, over the weight; not positive where it slides by itself.
    pub slides: f64,
    /// Tilt at which it tips.
    pub tips_rad: f64,
    /// Tilt at which it slides.
    pub slides_rad: f64,
    /// Push at the height asked for which tips it.
    pub tipping_push_n: f64,
    /// Push which slides it.
    pub sliding_push_n: f64,
}

impl Thresholds {
    /// The row that says which comes first.
    pub fn first(&self) -> StepId {
        if self.slides < self.tips { SLIDES_FIRST } else { TIPS_FIRST }
    }
}

/// The thresholds in one direction, told.
///
/// ```
/// use steadfoot::calc::Sheet;
/// use steadfoot::checks::thresholds::{Stand, thresholds};
/// let stand = Stand { mass_kg: 1000.0, height_mm: 1000.0, reach_mm: 400.0, friction: 0.3, vertical: 0.0,
///     slope_rad: 0.0, push_height_mm: 1500.0 };
/// let found = thresholds(&stand, &mut Sheet::quiet());
/// assert_eq!((found.tips, found.slides), (0.4, 0.3));
/// ```
pub fn thresholds(stand: &Stand, sheet: &mut Sheet) -> Thresholds {
    sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
    let m = sheet.step(M, stand.mass_kg);
    let g = sheet.step(G, G_N_PER_KG);
    let w = sheet.step(W, m * g);
    let h = sheet.step(H, stand.height_mm);
    let t = sheet.detailed(T, stand.reach_mm, || Detail::Shape(vec![[0.0, 0.0], [stand.reach_mm, 0.0]]));
    let mu = sheet.step(MU, stand.friction);
    let a_v = sheet.step(A_V, stand.vertical);
    let theta = sheet.step(THETA, stand.slope_rad);
    let (sin, cos) = (number::sin(theta), number::cos(theta));
    let tips = sheet.step(A_TIP, (1.0 - a_v) * (t * cos - h * sin) / h);
    let slides = sheet.step(A_SLIDE, (1.0 - a_v) * (mu * cos - sin));
    let tips_rad = number::atan2(t, h);
    sheet.detailed(THETA_TIP, tips_rad, || Detail::Residuals(vec![number::tan(tips_rad) - t / h]));
    let slides_rad = number::atan2(mu, 1.0);
    sheet.detailed(THETA_SLIDE, slides_rad, || Detail::Residuals(vec![number::tan(slides_rad) - mu]));
    let z = sheet.step(Z, stand.push_height_mm);
    let tipping_push_n = sheet.step(F_TIP, w * t / z);
    let sliding_push_n = sheet.step(F_SLIDE, mu * w);
    if mu > 0.0 {
        sheet.step(Z_TIP, t / mu);
    }
    Thresholds { tips, slides, tips_rad, slides_rad, tipping_push_n, sliding_push_n }
}
