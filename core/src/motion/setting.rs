//! What a reader says of the motion that an unbolted cabinet is tried under: slope, friction, pulse, record.

use alloc::vec::Vec;

use super::pulse::PulseForm;
use super::record_text::{RECORD_STEP_MAX_S, RecordForm, RecordUnit};
use crate::calc::Kind;
use crate::fields;
use crate::input::field::{Absent::*, FieldShape::*, Value, Values};

fields! {
    SLOPE "slope" Number { kind: Kind::Number, min: 0.0, max: 0.5 }, Is(0.0),
        "Slope of the floor", "How far the floor falls for its length, down in the direction that is looked at: 0.083 for a ramp of 1 in 12.", "", [];
    PUSH_HEIGHT "push_height_mm" Number { kind: Kind::Length, min: 1.0, max: 20_000.0 }, Is(1_500.0),
        "Height of a push", "Where somebody leans on it or a cart meets it.", "", [];
    FRICTION_LOW "friction_low" Number { kind: Kind::Number, min: 0.0, max: 2.0 }, Is(0.1),
        "Low friction", "A second friction for sliding, below that of the slab: wet, dusty, or on plastic feet.", "common practice", [];
    PULSE "pulse" Choice(&["rectangle", "half-sine", "one-sine", "one-cosine"]), Word(2),
        "Pulse", "The form of the pulse that the floor makes where no record is given.", "", ["Rectangle", "Half a sine", "One sine", "One cosine"];
    PULSE_HEIGHT "pulse_g" Number { kind: Kind::Acceleration, min: 0.0, max: 5.0 }, Unknown,
        "Height of the pulse", "Left empty, it is the push of the seismic rule.", "", [];
    PULSE_DURATION "pulse_s" Number { kind: Kind::Time, min: 0.01, max: 20.0 }, Is(0.5),
        "Duration of the pulse", "From its beginning to its end. Long pulses throw large bodies over, short ones hardly move them.", "", [];
    IMPULSE "impulse" Number { kind: Kind::Number, min: 0.0, max: 1.0 }, Unknown,
        "Place of the impulse", "Where an impact acts, as a share of the way from the centre of gravity to the edge that it comes down on. 1, 0.85 and 0.7 are always tried; a test may give another.", "Kalliontzis et al. 2016", [];
    RECORD_UNIT "record_unit" Choice(RecordUnit::WORDS), Unknown,
        "Unit of the record", "The unit of the accelerations in the file that you open. It is never guessed.", "", ["g", "m/s²", "cm/s² (gal)", "mm/s²", "in/s²"];
    RECORD_STEP "record_step_s" Number { kind: Kind::Time, min: 0.000_1, max: RECORD_STEP_MAX_S }, Unknown,
        "Time step of the record", "Only for a file of values alone, which does not say it.", "", [];
    RECORD_FACTOR "record_factor" Number { kind: Kind::Number, min: -100.0, max: 100.0 }, Is(1.0),
        "Factor on the record", "Makes the record stronger or weaker. Both signs are tried anyhow.", "", [];
    DAMPING "damping" Number { kind: Kind::Number, min: 0.0, max: 0.5 }, Is(0.05),
        "Damping", "Of the oscillators of a response spectrum, as a share of the critical one.", "", [];
    CORNER "corner_s" Number { kind: Kind::Time, min: 0.05, max: 4.0 }, Unknown,
        "Corner period of the rule's spectrum", "Where the level of the ground's spectrum ends: S_D1 over S_DS in ASCE 7, C_v over 2.5 C_a in UBC 1997. Without it only the level is drawn beside a record. EN 1998-1 knows it by the ground.", "ASCE 7-16 11.4.6", [];
    STRONGEST "strongest" Number { kind: Kind::Number, min: 0.1, max: 50.0 }, Is(3.0),
        "Strongest factor", "How far up a fragility curve goes, as a factor on the motion.", "", [];
}

/// What was said, or the defaults.
#[derive(Clone, Debug, PartialEq)]
pub struct MotionSetting {
    /// Slope of the floor, rise over length.
    pub slope: f64,
    /// Height of a push.
    pub push_height_mm: f64,
    /// The lower friction.
    pub friction_low: f64,
    /// Form of the pulse.
    pub pulse: PulseForm,
    /// Height of the pulse, where given.
    pub pulse_height: Option<f64>,
    /// Duration of the pulse.
    pub pulse_duration_s: f64,
    /// Another place of the impulse.
    pub impulse: Option<f64>,
    /// How a record is read, where its unit is given.
    pub record: Option<RecordForm>,
    /// Factor on a record.
    pub record_factor: f64,
    /// Damping of spectra.
    pub damping: f64,
    /// Corner period of the rule's spectrum, where given.
    pub corner_s: Option<f64>,
    /// Strongest factor of a fragility curve.
    pub strongest: f64,
}

impl MotionSetting {
    /// The setting of values that were read.
    pub fn new(values: &Values) -> MotionSetting {
        let unit = values.choice(RECORD_UNIT).map(|place| RecordUnit::ALL[place]);
        MotionSetting {
            slope: values.given(SLOPE),
            push_height_mm: values.given(PUSH_HEIGHT),
            friction_low: values.given(FRICTION_LOW),
            pulse: PulseForm::ALL[values.choice(PULSE).unwrap_or(2)],
            pulse_height: values.number(PULSE_HEIGHT),
            pulse_duration_s: values.given(PULSE_DURATION),
            impulse: values.number(IMPULSE),
            record: unit.map(|unit| RecordForm { unit, step_s: values.number(RECORD_STEP) }),
            record_factor: values.given(RECORD_FACTOR),
            damping: values.given(DAMPING),
            corner_s: values.number(CORNER),
            strongest: values.given(STRONGEST),
        }
    }
}

impl Default for MotionSetting {
    fn default() -> MotionSetting {
        let absent: Vec<Value> = FIELDS
            .iter()
            .map(|field| match field.absent {
                Is(number) => Value::Number(number),
                Word(place) => Value::Choice(place),
                _ => Value::Unknown,
            })
            .collect();
        MotionSetting::new(&Values(absent))
    }
}
