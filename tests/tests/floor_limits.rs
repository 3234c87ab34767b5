//! What presses beside the middle of its foot, beside an opening or beside another foot, and where clauses of floors end.

use serde_json::{Value, json};
use steadfoot::calc::{CheckId, Sheet, Status, System};
use steadfoot::project::{self, assess, working};
use steadfoot::report::outcome::{CheckTold, Report};
use steadfoot::report::text_tables::{text, text_of_code};
use steadfoot::rules::floor::perimeter::LoadedRectangle;
use steadfoot::rules::floor::punching_en::{Carried, strength_n};

/// A cabinet of 2000 kg on feet of 120 mm with stems, on 200 mm of C28 on the ground; nothing holds it down.
fn cabinet(floor: Value, feet: &[[f64; 4]]) -> Value {
    let foot = |[x, y, width, depth]: &[f64; 4]| json!({ "name": format!("{x} {y}"), "at_mm": [x, y], "size_mm": [width, depth], "stem_diameter_mm": 24, "stem_length_mm": 80 });
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1400, "depth_mm": 1300, "height_mm": 2200, "frame": { "mass_kg": 2000, "centre_mm": [0, 0, 1000] },
            "feet": feet.iter().map(foot).collect::<Vec<_>>() },
        "slab": { "strength_mpa": 28, "thickness_mm": 200, "edges_mm": {} },
        "floor": floor,
        "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": 0.1, "vertical_coefficient": 0.1,
            "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2.0 } })
}

const FOUR: [[f64; 4]; 4] = [
    [-430.0, -530.0, 120.0, 120.0],
    [430.0, -530.0, 120.0, 120.0],
    [430.0, 530.0, 120.0, 120.0],
    [-430.0, 530.0, 120.0, 120.0],
];

fn plain() -> Value {
    json!({ "kind": "on-ground", "subgrade_n_per_mm3": 0.05 })
}

fn fibres() -> Value {
    json!({ "kind": "on-ground", "subgrade_n_per_mm3": 0.05, "reinforcement": "fibres", "residual_moment_n": 9000,
        "tensile_strength_mpa": 1.9, "load_factors": "tr-34" })
}

fn report(value: &Value) -> Report {
    let project = project::read(&value.to_string(), System::Si);
    assess(&project.unwrap_or_else(|faults| panic!("{}", faults[0].sentence())))
}

fn told(value: &Value, check: CheckId) -> CheckTold {
    let found = report(value).checks.into_iter().find(|told| told.id == check.id());
    found.unwrap_or_else(|| panic!("{} is told", check.id()))
}

fn reason(check: &CheckTold) -> &'static str {
    check.reason.and_then(text_of_code).map_or("", |row| row.what)
}

#[test]
fn an_opening_beside_a_foot_ends_the_spread_of_its_load_as_an_edge_does() {
    // Feet of a stiffness that is given, so that the slab beside the opening changes no force.
    let stiff = || {
        let mut value = cabinet(plain(), &FOUR);
        for foot in value["cabinet"]["feet"].as_array_mut().expect("feet") {
            let foot = foot.as_object_mut().expect("a foot");
            foot.retain(|key, _| !key.starts_with("stem"));
            foot.insert("stiffness_n_per_mm".into(), json!(200_000));
        }
        value
    };
    let at = |mm: f64| {
        let mut value = stiff();
        value["slab"]["openings"] = json!([{ "at_mm": [430.0 + 60.0 + mm + 100.0, 530.0], "size_mm": [200, 400] }]);
        told(&value, CheckId::FootBearing).utilisation.expect("a number")
    };
    let bare = told(&stiff(), CheckId::FootBearing).utilisation.expect("a number");
    assert!((at(61.0) / bare - 1.0).abs() < 1e-9);
    let mut edge = stiff();
    edge["slab"]["edges_mm"]["right"] = json!(430 + 60 + 20);
    let by_edge = told(&edge, CheckId::FootBearing).utilisation.expect("a number");
    assert!(at(20.0) > 1.2 * bare, "{} {bare}", at(20.0));
    assert!((at(20.0) / by_edge - 1.0).abs() < 0.01, "{} {by_edge}", at(20.0));
}

#[test]
fn plain_concrete_bears_by_its_own_factor_where_the_floor_says_what_it_is() {
    let limit = |floor: Value| told(&cabinet(floor, &FOUR), CheckId::FootBearing).limit.expect("a number");
    let mut fabric = plain();
    fabric["reinforcement"] = json!("fabric");
    assert!((limit(plain()) / limit(fabric) - 0.60 / 0.65).abs() < 1e-9);
}

#[test]
fn a_wide_base_that_is_pressed_beside_its_middle_punches_on_less_of_it() {
    let bases = [[-500.0, 0.0, 200.0, 1200.0], [500.0, 0.0, 200.0, 1200.0]];
    let mut value = cabinet(plain(), &bases);
    let limit = |value: &Value| told(value, CheckId::SlabRestPunching).limit.expect("a number");
    // h_p = 150 mm; the perimeter lies half of that from the load.
    let by_hand = |depth: f64| {
        let beta = f64::max(depth, 200.0) / f64::min(depth, 200.0);
        let factor = f64::min(0.22, 0.11 * (1.0 + 2.0 / beta));
        0.6 * factor * 28f64.sqrt() * (2.0 * 350.0 + 2.0 * (depth + 150.0)) * 150.0
    };
    assert!((limit(&value) / by_hand(1200.0) - 1.0).abs() < 1e-9);
    value["cabinet"]["frame"]["centre_mm"] = json!([0, 150, 1000]);
    assert!((limit(&value) / by_hand(900.0) - 1.0).abs() < 1e-6, "{} {}", limit(&value), by_hand(900.0));
}

#[test]
fn legs_whose_perimeters_meet_punch_as_one_too() {
    // Perimeters 75 mm from the feet meet where the feet are nearer than 150 mm.
    let pairs = |gap: f64| {
        let x = 60.0 + gap / 2.0;
        let feet = [
            [-x, -530.0, 120.0, 120.0],
            [x, -530.0, 120.0, 120.0],
            [-x, 530.0, 120.0, 120.0],
            [x, 530.0, 120.0, 120.0],
        ];
        told(&cabinet(plain(), &feet), CheckId::SlabRestPunching).value.expect("a number")
    };
    let quarter = 1.6 * 2000.0 * 9.80665 / 4.0;
    assert!((pairs(151.0) / quarter - 1.0).abs() < 1e-6, "{}", pairs(151.0));
    assert!((pairs(149.0) / (2.0 * quarter) - 1.0).abs() < 1e-6, "{}", pairs(149.0));
}

#[test]
fn pairs_of_near_legs_have_no_form_of_yield_lines_and_all_are_put_on_one_place() {
    // 2 h = 400 mm: a rectangle whose sides are longer has its form, one with a shorter side has none.
    let four = |y: f64| {
        let feet = [
            [-430.0, -y, 120.0, 120.0],
            [430.0, -y, 120.0, 120.0],
            [430.0, y, 120.0, 120.0],
            [-430.0, y, 120.0, 120.0],
        ];
        told(&cabinet(fibres(), &feet), CheckId::SlabRestBending)
    };
    let weight = 2000.0 * 9.80665;
    let h3 = 200f64.powi(3);
    let l = (4700.0 * 28f64.sqrt() * h3 / (12.0 * (1.0 - 0.15f64.powi(2)) * 0.05)).powf(0.25);
    let negative = 1.9 * 1.4 / 1.5 * 200.0 * 200.0 / 6.0;
    let collapse = |area: f64| {
        let ratio = (area / std::f64::consts::PI).sqrt() / l;
        let of = |ratio: f64| 4.0 * std::f64::consts::PI * (9000.0 + negative) / (1.0 - ratio / 3.0);
        let point = 2.0 * std::f64::consts::PI * (9000.0 + negative);
        if ratio >= 0.2 { of(ratio) } else { point + (of(0.2) - point) * ratio / 0.2 }
    };
    let near = four(199.0).utilisation.expect("a number");
    assert!((near / (1.5 * weight / collapse(2.0 * 14400.0)) - 1.0).abs() < 1e-6, "{near}");
    let far = four(201.0).utilisation.expect("a number");
    assert!(far < near, "{far} {near}");
}

#[test]
fn the_strengths_of_concrete_that_codes_of_punching_are_written_for_are_kept_from_both_sides() {
    let status = |floor: Value, mpa: f64, check: CheckId| {
        let mut value = cabinet(floor, &FOUR);
        value["slab"]["strength_mpa"] = json!(mpa);
        value["site"]["format"] = json!(if check == CheckId::FootBearingEn { "limit-states" } else { "strength" });
        told(&value, check).status
    };
    assert_eq!(status(plain(), 16.9, CheckId::SlabRestPunching), Status::NotCovered);
    assert_eq!(status(plain(), 17.0, CheckId::SlabRestPunching), Status::Holds);
    for (mpa, expected) in
        [(11.9, Status::NotCovered), (12.0, Status::Holds), (90.0, Status::Holds), (90.1, Status::NotCovered)]
    {
        assert_eq!(status(fibres(), mpa, CheckId::SlabRestPunching), expected, "{mpa}");
        assert_eq!(status(plain(), mpa, CheckId::FootBearingEn), expected, "{mpa}");
    }
}

#[test]
fn factors_of_tr34_are_for_its_slabs_and_fibres_for_slabs_on_the_ground() {
    let mut suspended = json!({ "kind": "suspended", "effective_depth_mm": 160, "reinforcement_ratio": 0.005,
        "load_factors": "tr-34", "load_class": "permanent", "reinforcement": "fabric" });
    let quarter = 2000.0 * 9.80665 / 4.0;
    let value = |floor: &Value| told(&cabinet(floor.clone(), &FOUR), CheckId::SlabRestPunching);
    assert!((value(&suspended).value.expect("a number") / (1.35 * quarter) - 1.0).abs() < 1e-6);
    let mut ground = fibres();
    ground["load_class"] = json!("permanent");
    assert!((value(&ground).value.expect("a number") / (1.2 * quarter) - 1.0).abs() < 1e-6);
    suspended["reinforcement"] = json!("fibres");
    suspended.as_object_mut().expect("an object").remove("reinforcement_ratio");
    assert_eq!(value(&suspended).status, Status::NotCovered);
    // On the ground a slab that is said to be plain has no bars, whatever depth and ratio are given.
    let mut bars = plain();
    bars["load_factors"] = json!("en-1990");
    bars["effective_depth_mm"] = json!(160);
    bars["reinforcement_ratio"] = json!(0.005);
    let found = value(&bars);
    assert!(found.status == Status::NotCovered && reason(&found).contains("bars"), "{}", reason(&found));
    bars["reinforcement"] = json!("fabric");
    assert_eq!(value(&bars).status, Status::Holds);
}

#[test]
fn what_keeps_nothing_after_cracking_has_no_yield_lines() {
    let mut nothing = fibres();
    nothing["residual_moment_n"] = json!(0);
    let found = told(&cabinet(nothing, &FOUR), CheckId::SlabRestBending);
    assert!(found.status == Status::NotCovered && reason(&found).contains("fibres keep"), "{}", reason(&found));
}

#[test]
fn the_long_term_factor_of_the_country_counts_at_the_face_of_a_small_foot() {
    let load = LoadedRectangle { sides: [50.0, 50.0], to_edges: [f64::INFINITY; 4] };
    let bars = Carried::Bars { depth_mm: 160.0, ratio: 0.01 };
    let strength = |alpha_cc| strength_n(&load, [30.0, alpha_cc], bars, &mut Sheet::quiet()).expect("covered");
    let face = |alpha_cc: f64| 0.5 * 0.6 * (1.0 - 30.0 / 250.0) * alpha_cc * 30.0 / 1.5 * 200.0 * 160.0;
    assert!((strength(1.0) / face(1.0) - 1.0).abs() < 1e-9, "{} {}", strength(1.0), face(1.0));
    assert!((strength(0.85) / face(0.85) - 1.0).abs() < 1e-9);
}

#[test]
fn how_near_an_edge_a_leg_counts_as_standing_at_it_is_told() {
    let mut value = cabinet(plain(), &FOUR);
    value["slab"]["edges_mm"]["rear"] = json!(1100);
    let project = project::read(&value.to_string(), System::Si).unwrap_or_else(|_| panic!("no fault"));
    let checks = assess(&project).checks;
    let at = checks.iter().find(|told| told.id == CheckId::SlabRestBending.id()).and_then(|told| told.at);
    let sections = working(&project, &at.expect("a place"));
    let steps: Vec<(&str, f64)> = sections
        .iter()
        .filter(|section| section.check == Some(CheckId::SlabRestBending))
        .flat_map(|section| section.steps.iter())
        .filter_map(|step| text(step.id).map(|row| (row.symbol, step.value)))
        .collect();
    let of = |symbol: &str| steps.iter().find(|(known, _)| *known == symbol).map(|(_, value)| *value);
    assert!(steps.contains(&("e", 570.0)), "{steps:?}");
    assert_eq!(of("e_n"), Some(of("l").expect("a radius") + of("a").expect("a contact")));
}

#[test]
fn bolts_of_a_cabinet_on_stems_may_bend_until_somebody_says_how_they_reach_the_concrete() {
    let bolted = |change: &dyn Fn(&mut Value)| {
        let mut value = cabinet(plain(), &FOUR);
        value["cabinet"]["anchors"] = FOUR.map(|[x, y, ..]| json!({ "at_mm": [1.2 * x, 1.2 * y] })).into();
        value["anchorage"] =
            json!({ "rule": "aci-318-19-si", "bolt": "M20", "steel": "f1554-36", "embedment_mm": 140 });
        value["site"]["horizontal_coefficient"] = json!(0.6);
        change(&mut value);
        let report = report(&value);
        [CheckId::AnchorTensionSteel, CheckId::AnchorShearSteel, CheckId::AnchorTensionBreakout].map(|check| {
            report.checks.iter().find(|told| told.id == check.id()).map(|told| told.status).expect("the check is told")
        })
    };
    let (open, holds) = (Status::NotCovered, Status::Holds);
    assert_eq!(bolted(&|_| ()), [open, open, holds]);
    assert_eq!(bolted(&|value| value["anchorage"]["seat"] = json!("concrete")), [holds; 3]);
    assert_eq!(bolted(&|value| value["anchorage"]["seat"] = json!("stand-off")), [open, open, holds]);
    // Brackets stand on the concrete; one without them leaves the question open.
    let brackets = |value: &mut Value, from: usize| {
        for anchor in &mut value["cabinet"]["anchors"].as_array_mut().expect("anchors")[from..] {
            (anchor["bracket_toe_mm"], anchor["bracket_lever_mm"]) = (json!(80), json!(40));
        }
    };
    assert_eq!(bolted(&|value| brackets(value, 0)), [holds; 3]);
    assert_eq!(bolted(&|value| brackets(value, 1)), [open, open, holds]);
    // Without stems the base stands on the concrete.
    let flat = |value: &mut Value| {
        for foot in value["cabinet"]["feet"].as_array_mut().expect("feet") {
            foot.as_object_mut().expect("a foot").retain(|key, _| !key.starts_with("stem"));
        }
    };
    assert_eq!(bolted(&flat), [holds; 3]);
    // What fails without bending fails.
    let harder = |value: &mut Value| value["site"]["horizontal_coefficient"] = json!(6.0);
    assert_eq!(bolted(&harder)[0], Status::Fails);
}

#[test]
fn a_strip_of_a_suspended_slab_feels_every_leg_where_it_stands() {
    let value = |feet: &[[f64; 4]], x: f64, change: &dyn Fn(&mut Value)| {
        let floor =
            json!({ "kind": "suspended", "span_mm": 6000, "distance_to_support_mm": x, "live_load_mpa": 0.005 });
        let mut value = cabinet(floor, feet);
        for foot in value["cabinet"]["feet"].as_array_mut().expect("feet") {
            let foot = foot.as_object_mut().expect("a foot");
            foot.retain(|key, _| !key.starts_with("stem"));
            foot.insert("stiffness_n_per_mm".into(), json!(100_000));
        }
        change(&mut value);
        told(&value, CheckId::FloorStrip).value.expect("a number")
    };
    let weight = 2000.0 * 9.80665;
    let strip = |x: f64| 2.0 * 530.0 + 120.0 + 2.4 * x * (1.0 - x / 6000.0);
    let of = |moment: f64, x: f64| 8.0 * moment / (6000.0 * 6000.0 * strip(x));
    let near = |found: f64, hand: f64| assert!((found / hand - 1.0).abs() < 1e-6, "{found} {hand}");
    near(value(&FOUR, 3000.0, &|_| ()), of(weight / 2.0 * (3000.0 - 430.0), 3000.0));
    // Three rows: the one in the middle stands where the moment is largest.
    let six: Vec<[f64; 4]> =
        [-430.0, 0.0, 430.0].iter().flat_map(|x| [[*x, -530.0, 120.0, 120.0], [*x, 530.0, 120.0, 120.0]]).collect();
    near(value(&six, 3000.0, &|_| ()), of(weight / 2.0 * 3000.0 - weight / 3.0 * 430.0, 3000.0));
    // Beside the middle: the heavier row on either side of the nearer support.
    let beside = |value: &mut Value| value["cabinet"]["frame"]["centre_mm"] = json!([100, 0, 1000]);
    let share = 0.5 + 100.0 * 860.0 / (4.0 * (430.0 * 430.0 + 20.0 * 60.0)) * 2.0 * 430.0 / 860.0;
    let reaction = weight * (share * (6000.0 - 1500.0 + 430.0) + (1.0 - share) * (6000.0 - 1500.0 - 430.0)) / 6000.0;
    let moment = f64::max(reaction * (1500.0 - 430.0), reaction * (1500.0 + 430.0) - share * weight * 860.0);
    let other = weight * (share * (6000.0 - 1500.0 - 430.0) + (1.0 - share) * (6000.0 - 1500.0 + 430.0)) / 6000.0;
    let far = other * (1500.0 + 430.0) - (1.0 - share) * weight * 860.0;
    let by_shear = 2.0 * reaction / (6000.0 * strip(1500.0));
    assert!(by_shear > of(f64::max(moment, far), 1500.0), "near a support the shear decides");
    near(value(&FOUR, 1500.0, &beside), by_shear);
    let at = |x: f64| {
        let reaction = |sense: f64| weight * (6000.0 - x + sense * (2.0 * share - 1.0) * 430.0) / 6000.0;
        let near_row = reaction(1.0) * (x - 430.0);
        f64::max(near_row, reaction(-1.0) * (x + 430.0) - (1.0 - share) * weight * 860.0)
    };
    near(value(&FOUR, 3000.0, &beside), of(at(3000.0), 3000.0));
    assert_eq!(value(&FOUR, 4500.0, &beside), value(&FOUR, 1500.0, &beside));
}
