//! A cabinet of the bench that is not bolted down yet: as it stands under the push, and as stability tests take it.

use alloc::vec::Vec;

use super::bench::Bench;
use crate::checks::stability::Tested;
use crate::checks::standing_free::Standing;
use crate::geometry::Point;

impl Bench<'_> {
    /// A state that stands by its weight alone, where there is a demand.
    pub fn standing(&self, state: usize) -> Option<Standing<'_>> {
        let Some(Ok(demand)) = &self.demand else { return None };
        Some(Standing {
            hull: self.supports[0].feet_hull(),
            centre_mm: self.loads[state].centre_mm,
            friction: self.project.slab.as_ref().map_or(crate::slab::FRICTION_DEFAULT, |slab| slab.friction),
            push: demand.push,
            vertical: demand.vertical,
        })
    }

    /// A state as stability tests of equipment take it.
    pub fn tested(&self, state: usize) -> Tested<'_> {
        let (cabinet, load) = (&self.project.cabinet, &self.loads[state]);
        let mut outline = Vec::new();
        let mut add = |middle: [f64; 2], size: [f64; 2]| {
            for (x, y) in [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)] {
                outline.push(Point::new(middle[0] + x * size[0], middle[1] + y * size[1]));
            }
        };
        add([0.0, 0.0], [cabinet.width_mm, cabinet.depth_mm]);
        for aboard in &self.project.all_states()[state].aboard {
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
