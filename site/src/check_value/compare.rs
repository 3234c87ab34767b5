//! A printed number beside the one that was found.

use serde_json::Value as Json;

use super::unit::base_per_unit;
use super::{Answers, Expect};

/// A printed number and the one that was found, in the unit of the print.
#[derive(Clone, Debug)]
pub struct Compared {
    /// As printed.
    pub printed: String,
    /// What the print says.
    pub expected: f64,
    /// What was found.
    pub found: f64,
    /// How far apart they may be.
    pub tolerance: f64,
}

impl Compared {
    /// A print that is met within half of its last digit.
    pub fn new(printed: &str, found: f64) -> Result<Self, String> {
        let expected = number(printed)?;
        Ok(Self { printed: printed.into(), expected, found, tolerance: half_last_digit(printed)? })
    }

    /// Whether the print is met. The slack covers a print that lies exactly half a digit away.
    pub fn is_met(&self) -> bool {
        (self.found - self.expected).abs() <= self.tolerance * (1.0 + 1e-9) + 1e-12 * self.expected.abs()
    }

    /// What was found, with one digit more than the print shows.
    pub fn found_text(&self) -> String {
        let decimals = |text: &str| text.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        format!("{:.*}", decimals(&self.printed) + 1, self.found).replace('-', "\u{2212}")
    }
}

impl Expect {
    /// The print beside what the answers hold at its address.
    pub fn compared(&self, answers: &Answers) -> Result<Compared, String> {
        let found = answers.get(&self.at).ok_or_else(|| {
            format!("nothing found at {}; there is {}", self.at, answers.keys().cloned().collect::<Vec<_>>().join(", "))
        })?;
        let printed = match &self.value {
            Json::String(text) => text.clone(),
            Json::Number(number) => number.to_string(),
            other => return Err(format!("{}: {other} is no number", self.at)),
        };
        let expected = number(&printed)?;
        let per_unit = base_per_unit(&self.unit, found.kind)?;
        let value = found.value / per_unit * self.times.unwrap_or(1.0) / self.divided_by.unwrap_or(1.0);
        let tolerance = self.tolerance.map_or_else(|| half_last_digit(&printed), Ok)?;
        Ok(Compared { printed, expected, found: value, tolerance })
    }
}

fn number(printed: &str) -> Result<f64, String> {
    printed.replace(',', "").parse().map_err(|_| format!("{printed} is no number"))
}

fn half_last_digit(printed: &str) -> Result<f64, String> {
    let (mantissa, power) = printed.split_once(['e', 'E']).unwrap_or((printed, "0"));
    let power: i32 = power.parse().map_err(|_| format!("{printed} is no number"))?;
    let decimals = mantissa.split_once('.').map_or(0, |(_, decimals)| decimals.len() as i32);
    Ok(0.5 * 10f64.powi(power - decimals))
}
