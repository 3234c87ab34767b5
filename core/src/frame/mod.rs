//! The frame: how stiff the cabinet stands between its braces, its period, how far its top moves, what its braces feel.
//!
//! Storeys in series, each with its posts, braces, skins or portal frames; below them the base that turns on its feet.
//! Pushed straight to the side or straight to the rear, each for itself.

mod angle;
mod axis;
mod brace;
mod cantilever;
mod checks;
mod fields;
mod storey;
mod strength;
mod sway;
mod texts;

pub use angle::TEXTS as ANGLE_TEXTS;
pub use axis::{Axis, Swayed, System as SideSystem};
pub use cantilever::{Cantilevers, TEXTS as CANTILEVER_TEXTS, cantilever_period_s};
pub use checks::Asked;
pub use fields::{BASE_ON, FIELD_TEXTS, FIELDS};
pub use storey::{Column, column_stiffness_n_per_mm};
pub use strength::{Buckling, Curve, aisc_critical_mpa, en_reduction};
pub use sway::{Levels, Sway, whole_movement_mm};
pub use texts::TEXTS;
