//! The parts of a project file, described once: the form on the page, the JSON Schema and the guide are made from it.
//!
//! Only native code refers to it; the builder bakes it for the page.

use super::{drilling, neighbour, row};
use crate::cabinet::{self, anchor, foot, frame, lifting_point};
use crate::checks::{lifting, moving};
use crate::floor;
use crate::input::allowed::CONTENTS_MAX;
use crate::input::{Field, FieldText};
use crate::load_out::{content, state};
use crate::shake_table;
use crate::slab::{self, boundary, edge, opening};

/// One part of the file.
pub struct Part {
    /// A short name for it, of one word: `foot`.
    pub id: &'static str,
    /// Where it stands: `cabinet.feet[]`; the brackets stand for the place in a list. Empty for the file itself.
    pub path: &'static str,
    /// Whether it has to be there.
    pub presence: Presence,
    /// Its fields, without those of a rule.
    pub fields: &'static [Field],
    /// Their texts, in the same order.
    pub texts: &'static [FieldText],
    /// The rules that bring fields of their own into it.
    pub rules: Rules,
    /// Its heading; of a list, in the plural.
    pub title: &'static str,
    /// What one item of it is called; of a list, for buttons such as "Add a foot".
    pub noun: &'static str,
    /// One to three plain sentences: what it is for, and what is not checked without it.
    pub help: &'static str,
    /// JSON of a part or an item to begin with, when the reader adds one.
    pub fresh: &'static str,
}

/// Whether a part has to be there.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Presence {
    /// It has to be there.
    Required,
    /// Without it something is not checked, and that is said.
    Optional,
    /// A list of items; an absent list is an empty one.
    List {
        /// Most items.
        max: usize,
    },
}

/// Which rules bring fields of their own into a part.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Rules {
    /// None.
    None,
    /// The key `rule` names a demand rule, whose fields follow.
    Demand,
    /// The key `rule` names an anchor rule, whose fields follow.
    Anchor,
    /// The fields that the chosen anchor rule lets a single anchor have otherwise, all of them optional here.
    AnchorOwn,
}

/// All parts, in the order of the form.
pub static PARTS: &[Part] = &[
    Part {
        id: "project",
        path: "",
        presence: Presence::Required,
        fields: super::FIELDS,
        texts: super::FIELD_TEXTS,
        rules: Rules::None,
        title: "Project",
        noun: "project",
        help: "One cabinet at one place, with everything that is checked.",
        fresh: r#"{"format": "steadfoot 1", "title": ""}"#,
    },
    Part {
        id: "cabinet",
        path: "cabinet",
        presence: Presence::Required,
        fields: cabinet::FIELDS,
        texts: cabinet::FIELD_TEXTS,
        rules: Rules::None,
        title: "Cabinet",
        noun: "cabinet",
        help: "Its outer size. Positions are measured from the middle of its base on the floor: to the right and to the rear, as seen by a person in front of it, and upwards.",
        fresh: r#"{"width_mm": 800, "depth_mm": 1200, "height_mm": 2200, "frame": {"mass_kg": 300, "centre_mm": [0, 0, 1000]}}"#,
    },
    Part {
        id: "frame",
        path: "cabinet.frame",
        presence: Presence::Required,
        fields: frame::FIELDS,
        texts: frame::FIELD_TEXTS,
        rules: Rules::None,
        title: "Frame",
        noun: "frame",
        help: "The cabinet without its contents. Where its centre of gravity is not known, the middle of the cabinet is a fair start for an even frame.",
        fresh: r#"{"mass_kg": 300, "centre_mm": [0, 0, 1000]}"#,
    },
    Part {
        id: "content",
        path: "contents[]",
        presence: Presence::List { max: CONTENTS_MAX },
        fields: content::FIELDS,
        texts: content::FIELD_TEXTS,
        rules: Rules::None,
        title: "Contents",
        noun: "content",
        help: "Everything that is put in and taken out: trays, modules, batteries. Each is a box with an even mass.",
        fresh: r#"{"name": "tray", "mass_kg": 100, "bottom_mm": 500, "size_mm": [600, 900, 200], "offset_mm": [0, 0], "drawn_out_mm": 0}"#,
    },
    Part {
        id: "state",
        path: "states[]",
        presence: Presence::List { max: state::STATES_MAX },
        fields: state::FIELDS,
        texts: state::FIELD_TEXTS,
        rules: Rules::None,
        title: "States",
        noun: "state",
        help: "Times of its life beside full and empty, which are always assessed: during service, with a tray taken out, with a drawer drawn out.",
        fresh: r#"{"name": "service", "without": [], "drawn_out_mm": {}}"#,
    },
    Part {
        id: "foot",
        path: "cabinet.feet[]",
        presence: Presence::List { max: cabinet::FEET_MAX },
        fields: foot::FIELDS,
        texts: foot::FIELD_TEXTS,
        rules: Rules::None,
        title: "Feet",
        noun: "foot",
        help: "What it stands on: levelling feet, casters, wide supports. A foot pushes and never pulls. Without feet it tips.",
        fresh: r#"{"name": "foot", "at_mm": [0, 0], "size_mm": [100, 100]}"#,
    },
    Part {
        id: "anchor",
        path: "cabinet.anchors[]",
        presence: Presence::List { max: cabinet::ANCHORS_MAX },
        fields: anchor::FIELDS,
        texts: anchor::FIELD_TEXTS,
        rules: Rules::AnchorOwn,
        title: "Anchors",
        noun: "anchor",
        help: "Where bolts hold it down. An anchor pulls and never pushes. Without anchors it stands free.",
        fresh: r#"{"at_mm": [0, 0]}"#,
    },
    Part {
        id: "lifting_point",
        path: "cabinet.lifting_points[]",
        presence: Presence::List { max: cabinet::LIFTING_POINTS_MAX },
        fields: lifting_point::FIELDS,
        texts: lifting_point::FIELD_TEXTS,
        rules: Rules::None,
        title: "Lifting points",
        noun: "lifting point",
        help: "Where slings are fixed; at least three of them. Lifting is checked where the rigging is given, too.",
        fresh: r#"{"at_mm": [0, 0, 2200]}"#,
    },
    Part {
        id: "slab",
        path: "slab",
        presence: Presence::Optional,
        fields: slab::FIELDS,
        texts: slab::FIELD_TEXTS,
        rules: Rules::None,
        title: "Slab",
        noun: "slab",
        help: "The concrete under it. Without it neither anchors in concrete nor bearing under the feet are checked.",
        fresh: r#"{"strength_mpa": 28, "thickness_mm": 200, "edges_mm": {"left": null, "right": null, "front": null, "rear": null}, "cracked": true, "friction": 0.2}"#,
    },
    Part {
        id: "edges",
        path: "slab.edges_mm",
        presence: Presence::Required,
        fields: edge::FIELDS,
        texts: edge::FIELD_TEXTS,
        rules: Rules::None,
        title: "Edges of the slab",
        noun: "edges of the slab",
        help: "How far the concrete reaches. A joint or an opening is an edge. An edge that is left empty counts as far, which is only right where it is.",
        fresh: r#"{"left": null, "right": null, "front": null, "rear": null}"#,
    },
    Part {
        id: "boundary",
        path: "slab.boundary_mm",
        presence: Presence::Optional,
        fields: boundary::FIELDS,
        texts: boundary::FIELD_TEXTS,
        rules: Rules::None,
        title: "Boundaries in the slab",
        noun: "boundaries in the slab",
        help: "Lines beyond which somebody unknown may bolt something down. What breaks out of the concrete is counted up to them only; they are no edges.",
        fresh: r#"{"left": null, "right": null, "front": null, "rear": null}"#,
    },
    Part {
        id: "opening",
        path: "slab.openings[]",
        presence: Presence::List { max: opening::OPENINGS_MAX },
        fields: opening::FIELDS,
        texts: opening::FIELD_TEXTS,
        rules: Rules::None,
        title: "Openings in the slab",
        noun: "opening",
        help: "Shafts, pits, ducts and pipes near the anchors. They cut what breaks out of the concrete, and their sides count as edges.",
        fresh: r#"{"at_mm": [1500, 0], "size_mm": [300, 300]}"#,
    },
    Part {
        id: "floor",
        path: "floor",
        presence: Presence::Optional,
        fields: floor::FIELDS,
        texts: floor::FIELD_TEXTS,
        rules: Rules::None,
        title: "Floor",
        noun: "floor",
        help: "What the slab rests on and what it was designed for. With it, bending and punching of the slab, area loads, the feet's plates, a raised floor and the way in are checked. Needs the slab.",
        fresh: r#"{"kind": "on-ground", "subgrade_n_per_mm3": 0.03}"#,
    },
    Part {
        id: "raised",
        path: "floor.raised",
        presence: Presence::Optional,
        fields: floor::raised::FIELDS,
        texts: floor::raised::FIELD_TEXTS,
        rules: Rules::None,
        title: "Raised floor",
        noun: "raised floor",
        help: "Panels on pedestals over the slab, with the ratings that their maker or the owner gives. They are rated for standing and rolling loads, never for shaking.",
        fresh: r#"{"stand_to_slab": false}"#,
    },
    Part {
        id: "casters",
        path: "floor.casters",
        presence: Presence::Optional,
        fields: floor::casters::FIELDS,
        texts: floor::casters::FIELD_TEXTS,
        rules: Rules::None,
        title: "Wheels on the way in",
        noun: "set of wheels",
        help: "What the cabinet rolls in on, and the way: slab or panels, joints, ramps.",
        fresh: r#"{"radius_mm": 75, "width_mm": 50, "tread": "polyurethane"}"#,
    },
    Part {
        id: "standing",
        path: "floor.standing",
        presence: Presence::Optional,
        fields: floor::standing::FIELDS,
        texts: floor::standing::FIELD_TEXTS,
        rules: Rules::None,
        title: "Ways of standing to compare",
        noun: "comparison of ways of standing",
        help: "Sizes of casters, levelling feet and wide bases for the study that sets the three side by side. Usual sizes are taken where none are given.",
        fresh: r#"{"pad_mm": 100}"#,
    },
    Part {
        id: "site",
        path: "site",
        presence: Presence::Optional,
        fields: &[],
        texts: &[],
        rules: Rules::Demand,
        title: "Site",
        noun: "site",
        help: "How hard the ground and the building shake it, by the rule of the country. Without it nothing is pushed, and only masses are told.",
        fresh: r#"{}"#,
    },
    Part {
        id: "motion",
        path: "motion",
        presence: Presence::Optional,
        fields: crate::motion::setting::FIELDS,
        texts: crate::motion::setting::FIELD_TEXTS,
        rules: Rules::None,
        title: "Standing free: slope, pulse, record",
        noun: "motion",
        help: "What the cabinet is tried under while it is not bolted yet: a slope, a push, a pulse or a recorded motion. Without it the usual values stand.",
        fresh: r#"{"pulse": "one-sine", "pulse_s": 0.5}"#,
    },
    Part {
        id: "shake_table",
        path: "shake_table",
        presence: Presence::Optional,
        fields: shake_table::fields::FIELDS,
        texts: shake_table::fields::FIELD_TEXTS,
        rules: Rules::None,
        title: "Shake table",
        noun: "shake table",
        help: "A test that a cabinet of this kind is to pass, and the rig that does it. It says what the table must show and what the rig must carry; anchors are never designed for it.",
        fresh: r#"{"spectrum": "ac156", "s_ds": 1, "height_ratio": 1, "fixture_mass_kg": 500}"#,
    },
    Part {
        id: "anchorage",
        path: "anchorage",
        presence: Presence::Optional,
        fields: &[],
        texts: &[],
        rules: Rules::Anchor,
        title: "Anchorage",
        noun: "anchorage",
        help: "Which bolts hold it, and by which rule their strength is found. Holds for all anchors that have nothing of their own. Without it the anchors are not checked.",
        fresh: r#"{}"#,
    },
    Part {
        id: "drilling",
        path: "drilling",
        presence: Presence::Optional,
        fields: drilling::FIELDS,
        texts: drilling::FIELD_TEXTS,
        rules: Rules::None,
        title: "Holes to drill",
        noun: "holes to drill",
        help: "What the setting-out sheet says of every hole, from the anchor's approval or its maker's instructions. Nothing is checked with it; bolts that are cast in need none.",
        fresh: r#"{"hole_diameter_mm": null, "hole_depth_mm": null}"#,
    },
    Part {
        id: "neighbour",
        path: "neighbours[]",
        presence: Presence::List { max: neighbour::NEIGHBOURS_MAX },
        fields: neighbour::FIELDS,
        texts: neighbour::FIELD_TEXTS,
        rules: Rules::None,
        title: "Neighbours",
        noun: "neighbour",
        help: "The same cabinet standing again nearby, bolted into the same slab. One motion shakes all, so its anchors pull at the same time and as hard; what is told is about this cabinet.",
        fresh: r#"{"name": "neighbour", "at_mm": [1200, 0]}"#,
    },
    Part {
        id: "row",
        path: "row",
        presence: Presence::Optional,
        fields: row::FIELDS,
        texts: row::FIELD_TEXTS,
        rules: Rules::None,
        title: "A row of this cabinet",
        noun: "row",
        help: "The same cabinet again and again, side by side, tied to each other or not. Asked by the study of rows only; everything else is told of this cabinet by itself.",
        fresh: r#"{"cabinets": 3, "pitch_mm": 1200, "tied": "no"}"#,
    },
    Part {
        id: "structure",
        path: "structure",
        presence: Presence::Optional,
        fields: crate::frame::FIELDS,
        texts: crate::frame::FIELD_TEXTS,
        rules: Rules::None,
        title: "Structure of the frame",
        noun: "structure",
        help: "Posts, beams, braces and skins that keep it upright. Gives its period, how far its top moves, and whether braces, rails and latches hold. Without it the frame is taken to be rigid and is not checked.",
        fresh: r#"{"storeys": 2, "sides_x": "cross-brace", "sides_y": "cross-brace"}"#,
    },
    Part {
        id: "moving",
        path: "moving",
        presence: Presence::Optional,
        fields: moving::FIELDS,
        texts: moving::FIELD_TEXTS,
        rules: Rules::None,
        title: "Moving",
        noun: "way",
        help: "How it comes to its place: pushed over sills and ramps, on the forks of a truck, on the road. Its wheels are taken to be where its feet are. Without it moving is not checked.",
        fresh: r#"{"movers": "men", "people": 2}"#,
    },
    Part {
        id: "lifting",
        path: "lifting",
        presence: Presence::Optional,
        fields: lifting::FIELDS,
        texts: lifting::FIELD_TEXTS,
        rules: Rules::None,
        title: "Lifting",
        noun: "rigging",
        help: "How it hangs on a hook by its lifting points. Without it lifting is not checked. Rigging needs a qualified person.",
        fresh: r#"{"hook_above_mm": 1500}"#,
    },
];
