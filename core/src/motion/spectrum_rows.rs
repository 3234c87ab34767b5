//! The steps of a code's spectrum.

use crate::calc::clause::{Document, INPUT, STATICS};
use crate::calc::steps;

/// EN 1998-1.
pub static EN_1998_1: Document = Document {
    short: "EN 1998-1:2004",
    title: "EN 1998-1:2004, Eurocode 8: Design of structures for earthquake resistance, Part 1: General rules, seismic actions and rules for buildings",
};
/// What the codes share.
pub static CODES: Document = Document {
    short: "codes' spectra",
    title: "ASCE/SEI 7 section 11.4, UBC 1997 figure 16-3 and EN 1998-1:2004 3.2.2.2, which give the spectrum of the ground in one form",
};

steps! { 190 "code spectrum";
    A "a" Acceleration (INPUT "site" Derived) "What scales the spectrum of the rule: S_DS, C_a, or a_g S": Given;
    K_0 "k_0" Number (CODES "" Memory) "Of it at period zero": Condition;
    K_M "k_m" Number (CODES "" Memory) "Of it at the top": Condition;
    S_0 "S_0" Acceleration (CODES "" Memory) "Spectral acceleration of rigid things" = "a * k_0";
    XI "xi" Number (INPUT "motion" Derived) "Damping over the critical one": Given;
    ETA "eta" Number (EN_1998_1 "3.2.2.2(3)" Memory) "Factor for damping" = "max(0.55, sqrt(10 / (5 + 100 * xi)))";
    ETA_5 "eta" Number (CODES "for 5 % damping" Memory) "Factor for damping: the rule draws its spectrum for 5 % only": Condition;
    S_M "S_m" Acceleration (CODES "" Memory) "Spectral acceleration of the top" = "a * k_m * eta";
    T_B "T_B" Time (CODES "ASCE 7 11.4, UBC 1997 figure 16-3" Memory) "End of the rise" = "0.2 * T_C";
    T_C "T_C" Time (INPUT "motion" Derived) "End of the level": Given;
    T_B_TABLE "T_B" Time (EN_1998_1 "Tables 3.2 and 3.3, recommended" Memory) "End of the rise": Table;
    T_C_TABLE "T_C" Time (EN_1998_1 "Tables 3.2 and 3.3, recommended" Memory) "End of the level": Table;
    T_D "T_D" Time (EN_1998_1 "Tables 3.2 and 3.3, recommended" Memory) "Where it begins to fall with the square": Table;
    T "T" Time (STATICS "" Derived) "Natural period": Given;
    RISES "S_a" Acceleration (CODES "" Memory) "Spectral acceleration, before the level" = "S_0 + (S_m - S_0) * T / T_B";
    LEVEL "S_a" Acceleration (CODES "" Memory) "Spectral acceleration, on the level" = "S_m";
    FALLS "S_a" Acceleration (CODES "" Memory) "Spectral acceleration, falling with the period" = "S_m * T_C / T";
    FAR "S_a" Acceleration (CODES "" Memory) "Spectral acceleration, falling with its square" = "S_m * T_C * T_D / T^2";
    NO_SPECTRUM "" Number (INPUT "site" Derived) "the seismic rule gives forces on parts of buildings, and no spectrum of the ground can be drawn from what it asks for": Reason;
    NOT_SCALED "" Number (INPUT "site" Derived) "the seismic rule does not reach these inputs, so its spectrum cannot be drawn": Reason;
    NO_CORNER "" Number (INPUT "motion" Derived) "of the rule's spectrum only the level is drawn: its end, T_S = S_D1 / S_DS or C_v / (2.5 C_a), is not asked for by the clause on parts; give it as the corner period": Reason;
    OF_GROUND "" Number (INPUT "site" Derived) "the rule's spectrum is that of the ground; a record taken on a floor is to be laid beside the spectrum of that floor": Reason;
    ONLY_5 "" Number (INPUT "site" Derived) "the rule draws its spectrum for 5 % damping": Reason;
}
