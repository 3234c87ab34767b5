//! Floors: what published texts say of slabs on the ground, suspended slabs, raised floors, feet and wheels.
//!
//! One noun a file. Every function writes its steps into the section that its caller has opened and gives a number, or
//! the reason why the formula does not reach the case. Working stress and factored load are kept apart by their callers:
//! a stress of a service load is compared with a strength over a factor of safety, a factored one with a reduced strength.

pub mod army;
pub mod base_plate;
pub mod bearing;
pub mod documents;
pub mod flexible_base;
pub mod foot_plate;
pub mod free_edge;
pub mod ioannides;
pub mod kelvin;
pub mod live_load;
pub mod load_factor;
pub mod meyerhof;
pub mod neighbours;
pub mod perimeter;
pub mod punching_aci;
pub mod punching_en;
pub mod raised;
pub mod rectangle_base;
pub mod rolling;
pub mod slab_on_ground;
pub mod subgrade;
pub mod suspended;
pub mod uneven;
pub mod westergaard;
pub mod wheel;
pub mod yield_line;

use crate::calc::StepTable;

/// The texts of all steps of floors.
pub static TABLES: &[&StepTable] = &[
    &slab_on_ground::TEXTS,
    &westergaard::TEXTS,
    &ioannides::TEXTS,
    &neighbours::TEXTS,
    &yield_line::TEXTS,
    &meyerhof::TEXTS,
    &army::TEXTS,
    &punching_aci::TEXTS,
    &punching_en::TEXTS,
    &bearing::TEXTS,
    &foot_plate::TEXTS,
    &suspended::TEXTS,
    &live_load::TEXTS,
    &raised::TEXTS,
    &wheel::TEXTS,
    &rolling::TEXTS,
    &base_plate::TEXTS,
    &flexible_base::TEXTS,
    &load_factor::TEXTS,
    &rectangle_base::TEXTS,
    &uneven::TEXTS,
    &subgrade::TEXTS,
];
