//! Pulses: the simplest motions of a floor, to which much of the literature on rocking keeps.

use super::course::{Course, GroundMotion, Segment};
use core::f64::consts::{FRAC_PI_2, PI};

/// The form of a pulse.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum PulseForm {
    /// Constant over its duration.
    Rectangle,
    /// The upper half of a sine.
    HalfSine,
    /// One whole sine: out and back.
    OneSine,
    /// One whole cosine: back, out and back again.
    OneCosine,
}

impl PulseForm {
    /// All of them, in the order of their words.
    pub const ALL: [PulseForm; 4] =
        [PulseForm::Rectangle, PulseForm::HalfSine, PulseForm::OneSine, PulseForm::OneCosine];
}

/// A pulse of the floor, positive to the right.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pulse {
    /// Its form.
    pub form: PulseForm,
    /// Its height, in multiples of g.
    pub amplitude: f64,
    /// How long it lasts.
    pub duration_s: f64,
}

/// A pulse is followed in at least so many steps.
const STEPS_OF_A_PULSE: f64 = 200.0;

impl GroundMotion for Pulse {
    fn segment(&self, number: usize) -> Option<Segment> {
        let wave = |turns: f64, phase_rad: f64| Course::Sine {
            amplitude: self.amplitude,
            omega_rad_per_s: turns * 2.0 * PI / self.duration_s,
            phase_rad,
        };
        let horizontal = match self.form {
            PulseForm::Rectangle => Course::Line { start: self.amplitude, slope: 0.0 },
            PulseForm::HalfSine => wave(0.5, 0.0),
            PulseForm::OneSine => wave(1.0, 0.0),
            PulseForm::OneCosine => wave(1.0, FRAC_PI_2),
        };
        let step_s = self.duration_s / STEPS_OF_A_PULSE;
        (number == 0).then_some(Segment { length_s: self.duration_s, horizontal, vertical: Course::STILL, step_s })
    }
}
