//! The fastener's steel: its thread, its head and its strengths.

use alloc::vec;

use super::document::{EN_1992_4, EN_1993_1_8};
use super::fields as f;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Detail, Document, Sheet, StepId, number, steps};
use crate::input::field::Values;
use crate::rules::bolts::{SIZE_WORDS, SIZES, STEEL_WORDS, STEELS, Size, Thread};

static ISO_898_1: Document = Document {
    short: "ISO 898-1",
    title: "ISO 898-1, Mechanical properties of fasteners made of carbon steel and alloy steel: bolts, screws and studs",
};
static ISO_4014: Document = Document { short: "ISO 4014", title: "ISO 4014, Hexagon head bolts" };
static ISO_13918: Document =
    Document { short: "ISO 13918", title: "ISO 13918, Welding: studs and ceramic ferrules for arc stud welding" };

steps! { 72 "EN 1992-4, fastener";
    D "d" Length (INPUT "" Derived) "Diameter of the fastener": Given;
    PI "pi" Number (STATICS "" Derived) "Circumference of a circle over its diameter": Constant;
    P "P" Length (ISO_898_1 "" Secondary) "Pitch of the thread": Table;
    A_S "A_s" Area (ISO_898_1 "9.1.6.1" Secondary) "Stressed cross section" = "pi / 4 * (d - 0.9382 * P)^2";
    A_S_STUD "A_s" Area (STATICS "" Derived) "Cross section of the stud" = "pi / 4 * d^2";
    A_S_GIVEN "A_s" Area (INPUT "" Derived) "Stressed cross section": Given;
    WIDTH "F" Length (ISO_4014 "" Secondary) "Width across flats of the hexagon head": Table;
    A_H_HEXAGON "A_h" Area (STATICS "" Derived) "Bearing area of the head" = "sqrt(3) / 2 * F^2 - pi / 4 * d^2";
    D_H_STUD "d_h" Length (ISO_13918 "type SD" Memory) "Diameter of the stud's head": Table;
    D_H_FULL "d_h_full" Length (INPUT "" Derived) "Diameter of the head": Given;
    T_H "t_h" Length (INPUT "" Derived) "Thickness of the head": Given;
    D_H "d_h" Length (EN_1992_4 "7.2.1.5" Memory) "Diameter of the head that bears, by its thickness" = "min(d_h_full, 6 * t_h + d)";
    A_H "A_h" Area (EN_1992_4 "7.2.1.5" Secondary) "Bearing area of the head" = "pi / 4 * (d_h^2 - d^2)";
    A_H_GIVEN "A_h" Area (INPUT "" Derived) "Bearing area of the head": Given;
    F_UK "f_uk" Stress (EN_1993_1_8 "Table 3.1" Memory) "Tensile strength of the property class": Table;
    F_YK "f_yk" Stress (EN_1993_1_8 "Table 3.1" Memory) "Yield strength of the property class": Table;
    F_UK_GIVEN "f_uk" Stress (INPUT "" Derived) "Tensile strength of the steel": Given;
    F_YK_GIVEN "f_yk" Stress (INPUT "" Derived) "Yield strength of the steel": Given;
}

/// What holds a cast-in fastener in the concrete.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Head {
    /// The hexagon head of a bolt or the stud's own head.
    Own,
    /// A round washer or plate.
    Round {
        /// Its diameter.
        diameter_mm: f64,
        /// Its thickness.
        thickness_mm: f64,
    },
    /// Its bearing area.
    Given {
        /// The area.
        area_mm2: f64,
    },
}

/// The steel of a fastener.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Steel {
    /// Tensile strength.
    pub f_uk: f64,
    /// Yield strength.
    pub f_yk: f64,
    /// Rupture elongation in per cent, where it is known.
    pub a_5: Option<f64>,
    /// Whether the strengths were given by the user.
    pub is_given: bool,
}

/// A fastener as chosen.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bolt {
    size: Option<&'static Size>,
    /// Diameter.
    pub d: f64,
    stress_area_mm2: f64,
    head: Head,
    /// Its steel.
    pub steel: Steel,
}

/// Rupture elongation of the listed steels in per cent: ISO 898-1 and, for studs, ISO 13918, from memory.
const ELONGATIONS: [f64; 6] = [22.0, 20.0, 10.0, 12.0, 9.0, 15.0];

/// The row of the size tables; none where the measures are given.
pub fn size(values: &Values) -> Option<&'static Size> {
    let word = f::BOLT_WORDS.get(values.choice(f::BOLT)?)?;
    SIZE_WORDS.iter().position(|known| known == word).and_then(|place| SIZES.get(place))
}

impl Bolt {
    /// The fastener that the values speak of; a missing measure, which is a fault of the input, has no value.
    pub fn new(values: &Values) -> Bolt {
        let size = size(values);
        let given = |field: usize| values.number(field).unwrap_or(f64::NAN);
        Bolt {
            size,
            d: size.map_or(given(f::DIAMETER), |size| size.diameter),
            stress_area_mm2: given(f::STRESS_AREA),
            head: match values.choice(f::HEAD) {
                Some(f::HEAD_ROUND) => {
                    Head::Round { diameter_mm: given(f::HEAD_DIAMETER), thickness_mm: given(f::HEAD_THICKNESS) }
                }
                Some(f::HEAD_GIVEN) => Head::Given { area_mm2: given(f::BEARING_AREA) },
                _ => Head::Own,
            },
            steel: steel(values),
        }
    }

    /// The stressed cross section, with the steps that lead to it.
    pub fn stress_area(&self, sheet: &mut Sheet) -> f64 {
        let d = sheet.step(D, self.d);
        let Some(size) = self.size else { return sheet.step(A_S_GIVEN, self.stress_area_mm2) };
        let pi = sheet.step(PI, core::f64::consts::PI);
        let Thread::Metric { pitch_mm, .. } = size.thread else { return sheet.step(A_S_STUD, pi / 4.0 * (d * d)) };
        let core = d - 0.9382 * read(P, d, pitch_mm, sheet);
        sheet.step(A_S, pi / 4.0 * (core * core))
    }

    /// The bearing area of the head, with the steps that lead to it.
    pub fn bearing_area(&self, sheet: &mut Sheet) -> f64 {
        let d = sheet.step(D, self.d);
        let d_h = match (self.head, self.size.map(|size| size.thread)) {
            (Head::Given { area_mm2 }, _) => return sheet.step(A_H_GIVEN, area_mm2),
            (Head::Round { diameter_mm, thickness_mm }, _) => {
                let full = sheet.step(D_H_FULL, diameter_mm);
                let t_h = sheet.step(T_H, thickness_mm);
                sheet.step(D_H, full.min(6.0 * t_h + d))
            }
            (Head::Own, Some(Thread::Stud(stud))) => read(D_H_STUD, d, stud.head, sheet),
            (Head::Own, Some(Thread::Metric { across_mm, .. })) => {
                let width = read(WIDTH, d, across_mm, sheet);
                let pi = sheet.step(PI, core::f64::consts::PI);
                let area = number::sqrt(3.0) / 2.0 * (width * width) - pi / 4.0 * (d * d);
                return sheet.step(A_H_HEXAGON, area);
            }
            (Head::Own, _) => return f64::NAN,
        };
        let pi = sheet.step(PI, core::f64::consts::PI);
        sheet.step(A_H, pi / 4.0 * (d_h * d_h - d * d))
    }

    /// Tensile strength of its steel, recorded.
    pub fn tensile(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(if self.steel.is_given { F_UK_GIVEN } else { F_UK }, self.steel.f_uk)
    }

    /// Yield strength of its steel, recorded.
    pub fn yielding(&self, sheet: &mut Sheet) -> f64 {
        sheet.step(if self.steel.is_given { F_YK_GIVEN } else { F_YK }, self.steel.f_yk)
    }
}

fn steel(values: &Values) -> Steel {
    let place = values.choice(f::STEEL).unwrap_or(f::STEEL_WORDS.len());
    let word = f::STEEL_WORDS.get(place);
    let listed = word.and_then(|word| STEEL_WORDS.iter().position(|known| known == word));
    match listed.and_then(|listed| STEELS.get(listed)) {
        Some(steel) => Steel {
            f_uk: steel.tensile_mpa(),
            f_yk: steel.yield_mpa().unwrap_or(f64::NAN),
            a_5: ELONGATIONS.get(place).copied(),
            is_given: false,
        },
        // A missing strength is a fault of the input; it must never become a strength.
        None => Steel {
            f_uk: values.number(f::TENSILE).unwrap_or(f64::NAN),
            f_yk: values.number(f::YIELD).unwrap_or(f64::NAN),
            a_5: values.number(f::ELONGATION),
            is_given: true,
        },
    }
}

/// A value of the row of this diameter.
fn read(id: StepId, diameter: f64, value: f64, sheet: &mut Sheet) -> f64 {
    sheet.detailed(id, value, || Detail::Rows(vec![[diameter, value]]))
}
