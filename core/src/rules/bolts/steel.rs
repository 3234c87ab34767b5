//! The steels that bolts and studs are made of.

use crate::calc::{System, Trust};

/// A row of the table of steels.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Steel {
    /// ksi in the US system, MPa in SI: the units of the row.
    pub system: System,
    /// Specified yield strength; none where the standard specifies none.
    pub yield_strength: Option<f64>,
    /// Specified tensile strength.
    pub tensile_strength: f64,
    /// Whether it counts as ductile: 14 % elongation and 30 % reduction of area (ACI 318-19 2.3).
    pub toughness: Toughness,
    /// How far the row can be trusted.
    pub trust: Trust,
}

/// Whether a steel counts as ductile.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Toughness {
    /// Its standard asks for the elongation and the reduction of area of a ductile element, or it counts by definition.
    Ductile,
    /// Its standard does not ask for both.
    Brittle,
}

impl Steel {
    /// Yield strength in MPa.
    pub fn yield_mpa(&self) -> Option<f64> {
        self.yield_strength.map(|strength| self.to_mpa(strength))
    }

    /// Tensile strength in MPa.
    pub fn tensile_mpa(&self) -> f64 {
        self.to_mpa(self.tensile_strength)
    }

    fn to_mpa(self, strength: f64) -> f64 {
        match self.system {
            System::Si => strength,
            System::Us => strength * PSI_PER_KSI * crate::calc::unit::PSI_MPA,
        }
    }
}

const PSI_PER_KSI: f64 = 1000.0;

macro_rules! steels {
    ($($word:literal $system:ident $yield:expr, $tensile:literal $toughness:ident $trust:ident;)*) => {
        /// The words for the steels in the project file; the last one lets the user give the strengths.
        pub static STEEL_WORDS: &[&str] = &[$($word,)* "given"];

        /// The steels, in the order of their words.
        pub static STEELS: &[Steel] = &[$(
            Steel {
                system: System::$system,
                yield_strength: $yield,
                tensile_strength: $tensile,
                toughness: Toughness::$toughness,
                trust: Trust::$trust,
            }
        ),*];
    };
}

// ASTM F1554 as AISC Design Guide 1 (2024) prints it; A193 B7 up to 2-1/2 in., A307 and A36 from memory. A307 grade A
// specifies no yield strength and counts as ductile by definition. A36 and the ISO classes specify no reduction of
// area, so they count as brittle unless a certificate shows it. ISO classes with the nominal values of ISO 898-1.
steels! {
    "f1554-36" Us Some(36.0), 58.0 Ductile Secondary;
    "f1554-55" Us Some(55.0), 75.0 Ductile Secondary;
    "f1554-105" Us Some(105.0), 125.0 Ductile Secondary;
    "a193-b7" Us Some(105.0), 125.0 Ductile Memory;
    "a307-a" Us None, 60.0 Ductile Memory;
    "a36" Us Some(36.0), 58.0 Brittle Memory;
    "iso-4.6" Si Some(240.0), 400.0 Brittle Memory;
    "iso-5.6" Si Some(300.0), 500.0 Brittle Memory;
    "iso-5.8" Si Some(400.0), 500.0 Brittle Memory;
    "iso-8.8" Si Some(640.0), 800.0 Brittle Memory;
    "iso-10.9" Si Some(900.0), 1000.0 Brittle Memory;
    "stud-d1.1-b" Us Some(51.0), 65.0 Ductile Memory;
    "stud-sd1" Si Some(350.0), 450.0 Brittle Memory;
}
