//! From expression and symbols to a value with its dimension.

use alloc::format;
use alloc::vec::Vec;

use super::read::{Compare, Expression, FormulaError, Function, read};
use crate::calc::kind::Dimension;
use crate::calc::limit;
use crate::calc::number;

/// A value with its dimension.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Quantity {
    /// The value in base units.
    pub value: f64,
    /// Its dimension.
    pub dimension: Dimension,
}

/// What the names of a formula stand for.
pub trait Symbols {
    /// All values of a name in the order of their index; one value for a plain name; none if it is unknown.
    fn values(&self, name: &str) -> Vec<Quantity>;
}

/// Evaluates a formula text: value and dimension.
///
/// Errors: a text that cannot be read, a name without a value, quantities of different dimension added or compared, a
/// power that leaves the sixths.
///
/// ```
/// use steadfoot::calc::Kind;
/// use steadfoot::calc::formula::{Quantity, Symbols, evaluate};
/// struct Three;
/// impl Symbols for Three {
///     fn values(&self, _: &str) -> Vec<Quantity> {
///         vec![Quantity { value: 3.0, dimension: Kind::Length.dimension() }]
///     }
/// }
/// let area = evaluate("2 * b * h", &Three).unwrap();
/// assert_eq!((area.value, area.dimension), (18.0, Kind::Area.dimension()));
/// assert!(evaluate("b + b * h", &Three).is_err());
/// ```
pub fn evaluate(text: &str, symbols: &dyn Symbols) -> Result<Quantity, FormulaError> {
    Evaluation { symbols, index: None }.of(&read(text)?)
}

/// The same for one place of an indexed quantity (`V_x_i = H / n - T_z * y_i / J`), counted from 0.
pub fn evaluate_at(text: &str, symbols: &dyn Symbols, index: usize) -> Result<Quantity, FormulaError> {
    Evaluation { symbols, index: Some(index) }.of(&read(text)?)
}

struct Evaluation<'a> {
    symbols: &'a dyn Symbols,
    index: Option<usize>,
}

impl Evaluation<'_> {
    fn of(&self, expression: &Expression) -> Result<Quantity, FormulaError> {
        match expression {
            Expression::Number(value, _) => Ok(plain(*value)),
            Expression::Symbol(name) => self.symbol(name),
            Expression::Negative(inner) => {
                let inner = self.of(inner)?;
                Ok(Quantity { value: -inner.value, ..inner })
            }
            Expression::Sum(a, b) => self.same(a, b, |a, b| a + b),
            Expression::Difference(a, b) => self.same(a, b, |a, b| a - b),
            Expression::Product(a, b) => {
                let (a, b) = (self.of(a)?, self.of(b)?);
                Ok(Quantity { value: a.value * b.value, dimension: add(a.dimension, b.dimension, 1) })
            }
            Expression::Quotient(a, b) => {
                let (a, b) = (self.of(a)?, self.of(b)?);
                Ok(Quantity { value: a.value / b.value, dimension: add(a.dimension, b.dimension, -1) })
            }
            Expression::Power(base, exponent) => self.power(base, exponent),
            Expression::Call(function, arguments) => self.call(*function, arguments),
            Expression::Over(inner) => self.over(inner),
            Expression::If(compare, parts) => {
                let (left, right) = (self.of(&parts[0])?, self.of(&parts[1])?);
                require_same(left, right)?;
                let claim = match compare {
                    Compare::AtLeast => limit::at_least(left.value, right.value),
                    Compare::AtMost => limit::at_most(left.value, right.value),
                    Compare::More => limit::more(left.value, right.value),
                    Compare::Less => limit::less(left.value, right.value),
                };
                self.of(&parts[if claim { 2 } else { 3 }])
            }
        }
    }

    fn symbol(&self, name: &str) -> Result<Quantity, FormulaError> {
        let values = self.symbols.values(name);
        match (values.as_slice(), self.index) {
            ([], _) => Err(FormulaError(format!("no value for {name}"))),
            ([one], None) => Ok(*one),
            (many, Some(index)) if name.ends_with("_i") => {
                many.get(index).copied().ok_or_else(|| FormulaError(format!("{name} has no value {}", index + 1)))
            }
            (many, _) => Ok(many[many.len() - 1]),
        }
    }

    fn same(&self, a: &Expression, b: &Expression, join: fn(f64, f64) -> f64) -> Result<Quantity, FormulaError> {
        let (a, b) = (self.of(a)?, self.of(b)?);
        require_same(a, b)?;
        Ok(Quantity { value: join(a.value, b.value), dimension: a.dimension })
    }

    fn power(&self, base: &Expression, exponent: &Expression) -> Result<Quantity, FormulaError> {
        let (base, exponent) = (self.of(base)?, self.of(exponent)?);
        require_plain(exponent)?;
        let scaled = |power: i16| -> Result<i16, FormulaError> {
            let exact = power as f64 * exponent.value;
            let whole = number::round(exact);
            if (exact - whole).abs() > 1e-9 {
                return Err(FormulaError(format!("a power of {} leaves the sixths", exponent.value)));
            }
            Ok(whole as i16)
        };
        let from = base.dimension;
        let dimension = Dimension {
            force: scaled(from.force)?,
            length: scaled(from.length)?,
            mass: scaled(from.mass)?,
            time: scaled(from.time)?,
        };
        Ok(Quantity { value: number::pow(base.value, exponent.value), dimension })
    }

    fn call(&self, function: Function, arguments: &[Expression]) -> Result<Quantity, FormulaError> {
        let mut values = Vec::new();
        for argument in arguments {
            values.push(self.of(argument)?);
        }
        let first = values[0];
        let plain_of = |of: fn(f64) -> f64| {
            require_plain(first)?;
            Ok(plain(of(first.value)))
        };
        match function {
            Function::Sqrt => self.power(&arguments[0], &Expression::Number(0.5, "0.5".into())),
            Function::Abs => Ok(Quantity { value: first.value.abs(), ..first }),
            Function::Sin => plain_of(number::sin),
            Function::Cos => plain_of(number::cos),
            Function::Tan => plain_of(number::tan),
            Function::Ln => plain_of(number::ln),
            Function::Log10 => plain_of(number::log10),
            Function::Min | Function::Max => {
                let mut best = first;
                for value in &values[1..] {
                    require_same(best, *value)?;
                    let takes =
                        if function == Function::Min { value.value < best.value } else { value.value > best.value };
                    // A NaN must not be swallowed, whichever side it stands on.
                    if takes || value.value.is_nan() {
                        best = *value;
                    }
                }
                Ok(best)
            }
        }
    }

    fn over(&self, inner: &Expression) -> Result<Quantity, FormulaError> {
        let mut names = Vec::new();
        indexed_names(inner, &mut names);
        let count = names.iter().map(|name| self.symbols.values(name).len()).max().unwrap_or(0);
        if count == 0 {
            return Err(FormulaError("a sum over nothing".into()));
        }
        let mut total = Evaluation { symbols: self.symbols, index: Some(0) }.of(inner)?;
        for index in 1..count {
            let next = Evaluation { symbols: self.symbols, index: Some(index) }.of(inner)?;
            require_same(total, next)?;
            total.value += next.value;
        }
        Ok(total)
    }
}

fn indexed_names<'a>(expression: &'a Expression, names: &mut Vec<&'a str>) {
    match expression {
        Expression::Symbol(name) => {
            if name.ends_with("_i") {
                names.push(name);
            }
        }
        Expression::Number(..) => {}
        Expression::Negative(a) | Expression::Over(a) => indexed_names(a, names),
        Expression::Sum(a, b)
        | Expression::Difference(a, b)
        | Expression::Product(a, b)
        | Expression::Quotient(a, b)
        | Expression::Power(a, b) => {
            indexed_names(a, names);
            indexed_names(b, names);
        }
        Expression::Call(_, arguments) => arguments.iter().for_each(|a| indexed_names(a, names)),
        Expression::If(_, parts) => parts.iter().for_each(|a| indexed_names(a, names)),
    }
}

fn plain(value: f64) -> Quantity {
    Quantity { value, dimension: Dimension::default() }
}

fn add(a: Dimension, b: Dimension, sign: i16) -> Dimension {
    Dimension {
        force: a.force + sign * b.force,
        length: a.length + sign * b.length,
        mass: a.mass + sign * b.mass,
        time: a.time + sign * b.time,
    }
}

fn require_same(a: Quantity, b: Quantity) -> Result<(), FormulaError> {
    if a.dimension == b.dimension {
        return Ok(());
    }
    Err(FormulaError(format!("{:?} beside {:?}", a.dimension, b.dimension)))
}

fn require_plain(a: Quantity) -> Result<(), FormulaError> {
    require_same(a, plain(0.0))
}
