use alloc::vec::Vec;

use crate::report::plot::Grid;

/// The lines along which the field has a level, as pairs of places on both axes.
///
/// In every triangle of three neighbouring points the field is taken as flat, so contours are closed or end at an
/// edge, and never cross. Points without a value have no contour beside them; one that is beyond all numbers has it at the
/// very next point.
pub fn contour(grid: &Grid, level: f64) -> Vec<[[f64; 2]; 2]> {
    let mut lines = Vec::new();
    let (width, height) = (grid.x.len(), grid.y.len());
    for row in 1..height {
        for column in 1..width {
            let corner = |dx: usize, dy: usize| {
                let (i, j) = (column - 1 + dx, row - 1 + dy);
                let value = grid.values.get(j * width + i).copied().unwrap_or(f64::NAN);
                ([grid.x[i], grid.y[j]], value - level)
            };
            let square = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)];
            for triangle in [[0, 1, 2], [0, 2, 3]] {
                let ends = crossing(triangle.map(|place| square[place]));
                if let [Some(from), Some(to)] = ends {
                    lines.push([from, to]);
                }
            }
        }
    }
    lines
}

fn crossing(corners: [([f64; 2], f64); 3]) -> [Option<[f64; 2]>; 2] {
    let mut ends = [None; 2];
    if corners.iter().any(|(_, over)| over.is_nan()) {
        return ends;
    }
    for (from, to) in [(0, 1), (1, 2), (2, 0)] {
        let ((a, over_a), (b, over_b)) = (corners[from], corners[to]);
        if (over_a > 0.0) != (over_b > 0.0) {
            let way = if over_a.is_infinite() { 1.0 } else { over_a / (over_a - over_b) };
            let at = [a[0] + way * (b[0] - a[0]), a[1] + way * (b[1] - a[1])];
            let free = usize::from(ends[0].is_some());
            ends[free] = Some(at);
        }
    }
    ends
}
