//! Shared pieces of the tests: random cabinets, reading of the check values.

pub mod random;
