//! What a shake table must show, and what a rig must carry to show it.
//!
//! Required response spectra are levels for a test. They are no forces to design anchors for: a building code divides its
//! force by what the component can give, a test does not.

pub mod ac156;
mod documents;
pub mod fields;
pub mod ieee_693;
pub mod rig;
pub mod spectrum;
pub mod telecom;

pub use rig::{Carried, Fixture, Rig, Specimen};
pub use spectrum::{Axis, Basis, Spectrum, TESTS, spectrum};

use crate::calc::StepTable;
use crate::input::Values;

/// The part `shake_table` of a project.
#[derive(Clone, Debug)]
pub struct ShakeTable {
    /// What was read for its fields.
    pub values: Values,
}

/// Tables of what this module tells.
pub static TABLES: [&StepTable; 4] = [&ac156::TEXTS, &ieee_693::TEXTS, &telecom::TEXTS, &rig::TEXTS];

impl ShakeTable {
    /// The test that is asked for: the place of its word.
    pub fn test(&self) -> usize {
        self.values.choice(fields::SPECTRUM).unwrap_or(0)
    }

    /// Lowest natural frequency of the cabinet on the table, Hz.
    pub fn lowest_hz(&self) -> Option<f64> {
        self.values.number(fields::LOWEST)
    }

    /// The lowest frequency that is matched, Hz, where it was agreed.
    pub fn agreed_hz(&self) -> Option<f64> {
        self.values.number(fields::MATCHED_FROM)
    }

    /// The fixture.
    pub fn fixture(&self) -> Fixture {
        Fixture {
            mass_kg: self.values.given(fields::FIXTURE_MASS),
            height_mm: self.values.given(fields::FIXTURE_HEIGHT),
            centre_mm: self.values.number(fields::FIXTURE_CENTRE),
        }
    }

    /// The rig, as far as it is described.
    pub fn rig(&self) -> Rig {
        let number = |field: usize| self.values.number(field);
        Rig {
            payload_kg: number(fields::RIG_PAYLOAD),
            moment_nmm: number(fields::RIG_MOMENT),
            acceleration: number(fields::RIG_ACCELERATION),
            vertical: number(fields::RIG_VERTICAL),
            velocity_mm_per_s: number(fields::RIG_VELOCITY),
            travel_mm: number(fields::RIG_TRAVEL),
        }
    }
}
