//! Sliding in time: a body that stays upright and slides on the floor against friction.
//!
//! Between two kinks of a record the acceleration is a straight line, so that speed and way are followed exactly. It
//! sticks where the floor does not push harder than friction holds, and slides on where it does (Newmark 1965).

use super::course::{GroundMotion, Segment};
use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::{Sheet, number, steps};

/// Where a block that slides in an earthquake was first worked out.
pub static NEWMARK_1965: Document = Document {
    short: "Newmark 1965",
    title: "N. M. Newmark: Effects of earthquakes on dams and embankments, Géotechnique 15(2), 1965",
};

steps! { 171 "sliding";
    G "g" FreeFall (STATICS "" Derived) "Acceleration of free fall": Given;
    A "A" Acceleration (INPUT "" Derived) "Height of a rectangular pulse": Given;
    T_0 "t_0" Time (INPUT "" Derived) "How long the pulse lasts": Given;
    MU "mu" Number (INPUT "" Derived) "Friction between feet and floor while it slides": Given;
    V "V" Velocity (NEWMARK_1965 "" Memory) "Velocity of the floor at the end of the pulse" = "A * g * t_0";
    D "d" Length (NEWMARK_1965 "" Memory) "How far it slides under one rectangular pulse, where the pulse is stronger than friction" = "V^2 / (2 * g * mu) * (1 - mu / A)";
}

/// How it holds to the floor.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Grip {
    /// Friction while it stands.
    pub standing: f64,
    /// Friction while it slides, not more than the other.
    pub sliding: f64,
    /// Acceleration of free fall.
    pub free_fall_mm_per_s2: f64,
}

/// How far it slid.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Slid {
    /// The largest distance from where it stood, either way.
    pub peak_mm: f64,
    /// Where it comes to rest, positive to the right.
    pub residual_mm: f64,
    /// The fastest that it slides over the floor.
    pub speed_mm_per_s: f64,
    /// When it last came to rest.
    pub rests_s: f64,
    /// Whether the vertical motion took all of its weight somewhere.
    pub is_weightless: bool,
    /// Whether it still slides when the motion is over and nothing stops it.
    pub never_rests: bool,
}

/// Follows a body that slides through a motion.
///
/// ```
/// use steadfoot::motion::{Grip, Pulse, PulseForm, slide};
/// let grip = Grip { standing: 0.2, sliding: 0.2, free_fall_mm_per_s2: 9810.0 };
/// let pulse = Pulse { form: PulseForm::Rectangle, amplitude: 0.5, duration_s: 0.3 };
/// assert!((slide(&grip, &pulse).peak_mm - 331.088).abs() < 0.001);
/// ```
pub fn slide(grip: &Grip, motion: &dyn GroundMotion) -> Slid {
    let mut state = Sliding { grip: *grip, way_mm: 0.0, speed: 0.0, time_s: 0.0, slid: Slid::default() };
    let mut number = 0;
    while let Some(segment) = motion.segment(number) {
        state.follow(&segment);
        number += 1;
    }
    // Against friction alone it stops after v / (mu g).
    let stopping = grip.sliding * grip.free_fall_mm_per_s2;
    if state.speed != 0.0 && stopping > 0.0 {
        let after_s = state.speed.abs() / stopping;
        state.way_mm += state.speed * after_s - state.speed.signum() * stopping * after_s * after_s / 2.0;
        state.time_s += after_s;
        state.speed = 0.0;
        state.keep();
        state.slid.rests_s = state.time_s;
    }
    // Without friction it slides on for ever.
    state.slid.never_rests = state.speed != 0.0;
    state.slid.residual_mm = state.way_mm;
    state.slid
}

struct Sliding {
    grip: Grip,
    way_mm: f64,
    /// In mm/s over the floor.
    speed: f64,
    time_s: f64,
    slid: Slid,
}

impl Sliding {
    fn follow(&mut self, segment: &Segment) {
        let steps = number::ceil(segment.length_s / segment.step_s * (1.0 - 1e-9)).max(1.0);
        let step_s = segment.length_s / steps;
        for step in 0..steps as usize {
            let from_s = step as f64 * step_s;
            let push = |at_s: f64| -segment.horizontal.at(at_s);
            let weight = |at_s: f64| {
                let weight = 1.0 + segment.vertical.at(at_s);
                number::positive_part(weight)
            };
            self.slid.is_weightless |= 1.0 + segment.vertical.at(from_s) <= 0.0;
            let (ends, weights) = ([push(from_s), push(from_s + step_s)], [weight(from_s), weight(from_s + step_s)]);
            self.one(ends, weights, step_s);
            self.time_s += step_s;
        }
    }

    /// One step in which push and weight run straight from their first to their second value.
    fn one(&mut self, push: [f64; 2], weight: [f64; 2], step_s: f64) {
        let mut since_s = 0.0;
        // It sticks, slides, stops and slides back within one step at the most.
        for _ in 0..8 {
            let left_s = step_s - since_s;
            if left_s <= 0.0 {
                break;
            }
            let at = |ends: [f64; 2], share: f64| ends[0] + (ends[1] - ends[0]) * share;
            let share = since_s / step_s;
            let (push, weight) = ([at(push, share), push[1]], [at(weight, share), weight[1]]);
            if self.speed == 0.0 && push[0].abs() <= self.grip.standing * weight[0] {
                // Stuck: until the push exceeds what holds, which is a straight line as well.
                let excess = |end: usize, sign: f64| sign * push[end] - self.grip.standing * weight[end];
                let slips = [1.0, -1.0]
                    .into_iter()
                    .filter(|&sign| excess(1, sign) > 0.0)
                    .map(|sign| -excess(0, sign) / (excess(1, sign) - excess(0, sign)));
                match slips.reduce(f64::min) {
                    // The moment of slipping itself would count as stuck again: a step from there slides.
                    Some(share) => {
                        since_s += left_s * share;
                        let rest = [at(push, share), push[1]];
                        let weight = [at(weight, share), weight[1]];
                        let sign = if push[1] > 0.0 { 1.0 } else { -1.0 };
                        since_s += self.slip(rest, weight, step_s - since_s, sign);
                    }
                    None => break,
                }
            } else {
                let sign = if self.speed != 0.0 { self.speed.signum() } else { push[0].signum() };
                since_s += self.slip(push, weight, left_s, sign);
            }
        }
    }

    /// Slides one way for so long or until it stops; gives the time that has passed.
    fn slip(&mut self, push: [f64; 2], weight: [f64; 2], length_s: f64, sign: f64) -> f64 {
        let g = self.grip.free_fall_mm_per_s2;
        let drive = |end: usize| (push[end] - sign * self.grip.sliding * weight[end]) * g;
        let (first, second) = (drive(0), drive(1));
        let slope = if length_s > 0.0 { (second - first) / length_s } else { 0.0 };
        let mut taken_s = length_s;
        let mut stops = false;
        if let Some(stop_s) = first_zero(self.speed, first, slope, length_s)
            && (self.speed != 0.0 || stop_s > 0.0)
        {
            taken_s = stop_s;
            stops = true;
        }
        self.way_mm +=
            self.speed * taken_s + first * taken_s * taken_s / 2.0 + slope * taken_s * taken_s * taken_s / 6.0;
        self.speed = if stops { 0.0 } else { self.speed + first * taken_s + slope * taken_s * taken_s / 2.0 };
        self.keep();
        if stops {
            self.slid.rests_s = self.time_s + taken_s;
        }
        taken_s
    }

    fn keep(&mut self) {
        self.slid.peak_mm = self.slid.peak_mm.max(self.way_mm.abs());
        self.slid.speed_mm_per_s = self.slid.speed_mm_per_s.max(self.speed.abs());
    }
}

/// The first time behind 0 and up to `until` at which `v + a t + b t^2 / 2` is nothing.
fn first_zero(v: f64, a: f64, b: f64, until: f64) -> Option<f64> {
    let mut found = [f64::INFINITY; 2];
    if v == 0.0 {
        // From rest it comes back to rest where a + b t / 2 is nothing.
        found[0] = if b != 0.0 { -2.0 * a / b } else { f64::INFINITY };
    } else if b == 0.0 {
        found[0] = if a != 0.0 { -v / a } else { f64::INFINITY };
    } else {
        let under = a * a - 2.0 * b * v;
        if under >= 0.0 {
            let root = number::sqrt(under);
            // The form that does not cancel.
            let q = -(a + if a >= 0.0 { root } else { -root });
            found = [q / b, if q != 0.0 { 2.0 * v / q } else { f64::INFINITY }];
        }
    }
    found.into_iter().filter(|&at| at > 0.0 && at <= until).reduce(f64::min)
}

/// How far a body slides under one rectangular pulse, told; nothing where friction holds it.
pub fn slide_of_pulse_mm(grip: &Grip, amplitude: f64, duration_s: f64, sheet: &mut Sheet) -> f64 {
    sheet.step(G, grip.free_fall_mm_per_s2);
    let g = grip.free_fall_mm_per_s2;
    sheet.step(A, amplitude);
    sheet.step(T_0, duration_s);
    let mu = sheet.step(MU, grip.sliding);
    let v = sheet.step(V, amplitude * g * duration_s);
    if amplitude <= mu {
        return 0.0;
    }
    sheet.step(D, v * v / (2.0 * g * mu) * (1.0 - mu / amplitude))
}
