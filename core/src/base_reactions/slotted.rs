use alloc::vec::Vec;

use super::shear::{Horizontal, Shear, ShearShares};
use crate::geometry::Point;

/// An anchor with the ways in which its hole lets it take shear: along x, along y.
pub type Held = (Point, [bool; 2]);

/// Shares a horizontal force out to anchors some of which stand in slotted holes and take nothing along their slots.
///
/// V_ix = w_xi (V_x / sum(w_x) - T (y_i - y_s) / J) and V_iy = w_yi (V_y / sum(w_y) + T (x_i - x_s) / J), with w 1 where
/// the anchor holds and 0 where it slides, x_s the mean of those that hold along y, y_s of those that hold along x, and
/// J = sum(w_x (y - y_s)^2 + w_y (x - x_s)^2). Source: rigid plate on an elastic bolt group whose springs act along one
/// axis only. Lengths in mm, forces in N. None where nothing holds along an axis, or where a twist meets no lever.
///
/// ```
/// use steadfoot::base_reactions::{Horizontal, slotted_shares};
/// use steadfoot::geometry::Point;
/// let anchors = [(Point::new(-100.0, 0.0), [true, true]), (Point::new(100.0, 0.0), [false, true])];
/// let force = Horizontal { x_n: 1000.0, ..Horizontal::default() };
/// assert_eq!(slotted_shares(&anchors, &force).unwrap().shares[1].x_n, 0.0);
/// ```
pub fn slotted_shares(anchors: &[Held], force: &Horizontal) -> Option<ShearShares> {
    let holds = |way: usize| anchors.iter().filter(move |(_, held)| held[way]).map(|&(at, _)| at);
    let count = |way: usize| holds(way).count() as f64;
    let (n_x, n_y) = (count(0), count(1));
    if n_x == 0.0 || n_y == 0.0 {
        return None;
    }
    let x_s = holds(1).map(|at| at.x_mm).sum::<f64>() / n_y;
    let y_s = holds(0).map(|at| at.y_mm).sum::<f64>() / n_x;
    let twist_nmm = (force.at.x_mm - x_s) * force.y_n - (force.at.y_mm - y_s) * force.x_n;
    let square = |value: f64| value * value;
    let polar = anchors.iter().map(|&(at, [along_x, along_y])| {
        let part = |held: bool, lever_mm: f64| if held { square(lever_mm) } else { 0.0 };
        part(along_x, at.y_mm - y_s) + part(along_y, at.x_mm - x_s)
    });
    let polar: f64 = polar.sum();
    // A nanometre of spread is rounding, not a lever.
    let has_levers = polar > 1e-12;
    if !has_levers && !(twist_nmm.abs() <= 1e-6 * (force.x_n.abs() + force.y_n.abs())) {
        return None;
    }
    // In the order of the text: where a share all but vanishes its digits depend on it.
    let by_twist = |lever_mm: f64| if has_levers { twist_nmm * lever_mm / polar } else { 0.0 };
    let shares: Vec<Shear> = anchors
        .iter()
        .map(|&(at, [along_x, along_y])| Shear {
            x_n: if along_x { force.x_n / n_x - by_twist(at.y_mm - y_s) } else { 0.0 },
            y_n: if along_y { force.y_n / n_y + by_twist(at.x_mm - x_s) } else { 0.0 },
        })
        .collect();
    Some(ShearShares { centre: Point::new(x_s, y_s), twist_nmm, polar, stiffness_sum: n_x.min(n_y), shares })
}
