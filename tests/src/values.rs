//! The check values: blocks of data with their source, the units they are printed in, and the comparison.
//!
//! A file `values/*.json` is a list of blocks:
//!
//! ```json
//! { "block": "R1", "source": "document, page", "trust": "published | secondary | memory | derived", "note": "cautions",
//!   "runs": "demand", "input": { "weight": "520 lbf", "rule": "..." },
//!   "expect": [ { "at": "F_p", "value": "281", "unit": "lbf", "tolerance": 1, "why": "printed from a rounded coefficient" } ] }
//! ```
//!
//! `value` is the text as printed: it is met within half its last digit, or within `tolerance`, which then needs a `why`.
//! `times` or `divided_by` is what the source does with the result before it prints it. Quantities of the input are
//! numbers in the unit of their field, or texts with a unit.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use serde::Deserialize;
use serde_json::Value as Json;
use steadfoot::calc::unit::{FOOT_M, INCH_MM, LB_KG, LBF_N, MILE_KM, PSI_MPA};
use steadfoot::calc::{Dimension, Kind};
use steadfoot::input::{Absent, Field, FieldShape, Value, Values};

/// One block of check values.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Block {
    pub block: String,
    pub source: String,
    pub trust: String,
    #[serde(default)]
    pub note: String,
    pub runs: String,
    pub input: Json,
    pub expect: Vec<Expect>,
}

/// One expected number.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expect {
    /// Which step or result it proves.
    pub at: String,
    /// As printed.
    pub value: Json,
    #[serde(default)]
    pub unit: String,
    pub tolerance: Option<f64>,
    #[serde(default)]
    pub why: String,
    pub times: Option<f64>,
    pub divided_by: Option<f64>,
}

/// A number that the engine found, in SI base units of its kind.
#[derive(Clone, Copy, Debug)]
pub struct Found {
    pub value: f64,
    pub kind: Kind,
}

/// What a run gives, by the address that `at` names.
pub type Answers = BTreeMap<String, Found>;

/// The folder of the check values.
pub fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("values")
}

/// All blocks with the names of their files, in the order of the names.
pub fn blocks() -> Vec<(String, Block)> {
    let mut paths: Vec<PathBuf> = std::fs::read_dir(folder()).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.retain(|path| path.extension().is_some_and(|extension| extension == "json"));
    paths.sort();
    let mut blocks = Vec::new();
    for path in paths {
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        let text = std::fs::read_to_string(&path).unwrap();
        let list: Vec<Block> = serde_json::from_str(&text).unwrap_or_else(|error| panic!("{name}: {error}"));
        blocks.extend(list.into_iter().map(|block| (name.clone(), block)));
    }
    blocks
}

impl Block {
    /// What is wrong with the block itself: no source, no honest trust, a tolerance without a reason.
    pub fn flaws(&self) -> Vec<String> {
        let mut flaws = Vec::new();
        if self.source.trim().is_empty() {
            flaws.push("it has no source".into());
        }
        if !["published", "secondary", "memory", "derived"].contains(&self.trust.as_str()) {
            flaws.push(format!("its trust is \"{}\"", self.trust));
        }
        if self.expect.is_empty() {
            flaws.push("it expects nothing".into());
        }
        for expect in &self.expect {
            if expect.tolerance.is_some() && expect.why.trim().is_empty() {
                flaws.push(format!("{}: a tolerance without a reason", expect.at));
            }
        }
        flaws
    }

    /// The expected numbers that the answers do not meet, each as a sentence.
    pub fn unmet(&self, answers: &Answers) -> Vec<String> {
        self.expect.iter().filter_map(|expect| expect.unmet(answers).err()).collect()
    }
}

impl Expect {
    fn unmet(&self, answers: &Answers) -> Result<(), String> {
        let found = answers.get(&self.at).ok_or_else(|| {
            format!("nothing found at {}; there is {}", self.at, answers.keys().cloned().collect::<Vec<_>>().join(", "))
        })?;
        let printed = match &self.value {
            Json::String(text) => text.clone(),
            Json::Number(number) => number.to_string(),
            other => return Err(format!("{}: {other} is no number", self.at)),
        };
        let expected: f64 =
            printed.replace(',', "").parse().map_err(|_| format!("{}: {printed} is no number", self.at))?;
        let per_unit = base_per_unit(&self.unit, found.kind)?;
        let value = found.value / per_unit * self.times.unwrap_or(1.0) / self.divided_by.unwrap_or(1.0);
        let tolerance = self.tolerance.unwrap_or_else(|| half_last_digit(&printed));
        // The slack covers a printed text that lies exactly half a digit away.
        if (value - expected).abs() <= tolerance * (1.0 + 1e-9) + 1e-12 * expected.abs() {
            return Ok(());
        }
        Err(format!("{}: {printed} {} expected within {tolerance}, found {value}", self.at, self.unit))
    }
}

fn half_last_digit(printed: &str) -> f64 {
    let mantissa = printed.split(['e', 'E']).next().unwrap_or(printed);
    let power: i32 = printed.split(['e', 'E']).nth(1).map_or(0, |power| power.parse().unwrap());
    let decimals = mantissa.split_once('.').map_or(0, |(_, decimals)| decimals.len() as i32);
    0.5 * 10f64.powi(power - decimals)
}

/// A quantity of an input in SI base units of its kind: a number is already, a text has a number and a unit.
pub fn quantity(json: &Json, kind: Kind) -> Result<f64, String> {
    match json {
        Json::Number(number) => Ok(number.as_f64().unwrap()),
        Json::String(text) => {
            let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
            let number: f64 = number.parse().map_err(|_| format!("{text} is no quantity"))?;
            Ok(number * base_per_unit(unit, kind)?)
        }
        other => Err(format!("{other} is no quantity")),
    }
}

/// Values of a table of fields from an object of a block; keys that no field has are left to the runner.
pub fn field_values(fields: &[Field], object: &Json) -> Result<Values, String> {
    let mut values = Vec::new();
    for field in fields {
        values.push(match &object[field.key] {
            Json::Null => absent(field)?,
            json => given(field, json).map_err(|problem| format!("{}: {problem}", field.key))?,
        });
    }
    Ok(Values(values))
}

fn given(field: &Field, json: &Json) -> Result<Value, String> {
    match field.shape {
        FieldShape::Number { kind, .. } => Ok(Value::Number(quantity(json, kind)?)),
        FieldShape::Numbers { kind, count, .. } => {
            let list =
                json.as_array().filter(|list| list.len() == count).ok_or(format!("a list of {count} belongs here"))?;
            let mut numbers = [0.0; 3];
            for (number, json) in numbers.iter_mut().zip(list) {
                *number = quantity(json, kind)?;
            }
            Ok(Value::Numbers(numbers))
        }
        FieldShape::Choice(words) => {
            let place = words.iter().position(|word| json == word).ok_or(format!("{json} is none of {words:?}"))?;
            Ok(Value::Choice(place))
        }
        FieldShape::Flag => json.as_bool().map(Value::Flag).ok_or("a flag belongs here".into()),
        _ => Ok(Value::Text(json.as_str().ok_or("a text belongs here")?.into())),
    }
}

fn absent(field: &Field) -> Result<Value, String> {
    match field.absent {
        Absent::Fault => Err(format!("{} is missing", field.key)),
        Absent::Unknown => Ok(Value::Unknown),
        Absent::Is(number) => Ok(Value::Number(number)),
        Absent::Are(number) => Ok(Value::Numbers([number; 3])),
        Absent::Word(place) => Ok(Value::Choice(place)),
        Absent::Set(flag) => Ok(Value::Flag(flag)),
    }
}

/// How many SI base units of the kind one printed unit is worth.
fn base_per_unit(unit: &str, kind: Kind) -> Result<f64, String> {
    let (like, in_base) = UNITS
        .iter()
        .find(|(name, ..)| *name == unit)
        .map(|(_, kind, in_base)| (*kind, *in_base))
        .ok_or_else(|| format!("no unit \"{unit}\""))?;
    if like.dimension() != kind.dimension() && !(unit.is_empty() && kind.dimension() == Dimension::default()) {
        return Err(format!("\"{unit}\" is no unit of {kind:?}"));
    }
    // Lengths stand above in mm; heights and distances have larger base units.
    let base_mm = match kind {
        Kind::Height => 1e3,
        Kind::Distance => 1e6,
        _ => 1.0,
    };
    Ok(in_base / base_mm)
}

const FOOT_MM: f64 = FOOT_M * 1e3;
const KIP_N: f64 = LBF_N * 1e3;

const UNITS: &[(&str, Kind, f64)] = &[
    ("", Kind::Number, 1.0),
    ("g", Kind::Acceleration, 1.0),
    ("%", Kind::Number, 0.01),
    ("mm", Kind::Length, 1.0),
    ("cm", Kind::Length, 10.0),
    ("m", Kind::Length, 1e3),
    ("km", Kind::Length, 1e6),
    ("in", Kind::Length, INCH_MM),
    ("ft", Kind::Length, FOOT_MM),
    ("mi", Kind::Length, MILE_KM * 1e6),
    ("mm2", Kind::Area, 1.0),
    ("m2", Kind::Area, 1e6),
    ("in2", Kind::Area, INCH_MM * INCH_MM),
    ("ft2", Kind::Area, FOOT_MM * FOOT_MM),
    ("mm4", Kind::SecondMoment, 1.0),
    ("in4", Kind::SecondMoment, INCH_MM * INCH_MM * INCH_MM * INCH_MM),
    ("N", Kind::Force, 1.0),
    ("kN", Kind::Force, 1e3),
    ("lbf", Kind::Force, LBF_N),
    ("kip", Kind::Force, KIP_N),
    ("N-mm", Kind::Moment, 1.0),
    ("kN-m", Kind::Moment, 1e6),
    ("lbf-in", Kind::Moment, LBF_N * INCH_MM),
    ("lbf-ft", Kind::Moment, LBF_N * FOOT_MM),
    ("kip-in", Kind::Moment, KIP_N * INCH_MM),
    ("kip-ft", Kind::Moment, KIP_N * FOOT_MM),
    ("MPa", Kind::Stress, 1.0),
    ("kPa", Kind::Stress, 1e-3),
    ("GPa", Kind::Stress, 1e3),
    ("psi", Kind::Stress, PSI_MPA),
    ("ksi", Kind::Stress, PSI_MPA * 1e3),
    ("psf", Kind::Stress, PSI_MPA / 144.0),
    ("ksf", Kind::Stress, PSI_MPA * 1e3 / 144.0),
    ("kg", Kind::Mass, 1.0),
    ("t", Kind::Mass, 1e3),
    ("lb", Kind::Mass, LB_KG),
    ("N/mm", Kind::Stiffness, 1.0),
    ("kN/mm", Kind::Stiffness, 1e3),
    ("lbf/in", Kind::Stiffness, LBF_N / INCH_MM),
    ("kip/in", Kind::Stiffness, KIP_N / INCH_MM),
    ("N/mm3", Kind::Subgrade, 1.0),
    ("lbf/in3", Kind::Subgrade, LBF_N / (INCH_MM * INCH_MM * INCH_MM)),
    ("deg", Kind::Angle, core::f64::consts::PI / 180.0),
    ("rad", Kind::Angle, 1.0),
    ("s", Kind::Time, 1.0),
];
