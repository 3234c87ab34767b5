//! Figures in the plan, held against other ways to the same number.

use steadfoot::geometry::{
    Cone, HalfPlane, Hull, Membership, Moments, Point, Polygon, Rectangle, Size, union_area_mm2, union_outline,
};
use steadfoot_tests::random::Random;

fn close(a: f64, b: f64, slack: f64) -> bool {
    (a - b).abs() <= slack
}

fn random_rectangles(random: &mut Random, count: usize) -> Vec<Rectangle> {
    (0..count)
        .map(|_| {
            let at = Point::new(random.between(-500.0, 500.0), random.between(-500.0, 500.0));
            Rectangle::around(at, Size::new(random.between(20.0, 250.0), random.between(20.0, 250.0)))
        })
        .collect()
}

fn random_outline(random: &mut Random) -> Rectangle {
    let mut side =
        |sign: f64| if random.percent(40) { sign * f64::INFINITY } else { sign * random.between(100.0, 600.0) };
    Rectangle { left_mm: side(-1.0), right_mm: side(1.0), front_mm: side(-1.0), rear_mm: side(1.0) }
}

#[test]
fn union_area_equals_inclusion_and_exclusion() {
    let mut random = Random::new(1);
    for _ in 0..400 {
        let count = 1 + random.below(9);
        let rectangles = random_rectangles(&mut random, count);
        let outline = random_outline(&mut random);
        let mut expected = 0.0;
        for set in 1u32..1 << count {
            let mut chosen = (0..count).filter(|index| set >> index & 1 == 1);
            let shared = chosen.try_fold(outline, |shared: Rectangle, index| shared.clipped(&rectangles[index]));
            let area = shared.map_or(0.0, |shared| shared.area_mm2());
            expected += if set.count_ones() % 2 == 1 { area } else { -area };
        }
        let area = union_area_mm2(&rectangles, &outline);
        assert!(close(area, expected, 1e-6), "{area} is not {expected}");
    }
}

#[test]
fn union_area_agrees_with_random_darts() {
    let mut random = Random::new(2);
    for _ in 0..20 {
        let rectangles = random_rectangles(&mut random, 12);
        let outline = random_outline(&mut random);
        let darts = 40_000;
        let mut hits = 0;
        for _ in 0..darts {
            let dart = Point::new(random.between(-750.0, 750.0), random.between(-750.0, 750.0));
            hits += (outline.contains(dart) && rectangles.iter().any(|r| r.contains(dart))) as usize;
        }
        let part = hits as f64 / darts as f64;
        let board = 1500.0 * 1500.0;
        // Five standard deviations of a count.
        let slack = 5.0 * board * (part * (1.0 - part) / darts as f64).sqrt() + 1.0;
        assert!(close(union_area_mm2(&rectangles, &outline), part * board, slack));
    }
}

#[test]
fn outlines_of_a_union_enclose_its_area_with_square_corners() {
    let mut random = Random::new(3);
    for round in 0..400 {
        let count = random.below(12);
        let mut rectangles = random_rectangles(&mut random, count);
        if round % 2 == 0 {
            // On a coarse raster sides coincide and corners touch.
            let snap = |x: f64| (x / 100.0).round() * 100.0;
            for r in &mut rectangles {
                *r = Rectangle {
                    left_mm: snap(r.left_mm),
                    right_mm: snap(r.right_mm),
                    front_mm: snap(r.front_mm),
                    rear_mm: snap(r.rear_mm),
                };
            }
        }
        let outline = random_outline(&mut random);
        let outlines = union_outline(&rectangles, &outline);
        let enclosed: f64 = outlines.iter().map(Polygon::area_mm2).sum();
        assert!(close(enclosed, union_area_mm2(&rectangles, &outline), 1e-6));
        for figure in outlines {
            let sides: Vec<_> = figure.sides().collect();
            assert!(sides.len() >= 4 && sides.len() % 2 == 0);
            for (index, (from, to)) in sides.iter().enumerate() {
                let next = sides[(index + 1) % sides.len()].1;
                let is_upright = from.x_mm == to.x_mm;
                assert_ne!(is_upright, from.y_mm == to.y_mm);
                assert_ne!(is_upright, to.x_mm == next.x_mm, "a corner turns");
            }
        }
    }
}

#[test]
fn a_ring_has_an_outline_and_a_hole_and_touching_corners_stay_apart() {
    let bar = |left_mm, right_mm, front_mm, rear_mm| Rectangle { left_mm, right_mm, front_mm, rear_mm };
    let ring = [bar(0.0, 3.0, 0.0, 1.0), bar(0.0, 3.0, 2.0, 3.0), bar(0.0, 1.0, 0.0, 3.0), bar(2.0, 3.0, 0.0, 3.0)];
    let mut areas: Vec<f64> = union_outline(&ring, &Rectangle::EVERYWHERE).iter().map(Polygon::area_mm2).collect();
    areas.sort_by(f64::total_cmp);
    assert_eq!(areas, [-1.0, 9.0]);
    assert_eq!(union_area_mm2(&ring, &Rectangle::EVERYWHERE), 8.0);
    let touching = [bar(0.0, 1.0, 0.0, 1.0), bar(1.0, 2.0, 1.0, 2.0)];
    let figures = union_outline(&touching, &Rectangle::EVERYWHERE);
    assert_eq!(figures.iter().map(|figure| figure.corners.len()).collect::<Vec<_>>(), [4, 4]);
    assert_eq!(union_area_mm2(&[], &Rectangle::EVERYWHERE), 0.0);
    assert!(union_outline(&[], &Rectangle::EVERYWHERE).is_empty());
}

#[test]
fn moments_of_a_rectangle_are_the_textbook_ones_wherever_it_stands() {
    let (b, h, x, y) = (120.0, 80.0, 1000.0, -700.0);
    let moments = Rectangle::around(Point::new(x, y), Size::new(b / 2.0, h / 2.0)).polygon().moments();
    let area = b * h;
    let expected = Moments {
        area_mm2: area,
        first_x_mm3: area * x,
        first_y_mm3: area * y,
        second_xx_mm4: h * b * b * b / 12.0 + area * x * x,
        second_xy_mm4: area * x * y,
        second_yy_mm4: b * h * h * h / 12.0 + area * y * y,
    };
    assert!(close(moments.area_mm2, expected.area_mm2, 1e-9));
    assert!(close(moments.first_x_mm3 / expected.first_x_mm3, 1.0, 1e-14));
    assert!(close(moments.first_y_mm3 / expected.first_y_mm3, 1.0, 1e-14));
    assert!(close(moments.second_xx_mm4 / expected.second_xx_mm4, 1.0, 1e-14));
    assert!(close(moments.second_xy_mm4 / expected.second_xy_mm4, 1.0, 1e-14));
    assert!(close(moments.second_yy_mm4 / expected.second_yy_mm4, 1.0, 1e-14));
}

#[test]
fn both_halves_of_a_cut_polygon_make_the_whole() {
    let mut random = Random::new(4);
    for _ in 0..2000 {
        let places: Vec<Point> = (0..3 + random.below(9))
            .map(|_| Point::new(random.between(-1.0, 1.0), random.between(-1.0, 1.0)))
            .collect();
        let whole = Polygon::new(Hull::new(&places).corners().to_vec());
        let cut = HalfPlane {
            constant: random.between(-1.0, 1.0),
            slope_x: random.between(-2.0, 2.0),
            slope_y: random.between(-2.0, 2.0),
        };
        let rest = HalfPlane { constant: -cut.constant, slope_x: -cut.slope_x, slope_y: -cut.slope_y };
        let (kept, lost) = (whole.clipped(&cut), whole.clipped(&rest));
        let (sum, all) = (kept.moments().with(&lost.moments()), whole.moments());
        assert!(close(sum.area_mm2, all.area_mm2, 1e-14));
        assert!(close(sum.first_x_mm3, all.first_x_mm3, 1e-14) && close(sum.first_y_mm3, all.first_y_mm3, 1e-14));
        assert!(close(sum.second_xx_mm4, all.second_xx_mm4, 1e-14));
        assert!(close(sum.second_xy_mm4, all.second_xy_mm4, 1e-14));
        assert!(close(sum.second_yy_mm4, all.second_yy_mm4, 1e-14));
        assert!(kept.corners.iter().all(|&corner| cut.at(corner) >= -1e-14));
    }
}

#[test]
fn a_cut_through_a_corner_or_past_a_polygon_leaves_no_sliver() {
    let square = Rectangle::around(Point::default(), Size::new(1.0, 1.0)).polygon();
    let past = HalfPlane { constant: -3.0, slope_x: 1.0, slope_y: 1.0 };
    assert!(square.clipped(&past).corners.is_empty());
    let touching = HalfPlane { constant: -2.0, slope_x: 1.0, slope_y: 1.0 };
    assert!(square.clipped(&touching).corners.is_empty());
    let along_a_side = HalfPlane { constant: 1.0, slope_x: 1.0, slope_y: 0.0 };
    assert_eq!(square.clipped(&along_a_side), square);
    let diagonal = HalfPlane { constant: 0.0, slope_x: 1.0, slope_y: 1.0 };
    assert_eq!(square.clipped(&diagonal).corners.len(), 3);
    let outline = Rectangle { left_mm: 0.5, right_mm: f64::INFINITY, front_mm: f64::NEG_INFINITY, rear_mm: 0.0 };
    assert_eq!(square.clipped_to(&outline).area_mm2(), 0.5);
}

#[test]
fn a_hull_holds_every_place_and_each_of_its_corners_is_needed() {
    let mut random = Random::new(5);
    for round in 0..1000 {
        let places: Vec<Point> = (0..1 + random.below(40))
            .map(|_| {
                let place = Point::new(random.between(-800.0, 800.0), random.between(-800.0, 800.0));
                if round % 2 == 0 {
                    place
                } else {
                    Point::new((place.x_mm / 200.0).round(), (place.y_mm / 200.0).round())
                }
            })
            .collect();
        let hull = Hull::new(&places);
        for edge in hull.edges() {
            assert!(places.iter().all(|&place| edge.distance_mm(place) >= -1e-9));
        }
        for (index, corner) in hull.corners().iter().enumerate() {
            let mut others = hull.corners().to_vec();
            others.remove(index);
            let smaller = Hull::new(&others);
            assert!(others.len() < 3 || smaller.nearest_edge(*corner).unwrap().distance_mm < 0.0);
        }
    }
}

#[test]
fn hulls_of_few_or_aligned_places_have_no_sides() {
    let line: Vec<Point> = (0..5).map(|i| Point::new(0.1 * i as f64, 0.3 * i as f64)).collect();
    for (places, corners) in [(vec![], 0), (vec![line[0]; 3], 1), (line[..2].to_vec(), 2), (line.clone(), 2)] {
        let hull = Hull::new(&places);
        assert_eq!(hull.corners().len(), corners);
        assert_eq!(hull.edges().count(), 0);
        assert!(hull.nearest_edge(Point::default()).is_none());
        assert!(hull.ray_exit(Point::default(), 0.0).is_none());
    }
}

#[test]
fn a_ray_leaves_the_hull_where_halving_finds_its_edge() {
    let mut random = Random::new(6);
    for _ in 0..1000 {
        let places: Vec<Point> = (0..4 + random.below(6))
            .map(|_| Point::new(random.between(-1.0, 1.0), random.between(-1.0, 1.0)))
            .collect();
        let hull = Hull::new(&places);
        let start = Point::new(random.between(-1.0, 1.0), random.between(-1.0, 1.0));
        let direction_rad = random.between(-7.0, 7.0);
        let is_inside = |place: Point| hull.nearest_edge(place).is_some_and(|nearest| nearest.distance_mm >= 0.0);
        let Some(exit) = hull.ray_exit(start, direction_rad) else {
            assert!(!is_inside(start));
            continue;
        };
        let along =
            |way: f64| Point::new(start.x_mm + way * direction_rad.cos(), start.y_mm + way * direction_rad.sin());
        let (mut inside, mut outside) = (0.0, 4.0);
        for _ in 0..60 {
            let middle = (inside + outside) / 2.0;
            if is_inside(along(middle)) { inside = middle } else { outside = middle }
        }
        assert!(close(exit.distance_mm, inside, 1e-12));
        assert!(close(exit.edge.distance_mm(along(inside)), 0.0, 1e-12));
    }
}

/// By Caratheodory a load lies in the cone of its generators where three of them carry it without a negative share.
/// The answer is how much of it the best three leave short, relative to its size; zero or less is inside.
fn shortfall(pushing: &[Point], pulling: &[Point], load: [f64; 3]) -> f64 {
    let generator = |sign: f64| move |p: &Point| [sign, sign * p.x_mm, sign * p.y_mm];
    let all: Vec<[f64; 3]> = pushing.iter().map(generator(1.0)).chain(pulling.iter().map(generator(-1.0))).collect();
    let det = |a: &[f64; 3], b: &[f64; 3], c: &[f64; 3]| {
        a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])
    };
    let mut best = f64::INFINITY;
    for (i, a) in all.iter().enumerate() {
        for (j, b) in all.iter().enumerate().skip(i + 1) {
            for c in &all[j + 1..] {
                let whole = det(a, b, c);
                if whole.abs() < 1e-12 {
                    continue;
                }
                let shares = [det(&load, b, c) / whole, det(a, &load, c) / whole, det(a, b, &load) / whole];
                let short = shares.iter().fold(f64::NEG_INFINITY, |most: f64, share| most.max(-share));
                best = best.min(short);
            }
        }
    }
    best
}

#[test]
fn the_cone_holds_exactly_the_loads_that_three_places_can_share() {
    let mut random = Random::new(7);
    let mut counts = [0; 3];
    for _ in 0..4000 {
        let mut places = |count: usize| -> Vec<Point> {
            (0..count).map(|_| Point::new(random.between(-1.0, 1.0), random.between(-1.0, 1.0))).collect()
        };
        let pushing = places(3);
        let mut pulling = places(2);
        let mut pushing = pushing;
        if random.percent(50) {
            pushing.push(Point::new(random.between(-1.0, 1.0), random.between(-1.0, 1.0)));
        }
        if random.percent(40) {
            pulling.clear();
        }
        let cone = Cone::new(&pushing, &pulling);
        for _ in 0..5 {
            let load = [random.between(-0.5, 1.0), random.between(-1.0, 1.0), random.between(-1.0, 1.0)];
            let short = shortfall(&pushing, &pulling, load);
            if short.abs() < 1e-7 {
                continue;
            }
            let membership = cone.membership(load);
            let expected = short < 0.0;
            assert_eq!(membership == Membership::Inside, expected, "{pushing:?} {pulling:?} {load:?} {membership:?}");
            counts[if expected {
                0
            } else if matches!(membership, Membership::Outside(Some(_))) {
                1
            } else {
                2
            }] += 1;
        }
    }
    assert!(counts.iter().all(|&count| count > 300), "each outcome is tried: {counts:?}");
}

#[test]
fn a_load_within_a_billionth_of_an_edge_is_on_the_point() {
    let feet = [(-400.0, -300.0), (400.0, -300.0), (400.0, 300.0), (-400.0, 300.0)].map(|(x, y)| Point::new(x, y));
    let cone = Cone::new(&feet, &[]);
    let at = |ex_mm: f64, down_n: f64| cone.membership([down_n, down_n * ex_mm, 0.0]);
    for down_n in [1.0, 4e4, 1e8] {
        assert_eq!(at(400.0 * (1.0 - 1e-8), down_n), Membership::Inside);
        for ex_mm in [400.0 * (1.0 - 1e-10), 400.0, 400.0 * (1.0 + 1e-10)] {
            let Membership::OnTheSurface(edge) = at(ex_mm, down_n) else { panic!("{ex_mm} is on the point") };
            assert_eq!((edge.from.x_mm, edge.to.x_mm), (400.0, 400.0));
            assert_eq!(edge.length_mm(), 600.0);
        }
        assert!(matches!(at(400.0 * (1.0 + 1e-8), down_n), Membership::Outside(Some(_))));
    }
    assert_eq!(cone.membership([-10.0, 0.0, 0.0]), Membership::Outside(None), "it lifts off");
    assert!(matches!(cone.membership([f64::NAN, 0.0, 0.0]), Membership::Outside(_)), "what is no number is not held");
    assert!(matches!(cone.membership([0.0; 3]), Membership::OnTheSurface(_)), "no load holds nothing");
}

#[test]
fn places_on_a_line_or_on_a_point_never_hold_a_load_safely() {
    let p = Point::new;
    let line = [p(-300.0, -100.0), p(0.0, 0.0), p(300.0, 100.0)];
    let on_a_line = Cone::new(&line, &[]);
    assert!(
        matches!(on_a_line.membership([1e3, 30e3, 10e3]), Membership::OnTheSurface(edge) if edge.length_mm() > 600.0)
    );
    assert!(
        matches!(on_a_line.membership([1e3, 30e3, 11e3]), Membership::Outside(Some(edge)) if edge.length_mm() > 600.0)
    );
    let past_the_end = on_a_line.membership([1e3, 330e3, 110e3]);
    assert!(matches!(past_the_end, Membership::Outside(Some(edge)) if edge.from == edge.to));
    let tied = Cone::new(&line, &line);
    assert!(matches!(tied.membership([-1e3, 330e3, 110e3]), Membership::OnTheSurface(_)));
    assert!(matches!(tied.membership([-1e3, 330e3, 120e3]), Membership::Outside(Some(_))));
    let on_a_point = Cone::new(&[p(50.0, 20.0)], &[]);
    assert!(matches!(on_a_point.membership([1e3, 50e3, 20e3]), Membership::OnTheSurface(_)));
    assert!(matches!(on_a_point.membership([1e3, 51e3, 20e3]), Membership::Outside(Some(_))));
    assert_eq!(on_a_point.membership([-1e3, -50e3, -20e3]), Membership::Outside(None));
    let pulled_at_a_point = Cone::new(&[p(50.0, 20.0)], &[p(50.0, 20.0)]);
    assert!(matches!(pulled_at_a_point.membership([-1e3, -50e3, -20e3]), Membership::OnTheSurface(_)));
    assert_eq!(Cone::new(&[], &[]).membership([1e3, 0.0, 0.0]), Membership::Outside(None));
    assert!(Cone::new(&[], &[]).edges().next().is_none());
}
