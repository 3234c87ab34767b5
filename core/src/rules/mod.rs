//! Published standards, one file or folder an edition.
//!
//! A rule is one `static` and one line in a registry here. Everything else, the form, the reading of its fields, the
//! sheet, the guide's table of rules, the tests, is made from that.

mod asce_7_16;
pub mod demand;
mod direct;
mod documents;
mod table;

pub use demand::{DemandRule, DEMAND_RULES};
