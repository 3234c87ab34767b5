//! The perimeter along which a foot punches through a slab, cut at free edges and joints.

use alloc::vec::Vec;

/// A loaded rectangle with the distances from its sides to the slab's edges: left, right, front, rear; infinite where far.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadedRectangle {
    /// Its sides, along x and y.
    pub sides: [f64; 2],
    /// From its sides to the edges of the slab.
    pub to_edges: [f64; 4],
}

/// How the corners of a perimeter are made.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Corners {
    /// Straight lines that meet at right angles.
    Square,
    /// Quarter circles about the corners of the load.
    Round,
}

/// A perimeter with the number of sides that are closed, 4 where no edge cuts it.
#[derive(Clone, Debug, PartialEq)]
pub struct Perimeter {
    /// Its length.
    pub length: f64,
    /// Closed sides: 4, 3 or 2 (1 or 0 on a strip or a small plate).
    pub sides: usize,
    /// Its corners for a drawing, without rounding.
    pub outline: Vec<[f64; 2]>,
}

/// The shortest perimeter at this distance from a loaded rectangle; lines may run out to a free edge instead of closing.
pub fn perimeter(load: &LoadedRectangle, distance: f64, corners: Corners) -> Perimeter {
    let mut best: Option<Perimeter> = None;
    for open in 0..15_u32 {
        let is_open = |side: usize| open >> side & 1 == 1;
        let can = (0..4).all(|side| {
            let edge = load.to_edges[side];
            if is_open(side) { edge.is_finite() } else { edge >= distance }
        });
        if !can {
            continue;
        }
        let found = with_sides(load, distance, corners, is_open);
        if best.as_ref().is_none_or(|known| found.length < known.length) {
            best = Some(found);
        }
    }
    // Every side is nearer to an edge than the perimeter: nothing is left to punch through.
    best.unwrap_or(Perimeter { length: 0.0, sides: 0, outline: Vec::new() })
}

fn with_sides(load: &LoadedRectangle, distance: f64, corners: Corners, is_open: impl Fn(usize) -> bool) -> Perimeter {
    let [width, depth] = load.sides;
    let (left, right, front, rear) = (0, 1, 2, 3);
    let out = |side: usize| match (is_open(side), corners) {
        (true, _) => load.to_edges[side],
        (false, Corners::Square) => distance,
        (false, Corners::Round) => 0.0,
    };
    let along_x = width + out(left) + out(right);
    let along_y = depth + out(front) + out(rear);
    let mut length = 0.0;
    for (side, along) in [(front, along_x), (rear, along_x), (left, along_y), (right, along_y)] {
        length += if is_open(side) { 0.0 } else { along };
    }
    let arcs = [(left, front), (left, rear), (right, front), (right, rear)];
    if corners == Corners::Round {
        let closed = arcs.iter().filter(|(x, y)| !is_open(*x) && !is_open(*y)).count();
        length += closed as f64 * core::f64::consts::FRAC_PI_2 * distance;
    }
    let reach = |side: usize| if is_open(side) { load.to_edges[side] } else { distance };
    let (x_0, x_1) = (-width / 2.0 - reach(left), width / 2.0 + reach(right));
    let (y_0, y_1) = (-depth / 2.0 - reach(front), depth / 2.0 + reach(rear));
    Perimeter {
        length,
        sides: (0..4).filter(|&side| !is_open(side)).count(),
        outline: [[x_0, y_0], [x_1, y_0], [x_1, y_1], [x_0, y_1]].into(),
    }
}
