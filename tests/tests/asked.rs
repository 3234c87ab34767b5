//! What the owner of the floor is asked: every field is looked at, and every check named is moved by its field.

use std::collections::BTreeMap;

use serde_json::{Value, json};
use steadfoot::calc::{CheckId, System};
use steadfoot::input::field::{Field, FieldShape};
use steadfoot::project::asked::{ASKED, ASKED_PARTS, NOT_ASKED, NOT_OF_SITE, asked_of_site, part_of};
use steadfoot::project::{self, assess};
use steadfoot::rules::demand::DEMAND_RULES;

#[test]
fn every_field_of_slab_floor_and_way_is_asked_or_says_why_not() {
    for id in ASKED_PARTS.iter().filter(|id| **id != "site") {
        let part = part_of(id).unwrap_or_else(|| panic!("no part {id}"));
        let is_whole = ASKED.iter().any(|asked| asked.part == *id && asked.key.is_empty());
        for field in part.fields {
            let asked = ASKED.iter().filter(|asked| asked.part == *id && asked.key == field.key).count();
            let left = NOT_ASKED.iter().filter(|not| not.part == *id && not.key == field.key).count();
            assert_eq!(asked + left + usize::from(is_whole), 1, "{id}.{}", field.key);
        }
    }
    for asked in ASKED {
        let part = part_of(asked.part).expect("a part");
        let is_known = asked.key.is_empty() || part.fields.iter().any(|field| field.key == asked.key);
        assert!(is_known && !asked.checks.is_empty(), "{}.{}", asked.part, asked.key);
    }
    assert!(NOT_ASKED.iter().all(|not| !not.why.is_empty() && part_of(not.part).is_some()));
}

#[test]
fn every_rule_asks_the_owner_what_ground_and_building_are_like() {
    let keys: Vec<&str> = DEMAND_RULES.iter().flat_map(|rule| rule.fields).map(|field| field.key).collect();
    for head in NOT_OF_SITE {
        assert!(keys.iter().any(|key| key.starts_with(head)), "no rule has a field that begins with {head}");
    }
    for rule in DEMAND_RULES {
        let asked: Vec<&str> = asked_of_site(rule.fields).map(|field| field.key).collect();
        assert!(!asked.is_empty(), "{}", rule.id);
        for field in rule.fields.iter().filter(|field| field.key.contains("height") || field.key.contains("soil")) {
            assert!(asked.contains(&field.key), "{}: {}", rule.id, field.key);
        }
    }
}

/// A cabinet near an edge of a slab, anchored, on a raised floor, rolled in.
fn base(floor: Value) -> Value {
    let foot = |x: i32, y: i32| json!({ "name": format!("{x} {y}"), "at_mm": [x, y], "size_mm": [120, 120] });
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1000, "depth_mm": 1200, "height_mm": 2200, "frame": { "mass_kg": 900, "centre_mm": [0, 0, 1000] },
            "feet": [foot(-430, -530), foot(430, -530), foot(430, 530), foot(-430, 530)],
            "anchors": [{ "at_mm": [-450, -560] }, { "at_mm": [450, -560] }, { "at_mm": [450, 560] }, { "at_mm": [-450, 560] }] },
        "slab": { "strength_mpa": 28, "thickness_mm": 200, "edges_mm": { "front": 760 }, "boundary_mm": {}, "openings": [] },
        "floor": floor,
        "moving": { "sill_mm": 10, "slope": 0.02 },
        "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": 0.8, "vertical_coefficient": 0.1,
            "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2.0 },
        "anchorage": { "rule": "aci-318-19-si", "bolt": "M16", "steel": "f1554-36", "embedment_mm": 125 } })
}

fn floors() -> Vec<Value> {
    let way = |mut floor: Value, raised: Value| {
        floor["raised"] = raised;
        floor["casters"] = json!({ "radius_mm": 75, "width_mm": 50, "tread": "nylon" });
        floor
    };
    let ground = json!({ "kind": "on-ground", "pitch_mm": [1000, 2400] });
    let with = |mut floor: Value, more: Value| {
        for (key, value) in more.as_object().expect("an object") {
            floor[key] = value.clone();
        }
        floor
    };
    let known = with(ground.clone(), json!({ "subgrade_n_per_mm3": 0.05 }));
    let fabric = json!({ "reinforcement": "fabric", "effective_depth_mm": 100, "reinforcement_ratio": 0.004, "tensile_strength_mpa": 1.9 });
    let fibres = json!({ "reinforcement": "fibres", "residual_moment_n": 8000, "tensile_strength_mpa": 1.9 });
    let suspended = json!({ "kind": "suspended", "reinforcement": "fabric", "effective_depth_mm": 160, "reinforcement_ratio": 0.004,
        "span_mm": 5000, "live_load_mpa": 0.01, "concentrated_load_n": 5000, "pitch_mm": [1000, 2400], "load_factors": "en-1990" });
    vec![
        way(
            known.clone(),
            json!({ "working_load_n": 4000, "rolling_n": 5000, "pedestal_n": 12_000, "uniform_load_mpa": 0.01 }),
        ),
        way(ground, json!({ "en_class": "3" })),
        way(with(known.clone(), fabric), json!({ "psa_grade": "medium" })),
        with(known, fibres),
        suspended.clone(),
        with(suspended, json!({ "live_load_mpa": null, "concentrated_load_n": null, "occupancy": "us-office" })),
    ]
}

/// What each check says, as text.
fn said(value: &Value) -> Option<BTreeMap<&'static str, String>> {
    let project = project::read(&value.to_string(), System::Si).ok()?;
    let told = assess(&project).checks.into_iter();
    Some(
        told.map(|told| {
            (
                told.id,
                format!("{:?} {:?} {:?} {:?} {:?}", told.status, told.value, told.limit, told.utilisation, told.reason),
            )
        })
        .collect(),
    )
}

/// Other answers to a field.
fn others(field: &Field) -> Vec<Value> {
    match field.shape {
        FieldShape::Number { min, max, .. } => [1.3, 0.7, 0.05, 900.0]
            .iter()
            .map(|factor| json!((factor * 1.0_f64).clamp(min, max)))
            .chain([json!(min), json!(max), json!((min * max).sqrt()), json!(0.6 * max)])
            .collect(),
        FieldShape::Numbers { count, .. } => vec![json!(vec![1500.0; count]), json!(vec![4000.0; count])],
        FieldShape::Choice(words) => words.iter().map(|word| json!(word)).collect(),
        FieldShape::Flag => vec![json!(true), json!(false)],
        _ => Vec::new(),
    }
}

#[test]
fn every_check_that_is_said_to_wait_for_an_answer_is_moved_by_it() {
    let bases: Vec<Value> = floors().into_iter().map(base).collect();
    let before: Vec<_> = bases.iter().map(|base| said(base).expect("a base is sound")).collect();
    for asked in ASKED {
        let part = part_of(asked.part).expect("a part");
        let pointer = format!("/{}", part.path.trim_end_matches("[]").replace('.', "/"));
        let answers: Vec<(&str, Value)> = match part.fields.iter().find(|field| field.key == asked.key) {
            Some(field) => others(field).into_iter().map(|other| (asked.key, other)).collect(),
            None if asked.part == "opening" => vec![("", json!([{ "at_mm": [450, -665], "size_mm": [60, 60] }]))],
            None => vec![("front", json!(700)), ("left", json!(600)), ("front", json!(660))],
        };
        let mut waiting: Vec<CheckId> = asked.checks.to_vec();
        'tried: for (base, before) in bases.iter().zip(&before) {
            for (key, answer) in &answers {
                let mut changed = base.clone();
                let Some(place) = changed.pointer_mut(&pointer) else { continue };
                match (key.is_empty(), place.is_null()) {
                    (true, _) => *place = answer.clone(),
                    (false, true) => continue,
                    (false, false) => place[*key] = answer.clone(),
                }
                let Some(after) = said(&changed) else { continue };
                waiting.retain(|check| after.get(check.id()) == before.get(check.id()));
                if waiting.is_empty() {
                    break 'tried;
                }
            }
        }
        assert!(waiting.is_empty(), "{}.{} moves none of {waiting:?}", asked.part, asked.key);
    }
}
