//! The frame: limits of its formulas, what more stiffness does, and where the checks stop.

use serde_json::{Value, json};
use steadfoot::calc::{Role, Status, System};
use steadfoot::frame::whole_movement_mm;
use steadfoot::frame::{Buckling, Column, Curve, Levels, aisc_critical_mpa, column_stiffness_n_per_mm, en_reduction};
use steadfoot::project::{Project, assess, read};
use steadfoot::report::outcome::CheckTold;

fn project(structure: Value, site: Value) -> Value {
    let foot = |(name, x, y): (&str, f64, f64)| json!({ "name": name, "at_mm": [x, y], "size_mm": [0, 0], "stiffness_n_per_mm": 50_000 });
    let feet: Vec<Value> =
        [("a", -400.0, -400.0), ("b", 400.0, -400.0), ("c", 400.0, 400.0), ("d", -400.0, 400.0)].map(foot).into();
    let tray = |place: usize| json!({ "name": format!("tray {place}"), "mass_kg": 120 + 40 * place, "bottom_mm": 300 * place, "size_mm": [700, 700, 200], "offset_mm": [0, 0], "drawn_out_mm": 0 });
    json!({ "format": "steadfoot 1", "cabinet": { "width_mm": 1000, "depth_mm": 1000, "height_mm": 2000,
        "frame": { "mass_kg": 300, "centre_mm": [0, 0, 1000] }, "feet": feet },
        "contents": [tray(1), tray(2), tray(3)], "structure": structure, "site": site })
}

fn site(format: &str) -> Value {
    json!({ "rule": "direct", "format": format, "horizontal_coefficient": 0.4, "vertical_coefficient": 0.1, "gravity_heavy": 1.2, "gravity_light": 0.9 })
}

fn braced() -> Value {
    json!({ "storeys": 2, "sides_x": "cross-brace", "sides_y": "single-brace", "post_area_mm2": 660, "brace_area_mm2": 160,
        "brace_net_area_mm2": 108, "brace_radius_mm": 12, "yield_mpa": 235, "tensile_mpa": 360, "movement_factor": 2.5,
        "gap_mm": 60, "slack_mm": 90, "rail_rating_kg": 400, "latch_n": 2000 })
}

fn one(project: &Value, id: &str) -> CheckTold {
    let project: Project = read(&project.to_string(), System::Si).expect("the project has no fault");
    let found = assess(&project).checks.into_iter().find(|check| check.id == id);
    found.unwrap_or_else(|| panic!("no {id}"))
}

#[test]
fn the_limits_of_a_column_are_the_fixed_and_the_hinged_one() {
    let column = |head_nmm: f64, foot_nmm: f64| {
        column_stiffness_n_per_mm(&Column { bending_nmm2: 1e11, height_mm: 2000.0, head_nmm, foot_nmm })
    };
    let whole = 12.0 * 1e11 / 8e9;
    assert!((column(f64::INFINITY, f64::INFINITY) - whole).abs() < 1e-9);
    assert!((column(f64::INFINITY, 0.0) - whole / 4.0).abs() < 1e-9);
    assert!((column(0.0, f64::INFINITY) - whole / 4.0).abs() < 1e-9);
    assert_eq!(column(0.0, 0.0), 0.0);
    // Springs a thousand million times stiffer or softer than the post come near to both, from the right side.
    assert!((column(1e17, 1e17) / whole - 1.0).abs() < 1e-6 && column(1e17, 1e17) < whole);
    // The same post upside down is as stiff.
    assert!((column(3e8, 7e7) - column(7e7, 3e8)).abs() < 1e-9);
}

#[test]
fn a_portal_of_stiff_posts_and_beams_meets_the_textbook() {
    // kappa = (I_b / L) / (I_c / h): fixed k = 24 EI/h^3 (6 kappa + 1)/(6 kappa + 4), pinned 6 EI/h^3 2 kappa/(2 kappa + 1).
    for (beam, span) in [(1e11, 1200.0), (4e11, 900.0), (2e10, 3000.0)] {
        let (post, height) = (1e11, 2400.0);
        let kappa = (beam / span) / (post / height);
        let unit = post / (height * height * height);
        let portal = |foot_nmm: f64| {
            // A beam in sway holds the heads of its two posts with 6 EI_b / L each.
            let head_nmm = 6.0 * beam / span;
            2.0 * column_stiffness_n_per_mm(&Column { bending_nmm2: post, height_mm: height, head_nmm, foot_nmm })
        };
        let fixed = 24.0 * unit * (6.0 * kappa + 1.0) / (6.0 * kappa + 4.0);
        let pinned = 6.0 * unit * 2.0 * kappa / (2.0 * kappa + 1.0);
        assert!((portal(f64::INFINITY) / fixed - 1.0).abs() < 1e-12);
        assert!((portal(0.0) / pinned - 1.0).abs() < 1e-12);
    }
}

#[test]
fn rayleigh_is_never_below_the_exact_frequency() {
    // Three equal masses and springs: 2 sqrt(k/m) sin(pi / 14).
    let levels = Levels {
        masses_kg: vec![1000.0; 3],
        heights_mm: vec![1.0, 2.0, 3.0],
        storeys_n_per_mm: vec![1000.0; 3],
        posts_nmm2: f64::INFINITY,
        base_nmm: f64::INFINITY,
    };
    let exact = 2.0 * 1e6f64.sqrt() / 1000f64.sqrt() * (std::f64::consts::PI / 14.0).sin();
    let found = (9806.65 / whole_movement_mm(&levels.masses_kg, &levels.movements_mm())).sqrt();
    assert!(found > exact && found < 1.006 * exact);
}

#[test]
fn buckling_falls_with_slenderness_and_curves_keep_their_order() {
    let mut before = f64::INFINITY;
    for step in 1..400 {
        let member = Buckling { slenderness: f64::from(step), yield_mpa: 235.0, modulus_mpa: 210_000.0 };
        let critical = aisc_critical_mpa(&member);
        assert!(critical < before && critical <= 235.0);
        before = critical;
    }
    for step in 1..60 {
        let lambda = 0.05 * f64::from(step);
        let all = [Curve::A0, Curve::A, Curve::B, Curve::C, Curve::D].map(|curve| en_reduction(lambda, curve));
        assert!(all.windows(2).all(|pair| pair[0] >= pair[1]) && all[0] <= 1.0, "{lambda}: {all:?}");
        assert_eq!(lambda <= 0.2, all[4] == 1.0, "{lambda}");
    }
    // Both branches meet where F_y = 2.25 F_e.
    let at = |slenderness: f64| aisc_critical_mpa(&Buckling { slenderness, yield_mpa: 250.0, modulus_mpa: 200_000.0 });
    let limit = std::f64::consts::PI * (200_000.0f64 * 2.25 / 250.0).sqrt();
    assert!((at(limit * 0.999_999) / at(limit * 1.000_001) - 1.0).abs() < 1e-3);
}

#[test]
fn the_checks_of_a_braced_frame_come_with_their_roles() {
    let given = project(braced(), site("strength"));
    assert_eq!(one(&given, "frame.period").role, Role::Information);
    for id in ["frame.brace", "frame.gap", "frame.slack", "frame.rails", "frame.latch"] {
        let check = one(&given, id);
        assert_eq!(check.role, Role::Required, "{id}");
        assert!(check.utilisation.is_some(), "{id}: {:?}", check.status);
    }
}

#[test]
fn more_steel_moves_less() {
    let gap = |area: f64| {
        let mut structure = braced();
        structure["brace_area_mm2"] = json!(area);
        one(&project(structure, site("strength")), "frame.gap").value.unwrap()
    };
    let period = |area: f64| {
        let mut structure = braced();
        structure["brace_area_mm2"] = json!(area);
        one(&project(structure, site("strength")), "frame.period").value.unwrap()
    };
    for step in 1..10 {
        let (less, more) = (40.0 * f64::from(step), 40.0 * f64::from(step + 1));
        assert!(gap(more) < gap(less) && period(more) < period(less));
    }
}

#[test]
fn braces_are_checked_by_the_standard_that_fits_the_demand() {
    let status = |standard: &str, format: &str| {
        let mut structure = braced();
        structure["standard"] = json!(standard);
        one(&project(structure, site(format)), "frame.brace").status
    };
    assert_ne!(status("aisc-360", "strength"), Status::NotCovered);
    assert_ne!(status("aisc-360", "allowable-stress"), Status::NotCovered);
    assert_ne!(status("en-1993", "limit-states"), Status::NotCovered);
    assert_eq!(status("aisc-360", "limit-states"), Status::NotCovered);
    assert_eq!(status("en-1993", "strength"), Status::NotCovered);
    assert_eq!(status("en-1993", "allowable-stress"), Status::NotCovered);
}

#[test]
fn what_is_not_given_is_not_covered_and_never_rigid() {
    let status = |structure: Value, id: &str| one(&project(structure, site("strength")), id).status;
    let portal = json!({ "sides_x": "portal", "sides_y": "portal", "post_inertia_x_mm4": 4e5, "post_inertia_y_mm4": 4e5,
        "beam_inertia_x_mm4": 4e5, "beam_inertia_y_mm4": 4e5, "gap_mm": 50, "movement_factor": 1 });
    assert_eq!(status(portal.clone(), "frame.period"), Status::NotCovered, "corners unknown");
    let with = |key: &str, value: Value| {
        let mut structure = portal.clone();
        structure[key] = value;
        structure
    };
    assert_ne!(status(with("corners", json!("rigid")), "frame.period"), Status::NotCovered);
    assert_eq!(status(with("corners", json!("given")), "frame.period"), Status::NotCovered);
    for key in ["brace_area_mm2", "yield_mpa", "tensile_mpa", "brace_net_area_mm2", "brace_radius_mm"] {
        let mut structure = braced();
        structure.as_object_mut().unwrap().remove(key);
        assert_eq!(status(structure, "frame.brace"), Status::NotCovered, "{key}");
    }
    let mut structure = braced();
    structure.as_object_mut().unwrap().remove("movement_factor");
    assert_eq!(status(structure, "frame.gap"), Status::NotCovered);
    let mut bare = project(braced(), site("strength"));
    bare.as_object_mut().unwrap().remove("site");
    assert_eq!(one(&bare, "frame.brace").status, Status::NotCovered);
    let mut footless = project(braced(), site("strength"));
    footless["cabinet"]["feet"] = json!([]);
    assert_eq!(one(&footless, "frame.period").status, Status::NotCovered);
}

#[test]
fn a_frame_that_its_own_weight_pushes_over_does_not_hold() {
    let structure = json!({ "sides_x": "skin", "sides_y": "skin", "skin_mm": 0.1, "skin_share": 0.001, "gap_mm": 9000, "movement_factor": 1 });
    let mut soft = project(structure, site("strength"));
    for foot in soft["cabinet"]["feet"].as_array_mut().unwrap() {
        foot["stiffness_n_per_mm"] = json!(5);
    }
    let check = one(&soft, "frame.gap");
    assert_eq!((check.status, check.value), (Status::Fails, None));
}

/// An angle that is bolted by one leg, each limit of its clauses from both sides.
#[test]
fn angles_are_covered_as_far_as_their_clauses_go() {
    let with = |changes: Value, format: &str| {
        let mut structure = braced();
        for (key, value) in json!({ "sides_x": "single-brace", "brace_area_mm2": 480, "brace_radius_mm": 9.73, "brace_axis_radius_mm": 15.1,
            "brace_ends": "angle", "brace_bolts": 3, "brace_thickness_mm": 5, "brace_hole_mm": 14, "brace_edge_mm": 25, "brace_pitch_mm": 40,
            "standard": if format == "limit-states" { "en-1993" } else { "aisc-360" } })
        .as_object()
        .unwrap()
        .iter()
        .chain(changes.as_object().unwrap())
        {
            structure[key] = value.clone();
        }
        one(&project(structure, site(format)), "frame.brace")
    };
    for format in ["strength", "allowable-stress", "limit-states"] {
        assert!(with(json!({}), format).utilisation.is_some(), "{format}");
        for key in ["brace_bolts", "brace_thickness_mm", "brace_hole_mm", "brace_axis_radius_mm"] {
            assert_eq!(with(json!({ key: null }), format).status, Status::NotCovered, "{key}");
        }
        assert_eq!(with(json!({ "brace_bolts": 2.5 }), format).status, Status::NotCovered);
    }
    // The net area is worked out, so none need be given; an angle joined whole needs it.
    assert!(with(json!({ "brace_net_area_mm2": null }), "strength").utilisation.is_some());
    assert_eq!(
        with(json!({ "brace_net_area_mm2": null, "brace_ends": "whole" }), "strength").status,
        Status::NotCovered
    );
    // Shear lag from three bolts on, a single bolt not in compression, and pitch only for two and more.
    assert_eq!(with(json!({ "brace_bolts": 2 }), "strength").status, Status::NotCovered);
    assert_eq!(with(json!({ "brace_bolts": 1 }), "limit-states").status, Status::NotCovered);
    assert_eq!(with(json!({ "brace_pitch_mm": null }), "limit-states").status, Status::NotCovered);
    assert!(with(json!({ "brace_pitch_mm": null }), "strength").utilisation.is_some());
    assert!(with(json!({ "brace_radius_mm": null }), "strength").utilisation.is_some(), "E5 goes by the other axis");
    assert_eq!(with(json!({ "brace_radius_mm": null }), "limit-states").status, Status::NotCovered);
    // 1000 mm wide and storeys of 1000 mm: the brace is 1414.2 mm, and 32 + 1.25 L / r meets 200 at r = 10.522 mm.
    assert!(with(json!({ "brace_axis_radius_mm": 10.53 }), "strength").utilisation.is_some());
    assert_eq!(with(json!({ "brace_axis_radius_mm": 10.51 }), "strength").status, Status::NotCovered);
    // More bolts never carry less, and an end by one leg never more than a whole one.
    let strength = |changes: Value, format: &str| with(changes, format).limit.unwrap();
    assert!(strength(json!({ "brace_bolts": 4 }), "strength") >= strength(json!({}), "strength"));
    let whole = json!({ "brace_ends": "whole", "brace_net_area_mm2": 410, "curve": "b" });
    assert!(strength(json!({ "curve": "b", "brace_bolts": 2 }), "limit-states") != strength(whole, "limit-states"));
}

#[test]
fn tight_anchors_keep_the_base_from_turning_and_loose_ones_do_not() {
    let period = |base_on: Value, anchors: Value| {
        let mut structure = braced();
        structure["base_on"] = base_on;
        let mut given = project(structure, site("strength"));
        given["cabinet"]["anchors"] = anchors;
        one(&given, "frame.period").value.unwrap()
    };
    let four = json!(
        [[-450, -450], [450, -450], [450, 450], [-450, 450]]
            .map(|at| json!({ "at_mm": at, "stiffness_n_per_mm": 60_000 }))
    );
    let feet = period(json!("feet"), four.clone());
    assert!(period(json!("feet-and-anchors"), four) < feet);
    assert_eq!(period(json!("feet-and-anchors"), json!([])), feet);
    assert_eq!(period(json!(null), json!([])), feet);
}

/// 1.5 mm sheets between edges 1000 and 2000 mm apart buckle at 2.58 MPa: 7737 N a face.
#[test]
fn skins_that_buckle_are_not_covered() {
    let gap = |mass_kg: f64| {
        let structure = json!({ "sides_x": "skin", "sides_y": "skin", "skin_mm": 1.5, "skin_share": 0.3, "gap_mm": 900, "movement_factor": 1 });
        let mut given = project(structure, site("strength"));
        given["contents"] = json!([]);
        given["cabinet"]["frame"]["mass_kg"] = json!(mass_kg);
        one(&given, "frame.gap")
    };
    let most = 6.34 * std::f64::consts::PI.powi(2) * 200_000.0 / 10.92 * 0.0015f64.powi(2) * 2.0 * 1.5 * 1000.0
        / (0.4 * 9.80665);
    assert!(gap(0.9999 * most).utilisation.is_some());
    assert_eq!(gap(1.0001 * most).status, Status::NotCovered);
}

/// Without bolts both may rock, and then only the sum is safe, whatever the periods.
#[test]
fn a_gap_by_the_root_of_the_squares_needs_anchors() {
    let gap = |anchors: Value| {
        let mut structure = braced();
        structure["neighbour_movement_mm"] = json!(5);
        structure["neighbour_period_s"] = json!(9);
        let mut given = project(structure, site("strength"));
        given["cabinet"]["anchors"] = anchors;
        one(&given, "frame.gap").value.unwrap()
    };
    let bolted = gap(json!([{ "at_mm": [-450, -450] }, { "at_mm": [450, 450] }]));
    assert!(bolted < gap(json!([])));
}
