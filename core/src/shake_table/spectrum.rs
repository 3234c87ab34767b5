//! A required response spectrum, whichever document it comes from.

use alloc::vec::Vec;

use super::ac156::{self, Form, Levels, Place};
use super::telecom::Knot;
use super::{fields, ieee_693, telecom};
use crate::calc::{Part, Sheet, StepId, Subject, System};
use crate::input::Values;

/// What a shake table must show.
#[derive(Clone, Copy, Debug)]
pub struct Spectrum {
    curve: Curve,
    /// Damping at which it is drawn, in per cent of critical.
    pub damping_percent: f64,
}

#[derive(Clone, Copy, Debug)]
enum Curve {
    Ac156(Levels),
    Ieee693 { zpa: f64, beta: f64 },
    Telecom(&'static [Knot]),
}

/// Which way the table moves.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Axis {
    /// Along either side of the table.
    Horizontal,
    /// Up and down.
    Vertical,
}

/// What a test asks for, in the order of the words of the field `spectrum`.
enum Asked {
    Ac156(Form),
    Ieee693 { zpa: f64 },
    Telecom(&'static [Knot]),
    NoTest(fn(&mut Sheet) -> StepId),
}

static ASKED: [Asked; 11] = [
    Asked::Ac156(Form::Asce716),
    Asked::Ac156(Form::Asce722),
    Asked::NoTest(ieee_693::no_test),
    Asked::Ieee693 { zpa: 0.25 },
    Asked::Ieee693 { zpa: 0.5 },
    Asked::Ieee693 { zpa: 0.5 },
    Asked::Ieee693 { zpa: 1.0 },
    Asked::NoTest(telecom::no_test),
    Asked::Telecom(telecom::ZONE_1_2),
    Asked::Telecom(telecom::ZONE_3),
    Asked::Telecom(telecom::ZONE_4),
];

/// How many tests there are: words of the field `spectrum`.
pub const TESTS: usize = ASKED.len();

/// From here to there spectra are drawn where their documents give no end, Hz.
const DRAWN_HZ: [f64; 2] = [0.1, 50.0];
/// Steps of a drawn curve in a tenfold of frequency.
const PER_DECADE: f64 = 40.0;

/// What a spectrum is made of beside the test itself.
#[derive(Clone, Debug)]
pub struct Basis {
    /// Strengths and heights that AC156 is asked for; none where S_DS is not known.
    pub places: Vec<Place>,
    /// Damping for IEEE 693, in per cent of critical.
    pub damping_percent: f64,
}

impl Basis {
    /// The basis that a project's `shake_table` gives.
    pub fn of(values: &Values) -> Basis {
        let pair =
            |s_ds: usize, ratio: usize| Some(Place { s_ds: values.number(s_ds)?, height_ratio: values.number(ratio)? });
        let places = [pair(fields::S_DS, fields::HEIGHT_RATIO), pair(fields::S_DS_2, fields::HEIGHT_RATIO_2)];
        Basis { places: places.into_iter().flatten().collect(), damping_percent: values.given(fields::DAMPING) }
    }
}

/// What spectrum a test must show, by the place of its word; the reason where a test asks for none.
///
/// Tells one section, or three where AC156 covers two places.
pub fn spectrum(test: usize, basis: &Basis, sheet: &mut Sheet) -> Result<Spectrum, StepId> {
    open(sheet);
    match &ASKED[test] {
        Asked::NoTest(tell) => Err(tell(sheet)),
        Asked::Telecom(knots) => Ok(Spectrum { curve: Curve::Telecom(knots), damping_percent: 2.0 }),
        Asked::Ieee693 { zpa } => {
            let beta = ieee_693::beta(basis.damping_percent, sheet);
            Ok(Spectrum { curve: Curve::Ieee693 { zpa: *zpa, beta }, damping_percent: basis.damping_percent })
        }
        Asked::Ac156(form) => {
            let Some((first, others)) = basis.places.split_first() else {
                sheet.step(ac156::NO_S_DS, 0.0);
                return Err(ac156::NO_S_DS);
            };
            let mut levels = ac156::levels(*form, *first, sheet);
            for place in others {
                open(sheet);
                let other = ac156::levels(*form, *place, sheet);
                open(sheet);
                levels = ac156::larger(levels, other, sheet);
            }
            Ok(Spectrum { curve: Curve::Ac156(levels), damping_percent: 5.0 })
        }
    }
}

fn open(sheet: &mut Sheet) {
    sheet.open(Part::ShakeTable, Subject::Whole, None, System::Si);
}

impl Spectrum {
    /// The required acceleration at a frequency in Hz, g; the reason where the spectrum says nothing. Tells one section.
    pub fn at(&self, axis: Axis, frequency_hz: f64, sheet: &mut Sheet) -> Result<f64, StepId> {
        open(sheet);
        match self.curve {
            Curve::Ac156(levels) => {
                let levels = if axis == Axis::Horizontal { levels.horizontal } else { levels.vertical };
                ac156::at(levels, frequency_hz, sheet)
            }
            Curve::Ieee693 { zpa, beta } => {
                let horizontal = ieee_693::at(zpa, beta, frequency_hz, sheet);
                Ok(match axis {
                    Axis::Horizontal => horizontal,
                    Axis::Vertical => ieee_693::vertical(horizontal, sheet),
                })
            }
            Curve::Telecom(knots) => telecom::at(knots, frequency_hz, sheet),
        }
    }

    /// The acceleration of the table itself, to which the spectrum falls for what is rigid, g. Tells one section.
    pub fn rigid(&self, axis: Axis, sheet: &mut Sheet) -> Result<f64, StepId> {
        // Every spectrum is level well before 50 Hz, where the zones of telecommunications end.
        self.at(axis, DRAWN_HZ[1], sheet)
    }

    /// The knots of the spectrum, Hz.
    pub fn knots_hz(&self) -> Vec<f64> {
        match self.curve {
            Curve::Ac156(_) => ac156::KNOTS_HZ.into(),
            Curve::Ieee693 { .. } => ieee_693::KNOTS_HZ.into(),
            Curve::Telecom(knots) => knots.iter().map(|knot| knot[0]).collect(),
        }
    }

    /// The frequency at and above a given one at which the spectrum asks for most, weighed by `weight(frequency, acceleration)`.
    ///
    /// Between knots the spectra are powers of the frequency, or fall, so the most stands at the given frequency or at a knot.
    pub fn most_from(&self, from_hz: f64, weight: fn(f64, f64) -> f64) -> f64 {
        let mut best = (from_hz, f64::NEG_INFINITY);
        for frequency in core::iter::once(from_hz).chain(self.knots_hz().into_iter().filter(|&knot| knot > from_hz)) {
            let weighed = self.at(Axis::Horizontal, frequency, &mut Sheet::quiet()).map(|a| weight(frequency, a));
            if let Ok(weighed) = weighed
                && weighed > best.1
            {
                best = (frequency, weighed);
            }
        }
        best.0
    }

    /// Where the spectrum is drawn, Hz.
    pub fn drawn_hz(&self) -> [f64; 2] {
        match self.curve {
            Curve::Telecom(knots) => [knots[0][0], knots[knots.len() - 1][0]],
            _ => DRAWN_HZ,
        }
    }

    /// The spectrum as a line through points of frequency and acceleration, knots included.
    pub fn line(&self, axis: Axis) -> Vec<[f64; 2]> {
        let [from, to] = self.drawn_hz();
        let mut frequencies = self.knots_hz();
        frequencies.push(from);
        frequencies.push(to);
        let count = crate::calc::number::ceil(crate::calc::number::log10(to / from) * PER_DECADE) as usize;
        frequencies
            .extend((1..count).map(|step| from * crate::calc::number::pow(to / from, step as f64 / count as f64)));
        crate::calc::order::put_in_order(&mut frequencies, f64::total_cmp);
        frequencies.dedup();
        let point = |f: f64| Some([f, self.at(axis, f, &mut Sheet::quiet()).ok()?]);
        frequencies.into_iter().filter_map(point).collect()
    }

    /// The frequency from which a test must reach the spectrum, Hz, where it is not agreed. Tells one section.
    pub fn matched_from_hz(&self, lowest_hz: Option<f64>, sheet: &mut Sheet) -> f64 {
        open(sheet);
        match self.curve {
            Curve::Ac156(_) => ac156::matched_from_hz(lowest_hz, sheet),
            _ => sheet.step(super::rig::F_LOW_PRACTICE, 1.0),
        }
    }
}
