//! Nothing passes by silence: what was not pushed, not covered or not held is never told as holding.

use serde_json::{Value, json};
use steadfoot::calc::{Status, System};
use steadfoot::explore::{Ending, LimitOf, limits};
use steadfoot::project::{self, Project, quick};
use steadfoot::report::outcome::{CheckTold, Report, Verdict};
use steadfoot::report::print_sentence;

/// A cabinet on four feet and four anchors that holds.
fn cabinet() -> Value {
    let corner = |x: i32, y: i32| json!({ "name": format!("{x} {y}"), "at_mm": [x, y], "size_mm": [120, 120] });
    json!({ "format": "steadfoot 1",
        "cabinet": { "width_mm": 1000, "depth_mm": 1200, "height_mm": 2200, "frame": { "mass_kg": 600, "centre_mm": [0, 0, 1000] },
            "feet": [corner(-400, -500), corner(400, -500), corner(400, 500), corner(-400, 500)],
            "anchors": [{ "at_mm": [-450, -560] }, { "at_mm": [450, -560] }, { "at_mm": [450, 560] }, { "at_mm": [-450, 560] }] },
        "contents": [{ "name": "tray", "mass_kg": 800, "bottom_mm": 800, "size_mm": [800, 1000, 400] }],
        "slab": { "strength_mpa": 28, "thickness_mm": 250, "edges_mm": {} },
        "site": direct(0.3),
        "anchorage": { "rule": "aci-318-19-si", "bolt": "M16", "steel": "f1554-36", "embedment_mm": 125 } })
}

fn direct(horizontal: f64) -> Value {
    json!({ "rule": "direct", "format": "strength", "horizontal_coefficient": horizontal, "vertical_coefficient": 0.0,
            "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": 2.0 })
}

fn read(value: &Value) -> Project {
    project::read(&value.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn assess(value: &Value) -> Report {
    project::assess(&read(value))
}

fn check<'r>(report: &'r Report, id: &str) -> &'r CheckTold {
    report.checks.iter().find(|check| check.id == id).unwrap_or_else(|| panic!("{id} is told"))
}

fn text(report: &Report) -> String {
    let sentences: Vec<String> = report.answer.iter().map(|one| print_sentence(one, System::Si)).collect();
    sentences.join(" ").replace('\u{a0}', " ")
}

#[test]
fn what_nothing_pushes_does_not_hold_by_its_distances() {
    assert_eq!(assess(&cabinet()).verdict, Verdict::Holds);
    let mut project = cabinet();
    project.as_object_mut().expect("an object").remove("site");
    let report = assess(&project);
    assert_eq!(check(&report, "anchor.spacing").status, Status::Holds);
    assert_eq!(report.verdict, Verdict::CannotBeSaid);
    assert_eq!(quick(&read(&project)).0, Verdict::CannotBeSaid);
    assert!(
        text(&report).ends_with("not covered: no seismic rule is chosen, so nothing is pushed."),
        "{}",
        text(&report)
    );
}

#[test]
fn a_rule_that_does_not_reach_is_not_called_absent() {
    let mut project = cabinet();
    project["site"] = json!({ "rule": "asce-7-16", "s_s": 1.0, "site_class": "F", "importance_factor": 1.0,
                              "component": "sheet-metal-cabinet", "attachment_height_m": 0 });
    let report = assess(&project);
    assert_eq!(report.verdict, Verdict::CannotBeSaid);
    let text = text(&report);
    assert!(
        text.starts_with("The seismic rule does not reach this case, so it cannot be said whether it holds"),
        "{text}"
    );
    assert!(text.contains("not covered: site class F") && !text.contains(".."), "{text}");
}

#[test]
fn a_cabinet_that_vertical_motion_lifts_neither_stands_nor_falls_by_its_weight() {
    let mut project = cabinet();
    project["site"]["vertical_coefficient"] = json!(1.5);
    let report = assess(&project);
    assert!(text(&report).contains("before bolting the vertical motion alone would lift it;"), "{}", text(&report));
    for id in ["free.tipping", "free.sliding"] {
        let check = check(&report, id);
        assert_eq!((check.status, check.utilisation), (Status::Fails, None), "{id} has no ratio that looks small");
    }
    for limit in limits(&read(&project)).iter().filter(|limit| limit.of == LimitOf::Free) {
        assert_eq!((limit.ending, limit.low), (Ending::NeverHolds, None), "{limit:?}");
    }
}

/// A block on one wide foot with corner anchors and two shallower ones further in, which lift later.
fn block(horizontal: f64) -> Value {
    let mut project = cabinet();
    project["contents"] = json!([]);
    project["cabinet"]["frame"]["mass_kg"] = json!(4000);
    project["cabinet"]["feet"] = json!([{ "name": "base", "at_mm": [0, 0], "size_mm": [700, 700] }]);
    project["cabinet"]["anchors"] = json!([{ "at_mm": [-450, -450] }, { "at_mm": [450, -450] }, { "at_mm": [450, 450] },
        { "at_mm": [-450, 450] }, { "at_mm": [-250, -250], "embedment_mm": 100 }, { "at_mm": [250, 250], "embedment_mm": 100 }]);
    project["site"] = direct(horizontal);
    project["site"]["overstrength"] = json!(1.0);
    project
}

/// The same with every stiffness said to be known, the anchors' this many times that of their steel.
fn known_stiffness(horizontal: f64, factor: f64) -> Value {
    let mut project = block(horizontal);
    let concrete_mpa = 4700.0 * f64::sqrt(28.0);
    project["cabinet"]["feet"][0]["stiffness_n_per_mm"] = json!(1.13 * concrete_mpa * 700.0 / 0.96);
    for anchor in project["cabinet"]["anchors"].as_array_mut().expect("anchors") {
        let embedment_mm = anchor["embedment_mm"].as_f64().unwrap_or(125.0);
        anchor["stiffness_n_per_mm"] = json!(factor * 200_000.0 * 156.7 / embedment_mm);
    }
    project
}

#[test]
fn a_check_that_stops_at_one_end_of_the_span_is_not_told_as_holding() {
    let breakout = |project: &Value| check(&assess(project), "anchor.tension.breakout").status;
    assert_eq!(breakout(&known_stiffness(0.104, 1.0)), Status::Holds);
    assert_eq!(breakout(&known_stiffness(0.104, 0.25)), Status::NotCovered);
    assert_eq!(breakout(&block(0.104)), Status::NotCovered);
}

#[test]
fn tension_with_shear_is_not_covered_where_one_of_its_modes_is_not() {
    let mut project = cabinet();
    let anchors = project["cabinet"]["anchors"].as_array_mut().expect("anchors");
    anchors.push(json!({ "at_mm": [-350, -560], "embedment_mm": 80 }));
    let report = assess(&project);
    assert_eq!(check(&report, "anchor.tension.breakout").status, Status::NotCovered);
    assert_eq!(check(&report, "anchor.interaction").status, Status::NotCovered);
}

#[test]
fn bearing_is_not_covered_on_concrete_weaker_than_structural() {
    let mut project = cabinet();
    for (strength_mpa, status) in [(17.0, Status::Holds), (16.9, Status::NotCovered)] {
        project["slab"]["strength_mpa"] = json!(strength_mpa);
        assert_eq!(check(&assess(&project), "foot.bearing").status, status, "{strength_mpa} MPa");
    }
}

#[test]
fn anchors_behind_hold_a_cabinet_that_leans_over_its_feet() {
    // Two feet on a line, anchors behind it, the centre of gravity before it: gravity alone pulls the anchors, and only a
    // push to the rear of more than 0.9 x 100 / 200 of the weight would turn it backwards over the line.
    let mut project = cabinet();
    project["contents"] = json!([]);
    project["cabinet"]["frame"]["centre_mm"] = json!([0, -100, 200]);
    let foot =
        |x: i32| json!({ "name": format!("{x}"), "at_mm": [x, 0], "size_mm": [0, 0], "stiffness_n_per_mm": 1e5 });
    project["cabinet"]["feet"] = json!([foot(-400), foot(400)]);
    project["cabinet"]["anchors"] = json!([{ "at_mm": [-450, 300] }, { "at_mm": [450, 300] }]);
    project["site"] = direct(0.1);
    let report = assess(&project);
    let equilibrium = check(&report, "base.equilibrium");
    assert_eq!(equilibrium.status, Status::Holds);
    let by_hand = 2.0 * 0.1 * 200.0 / (0.9 * 100.0);
    assert!((equilibrium.utilisation.expect("a ratio") - by_hand).abs() < 1e-9, "{:?}", equilibrium.utilisation);
    project["cabinet"]["frame"]["centre_mm"] = json!([0, 100, 200]);
    assert_eq!(check(&assess(&project), "base.equilibrium").status, Status::Fails);
}

#[test]
fn anchors_are_not_designed_as_in_a_category_that_the_demand_rules_out() {
    let sites = |strength: f64| {
        [
            json!({ "rule": "asce-7-16", "s_ds": strength, "importance_factor": 1.0, "component": "sheet-metal-cabinet", "attachment_height_m": 0 }),
            json!({ "rule": "asce-7-22", "s_ds": strength, "importance_factor": 1.0, "component": "sheet-metal-cabinet", "attachment_height_m": 0 }),
            json!({ "rule": "ubc-1997", "zone": if strength < 0.33 { "1" } else { "2A" }, "importance_factor": 1.0, "component": "cabinet",
                    "anchor_type": "shallow", "attachment_height_m": 0 }),
        ]
    };
    let mut project = cabinet();
    project["anchorage"]["seismic_category"] = json!("A-B");
    for (strength, verdict) in [(0.329, Verdict::Holds), (0.33, Verdict::CannotBeSaid)] {
        for site in sites(strength) {
            project["site"] = site;
            assert_eq!(assess(&project).verdict, verdict, "{} {strength}", project["site"]["rule"]);
        }
    }
    assert_eq!(check(&assess(&project), "anchor.anchorage").status, Status::NotCovered);
}

#[test]
fn anchors_given_as_deep_are_eight_diameters_deep() {
    let mut project = cabinet();
    project["site"] = json!({ "rule": "ubc-1997", "zone": "3", "importance_factor": 1.0, "component": "cabinet",
                              "anchor_type": "deep", "attachment_height_m": 0 });
    project["anchorage"]["overstrength"] = json!(1.0);
    let anchorage = |project: &Value| assess(project).checks.iter().any(|check| check.id == "anchor.anchorage");
    for (embedment_mm, verdict) in [(128.0, Verdict::Holds), (127.9, Verdict::CannotBeSaid)] {
        project["anchorage"]["embedment_mm"] = json!(embedment_mm);
        assert_eq!(assess(&project).verdict, verdict, "{embedment_mm} mm of M16");
    }
    assert!(anchorage(&project));
    project["site"]["anchor_type"] = json!("shallow");
    assert_eq!(assess(&project).verdict, Verdict::Holds);
    project["site"]["anchor_type"] = json!("deep");
    project["site"]["equation"] = json!("32-1");
    assert_eq!(assess(&project).verdict, Verdict::Holds, "the simple equation does not ask how deep they are");
    project["site"]["component"] = json!("isolated");
    assert!(anchorage(&project), "the footnote on isolators does");
}

#[test]
fn anchors_given_as_ductile_are_of_ductile_steel_and_not_adhesive() {
    let mut project = cabinet();
    project["site"] = json!({ "rule": "ubc-1997", "zone": "2A", "importance_factor": 1.0, "component": "cabinet",
                              "anchor_type": "shallow", "attachment_height_m": 0 });
    project["anchorage"]["overstrength"] = json!(1.0);
    let is_refused = |project: &Value| {
        let report = assess(project);
        let refused = report.checks.iter().any(|check| check.id == "anchor.anchorage");
        assert_eq!(report.verdict, if refused { Verdict::CannotBeSaid } else { Verdict::Holds });
        refused
    };
    assert!(!is_refused(&project));
    project["anchorage"]["steel"] = json!("iso-8.8");
    assert!(is_refused(&project), "this class asks for no reduction of area");
    project["anchorage"]["ductility"] = json!("ductile");
    assert!(!is_refused(&project), "a certificate shows it");
    project["cabinet"]["anchors"][2]["ductility"] = json!("brittle");
    assert!(is_refused(&project), "one anchor is enough");
    project["site"]["anchor_type"] = json!("nonductile");
    assert!(!is_refused(&project));
    project["site"]["anchor_type"] = json!("shallow");
    project["site"]["equation"] = json!("32-1");
    assert!(!is_refused(&project), "the simple equation asks nothing of the anchors");
    let mut glued = project.clone();
    glued["site"].as_object_mut().expect("an object").remove("equation");
    glued["anchorage"] = json!({ "rule": "aci-318-19-si", "anchor_kind": "adhesive", "bolt": "M16", "steel": "f1554-36",
                                 "embedment_mm": 125, "overstrength": 1.0 });
    glued["cabinet"]["anchors"][2].as_object_mut().expect("an object").remove("ductility");
    assert!(
        assess(&glued).checks.iter().any(|check| check.id == "anchor.anchorage"),
        "adhesive ones count as nonductile"
    );
}

#[test]
fn anchors_given_as_ductile_are_so_in_the_other_rules_that_ask() {
    let kinds = |kind: &str| {
        let mut project = cabinet();
        project["anchorage"] = json!({ "rule": "aci-318-19-si", "anchor_kind": kind, "bolt": "M16", "steel": "f1554-36",
                                       "embedment_mm": 160, "overstrength": 1.0 });
        project
    };
    let is_refused = |mut project: Value, site: Value| {
        project["site"] = site;
        assess(&project).checks.iter().any(|check| check.id == "anchor.anchorage")
    };
    let nsr = |anchors: &str| {
        json!({ "rule": "nsr-10", "peak_acceleration": 0.25, "soil_coefficient": 1.2, "building_importance": 1.0,
                "component_amplification": 1.0, "anchor_type": anchors, "attachment_height_m": 0 })
    };
    let isolated = |anchors: &str| {
        json!({ "rule": "ubc-1997", "zone": "3", "importance_factor": 1.0, "component": "isolated",
                "anchor_type": anchors, "attachment_height_m": 0 })
    };
    let expansion = "expansion-torque";
    for (kind, site, refused) in [
        ("cast-headed", nsr("ductile"), false),
        ("adhesive", nsr("ductile"), true),
        (expansion, nsr("special"), true),
        (expansion, nsr("nonductile"), false),
        ("cast-headed", isolated("deep"), false),
        (expansion, isolated("deep"), true),
        (expansion, isolated("shallow"), false),
    ] {
        assert_eq!(is_refused(kinds(kind), site.clone()), refused, "{kind} anchors, {site}");
    }
    let of_2005 = |anchors: &str| {
        json!({ "rule": "asce-7-05", "s_ds": 0.5, "importance_factor": 1.0, "component": "sheet-metal-cabinet",
                "anchor_type": anchors, "attachment_height_m": 0 })
    };
    for (kind, ductility, anchors, refused) in [
        ("cast-headed", "as-steel", "qualified", false),
        ("cast-headed", "brittle", "qualified", true),
        ("cast-headed", "brittle", "other", false),
        // A drilled one may be prequalified whatever its steel.
        (expansion, "brittle", "qualified", false),
    ] {
        let mut project = kinds(kind);
        project["anchorage"]["ductility"] = json!(ductility);
        assert_eq!(is_refused(project, of_2005(anchors)), refused, "{kind}, {ductility}, {anchors}");
    }
}

#[test]
fn the_state_that_is_named_is_the_one_that_tips() {
    // The empty frame is tall and tips to the rear, where no anchor helps. Full it is low and does not, but shears its
    // thin bolts by more than the frame is over its edge.
    let mut project = cabinet();
    project["cabinet"]["anchors"] = json!([{ "at_mm": [-450, 560] }, { "at_mm": [450, 560] }]);
    project["contents"][0]["mass_kg"] = json!(6000);
    project["contents"][0]["bottom_mm"] = json!(0);
    project["anchorage"]["bolt"] = json!("M8");
    let report = assess(&project);
    let (tipping, steel) = (check(&report, "base.equilibrium"), check(&report, "anchor.shear.steel"));
    assert_eq!((tipping.status, steel.status), (Status::Fails, Status::Fails));
    assert!(steel.utilisation > tipping.utilisation && tipping.utilisation.is_some());
    let state = |check: &CheckTold| report.states[check.at.expect("a place").state].name.as_str();
    assert_eq!((state(tipping), state(steel)), ("empty", "full"));
    assert!(
        text(&report).starts_with("Empty, with nothing aboard and a push of 0.30 g, it tips over;"),
        "{}",
        text(&report)
    );
}

#[test]
fn contents_beyond_the_frame_are_told() {
    use steadfoot::report::missing::STICKS_OUT;
    let is_told = |project: &Value| assess(project).absent.contains(&STICKS_OUT.code());
    assert!(!is_told(&cabinet()));
    for (field, at, beyond) in [
        ("bottom_mm", json!(1800), json!(1801)),
        ("offset_mm", json!([100, -100]), json!([-101, 0])),
        ("offset_mm", json!([-100, 100]), json!([0, 101])),
    ] {
        let mut project = cabinet();
        project["contents"][0][field] = at;
        assert!(!is_told(&project));
        project["contents"][0][field] = beyond;
        assert!(is_told(&project));
    }
}
