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
    PHI_DRILLED_PRESENT_1 "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete or bond in tension, post-installed of category 1, supplementary reinforcement present": Condition;
    PHI_DRILLED_PRESENT_2 "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete or bond in tension, post-installed of category 2, supplementary reinforcement present": Condition;
    PHI_DRILLED_PRESENT_3 "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete or bond in tension, post-installed of category 3, supplementary reinforcement present": Condition;
    PHI_DRILLED_ABSENT_1 "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete or bond in tension, post-installed of category 1, no supplementary reinforcement": Condition;
    PHI_DRILLED_ABSENT_2 "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete or bond in tension, post-installed of category 2, no supplementary reinforcement": Condition;
    PHI_DRILLED_ABSENT_3 "phi" Number (ACI_318_19 "Table 17.5.3(b)" Secondary) "Concrete or bond in tension, post-installed of category 3, no supplementary reinforcement": Condition;
    PHI_PULLOUT_1 "phi" Number (ACI_318_19 "Table 17.5.3(c)" Secondary) "Pullout of post-installed anchors of category 1": Condition;
    PHI_PULLOUT_2 "phi" Number (ACI_318_19 "Table 17.5.3(c)" Secondary) "Pullout of post-installed anchors of category 2": Condition;
    PHI_PULLOUT_3 "phi" Number (ACI_318_19 "Table 17.5.3(c)" Secondary) "Pullout of post-installed anchors of category 3": Condition;
    PHI_BARS "phi" Number (ACI_318_19 "17.5.3, 17.5.2.1" Secondary) "Anchor reinforcement": Condition;
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
        Action::Tension if facts.kind.is_drilled() => drilled(facts),
        Action::Tension if facts.supplementary_tension => (PHI_CONCRETE_TENSION_PRESENT, 0.75),
        Action::Tension => (PHI_CONCRETE_TENSION_ABSENT, 0.70),
        Action::Shear if facts.supplementary_shear => (PHI_CONCRETE_SHEAR_PRESENT, 0.75),
        Action::Shear => (PHI_CONCRETE_SHEAR_ABSENT, 0.70),
    };
    sheet.step(id, value)
}

/// Concrete and bond of post-installed anchors in tension, by category. A category that is not known has a gap, which is
/// said; the strength of the worst one stands meanwhile.
fn drilled(facts: &Facts) -> (StepId, f64) {
    match (facts.supplementary_tension, facts.report.category) {
        (true, Some(0)) => (PHI_DRILLED_PRESENT_1, 0.75),
        (true, Some(1)) => (PHI_DRILLED_PRESENT_2, 0.65),
        (true, _) => (PHI_DRILLED_PRESENT_3, 0.55),
        (false, Some(0)) => (PHI_DRILLED_ABSENT_1, 0.65),
        (false, Some(1)) => (PHI_DRILLED_ABSENT_2, 0.55),
        (false, _) => (PHI_DRILLED_ABSENT_3, 0.45),
    }
}

/// Pullout.
pub fn pullout(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let (id, value) = match (facts.kind.is_drilled(), facts.report.category) {
        (false, _) => (PHI_PULLOUT, 0.70),
        (true, Some(0)) => (PHI_PULLOUT_1, 0.65),
        (true, Some(1)) => (PHI_PULLOUT_2, 0.55),
        (true, _) => (PHI_PULLOUT_3, 0.45),
    };
    sheet.step(id, value)
}

/// Anchor reinforcement.
pub fn bars(sheet: &mut Sheet) -> f64 {
    sheet.step(PHI_BARS, 0.75)
}

/// Pryout.
pub fn pryout(sheet: &mut Sheet) -> f64 {
    sheet.step(PHI_PRYOUT, 0.70)
}

/// The seismic reduction of concrete-governed strength in tension (17.10.5.4).
pub fn seismic(facts: &Facts, sheet: &mut Sheet) -> f64 {
    if facts.seismic { sheet.step(K_E, 0.75) } else { sheet.step(K_E_NONE, 1.0) }
}
