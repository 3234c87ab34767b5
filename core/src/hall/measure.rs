//! Numbers of a schedule: how a cell writes them, and the unit that its column is in.

use alloc::string::String;

use crate::calc::Kind;
use crate::calc::decimal::precise;
use crate::calc::unit::{FOOT_M, INCH_MM, LB_KG, LBF_N, PSI_MPA};
use crate::input::Problem;
use crate::input::number::number;

/// A unit that a column may be in.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Unit {
    name: &'static str,
    of: Measure,
    /// How many mm, kg, MPa, N or degrees it is worth.
    worth: f64,
}

#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Measure {
    Length,
    Mass,
    Pressure,
    Force,
    Angle,
}

static UNITS: [Unit; 18] = [
    Unit { name: "mm", of: Measure::Length, worth: 1.0 },
    Unit { name: "cm", of: Measure::Length, worth: 10.0 },
    Unit { name: "m", of: Measure::Length, worth: 1000.0 },
    Unit { name: "in", of: Measure::Length, worth: INCH_MM },
    Unit { name: "ft", of: Measure::Length, worth: FOOT_M * 1000.0 },
    Unit { name: "kg", of: Measure::Mass, worth: 1.0 },
    Unit { name: "t", of: Measure::Mass, worth: 1000.0 },
    Unit { name: "lb", of: Measure::Mass, worth: LB_KG },
    Unit { name: "MPa", of: Measure::Pressure, worth: 1.0 },
    Unit { name: "kPa", of: Measure::Pressure, worth: 0.001 },
    Unit { name: "psi", of: Measure::Pressure, worth: PSI_MPA },
    Unit { name: "ksi", of: Measure::Pressure, worth: 1000.0 * PSI_MPA },
    Unit { name: "psf", of: Measure::Pressure, worth: PSI_MPA / 144.0 },
    Unit { name: "N", of: Measure::Force, worth: 1.0 },
    Unit { name: "kN", of: Measure::Force, worth: 1000.0 },
    Unit { name: "lbf", of: Measure::Force, worth: LBF_N },
    Unit { name: "deg", of: Measure::Angle, worth: 1.0 },
    Unit { name: "rad", of: Measure::Angle, worth: 180.0 / core::f64::consts::PI },
];

/// The units that a head may name, for faults.
pub const UNIT_NAMES: &str = "mm, cm, m, in, ft; kg, t, lb; MPa, kPa, psi, ksi, psf; N, kN, lbf; deg, rad";

/// What the numbers of a column are in, and what the project file has them in.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Units {
    /// The unit of the column, as its head names it or as the file has it; none for what no listed unit measures.
    pub column: Option<Unit>,
    /// The unit of the file.
    pub file: Option<Unit>,
}

impl Units {
    /// The unit that the file has a kind in; none where no unit of the list measures it.
    pub fn of_kind(kind: Kind) -> Units {
        let unit = named(match kind {
            Kind::Length => "mm",
            Kind::Height => "m",
            Kind::Mass => "kg",
            Kind::Stress | Kind::Pressure | Kind::AreaLoad => "MPa",
            Kind::Force => "N",
            _ => "",
        });
        Units { column: unit, file: unit }
    }

    /// Plan angles of a schedule are in degrees.
    pub fn of_turn() -> Units {
        Units { column: named("deg"), file: named("deg") }
    }

    /// The same with the unit that a head names; `None` where it measures something else.
    pub fn in_unit(self, name: &str) -> Option<Units> {
        let unit = named(name)?;
        (self.file?.of == unit.of).then_some(Units { column: Some(unit), ..self })
    }

    /// The text of a number as the project file has it.
    ///
    /// A comma is a decimal mark only where no comma parts the cells. What could be thousands as well as decimals is
    /// refused, and so is a unit that is not that of the column.
    pub fn read(&self, cell: &str, mark: DecimalMark) -> Result<String, Problem> {
        let cell = cell.trim();
        let end = cell.find(|letter: char| !matches!(letter, '0'..='9' | '.' | ',' | '+' | '-' | 'e' | 'E'));
        let (digits, unit) = end.and_then(|end| cell.split_at_checked(end)).unwrap_or((cell, ""));
        let unit = unit.trim();
        if !unit.is_empty() && !digits.is_empty() {
            match named(unit) {
                Some(unit) if Some(unit) == self.column => {}
                Some(_) => return Err(Problem::MixedUnits),
                None => return Err(Problem::NotANumber),
            }
        } else if !unit.is_empty() {
            return Err(Problem::NotANumber);
        }
        let plain = mark.plain(digits)?;
        let value = number(&plain).ok_or(Problem::NotANumber)?;
        if !value.is_finite() {
            return Err(Problem::NotFinite);
        }
        match (self.column, self.file) {
            (Some(column), Some(file)) if column.worth != file.worth => {
                let value = value * column.worth / file.worth;
                if !value.is_finite() {
                    return Err(Problem::NotFinite);
                }
                let mut text = String::from(if value < 0.0 { "-" } else { "" });
                precise(&mut text, value.abs());
                Ok(text)
            }
            _ => Ok(plain),
        }
    }
}

fn named(name: &str) -> Option<Unit> {
    let name = if name == "°" { "deg" } else { name };
    UNITS.iter().find(|unit| unit.name == name).copied()
}

/// Which marks may stand before the decimals of a number.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum DecimalMark {
    /// A point, since a comma parts the cells, or since the text is JSON.
    Point,
    /// A point or a comma.
    PointOrComma,
}

impl DecimalMark {
    /// The number with a point, as JSON has it.
    fn plain(self, digits: &str) -> Result<String, Problem> {
        let marks = digits.bytes().filter(|byte| matches!(byte, b'.' | b',')).count();
        let has_comma = digits.contains(',');
        let two_readings = match self {
            DecimalMark::Point => has_comma,
            DecimalMark::PointOrComma => marks > 1 || could_be_thousands(digits),
        };
        if two_readings {
            return Err(Problem::TwoReadings);
        }
        Ok(if has_comma { digits.replace(',', ".") } else { digits.into() })
    }
}

/// `1.250` or `12,500`: one to three digits that begin with no zero, a mark, and exactly three digits.
fn could_be_thousands(digits: &str) -> bool {
    let digits = digits.strip_prefix('-').unwrap_or(digits);
    let Some((whole, behind)) = digits.split_once(['.', ',']) else { return false };
    let all_digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    (1..=3).contains(&whole.len())
        && !whole.starts_with('0')
        && behind.len() == 3
        && all_digits(whole)
        && all_digits(behind)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(cell: &str, mark: DecimalMark) -> Result<String, Problem> {
        Units::of_kind(Kind::Length).read(cell, mark)
    }

    #[test]
    fn a_decimal_comma_is_read_where_no_comma_parts_the_cells() {
        assert_eq!(mm("12,5", DecimalMark::PointOrComma).as_deref(), Ok("12.5"));
        assert_eq!(mm("12.5", DecimalMark::PointOrComma).as_deref(), Ok("12.5"));
        assert_eq!(mm("0,125", DecimalMark::PointOrComma).as_deref(), Ok("0.125"));
        assert_eq!(mm("12,5", DecimalMark::Point), Err(Problem::TwoReadings));
    }

    #[test]
    fn what_could_be_thousands_is_refused_where_commas_may_be_decimal_marks() {
        for cell in ["1.250", "12,500", "-120.000", "1.250,5", "1,250,000"] {
            assert_eq!(mm(cell, DecimalMark::PointOrComma), Err(Problem::TwoReadings), "{cell}");
        }
        assert_eq!(mm("1.250", DecimalMark::Point).as_deref(), Ok("1.250"));
        assert_eq!(mm("1250.000", DecimalMark::PointOrComma).as_deref(), Ok("1250.000"));
    }

    #[test]
    fn a_unit_in_a_cell_is_that_of_its_column_or_a_fault() {
        let inches = Units::of_kind(Kind::Length).in_unit("in").unwrap();
        assert_eq!(inches.read("10 in", DecimalMark::Point).as_deref(), Ok("254"));
        assert_eq!(inches.read("10", DecimalMark::Point).as_deref(), Ok("254"));
        assert_eq!(inches.read("250 mm", DecimalMark::Point), Err(Problem::MixedUnits));
        assert_eq!(mm("250mm", DecimalMark::Point).as_deref(), Ok("250"));
        assert_eq!(mm("250 furlongs", DecimalMark::Point), Err(Problem::NotANumber));
        assert!(Units::of_kind(Kind::Length).in_unit("kg").is_none());
        assert!(Units::of_kind(Kind::Number).in_unit("kg").is_none());
    }

    #[test]
    fn conversions_keep_fifteen_digits() {
        let pounds = Units::of_kind(Kind::Mass).in_unit("lb").unwrap();
        let text = pounds.read("123.456", DecimalMark::Point).unwrap();
        let error: f64 = number(&text).unwrap() / (123.456 * 0.45359237) - 1.0;
        assert!(error.abs() < 1e-15, "{text}");
        let feet = Units::of_kind(Kind::Height).in_unit("ft").unwrap();
        assert_eq!(feet.read("-10", DecimalMark::Point).as_deref(), Ok("-3.048"));
    }

    #[test]
    fn what_is_no_number_is_told() {
        for cell in ["", "-", ".5", "5.", "+5", "1e", "abc", "--5", "1 2", "NaN", "mm"] {
            assert_eq!(mm(cell, DecimalMark::Point), Err(Problem::NotANumber), "{cell}");
        }
        assert_eq!(mm("1e999", DecimalMark::Point), Err(Problem::NotFinite));
    }
}
