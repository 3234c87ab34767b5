//! How the floor accelerates, cut into pieces between which it has kinks.

use crate::calc::number;

/// How an acceleration runs within a segment, in multiples of g against the time since the segment began.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Course {
    /// A straight line: between two points of a record, or a constant.
    Line {
        /// Where the segment begins.
        start: f64,
        /// Change in a second.
        slope: f64,
    },
    /// A sine.
    Sine {
        /// Its height.
        amplitude: f64,
        /// Its angular frequency.
        omega_rad_per_s: f64,
        /// Where in the wave the segment begins.
        phase_rad: f64,
    },
}

impl Course {
    /// No acceleration at all.
    pub const STILL: Course = Course::Line { start: 0.0, slope: 0.0 };

    /// The acceleration so long after the segment began.
    #[inline(always)]
    pub fn at(&self, since_s: f64) -> f64 {
        match *self {
            Course::Line { start, slope } => start + slope * since_s,
            Course::Sine { amplitude, omega_rad_per_s, phase_rad } => {
                amplitude * number::sin(omega_rad_per_s * since_s + phase_rad)
            }
        }
    }

    /// The same course, so many times as strong.
    pub fn times(self, factor: f64) -> Course {
        match self {
            Course::Line { start, slope } => Course::Line { start: start * factor, slope: slope * factor },
            Course::Sine { amplitude, omega_rad_per_s, phase_rad } => {
                Course::Sine { amplitude: amplitude * factor, omega_rad_per_s, phase_rad }
            }
        }
    }
}

/// A piece of the motion without a kink inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// How long it lasts.
    pub length_s: f64,
    /// Horizontal acceleration of the floor, positive to the right.
    pub horizontal: Course,
    /// Vertical acceleration of the floor, positive upwards.
    pub vertical: Course,
    /// The longest step that follows it closely enough.
    pub step_s: f64,
}

/// A motion of the floor.
pub trait GroundMotion {
    /// The segment of this number, counted from 0; none behind the last, where the floor is still.
    fn segment(&self, number: usize) -> Option<Segment>;
}

/// A motion made so many times as strong; a negative factor turns it round.
#[derive(Clone, Copy)]
pub struct Scaled<'a> {
    /// The motion.
    pub motion: &'a dyn GroundMotion,
    /// Factor on the horizontal acceleration.
    pub horizontal: f64,
    /// Factor on the vertical acceleration.
    pub vertical: f64,
}

impl GroundMotion for Scaled<'_> {
    fn segment(&self, number: usize) -> Option<Segment> {
        let segment = self.motion.segment(number)?;
        let horizontal = segment.horizontal.times(self.horizontal);
        Some(Segment { horizontal, vertical: segment.vertical.times(self.vertical), ..segment })
    }
}
