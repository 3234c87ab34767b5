//! What the comparison of rules is lettered with.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;

steps! { 130 "side by side";
    STRENGTH "" Number (INPUT "site" Derived) "rules of strength design, with load factors": Name;
    LIMIT_STATES "" Number (INPUT "site" Derived) "rules of limit states, with partial factors": Name;
    ALLOWABLE_STRESS "" Number (INPUT "site" Derived) "rules of allowable stress: not to be held against the numbers of the other formats": Name;
    RULE "" Number (INPUT "site" Derived) "rule": Name;
    PUSH "" Number (INPUT "site" Derived) "push over weight by the clause": Name;
    DECIDED "" Number (INPUT "site" Derived) "decided by": Name;
    FACTORED "" Number (INPUT "site" Derived) "push over weight in its load cases": Name;
    DOWN "" Number (INPUT "site" Derived) "downward load over weight, the least": Name;
    ANCHORS "" Number (INPUT "site" Derived) "push for anchors in concrete": Name;
    UTILISATION "" Number (INPUT "site" Derived) "highest utilisation of your cabinet": Name;
    ANSWER "" Number (INPUT "site" Derived) "your cabinet, bolted as it is": Name;
    RANK "" Number (INPUT "site" Derived) "rank by that push": Name;
    GIVEN "" Number (INPUT "site" Derived) "what each rule was asked with": Name;
    OWN "" Number (INPUT "site" Derived) "from your project": Name;
    TAKEN "" Number (INPUT "site" Derived) "taken for the comparison": Name;
    LEFT_OUT "" Number (INPUT "site" Derived) "rules that give no number here": Name;
    WHY "" Number (INPUT "site" Derived) "why": Name;
    TIPS "" Number (STATICS "moments about the nearest edge" Derived) "tips by weight alone": Name;

    NOT_ONE_PLACE "" Number (INPUT "site" Derived) "it compares rules and not places: zones, soils and kinds of component are those of each rule’s own sample unless your project says the same thing": Reason;
    FORMATS_APART "" Number (INPUT "site" Derived) "strength design, limit states and allowable stress stand in tables of their own, because their numbers are compared with other capacities": Reason;
    FACTORS "" Number (INPUT "site" Derived) "the push by the clause stands before load factors, in China for the frequent earthquake and in UBC 1994 at service level; that in its load cases is what capacities are compared with": Reason;
    HEIGHTS_TAKEN "" Number (INPUT "site" Derived) "where your project gives no heights, the floor stands at 12 m in a building of 20 m; storeys are counted at 4 m": Reason;
}
