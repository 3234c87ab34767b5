//! What stands beside the following in time: sliding, criteria of the literature, approximate methods.

use alloc::vec;
use alloc::vec::Vec;

use super::free_body::FreeBody;
use super::rocking::{self, LEAVES};
use super::shaking::Shaking;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Kind, Part, Sheet, StepId, Subject, System, number, steps};
use crate::motion::{
    FREE_FALL_MM_PER_S2, Grip, Pulse, PulseForm, Record, Scaled, Side, SlidingEstimate, SpectrumSetting, criteria,
    response, rocking_angle, rocking_capacity, slide, sliding_distance_mm, spectrum,
};
use crate::report::table::{Cell, Column, Line, Table, columns};
use core::f64::consts::PI;

steps! { 182 "beside rocking";
    SLIDING "" Number (STATICS "" Derived) "sliding, followed apart from rocking": Name;
    FRICTION "" Number (INPUT "slab" Derived) "friction": Name;
    ROUND "" Number (STATICS "" Derived) "motion": Name;
    AS_IT_IS "" Number (STATICS "" Derived) "as it is": Name;
    BY_ASCE "" Number (STATICS "" Memory) "ASCE/SEI 43-05, approximate, of this direction alone": Name;
    TURNED "" Number (STATICS "" Derived) "turned round": Name;
    SLIDES "" Number (STATICS "" Derived) "slides at most": Name;
    RESTS "" Number (STATICS "" Derived) "comes to rest at": Name;
    SLIDES_ON "" Number (STATICS "" Derived) "does not come to rest: nothing holds it": Name;
    BESIDE "" Number (STATICS "" Derived) "quick criteria for the worst, over its nearer edge": Name;
    CRITERION "" Number (STATICS "" Derived) "criterion": Name;
    ACCELERATION "" Number (STATICS "" Derived) "acceleration": Name;
    VELOCITY "" Number (STATICS "" Derived) "velocity": Name;
    THE_MOTION "" Number (INPUT "motion" Derived) "peak of the motion tried": Name;
    WEST "" Number (STATICS "" Memory) "West: lifts an edge": Name;
    ISHIYAMA "" Number (STATICS "" Memory) "Ishiyama: falls only where both are exceeded": Name;
    HOUSNER "" Number (STATICS "" Memory) "Housner: half of such bodies fall at this undamped spectral velocity": Name;
    KANEKO "" Number (STATICS "" Memory) "Kaneko and Hayashi: half of such furniture falls": Name;
    STEP "" Number (STATICS "" Derived) "a floor that jumps to this velocity, or wheels that stop dead from it": Name;
    ASCE "" Number (STATICS "" Memory) "ASCE/SEI 43-05, approximate: largest angle over that of falling": Name;
    ANGLE "" Number (STATICS "" Derived) "angle over that of falling": Name;
}

/// Peak and rest for both frictions and both signs, and for a record the estimate beside them.
pub(super) fn sliding_table(motion: &Shaking, frictions: [f64; 2]) -> Table {
    let mut rows = Vec::new();
    for friction in frictions {
        let mut add = |way: StepId, slides: Cell, rests: Cell| {
            rows.push(Line::plain(vec![Cell::Number(friction), Cell::Name(way), slides, rests]));
        };
        for (sign, row) in [(1.0, AS_IT_IS), (-1.0, TURNED)] {
            let grip = Grip { standing: friction, sliding: friction, free_fall_mm_per_s2: FREE_FALL_MM_PER_S2 };
            let slid = slide(&grip, &Scaled { motion, horizontal: sign, vertical: 1.0 });
            if slid.is_weightless {
                add(row, Cell::Name(LEAVES), Cell::Nothing);
            } else if slid.never_rests {
                add(row, Cell::Name(SLIDES_ON), Cell::Nothing);
            } else {
                add(row, Cell::Number(slid.peak_mm), Cell::Number(slid.residual_mm));
            }
        }
        if let Some((record, factor)) = motion.record() {
            let estimate = SlidingEstimate {
                friction,
                vertical: motion.vertical_peak(),
                free_fall_mm_per_s2: FREE_FALL_MM_PER_S2,
            };
            let demand = |frequency_hz: f64| {
                factor.abs() * response(record, 1.0 / frequency_hz, &SpectrumSetting::of(0.1)).acceleration
            };
            // The scan is long where the spectrum stays below; a few periods tell that beforehand.
            let most = spectrum(record, [0.02, 20.0], 60, &SpectrumSetting::of(0.1));
            // The vertical motion takes friction away, so that less is enough.
            let enough = 2.0 * friction * (1.0 - 0.4 * estimate.vertical);
            let reaches = most.iter().any(|one| factor.abs() * one.acceleration >= enough);
            let found = reaches.then(|| sliding_distance_mm(&estimate, &demand, &mut Sheet::quiet())).flatten();
            add(BY_ASCE, found.map_or(Cell::Nothing, Cell::Number), Cell::Nothing);
        }
    }
    let columns = columns![
        Column::nearest(FRICTION, Kind::Number),
        Column::words(ROUND),
        Column::up(SLIDES, Kind::Length),
        Column::nearest(RESTS, Kind::Length),
    ];
    Table { name: SLIDING, columns, rows }
}

fn nearer(one: &FreeBody) -> Side {
    if one.body.right_mm <= one.body.left_mm { Side::Right } else { Side::Left }
}

/// Peak acceleration and velocity of the motion.
fn peaks(motion: &Shaking) -> (f64, f64) {
    match motion {
        Shaking::Record(record, factor) => {
            let facts = record.horizontal.facts();
            (facts.peak * factor.abs(), facts.velocity_mm_per_s * factor.abs())
        }
        Shaking::Pulse(Pulse { form, amplitude, duration_s }) => {
            // The way under the acceleration up to where it changes its sign.
            let share = match form {
                PulseForm::Rectangle => 1.0,
                PulseForm::HalfSine => 2.0 / PI,
                PulseForm::OneSine => 1.0 / PI,
                PulseForm::OneCosine => 1.0 / (2.0 * PI),
            };
            (*amplitude, amplitude * share * duration_s * FREE_FALL_MM_PER_S2)
        }
    }
}

/// The criteria beside the peaks of the motion.
pub(super) fn beside_table(one: &FreeBody, motion: &Shaking) -> Table {
    let (peak, velocity) = peaks(motion);
    let floor_hz = (velocity > 0.0).then(|| peak * FREE_FALL_MM_PER_S2 / (2.0 * PI * velocity));
    let found = criteria(&one.body, nearer(one), floor_hz, &mut Sheet::quiet());
    let line = |name, acceleration: Cell, velocity: Cell, angle: Cell| {
        Line::plain(vec![Cell::Name(name), acceleration, velocity, angle])
    };
    let mut rows = vec![
        Line {
            cells: vec![Cell::Name(THE_MOTION), Cell::Number(peak), Cell::Number(velocity), Cell::Nothing],
            is_marked: true,
        },
        line(WEST, Cell::Number(found.west), Cell::Nothing, Cell::Nothing),
        line(ISHIYAMA, Cell::Number(found.west), Cell::Number(found.ishiyama_mm_per_s), Cell::Nothing),
        line(HOUSNER, Cell::Nothing, Cell::Number(found.housner_mm_per_s), Cell::Nothing),
        line(KANEKO, Cell::Number(found.kaneko), Cell::Nothing, Cell::Nothing),
        line(STEP, Cell::Nothing, Cell::Number(found.step_mm_per_s), Cell::Nothing),
    ];
    if motion.record().is_some() {
        let alpha_rad = one.body.edge(nearer(one)).alpha_rad;
        let angle = approximate(one, motion).map_or(Cell::Nothing, |(angle, _)| match angle {
            crate::motion::Rocking::Found { angle_rad, .. } => rocking::number(angle_rad / alpha_rad),
            crate::motion::Rocking::At(_) => Cell::Nothing,
        });
        rows.push(line(ASCE, Cell::Nothing, Cell::Nothing, angle));
    }
    let columns = columns![
        Column::words(CRITERION),
        Column::down(ACCELERATION, Kind::Acceleration),
        Column::down(VELOCITY, Kind::Velocity),
        Column::up(ANGLE, Kind::Utilisation),
    ];
    Table { name: BESIDE, columns, rows }
}

/// The angle of the approximate method, and its factor for the vertical motion there, sqrt(1 + (a S_V / S_H)^2).
///
/// The factor depends on the frequency, so the search compares what bears without it to the demand times it.
fn approximate(one: &FreeBody, motion: &Shaking) -> Option<(crate::motion::Rocking, f64)> {
    let (record, factor) = motion.record()?;
    let spectral = |record: &Record, frequency_hz: f64, damping: f64| {
        factor.abs() * response(record, 1.0 / frequency_hz, &SpectrumSetting::of(damping)).acceleration
    };
    let side = nearer(one);
    let upwards = |frequency_hz: f64, damping: f64| {
        let vertical = motion.vertical().map_or(0.0, |vertical| spectral(vertical, frequency_hz, damping));
        one.body.edge(side).uplift * vertical
    };
    let demand = |frequency_hz: f64, damping: f64| {
        number::hypot(spectral(record, frequency_hz, damping), upwards(frequency_hz, damping))
    };
    let found = rocking_angle(&one.body, side, 1.0, &demand)?;
    let there = rocking_capacity(&one.body, side, found, 1.0, &mut Sheet::quiet());
    let (f_e, beta_e) = (there.frequency_hz, there.damping);
    let alone = spectral(record, f_e, beta_e);
    Some((found, if alone > 0.0 { demand(f_e, beta_e) / alone } else { 1.0 }))
}

/// The working of the criteria, and of the approximate method where there is a record.
pub(super) fn tell_beside(one: &FreeBody, motion: &Shaking, sheet: &mut Sheet) {
    let (peak, velocity) = peaks(motion);
    let floor_hz = (velocity > 0.0).then(|| peak * FREE_FALL_MM_PER_S2 / (2.0 * PI * velocity));
    sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
    criteria(&one.body, nearer(one), floor_hz, sheet);
    if let Some((angle, factor)) = approximate(one, motion) {
        sheet.open(Part::StandingFree, Subject::Whole, None, System::Si);
        rocking_capacity(&one.body, nearer(one), angle, factor, sheet);
    }
}
