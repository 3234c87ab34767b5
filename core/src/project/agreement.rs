//! What single fields cannot see: whether the parts of a file agree with each other.

use crate::calc::order::put_in_order;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::as_built::FAR_OFF_MM;
use super::draft::{Draft, Item, Ruled};
use super::surroundings::surroundings;
use super::{drilling, neighbour};
use crate::cabinet::{self, anchor, foot, frame, lifting_point};
use crate::calc::Kind;
use crate::geometry::{Point, Rectangle, Size};
use crate::input::{Field, Problem, Range, Reader, Value, Values};
use crate::load_out::{content, state};
use crate::shake_table;
use crate::slab::edge;

/// The key of the embedment in every anchor rule.
pub(super) const EMBEDMENT_KEY: &str = "embedment_mm";
/// Two anchors nearer than this stand on one place.
pub(super) const APART_MM: f64 = 1.0;
/// The frame's centre of gravity is not on the floor, so that whatever is built on it has a height to tip from.
pub(super) const FRAME_CENTRE_MIN_MM: f64 = 1.0;
/// How many times its own size the plan of the cabinet may be left by what stands or hangs on it.
pub(super) const REACH: f64 = 1.0;

/// Finds everything in which the parts of a file disagree. What has a fault already is left out.
pub fn agreement(reader: &mut Reader, draft: &Draft) {
    names(reader, &draft.feet, foot::NAME);
    names(reader, &draft.anchors, anchor::NAME);
    names(reader, &draft.contents, content::NAME);
    names(reader, &draft.states, state::NAME);
    names(reader, &draft.neighbours, neighbour::NAME);
    frame_centre(reader, draft);
    feet(reader, draft);
    anchors(reader, draft);
    brackets(reader, &draft.anchors);
    places(reader, draft, &draft.lifting_points, lifting_point::AT);
    if let (Some(floor), None) = (&draft.floor, &draft.slab) {
        reader.fault(&floor.spot, Problem::NeedsOneOf, "together with slab");
    }
    contents(reader, &draft.contents);
    states(reader, draft);
    surroundings(reader, draft);
    hole(reader, draft);
    if let Some(Ruled { rule: Some(rule), item }) = &draft.site {
        rule_faults(reader, item, rule.fields, rule.faults);
    }
    if let Some(Ruled { rule: Some(rule), item }) = &draft.anchorage {
        rule_faults(reader, item, rule.fields, rule.faults);
    }
    if let Some(item) = &draft.shake_table {
        rule_faults(reader, item, shake_table::fields::FIELDS, shake_table::fields::faults);
    }
}

type RuleFaults = fn(&Values, &mut Vec<(usize, Problem, &'static str)>);

fn rule_faults(reader: &mut Reader, item: &Item, fields: &[Field], faults: RuleFaults) {
    if item.is_sound {
        let mut found = Vec::new();
        faults(&item.values, &mut found);
        for (place, problem, allowed) in found {
            reader.member_fault(&item.spot, fields[place].key, problem, allowed);
        }
    }
}

/// A bracket has a toe and a lever, or neither.
fn brackets(reader: &mut Reader, anchors: &[Item]) {
    for item in anchors.iter().filter(|item| item.is_sound) {
        let [toe, lever] = [anchor::BRACKET_TOE, anchor::BRACKET_LEVER];
        let allowed = "bracket_toe_mm and bracket_lever_mm together";
        match (item.values.number(toe), item.values.number(lever)) {
            (Some(_), None) => reader.missing(&item.spot, anchor::FIELDS[lever].key, allowed),
            (None, Some(_)) => reader.missing(&item.spot, anchor::FIELDS[toe].key, allowed),
            _ => {}
        }
    }
}

/// No name twice in a list.
fn names(reader: &mut Reader, items: &[Item], field: usize) {
    let named = items.iter().enumerate().filter_map(|(place, item)| Some((item.values.text(field)?, place)));
    let mut names: Vec<(&str, usize)> = named.collect();
    put_in_order(&mut names, Ord::cmp);
    for pair in names.chunk_by(|(a, _), (b, _)| a == b) {
        for &(_, place) in &pair[1..] {
            let allowed = format!("a name that {} does not have", items[pair[0].1].spot.path);
            reader.member_fault(&items[place].spot, "name", Problem::DuplicateName, &allowed);
        }
    }
}

fn frame_centre(reader: &mut Reader, draft: &Draft) {
    let (Some(cabinet), Some(frame)) = (&draft.cabinet, &draft.frame) else { return };
    let size = [cabinet::WIDTH, cabinet::DEPTH, cabinet::HEIGHT].map(|side| cabinet.values.number(side));
    let ([Some(width), Some(depth), Some(height)], Some(centre)) = (size, frame.values.numbers(frame::CENTRE)) else {
        return;
    };
    let box_of_it = [(-width / 2.0, width / 2.0), (-depth / 2.0, depth / 2.0), (FRAME_CENTRE_MIN_MM, height)];
    if box_of_it.iter().zip(centre).any(|(&(min, max), at)| at < min || at > max) {
        let allowed = ranges(reader, &box_of_it);
        reader.member_fault(&frame.spot, frame::FIELDS[frame::CENTRE].key, Problem::OutsideCabinet, &allowed);
    }
}

/// `x −500 to 500 mm, y ...` in the reader's units.
fn ranges(reader: &Reader, limits: &[(f64, f64)]) -> String {
    let mut text = String::new();
    for (&(min, max), axis) in limits.iter().zip(["x ", ", y ", ", z "]) {
        text.push_str(axis);
        text.push_str(&Range { kind: Kind::Length, min, max }.text(reader.units));
    }
    text
}

/// Nothing that stands or hangs on the cabinet leaves its plan by more than the plan's own size.
fn places(reader: &mut Reader, draft: &Draft, items: &[Item], at: usize) {
    let Some(cabinet) = &draft.cabinet else { return };
    let size = [cabinet::WIDTH, cabinet::DEPTH].map(|side| cabinet.values.number(side));
    let [Some(width), Some(depth)] = size else { return };
    let limits = [width, depth].map(|side| (-(0.5 + REACH) * side, (0.5 + REACH) * side));
    for item in items {
        if let Some(place) = item.values.numbers(at)
            && limits.iter().zip(place).any(|(&(min, max), at)| at < min || at > max)
        {
            let allowed = ranges(reader, &limits);
            reader.member_fault(&item.spot, "at_mm", Problem::OutsideBase, &allowed);
        }
    }
}

fn feet(reader: &mut Reader, draft: &Draft) {
    places(reader, draft, &draft.feet, foot::AT);
    let mut earlier: Vec<(Rectangle, &Item)> = Vec::new();
    for item in &draft.feet {
        let (values, spot) = (&item.values, &item.spot);
        let key = |field: usize| foot::FIELDS[field].key;
        stem(reader, item);
        known_stiffness(reader, item, key(foot::STIFFNESS), key(foot::PAD_STIFFNESS));
        let Some([width, depth, _]) = values.numbers(foot::SIZE) else { continue };
        if (width == 0.0) != (depth == 0.0) {
            reader.member_fault(spot, key(foot::SIZE), Problem::BelowLimit, "both above 0, or both 0");
        } else if width == 0.0 && values.number(foot::STIFFNESS).is_none() && item.is_sound {
            reader.member_fault(
                spot,
                key(foot::STIFFNESS),
                Problem::Missing,
                "needed for a foot that bears on a point",
            );
        }
        let Some([x, y, _]) = values.numbers(foot::AT) else { continue };
        let foot = Rectangle::around(Point::new(x, y), Size::new(width / 2.0, depth / 2.0));
        if let Some((_, other)) = earlier.iter().find(|(other, _)| overlap(&foot, other)) {
            let allowed = format!("apart from {}", other.spot.path);
            reader.member_fault(spot, key(foot::AT), Problem::OnOnePlace, &allowed);
        }
        earlier.push((foot, item));
        let on_slab = |slab: Rectangle| {
            slab.left_mm <= foot.left_mm
                && foot.right_mm <= slab.right_mm
                && slab.front_mm <= foot.front_mm
                && foot.rear_mm <= slab.rear_mm
        };
        if slab_outline(draft).is_some_and(|slab| !on_slab(slab)) {
            reader.member_fault(spot, key(foot::AT), Problem::OutsideSlab, "the whole foot within slab.edges_mm");
        }
    }
}

/// Two feet share an area, or are points on one place.
pub(super) fn overlap(a: &Rectangle, b: &Rectangle) -> bool {
    a.clipped(b).is_some() || a == b
}

fn stem(reader: &mut Reader, item: &Item) {
    let given = |field: usize| item.spot.member(foot::FIELDS[field].key).is_some();
    for (one, other) in [(foot::STEM_DIAMETER, foot::STEM_LENGTH), (foot::STEM_LENGTH, foot::STEM_DIAMETER)] {
        let key = foot::FIELDS[one].key;
        if given(one) && given(foot::STIFFNESS) {
            reader.member_fault(&item.spot, key, Problem::Excludes, "either stiffness_n_per_mm or a stem");
        } else if given(other) && !given(one) {
            reader.missing(&item.spot, key, "stem_diameter_mm together with stem_length_mm");
        }
    }
}

fn anchors(reader: &mut Reader, draft: &Draft) {
    places(reader, draft, &draft.anchors, anchor::AT);
    let mut earlier: Vec<(Point, &Item)> = Vec::new();
    for (item, own) in draft.anchors.iter().zip(&draft.own) {
        own_faults(reader, draft, item, own);
        let key = |field: usize| anchor::FIELDS[field].key;
        known_stiffness(reader, item, key(anchor::STIFFNESS), key(anchor::CLIP));
        let Some([x, y, _]) = item.values.numbers(anchor::AT) else { continue };
        let at = Point::new(x, y);
        as_built(reader, draft, item, at);
        if let Some((_, other)) = earlier.iter().find(|(other, _)| at.distance_mm(*other) < APART_MM) {
            let allowed = format!("{} or more from {}", reader.units.length(APART_MM), other.spot.path);
            reader.member_fault(&item.spot, "at_mm", Problem::OnOnePlace, &allowed);
        }
        earlier.push((at, item));
        let inside = |slab: Rectangle| slab.left_mm < x && x < slab.right_mm && slab.front_mm < y && y < slab.rear_mm;
        if slab_outline(draft).is_some_and(|slab| !inside(slab)) {
            reader.member_fault(&item.spot, "at_mm", Problem::OutsideSlab, "within slab.edges_mm");
        }
    }
}

/// A hole was drilled near its own mark, in the slab, and apart from other holes.
fn as_built(reader: &mut Reader, draft: &Draft, item: &Item, mark: Point) {
    let key = anchor::FIELDS[anchor::AS_BUILT].key;
    let hole_of = |item: &Item| {
        let [x, y, _] = item.values.numbers(anchor::AS_BUILT).or(item.values.numbers(anchor::AT))?;
        Some(Point::new(x, y))
    };
    let (Some(hole), Some(_)) = (hole_of(item), item.values.numbers(anchor::AS_BUILT)) else { return };
    if mark.distance_mm(hole) > FAR_OFF_MM {
        let far = reader.units.length(FAR_OFF_MM);
        let allowed = format!("within {far} of at_mm, measured in the cabinet's own axes");
        reader.member_fault(&item.spot, key, Problem::FarFromItsMark, &allowed);
        return;
    }
    let others = draft.anchors.iter().filter(|other| other.spot.path != item.spot.path);
    if let Some(other) =
        others.into_iter().find(|other| hole_of(other).is_some_and(|at| at.distance_mm(hole) < APART_MM))
    {
        let allowed = format!("{} or more from {}", reader.units.length(APART_MM), other.spot.path);
        reader.member_fault(&item.spot, key, Problem::OnOnePlace, &allowed);
    }
    let inside = |slab: Rectangle| {
        slab.left_mm < hole.x_mm && hole.x_mm < slab.right_mm && slab.front_mm < hole.y_mm && hole.y_mm < slab.rear_mm
    };
    if slab_outline(draft).is_some_and(|slab| !inside(slab)) {
        reader.member_fault(&item.spot, key, Problem::OutsideSlab, "within slab.edges_mm");
    }
}

/// What the anchor rule finds wrong with the values of one anchor that it did not find with those for all.
fn own_faults(reader: &mut Reader, draft: &Draft, item: &Item, own: &Values) {
    let Some(Ruled { rule: Some(rule), item: of_all }) = &draft.anchorage else { return };
    if !of_all.is_sound || !item.is_sound || own.0.iter().all(|value| *value == Value::Unknown) {
        return;
    }
    let (mut before, mut found) = (Vec::new(), Vec::new());
    (rule.faults)(&of_all.values, &mut before);
    (rule.faults)(&of_all.values.replaced_by(own), &mut found);
    for (place, problem, allowed) in found {
        if !before.contains(&(place, problem, allowed)) {
            reader.member_fault(&item.spot, rule.fields[place].key, problem, allowed);
        }
    }
}

/// A stiffness that is known holds whatever it is made of.
fn known_stiffness(reader: &mut Reader, item: &Item, whole: &str, part: &str) {
    if item.spot.member(whole).is_some() && item.spot.member(part).is_some() {
        let allowed = format!("either {whole} or {part}");
        reader.member_fault(&item.spot, part, Problem::Excludes, &allowed);
    }
}

/// The outline of the slab; `None` where it is not given or has a fault.
pub(super) fn slab_outline(draft: &Draft) -> Option<Rectangle> {
    draft.edges.as_ref().filter(|edges| edges.is_sound).map(|edges| edge::outline(&edges.values))
}

/// A hole is as deep as the anchor in it.
fn hole(reader: &mut Reader, draft: &Draft) {
    let Some(depth_mm) = draft.drilling.as_ref().and_then(|item| item.values.number(drilling::DEPTH)) else { return };
    let (Some(hole), Some(Ruled { rule: Some(rule), item })) = (&draft.drilling, &draft.anchorage) else { return };
    let Some(place) = rule.fields.iter().position(|field| field.key == EMBEDMENT_KEY) else { return };
    let each = draft.own.iter().map(|own| own.number(place)).chain([item.values.number(place)]);
    let deepest_mm = each.flatten().fold(0.0, f64::max);
    if depth_mm < deepest_mm {
        let allowed = format!("at least the embedment, {}", reader.units.length(deepest_mm));
        reader.member_fault(&hole.spot, drilling::FIELDS[drilling::DEPTH].key, Problem::BelowLimit, &allowed);
    }
}

fn contents(reader: &mut Reader, contents: &[Item]) {
    for item in contents {
        if let (Some(travel), Some(drawn_out)) =
            (item.values.number(content::TRAVEL), item.values.number(content::DRAWN_OUT))
            && drawn_out > travel
        {
            let allowed = Range { kind: Kind::Length, min: 0.0, max: travel }.text(reader.units);
            reader.member_fault(&item.spot, content::FIELDS[content::DRAWN_OUT].key, Problem::AboveLimit, &allowed);
        }
    }
}

fn states(reader: &mut Reader, draft: &Draft) {
    for item in &draft.states {
        if item.values.text(state::NAME).is_some_and(state::is_reserved) {
            reader.member_fault(
                &item.spot,
                "name",
                Problem::ReservedName,
                "not full, empty, lowest 1, highest 1 or leaning left 1",
            );
        }
        let Some(drawn) = item.spot.member(state::FIELDS[state::DRAWN_OUT].key) else { continue };
        for &(place, drawn_out) in item.values.numbers_of_contents(state::DRAWN_OUT) {
            let content = &draft.contents[place].values;
            let Some(name) = content.text(content::NAME) else { continue };
            if item.values.contents(state::WITHOUT).binary_search(&place).is_ok() {
                reader.member_fault(&drawn, name, Problem::Excludes, "either without it or drawn out");
            } else if let Some(travel) = content.number(content::TRAVEL)
                && drawn_out > travel
            {
                let allowed = Range { kind: Kind::Length, min: 0.0, max: travel }.text(reader.units);
                reader.member_fault(&drawn, name, Problem::AboveLimit, &allowed);
            }
        }
    }
}
