//! The response spectrum of a record: the highest answer of oscillators of every period to the same shaking.

use alloc::vec::Vec;

use super::body::FREE_FALL_MM_PER_S2;
use super::oscillator::Oscillator;
use super::record::Record;
use crate::calc::number;

/// The highest response of one oscillator to a record.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Response {
    /// Its natural period.
    pub period_s: f64,
    /// The largest displacement over the floor.
    pub displacement_mm: f64,
    /// That displacement times the angular frequency.
    pub velocity_mm_per_s: f64,
    /// That displacement times its square, in multiples of g: the pseudo-acceleration of codes.
    pub acceleration: f64,
}

/// How a spectrum is made.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SpectrumSetting {
    /// Damping, as a share of the critical one, from 0 to less than 1.
    pub damping: f64,
    /// Acceleration of free fall.
    pub free_fall_mm_per_s2: f64,
    /// Each step of the record is looked at so many times: 1 only at its values, as printed tables are.
    pub looks: usize,
}

impl SpectrumSetting {
    /// Of a damping, looked at often enough that the tops of short periods are not missed.
    pub fn of(damping: f64) -> SpectrumSetting {
        SpectrumSetting { damping, free_fall_mm_per_s2: FREE_FALL_MM_PER_S2, looks: 0 }
    }
}

/// The shortest step between two looks, as a part of the period.
const LOOKS_IN_A_PERIOD: f64 = 40.0;

/// The highest response of an oscillator of this period, exactly integrated.
///
/// With `looks` 0 each step of the record is cut until a period has at least forty looks. Periods in s, accelerations in
/// multiples of g; the record is taken as straight between its values (Nigam and Jennings).
///
/// ```
/// use steadfoot::motion::{Record, SpectrumSetting, response};
/// let record = Record { step_s: 0.01, accelerations: vec![0.0, 0.1, 0.2, 0.1, 0.0, 0.0, 0.0] };
/// // What is very stiff moves as the floor does.
/// assert!((response(&record, 0.001, &SpectrumSetting::of(0.05)).acceleration - 0.2).abs() < 0.01);
/// ```
pub fn response(record: &Record, period_s: f64, setting: &SpectrumSetting) -> Response {
    let oscillator = Oscillator::of_period(period_s, setting.damping);
    let looks = match setting.looks {
        0 => number::ceil(record.step_s * LOOKS_IN_A_PERIOD / period_s).max(1.0) as usize,
        looks => looks,
    };
    let recurrence = oscillator.recurrence(record.step_s / looks as f64);
    let squared = oscillator.omega_rad_per_s * oscillator.omega_rad_per_s;
    // Over the stiffness of a unit mass.
    let of_g = -setting.free_fall_mm_per_s2 / squared;
    let (mut at, mut most) = ([0.0; 2], 0.0);
    for pair in record.accelerations.windows(2) {
        let (start, change) = (pair[0] * of_g, (pair[1] - pair[0]) * of_g / looks as f64);
        for look in 0..looks {
            at = recurrence.next(at, start + change * look as f64, start + change * (look + 1) as f64);
            most = f64::max(most, at[0].abs());
        }
    }
    Response {
        period_s,
        displacement_mm: most,
        velocity_mm_per_s: most * oscillator.omega_rad_per_s,
        acceleration: most * squared / setting.free_fall_mm_per_s2,
    }
}

/// Responses at periods that rise evenly in their logarithm, both ends among them.
pub fn spectrum(record: &Record, ends_s: [f64; 2], count: usize, setting: &SpectrumSetting) -> Vec<Response> {
    let rise = number::ln(ends_s[1] / ends_s[0]);
    let periods = (0..count).map(|place| {
        let share = place as f64 / (count.max(2) - 1) as f64;
        ends_s[0] * number::exp(rise * share)
    });
    periods.map(|period_s| response(record, period_s, setting)).collect()
}
