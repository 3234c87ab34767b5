//! Where the rule stops, and where a check is not needed.

use super::chosen;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::set::ANCHORS_MAX;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{at_most, less, more};
use crate::calc::{Kind, StepId, steps};

steps! { 62 "ACI 318-19, coverage";
    OTHER_FORMAT "" Number (ACI_318_19 "17.5.1.2" Secondary) "ACI 318 compares factored forces of strength design with reduced strengths; the demand rule works in another format. A strength-level demand would fit: ASCE 7, or UBC 1997 with strength design": Reason;
    TOO_MANY "" Number (INPUT "" Derived) "more than 128 anchors are not grouped here": Reason;
    NOT_YET "" Number (ACI_318_19 "17.1.2" Derived) "this kind of anchor, seismic option, hole or anchor reinforcement, openings and neighbours are not checked yet": Reason;
    WEAK "" Number (ACI_318_19 "19.2.1.1" Memory) "the concrete is weaker than 17 MPa (2500 psi), the least for structural concrete": Reason;
    THICK_BOLT "" Number (ACI_318_19 "17.3.2" Secondary) "an anchor is thicker than 100 mm (4 in.), beyond the tests behind the breakout equations": Reason;
    THIN_SLAB "" Number (ACI_318_19 "17.1" Derived) "an anchor with the cover of its head reaches to the underside of the slab or beyond: the equations are for anchors within the concrete": Reason;
    OUTSIDE "" Number (INPUT "" Derived) "an anchor stands on or beyond the edge of the slab": Reason;
    NO_HEAD "" Number (ACI_318_19 "17.6.3.2.2" Secondary) "the bearing area of an anchor's head is not known": Reason;
    STAND_OFF "" Number (ACI_318_19 "17.7.1" Secondary) "the anchor reaches the slab through a gap and bends; ACI 318 has no rule for the bending of anchors": Reason;
    NOT_AMPLIFIED "" Number (ACI_318_19 "17.10.5.3(d), 17.10.6.3(c)" Secondary) "in seismic design categories C to F anchors need a demand with overstrength; the demand rule has no amplified level, and no overstrength factor is given": Reason;
    MIXED_DEPTHS "" Number (ACI_318_19 "17.6.2" Derived) "anchors of different embedment stand so near that they break out together; the equations know one embedment only": Reason;
    MIXED_ROW "" Number (ACI_318_19 "17.7.2" Derived) "anchors of different diameter or embedment stand in one row along the edge; the equations know one of each only": Reason;
    NO_PULL "" Number (STATICS "base reactions" Derived) "no anchor is pulled": Reason;
    NO_GROUP "" Number (STATICS "base reactions" Derived) "no two pulled anchors share a breakout body": Reason;
    NO_SIDE_FACE "" Number (ACI_318_19 "17.6.4.1" Secondary) "no pulled anchor is nearer to an edge than 0.4 h_ef": Reason;
    NO_SHEAR "" Number (STATICS "base reactions" Derived) "no anchor is sheared": Reason;
    NO_EDGE "" Number (INPUT "" Derived) "all edges of the slab are given as far": Reason;
    NOT_TOWARDS "" Number (ACI_318_19 "17.7.2.1" Derived) "no anchor is sheared towards or along an edge": Reason;
    ONE_ANCHOR "" Number (STATICS "" Derived) "there is only one anchor": Reason;
    NO_FORCE "" Number (STATICS "base reactions" Derived) "no anchor is loaded": Reason;
}

/// Why the rule does not reach this anchorage; none where it does.
pub fn uncovered(facts: &Facts) -> Option<StepId> {
    let any = |claim: &dyn Fn(&super::facts::Anchor) -> bool| facts.anchors.iter().any(claim);
    if facts.anchors.len() > ANCHORS_MAX {
        return Some(TOO_MANY);
    }
    if facts.is_not_yet {
        return Some(NOT_YET);
    }
    if less(facts.f_c_slab, facts.edition.strength_min) {
        return Some(WEAK);
    }
    if any(&|anchor| more(anchor.d_a, facts.edition.diameter_max)) {
        return Some(THICK_BOLT);
    }
    if any(&|anchor| more(anchor.h_ef_mm + facts.edition.system.to_si(facts.cover, Kind::Length), facts.thickness_mm)) {
        return Some(THIN_SLAB);
    }
    if any(&|anchor| at_most(anchor.nearest_edge_mm(), 0.0) || anchor.nearest_edge_mm().is_nan()) {
        return Some(OUTSIDE);
    }
    // Not positive includes what is no number.
    let is_missing = |measure: f64| measure.is_nan() || measure <= 0.0;
    if any(&|anchor| is_missing(anchor.a_brg) || is_missing(anchor.f_u)) {
        return Some(NO_HEAD);
    }
    None
}

/// Why the steel of the anchors is not covered; none where it is.
pub fn steel_uncovered(facts: &Facts) -> Option<StepId> {
    (facts.seat == chosen::SEAT_GAP).then_some(STAND_OFF)
}
