//! Holes as they were drilled: what is written of the second round of checks.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;

steps! { 90 "as drilled";
    DELTA "Delta" Length (INPUT "cabinet.anchors" Derived) "Farthest that a hole was drilled from its mark": Geometry;
    U_BUILT "u" Utilisation (STATICS "" Derived) "Highest utilisation of all required checks, asked again with every anchor where it was drilled": Searched;
    UNCOVERED "" Number (INPUT "cabinet.anchors" Derived) "with the anchors where they were drilled, a required check is not covered": Reason;
}
