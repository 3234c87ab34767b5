//! One step of rocking: the equation of motion about one edge, by the classical Runge-Kutta method of fourth order.

use super::body::{Edge, Side};
use super::course::Segment;
use crate::calc::number;

/// Where a turning body is.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Turn {
    /// The edge that it turns about.
    pub side: Side,
    /// Its angle, positive away from the floor.
    pub angle_rad: f64,
    /// How fast the angle grows.
    pub speed_rad_per_s: f64,
}

/// A turning body at the beginning of a step.
pub(super) struct Forced<'a> {
    segment: &'a Segment,
    since_s: f64,
    turn: Turn,
    p_squared: f64,
    sin: f64,
    cos: f64,
}

impl<'a> Forced<'a> {
    pub(super) fn new(edge: &Edge, turn: &Turn, segment: &'a Segment, since_s: f64) -> Forced<'a> {
        let lean_rad = edge.alpha_rad - turn.angle_rad;
        let p_squared = edge.p_rad_per_s * edge.p_rad_per_s;
        Forced { segment, since_s, turn: *turn, p_squared, sin: number::sin(lean_rad), cos: number::cos(lean_rad) }
    }

    /// Where it is so much later.
    pub(super) fn after(&self, step_s: f64) -> Turn {
        let (half_s, speed) = (step_s / 2.0, self.turn.speed_rad_per_s);
        let start = self.floor(0.0);
        let middle = self.floor(half_s);
        let end = self.floor(step_s);
        let a_1 = self.acceleration(0.0, start);
        let v_2 = speed + half_s * a_1;
        let a_2 = self.acceleration(half_s * speed, middle);
        let v_3 = speed + half_s * a_2;
        let a_3 = self.acceleration(half_s * v_2, middle);
        let v_4 = speed + step_s * a_3;
        let a_4 = self.acceleration(step_s * v_3, end);
        Turn {
            side: self.turn.side,
            angle_rad: self.turn.angle_rad + step_s / 6.0 * (speed + 2.0 * v_2 + 2.0 * v_3 + v_4),
            speed_rad_per_s: speed + step_s / 6.0 * (a_1 + 2.0 * a_2 + 2.0 * a_3 + a_4),
        }
    }

    /// The friction that keeps the edge from sliding at the beginning of the step; infinite where nothing presses.
    pub(super) fn friction_needed(&self, free_fall_mm_per_s2: f64, edge: &Edge) -> f64 {
        let (push, weight) = self.floor(0.0);
        let per_g = edge.radius_mm / free_fall_mm_per_s2;
        let turning = self.acceleration(0.0, (push, weight));
        let circling = self.turn.speed_rad_per_s * self.turn.speed_rad_per_s;
        let along = push + per_g * (self.cos * turning + self.sin * circling);
        let pressing = weight + per_g * (self.sin * turning - self.cos * circling);
        if pressing > 0.0 { along.abs() / pressing } else { f64::INFINITY }
    }

    /// Push towards the side that it turns to, and what the weight counts, in multiples of g.
    #[inline(always)]
    fn floor(&self, later_s: f64) -> (f64, f64) {
        let at_s = self.since_s + later_s;
        (self.turn.side.sign() * self.segment.horizontal.at(at_s), 1.0 + self.segment.vertical.at(at_s))
    }

    /// The angular acceleration where it has turned on by so much.
    #[inline(always)]
    fn acceleration(&self, on_rad: f64, (push, weight): (f64, f64)) -> f64 {
        let (sin_on, cos_on) = near_zero(on_rad);
        let sin = self.sin * cos_on - self.cos * sin_on;
        let cos = self.cos * cos_on + self.sin * sin_on;
        -self.p_squared * (weight * sin + push * cos)
    }
}

/// Sine and cosine; by their series for the small angles of a step, which is exact to the last digits and far quicker.
#[inline(always)]
fn near_zero(angle_rad: f64) -> (f64, f64) {
    if angle_rad.abs() > 0.05 {
        return (number::sin(angle_rad), number::cos(angle_rad));
    }
    let square = angle_rad * angle_rad;
    let sin = angle_rad * (1.0 - square / 6.0 * (1.0 - square / 20.0 * (1.0 - square / 42.0)));
    let cos = 1.0 - square / 2.0 * (1.0 - square / 12.0 * (1.0 - square / 30.0 * (1.0 - square / 56.0)));
    (sin, cos)
}
