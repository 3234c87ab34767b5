//! From formula text to MathML with gaps for the symbols.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::read::{Compare, Expression, FormulaError, Function, read};

/// A formula as MathML in which each name is one private-use character, U+E000 plus its place in `symbols`.
///
/// Filled with the symbols' own MathML it is the formula as printed; filled with numbers, the formula with numbers in.
#[derive(Clone, PartialEq, Debug)]
pub struct Typeset {
    /// The MathML, without the `math` element around it.
    pub template: String,
    /// The names, in the order of their first use.
    pub symbols: Vec<String>,
}

/// Typesets a formula text.
///
/// ```
/// use steadfoot::calc::formula::typeset;
/// let set = typeset("9 * h_ef^2").unwrap();
/// assert_eq!(set.template, "<mn>9</mn><mo>⋅</mo><msup>\u{e000}<mn>2</mn></msup>");
/// assert_eq!(set.symbols, ["h_ef"]);
/// ```
pub fn typeset(text: &str) -> Result<Typeset, FormulaError> {
    let mut set = Typeset { template: String::new(), symbols: Vec::new() };
    set.push(&read(text)?, Rank::Sum);
    Ok(set)
}

/// A name as MathML: Greek letters, primes, and what follows the first underscore as subscript.
pub fn symbol_mathml(name: &str) -> String {
    let (base, subscript) = match name.split_once('_') {
        Some((base, subscript)) => (base, Some(subscript)),
        None => (name, None),
    };
    let primed = base.ends_with('\'') || subscript.is_some_and(|s| s.starts_with('\''));
    let letter = greek(base.trim_end_matches('\''));
    let mut below = String::new();
    for (place, part) in subscript.unwrap_or("").trim_matches('\'').split('_').enumerate() {
        if place > 0 {
            below.push(',');
        }
        below.push_str(greek(part));
    }
    let mut math = String::new();
    let below = if below.is_empty() { None } else { Some(below) };
    let mi = |text: &str| {
        let mut mi = String::from("<mi>");
        mi.push_str(text);
        mi.push_str("</mi>");
        mi
    };
    let (open, close) = match (&below, primed) {
        (Some(_), true) => ("<msubsup>", "</msubsup>"),
        (Some(_), false) => ("<msub>", "</msub>"),
        (None, true) => ("<msup>", "</msup>"),
        (None, false) => ("", ""),
    };
    math.push_str(open);
    math.push_str(&mi(letter));
    if let Some(below) = below {
        math.push_str(&mi(&below));
    }
    if primed {
        math.push_str("<mo>′</mo>");
    }
    math.push_str(close);
    math
}

fn greek(name: &str) -> &str {
    match name {
        "alpha" => "α",
        "beta" => "β",
        "gamma" => "γ",
        "delta" => "δ",
        "zeta" => "ζ",
        "eta" => "η",
        "theta" => "θ",
        "kappa" => "κ",
        "lambda" => "λ",
        "mu" => "μ",
        "nu" => "ν",
        "xi" => "ξ",
        "pi" => "π",
        "rho" => "ρ",
        "sigma" => "σ",
        "tau" => "τ",
        "phi" => "φ",
        "chi" => "χ",
        "psi" => "ψ",
        "omega" => "ω",
        "Omega" => "Ω",
        "Phi" => "Φ",
        "Delta" => "Δ",
        other => other,
    }
}

/// How tightly an expression binds; a looser one inside a tighter place gets parentheses.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Rank {
    Sum,
    Product,
    Sign,
    Atom,
}

fn rank(expression: &Expression) -> Rank {
    match expression {
        Expression::Sum(..) | Expression::Difference(..) => Rank::Sum,
        Expression::Product(..) | Expression::Over(_) => Rank::Product,
        Expression::Negative(_) | Expression::Power(..) => Rank::Sign,
        _ => Rank::Atom,
    }
}

impl Typeset {
    fn push(&mut self, expression: &Expression, place: Rank) {
        let fraction_as_base = matches!(expression, Expression::Quotient(..)) && place == Rank::Atom;
        let parentheses = rank(expression) < place || fraction_as_base;
        if parentheses {
            self.template.push_str("<mrow><mo>(</mo>");
        }
        self.push_bare(expression);
        if parentheses {
            self.template.push_str("<mo>)</mo></mrow>");
        }
    }

    fn push_bare(&mut self, expression: &Expression) {
        match expression {
            Expression::Number(_, digits) => {
                self.template.push_str("<mn>");
                self.template.push_str(digits);
                self.template.push_str("</mn>");
            }
            Expression::Symbol(name) => self.push_symbol(name),
            Expression::Negative(inner) => {
                self.template.push_str("<mo>−</mo>");
                self.push(inner, Rank::Sign);
            }
            Expression::Sum(a, b) => self.push_infix(a, "+", b, Rank::Sum, Rank::Sum),
            Expression::Difference(a, b) => self.push_infix(a, "−", b, Rank::Sum, Rank::Product),
            Expression::Product(a, b) => self.push_infix(a, "⋅", b, Rank::Product, Rank::Product),
            Expression::Quotient(a, b) => self.push_pair("mfrac", a, b, Rank::Sum, Rank::Sum),
            Expression::Power(a, b) => self.push_pair("msup", a, b, Rank::Atom, Rank::Sum),
            Expression::Over(inner) => {
                self.template.push_str("<munder><mo>∑</mo><mi>i</mi></munder>");
                self.push(inner, Rank::Product);
            }
            Expression::Call(Function::Sqrt, arguments) => {
                self.template.push_str("<msqrt>");
                self.push(&arguments[0], Rank::Sum);
                self.template.push_str("</msqrt>");
            }
            Expression::Call(Function::Abs, arguments) => {
                self.template.push_str("<mrow><mo>|</mo>");
                self.push(&arguments[0], Rank::Sum);
                self.template.push_str("<mo>|</mo></mrow>");
            }
            Expression::Call(function, arguments) => self.push_call(*function, arguments),
            Expression::If(compare, parts) => self.push_cases(*compare, parts),
        }
    }

    fn push_symbol(&mut self, name: &str) {
        let place = self.symbols.iter().position(|known| known == name).unwrap_or_else(|| {
            self.symbols.push(name.to_string());
            self.symbols.len() - 1
        });
        self.template.push(char::from_u32(0xe000 + place as u32).unwrap_or('?'));
    }

    fn push_infix(&mut self, a: &Expression, sign: &str, b: &Expression, left: Rank, right: Rank) {
        self.push(a, left);
        self.template.push_str("<mo>");
        self.template.push_str(sign);
        self.template.push_str("</mo>");
        self.push(b, right);
    }

    fn push_pair(&mut self, element: &str, a: &Expression, b: &Expression, left: Rank, right: Rank) {
        self.template.push('<');
        self.template.push_str(element);
        self.template.push('>');
        for (part, place) in [(a, left), (b, right)] {
            let row = !matches!(part, Expression::Number(..) | Expression::Symbol(_));
            self.template.push_str(if row { "<mrow>" } else { "" });
            self.push(part, place);
            self.template.push_str(if row { "</mrow>" } else { "" });
        }
        self.template.push_str("</");
        self.template.push_str(element);
        self.template.push('>');
    }

    fn push_call(&mut self, function: Function, arguments: &[Expression]) {
        let name = match function {
            Function::Sin => "sin",
            Function::Cos => "cos",
            Function::Tan => "tan",
            Function::Ln => "ln",
            Function::Log10 => "log10",
            Function::Min => "min",
            _ => "max",
        };
        self.template.push_str("<mrow><mi>");
        self.template.push_str(name);
        self.template.push_str("</mi><mo>(</mo>");
        for (place, argument) in arguments.iter().enumerate() {
            if place > 0 {
                self.template.push_str("<mo>,</mo>");
            }
            self.push(argument, Rank::Sum);
        }
        self.template.push_str("<mo>)</mo></mrow>");
    }

    fn push_cases(&mut self, compare: Compare, parts: &[Expression; 4]) {
        let sign = match compare {
            Compare::AtLeast => "≥",
            Compare::AtMost => "≤",
            Compare::More => "&gt;",
            Compare::Less => "&lt;",
        };
        self.template.push_str("<mrow><mo>{</mo><mtable><mtr><mtd>");
        self.push(&parts[2], Rank::Sum);
        self.template.push_str("</mtd><mtd><mtext>if </mtext>");
        self.push_infix(&parts[0], sign, &parts[1], Rank::Sum, Rank::Sum);
        self.template.push_str("</mtd></mtr><mtr><mtd>");
        self.push(&parts[3], Rank::Sum);
        self.template.push_str("</mtd><mtd><mtext>else</mtext></mtd></mtr></mtable></mrow>");
    }
}
