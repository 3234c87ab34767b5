//! Strength reduction factors, and the seismic reduction of concrete strength in tension.

use super::edition::ACI_318_19;
use super::facts::Facts;
use crate::calc::{Sheet, StepId, steps};
use crate::rules::bolts::Toughness;

steps! { 52 "ACI 318-19, strength reduction";
    PHI_TENSION_DUCTILE "phi" Number (ACI_318_19 "17.5.3(a)" Secondary) "Steel in tension, ductile element": Condition;
    PHI_TENSION_BRITTLE "phi" Number (ACI_318_19 "17.5.3(a)" Secondary) "Steel in tension, brittle element": Condition;
    PHI_SHEAR_DUCTILE "phi" Number (ACI_318_19 "17.5.3(a)" Secondary) "Steel in shear, ductile element": Condition;
    PHI_SHEAR_BRITTLE "phi" Number (ACI_318_19 "17.5.3(a)" Secondary) "Steel in shear, brittle element": Condition;
    PHI_CONCRETE_TENSION_PRESENT "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete in tension, cast-in, supplementary reinforcement present": Condition;
    PHI_CONCRETE_TENSION_ABSENT "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete in tension, cast-in, no supplementary reinforcement": Condition;
    PHI_CONCRETE_SHEAR_PRESENT "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete breakout in shear, supplementary reinforcement present": Condition;
    PHI_CONCRETE_SHEAR_ABSENT "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete breakout in shear, no supplementary reinforcement": Condition;
    PHI_PULLOUT "phi" Number (ACI_318_19 "Table 17.5.3(c)" Secondary) "Pullout of cast-in anchors": Condition;
    PHI_PRYOUT "phi" Number (ACI_318_19 "Table 17.5.3(c)" Secondary) "Pryout": Condition;
    K_E "k_E" Number (ACI_318_19 "17.10.5.4" Secondary) "Seismic reduction of concrete strength in tension. The release of 17.10.5.1, where the earthquake makes a fifth of the pull or less, is never taken": Condition;
    K_E_NONE "k_E" Number (ACI_318_19 "17.10.1" Secondary) "1, because 17.10 does not apply in seismic design categories A and B": Condition;
}

/// For what a steel strength is reduced.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Action {
    /// Pull.
    Tension,
    /// Shear.
    Shear,
}

/// Steel (17.5.3).
pub fn steel(action: Action, toughness: Toughness, sheet: &mut Sheet) -> f64 {
    let (id, value): (StepId, f64) = match (action, toughness) {
        (Action::Tension, Toughness::Ductile) => (PHI_TENSION_DUCTILE, 0.75),
        (Action::Tension, Toughness::Brittle) => (PHI_TENSION_BRITTLE, 0.65),
        (Action::Shear, Toughness::Ductile) => (PHI_SHEAR_DUCTILE, 0.65),
        (Action::Shear, Toughness::Brittle) => (PHI_SHEAR_BRITTLE, 0.60),
    };
    sheet.step(id, value)
}

/// Concrete breakout and side-face blowout (Table 17.5.3(b)).
pub fn concrete(action: Action, facts: &Facts, sheet: &mut Sheet) -> f64 {
    let (id, value) = match action {
        Action::Tension if facts.supplementary_tension => (PHI_CONCRETE_TENSION_PRESENT, 0.75),
        Action::Tension => (PHI_CONCRETE_TENSION_ABSENT, 0.70),
        Action::Shear if facts.supplementary_shear => (PHI_CONCRETE_SHEAR_PRESENT, 0.75),
        Action::Shear => (PHI_CONCRETE_SHEAR_ABSENT, 0.70),
    };
    sheet.step(id, value)
}

/// Pullout of cast-in anchors.
pub fn pullout(sheet: &mut Sheet) -> f64 {
    sheet.step(PHI_PULLOUT, 0.70)
}

/// Pryout.
pub fn pryout(sheet: &mut Sheet) -> f64 {
    sheet.step(PHI_PRYOUT, 0.70)
}

/// The seismic reduction of concrete-governed strength in tension (17.10.5.4).
pub fn seismic(facts: &Facts, sheet: &mut Sheet) -> f64 {
    if facts.seismic { sheet.step(K_E, 0.75) } else { sheet.step(K_E_NONE, 1.0) }
}
