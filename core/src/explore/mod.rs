//! How far can it go: asks `assess` again and again.

mod limit;
mod scaled;

pub use limit::{Ending, Limit, LimitOf, What, limits};
pub use scaled::{scaled_load, scaled_strength, turned};
