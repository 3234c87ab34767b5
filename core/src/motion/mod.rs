//! Motion in time: pulses and records of a floor, rocking and sliding of what stands on it, response spectra.

mod asce_43;
mod body;
mod closed_form;
pub mod code_spectrum;
mod course;
mod criteria;
mod fall;
mod fragility;
mod oscillator;
mod pulse;
mod record;
mod record_row;
mod record_text;
mod rocking;
mod self_check;
pub mod setting;
mod sliding;
mod spectrum;
pub mod spectrum_rows;
mod step;
mod verdict;

pub use asce_43::{
    ASCE_43, Rocking, RockingOscillator, SlidingEstimate, TEXTS as ASCE_43_TEXTS, rocking_angle, rocking_capacity,
    sliding_distance_mm,
};
pub use body::{Edge, FREE_FALL_MM_PER_S2, MassAndReach, RockingBody, Side, TEXTS as BODY_TEXTS};
pub use closed_form::{
    FreeRocked, FreeRocking, TEXTS as CLOSED_FORM_TEXTS, free_rocking, half_sine_that_overturns,
    rectangle_that_overturns,
};
pub use code_spectrum::CodeSpectrum;
pub use course::{Course, GroundMotion, Scaled, Segment};
pub use criteria::{Criteria, TEXTS as CRITERIA_TEXTS, criteria};
pub use fall::{Fall, first_fall};
pub use fragility::{Fragility, FragilityPoint};
pub use oscillator::{Method, Oscillator, Recurrence};
pub use pulse::{Pulse, PulseForm};
pub use record::{Record, RecordFacts, TwoRecords};
pub use record_text::{RECORD_VALUES_MAX, RecordForm, RecordUnit, Recorded, read_record, read_records};
pub use rocking::{End, Following, Rocked, rock};
pub use self_check::rocking_check;
pub use setting::MotionSetting;
pub use sliding::{Grip, Slid, TEXTS as SLIDING_TEXTS, slide, slide_of_pulse_mm};
pub use spectrum::{Response, SpectrumSetting, response, spectrum};
pub use verdict::{IMPULSES, Run, STRENGTHS, Scheme, TEXTS as VERDICT_TEXTS, Verdict, Word, judge, word_of};
