//! The bodies that a free cabinet is: every state that is asked for, rocking sideways and front to rear.

use alloc::string::String;
use alloc::vec::Vec;

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::{Sheet, StepId, steps};
use crate::motion::{FREE_FALL_MM_PER_S2, MassAndReach, RockingBody};
use crate::project::bench::Bench;

steps! { 178 "free bodies";
    STATE "" Number (INPUT "states" Derived) "state": Name;
    AXIS "" Number (STATICS "" Derived) "rocks": Name;
    SIDEWAYS "" Number (STATICS "" Derived) "sideways": Name;
    LENGTHWAYS "" Number (STATICS "" Derived) "front to rear": Name;
    NO_FEET "" Number (INPUT "cabinet.feet" Derived) "its feet span no area, so that it has no edges to stand on": Reason;
    NOT_PLANAR "" Number (STATICS "" Derived) "where two feet do not stand at the same distance on a side, it turns about a corner and not about an edge: not followed in time": Reason;
}

/// Which way it rocks.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Way {
    /// To the right and to the left.
    Sideways,
    /// To the rear and to the front.
    Lengthways,
}

impl Way {
    /// Its row.
    pub fn row(self) -> StepId {
        if self == Way::Sideways { SIDEWAYS } else { LENGTHWAYS }
    }
}

/// A state as a rocking body.
#[derive(Clone, Debug)]
pub struct FreeBody {
    /// Its name.
    pub name: String,
    /// Which way it rocks.
    pub way: Way,
    /// Its mass and reach; right is rear where it rocks lengthways.
    pub given: MassAndReach,
    /// The body.
    pub body: RockingBody,
    /// Why it is not followed, where it is not.
    pub refused: Option<StepId>,
}

/// Corners of the hull this near to its end count as one edge.
const EDGE_SLACK_MM: f64 = 1.0;

/// Full, empty and the user's own states, both ways each; none where the feet span no area.
pub fn free_bodies(bench: &Bench) -> Vec<FreeBody> {
    let corners = bench.supports[0].feet_hull().corners();
    if corners.len() < 3 {
        return Vec::new();
    }
    let mut bodies = Vec::new();
    for state in states(bench) {
        let load = &bench.loads[state];
        for way in [Way::Sideways, Way::Lengthways] {
            let place = |x_mm: f64, y_mm: f64| if way == Way::Sideways { x_mm } else { y_mm };
            let along: Vec<f64> = corners.iter().map(|corner| place(corner.x_mm, corner.y_mm)).collect();
            let high = along.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            let low = along.iter().copied().fold(f64::INFINITY, f64::min);
            let centre = place(load.centre_mm[0], load.centre_mm[1]);
            let given = MassAndReach {
                mass_kg: load.mass_kg,
                inertia_kgmm2: load.inertia_kgmm2[if way == Way::Sideways { 1 } else { 0 }],
                height_mm: load.centre_mm[2],
                right_mm: high - centre,
                left_mm: centre - low,
                free_fall_mm_per_s2: FREE_FALL_MM_PER_S2,
            };
            let body = RockingBody::of(&given, &mut Sheet::quiet());
            // The edge must reach past the centre on both sides, or it turns about the end of it.
            let across = |x_mm: f64, y_mm: f64| if way == Way::Sideways { y_mm } else { x_mm };
            let middle = across(load.centre_mm[0], load.centre_mm[1]);
            let reaches = |end: f64| {
                let at_end = corners.iter().zip(&along).filter(|(_, place)| (**place - end).abs() <= EDGE_SLACK_MM);
                let places: Vec<f64> = at_end.map(|(corner, _)| across(corner.x_mm, corner.y_mm)).collect();
                places.iter().any(|place| *place < middle) && places.iter().any(|place| *place > middle)
            };
            let is_planar = reaches(high) && reaches(low);
            let refused = body.cannot().or((!is_planar).then_some(NOT_PLANAR));
            bodies.push(FreeBody { name: load.name.clone(), way, given, body, refused });
        }
    }
    bodies
}

/// Full, empty where that is another state, and the user's own; states that are part-filled lie between.
pub fn states(bench: &Bench) -> Vec<usize> {
    let project = bench.project;
    let between = bench.loads.len() - 2 - project.states.len();
    let is_twice = project.contents.is_empty();
    (0..bench.loads.len()).filter(|&state| state == 0 || state == 1 && !is_twice || state >= 2 + between).collect()
}
