//! A recorded motion of the ground or of a floor: accelerations at even steps of time, straight lines between them.

use alloc::vec::Vec;

use super::course::{Course, GroundMotion, Segment};
use crate::calc::unit::G_N_PER_KG;

/// A record.
#[derive(Clone, PartialEq, Debug)]
pub struct Record {
    /// Time from one value to the next.
    pub step_s: f64,
    /// The accelerations, in multiples of g.
    pub accelerations: Vec<f64>,
}

/// What a record says of itself.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct RecordFacts {
    /// From the first value to the last.
    pub duration_s: f64,
    /// The highest acceleration either way, in multiples of g.
    pub peak: f64,
    /// The lowest and the highest acceleration.
    pub ends: [f64; 2],
    /// When these two come.
    pub ends_s: [f64; 2],
    /// The highest velocity either way, by the trapezoid rule from rest; no baseline is corrected.
    pub velocity_mm_per_s: f64,
}

/// Steps between two values of a record.
const STEPS_OF_A_RECORD: f64 = 10.0;

impl Record {
    /// What it says of itself; all zero for a record without values.
    pub fn facts(&self) -> RecordFacts {
        let mut facts =
            RecordFacts { duration_s: 0.0, peak: 0.0, ends: [0.0; 2], ends_s: [0.0; 2], velocity_mm_per_s: 0.0 };
        let mut velocity = 0.0;
        for (place, &value) in self.accelerations.iter().enumerate() {
            let time_s = place as f64 * self.step_s;
            if value < facts.ends[0] {
                (facts.ends[0], facts.ends_s[0]) = (value, time_s);
            }
            if value > facts.ends[1] {
                (facts.ends[1], facts.ends_s[1]) = (value, time_s);
            }
            if place > 0 {
                velocity += (self.accelerations[place - 1] + value) / 2.0 * self.step_s * G_N_PER_KG * 1000.0;
                facts.velocity_mm_per_s = facts.velocity_mm_per_s.max(f64::abs(velocity));
                facts.duration_s = time_s;
            }
        }
        facts.peak = facts.ends[1].max(-facts.ends[0]);
        facts
    }

    fn line(&self, number: usize) -> Option<Course> {
        let (&start, &end) = (self.accelerations.get(number)?, self.accelerations.get(number + 1)?);
        Some(Course::Line { start, slope: (end - start) / self.step_s })
    }
}

impl GroundMotion for Record {
    fn segment(&self, number: usize) -> Option<Segment> {
        let horizontal = self.line(number)?;
        let step_s = self.step_s / STEPS_OF_A_RECORD;
        Some(Segment { length_s: self.step_s, horizontal, vertical: Course::STILL, step_s })
    }
}

/// A record of each direction, with the same steps; the shorter one is still behind its end.
#[derive(Clone, Copy, Debug)]
pub struct TwoRecords<'a> {
    /// Horizontal, positive to the right.
    pub horizontal: &'a Record,
    /// Vertical, positive upwards.
    pub vertical: &'a Record,
}

impl GroundMotion for TwoRecords<'_> {
    fn segment(&self, number: usize) -> Option<Segment> {
        let (horizontal, vertical) = (self.horizontal.line(number), self.vertical.line(number));
        if horizontal.is_none() && vertical.is_none() {
            return None;
        }
        let length_s = self.horizontal.step_s;
        Some(Segment {
            length_s,
            horizontal: horizontal.unwrap_or(Course::STILL),
            vertical: vertical.unwrap_or(Course::STILL),
            step_s: length_s / STEPS_OF_A_RECORD,
        })
    }
}
