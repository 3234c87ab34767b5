//! Rocking in time: a rigid body that turns about one edge of its base, comes down, and turns about the other.
//!
//! After Housner (1963), with each edge's own angle for a centre of gravity that is not in the middle. Between impacts
//! the nonlinear equation of motion is integrated; lift-off and impacts are found as events inside a step. The body
//! neither slides nor bounces: how much friction that takes is told beside the result.

use alloc::vec::Vec;
use core::f64::consts::FRAC_PI_2;

use super::body::{Edge, RockingBody, Side};
use super::course::{Course, GroundMotion, Segment};
use super::step::{Forced, Turn};

/// How a body is followed in time.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Following {
    /// Where the impulse of an impact acts, as a share of the way from the centre to the new edge: 1 is Housner's.
    pub impulse: f64,
    /// So many times finer than the steps that are long enough: 1, or 2 to see whether the result stays.
    pub fineness: f64,
    /// The angle from which it is let go; not zero only for free rocking. Positive to the right.
    pub release_rad: f64,
    /// When the following stops at the latest, counted from the end of the motion.
    pub tail_s: f64,
}

impl Following {
    /// Housner's impacts, ordinary steps, from rest, a minute after the motion has ended.
    pub const USUAL: Following = Following { impulse: 1.0, fineness: 1.0, release_rad: 0.0, tail_s: 60.0 };
}

/// How it ends.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum End {
    /// It never leaves the floor.
    NeverLifts,
    /// It comes to rest again, whatever it passed meanwhile.
    Recovers,
    /// It falls over.
    Overturns,
    /// The vertical motion takes all of its weight: it leaves the floor, which this model does not follow.
    LeavesTheFloor,
    /// Neither at rest nor fallen when the following stopped.
    StillRocks,
}

/// What became of a body.
#[derive(Clone, PartialEq, Debug)]
pub struct Rocked {
    /// How it ended.
    pub end: End,
    /// When that was.
    pub end_s: f64,
    /// The largest angle over the angle of the edge that it turned about; more than 1 does not mean that it fell.
    pub peak_ratio: f64,
    /// That angle, positive to the right.
    pub peak_rad: f64,
    /// When that was.
    pub peak_s: f64,
    /// When it first left the floor.
    pub lifts_s: Option<f64>,
    /// How often it came down.
    pub impacts: usize,
    /// When it came down, the first [`IMPACTS_KEPT`] times.
    pub impacts_s: Vec<f64>,
    /// The friction without which it would slide while it stands or rocks.
    pub friction_needed: f64,
}

/// So many times of impacts are kept.
pub const IMPACTS_KEPT: usize = 64;
/// After so many impacts the following stops.
const IMPACTS_MAX: usize = 20_000;
/// Slower than this at an impact is at rest.
const REST_RAD_PER_S: f64 = 1e-6;
/// A step is no longer than this part of 1 / p.
const STEP_OF_P: f64 = 0.01;
/// How exactly the time of an event is found.
const EVENT_S: f64 = 1e-12;

/// Follows a body through a motion.
///
/// `see` is given the time in s and the angle in rad, positive to the right, at every step.
///
/// ```
/// use steadfoot::motion::{End, Following, Pulse, PulseForm, RockingBody, rock};
/// let cabinet = RockingBody::rectangle(600.0, 1200.0);
/// let pulse = |amplitude| Pulse { form: PulseForm::HalfSine, amplitude, duration_s: 0.5 };
/// assert_eq!(rock(&cabinet, &pulse(0.49), &Following::USUAL, &mut |_, _| {}).end, End::NeverLifts);
/// assert_eq!(rock(&cabinet, &pulse(1.06), &Following::USUAL, &mut |_, _| {}).end, End::Recovers);
/// assert_eq!(rock(&cabinet, &pulse(1.08), &Following::USUAL, &mut |_, _| {}).end, End::Overturns);
/// ```
pub fn rock(
    body: &RockingBody,
    motion: &dyn GroundMotion,
    following: &Following,
    see: &mut dyn FnMut(f64, f64),
) -> Rocked {
    let mut state = Rocking::new(body, following);
    let mut number = 0;
    while let Some(segment) = motion.segment(number) {
        if state.follow(&segment, see) {
            return state.told;
        }
        number += 1;
    }
    let motion_s = state.time_s;
    let still = Segment { length_s: 1.0, horizontal: Course::STILL, vertical: Course::STILL, step_s: 1.0 };
    while state.turn.is_some() {
        if state.time_s - motion_s >= following.tail_s {
            state.told.end = End::StillRocks;
            break;
        }
        if state.follow(&still, see) {
            return state.told;
        }
    }
    state.told.end_s = state.time_s;
    state.told
}

struct Rocking<'b> {
    body: &'b RockingBody,
    edges: [Edge; 2],
    restitution: [f64; 2],
    longest_s: f64,
    fineness: f64,
    /// The time at which the present segment began.
    time_s: f64,
    turn: Option<Turn>,
    told: Rocked,
}

impl<'b> Rocking<'b> {
    fn new(body: &'b RockingBody, following: &Following) -> Rocking<'b> {
        let edges = [body.edge(Side::Right), body.edge(Side::Left)];
        let swiftest = edges[0].p_rad_per_s.max(edges[1].p_rad_per_s);
        let side = if following.release_rad < 0.0 { Side::Left } else { Side::Right };
        let angle_rad = following.release_rad.abs();
        let turn = (angle_rad > 0.0).then_some(Turn { side, angle_rad, speed_rad_per_s: 0.0 });
        let told = Rocked {
            end: if turn.is_some() { End::Recovers } else { End::NeverLifts },
            end_s: 0.0,
            peak_ratio: angle_rad / edges[side as usize].alpha_rad,
            peak_rad: following.release_rad,
            peak_s: 0.0,
            lifts_s: None,
            impacts: 0,
            impacts_s: Vec::new(),
            friction_needed: 0.0,
        };
        Rocking {
            body,
            edges,
            restitution: [Side::Right, Side::Left].map(|side| body.restitution(side, following.impulse)),
            longest_s: STEP_OF_P / swiftest,
            fineness: following.fineness,
            time_s: 0.0,
            turn,
            told,
        }
    }

    /// Follows one segment; true where that ends it all.
    fn follow(&mut self, segment: &Segment, see: &mut dyn FnMut(f64, f64)) -> bool {
        let step_s = segment.step_s.min(self.longest_s) / self.fineness;
        let lines = matches!((segment.horizontal, segment.vertical), (Course::Line { .. }, Course::Line { .. }));
        let mut since_s = 0.0;
        while segment.length_s - since_s > EVENT_S {
            let left_s = segment.length_s - since_s;
            let Some(turn) = self.turn else {
                // A straight line is searched as a whole; a wave in steps.
                let look_s = if lines || left_s <= step_s * 1.5 { left_s } else { step_s };
                if self.is_weightless(segment, since_s + look_s) {
                    return true;
                }
                since_s += self.wait(segment, since_s, look_s);
                see(self.time_s + since_s, 0.0);
                continue;
            };
            // The last steps of a segment share what is left, so that none is tiny.
            let steps = crate::calc::number::ceil(left_s / step_s * (1.0 - 1e-9)).max(1.0);
            let taken_s = left_s / steps;
            if self.is_weightless(segment, since_s + taken_s) {
                return true;
            }
            since_s += self.move_on(segment, since_s, taken_s, turn);
            see(self.time_s + since_s, self.turn.map_or(0.0, |turn| turn.side.sign() * turn.angle_rad));
            if self.told.end == End::Overturns || self.told.impacts >= IMPACTS_MAX {
                self.told.end_s = self.time_s + since_s;
                if self.told.end != End::Overturns {
                    self.told.end = End::StillRocks;
                }
                return true;
            }
        }
        self.time_s += segment.length_s;
        false
    }

    #[inline(always)]
    fn is_weightless(&mut self, segment: &Segment, at_s: f64) -> bool {
        let weightless = 1.0 + segment.vertical.at(at_s) <= 0.0;
        if weightless {
            self.told.end = End::LeavesTheFloor;
            self.told.end_s = self.time_s + at_s;
        }
        weightless
    }

    /// At rest: looks for the moment at which an edge lifts, and gives the time that has passed.
    fn wait(&mut self, segment: &Segment, since_s: f64, look_s: f64) -> f64 {
        // How far the push exceeds what the weight holds against it, for turning to the right and to the left.
        let excess = |at_s: f64, side: Side| {
            let weight = 1.0 + segment.vertical.at(at_s);
            -side.sign() * segment.horizontal.at(at_s) - weight * self.edges[side as usize].uplift
        };
        let mut first: Option<(f64, Side)> = None;
        for side in [Side::Right, Side::Left] {
            let at_s = if excess(since_s, side) > 0.0 {
                since_s
            } else if excess(since_s + look_s, side) > 0.0 {
                let (mut low, mut high) = (since_s, since_s + look_s);
                while high - low > EVENT_S && (low + high) / 2.0 > low && (low + high) / 2.0 < high {
                    let middle = (low + high) / 2.0;
                    if excess(middle, side) > 0.0 { high = middle } else { low = middle }
                }
                high
            } else {
                continue;
            };
            if first.is_none_or(|(known, _)| at_s < known) {
                first = Some((at_s, side));
            }
        }
        let until_s = first.map_or(since_s + look_s, |(at_s, _)| at_s);
        for at_s in [since_s, until_s] {
            self.needs(segment.horizontal.at(at_s).abs() / (1.0 + segment.vertical.at(at_s)));
        }
        if let Some((at_s, side)) = first {
            self.turn = Some(Turn { side, angle_rad: 0.0, speed_rad_per_s: 0.0 });
            self.told.end = End::Recovers;
            self.told.lifts_s = self.told.lifts_s.or(Some(self.time_s + at_s));
        }
        until_s - since_s
    }

    /// Turning: one step, cut short where it comes down. Gives the time that has passed.
    fn move_on(&mut self, segment: &Segment, since_s: f64, step_s: f64, turn: Turn) -> f64 {
        let edge = self.edges[turn.side as usize];
        let forced = Forced::new(&edge, &turn, segment, since_s);
        // Beyond the angle of falling it is lost, and what it needs on the way down says nothing.
        if turn.angle_rad <= edge.alpha_rad {
            self.needs(forced.friction_needed(self.body.free_fall_mm_per_s2, &edge));
        }
        let next = forced.after(step_s);
        if next.angle_rad > 0.0 {
            self.peak(&turn, &next, since_s, step_s, &edge);
            self.turn = Some(next);
            if next.angle_rad >= FRAC_PI_2 {
                self.told.end = End::Overturns;
            }
            return step_s;
        }
        if turn.angle_rad == 0.0 && turn.speed_rad_per_s <= 0.0 {
            // It was just about to lift and did not.
            self.turn = None;
            return step_s;
        }
        let (mut low, mut high) = (0.0, step_s);
        while high - low > EVENT_S && (low + high) / 2.0 > low && (low + high) / 2.0 < high {
            let middle = (low + high) / 2.0;
            if forced.after(middle).angle_rad > 0.0 { low = middle } else { high = middle }
        }
        let down = forced.after(high);
        self.peak(&turn, &down, since_s, high, &edge);
        self.impact(turn.side, down.speed_rad_per_s.abs(), self.time_s + since_s + high);
        high
    }

    fn impact(&mut self, from: Side, speed_rad_per_s: f64, at_s: f64) {
        self.told.impacts += 1;
        if self.told.impacts_s.len() < IMPACTS_KEPT {
            self.told.impacts_s.push(at_s);
        }
        let onto = from.other();
        let speed_rad_per_s = speed_rad_per_s * self.restitution[onto as usize];
        self.turn = (speed_rad_per_s >= REST_RAD_PER_S).then_some(Turn { side: onto, angle_rad: 0.0, speed_rad_per_s });
    }

    fn needs(&mut self, friction: f64) {
        if friction > self.told.friction_needed {
            self.told.friction_needed = friction;
        }
    }

    /// Keeps the largest angle, also where it lies inside a step.
    fn peak(&mut self, from: &Turn, to: &Turn, since_s: f64, step_s: f64, edge: &Edge) {
        let (angle_rad, after_s) = if from.speed_rad_per_s > 0.0 && to.speed_rad_per_s < 0.0 {
            top(from, to, step_s)
        } else {
            (to.angle_rad, step_s)
        };
        let ratio = angle_rad / edge.alpha_rad;
        if ratio > self.told.peak_ratio {
            self.told.peak_ratio = ratio;
            self.told.peak_rad = from.side.sign() * angle_rad;
            self.told.peak_s = self.time_s + since_s + after_s;
        }
    }
}

/// The top of the cubic through both ends of a step with both speeds, and when it is reached.
fn top(from: &Turn, to: &Turn, step_s: f64) -> (f64, f64) {
    let (a, b, v, w) = (from.angle_rad, to.angle_rad, from.speed_rad_per_s * step_s, to.speed_rad_per_s * step_s);
    let cubic = |s: f64| {
        let (square, cube) = (s * s, s * s * s);
        a * (1.0 - 3.0 * square + 2.0 * cube)
            + v * (s - 2.0 * square + cube)
            + b * (3.0 * square - 2.0 * cube)
            + w * (cube - square)
    };
    let slope = |s: f64| (b - a) * 6.0 * (s - s * s) + v * (1.0 - 4.0 * s + 3.0 * s * s) + w * (3.0 * s * s - 2.0 * s);
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..40 {
        let middle = (low + high) / 2.0;
        if slope(middle) > 0.0 { low = middle } else { high = middle }
    }
    (cubic(low), low * step_s)
}
