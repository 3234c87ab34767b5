//! The sheet: units, quantities and their text, clauses, formulas, steps, checks.

pub mod check;
pub mod clause;
pub(crate) mod decimal;
pub mod formula;
mod kind;
pub mod limit;
pub mod number;
pub mod order;
pub mod sheet;
pub mod show;
mod step;
pub mod unit;

pub use crate::steps;
pub use check::{CheckId, Outcome, Role, Status, When};
pub use clause::{Clause, Document, Trust};
pub use kind::{Dimension, Kind};
pub use sheet::{Detail, Part, Section, Sheet, Step, Subject};
pub use step::{Shape, StepId, StepTable, StepText};
pub use unit::System;
