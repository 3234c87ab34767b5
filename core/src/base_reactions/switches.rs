use alloc::vec::Vec;

use super::{Plane, Push, Reactions, Supports};

/// A switch is known when the directions on both sides of it are this near; the search for peaks does the rest.
const KNOWN_RAD: f64 = 4e-3;
/// Directions looked at in all; a bound that no cabinet has come near.
const LOOKS_MAX: usize = 2000;

/// The settlement of every anchor in one direction, negative where it pulls; empty where the cabinet does not settle.
struct Look {
    direction_rad: f64,
    anchors_mm: Vec<f64>,
}

impl Supports {
    /// Both sides of every direction in which an anchor begins or ceases to pull, between directions that are known,
    /// ascending, each with the plane by which the cabinet settles there; none where it does not.
    ///
    /// What a group of anchors resists jumps there, so a peak may lean against a switch or stand between two of them.
    /// The direction of the push itself plays no part. Found from base reactions alone, no check is asked.
    pub fn switches(&self, rows: &[(f64, Option<Plane>)], push: &Push) -> Vec<f64> {
        let mut found_rad = Vec::new();
        if self.anchors().is_empty() {
            return found_rad;
        }
        let mut reactions = Reactions::default();
        let mut looks: Vec<Look> = rows.iter().map(|&(direction_rad, plane)| self.seen(direction_rad, plane)).collect();
        let mut gap = 0;
        while gap + 1 < looks.len() && looks.len() < LOOKS_MAX {
            let (from, to) = (&looks[gap], &looks[gap + 1]);
            match switch_between(from, to) {
                None => gap += 1,
                Some(_) if to.direction_rad - from.direction_rad <= KNOWN_RAD => {
                    found_rad.extend([from.direction_rad, to.direction_rad]);
                    gap += 1;
                }
                Some(between_rad) => {
                    let plane = self.look(push, between_rad, &mut reactions);
                    looks.insert(gap + 1, self.seen(between_rad, plane));
                }
            }
        }
        found_rad
    }

    /// The plane of one direction; none where nothing balances the push.
    fn look(&self, push: &Push, direction_rad: f64, reactions: &mut Reactions) -> Option<Plane> {
        let settled = self.settle_into(&Push { direction_rad, ..*push }.into(), reactions);
        settled.is_ok().then_some(reactions.plane)
    }

    fn seen(&self, direction_rad: f64, plane: Option<Plane>) -> Look {
        let anchors_mm =
            plane.map_or(Vec::new(), |plane| self.anchors().iter().map(|anchor| plane.at_mm(anchor.at)).collect());
        Look { direction_rad, anchors_mm }
    }
}

/// Where to look for the first switch in a gap, none where no anchor switches or the cabinet tips on one side.
///
/// A little beyond the secant, towards the farther end, so that the next gap about the switch is a narrow one.
fn switch_between(from: &Look, to: &Look) -> Option<f64> {
    let pairs = from.anchors_mm.iter().zip(&to.anchors_mm);
    let (&from_mm, &to_mm) = pairs.into_iter().find(|(from_mm, to_mm)| (**from_mm < 0.0) != (**to_mm < 0.0))?;
    let width_rad = to.direction_rad - from.direction_rad;
    let part = from_mm / (from_mm - to_mm);
    let beyond = 0.04 + KNOWN_RAD / (4.0 * width_rad);
    let part = if part < 0.5 { part + beyond } else { part - beyond };
    Some(from.direction_rad + part.clamp(0.01, 0.99) * width_rad)
}
