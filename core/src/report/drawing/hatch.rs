use alloc::vec::Vec;

use crate::calc::number::{ceil, floor};

/// Adds lines at 45 degrees inside a polygon, as pairs of points; all hatchings of one drawing lie on the same lines.
///
/// Units: px. The density carries no meaning. A figure too small for any line gets one through its middle.
pub fn hatch(corners: &[[f64; 2]], spacing: f64, lines: &mut Vec<[f64; 2]>) {
    if corners.len() < 3 {
        return;
    }
    // The lines are x + y = k spacing.
    let sum = |p: &[f64; 2]| p[0] + p[1];
    let least = corners.iter().map(sum).fold(f64::INFINITY, f64::min);
    let most = corners.iter().map(sum).fold(f64::NEG_INFINITY, f64::max);
    let (first, last) = (ceil(least / spacing), floor(most / spacing));
    if first > last {
        cross(corners, (least + most) / 2.0, lines);
        return;
    }
    let mut k = first;
    while k <= last {
        cross(corners, k * spacing, lines);
        k += 1.0;
    }
}

/// The parts of the line x + y = level inside the polygon.
fn cross(corners: &[[f64; 2]], level: f64, lines: &mut Vec<[f64; 2]>) {
    let begin = lines.len();
    for (place, a) in corners.iter().enumerate() {
        let b = corners[if place + 1 < corners.len() { place + 1 } else { 0 }];
        let (from, to) = (a[0] + a[1] - level, b[0] + b[1] - level);
        // Half open, so that a corner on the line counts once.
        if (from <= 0.0) != (to <= 0.0) {
            let way = from / (from - to);
            let hit = [a[0] + way * (b[0] - a[0]), a[1] + way * (b[1] - a[1])];
            // In the order of x, so that two and two belong together.
            let mut at = lines.len();
            while at > begin && lines[at - 1][0] > hit[0] {
                at -= 1;
            }
            lines.insert(at, hit);
        }
    }
}
