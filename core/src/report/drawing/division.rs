use alloc::string::String;
use alloc::vec::Vec;

use crate::calc::decimal::push_decimal;
use crate::calc::number::{ceil, floor, log10, pow};
use crate::calc::show::{Rounding, plain_per_si};
use crate::calc::{Kind, System};
use crate::report::plot::AxisScale;

/// An axis as it is divided: where its numbers come to lie, and its ticks.
#[derive(Clone, Debug)]
pub struct Division {
    scale: AxisScale,
    /// Ends in SI.
    pub ends: [f64; 2],
    /// Places in px of the ends.
    pub px: [f64; 2],
    /// Ticks: value in SI, and its text; no text for the lines between.
    pub ticks: Vec<(f64, String)>,
}

/// About so many px between two ticks with a number.
const APART_PX: f64 = 62.0;

impl Division {
    /// Divides an axis. Ends that are not given are widened to full ticks.
    pub fn new(scale: AxisScale, kind: Kind, system: System, fit: Fit) -> Division {
        let factor = plain_per_si(kind, system);
        let mut low = fit.low * factor;
        let mut high = fit.high * factor;
        if scale == AxisScale::Log {
            return Division::log(factor, [low, high], fit);
        }
        if !(high > low) {
            high = low + if low == 0.0 { 1.0 } else { 0.1 * low.abs() };
        }
        let count = ((fit.px[1] - fit.px[0]).abs() / APART_PX).max(2.0);
        let step = even_step((high - low) / count);
        if fit.is_widened {
            low = step * floor(low / step + 1e-9);
            high = step * ceil(high / step - 1e-9);
        }
        let decimals = (-floor(log10(step) + 1e-9)).max(0.0) as u8;
        let mut ticks = Vec::new();
        let mut place = ceil(low / step - 1e-9);
        while place * step <= high + 1e-9 * step {
            ticks.push((place * step / factor, decimal_text(place * step, decimals)));
            place += 1.0;
        }
        Division { scale, ends: [low / factor, high / factor], px: fit.px, ticks }
    }

    fn log(factor: f64, [low, high]: [f64; 2], fit: Fit) -> Division {
        let (mut low, mut high) = (low.max(1e-12), high.max(1e-12));
        if !(high > low) {
            (low, high) = (low / 2.0, high * 2.0);
        }
        if fit.is_widened {
            low = pow(10.0, floor(log10(low) + 1e-9));
            high = pow(10.0, ceil(log10(high) - 1e-9));
        }
        let decades = log10(high / low);
        let is_fine = (fit.px[1] - fit.px[0]).abs() / decades.max(0.1) > 3.0 * APART_PX * 0.7;
        let mut ticks = Vec::new();
        let mut decade = floor(log10(low) + 1e-9);
        while pow(10.0, decade) <= high * (1.0 + 1e-9) {
            for digit in 1..=9 {
                let value = f64::from(digit) * pow(10.0, decade);
                if value < low * (1.0 - 1e-9) || value > high * (1.0 + 1e-9) {
                    continue;
                }
                let is_written = digit == 1 || is_fine && (digit == 2 || digit == 5);
                let decimals = (-decade).max(0.0) as u8;
                let text = if is_written { decimal_text(value, decimals) } else { String::new() };
                ticks.push((value / factor, text));
            }
            decade += 1.0;
        }
        Division { scale: AxisScale::Log, ends: [low / factor, high / factor], px: fit.px, ticks }
    }

    /// Where a number comes to lie, in px; not finite where it cannot be shown.
    pub fn place(&self, value: f64) -> f64 {
        let [low, high] = self.ends;
        let part = match self.scale {
            AxisScale::Linear => (value - low) / (high - low),
            AxisScale::Log if value > 0.0 => log10(value / low) / log10(high / low),
            AxisScale::Log => f64::NAN,
        };
        self.px[0] + part * (self.px[1] - self.px[0])
    }
}

/// What an axis has to hold.
#[derive(Clone, Copy, Debug)]
pub struct Fit {
    /// The smallest number, in SI.
    pub low: f64,
    /// The largest.
    pub high: f64,
    /// Places in px of both ends.
    pub px: [f64; 2],
    /// Whether the ends may be moved out to full ticks.
    pub is_widened: bool,
}

/// The next larger of 1, 2, 5 times a power of ten.
fn even_step(least: f64) -> f64 {
    let power = pow(10.0, floor(log10(least.max(1e-300))));
    let digit = least / power;
    power
        * if digit <= 1.0 {
            1.0
        } else if digit <= 2.0 {
            2.0
        } else if digit <= 5.0 {
            5.0
        } else {
            10.0
        }
}

fn decimal_text(value: f64, decimals: u8) -> String {
    let mut text = String::new();
    if value < 0.0 {
        text.push('−');
    }
    push_decimal(&mut text, value.abs(), decimals, Rounding::Nearest, false);
    text
}
