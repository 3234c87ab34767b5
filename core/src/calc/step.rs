//! The texts of steps: what a recorded number is, by which formula of which clause.
//!
//! The engine records ids. The texts stand in static tables beside the code that computes, one table a file, and only
//! native code (the builder, the command line, the tests) ever refers to them, so they do not weigh on the page's wasm.

use alloc::string::String;

use super::clause::{Clause, Trust};
use super::kind::Kind;

/// The id of a row of a text table: one number, because the engine hands it on in some thousand places.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct StepId(u16);

impl StepId {
    /// The id of a row in the table of a number.
    pub const fn of(table: u8, row: u8) -> StepId {
        StepId(table as u16 * 256 + row as u16)
    }

    /// Number of the table.
    pub const fn table(self) -> u8 {
        (self.0 / 256) as u8
    }

    /// Row in it.
    pub const fn row(self) -> usize {
        (self.0 % 256) as usize
    }

    /// The id as one number, for the boundary to the page.
    pub const fn code(self) -> u16 {
        self.0
    }

    /// The id of such a number.
    pub const fn from_code(code: u16) -> StepId {
        StepId(code)
    }
}

impl serde::Serialize for StepId {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_u16(self.code())
    }
}

/// What kind of step a row describes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Shape {
    /// Typed by the user, or a default of its field.
    Given,
    /// Computed by the formula text, from symbols recorded earlier in the same section.
    Formula(&'static str),
    /// An empirical constant of the document, with its unit.
    Constant,
    /// Read from a table; the rows used are recorded with it.
    Table,
    /// Read from a table between two rows, which are recorded with it.
    Interpolated,
    /// An area, a length or a centroid of a drawn shape; the polygon is recorded with it.
    Geometry,
    /// Satisfies equations whose residuals are recorded with it.
    Solved,
    /// Found by a search; the bracket is recorded with it.
    Searched,
    /// A value that a clause gives for the case at hand, the case being the text.
    Condition,
    /// Not a number: the reason why a check is not needed or not covered.
    Reason,
    /// Not a number: the name of a load case, a row of a choice, a level.
    Name,
}

/// One row of a text table.
#[derive(Clone, Copy, Debug)]
pub struct StepText {
    /// The symbol as printed, ASCII; the first underscore opens the subscript.
    pub symbol: &'static str,
    /// What it is, one plain sentence or noun phrase.
    pub what: &'static str,
    /// How it comes about.
    pub shape: Shape,
    /// What it measures.
    pub kind: Kind,
    /// Where it is written.
    pub clause: Clause,
    /// How far the transcription can be trusted.
    pub trust: Trust,
}

impl StepText {
    /// What it is made of, as words in one line: its shape, its symbol or a dash, and the symbols that its formula uses.
    /// Only for native code.
    ///
    /// ```
    /// use steadfoot::calc::{clause::STATICS, steps};
    /// steps! { 249 "example"; W "W" Force (STATICS "" Derived) "Weight" = "m * g"; }
    /// assert_eq!(TEXTS.rows[W.row()].uses(), "formula W m g");
    /// ```
    pub fn uses(&self) -> String {
        let shape = match self.shape {
            Shape::Given => "given",
            Shape::Formula(_) => "formula",
            Shape::Constant => "constant",
            Shape::Reason => "reason",
            Shape::Name => "name",
            Shape::Table | Shape::Interpolated | Shape::Geometry => "taken",
            Shape::Solved | Shape::Searched | Shape::Condition => "taken",
        };
        let mut words = String::from(shape);
        words.push(' ');
        words.push_str(if self.symbol.is_empty() { "-" } else { self.symbol });
        if let Shape::Formula(formula) = self.shape
            && let Ok(set) = super::formula::typeset(formula)
        {
            for symbol in &set.symbols {
                words.push(' ');
                words.push_str(symbol);
            }
        }
        words
    }
}

/// A static table of step texts.
pub struct StepTable {
    /// Its number, the same as in the ids of its rows.
    pub number: u8,
    /// A short name.
    pub name: &'static str,
    /// Its rows.
    pub rows: &'static [StepText],
}

/// Makes the ids of a file's steps and the table of their texts.
///
/// ```
/// use steadfoot::calc::{Kind, Shape, clause::STATICS, steps};
/// steps! { 250 "example";
///     W "W" Force (STATICS "" Derived) "Weight" = "m * g";
///     M "m" Mass (STATICS "" Derived) "Mass": Given;
/// }
/// assert_eq!(W.table(), 250);
/// assert_eq!(TEXTS.rows[W.row()].symbol, "W");
/// assert_eq!(TEXTS.rows[M.row()].shape, Shape::Given);
/// ```
#[macro_export]
macro_rules! steps {
    ($number:literal $name:literal; $($row:tt)*) => {
        $crate::steps!(@split $number $name [] $($row)*);
    };
    (@split $number:literal $name:literal [$($done:tt)*]
        $id:ident $symbol:literal $kind:ident $({ $($power:tt)* })? ($document:ident $clause:literal $trust:ident) $what:literal
        = $formula:literal; $($rest:tt)*) => {
        $crate::steps!(@split $number $name [$($done)* {
            $id $symbol ($kind $({ $($power)* })?) ($document $clause $trust) $what ($crate::calc::Shape::Formula($formula))
        }] $($rest)*);
    };
    (@split $number:literal $name:literal [$($done:tt)*]
        $id:ident $symbol:literal $kind:ident $({ $($power:tt)* })? ($document:ident $clause:literal $trust:ident) $what:literal
        : $shape:ident; $($rest:tt)*) => {
        $crate::steps!(@split $number $name [$($done)* {
            $id $symbol ($kind $({ $($power)* })?) ($document $clause $trust) $what ($crate::calc::Shape::$shape)
        }] $($rest)*);
    };
    (@split $number:literal $name:literal [$({
        $id:ident $symbol:literal ($kind:ident $({ $($power:tt)* })?) ($document:ident $clause:literal $trust:ident) $what:literal ($shape:expr)
    })*]) => {
        #[allow(non_camel_case_types, clippy::upper_case_acronyms)]
        #[repr(u8)]
        enum Row { $($id),* }
        $(
            #[doc = $what]
            pub const $id: $crate::calc::StepId = $crate::calc::StepId::of($number, Row::$id as u8);
        )*
        /// The texts of this file's steps.
        pub static TEXTS: $crate::calc::StepTable = $crate::calc::StepTable {
            number: $number,
            name: $name,
            rows: &[$(
                $crate::calc::StepText {
                    symbol: $symbol,
                    what: $what,
                    shape: $shape,
                    kind: $crate::calc::Kind::$kind $({ $($power)* })?,
                    clause: $crate::calc::Clause { document: &$document, number: $clause },
                    trust: $crate::calc::Trust::$trust,
                }
            ),*],
        };
    };
}
