//! Which anchors take the shear of a project's base, and how it is shared among them.

use alloc::vec::Vec;

use super::Project;
use crate::base_reactions::told::{CaseLoad, tell_shear, tell_slotted_shear};
use crate::base_reactions::{Held, Horizontal, Push, Shear, shear_shares, slotted_shares};
use crate::calc::{Sheet, StepId};
use crate::geometry::Point;
use crate::report::missing::{SHEAR_NOWHERE, SHEAR_SLIDES};
use crate::rules::anchor::PreparedAnchors;

/// The anchors with the ways in which they hold.
pub struct Holding {
    held: Vec<Held>,
    /// Their places, each as stiff as the others.
    equal: Vec<(Point, f64)>,
    has_slots: bool,
}

impl Holding {
    /// Those of a project.
    pub fn new(project: &Project, anchors: Option<&dyn PreparedAnchors>) -> Holding {
        let places = project.cabinet.anchors.iter().enumerate();
        let held: Vec<Held> = places
            .map(|(place, anchor)| (anchor.at, anchors.map_or([true, true], |anchors| anchors.takes_shear(place))))
            .collect();
        let has_slots = held.iter().any(|(_, ways)| *ways != [true, true]);
        let equal = held.iter().map(|&(at, _)| (at, 1.0)).collect();
        Holding { held, equal, has_slots }
    }

    /// How many anchors there are.
    pub fn count(&self) -> usize {
        self.held.len()
    }

    /// The shear of each anchor under a push this way; none where they cannot carry it.
    pub fn shares(&self, push: &Push, [along, across]: [f64; 2]) -> Option<Vec<Shear>> {
        let force = Horizontal { x_n: push.horizontal_n * along, y_n: push.horizontal_n * across, at: push.at };
        let shares =
            if self.has_slots { slotted_shares(&self.held, &force) } else { shear_shares(&self.equal, &force) };
        shares.map(|shares| shares.shares)
    }

    /// Tells how the push of a load that was told just before is shared.
    pub fn tell(&self, load: &CaseLoad, shares: &[Shear], sheet: &mut Sheet) {
        if !sheet.is_told() {
            return;
        }
        if self.has_slots {
            tell_slotted_shear(load, &self.held, shares, sheet);
        } else {
            tell_shear(load, &self.held.iter().map(|&(at, _)| at).collect::<Vec<Point>>(), shares, sheet);
        }
    }

    /// Why nothing carries the shear, where there are no shares.
    pub fn reason(&self) -> StepId {
        if self.has_slots { SHEAR_SLIDES } else { SHEAR_NOWHERE }
    }
}
