//! What a project leaves out, and what is therefore not checked or not covered, in words.

use crate::calc::clause::INPUT;
use crate::calc::steps;

steps! { 15 "what is there";
    NO_SITE "" Number (INPUT "site" Derived) "no seismic rule is chosen, so nothing is pushed": Name;
    NO_SLAB "" Number (INPUT "slab" Derived) "no slab is given, so neither feet nor anchors are checked in concrete": Name;
    NO_ANCHORAGE "" Number (INPUT "anchorage" Derived) "no anchor rule is chosen, so the anchors are not checked": Name;
    STEMS_BEND "" Number (INPUT "cabinet.feet" Derived) "feet on stems lift the base off the floor, and nothing says how the bolts reach the concrete: those that pass the gap bend, those of brackets that stand on the concrete do not; say what is under the base at the anchors (seat), or give the brackets": Reason;
    PRYING_LEFT_OUT "" Number (INPUT "cabinet.anchors" Derived) "prying of clips and brackets is not counted: no anchor says how far its bolt is from the toe of a bracket and from the pull; a bolt through the base plate itself needs neither": Name;
    OVERSTRENGTH_IDLE "" Number (INPUT "anchorage" Derived) "the overstrength given with the anchorage is not used, because the demand rule brings its own": Name;
    NO_LIFTING "" Number (INPUT "cabinet" Derived) "no lifting points are given; lifting is not checked here": Name;
    NO_RIGGING "" Number (INPUT "lifting" Derived) "no rigging is given for the lifting points, so lifting is not checked": Name;
    NOTHING_HOLDS "" Number (INPUT "cabinet.anchors" Derived) "no anchors are given, and friction from gravity may not carry the seismic shear of a component (ASCE 7-16 13.4)": Reason;
    SLAB_MISSING "" Number (INPUT "slab" Derived) "no slab is given: anchors need its strength, thickness and edges": Reason;
    RULE_MISSING "" Number (INPUT "anchorage" Derived) "no anchor rule is chosen": Reason;
    TURNS_FAR "" Number (INPUT "stiffness" Derived) "the base would turn by more than 0.05 rad on its feet and anchors; the statics of small rotations do not reach that": Reason;
    NOT_PRESSED "" Number (INPUT "cabinet.feet" Derived) "no foot is pressed in any load case": Reason;
    SHEAR_SLIDES "" Number (INPUT "cabinet.anchors" Derived) "the anchors stand in slotted holes and cannot carry the push along their slots, or its twist": Reason;
    SHEAR_NOWHERE "" Number (INPUT "cabinet.anchors" Derived) "all anchors stand on one point and cannot carry the twist of the push": Reason;
    STICKS_OUT "" Number (INPUT "contents" Derived) "whether contents that reach beyond the frame, above its top or beside it, were typed rightly; they count where they were put": Name;
}
