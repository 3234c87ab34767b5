//! The spectrum of the ground that a demand rule draws, where what the rule asks for is enough to draw it.

use super::demand::DemandRule;
use crate::calc::{Sheet, StepId};
use crate::input::Values;

/// A spectrum that rises straight from rigid things to a level, and falls from there with the period and its square.
#[derive(Clone, Copy, Debug)]
pub struct GroundSpectrum {
    /// Steps of the rule whose product scales it; each is the first of its ids that the rule tells.
    pub scale: &'static [&'static [StepId]],
    /// At period zero, over that product.
    pub rigid: f64,
    /// At the top, over that product.
    pub top: f64,
    /// The corner periods, which for these inputs the rule itself gives: end of the rise, end of the level, begin of the
    /// fall with the square. Where it gives none the end of the level has to be said, and the rise ends at a fifth of it.
    pub corners_s: fn(&Values) -> Option<[f64; 3]>,
    /// Whether the rule says how it falls with the damping; else it is drawn for 5 % only.
    pub is_damped: bool,
}

/// The spectrum of the editions of ASCE 7 and of what follows them: 0.4 S_DS and S_DS.
pub const fn of_s_ds(scale: &'static [&'static [StepId]]) -> GroundSpectrum {
    GroundSpectrum { scale, rigid: 0.4, top: 1.0, corners_s: |_| None, is_damped: false }
}

/// The spectrum of UBC 1997 figure 16-3 and of what follows it: C_a and 2.5 C_a.
pub const fn of_c_a(scale: &'static [&'static [StepId]]) -> GroundSpectrum {
    GroundSpectrum { scale, rigid: 1.0, top: 2.5, corners_s: |_| None, is_damped: false }
}

impl GroundSpectrum {
    /// What scales it for these inputs, in multiples of g; none where the rule does not come so far.
    pub fn scaled(&self, rule: &DemandRule, values: &Values) -> Option<f64> {
        let mut sheet = Sheet::told();
        // A refusal behind these steps leaves them told.
        let _ = (rule.demand)(values, 1.0, &mut sheet);
        let told = |ids: &[StepId]| {
            let steps = sheet.sections.iter().flat_map(|section| &section.steps);
            steps.into_iter().find(|step| ids.contains(&step.id)).map(|step| step.value)
        };
        self.scale.iter().try_fold(1.0, |product, ids| Some(product * told(ids)?))
    }
}
