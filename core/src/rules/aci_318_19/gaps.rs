//! Why single modes of an anchorage are not covered: mostly a value that only the evaluation report gives.

use super::chosen;
use super::coverage as c;
use super::facts::Facts;
use super::kind::AnchorKind;
use crate::calc::StepId;
use crate::calc::limit::less;
use crate::rules::bolts::Toughness;

/// A reason for each mode that has a gap.
#[derive(Clone, Copy, Debug, Default)]
pub struct Gaps {
    /// Steel in tension.
    pub steel_tension: Option<StepId>,
    /// Steel in shear.
    pub steel_shear: Option<StepId>,
    /// Rods that bend under welded washers.
    pub washers: Option<StepId>,
    /// Breakout and bond in tension.
    pub concrete: Option<StepId>,
    /// Pullout.
    pub pullout: Option<StepId>,
    /// Bond.
    pub bond: Option<StepId>,
    /// Lasting pull.
    pub sustained: Option<StepId>,
    /// Ductile steel that yields first.
    pub ductile: Option<StepId>,
}

impl Gaps {
    /// The gaps of an anchorage that the rule reaches.
    pub fn new(facts: &Facts) -> Gaps {
        let (report, kind) = (&facts.report, facts.kind);
        let stand_off = (facts.seat == chosen::SEAT_GAP).then_some(c::STAND_OFF);
        let category = (kind.is_drilled() && report.category.is_none()).then_some(c::NO_CATEGORY);
        let bond = if kind == AnchorKind::Adhesive { category.or_else(|| bond(facts)) } else { None };
        Gaps {
            steel_tension: stand_off,
            steel_shear: stand_off.or_else(|| steel_shear(facts)),
            washers: stand_off.or_else(|| (facts.plate.is_none() || facts.washer.is_none()).then_some(c::NO_WASHER)),
            concrete: category,
            pullout: category.or_else(|| pullout(facts)),
            bond,
            // Lasting pull is no earthquake's.
            sustained: bond.filter(|reason| *reason != c::NO_ALPHA_N_SEIS),
            ductile: ductile(facts),
        }
    }
}

fn steel_shear(facts: &Facts) -> Option<StepId> {
    if !facts.kind.is_drilled() || facts.anchors.iter().all(|anchor| anchor.shear_report.is_some()) {
        return None;
    }
    if facts.seismic {
        return Some(c::NO_V_SA_EQ);
    }
    facts.report.sleeve.then_some(c::NO_V_SA)
}

fn pullout(facts: &Facts) -> Option<StepId> {
    match facts.kind {
        AnchorKind::Headed | AnchorKind::Adhesive => None,
        AnchorKind::Hooked => {
            let is_outside = facts.anchors.iter().any(|anchor| {
                let hook = anchor.hook.unwrap_or(0.0);
                less(hook, 3.0 * anchor.d_a) || less(4.5 * anchor.d_a, hook)
            });
            is_outside.then_some(c::HOOK_RANGE)
        }
        _ if !facts.report.pullout_decides => None,
        _ => {
            let is_known = facts.anchors.iter().all(|anchor| anchor.pullout_report.is_some());
            let missing = if facts.seismic { c::NO_N_P_EQ } else { c::NO_N_P };
            (!is_known).then_some(missing)
        }
    }
}

fn bond(facts: &Facts) -> Option<StepId> {
    let report = &facts.report;
    if report.bond_stress > 0 {
        return None;
    }
    if report.tau_uncr.is_none() {
        return Some(c::NO_TAU_UNCR);
    }
    if facts.is_cracked && report.tau_cr.is_none() {
        return Some(c::NO_TAU_CR);
    }
    (facts.seismic && report.alpha_n_seis.is_none()).then_some(c::NO_ALPHA_N_SEIS)
}

fn ductile(facts: &Facts) -> Option<StepId> {
    if !facts.options.ductile {
        return None;
    }
    if facts.anchors.iter().any(|anchor| anchor.toughness == Toughness::Brittle) {
        return Some(c::NOT_DUCTILE);
    }
    if !facts.options.is_protected {
        return Some(c::NOT_PROTECTED);
    }
    let is_part_threaded = facts.options.thread == 0;
    (is_part_threaded && facts.anchors.iter().any(|anchor| anchor.f_ya.is_none())).then_some(c::NO_YIELD)
}
