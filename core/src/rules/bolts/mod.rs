//! Bolts: threads and their stress areas, heads and their bearing areas, steels and their strengths.

mod bolt;
mod size;
mod steel;

pub use bolt::{Bolt, Head, Shank, TEXTS};
pub use size::{SIZE_WORDS, SIZES, Size, Stud, Thread};
pub use steel::{STEEL_WORDS, STEELS, Steel, Toughness};
