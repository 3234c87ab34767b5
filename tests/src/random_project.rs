//! Random whole projects as texts, free of faults: the same for the same seed on every machine.

use serde_json::{Map, Value as Json, json};
use steadfoot::calc::System;
use steadfoot::checks::{lifting, moving};
use steadfoot::frame;
use steadfoot::input::{Absent, Field, FieldShape, Value, Values};
use steadfoot::load_case::Format;
use steadfoot::project;
use steadfoot::rules::anchor::ANCHOR_RULES;
use steadfoot::rules::demand::DEMAND_RULES;
use steadfoot::shake_table;

use crate::random::Random;
use crate::random_values::valid_values;

/// A project that the reader takes without a fault. Most stand on four feet and are bolted near them; some have no
/// anchors, no slab, no rule or contents that reach out.
pub fn random_project(random: &mut Random) -> String {
    let [width, depth, height] =
        [(500.0, 1200.0), (600.0, 1600.0), (1200.0, 2600.0)].map(|(low, high)| whole(random, low, high));
    let mut project = json!({
        "format": "steadfoot 1",
        "title": format!("random {}", random.below(1_000_000)),
        "cabinet": {
            "width_mm": width, "depth_mm": depth, "height_mm": height,
            "frame": {
                "mass_kg": whole(random, 100.0, 900.0),
                "centre_mm": [whole(random, -0.1 * width, 0.1 * width), whole(random, -0.1 * depth, 0.1 * depth), whole(random, 0.3 * height, 0.6 * height)],
            },
            "feet": feet(random, width, depth),
            "anchors": anchors(random, width, depth),
        },
        "contents": contents(random, [width, depth, height]),
        "part_filled": random.percent(50),
    });
    let object = project.as_object_mut().expect("a project is an object");
    if random.percent(85) {
        object.insert("slab".into(), slab(random, width.max(depth)));
    }
    let anchor_rule = ANCHOR_RULES[random.below(ANCHOR_RULES.len())];
    if random.percent(95) {
        object.insert("site".into(), site(random, anchor_rule.format));
    }
    if random.percent(85) {
        let values = valid_values(random, anchor_rule.fields, anchor_rule.faults);
        object.insert("anchorage".into(), ruled(anchor_rule.id, anchor_rule.fields, &values));
    }
    if random.percent(30) {
        let points = corners(random, width, depth).into_iter().take(4);
        let points: Vec<Json> = points.map(|[x, y]| json!({ "at_mm": [x, y, height] })).collect();
        object["cabinet"]["lifting_points"] = json!(points);
        let values = valid_values(random, lifting::FIELDS, |_, _| {});
        object.insert("lifting".into(), Json::Object(written(lifting::FIELDS, &values)));
    }
    if random.percent(30) {
        let values = valid_values(random, shake_table::fields::FIELDS, shake_table::fields::faults);
        object.insert("shake_table".into(), Json::Object(written(shake_table::fields::FIELDS, &values)));
    }
    if random.percent(10) {
        let values = valid_values(random, frame::FIELDS, |_, _| {});
        let mut structure = written(frame::FIELDS, &values);
        for key in ["storeys", "posts", "faces_x", "faces_y"] {
            structure.insert(key.into(), json!(2 + random.below(3)));
        }
        object.insert("structure".into(), Json::Object(structure));
    }
    if random.percent(30) {
        let values = valid_values(random, moving::FIELDS, |_, _| {});
        object.insert("moving".into(), Json::Object(written(moving::FIELDS, &values)));
    }
    // With every optional field at random hardly an anchorage is covered: most keep to what has to be said.
    if random.percent(70) {
        let mut plain = project.clone();
        let needed = |key: &String| {
            let field = anchor_rule.fields.iter().find(|field| field.key == key);
            field.is_none_or(|field| matches!(field.absent, Absent::Fault))
        };
        if let Some(anchorage) = plain["anchorage"].as_object_mut() {
            anchorage.retain(|key, _| needed(key));
        }
        if project::read(&plain.to_string(), System::Si).is_ok() {
            return plain.to_string();
        }
    }
    project.to_string()
}

/// A demand rule with its values, mostly one of a format that the anchor rule takes.
fn site(random: &mut Random, format: Format) -> Json {
    let mut tries = if random.percent(85) { 40 } else { 1 };
    loop {
        let rule = DEMAND_RULES[random.below(DEMAND_RULES.len())];
        let values = valid_values(random, rule.fields, rule.faults);
        tries -= 1;
        if tries == 0 || (rule.format)(&values) == format {
            return ruled(rule.id, rule.fields, &values);
        }
    }
}

fn whole(random: &mut Random, low: f64, high: f64) -> f64 {
    random.between(low, high).round()
}

fn corners(random: &mut Random, width: f64, depth: f64) -> Vec<[f64; 2]> {
    let (x, y) = ((random.between(0.35, 0.49) * width).round(), (random.between(0.35, 0.49) * depth).round());
    let mut corners = vec![[-x, -y], [x, -y], [x, y], [-x, y]];
    if random.percent(20) {
        corners.extend([[-x, 0.0], [x, 0.0]]);
    }
    corners
}

fn feet(random: &mut Random, width: f64, depth: f64) -> Json {
    let size = if random.percent(80) { [whole(random, 30.0, 160.0), whole(random, 30.0, 160.0)] } else { [0.0, 0.0] };
    let stiffness = if size == [0.0, 0.0] || random.percent(30) { Some(whole(random, 5e3, 5e5)) } else { None };
    let foot = |(place, at): (usize, [f64; 2])| {
        let mut foot = json!({ "name": format!("foot {}", place + 1), "at_mm": at, "size_mm": size });
        if let Some(stiffness) = stiffness {
            foot["stiffness_n_per_mm"] = json!(stiffness);
        }
        foot
    };
    corners(random, width, depth).into_iter().enumerate().map(foot).collect()
}

fn anchors(random: &mut Random, width: f64, depth: f64) -> Json {
    if random.percent(15) {
        return json!([]);
    }
    let stiffness = random.percent(30).then(|| whole(random, 5e3, 5e5));
    let anchor = |at: [f64; 2]| match stiffness {
        Some(stiffness) => json!({ "at_mm": at, "stiffness_n_per_mm": stiffness }),
        None => json!({ "at_mm": at }),
    };
    corners(random, width, depth).into_iter().map(anchor).collect()
}

fn contents(random: &mut Random, [width, depth, height]: [f64; 3]) -> Json {
    let count = random.below(6);
    let shelf = (0.8 * height / count.max(1) as f64).floor();
    let content = |place: usize| {
        json!({
            "name": format!("tray {}", place + 1),
            "mass_kg": whole(random, 0.0, 600.0),
            "bottom_mm": (0.1 * height).round() + shelf * place as f64,
            "size_mm": [(0.8 * width).round(), (0.7 * depth).round(), (0.7 * shelf).round()],
            "offset_mm": [whole(random, -0.05 * width, 0.05 * width), whole(random, -0.1 * depth, 0.1 * depth)],
            "drawn_out_mm": if random.percent(15) { whole(random, 0.0, 0.5 * depth) } else { 0.0 },
        })
    };
    (0..count).map(content).collect()
}

fn slab(random: &mut Random, side: f64) -> Json {
    let mut edge = || if random.percent(40) { json!(whole(random, side, 3.0 * side)) } else { Json::Null };
    let edges = json!({ "left": edge(), "right": edge(), "front": edge(), "rear": edge() });
    json!({
        "strength_mpa": whole(random, 18.0, 50.0), "thickness_mm": whole(random, 120.0, 500.0), "edges_mm": edges,
        "cracked": random.percent(70), "friction": (random.between(0.1, 0.6) * 100.0).round() / 100.0,
    })
}

/// The object of a rule with its values as the file writes them; what is unknown is left out.
fn ruled(id: &str, fields: &[Field], values: &Values) -> Json {
    let mut object = written(fields, values);
    object.insert("rule".into(), json!(id));
    Json::Object(object)
}

/// Values as the file writes them.
fn written(fields: &[Field], values: &Values) -> Map<String, Json> {
    let mut object = Map::new();
    for (field, value) in fields.iter().zip(&values.0) {
        let written = match (value, &field.shape) {
            (Value::Number(number), _) => json!(number),
            (Value::Numbers(numbers), FieldShape::Numbers { count, .. }) => json!(numbers[..*count]),
            (Value::Choice(place), FieldShape::Choice(words)) => json!(words[*place]),
            (Value::Flag(flag), _) => json!(flag),
            (Value::Text(text), _) => json!(text),
            _ => continue,
        };
        object.insert(field.key.into(), written);
    }
    object
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use steadfoot::calc::System;
    use steadfoot::project;

    use super::random_project;
    use crate::random::Random;

    #[test]
    fn random_projects_have_no_faults_and_reach_every_verdict() {
        let mut random = Random::new(1);
        let mut verdicts = BTreeMap::new();
        for _ in 0..300 {
            let text = random_project(&mut random);
            let project = project::read(&text, System::Si).unwrap_or_else(|faults| panic!("{:?}\n{text}", faults[0]));
            *verdicts.entry(format!("{:?}", project::assess(&project).verdict)).or_insert(0) += 1;
        }
        assert!(verdicts.len() == 3 && verdicts.values().all(|&count| count >= 5), "{verdicts:?}");
    }
}
