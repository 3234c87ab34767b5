//! What the drawings promise: one scale, true places, rings by area, legible texts, nothing outside, nothing silent.

use steadfoot::calc::show::{Rounding, Style, show};
use steadfoot::calc::{Kind, System};
use steadfoot::geometry::{Point, Rectangle};
use steadfoot::project;
use steadfoot::report::drawing::{Drawing, Ending, Lettering, Mark, RoseScene, Scene, elevation, plan, rose};
use steadfoot_tests::random::Random;
use steadfoot_tests::random_scene::{absurd, assert_legible, assert_near, marks, ordinary, texts};

const WIDTHS_PX: [f64; 5] = [240.0, 320.0, 400.0, 520.0, 900.0];
const SYSTEMS: [System; 2] = [System::Si, System::Us];
/// Coordinates are rounded to a hundredth of a px.
const ROUNDING_PX: f64 = 0.006;

fn outlines_mm() -> [(f64, f64); 5] {
    [(1000.0, 1300.0), (3000.0, 1000.0), (1000.0, 3000.0), (600.0, 600.0), (2400.0, 800.0)]
}

fn ordinary_scenes() -> Vec<Scene> {
    let mut scenes = Vec::new();
    for (width_mm, depth_mm) in outlines_mm() {
        for direction_deg in [0.0, 20.0, 90.0, 146.0, 236.0, 270.0] {
            scenes.push(ordinary(width_mm, depth_mm, direction_deg));
        }
    }
    scenes
}

fn demo_scenes() -> Vec<(Scene, RoseScene)> {
    let mut scenes = Vec::new();
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-configs");
    let mut paths: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.retain(|path| path.is_file());
    paths.sort();
    for path in paths.iter().filter(|path| path.is_file()) {
        let text = std::fs::read_to_string(path).unwrap();
        let Ok(project) = project::read(&text, System::Si) else { continue };
        let report = project::assess(&project);
        for check in &report.checks {
            scenes.push((project::scene(&project, check.at.as_ref()), project::rose_scene(&report)));
        }
    }
    assert!(scenes.len() > 50, "only {} results of the demos have a scene", scenes.len());
    scenes
}

/// Where a place of the plan must lie, by the drawing's own scale and the cabinet's left rear corner.
fn plan_place(drawing: &Drawing, scene: &Scene) -> impl Fn(Point) -> [f64; 2] {
    let cabinet = marks(drawing, "cabinet", "cabinet")[0].points.clone();
    let (left, top) = (least(&cabinet, 0), least(&cabinet, 1));
    let (scale, half_x, half_y) = (drawing.mm_per_px, scene.cabinet.width_mm / 2.0, scene.cabinet.depth_mm / 2.0);
    move |point| [left + (point.x_mm + half_x) / scale, top + (half_y - point.y_mm) / scale]
}

fn least(points: &[[f64; 2]], axis: usize) -> f64 {
    points.iter().map(|point| point[axis]).fold(f64::INFINITY, f64::min)
}

fn most(points: &[[f64; 2]], axis: usize) -> f64 {
    points.iter().map(|point| point[axis]).fold(f64::NEG_INFINITY, f64::max)
}

#[test]
fn plan_and_elevation_have_one_scale_that_does_not_turn_with_the_push() {
    for (width_mm, depth_mm) in outlines_mm() {
        for width_px in WIDTHS_PX {
            let scales: Vec<f64> = [0.0, 33.0, 90.0, 200.0]
                .into_iter()
                .flat_map(|direction_deg| {
                    let scene = ordinary(width_mm, depth_mm, direction_deg);
                    [plan(&scene, width_px, System::Si), elevation(&scene, width_px, System::Us)]
                })
                .map(|drawing| drawing.mm_per_px)
                .collect();
            assert!(scales.iter().all(|scale| *scale == scales[0]), "{scales:?}");
        }
    }
}

#[test]
fn the_plan_read_back_in_millimetres_is_the_scene() {
    for scene in ordinary_scenes() {
        for width_px in WIDTHS_PX {
            let drawing = plan(&scene, width_px, System::Si);
            let place = plan_place(&drawing, &scene);
            let slack = 3.0 * ROUNDING_PX;
            let cabinet = &marks(&drawing, "cabinet", "cabinet")[0].points;
            let width_mm = (most(cabinet, 0) - least(cabinet, 0)) * drawing.mm_per_px;
            assert_near(width_mm, scene.cabinet.width_mm, slack * drawing.mm_per_px);
            for (index, foot) in scene.feet.iter().enumerate() {
                let of = format!("foot {}", index + 1);
                let class = if foot.force_n == Some(0.0) { "foot lifted" } else { "foot" };
                let read = &marks(&drawing, class, &of)[0].points;
                let [left, bottom] = place(Point::new(foot.outline.left_mm, foot.outline.front_mm));
                let [right, top] = place(Point::new(foot.outline.right_mm, foot.outline.rear_mm));
                for (read, expected) in
                    [(least(read, 0), left), (most(read, 0), right), (least(read, 1), top), (most(read, 1), bottom)]
                {
                    assert_near(read, expected, slack);
                }
            }
            for (index, anchor) in scene.anchors.iter().enumerate() {
                let read = marks(&drawing, "bolt", &format!("anchor {}", index + 1))[0].points[0];
                let expected = place(anchor.place);
                assert_near(read[0], expected[0], slack);
                assert_near(read[1], expected[1], slack);
            }
            let left = marks(&drawing, "edge", "edge left");
            assert!(!left.is_empty() || width_px < 300.0, "an edge 305 mm away is not drawn in its place");
            if let Some(edge) = left.first() {
                let expected = place(Point::new(scene.slab.left_mm, 0.0));
                assert_near(edge.points[0][0], expected[0], slack);
            }
            if let Some(edge) = marks(&drawing, "edge", "edge rear").first() {
                let expected = place(Point::new(0.0, scene.slab.rear_mm));
                assert_near(edge.points[0][1], expected[1], slack);
            }
            assert_eq!(marks(&drawing, "edge far", "edge right").len(), 1);
            let centre = marks(&drawing, "centre", "centre")[0].points[0];
            let expected = place(Point::new(scene.centre_mm[0], scene.centre_mm[1]));
            assert_near(centre[0], expected[0], slack);
            assert_near(centre[1], expected[1], slack);
        }
    }
}

#[test]
fn the_elevation_read_back_is_the_scene_seen_across_the_push() {
    for scene in ordinary_scenes() {
        let drawing = elevation(&scene, 400.0, System::Si);
        let (sin, cos) = scene.push.direction_rad.sin_cos();
        let slack = 3.0 * ROUNDING_PX;
        let ground = marks(&drawing, "ground", "")[0].points[0][1];
        let cabinet = &marks(&drawing, "cabinet", "cabinet")[0].points;
        let seen_mm = scene.cabinet.width_mm * cos.abs() + scene.cabinet.depth_mm * sin.abs();
        assert_near((most(cabinet, 0) - least(cabinet, 0)) * drawing.mm_per_px, seen_mm, slack * drawing.mm_per_px);
        let height = |z_mm: f64| ground - z_mm / drawing.mm_per_px;
        assert_near(least(cabinet, 1), height(scene.cabinet.height_mm), slack);
        assert_near(most(cabinet, 1), ground, slack);
        for (index, one) in scene.contents.iter().enumerate() {
            let tray = &marks(&drawing, "tray", &format!("contents {}", index + 1))[0].points;
            assert_near(least(tray, 1), height(one.bottom_mm + one.size_mm[2]), slack);
            assert_near(most(tray, 1), height(one.bottom_mm), slack);
        }
        let middle = (most(cabinet, 0) + least(cabinet, 0)) / 2.0;
        let centre = marks(&drawing, "centre", "centre")[0].points[0];
        let along_mm = scene.centre_mm[0] * cos + scene.centre_mm[1] * sin;
        assert_near(centre[0], middle + along_mm / drawing.mm_per_px, slack);
        assert_near(centre[1], height(scene.centre_mm[2]), slack);
        let push = marks(&drawing, "push", "push")[0];
        assert!(push.points[1][0] > push.points[0][0], "the push does not point to the right");
    }
}

#[test]
fn the_area_of_a_ring_is_proportional_to_the_pull() {
    for scene in ordinary_scenes() {
        let drawing = plan(&scene, 520.0, System::Si);
        let area = |of: &str| marks(&drawing, "ring", of)[0].radius.unwrap().powi(2);
        assert_near(area("anchor 4") / area("anchor 3"), 12_350.0 / 6_800.0, 0.01);
        assert!(marks(&drawing, "ring", "anchor 1").is_empty(), "a ring where nothing pulls");
    }
}

#[test]
fn hatching_lies_in_the_pressed_part_of_a_foot_and_nowhere_else() {
    let scene = ordinary(1000.0, 1300.0, 236.0);
    let drawing = plan(&scene, 900.0, System::Si);
    let place = plan_place(&drawing, &scene);
    for (index, foot) in scene.feet.iter().enumerate() {
        let hatching = marks(&drawing, "pressure", &format!("foot {}", index + 1));
        assert_eq!(hatching.len(), foot.pressed.len());
        for (mark, pressed) in hatching.iter().zip(&foot.pressed) {
            let corners: Vec<[f64; 2]> = pressed.corners.iter().map(|&corner| place(corner)).collect();
            for axis in [0, 1] {
                assert!(least(&mark.points, axis) >= least(&corners, axis) - 0.02);
                assert!(most(&mark.points, axis) <= most(&corners, axis) + 0.02);
            }
            assert!(mark.points.len() >= 6, "hardly any lines in a pressed foot");
        }
    }
}

#[test]
fn every_text_is_legible_from_320_px_on_for_wide_and_deep_cabinets() {
    assert!(Lettering::ALL.iter().all(|lettering| lettering.size_px() >= 12.0));
    for scene in ordinary_scenes() {
        for width_px in WIDTHS_PX {
            for system in SYSTEMS {
                assert_legible(&plan(&scene, width_px, system));
                assert_legible(&elevation(&scene, width_px, system));
            }
        }
    }
}

#[test]
fn every_result_of_the_demos_draws_legibly() {
    for (scene, rose_scene) in demo_scenes() {
        for width_px in [320.0, 520.0] {
            assert_legible(&plan(&scene, width_px, System::Si));
            assert_legible(&elevation(&scene, width_px, System::Us));
            assert_legible(&rose(&rose_scene, width_px));
        }
    }
}

#[test]
fn absurd_scenes_draw_inside_their_box_and_legibly() {
    let mut random = Random::new(18);
    for _ in 0..150 {
        let scene = absurd(&mut random);
        let width_px = WIDTHS_PX[random.below(5)];
        let system = SYSTEMS[random.below(2)];
        assert_legible(&plan(&scene, width_px, system));
        assert_legible(&elevation(&scene, width_px, system));
    }
}

#[test]
fn the_same_scene_gives_the_same_drawing() {
    let scene = ordinary(1000.0, 1300.0, 236.0);
    assert_eq!(plan(&scene, 320.0, System::Si), plan(&scene, 320.0, System::Si));
    assert_eq!(elevation(&scene, 320.0, System::Us), elevation(&scene, 320.0, System::Us));
}

#[test]
fn every_force_and_every_size_is_a_number_with_its_unit() {
    for scene in ordinary_scenes() {
        for system in SYSTEMS {
            let up = Style::plain(system, Rounding::Up);
            let nearest = Style::plain(system, Rounding::Nearest);
            let (plan, elevation) = (plan(&scene, 320.0, system), elevation(&scene, 320.0, system));
            let mut expected_of_plan: Vec<String> = [31_200.0, 14_800.0, 2_100.0, 0.0, 6_800.0, 12_350.0, 13_600.0]
                .into_iter()
                .map(|force_n| show(force_n, Kind::Force, up))
                .collect();
            let sizes_mm = [scene.cabinet.width_mm, scene.cabinet.depth_mm, 330.0];
            expected_of_plan.extend(sizes_mm.map(|size_mm| show(size_mm, Kind::Length, nearest)));
            for text in expected_of_plan {
                assert!(texts(&plan).contains(&text.as_str()), "{text} is missing in {:?}", texts(&plan));
            }
            for text in [
                show(13_600.0, Kind::Force, up),
                show(29_400.0, Kind::Force, up),
                show(0.457, Kind::Acceleration, up),
                show(2200.0, Kind::Length, nearest),
                show(1040.0, Kind::Length, nearest),
            ] {
                assert!(texts(&elevation).contains(&text.as_str()), "{text} is missing in {:?}", texts(&elevation));
            }
        }
    }
}

#[test]
fn numbers_that_find_no_room_are_counted() {
    let mut random = Random::new(64);
    for _ in 0..60 {
        let scene = absurd(&mut random);
        let drawing = plan(&scene, 320.0, System::Si);
        let is_force = |mark: &&Mark| mark.class.contains("pull-value") || mark.class.contains("press-value");
        let is_zero = |mark: &Mark| mark.text == "0\u{a0}kN";
        let written = drawing.marks.iter().filter(is_force).filter(|mark| !is_zero(mark)).count();
        let pulls = scene.anchors.iter().filter_map(|anchor| anchor.tension_n);
        let presses = scene.feet.iter().filter_map(|foot| foot.force_n);
        // A force below a thousandth of a newton prints as nothing.
        let all = pulls.chain(presses).filter(|&force_n| force_n > 1e-6).count();
        let note = texts(&drawing).into_iter().find_map(|text| text.strip_prefix("forces not written: "));
        let left_out: usize = note.map_or(0, |count| count.parse().unwrap());
        assert_eq!(written + left_out, all);
    }
}

#[test]
fn masses_stand_as_numbers_and_sums_tell_of_all_contents() {
    for scene in ordinary_scenes() {
        let drawing = elevation(&scene, 320.0, System::Si);
        let mut told_kg = 0.0;
        for text in drawing.marks.iter().filter(|mark| mark.class.starts_with("mass") || mark.class == "note") {
            let words = text.text.replace("not written: ", "").replace(" of contents", "");
            let Some(number) = words.strip_suffix("\u{a0}kg") else { continue };
            let number = number.trim_start_matches("Σ\u{a0}");
            let (count, mass) = number.split_once("\u{a0}×\u{a0}").unwrap_or(("1", number));
            told_kg += count.parse::<f64>().unwrap() * mass.parse::<f64>().unwrap();
        }
        let aboard_kg: f64 = scene.contents.iter().map(|one| one.mass_kg).sum();
        assert_near(told_kg, aboard_kg, 0.005 * aboard_kg);
    }
}

#[test]
fn a_tipping_cabinet_says_so_and_shows_no_forces_at_the_floor() {
    let mut scene = ordinary(1000.0, 1300.0, 270.0);
    for foot in &mut scene.feet {
        (foot.force_n, foot.peak_mpa) = (None, None);
        foot.pressed.clear();
    }
    for anchor in &mut scene.anchors {
        (anchor.tension_n, anchor.shear_n) = (None, [0.0, 0.0]);
    }
    for (ending, words) in [(Ending::Tips, "tips"), (Ending::OnThePoint, "on the point of tipping")] {
        scene.ending = ending;
        for drawing in [plan(&scene, 320.0, System::Si), elevation(&scene, 320.0, System::Si)] {
            let outcome = drawing.marks.iter().find(|mark| mark.class == "outcome").unwrap();
            assert!(outcome.text.starts_with(words), "{}", outcome.text);
            assert!(drawing.title.contains(words) || drawing.view == "elevation");
            assert!(!drawing.marks.iter().any(|mark| ["pull", "press", "ring", "pressure"].contains(&mark.class)));
        }
    }
}

#[test]
fn a_change_of_units_moves_no_line_of_the_base() {
    let scene = ordinary(1000.0, 1300.0, 236.0);
    let [si, us] = SYSTEMS.map(|system| plan(&scene, 400.0, system));
    for class in ["cabinet", "foot", "bolt", "ring", "edge", "breakout", "centre"] {
        let of_class = |drawing: &Drawing| -> Vec<Mark> {
            drawing.marks.iter().filter(|mark| mark.class == class).cloned().collect()
        };
        assert_eq!(of_class(&si), of_class(&us));
    }
}

#[test]
fn an_edge_is_dimensioned_from_the_nearest_anchor() {
    let mut scene = ordinary(1000.0, 1300.0, 0.0);
    scene.slab = Rectangle { front_mm: -725.0, ..Rectangle::EVERYWHERE };
    let drawing = plan(&scene, 400.0, System::Si);
    // The front anchors stand 625 mm in front of the middle.
    let number = marks(&drawing, "size", "edge front");
    assert_eq!(number[0].text, "100\u{a0}mm");
    assert!(marks(&drawing, "edge", "edge left").is_empty());
}
