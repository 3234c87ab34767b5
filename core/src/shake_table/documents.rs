//! The documents that say what a shake table must show.

use crate::calc::Document;

/// Acceptance criteria for tests by the ground motion of a building code, with the force equation up to ASCE 7-16.
pub static AC156: Document = Document {
    short: "ICC-ES AC156",
    title: "ICC Evaluation Service, AC156, Acceptance Criteria for Seismic Certification by Shake-Table Testing of Nonstructural \
        Components, with ASCE 7-05 to 7-16",
};

/// The same with the force equation of ASCE 7-22.
pub static AC156_24: Document = Document {
    short: "ICC-ES AC156-24",
    title: "ICC Evaluation Service, AC156, edition of 2024, Acceptance Criteria for Seismic Certification by Shake-Table Testing of \
        Nonstructural Components, with ASCE 7-22",
};

/// Seismic qualification of equipment of substations.
pub static IEEE_693: Document =
    Document { short: "IEEE 693", title: "IEEE Std 693, Recommended Practice for Seismic Design of Substations" };

/// Requirements for telecommunications equipment.
pub static GR_63: Document = Document {
    short: "GR-63-CORE",
    title: "Telcordia GR-63-CORE, NEBS Requirements: Physical Protection, earthquake test",
};
