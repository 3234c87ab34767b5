//! Seeded random numbers, and random bases for the statics tests: the same on every machine.

use steadfoot::base_reactions::{Anchor, Foot, Push};
use steadfoot::calc::number;
use steadfoot::geometry::{Point, Size};

/// SplitMix64: one state word, good enough to scatter test inputs (Steele, Lea and Flood 2014).
pub struct Random(u64);

/// A cabinet as statics sees it.
#[derive(Clone, Debug)]
pub struct RandomBase {
    pub feet: Vec<Foot>,
    pub anchors: Vec<Anchor>,
    pub push: Push,
}

/// What stands between the cabinet and the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FeetKind {
    Points,
    Rectangles,
}

impl Random {
    pub fn new(seed: u64) -> Random {
        Random(seed)
    }

    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// Evenly from 0 to 1, 1 left out.
    pub fn part(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Evenly between two numbers.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.part()
    }

    /// Between two positive numbers, every decade equally often.
    pub fn decades(&mut self, low: f64, high: f64) -> f64 {
        low * number::pow(high / low, self.part())
    }

    /// A whole number from 0 on, `count` left out.
    pub fn below(&mut self, count: usize) -> usize {
        (self.bits() % count as u64) as usize
    }

    /// True in so many of 100 cases.
    pub fn percent(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }
}

/// A base with three to six feet and up to eight anchors, some of them odd: off-centre, uneven, softly or stiffly
/// bolted, lifted by vertical motion.
pub fn random_base(random: &mut Random, kind: FeetKind) -> RandomBase {
    let half_plan = Size::new(random.between(250.0, 900.0), random.between(250.0, 900.0));
    let foot_stiffness = random.decades(3e3, 3e6);
    let is_regular = random.percent(50);
    let half = match kind {
        FeetKind::Points => Size::new(0.0, 0.0),
        FeetKind::Rectangles => Size::new(random.between(20.0, 150.0), random.between(20.0, 150.0)),
    };
    let mut places = vec![(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
    match random.below(6) {
        0 => places.truncate(3),
        1 => places.push((0.0, random.between(-1.0, 1.0))),
        2 => places.extend([(0.0, -1.0), (0.0, 1.0)]),
        _ => {}
    }
    let mut feet = Vec::new();
    for (x, y) in places {
        let loose = if is_regular { 0.0 } else { 0.2 };
        let at = Point::new(
            half_plan.x_mm * (x + random.between(-loose, loose)),
            half_plan.y_mm * (y + random.between(-loose, loose)),
        );
        let uneven = if is_regular { 1.0 } else { random.between(0.5, 2.0) };
        feet.push(Foot { at, half, stiffness_n_per_mm: foot_stiffness * uneven });
    }
    let anchor_stiffness = foot_stiffness / random.decades(0.25, 100.0);
    let count = if random.percent(10) { 0 } else { 2 + random.below(7) };
    let mut anchors = Vec::new();
    for index in 0..count {
        let at = match random.below(3) {
            0 if is_regular => feet[index % feet.len()].at,
            _ => Point::new(half_plan.x_mm * random.between(-1.2, 1.2), half_plan.y_mm * random.between(-1.2, 1.2)),
        };
        anchors.push(Anchor { at, stiffness_n_per_mm: anchor_stiffness });
    }
    let weight_n = random.decades(1e3, 1e5);
    let down = if random.percent(10) { random.between(-0.3, 0.1) } else { random.between(0.4, 1.4) };
    let push = Push {
        down_n: weight_n * down,
        at: Point::new(half_plan.x_mm * random.between(-0.3, 0.3), half_plan.y_mm * random.between(-0.3, 0.3)),
        height_mm: random.between(300.0, 1600.0),
        horizontal_n: weight_n * random.between(0.0, 1.2),
        direction_rad: random.between(0.0, std::f64::consts::TAU),
    };
    RandomBase { feet, anchors, push }
}
