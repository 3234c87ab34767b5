//! Published standards, one file or folder an edition.
//!
//! A rule is one `static` and one line in a registry here. Everything else, the form, the reading of its fields, the
//! sheet, the guide's table of rules, the tests, is made from that.

pub mod demand;

pub use demand::{DemandRule, DEMAND_RULES};
