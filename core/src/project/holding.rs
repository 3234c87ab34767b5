//! Which anchors take the shear of a project's base, and how it is shared among them.

use alloc::vec::Vec;

use super::Project;
use crate::base_reactions::told::{CaseLoad, tell_shear, tell_slotted_shear};
use crate::base_reactions::{Held, Horizontal, Shear, shear_shares, slotted_shares};
use crate::calc::{Sheet, StepId, number};
use crate::geometry::Point;
use crate::report::missing::{SHEAR_NOWHERE, SHEAR_SLIDES};
use crate::rules::anchor::PreparedAnchors;

/// The anchors with the ways in which they hold.
pub struct Holding {
    held: Vec<Held>,
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
        Holding { held, has_slots }
    }

    /// How many anchors there are.
    pub fn count(&self) -> usize {
        self.held.len()
    }

    /// The shear of each anchor under a load; none where they cannot carry it.
    pub fn shares(&self, load: &CaseLoad) -> Option<Vec<Shear>> {
        let push = load.push();
        let force = Horizontal {
            x_n: push.horizontal_n * number::cos(push.direction_rad),
            y_n: push.horizontal_n * number::sin(push.direction_rad),
            at: push.at,
        };
        let shares = if self.has_slots {
            slotted_shares(&self.held, &force)
        } else {
            shear_shares(&self.held.iter().map(|&(at, _)| (at, 1.0)).collect::<Vec<_>>(), &force)
        };
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
