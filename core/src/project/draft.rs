//! The parts of a file as they were read by their tables of fields, faults or not.

use crate::calc::order::put_in_order;
use alloc::vec::Vec;

use super::{drilling, neighbour, row};
use crate::cabinet::{self, anchor, foot, frame, lifting_point};
use crate::checks::{lifting, moving};
use crate::floor;
use crate::input::open::is_open;
use crate::input::text::Json;
use crate::input::{Absent, Field, Others, Problem, Reader, Spot, Value, Values, allowed};
use crate::load_out::{content, state};
use crate::rules::anchor::{ANCHOR_RULES, AnchorRule};
use crate::rules::demand::{DEMAND_RULES, DemandRule};
use crate::shake_table;
use crate::slab::{self, boundary, edge, opening};

/// Everything that was read. Fields with a fault are unknown.
pub struct Draft<'n> {
    pub top: Values,
    pub cabinet: Option<Item<'n>>,
    pub frame: Option<Item<'n>>,
    pub feet: Vec<Item<'n>>,
    pub anchors: Vec<Item<'n>>,
    /// The own values of each anchor, in the order of the anchor rule's fields.
    pub own: Vec<Values>,
    pub lifting_points: Vec<Item<'n>>,
    pub contents: Vec<Item<'n>>,
    pub states: Vec<Item<'n>>,
    pub slab: Option<Item<'n>>,
    pub edges: Option<Item<'n>>,
    pub boundary: Option<Item<'n>>,
    pub openings: Vec<Item<'n>>,
    pub floor: Option<Item<'n>>,
    pub raised: Option<Item<'n>>,
    pub casters: Option<Item<'n>>,
    pub standing: Option<Item<'n>>,
    pub neighbours: Vec<Item<'n>>,
    pub row: Option<Item<'n>>,
    pub drilling: Option<Item<'n>>,
    pub motion: Option<Item<'n>>,
    pub site: Option<Ruled<'n, DemandRule>>,
    pub anchorage: Option<Ruled<'n, AnchorRule>>,
    pub structure: Option<Item<'n>>,
    pub moving: Option<Item<'n>>,
    pub lifting: Option<Item<'n>>,
    pub shake_table: Option<Item<'n>>,
}

/// An object with its values.
pub struct Item<'n> {
    pub spot: Spot<'n>,
    pub values: Values,
    /// Whether none of its fields has a fault.
    pub is_sound: bool,
}

impl Item<'_> {
    /// The values; none are left.
    pub fn take_values(&mut self) -> Values {
        core::mem::take(&mut self.values)
    }
}

/// An object with the rule that says what it holds; none where the rule is missing or unknown.
pub struct Ruled<'n, R: 'static> {
    pub rule: Option<&'static R>,
    pub item: Item<'n>,
}

const NO_OTHERS: Others = Others::Only(&[]);
const CABINET_PARTS: Others = Others::Only(&["frame", "feet", "anchors", "lifting_points"]);
const FLOOR_PARTS: Others = Others::Only(&["raised", "casters", "standing"]);
const SLAB_PARTS: Others = Others::Only(&["edges_mm", "boundary_mm", "openings"]);
// One a line, so that two people can each add one.
#[rustfmt::skip]
const PROJECT_PARTS: Others = Others::Only(&[
    "cabinet",
    "contents",
    "states",
    "slab",
    "floor",
    "site",
    "anchorage",
    "neighbours",
    "row",
    "drilling",
    "motion",
    "structure",
    "moving",
    "lifting",
    "shake_table",
]);

/// Reads every part of the file.
pub fn draft<'n>(reader: &mut Reader<'n>, root: Spot<'n>) -> Draft<'n> {
    // What the file itself is called and how it is assessed is known.
    reader.is_closed = true;
    let top = reader.object(&root, super::FIELDS, PROJECT_PARTS);
    reader.is_closed = false;
    let cabinet = required(reader, &root, "cabinet").map(|spot| item(reader, spot, cabinet::FIELDS, CABINET_PARTS));
    // Contents come before the states that refer to them, and the anchor rule before the anchors that it asks.
    let contents = items(reader, &root, "contents", (allowed::CONTENTS_MAX, content::FIELDS));
    let items_there = root.member("contents").is_none_or(|spot| spot.item_count() == Some(contents.len()));
    reader.contents = items_there.then(|| names_of(&contents));
    let states = items(reader, &root, "states", (state::STATES_MAX, state::FIELDS));
    let slab = part(reader, &root, "slab", (slab::FIELDS, SLAB_PARTS));
    let edges = slab.as_ref().and_then(|slab| required(reader, &slab.spot, "edges_mm"));
    let boundary = slab.as_ref().and_then(|slab| slab.spot.member("boundary_mm"));
    let openings = (opening::OPENINGS_MAX, opening::FIELDS);
    let openings = slab.as_ref().map_or(Vec::new(), |slab| items(reader, &slab.spot, "openings", openings));
    let neighbours = items(reader, &root, "neighbours", (neighbour::NEIGHBOURS_MAX, neighbour::FIELDS));
    let motion = part(reader, &root, "motion", (crate::motion::setting::FIELDS, NO_OTHERS));
    let floor = part(reader, &root, "floor", (floor::FIELDS, FLOOR_PARTS));
    let in_floor = |key: &str| floor.as_ref().and_then(|floor| floor.spot.member(key));
    let [raised, casters, standing] = ["raised", "casters", "standing"].map(in_floor);
    let site = root.member("site").map(|spot| ruled(reader, spot, &DEMAND));
    let anchorage = root.member("anchorage").map(|spot| ruled(reader, spot, &ANCHORS));
    let structure = part(reader, &root, "structure", (crate::frame::FIELDS, NO_OTHERS));
    let moving = part(reader, &root, "moving", (moving::FIELDS, NO_OTHERS));
    let lifting = part(reader, &root, "lifting", (lifting::FIELDS, NO_OTHERS));
    let shake_table = part(reader, &root, "shake_table", (shake_table::fields::FIELDS, NO_OTHERS));
    let mut draft = Draft {
        top,
        frame: None,
        feet: Vec::new(),
        anchors: Vec::new(),
        own: Vec::new(),
        lifting_points: Vec::new(),
        contents,
        states,
        slab,
        edges: edges.map(|spot| item(reader, spot, edge::FIELDS, NO_OTHERS)),
        boundary: boundary.map(|spot| item(reader, spot, boundary::FIELDS, NO_OTHERS)),
        openings,
        raised: raised.map(|spot| item(reader, spot, floor::raised::FIELDS, NO_OTHERS)),
        casters: casters.map(|spot| item(reader, spot, floor::casters::FIELDS, NO_OTHERS)),
        standing: standing.map(|spot| item(reader, spot, floor::standing::FIELDS, NO_OTHERS)),
        floor,
        neighbours,
        row: part(reader, &root, "row", (row::FIELDS, NO_OTHERS)),
        drilling: part(reader, &root, "drilling", (drilling::FIELDS, NO_OTHERS)),
        motion,
        site,
        anchorage,
        structure,
        moving,
        lifting,
        shake_table,
        cabinet: None,
    };
    if let Some(cabinet) = &cabinet {
        let spot = &cabinet.spot;
        draft.frame = required(reader, spot, "frame").map(|spot| item(reader, spot, frame::FIELDS, NO_OTHERS));
        draft.feet = items(reader, spot, "feet", (cabinet::FEET_MAX, foot::FIELDS));
        let lifting_points = (cabinet::LIFTING_POINTS_MAX, lifting_point::FIELDS);
        draft.lifting_points = items(reader, spot, "lifting_points", lifting_points);
        (draft.anchors, draft.own) = anchors(reader, spot, draft.anchorage.as_ref());
    }
    draft.cabinet = cabinet;
    draft
}

fn item<'n>(reader: &mut Reader<'n>, spot: Spot<'n>, fields: &[Field], others: Others) -> Item<'n> {
    let before = reader.count();
    let values = reader.object(&spot, fields, others);
    Item { spot, values, is_sound: reader.count() == before }
}

/// A part that need not be there.
fn part<'n>(
    reader: &mut Reader<'n>,
    parent: &Spot<'n>,
    key: &str,
    (fields, others): (&[Field], Others),
) -> Option<Item<'n>> {
    parent.member(key).map(|spot| item(reader, spot, fields, others))
}

fn items<'n>(reader: &mut Reader<'n>, parent: &Spot<'n>, key: &str, list: (usize, &[Field])) -> Vec<Item<'n>> {
    let (max, fields) = list;
    let spots = reader.list(parent, key, max);
    spots.into_iter().map(|spot| item(reader, spot, fields, NO_OTHERS)).collect()
}

/// A part that has to be there.
fn required<'n>(reader: &mut Reader<'n>, parent: &Spot<'n>, key: &str) -> Option<Spot<'n>> {
    let spot = parent.member(key);
    if spot.is_none() && parent.is_object() {
        reader.missing(parent, key, "an object in braces");
    }
    spot
}

/// An object that names its rule, and what that rule asks for.
fn ruled<'n, R>(reader: &mut Reader<'n>, spot: Spot<'n>, rules: &Registry<R>) -> Ruled<'n, R> {
    let ids = || rules.all.iter().map(|rule| (rules.id)(rule)).collect::<Vec<_>>().join(", ");
    let mut rule = None;
    match spot.member("rule") {
        Some(named) => {
            if let Json::Text(name) = &named.node.json {
                rule = rules.all.iter().find(|rule| (rules.id)(rule) == name).copied();
            }
            if rule.is_none() {
                // The rule decides which fields stand beside it.
                let problem = if is_open(named.node) { Problem::CannotBeOpen } else { Problem::NotAWord };
                reader.fault(&named, problem, &ids());
            }
        }
        None if spot.is_object() => reader.missing(&spot, "rule", &ids()),
        None => {}
    }
    let item = match rule {
        Some(rule) => item(reader, spot, (rules.fields)(rule), Others::Only(&["rule"])),
        None => item(reader, spot, &[], Others::Any),
    };
    Ruled { rule, item }
}

/// The rules of one kind.
struct Registry<R: 'static> {
    all: &'static [&'static R],
    id: fn(&R) -> &'static str,
    fields: fn(&R) -> &'static [Field],
}

static DEMAND: Registry<DemandRule> = Registry { all: DEMAND_RULES, id: |rule| rule.id, fields: |rule| rule.fields };
static ANCHORS: Registry<AnchorRule> = Registry { all: ANCHOR_RULES, id: |rule| rule.id, fields: |rule| rule.fields };

/// The anchors with what they have of their own.
fn anchors<'n>(
    reader: &mut Reader<'n>,
    cabinet: &Spot<'n>,
    anchorage: Option<&Ruled<'n, AnchorRule>>,
) -> (Vec<Item<'n>>, Vec<Values>) {
    let rule = anchorage.and_then(|anchorage| anchorage.rule);
    let keys: Vec<&str> =
        rule.iter().flat_map(|rule| rule.anchor_fields.iter().map(|&place| rule.fields[place].key)).collect();
    let others = if anchorage.is_some() && rule.is_none() { Others::Any } else { Others::Only(&keys) };
    let (mut anchors, mut own) = (Vec::new(), Vec::new());
    for spot in reader.list(cabinet, "anchors", cabinet::ANCHORS_MAX) {
        let mut anchor = item(reader, spot, anchor::FIELDS, others);
        let before = reader.count();
        own.push(Values(rule.map_or(Vec::new(), |rule| {
            let one = |(place, field): (usize, &Field)| {
                if !rule.anchor_fields.contains(&place) {
                    return Value::Unknown;
                }
                reader.field(&anchor.spot, &Field { absent: Absent::Unknown, ..*field })
            };
            rule.fields.iter().enumerate().map(one).collect()
        })));
        anchor.is_sound &= reader.count() == before;
        anchors.push(anchor);
    }
    (anchors, own)
}

/// Names with their places, sorted by name. A name that stands twice is a fault elsewhere.
fn names_of<'n>(contents: &[Item<'n>]) -> Vec<(&'n str, usize)> {
    let mut names: Vec<(&str, usize)> = Vec::new();
    for (place, content) in contents.iter().enumerate() {
        if let Some(spot) = content.spot.member("name")
            && let Json::Text(name) = &spot.node.json
        {
            names.push((name, place));
        }
    }
    put_in_order(&mut names, Ord::cmp);
    names
}
