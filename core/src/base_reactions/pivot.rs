use alloc::vec::Vec;

use super::{Anchor, BaseLoad};
use crate::calc::number;
use crate::geometry::{Edge, Hull};

/// What the hand method says about one edge: the cabinet pivots about it, and the anchors behind it share by lever.
///
/// T_k = l_k (M - N l_N) / sum(l_i l_i). M - N l_N is the moment that gravity does not hold; it is taken about the edge
/// from the base load as it is, so an oblique push counts with its part across the edge.
/// Source: equilibrium about the edge with equally stiff anchors on a rigid base; the feet's stiffness plays no part.
/// Units: N, mm, N mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pivot {
    /// The edge of the feet's hull.
    pub edge: Edge,
    /// M - N l_N, negative where gravity alone holds the cabinet.
    pub excess_nmm: f64,
    /// The sum of the squared levers of all anchors behind the edge.
    pub levers_squared_mm2: f64,
    /// The greatest lever.
    pub lever_max_mm: f64,
    /// The anchor that has it, none where no anchor stands behind the edge.
    pub anchor: Option<usize>,
    /// Its tension; infinite where gravity does not hold and no anchor stands behind the edge.
    pub tension_max_n: f64,
}

impl Pivot {
    /// The tension of an anchor by its lever, zero for one that stands in front of the edge.
    pub fn tension_n(&self, anchor: &Anchor) -> f64 {
        let lever_mm = number::positive_part(self.edge.distance_mm(anchor.at));
        if self.excess_nmm > 0.0 && lever_mm > 0.0 { lever_mm * self.excess_nmm / self.levers_squared_mm2 } else { 0.0 }
    }
}

/// The hand method about every edge of the feet's hull, in the order of the hull; none for a hull without area.
///
/// Anchors count as equally stiff, as the method has it. It answers how hard each is pulled if the cabinet turns about one
/// edge; lengths in mm, forces in N, pull positive.
pub fn pivots(hull: &Hull, anchors: &[Anchor], load: &BaseLoad) -> Vec<Pivot> {
    hull.edges().map(|edge| pivot(edge, anchors, load)).collect()
}

fn pivot(edge: Edge, anchors: &[Anchor], load: &BaseLoad) -> Pivot {
    let length_mm = edge.length_mm();
    let (along_x, along_y) = ((edge.to.x_mm - edge.from.x_mm) / length_mm, (edge.to.y_mm - edge.from.y_mm) / length_mm);
    // The inside lies to the left; P ex and P ey about the edge are what holds.
    let from_edge_x_nmm = load.moment_x_nmm - load.down_n * edge.from.x_mm;
    let from_edge_y_nmm = load.moment_y_nmm - load.down_n * edge.from.y_mm;
    let excess_nmm = along_y * from_edge_x_nmm - along_x * from_edge_y_nmm;
    let mut pivot =
        Pivot { edge, excess_nmm, levers_squared_mm2: 0.0, lever_max_mm: 0.0, anchor: None, tension_max_n: 0.0 };
    for (index, anchor) in anchors.iter().enumerate() {
        let lever_mm = edge.distance_mm(anchor.at);
        if lever_mm > 0.0 {
            pivot.levers_squared_mm2 += lever_mm * lever_mm;
            if lever_mm > pivot.lever_max_mm {
                (pivot.lever_max_mm, pivot.anchor) = (lever_mm, Some(index));
            }
        }
    }
    if excess_nmm > 0.0 {
        pivot.tension_max_n = match pivot.anchor {
            Some(_) => pivot.lever_max_mm * excess_nmm / pivot.levers_squared_mm2,
            None => f64::INFINITY,
        };
    }
    pivot
}
