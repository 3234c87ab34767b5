use super::Point;

/// The widest gap between neighbouring points: the longest link of the shortest tree that joins them all.
///
/// For a row of three at 150 it is 150; for a grid it is the larger of its two pitches. Panics where there is no point.
///
/// ```
/// use steadfoot::geometry::{Point, widest_gap};
/// let [from, to] = widest_gap(&[0.0, 150.0, 400.0].map(|x_mm| Point::new(x_mm, 0.0)));
/// assert_eq!(from.distance_mm(to), 250.0);
/// ```
pub fn widest_gap(points: &[Point]) -> [Point; 2] {
    let mut nearest = alloc::vec![points[0]; points.len()];
    let mut joined = alloc::vec![false; points.len()];
    let mut widest = [points[0], points[0]];
    for _ in points {
        let gap_mm = |place: usize| points[place].distance_mm(nearest[place]);
        let open = (0..points.len()).filter(|&place| !joined[place]);
        let Some(next) = open.min_by(|&a, &b| gap_mm(a).total_cmp(&gap_mm(b))) else { break };
        joined[next] = true;
        if gap_mm(next) > widest[0].distance_mm(widest[1]) {
            widest = [nearest[next], points[next]];
        }
        for (place, point) in points.iter().enumerate() {
            if point.distance_mm(points[next]) < point.distance_mm(nearest[place]) {
                nearest[place] = points[next];
            }
        }
    }
    widest
}
