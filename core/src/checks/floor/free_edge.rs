//! The one free edge of a slab on the ground that legs stand beside.

use alloc::vec::Vec;

use super::bending::FELT_BESIDE_EDGE;
use super::{FloorSite, Leg};
use crate::calc::{Sheet, number};
use crate::floor::Reinforcement;
use crate::rules::floor::neighbours::{BesideEdge, Neighbour, PlateOnSprings};

/// A straight edge of the slab that is near to legs, where no other edge and no opening is.
#[derive(Clone, Debug)]
pub(super) struct FreeEdge {
    /// The side: left, right, front, rear.
    side: usize,
    /// For every leg and every other one, in the order of the feet: what the edge does between them.
    between: Vec<Vec<Option<BesideEdge>>>,
}

impl FreeEdge {
    /// The edge beside the legs of a plain slab on the ground. None where all legs are far from edges, and none where a
    /// second edge or an opening is near to one of them: that is no half plane.
    pub fn of(site: &FloorSite) -> Option<FreeEdge> {
        if !site.is_on_ground() || site.floor.reinforcement() != Reinforcement::Plain {
            return None;
        }
        let ground = site.ground(&mut Sheet::quiet()).ok()?;
        let radius_mm = ground.told_radius_mm(&mut Sheet::quiet()).ok()?;
        // Legs that are merged have their areas together.
        let area_mm2: f64 = site.legs.iter().map(|leg| 4.0 * leg.half.area_mm2()).sum();
        let near_mm = radius_mm + number::sqrt(area_mm2 / core::f64::consts::PI);
        let mut only = None;
        for leg in 0..site.legs.len() {
            for (side, from_edge_mm) in site.inwards_mm(leg).into_iter().enumerate() {
                let Leg { half, to_edges_mm, .. } = &site.legs[leg];
                let to_middle_mm = to_edges_mm[side] + if side < 2 { half.x_mm } else { half.y_mm };
                if to_middle_mm >= near_mm {
                    continue;
                }
                // An opening is nearer than the edge, or another edge was found.
                if to_middle_mm < from_edge_mm - 1e-6 || only.is_some_and(|other| other != side) {
                    return None;
                }
                only = Some(side);
            }
        }
        let side = only?;
        let plate = PlateOnSprings { radius_mm, poisson: ground.poisson, thickness_mm: ground.thickness_mm };
        let of_leg = |leg: usize| {
            let from_edge_mm = site.inwards_mm(leg)[side];
            let mut row = alloc::vec![None; site.legs.len()];
            for (other, away_mm) in site.within(leg, FELT_BESIDE_EDGE * radius_mm) {
                // A leg whose middle is off the slab is not beside its edge.
                if from_edge_mm > 0.0 && site.inwards_mm(other)[side] > 0.0 {
                    row[other] = Some(plate.beside_edge(from_edge_mm, along(side, away_mm)));
                }
            }
            row
        };
        Some(FreeEdge { side, between: (0..site.legs.len()).map(of_leg).collect() })
    }

    /// A leg as the neighbour of another one beside this edge.
    pub fn neighbour(&self, leg: usize, (place, away_mm): (usize, [f64; 2]), load_n: f64) -> Option<Neighbour> {
        let edge = self.between[leg][place];
        edge.is_some().then_some(Neighbour { load_n, away_mm: along(self.side, away_mm), edge })
    }
}

/// A way in the plan as one along an edge and one inwards from it.
fn along(side: usize, [x_mm, y_mm]: [f64; 2]) -> [f64; 2] {
    match side {
        0 => [y_mm, x_mm],
        1 => [y_mm, -x_mm],
        2 => [x_mm, y_mm],
        _ => [x_mm, -y_mm],
    }
}
