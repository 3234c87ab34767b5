//! Comparison with the limit of a clause.
//!
//! A length of 1.5 in comes back from millimetres as 1.4999999999999998 in, so every limit of a clause is compared
//! here, with a relative slack of 1e-9 to the side that the clause includes.

const SLACK: f64 = 1e-9;

/// `value >= limit`, the clause's "not less than".
///
/// ```
/// use steadfoot::calc::limit::{at_least, less};
/// assert!(at_least(38.1 / 25.4, 1.5) && !less(38.1 / 25.4, 1.5));
/// assert!(!at_least(f64::NAN, 1.5));
/// ```
pub fn at_least(value: f64, limit: f64) -> bool {
    value >= limit - SLACK * limit.abs()
}

/// `value <= limit`, the clause's "not more than".
pub fn at_most(value: f64, limit: f64) -> bool {
    value <= limit + SLACK * limit.abs()
}

/// `value < limit`, strictly: what [`at_least`] does not take.
pub fn less(value: f64, limit: f64) -> bool {
    value < limit - SLACK * limit.abs()
}

/// `value > limit`, strictly: what [`at_most`] does not take.
pub fn more(value: f64, limit: f64) -> bool {
    value > limit + SLACK * limit.abs()
}
