//! Where the rule stops, and where a check is not needed.

use super::anchor::Anchor;
use super::edition::ACI_318_19;
use super::facts::Facts;
use super::kind::AnchorKind;
use super::set::ANCHORS_MAX;
use crate::calc::clause::{INPUT, STATICS};
use crate::calc::limit::{at_least, at_most, less, more};
use crate::calc::{Kind, StepId, steps};

steps! { 62 "ACI 318-19, coverage";
    OTHER_FORMAT "" Number (ACI_318_19 "17.5.1.2" Secondary) "ACI 318 compares factored forces of strength design with reduced strengths; the demand rule works in another format. A strength-level demand would fit: ASCE 7, or UBC 1997 with strength design": Reason;
    TOO_MANY "" Number (INPUT "" Derived) "more than 128 anchors are not grouped here": Reason;
    WEAK "" Number (ACI_318_19 "19.2.1.1" Memory) "the concrete is weaker than 17 MPa (2500 psi), the least for structural concrete": Reason;
    THICK_BOLT "" Number (ACI_318_19 "17.3.2" Secondary) "an anchor is thicker than 100 mm (4 in.), beyond the tests behind the breakout equations": Reason;
    THIN_SLAB "" Number (ACI_318_19 "17.1" Derived) "an anchor with the cover of its head reaches to the underside of the slab or beyond: the equations are for anchors within the concrete": Reason;
    OUTSIDE "" Number (INPUT "" Derived) "an anchor stands on or beyond the edge of the slab": Reason;
    NO_HEAD "" Number (ACI_318_19 "17.6.3.2.2" Secondary) "the bearing area of an anchor's head is not known": Reason;
    STAND_OFF "" Number (ACI_318_19 "17.7.1" Secondary) "the anchor reaches the slab through a gap and bends; ACI 318 has no rule for the bending of anchors": Reason;
    NO_WASHER "" Number (INPUT "" Derived) "rods under welded washers bend in the plate: its thickness or that of the washers is missing": Reason;
    NO_SCREWS "" Number (ACI_318_19 "17.1.2" Memory) "screw anchors came into the code with its edition of 2019": Reason;
    ADHESIVE_DEPTH "" Number (ACI_318_19 "17.3.3" Secondary) "adhesive anchors are covered from 4 to 20 diameters of embedment": Reason;
    SCREW_DEPTH "" Number (ACI_318_19 "17.3.4" Secondary) "screw anchors are covered from 5 to 10 diameters of embedment, and from 40 mm (1.5 in.)": Reason;
    HOOK_RANGE "" Number (ACI_318_19 "17.6.3.2.2(b)" Secondary) "the equation for hooks reaches from 3 to 4.5 diameters": Reason;
    NO_CATEGORY "" Number (ACI_318_19 "17.5.3" Secondary) "the anchor category of the evaluation report is missing": Reason;
    NO_N_P "" Number (ACI_318_19 "17.6.3.2.1" Secondary) "the pullout strength of the evaluation report, N_p, is missing": Reason;
    NO_N_P_EQ "" Number (ACI_318_19 "17.10.3" Memory) "the pullout strength under simulated earthquakes, N_p,eq of the evaluation report, is missing": Reason;
    NO_TAU_CR "" Number (ACI_318_19 "17.6.5.2" Secondary) "the bond stress in cracked concrete, tau_cr of the evaluation report, is missing": Reason;
    NO_TAU_UNCR "" Number (ACI_318_19 "17.6.5.1.2" Secondary) "the bond stress in uncracked concrete, tau_uncr of the evaluation report, is missing": Reason;
    NO_ALPHA_N_SEIS "" Number (ACI_318_19 "17.10.3" Memory) "the factor on bond stress under simulated earthquakes, alpha_N,seis of the evaluation report, is missing": Reason;
    NO_V_SA "" Number (ACI_318_19 "17.7.1.2" Secondary) "a sleeve passes the shear plane: the steel's strength in shear, V_sa of the evaluation report, is missing": Reason;
    NO_V_SA_EQ "" Number (ACI_318_19 "17.10.3" Memory) "the steel's strength in shear under simulated earthquakes, V_sa,eq of the evaluation report, is missing": Reason;
    NOT_DUCTILE "" Number (ACI_318_19 "17.10.5.3(a)" Secondary) "option (a) is for ductile steel; the steel of an anchor counts as brittle": Reason;
    NOT_PROTECTED "" Number (ACI_318_19 "17.10.5.3(a)(iii)" Secondary) "option (a) asks that the anchor is protected against buckling when the force turns round": Reason;
    NO_YIELD "" Number (ACI_318_19 "17.10.5.3(a)(iv)" Secondary) "option (a) compares tensile with yield strength, and the steel's standard specifies no yield strength": Reason;
    NOT_BONDED "" Number (ACI_318_19 "17.6.5" Secondary) "only adhesive anchors have a bond": Reason;
    BONDED "" Number (ACI_318_19 "17.6.3" Secondary) "adhesive anchors are checked for bond instead": Reason;
    NOT_DECISIVE "" Number (ACI_318_19 "17.6.3.2.1" Secondary) "the evaluation report says that pullout does not decide": Reason;
    NO_HEAD_THERE "" Number (ACI_318_19 "17.6.4" Secondary) "side faces are blown out by headed anchors only": Reason;
    NOT_LASTING "" Number (ACI_318_19 "17.5.2.2" Secondary) "no lasting pull is given": Reason;
    BARS_CARRY "" Number (ACI_318_19 "17.5.2.1" Secondary) "anchor reinforcement carries the whole force instead": Reason;
    OTHER_OPTION "" Number (ACI_318_19 "17.10.5.3" Secondary) "another option than ductile steel limits the pull": Reason;
    CAST_IN "" Number (ACI_318_19 "17.9.4" Secondary) "the limit of embedment in the slab's thickness is for expansion, undercut and screw anchors, and for those whose report has a least thickness": Reason;
    NOT_AMPLIFIED "" Number (ACI_318_19 "17.10.5.3(d), 17.10.6.3(c)" Secondary) "in seismic design categories C to F anchors need a demand with overstrength; the demand rule has no amplified level, and no overstrength factor is given": Reason;
    MIXED_DEPTHS "" Number (ACI_318_19 "17.6.2" Derived) "anchors of different embedment stand so near that they break out together; the equations know one embedment only": Reason;
    MIXED_BOND "" Number (ACI_318_19 "17.6.5" Derived) "adhesive anchors of different diameter or embedment stand so near that they pull out together; the equations know one of each only": Reason;
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
    let any = |claim: &dyn Fn(&Anchor) -> bool| facts.anchors.iter().any(claim);
    if facts.anchors.len() > ANCHORS_MAX {
        return Some(TOO_MANY);
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
    if any(&|anchor| at_most(anchor.nearest_mm, 0.0) || anchor.nearest_mm.is_nan() || is_in_opening(facts, anchor)) {
        return Some(OUTSIDE);
    }
    // Not positive includes what is no number.
    let is_missing = |measure: f64| measure.is_nan() || measure <= 0.0;
    let is_headed = facts.kind == AnchorKind::Headed;
    if any(&|anchor| (is_headed && is_missing(anchor.a_brg)) || is_missing(anchor.f_u)) {
        return Some(NO_HEAD);
    }
    let is_within = |anchor: &Anchor, least: f64, most: f64| {
        at_least(anchor.h_ef, least * anchor.d_a) && at_most(anchor.h_ef, most * anchor.d_a)
    };
    match (facts.kind, facts.edition.screw_depth_min) {
        (AnchorKind::Adhesive, _) if any(&|anchor| !is_within(anchor, 4.0, 20.0)) => Some(ADHESIVE_DEPTH),
        (AnchorKind::Screw, None) => Some(NO_SCREWS),
        (AnchorKind::Screw, Some(least))
            if any(&|anchor| !is_within(anchor, 5.0, 10.0) || less(anchor.h_ef, least)) =>
        {
            Some(SCREW_DEPTH)
        }
        _ => None,
    }
}

fn is_in_opening(facts: &Facts, anchor: &Anchor) -> bool {
    facts.openings.iter().any(|opening| opening.contains(anchor.at))
}
