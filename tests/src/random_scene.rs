//! Scenes for the drawings: ordinary ones, absurd ones, and what their marks say when they are read back.

use std::f64::consts::PI;

use steadfoot::calc::CheckId;
use steadfoot::geometry::{Edge, Point, Rectangle, Size};
use steadfoot::report::drawing::{
    Anchor, Cabinet, Contents, Drawing, Ending, Foot, Lettering, Mark, Push, RosePoint, RoseScene, Scene, Shape,
    TextAnchor,
};

use crate::random::Random;

/// The upright rectangle that a text takes, px.
#[derive(Clone, Copy, Debug)]
pub struct TextBox {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

/// A cabinet of this outline on four feet with four anchors, pushed towards a direction.
pub fn ordinary(width_mm: f64, depth_mm: f64, direction_deg: f64) -> Scene {
    let (foot_x, foot_y) = (width_mm / 2.0 - 70.0, depth_mm / 2.0 - 70.0);
    let (bolt_x, bolt_y) = (width_mm / 2.0 - 25.0, depth_mm / 2.0 - 25.0);
    let sides = [(-1.0, -1.0), (1.0, -1.0), (-1.0, 1.0), (1.0, 1.0)];
    let foot = |(place, (x, y)): (usize, (f64, f64))| {
        let outline = Rectangle::around(Point::new(x * foot_x, y * foot_y), Size::new(60.0, 60.0));
        let rear_mm = outline.front_mm + [120.0, 70.0, 30.0, 0.0][place];
        let pressed = Rectangle { rear_mm, ..outline }.polygon();
        Foot {
            outline,
            pressed: if place < 3 { vec![pressed] } else { vec![] },
            force_n: Some([31_200.0, 14_800.0, 2_100.0, 0.0][place]),
            peak_mpa: Some([3.1, 2.2, 0.9, 0.0][place]),
            at: None,
        }
    };
    let anchor = |(place, (x, y)): (usize, (f64, f64))| Anchor {
        place: Point::new(x * bolt_x, y * bolt_y),
        tension_n: Some([0.0, 0.0, 6_800.0, 12_350.0][place]),
        shear_n: [1_200.0, -2_100.0],
        at: Some(place as u16),
    };
    let tray = |place: usize| Contents {
        mass_kg: 310.0 - 35.0 * place as f64,
        centre: Point::new(0.0, 0.0),
        size_mm: [0.9 * width_mm, 0.9 * depth_mm, 220.0],
        bottom_mm: 120.0 + 270.0 * place as f64,
        drawn_out_mm: 0.0,
    };
    let cone = |x: f64| Rectangle::around(Point::new(x * bolt_x, bolt_y), Size::new(187.5, 187.5)).polygon();
    Scene {
        cabinet: Cabinet { width_mm, depth_mm, height_mm: 2200.0 },
        feet: sides.into_iter().enumerate().map(foot).collect(),
        anchors: sides.into_iter().enumerate().map(anchor).collect(),
        slab: Rectangle {
            left_mm: -bolt_x - 330.0,
            right_mm: 9_000.0,
            front_mm: f64::NEG_INFINITY,
            rear_mm: bolt_y + 410.0,
        },
        openings: Vec::new(),
        neighbours: Vec::new(),
        breakouts: vec![cone(-1.0), cone(1.0)],
        contents: (0..7).map(tray).collect(),
        centre_mm: [0.04 * width_mm, -0.02 * depth_mm, 1_040.0],
        push: Push {
            direction_rad: direction_deg * PI / 180.0,
            force_n: 13_600.0,
            acceleration_g: 0.457,
            down_n: 29_400.0,
        },
        pivot: Some(Edge {
            from: Point::new(-width_mm / 2.0 + 10.0, -depth_mm / 2.0 + 10.0),
            to: Point::new(width_mm / 2.0 - 10.0, -depth_mm / 2.0 + 10.0),
        }),
        ending: Ending::Settles,
    }
}

/// A scene of any size from 1 mm to 20 m, with up to 64 feet and 64 anchors, settled or tipping.
pub fn absurd(random: &mut Random) -> Scene {
    let [width_mm, depth_mm, height_mm] = [0, 1, 2].map(|_| random.decades(1.0, 20_000.0));
    let somewhere =
        |random: &mut Random| Point::new(random.between(-0.5, 0.5) * width_mm, random.between(-0.5, 0.5) * depth_mm);
    let is_settled = random.percent(70);
    let force_n = random.decades(1e-3, 1e8);
    let feet = (0..random.below(65)).map(|_| {
        let half = Size::new(random.between(0.0, 0.2) * width_mm, random.between(0.0, 0.2) * depth_mm);
        let outline = Rectangle::around(somewhere(random), half);
        let part = random.part();
        let rear_mm = outline.front_mm + part * (outline.rear_mm - outline.front_mm);
        Foot {
            outline,
            pressed: if is_settled { vec![Rectangle { rear_mm, ..outline }.polygon()] } else { vec![] },
            force_n: is_settled.then_some(force_n * part),
            peak_mpa: is_settled.then_some(random.part()),
            at: None,
        }
    });
    let feet: Vec<Foot> = feet.collect();
    let anchors: Vec<Anchor> = (0..random.below(65))
        .map(|place| Anchor {
            place: somewhere(random),
            tension_n: is_settled.then_some(if random.percent(50) { 0.0 } else { force_n * random.part() }),
            shear_n: [force_n * random.between(-0.3, 0.3), force_n * random.between(-0.3, 0.3)],
            at: Some(place as u16),
        })
        .collect();
    let contents = (0..random.below(40)).map(|_| Contents {
        mass_kg: random.decades(0.01, 5_000.0),
        centre: somewhere(random),
        size_mm: [width_mm, depth_mm, height_mm].map(|side_mm| side_mm * random.between(0.01, 0.9)),
        bottom_mm: random.between(0.0, 0.9) * height_mm,
        drawn_out_mm: if random.percent(20) { random.part() * depth_mm } else { 0.0 },
    });
    let contents: Vec<Contents> = contents.collect();
    let mut edge_mm = |sign: f64| {
        if random.percent(50) { sign * f64::INFINITY } else { sign * random.decades(width_mm, 50_000.0) }
    };
    let slab =
        Rectangle { left_mm: edge_mm(-1.0), right_mm: edge_mm(1.0), front_mm: edge_mm(-1.0), rear_mm: edge_mm(1.0) };
    let place = somewhere(random);
    let pivot = Edge { from: somewhere(random), to: somewhere(random) };
    Scene {
        cabinet: Cabinet { width_mm, depth_mm, height_mm },
        feet,
        anchors,
        slab,
        openings: Vec::new(),
        neighbours: Vec::new(),
        breakouts: vec![],
        contents,
        centre_mm: [place.x_mm, place.y_mm, random.part() * height_mm],
        push: Push {
            direction_rad: random.between(-7.0, 7.0),
            force_n: if random.percent(10) { 0.0 } else { force_n },
            acceleration_g: random.part(),
            down_n: force_n * random.between(-0.5, 2.0),
        },
        pivot: random.percent(60).then_some(pivot),
        ending: match (is_settled, random.percent(50)) {
            (true, _) => Ending::Settles,
            (false, true) => Ending::Tips,
            (false, false) => Ending::OnThePoint,
        },
    }
}

/// A rose of a few checks that take turns, with peaks up to far beyond the rim.
pub fn rose_scene(random: &mut Random) -> RoseScene {
    let count = random.below(60);
    let kinds = 1 + random.below(7);
    let (mean, swing) = (random.between(0.0, 1.2), random.between(0.0, 1.2));
    let points: Vec<RosePoint> = (0..count)
        .map(|place| {
            let direction_rad = 2.0 * PI * place as f64 / count as f64;
            let utilisation = (mean + swing * (2.0 * direction_rad).cos()).max(0.0);
            RosePoint {
                direction_rad,
                utilisation: if random.percent(3) { f64::INFINITY } else { utilisation },
                check: CheckId::ALL[1 + place * kinds / count.max(1)],
                at: Some(place as u16),
            }
        })
        .collect();
    let highest = |a: &usize, b: &usize| points[*a].utilisation.total_cmp(&points[*b].utilisation);
    let governing = (0..count).max_by(highest);
    RoseScene { points, governing }
}

/// The marks of a class that stand for a thing.
pub fn marks<'a>(drawing: &'a Drawing, class: &str, of: &str) -> Vec<&'a Mark> {
    let of_class = drawing.marks.iter().filter(|mark| mark.class == class);
    of_class.filter(|mark| mark.of.text() == of).collect()
}

/// The texts with the boxes that they take in the widest face.
pub fn text_boxes(drawing: &Drawing) -> Vec<(&Mark, TextBox)> {
    let texts = drawing.marks.iter().filter(|mark| mark.shape == Shape::Text);
    texts.map(|mark| (mark, text_box(mark))).collect()
}

/// No text touches another, none is smaller than 12 px, and everything lies inside the drawing.
pub fn assert_legible(drawing: &Drawing) {
    let boxes = text_boxes(drawing);
    for (place, (mark, one)) in boxes.iter().enumerate() {
        for (other_mark, other) in &boxes[place + 1..] {
            assert!(
                !one.covers(other),
                "{} of {} px: \"{}\" covers \"{}\"",
                drawing.view,
                drawing.width,
                mark.text,
                other_mark.text
            );
        }
        let is_inside = one.left >= -0.1
            && one.top >= -0.1
            && one.right <= drawing.width + 0.1
            && one.bottom <= drawing.height + 0.1;
        assert!(is_inside, "{} of {} px: \"{}\" leaves the drawing: {one:?}", drawing.view, drawing.width, mark.text);
    }
    for mark in &drawing.marks {
        let reach = mark.radius.unwrap_or(0.0);
        for &[x, y] in &mark.points {
            let is_inside = x.is_finite()
                && y.is_finite()
                && x - reach >= -0.1
                && y - reach >= -0.1
                && x + reach <= drawing.width + 0.1
                && y + reach <= drawing.height + 0.1;
            assert!(is_inside, "{} of {} px: {mark:?} leaves the drawing", drawing.view, drawing.width);
        }
    }
}

/// The words and numbers of a drawing.
pub fn texts(drawing: &Drawing) -> Vec<&str> {
    drawing.marks.iter().filter(|mark| mark.shape == Shape::Text).map(|mark| mark.text.as_str()).collect()
}

/// A number read back equals what belongs there, but for a slack.
pub fn assert_near(read: f64, expected: f64, slack: f64) {
    assert!((read - expected).abs() <= slack, "{read} where {expected} belongs");
}

fn text_box(mark: &Mark) -> TextBox {
    let lettering = Lettering::ALL.into_iter().find(|one| one.class() == mark.class).unwrap();
    let (width, size) = (lettering.width_px(&mark.text), lettering.size_px());
    let before = match mark.anchor.unwrap() {
        TextAnchor::Start => 0.0,
        TextAnchor::Middle => width / 2.0,
        TextAnchor::End => width,
    };
    let (ascent, descent) = (0.76 * size, 0.24 * size);
    let [x, y] = mark.points[0];
    match mark.turn {
        None => TextBox { left: x - before, top: y - ascent, right: x - before + width, bottom: y + descent },
        // Turned to read upwards, what stood to the left stands below.
        Some(turn) => {
            assert_eq!(turn, -90.0);
            TextBox { left: x - ascent, top: y + before - width, right: x + descent, bottom: y + before }
        }
    }
}

impl TextBox {
    /// True where two texts cover each other by more than the rounding of their places.
    pub fn covers(&self, other: &TextBox) -> bool {
        let slack = 0.1;
        self.left + slack < other.right
            && other.left + slack < self.right
            && self.top + slack < other.bottom
            && other.top + slack < self.bottom
    }
}
