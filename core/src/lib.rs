//! Steadfoot: from cabinet and load-out to demand, base reactions, anchors, feet and a calculation sheet.
#![no_std]

extern crate alloc;
pub mod base_reactions;
pub mod cabinet;
pub mod calc;
pub mod checks;
pub mod explore;
pub mod floor;
pub mod frame;
pub mod geometry;
pub mod hall;
pub mod input;
pub mod load_case;
pub mod load_out;
pub mod motion;
pub mod project;
pub mod report;
pub mod rules;
pub mod shake_table;
pub mod slab;
pub mod study;

/// Version of the engine, printed on every sheet.
pub const VERSION: &str = env!("CARGO_PKG_VERSION");
