//! National Building Code of Canada, article 4.1.8.18: elements of structures, non-structural components and equipment.
//!
//! Covers the horizontal force of the editions of 2015 and 2020 with the limits of S_p, and the response factor of the
//! connection. Does not cover: deflections (4.1.8.18.(9) and following), the exemptions of single categories.

mod edition_2015;
mod edition_2020;
mod force;

pub use edition_2015::{RULE as RULE_2015, TEXT as TEXT_2015};
pub use edition_2020::{RULE as RULE_2020, TEXT as TEXT_2020};
