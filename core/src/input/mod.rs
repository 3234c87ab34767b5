//! The reader, fields, their limits, faults.

pub mod fault;
pub mod field;

pub use fault::{Fault, Problem};
pub use field::{Absent, Field, FieldShape, FieldText, Value, Values};
