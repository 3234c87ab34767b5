//! Pairs of load cases, one in which weight adds and one in which it holds down: what most rules ask for.

use crate::calc::{Sheet, StepId};
use crate::load_case::{Directions, Level, LoadCase};

/// The two combinations of a rule, by their factor on gravity: where weight adds, where it holds down.
#[derive(Clone, Copy)]
pub struct Pair {
    /// Their names.
    pub names: [StepId; 2],
    /// The downward load over the weight: `heavy + vertical` and `light - vertical`, with the rule's own numerals.
    pub downs: [StepId; 2],
    /// Their factors on gravity.
    pub gravity: [f64; 2],
    /// What they are for.
    pub level: Level,
}

/// Factored forces over weight that act together.
#[derive(Clone, Copy)]
pub struct Acting {
    /// Sideways.
    pub horizontal: f64,
    /// Up or down.
    pub vertical: f64,
}

impl Pair {
    /// The two cases, the push in any direction.
    pub fn cases(self, acting: Acting, sheet: &mut Sheet) -> [LoadCase; 2] {
        let [heavy, light] = self.gravity;
        sheet.step(self.downs[0], heavy + acting.vertical);
        sheet.step(self.downs[1], light - acting.vertical);
        let case = |name, gravity, vertical| LoadCase {
            name,
            gravity,
            vertical,
            horizontal: acting.horizontal,
            level: self.level,
            directions: Directions::Any,
        };
        [case(self.names[0], heavy, acting.vertical), case(self.names[1], light, -acting.vertical)]
    }
}
