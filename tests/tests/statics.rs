//! Base reactions on random cabinets: what statics demands of every answer, and other ways to the same answer.

use steadfoot::base_reactions::{Anchor, BaseLoad, Foot, Push, Reactions, Supports, Unbalanced};
use steadfoot::geometry::{Point, Polygon, Size};
use steadfoot_tests::random::{FeetKind, Random, RandomBase, random_base};

const KINDS: [FeetKind; 2] = [FeetKind::Points, FeetKind::Rectangles];

/// Settles random bases until so many have settled, and shows each to the test.
fn settled_bases(seed: u64, count: usize, mut see: impl FnMut(&RandomBase, &Supports, &BaseLoad, &Reactions)) {
    let mut random = Random::new(seed);
    let (mut settled, mut tried) = (0, 0);
    while settled < count {
        tried += 1;
        assert!(tried < 20 * count, "random bases must mostly settle");
        let base = random_base(&mut random, KINDS[tried % 2]);
        let supports = Supports::new(&base.feet, &base.anchors);
        let load = BaseLoad::from(base.push);
        match supports.settle(&load) {
            Ok(reactions) => {
                settled += 1;
                see(&base, &supports, &load, &reactions);
            }
            Err(Unbalanced::Unresolved) => panic!("every load inside the cone settles: {base:?}"),
            Err(_) => {}
        }
    }
}

/// The size of a load in N as its residual is measured, about the middle of the supports.
fn size_n(base: &RandomBase, load: &BaseLoad) -> f64 {
    let corners = base.feet.iter().flat_map(|foot| foot.rectangle().corners());
    let width_mm = corners.fold(0.0, |most: f64, at| most.max(at.x_mm.abs()).max(at.y_mm.abs()));
    load.down_n.abs() + (load.moment_x_nmm.abs() + load.moment_y_nmm.abs()) / width_mm
}

/// Force and first moments of a foot's pressure, by cutting the pressed polygon and using its moments.
fn pressure_resultant(foot: &Foot, pressed: &Polygon, reactions: &Reactions) -> [f64; 3] {
    let plane = &reactions.plane;
    if foot.area_mm2() == 0.0 {
        let force_n = foot.stiffness_n_per_mm * plane.at_mm(foot.at).max(0.0);
        return [force_n, force_n * foot.at.x_mm, force_n * foot.at.y_mm];
    }
    let per_area = foot.stiffness_n_per_mm / foot.area_mm2();
    let m = pressed.moments();
    [
        plane.at_origin_mm * m.area_mm2 + plane.slope_x * m.first_x_mm3 + plane.slope_y * m.first_y_mm3,
        plane.at_origin_mm * m.first_x_mm3 + plane.slope_x * m.second_xx_mm4 + plane.slope_y * m.second_xy_mm4,
        plane.at_origin_mm * m.first_y_mm3 + plane.slope_x * m.second_xy_mm4 + plane.slope_y * m.second_yy_mm4,
    ]
    .map(|integral| per_area * integral)
}

#[test]
fn sum_of_reactions_equals_the_loads() {
    settled_bases(11, 6000, |base, supports, load, reactions| {
        let mut sum = [0.0; 3];
        let mut gross = 0.0;
        for (index, foot) in base.feet.iter().enumerate() {
            let pressed = supports.contact(index, &reactions.plane);
            let resultant = pressure_resultant(foot, &pressed, reactions);
            (0..3).for_each(|i| sum[i] += resultant[i]);
            gross += resultant[0];
            let found = &reactions.feet[index];
            assert!((found.force_n - resultant[0]).abs() <= 1e-9 * size_n(base, load));
            if foot.area_mm2() > 0.0 {
                assert!((found.contact_fraction - pressed.area_mm2() / foot.area_mm2()).abs() < 1e-9);
            }
        }
        for (anchor, &pull_n) in base.anchors.iter().zip(&reactions.anchors_n) {
            let expected_n = anchor.stiffness_n_per_mm * (-reactions.plane.at_mm(anchor.at)).max(0.0);
            assert!((pull_n - expected_n).abs() <= 1e-9 * size_n(base, load));
            sum = [sum[0] - pull_n, sum[1] - pull_n * anchor.at.x_mm, sum[2] - pull_n * anchor.at.y_mm];
        }
        let slack = 1e-9 * (size_n(base, load) + gross);
        assert!((sum[0] - load.down_n).abs() <= slack);
        assert!((sum[1] - load.moment_x_nmm).abs() <= slack * 1e3, "{} {}", sum[1], load.moment_x_nmm);
        assert!((sum[2] - load.moment_y_nmm).abs() <= slack * 1e3);
        assert!(reactions.residual <= 1e-9);
    });
}

#[test]
fn no_foot_pulls_and_no_anchor_pushes() {
    let (mut lifted, mut pulling, mut partial) = (0, 0, 0);
    settled_bases(12, 6000, |base, _, _, reactions| {
        for (foot, found) in base.feet.iter().zip(&reactions.feet) {
            let highest = foot
                .rectangle()
                .corners()
                .map(|corner| reactions.plane.at_mm(corner))
                .into_iter()
                .fold(f64::MIN, f64::max);
            assert!(found.force_n >= 0.0 && (0.0..=1.0).contains(&found.contact_fraction));
            assert!(highest > -1e-12 || found.force_n == 0.0);
            assert!(found.peak_pressure_mpa >= found.mean_pressure_mpa * (1.0 - 1e-12));
            lifted += (found.force_n == 0.0) as usize;
            partial += (found.contact_fraction > 0.0 && found.contact_fraction < 1.0) as usize;
        }
        for (anchor, &pull_n) in base.anchors.iter().zip(&reactions.anchors_n) {
            assert!(pull_n >= 0.0);
            assert!(reactions.plane.at_mm(anchor.at) < 1e-12 || pull_n == 0.0);
            pulling += (pull_n > 0.0) as usize;
        }
    });
    assert!(lifted > 1000 && pulling > 1000 && partial > 1000, "all states are met: {lifted} {pulling} {partial}");
}

fn mapped(base: &RandomBase, place: impl Fn(Point) -> Point, turned: bool, push: Push) -> RandomBase {
    let half = |half: Size| if turned { Size::new(half.y_mm, half.x_mm) } else { half };
    RandomBase {
        feet: base.feet.iter().map(|foot| Foot { at: place(foot.at), half: half(foot.half), ..*foot }).collect(),
        anchors: base.anchors.iter().map(|anchor| Anchor { at: place(anchor.at), ..*anchor }).collect(),
        push,
    }
}

fn assert_same(base: &RandomBase, reactions: &Reactions, other: &RandomBase, factor: f64) {
    let load = BaseLoad::from(other.push);
    let found = Supports::new(&other.feet, &other.anchors).settle(&load).expect("the other one settles too");
    let slack_n = 1e-9 * factor * size_n(base, &BaseLoad::from(base.push)).max(reactions.compression_max_n());
    for (a, b) in reactions.feet.iter().zip(&found.feet) {
        assert!((factor * a.force_n - b.force_n).abs() <= slack_n, "{} {}", a.force_n, b.force_n);
        assert!((a.contact_fraction - b.contact_fraction).abs() <= 1e-7);
    }
    for (a, b) in reactions.anchors_n.iter().zip(&found.anchors_n) {
        assert!((factor * a - b).abs() <= slack_n, "{a} {b}");
    }
}

#[test]
fn a_mirrored_cabinet_has_mirrored_reactions() {
    settled_bases(13, 2000, |base, _, _, reactions| {
        let mirror = |p: Point| Point::new(-p.x_mm, p.y_mm);
        let direction_rad = std::f64::consts::PI - base.push.direction_rad;
        let push = Push { at: mirror(base.push.at), direction_rad, ..base.push };
        assert_same(base, reactions, &mapped(base, mirror, false, push), 1.0);
    });
}

#[test]
fn a_quarter_turn_turns_the_reactions() {
    settled_bases(14, 2000, |base, _, _, reactions| {
        let turn = |p: Point| Point::new(-p.y_mm, p.x_mm);
        let direction_rad = base.push.direction_rad + std::f64::consts::FRAC_PI_2;
        let push = Push { at: turn(base.push.at), direction_rad, ..base.push };
        assert_same(base, reactions, &mapped(base, turn, true, push), 1.0);
    });
}

#[test]
fn loads_a_thousand_times_smaller_or_larger_scale_the_reactions() {
    settled_bases(15, 2000, |base, _, _, reactions| {
        for factor in [2.0, 1e-3, 1e3] {
            let push =
                Push { down_n: factor * base.push.down_n, horizontal_n: factor * base.push.horizontal_n, ..base.push };
            assert_same(base, reactions, &RandomBase { push, ..base.clone() }, factor);
        }
    });
}

#[test]
fn where_the_origin_lies_does_not_matter() {
    settled_bases(16, 2000, |base, _, _, reactions| {
        let moved = |p: Point| Point::new(p.x_mm + 4000.0, p.y_mm - 3000.0);
        let push = Push { at: moved(base.push.at), ..base.push };
        assert_same(base, reactions, &mapped(base, moved, false, push), 1.0);
    });
}

#[test]
fn a_start_from_any_plane_ends_in_the_same_reactions() {
    let mut random = Random::new(17);
    settled_bases(18, 2000, |base, supports, load, reactions| {
        let mut start = reactions.plane;
        start.at_origin_mm += random.between(-1.0, 1.0);
        start.slope_x += random.between(-1e-3, 1e-3);
        start.slope_y += random.between(-1e-3, 1e-3);
        let mut found = Reactions::default();
        supports.settle_from(load, &start, &mut found).unwrap();
        let slack_n = 1e-9 * size_n(base, load).max(reactions.compression_max_n());
        for (a, b) in reactions.feet.iter().zip(&found.feet) {
            assert!((a.force_n - b.force_n).abs() <= slack_n, "{} {}", a.force_n, b.force_n);
        }
        supports.settle_from(load, &reactions.plane, &mut found).unwrap();
        assert!(found.steps <= 1, "the answer itself needs no search");
    });
}

#[test]
fn the_stiffness_of_all_anchors_can_be_scaled() {
    settled_bases(19, 500, |base, supports, load, _| {
        let softer: Vec<Anchor> = base
            .anchors
            .iter()
            .map(|anchor| Anchor { stiffness_n_per_mm: anchor.stiffness_n_per_mm / 4.0, ..*anchor })
            .collect();
        let anew = Supports::new(&base.feet, &softer).settle(load);
        assert_eq!(anew, supports.with_anchor_stiffness_scaled(0.25).settle(load));
    });
}
