//! From formula text to expression.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::ops::Range;

/// A formula as a tree.
#[derive(Clone, PartialEq, Debug)]
pub enum Expression {
    /// A number with the text that it was written as.
    Number(f64, String),
    /// A name.
    Symbol(String),
    /// `-a`
    Negative(Box<Expression>),
    /// `a + b`
    Sum(Box<Expression>, Box<Expression>),
    /// `a - b`
    Difference(Box<Expression>, Box<Expression>),
    /// `a * b`
    Product(Box<Expression>, Box<Expression>),
    /// `a / b`
    Quotient(Box<Expression>, Box<Expression>),
    /// `a ^ b`
    Power(Box<Expression>, Box<Expression>),
    /// `sqrt(a)`, `min(a, b, ...)` ...
    Call(Function, Vec<Expression>),
    /// `sum(a)` over the indexed names in `a`.
    Over(Box<Expression>),
    /// `if(a >= b, x, y)`
    If(Compare, Box<[Expression; 4]>),
}

/// A function of the grammar.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
#[allow(missing_docs)]
pub enum Function {
    Sqrt,
    Abs,
    Sin,
    Cos,
    Tan,
    Ln,
    Log10,
    Min,
    Max,
}

/// A comparison of the grammar.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
#[allow(missing_docs)]
pub enum Compare {
    AtLeast,
    AtMost,
    More,
    Less,
}

/// Why a formula text could not be read or evaluated.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct FormulaError(pub String);

/// Reads a formula text.
///
/// ```
/// use steadfoot::calc::formula::read;
/// assert!(read("k_c * lambda_a * sqrt(f'_c) * h_ef^1.5").is_ok());
/// assert!(read("k_c * (").is_err());
/// ```
pub fn read(text: &str) -> Result<Expression, FormulaError> {
    let mut reader = Reader { text, at: 0 };
    let expression = reader.sum()?;
    reader.space();
    if reader.at < text.len() {
        return Err(FormulaError(format!("left over: {}", &text[reader.at..])));
    }
    Ok(expression)
}

/// Where the numbers of a formula text stand, so that a test can change each of them.
pub fn numerals(text: &str) -> Vec<Range<usize>> {
    let bytes = text.as_bytes();
    let mut found = Vec::new();
    let mut at = 0;
    while at < bytes.len() {
        if is_name_start(bytes[at]) {
            while at < bytes.len() && is_name(bytes[at]) {
                at += 1;
            }
        } else if bytes[at].is_ascii_digit() || bytes[at] == b'.' {
            let start = at;
            while at < bytes.len() && (bytes[at].is_ascii_digit() || bytes[at] == b'.') {
                at += 1;
            }
            found.push(start..at);
        } else {
            at += 1;
        }
    }
    found
}

struct Reader<'a> {
    text: &'a str,
    at: usize,
}

fn is_name_start(byte: u8) -> bool {
    byte.is_ascii_alphabetic()
}

fn is_name(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || byte == b'_' || byte == b'\''
}

impl Reader<'_> {
    fn space(&mut self) {
        while self.text.as_bytes().get(self.at) == Some(&b' ') {
            self.at += 1;
        }
    }

    fn next_is(&mut self, token: &str) -> bool {
        self.space();
        if self.text[self.at..].starts_with(token) {
            self.at += token.len();
            return true;
        }
        false
    }

    fn expect(&mut self, token: &str) -> Result<(), FormulaError> {
        if self.next_is(token) {
            return Ok(());
        }
        Err(FormulaError(format!("expected {token} at {} of {}", self.at, self.text)))
    }

    fn sum(&mut self) -> Result<Expression, FormulaError> {
        let mut left = self.product()?;
        loop {
            if self.next_is("+") {
                left = Expression::Sum(Box::new(left), Box::new(self.product()?));
            } else if self.next_is("-") {
                left = Expression::Difference(Box::new(left), Box::new(self.product()?));
            } else {
                return Ok(left);
            }
        }
    }

    fn product(&mut self) -> Result<Expression, FormulaError> {
        let mut left = self.sign()?;
        loop {
            if self.next_is("*") {
                left = Expression::Product(Box::new(left), Box::new(self.sign()?));
            } else if self.next_is("/") {
                left = Expression::Quotient(Box::new(left), Box::new(self.sign()?));
            } else {
                return Ok(left);
            }
        }
    }

    fn sign(&mut self) -> Result<Expression, FormulaError> {
        if self.next_is("-") {
            return Ok(Expression::Negative(Box::new(self.sign()?)));
        }
        let base = self.atom()?;
        if self.next_is("^") {
            return Ok(Expression::Power(Box::new(base), Box::new(self.sign()?)));
        }
        Ok(base)
    }

    fn atom(&mut self) -> Result<Expression, FormulaError> {
        if self.next_is("(") {
            let inner = self.sum()?;
            self.expect(")")?;
            return Ok(inner);
        }
        self.space();
        let bytes = self.text.as_bytes();
        let start = self.at;
        match bytes.get(start) {
            Some(byte) if is_name_start(*byte) => {
                while self.at < bytes.len() && is_name(bytes[self.at]) {
                    self.at += 1;
                }
                let name = &self.text[start..self.at];
                if self.next_is("(") { self.call(name) } else { Ok(Expression::Symbol(name.to_string())) }
            }
            Some(byte) if byte.is_ascii_digit() || *byte == b'.' => {
                while self.at < bytes.len() && (bytes[self.at].is_ascii_digit() || bytes[self.at] == b'.') {
                    self.at += 1;
                }
                let digits = &self.text[start..self.at];
                let number = digits.parse().map_err(|_| FormulaError(format!("not a number: {digits}")))?;
                Ok(Expression::Number(number, digits.to_string()))
            }
            _ => Err(FormulaError(format!("nothing to read at {start} of {}", self.text))),
        }
    }

    fn call(&mut self, name: &str) -> Result<Expression, FormulaError> {
        if name == "if" {
            let left = self.sum()?;
            let compare = self.compare()?;
            let right = self.sum()?;
            self.expect(",")?;
            let then = self.sum()?;
            self.expect(",")?;
            let otherwise = self.sum()?;
            self.expect(")")?;
            return Ok(Expression::If(compare, Box::new([left, right, then, otherwise])));
        }
        let mut arguments = Vec::new();
        loop {
            arguments.push(self.sum()?);
            if !self.next_is(",") {
                break;
            }
        }
        self.expect(")")?;
        let function = match (name, arguments.len()) {
            ("sum", 1) => return Ok(Expression::Over(Box::new(arguments.remove(0)))),
            ("sqrt", 1) => Function::Sqrt,
            ("abs", 1) => Function::Abs,
            ("sin", 1) => Function::Sin,
            ("cos", 1) => Function::Cos,
            ("tan", 1) => Function::Tan,
            ("ln", 1) => Function::Ln,
            ("log10", 1) => Function::Log10,
            ("min", n) if n > 0 => Function::Min,
            ("max", n) if n > 0 => Function::Max,
            _ => return Err(FormulaError(format!("no function {name} of {} arguments", arguments.len()))),
        };
        Ok(Expression::Call(function, arguments))
    }

    fn compare(&mut self) -> Result<Compare, FormulaError> {
        // The longer tokens come first, because `>` begins `>=`.
        for (token, compare) in
            [(">=", Compare::AtLeast), ("<=", Compare::AtMost), (">", Compare::More), ("<", Compare::Less)]
        {
            if self.next_is(token) {
                return Ok(compare);
            }
        }
        Err(FormulaError(format!("no comparison at {} of {}", self.at, self.text)))
    }
}
