//! What only the owner of the floor knows: which fields are put to him, and which checks wait for each.
//!
//! Native: the builder makes the printable page of questions from it, and the page its living copy. Every field of the
//! parts below is either asked or stands among those that are not, with the reason; a test holds that, and that every
//! check named here is moved by its field.

use super::parts::{PARTS, Part};
use crate::calc::CheckId::{self, *};
use crate::input::field::Field;

/// On which floors a question is put.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Put {
    /// On every floor.
    Always,
    /// Where the slab lies on the ground, or nobody has said yet.
    OnGround,
    /// Where the slab is suspended, or nobody has said yet.
    Suspended,
}

/// A question to the owner of the floor.
#[derive(Clone, Copy, Debug)]
pub struct Asked {
    /// Id of the part of the project file.
    pub part: &'static str,
    /// Key of the field; empty where the part is asked for as a whole.
    pub key: &'static str,
    /// On which floors.
    pub put: Put,
    /// Whether an answer to the question before makes this one needless.
    pub is_instead: bool,
    /// The checks that wait for the answer.
    pub checks: &'static [CheckId],
}

/// A field that is not asked for, and why not.
#[derive(Clone, Copy, Debug)]
pub struct NotAsked {
    /// Id of the part.
    pub part: &'static str,
    /// Key of the field.
    pub key: &'static str,
    /// Why not.
    pub why: &'static str,
}

/// The parts whose fields are all looked at here.
pub static ASKED_PARTS: &[&str] = &["slab", "edges", "boundary", "opening", "floor", "raised", "casters", "site"];

const fn asked(part: &'static str, key: &'static str, put: Put, checks: &'static [CheckId]) -> Asked {
    Asked { part, key, put, is_instead: false, checks }
}

const fn instead(part: &'static str, key: &'static str, put: Put, checks: &'static [CheckId]) -> Asked {
    Asked { part, key, put, is_instead: true, checks }
}

/// The questions in their order. Those of the site follow from the rule: see [`asked_of_site`].
#[rustfmt::skip]
pub static ASKED: &[Asked] = &[
    asked("slab", "strength_mpa", Put::Always, &[AnchorTensionBreakout, FootBearing, SlabRestPunching, SlabRestBending]),
    asked("slab", "thickness_mm", Put::Always, &[AnchorThickness, SlabRestPunching, SlabRestBending]),
    asked("edges", "", Put::Always, &[AnchorEdge, AnchorTensionBreakout, SlabRestBending, SlabRestPunching]),
    asked("opening", "", Put::Always, &[AnchorTensionBreakout, SlabRestPunching]),
    asked("boundary", "", Put::Always, &[AnchorTensionBreakout]),
    asked("slab", "friction", Put::Always, &[FreeSliding]),
    asked("floor", "kind", Put::Always, &[SlabRestBending, FloorArea]),
    asked("floor", "reinforcement", Put::Always, &[SlabRestBending, SlabRestPunching]),
    asked("floor", "effective_depth_mm", Put::Always, &[SlabRestPunching]),
    asked("floor", "reinforcement_ratio", Put::Always, &[SlabRestPunching, SlabRestBending]),
    asked("floor", "steel_design_strength_mpa", Put::OnGround, &[SlabRestBending]),
    asked("floor", "residual_moment_n", Put::OnGround, &[SlabRestBending]),
    asked("floor", "subgrade_n_per_mm3", Put::OnGround, &[SlabRestBending, RouteBending, SlabRestRows]),
    instead("floor", "bearing_ratio_percent", Put::OnGround, &[SlabRestBending, RouteBending]),
    instead("floor", "soil", Put::OnGround, &[SlabRestBending, RouteBending]),
    asked("floor", "flexural_strength_mpa", Put::OnGround, &[SlabRestBending, RouteBending]),
    asked("floor", "tensile_strength_mpa", Put::OnGround, &[SlabRestBending]),
    asked("floor", "modulus_mpa", Put::OnGround, &[SlabRestBending]),
    asked("floor", "live_load_mpa", Put::Suspended, &[FloorArea, FloorStrip]),
    instead("floor", "occupancy", Put::Suspended, &[FloorArea, FloorStrip, FloorLeg]),
    asked("floor", "concentrated_load_n", Put::Suspended, &[FloorLeg]),
    asked("floor", "span_mm", Put::Suspended, &[FloorStrip]),
    asked("floor", "span_axis", Put::Suspended, &[FloorStrip]),
    asked("floor", "distance_to_support_mm", Put::Suspended, &[FloorStrip]),
    asked("floor", "pitch_mm", Put::Always, &[FloorArea, SlabRestRows]),
    asked("floor", "aisle_load_mpa", Put::Suspended, &[FloorArea]),
    asked("raised", "stand_to_slab", Put::Always, &[RaisedShaken, RaisedPanel]),
    asked("raised", "working_load_n", Put::Always, &[RaisedPanel]),
    instead("raised", "ultimate_load_n", Put::Always, &[RaisedPanel]),
    instead("raised", "en_class", Put::Always, &[RaisedPanel, RaisedPedestal]),
    asked("raised", "en_safety", Put::Always, &[RaisedPanel]),
    instead("raised", "psa_grade", Put::Always, &[RaisedPanel, RaisedUniform]),
    asked("raised", "uniform_load_mpa", Put::Always, &[RaisedUniform]),
    asked("raised", "pedestal_n", Put::Always, &[RaisedPedestal]),
    asked("raised", "rolling_n", Put::Always, &[RoutePanel]),
    asked("casters", "dynamic_factor", Put::Always, &[RoutePanel, RouteBending]),
    asked("moving", "sill_mm", Put::Always, &[MoveSill]),
    asked("moving", "slope", Put::Always, &[MovePush, MoveBrake]),
];

const fn not(part: &'static str, key: &'static str, why: &'static str) -> NotAsked {
    NotAsked { part, key, why }
}

/// Fields of the same parts that no owner is asked for.
#[rustfmt::skip]
pub static NOT_ASKED: &[NotAsked] = &[
    not("slab", "cracked", "in an earthquake anchors take concrete as cracked, whatever is said of it"),
    not("floor", "load_class", "how the weight is counted is the engineer's choice"),
    not("floor", "load_factors", "the frame of load factors is the engineer's choice"),
    not("floor", "poisson", "a usual value; the answer hardly feels it"),
    not("floor", "edge_form", "which published form is taken is the engineer's choice"),
    not("floor", "corner_form", "which published form is taken is the engineer's choice"),
    not("floor", "alpha_cc", "the country's choice, in its national annex"),
    not("floor", "foot_plate_mm", "known of the cabinet"),
    not("floor", "foot_plate_yield_mpa", "known of the cabinet"),
    not("floor", "foot_plate_stem", "known of the cabinet"),
    not("floor", "wanted_pressure_mpa", "a wish of the engineer"),
    not("floor", "stands_on", "known of the cabinet"),
    not("floor", "grout_mm", "known of the installation"),
    not("floor", "grout_strength_mpa", "known of the installation"),
    not("raised", "legs_on_a_panel", "follows from where the cabinets stand"),
    not("casters", "wheels", "known of the cabinet"),
    not("casters", "radius_mm", "known of the cabinet"),
    not("casters", "width_mm", "known of the cabinet"),
    not("casters", "tread", "known of the cabinet"),
    not("casters", "tread_modulus_mpa", "known of the cabinet"),
    not("casters", "rolling_lever_mm", "follows from tread and floor"),
    not("casters", "slope", "asked for with the way in, where moving is checked"),
];

/// How keys of seismic rules begin that are about the cabinet, its anchors or the reckoning: no owner is asked for them.
pub static NOT_OF_SITE: &[&str] = &[
    "allowable_response",
    "amplification",
    "anchor_",
    "basis",
    "behaviour_factor",
    "component",
    "directions",
    "equation",
    "fixings",
    "flexibility",
    "force_limit",
    "format",
    "gravity_",
    "isolator_gap_mm",
    "load_factors",
    "method",
    "overstrength",
    "part_class",
    "seismic_class",
    "state_factor",
    "class_factor",
    "vertical_coefficient",
    "vertical_ratio",
];

/// Whether the owner is asked for a field of a seismic rule: what the ground and the building are like.
///
/// ```
/// use steadfoot::project::asked::is_asked_of_site;
/// assert!(is_asked_of_site("roof_height_m") && is_asked_of_site("site_class"));
/// assert!(!is_asked_of_site("component_amplification"));
/// ```
pub fn is_asked_of_site(key: &str) -> bool {
    !NOT_OF_SITE.iter().any(|head| key.starts_with(head))
}

/// The fields of a seismic rule that the owner is asked for.
pub fn asked_of_site(fields: &'static [Field]) -> impl Iterator<Item = &'static Field> {
    fields.iter().filter(|field| is_asked_of_site(field.key))
}

/// The part of a question.
pub fn part_of(id: &str) -> Option<&'static Part> {
    PARTS.iter().find(|part| part.id == id)
}
