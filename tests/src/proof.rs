//! The proof of a sheet: every formula text, evaluated on the numbers recorded before it, gives the recorded number; and
//! every numeral in it matters.
//!
//! Take told sections of any part, as many as there are, then close:
//!
//! ```
//! use steadfoot::calc::{Kind, Part, Sheet, Subject, System, clause::STATICS, steps};
//! use steadfoot_tests::proof::Proof;
//! steps! { 252 "example"; M "m" Mass (STATICS "" Derived) "Mass": Given;
//!     H "m_h" Mass (STATICS "" Derived) "Half of it" = "m / 2"; }
//! let mut sheet = Sheet::told();
//! sheet.open(Part::LoadOut, Subject::Whole, None, System::Si);
//! let m = sheet.step(M, 4000.0);
//! sheet.step(H, m / 2.0);
//! let mut proof = Proof::of(&[&TEXTS]);
//! proof.take(&sheet.sections);
//! let account = proof.close();
//! assert!(account.wrong.is_empty() && account.idle.is_empty() && account.unseen.is_empty());
//! ```

use std::collections::{BTreeMap, BTreeSet};

use steadfoot::calc::formula::{FormulaError, Quantity, Symbols, evaluate, evaluate_at, numerals};
use steadfoot::calc::{Detail, Section, Shape, Step, StepId, StepTable, StepText};

/// Most wrong steps that are kept; one is enough to fail.
const WRONG_MAX: usize = 40;
/// How exactly a formula text has to give the recorded number.
const RELATIVE: f64 = 1e-12;

/// What is being proved.
pub struct Proof {
    texts: BTreeMap<StepId, &'static StepText>,
    names: BTreeMap<u8, &'static str>,
    /// Numerals of each formula row, and whether a change of them was ever felt.
    numerals: BTreeMap<StepId, Vec<Numeral>>,
    /// How often each row was recorded.
    counts: BTreeMap<StepId, usize>,
    wrong: BTreeSet<String>,
}

/// A numeral of a formula text with the texts in which it is 1 % larger or smaller.
struct Numeral {
    digits: String,
    changed: Vec<String>,
    is_felt: bool,
}

/// What came of it.
pub struct Account {
    /// Steps whose formula text does not give what was recorded, or cannot be read.
    pub wrong: Vec<String>,
    /// Numerals whose change by 1 % was never felt.
    pub idle: Vec<String>,
    /// Rows that were never recorded, reasons and names left out.
    pub unseen: Vec<String>,
    /// Recorded steps by formula.
    pub formula_steps: usize,
    /// Recorded steps that are neither typed in nor mere names.
    pub computed_steps: usize,
    /// All recorded steps.
    pub steps: usize,
    /// One line for each recorded row that is not a formula: table, symbol, shape, how often, what.
    pub others: Vec<String>,
}

impl Proof {
    /// A proof of sections whose rows stand in these tables.
    pub fn of(tables: &[&'static StepTable]) -> Proof {
        let mut texts = BTreeMap::new();
        let mut names = BTreeMap::new();
        let mut all_numerals = BTreeMap::new();
        for table in tables {
            assert!(names.insert(table.number, table.name).is_none(), "two tables have the number {}", table.number);
            for (row, text) in table.rows.iter().enumerate() {
                let id = StepId::of(table.number, row as u8);
                texts.insert(id, text);
                if let Shape::Formula(formula) = text.shape {
                    all_numerals
                        .insert(id, numerals(formula).into_iter().map(|range| Numeral::new(formula, range)).collect());
                }
            }
        }
        Proof { texts, names, numerals: all_numerals, counts: BTreeMap::new(), wrong: BTreeSet::new() }
    }

    /// Takes told sections.
    pub fn take(&mut self, sections: &[Section]) {
        for section in sections {
            let mut known = Known::default();
            for step in &section.steps {
                let text = *self.texts.get(&step.id).unwrap_or_else(|| panic!("no text for {:?}", step.id));
                *self.counts.entry(step.id).or_default() += 1;
                let of_all = section.steps.iter().filter(|one| one.id == step.id);
                let largest = of_all.fold(0.0, |largest: f64, one| largest.max(one.value.abs()));
                self.prove(step, text, (&known, largest));
                known.add(step, text);
            }
        }
    }

    fn prove(&mut self, step: &Step, text: &StepText, (known, largest): (&Known, f64)) {
        if let Err(problem) = well_shaped(step, text) {
            self.say(step, text, &problem);
        }
        let Shape::Formula(formula) = text.shape else { return };
        if step.carried {
            return;
        }
        let evaluate = |formula: &str| match step.index {
            0 => evaluate(formula, known),
            index => evaluate_at(formula, known, index as usize - 1),
        };
        match evaluate(formula) {
            Err(FormulaError(problem)) => self.say(step, text, &problem),
            Ok(found) if found.dimension != text.kind.dimension() => {
                self.say(step, text, &format!("dimension {:?}, which is no {:?}", found.dimension, text.kind));
            }
            Ok(found) if !agrees(found.value, step.value, largest) => {
                self.say(step, text, &format!("{formula} gives {:e}, recorded {:e}", found.value, step.value));
            }
            Ok(_) => {
                for numeral in self.numerals.get_mut(&step.id).into_iter().flatten().filter(|numeral| !numeral.is_felt)
                {
                    numeral.is_felt = numeral.changed.iter().any(|changed| match evaluate(changed) {
                        Ok(found) => {
                            found.dimension != text.kind.dimension() || !agrees(found.value, step.value, largest)
                        }
                        Err(_) => true,
                    });
                }
            }
        }
    }

    fn say(&mut self, step: &Step, text: &StepText, problem: &str) {
        if self.wrong.len() < WRONG_MAX {
            let table = self.names[&step.id.table()];
            self.wrong.insert(format!("{table}: {} (\"{}\"): {problem}", text.symbol, text.what));
        }
    }

    /// Draws the line.
    pub fn close(self) -> Account {
        let mut account = Account {
            wrong: self.wrong.into_iter().collect(),
            idle: Vec::new(),
            unseen: Vec::new(),
            formula_steps: 0,
            computed_steps: 0,
            steps: 0,
            others: Vec::new(),
        };
        for (id, text) in &self.texts {
            let count = self.counts.get(id).copied().unwrap_or(0);
            let line = format!(
                "{:<14} {:<8} {:<12} {count:>6}  {}",
                self.names[&id.table()],
                text.symbol,
                word(text.shape),
                text.what
            );
            account.steps += count;
            let is_computed = !matches!(text.shape, Shape::Given | Shape::Name | Shape::Reason);
            account.computed_steps += if is_computed { count } else { 0 };
            if count == 0 && !matches!(text.shape, Shape::Name | Shape::Reason) {
                account.unseen.push(line.clone());
            }
            match text.shape {
                Shape::Formula(formula) => {
                    account.formula_steps += count;
                    let idle = self.numerals[id].iter().filter(|numeral| !numeral.is_felt && count > 0);
                    let name = self.names[&id.table()];
                    account.idle.extend(
                        idle.map(|numeral| format!("{name}: {} in {} = {formula}", numeral.digits, text.symbol)),
                    );
                }
                _ if count > 0 => account.others.push(line),
                _ => {}
            }
        }
        account
    }
}

impl Account {
    /// Panics with everything that is wrong, idle or unseen.
    pub fn must_be_clean(&self) {
        let tell = |title: &str, lines: &[String]| {
            assert!(lines.is_empty(), "{title}:\n{}", lines.join("\n"));
        };
        tell("formula texts that do not give what was recorded", &self.wrong);
        tell("numerals that do not matter", &self.idle);
        tell("rows that were never recorded", &self.unseen);
        assert!(
            2 * self.formula_steps > self.computed_steps,
            "only {} of {} computed steps are formulas",
            self.formula_steps,
            self.computed_steps
        );
    }
}

impl Numeral {
    fn new(formula: &str, range: std::ops::Range<usize>) -> Numeral {
        let digits = &formula[range.clone()];
        let value: f64 = digits.parse().unwrap_or_else(|_| panic!("no number: {digits}"));
        // One per cent of nothing is nothing, so a zero is moved by a hundredth.
        let others = if value == 0.0 { vec![0.01] } else { vec![value * 1.01, value * 0.99] };
        let changed = others.iter().map(|other| format!("{}{other}{}", &formula[..range.start], &formula[range.end..]));
        Numeral { digits: digits.to_string(), changed: changed.collect(), is_felt: false }
    }
}

/// The symbols recorded so far in a section.
#[derive(Default)]
struct Known {
    values: BTreeMap<String, Vec<Quantity>>,
}

impl Known {
    fn add(&mut self, step: &Step, text: &StepText) {
        let quantity = Quantity { value: step.value, dimension: text.kind.dimension() };
        let values = self.values.entry(text.symbol.to_string()).or_default();
        // A plain symbol has one value, the last; an indexed one begins anew with its first.
        if step.index <= 1 {
            values.clear();
        }
        values.push(quantity);
    }
}

impl Symbols for Known {
    fn values(&self, name: &str) -> Vec<Quantity> {
        self.values.get(name).cloned().unwrap_or_default()
    }
}

/// What the shape of a step promises beside its value.
fn well_shaped(step: &Step, text: &StepText) -> Result<(), String> {
    if matches!(text.shape, Shape::Name | Shape::Reason) {
        return Ok(());
    }
    if step.value.is_nan() {
        return Err("it is not a number".into());
    }
    if step.carried {
        return Ok(());
    }
    match (text.shape, &step.detail) {
        (Shape::Interpolated, Detail::Rows(rows)) => {
            let low = rows.iter().map(|row| row[1]).fold(f64::INFINITY, f64::min);
            let high = rows.iter().map(|row| row[1]).fold(f64::NEG_INFINITY, f64::max);
            let inside = (low..=high).contains(&step.value);
            if inside { Ok(()) } else { Err(format!("{} is not between its rows {rows:?}", step.value)) }
        }
        (Shape::Table, Detail::Rows(rows)) => {
            let is_row = rows.iter().any(|row| row[1] == step.value);
            if is_row { Ok(()) } else { Err(format!("{} is not in its rows {rows:?}", step.value)) }
        }
        (Shape::Geometry, Detail::Shape(_)) | (Shape::Table, Detail::None) => Ok(()),
        (Shape::Solved, Detail::Residuals(residuals)) => {
            let small = residuals.iter().all(|residual| residual.abs() <= 1e-9);
            if small { Ok(()) } else { Err(format!("residuals {residuals:?}")) }
        }
        (Shape::Searched, Detail::Bracket([low, high])) => {
            let inside = (*low..=*high).contains(&step.value);
            if inside { Ok(()) } else { Err(format!("{} is outside {low} to {high}", step.value)) }
        }
        (Shape::Interpolated | Shape::Geometry | Shape::Solved | Shape::Searched, detail) => {
            Err(format!("{} without what it needs: {detail:?}", word(text.shape)))
        }
        _ => Ok(()),
    }
}

/// Whether both are one number. A share that all but vanishes is a difference of what the largest one is made of, and has
/// that one's rounding.
fn agrees(found: f64, recorded: f64, largest: f64) -> bool {
    let apart = (found - recorded).abs();
    found == recorded || apart <= RELATIVE * recorded.abs() || apart <= 4.0 * f64::EPSILON * largest
}

fn word(shape: Shape) -> &'static str {
    match shape {
        Shape::Given => "given",
        Shape::Formula(_) => "formula",
        Shape::Constant => "constant",
        Shape::Table => "table",
        Shape::Interpolated => "interpolated",
        Shape::Geometry => "geometry",
        Shape::Solved => "solved",
        Shape::Searched => "searched",
        Shape::Condition => "condition",
        Shape::Reason => "reason",
        Shape::Name => "name",
    }
}
