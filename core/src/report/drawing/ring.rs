use alloc::vec::Vec;

use super::scene::Anchor;
use crate::calc::number::sqrt;

/// The largest and the smallest radius that the largest pull gets, in px.
const LARGEST_PX: f64 = 14.0;
const LEAST_LARGEST_PX: f64 = 7.0;

/// Radii of the rings around the anchors in px; zero where nothing pulls.
///
/// The area is proportional to the pull. The largest pull gets as much as the distance between anchors allows, so that
/// rings of a tight pattern do not become one blot.
pub fn rings_px(anchors: &[Anchor], px_per_mm: f64) -> Vec<f64> {
    let most_n = anchors.iter().filter_map(|anchor| anchor.tension_n).fold(0.0, f64::max);
    if most_n <= 0.0 || !most_n.is_finite() {
        return anchors.iter().map(|_| 0.0).collect();
    }
    let mut spacing_mm = f64::INFINITY;
    for (place, one) in anchors.iter().enumerate() {
        for other in &anchors[place + 1..] {
            let distance_mm = one.place.distance_mm(other.place);
            if distance_mm > 0.0 {
                spacing_mm = spacing_mm.min(distance_mm);
            }
        }
    }
    let largest_px = (0.45 * spacing_mm * px_per_mm).clamp(LEAST_LARGEST_PX, LARGEST_PX);
    let radius_px = |tension_n: f64| {
        if tension_n > 0.0 { largest_px * sqrt(tension_n / most_n) } else { 0.0 }
    };
    anchors.iter().map(|anchor| radius_px(anchor.tension_n.unwrap_or(0.0))).collect()
}
