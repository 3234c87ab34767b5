//! Annex C: what earthquakes take from a resistance.

use super::document::EN_1992_4;
use super::facts::Facts;
use super::fields as f;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::more;
use crate::calc::{Sheet, StepId, steps};

steps! { 83 "EN 1992-4, annex C";
    K_EQ_STATIC "k_eq" Number (EN_1992_4 "C.1, Table C.1" Memory) "1, because the seismicity is very low and the design is that for static actions": Condition;
    N_SHARE "n_share" Number (STATICS "base reactions" Derived) "How many fasteners share the load in this mode": Given;
    STEEL_N "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Steel in tension": Table;
    PULLOUT "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Pull-out; 1 for one fastener alone": Table;
    BOND "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Combined pull-out and concrete failure; 1 for one fastener alone": Table;
    CONE_HEADED "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Cone, headed fasteners and undercut anchors with their k_1; 1 for one fastener alone": Table;
    CONE "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Cone, other fasteners; 0.85 for one fastener alone": Table;
    SPLITTING "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Splitting; 1 for one fastener alone": Table;
    BLOWOUT "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Blow-out; 1 for one fastener alone": Table;
    STEEL_V "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Steel in shear; 1 for one fastener alone": Table;
    EDGE "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Edge failure; 1 for one fastener alone": Table;
    PRYOUT_HEADED "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Pry-out, headed fasteners and undercut anchors with their k_1; 1 for one fastener alone": Table;
    PRYOUT "alpha_eq" Number (EN_1992_4 "Table C.3" Memory) "Pry-out, other fasteners; 0.85 for one fastener alone": Table;
    GAP "alpha_gap" Number (EN_1992_4 "C.5(5)" Memory) "Clearance in the hole: the base hammers on the fastener": Condition;
    GAP_FILLED "alpha_gap" Number (EN_1992_4 "C.5(5)" Memory) "1, because the hole is filled or the fastener welded": Condition;
    STATIC_TAKEN "" Number (EN_1992_4 "C.5" Memory) "a cast-in bolt of a property class has no assessment with a seismic resistance; the static one is taken and reduced": Name;
    DELTA_EQ "delta_eq" Length (INPUT "European Technical Assessment" Derived) "Displacement of the fastener in category C2": Given;
    DELTA_REQ "delta_req" Length (INPUT "" Derived) "Displacement that is allowed": Given;
    ALPHA_DELTA "alpha_delta" Number (EN_1992_4 "C.6" Memory) "Effect of the allowed displacement" = "min(1, delta_req / delta_eq)";
    NO_LIMIT "alpha_delta" Number (EN_1992_4 "C.6" Memory) "1, because no displacement is limited": Condition;
    K_EQ_N "k_eq" Number (EN_1992_4 "(C.8)" Memory) "Seismic reduction in tension" = "alpha_eq * alpha_delta";
    K_EQ_V "k_eq" Number (EN_1992_4 "(C.8)" Memory) "Seismic reduction in shear" = "alpha_gap * alpha_eq * alpha_delta";
}

/// A failure mode as Table C.3 tells them apart.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
#[allow(missing_docs)]
pub enum Mode {
    SteelTension,
    PullOut,
    Bond,
    Cone,
    Splitting,
    BlowOut,
    SteelShear,
    Edge,
    PryOut,
}

impl Mode {
    fn is_shear(self) -> bool {
        matches!(self, Mode::SteelShear | Mode::Edge | Mode::PryOut)
    }

    /// The row of Table C.3: its id, the value of one fastener alone and that of a group.
    fn row(self, facts: &Facts) -> (StepId, [f64; 2]) {
        // Undercut anchors count like headed ones only with a k_1 of headed fasteners, which their assessment gives.
        let is_like_headed = facts.is_headed()
            || facts.is(f::FASTENER, f::UNDERCUT) && facts.number(f::K_CR).is_some_and(|k_1| !more(8.9, k_1));
        match (self, is_like_headed) {
            (Mode::SteelTension, _) => (STEEL_N, [1.0, 1.0]),
            (Mode::PullOut, _) => (PULLOUT, [1.0, 0.85]),
            (Mode::Bond, _) => (BOND, [1.0, 0.85]),
            (Mode::Cone, true) => (CONE_HEADED, [1.0, 0.85]),
            (Mode::Cone, false) => (CONE, [0.85, 0.75]),
            (Mode::Splitting, _) => (SPLITTING, [1.0, 0.85]),
            (Mode::BlowOut, _) => (BLOWOUT, [1.0, 0.85]),
            (Mode::SteelShear, _) => (STEEL_V, [1.0, 0.85]),
            (Mode::Edge, _) => (EDGE, [1.0, 0.85]),
            (Mode::PryOut, true) => (PRYOUT_HEADED, [1.0, 0.85]),
            (Mode::PryOut, false) => (PRYOUT, [0.85, 0.75]),
        }
    }
}

/// k_eq of a mode whose load `sharing` fasteners share; 1 where annex C does not apply.
pub fn reduction(facts: &Facts, mode: Mode, sharing: usize, sheet: &mut Sheet) -> f64 {
    if !facts.is_seismic {
        return sheet.step(K_EQ_STATIC, 1.0);
    }
    sheet.step(N_SHARE, sharing as f64);
    let (id, values) = mode.row(facts);
    let alpha_eq = sheet.step(id, values[usize::from(sharing > 1)]);
    let alpha_delta = displacement(facts, sheet);
    if !mode.is_shear() {
        return sheet.step(K_EQ_N, alpha_eq * alpha_delta);
    }
    let alpha_gap = if facts.is(f::HOLES, f::FILLED) { sheet.step(GAP_FILLED, 1.0) } else { sheet.step(GAP, 0.5) };
    sheet.step(K_EQ_V, alpha_gap * alpha_eq * alpha_delta)
}

/// Says that a static resistance of steel is taken under earthquakes.
pub fn tell_static(facts: &Facts, sheet: &mut Sheet) {
    if facts.is_seismic {
        sheet.step(STATIC_TAKEN, 0.0);
    }
}

fn displacement(facts: &Facts, sheet: &mut Sheet) -> f64 {
    let (Some(delta_eq), Some(delta_req)) = (facts.number(f::DELTA_EQ), facts.number(f::DELTA_REQ)) else {
        return sheet.step(NO_LIMIT, 1.0);
    };
    let delta_eq = sheet.step(DELTA_EQ, delta_eq);
    let delta_req = sheet.step(DELTA_REQ, delta_req);
    sheet.step(ALPHA_DELTA, f64::min(1.0, delta_req / delta_eq))
}
