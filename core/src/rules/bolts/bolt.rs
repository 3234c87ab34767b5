//! One bolt or stud: its stress area and the area that its head bears with.

use alloc::vec;

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::unit::convert;
use crate::calc::{Detail, Document, Kind, Sheet, StepId, System, number, steps};

use super::size::{Size, Stud, Thread};

/// ASME B1.1, by way of the commentary of ACI 318-19.
static ASME_B1_1: Document = Document { short: "ASME B1.1", title: "ASME B1.1, Unified Inch Screw Threads" };
static ASME_B18_2_1: Document = Document {
    short: "ASME B18.2.1",
    title: "ASME B18.2.1, Square, Hex, Heavy Hex, and Askew Head Bolts and Hex, Heavy Hex, Hex Flange, Lobed Head, and Lag Screws (Inch Series)",
};
static ISO_898_1: Document = Document {
    short: "ISO 898-1",
    title: "ISO 898-1, Mechanical properties of fasteners made of carbon steel and alloy steel: bolts, screws and studs",
};
static ISO_4014: Document = Document { short: "ISO 4014", title: "ISO 4014, Hexagon head bolts" };
static AWS_D1_1: Document = Document { short: "AWS D1.1", title: "AWS D1.1, Structural Welding Code, Steel" };
static ISO_13918: Document =
    Document { short: "ISO 13918", title: "ISO 13918, Welding: studs and ceramic ferrules for arc stud welding" };

steps! { 64 "bolts";
    D_A "d_a" Length (INPUT "" Derived) "Diameter of the anchor": Given;
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    N_T "n_t" Empirical { force: 0, length: -6 } (ASME_B1_1 "" Derived) "Threads per length": Table;
    A_SE_UNIFIED "A_se" Area (ASME_B1_1 "ACI 318-19 R17.6.1.2" Secondary) "Effective cross section of the anchor" = "pi / 4 * (d_a - 0.9743 / n_t)^2";
    P "P" Length (ISO_898_1 "" Secondary) "Pitch of the thread": Table;
    A_SE_METRIC "A_se" Area (ISO_898_1 "9.1.6.1" Secondary) "Effective cross section of the anchor" = "pi / 4 * (d_a - 0.9382 * P)^2";
    A_SE_STUD "A_se" Area (STATICS "" Derived) "Cross section of the stud" = "pi / 4 * d_a^2";
    A_SE_GIVEN "A_se" Area (INPUT "" Derived) "Effective cross section of the anchor": Given;
    F_UNIFIED "F" Length (ASME_B18_2_1 "" Memory) "Width across flats of the hexagon head": Table;
    F_METRIC "F" Length (ISO_4014 "" Secondary) "Width across flats of the hexagon head": Table;
    F_0 "F_0" Length (ASME_B18_2_1 "" Secondary) "Constant part of the width across flats of the heavy series, 1/8 in.": Constant;
    F_HEAVY "F" Length (ASME_B18_2_1 "" Secondary) "Width across flats of the heavy hexagon head or nut" = "1.5 * d_a + F_0";
    A_BRG_HEXAGON "A_brg" Area (STATICS "" Derived) "Net bearing area of the head" = "sqrt(3) / 2 * F^2 - pi / 4 * d_a^2";
    D_H_US "d_h" Length (AWS_D1_1 "type B" Memory) "Diameter of the stud's head": Table;
    D_H_SI "d_h" Length (ISO_13918 "type SD" Memory) "Diameter of the stud's head": Table;
    A_BRG_STUD "A_brg" Area (STATICS "" Derived) "Net bearing area of the head" = "pi / 4 * (d_h^2 - d_a^2)";
    A_BRG_GIVEN "A_brg" Area (INPUT "" Derived) "Net bearing area of the head": Given;
}

/// A bolt or stud as chosen.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bolt {
    /// Its shank.
    pub shank: Shank,
    /// Its head or nut in the concrete.
    pub head: Head,
}

/// The shank of a bolt.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Shank {
    /// A row of the size tables.
    Listed(&'static Size),
    /// Measures that the user gives.
    Given {
        /// Diameter.
        diameter_mm: f64,
        /// Effective cross section.
        stress_area_mm2: f64,
    },
}

/// What holds the bolt in the concrete.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Head {
    /// The hexagon head of a bolt, or a stud's own head.
    Own,
    /// A heavy hexagon head or nut, inch series.
    HeavyHexagon,
    /// A washer, plate or other head of this net bearing area.
    Given {
        /// Area of the head less the area of the shank.
        bearing_area_mm2: f64,
    },
}

impl Bolt {
    /// Its diameter in units of the system.
    pub fn diameter(&self, system: System) -> f64 {
        match self.shank {
            Shank::Listed(size) => convert(size.diameter, Kind::Length, size.system, system),
            Shank::Given { diameter_mm, .. } => system.from_si(diameter_mm, Kind::Length),
        }
    }

    /// The stud's own head, where it is a stud.
    pub fn stud(&self) -> Option<Stud> {
        match self.shank {
            Shank::Listed(Size { thread: Thread::Stud(stud), .. }) => Some(*stud),
            _ => None,
        }
    }

    /// The effective cross section in units of the system, with the steps that lead to it.
    ///
    /// Clause: ACI 318-19 R17.6.1.2 for inch threads, ISO 898-1 for metric ones; the full shank of a welded stud.
    pub fn stress_area(&self, system: System, sheet: &mut Sheet) -> f64 {
        let d_a = sheet.step(D_A, self.diameter(system));
        let size = match self.shank {
            Shank::Listed(size) => size,
            Shank::Given { stress_area_mm2, .. } => {
                return sheet.step(A_SE_GIVEN, system.from_si(stress_area_mm2, Kind::Area));
            }
        };
        sheet.step(PI, core::f64::consts::PI);
        match size.thread {
            Thread::Unified { per_inch, .. } => {
                let per_length = Kind::Empirical { force: 0, length: -6 };
                let n_t = read(N_T, d_a, convert(per_inch, per_length, System::Us, system), sheet);
                let core = d_a - 0.9743 / n_t;
                sheet.step(A_SE_UNIFIED, core::f64::consts::PI / 4.0 * (core * core))
            }
            Thread::Metric { pitch_mm, .. } => {
                let pitch = read(P, d_a, system.from_si(pitch_mm, Kind::Length), sheet);
                let core = d_a - 0.9382 * pitch;
                sheet.step(A_SE_METRIC, core::f64::consts::PI / 4.0 * (core * core))
            }
            Thread::Stud(_) => sheet.step(A_SE_STUD, core::f64::consts::PI / 4.0 * (d_a * d_a)),
        }
    }

    /// The net bearing area of the head in units of the system, with the steps that lead to it.
    ///
    /// None where the size has no such head in the tables, so that the area must be given.
    pub fn bearing_area(&self, system: System, sheet: &mut Sheet) -> Option<f64> {
        if let Head::Given { bearing_area_mm2 } = self.head {
            return Some(sheet.step(A_BRG_GIVEN, system.from_si(bearing_area_mm2, Kind::Area)));
        }
        let Shank::Listed(size) = self.shank else { return None };
        let across = match (size.thread, self.head) {
            (Thread::Stud(stud), Head::Own) => {
                let d_a = sheet.step(D_A, self.diameter(system));
                sheet.step(PI, core::f64::consts::PI);
                let id = if size.system == System::Us { D_H_US } else { D_H_SI };
                let d_h = read(id, d_a, convert(stud.head, Kind::Length, size.system, system), sheet);
                return Some(sheet.step(A_BRG_STUD, core::f64::consts::PI / 4.0 * (d_h * d_h - d_a * d_a)));
            }
            (Thread::Unified { across_in, .. }, Head::Own) => Some((F_UNIFIED, across_in)),
            (Thread::Metric { across_mm, .. }, Head::Own) => Some((F_METRIC, across_mm)),
            // The heavy series begins at 1/2 in.
            (Thread::Unified { .. }, Head::HeavyHexagon) if size.diameter >= HEAVY_FROM_IN => None,
            _ => return None,
        };
        let d_a = sheet.step(D_A, self.diameter(system));
        sheet.step(PI, core::f64::consts::PI);
        let f = match across {
            Some((id, width)) => read(id, d_a, convert(width, Kind::Length, size.system, system), sheet),
            None => {
                let f_0 = sheet.step(F_0, convert(HEAVY_EXTRA_IN, Kind::Length, System::Us, system));
                sheet.step(F_HEAVY, 1.5 * d_a + f_0)
            }
        };
        Some(sheet.step(A_BRG_HEXAGON, number::sqrt(3.0) / 2.0 * (f * f) - core::f64::consts::PI / 4.0 * (d_a * d_a)))
    }
}

/// A value of the row of this diameter.
fn read(id: StepId, diameter: f64, value: f64, sheet: &mut Sheet) -> f64 {
    sheet.detailed(id, value, || Detail::Rows(vec![[diameter, value]]))
}

/// The heavy hexagon series begins here.
const HEAVY_FROM_IN: f64 = 0.5;
/// Width across flats of the heavy series is 1.5 d + 1/8 in.
const HEAVY_EXTRA_IN: f64 = 0.125;
