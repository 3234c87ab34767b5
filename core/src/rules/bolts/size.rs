//! The sizes that a bolt or stud can be ordered in.

use crate::calc::System;

/// A row of the size tables.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Size {
    /// Inches in the US system, millimetres in SI: the units of the row.
    pub system: System,
    /// Nominal diameter.
    pub diameter: f64,
    /// What is cut into it.
    pub thread: Thread,
}

/// The thread of a size, or the stud without one.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Thread {
    /// Unified coarse: threads per inch and the width across flats of the hexagon bolt's head, in inches.
    Unified {
        /// Threads per inch.
        per_inch: f64,
        /// Width across flats.
        across_in: f64,
    },
    /// ISO metric coarse: pitch and width across flats, in millimetres.
    Metric {
        /// Pitch.
        pitch_mm: f64,
        /// Width across flats.
        across_mm: f64,
    },
    /// A welded headed stud without a thread.
    Stud(Stud),
}

/// The head of a welded headed stud.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Stud {
    /// Diameter of the head, in the units of its row.
    pub head: f64,
}

macro_rules! sizes {
    ($($word:literal $system:ident $diameter:literal $thread:ident $first:literal $($second:literal)?;)*) => {
        /// The words for the sizes in the project file; the last one lets the user give diameter and stress area.
        pub static SIZE_WORDS: &[&str] = &[$($word,)* "given"];

        /// The sizes, in the order of their words.
        pub static SIZES: &[Size] = &[$(
            Size { system: System::$system, diameter: $diameter, thread: sizes!(@ $thread $first $($second)?) }
        ),*];
    };
    (@ Unified $per_inch:literal $across:literal) => { Thread::Unified { per_inch: $per_inch, across_in: $across } };
    (@ Metric $pitch:literal $across:literal) => { Thread::Metric { pitch_mm: $pitch, across_mm: $across } };
    (@ Stud $head:literal) => { Thread::Stud(Stud { head: $head }) };
}

// Threads: ASME B1.1 and ISO 261. Widths across flats: ASME B18.2.1 (from memory), ISO 4014 and ISO 4017 (M8 and M16 to
// M36 read in an engineer's handbook, the others from memory). Stud heads: AWS D1.1 type B and ISO 13918 type SD, both
// from memory; the 1/2 in. head agrees with a bearing area printed in ACI 349.2R.
sizes! {
    "M8" Si 8.0 Metric 1.25 13.0;
    "M10" Si 10.0 Metric 1.5 16.0;
    "M12" Si 12.0 Metric 1.75 18.0;
    "M14" Si 14.0 Metric 2.0 21.0;
    "M16" Si 16.0 Metric 2.0 24.0;
    "M18" Si 18.0 Metric 2.5 27.0;
    "M20" Si 20.0 Metric 2.5 30.0;
    "M22" Si 22.0 Metric 2.5 34.0;
    "M24" Si 24.0 Metric 3.0 36.0;
    "M27" Si 27.0 Metric 3.0 41.0;
    "M30" Si 30.0 Metric 3.5 46.0;
    "M33" Si 33.0 Metric 3.5 50.0;
    "M36" Si 36.0 Metric 4.0 55.0;
    "1/4 in" Us 0.25 Unified 20.0 0.4375;
    "5/16 in" Us 0.3125 Unified 18.0 0.5;
    "3/8 in" Us 0.375 Unified 16.0 0.5625;
    "7/16 in" Us 0.4375 Unified 14.0 0.625;
    "1/2 in" Us 0.5 Unified 13.0 0.75;
    "5/8 in" Us 0.625 Unified 11.0 0.9375;
    "3/4 in" Us 0.75 Unified 10.0 1.125;
    "7/8 in" Us 0.875 Unified 9.0 1.3125;
    "1 in" Us 1.0 Unified 8.0 1.5;
    "1-1/8 in" Us 1.125 Unified 7.0 1.6875;
    "1-1/4 in" Us 1.25 Unified 7.0 1.875;
    "1-3/8 in" Us 1.375 Unified 6.0 2.0625;
    "1-1/2 in" Us 1.5 Unified 6.0 2.25;
    "1-3/4 in" Us 1.75 Unified 5.0 2.625;
    "2 in" Us 2.0 Unified 4.5 3.0;
    "stud 10 mm" Si 10.0 Stud 19.0;
    "stud 13 mm" Si 13.0 Stud 25.0;
    "stud 16 mm" Si 16.0 Stud 32.0;
    "stud 19 mm" Si 19.0 Stud 32.0;
    "stud 22 mm" Si 22.0 Stud 35.0;
    "stud 25 mm" Si 25.0 Stud 40.0;
    "stud 3/8 in" Us 0.375 Stud 0.75;
    "stud 1/2 in" Us 0.5 Stud 1.0;
    "stud 5/8 in" Us 0.625 Stud 1.25;
    "stud 3/4 in" Us 0.75 Stud 1.25;
    "stud 7/8 in" Us 0.875 Stud 1.375;
    "stud 1 in" Us 1.0 Stud 1.625;
}
