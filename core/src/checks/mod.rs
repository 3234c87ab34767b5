//! The checks: equilibrium, standing free, feet. Anchors are checked by their rule.

pub mod as_built;
mod equilibrium;
pub mod feet;
pub mod floor;
pub mod lifting;
pub mod moving;
pub mod other_tests;
pub mod stability;
pub mod standing_free;
pub mod stiffness;
pub mod thresholds;

pub use equilibrium::{TEXTS as EQUILIBRIUM_TEXTS, check_equilibrium};
