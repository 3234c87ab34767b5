//! A hall full: a schedule of many cabinets, each a type on a floor with what is aboard, all of them checked.
//!
//! A *schedule* is a text that grows: commas, semicolons or tabs between its cells, or one JSON object a line. It is
//! taken in pieces ([`Schedule`]) and never held as a whole. Its first line, the [`Head`], says what each column is.
//! A *hall* ([`Hall`]) knows the types of cabinets, the floors, storeys and load-outs that the schedule calls by name.
//! Both together make of each row the text of a project, which is read and assessed like any other ([`Hall::row`]):
//! there is no second way to an answer, and a row opens to the very sheet that it came from.
//!
//! What is wrong with a row is told of that row, with its text, and the rows that follow are read on.

mod aboard;
mod base;
mod cells;
mod column;
mod draft;
mod file;
mod measure;
mod path;
mod places;
mod plan;
mod row;
mod schedule;
mod schema;
mod shape;
mod tree;
mod written;

pub use cells::cells;
pub use column::{Column, Head, Separator};
pub use file::{FORMAT_NAME, Hall};
pub use places::PLACES_MAX;
pub use plan::HallPlan;
pub use row::{Row, RowOutcome, Standing, hall_check};
pub use schedule::{RECORD_BYTES_MAX, Record, Schedule};
pub use schema::schema;
pub use written::{RowWords, cell, line, result_head, result_line, result_parts};
