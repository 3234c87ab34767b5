//! The base of a cabinet, or the aisle in front of it, as a rectangle in the plan of a hall.

use crate::calc::number;

/// Larger bases are a fault of their rows.
const SIDE_MAX_MM: f64 = 20_000.0;
/// Cabinets that share less than this touch and do not overlap: coordinates of a hall are no truer.
const TOUCH_MM: f64 = 1.0;

/// A rectangle in the plan.
#[derive(Clone, Copy, Debug)]
pub struct Base {
    pub at: [f64; 2],
    half: [f64; 2],
    /// Cosine and sine of its turn.
    turn: [f64; 2],
}

impl Base {
    /// The base with these corners; none where it is larger than a cabinet can be.
    pub fn of([left, right, rear, _]: [[f64; 2]; 4]) -> Option<Base> {
        let side = |from: [f64; 2], to: [f64; 2]| [to[0] - from[0], to[1] - from[1]];
        let (across, deep) = (side(left, right), side(right, rear));
        let [width, depth] = [across, deep].map(|[x, y]| number::hypot(x, y));
        let fits = width > 0.0 && depth > 0.0 && width <= SIDE_MAX_MM && depth <= SIDE_MAX_MM;
        fits.then(|| Base {
            at: [(left[0] + rear[0]) / 2.0, (left[1] + rear[1]) / 2.0],
            half: [width / 2.0, depth / 2.0],
            turn: [across[0] / width, across[1] / width],
        })
    }

    /// The aisle in front of it.
    pub fn in_front(&self, deep_mm: f64) -> Base {
        let [cosine, sine] = self.turn;
        let away = self.half[1] + deep_mm / 2.0;
        Base {
            at: [self.at[0] + away * sine, self.at[1] - away * cosine],
            half: [self.half[0], deep_mm / 2.0],
            turn: self.turn,
        }
    }

    /// Half of what it takes along a direction.
    pub fn reach(&self, [x, y]: [f64; 2]) -> f64 {
        let [cosine, sine] = self.turn;
        self.half[0] * (x * cosine + y * sine).abs() + self.half[1] * (y * cosine - x * sine).abs()
    }

    /// Whether two share more than a touch: no side of either parts them.
    pub fn shares_with(&self, other: &Base) -> bool {
        let between = [other.at[0] - self.at[0], other.at[1] - self.at[1]];
        [self.turn, other.turn].iter().all(|&[cosine, sine]| {
            [[cosine, sine], [-sine, cosine]].iter().all(|&way| {
                let apart = (between[0] * way[0] + between[1] * way[1]).abs();
                apart < self.reach(way) + other.reach(way) - TOUCH_MM
            })
        })
    }

    /// Whether it lies within an outline, which may touch it; an outline of less than three corners is none.
    pub fn is_within(&self, outline_mm: &[[f64; 2]]) -> bool {
        let Some(&last) = outline_mm.last().filter(|_| outline_mm.len() > 2) else { return true };
        let [cosine, sine] = self.turn;
        let seen = |[x, y]: [f64; 2]| {
            let (x, y) = (x - self.at[0], y - self.at[1]);
            [x * cosine + y * sine, y * cosine - x * sine]
        };
        let mut from = seen(last);
        let mut is_inside = false;
        for &corner in outline_mm {
            let to = seen(corner);
            if self.is_crossed(from, to) {
                return false;
            }
            // Its middle lies inside where a way to the right crosses the outline an odd number of times.
            if (from[1] > 0.0) != (to[1] > 0.0) && from[0] - from[1] * (to[0] - from[0]) / (to[1] - from[1]) > 0.0 {
                is_inside = !is_inside;
            }
            from = to;
        }
        is_inside
    }

    /// Whether a line, as seen from its middle, runs through more than a touch of it.
    fn is_crossed(&self, from: [f64; 2], to: [f64; 2]) -> bool {
        let (mut enters, mut leaves) = (0.0, 1.0);
        for axis in 0..2 {
            let half = self.half[axis] - TOUCH_MM;
            let run = to[axis] - from[axis];
            if run == 0.0 {
                if from[axis].abs() >= half {
                    return false;
                }
                continue;
            }
            let [one, other] = [-half, half].map(|side| (side - from[axis]) / run);
            let (first, second) = if one < other { (one, other) } else { (other, one) };
            enters = if first > enters { first } else { enters };
            leaves = if second < leaves { second } else { leaves };
        }
        enters < leaves
    }
}
