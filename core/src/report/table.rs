//! A table of numbers and names, as plain data: the page and the builder letter it in the reader's units.

use alloc::string::String;
use alloc::vec::Vec;

use serde::Serialize;

use crate::calc::show::Rounding;
use crate::calc::{CheckId, Kind, Status, StepId};

/// A table.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Table {
    /// Row of its name.
    pub name: StepId,
    /// What stands in its columns.
    pub columns: Vec<Column>,
    /// Its rows, each with one cell a column.
    pub rows: Vec<Line>,
}

/// A column of a table.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Column {
    /// Row of its name.
    pub name: StepId,
    /// What its numbers measure, in SI.
    pub kind: Kind,
    /// How they are rounded.
    pub rounding: Rounding,
}

/// A line of a table.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Line {
    /// Its cells.
    pub cells: Vec<Cell>,
    /// Whether it is the one that the reader looks for: the present project, or what governs.
    pub is_marked: bool,
}

/// What stands in one place of a table.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Cell {
    /// Nothing.
    Nothing,
    /// A number of the column's kind.
    Number(f64),
    /// Two ends between which a number lies.
    Range([f64; 2]),
    /// A number with its own kind, between two ends that may be one, in a column whose rows measure different things.
    Measured {
        /// The ends.
        ends: [f64; 2],
        /// What they measure.
        kind: Kind,
    },
    /// Words of a text table.
    Name(StepId),
    /// Words of the reader, or of a published table.
    Text(String),
    /// An input by its path; `[*]` stands for every item of a list. Whoever shows it says what it is called.
    Input(String),
    /// The title of a check.
    Check(CheckId),
    /// How a check ended.
    Status(Status),
}

impl Column {
    /// A column of numbers that are demanded, rounded up.
    pub const fn up(name: StepId, kind: Kind) -> Column {
        Column { name, kind, rounding: Rounding::Up }
    }

    /// A column of capacities, rounded down.
    pub const fn down(name: StepId, kind: Kind) -> Column {
        Column { name, kind, rounding: Rounding::Down }
    }

    /// A column of numbers rounded to the nearest.
    pub const fn nearest(name: StepId, kind: Kind) -> Column {
        Column { name, kind, rounding: Rounding::Nearest }
    }

    /// A column of words.
    pub const fn words(name: StepId) -> Column {
        Column { name, kind: Kind::Number, rounding: Rounding::Nearest }
    }
}

/// Columns that are the same in every table of their name: listed in the engine's data, where one of them takes a fifth
/// of the code that would make it.
macro_rules! columns {
    ($($column:expr),* $(,)?) => {
        const { &[$($column),*] }.to_vec()
    };
}
pub(crate) use columns;

impl Line {
    /// A plain row.
    pub fn plain(cells: Vec<Cell>) -> Line {
        Line { cells, is_marked: false }
    }
}
