//! Base reactions found in other ways: every set of active springs tried, feet cut into points, limits, odd supports.

use steadfoot::base_reactions::{Anchor, BaseLoad, Foot, Push, Reactions, Supports, Unbalanced};
use steadfoot::geometry::{Point, Size};
use steadfoot_tests::random::{FeetKind, Random, RandomBase, random_base};

const NO_SIZE: Size = Size::new(0.0, 0.0);

/// The forces of springs at points, found by trying all 2^n sets of active ones and keeping the least contradicted.
///
/// Signs: feet positive, anchors positive in tension. None where no set balances the load.
fn enumerated(base: &RandomBase, load: &BaseLoad) -> Option<Vec<f64>> {
    let feet = base.feet.iter().map(|foot| (foot.at, foot.stiffness_n_per_mm, 1.0));
    let anchors = base.anchors.iter().map(|anchor| (anchor.at, anchor.stiffness_n_per_mm, -1.0));
    // Metres keep the equations near one in size.
    let springs: Vec<(f64, f64, f64, f64)> =
        feet.chain(anchors).map(|(at, k, sign)| (at.x_mm / 1e3, at.y_mm / 1e3, k, sign)).collect();
    let right = [load.down_n, load.moment_x_nmm / 1e3, load.moment_y_nmm / 1e3];
    let mut best: Option<(f64, Vec<f64>)> = None;
    for set in 0u32..1 << springs.len() {
        if set.count_ones() < 3 {
            continue;
        }
        let mut matrix = [[0.0; 3]; 3];
        for (_, &(x, y, k, _)) in springs.iter().enumerate().filter(|(index, _)| set >> index & 1 == 1) {
            let row = [1.0, x, y];
            (0..9).for_each(|i| matrix[i / 3][i % 3] += k * row[i / 3] * row[i % 3]);
        }
        let Some(plane) = solved(matrix, right) else { continue };
        let forces: Vec<f64> =
            springs.iter().map(|&(x, y, k, sign)| sign * k * (plane[0] + plane[1] * x + plane[2] * y)).collect();
        let contradiction = forces
            .iter()
            .enumerate()
            .fold(0.0, |most: f64, (index, &force)| most.max(if set >> index & 1 == 1 { -force } else { force }));
        if best.as_ref().is_none_or(|(least, _)| contradiction < *least) {
            let active = |(index, force): (usize, f64)| if set >> index & 1 == 1 { force.max(0.0) } else { 0.0 };
            best = Some((contradiction, forces.into_iter().enumerate().map(active).collect()));
        }
    }
    let size = load.down_n.abs() + (load.moment_x_nmm.abs() + load.moment_y_nmm.abs()) / 1e3;
    best.filter(|(contradiction, _)| *contradiction < 1e-10 * size).map(|(_, forces)| forces)
}

/// Gauss with the greatest pivot of the column.
fn solved(mut matrix: [[f64; 3]; 3], mut right: [f64; 3]) -> Option<[f64; 3]> {
    let size = matrix.iter().flatten().fold(0.0, |most: f64, part| most.max(part.abs()));
    for column in 0..3 {
        let pivot = (column..3).max_by(|&a, &b| matrix[a][column].abs().total_cmp(&matrix[b][column].abs()))?;
        if matrix[pivot][column].abs() < 1e-11 * size {
            return None;
        }
        matrix.swap(column, pivot);
        right.swap(column, pivot);
        for row in 0..3 {
            if row != column {
                let factor = matrix[row][column] / matrix[column][column];
                (0..3).for_each(|i| matrix[row][i] -= factor * matrix[column][i]);
                right[row] -= factor * right[column];
            }
        }
    }
    Some([right[0] / matrix[0][0], right[1] / matrix[1][1], right[2] / matrix[2][2]])
}

#[test]
fn point_supports_agree_with_trying_every_active_set() {
    let mut random = Random::new(21);
    let (mut compared, mut unbalanced) = (0, 0);
    for _ in 0..1500 {
        let base = random_base(&mut random, FeetKind::Points);
        if base.feet.len() + base.anchors.len() > 12 {
            continue;
        }
        let load = BaseLoad::from(base.push);
        let found = Supports::new(&base.feet, &base.anchors).settle(&load);
        match (enumerated(&base, &load), found) {
            (Some(expected), Ok(reactions)) => {
                let forces = reactions.feet.iter().map(|foot| foot.force_n).chain(reactions.anchors_n.iter().copied());
                let gross_n: f64 = expected.iter().sum();
                for (force_n, expected_n) in forces.zip(&expected) {
                    assert!((force_n - expected_n).abs() <= 1e-9 * gross_n, "{force_n} {expected_n} {base:?}");
                }
                compared += 1;
            }
            (None, Err(Unbalanced::Tips(_))) => unbalanced += 1,
            // A mechanism that is nearly one has planes too steep for the oracle's own digits.
            (None, Ok(reactions)) => assert!(reactions.plane.slope_x.abs() + reactions.plane.slope_y.abs() > 0.1),
            (expected, found) => panic!("{expected:?} is not {found:?} of {base:?}"),
        }
    }
    assert!(compared > 800 && unbalanced > 80, "{compared} {unbalanced}");
}

#[test]
fn feet_cut_into_sixty_by_sixty_points_feel_the_same() {
    let mut random = Random::new(22);
    let mut compared = 0;
    while compared < 12 {
        let mut base = random_base(&mut random, FeetKind::Rectangles);
        base.feet.truncate(4);
        let load = BaseLoad::from(base.push);
        let Ok(exact) = Supports::new(&base.feet, &base.anchors).settle(&load) else { continue };
        let gross_n: f64 = exact.feet.iter().map(|foot| foot.force_n).sum();
        // Where the pressed part shrinks to a few points the cut is too coarse to compare with.
        if exact.feet.iter().any(|foot| foot.force_n > 0.02 * gross_n && foot.contact_fraction < 0.1) {
            continue;
        }
        let points: Vec<Foot> = base.feet.iter().flat_map(cut).collect();
        let Ok(cut) = Supports::new(&points, &base.anchors).settle(&load) else { continue };
        compared += 1;
        for (foot, part) in exact.feet.iter().zip(cut.feet.chunks(3600)) {
            let force_n: f64 = part.iter().map(|point| point.force_n).sum();
            assert!((foot.force_n - force_n).abs() < 1e-3 * gross_n, "{} {force_n} {gross_n}", foot.force_n);
            let pressed = part.iter().filter(|point| point.force_n > 0.0).count() as f64 / 3600.0;
            assert!((foot.contact_fraction - pressed).abs() < 2.5e-2, "{} {pressed}", foot.contact_fraction);
        }
        for (exact_n, cut_n) in exact.anchors_n.iter().zip(&cut.anchors_n) {
            assert!((exact_n - cut_n).abs() < 1e-3 * gross_n, "{exact_n} {cut_n} {gross_n}");
        }
    }
}

fn cut(foot: &Foot) -> Vec<Foot> {
    let middle = |index: usize| (2 * index + 1) as f64 / 60.0 - 1.0;
    let point = |index: usize| Foot {
        at: Point::new(
            foot.at.x_mm + foot.half.x_mm * middle(index % 60),
            foot.at.y_mm + foot.half.y_mm * middle(index / 60),
        ),
        half: NO_SIZE,
        stiffness_n_per_mm: foot.stiffness_n_per_mm / 3600.0,
    };
    (0..3600).map(point).collect()
}

fn square_feet(half_mm: f64) -> Vec<Foot> {
    [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]
        .map(|(x, y)| Foot {
            at: Point::new(430.0 * x, 580.0 * y),
            half: Size::new(half_mm, half_mm),
            stiffness_n_per_mm: 3e5,
        })
        .to_vec()
}

#[test]
fn close_to_tipping_there_are_still_reactions_and_at_it_there_are_none() {
    for half_mm in [0.0, 60.0] {
        let supports = Supports::new(&square_feet(half_mm), &[]);
        let (down_n, edge_mm) = (4e4, 430.0 + half_mm);
        let at = |ex_mm: f64| BaseLoad { down_n, moment_x_nmm: down_n * ex_mm, moment_y_nmm: 0.0 };
        for short in [1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8] {
            let reactions = supports.settle(&at(edge_mm * (1.0 - short))).unwrap();
            let sum_n: f64 = reactions.feet.iter().map(|foot| foot.force_n).sum();
            // Within a millionth of the edge the pressed part is a sliver, and rounding shows.
            let slack = if short > 1e-6 { 1e-9 } else { 1e-7 };
            assert!((sum_n - down_n).abs() < slack * down_n, "{short}: {sum_n}");
            assert!(reactions.feet[1].force_n > 0.4 * down_n, "the edge carries");
        }
        assert!(
            matches!(supports.settle(&at(edge_mm)), Err(Unbalanced::OnThePoint(edge)) if edge.from.x_mm == edge_mm)
        );
        assert!(matches!(supports.settle(&at(edge_mm * (1.0 + 1e-8))), Err(Unbalanced::Tips(Some(_)))));
        let corner_mm = 580.0 + half_mm;
        for short in [1e-2, 1e-4, 1e-6, 1e-7] {
            let load = BaseLoad {
                down_n,
                moment_x_nmm: down_n * edge_mm * (1.0 - short),
                moment_y_nmm: down_n * corner_mm * (1.0 - short),
            };
            let reactions = supports.settle(&load).unwrap();
            assert!(
                (reactions.feet[2].force_n / down_n - 1.0).abs() < 3.0 * short,
                "the corner carries: {reactions:?}"
            );
        }
    }
}

#[test]
fn a_load_of_one_newton_and_of_a_hundred_meganewtons_settle_alike() {
    let anchors: Vec<Anchor> =
        square_feet(0.0).iter().map(|foot| Anchor { at: foot.at, stiffness_n_per_mm: 6e4 }).collect();
    let supports = Supports::new(&square_feet(60.0), &anchors);
    let of_one = |size_n: f64| {
        let push = Push {
            down_n: size_n,
            at: Point::new(20.0, -30.0),
            height_mm: 1100.0,
            horizontal_n: 0.7 * size_n,
            direction_rad: 0.6,
        };
        let reactions = supports.settle(&push.into()).unwrap();
        (reactions.tension_max_n() / size_n, reactions.compression_max_n() / size_n, reactions.feet[1].contact_fraction)
    };
    let middle = of_one(1e4);
    assert!(middle.0 > 0.1);
    for size_n in [1e-6, 1.0, 1e8, 1e12] {
        let found = of_one(size_n);
        assert!((found.0 - middle.0).abs() < 1e-11 && (found.1 - middle.1).abs() < 1e-11);
        assert!((found.2 - middle.2).abs() < 1e-11);
    }
}

#[test]
fn odd_supports_have_an_outcome_and_never_a_number() {
    let load = BaseLoad { down_n: 1e4, moment_x_nmm: 1e5, moment_y_nmm: -2e5 };
    let foot = |x, y| Foot { at: Point::new(x, y), half: NO_SIZE, stiffness_n_per_mm: 1e5 };
    let anchor = |x, y| Anchor { at: Point::new(x, y), stiffness_n_per_mm: 1e4 };
    let tips = |feet: &[Foot], anchors: &[Anchor], load: &BaseLoad| {
        matches!(Supports::new(feet, anchors).settle(load), Err(Unbalanced::Tips(_)))
    };
    assert!(tips(&[], &[], &load), "nothing under it");
    assert!(tips(&[], &[], &BaseLoad::default()), "nothing under nothing");
    assert!(tips(&[foot(0.0, 0.0)], &[], &load), "one foot");
    assert!(tips(&[foot(-300.0, 0.0), foot(0.0, 0.0), foot(300.0, 0.0)], &[], &load), "three feet in a line");
    assert!(tips(&[], &[anchor(-300.0, 0.0), anchor(300.0, 0.0), anchor(0.0, 300.0)], &load), "anchors alone");
    assert!(tips(&square_feet(0.0), &[], &BaseLoad { down_n: -1.0, ..load }), "lifted without anchors");
    let lifted = BaseLoad { down_n: -1e4, moment_x_nmm: 0.0, moment_y_nmm: 0.0 };
    assert!(tips(&square_feet(0.0), &[anchor(500.0, 0.0), anchor(500.0, 50.0)], &lifted), "anchors on one side only");
    let balanced = BaseLoad { down_n: 1e4, moment_x_nmm: 1e6, moment_y_nmm: 0.0 };
    let line = [foot(-300.0, 0.0), foot(300.0, 0.0)];
    assert!(matches!(Supports::new(&line, &[]).settle(&balanced), Err(Unbalanced::OnThePoint(_))));
    for wrong in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let anchored = Supports::new(&square_feet(60.0), &[anchor(0.0, 0.0)]);
        for part in 0..3 {
            let mut parts = [1e4, 0.0, 0.0];
            parts[part] = wrong;
            let load = BaseLoad { down_n: parts[0], moment_x_nmm: parts[1], moment_y_nmm: parts[2] };
            assert_eq!(anchored.settle(&load), Err(Unbalanced::Unresolved));
        }
    }
}

#[test]
fn anchors_on_one_point_hold_a_lifted_cabinet_only_inside_the_feet() {
    let lifted = BaseLoad { down_n: -1e4, moment_x_nmm: 1e6, moment_y_nmm: 0.5e6 };
    let at_one_point = |x_mm: f64| {
        let anchor = Anchor { at: Point::new(x_mm, 0.0), stiffness_n_per_mm: 1e4 };
        Supports::new(&square_feet(0.0), &[anchor, anchor]).settle(&lifted)
    };
    let reactions = at_one_point(100.0).unwrap();
    let feet_n: f64 = reactions.feet.iter().map(|foot| foot.force_n).sum();
    assert!((reactions.anchors_n[0] - reactions.anchors_n[1]).abs() < 1e-6);
    assert!((feet_n - 2.0 * reactions.anchors_n[0] + 1e4).abs() < 1e-6);
    assert!(matches!(at_one_point(600.0), Err(Unbalanced::Tips(_))));
}

#[test]
fn an_ever_shorter_lever_gives_balanced_forces_or_no_number() {
    let feet = &square_feet(60.0)[..3];
    let (mut balanced, mut refused) = (0, 0);
    // Both anchors stand beyond the diagonal of three feet, but the line between them passes just inside its end.
    for power in -12..=1 {
        let lever_mm = 10.0f64.powi(power);
        let corner = Point::new(430.0 - 60.0, 580.0 + 60.0);
        let anchor = |way_mm: f64| Anchor {
            at: Point::new(corner.x_mm + way_mm * 0.8 + lever_mm * 0.6, corner.y_mm + way_mm * 0.6 - lever_mm * 0.8),
            stiffness_n_per_mm: 5e4,
        };
        let load = BaseLoad { down_n: 4e4, moment_x_nmm: -4e6, moment_y_nmm: 16e6 };
        match Supports::new(feet, &[anchor(-900.0), anchor(40.0)]).settle(&load) {
            Ok(reactions) => {
                balanced += 1;
                let feet_n: f64 = reactions.feet.iter().map(|foot| foot.force_n).sum();
                let anchors_n: f64 = reactions.anchors_n.iter().sum();
                assert!((feet_n - anchors_n - load.down_n).abs() < 1e-5 * load.down_n, "{lever_mm}: {reactions:?}");
            }
            Err(_) => refused += 1,
        }
    }
    assert!(balanced >= 2 && refused > 3, "{balanced} {refused}");
}

#[test]
fn a_foot_without_width_is_a_line_that_presses() {
    let strip = |half_x_mm: f64| {
        let at = |x| Foot { at: Point::new(x, 0.0), half: Size::new(half_x_mm, 600.0), stiffness_n_per_mm: 1e5 };
        let load = BaseLoad { down_n: 4e4, moment_x_nmm: 4e6, moment_y_nmm: 12e6 };
        Supports::new(&[at(-500.0), at(500.0)], &[]).settle(&load).unwrap()
    };
    let (line, narrow) = (strip(0.0), strip(1e-4));
    for (a, b) in line.feet.iter().zip(&narrow.feet) {
        assert!((a.force_n - b.force_n).abs() < 1e-2);
        assert!((a.contact_fraction - b.contact_fraction).abs() < 1e-6 && a.contact_fraction < 1.0);
        assert!(a.peak_pressure_mpa.is_infinite(), "no area, no finite pressure");
    }
}

#[test]
fn no_load_of_a_fully_held_cabinet_gives_no_force() {
    let anchors: Vec<Anchor> =
        square_feet(0.0).iter().map(|foot| Anchor { at: foot.at, stiffness_n_per_mm: 6e4 }).collect();
    let reactions: Reactions = Supports::new(&square_feet(60.0), &anchors).settle(&BaseLoad::default()).unwrap();
    assert_eq!((reactions.tension_max_n(), reactions.compression_max_n()), (0.0, 0.0));
    assert!(reactions.feet.iter().all(|foot| foot.contact_fraction == 0.0 && foot.peak_pressure_mpa == 0.0));
}
