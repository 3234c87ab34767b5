//! Shared pieces of the tests: random cabinets, reading of the check values.

pub mod anchorages;
pub mod demand_input;
pub mod demand_world;
pub mod edited;
pub mod en_anchor;
pub mod engine_opened;
pub mod one_anchor;
pub mod proof;
pub mod random;
pub mod random_anchorage;
pub mod random_project;
pub mod random_scene;
pub mod random_values;

pub use steadfoot_site::check_value as values;
pub use steadfoot_site::check_value::{run_anchors, run_demand, statics};
