//! Everything that is told: the answer, the checks, the sheet, the drawings, the texts.

pub mod answer;
pub mod bars;
pub mod cautions;
pub mod drawing;
pub mod figure;
pub mod missing;
pub mod not_known;
pub mod outcome;
pub mod plot;
mod print;
pub mod sheet_told;
pub mod table;
pub mod text_tables;

pub use print::{print_sentence, print_slot};
