//! The reader, fields, their limits, faults.

pub mod allowed;
pub mod corner;
pub mod difference;
pub mod fault;
pub mod field;
pub mod number;
pub mod open;
pub mod reader;
pub mod text;
mod value;

pub use allowed::{LimitUnits, Range};
pub use fault::{Fault, Problem};
pub use field::{Absent, Field, FieldShape, FieldText, Value, Values};
pub use open::{Given, MayBe, Open, Setting};
pub use reader::{Reader, Spot};
pub use value::Others;
