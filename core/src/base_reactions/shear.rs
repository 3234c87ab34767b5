use alloc::vec::Vec;

use crate::calc::number;
use crate::geometry::Point;

/// A horizontal force on the group of anchors.
///
/// Units: N. It acts in the line through `at`, the place under the centre of gravity.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Horizontal {
    /// The part along x.
    pub x_n: f64,
    /// The part along y.
    pub y_n: f64,
    /// A place on its line of action.
    pub at: Point,
}

/// The shear of one anchor in N.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Shear {
    /// The part along x.
    pub x_n: f64,
    /// The part along y.
    pub y_n: f64,
}

/// How a horizontal force is shared out, with the quantities that the formula names.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ShearShares {
    /// The centre of the anchors' stiffness.
    pub centre: Point,
    /// T, the twist about that centre: (x - x_c) V_y - (y - y_c) V_x, N mm.
    pub twist_nmm: f64,
    /// J, the sum of k r r with r the distance from the centre and k the stiffness (1 where all are equal).
    pub polar: f64,
    /// The sum of the stiffnesses.
    pub stiffness_sum: f64,
    /// One share for each anchor.
    pub shares: Vec<Shear>,
}

impl Shear {
    /// The size of the shear.
    pub fn size_n(&self) -> f64 {
        number::hypot(self.x_n, self.y_n)
    }
}

/// Shares a horizontal force out to anchors at these places with these stiffnesses (any unit; equal ones for equal
/// shares).
///
/// V_ix = V_x k_i / sum(k) - T k_i (y_i - y_c) / J and V_iy = V_y k_i / sum(k) + T k_i (x_i - x_c) / J.
/// Source: rigid plate on an elastic bolt group. None where there is no anchor, or where a twist meets anchors that all
/// stand on one point and cannot carry it.
///
/// ```
/// use steadfoot::base_reactions::{Horizontal, shear_shares};
/// use steadfoot::geometry::Point;
/// let anchors = [-100.0, 100.0].map(|x_mm| (Point::new(x_mm, 0.0), 1.0));
/// let force = Horizontal { y_n: 1000.0, at: Point::new(50.0, 0.0), ..Horizontal::default() };
/// assert_eq!(shear_shares(&anchors, &force).unwrap().shares[1].y_n, 750.0);
/// ```
pub fn shear_shares(anchors: &[(Point, f64)], force: &Horizontal) -> Option<ShearShares> {
    let stiffness_sum: f64 = anchors.iter().map(|&(_, stiffness)| stiffness).sum();
    if !(stiffness_sum > 0.0) {
        return None;
    }
    let mean = |part: fn(Point) -> f64| {
        anchors.iter().map(|&(at, stiffness)| stiffness * part(at)).sum::<f64>() / stiffness_sum
    };
    let centre = Point::new(mean(|at| at.x_mm), mean(|at| at.y_mm));
    let (arm_x, arm_y) = (force.at.x_mm - centre.x_mm, force.at.y_mm - centre.y_mm);
    let twist_nmm = arm_x * force.y_n - arm_y * force.x_n;
    let polar = anchors.iter().map(|&(at, stiffness)| {
        let (x, y) = (at.x_mm - centre.x_mm, at.y_mm - centre.y_mm);
        stiffness * (x * x + y * y)
    });
    let polar: f64 = polar.sum();
    // A nanometre of spread is rounding, not a lever.
    let has_levers = polar > stiffness_sum * 1e-12;
    let no_twist_nmm = 1e-6 * (force.x_n.abs() + force.y_n.abs());
    if !has_levers && !(twist_nmm.abs() <= no_twist_nmm) {
        return None;
    }
    let turn = if has_levers { twist_nmm / polar } else { 0.0 };
    let share = |&(at, stiffness): &(Point, f64)| Shear {
        x_n: stiffness * (force.x_n / stiffness_sum - turn * (at.y_mm - centre.y_mm)),
        y_n: stiffness * (force.y_n / stiffness_sum + turn * (at.x_mm - centre.x_mm)),
    };
    Some(ShearShares { centre, twist_nmm, polar, stiffness_sum, shares: anchors.iter().map(share).collect() })
}
