//! A cabinet of the bench that is not bolted down yet: as it stands under the push, and as stability tests take it.

use alloc::vec::Vec;

use super::bench::Bench;
use crate::calc::{CheckId, Outcome, Sheet, Subject};
use crate::checks::stability::Tested;
use crate::checks::standing_free::Standing;
use crate::geometry::Point;
use crate::load_case::Directions;
use crate::load_out::{Load, LoadState};
use crate::report::outcome::{At, SubjectTold};
use crate::rules::anchor::Finding;

impl Bench<'_> {
    /// A state that stands by its weight alone, where there is a demand.
    pub fn standing(&self, state: usize) -> Option<Standing<'_>> {
        let Some(Ok(demand)) = &self.demand else { return None };
        let directions = self.cases().first().map_or(Directions::Any, |case| case.directions);
        Some(Standing {
            hull: self.supports[0].feet_hull(),
            centre_mm: self.loads[state].centre_mm,
            friction: self.project.slab.as_ref().map_or(crate::slab::FRICTION_DEFAULT, |slab| slab.friction),
            push: demand.push * directions.longer(),
            directions,
            vertical: demand.vertical,
        })
    }

    /// A state as stability tests of equipment take it.
    pub fn tested(&self, state: usize) -> Tested<'_> {
        self.tested_as(&self.project.all_states()[state], &self.loads[state])
    }

    /// A state of what it holds with its load, as stability tests take it.
    pub fn tested_as(&self, state: &LoadState, load: &Load) -> Tested<'_> {
        let cabinet = &self.project.cabinet;
        let mut outline = Vec::new();
        let mut add = |middle: [f64; 2], size: [f64; 2]| {
            for (x, y) in [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)] {
                outline.push(Point::new(middle[0] + x * size[0], middle[1] + y * size[1]));
            }
        };
        add([0.0, 0.0], [cabinet.width_mm, cabinet.depth_mm]);
        for aboard in &state.aboard {
            let content = &self.project.contents[aboard.content];
            let [x_mm, y_mm, _] = content.centre_mm(aboard.drawn_out_mm);
            add([x_mm, y_mm], [content.size_mm[0], content.size_mm[1]]);
        }
        Tested {
            hull: self.supports[0].feet_hull(),
            mass_kg: load.mass_kg,
            centre_mm: load.centre_mm,
            height_mm: cabinet.height_mm,
            outline,
        }
    }
}

/// Standing free in the state that is worst for it.
pub(super) fn free(bench: &Bench, check: CheckId) -> Option<(Finding, At)> {
    let mut worst: Option<(f64, Finding, At)> = None;
    // Many contents make many states, so they are listed once.
    let states = bench.project.all_states();
    for state in 0..bench.loads.len() {
        let (direction_rad, outcome) = match check {
            CheckId::FreeTilt | CheckId::FreePush => {
                let tested = bench.tested_as(&states[state], &bench.loads[state]);
                let side = tested.worst(check);
                (side.direction_rad, tested.check(check, &side, &mut Sheet::quiet()))
            }
            _ => {
                let standing = bench.standing(state)?;
                let direction_rad = standing.weakest_direction_rad();
                let outcome = match check {
                    CheckId::FreeTipping => standing.check_tipping(direction_rad, &mut Sheet::quiet()),
                    _ => standing.check_sliding(&mut Sheet::quiet()),
                };
                (direction_rad, outcome)
            }
        };
        let Outcome::Compared { utilisation, .. } = outcome else { continue };
        let utilisation = if utilisation.is_nan() { f64::INFINITY } else { utilisation };
        if worst.as_ref().is_none_or(|(known, ..)| utilisation > *known) {
            let place = At {
                state,
                case: None,
                anchors: false,
                direction_rad,
                subject: SubjectTold { kind: "whole", number: 0 },
                stiffness: 1.0,
                check: Some(check.id()),
            };
            worst = Some((utilisation, Finding { check, subject: Subject::Whole, outcome }, place));
        }
    }
    worst.map(|(_, finding, place)| (finding, place))
}
