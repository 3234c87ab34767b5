//! The studies of a free cabinet: thresholds, rocking, fragility, spectra; what they show and what they refuse.

use serde_json::{Value, json};
use steadfoot::calc::System;
use steadfoot::project::{self, Project};
use steadfoot::report::plot::PlotName;
use steadfoot::report::table::{Cell, Table};
use steadfoot::study::rocking::rocking_path;
use steadfoot::study::work::begin_of;
use steadfoot::study::{Picture, Shown, study, tables, text};
use steadfoot_tests::proof::Proof;

fn file() -> Value {
    json!({
        "format": "steadfoot 1",
        "cabinet": { "width_mm": 600, "depth_mm": 1200, "height_mm": 2400,
            "frame": { "mass_kg": 300, "centre_mm": [0, 0, 1200] },
            "feet": [
                { "name": "a", "at_mm": [-250, -550], "size_mm": [100, 100] },
                { "name": "b", "at_mm": [250, -550], "size_mm": [100, 100] },
                { "name": "c", "at_mm": [250, 550], "size_mm": [100, 100] },
                { "name": "d", "at_mm": [-250, 550], "size_mm": [100, 100] }] },
        "contents": [{ "name": "tray", "mass_kg": 400, "bottom_mm": 900, "size_mm": [500, 1000, 900], "travel_mm": 900 }],
        "site": { "rule": "direct", "format": "strength", "horizontal_coefficient": 0.3, "vertical_coefficient": 0.0,
            "gravity_heavy": 1.2, "gravity_light": 0.9 },
        "motion": { "pulse": "one-sine", "pulse_g": 0.4, "pulse_s": 0.5, "record_unit": "g" }
    })
}

fn read(file: &Value) -> Project {
    project::read(&file.to_string(), System::Si).unwrap_or_else(|faults| panic!("{}", faults[0].sentence()))
}

fn shown(id: &str, file: &Value, extra: &str) -> Result<Shown, String> {
    let made = (study(id).expect("the study is there").make)(&read(file), extra);
    made.map_err(|reason| text(reason).expect("the reason has words").what.to_string())
}

fn words(cell: &Cell) -> String {
    match cell {
        Cell::Name(id) => text(*id).unwrap().what.to_string(),
        Cell::Text(text) => text.clone(),
        Cell::Number(number) => number.to_string(),
        other => format!("{other:?}"),
    }
}

fn column(table: &Table, name: &str) -> Vec<String> {
    let place = table.columns.iter().position(|column| text(column.name).unwrap().what == name).expect(name);
    table.rows.iter().map(|line| words(&line.cells[place])).collect()
}

/// A record of a few swings, in g.
fn record(strength: f64) -> String {
    let value = |place: usize| {
        let time_s = place as f64 * 0.02;
        strength * (-((time_s - 3.0) / 1.5).powi(2)).exp() * (7.0 * time_s).sin()
    };
    (0..400).map(|place| format!("{:.2},{:.6}\n", place as f64 * 0.02, value(place))).collect()
}

#[test]
fn the_thresholds_of_every_side_are_those_of_the_checks() {
    let found = shown("standing-free", &file(), "").unwrap();
    let table = &found.tables[0];
    assert_eq!(table.rows.len(), 8, "full and empty, four sides each");
    let least = column(table, "tips at").iter().map(|text| text.parse::<f64>().unwrap()).fold(f64::INFINITY, f64::min);
    let report = project::assess(&read(&file()));
    let tipping = report.checks.iter().find(|check| check.id == "free.tipping").unwrap();
    assert!((least - tipping.limit.unwrap()).abs() < 1e-12);
    assert!(table.rows.iter().filter(|line| line.is_marked).count() == 1);
    // Down a slope it tips and slides sooner.
    let mut sloped = file();
    sloped["motion"]["slope"] = json!(0.0833);
    let other = shown("standing-free", &sloped, "").unwrap();
    for name in ["tips at", "slides at"] {
        let pairs = column(table, name).into_iter().zip(column(&other.tables[0], name));
        assert!(pairs.into_iter().all(|(flat, sloped)| sloped.parse::<f64>().unwrap() < flat.parse::<f64>().unwrap()));
    }
    // The tray drawn out as far as it travels is a test of its own.
    let tests = &found.tables[1];
    assert_eq!(column(tests, "drawn out as far as it travels"), ["as the state has it", "as the state has it", "tray"]);
    let tilt: Vec<f64> = column(tests, "tilt of 10°, utilisation").iter().map(|text| text.parse().unwrap()).collect();
    assert!(tilt[2] > tilt[0]);
    // The feet stand at the corners, so only what is drawn out can be pressed down beyond them.
    let of = |name: &str| column(tests, name).iter().map(|text| text.parse::<f64>().unwrap()).collect::<Vec<_>>();
    let down = of("800 N on what stands out");
    assert!(down[0] == 0.0 && down[1] == 0.0 && down[2] > 0.0, "{down:?}");
    let ratio = 15f64.to_radians().tan() / 10f64.to_radians().tan();
    assert!(of("tilt of 15°").iter().zip(&tilt).all(|(steep, flat)| (steep / flat - ratio).abs() < 1e-12));
    assert!(of("push with a fifth of the weight up to 2 m")[0] > 0.0);
}

/// Three feet have sides that look in no quarter, and of the part-filled states the worst is among those that are told.
#[test]
fn the_side_over_which_it_tips_first_is_among_those_told() {
    let mut file = file();
    let feet = file["cabinet"]["feet"].as_array_mut().unwrap();
    feet.truncate(3);
    feet[2]["at_mm"] = json!([0, 550]);
    let light = json!({ "name": "high", "mass_kg": 300, "bottom_mm": 2000, "size_mm": [500, 1000, 200] });
    let heavy = json!({ "name": "low", "mass_kg": 900, "bottom_mm": 100, "size_mm": [500, 1000, 200] });
    file["contents"] = json!([heavy, light]);
    for is_part_filled in [false, true] {
        file["part_filled"] = json!(is_part_filled);
        let report = project::assess(&read(&file));
        let tipping = report.checks.iter().find(|check| check.id == "free.tipping").unwrap();
        let found = shown("standing-free", &file, "").unwrap();
        let tips: Vec<f64> = column(&found.tables[0], "tips at").iter().map(|text| text.parse().unwrap()).collect();
        let least = tips.iter().copied().fold(f64::INFINITY, f64::min);
        assert!((least - tipping.limit.unwrap()).abs() < 1e-12, "{least} {tipping:?}");
        let marked = found.tables[0].rows.iter().position(|line| line.is_marked).unwrap();
        assert_eq!(tips[marked], least);
        assert_eq!(column(&found.tables[0], "state").contains(&"highest 1".into()), is_part_filled);
    }
    file["cabinet"]["feet"] = self::file()["cabinet"]["feet"].clone();
    let rocking = shown("rocking", &file, "").unwrap();
    assert!(column(&rocking.tables[0], "state").contains(&"highest 1".into()));
}

/// The full force of 100 % with 30 % is 1.044 long, also for what stands free.
#[test]
fn both_axes_together_push_what_stands_free() {
    let check = |file: &Value, id: &str| {
        let report = project::assess(&read(file));
        report.checks.into_iter().find(|check| check.id == id).unwrap()
    };
    let mut named = file();
    named["site"]["directions"] = json!("100-30");
    let length = f64::sqrt(1.09);
    let (any, both) = (check(&file(), "free.sliding"), check(&named, "free.sliding"));
    assert!((both.utilisation.unwrap() / any.utilisation.unwrap() - length).abs() < 1e-12);
    // Across a side along an axis the two together turn it as the first alone.
    let (any, both) = (check(&file(), "free.tipping"), check(&named, "free.tipping"));
    assert!((both.utilisation.unwrap() / any.utilisation.unwrap() - 1.0).abs() < 1e-12);
    // Across the slanting side of three feet more counts than the first axis alone gives.
    for file in [&mut named, &mut file()] {
        file["cabinet"]["feet"].as_array_mut().unwrap().truncate(3);
        file["cabinet"]["frame"]["centre_mm"] = json!([100, -100, 1200]);
        file["contents"] = json!([]);
        let told = check(file, "free.tipping");
        // The corner of the first foot to that of the third: a side from (-300, -600) by way of (-300, -500) to (200, 600).
        let normal = (-1100.0 / f64::hypot(500.0, 1100.0), 500.0 / f64::hypot(500.0, 1100.0));
        let away = -((100.0 + 300.0) * normal.0 + (-100.0 + 500.0) * normal.1);
        let share = if file["site"]["directions"] == json!("100-30") {
            let across =
                [(1.0, 0.3), (0.3, 1.0)].map(|(x, y): (f64, f64)| x * f64::abs(normal.0) + y * f64::abs(normal.1));
            across.into_iter().fold(0.0, f64::max)
        } else {
            1.0
        };
        let slanting = 0.3 * share * 1200.0 / away.abs();
        let nearest = 0.3 * 1200.0 / 200.0;
        assert!(
            (told.utilisation.unwrap() - f64::max(slanting, nearest)).abs() < 1e-9,
            "{told:?} {slanting} {nearest}"
        );
    }
}

/// Without friction nothing stops it, and lifted off the floor nothing holds it: neither is told as a distance.
#[test]
fn a_slide_without_an_end_has_no_distance() {
    let mut file = file();
    file["motion"]["friction_low"] = json!(0);
    let sliding = |file: &Value, extra: &str| {
        let found = shown("rocking", file, extra).unwrap();
        let table =
            found.tables.into_iter().find(|table| text(table.name).unwrap().what.starts_with("sliding")).unwrap();
        column(&table, "slides at most")
    };
    let told = sliding(&file, &record(0.3));
    assert!(told[..3].iter().all(|cell| cell.parse::<f64>().is_ok_and(|way_mm| way_mm > 0.0)), "{told:?}");
    assert!(told[3..5].iter().all(|cell| cell.contains("nothing holds it")), "{told:?}");
    assert_eq!(told[5], "Nothing");
    let lifted: String = record(0.3)
        .lines()
        .map(|line| format!("{line},{}\n", if line.starts_with("3.00") { -1.1 } else { 0.0 }))
        .collect();
    let told = sliding(&file, &lifted);
    assert!(told[..2].iter().chain(&told[3..5]).all(|cell| cell.contains("leaves the floor")), "{told:?}");
}

#[test]
fn without_feet_there_is_nothing_to_stand_on() {
    let mut none = file();
    none["cabinet"]["feet"] = json!([]);
    for id in ["standing-free", "rocking", "fragility"] {
        assert!(shown(id, &none, "").unwrap_err().contains("span no area"), "{id}");
    }
}

#[test]
fn a_stronger_pulse_brings_another_word() {
    let word = |pulse_g: f64| {
        let mut file = file();
        file["motion"]["pulse_g"] = json!(pulse_g);
        column(&shown("rocking", &file, "").unwrap().tables[0], "what can be said").join(" | ")
    };
    let (weak, strong) = (word(0.1), word(1.5));
    assert!(weak.split(" | ").all(|word| word.starts_with("stands")), "{weak}");
    assert!(strong.contains("may fall"), "{strong}");
    // Without a height the pulse has the push of the rule, and without a rule there is none.
    let mut file = file();
    file["motion"]["pulse_g"] = json!(null);
    assert!(shown("rocking", &file, "").is_ok());
    file["site"] = json!(null);
    assert!(shown("rocking", &file, "").unwrap_err().contains("how strongly the floor moves"));
}

fn said(file: &Value) -> String {
    shown("rocking", file, "").err().unwrap_or_default()
}

#[test]
fn what_cannot_rock_says_why_in_its_row() {
    let mut squat = file();
    squat["cabinet"]["height_mm"] = json!(300);
    squat["cabinet"]["frame"]["centre_mm"] = json!([0, 0, 100]);
    squat["contents"] = json!([]);
    assert!(said(&squat).contains("no state can be followed"));
    let mut corner = file();
    corner["cabinet"]["feet"][2]["at_mm"] = json!([200, 500]);
    assert!(said(&corner).contains("no state can be followed"));
}

#[test]
fn a_record_is_followed_and_its_faults_are_listed() {
    let found = shown("rocking", &file(), &record(0.5)).unwrap();
    assert_eq!(found.tables.len(), 4);
    assert!(column(&found.tables[2], "motion").iter().any(|way| way.contains("ASCE/SEI 43-05")));
    assert_eq!(found.tables[1].rows.len(), 12, "three impulses, two strengths, two signs");
    assert!(matches!(found.pictures[0], Picture::Plot(_)));
    let mut unasked = file();
    unasked["motion"]["record_unit"] = json!(null);
    assert!(shown("rocking", &unasked, &record(0.5)).unwrap_err().contains("in which unit"));
    let broken = record(0.5).replacen("0.10,", "0.11,", 1);
    let faults = shown("rocking", &file(), &broken).unwrap();
    assert_eq!(column(&faults.tables[0], "line")[0], "6");
    assert!(column(&faults.tables[0], "problem")[0].contains("even steps"));
    let mut wrong_unit = record(9.81);
    wrong_unit.insert_str(0, "time,acc\n");
    let faults = shown("response-spectrum", &file(), &wrong_unit).unwrap();
    assert!(column(&faults.tables[0], "problem")[0].contains("unlikely"));
    assert!(shown("fragility", &file(), &broken).unwrap_err().contains("faults"));
}

#[test]
fn a_spectrum_needs_a_record_and_begins_at_its_peak() {
    assert!(shown("response-spectrum", &file(), "").unwrap_err().contains("needs a record"));
    let found = shown("response-spectrum", &file(), &record(0.3)).unwrap();
    let Picture::Plot(plot) = &found.pictures[0] else { panic!("a plot") };
    let peak: f64 = column(&found.tables[0], "highest acceleration")[0].parse().unwrap();
    assert!((plot.curves[0].points[0][1] - peak).abs() < 0.05 * peak, "a stiff oscillator moves with the floor");
    let highest = |place: usize| plot.curves[place].points.iter().fold(0.0, |most, point| f64::max(most, point[1]));
    assert!(highest(1) > highest(0) && highest(0) > highest(2), "less damping, more answer");
}

/// The same record with a third column that shakes up and down by a part of it.
fn with_vertical(strength: f64, part: f64) -> String {
    let line = |line: &str| {
        let (time, value) = line.split_once(',').unwrap();
        format!("{time},{value},{:.6}\n", part * value.parse::<f64>().unwrap())
    };
    record(strength).lines().map(line).collect()
}

#[test]
fn a_vertical_record_shakes_the_body_too_and_is_told() {
    let peaks = |extra: &str| {
        column(&shown("rocking", &file(), extra).unwrap().tables[1], "largest angle over that of falling")
    };
    assert_ne!(peaks(&record(0.45)), peaks(&with_vertical(0.45, 0.6)));
    assert_eq!(peaks(&record(0.45)), peaks(&with_vertical(0.45, 0.0)), "a third column of nothing changes nothing");
    let told = shown("rocking", &file(), &with_vertical(0.45, 0.6)).unwrap();
    assert!(told.notes.iter().any(|note| text(*note).unwrap().what.contains("third column")));
    // Twice the factor is twice of both.
    let mut doubled = file();
    doubled["motion"]["record_factor"] = json!(2.0);
    let spectrum = |file: &Value, strength: f64| {
        let found = shown("response-spectrum", file, &with_vertical(strength, 0.5)).unwrap();
        let Picture::Plot(plot) = found.pictures.into_iter().next().unwrap() else { panic!("a plot") };
        assert_eq!(plot.curves.len(), 4);
        assert_eq!(column(&found.tables[0], "shakes"), ["sideways", "up and down"]);
        plot.curves[3].points[60][1]
    };
    assert!((spectrum(&doubled, 0.2) - spectrum(&file(), 0.4)).abs() < 1e-5);
}

#[test]
fn a_record_stands_beside_the_ground_spectrum_of_the_rule_or_it_is_said_why_not() {
    let mut site = file();
    let of = |site: &Value| {
        let found = shown("response-spectrum", site, &record(0.3)).unwrap();
        let notes: Vec<_> = found.notes.iter().map(|note| text(*note).unwrap().what.to_string()).collect();
        let Picture::Plot(plot) = found.pictures.into_iter().next().unwrap() else { panic!("a plot") };
        let names = |name: &PlotName| match name {
            PlotName::Row(id) => text(*id).unwrap().what.to_string(),
            _ => String::new(),
        };
        let lines: Vec<_> = plot.curves.iter().map(|curve| (names(&curve.name), curve.points.clone())).collect();
        let levels: Vec<_> = plot.levels.iter().map(|level| (names(&level.name), level.y)).collect();
        (lines, levels, notes.join(" | "), found.tables[1].clone())
    };
    let (lines, _, notes, _) = of(&site);
    assert!(lines.len() == 3 && notes.contains("no spectrum of the ground can be drawn"), "{notes}");
    site["site"] = json!({ "rule": "asce-7-22", "s_ds": 1.0, "importance_factor": 1.0, "component": "communication",
        "attachment_height_m": 0 });
    let (lines, levels, notes, _) = of(&site);
    assert!(lines.len() == 3 && notes.contains("only the level is drawn"), "{notes}");
    assert_eq!(levels[0], ("top of the ground's spectrum by the rule".to_string(), 1.0));
    site["motion"]["corner_s"] = json!(0.6);
    let (lines, _, notes, table) = of(&site);
    assert!(lines[3].0 == "the ground by the rule" && !notes.contains("only the level is drawn"));
    let at = |name: &str, period: f64| {
        let place = column(&table, "natural period").iter().position(|text| text.parse() == Ok(period)).unwrap();
        column(&table, name)[place].parse::<f64>().unwrap()
    };
    assert!((at("the ground by the rule", 0.05) - (0.4 + 0.6 * 0.05 / 0.12)).abs() < 1e-12);
    assert!((at("the ground by the rule", 0.5) - 1.0).abs() < 1e-12);
    assert!((at("the ground by the rule", 2.0) - 0.3).abs() < 1e-12);
    assert!((at("record over rule", 0.5) - at("pseudo-acceleration", 0.5)).abs() < 1e-12);
    site["motion"]["damping"] = json!(0.02);
    assert!(of(&site).2.contains("for 5 % damping"));
}

#[test]
fn a_fragility_curve_comes_in_portions_and_ends_as_the_whole_does() {
    let begin = begin_of("fragility").expect("it is done in portions");
    assert!(begin_of("rocking").is_none());
    let project = read(&file());
    let mut work = begin(&project, "").ok().unwrap();
    for _ in 0..7 {
        assert!(work.advance());
    }
    assert_eq!(work.progress(), (7, 200));
    let Picture::Plot(part) = &work.shown().pictures[0] else { panic!("a plot") };
    assert_eq!(part.curves[0].points.len(), 7);
    while work.advance() {}
    assert_eq!(work.progress(), (200, 200));
    // Where everything falls there is no angle, and no number equals itself.
    let whole = shown("fragility", &file(), "").unwrap();
    assert!(format!("{:?}", work.shown()) == format!("{whole:?}"));
}

#[test]
fn the_path_of_the_moving_figure_is_that_of_the_body_that_lifts_first() {
    let path = rocking_path(&read(&file()), "").unwrap();
    assert_eq!(text(path.way).unwrap().what, "sideways");
    assert!(path.points.len() > 100 && path.points.len() < 3_000);
    assert!(path.points.windows(2).all(|pair| pair[1][0] >= pair[0][0]));
    assert!(path.points.iter().any(|point| point[1].abs() > 0.01));
    let mut none = file();
    none["cabinet"]["feet"] = json!([]);
    assert_eq!(rocking_path(&read(&none), ""), None);
}

#[test]
fn the_working_of_the_studies_proves_itself() {
    let mut proof = Proof::of(&tables());
    for strength in [0.05, 0.4, 0.9] {
        for extra in [String::new(), record(strength)] {
            for id in ["standing-free", "rocking"] {
                proof.take(&shown(id, &file(), &extra).unwrap().sections);
            }
        }
    }
    let account = proof.close();
    assert!(account.wrong.is_empty(), "{}", account.wrong.join("\n"));
    assert!(account.formula_steps > 100);
}

#[test]
fn the_sway_stands_at_every_level_and_unknown_corners_leave_the_posts_alone() {
    let mut framed = file();
    framed["structure"] = json!({ "storeys": 3, "sides_x": "portal", "sides_y": "cross-brace", "post_area_mm2": 660,
        "brace_area_mm2": 160, "post_inertia_x_mm4": 4e5, "beam_inertia_x_mm4": 4e5, "corners": "rigid" });
    let found = shown("sway", &framed, "").unwrap();
    let levels = found.tables.last().unwrap();
    assert_eq!(levels.rows.len(), 3);
    let numbers = |name: &str| column(levels, name).iter().map(|text| text.parse::<f64>().unwrap()).collect::<Vec<_>>();
    for way in ["to the side", "to the rear"] {
        assert!(numbers(way).windows(2).all(|pair| pair[1] > pair[0]), "a higher level moves further");
    }
    let top = column(&found.tables[0], "top, under the reduced push")[0].parse::<f64>().unwrap();
    assert_eq!(*numbers("to the side").last().unwrap(), top);
    framed["structure"]["corners"] = json!("unknown");
    framed["structure"]["sides_y"] = json!("portal");
    let alone = shown("sway", &framed, "").unwrap();
    assert!(alone.tables.len() == 1 && column(&alone.tables[0], "push") == ["to the side"]);
    assert!(alone.notes.iter().any(|note| text(*note).unwrap().what.contains("stiffness of the corners is not given")));
    framed["structure"]["post_inertia_x_mm4"] = json!(null);
    assert!(shown("sway", &framed, "").is_err());
    framed["structure"] = json!(null);
    assert!(shown("sway", &framed, "").unwrap_err().contains("not given"));
}
