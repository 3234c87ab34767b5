//! The fingerprint of an input.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project;

fn plain() -> Value {
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 600, "depth_mm": 800, "height_mm": 2000, "frame": { "mass_kg": 200, "centre_mm": [0, 0, 900] } },
        "contents": [{ "name": "a", "mass_kg": 5, "bottom_mm": 0, "size_mm": [1, 1, 1] }] })
}

#[test]
fn fingerprints_tell_inputs_apart_and_nothing_else() {
    let fingerprint =
        |text: &str| project::read(text, System::Si).map(|project| project.fingerprint).expect("no faults");
    let plain = plain();
    let known = fingerprint(&plain.to_string());
    assert!(known.len() == 12 && known.bytes().all(|byte| byte.is_ascii_hexdigit() && !byte.is_ascii_uppercase()));

    // Spacing, order, defaults written out, ways to write a number, notes of the page.
    assert_eq!(fingerprint(&format!("{plain:#}")), known);
    assert_eq!(fingerprint(&plain.to_string().replace("600", "6.00e2")), known);
    let mut written_out = plain.clone();
    written_out["contents"][0]["offset_mm"] = json!([0, -0.0]);
    written_out["contents"][0]["drawn_out_mm"] = json!(0);
    written_out["part_filled"] = json!(false);
    written_out["slab"] = json!(null);
    written_out["states"] = json!([]);
    written_out["written_by"] = json!("0.0.1");
    assert_eq!(fingerprint(&written_out.to_string()), known);

    let mut others = vec![known];
    let mut differs = |change: &dyn Fn(&mut Value)| {
        let mut changed = plain.clone();
        change(&mut changed);
        others.push(fingerprint(&changed.to_string()));
    };
    differs(&|file| file["title"] = json!("null"));
    differs(&|file| file["title"] = json!(""));
    differs(&|file| file["cabinet"]["width_mm"] = json!(600.0000000000001));
    differs(&|file| file["contents"][0]["name"] = json!("b"));
    differs(&|file| file["contents"][0]["travel_mm"] = json!(0));
    differs(&|file| file["part_filled"] = json!(true));
    differs(&|file| file["cabinet"]["anchors"] = json!([{ "at_mm": [0, 1, ] }]));
    differs(&|file| file["cabinet"]["lifting_points"] = json!([{ "at_mm": [0, 1, 0] }]));
    differs(&|file| file["slab"] = json!({ "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} }));
    differs(&|file| {
        file["slab"] = json!({ "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {}, "cracked": false })
    });
    differs(&|file| file["states"] = json!([{ "name": "a", "without": ["a"] }]));
    differs(&|file| file["states"] = json!([{ "name": "a", "drawn_out_mm": { "a": 0 } }]));
    let count = others.len();
    others.sort();
    others.dedup();
    assert_eq!(others.len(), count, "two inputs have one fingerprint");
}
