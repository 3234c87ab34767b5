//! Where the rule stops, what is missing, and where a check is not needed.

use super::document::EN_1992_4;
use super::facts::Facts;
use super::fields as f;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{at_most, less, more};
use crate::calc::number::hypot;
use crate::calc::{Sheet, StepId, steps};
use crate::geometry::Rectangle;
use crate::rules::anchor::Amplification;
use crate::rules::anchor_set::ANCHORS_MAX;

steps! { 70 "EN 1992-4, coverage";
    OTHER_FORMAT "" Number (EN_1992_4 "4.3" Memory) "EN 1992-4 compares actions of limit states with resistances divided by partial factors; the demand rule works in another format. EN 1998-1, or a coefficient given directly as limit states, would fit": Reason;
    TOO_MANY "" Number (INPUT "" Derived) "more than 128 anchors are not grouped here": Reason;
    WEAK "" Number (EN_1992_4 "1.4" Memory) "the concrete is outside the classes C12/15 to C90/105": Reason;
    THIN_FASTENER "" Number (EN_1992_4 "1.3" Memory) "a fastener is thinner than 6 mm": Reason;
    THICK_FASTENER "" Number (EN_1992_4 "7.2.2.5" Secondary) "a fastener is thicker than 60 mm, the limit of the equation for edges": Reason;
    SHALLOW "" Number (EN_1992_4 "1.3" Memory) "a fastener is embedded less than 40 mm": Reason;
    DEEP_BOND "" Number (EN_1992_4 "1.3" Memory) "a bonded anchor is embedded more than 20 diameters": Reason;
    THIN_SLAB "" Number (EN_1992_4 "1.3" Derived) "a fastener reaches to the underside of the slab or beyond": Reason;
    OUTSIDE "" Number (INPUT "" Derived) "an anchor stands on or beyond the edge of the slab": Reason;
    OPENING "" Number (EN_1992_4 "7.2" Derived) "an opening in the slab is nearer to a fastener than 10 h_ef, 60 d or the characteristic distances; its sides are edges, and only the straight edges of the slab are counted here": Reason;
    NO_MEASURE "" Number (INPUT "" Derived) "a measure of a fastener is not known": Reason;
    MIXED_PRODUCT "" Number (EN_1992_4 "1.2" Derived) "an assessment's values are those of one size and one depth, and the anchors are of several": Reason;
    COMPRESSED "" Number (EN_1992_4 "1.3" Memory) "the cabinet stands on the rods: EN 1992-4 has no rule for rods that are compressed over a free length. Their buckling is a case of EN 1993-1-1 6.3, with their lengths and ends": Reason;
    NOT_QUALIFIED "" Number (EN_1992_4 "C.2, Table C.1" Memory) "the fastener is not qualified for the seismic performance category that the site asks": Reason;
    CAPACITY_DESIGN "" Number (EN_1992_4 "C.3(a1)" Memory) "capacity design needs the force at which the base yields, with its overstrength; that is not computed here. Elastic design would do": Reason;
    DUCTILE_FASTENER "" Number (EN_1992_4 "C.3(b)" Memory) "ductile fasteners may only be pulled, and stretch over eight diameters; these carry the shear of the cabinet too. Elastic design would do": Reason;
    NOT_AMPLIFIED "" Number (EN_1992_4 "C.3(a2)" Memory) "elastic design needs a demand without behaviour factors; the demand rule has no level for anchors that are designed elastically, and no factor to elastic forces is given": Reason;

    MISSING_GAMMA_INST "gamma_inst" Number (EN_1992_4 "Table 4.1" Secondary) "the assessment's installation factor gamma_inst is missing": Reason;
    MISSING_N_RK_S "N_Rk_s" Number (EN_1992_4 "7.2.1.3" Secondary) "the assessment's steel resistance N_Rk_s is missing": Reason;
    MISSING_N_RK_P_CR "N_Rk_p" Number (EN_1992_4 "7.2.1.5" Secondary) "the assessment's pull-out resistance N_Rk_p in cracked concrete is missing": Reason;
    MISSING_N_RK_P_UCR "N_Rk_p" Number (EN_1992_4 "7.2.1.5" Secondary) "the assessment's pull-out resistance N_Rk_p in uncracked concrete is missing": Reason;
    MISSING_TAU_RK_CR "tau_Rk_cr" Number (EN_1992_4 "7.2.1.6" Secondary) "the assessment's bond strength in cracked concrete tau_Rk_cr is missing": Reason;
    MISSING_TAU_RK_UCR "tau_Rk_ucr" Number (EN_1992_4 "7.2.1.6(3)" Memory) "the assessment's bond strength in uncracked concrete tau_Rk_ucr is missing": Reason;
    MISSING_C_CR_SP "c_cr_sp" Number (EN_1992_4 "7.2.1.7" Secondary) "the assessment's edge distance for splitting c_cr_sp is missing. Reinforcement that keeps cracks at 0.3 mm, confirmed by the engineer of the slab, would do": Reason;
    MISSING_H_MIN "h_min" Number (EN_1992_4 "7.2.1.7" Secondary) "the assessment's least thickness h_min is missing. A cast-in bolt of a property class has no assessment: the engineer of record then gives it": Reason;
    MISSING_S_MIN "s_min" Number (EN_1992_4 "7.1" Memory) "the assessment's least spacing s_min is missing. A cast-in bolt of a property class has no assessment: the engineer of record then gives it": Reason;
    MISSING_C_MIN "c_min" Number (EN_1992_4 "7.1" Memory) "the assessment's least edge distance c_min is missing. A cast-in bolt of a property class has no assessment: the engineer of record then gives it": Reason;
    MISSING_V_0_RK_S "V0_Rk_s" Number (EN_1992_4 "7.2.2.3.1" Secondary) "the assessment's steel resistance in shear V0_Rk_s is missing": Reason;
    MISSING_M_0_RK_S "M0_Rk_s" Number (EN_1992_4 "7.2.2.3.2" Secondary) "the assessment's bending resistance M0_Rk_s is missing": Reason;
    MISSING_N_RK_S_EQ "N_Rk_s_eq" Number (EN_1992_4 "C.5" Memory) "the assessment's seismic steel resistance N_Rk_s_eq is missing": Reason;
    MISSING_N_RK_P_EQ "N_Rk_p_eq" Number (EN_1992_4 "C.5" Memory) "the assessment's seismic pull-out resistance N_Rk_p_eq is missing": Reason;
    MISSING_TAU_RK_EQ "tau_Rk_eq" Number (EN_1992_4 "C.5" Memory) "the assessment's seismic bond strength tau_Rk_eq is missing": Reason;
    MISSING_V_RK_S_EQ "V_Rk_s_eq" Number (EN_1992_4 "C.5" Memory) "the assessment's seismic steel resistance in shear V_Rk_s_eq is missing": Reason;

    HARD_STEEL "" Number (EN_1992_4 "7.2.2.3.1" Secondary) "the steel is stronger than 1000 MPa, and the assessment's V0_Rk_s is missing": Reason;
    HOLE_WIDE "" Number (EN_1992_4 "6.2.2.2, Table 6.1" Secondary) "the holes are wider than Table 6.1, so it cannot be said which fasteners take the shear. Filled holes would do": Reason;
    HOLE_UNLISTED "" Number (EN_1992_4 "Table 6.1" Secondary) "Table 6.1 of clearance holes ends at 30 mm, so it cannot be said which fasteners take the shear. Filled holes would do": Reason;
    THICK_MORTAR "" Number (EN_1992_4 "6.2.2.3, 7.2.2.3.1" Memory) "the mortar is too thick, the concrete below C20/25, the fastener alone, shallow or near another for the rule of mortar layers: it counts as a gap. Say so, with the distance e_1": Reason;
    SEISMIC_GAP "" Number (EN_1992_4 "C.1" Memory) "annex C does not reach fasteners that bend in a gap or through mortar thicker than half their diameter": Reason;
    MIXED_DEPTHS "" Number (EN_1992_4 "7.2.1.4" Derived) "fasteners of different embedment stand so near that they break out together; the equations know one embedment only": Reason;
    MIXED_ROW "" Number (EN_1992_4 "7.2.2.5" Derived) "fasteners of different diameter or embedment stand in one row along the edge; the equations know one of each only": Reason;

    NO_PULL "" Number (STATICS "base reactions" Derived) "no anchor is pulled": Reason;
    NO_GROUP "" Number (STATICS "base reactions" Derived) "no two pulled anchors share a breakout body": Reason;
    NO_SIDE_FACE "" Number (EN_1992_4 "7.2.1.8(1)" Secondary) "no pulled anchor is nearer to an edge than half its embedment": Reason;
    NOT_HEADED "" Number (EN_1992_4 "7.2.1.8(1)" Secondary) "only headed fasteners blow out the side of the concrete": Reason;
    IN_BOND "" Number (EN_1992_4 "7.2.1.6" Secondary) "bonded anchors are pulled out together with the concrete; that is the check of the bond": Reason;
    NOT_BONDED "" Number (EN_1992_4 "7.2.1.6" Secondary) "the fasteners are not bonded": Reason;
    NO_SPLITTING_FAR "" Number (EN_1992_4 "7.2.1.7(2)a" Secondary) "the edges are so far and the slab so thick that it does not split": Reason;
    NO_SPLITTING_BARS "" Number (EN_1992_4 "7.2.1.7(2)b" Secondary) "resistances are those in cracked concrete, and reinforcement is confirmed that keeps cracks at 0.3 mm": Reason;
    NO_SHEAR "" Number (STATICS "base reactions" Derived) "no anchor is sheared": Reason;
    NO_EDGE "" Number (INPUT "" Derived) "all edges of the slab are given as far": Reason;
    FAR_EDGES "" Number (EN_1992_4 "7.2.2.5(1)" Memory) "at most four fasteners, and all edges farther than 10 h_ef and 60 d": Reason;
    NOT_TOWARDS "" Number (EN_1992_4 "7.2.2.5" Derived) "no anchor is sheared towards or along an edge": Reason;
    LEVER_HAS_PULL "" Number (EN_1992_4 "Table 7.3" Memory) "the bending resistance of the rods already counts the pull": Reason;
    ONE_ANCHOR "" Number (STATICS "" Derived) "there is only one anchor": Reason;
    NO_FORCE "" Number (STATICS "base reactions" Derived) "no anchor is loaded": Reason;
}

/// Thinnest concrete class by its cylinder strength, and the strongest.
const F_CK_RANGE: [f64; 2] = [12.0, 90.0];
/// Limits of a fastener: least diameter, largest for edges, least embedment, largest embedment of bond over diameter.
const D_MIN: f64 = 6.0;
const D_NOM_MAX: f64 = 60.0;
const H_EF_MIN: f64 = 40.0;
const BOND_DEPTH_MAX: f64 = 20.0;

/// Why the rule does not reach this anchorage; none where it does.
pub fn uncovered(facts: &Facts, openings: &[Rectangle]) -> Option<StepId> {
    let any = |claim: &dyn Fn(&super::facts::Anchor) -> bool| facts.anchors.iter().any(claim);
    let is_missing = |measure: f64| measure.is_nan() || measure <= 0.0;
    let first = facts.anchors.first()?;
    let is_like_first = |anchor: &super::facts::Anchor| {
        let of = |anchor: &super::facts::Anchor| (anchor.d, anchor.a_s, anchor.bolt.steel.f_uk, anchor.h_ef);
        of(anchor) == of(first)
    };
    let reasons = [
        (facts.anchors.len() > ANCHORS_MAX, TOO_MANY),
        (less(facts.f_ck_slab, F_CK_RANGE[0]) || more(facts.f_ck_slab, F_CK_RANGE[1]), WEAK),
        (
            any(&|anchor| is_missing(anchor.d) || is_missing(anchor.a_s) || is_missing(anchor.bolt.steel.f_uk)),
            NO_MEASURE,
        ),
        (facts.is_headed() && any(&|anchor| is_missing(anchor.a_h)), NO_MEASURE),
        (any(&|anchor| less(anchor.d, D_MIN)), THIN_FASTENER),
        (any(&|anchor| more(anchor.d_nom, D_NOM_MAX)), THICK_FASTENER),
        (any(&|anchor| less(anchor.h_ef, H_EF_MIN)), SHALLOW),
        (facts.is_bonded() && any(&|anchor| more(anchor.h_ef, BOND_DEPTH_MAX * anchor.d)), DEEP_BOND),
        (any(&|anchor| !less(anchor.h_ef, facts.h)), THIN_SLAB),
        (any(&|anchor| !more(anchor.nearest_edge_mm(), 0.0)), OUTSIDE),
        (!facts.is_headed() && any(&|anchor| !is_like_first(anchor)), MIXED_PRODUCT),
        (openings.iter().any(|opening| any(&|anchor| is_near(facts, anchor, opening))), OPENING),
    ];
    reasons.into_iter().find_map(|(holds, reason)| holds.then_some(reason))
}

/// Whether an opening is so near to a fastener that it counts as an edge.
fn is_near(facts: &Facts, anchor: &super::facts::Anchor, opening: &Rectangle) -> bool {
    let beyond = |low: f64, at: f64, high: f64| f64::max(0.0, f64::max(low - at, at - high));
    let x_mm = beyond(opening.left_mm, anchor.at.x_mm, opening.right_mm);
    let y_mm = beyond(opening.front_mm, anchor.at.y_mm, opening.rear_mm);
    let by_field = |field: usize| 2.0 * facts.number(field).unwrap_or(0.0);
    let reach_mm = [10.0 * anchor.h_ef, 60.0 * anchor.d, by_field(f::C_CR_N), by_field(f::C_CR_SP)];
    !more(hypot(x_mm, y_mm), reach_mm.into_iter().fold(0.0, f64::max))
}

/// Why none of the forces can be checked at this level of the demand.
pub fn refused(facts: &Facts, level: Amplification) -> Option<StepId> {
    if facts.uncovered.is_some() || !facts.is_seismic {
        return facts.uncovered;
    }
    let place = |field: usize| facts.values.choice(field).unwrap_or(0);
    if place(f::DESIGN) != f::ELASTIC {
        return Some(if place(f::DESIGN) == f::CAPACITY { CAPACITY_DESIGN } else { DUCTILE_FASTENER });
    }
    if level != Amplification::Amplified {
        return Some(NOT_AMPLIFIED);
    }
    (!facts.is_headed() && place(f::QUALIFIED) < place(f::CATEGORY)).then_some(NOT_QUALIFIED)
}

/// Why no shear can be checked: holes that do not let it be said which fasteners take it.
pub fn holes(facts: &Facts) -> Option<StepId> {
    if facts.is(f::HOLES, f::FILLED) {
        return None;
    }
    let worst = |anchor: &super::facts::Anchor| match (super::hole::clearance_mm(anchor.d), facts.number(f::HOLE)) {
        (None, _) => Some(HOLE_UNLISTED),
        (Some((_, most)), Some(hole)) if more(hole, most) => Some(HOLE_WIDE),
        _ => None,
    };
    facts.anchors.iter().find_map(worst)
}

/// A value that is asked for: whether it is needed, its field, the reason while it is missing.
type Need = (bool, usize, StepId);

/// Tells all values that are needed and missing, and gives the first.
pub fn missing(facts: &Facts, needs: &[Need], sheet: &mut Sheet) -> Option<StepId> {
    let mut first = None;
    for &(is_needed, field, reason) in needs {
        if is_needed && facts.number(field).is_none() {
            sheet.step(reason, 0.0);
            first = first.or(Some(reason));
        }
    }
    first
}

/// What the concrete in tension needs.
pub fn of_concrete(facts: &Facts) -> [Need; 1] {
    [(!facts.is_headed(), f::GAMMA_INST, MISSING_GAMMA_INST)]
}

/// Whether the steel has another cross section than its thread, so that only an assessment knows its resistance.
pub fn is_reduced(facts: &Facts) -> bool {
    !facts.is_headed() && !facts.is_bonded()
}

/// What steel in tension needs.
pub fn of_steel_tension(facts: &Facts) -> [Need; 2] {
    [
        (is_reduced(facts) && !facts.is_seismic, f::N_RK_S, MISSING_N_RK_S),
        (!facts.is_headed() && facts.is_seismic, f::N_RK_S_EQ, MISSING_N_RK_S_EQ),
    ]
}

/// What steel in shear without a lever arm needs.
pub fn of_steel_shear(facts: &Facts) -> [Need; 2] {
    [
        (is_reduced(facts) && !facts.is_seismic, f::V_0_RK_S, MISSING_V_0_RK_S),
        (!facts.is_headed() && facts.is_seismic, f::V_RK_S_EQ, MISSING_V_RK_S_EQ),
    ]
}

/// What pull-out of mechanical fasteners needs.
pub fn of_pull_out(facts: &Facts) -> [Need; 4] {
    let is_mechanical = !facts.is_headed() && !facts.is_bonded();
    [
        (is_mechanical && !facts.is_seismic && facts.is_cracked, f::N_RK_P_CR, MISSING_N_RK_P_CR),
        (is_mechanical && !facts.is_cracked, f::N_RK_P_UCR, MISSING_N_RK_P_UCR),
        (is_mechanical && facts.is_seismic, f::N_RK_P_EQ, MISSING_N_RK_P_EQ),
        of_concrete(facts)[0],
    ]
}

/// What bond needs.
pub fn of_bond(facts: &Facts) -> [Need; 4] {
    [
        (!facts.is_seismic && facts.is_cracked, f::TAU_RK_CR, MISSING_TAU_RK_CR),
        (facts.is_seismic, f::TAU_RK_EQ, MISSING_TAU_RK_EQ),
        (true, f::TAU_RK_UCR, MISSING_TAU_RK_UCR),
        of_concrete(facts)[0],
    ]
}

/// What splitting needs.
pub fn of_splitting(facts: &Facts) -> [Need; 9] {
    let by_modes = facts.number(f::N_0_RK_SP).is_none();
    let [cracked_pull, uncracked_pull, seismic_pull, gamma] = of_pull_out(facts);
    let [tau, tau_eq, tau_ucr, _] = of_bond(facts);
    let also = |is_needed: bool, need: Need| (is_needed && need.0, need.1, need.2);
    [
        (true, f::C_CR_SP, MISSING_C_CR_SP),
        (true, f::H_MIN, MISSING_H_MIN),
        also(by_modes, cracked_pull),
        also(by_modes, uncracked_pull),
        also(by_modes, seismic_pull),
        also(by_modes && facts.is_bonded(), tau),
        also(by_modes && facts.is_bonded(), tau_eq),
        also(by_modes && facts.is_bonded() && !facts.is_cracked, tau_ucr),
        gamma,
    ]
}

/// Whether every edge of the slab is given as far.
pub fn has_no_edge(facts: &Facts) -> bool {
    let outline = &facts.outline;
    [outline.left_mm, outline.right_mm, outline.front_mm, outline.rear_mm].iter().all(|edge_mm| edge_mm.is_infinite())
}

/// Whether at most four fasteners stand so far from all edges that none can break out (7.2.2.5(1)).
pub fn is_far(facts: &Facts) -> bool {
    let is_far =
        |anchor: &super::facts::Anchor| more(anchor.nearest_edge_mm(), f64::max(10.0 * anchor.h_ef, 60.0 * anchor.d));
    at_most(facts.own as f64, 4.0) && facts.anchors.iter().all(is_far)
}
